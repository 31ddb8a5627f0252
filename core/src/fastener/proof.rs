//! What clamp load may a screw be given, and what share of its proof load is a given one?

use super::{Fault, positive};
use crate::quantity::{Area, Force, Share, Stress};

/// Usual clamp load of a joint that will be taken apart again: 75 % of the proof load (Shigley, eq. 8-31).
pub const REUSABLE: Share = Share::from_percent(75.0);
/// Usual clamp load of a permanent joint: 90 % of the proof load (Shigley, eq. 8-31).
pub const PERMANENT: Share = Share::from_percent(90.0);

/// The proof load: `F = A S`, stress area times proof strength.
///
/// Source: SAE J429, ISO 898-1.
///
/// # Errors
/// An area or strength not above zero.
///
/// ```
/// use benchslate_core::fastener::proof::proof_load;
/// use benchslate_core::quantity::{Area, Stress};
/// // SAE J429: 1/2-13 grade 5 has 12,100 lbf (rounded).
/// let f = proof_load(Area::from_in2(0.1419), Stress::from_ksi(85.0)).unwrap();
/// assert!((f.lbf() / 12_100.0 - 1.0).abs() < 0.006);
/// ```
pub fn proof_load(area: Area, proof_strength: Stress) -> Result<Force, Fault> {
    let a = positive(area.mm2(), "stress area")?;
    let s = positive(proof_strength.mpa(), "proof strength")?;
    Ok(Force::from_newtons(a * s))
}

/// The share of the proof load that a clamp load takes.
///
/// # Errors
/// Past the proof load: the limit, not a number. A load not above zero.
pub fn share_of_proof(clamp: Force, proof: Force) -> Result<Share, Fault> {
    positive(clamp.newtons(), "clamp load")?;
    positive(proof.newtons(), "proof load")?;
    // A share of exactly 100 % typed as a percentage must not fail on the last bit.
    if clamp.newtons() > proof.newtons() * (1.0 + 1e-12) {
        return Err(Fault::BeyondProof { clamp, proof });
    }
    Ok(Share::from_fraction(clamp / proof))
}
