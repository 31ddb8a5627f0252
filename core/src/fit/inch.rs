//! What are the limits of an inch fit of ANSI B4.1 at a size?

use super::band::{Band, Limits};
use super::fault::FitFault;
use crate::quantity::Length;
use crate::standards::fits::b41::Row;
pub use crate::standards::fits::b41::{Certainty, Series};
use core::fmt;

/// Sizes that differ by less than this are one size.
const NOISE_IN: f64 = 1e-9;

/// A class of fit, such as RC4.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub struct InchClass {
    /// RC, LC, LT, LN or FN.
    pub series: Series,
    /// 1 to 9 (RC), 11 (LC), 6 (LT), 3 (LN), 5 (FN).
    pub number: u8,
}

impl InchClass {
    /// The class of that number; `None` where the series has no such number.
    ///
    /// ```
    /// use benchslate_core::fit::inch::{InchClass, Series};
    /// assert_eq!(InchClass::of(Series::Rc, 4).unwrap().to_string(), "RC4");
    /// assert!(InchClass::of(Series::Ln, 4).is_none());
    /// ```
    pub fn of(series: Series, number: u8) -> Option<Self> {
        (number >= 1 && number <= highest(series)).then_some(Self { series, number })
    }
}

/// The highest number of a series.
pub fn highest(series: Series) -> u8 {
    u8::try_from(series.classes().len()).unwrap_or(0)
}

/// The letters of a series.
pub const fn letters(series: Series) -> &'static str {
    match series {
        Series::Rc => "RC",
        Series::Lc => "LC",
        Series::Lt => "LT",
        Series::Ln => "LN",
        Series::Fn => "FN",
    }
}

/// All series in the standard's order.
pub const SERIES: [Series; 5] = [Series::Rc, Series::Lc, Series::Lt, Series::Ln, Series::Fn];

/// What a series is for, in the trade's words.
pub const fn purpose(series: Series) -> &'static str {
    match series {
        Series::Rc => "running and sliding fit",
        Series::Lc => "locational clearance fit",
        Series::Lt => "locational transition fit",
        Series::Ln => "locational interference fit",
        Series::Fn => "force and shrink fit",
    }
}

/// An inch fit at a size, with how sure its figures are.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct InchFit {
    /// Limits and band; interference is negative clearance throughout.
    pub band: Band,
    /// Whether the row was read in print.
    pub certainty: Certainty,
}

/// Limits and band of an inch class at a nominal size. A size on a boundary belongs to the lower row.
///
/// ```
/// use benchslate_core::{fit::inch::{self, InchClass, Series}, quantity::Length};
/// let fn2 = InchClass::of(Series::Fn, 2).unwrap();
/// let fit = inch::fit(Length::from_inches(2.0), fn2).unwrap();
/// assert!((fit.band.shaft.upper.thou() - 2.7).abs() < 1e-9); // ANSI B4.1-1967, Table 11
/// ```
///
/// Range: above 0 to 19.69 in, as far as the tables are to hand. Source: ANSI B4.1-1967, Tables 8 to 12.
///
/// # Errors
/// [`FitFault::InchNotDefined`] below the class's first row, [`FitFault::InchNoSource`] where a row is not to hand,
/// [`FitFault::InchSizeAboveTable`] past 19.69 in.
pub fn fit(size: Length, class: InchClass) -> Result<InchFit, FitFault> {
    let inches = size.inches() - NOISE_IN;
    if inches.is_nan() || inches <= 0.0 {
        return Err(FitFault::SizeNotPositive);
    }
    if inches > 19.69 {
        return Err(FitFault::InchSizeAboveTable);
    }
    if inches <= class.series.starts_above(class.number) {
        return Err(FitFault::InchNotDefined(class));
    }
    let row = row_of(inches, class);
    match row {
        Some(row) if row.read != Certainty::Missing => {
            let hole = Limits {
                upper: length(row.hole_upper),
                lower: Length::ZERO,
            };
            let shaft = Limits {
                upper: length(row.shaft_upper),
                lower: length(row.shaft_lower),
            };
            Ok(InchFit {
                band: Band::of(hole, shaft),
                certainty: row.read,
            })
        }
        _ => Err(FitFault::InchNoSource(class)),
    }
}

/// The row of a class whose step holds this size in inches.
fn row_of(inches: f64, class: InchClass) -> Option<&'static Row> {
    let at = usize::from(class.number).checked_sub(1)?;
    let rows = class.series.classes().get(at)?;
    rows.iter().find(|row| inches <= row.to_in())
}

/// Shaft limits of another print of the standard at that size, where one differs from [`fit`].
///
/// ```
/// use benchslate_core::{fit::inch::{self, InchClass, Series}, quantity::Length};
/// let rc4 = InchClass::of(Series::Rc, 4).unwrap();
/// let shaft = inch::other_print(Length::from_inches(10.0), rc4).unwrap(); // a textbook's appendix, after B4.1 (R2004)
/// assert!((shaft.upper.thou() + 2.2).abs() < 1e-9);
/// assert!(inch::other_print(Length::from_inches(9.0), rc4).is_none());
/// ```
pub fn other_print(size: Length, class: InchClass) -> Option<Limits> {
    let row = row_of(size.inches() - NOISE_IN, class)?;
    let (upper, lower) = class.series.other_print(class.number, row)?;
    Some(Limits {
        upper: Length::from_inches(upper / 1000.0),
        lower: Length::from_inches(lower / 1000.0),
    })
}

/// From hundredths of a thousandth of an inch.
fn length(hundredths: i16) -> Length {
    Length::from_inches(f64::from(hundredths) / 100_000.0)
}

impl fmt::Display for InchClass {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}{}", letters(self.series), self.number)
    }
}
