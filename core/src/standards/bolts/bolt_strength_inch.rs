//! Strength grades of inch screws: SAE J429 and ASTM.
//!
//! Unit: ksi (authoritative) and inches, from ... up to and including. Sources: SAE J429 as in Shigley's Mechanical
//! Engineering Design, Table 8-9; ASTM A307, A325, A354, A449 and A490 as in Shigley & Mischke, 5th ed., p. 341 ff., held
//! against bolt makers' charts; A574 (with its yield, 153 ksi in both ranges) and F593 from makers' charts. SAE grade 2 to
//! 3/4 in (55/57/74) is from memory of the same table; so is A354 over 2-1/2 in. A325 to 1 in: tensile and yield read on
//! two charts and borne out by AISC 360-05, Table J3.1 (0.70 of tensile times stress area), proof from memory; F3125 keeps
//! its strength to 1-1/2 in. A307 has neither proof nor yield in its standard: a textbook lists them to 1-1/2 in. F593
//! defines no proof load; its cold-worked marks change at 5/8 to 3/4 in. A574 runs to 4 in, held against printed loads to 2-1/2 in.

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

/// Without a proof load.
const fn no_proof(
    grade: &'static str,
    from: f64,
    to: f64,
    yield_min: f64,
    tensile: f64,
) -> BoltStrength {
    BoltStrength {
        proof: None,
        ..row(grade, from, to, 0.0, yield_min, tensile)
    }
}

/// Tensile strength alone.
const fn tensile_only(grade: &'static str, from: f64, to: f64, tensile: f64) -> BoltStrength {
    BoltStrength {
        yield_min: None,
        ..no_proof(grade, from, to, 0.0, tensile)
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
    row("a574",    0.06,  0.5, 140.0, 153.0, 180.0),
    row("a574",    0.625, 4.0, 135.0, 153.0, 170.0),
    row("a307",    0.25,  1.5,  33.0,  36.0,  60.0),
    tensile_only("a307", 1.75, 4.0,           60.0),
    row("a325",    0.5,   1.0,  85.0,  92.0, 120.0),
    row("a325",    1.125, 1.5,  74.0,  81.0, 105.0),
    row("f3125-a325", 0.5, 1.5, 85.0,  92.0, 120.0),
    row("a354-bc", 0.25,  2.5, 105.0, 109.0, 125.0),
    row("a354-bc", 2.75,  4.0,  95.0,  99.0, 115.0),
    row("a354-bd", 0.25,  2.5, 120.0, 130.0, 150.0),
    row("a354-bd", 2.75,  4.0, 105.0, 115.0, 140.0),
    row("a449",    0.25,  1.0,  85.0,  92.0, 120.0),
    row("a449",    1.125, 1.5,  74.0,  81.0, 105.0),
    row("a449",    1.75,  3.0,  55.0,  58.0,  90.0),
    row("a490",    0.5,   1.5, 120.0, 130.0, 150.0),
    no_proof("f593-a",  0.25, 1.5,     20.0,  65.0),
    no_proof("f593-b",  0.25, 1.5,     30.0,  75.0),
    no_proof("f593-cw", 0.25, 0.625,   65.0, 100.0),
    no_proof("f593-cw", 0.75, 1.5,     45.0,  85.0),
];
