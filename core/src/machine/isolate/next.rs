//! Which setting tells most when it is tried next? The one whose answer, well or bad, is most in doubt among what still fits.

use super::cause::{boths, singles};
use super::{Cause, Explanation, Finding, Gearbox, Mark, Settings, split};

/// A setting to try.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Trial {
    /// The setting, counted from 0.
    pub setting: usize,
    /// What its answer tells, bits: 1 is the most that well or bad can tell.
    pub tells: f64,
    /// Explanations left of those that fit now if it runs badly.
    pub left_if_bad: usize,
    /// Explanations left if it runs well.
    pub left_if_well: usize,
}

/// The settings not tried yet, the most telling first; those that tell nothing are left out.
pub fn next(gearbox: &Gearbox, marks: &[Mark], finding: &Finding) -> Vec<Trial> {
    let (bad, good) = split(marks);
    let fits = |touches: Settings| bad & !touches == 0 && touches & good == 0;
    let mut pool: Vec<(f64, Settings)> = singles(gearbox)
        .into_iter()
        .filter(|(_, touches, _)| fits(*touches))
        .map(|(cause, touches, _)| (cause.weight(), touches))
        .collect();
    if bad == 0 {
        pool.push((1.0, 0));
    } else {
        let alone = (0..gearbox.len()).map(|setting| {
            let cause = Cause::Alone(setting);
            (cause, cause.touches(gearbox))
        });
        let others = boths(gearbox).into_iter().chain(alone);
        pool.extend(
            others
                .filter(|(_, touches)| fits(*touches))
                .map(|(cause, touches)| (cause.weight(), touches)),
        );
        let sets = finding.exact.iter().filter(|one| one.causes.len() > 1);
        pool.extend(sets.map(|one| (1.0, one.bad)));
    }
    let whole: f64 = pool.iter().map(|(weight, _)| weight).sum();
    let left = |wanted: &dyn Fn(&Explanation) -> bool| {
        finding.exact.iter().filter(|one| wanted(one)).count()
    };
    let mut trials: Vec<Trial> = (0..gearbox.len())
        .filter(|setting| (bad | good) >> setting & 1 == 0)
        .map(|setting| {
            let hit = |touches: Settings| touches >> setting & 1 == 1;
            let share = pool
                .iter()
                .filter(|(_, touches)| hit(*touches))
                .fold(0.0, |sum, (weight, _)| sum + weight)
                / whole;
            Trial {
                setting,
                tells: doubt(share),
                left_if_bad: left(&|one| hit(one.bad)),
                left_if_well: left(&|one| !hit(one.bad)),
            }
        })
        .filter(|trial| trial.tells > 1e-9)
        .collect();
    // what differs only by the last digits of a sum is as telling
    crate::order::sort_by_key(&mut trials, |trial| {
        (-libm::round(trial.tells * 1e9) as i64, trial.setting)
    });
    trials
}

/// The setting not tried yet that would clear the most alternatives that no setting has tried, the slowest of equals; one
/// that a suspect is in clears nothing, so it is passed over. None where nothing is left to clear.
///
/// ```
/// use benchslate_core::machine::isolate::{Gearbox, Mark, explain, to_clear};
/// let gearbox = Gearbox::by_steps(&[(3, 2), (2, 1)]).unwrap();
/// let marks = [Mark::Noisy, Mark::Noisy, Mark::Well]; // the third alternative of the first stage is in none of them
/// assert_eq!(to_clear(&gearbox, &marks, &explain(&gearbox, &marks)), Some(4));
/// ```
pub fn to_clear(gearbox: &Gearbox, marks: &[Mark], finding: &Finding) -> Option<usize> {
    let (bad, good) = split(marks);
    let suspect = |setting: usize| {
        finding
            .suspects
            .iter()
            .any(|&(stage, at)| gearbox.using(stage, at) >> setting & 1 == 1)
    };
    let clears = |setting: usize| {
        let uses = |&&(stage, at): &&(usize, usize)| gearbox.using(stage, at) >> setting & 1 == 1;
        finding.untried.iter().filter(uses).count()
    };
    let open = (0..gearbox.len()).filter(|&at| (bad | good) >> at & 1 == 0 && !suspect(at));
    open.rev()
        .max_by_key(|&setting| clears(setting))
        .filter(|&setting| clears(setting) > 0)
}

/// How much an answer tells that is bad with this share, bits.
fn doubt(share: f64) -> f64 {
    let part = |p: f64| if p > 0.0 { -p * libm::log2(p) } else { 0.0 };
    part(share) + part(1.0 - share)
}
