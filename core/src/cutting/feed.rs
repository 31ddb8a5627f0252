//! How fast must the table move for a chip, and what chip does a table feed leave?

use super::fault::{CutFault, positive};
use crate::quantity::{Count, FeedPerRev, FeedPerTooth, FeedRate, RotationalSpeed};

/// Table feed from the feed per tooth: F = fz z n.
///
/// ```
/// use benchslate_core::{cutting::table_feed, quantity::*};
/// let feed = table_feed(FeedPerTooth::from_in_per_tooth(0.004), Count::of(32.0), RotationalSpeed::from_rpm(88.0));
/// assert!((feed.in_per_min() - 11.264).abs() < 1e-9); // New Concepts in Milling Handbook, 1973 (it truncates to 11.2)
/// ```
pub fn table_feed(per_tooth: FeedPerTooth, teeth: Count, speed: RotationalSpeed) -> FeedRate {
    FeedRate::from_mm_per_min(per_tooth.mm_per_tooth() * teeth.get() * speed.rpm())
}

/// Feed per tooth that a table feed leaves: fz = F / (z n).
///
/// # Errors
/// [`CutFault::NotPositive`] for no teeth or a spindle that does not turn.
pub fn feed_per_tooth(
    feed: FeedRate,
    teeth: Count,
    speed: RotationalSpeed,
) -> Result<FeedPerTooth, CutFault> {
    let z = positive(teeth.get(), "the number of teeth")?;
    let n = positive(speed.rpm(), "the spindle speed")?;
    Ok(FeedPerTooth::from_mm_per_tooth(feed.mm_per_min() / (z * n)))
}

/// Feed per rev from the feed per tooth: f = fz z.
///
/// ```
/// use benchslate_core::{cutting::feed_per_rev, quantity::{Count, FeedPerTooth}};
/// // New Concepts in Milling Handbook, 1973: 32 teeth at 0.004 in
/// let feed = feed_per_rev(FeedPerTooth::from_in_per_tooth(0.004), Count::of(32.0));
/// assert!((feed.in_per_rev() - 0.128).abs() < 1e-12);
/// ```
pub fn feed_per_rev(per_tooth: FeedPerTooth, teeth: Count) -> FeedPerRev {
    FeedPerRev::from_mm_per_rev(per_tooth.mm_per_tooth() * teeth.get())
}

/// Feed per minute of a feed per turn: F = f n.
pub fn feed_rate(per_rev: FeedPerRev, speed: RotationalSpeed) -> FeedRate {
    FeedRate::from_mm_per_min(per_rev.mm_per_rev() * speed.rpm())
}

/// Feed per turn of a feed per minute: f = F / n.
///
/// # Errors
/// [`CutFault::NotPositive`] for a spindle that does not turn.
pub fn feed_per_turn(feed: FeedRate, speed: RotationalSpeed) -> Result<FeedPerRev, CutFault> {
    let n = positive(speed.rpm(), "the spindle speed")?;
    Ok(FeedPerRev::from_mm_per_rev(feed.mm_per_min() / n))
}
