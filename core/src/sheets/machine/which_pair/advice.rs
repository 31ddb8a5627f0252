//! What is to be tried next, and what does it tell?

use super::boxed::Boxed;
use super::say;
use crate::machine::isolate::{Cause, Finding, Gearbox, Next, Settings, Trial, Verdict};
use crate::quantity::Count;
use crate::sheet::*;

pub fn try_next(a: &mut Answer, boxed: &Boxed, finding: &Finding, next: &Next) {
    let (text, says) = advice(boxed, finding, next);
    a.words("next", text).says(says);
}

fn advice(boxed: &Boxed, finding: &Finding, next: &Next) -> (String, String) {
    let first = next.trials.first();
    match (finding.verdict, first) {
        (Verdict::Nothing, _) => fewest(next),
        (Verdict::Contradiction, _) if finding.near.is_empty() && finding.odd == 0 => {
            plain(boxed, finding, next)
        }
        (Verdict::Contradiction, _) => {
            let again = finding
                .near
                .first()
                .map_or(finding.odd, |near| near.against);
            (
                format!("{} again", say::settings(again)),
                "A mark that stands alone is tried twice, under the same load.".into(),
            )
        }
        (Verdict::Alone, _) => {
            let again = finding.exact.first().map_or(0, |one| one.bad);
            let then = first.map_or_else(String::new, |trial| {
                format!(
                    " If it is bad again, go on with {}.",
                    say::setting(boxed, trial.setting)
                )
            });
            (
                format!("{} again", say::settings(again)),
                format!("A mark that stands alone is tried twice.{then}"),
            )
        }
        _ => plain(boxed, finding, next),
    }
}

/// The plan before anything is tried.
fn fewest(next: &Next) -> (String, String) {
    let numbers = numbers(&next.plan.settings);
    let says = format!(
        "These {} tell any single bad gear pair; {}.",
        numbers.len(),
        if next.plan.fewest {
            "fewer can't"
        } else {
            "fewer may do, the search stopped at its bound"
        }
    );
    (format!("settings {}", say::list(&numbers, "and")), says)
}

fn numbers(settings: &[usize]) -> Vec<String> {
    settings.iter().map(|at| (at + 1).to_string()).collect()
}

fn plain(boxed: &Boxed, finding: &Finding, next: &Next) -> (String, String) {
    let Some(trial) = next.trials.first() else {
        return ("no setting tells more".into(), end(finding).into());
    };
    let says = if trial.planned {
        let rest: Vec<usize> = next
            .plan
            .settings
            .iter()
            .copied()
            .filter(|at| *at != trial.setting)
            .collect();
        match numbers(&rest).as_slice() {
            [] => "The last of those that tell any single bad gear pair.".to_owned(),
            [one] => format!("Then setting {one}: with it they tell any single bad gear pair."),
            more => format!(
                "Then settings {}: with these they tell any single bad gear pair.",
                say::list(more, "and")
            ),
        }
    } else if finding.verdict == Verdict::Common {
        if finding.doubles.is_empty() {
            "Enough is tried to look at what all settings share. One that runs well would still change that.".into()
        } else {
            "If it runs well, it is not what all settings share.".into()
        }
    } else if finding.count > 1 {
        format!(
            "If it runs badly {} of {} explanations are left, if well {}.",
            trial.left_if_bad, finding.count, trial.left_if_well
        )
    } else {
        sure(boxed, finding, trial)
    };
    (say::setting(boxed, trial.setting), says)
}

/// One explanation is left: what one more setting is good for.
fn sure(boxed: &Boxed, finding: &Finding, trial: &Trial) -> String {
    let clears = say::list(&clears(boxed, finding, trial.setting), "and");
    match (finding.exact.first(), trial.left_if_well > 0) {
        (None, _) => format!("If it runs well, it clears {clears}."),
        (Some(_), true) => format!(
            "Before you open the gearbox: if it runs well it clears {clears} too. A second bad gear pair may hide behind the first."
        ),
        (Some(one), false) if matches!(one.causes.as_slice(), [Cause::Both { .. }]) => {
            "To be sure: it runs badly if this is right.".into()
        }
        (Some(_), false) => {
            format!("To be sure: badly if this is right; if it runs well, it clears {clears}.")
        }
    }
}

/// Why no setting tells more.
fn end(finding: &Finding) -> &'static str {
    match finding.verdict {
        Verdict::AllWell => {
            "Every gear pair has run well. Try again under load, cold and warm, both ways."
        }
        Verdict::Common => "Every setting is tried, and none runs well.",
        _ if finding.is_whole()
            && finding
                .exact
                .iter()
                .all(|one| !matches!(one.causes.as_slice(), [Cause::Both { .. }])) =>
        {
            "Every other gear pair is cleared."
        }
        _ => "Every setting that could tell more is tried.",
    }
}

/// The gear pairs that a setting clears where it runs well.
fn clears(boxed: &Boxed, finding: &Finding, setting: usize) -> Vec<String> {
    let levers = boxed.gearbox.levers(setting).iter().enumerate();
    levers
        .filter(|&(stage, &at)| {
            !finding.cleared.contains(&(stage, at)) && moves(&boxed.gearbox, stage)
        })
        .map(|(stage, &at)| say::place(stage, at))
        .collect()
}

fn moves(gearbox: &Gearbox, stage: usize) -> bool {
    gearbox.stages().get(stage).is_some_and(|&count| count > 1)
}

pub fn table(a: &mut Answer, boxed: &Boxed, finding: &Finding, next: &Next) {
    if next.trials.is_empty() || finding.verdict == Verdict::Nothing {
        return;
    }
    let left = |count: usize| match finding.count {
        0 => Value::words("\u{2013}"),
        _ => Value::of(Count::of(count as f64)),
    };
    let table = a.table(
        "trials",
        "What to try next",
        &[
            "setting",
            "levers",
            "clears if it runs well",
            "causes left if bad",
            "causes left if well",
        ],
    );
    for (index, trial) in next.trials.iter().take(6).enumerate() {
        let value = boxed
            .plate
            .get(trial.setting)
            .map_or_else(String::new, |value| format!(", {value} {}", boxed.unit));
        let cells = vec![
            Value::words(format!("{}{value}", trial.setting + 1)),
            Value::words(say::levers(boxed, trial.setting)),
            Value::words(say::list(&clears(boxed, finding, trial.setting), "and")),
            left(trial.left_if_bad),
            left(trial.left_if_well),
        ];
        table.row(cells).chosen(index == 0);
    }
    table.note("The first is the one to try. Left: how many explanations still fit after it runs badly or well; 0, another gear pair would be bad too.");
}

/// Settings of a set, or "none".
pub fn none(set: Settings) -> String {
    if set == 0 {
        "none".to_owned()
    } else {
        say::settings(set)
    }
}
