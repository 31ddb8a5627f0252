//! Which of the machine's own steps serves a wanted value? At or below it, nearest, and on both sides.

use crate::quantity::Quantity;

/// The steps around a wanted value.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Around<T> {
    /// The highest step at or below. Nothing where even the lowest step is above the wanted value.
    pub at_or_below: Option<T>,
    /// The nearest in ratio; of two as near the lower. For tool life this is not the choice: the next lower one is.
    pub nearest: T,
    /// The lowest step above.
    pub above: Option<T>,
}

/// One step with its place against the wanted value.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct RankedStep<T> {
    /// The step.
    pub step: T,
    /// Signed difference as a share of the wanted value: -0.1 is 10 % below.
    pub difference: f64,
}

/// A share by which a step may pass the wanted value and still count as at it: the rounding of two printed figures, no more.
const SAME: f64 = 1e-9;

fn usable<T: Quantity>(steps: &[T]) -> impl Iterator<Item = T> {
    steps
        .iter()
        .copied()
        .filter(|step| step.base() > 0.0 && step.base().is_finite())
}

/// The steps around a wanted value; nothing where there are no steps, or the wanted value is not more than 0.
///
/// ```
/// use benchslate_core::{machine::around, quantity::RotationalSpeed};
/// let steps = [90.0, 140.0, 210.0, 325.0, 500.0].map(RotationalSpeed::from_rpm);
/// let found = around(&steps, RotationalSpeed::from_rpm(320.0)).unwrap();
/// assert_eq!(found.at_or_below.unwrap().rpm(), 210.0); // between two gears the next lower serves tool life
/// assert_eq!(found.nearest.rpm(), 325.0);
/// ```
pub fn around<T: Quantity>(steps: &[T], wanted: T) -> Option<Around<T>> {
    let target = wanted.base();
    if !(target > 0.0 && target.is_finite()) {
        return None;
    }
    let below = |step: &T| step.base() <= target * (1.0 + SAME);
    let by_base = |a: &T, b: &T| a.base().total_cmp(&b.base());
    let at_or_below = usable(steps).filter(below).max_by(by_base);
    let above = usable(steps).filter(|step| !below(step)).min_by(by_base);
    let nearest = match (at_or_below, above) {
        (Some(low), Some(high)) if target * target > low.base() * high.base() * (1.0 + SAME) => {
            high
        }
        (Some(low), _) => low,
        (None, Some(high)) => high,
        (None, None) => return None,
    };
    Some(Around {
        at_or_below,
        nearest,
        above,
    })
}

/// Up to `count` steps around a wanted value, the best for tool life first: at or below from the highest down, then above from
/// the lowest up, each side taking turns.
pub fn ranked<T: Quantity>(steps: &[T], wanted: T, count: usize) -> Vec<RankedStep<T>> {
    let target = wanted.base();
    if !(target > 0.0 && target.is_finite()) {
        return Vec::new();
    }
    let mut all: Vec<T> = usable(steps).collect();
    crate::order::sort_by(&mut all, |a, b| a.base().total_cmp(&b.base()));
    all.dedup_by(|a, b| a.base() == b.base());
    let split = all.partition_point(|step| step.base() <= target * (1.0 + SAME));
    let mut low = all.iter().take(split).rev();
    let mut high = all.iter().skip(split);
    let mut out: Vec<&T> = Vec::new();
    loop {
        let before = out.len();
        out.extend(low.next());
        out.extend(high.next());
        if out.len() == before || out.len() >= count {
            break;
        }
    }
    out.truncate(count);
    out.into_iter()
        .map(|step| RankedStep {
            step: *step,
            difference: step.base() / target - 1.0,
        })
        .collect()
}
