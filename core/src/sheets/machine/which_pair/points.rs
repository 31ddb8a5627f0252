//! What do the marks point to, and why? The headline and its second line, for each kind of verdict.

use super::boxed::Boxed;
use super::say;
use crate::machine::isolate::{Cause, Explanation, Finding, Mark, Settings, Verdict, split};

/// The headline, and why.
pub fn points(boxed: &Boxed, marks: &[Mark], finding: &Finding) -> (String, String) {
    let (bad, good) = split(marks);
    let first = finding.exact.first();
    match finding.verdict {
        Verdict::Nothing => (
            "nothing yet".into(),
            "Nothing is marked. Try the settings below and tap how each runs.".into(),
        ),
        Verdict::AllWell => (
            "no fault found yet".into(),
            if finding.untried.is_empty() {
                "Every gear pair has run well in a setting. Look for what depends on load, speed or direction.".into()
            } else {
                "All that was tried runs well.".into()
            },
        ),
        Verdict::Common => common(boxed, finding, bad),
        Verdict::One => one(boxed, finding, bad, good),
        Verdict::Several => several(boxed, finding),
        Verdict::Combination => (
            first.map(|one| say::explanation(boxed, one)).unwrap_or_default(),
            "Each of them runs well elsewhere; bad only where both are in. Load or speed brings it out, or the two levers foul each other.".into(),
        ),
        Verdict::Alone => {
            let setting = bad.trailing_zeros() as usize;
            (
                format!("setting {} alone", setting + 1),
                format!(
                    "Each gear pair in it ({}) runs well elsewhere: a detent, end thrust on a lever or shaft, or a wrong mark. Try it again.",
                    say::levers(boxed, setting)
                ),
            )
        }
        Verdict::Contradiction => contradiction(boxed, finding),
    }
}

/// No setting runs well, and no one pair is in all of them.
fn common(boxed: &Boxed, finding: &Finding, bad: Settings) -> (String, String) {
    const WHERE: &str = "motor, belt, input, shafts that always turn, last gears, screw; or one stage as a whole, by its fork or shaft. Try another axis, which shares only part of it.";
    let tried = match bad.count_ones() {
        2 => "Both settings".to_owned(),
        n => format!("All {n} settings"),
    };
    match finding.doubles.as_slice() {
        [] => (
            "what all settings share".into(),
            format!("{tried} tried are bad, and no one or two gear pairs explain that: {WHERE}"),
        ),
        doubles => {
            let names: Vec<String> = doubles
                .iter()
                .map(|one| say::explanation(boxed, one))
                .collect();
            let two = match names.as_slice() {
                [] | [_, _, _, ..] => "two gear pairs at once".into(),
                few => few.join(", or "),
            };
            (
                format!("what all settings share, or {two}"),
                format!("{tried} tried are bad and no one gear pair is in all of them: {WHERE}"),
            )
        }
    }
}

fn one(boxed: &Boxed, finding: &Finding, bad: Settings, good: Settings) -> (String, String) {
    let Some(first) = finding.exact.first() else {
        return Default::default();
    };
    let name = say::explanation(boxed, first);
    let proven = first
        .causes
        .iter()
        .filter_map(alternative)
        .all(|own| finding.proven.contains(&own));
    let named = |own: &&(usize, usize)| {
        let (stage, at) = **own;
        !first.causes.contains(&Cause::Alternative { stage, at })
    };
    let open: Vec<String> = finding
        .suspects
        .iter()
        .chain(&finding.untried)
        .filter(named)
        .map(|&(stage, at)| say::place(stage, at))
        .collect();
    let headline = match (first.causes.len(), proven, open.len()) {
        (_, true, 0) => name,
        (_, true, 1..=3) => format!("{name}; {} not cleared yet", say::list(&open, "and")),
        (_, true, _) => format!("{name}; other pairs not cleared yet"),
        (1, ..) => format!("{name}, if only one gear pair is bad"),
        _ => format!("{name}, if no other gear pair is bad"),
    };
    (headline, why(boxed, first, bad, good))
}

/// Why this one explanation, and what touches the same settings.
fn why(boxed: &Boxed, one: &Explanation, bad: Settings, good: Settings) -> String {
    let many = bad.count_ones();
    let mut text = if one.causes.len() == 1 {
        let badly = match many {
            1 => "In the one setting that runs badly".to_owned(),
            2 => "In both settings that run badly".into(),
            n => format!("In all {n} settings that run badly"),
        };
        let well = match good.count_ones() {
            0 => "; none runs well yet".to_owned(),
            1 => " and not in the one that runs well".into(),
            n => format!(" and in none of the {n} that run well"),
        };
        format!(
            "{badly}{well}; no other single cause is. The gear pair, its dogs, its bearings, or a shaft that only it drives."
        )
    } else {
        format!(
            "Each of the {many} settings that run badly has one of them, and none that runs well; no single gear pair explains them all."
        )
    };
    for (stage, at) in one.causes.iter().filter_map(alternative) {
        let ways = boxed
            .stages
            .get(stage)
            .and_then(|own| own.gears.as_ref()?.get(at));
        if ways.is_some_and(|ways| ways.pairs().len() > 1) {
            text.push_str(" Its pairs are in series at one position of the lever: no setting tells them apart.");
        }
    }
    if !one.same.is_empty() {
        let same: Vec<String> = one.same.iter().map(|&own| say::cause(boxed, own)).collect();
        text.push_str(&format!(
            " Or {}: the gear that slides between them, its fork, or the shift that passes through. No setting tells these apart.",
            say::list(&same, "or")
        ));
    }
    text
}

const fn alternative(cause: &Cause) -> Option<(usize, usize)> {
    match *cause {
        Cause::Alternative { stage, at } => Some((stage, at)),
        _ => None,
    }
}

fn several(boxed: &Boxed, finding: &Finding) -> (String, String) {
    let mut says = "Each explains every mark. The next setting tells them apart.".to_owned();
    let part = |one: &Explanation| !one.same.is_empty();
    if let Some(one) = finding.exact.iter().find(|one| part(one)) {
        let same: Vec<String> = one.same.iter().map(|&own| say::cause(boxed, own)).collect();
        says.push_str(&format!(
            " Two next to each other may be one fault: {}.",
            say::list(&same, "or")
        ));
    }
    (say::several(boxed, &finding.exact, finding.count), says)
}

fn contradiction(boxed: &Boxed, finding: &Finding) -> (String, String) {
    const NONE: &str =
        "The marks contradict each other: no one gear pair, nor three together, explains them all.";
    match finding.near.first() {
        Some(near) => {
            let (which, are) = (say::settings(near.against), say::are(near.against));
            (
                format!("{}, if {which} {are} marked wrong", say::explanation(boxed, near)),
                format!("{NONE} Try {which} again."),
            )
        }
        None if finding.odd == 0 => (
            "four gear pairs or more, or none steady".into(),
            "No three gear pairs together explain the marks: look for what they share, a shaft, its bearings or the oil, before single gears.".into(),
        ),
        None => (
            "no steady cause".into(),
            format!("{NONE} Warm the machine up and try the bad settings again under one load: a gear is bad each time."),
        ),
    }
}
