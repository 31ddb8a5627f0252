//! What is said of every pin once it is known: its ends, its hole, its seat and its strength.

use super::draw;
use super::ways::at;
use crate::pin::{self, SingleDrill, StandardPin, TaperSeries};
use crate::quantity::{Length, Share, Stress};
use crate::sheet::*;
use crate::standards::drill_sets;
use crate::standards::drills::Drill;

static ASME: Source = Source::from_memory("ASME B18.8.2", "Table 1, taper pins");
static ISO: Source = Source::from_memory("ISO 2339", "taper pins, unhardened");
static LIMITS: Source = Source::read(
    "Shigley, Mechanical Engineering Design, 9th ed. (2011)",
    "Table 7-5, p. 390, and Eq. (7-35)",
);
static DRILLS: Source = Source::read("U.S. Army TM 9-254", "Table 3-1, drills by pin and length");
static SEAT: Source = Source::read("U.S. Army TM 9-254", "par. 3-1e, seating within 1/16 in");
static REAMERS: Source = Source::from_memory("ASME B94.2", "taper pin reamers");
static STEPS: Source = Source::read(
    "ASME B18.8.2, appendix",
    "step drilling for the longest pins, by one secondary source",
);
static STRENGTH: Source = Source::read(
    "Machinery's Handbook, 31st ed.",
    "Strength of Taper Pins, p. 227",
);
pub(super) static DEFINITION: Source =
    Source::computed("ASME B18.8.2 and ISO 2339", "taper on the diameter");

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
    reamer(inp, a, found, small);
    if found
        .hole_now
        .is_none_or(|now| now < small - pin::LEAST_LEFT)
        && inp.choice("from") != "gauge"
    {
        hole(inp, a, found, large, small)?;
    }
    seat(inp, a, found)?;
    strength(inp, a, (large + small) / 2.0);
    a.draw(|| draw::pin(inp, found.pin, found.length, large, small));
    cautions(inp, a, found);
    Ok(())
}

fn ends(inp: &Inputs, a: &mut Answer, found: &Found, large: Length, small: Length) {
    match found.pin {
        StandardPin::Inch(row) => {
            a.line("small-end", small).says(
                "Large end less length \u{f7} 48. Nominal size is the large end (inch series).",
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
            a.line("large-end", large).says(format!("{says}."));
            a.source(&LIMITS).source(&ASME);
        }
        StandardPin::Metric(row) => {
            a.line("large-end", large).says(
                "Small end plus length \u{f7} 50. Nominal size is the small end (metric series).",
            );
            let (least, most) = row.limits();
            let tolerance = crate::standards::taper_pins::metric_length_tolerance(found.length);
            a.line("small-end", small).says(format!(
                "Nominal, h10: {} to {}. The length holds \u{b1}{}.",
                inp.num(least),
                inp.num(most),
                inp.show(tolerance)
            ));
            a.source(&ISO);
        }
    }
    let middle = (large + small) / 2.0;
    a.line("middle", middle)
        .says("Half way along: the size that strength goes by.");
    if let Some(shaft) = inp.opt::<Length>("shaft") {
        a.line("share", Share::from_fraction(middle / shaft))
            .says("Common practice is about a quarter; check shear and the weakened shaft.");
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

fn hole(
    inp: &Inputs,
    a: &mut Answer,
    found: &Found,
    large: Length,
    small: Length,
) -> Result<(), Stop> {
    let set = inp.choice("drills");
    let owned = drill_sets::drills(set);
    let best = pin::single_drills(large, small, &owned).first().copied();
    if let Some(best) = best {
        a.line("drill", best.drill.diameter).says(format!("{}: the nearest of yours that leaves 0.001 in or more for the reamer, where there is one.", best.drill.name()));
        a.line("left", best.left_small).signed().says("On the diameter, small end less drill. Below zero the drill is the larger, and the reamer misses the small end.");
    }
    if inp.quiet() {
        return Ok(());
    }
    let table = a.table(
        "drills",
        "Drill for one pass",
        &["Drill", "size", "left to ream"],
    );
    for row in candidates(found.pin.series(), large, small, best) {
        let (drill, left) = (row.drill, row.left_small);
        table
            .row(vec![
                Value::words(drill.call()),
                Value::of(drill.diameter),
                Value::of(left).signed(),
            ])
            .owned(drill_sets::holds(set, &drill))
            .chosen(best.is_some_and(|b| b.drill == drill));
    }
    if let StandardPin::Inch(row) = found.pin
        && let Some(listed) = row.published_drill(found.length)
    {
        let left = inp.show_signed(small - Length::from_inches(listed.drill_in));
        table.note(format!("An Army list has {} for this pin and length ({left} left). Its drills are at times over the small end.", listed.drill));
        a.source(&DRILLS);
    }
    steps(inp, a, found, large, &owned)
}

/// The three best of all drills, the nearest of those that leave less, and the first that is owned.
fn candidates(
    series: TaperSeries,
    large: Length,
    small: Length,
    best: Option<SingleDrill>,
) -> Vec<SingleDrill> {
    let metric = series == TaperSeries::Metric;
    let all: Vec<Drill> = drill_sets::drills(if metric { "metric" } else { "all-inch" });
    let ranked = pin::single_drills(large, small, &all);
    let closer = ranked.iter().find(|row| row.left_small < pin::LEAST_LEFT);
    let mut rows: Vec<SingleDrill> = ranked.iter().take(3).copied().collect();
    for one in [best.as_ref(), closer].into_iter().flatten() {
        let same = |row: &SingleDrill| row.drill.diameter == one.drill.diameter;
        if !rows.iter().any(same) {
            rows.push(*one);
        }
    }
    let short = |row: &SingleDrill| row.left_small < pin::LEAST_LEFT;
    rows.sort_by(|a, b| {
        let near = a.left_small.abs().mm().total_cmp(&b.left_small.abs().mm());
        short(a).cmp(&short(b)).then(near)
    });
    rows
}

fn steps(
    inp: &Inputs,
    a: &mut Answer,
    found: &Found,
    large: Length,
    owned: &[Drill],
) -> Result<(), Stop> {
    let count = match inp.choice("plan") {
        "two" => 2,
        "three" => 3,
        "four" => 4,
        _ => return Ok(()),
    };
    let taper = found.pin.series().taper();
    let plan = pin::step_plan(large, found.length, taper, pin::LEAST_LEFT, owned, count).map_err(
        |_| {
            Stop::fault(
                "drills",
                Reason::NoSource,
                "no drill of this set goes through under the small end",
                "choose another set",
            )
        },
    )?;
    let table = a.table(
        "steps",
        "Step drilling",
        &["Drill", "size", "depth from the large end"],
    );
    for step in &plan {
        let depth = step.depth.map_or_else(
            || Value::words("through"),
            |depth| Value::of(depth).places(3, 1),
        );
        table
            .row(vec![
                Value::words(step.drill.call()),
                Value::of(step.drill.diameter),
                depth,
            ])
            .owned(true);
    }
    let mut note = String::from(
        "Depth to the full diameter, not to the point; 0.001 in or more is left all the way. Never deeper.",
    );
    if let StandardPin::Inch(row) = found.pin
        && let Some(listed) = row.step_drill()
    {
        let second = listed.second_in.map_or_else(String::new, |(drill, depth)| {
            format!(
                ", then {} to {} deep",
                inp.show(Length::from_inches(drill)),
                inp.show_to(Length::from_inches(depth), 2, 1)
            )
        });
        note = format!(
            "{note} For the longest pins a standard list has {} through{second}.",
            inp.show(Length::from_inches(listed.through_in))
        );
        a.source(&STEPS);
    }
    if let Some(table) = a.tables.last_mut() {
        table.note(note);
    }
    Ok(())
}

fn reamer(inp: &Inputs, a: &mut Answer, found: &Found, small: Length) {
    match found.pin {
        StandardPin::Inch(row) => match row.reamer() {
            Some(reamer) => {
                let reach = if small < reamer.small_end() {
                    let past = (reamer.small_end() - small) / found.pin.series().taper().ratio();
                    format!(
                        "The pin runs {} past the small end of this reamer: it needs a longer one.",
                        inp.show_to(past, 3, 1)
                    )
                } else {
                    "It reaches the small end of this pin.".to_owned()
                };
                let words = format!(
                    "No. {}, {} to {}, flutes {}",
                    reamer.number,
                    inp.num(reamer.small_end()),
                    inp.show(reamer.large_end()),
                    inp.show_to(reamer.flutes(), 4, 1)
                );
                a.words("reamer", words).says(reach);
                a.source(&REAMERS);
            }
            None => {
                a.words("reamer", "no list to hand").says("The standard list of hand reamers ends at No. 10; we have no verified source above it.");
            }
        },
        StandardPin::Metric(row) => {
            a.words("reamer", format!("{} mm, 1:50", row.size)).says("A metric pin needs a 1:50 reamer; the inch ones are 1:48. We have no verified list of their lengths.");
        }
    }
}

fn seat(inp: &Inputs, a: &mut Answer, found: &Found) -> Result<(), Stop> {
    let proud: Length = inp.get("proud")?;
    let series = found.pin.series();
    let squeeze = pin::squeeze(proud, series.taper());
    a.line("squeeze", squeeze).places(5, 4).says(format!(
        "On the diameter, from {} proud, with parts that do not give.",
        inp.show(proud)
    ));
    let per_thou = pin::travel(Length::from_thou(1.0), series.taper());
    a.line("per-thou", per_thou)
        .says("Along the hole. The pin sinks this much for each thou reamed out.");
    if a.get("telling").is_none() {
        let over = pin::mismatch(found.length);
        a.line("telling", over)
            .places(5, 4)
            .says("Slack on the diameter at one end if pin and reamer are of different series.");
    }
    a.work(|w| {
        let per = series.per();
        w.step(
            "Squeeze when driven home",
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
    a.note("Before you fit a stronger pin", "A pin may be there to shear before something dearer breaks. Find out what it guards. The figures hold for steady load.");
}

fn cautions(inp: &Inputs, a: &mut Answer, found: &Found) {
    let proud = inp
        .opt::<Length>("proud")
        .map(|proud| inp.show(proud))
        .unwrap_or_default();
    a.stop("Before you ream", format!("Clamp hub and shaft together, ream both at once, and stop while the pin still stands {proud} proud by hand. Try it often. Reaming can\u{2019}t be undone."));
    a.note("Before you drive the pin", "Slip it in from both sides: it is driven from the side that it enters more deeply. Mark the large end.");
    if !found.pin.is_usual(found.length) {
        let (least, most) = found.pin.usual_lengths();
        a.note(
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
