//! How much thread does a hole leave, and which drill leaves the thread that is wanted?

use super::ThreadCall;
use crate::quantity::{Length, Share};
use crate::standards::holes::drills::{self, Drill, DrillSeries};

/// How the tap makes the thread.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum TapKind {
    /// Cuts it: chips come out.
    Cut,
    /// Forms it: metal is pushed up, so the hole is larger.
    Form,
}

impl TapKind {
    /// What a full thread takes off the diameter, over the pitch: cut 3√3/4 (1.299, twice the depth 0.6495 P);
    /// form 0.68.
    pub const fn full(self) -> f64 {
        match self {
            Self::Cut => 1.299_038_105_676_658,
            Self::Form => 0.68,
        }
    }
}

/// Percent of thread that a hole leaves.
///
/// Cut: % = 100 (D − d) / (1.299 P), the basis of American charts (on 1.0825 P the figure is 1.2 times larger).
/// Form: % = 100 (D − d) / (0.68 P). D the basic major diameter, d the hole, P the pitch. Above 100 or below 0 the
/// hole is none for this thread; the figure is given as it is.
/// Source: Machinery's Handbook, 31st ed. (2020), p. 2155; form taps: makers' formula D − 0.0068 %/n.
///
/// ```
/// use benchslate_core::{calls, quantity::Length, thread::*};
/// // Machinery's Handbook, 31st ed., p. 2155, table 2: 2-56 with 0.0700 in leaves 69 %.
/// let thread = calls::thread::read("2-56").unwrap();
/// let share = percent_of_thread(thread, Length::from_inches(0.0700), TapKind::Cut);
/// assert!((share.percent() - 69.0).abs() < 0.5);
/// ```
pub fn percent_of_thread(thread: ThreadCall, hole: Length, tap: TapKind) -> Share {
    Share::from_fraction((thread.major - hole) / (thread.pitch.length() * tap.full()))
}

/// The hole that leaves a percent of thread; the inverse of [`percent_of_thread`].
///
/// ```
/// use benchslate_core::{calls, quantity::Share, thread::*};
/// // Tool catalogue, form taps, inch, p. 783: 1/4-20 at 75 % takes 0.2245 in.
/// let thread = calls::thread::read("1/4-20").unwrap();
/// let hole = hole_for(thread, Share::from_percent(75.0), TapKind::Form);
/// assert!((hole.inches() - 0.2245).abs() < 0.00005);
/// ```
pub fn hole_for(thread: ThreadCall, share: Share, tap: TapKind) -> Length {
    thread.major - thread.pitch.length() * (tap.full() * share.fraction())
}

/// A drill with the thread that it leaves.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct TapDrill {
    /// The drill.
    pub drill: Drill,
    /// Percent of thread.
    pub share: Share,
    /// Drill less the hole that was wanted.
    pub off: Length,
}

/// The one standard drill that leaves a thread nearest the wanted percent, metric or of the inch series: the first of [`rank`]
/// over all of them, found outward from the hole.
///
/// ```
/// use benchslate_core::{calls, quantity::Share, thread::*};
/// let thread = calls::thread::read("1/4-20").unwrap();
/// let pick = nearest_drill(thread, Share::from_percent(75.0), TapKind::Cut, false).unwrap();
/// assert_eq!(pick.drill.name(), "No. 7"); // the tap drill of every chart
/// ```
pub fn nearest_drill(
    thread: ThreadCall,
    wanted: Share,
    tap: TapKind,
    metric: bool,
) -> Option<TapDrill> {
    let hole = hole_for(thread, wanted, tap);
    let drills = drills::all();
    let at = drills.partition_point(|drill| drill.diameter < hole);
    let (below, above) = drills.split_at_checked(at)?;
    let mut best: Option<TapDrill> = None;
    let far = |one: &TapDrill| one.off.abs().mm();
    // false once no further drill on this side can be nearer
    let mut offer = |drill: &Drill| {
        let one = TapDrill {
            drill: *drill,
            share: percent_of_thread(thread, drill.diameter, tap),
            off: drill.diameter - hole,
        };
        let known = best.as_ref().map(|best| (far(best), best.drill.series));
        if known.is_some_and(|(nearest, _)| far(&one) > nearest) {
            return false;
        }
        if (drill.series == DrillSeries::Metric) == metric
            && one.share.fraction() > 0.0
            && one.share.fraction() <= 1.0
            && known.is_none_or(|known| (far(&one), drill.series) < known)
        {
            best = Some(one);
        }
        true
    };
    let _ = below.iter().rev().all(&mut offer);
    let _ = above.iter().all(&mut offer);
    best
}

/// The drills that leave a thread nearest the wanted percent, nearest first, at most so many. Drills that leave no
/// thread at all or more than a full one are left out.
pub fn rank(
    thread: ThreadCall,
    wanted: Share,
    tap: TapKind,
    owned: &[Drill],
    most: usize,
) -> Vec<TapDrill> {
    let hole = hole_for(thread, wanted, tap);
    let mut found: Vec<TapDrill> = owned
        .iter()
        .map(|drill| TapDrill {
            drill: *drill,
            share: percent_of_thread(thread, drill.diameter, tap),
            off: drill.diameter - hole,
        })
        .filter(|one| one.share.fraction() > 0.0 && one.share.fraction() <= 1.0)
        .collect();
    crate::order::sort_by(&mut found, |a, b| {
        let far = |one: &TapDrill| one.off.abs().mm();
        far(a)
            .total_cmp(&far(b))
            .then(a.drill.series.cmp(&b.drill.series))
    });
    found.truncate(most);
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_nearest_drill_is_the_first_of_the_ranked() {
        for &thread in ThreadCall::all() {
            let metric = thread.series.is_metric();
            let mut owned = drills::all().to_vec();
            owned.retain(|drill| (drill.series == DrillSeries::Metric) == metric);
            for tap in [TapKind::Cut, TapKind::Form] {
                for percent in [5.0, 50.0, 60.0, 75.0, 77.0, 100.0] {
                    let share = Share::from_percent(percent);
                    assert_eq!(
                        nearest_drill(thread, share, tap, metric),
                        rank(thread, share, tap, &owned, 1).first().copied(),
                        "{thread} {percent}"
                    );
                }
            }
        }
    }
}
