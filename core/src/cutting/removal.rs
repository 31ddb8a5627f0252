//! How much metal goes per minute? Milling, drilling, and turning with the diameter named that each book takes.

use core::f64::consts::PI;

use super::fault::{CutFault, positive};
use crate::quantity::{FeedPerRev, FeedRate, Length, RemovalRate, RotationalSpeed, SurfaceSpeed};

/// Milling: width × depth × table feed.
///
/// ```
/// use benchslate_core::{cutting::milling_removal, quantity::*};
/// let q = milling_removal(Length::from_mm(112.5), Length::from_mm(3.0), FeedRate::from_mm_per_min(300.0));
/// assert!((q.mm3_per_min() - 101_250.0).abs() < 1e-6); // Kalpakjian and Schmid, face milling problem
/// ```
pub fn milling_removal(width: Length, depth: Length, feed: FeedRate) -> RemovalRate {
    RemovalRate::from_mm3_per_min(width.mm() * depth.mm() * feed.mm_per_min())
}

/// Depth of another cutter on the same arbor in flat work: d + (D2 − D) / 2, since all have one axis.
///
/// # Errors
/// [`CutFault::NotPositive`] where it does not reach the work.
///
/// ```
/// use benchslate_core::{cutting::gang_depth, quantity::Length};
/// // geometry: a radius longer by 1/4 in reaches 1/4 in deeper
/// let inch = Length::from_inches;
/// let depth = gang_depth(inch(0.1), inch(2.5), inch(3.0)).unwrap();
/// assert!((depth.inches() - 0.35).abs() < 1e-12);
/// ```
pub fn gang_depth(depth: Length, diameter: Length, other: Length) -> Result<Length, CutFault> {
    let reach = depth + (other - diameter) * 0.5;
    // a touch is no cut: less than a nanometre is the rounding of the figures
    let deep = if reach.mm() < 1e-6 { 0.0 } else { reach.mm() };
    positive(deep, "the depth of the other cutter")?;
    Ok(reach)
}

/// Drilling: area of the hole × feed.
pub fn drilling_removal(diameter: Length, feed: FeedRate) -> RemovalRate {
    RemovalRate::from_mm3_per_min(PI * diameter.mm() * diameter.mm() / 4.0 * feed.mm_per_min())
}

/// Turning from the surface speed: V f d, the speed taken at the diameter that one names (Groover: the starting one).
///
/// ```
/// use benchslate_core::{cutting::turning_removal, quantity::*};
/// let q = turning_removal(SurfaceSpeed::from_sfm(80.0), FeedPerRev::from_in_per_rev(0.020), Length::from_inches(0.25));
/// assert!((q.in3_per_min() - 4.8).abs() < 1e-9); // U.S. Navy training manual 14076
/// ```
pub fn turning_removal(speed: SurfaceSpeed, feed: FeedPerRev, depth: Length) -> RemovalRate {
    RemovalRate::from_mm3_per_min(speed.m_per_min() * 1000.0 * feed.mm_per_rev() * depth.mm())
}

/// Turning with the mean diameter: π (D0 + D1)/2 × (D0 - D1)/2 × f n, which is the metal that truly goes (Kalpakjian and Schmid).
/// Speed and force belong to the outside diameter all the same.
pub fn turning_removal_mean(
    start: Length,
    end: Length,
    feed: FeedPerRev,
    speed: RotationalSpeed,
) -> RemovalRate {
    let mean = f64::midpoint(start.mm(), end.mm());
    let depth = (start.mm() - end.mm()) / 2.0;
    RemovalRate::from_mm3_per_min(PI * mean * depth * feed.mm_per_rev() * speed.rpm())
}
