//! Torque from clamp load and back by the nut factor: T = K D F.

use super::{Fault, positive};
use crate::quantity::{Force, Length, Torque};

/// The torque for a clamp load: `T = K D F`.
///
/// K nut factor (bare), D nominal diameter, F clamp load. Range: all above zero. Source: Shigley's Mechanical
/// Engineering Design, eq. 8-27.
///
/// # Errors
/// A factor, size or load that is not above zero.
///
/// ```
/// use benchslate_core::fastener::short_form::torque;
/// use benchslate_core::quantity::{Force, Length};
/// // Shigley, example 8-3: 0.2 × 0.75 in × 25,000 lbf = 3,750 lbf in.
/// let t = torque(0.2, Length::from_inches(0.75), Force::from_lbf(25000.0)).unwrap();
/// assert!((t.lbf_in() - 3750.0).abs() < 1e-6);
/// ```
pub fn torque(nut_factor: f64, diameter: Length, clamp: Force) -> Result<Torque, Fault> {
    let k = positive(nut_factor, "nut factor")?;
    let d = positive(diameter.mm(), "diameter")?;
    let f = positive(clamp.newtons(), "clamp load")?;
    Ok(Torque::from_newton_metres(k * d * f / 1000.0))
}

/// The clamp load that a torque gives: `F = T / (K D)`. Range and source as [`torque`].
///
/// # Errors
/// A factor, size or torque that is not above zero.
pub fn clamp(nut_factor: f64, diameter: Length, torque: Torque) -> Result<Force, Fault> {
    let k = positive(nut_factor, "nut factor")?;
    let d = positive(diameter.mm(), "diameter")?;
    let t = positive(torque.newton_metres(), "torque")?;
    Ok(Force::from_newtons(t * 1000.0 / (k * d)))
}

/// The clamp load between its low and high end when the method misses by ± `percent`: F (1 − s), F (1 + s).
///
/// Source: NASA NSTS 08307; J. Fail. Anal. Prev. 2019, eq. 2.
///
/// ```
/// use benchslate_core::fastener::short_form::scatter;
/// use benchslate_core::quantity::Force;
/// let (low, high) = scatter(Force::from_lbf(1000.0), 35.0);
/// assert!((low.lbf() - 650.0).abs() < 1e-9 && (high.lbf() - 1350.0).abs() < 1e-9);
/// ```
pub fn scatter(clamp: Force, percent: f64) -> (Force, Force) {
    let s = percent / 100.0;
    (clamp * (1.0 - s), clamp * (1.0 + s))
}
