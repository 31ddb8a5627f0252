//! How is a result said on a call?

use super::{Fraction, Unit, decimal};

/// The number and its unit in words.
pub fn spoken(base: f64, unit: &Unit, places: u8) -> String {
    let mut text = decimal(base, unit, places);
    text.push(' ');
    text.push_str(unit.spoken);
    text
}

/// A fraction of an inch in words: "seven sixteenths".
pub fn spoken_fraction(fraction: &Fraction) -> String {
    fraction.text.clone()
}
