//! How is a length kept so that every shop fraction and every usual decimal goes in and out unchanged?

use super::Length;

/// A length as a whole number of 0.1 nm: 1 in is 254,000,000, so every 1/128 in, every inch decimal to 6 places and every
/// millimetre decimal to 5 is whole. Range ±9.2 × 10¹¹ mm.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Default)]
pub struct Exact(i64);

/// Tenths of a nanometre in a millimetre.
const PER_MM: f64 = 1e7;

impl Exact {
    /// From a count of 0.1 nm.
    pub const fn from_tenth_nm(count: i64) -> Self {
        Self(count)
    }
    /// The count of 0.1 nm.
    pub const fn tenth_nm(self) -> i64 {
        self.0
    }
    /// The nearest to a number of millimetres, ties away from zero; nothing where it isn't finite or too large.
    pub fn from_mm(mm: f64) -> Option<Self> {
        let count = mm * PER_MM;
        (count.abs() < 9.0e18).then(|| {
            // Beyond 2^52 every f64 is whole and the half would be rounded in.
            let half = if count.abs() < 4.0e15 { 0.5 } else { 0.0 };
            Self(if count < 0.0 {
                (count - half) as i64
            } else {
                (count + half) as i64
            })
        })
    }
    /// In millimetres, correctly rounded.
    pub fn mm(self) -> f64 {
        self.0 as f64 / PER_MM
    }
    /// As a typed length.
    pub fn length(self) -> Length {
        Length::from_mm(self.mm())
    }
    /// `n / d` of a unit that holds `unit` tenths of a nanometre, ties up; nothing past the range or over nothing.
    pub(crate) fn of(n: u64, d: u64, unit: u64) -> Option<Self> {
        let d = u128::from(d);
        let product = u128::from(n) * u128::from(unit);
        let whole = (product + d / 2).checked_div(d)?;
        i64::try_from(whole).ok().map(Self)
    }
}
