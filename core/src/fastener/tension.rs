//! How much clamp load can a screw take while it is being twisted as well (VDI 2230)?

use super::{Fault, positive};
use crate::quantity::{Area, Force, Length, Pitch, Stress};
use core::f64::consts::{FRAC_PI_4, PI};

/// The stress diameter d0 = (d2 + d3)/2 = D − 0.9382 P, as metric threads have it.
fn stress_diameter(diameter: Length, pitch: Pitch) -> Result<f64, Fault> {
    positive(diameter.mm(), "diameter")?;
    positive(pitch.mm(), "pitch")?;
    positive(diameter.mm() - 0.9382 * pitch.mm(), "core of the thread")
}

/// Twist over pull: `τ/σ = 1.5 (d2/d0) (P/(π d2) + 1.155 µ)`.
fn twist_ratio(diameter: Length, pitch: Pitch, thread_friction: f64) -> Result<(f64, f64), Fault> {
    let d0 = stress_diameter(diameter, pitch)?;
    let d2 = diameter.mm() - 0.649519052838329 * pitch.mm();
    let sec30 = 1.0 / libm::cos(PI / 6.0);
    Ok((
        d0,
        1.5 * d2 / d0 * (pitch.mm() / (PI * d2) + sec30 * thread_friction),
    ))
}

/// The clamp load at which pull and twist together use the share `utilisation` of the yield strength:
/// `F = ν Rp A0 / √(1 + 3 [1.5 (d2/d0) (P/(π d2) + 1.155 µG)]²)`.
///
/// Range: sizes above zero, utilisation above 0 and up to 1. Source: VDI 2230 Part 1:2003 (tables use 0.9).
///
/// # Errors
/// Sizes, strength or share not above zero.
///
/// ```
/// use benchslate_core::fastener::tension::assembly_preload;
/// use benchslate_core::quantity::{Length, Pitch, Stress};
/// // VDI 2230-1:2003 Table A1: M12 8.8 at 0.12: 43.0 kN.
/// let f = assembly_preload(Length::from_mm(12.0), Pitch::from_mm(1.75), Stress::from_mpa(640.0), 0.12, 0.9).unwrap();
/// assert!((f.newtons() - 43_000.0).abs() < 500.0);
/// ```
pub fn assembly_preload(
    diameter: Length,
    pitch: Pitch,
    yield_strength: Stress,
    thread_friction: f64,
    utilisation: f64,
) -> Result<Force, Fault> {
    positive(utilisation, "share of yield")?;
    positive(yield_strength.mpa(), "yield strength")?;
    let (d0, twist) = twist_ratio(diameter, pitch, thread_friction)?;
    let area = FRAC_PI_4 * d0 * d0;
    Ok(Force::from_newtons(
        utilisation * yield_strength.mpa() * area / libm::sqrt(1.0 + 3.0 * twist * twist),
    ))
}

/// The combined stress of pull and twist while tightening: `σ √(1 + 3 (τ/σ)²)`. Source as [`assembly_preload`].
///
/// # Errors
/// Sizes not above zero.
pub fn combined_stress(
    diameter: Length,
    pitch: Pitch,
    area: Area,
    clamp: Force,
    thread_friction: f64,
) -> Result<Stress, Fault> {
    positive(area.mm2(), "stress area")?;
    let (_, twist) = twist_ratio(diameter, pitch, thread_friction)?;
    Ok(Stress::from_mpa(
        clamp.newtons() / area.mm2() * libm::sqrt(1.0 + 3.0 * twist * twist),
    ))
}
