//! Property classes of metric screws: ISO 898-1 (steel) and ISO 3506-1 (stainless).
//!
//! Unit: MPa (authoritative) and millimetres. Source: ISO 898-1:2013, Table 3, minimum values (nominal yield of 10.9
//! is 900, of 12.9 is 1080), sizes M1.6 to M39; class 8.8 changes at 16 mm and 9.8 ends there. ISO 3506-1 for A1 to
//! A5: the 0.2 % stress, no proof stress is defined; above M24 classes 70 and 80 are by agreement with the maker (the edition of 2020 goes on to M39).

use super::bolt_strength::BoltStrength;
use crate::quantity::{Length, Stress};

const fn row(
    grade: &'static str,
    from: f64,
    to: f64,
    proof: f64,
    yield_min: f64,
    tensile: f64,
) -> BoltStrength {
    BoltStrength {
        grade,
        from: Length::from_mm(from),
        to: Length::from_mm(to),
        proof: Some(Stress::from_mpa(proof)),
        yield_min: Some(Stress::from_mpa(yield_min)),
        tensile: Stress::from_mpa(tensile),
    }
}

const fn stainless(grade: &'static str, to: f64, stress_at_0_2: f64, tensile: f64) -> BoltStrength {
    BoltStrength {
        proof: None,
        ..row(grade, 1.6, to, 0.0, stress_at_0_2, tensile)
    }
}

/// class, from mm, to mm, proof MPa, yield MPa, tensile MPa.
#[rustfmt::skip]
pub const ROWS: &[BoltStrength] = &[
    row("4.6",   1.6, 39.0, 225.0,  240.0,  400.0),
    row("4.8",   1.6, 39.0, 310.0,  340.0,  420.0),
    row("5.6",   1.6, 39.0, 280.0,  300.0,  500.0),
    row("5.8",   1.6, 39.0, 380.0,  420.0,  520.0),
    row("6.8",   1.6, 39.0, 440.0,  480.0,  600.0),
    row("8.8",   1.6, 16.0, 580.0,  640.0,  800.0),
    row("8.8",  16.1, 39.0, 600.0,  660.0,  830.0),
    row("9.8",   1.6, 16.0, 650.0,  720.0,  900.0),
    row("10.9",  1.6, 39.0, 830.0,  940.0, 1040.0),
    row("12.9",  1.6, 39.0, 970.0, 1100.0, 1220.0),
    stainless("a2-50", 39.0, 210.0, 500.0),
    stainless("a2-70", 24.0, 450.0, 700.0),
    stainless("a2-80", 24.0, 600.0, 800.0),
];
