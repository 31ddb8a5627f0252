//! Setting by setting, and what gives a factor that all share.

use super::verdict::{is_common, is_mixed, is_single};
use super::{nearest, plate_name, plate_text, plate_unit, plural};
use crate::machine::{FeedCheck, look_at_plate};
use crate::quantity::{FeedRate, Number, Share};
use crate::sheet::*;

/// A setting so near the others reads as they do, whatever the measuring.
const LITTLE: f64 = 0.01;

/// What gives a common factor, and what it would be.
static CAUSES: &[(f64, &str)] = &[
    (50.0 / 60.0, "a motor for 60 Hz on 50 Hz"),
    (60.0 / 50.0, "a motor for 50 Hz on 60 Hz"),
    (
        1.0435,
        "a motor with no load: near 1800 rpm instead of 1725",
    ),
    (0.97, "a belt that slips, or a motor under load"),
    (
        0.5,
        "a two-speed motor on its low speed, or half the pulley",
    ),
    (2.0, "a two-speed motor on its high speed"),
    (1.016, "a metric screw read as inches (25.4 to 25)"),
    (
        1.0 / 1.016,
        "an inch screw read as millimeters (25 to 25.4)",
    ),
    (25.4, "inches taken for millimeters: look at the units"),
    (
        1.0 / 25.4,
        "millimeters taken for inches: look at the units",
    ),
];

/// Setting by setting; one that is off opens the search of the bad gear pair with it marked.
pub fn settings(a: &mut Answer, inp: &Inputs, check: &FeedCheck, steps: &[FeedRate]) {
    let plates: Vec<f64> = check
        .settings
        .iter()
        .map(|one| one.plate.in_per_min())
        .collect();
    let ratio = look_at_plate(&plates).map(|plate| plate.ratio);
    let columns = &[
        "plate",
        "true feed",
        "off",
        "explained",
        "left over",
        "reads as",
    ];
    let marks = marks(check, steps);
    let unit = plate_unit(inp);
    let places = if unit.id == "ipm" { 3 } else { 1 };
    let table = a.table("settings", "Setting by setting", columns);
    for one in &check.settings {
        let single = is_single(one, check);
        let text = plate_text(inp, one.plate);
        let decimals = text
            .split_once('.')
            .map_or(0, |(_, after)| after.len() as u8);
        // what the setting would feed with the common factor taken out, against the whole plate
        let alone = one.plate * (1.0 + one.off_common);
        let other =
            nearest(alone, steps).filter(|step| single && (alone / *step - 1.0).abs() <= 0.06);
        let reads = match ratio {
            _ if is_mixed(one) => "inches and mm mixed up?".into(),
            _ if other.is_some() => other.map_or_else(String::new, |step| {
                format!("the plate's {}", plate_name(inp, step))
            }),
            Some(ratio) if single => {
                let steps = libm::round(libm::log(1.0 + one.off_common) / libm::log(ratio)) as i32;
                match steps {
                    0 => "off".to_owned(),
                    n => format!(
                        "{} feed{} {}",
                        n.unsigned_abs(),
                        plural(n.unsigned_abs() as usize),
                        if n > 0 { "up" } else { "down" }
                    ),
                }
            }
            _ if single => "off".into(),
            _ if one.off_common.abs()
                > LITTLE.max(libm::hypot(one.expanded, check.common_measured)) =>
            {
                "whole teeth".into()
            }
            _ => "as the rest".into(),
        };
        let pct = |off: f64| Value::of(Share::from_fraction(off)).places(1, 1);
        let cells = vec![
            Value::of(one.plate)
                .units(unit, unit)
                .places(decimals, decimals),
            Value::of(one.feed).units(unit, unit).places(places, places),
            pct(one.off).signed(),
            pct(one.expanded),
            pct(one.off_common).signed(),
            Value::words(reads),
        ];
        let row = table.row(cells).chosen(single);
        if let Some(marks) = marks.as_ref().filter(|_| single) {
            row.opens(
                "which-pair",
                vec![
                    ("plate", "feeds".into()),
                    ("feed-follows", "own".into()),
                    ("feed-steps", inp.typed("feed-steps").into()),
                    ("marks", marks.clone()),
                ],
            );
        }
    }
    table.note("Off: against the plate. Explained: by measuring, twice the standard uncertainty, about 95%. Left over: when the common factor is taken out.");
}

/// The settings timed as marks of the box, counted from the slowest feed of the plate; none without the whole plate.
fn marks(check: &FeedCheck, steps: &[FeedRate]) -> Option<String> {
    let mut plate: Vec<FeedRate> = steps.to_vec();
    crate::order::sort_by(&mut plate, |a, b| a.in_per_min().total_cmp(&b.in_per_min()));
    if plate.is_empty() || plate.len() > crate::machine::isolate::MOST_SETTINGS {
        return None;
    }
    let place = |feed: FeedRate| {
        plate
            .iter()
            .position(|step| (feed / *step - 1.0).abs() < 0.005)
    };
    let all: Option<Vec<String>> = check
        .settings
        .iter()
        .map(|one| {
            let mark = if is_single(one, check) {
                "rate"
            } else {
                "well"
            };
            Some(format!("{}~{mark}", place(one.plate)? + 1))
        })
        .collect();
    Some(all?.join(";"))
}

/// What gives such a factor, where one is there to explain.
pub fn causes(a: &mut Answer, check: &FeedCheck) {
    if !is_common(check) {
        return;
    }
    let reach = 0.03 + check.common_expanded;
    let mut near: Vec<(f64, f64, &str)> = CAUSES
        .iter()
        .map(|(factor, words)| ((check.common / factor - 1.0).abs(), *factor, *words))
        .filter(|(off, ..)| *off <= reach)
        .collect();
    crate::order::sort_by(&mut near, |a, b| a.0.total_cmp(&b.0));
    let table = a.table(
        "causes",
        "What gives such a factor",
        &["cause", "factor", "off the one found"],
    );
    for (_, factor, words) in near {
        let off = Value::of(Share::from_fraction(check.common / factor - 1.0))
            .places(1, 1)
            .signed();
        table.row(vec![
            Value::words(words),
            Value::of(Number::of(factor)),
            off,
        ]);
    }
    let pulley = vec![
        Value::words("a pulley of another size than was meant, on motor or gearbox"),
        Value::of(Number::of(check.common)),
        Value::of(Share::from_fraction(0.0)).places(1, 1).signed(),
    ];
    table.row(pulley);
    table
        .note("Within 3%, nearest first; a pulley gives any factor. A place to look, not a proof.");
}
