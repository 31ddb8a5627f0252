//! Which causes explain all marks? The smallest sets that fit exactly, then those with a mark against them.

use super::cause::{boths, parts, shared};
use super::known::Known;
use super::{Cause, Gearbox, Mark, Settings, split};

/// The most causes together that are searched.
pub const MOST_CAUSES: usize = 3;
/// The most explanations that are kept.
pub const MOST_EXPLANATIONS: usize = 24;

/// A set of causes, and how it fits.
#[derive(Clone, PartialEq, Debug)]
pub struct Explanation {
    /// The causes together.
    pub causes: Vec<Cause>,
    /// Other parts that touch the same settings: no setting tells them apart.
    pub same: Vec<Cause>,
    /// The settings that would run badly.
    pub bad: Settings,
    /// Marked settings that speak against it: well where it says bad, bad where it says well.
    pub against: Settings,
}

/// What the marks say in all.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Verdict {
    /// Nothing is marked.
    Nothing,
    /// All that was tried runs well.
    AllWell,
    /// No setting runs well and no alternative is in all of them: what all settings share, or several alternatives at once.
    Common,
    /// One cause, or one smallest set, explains all marks.
    One,
    /// Several explain all marks alike.
    Several,
    /// No pair explains the marks, two pairs together do.
    Combination,
    /// One setting is bad, and each pair in it runs well elsewhere.
    Alone,
    /// Nothing explains all marks.
    Contradiction,
}

/// What the marks say of the box.
#[derive(Clone, PartialEq, Debug)]
pub struct Finding {
    /// In all.
    pub verdict: Verdict,
    /// Explanations that fit exactly and need the fewest causes, likeliest first.
    pub exact: Vec<Explanation>,
    /// How many fit exactly with that number of causes.
    pub count: usize,
    /// Beside what all settings share: two alternatives at once that explain all marks.
    pub doubles: Vec<Explanation>,
    /// Single causes that fit but for a few marks, best first.
    pub near: Vec<Explanation>,
    /// Alternatives with a setting that runs well.
    pub cleared: Vec<(usize, usize)>,
    /// Alternatives that are bad whatever else is: all beside it in some bad setting is cleared.
    pub proven: Vec<(usize, usize)>,
    /// Alternatives that were tried, never well.
    pub suspects: Vec<(usize, usize)>,
    /// Alternatives in no setting that was tried.
    pub untried: Vec<(usize, usize)>,
    /// Settings that run badly though all in them runs well elsewhere.
    pub odd: Settings,
}

impl Finding {
    /// True where every alternative is cleared or proven bad.
    pub fn is_whole(&self) -> bool {
        self.untried.is_empty() && self.suspects.len() == self.proven.len()
    }
}

/// Explains the marks, a mark a setting; missing ones are untested.
///
/// ```
/// use benchslate_core::machine::isolate::{Cause, Gearbox, Mark, explain};
/// let gearbox = Gearbox::by_steps(&[(3, 3), (3, 1), (2, 9)]).unwrap();
/// let marks: Vec<Mark> = (0..18).map(|n| if n % 9 < 3 { Mark::Noisy } else { Mark::Well }).collect();
/// let found = explain(&gearbox, &marks);
/// assert_eq!(found.exact[0].causes, [Cause::Alternative { stage: 0, at: 0 }]); // blocks of three: the first of the stage with spacing 3
/// assert!(found.is_whole() && found.proven == [(0, 0)]);
/// ```
pub fn explain(gearbox: &Gearbox, marks: &[Mark]) -> Finding {
    let (bad, good) = split(marks);
    let (bad, good) = (bad & gearbox.all(), good & gearbox.all());
    let known = Known::new(gearbox, bad, good);
    let mut finding = sorted(gearbox, &known, bad, good);
    if bad == 0 {
        if good != 0 {
            finding.verdict = Verdict::AllWell;
        }
        return finding;
    }
    let pool = parts(gearbox);
    let mut found = smallest(&pool, bad, good);
    let alone = found.first().is_some_and(|one| one.causes.len() == 1);
    if good == 0 {
        // nothing runs well: what all settings share explains it too, and by itself
        let common = explanation(vec![Cause::Common], gearbox.all());
        if !alone {
            finding.doubles = core::mem::take(&mut found);
            finding
                .doubles
                .retain(|one| one.causes.len() == 2 && one.bad != gearbox.all());
        }
        found.push(common);
    }
    finding.exact = found;
    finding.verdict = match finding.exact.as_slice() {
        [] if known.odd == 0 => Verdict::Contradiction,
        [] => unpaired(gearbox, bad, good, &mut finding.exact),
        [only] if only.causes == [Cause::Common] => Verdict::Common,
        [_] => Verdict::One,
        _ => Verdict::Several,
    };
    finding.count = finding.exact.len();
    finding.exact.truncate(MOST_EXPLANATIONS);
    finding.near = near(&pool, gearbox.all(), bad, good);
    if !finding.exact.is_empty() {
        // where something fits, a train that all share nearly fits is no news
        let pair = |one: &Explanation| matches!(one.causes.as_slice(), [Cause::Alternative { .. }]);
        finding.near.retain(pair);
    }
    finding
}

/// The alternatives by what is known of each.
fn sorted(gearbox: &Gearbox, known: &Known, bad: Settings, good: Settings) -> Finding {
    let sort = |wanted: &dyn Fn(Settings) -> bool| -> Vec<(usize, usize)> {
        gearbox
            .alternatives()
            .filter(|&(stage, at)| wanted(gearbox.using(stage, at)))
            .collect()
    };
    let proven = known.proven().filter_map(|cause| match cause {
        Cause::Alternative { stage, at } => Some((stage, at)),
        _ => None,
    });
    Finding {
        verdict: Verdict::Nothing,
        exact: Vec::new(),
        count: 0,
        doubles: Vec::new(),
        near: Vec::new(),
        cleared: sort(&|uses| uses & good != 0),
        proven: proven.collect(),
        suspects: sort(&|uses| uses & good == 0 && uses & bad != 0),
        untried: sort(&|uses| uses & (bad | good) == 0),
        odd: known.odd,
    }
}

fn explanation(causes: Vec<Cause>, bad: Settings) -> Explanation {
    Explanation {
        same: shared(&causes),
        causes,
        bad,
        against: 0,
    }
}

/// Fits: bad wherever badly marked, nowhere where well marked.
const fn fits(touches: Settings, bad: Settings, good: Settings) -> bool {
    bad & !touches == 0 && touches & good == 0
}

type Pool = [(Cause, Settings)];

/// The exact sets of the fewest alternatives, those that one shared part explains as well first.
fn smallest(pool: &Pool, bad: Settings, good: Settings) -> Vec<Explanation> {
    let open: Vec<(Cause, Settings)> = pool
        .iter()
        .filter(|(_, touches)| touches & good == 0 && touches & bad != 0)
        .copied()
        .collect();
    let mut found: Vec<Explanation> = Vec::new();
    for size in 1..=MOST_CAUSES {
        sets(&open, size, 0, bad, &mut Vec::new(), &mut found);
        if !found.is_empty() {
            break;
        }
    }
    crate::order::sort_by_key(&mut found, |one| one.same.is_empty());
    found
}

fn sets(
    open: &Pool,
    size: usize,
    have: Settings,
    bad: Settings,
    chosen: &mut Vec<Cause>,
    found: &mut Vec<Explanation>,
) {
    let mut rest = open;
    while let Some(((cause, touches), after)) = rest.split_first() {
        rest = after;
        let now = have | touches;
        chosen.push(*cause);
        if size > 1 {
            sets(after, size - 1, now, bad, chosen, found);
        } else if bad & !now == 0 {
            found.push(explanation(chosen.clone(), now));
        }
        chosen.pop();
    }
}

/// No set of pairs explains it: one setting alone, or two pairs where both are in.
fn unpaired(
    gearbox: &Gearbox,
    bad: Settings,
    good: Settings,
    exact: &mut Vec<Explanation>,
) -> Verdict {
    if bad.is_power_of_two() {
        let cause = Cause::Alone(bad.trailing_zeros() as usize);
        exact.push(explanation(vec![cause], bad));
    }
    exact.extend(
        boths(gearbox)
            .into_iter()
            .filter(|&(_, touches)| fits(touches, bad, good))
            .map(|(cause, touches)| explanation(vec![cause], touches)),
    );
    match (bad.count_ones(), exact.len()) {
        (_, 0) => Verdict::Contradiction,
        (1, _) => Verdict::Alone,
        _ => Verdict::Combination,
    }
}

/// Single causes with up to a third of the marks against them, that explain at least two bad marks.
fn near(pool: &Pool, all: Settings, bad: Settings, good: Settings) -> Vec<Explanation> {
    let marks = (bad | good).count_ones();
    let mut found: Vec<Explanation> = pool
        .iter()
        .chain([&(Cause::Common, all)])
        .map(|(cause, touches)| Explanation {
            against: (bad & !touches) | (touches & good),
            ..explanation(vec![*cause], *touches)
        })
        .filter(|one| {
            let against = one.against.count_ones();
            against > 0 && against * 3 <= marks && (one.bad & bad).count_ones() >= 2
        })
        .collect();
    crate::order::sort_by_key(&mut found, |one| {
        (one.against.count_ones(), one.causes == [Cause::Common])
    });
    found.truncate(4);
    found
}
