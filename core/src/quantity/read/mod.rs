//! What does a typed entry mean, as a number with a unit? Shop notation in; never a guess.

mod fault;

pub use fault::{Choice, ReadFault};

use super::{Exact, Kind, Unit};

/// What was understood from an entry.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Reading {
    /// The value, in the kind's base unit.
    pub nominal: f64,
    /// How far it may lie below, in the base unit, never under 0.
    pub minus: f64,
    /// How far it may lie above, in the base unit, never under 0.
    pub plus: f64,
    /// The unit that it was read in.
    pub unit: &'static Unit,
    /// Whether no unit was typed.
    pub bare: bool,
    /// For lengths: the value to 0.1 nm.
    pub exact: Option<Exact>,
}

/// Reads an entry of one kind. A bare number takes the first unit offered (the kind's first where none is); any unit of
/// the kind is accepted when typed.
///
/// # Errors
/// What stands in the way, as a [`ReadFault`]; nothing is ever guessed or cut.
pub fn read(text: &str, kind: Kind, offered: &[&'static Unit]) -> Result<Reading, ReadFault> {
    let _ = (text, kind, offered);
    Err(ReadFault::Empty)
}
