//! In how many passes is a thread cut on a lathe, and how fast may its carriage run toward a shoulder?

use super::fault::{CutFault, positive};
use crate::quantity::{FeedRate, Length, Pitch, RotationalSpeed};

/// The most for a first pass along the compound, inches (common practice): more tears the thread or stalls a light lathe.
pub const FIRST_PASS_MOST_IN: f64 = 0.025;
/// The fewest passes that are proposed (common practice).
pub const FEWEST_PASSES: u16 = 8;
/// The most passes that are listed.
pub const MOST_PASSES: u16 = 60;
/// Carriage speed toward a shoulder above which a hand on the half nuts is late, inches per minute (common practice: 8 to 10).
pub const CARRIAGE_MOST_IN_PER_MIN: f64 = 10.0;

/// Passes of equal area for a total infeed: n = (x / limit)², rounded up, so that the first pass x/√n is at most
/// [`FIRST_PASS_MOST_IN`]; from [`FEWEST_PASSES`] to [`MOST_PASSES`].
///
/// ```
/// use benchslate_core::{cutting::passes_for, quantity::Length};
/// assert_eq!(passes_for(Length::from_inches(0.0427)), 8); // 16 tpi: the first takes 0.015 in
/// assert_eq!(passes_for(Length::from_inches(0.171)), 47); // 4 tpi: (0.171 / 0.025)² = 46.8
/// assert_eq!(passes_for(Length::from_inches(0.342)), 60); // 2 tpi: 188 would be too many to list
/// ```
pub fn passes_for(infeed: Length) -> u16 {
    let share = infeed.inches() / FIRST_PASS_MOST_IN;
    let passes = libm::ceil(share * share - 1e-9);
    if passes >= f64::from(MOST_PASSES) {
        MOST_PASSES
    } else {
        (passes as u16).max(FEWEST_PASSES)
    }
}

/// Speed of the carriage in single-point threading: lead × n.
///
/// # Errors
/// [`CutFault::NotPositive`] for a lead of nothing.
///
/// ```
/// use benchslate_core::{cutting::carriage_speed, quantity::{Pitch, RotationalSpeed}};
/// let speed = carriage_speed(Pitch::from_tpi(20.0), RotationalSpeed::from_rpm(500.0)).unwrap();
/// assert!((speed.in_per_min() - 25.0).abs() < 1e-9);
/// ```
pub fn carriage_speed(lead: Pitch, speed: RotationalSpeed) -> Result<FeedRate, CutFault> {
    Ok(FeedRate::from_mm_per_min(
        positive(lead.mm(), "the lead")? * speed.rpm(),
    ))
}
