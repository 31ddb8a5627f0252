//! What is said of every pin once it is known: its ends, its hole, its seat and its strength.

use super::ways::{at, rule_size};
use super::{draw, drilling};
use crate::pin::{self, StandardPin, TaperSeries};
use crate::quantity::{Length, Share, Stress, Torque};
use crate::sheet::*;

static ASME: Source = Source::read("ASME B18.8.2-2000", "Table 1, taper pins");
static ISO: Source = Source::read("ISO 2339:1986", "taper pins, unhardened");
static LIMITS: Source = Source::read(
    "Shigley, Mechanical Engineering Design, 9th ed. (2011)",
    "Table 7-5, p. 390, and Eq. (7-35)",
);
static SEAT: Source = Source::read("U.S. Army TM 9-254", "par. 3-1e, seating within 1/16 in");
static STRENGTH: Source = Source::read(
    "Machinery's Handbook, 31st ed.",
    "Strength of Taper Pins, p. 227",
);
pub(super) static DEFINITION: Source =
    Source::computed("ASME B18.8.2 and ISO 2339", "taper on the diameter");

/// The standard that a pin's sizes are from.
pub(super) const fn standard_of(pin: StandardPin) -> &'static Source {
    match pin {
        StandardPin::Inch(_) => &ASME,
        StandardPin::Metric(_) => &ISO,
    }
}

/// The pin that was found, and over what length.
pub(super) struct Found {
    /// The pin.
    pub pin: StandardPin,
    /// Its length in the hub.
    pub length: Length,
    /// The field that the length came from.
    pub at: &'static str,
    /// Found by figuring, not named by the user.
    pub is_picked: bool,
    /// The hole that is there already, at the small face; none where a new one is drilled.
    pub hole_now: Option<Length>,
}

/// Adds all that follows from the pin.
pub(super) fn tell(inp: &Inputs, a: &mut Answer, found: &Found) -> Result<(), Stop> {
    let small = found
        .pin
        .small_end(found.length)
        .map_err(|f| at(inp, found.at, f))?;
    let large = found.pin.large_end(found.length);
    if let Some(shaft) = inp.opt::<Length>("shaft").filter(|shaft| large >= *shaft) {
        return Err(Stop::fault(
            "shaft",
            Reason::Conflict,
            format!(
                "the hole, {} at its large end, would be as large as this shaft of {}",
                inp.show(large),
                inp.show(shaft)
            ),
            "give a smaller pin, or the shaft's own diameter",
        ));
    }
    if found.is_picked && a.get("pin").is_none() {
        a.words("pin", found.pin.name())
            .says(match inp.choice("from") {
                "shaft" => {
                    "The size whose middle is nearest to a quarter of the shaft (common practice)."
                }
                _ => "The size whose large end comes nearest to flush in this hole.",
            });
    }
    ends(inp, a, found, large, small);
    drilling::reamer(inp, a, found, small);
    if found
        .hole_now
        .is_none_or(|now| now < small - pin::LEAST_LEFT)
        && inp.choice("from") != "gauge"
    {
        drilling::hole(inp, a, found, large, small)?;
    }
    seat(inp, a, found)?;
    strength(inp, a, (large + small) / 2.0);
    load(inp, a, (large + small) / 2.0)?;
    a.draw(|| draw::pin(inp, found, large, small));
    cautions(inp, a, found, (large + small) / 2.0);
    Ok(())
}

fn ends(inp: &Inputs, a: &mut Answer, found: &Found, large: Length, small: Length) {
    match found.pin {
        StandardPin::Inch(row) => {
            a.line("small-end", small).says(
                "Large end minus length \u{f7} 48. Nominal size is the large end (inch series).",
            );
            let (least, most) = row.commercial();
            let mut says = format!(
                "Nominal, the same at any length. Commercial pins {} to {}",
                inp.num(least),
                inp.num(most)
            );
            if let Some((least, most)) = row.precision() {
                says = format!("{says}, precision {} to {}", inp.num(least), inp.num(most));
            }
            a.line("large-end", large).says(format!("{says}.")).band(
                least,
                most,
                "commercial pins",
            );
            a.source(&LIMITS).source(&ASME);
        }
        StandardPin::Metric(row) => {
            a.line("large-end", large).says(
                "Small end plus length \u{f7} 50. Nominal size is the small end (metric series).",
            );
            let (least, most) = row.limits();
            let tolerance =
                crate::standards::pins::taper_pins::metric_length_tolerance(found.length);
            a.line("small-end", small)
                .says(format!(
                    "Nominal, h10: {} to {}. The length holds \u{b1}{}.",
                    inp.num(least),
                    inp.num(most),
                    inp.show(tolerance)
                ))
                .band(least, most, "h10");
            a.line("length-tolerance", tolerance)
                .says("Plus or minus, on the pin\u{2019}s length.");
            a.source(&ISO);
        }
    }
    let middle = (large + small) / 2.0;
    a.line("middle", middle)
        .says("Half way along: the size that strength goes by.");
    if let Some(shaft) = inp.opt::<Length>("shaft") {
        a.line("share", Share::from_fraction(middle / shaft))
            .says("Common practice is a quarter to a third of the shaft; check the shear too.");
    }
    a.work(|w| match found.pin {
        StandardPin::Inch(_) => w.step(
            "Small end",
            &[
                "d = D \u{2212} L \u{f7} 48".into(),
                format!(
                    "d = {} \u{2212} {} \u{f7} 48 = {}",
                    inp.num(large),
                    inp.num(found.length),
                    inp.show_to(small, 5, 4)
                ),
            ],
            &DEFINITION,
        ),
        StandardPin::Metric(_) => w.step(
            "Large end",
            &[
                "D = d + L \u{f7} 50".into(),
                format!(
                    "D = {} + {} \u{f7} 50 = {}",
                    inp.num(small),
                    inp.num(found.length),
                    inp.show_to(large, 5, 4)
                ),
            ],
            &DEFINITION,
        ),
    });
}

/// What a pin of this series does along its hole, at any length.
pub(super) fn seat_lines(inp: &Inputs, a: &mut Answer, series: TaperSeries) -> Result<(), Stop> {
    let proud: Length = inp.get("proud")?;
    a.line("squeeze", pin::squeeze(proud, series.taper()))
        .places(5, 4)
        .says(format!(
            "On the diameter, driven home from {} out, with parts that do not give.",
            rule_size(inp, proud, 4, 3)
        ));
    a.line(
        "per-thou",
        pin::travel(Length::from_thou(1.0), series.taper()),
    )
    .says("Along the hole. The pin sinks this much for each thou reamed out.");
    Ok(())
}

fn seat(inp: &Inputs, a: &mut Answer, found: &Found) -> Result<(), Stop> {
    let proud: Length = inp.get("proud")?;
    let series = found.pin.series();
    let squeeze = pin::squeeze(proud, series.taper());
    seat_lines(inp, a, series)?;
    if a.get("telling").is_none() {
        let over = pin::mismatch(found.length);
        a.line("telling", over)
            .places(5, 4)
            .says(match series {
                TaperSeries::Inch => "On the diameter. In a hole reamed 1:50 this pin binds at its large end and is loose by this much at its small end.",
                TaperSeries::Metric => "On the diameter. In a hole reamed 1:48 this pin binds at its small end and is loose by this much at its large end.",
            });
    }
    a.work(|w| {
        let per = series.per();
        w.step(
            "Interference when driven",
            &[
                format!("s = p \u{f7} {per}"),
                format!(
                    "s = {} \u{f7} {per} = {}",
                    inp.num(proud),
                    inp.show_to(squeeze, 5, 4)
                ),
            ],
            &SEAT,
        );
        w.step(
            "1:48 against 1:50",
            &[
                "e = L \u{f7} 48 \u{2212} L \u{f7} 50 = L \u{f7} 1200".into(),
                format!(
                    "e = {} \u{f7} 1200 = {}",
                    inp.num(found.length),
                    inp.show_to(pin::mismatch(found.length), 5, 4)
                ),
            ],
            &DEFINITION,
        );
    });
    Ok(())
}

fn strength(inp: &Inputs, a: &mut Answer, middle: Length) {
    let Some(stress) = inp.opt::<Stress>("stress") else {
        return;
    };
    a.line(
        "double-shear",
        pin::shear_force(middle, stress, pin::Shear::Double),
    )
    .says("Two planes, at the middle diameter: a pin right through hub and shaft.");
    a.line(
        "single-shear",
        pin::shear_force(middle, stress, pin::Shear::Single),
    )
    .says("One plane, at the middle diameter.");
    if let Some(shaft) = inp.opt::<Length>("shaft") {
        let torque = pin::cross_pin_torque(middle, shaft, stress);
        a.line("torque", torque).says(
            "Double shear at the surface of the shaft, middle diameter of the pin, no shock.",
        );
        a.work(|w| {
            let lines = [
                "T = \u{3c0} \u{f7} 4 \u{d7} d\u{b2} \u{d7} \u{3c4} \u{d7} shaft".into(),
                format!(
                    "d = {}, \u{3c4} = {}, shaft = {}: T = {}",
                    inp.show(middle),
                    inp.show(stress),
                    inp.show(shaft),
                    inp.show(torque)
                ),
            ];
            w.step("Torque in double shear", &lines, &STRENGTH);
        });
    }
    a.source(&STRENGTH);
    a.note("stronger-pin", "Before you fit a stronger pin", "A pin may be there to shear before something costlier breaks. Find out what it guards. The figures hold for steady load.");
}

/// What a torque puts on the pin, and the pin that it needs.
fn load(inp: &Inputs, a: &mut Answer, middle: Length) -> Result<(), Stop> {
    let Some(load) = inp.opt::<Torque>("load") else {
        return Ok(());
    };
    let shaft: Length = inp.get("shaft")?;
    let stress = pin::cross_pin_stress(load, middle, shaft).map_err(|f| at(inp, "load", f))?;
    a.line("load-stress", stress)
        .says("Double shear at the surface of the shaft, steady load.");
    a.source(&STRENGTH);
    let Some(allowed) = inp.opt::<Stress>("stress") else {
        return Ok(());
    };
    let needed = pin::cross_pin_diameter(load, shaft, allowed).map_err(|f| at(inp, "load", f))?;
    a.line("middle-needed", needed)
        .says("Of the pin, half way along, at the stress that you allow.");
    if stress > allowed * (1.0 + 1e-9) {
        a.stop("pin-overloaded", "Before you run it", format!("This torque puts {} on the pin, over the {} that you allow: it needs {} in the middle.", inp.show(stress), inp.show(allowed), inp.show(needed)));
    }
    Ok(())
}

/// From this share of the shaft on the hole is a caution, and from the other a stop (cross pin of a quarter to a third of the
/// shaft, common practice).
const THIRD: Share = Share::from_fraction(1.0 / 3.0);
const HALF: Share = Share::from_fraction(0.5);

fn weak_shaft(inp: &Inputs, a: &mut Answer, middle: Length) {
    let Some(shaft) = inp.opt::<Length>("shaft") else {
        return;
    };
    let share = Share::from_fraction(middle / shaft);
    // a last bit is no step past a limit
    let over = |limit: Share| share.fraction() > limit.fraction() * (1.0 + 1e-9);
    if over(HALF) {
        a.stop("shaft-cut-through", "Before you drill the shaft", format!("The hole takes {} of the shaft: too large, little of it is left to carry the load. Take a smaller pin: a quarter to a third of the shaft is usual.", inp.show(share)));
    } else if over(THIRD) {
        a.note("shaft-weak", "Before you drill the shaft", format!("The hole takes {} of the shaft, over the usual third: it leaves the shaft weak. Take a smaller pin where you can.", inp.show(share)));
    }
}

/// How a pin goes in and comes out.
pub(super) fn handling(inp: &Inputs, a: &mut Answer) {
    let proud = inp
        .opt::<Length>("proud")
        .map(|proud| rule_size(inp, proud, 4, 3))
        .unwrap_or_default();
    a.stop("ream-taper", "Before you ream", format!("Clamp hub and shaft together, ream both at once, and stop while the pin, pushed in by hand, still sticks out {proud}. Try it often. Reaming can\u{2019}t be undone."));
    a.note("drive-pin", "Before you drive the pin", "Slip it in from both sides: it is driven from the side that it enters more deeply. Mark the large end.");
    a.note("drive-out", "Before you drive a pin out", "Strike its small end only; the other way it wedges tighter. Where you can\u{2019}t tell the ends, measure both: the smaller one is struck.");
}

fn cautions(inp: &Inputs, a: &mut Answer, found: &Found, middle: Length) {
    weak_shaft(inp, a, middle);
    handling(inp, a);
    if !found.pin.is_usual(found.length) {
        let (least, most) = found.pin.usual_lengths();
        a.note(
            "order-pin",
            "Before you order",
            format!(
                "{} is usually sold from {} to {} long; this one is outside that.",
                found.pin.name(),
                inp.show_to(least, 2, 0),
                inp.show_to(most, 2, 0)
            ),
        );
    }
}
