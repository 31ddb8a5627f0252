//! What do the marks say? The cause, where to look, what to try next, and how that was reasoned.

use super::boxed::{Boxed, marks, read};
use super::draw::draw;
use super::grid::grid;
use super::say;
use crate::machine::isolate::{
    Cause, Explanation, Finding, Mark, Settings, Trial, Verdict, explain, is_hunting, meets_again,
    next, plan, split, to_clear,
};
use crate::quantity::{Count, Share};
use crate::sheet::*;

static LOGIC: Source = Source::computed(
    "Fault location in a product of stages: a complete search over the settings",
    "problem class of Colbourn, Fan and Horsley, Disjoint spread systems and fault location",
);
static TRADE: Source = Source::practice("Finding a bad gear by the settings that use it");
static STRUCTURE: Source = Source::from_memory(
    "Acherkan, Machine Tool Design",
    "structural formula z = p1(1) p2(p1) p3(p1 p2)",
);

pub fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let boxed = read(inp)?;
    let marks = marks(inp, &boxed.gearbox)?;
    let finding = explain(&boxed.gearbox, &marks);
    let trials = next(&boxed.gearbox, &marks, &finding);
    let mut a = inp.answer();
    let (points, says) = points(&boxed, &marks, &finding);
    a.words("cause", points).says(says);
    if let Some(kind) = kind(&marks, &finding) {
        a.words("look", say::look(kind)).says(format!(
            "What usually makes a setting \u{201c}{}\u{201d}. {}",
            kind.words(),
            sound(&boxed, &finding)
        ));
    }
    try_next(&mut a, &boxed, &marks, &finding, &trials);
    let names = |places: &[(usize, usize)]| {
        let all: Vec<String> = places
            .iter()
            .map(|&(stage, at)| say::gear(&boxed, stage, at))
            .collect();
        say::list(&all, "and")
    };
    if finding.verdict != Verdict::Nothing {
        a.words("cleared", names(&finding.cleared))
            .says("A setting that uses it runs well.");
        let mut open = finding.suspects.clone();
        open.extend(&finding.untried);
        a.words("open", names(&open))
            .says(if finding.untried.is_empty() {
                "In no setting that runs well.".to_owned()
            } else {
                format!(
                    "In no setting that runs well; not tried at all: {}.",
                    names(&finding.untried)
                )
            });
    }
    if finding.count > 0 {
        a.line("left", Count::of(finding.count as f64))
            .says("Of the fewest causes; each explains every mark.");
    }
    let (settings, distinct) = (boxed.gearbox.len(), boxed.gearbox.distinct());
    a.line("settings", Count::of(settings as f64))
        .says(if distinct < settings {
            match settings - distinct {
                1 => format!("{distinct} speeds: one setting repeats another's."),
                more => format!("{distinct} speeds: {more} settings repeat another's."),
            }
        } else {
            "One choice of each lever, counted from the slowest.".to_owned()
        });
    if !inp.quiet() {
        grid(&mut a, &boxed, &marks);
        causes(&mut a, &boxed, &marks, &finding);
        trial_table(&mut a, &boxed, &finding, &trials);
    }
    working(inp, &mut a, &boxed, &marks, &finding, trials.first());
    a.draw(|| draw(&boxed, &finding));
    a.stop(
        "reach-in",
        "Before you shift or reach in",
        "Shift only as the plate says, most boxes with the gears stopped or nearly so. Cut the power at the wall before a cover comes off, and let all of it run out.",
    );
    a.note(
        "trust-mark",
        "Before you trust a mark",
        "Try every setting alike: warmed up, the same load, the same axis and direction. The search takes a bad part to be bad each time; one that is bad now and then is marked bad.",
    );
    a.source(&LOGIC).source(&TRADE);
    Ok(a)
}

/// What the marks point to, and why.
fn points(boxed: &Boxed, marks: &[Mark], finding: &Finding) -> (String, String) {
    let (bad, good) = split(marks);
    let named = |one: &Explanation| say::explanation(boxed, one);
    let first = finding.exact.first();
    match finding.verdict {
        Verdict::Nothing => ("nothing yet".into(), "Nothing is marked. Try the settings below and tap how each runs.".into()),
        Verdict::AllWell => (
            "nothing so far".into(),
            if finding.untried.is_empty() {
                "Every pair has run well in a setting. Look for what depends on load, speed or direction.".into()
            } else {
                "All that was tried runs well.".into()
            },
        ),
        Verdict::Common => (
            "what all settings share".into(),
            "Every setting tried is bad and no one pair is in all of them: motor, belt, input, shafts that always turn, last gears, screw; or one stage as a whole, by its fork or shaft. Try another axis, which shares only part of it.".into(),
        ),
        Verdict::One => (first.map(named).unwrap_or_default(), one_says(boxed, first, bad, good)),
        Verdict::Several => {
            let all: Vec<String> = finding.exact.iter().take(6).map(named).collect();
            let more = finding.count.saturating_sub(all.len());
            let more = if more > 0 { format!(", or one of {more} more") } else { String::new() };
            (format!("{}{more}", say::list(&all, "or")), "Each explains every mark. The next setting tells them apart.".into())
        }
        Verdict::Combination => (
            first.map(named).unwrap_or_default(),
            "Each of them runs well elsewhere; bad only where both are in. Load or speed brings it out, or the two levers foul each other.".into(),
        ),
        Verdict::Alone => {
            let setting = bad.trailing_zeros() as usize;
            (
                format!("setting {} alone", setting + 1),
                format!(
                    "Each pair in it ({}) runs well elsewhere: a detent, end thrust on a lever or shaft, or a wrong mark. Try it again.",
                    say::levers(boxed, setting)
                ),
            )
        }
        Verdict::Contradiction => contradiction(boxed, finding),
    }
}

fn contradiction(boxed: &Boxed, finding: &Finding) -> (String, String) {
    match finding.near.first() {
        Some(near) => (
            format!("{}, if {} is marked wrong", say::explanation(boxed, near), say::settings(near.against)),
            format!("The marks contradict each other: no cause, nor three together, explains them all. Try {} again.", say::settings(near.against)),
        ),
        None => (
            "no steady cause".into(),
            "The marks contradict each other: no cause, nor three together, explains them all. Warm the machine up and try the bad settings again under one load; what changes is not a gear.".into(),
        ),
    }
}

fn one_says(boxed: &Boxed, one: Option<&Explanation>, bad: Settings, good: Settings) -> String {
    let Some(one) = one else { return String::new() };
    let count = |n: u32, none: &str| match n {
        0 => none.to_owned(),
        1 => "the one setting".into(),
        2 => "both settings".into(),
        n => format!("all {n} settings"),
    };
    let mut text = format!(
        "In {} that run badly",
        count(bad.count_ones(), "no setting")
    )
    .replace("the one setting that run", "the one setting that runs");
    text.push_str(&match good.count_ones() {
        0 => "; none runs well yet".to_owned(),
        1 => " and not in the one that runs well".into(),
        n => format!(" and in none of the {n} that run well"),
    });
    text.push_str(match one.causes.as_slice() {
        [Cause::Neighbours { .. }] => ": the gear that slides between them, its fork, or the shift that passes through.",
        [Cause::Alternative { .. }] => "; no other single cause is. The pair, its dogs, its bearings, or a shaft that only it drives.",
        [_] => "; no other single cause is.",
        _ => " together; no single cause explains them.",
    });
    for (stage, at) in one.causes.iter().filter_map(alternative) {
        if boxed
            .stages
            .get(stage)
            .and_then(|own| own.gears.as_ref()?.get(at))
            .is_some_and(|ways| ways.pairs().len() > 1)
        {
            text.push_str(
                " Its pairs are in series at one place of the lever: no setting tells them apart.",
            );
        }
    }
    if !one.same.is_empty() {
        let same: Vec<String> = one.same.iter().map(|&own| say::cause(boxed, own)).collect();
        text.push_str(&format!(
            " No setting tells it from {}.",
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

/// The kind of mark that stands most often where the first explanation says bad.
fn kind(marks: &[Mark], finding: &Finding) -> Option<Mark> {
    let first = finding.exact.first().or(finding.near.first());
    let here = |kind: Mark| {
        let inside = |at: usize| first.is_none_or(|one| one.bad >> at & 1 == 1);
        marks
            .iter()
            .enumerate()
            .filter(|(at, mark)| **mark == kind && inside(*at))
            .count()
    };
    let bad = Mark::ALL.into_iter().filter(|mark| mark.is_bad());
    bad.rev()
        .max_by_key(|&kind| here(kind))
        .filter(|&kind| here(kind) > 0)
}

/// How the pair that is meant sounds, where its teeth are known.
fn sound(boxed: &Boxed, finding: &Finding) -> String {
    let pair = finding
        .exact
        .first()
        .filter(|one| one.causes.len() == 1)
        .and_then(|one| {
            let (stage, at) = alternative(one.causes.first()?)?;
            boxed
                .stages
                .get(stage)?
                .gears
                .as_ref()?
                .get(at)?
                .pairs()
                .first()
                .copied()
        });
    let Some((pair, (first, _))) =
        pair.and_then(|pair| Some((pair, meets_again(pair.driver, pair.driven)?)))
    else {
        return "A bump once a turn is one tooth, a steady growl the whole gear.".into();
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

fn try_next(a: &mut Answer, boxed: &Boxed, marks: &[Mark], finding: &Finding, trials: &[Trial]) {
    if matches!(finding.verdict, Verdict::Nothing) {
        let plan = plan(&boxed.gearbox);
        let numbers: Vec<String> = plan
            .settings
            .iter()
            .map(|at| (at + 1).to_string())
            .collect();
        let says = format!(
            "These {} tell any single bad pair; {}.",
            numbers.len(),
            if plan.fewest {
                "fewer can't"
            } else {
                "fewer may do, the search stopped at its bound"
            }
        );
        a.words("next", format!("settings {}", say::list(&numbers, "and")))
            .says(says);
        return;
    }
    let again = match finding.verdict {
        Verdict::Contradiction => finding.near.first().map(|near| near.against),
        Verdict::Alone => finding.exact.first().map(|one| one.bad),
        _ => None,
    };
    if let Some(again) = again {
        a.words("next", format!("{} again", say::settings(again)))
            .says("A mark that stands alone is tried twice.");
        return;
    }
    if let Some(trial) = trials.first() {
        let says = if finding.count > 1 {
            format!(
                "If it runs badly {} of {} explanations are left, if well {}.",
                trial.left_if_bad, finding.count, trial.left_if_well
            )
        } else if finding.exact.is_empty() {
            "It tells most of what has not been tried.".to_owned()
        } else {
            format!(
                "To be sure: it runs {} if this is right.",
                if trial.left_if_bad > 0 {
                    "badly"
                } else {
                    "well"
                }
            )
        };
        a.words("next", say::setting(boxed, trial.setting))
            .says(says);
    } else {
        let (next, says) = match to_clear(&boxed.gearbox, marks, finding) {
            Some(setting) => (
                say::setting(boxed, setting),
                "It tells no more of the cause, but tries a pair that no setting has tried.",
            ),
            None if finding.count == 1 => (
                "no setting tells more".into(),
                "Those not tried would only repeat what is known.",
            ),
            None => (
                "no setting tells more".into(),
                "What is left can't be told apart from outside.",
            ),
        };
        a.words("next", next).says(says);
    }
}

fn causes(a: &mut Answer, boxed: &Boxed, marks: &[Mark], finding: &Finding) {
    if finding.exact.is_empty() && finding.near.is_empty() {
        return;
    }
    let (bad, good) = split(marks);
    let all = (bad | good).count_ones();
    let table = a.table(
        "causes",
        "What explains the marks",
        &["cause", "marks explained", "against it"],
    );
    for (index, one) in finding.exact.iter().chain(&finding.near).enumerate() {
        let against = one.against.count_ones();
        let cells = vec![
            Value::words(say::capital(&say::explanation(boxed, one))),
            Value::words(format!("{} of {all}", all - against)),
            Value::words(if against == 0 {
                "none".into()
            } else {
                say::settings(one.against)
            }),
        ];
        table.row(cells).chosen(index == 0 && against == 0);
    }
    let more = finding.count.saturating_sub(finding.exact.len());
    table.note(if more > 0 {
        format!("And {more} more that fit. Fewest causes first.")
    } else {
        "Best fit first, then fewest causes.".to_owned()
    });
}

fn trial_table(a: &mut Answer, boxed: &Boxed, finding: &Finding, trials: &[Trial]) {
    if trials.is_empty() || finding.verdict == Verdict::Nothing {
        return;
    }
    let left = |count: usize| match finding.count {
        0 => Value::words("\u{2013}"),
        _ => Value::of(Count::of(count as f64)),
    };
    let table = a.table(
        "trials",
        "What to try next",
        &["setting", "levers", "tells", "left if bad", "left if well"],
    );
    for (index, trial) in trials.iter().take(6).enumerate() {
        let value = boxed
            .plate
            .get(trial.setting)
            .map_or_else(String::new, |value| format!(", {value} {}", boxed.unit));
        let cells = vec![
            Value::words(format!("{}{value}", trial.setting + 1)),
            Value::words(say::levers(boxed, trial.setting)),
            Value::of(Share::from_fraction(trial.tells)),
            left(trial.left_if_bad),
            left(trial.left_if_well),
        ];
        table.row(cells).chosen(index == 0);
    }
    table.note("Most telling first. 100 %: well or bad is an even chance, and either way half the doubt is gone.");
}

fn working(
    inp: &Inputs,
    a: &mut Answer,
    boxed: &Boxed,
    marks: &[Mark],
    finding: &Finding,
    trial: Option<&Trial>,
) {
    let (bad, good) = split(marks);
    a.work(|w| {
        let spacing: Vec<String> = boxed
            .stages
            .iter()
            .map(|stage| match (&stage.gears, stage.spacing) {
                (None, Some(steps)) => format!("{}({steps})", stage.places),
                _ => stage.places.to_string(),
            })
            .collect();
        let mut lines = vec![format!("z = {} = {} settings, slowest 1", spacing.join(" \u{d7} "), boxed.gearbox.len())];
        if let Some(off) = boxed.off {
            lines.push(format!("the plate lies off the products by {} at most", inp.show_to(Share::from_fraction(off), 1, 1)));
        }
        w.step("Settings of the box", &lines, &STRUCTURE);
        let none = |set: Settings| if set == 0 { "none".to_owned() } else { say::settings(set) };
        w.step(
            "What clears a pair",
            &[
                "cleared = in any setting that runs well; suspect = tried, never well".into(),
                format!("well: {}", none(good)),
                format!("bad: {}", none(bad)),
                format!("cleared {}, suspect {}, not tried {}", finding.cleared.len(), finding.suspects.len(), finding.untried.len()),
            ],
            &TRADE,
        );
        let mut lines = vec!["a cause explains the marks where it is in every bad setting and in none that runs well".to_owned()];
        lines.extend(finding.exact.iter().take(4).map(|one| format!("{}: touches {}", say::explanation(boxed, one), say::settings(one.bad))));
        if let Some(trial) = trial {
            lines.push(format!(
                "setting {}: \u{2212}p log2 p \u{2212} (1 \u{2212} p) log2 (1 \u{2212} p) = {} of what one trial can tell",
                trial.setting + 1,
                inp.show(Share::from_fraction(trial.tells))
            ));
        }
        w.step("What explains them", &lines, &LOGIC);
    });
}
