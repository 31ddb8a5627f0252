//! Torque, clamp load and the strength of threads: what to tighten to, what it gives, and what fails first.
//!
//! Plain typed functions; every one names its formula, range and source. A clamp load past the proof load or a length that
//! makes no sense is a fault with the limit, never a number.

pub mod long_form;
pub mod proof;
pub mod short_form;
pub mod strip;
pub mod tension;
pub mod wrench;

use crate::quantity::{Force, Length};

/// Why there is no result.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Fault {
    /// The clamp load passes the proof load: the screw would take a set.
    BeyondProof {
        /// What was asked for.
        clamp: Force,
        /// The limit.
        proof: Force,
    },
    /// A size, load, factor or torque must be above zero.
    NotPositive {
        /// What it is, in shop words.
        what: &'static str,
    },
    /// The pitch does not fit the diameter: the thread would have no core.
    PitchTooCoarse {
        /// The diameter.
        diameter: Length,
    },
    /// The thread limits do not lie in order (minor below pitch below major).
    LimitsOutOfOrder,
    /// The thread friction is so high that the formula breaks down.
    FrictionTooHigh {
        /// Most friction for which the formula holds.
        limit: f64,
    },
}

fn positive(value: f64, what: &'static str) -> Result<f64, Fault> {
    if value > 0.0 && value.is_finite() {
        Ok(value)
    } else {
        Err(Fault::NotPositive { what })
    }
}
