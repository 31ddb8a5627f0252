//! How stiff and strong is a material, and how far does it grow with heat?
//!
//! Stiffness: Shigley, Mechanical Engineering Design, 9th ed., Table A-5 (GPa column; aluminum from memory).
//! Expansion, 10⁻⁶ per kelvin (authoritative: per degree C, but as noted): A, Callister, Fundamentals of Materials Science
//! and Engineering, 3rd ed., Table B.6, pp. 815 and 816; B, Dooley, Applied Science for Metal Workers (an older list, per
//! degree F). The two differ on gray iron: B is kept, since it asks for more heat, and A stands beside it.
//! Strength, ksi: the least yield of a soft, usual state (gray iron: tensile strength of class 20, ASTM A48); ASTM A36,
//! C93200 as cast, C36000 annealed, 6061-T6, 304 annealed, C11000 annealed, 6Al-4V annealed; general handbook values, from memory.

use crate::quantity::{Expansion, Stress};

/// A material of hubs and shafts.
pub struct FitMaterial {
    /// Stands in links.
    pub id: &'static str,
    /// On screen.
    pub label: &'static str,
    /// Young's modulus.
    pub modulus: Stress,
    /// Poisson's ratio.
    pub poisson: f64,
    /// Mean coefficient of linear expansion near room temperature; none where no figure has a source.
    pub expansion: Option<Expansion>,
    /// The higher figure of another list, where two lists differ by more than their rounding.
    pub expansion_high: Option<Expansion>,
    /// Least strength to count on where none is entered: yield, or tensile strength of a brittle material.
    pub strength: Stress,
    /// It cracks without yielding.
    pub brittle: bool,
}

const fn row(
    id: &'static str,
    label: &'static str,
    gpa: f64,
    poisson: f64,
    expansion: Option<Expansion>,
    strength_ksi: f64,
) -> FitMaterial {
    FitMaterial {
        id,
        label,
        modulus: Stress::from_mpa(gpa * 1000.0),
        poisson,
        expansion,
        expansion_high: None,
        strength: Stress::from_ksi(strength_ksi),
        brittle: false,
    }
}
const fn k(per_million: f64) -> Expansion {
    Expansion::from_per_million_kelvin(per_million)
}
const fn f(per_million: f64) -> Expansion {
    Expansion::from_per_million_fahrenheit(per_million)
}

/// The materials, usual ones first.
#[rustfmt::skip]
pub const FIT_MATERIALS: [FitMaterial; 8] = [
    row("steel", "carbon steel", 207.0, 0.292, Some(f(6.5)), 36.0), // A, A36 and 1020: 11.7 per K
    FitMaterial {
        expansion_high: Some(k(11.4)), // A, gray irons G1800 to G4000
        brittle: true,
        ..row("cast-iron", "gray cast iron", 100.0, 0.211, Some(f(5.56)), 20.0) // B
    },
    row("bronze", "bronze", 111.0, 0.349, Some(k(18.0)), 14.0), // phosphor bronze; A, bearing bronze C93200
    row("brass", "brass", 106.0, 0.324, Some(k(20.5)), 18.0), // A, C36000
    row("aluminum", "aluminum", 71.7, 0.333, Some(k(23.6)), 35.0), // A, 6061
    row("stainless", "stainless steel 18-8", 190.0, 0.305, Some(k(17.2)), 30.0), // A, 304
    row("copper", "copper", 119.0, 0.326, Some(k(17.0)), 10.0), // A, C11000
    row("titanium", "titanium alloy", 114.0, 0.34, Some(k(8.6)), 120.0), // A, 6Al-4V
];
