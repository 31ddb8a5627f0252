//! Which causes explain all marks? The smallest sets that fit exactly, then those with a mark against them.

use super::cause::{boths, singles};
use super::{Cause, Gearbox, Mark, Settings, split};

/// The most causes together that are searched.
pub const MOST_CAUSES: usize = 3;
/// The most explanations that are kept.
pub const MOST_EXPLANATIONS: usize = 12;

/// A set of causes, and how it fits.
#[derive(Clone, PartialEq, Debug)]
pub struct Explanation {
    /// The causes together.
    pub causes: Vec<Cause>,
    /// Other causes that touch the same settings as the only one: no setting tells them apart.
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
    /// Every setting is tried and bad, or bad settings share no alternative and none runs well: the common train.
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
    /// Single causes that fit but for a few marks, best first.
    pub near: Vec<Explanation>,
    /// Alternatives with a setting that runs well.
    pub cleared: Vec<(usize, usize)>,
    /// Alternatives that were tried, never well.
    pub suspects: Vec<(usize, usize)>,
    /// Alternatives in no setting that was tried.
    pub untried: Vec<(usize, usize)>,
}

/// Explains the marks, a mark a setting; missing ones are untested.
///
/// ```
/// use benchslate_core::machine::isolate::{Cause, Gearbox, Mark, explain};
/// let gearbox = Gearbox::by_steps(&[(3, 3), (3, 1), (2, 9)]).unwrap();
/// let marks: Vec<Mark> = (0..18).map(|n| if n % 9 < 3 { Mark::Noisy } else { Mark::Well }).collect();
/// let found = explain(&gearbox, &marks);
/// assert_eq!(found.exact[0].causes, [Cause::Alternative { stage: 0, at: 0 }]); // blocks of three: the first of the stage with spacing 3
/// ```
pub fn explain(gearbox: &Gearbox, marks: &[Mark]) -> Finding {
    let (bad, good) = split(marks);
    let (bad, good) = (bad & gearbox.all(), good & gearbox.all());
    let tried = bad | good;
    let sort = |wanted: &dyn Fn(Settings) -> bool| -> Vec<(usize, usize)> {
        gearbox
            .alternatives()
            .filter(|&(stage, at)| wanted(gearbox.using(stage, at)))
            .collect()
    };
    let mut finding = Finding {
        verdict: Verdict::Nothing,
        exact: Vec::new(),
        count: 0,
        near: Vec::new(),
        cleared: sort(&|uses| uses & good != 0),
        suspects: sort(&|uses| uses & good == 0 && uses & bad != 0),
        untried: sort(&|uses| uses & tried == 0),
    };
    if bad == 0 {
        if good != 0 {
            finding.verdict = Verdict::AllWell;
        }
        return finding;
    }
    let pool = singles(gearbox);
    finding.exact = smallest(&pool, bad, good);
    finding.verdict = match finding.exact.as_slice() {
        [] => unpaired(gearbox, bad, good, &mut finding.exact),
        [only] if only.causes == [Cause::Common] => Verdict::Common,
        [_] => Verdict::One,
        _ => Verdict::Several,
    };
    finding.count = finding.exact.len();
    finding.exact.truncate(MOST_EXPLANATIONS);
    finding.near = near(&pool, bad, good);
    if !finding.exact.is_empty() {
        // where a pair fits, a shift that nearly does is no news
        finding
            .near
            .retain(|one| matches!(one.causes.as_slice(), [Cause::Alternative { .. }]));
    }
    finding
}

/// Fits: bad wherever badly marked, nowhere where well marked.
const fn fits(touches: Settings, bad: Settings, good: Settings) -> bool {
    bad & !touches == 0 && touches & good == 0
}

type Pool = [(Cause, Settings, Vec<Cause>)];

/// The exact sets of the fewest causes.
fn smallest(pool: &Pool, bad: Settings, good: Settings) -> Vec<Explanation> {
    let open: Vec<&(Cause, Settings, Vec<Cause>)> = pool
        .iter()
        .filter(|(_, touches, _)| touches & good == 0 && touches & bad != 0)
        .collect();
    let mut found: Vec<Explanation> = Vec::new();
    for size in 1..=MOST_CAUSES {
        let mut chosen = Vec::new();
        sets(&open, 0, size, 0, bad, &mut chosen, &mut found);
        if !found.is_empty() {
            break;
        }
    }
    // what a pair alone explains needs no shift beside it
    let all = found.clone();
    found.retain(|one| !all.iter().any(|other| simpler(other, one)));
    crate::order::sort_by(&mut found, |a, b| cost(a).total_cmp(&cost(b)));
    found
}

fn sets(
    open: &[&(Cause, Settings, Vec<Cause>)],
    from: usize,
    size: usize,
    have: Settings,
    bad: Settings,
    chosen: &mut Vec<usize>,
    found: &mut Vec<Explanation>,
) {
    for (index, (_, touches, _)) in open.iter().enumerate().skip(from) {
        let now = have | touches;
        chosen.push(index);
        if size > 1 {
            sets(open, index + 1, size - 1, now, bad, chosen, found);
        } else if bad & !now == 0 {
            let picked: Vec<_> = chosen.iter().filter_map(|&at| open.get(at)).collect();
            let same = match picked.as_slice() {
                [(_, _, same)] => same.clone(),
                _ => Vec::new(),
            };
            found.push(Explanation {
                causes: picked.iter().map(|(cause, ..)| *cause).collect(),
                same,
                bad: now,
                against: 0,
            });
        }
        chosen.pop();
    }
}

/// True where `other` is `one` with a shift, or the common train, put down to a single alternative of it.
fn simpler(other: &Explanation, one: &Explanation) -> bool {
    other.bad != one.bad
        && other.bad & !one.bad == 0
        && cost(other) < cost(one)
        && other.causes.len() == one.causes.len()
        && one.causes.iter().all(|cause| {
            !matches!(cause, Cause::Alternative { .. }) || other.causes.contains(cause)
        })
        && one
            .causes
            .iter()
            .any(|cause| matches!(cause, Cause::Neighbours { .. }))
}

fn cost(one: &Explanation) -> f64 {
    one.causes
        .iter()
        .map(|cause| 1.0 - libm::log2(cause.weight()))
        .sum()
}

/// No set of pairs explains it: one setting alone, or two pairs where both are in.
fn unpaired(
    gearbox: &Gearbox,
    bad: Settings,
    good: Settings,
    exact: &mut Vec<Explanation>,
) -> Verdict {
    let explanation = |cause: Cause, touches: Settings| Explanation {
        causes: vec![cause],
        same: Vec::new(),
        bad: touches,
        against: 0,
    };
    if bad.is_power_of_two() {
        let cause = Cause::Alone(bad.trailing_zeros() as usize);
        exact.push(explanation(cause, bad));
    }
    exact.extend(
        boths(gearbox)
            .into_iter()
            .filter(|&(_, touches)| fits(touches, bad, good))
            .map(|(cause, touches)| explanation(cause, touches)),
    );
    match (bad.count_ones(), exact.len()) {
        (_, 0) => Verdict::Contradiction,
        (1, _) => Verdict::Alone,
        _ => Verdict::Combination,
    }
}

/// Single causes with up to a third of the marks against them, that explain at least two bad marks.
fn near(pool: &Pool, bad: Settings, good: Settings) -> Vec<Explanation> {
    let marks = (bad | good).count_ones();
    let mut found: Vec<Explanation> = pool
        .iter()
        .map(|(cause, touches, same)| Explanation {
            causes: vec![*cause],
            same: same.clone(),
            bad: *touches,
            against: (bad & !touches) | (touches & good),
        })
        .filter(|one| {
            let against = one.against.count_ones();
            against > 0 && against * 3 <= marks && (one.bad & bad).count_ones() >= 2
        })
        .collect();
    crate::order::sort_by(&mut found, |a, b| {
        let key = |one: &Explanation| one.against.count_ones();
        key(a).cmp(&key(b)).then(cost(a).total_cmp(&cost(b)))
    });
    found.truncate(4);
    found
}
