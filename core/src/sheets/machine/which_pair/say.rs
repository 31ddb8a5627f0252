//! How are settings, positions and causes called? In letters and numbers that stand on the grid.

use super::boxed::{Boxed, position};
use crate::machine::isolate::{Cause, Explanation, Mark, Settings};

/// "A2", a position of a lever.
pub fn place(stage: usize, at: usize) -> String {
    position(stage, at)
}

/// "A2 (27/27)", with its gears where known.
pub fn gear(boxed: &Boxed, stage: usize, at: usize) -> String {
    let name = place(stage, at);
    match ways(boxed, stage, at) {
        Some(gears) => format!("{name} ({gears})"),
        None => name,
    }
}

/// The gears of a position, where known.
pub fn ways(boxed: &Boxed, stage: usize, at: usize) -> Option<String> {
    Some(boxed.stages.get(stage)?.gears.as_ref()?.get(at)?.name())
}

/// "A1 B2 C1".
pub fn levers(boxed: &Boxed, setting: usize) -> String {
    let levers = boxed.gearbox.levers(setting).iter().enumerate();
    join(
        &levers
            .map(|(stage, &at)| place(stage, at))
            .collect::<Vec<_>>(),
        " ",
    )
}

/// "setting 5, A1 B2 C1, 3.00 in/min".
pub fn setting(boxed: &Boxed, at: usize) -> String {
    let mut text = format!("setting {}, {}", at + 1, levers(boxed, at));
    if let Some(value) = boxed.plate.get(at) {
        text.push_str(&format!(", {value} {}", boxed.unit));
    }
    text
}

/// What a cause is.
pub fn cause(boxed: &Boxed, cause: Cause) -> String {
    match cause {
        Cause::Common => "what all settings share".into(),
        Cause::Alternative { stage, at } => gear(boxed, stage, at),
        Cause::Neighbours { stage, low } => format!(
            "what {} and {} share",
            place(stage, low),
            place(stage, low + 1)
        ),
        Cause::Both { first, second } => {
            format!(
                "{} with {}, only both together",
                place(first.0, first.1),
                place(second.0, second.1)
            )
        }
        Cause::Alone(at) => format!("setting {} alone", at + 1),
    }
}

/// What an explanation is: its causes together.
pub fn explanation(boxed: &Boxed, one: &Explanation) -> String {
    let names: Vec<String> = one.causes.iter().map(|&own| cause(boxed, own)).collect();
    join(&names, " and ")
}

/// Explanations that fit alike: "A1, B1 or C1"; what all of them have is named once: "C1, with A2 or B3".
pub fn several(boxed: &Boxed, all: &[Explanation], count: usize) -> String {
    const MOST: usize = 6;
    let more = |shown: usize| match count.saturating_sub(shown) {
        0 => String::new(),
        1 => ", or one more".to_owned(),
        more => format!(", or one of {more} more"),
    };
    let first = all.first().map_or(&[][..], |one| one.causes.as_slice());
    let held = |cause: &Cause| all.iter().all(|one| one.causes.contains(cause));
    let in_all: Vec<Cause> = first.iter().copied().filter(held).collect();
    let rest: Vec<Vec<String>> = all
        .iter()
        .take(MOST)
        .map(|one| {
            let own = one.causes.iter().filter(|cause| !in_all.contains(cause));
            own.map(|&own| cause(boxed, own)).collect()
        })
        .collect();
    if !in_all.is_empty() && rest.iter().all(|own| own.len() == 1) && count <= all.len() {
        let names: Vec<String> = in_all.iter().map(|&own| cause(boxed, own)).collect();
        let others: Vec<String> = rest.into_iter().flatten().collect();
        return format!(
            "{}, with {}{}",
            names.join(" and "),
            list(&others, "or"),
            more(others.len())
        );
    }
    let names: Vec<String> = all
        .iter()
        .take(MOST)
        .map(|one| explanation(boxed, one))
        .collect();
    format!("{}{}", list(&names, "or"), more(names.len()))
}

/// "is" of one setting, "are" of several.
pub const fn are(set: Settings) -> &'static str {
    if set.is_power_of_two() { "is" } else { "are" }
}

/// "setting 3", "settings 3, 5 and 9".
pub fn settings(set: Settings) -> String {
    let numbers: Vec<String> = (0..64)
        .filter(|bit| set >> bit & 1 == 1)
        .map(|bit: usize| (bit + 1).to_string())
        .collect();
    let word = if numbers.len() == 1 {
        "setting"
    } else {
        "settings"
    };
    format!("{word} {}", list(&numbers, "and"))
}

/// "a, b and c".
pub fn list(names: &[String], word: &str) -> String {
    match names {
        [] => "none".into(),
        [one] => one.clone(),
        [most @ .., last] => format!("{} {word} {last}", join(most, ", ")),
    }
}

fn join(names: &[String], between: &str) -> String {
    names.join(between)
}

/// A sentence's first letter.
pub fn capital(text: &str) -> String {
    let mut chars = text.chars();
    chars.next().map_or_else(String::new, |first| {
        std::iter::once(first.to_ascii_uppercase())
            .chain(chars)
            .collect()
    })
}

/// A mark in the grid: bad ones in capitals, so that their pattern is seen on screen and on paper.
pub const fn short(mark: Mark) -> &'static str {
    match mark {
        Mark::Untested => "not tried",
        Mark::Well => "well",
        Mark::Slow => "SLOW",
        Mark::NoMesh => "WON'T GO IN",
        Mark::JumpsOut => "JUMPS OUT",
        Mark::Noisy => "NOISY",
        Mark::WrongRate => "WRONG FEED",
    }
}

/// Where to look first for this kind of mark.
pub const fn look(mark: Mark) -> &'static str {
    match mark {
        Mark::Slow | Mark::NoMesh => {
            "tooth ends or dogs burred, the fork or shift rod short of its position, a gear tight on its shaft"
        }
        Mark::JumpsOut => {
            "detent and its spring, dogs or tooth ends worn to a slope, end play of the shaft or the fork"
        }
        Mark::Noisy => "tooth flanks, a chip between teeth, the bearings of that shaft",
        Mark::WrongRate => {
            "a gear of another tooth count, a sheared key or pin, a lever that stands one position off"
        }
        Mark::Untested | Mark::Well => "",
    }
}
