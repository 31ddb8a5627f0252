//! How smooth will it come out? The roughness that geometry alone leaves: nose radius and feed, scallops, and feed marks.

use super::fault::{CutFault, positive};
use crate::quantity::{Count, FeedPerRev, FeedRate, Length, RotationalSpeed};

/// Peak-to-valley height of the feed marks of a round nose: Rt = f² / (8 r).
///
/// - f: feed per rev, r: nose radius, one unit. It is 7 % under the circle's own height at f = r, and more beyond.
///
/// # Errors
/// [`CutFault`] for a radius of nothing or a feed above the radius, where the formula misleads and the straight edges take over.
///
/// ```
/// use benchslate_core::{cutting::{peak_to_valley, mean_roughness}, quantity::{FeedPerRev, Length}};
/// let (f, r) = (FeedPerRev::from_mm_per_rev(0.3), Length::from_mm(1.2));
/// assert!((peak_to_valley(f, r).unwrap().um() - 9.38).abs() < 0.01); // f²/8r
/// assert!((mean_roughness(f, r).unwrap().um() - 2.34).abs() < 0.005); // Groover, Ri = f²/(32 NR)
/// ```
pub fn peak_to_valley(feed: FeedPerRev, radius: Length) -> Result<Length, CutFault> {
    let r = positive(radius.mm(), "the nose radius")?;
    let f = positive(feed.mm_per_rev(), "the feed")?;
    // a last bit of the conversion is no step over the limit
    if f > r * (1.0 + 1e-9) {
        return Err(CutFault::TooLarge {
            what: "the feed per rev",
            limit_mm: r,
            why: "with a feed larger than the radius the straight edges mark the work, not the radius",
        });
    }
    Ok(Length::from_mm(f * f / (8.0 * r)))
}

/// Mean roughness by Groover's constant: f² / (32 r), a quarter of peak to valley. Others print f²/(31.2 r), and a constant 27 % larger.
///
/// # Errors
/// As [`peak_to_valley`].
pub fn mean_roughness(feed: FeedPerRev, radius: Length) -> Result<Length, CutFault> {
    peak_to_valley(feed, radius).map(|height| height / 4.0)
}

/// Exact height of the scallop between two passes of a ball or round form: r - sqrt(r² - (s/2)²).
///
/// # Errors
/// [`CutFault`] for nothing, or a step wider than the ball.
pub fn scallop_height(step: Length, radius: Length) -> Result<Length, CutFault> {
    let r = positive(radius.mm(), "the radius")?;
    let half = positive(step.mm(), "the step over")? / 2.0;
    if half > r {
        return Err(CutFault::TooLarge {
            what: "the step over",
            limit_mm: 2.0 * r,
            why: "beyond the ball's diameter the passes do not meet",
        });
    }
    Ok(Length::from_mm(r - libm::sqrt(r * r - half * half)))
}

/// Distance between the marks of a slab cutter: F/(z n) where every tooth cuts alike, F/n where run-out lets one tooth do the work.
///
/// # Errors
/// [`CutFault::NotPositive`] for no teeth or a spindle that does not turn.
pub fn mark_spacing(
    feed: FeedRate,
    speed: RotationalSpeed,
    teeth: Count,
    once_per_turn: bool,
) -> Result<Length, CutFault> {
    let n = positive(speed.rpm(), "the spindle speed")?;
    let z = positive(teeth.get(), "the number of teeth")?;
    Ok(Length::from_mm(
        feed.mm_per_min() / (n * if once_per_turn { 1.0 } else { z }),
    ))
}
