//! What does an interference fit take and give: pressure, stresses, press force, torque, and the heat to put it together?
//!
//! All interference here is on the diameter (many texts use the radius, half of it). Elastic, thick-walled cylinders of
//! equal length, no end effects, no speed. Source: Shigley, Mechanical Engineering Design, 9th ed., Eqs. (7-39) to (7-45).

#![allow(
    clippy::neg_cmp_op_on_partial_ord,
    reason = "`!(a > b)` refuses what is no number as well"
)]

use crate::quantity::{Expansion, Force, Length, Stress, TemperatureDifference, Torque};
use core::f64::consts::PI;
use core::fmt;

/// Stiffness of one part.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Elastic {
    /// Young's modulus.
    pub modulus: Stress,
    /// Poisson's ratio, 0 to 0.5.
    pub poisson: f64,
}

/// Hub and shaft of an interference fit. Built by [`Joint::new`], which checks that the sizes stand inside each other.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Joint {
    diameter: Length,
    hub_outside: Length,
    shaft_bore: Length,
    hub: Elastic,
    shaft: Elastic,
}

/// Why an interference fit can't be worked out.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum PressFault {
    /// The hub's outside is not larger than the joint.
    HubTooSmall,
    /// The bore of the shaft is not smaller than the joint, or is negative.
    ShaftBoreTooLarge,
    /// The joint has no size.
    NoDiameter,
    /// A modulus is not above 0, or a Poisson's ratio is not within 0 to 0.5.
    BadMaterial,
    /// There is no interference, so nothing holds.
    NoInterference,
    /// The coefficient of expansion is not above 0.
    BadExpansion,
}

/// Stresses at the joint; tension positive.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Stresses {
    /// Hoop stress at the hub's bore: the highest tension.
    pub hub_hoop: Stress,
    /// Hoop stress at the shaft's surface: compression.
    pub shaft_hoop: Stress,
    /// Largest shear criterion (Tresca) at the hub's bore: hoop less radial stress. To be less than the hub's yield.
    pub hub_equivalent: Stress,
    /// The same for the shaft: at its bore when hollow, anywhere when solid. To be less than the shaft's yield.
    pub shaft_equivalent: Stress,
}

impl Joint {
    /// Checks and takes the sizes. `shaft_bore` is 0 for a solid shaft.
    ///
    /// # Errors
    /// [`PressFault`] where a size does not stand inside the next, or a material is none.
    pub fn new(
        diameter: Length,
        hub_outside: Length,
        shaft_bore: Length,
        hub: Elastic,
        shaft: Elastic,
    ) -> Result<Self, PressFault> {
        let good = |e: Elastic| e.modulus > Stress::ZERO && (0.0..=0.5).contains(&e.poisson);
        if !(diameter > Length::ZERO) {
            return Err(PressFault::NoDiameter);
        }
        if !(hub_outside > diameter) {
            return Err(PressFault::HubTooSmall);
        }
        if !(shaft_bore >= Length::ZERO && shaft_bore < diameter) {
            return Err(PressFault::ShaftBoreTooLarge);
        }
        if !good(hub) || !good(shaft) {
            return Err(PressFault::BadMaterial);
        }
        Ok(Self {
            diameter,
            hub_outside,
            shaft_bore,
            hub,
            shaft,
        })
    }

    /// (D² + d²)/(D² - d²) of the hub.
    pub fn hub_factor(&self) -> f64 {
        ring(self.hub_outside / self.diameter)
    }

    /// (d² + b²)/(d² - b²) of the shaft; 1 when solid.
    pub fn shaft_factor(&self) -> f64 {
        let ratio = self.shaft_bore / self.diameter;
        (1.0 + ratio * ratio) / (1.0 - ratio * ratio)
    }

    /// Diametral give of hub and shaft together per unit of pressure and diameter, 1/MPa:
    /// (hub factor + νh)/Eh + (shaft factor - νs)/Es.
    fn give(&self) -> f64 {
        (self.hub_factor() + self.hub.poisson) / self.hub.modulus.mpa()
            + (self.shaft_factor() - self.shaft.poisson) / self.shaft.modulus.mpa()
    }

    /// Pressure between hub and shaft: p = δ / (d ((H + νh)/Eh + (S - νs)/Es)), H and S the factors above, δ on the diameter.
    ///
    /// Source: Shigley, 9th ed., Eq. (7-39), p. 399. Range: elastic.
    ///
    /// ```
    /// use benchslate_core::{fit::press::{Elastic, Joint}, quantity::{Length, Stress}};
    /// let steel = Elastic { modulus: Stress::from_mpa(207_000.0), poisson: 0.292 };
    /// let mm = Length::from_mm;
    /// let joint = Joint::new(mm(35.0), mm(60.0), mm(0.0), steel, steel).unwrap();
    /// assert!((joint.pressure(mm(0.018)).unwrap().mpa() - 35.116).abs() < 0.001); // data of Shigley, Problem 7-42
    /// ```
    ///
    /// # Errors
    /// [`PressFault::NoInterference`] where the interference is not above 0.
    pub fn pressure(&self, interference: Length) -> Result<Stress, PressFault> {
        if !(interference > Length::ZERO) {
            return Err(PressFault::NoInterference);
        }
        Ok(Stress::from_mpa(interference / self.diameter / self.give()))
    }

    /// The interference on the diameter that gives a pressure: the inverse of [`Joint::pressure`].
    pub fn interference_for(&self, pressure: Stress) -> Length {
        self.diameter * (pressure.mpa() * self.give())
    }

    /// Stresses at a pressure. Source: Shigley, 9th ed., Eqs. (7-44), (7-45); Tresca from the radial stress -p at the joint
    /// and, in a hollow shaft, the hoop stress -2 p d²/(d² - b²) at its bore.
    pub fn stresses(&self, pressure: Stress) -> Stresses {
        let hub_hoop = pressure * self.hub_factor();
        let shaft_bore = if self.shaft_bore > Length::ZERO {
            self.shaft_factor() + 1.0
        } else {
            1.0
        };
        Stresses {
            hub_hoop,
            shaft_hoop: -(pressure * self.shaft_factor()),
            hub_equivalent: hub_hoop + pressure,
            shaft_equivalent: pressure * shaft_bore,
        }
    }

    /// Force to press on at full length, or to push off: F = f p π d l.
    pub fn axial_force(&self, pressure: Stress, length: Length, friction: f64) -> Force {
        Force::from_newtons(friction * pressure.mpa() * PI * self.diameter.mm() * length.mm())
    }

    /// Torque that slips: T = (π/2) f p l d².
    pub fn torque(&self, pressure: Stress, length: Length, friction: f64) -> Torque {
        Torque::from_newton_metres(
            self.axial_force(pressure, length, friction).newtons() * self.diameter.mm() / 2000.0,
        )
    }
}

/// How much warmer the hub (or colder the shaft) must be so that the parts clear by `clearance` when put together:
/// ΔT = (δ + clearance)/(α d).
///
/// Source: definition of the coefficient of linear expansion; α as a mean near room temperature.
///
/// ```
/// use benchslate_core::{fit::press::temperature, quantity::{Expansion, Length}};
/// let (mm, steel) = (Length::from_mm, Expansion::from_per_million_kelvin(11.7));
/// assert!((temperature(mm(50.0), mm(0.059), mm(0.02), steel).unwrap().kelvins() - 135.0).abs() < 0.1);
/// ```
///
/// # Errors
/// [`PressFault::NoDiameter`], [`PressFault::BadExpansion`].
pub fn temperature(
    diameter: Length,
    interference: Length,
    clearance: Length,
    expansion: Expansion,
) -> Result<TemperatureDifference, PressFault> {
    if !(diameter > Length::ZERO) {
        return Err(PressFault::NoDiameter);
    }
    if !(expansion > Expansion::ZERO) {
        return Err(PressFault::BadExpansion);
    }
    Ok(TemperatureDifference::from_kelvins(
        (interference + clearance) / diameter * 1e6 / expansion.per_million_kelvin(),
    ))
}

/// The old shop rule for shrunk fits: a thousandth of an inch to the inch of diameter.
///
/// Source: Dooley, Applied Science for Metal Workers, Allowance for Shrunk Fits. A guide for iron and steel, not a limit.
pub fn shop_allowance(diameter: Length) -> Length {
    diameter * 0.001
}

/// Interference left after pressing has smoothed the surfaces: Uw = U - 0.8 (Rz hub + Rz shaft). May come out at 0 or less.
///
/// Source: DIN 7190, from memory.
pub fn smoothed(interference: Length, rz_hub: Length, rz_shaft: Length) -> Length {
    interference - (rz_hub + rz_shaft) * 0.8
}

/// (r² + 1)/(r² - 1) of a ring whose outside is r times its bore.
fn ring(ratio: f64) -> f64 {
    (ratio * ratio + 1.0) / (ratio * ratio - 1.0)
}

impl fmt::Display for PressFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::HubTooSmall => "the hub's outside must be larger than the joint",
            Self::ShaftBoreTooLarge => "the bore of the shaft must be smaller than the joint",
            Self::NoDiameter => "the joint needs a diameter above 0",
            Self::BadMaterial => "a modulus must be above 0 and a Poisson's ratio within 0 to 0.5",
            Self::NoInterference => "the shaft is not larger than the hole: nothing holds",
            Self::BadExpansion => "a coefficient of expansion must be above 0",
        })
    }
}

impl core::error::Error for PressFault {}
