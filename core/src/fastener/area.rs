//! Which cross-section of a threaded screw carries the pull: the tensile stress area?

use super::{Fault, positive};
use crate::quantity::{Area, Length, Pitch, System};
use core::f64::consts::FRAC_PI_4;

/// The factor of the pitch that is taken off the diameter: 0.9743 (inch, ASME B1.1) or 0.9382 (metric, ISO 898-1).
pub const fn pitch_factor(system: System) -> f64 {
    match system {
        System::Inch => 0.9743,
        System::Metric => 0.9382,
    }
}

/// The tensile stress area `A = π/4 (D − c P)²`, c = 0.9743 for inch and 0.9382 for metric threads.
///
/// Range: the pitch must leave a core. Source: ASME B1.1-2003 (inch), ISO 898-1:2013 9.1.6 (metric).
///
/// # Errors
/// A size that is not above zero; a pitch too coarse for the diameter.
///
/// ```
/// use benchslate_core::fastener::area::tensile_stress_area;
/// use benchslate_core::quantity::{Length, Pitch, System};
/// // 1/2-13 UNC is tabulated with 0.1419 in² (ASME B1.1).
/// let a = tensile_stress_area(Length::from_inches(0.5), Pitch::from_tpi(13.0), System::Inch).unwrap();
/// assert!((a.in2() - 0.1419).abs() < 0.00005);
/// ```
pub fn tensile_stress_area(diameter: Length, pitch: Pitch, system: System) -> Result<Area, Fault> {
    positive(diameter.mm(), "diameter")?;
    positive(pitch.mm(), "pitch")?;
    let core = diameter.mm() - pitch_factor(system) * pitch.mm();
    if core <= 0.0 {
        return Err(Fault::PitchTooCoarse { diameter });
    }
    Ok(Area::from_mm2(FRAC_PI_4 * core * core))
}

/// Tensile area for screws above 100 ksi in the stripping method only: `A = π (Es/2 − 0.16238 P)²`.
///
/// `Es` is the least pitch diameter of the screw. Source: FED-STD-H28/2B, appendix B.
///
/// # Errors
/// As [`tensile_stress_area`].
pub fn tensile_area_over_100_ksi(pitch_diameter_min: Length, pitch: Pitch) -> Result<Area, Fault> {
    positive(pitch_diameter_min.mm(), "pitch diameter")?;
    positive(pitch.mm(), "pitch")?;
    let radius = pitch_diameter_min.mm() / 2.0 - 0.16238 * pitch.mm();
    if radius <= 0.0 {
        return Err(Fault::PitchTooCoarse {
            diameter: pitch_diameter_min,
        });
    }
    Ok(Area::from_mm2(core::f64::consts::PI * radius * radius))
}
