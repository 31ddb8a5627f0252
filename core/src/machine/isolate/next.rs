//! Which setting is to be tried next? Those of the plan of fewest settings, then what tells the explanations apart, then what clears
//! the pairs that are still in doubt.

use super::known::Known;
use super::{Cause, Explanation, Finding, Gearbox, Mark, Plan, Settings, Verdict, complete, split};

/// A setting to try.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Trial {
    /// The setting, counted from 0.
    pub setting: usize,
    /// What its answer tells of the explanations that fit, bits: 1 is the most that well or bad can tell.
    pub tells: f64,
    /// Explanations left of those that fit now if it runs badly.
    pub left_if_bad: usize,
    /// Explanations left if it runs well.
    pub left_if_well: usize,
    /// Alternatives that it clears if it runs well.
    pub clears: usize,
    /// True for the one that goes on with the plan of fewest settings.
    pub planned: bool,
}

/// What to try next.
#[derive(Clone, PartialEq, Debug)]
pub struct Next {
    /// The settings not tried yet whose answer can change what is known, the one to try first.
    pub trials: Vec<Trial>,
    /// What is left of the fewest settings that tell any single bad pair; none where no single one explains the marks.
    pub plan: Plan,
}

/// The settings not tried yet whose answer can change what is known, the one to try next first; none where the others only
/// repeat it.
///
/// ```
/// use benchslate_core::machine::isolate::{Gearbox, Mark, explain, next};
/// let gearbox = Gearbox::by_steps(&[(3, 2), (2, 1)]).unwrap();
/// let marks = [Mark::Noisy, Mark::Noisy, Mark::Well]; // the third alternative of the first stage is in none of them
/// assert_eq!(next(&gearbox, &marks, &explain(&gearbox, &marks)).trials[0].setting, 4); // it is in this one
/// ```
pub fn next(gearbox: &Gearbox, marks: &[Mark], finding: &Finding) -> Next {
    let (bad, good) = split(marks);
    let known = Known::new(gearbox, bad, good);
    let pool: Vec<&Explanation> = finding.exact.iter().chain(&finding.doubles).collect();
    let tried = bad | good;
    let open: Settings = (0..gearbox.len())
        .filter(|&at| tried >> at & 1 == 0 && (known.in_doubt(at) || differ(&pool, at)))
        .fold(0, |set, at| set | 1 << at);
    let plan = left_of_plan(gearbox, finding, tried);
    let planned = plan.settings.iter().copied().find(|at| open >> at & 1 == 1);
    let left = |wanted: &dyn Fn(&Explanation) -> bool| {
        finding.exact.iter().filter(|one| wanted(one)).count()
    };
    let mut trials: Vec<Trial> = (0..gearbox.len())
        .filter(|at| open >> at & 1 == 1)
        .map(|setting| {
            let hit = |one: &Explanation| one.bad >> setting & 1 == 1;
            let hits = pool.iter().filter(|one| hit(one)).count();
            Trial {
                setting,
                tells: doubt(hits as f64 / pool.len().max(1) as f64),
                left_if_bad: left(&hit),
                left_if_well: left(&|one| !hit(one)),
                clears: known.untold(setting).count_ones() as usize,
                planned: planned == Some(setting),
            }
        })
        .collect();
    // where one explanation is left, first what clears most beside it, then what proves it with the least in doubt
    let lead = pool.first().map_or(0, |one| one.bad);
    crate::order::sort_by_key(&mut trials, |trial| {
        let beside = lead >> trial.setting & 1 == 0;
        let clears = i64::try_from(trial.clears).unwrap_or(0);
        (
            !trial.planned,
            -libm::round(trial.tells * 1e9) as i64,
            !beside,
            if beside { -clears } else { clears },
            trial.setting,
        )
    });
    Next { trials, plan }
}

/// Explanations say different things of this setting, or a bad pair of pairs can be confirmed in it.
fn differ(pool: &[&Explanation], setting: usize) -> bool {
    let mut hits = pool.iter().map(|one| one.bad >> setting & 1 == 1);
    let first = hits.next();
    let confirms = || {
        pool.iter().any(|one| {
            matches!(one.causes.as_slice(), [Cause::Both { .. }]) && one.bad >> setting & 1 == 1
        })
    };
    first.is_some_and(|first| hits.any(|hit| hit != first)) || confirms()
}

/// What is left of the plan, as long as at most one bad pair explains the marks.
fn left_of_plan(gearbox: &Gearbox, finding: &Finding, tried: Settings) -> Plan {
    let single = match finding.verdict {
        Verdict::Nothing | Verdict::AllWell => true,
        Verdict::One | Verdict::Several => finding.exact.iter().all(|one| one.causes.len() == 1),
        _ => false,
    };
    if single {
        complete(gearbox, tried)
    } else {
        Plan {
            settings: Vec::new(),
            fewest: false,
        }
    }
}

/// How much an answer tells that is bad with this share, bits.
fn doubt(share: f64) -> f64 {
    let part = |p: f64| if p > 0.0 { -p * libm::log2(p) } else { 0.0 };
    part(share) + part(1.0 - share)
}
