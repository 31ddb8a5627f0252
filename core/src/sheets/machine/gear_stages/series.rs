//! Which stages run through this plate? Ranked structures, each a tap away from marking its settings.

use super::{LIMITS, STRUCTURE, TRADE};
use crate::machine::isolate::MOST_SETTINGS;
use crate::machine::structure::{Group, Structure, common_ratio, group_range, steps, structures};
use crate::quantity::{Count, FeedPerRev, FeedRate, Number, Quantity, RotationalSpeed, Share};
use crate::sheet::*;

/// Past this a structure does not give the plate, as a share.
const MOST_OFF: f64 = 0.08;

/// A range so near the customary one counts as within it: 1.26 nine times is 8.004.
const ALIKE: f64 = 1.01;

pub fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    match (inp.choice("box"), inp.choice("feed-follows")) {
        ("speeds", _) => tell::<RotationalSpeed>(inp, "spindle-steps", 8.0),
        (_, "spindle") => tell::<FeedPerRev>(inp, "feed-steps-turn", 14.0),
        _ => tell::<FeedRate>(inp, "feed-steps", 14.0),
    }
}

fn tell<Q: Quantity>(inp: &Inputs, field: &'static str, most_range: f64) -> Result<Answer, Stop> {
    let mut plate: Vec<f64> = inp
        .list::<Q>(field)
        .into_iter()
        .map(Quantity::base)
        .collect();
    crate::order::sort_by(&mut plate, f64::total_cmp);
    if plate.len() > MOST_SETTINGS {
        let says = format!(
            "the plate has {} values; the search takes {MOST_SETTINGS}",
            plate.len()
        );
        return Err(Stop::fault(
            field,
            Reason::OutOfRange,
            says,
            "enter one range of the gearbox alone",
        ));
    }
    // a value twice: two settings that round to it
    let mut last = 0.0;
    for value in &mut plate {
        if *value <= last {
            *value = last * (1.0 + 1e-6);
        }
        last = *value;
    }
    let ratio = common_ratio(&plate).unwrap_or(1.0);
    let widest = |one: &Structure| {
        one.groups
            .iter()
            .map(|&group| group_range(group, ratio))
            .fold(1.0, f64::max)
    };
    let all = structures(&plate);
    let mut found: Vec<&Structure> = all.iter().filter(|one| one.off <= MOST_OFF).collect();
    // a stage beyond what is customary comes after those that keep to it
    crate::order::sort_by_key(&mut found, |one| widest(one) > most_range * ALIKE);
    let fitting = found.len();
    let Some(best) = found.first().copied() else {
        let miss = all.iter().map(|one| one.off).fold(f64::INFINITY, f64::min);
        let says = if miss.is_finite() {
            format!(
                "no stages in series give these values: the nearest miss one by {}%",
                libm::round(miss * 100.0)
            )
        } else {
            format!(
                "no stages of up to 12 positions and {MOST_SETTINGS} settings give {} values",
                plate.len()
            )
        };
        let cure = "look for a misread, missing or doubled value; a worn plate is read with \u{201c}Read a worn plate\u{201d}";
        return Err(Stop::fault(field, Reason::Conflict, says, cure));
    };
    let mut a = inp.answer();
    a.words("structure", in_words(&best.groups)).says(format!(
        "Written {}: positions of each stage, in brackets how many settings of the plate one position moves. The stages may stand in any order on the shafts.",
        name(&best.groups)
    ));
    a.line("plate-off", Share::from_fraction(best.off))
        .places(1, 1)
        .says("Of a plate value from the best products. Whole teeth explain 2 to 5%.");
    a.line("found", Count::of(fitting as f64))
        .says("Within 8% of each plate value, a dozen at most.");
    a.line("ratio", Number::of(ratio))
        .says("(most \u{f7} least) to the power 1/(n \u{2212} 1).");
    let inside = if widest(best) <= most_range * ALIKE {
        "within"
    } else {
        "over"
    };
    a.line("range", Number::of(widest(best)))
        .places(1, 1)
        .says(format!(
            "Fastest over slowest position: {inside} the customary {most_range}."
        ));
    if !inp.quiet() {
        table(inp, &mut a, field, &found, &widest);
    }
    working(inp, &mut a, best, ratio, plate.len());
    a.draw(|| chart(best));
    a.note(
        "structure-unsure",
        "Before you believe a layout",
        "The plate alone can't tell which lever is which: shift one lever by one position and see how many settings the plate goes. Cones and tumblers give one long stage.",
    );
    a.source(&STRUCTURE).source(&LIMITS).source(&TRADE);
    Ok(a)
}

/// As "3 × 2 positions, moving 1 and 3 settings".
fn in_words(groups: &[Group]) -> String {
    if let [one] = groups {
        return format!("one lever or cone of {} positions", one.pairs);
    }
    let list = |number: &dyn Fn(&Group) -> usize| -> Vec<String> {
        groups
            .iter()
            .map(|group| number(group).to_string())
            .collect()
    };
    let moves = list(&|group| group.spacing);
    let said = match moves.split_last() {
        Some((last, most)) => format!("{} and {last}", most.join(", ")),
        None => String::new(),
    };
    format!(
        "{} positions, moving {said} settings",
        list(&|group| group.pairs).join(" \u{d7} ")
    )
}

/// As `2(1) × 3(2)`.
fn name(groups: &[Group]) -> String {
    written(groups, " \u{d7} ", '(', ")")
}

/// The groups with these marks between, written without a text for each.
fn written(groups: &[Group], between: &str, open: char, close: &str) -> String {
    let mut text = String::with_capacity(groups.len().saturating_mul(9));
    for (index, group) in groups.iter().enumerate() {
        if index > 0 {
            text.push_str(between);
        }
        text.push_str(&group.pairs.to_string());
        text.push(open);
        text.push_str(&group.spacing.to_string());
        text.push_str(close);
    }
    text
}

fn table(
    inp: &Inputs,
    a: &mut Answer,
    field: &'static str,
    found: &[&Structure],
    widest: &dyn Fn(&Structure) -> f64,
) {
    let table = a.table(
        "structures",
        "Stages that give this plate",
        &[
            "stages",
            "settings",
            "repeat",
            "off the plate",
            "widest stage",
        ],
    );
    for (index, one) in found.iter().copied().enumerate() {
        let cells = vec![
            Value::words(name(&one.groups)),
            Value::of(Count::of(one.settings as f64)),
            Value::of(Count::of(one.doubled as f64)),
            Value::of(Share::from_fraction(one.off)).places(1, 1),
            Value::of(Number::of(widest(one))).places(1, 1),
        ];
        table.row(cells).chosen(index == 0).opens(
            "which-pair",
            vec![
                ("plate", inp.choice("box").into()),
                ("feed-follows", inp.typed("feed-follows").into()),
                (field, inp.typed(field).into()),
                ("stages", written(&one.groups, ";", '~', "")),
            ],
        );
    }
    table.note("Best fit first; within 2.5% all count alike, then fewest repeats. Past the customary range, and one stage alone, last. Tap one to mark how its settings run.");
}

fn working(inp: &Inputs, a: &mut Answer, best: &Structure, ratio: f64, count: usize) {
    a.work(|w| {
        let reach: Vec<String> = best.groups.iter().map(|group| format!("({} \u{2212} 1) \u{d7} {}", group.pairs, group.spacing)).collect();
        w.step(
            "Run through the plate",
            &[
                "n = 1 + \u{3a3} (p \u{2212} 1) c, and no stage moves further than the ones before it reach".into(),
                format!("n = 1 + {} = {count}", reach.join(" + ")),
            ],
            &STRUCTURE,
        );
        if let Some(wide) = best.groups.iter().max_by_key(|group| group.spacing * (group.pairs.saturating_sub(1))) {
            w.step(
                "Widest stage",
                &[
                    "R = \u{3c6}^(c (p \u{2212} 1))".into(),
                    format!(
                        "R = {}^({} \u{d7} {}) = {}",
                        inp.num_to(Number::of(ratio), 4, 4),
                        wide.spacing,
                        wide.pairs.saturating_sub(1),
                        inp.num_to(Number::of(group_range(*wide, ratio)), 2, 2)
                    ),
                ],
                &LIMITS,
            );
        }
        w.step(
            "Fit",
            &["each position's factor is the mean over the settings that use it; off = plate \u{f7} product \u{2212} 1".into()],
            &TRADE,
        );
    });
}

/// The speed chart: a line a shaft, a ray a position of a lever, settings of the plate upward.
fn chart(best: &Structure) -> Drawing {
    let mut d = Drawing::new(
        format!(
            "Speed chart of {}: one line per shaft, one ray per gear pair",
            name(&best.groups)
        ),
        false,
    );
    let high = steps(&best.groups).last().copied().unwrap_or(0) as f64;
    let (dx, dy) = (30.0, 80.0 / high.max(1.0));
    for shaft in 0..=best.groups.len() {
        let x = shaft as f64 * dx;
        d.path(Pen::Centre, false, &[pt(x, -4.0), pt(x, high * dy + 4.0)]);
    }
    for (at, group) in best.groups.iter().enumerate().rev() {
        let x = at as f64 * dx;
        let before = best.groups.get(..at).unwrap_or(&[]);
        let mut from = steps(before);
        from.dedup();
        for step in from {
            for place in 0..group.pairs {
                let (y, up) = (step as f64 * dy, (step + place * group.spacing) as f64 * dy);
                d.path(Pen::Object, false, &[pt(x, y), pt(x + dx, up)]);
            }
        }
        d.text(
            pt(x + dx / 2.0, -9.0),
            format!("{}({})", group.pairs, group.spacing),
        );
    }
    d
}
