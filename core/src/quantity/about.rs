//! How is a number shown whose digits run on? Rounded to what a shop can use, and marked so.

use super::{Unit, decimal, join, plain};

/// Most digits after the point that are shown as they are: 1/128 in has seven.
const WHOLE: usize = 7;

/// The number with its unit: whole where it is short, else "about" and a decimal more than usual. A third of an inch is
/// "about 0.33333 in", not the 0.333333335 in that it is kept as.
///
/// ```
/// use benchslate_core::quantity::{about, units};
/// assert_eq!(about(25.4 / 3.0, &units::INCH), "about 0.33333 in");
/// assert_eq!(about(25.4 / 128.0, &units::INCH), "0.0078125 in");
/// ```
pub fn about(base: f64, unit: &'static Unit) -> String {
    let digits = about_digits(base, unit);
    match digits.strip_prefix(ABOUT) {
        Some(digits) => String::from(ABOUT) + &join(digits, unit),
        None => join(&digits, unit),
    }
}

const ABOUT: &str = "about ";

/// As [`about`], without the unit.
pub(crate) fn about_digits(base: f64, unit: &'static Unit) -> String {
    let whole = plain(base, unit);
    let places = whole.split_once('.').map_or(0, |(_, part)| part.len());
    if places <= WHOLE {
        return whole;
    }
    String::from(ABOUT) + &decimal(base, unit, unit.places.saturating_add(1))
}
