//! How is a number printed: which digits, rounded how? The same natively and in WebAssembly, since all is whole numbers.

use super::{Exact, Scale, Unit};

/// What stands where there is no number.
pub const NOTHING: &str = "—";

/// A number as whole digits: `count / 10^places`, with its sign.
struct Digits {
    negative: bool,
    count: u128,
    places: u32,
}

fn pow10(n: u32) -> u128 {
    10_u64
        .checked_pow(n)
        .map_or_else(|| 10_u128.pow(n.min(30)), u128::from)
}

/// The number in the unit to `places` decimals: digits alone, rounded once, ties away from zero. Lengths are first set to
/// the nearest 0.1 nm, other kinds to 12 significant digits, so that a tie on paper is a tie here. Never "-0.000"; "—"
/// where the number isn't finite.
///
/// ```
/// use benchslate_core::quantity::{decimal, units};
/// assert_eq!(decimal(4.76885, &units::INCH, 4), "0.1878"); // 0.18775 in
/// ```
pub fn decimal(base: f64, unit: &Unit, places: u8) -> String {
    rounded(base, unit, u32::from(places)).map_or_else(|| NOTHING.into(), |d| d.text(false))
}

/// For screen and paper: as [`decimal`], with a plus before a number above zero and a true minus below. Zero has no sign.
pub fn signed(base: f64, unit: &Unit, places: u8) -> String {
    let text = rounded(base, unit, u32::from(places)).map(|d| d.text(true));
    text.map_or_else(|| NOTHING.into(), paper)
}

/// For screen and paper: as [`decimal`], with a true minus and the unit's symbol in its place: "0.1878 in", "3.5°",
/// "75%", "1:48".
pub fn with_unit(base: f64, unit: &Unit, places: u8) -> String {
    join(&paper(decimal(base, unit, places)), unit)
}

/// A number's digits as they stand on screen and paper: with a true minus. Links and data keep the hyphen.
///
/// ```
/// assert_eq!(benchslate_core::quantity::paper("-0.0012".into()), "\u{2212}0.0012");
/// ```
pub fn paper(digits: String) -> String {
    match digits.strip_prefix('-') {
        Some(size) => format!("\u{2212}{size}"),
        None => digits,
    }
}

/// How many decimals leave `figures` significant digits, at most `places`; and the number rounded to them where even no
/// decimal is too many. Zero figures: all of them.
///
/// ```
/// use benchslate_core::quantity::{to_figures, units};
/// assert_eq!(to_figures(42063.0 * 4.4482216152605, &units::LBF, 0, 3).0.round(), 187_270.0); // 42,100 lbf
/// ```
pub fn to_figures(base: f64, unit: &Unit, places: u8, figures: u8) -> (f64, u8) {
    let value = unit.from_base(base);
    let size = value.abs();
    if figures == 0 || !(1e-12..=1e15).contains(&size) {
        return (base, places);
    }
    // digits before the point
    let mut whole: u32 = 0;
    let mut ten = 1.0;
    while size >= ten && whole < 16 {
        ten *= 10.0;
        whole += 1;
    }
    let figures = u32::from(figures);
    if whole > figures {
        let step = pow10(whole - figures) as f64;
        return (unit.to_base(libm::round(value / step) * step), 0);
    }
    let mut below = 0;
    let mut small = size;
    while whole == 0 && small < 0.1 && below < 12 {
        small *= 10.0;
        below += 1;
    }
    let most = figures - whole + below;
    (base, places.min(most as u8))
}

/// Digits and the unit's symbol put together.
pub fn join(digits: &str, unit: &Unit) -> String {
    if digits == NOTHING || unit.symbol.is_empty() {
        return digits.into();
    }
    let mut text = String::with_capacity(digits.len() + unit.symbol.len() + 1);
    if unit.symbol.ends_with(':') {
        text.push_str(unit.symbol);
        text.push_str(digits);
        return text;
    }
    text.push_str(digits);
    let tight = unit.symbol == "%"
        || unit.symbol == "°"
        || unit.symbol == "′"
        || unit.symbol == "″"
        || unit.symbol.starts_with("° ");
    if !tight {
        text.push(' ');
    }
    text.push_str(unit.symbol);
    text
}

/// The shortest decimal that reads back to the same: for copying. Lengths are the same to 0.1 nm, other kinds to 12
/// significant digits.
pub fn plain(base: f64, unit: &Unit) -> String {
    if let (Some(per), Some(exact)) = (unit.tenth_nm(), exact_of(base, unit)) {
        let size = u128::from(exact.tenth_nm().unsigned_abs());
        for places in 0..16_u32 {
            let d = length(exact, per, places);
            let reads = u64::try_from(d.count).is_ok();
            if reads && half_up(d.count * u128::from(per), pow10(places)) == size {
                return d.text(false);
            }
        }
    }
    match snapped(unit.from_base(base)) {
        Some(d) => d.trimmed().text(false),
        None => NOTHING.into(),
    }
}

fn exact_of(base: f64, unit: &Unit) -> Option<Exact> {
    unit.tenth_nm()?;
    Exact::from_mm(base)
}

/// A length in a unit that holds `per` tenths of a nanometre.
fn length(exact: Exact, per: u64, places: u32) -> Digits {
    let n = u128::from(exact.tenth_nm().unsigned_abs()) * pow10(places);
    Digits {
        negative: exact.tenth_nm() < 0,
        count: half_up(n, u128::from(per)),
        places,
    }
}

fn rounded(base: f64, unit: &Unit, places: u32) -> Option<Digits> {
    let places = places.min(15);
    if let (Some(per), Some(exact)) = (unit.tenth_nm(), exact_of(base, unit)) {
        return Some(length(exact, per, places));
    }
    let mut value = unit.from_base(base);
    if matches!(unit.scale, Scale::Offset { .. }) && value.abs() < 1e-9 {
        value = 0.0; // what the offset's cancellation leaves of nothing
    }
    snapped(value).map(|d| d.to_places(places))
}

/// The number to 12 significant digits.
fn snapped(value: f64) -> Option<Digits> {
    if !value.is_finite() || value.abs() >= 1e24 {
        return None;
    }
    let size = value.abs();
    if size < 1e-18 {
        return Some(Digits {
            negative: false,
            count: 0,
            places: 0,
        });
    }
    // Bring the number into 1e11 ≤ n < 1e12; each power of ten up to 22 is exact, so one rounding happens here.
    let mut places = 0_i32;
    let mut power = 1.0;
    let mut n = size;
    while n < 1e11 && places < 22 {
        places += 1;
        power *= 10.0;
        n = size * power;
    }
    while n >= 1e12 {
        places -= 1;
        power = if places == -1 { 10.0 } else { power * 10.0 };
        n = size / power;
    }
    let digits = (n + 0.5) as u64;
    let negative = value < 0.0;
    Some(if places < 0 {
        Digits {
            negative,
            count: u128::from(digits) * pow10(places.unsigned_abs()),
            places: 0,
        }
    } else {
        Digits {
            negative,
            count: u128::from(digits),
            places: places.unsigned_abs(),
        }
    })
}

fn half_up(n: u128, d: u128) -> u128 {
    parted(n + d / 2, d).0
}

/// Quotient and rest; zero times where the divisor is nothing. Nearly all that is printed fits the processor's own division.
fn parted(n: u128, d: u128) -> (u128, u128) {
    if let (Ok(n), Ok(d)) = (u64::try_from(n), u64::try_from(d)) {
        let quotient = n.checked_div(d).unwrap_or(0);
        return (u128::from(quotient), u128::from(n - quotient * d));
    }
    let quotient = n.checked_div(d).unwrap_or(0);
    (quotient, n - quotient * d)
}

impl Digits {
    fn to_places(&self, places: u32) -> Self {
        let count = if places >= self.places {
            self.count * pow10(places - self.places)
        } else {
            half_up(self.count, pow10(self.places - places))
        };
        Self {
            negative: self.negative,
            count,
            places,
        }
    }

    fn trimmed(self) -> Self {
        let mut out = self;
        while out.places > 0 && out.count.is_multiple_of(10) {
            out.count /= 10;
            out.places -= 1;
        }
        out
    }

    fn text(&self, plus: bool) -> String {
        let mut text = String::with_capacity(16);
        if self.count != 0 {
            if self.negative {
                text.push('-');
            } else if plus {
                text.push('+');
            }
        }
        let (whole, rest) = parted(self.count, pow10(self.places));
        long(&mut text, whole, 1);
        if self.places > 0 {
            text.push('.');
            long(&mut text, rest, self.places as usize);
        }
        text
    }
}

/// Appends a whole number's digits, with zeros before them to at least so many.
fn long(text: &mut String, n: u128, least: usize) {
    const FIGURES: usize = 18;
    const BLOCK: u128 = 1_000_000_000_000_000_000;
    if let Ok(small) = u64::try_from(n) {
        return padded(text, small, least);
    }
    let (more, block) = parted(n, BLOCK);
    long(text, more, least.saturating_sub(FIGURES));
    padded(text, block as u64, FIGURES);
}

fn padded(text: &mut String, n: u64, least: usize) {
    let mut digits = [b'0'; 32];
    let (mut rest, mut count) = (n, 0_usize);
    for place in digits.iter_mut().rev() {
        if rest == 0 && count >= least {
            break;
        }
        *place = b'0' + (rest % 10) as u8;
        rest /= 10;
        count += 1;
    }
    let from = digits.len().saturating_sub(count);
    text.extend(digits.iter().skip(from).map(|digit| char::from(*digit)));
}

/// Appends a whole number's digits.
pub fn whole(text: &mut String, n: u64) {
    padded(text, n, 1);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::units::*;

    #[test]
    fn digits_are_those_of_the_number() {
        let mut random = fastrand::Rng::with_seed(5);
        for bits in 0..110 {
            for _ in 0..50 {
                let count = random.u128(0..=1 << bits);
                let places = random.u32(0..=22);
                let text = Digits {
                    negative: false,
                    count,
                    places,
                }
                .text(false);
                let wanted = format!("{count:0>width$}", width = places as usize + 1);
                let (whole, rest) = wanted.split_at(wanted.len() - places as usize);
                let point = if places > 0 { "." } else { "" };
                assert_eq!(text, format!("{whole}{point}{rest}"));
            }
        }
    }

    #[test]
    fn ties_go_away_from_zero() {
        for (inches, places, want) in [
            (0.18775, 4, "0.1878"),
            (-0.18775, 4, "-0.1878"),
            (0.00005, 4, "0.0001"),
            (0.000049, 4, "0.0000"),
            (-0.000049, 4, "0.0000"),
            (2.675, 2, "2.68"),
            (1.005, 2, "1.01"),
            (1.0, 0, "1"),
            (0.5, 0, "1"),
            (1_000_000.0, 3, "1000000.000"),
        ] {
            assert_eq!(decimal(inches * 25.4, &INCH, places), want);
        }
        // Binary floats just off a tie on paper, in kinds that are not lengths.
        for (x, unit, places, want) in [
            (1.005, &LBF_FT, 2, "1.01"),
            (2.675, &RPM, 2, "2.68"),
            (0.285, &PERCENT, 2, "0.29"),
            (1.45, &IN_PER_MIN, 1, "1.5"),
        ] {
            assert_eq!(decimal(unit.to_base(x), unit, places), want);
        }
    }

    #[test]
    fn nothing_and_signs() {
        for bad in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 1e300] {
            assert_eq!(decimal(bad, &MM, 3), "—");
            assert_eq!(with_unit(bad, &RPM, 0), "—");
            assert_eq!(plain(bad, &MM), "—");
        }
        assert_eq!(decimal(0.0, &TPI, 1), "—"); // no pitch, no count of threads
        assert_eq!(signed(0.0028 * 25.4, &INCH, 4), "+0.0028");
        assert_eq!(signed(-0.0028 * 25.4, &INCH, 4), "\u{2212}0.0028");
        assert_eq!(signed(-0.0, &MM, 3), "0.000");
        assert_eq!(decimal(-0.0, &NEWTON, 0), "0");
        assert_eq!(decimal(f64::MIN_POSITIVE, &NEWTON, 3), "0.000");
    }

    #[test]
    fn plain_is_the_shortest_that_reads_back() {
        for (x, unit, want) in [
            (0.25, &INCH, "0.25"),
            (1.0 / 128.0, &INCH, "0.0078125"),
            (1.0 / 3.0, &INCH, "0.333333335"), // 84,666,667 tenths of a nanometre
            (6.35, &MM, "6.35"),
            (1e6, &MM, "1000000"),
            (850.0, &RPM, "850"),
            (28.9, &LBF_FT, "28.9"),
            (0.1, &NUMBER, "0.1"),
            (123_456_789_012_345.0, &NUMBER, "123456789012000"),
            (48.0, &TAPER_RATIO, "48"),
        ] {
            assert_eq!(plain(unit.to_base(x), unit), want);
        }
    }

    /// Against whole-number arithmetic over a spread of sizes: never further off than half of the last digit.
    #[test]
    fn lengths_are_rounded_right_at_every_size() {
        for (unit, per) in [
            (&INCH, 254_000_000_i128),
            (&THOU, 254_000),
            (&MM, 10_000_000),
            (&MICRON, 10_000),
            (&FOOT, 3_048_000_000),
        ] {
            let mut count: i64 = 1;
            while count < 9_000_000_000_000 {
                count += count / 7 + 1;
                for sign in [1, -1] {
                    let exact = Exact::from_tenth_nm(sign * count);
                    for places in 0..7_u8 {
                        let text = decimal(exact.mm(), unit, places);
                        let digits: i128 = text.replace('.', "").parse().unwrap();
                        let off = digits * per
                            - i128::from(sign * count) * 10_i128.pow(u32::from(places));
                        assert!(off.abs() * 2 <= per, "{text} {} of {count}", unit.id);
                        // On a tie the size grows.
                        assert!(
                            off.abs() * 2 < per || (off > 0) == (sign > 0),
                            "{text} {} of {count}",
                            unit.id
                        );
                    }
                }
            }
        }
    }

    #[test]
    fn figures_are_no_more_than_asked() {
        for (value, unit, places, figures, want) in [
            (42063.0, &LBF, 0, 3, "42100"),
            (999.6, &LBF, 0, 3, "1000"),
            (1004.0, &LBF, 0, 3, "1000"),
            (1005.0, &LBF, 0, 3, "1010"),
            (-1236.0, &PSI, 0, 3, "-1240"),
            (135.582, &NEWTON_METRE, 3, 4, "135.6"),
            (0.745_70, &KILOWATT, 4, 4, "0.7457"),
            (0.012_345_6, &KILOWATT, 6, 3, "0.0123"),
            (27.24, &LBF_FT, 1, 3, "27.2"),
            (12750.0, &LBF, 0, 0, "12750"),
            (0.0, &LBF, 0, 3, "0"),
        ] {
            let (base, places) = to_figures(unit.to_base(value), unit, places, figures);
            assert_eq!(decimal(base, unit, places), want);
        }
    }

    #[test]
    fn units_stand_where_the_trade_puts_them() {
        assert_eq!(with_unit(1.0 / 48.0, &TAPER_RATIO, 0), "1:48");
        assert_eq!(with_unit(3.5, &DEGREE, 1), "3.5°");
        assert_eq!(with_unit(0.75, &PERCENT, 0), "75%");
        assert_eq!(with_unit(20.0, &CELSIUS, 0), "20 °C");
        assert_eq!(with_unit(0.2, &NUMBER, 2), "0.20");
    }
}
