//! How is the hole drilled and reamed, and with which of the drills owned?

use super::tail::Found;
use super::ways::rule_size;
use crate::calls;
use crate::pin::{self, SingleDrill, StandardPin, TaperSeries};
use crate::quantity::Length;
use crate::sheet::*;
use crate::standards::holes::drill_sets;
use crate::standards::holes::drills::Drill;

static DRILLS: Source = Source::read("U.S. Army TM 9-254", "Table 3-1, drills by pin and length");
static REAMERS: Source = Source::from_memory("ASME B94.2", "taper pin reamers");
static ARMY_REAMER: Source = Source::read(
    "U.S. Army Ordnance subcourse OD0017",
    "p. 71, taper pin reamers",
);
static STEPS: Source = Source::read(
    "ASME B18.8.2, appendix",
    "step drilling for the longest pins, by one secondary source",
);

/// The drill for one pass, the ranked drills and the steps.
pub(super) fn hole(
    inp: &Inputs,
    a: &mut Answer,
    found: &Found,
    large: Length,
    small: Length,
) -> Result<(), Stop> {
    let set = inp.choice("drills");
    let metric = found.pin.series() == TaperSeries::Metric;
    let best = pin::best_drills(large, small, drill_sets::each(set, metric), 1)
        .first()
        .copied();
    if let Some(best) = best {
        let place = drill_sets::place(set, metric);
        a.line("drill", best.drill.diameter).says(format!(
            "Drill {}: the nearest {place} that leaves {} or more for the reamer, where there is one.",
            best.drill.name(),
            inp.show(pin::LEAST_LEFT)
        ));
        a.line("left", best.left_small).signed().says("On the diameter, small end minus drill. Below zero the drill is the larger, and the reamer misses the small end.");
    }
    if inp.quiet() {
        return Ok(());
    }
    let table = a.table(
        "drills",
        "Drill for one pass",
        &["drill", "size", "left to ream"],
    );
    for row in candidates(metric, large, small, best) {
        let (drill, left) = (row.drill, row.left_small);
        table
            .row(vec![
                Value::words(drill.name()),
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
        let name =
            calls::drill::read(listed.drill).map_or_else(|_| listed.drill.to_owned(), Drill::name);
        table.note(format!("A U.S. Army table has drill {name} for this pin and length ({left} left). Its drills are at times over the small end."));
        a.source(&DRILLS);
    }
    steps(inp, a, found, (large, small))
}

/// The three best of all drills, the nearest of those that leave less, and the first that is owned.
fn candidates(
    metric: bool,
    large: Length,
    small: Length,
    best: Option<SingleDrill>,
) -> Vec<SingleDrill> {
    let all = || drill_sets::each(drill_sets::UNSAID, metric);
    let mut rows = pin::best_drills(large, small, all(), 3);
    let leaves_less = |drill: &&Drill| small - drill.diameter < pin::LEAST_LEFT;
    let closer = pin::best_drills(large, small, all().filter(leaves_less), 1);
    for one in [best.as_ref(), closer.first()].into_iter().flatten() {
        let same = |row: &SingleDrill| row.drill.diameter == one.drill.diameter;
        if !rows.iter().any(same) {
            rows.push(*one);
        }
    }
    let short = |row: &SingleDrill| row.left_small < pin::LEAST_LEFT;
    crate::order::sort_by(&mut rows, |a, b| {
        let near = a.left_small.abs().mm().total_cmp(&b.left_small.abs().mm());
        short(a).cmp(&short(b)).then(near)
    });
    rows
}

fn steps(
    inp: &Inputs,
    a: &mut Answer,
    found: &Found,
    (large, small): (Length, Length),
) -> Result<(), Stop> {
    let count = match inp.choice("plan") {
        "two" => 2,
        "three" => 3,
        "four" => 4,
        _ => return Ok(()),
    };
    let set = inp.choice("drills");
    let owned = drill_sets::drills(set, found.pin.series() == TaperSeries::Metric);
    let taper = found.pin.series().taper();
    let plan = pin::step_plan(large, found.length, taper, pin::LEAST_LEFT, &owned, count).map_err(
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
        &["drill", "size", "depth from the large end"],
    );
    for step in &plan {
        let depth = step.depth.map_or_else(
            || Value::words("through"),
            |depth| Value::of(depth).places(3, 1),
        );
        table
            .row(vec![
                Value::words(step.drill.name()),
                Value::of(step.drill.diameter),
                depth,
            ])
            .owned(drill_sets::holds(set, &step.drill));
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
                rule_size(inp, Length::from_inches(depth), 2, 1)
            )
        });
        note = format!(
            "{note} For the longest pins a standard list has {} through{second}{}.",
            inp.show(Length::from_inches(listed.through_in)),
            if listed.through_in > small.inches() {
                "; its first drill is over this small end"
            } else {
                ""
            }
        );
        a.source(&STEPS);
    }
    if let Some(table) = a.tables.last_mut() {
        table.note(note);
    }
    Ok(())
}

/// The reamer of this number, and whether it reaches.
pub(super) fn reamer(inp: &Inputs, a: &mut Answer, found: &Found, small: Length) {
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
                let reach = if reamer.number == "5/0" {
                    a.source(&ARMY_REAMER);
                    format!(
                        "{reach} A U.S. Army table has 0.0984 in for its large end: the two disagree."
                    )
                } else {
                    reach
                };
                let words = format!(
                    "No. {}, {} to {}, flutes {}",
                    reamer.number,
                    inp.num(reamer.small_end()),
                    inp.show(reamer.large_end()),
                    rule_size(inp, reamer.flutes(), 4, 1)
                );
                a.words("reamer", words).says(reach);
                a.source(&REAMERS);
            }
            None => {
                a.words("reamer", "no list at hand").says("The standard list of hand reamers ends at No. 10; we have no verified source above it.");
            }
        },
        StandardPin::Metric(row) => {
            a.words("reamer", format!("{} mm, 1:50", row.size)).says("A metric pin needs a 1:50 reamer; the inch ones are 1:48. We have no verified list of their lengths.");
        }
    }
}
