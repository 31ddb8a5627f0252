//! What does a pin carry in shear, and which pin does a torque need?

use super::PinFault;
use crate::quantity::{Force, Length, Stress, Torque};
use core::f64::consts::PI;

/// In how many planes is the pin sheared?
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum Shear {
    /// One plane: a dowel between two plates.
    Single,
    /// Two planes: a pin right through hub and shaft.
    Double,
}

impl Shear {
    /// The number of planes.
    pub const fn planes(self) -> f64 {
        match self {
            Self::Single => 1.0,
            Self::Double => 2.0,
        }
    }
}

/// Force that gives the stress: F = n·(π/4)·d²·τ.
///
/// n planes, d diameter, τ shear stress. The dowels of ASME B18.8.2-2000, Table 2, are rated so, in SINGLE shear at 130 000 psi.
pub fn shear_force(diameter: Length, stress: Stress, shear: Shear) -> Force {
    Force::from_newtons(shear.planes() * PI / 4.0 * diameter.mm() * diameter.mm() * stress.mpa())
}

/// Torque of a cross pin through hub and shaft, DOUBLE shear at the shaft's surface: T = (π/4)·d²·τ·Ds.
///
/// d the pin's diameter in the middle, Ds the shaft's diameter. Source: Machinery's Handbook, 31st ed., Strength of Taper
/// Pins, p. 227, d = 1.13·√(T/(D·S)); 1.13 stands for √(4/π) = 1.1284, which is used here.
///
/// ```
/// use benchslate_core::{pin, quantity::{Length, Stress}};
/// let t = pin::cross_pin_torque(Length::from_inches(0.4), Length::from_inches(2.0), Stress::from_psi(6000.0));
/// assert!((t.lbf_in() - 1508.0).abs() < 0.1); // π/4 · 0.16 · 6000 · 2
/// ```
pub fn cross_pin_torque(pin: Length, shaft: Length, stress: Stress) -> Torque {
    Torque::from_newton_metres(PI / 4.0 * pin.mm() * pin.mm() * stress.mpa() * shaft.mm() / 1000.0)
}

/// Stress in a cross pin at a torque, DOUBLE shear: τ = 4T/(π·d²·Ds). Source: as [`cross_pin_torque`].
///
/// # Errors
/// A pin or a shaft of nothing.
pub fn cross_pin_stress(torque: Torque, pin: Length, shaft: Length) -> Result<Stress, PinFault> {
    if pin.mm() <= 0.0 || shaft.mm() <= 0.0 {
        return Err(PinFault::NotPositive("pin and shaft"));
    }
    Ok(Stress::from_mpa(
        torque.newton_metres() * 1000.0 * 4.0 / (PI * pin.mm() * pin.mm() * shaft.mm()),
    ))
}

/// Middle diameter that a torque needs, DOUBLE shear: d = √(4T/(π·τ·Ds)). Source: as [`cross_pin_torque`].
///
/// # Errors
/// A shaft or a stress of nothing, or a torque below zero.
pub fn cross_pin_diameter(
    torque: Torque,
    shaft: Length,
    stress: Stress,
) -> Result<Length, PinFault> {
    if shaft.mm() <= 0.0 || stress.mpa() <= 0.0 || torque.newton_metres() < 0.0 {
        return Err(PinFault::NotPositive("shaft, stress and torque"));
    }
    Ok(Length::from_mm(libm::sqrt(
        4.0 * torque.newton_metres() * 1000.0 / (PI * stress.mpa() * shaft.mm()),
    )))
}
