//! Strength grades of inch screws: SAE J429 and ASTM.
//!
//! Unit: ksi (authoritative) and inches, from ... up to and including. Sources: SAE J429 as in Shigley's
//! Mechanical Engineering Design, Table 8-9; ASTM as in Shigley & Mischke, 5th ed., p. 341 ff.; ASTM A574.
//! SAE grade 2 to 3/4 in (55/57/74) is from memory of the same table. A354 BD is held to 2-1/2 in: ASTM lowers it
//! above. A574 yield is left out: prints disagree (160 or 162/153 ksi).

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
        from: Length::from_inches(from),
        to: Length::from_inches(to),
        proof: Some(Stress::from_ksi(proof)),
        yield_min: Some(Stress::from_ksi(yield_min)),
        tensile: Stress::from_ksi(tensile),
    }
}

const fn socket(from: f64, to: f64, proof: f64, tensile: f64) -> BoltStrength {
    BoltStrength {
        yield_min: None,
        ..row("a574", from, to, proof, 0.0, tensile)
    }
}

/// grade, from in, to in, proof ksi, yield ksi, tensile ksi.
#[rustfmt::skip]
pub const ROWS: &[BoltStrength] = &[
    row("sae-1",   0.25,  1.5,  33.0,  36.0,  60.0),
    row("sae-2",   0.25,  0.75, 55.0,  57.0,  74.0),
    row("sae-2",   0.875, 1.5,  33.0,  36.0,  60.0),
    row("sae-4",   0.25,  1.5,  65.0, 100.0, 115.0),
    row("sae-5",   0.25,  1.0,  85.0,  92.0, 120.0),
    row("sae-5",   1.125, 1.5,  74.0,  81.0, 105.0),
    row("sae-5.2", 0.25,  1.0,  85.0,  92.0, 120.0),
    row("sae-7",   0.25,  1.5, 105.0, 115.0, 133.0),
    row("sae-8",   0.25,  1.5, 120.0, 130.0, 150.0),
    socket(        0.06,  0.5, 140.0,        180.0),
    socket(        0.625, 1.5, 135.0,        170.0),
    row("a307",    0.25,  1.5,  33.0,  36.0,  60.0),
    row("a325",    1.125, 1.5,  74.0,  81.0, 105.0),
    row("a354-bd", 0.25,  2.5, 120.0, 130.0, 150.0),
    row("a449",    0.25,  1.0,  85.0,  92.0, 120.0),
    row("a449",    1.125, 1.5,  74.0,  81.0, 105.0),
    row("a449",    1.75,  3.0,  55.0,  58.0,  90.0),
    row("a490",    0.5,   1.5, 120.0, 130.0, 150.0),
];
