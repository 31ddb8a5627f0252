//! Which fraction of an inch lies nearest to a length, and how far off is it?

use super::{Exact, Length, print::whole};

/// The fraction of an inch nearest to a length.
#[derive(Clone, PartialEq, Debug)]
pub struct Fraction {
    /// In lowest terms: `7/16`, `1-7/16`, `-1-1/4`, `2`, `0`.
    pub text: String,
    /// Whole inches, without the sign.
    pub whole: u64,
    /// Numerator over [`Fraction::denominator`], in lowest terms; 0 where the fraction is whole.
    pub numerator: u64,
    /// Denominator in lowest terms; 1 where the fraction is whole.
    pub denominator: u64,
    /// Whether it lies below zero.
    pub negative: bool,
    /// The fraction's own length.
    pub length: Length,
    /// The fraction less the length: above zero, the fraction is the larger. Exactly zero where they agree to 0.1 nm.
    pub difference: Length,
}

const INCH: u64 = 254_000_000;

/// The nearest `1/denominator` of an inch, ties away from zero (to the larger size), in lowest terms. A denominator of
/// 0 is taken as 1.
///
/// ```
/// use benchslate_core::quantity::{Length, nearest_fraction};
/// let near = nearest_fraction(Length::from_mm(11.0), 64);
/// assert_eq!(near.text, "7/16"); // 11.1125 mm
/// assert!((near.difference.mm() - 0.1125).abs() < 1e-9);
/// ```
pub fn nearest_fraction(len: Length, denominator: u32) -> Fraction {
    let exact = Exact::from_mm(len.mm()).unwrap_or_default();
    let negative = exact.tenth_nm() < 0;
    let size = u128::from(exact.tenth_nm().unsigned_abs());
    let parts = u128::from(denominator.max(1));
    let inch = u128::from(INCH);
    let count = u64::try_from((size * parts * 2 + inch) / (inch * 2)).unwrap_or(u64::MAX);
    let parts = u64::from(denominator.max(1));
    let (whole_inches, over) = (count / parts, count % parts);
    let common = gcd(over, parts);
    let (numerator, denominator) = (over / common, parts / common);
    let own = Exact::of(count, parts, INCH).unwrap_or_default().tenth_nm();
    let own = Exact::from_tenth_nm(if negative { -own } else { own });
    let difference = Exact::from_tenth_nm(own.tenth_nm().saturating_sub(exact.tenth_nm()));
    let negative = negative && count != 0;
    let mut text = String::new();
    if negative {
        text.push('-');
    }
    if whole_inches != 0 || numerator == 0 {
        whole(&mut text, whole_inches);
    }
    if numerator != 0 {
        if whole_inches != 0 {
            text.push('-');
        }
        whole(&mut text, numerator);
        text.push('/');
        whole(&mut text, denominator);
    }
    Fraction {
        text,
        whole: whole_inches,
        numerator,
        denominator,
        negative,
        length: own.length(),
        difference: difference.length(),
    }
}

fn gcd(a: u64, b: u64) -> u64 {
    if b == 0 { a.max(1) } else { gcd(b, a % b) }
}
