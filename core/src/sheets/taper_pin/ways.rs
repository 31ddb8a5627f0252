//! How does each way in find its pin? By number, shaft, measured pin, gauge or worn hole; then the tail is the same.

use super::tail::{self, Found};
use crate::calls;
use crate::pin::{self, PinFault, StandardPin, TaperSeries, WornHole};
use crate::quantity::Length;
use crate::sheet::*;

static WORN: Source = Source::read("U.S. Army TM 9-254", "par. 3-2, damaged tapered holes");
static QUARTER: Source = Source::practice("Pin about a quarter of the shaft's diameter");
static TIP: Source = Source::read(
    "D. Winkel, Machinist's Workshop",
    "shop tip on taper pins: depth \u{f7} 48 + shank",
);
static CONE: Source = Source::practice("Geometry of a ball in a cone");

/// The sheet's function.
pub(super) fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let series = if inp.choice("series") == "metric" {
        TaperSeries::Metric
    } else {
        TaperSeries::Inch
    };
    match inp.choice("from") {
        "shaft" => from_shaft(inp, series),
        "pin" => from_pin(inp),
        "gauge" => from_gauge(inp, series),
        "worn" => from_worn(inp, series),
        _ => from_number(inp, series),
    }
}

/// A fault of the formulas as a fault of a field.
pub(super) fn at(inp: &Inputs, field: &'static str, fault: PinFault) -> Stop {
    match fault {
        PinFault::NotPositive(what) => {
            inp.out_of_range(field, format!("the {what} must be more than nothing"), "")
        }
        PinFault::RunsToAPoint { limit } => inp.out_of_range(
            field,
            format!("this pin would run to a point at {}", inp.show(limit)),
            "give a shorter length or a larger pin",
        ),
        PinFault::NoTaper => Stop::fault(
            field,
            Reason::Conflict,
            "the large end must be larger than the small end",
            "change the two ends over",
        ),
        PinFault::BeyondSeries { largest } => inp.out_of_range(
            field,
            format!("the series ends at a large end of {}", inp.show(largest)),
            "bush the hole, or turn a pin to suit",
        ),
    }
}

fn from_number(inp: &Inputs, series: TaperSeries) -> Result<Answer, Stop> {
    let id = if series == TaperSeries::Metric {
        "size"
    } else {
        "number"
    };
    let call = calls::pin::read(inp.call(id)?, series).map_err(|_| Stop::Missing(id))?;
    let length = inp
        .opt("length")
        .or(call.length)
        .ok_or(Stop::Missing("length"))?;
    let mut a = inp.answer();
    tail::tell(
        inp,
        &mut a,
        &Found {
            pin: call.pin,
            length,
            at: "length",
            is_picked: false,
            hole_now: None,
        },
    )?;
    Ok(a)
}

fn from_shaft(inp: &Inputs, series: TaperSeries) -> Result<Answer, Stop> {
    let shaft: Length = inp.get("shaft")?;
    let hub: Length = inp.get("length")?;
    if hub <= shaft {
        let says = format!(
            "the hub must be larger than its shaft of {}",
            inp.show(shaft)
        );
        return Err(Stop::fault(
            "length",
            Reason::Conflict,
            says,
            "give the hub's outside diameter",
        ));
    }
    let choices = pin::for_shaft(shaft, hub, series).map_err(|f| at(inp, "shaft", f))?;
    let best = choices.first().ok_or(Stop::Missing("shaft"))?;
    let mut a = inp.answer();
    if !inp.quiet() {
        let table = a.table(
            "sizes",
            "Nearest to a quarter of the shaft",
            &["Pin", "middle", "of the shaft", "off a quarter"],
        );
        for one in choices.iter().take(4) {
            let name = if one.usual_length {
                one.pin.name()
            } else {
                format!("{} (not usual so long)", one.pin.name())
            };
            let row = vec![
                Value::words(name),
                Value::of(one.middle),
                Value::of(one.share),
                Value::of(one.off).signed(),
            ];
            table
                .row(row)
                .chosen(one.pin == best.pin)
                .opens("taper-pin", opens(one.pin, inp));
        }
        table.note("A guide only: check the shear, and mind that a larger hole weakens the shaft.");
        a.work(|w| {
            w.step(
                "A quarter of the shaft",
                &[
                    "d = shaft \u{f7} 4".into(),
                    format!(
                        "d = {} \u{f7} 4 = {}",
                        inp.num(shaft),
                        inp.show(shaft / 4.0)
                    ),
                ],
                &QUARTER,
            );
        });
    }
    tail::tell(
        inp,
        &mut a,
        &Found {
            pin: best.pin,
            length: hub,
            at: "length",
            is_picked: true,
            hole_now: None,
        },
    )?;
    Ok(a)
}

fn from_pin(inp: &Inputs) -> Result<Answer, Stop> {
    let (large, small, between) = (inp.get("large")?, inp.get("small")?, inp.get("between")?);
    let measured = pin::identify(large, small, between).map_err(|f| at(inp, "large", f))?;
    let best = measured.matches.first().ok_or(Stop::Missing("large"))?;
    let mut a = inp.answer();
    a.words("pin", best.pin.name())
        .says("The nearest standard pin by both ends.");
    a.line("measured-taper", measured.taper)
        .says(match measured.nearer {
            TaperSeries::Inch => "Change of diameter over length. Nearer to 1:48, the inch series.",
            TaperSeries::Metric => {
                "Change of diameter over length. Nearer to 1:50, the metric series."
            }
        });
    a.line("telling", measured.telling)
        .places(5, 4)
        .says("On the diameter. Measure closer than this to tell the series apart.");
    if !inp.quiet() {
        let table = a.table(
            "matches",
            "Nearest standard pins",
            &["Pin", "large end off", "small end off"],
        );
        for one in measured.matches.iter().take(4) {
            table
                .row(vec![
                    Value::words(one.pin.name()),
                    Value::of(one.large_off).signed(),
                    Value::of(one.small_off).signed(),
                ])
                .chosen(one.pin == best.pin)
                .opens("taper-pin", opens(one.pin, inp));
        }
        table.note("Measured less standard, at these two places. An inch pin is told by its large end, a metric one by its small end.");
        a.work(|w| {
            w.step(
                "Taper",
                &[
                    "T = (D \u{2212} d) \u{f7} L".into(),
                    format!(
                        "T = ({} \u{2212} {}) \u{f7} {} = {}",
                        inp.num(large),
                        inp.num(small),
                        inp.num(between),
                        inp.show(measured.taper)
                    ),
                ],
                &tail::DEFINITION,
            );
        });
    }
    tail::tell(
        inp,
        &mut a,
        &Found {
            pin: best.pin,
            length: between,
            at: "between",
            is_picked: true,
            hole_now: None,
        },
    )?;
    Ok(a)
}

fn from_gauge(inp: &Inputs, series: TaperSeries) -> Result<Answer, Stop> {
    let gauge: Length = inp.get("gauge")?;
    let length: Length = inp.get("length")?;
    let (t, per) = (series.taper(), series.per());
    let (face, lines, source): (_, _, &'static Source) = match inp.choice("gauge-kind") {
        "ball" => {
            let depth: Length = inp.get("depth")?;
            let face = pin::face_from_ball(gauge, depth, t).map_err(|f| at(inp, "gauge", f))?;
            let form = "D = b \u{d7} \u{221a}(1 + T\u{b2} \u{f7} 4) + T \u{d7} (h + b \u{f7} 2)";
            (
                face,
                [
                    form.to_owned(),
                    format!(
                        "b = {}, h = {}, T = 1 \u{f7} {per}: D = {}",
                        inp.num(gauge),
                        inp.num(depth),
                        inp.show(face)
                    ),
                ],
                &CONE,
            )
        }
        "taper" => {
            let proud: Length = inp.get("stands")?;
            let face =
                pin::face_from_taper_gauge(gauge, proud, t).map_err(|f| at(inp, "stands", f))?;
            (
                face,
                [
                    format!("D = G \u{2212} p \u{f7} {per}"),
                    format!(
                        "D = {} \u{2212} {} \u{f7} {per} = {}",
                        inp.num(gauge),
                        inp.num(proud),
                        inp.show(face)
                    ),
                ],
                &tail::DEFINITION,
            )
        }
        _ => {
            let depth: Length = inp.get("depth")?;
            let face =
                pin::face_from_plain_pin(gauge, depth, t).map_err(|f| at(inp, "depth", f))?;
            (
                face,
                [
                    format!("D = g + h \u{f7} {per}"),
                    format!(
                        "D = {} + {} \u{f7} {per} = {}",
                        inp.num(gauge),
                        inp.num(depth),
                        inp.show(face)
                    ),
                ],
                &TIP,
            )
        }
    };
    let mut pins = StandardPin::all(series);
    pins.retain(|one| one.small_end(length).is_ok());
    let off = |one: &StandardPin| pin::sunk(*one, face, length);
    pins.sort_by(|a, b| off(a).abs().mm().total_cmp(&off(b).abs().mm()));
    let best = *pins.first().ok_or_else(|| {
        inp.out_of_range(
            "length",
            "every pin would run to a point over this length",
            "",
        )
    })?;
    let mut a = inp.answer();
    a.line("face", face).says(match series {
        TaperSeries::Inch => {
            "On the diameter, for a taper of 1:48. A burred lip does not count in this."
        }
        TaperSeries::Metric => {
            "On the diameter, for a taper of 1:50. A burred lip does not count in this."
        }
    });
    a.work(|w| w.step("Hole at the large face", &lines, source));
    if !inp.quiet() {
        let table = a.table(
            "sizes",
            "Pins for this hole",
            &["Pin", "large end", "sinks below the face"],
        );
        for one in pins.iter().take(4) {
            table
                .row(vec![
                    Value::words(one.name()),
                    Value::of(one.large_end(length)),
                    Value::of(off(one)).signed(),
                ])
                .chosen(*one == best)
                .opens("taper-pin", opens(*one, inp));
        }
        table.note("Below zero the pin's large end stands proud by that much.");
    }
    tail::tell(
        inp,
        &mut a,
        &Found {
            pin: best,
            length,
            at: "length",
            is_picked: true,
            hole_now: None,
        },
    )?;
    Ok(a)
}

fn from_worn(inp: &Inputs, series: TaperSeries) -> Result<Answer, Stop> {
    let hole = WornHole {
        at_large_face: inp.get("worn-large")?,
        at_small_face: inp.opt("worn-small"),
        hub: inp.get("length")?,
        least_cut: inp.get("least-cut")?,
    };
    let plan = pin::clean_up(&hole, series).map_err(|f| at(inp, "worn-large", f))?;
    let best = plan.sizes.first().ok_or(Stop::Missing("worn-large"))?;
    let mut a = inp.answer();
    a.words("pin", best.pin.name())
        .says("The smallest size whose reamer cuts the whole hole.");
    a.line("clean-at", plan.clean_at)
        .says("Least hole at the large face, on the diameter, that leaves no old surface.");
    a.line("least-travel", plan.least_travel).says("Along the hole, from first touch until it is clean. Wear is taken as straight between the faces.");
    if !inp.quiet() {
        let table = a.table(
            "sizes",
            "Sizes that clean up",
            &[
                "Pin",
                "off the large face",
                "reamer travels",
                "proud if you stop when clean",
            ],
        );
        for one in plan.sizes.iter().take(4) {
            table
                .row(vec![
                    Value::words(one.pin.name()),
                    Value::of(one.off_large_face),
                    Value::of(one.travel).places(3, 1),
                    Value::of(one.proud_when_clean).places(3, 1),
                ])
                .chosen(one.pin == best.pin)
                .opens("taper-pin", opens(one.pin, inp));
        }
        table.note("Reamed until the large end is flush. Stop when clean and the pin stands proud: cut it off at the large end.");
        let per = series.per();
        a.work(|w| {
            let seen = match hole.at_small_face {
                Some(small) => format!(
                    "D = larger of {} and {} + {} \u{f7} {per}, plus {} = {}",
                    inp.num(hole.at_large_face),
                    inp.num(small),
                    inp.num(hole.hub),
                    inp.num(hole.least_cut),
                    inp.show(plan.clean_at)
                ),
                None => format!(
                    "D = {} + {} = {} (small face not measured)",
                    inp.num(hole.at_large_face),
                    inp.num(hole.least_cut),
                    inp.show(plan.clean_at)
                ),
            };
            w.step(
                "Clean at the large face",
                &[
                    format!("D = larger of Dw and dw + L \u{f7} {per}, plus the least cut"),
                    seen,
                ],
                &WORN,
            );
        });
    }
    a.stop("Before you ream to the next size", "Look at the wall that is left in hub and shaft. A larger pin weakens the shaft, and metal can't be put back.");
    tail::tell(
        inp,
        &mut a,
        &Found {
            pin: best.pin,
            length: hole.hub,
            at: "length",
            is_picked: true,
            hole_now: hole.at_small_face,
        },
    )?;
    Ok(a)
}

/// What a tap on a row opens: this pin by its number, over the same length.
fn opens(pin: StandardPin, inp: &Inputs) -> Vec<(&'static str, String)> {
    let mut entry = match pin.series() {
        TaperSeries::Inch => vec![("number", pin.call().to_owned())],
        TaperSeries::Metric => vec![
            ("series", "metric".to_owned()),
            ("size", pin.call().to_owned()),
        ],
    };
    let length = if inp.choice("from") == "pin" {
        "between"
    } else {
        "length"
    };
    for (to, from) in [("length", length), ("shaft", "shaft")] {
        if let Some(size) = inp.opt::<Length>(from) {
            entry.push((to, inp.show_plain(size)));
        }
    }
    entry
}
