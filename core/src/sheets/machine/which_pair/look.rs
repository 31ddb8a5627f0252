//! Where is one to look first? By the kinds of marks where the cause says bad, each kind for itself.

use super::boxed::Boxed;
use super::say;
use crate::machine::isolate::{
    Cause, Finding, Mark, Settings, Verdict, explain, is_hunting, meets_again,
};
use crate::sheet::*;

pub fn look(a: &mut Answer, boxed: &Boxed, marks: &[Mark], finding: &Finding) {
    let loose = finding.verdict == Verdict::Contradiction && finding.near.is_empty();
    let kinds = kinds(marks, finding);
    let (text, says) = match kinds.as_slice() {
        [] => return,
        _ if loose => (
            "what is not the same each time: a loose key or gear, a lever short of its position, cold oil, load, a slipping belt".to_owned(),
            "Marks that contradict each other point to no gear.".to_owned(),
        ),
        [(kind, _)] => (
            say::look(*kind).to_owned(),
            format!("What usually makes a setting \u{201c}{}\u{201d}. {}", kind.words(), sound(boxed, finding, *kind)),
        ),
        several => (
            by_place(several),
            apart(boxed, marks, several),
        ),
    };
    a.words("look", text).says(says);
}

/// Where to look for each kind of mark, those of one place together.
fn by_place(kinds: &[(Mark, Settings)]) -> String {
    let mut places: Vec<(&str, Vec<String>)> = Vec::new();
    for (kind, set) in kinds {
        let name = format!("{} ({})", kind.words(), say::settings(*set));
        let place = say::look(*kind);
        match places.iter_mut().find(|(own, _)| *own == place) {
            Some((_, names)) => names.push(name),
            None => places.push((place, vec![name])),
        }
    }
    let said: Vec<String> = places
        .iter()
        .map(|(place, names)| format!("{}: {place}", say::list(names, "or")))
        .collect();
    said.join("; ")
}

/// The kinds of marks where the first explanation says bad, and in which settings, the commonest first.
fn kinds(marks: &[Mark], finding: &Finding) -> Vec<(Mark, Settings)> {
    let first = finding.exact.first().or(finding.near.first());
    let inside = |at: usize| first.is_none_or(|one| one.bad >> at & 1 == 1);
    let mut found: Vec<(Mark, Settings)> = Mark::ALL
        .into_iter()
        .filter(|mark| mark.is_bad())
        .map(|kind| {
            let own = marks
                .iter()
                .enumerate()
                .filter(|&(at, mark)| *mark == kind && inside(at));
            (kind, own.fold(0, |set, (at, _)| set | 1 << at))
        })
        .filter(|(_, set)| *set != 0)
        .collect();
    crate::order::sort_by_key(&mut found, |(_, set)| core::cmp::Reverse(set.count_ones()));
    found
}

/// Whether each kind of mark by itself points to a gear pair of its own.
fn apart(boxed: &Boxed, marks: &[Mark], kinds: &[(Mark, Settings)]) -> String {
    let mut text = "Marks of more than one kind: one bad gear pair may give several, or each kind has its own.".to_owned();
    let lone = |kind: Mark| {
        let own: Vec<Mark> = marks
            .iter()
            .map(|mark| {
                if mark.is_bad() && *mark != kind {
                    Mark::Untested
                } else {
                    *mark
                }
            })
            .collect();
        let found = explain(&boxed.gearbox, &own);
        match (found.verdict, found.exact.as_slice()) {
            (Verdict::One, [one]) => match one.causes.as_slice() {
                [cause] => Some(*cause),
                _ => None,
            },
            _ => None,
        }
    };
    let causes: Option<Vec<Cause>> = kinds.iter().map(|(kind, _)| lone(*kind)).collect();
    let Some(causes) = causes.filter(|all| all.iter().any(|one| Some(one) != all.first())) else {
        return text;
    };
    let said: Vec<String> = kinds
        .iter()
        .zip(&causes)
        .map(|((kind, _), cause)| {
            format!(
                "\u{201c}{}\u{201d} to {}",
                kind.words(),
                say::cause(boxed, *cause)
            )
        })
        .collect();
    text.push_str(&format!(" Each by itself: {}.", say::list(&said, "and")));
    text
}

/// How the pair that is meant sounds, where its teeth are known.
fn sound(boxed: &Boxed, finding: &Finding, kind: Mark) -> String {
    let pair = finding
        .exact
        .first()
        .and_then(|one| match one.causes.as_slice() {
            [Cause::Alternative { stage, at }] => {
                let gears = boxed.stages.get(*stage)?.gears.as_ref()?;
                gears.get(*at)?.pairs().first().copied()
            }
            _ => None,
        });
    let Some((pair, (first, _))) =
        pair.and_then(|pair| Some((pair, meets_again(pair.driver, pair.driven)?)))
    else {
        return match kind {
            Mark::Noisy => "A bump once a turn is one tooth, a steady growl the whole gear.".into(),
            _ => String::new(),
        };
    };
    let hunts = if is_hunting(pair.driver, pair.driven) {
        ", so that every tooth meets every other"
    } else {
        ""
    };
    let turns = if first == 1 {
        "every turn".into()
    } else {
        format!("every {first} turns")
    };
    format!("In {pair} the same two teeth meet {turns} of the driver{hunts}.")
}
