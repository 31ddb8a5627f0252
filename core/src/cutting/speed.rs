//! How fast must it turn for a surface speed, and what is the surface speed at a spindle step? Exact, with the rules of thumb and their error.

use core::f64::consts::PI;

use super::fault::{CutFault, positive};
use crate::quantity::{Length, RotationalSpeed, SurfaceSpeed};

/// Turns per minute that give a surface speed at a diameter.
///
/// n = V / (π D); in shop units n = (12/π) V/D = 3.8197 V/D with V in ft/min and D in inches.
///
/// - V: surface speed; D: diameter of the cutter (milling, drilling) or of the work (turning), more than 0.
/// - Source: the definition; TM 1-420 C1 (10 March 1942), par. 8, prints rpm = fpm / (0.2618 D).
///
/// # Errors
/// [`CutFault::NotPositive`] for a diameter that is not more than 0.
///
/// ```
/// use benchslate_core::{cutting::spindle_speed, quantity::{Length, SurfaceSpeed}};
/// let n = spindle_speed(SurfaceSpeed::from_sfm(300.0), Length::from_inches(2.0)).unwrap();
/// assert!((n.rpm() - 572.96).abs() < 0.005); // 300 ft/min on a 2 in bar
/// ```
pub fn spindle_speed(speed: SurfaceSpeed, diameter: Length) -> Result<RotationalSpeed, CutFault> {
    let d = positive(diameter.mm(), "the diameter")?;
    Ok(RotationalSpeed::from_rpm(
        speed.m_per_min() * 1000.0 / (PI * d),
    ))
}

/// Surface speed of a diameter at so many turns per minute: V = π D n.
///
/// ```
/// use benchslate_core::{cutting::surface_speed, quantity::{Length, RotationalSpeed}};
/// let v = surface_speed(RotationalSpeed::from_rpm(382.0), Length::from_inches(1.0));
/// assert!((v.sfm() - 100.0).abs() < 0.02); // TM 1-420 C1, par. 8
/// ```
pub fn surface_speed(speed: RotationalSpeed, diameter: Length) -> SurfaceSpeed {
    SurfaceSpeed::from_m_per_min(PI * diameter.mm() * speed.rpm() / 1000.0)
}

/// A rule of thumb for spindle speed.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum SpeedRule {
    /// 4 × ft/min / inches.
    FourTimes,
    /// 320 × m/min / mm.
    ThreeTwenty,
}

impl SpeedRule {
    /// By how much the rule is high, as a fraction: 4π/12 - 1 is 4.72 %, 320π/1000 - 1 is 0.53 %. They are not the same rule.
    ///
    /// ```
    /// use benchslate_core::cutting::SpeedRule;
    /// assert!((SpeedRule::FourTimes.excess() - 0.0472).abs() < 5e-5);
    /// assert!((SpeedRule::ThreeTwenty.excess() - 0.0053).abs() < 5e-5);
    /// ```
    pub fn excess(self) -> f64 {
        match self {
            Self::FourTimes => 4.0 * PI / 12.0 - 1.0,
            Self::ThreeTwenty => 320.0 * PI / 1000.0 - 1.0,
        }
    }

    /// What the rule gives.
    ///
    /// # Errors
    /// [`CutFault::NotPositive`] for a diameter that is not more than 0.
    pub fn spindle_speed(
        self,
        speed: SurfaceSpeed,
        diameter: Length,
    ) -> Result<RotationalSpeed, CutFault> {
        positive(diameter.mm(), "the diameter")?;
        Ok(RotationalSpeed::from_rpm(match self {
            Self::FourTimes => 4.0 * speed.sfm() / diameter.inches(),
            Self::ThreeTwenty => 320.0 * speed.m_per_min() / diameter.mm(),
        }))
    }
}
