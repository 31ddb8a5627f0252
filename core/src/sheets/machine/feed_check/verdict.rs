//! What do the timings say? First the settings that are off by themselves, then a factor that all share, else the plate holds.

use super::{plate_name, plate_text, plate_unit, share};
use crate::machine::{FeedCheck, Setting};
use crate::quantity::Share;
use crate::sheet::*;

/// Whole tooth numbers alone explain up to this share.
pub const TEETH: f64 = 0.05;

/// Off by more than measuring and whole tooth numbers explain.
pub fn is_single(one: &Setting, check: &FeedCheck) -> bool {
    check.settings.len() > 1
        && one.off_common.abs() > TEETH + libm::hypot(one.expanded, check.common_measured)
}

/// True where the factor that all settings share is more than measuring and whole tooth numbers explain.
pub fn is_common(check: &FeedCheck) -> bool {
    let off = (check.common - 1.0).abs();
    check.settings.len() > 1 && off > TEETH && off > check.common_expanded
}

/// Inches and millimeters taken for each other.
pub fn is_mixed(one: &Setting) -> bool {
    let near = |factor: f64| ((1.0 + one.off) / factor - 1.0).abs() <= 0.06;
    near(25.4) || near(1.0 / 25.4)
}

/// Which way the difference that all share goes.
pub fn way(check: &FeedCheck) -> &'static str {
    match (check.common - 1.0, check.settings.len() > 1) {
        (off, _) if off.abs() < 0.0005 => "It feeds what the plate says.",
        (off, true) if off > 0.0 => "Median of the settings: it feeds faster than the plate says.",
        (_, true) => "Median of the settings: it feeds slower than the plate says.",
        (off, false) if off > 0.0 => "It feeds faster than the plate says.",
        _ => "It feeds slower than the plate says.",
    }
}

fn slow_by(off: f64) -> String {
    let word = if off > 0.0 { "fast" } else { "slow" };
    format!("{word} by {}", share(Share::from_fraction(off.abs())))
}

/// The headline, and the next thing to look at.
pub fn verdict(inp: &Inputs, check: &FeedCheck) -> (String, String) {
    let singles: Vec<&Setting> = check
        .settings
        .iter()
        .filter(|one| is_single(one, check))
        .collect();
    if let [one] = check.settings.as_slice() {
        return alone(one);
    }
    if check.settings.len() == 2 && !singles.is_empty() {
        return (
            "the two settings disagree: time a third".into(),
            "It tells which of them is off.".into(),
        );
    }
    let all = slow_by(check.common - 1.0);
    match (singles.as_slice(), is_common(check)) {
        ([], false) => holds(check),
        ([], true) => (
            format!("all settings are {all}: look at motor and belt"),
            "Every setting by the same factor, so it lies before the gearbox: motor, belt, pulleys; or in the screw.".into(),
        ),
        ([one], _) if is_mixed(one) => (
            format!("one setting is off: {}; inches and mm mixed up?", plate_name(inp, one.plate)),
            "It is off by 25.4: look at the units of its plate and its travel before any gear.".into(),
        ),
        (many, _) if many.len() + 1 >= check.settings.len() && many.len() > 1 => (
            "no two settings agree: time them again".into(),
            "Each is off by another factor. Look at the watch, the travel and the plate first; a feed that is not the same each time slips.".into(),
        ),
        ([one], common) => {
            let name = plate_name(inp, one.plate);
            let how = slow_by(if common { one.off_common } else { one.off });
            if common {
                (
                    format!("one setting is off: {name}; the others are {all}"),
                    format!("It is {how} beside the others. Look at motor and belt for the others, then at the gears that only this setting uses."),
                )
            } else {
                (
                    format!("one setting is off: {name}, {how}"),
                    "The others hold. Look at the gears of that setting: a wrong gear, or a lever one position off. \u{201c}Find the bad gear pair\u{201d} tells which.".into(),
                )
            }
        }
        (many, common) => several(inp, many, common.then_some(all.as_str())),
    }
}

/// Several settings off, each by itself; the others by a factor where they share one.
fn several(inp: &Inputs, many: &[&Setting], all: Option<&str>) -> (String, String) {
    let names: Vec<String> = many.iter().map(|one| plate_text(inp, one.plate)).collect();
    let unit = plate_unit(inp).symbol;
    let list = match names.split_last() {
        Some((last, most)) => format!("{} and {last} {unit}", most.join(", ")),
        None => String::new(),
    };
    let first = many.first().map_or(0.0, |one| one.off_common);
    let alike = |one: &&&Setting| ((1.0 + one.off_common) / (1.0 + first) - 1.0).abs() <= TEETH;
    let together = many.iter().all(|one| alike(&one));
    let swapped = match many {
        [one, other] => {
            ((1.0 + one.off_common) * (1.0 + other.off_common) - 1.0).abs() <= 2.0 * TEETH
        }
        _ => false,
    };
    let how = if together {
        format!(", {}", slow_by(first))
    } else {
        String::new()
    };
    let rest = all.map_or_else(String::new, |all| format!("; the others are {all}"));
    let says = if together {
        "They are off by the same factor: look at what only they use, a gear pair of the gearbox or its back gear."
    } else if swapped {
        "Each feeds what the other should: two levers or labels are swapped."
    } else {
        "Look at what these settings have in common."
    };
    (
        format!("{} settings are off: {list}{how}{rest}", many.len()),
        format!("{says} \u{201c}Find the bad gear pair\u{201d} tells which gears."),
    )
}

fn alone(one: &Setting) -> (String, String) {
    let how = slow_by(one.off);
    if one.is_off() && one.off.abs() > TEETH + one.expanded {
        (
            format!("this setting is {how}: time two more"),
            "More than measuring and whole teeth explain. Whether all settings are tells gearbox from motor.".into(),
        )
    } else {
        (
            "this setting holds".into(),
            "No more off than measuring, or whole teeth (2 to 5%), explain. Time two more to speak for the plate.".into(),
        )
    }
}

fn holds(check: &FeedCheck) -> (String, String) {
    let worst = check
        .settings
        .iter()
        .map(|one| one.off.abs())
        .fold(0.0, f64::max);
    let within = share(Share::from_fraction(worst));
    let says = if check.settings.iter().any(Setting::is_off) {
        format!(
            "Every setting lies within {within} of the plate: no more than whole teeth (2 to 5%) and measuring explain."
        )
    } else {
        format!("Every setting lies within {within} of the plate: no more than measuring explains.")
    };
    ("the plate holds".into(), says)
}
