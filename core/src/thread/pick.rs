//! Which one drill is named before a tap: by the sheet, by the look-up and in every list?

use super::{
    Between, Limits, TapDrill, TapKind, ThreadCall, ThreadClass, hole_for, limits,
    percent_of_thread,
};
use crate::quantity::{Length, Share};
use crate::standards::holes::drill_sets;
use crate::standards::holes::drills::{self, Drill, DrillSeries};

/// Farther than this from the percent that is wanted, a drill of the set does not serve (common practice).
pub const NEAR_SHARE: Share = Share::from_fraction(0.12);

/// A last digit that is not held against a drill.
const NOISE: Length = Length::from_mm(0.001);

/// The minor diameter of the tapped hole in the class of the call, or in the usual one (2B, 6H); none where the standard
/// gives no limits.
pub fn minor_limits(thread: ThreadCall) -> Option<(Between, ThreadClass)> {
    let usual = if thread.series.is_metric() {
        ThreadClass::H6
    } else {
        ThreadClass::B2
    };
    let class = thread
        .class
        .filter(|class| class.is_internal())
        .unwrap_or(usual);
    match limits(thread, class) {
        Ok(Limits::Internal { minor, .. }) => Some((minor, class)),
        _ => None,
    }
}

/// Where a hole lies against the limits of the minor diameter.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Bore {
    /// Within them.
    Within,
    /// Under the smallest by so much.
    Under(Length),
    /// Over the largest by so much.
    Over(Length),
}

impl Bore {
    /// A hole held against the limits; a micrometre is not held against it.
    pub fn of(hole: Length, minor: Between) -> Self {
        if hole < minor.low - NOISE {
            Self::Under(minor.low - hole)
        } else if hole > minor.high + NOISE {
            Self::Over(hole - minor.high)
        } else {
            Self::Within
        }
    }
}

/// The drill that is named, and what has to be said of it.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct TapPick {
    /// The drill.
    pub drill: TapDrill,
    /// Whether it is in the set that was asked for.
    pub in_set: bool,
    /// Where it lies against the minor diameter; none for a form tap, or where the standard gives no limits.
    pub bore: Option<Bore>,
    /// Whether a drill of the set lies nearer to the hole, outside the minor diameter's limits.
    pub passed_over: bool,
    /// A standard drill within the limits, where the one that is named is not.
    pub within: Option<Drill>,
}

/// The drill before a tap, out of a set of [`drill_sets`].
///
/// Of those within 12 % of the percent wanted: the nearest that leaves a minor diameter within its limits, if the hole that is
/// wanted lies within them itself; else the nearest. Where the set has none, the nearest standard drill of its kind, then of
/// any kind. A form tap's limits hold after forming, so no drill is held against them.
///
/// ```
/// use benchslate_core::{calls, quantity::Share, thread::*};
/// let thread = calls::thread::read("3/8-16").unwrap();
/// let pick = pick_drill(thread, Share::from_percent(75.0), TapKind::Cut, "usual").unwrap();
/// assert_eq!(pick.drill.drill.name(), "5/16 in"); // the tap drill of every chart
/// ```
pub fn pick_drill(thread: ThreadCall, wanted: Share, tap: TapKind, set: &str) -> Option<TapPick> {
    let metric = thread.series.is_metric();
    let hole = hole_for(thread, wanted, tap);
    let minor = minor_limits(thread)
        .map(|found| found.0)
        .filter(|_| tap == TapKind::Cut);
    let keeps = |size: Length| minor.is_none_or(|minor| Bore::of(size, minor) == Bore::Within);
    let of = |drill: &Drill| TapDrill {
        drill: *drill,
        share: percent_of_thread(thread, drill.diameter, tap),
        off: drill.diameter - hole,
    };
    let close = |one: &TapDrill| (one.share - wanted).abs() <= NEAR_SHARE;
    let own = || drill_sets::each(set, metric).map(of).filter(close);
    let kept = |one: &TapDrill| keeps(one.drill.diameter);
    let nearest_own = nearest(own());
    let kept_own = nearest(own().filter(kept)).filter(|_| keeps(hole));
    let metric_kind = if set == drill_sets::UNSAID {
        metric
    } else {
        set.starts_with("metric")
    };
    let any = || drills::all().iter().map(of);
    let kind = |one: &TapDrill| (one.drill.series == DrillSeries::Metric) == metric_kind;
    let in_set = kept_own.or(nearest_own);
    let drill = in_set
        .or_else(|| nearest(any().filter(close).filter(kind).filter(kept)))
        .or_else(|| nearest(any().filter(close).filter(kind)))
        .or_else(|| nearest(any()))?;
    let bore = minor.map(|minor| Bore::of(drill.drill.diameter, minor));
    let outside = bore.is_some_and(|bore| bore != Bore::Within);
    let within = outside
        .then(|| nearest(any().filter(close).filter(kept)))
        .flatten();
    Some(TapPick {
        drill,
        in_set: in_set.is_some(),
        bore,
        passed_over: kept_own.is_some() && kept_own != nearest_own,
        within: within.map(|one| one.drill),
    })
}

/// The nearest of those that leave a thread, in one pass; of two equally near the one of the earlier series.
fn nearest(drills: impl Iterator<Item = TapDrill>) -> Option<TapDrill> {
    let key = |one: &TapDrill| (one.off.abs().mm(), one.drill.series);
    drills
        .filter(|one| one.share.fraction() > 0.0 && one.share.fraction() <= 1.0)
        .min_by(|a, b| {
            let (a, b) = (key(a), key(b));
            a.0.total_cmp(&b.0).then(a.1.cmp(&b.1))
        })
}
