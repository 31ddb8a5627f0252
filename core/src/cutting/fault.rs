//! Why can this cut not be figured? The limits that the cutting formulas have.

use core::fmt;

/// A value outside the range of a cutting formula. Figures are in the unit that the text names.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum CutFault {
    /// Has to be more than nothing.
    NotPositive(&'static str),
    /// Has to be at most so many millimetres.
    TooLarge {
        /// What is too large.
        what: &'static str,
        /// The limit, millimetres.
        limit_mm: f64,
        /// Why there is a limit.
        why: &'static str,
    },
    /// The table runs between two figures and this is outside.
    OutsideTable {
        /// What was looked up.
        what: &'static str,
        /// The table's low end.
        low: f64,
        /// The table's high end.
        high: f64,
        /// The unit of both.
        unit: &'static str,
    },
}

impl fmt::Display for CutFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NotPositive(what) => write!(f, "{what} has to be more than 0"),
            Self::TooLarge {
                what,
                limit_mm,
                why,
            } => write!(f, "{what} can be at most {limit_mm} mm: {why}"),
            Self::OutsideTable {
                what,
                low,
                high,
                unit,
            } => {
                write!(
                    f,
                    "{what} is outside the table, which runs from {low} to {high} {unit}"
                )
            }
        }
    }
}

impl core::error::Error for CutFault {}

/// The value, if it is a finite number above nothing.
pub(crate) fn positive(value: f64, what: &'static str) -> Result<f64, CutFault> {
    if value > 0.0 && value.is_finite() {
        Ok(value)
    } else {
        Err(CutFault::NotPositive(what))
    }
}
