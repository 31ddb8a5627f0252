//! Which number stands at this place: a decimal, a fraction or a mixed number, as a whole over a whole?

use super::ReadFault;

/// An unsigned number, `n / d`, and where it ends.
#[derive(Clone, Copy, Debug)]
pub struct Number {
    /// Numerator, at most 2^53.
    pub n: u64,
    /// Denominator, never 0.
    pub d: u64,
    /// The place after it.
    pub end: usize,
    /// Where a comma stands that may mean thousands.
    pub thousands: Option<usize>,
    /// Whether it was typed as a fraction.
    pub fraction: bool,
}

impl Number {
    /// As a float, correctly rounded.
    pub fn value(&self) -> f64 {
        self.n as f64 / self.d as f64
    }
    /// Whether it is whole.
    pub fn is_whole(&self) -> bool {
        self.n.is_multiple_of(self.d)
    }
}

/// The byte at a place, 0 past the end.
pub fn at(b: &[u8], i: usize) -> u8 {
    b.get(i).copied().unwrap_or(0)
}

/// The next place without a space.
pub fn skip(b: &[u8], mut i: usize) -> usize {
    while at(b, i) == b' ' {
        i += 1;
    }
    i
}

/// Most significant digits of a number: each is then a whole number that a float holds.
const DIGITS: u64 = 1_000_000_000_000_000;
const MOST: u64 = 1 << 53;
/// Largest power of ten under a decimal.
const WIDEST: u64 = 1_000_000_000_000_000_000;

/// A run of digits: its value and its end.
fn run(b: &[u8], start: usize) -> Result<(u64, usize), ReadFault> {
    let (mut value, mut i) = (0_u64, start);
    while at(b, i).is_ascii_digit() {
        value = value * 10 + u64::from(at(b, i) - b'0');
        if value >= DIGITS {
            return Err(ReadFault::TooLong);
        }
        i += 1;
    }
    Ok((value, i))
}

const fn no(why: &'static str) -> ReadFault {
    ReadFault::Unreadable { why }
}

/// The number that starts at `start`.
pub fn number(b: &[u8], start: usize) -> Result<Number, ReadFault> {
    let (whole, i) = run(b, start)?;
    match at(b, i) {
        b'.' | b',' => return decimal(b, start, i, whole),
        _ if i == start => {
            return Err(if i >= b.len() {
                ReadFault::Unfinished
            } else {
                no("a number must stand first, as 1/4, 0.250 or 6.35 mm")
            });
        }
        b'/' if at(b, i + 1).is_ascii_digit() => return fraction(b, i + 1, 0, whole),
        b'/' if i + 1 >= b.len() => return Err(ReadFault::Unfinished),
        b'e' if has_power(b, i) => {
            let whole = Number {
                n: whole,
                d: 1,
                end: i,
                thousands: None,
                fraction: false,
            };
            return power(b, whole);
        }
        b' ' | b'-' => {
            if let Some(mixed) = mixed(b, i, whole)? {
                return Ok(mixed);
            }
        }
        _ => {}
    }
    Ok(Number {
        n: whole,
        d: 1,
        end: i,
        thousands: None,
        fraction: false,
    })
}

fn decimal(b: &[u8], start: usize, mark: usize, whole: u64) -> Result<Number, ReadFault> {
    let comma = at(b, mark) == b',';
    if matches!(at(b, mark + 1), b'.' | b',') {
        return Err(no("two points or commas in a row: write one, as 1.25"));
    }
    let (mut n, mut d, mut i) = (whole, 1_u64, mark + 1);
    // Past the fifteenth digit a decimal is rounded: far under what any figure here is kept to.
    let mut past = false;
    while at(b, i).is_ascii_digit() {
        let digit = u64::from(at(b, i) - b'0');
        if past {
        } else if n * 10 + digit >= DIGITS {
            past = true;
            n += u64::from(digit >= 5);
        } else if d >= WIDEST {
            return Err(ReadFault::TooLong);
        } else {
            n = n * 10 + digit;
            d *= 10;
        }
        i += 1;
    }
    let (before, after) = (mark - start, i - mark - 1);
    if after == 0 && (comma || before == 0) {
        return Err(if i >= b.len() {
            ReadFault::Unfinished
        } else {
            no("a decimal point needs digits")
        });
    }
    if matches!(at(b, i), b'.' | b',') && (at(b, i + 1).is_ascii_digit() || at(b, i) == b',') {
        return Err(no(
            "holds more than one point or comma: write 1250.5 without thousands",
        ));
    }
    let next = skip(b, i);
    if next > i && at(b, next).is_ascii_digit() {
        return Err(no("a decimal and a second number: write one or the other"));
    }
    let thousands =
        (comma && after == 3 && (1..=3).contains(&before) && at(b, start) != b'0').then_some(mark);
    let read = Number {
        n,
        d,
        end: i,
        thousands,
        fraction: false,
    };
    if has_power(b, i) && !comma {
        return power(b, read);
    }
    Ok(read)
}

/// A small number as programs print it, `5e-06`; no other power of ten is shop notation.
fn has_power(b: &[u8], i: usize) -> bool {
    at(b, i) == b'e' && at(b, i + 1) == b'-' && at(b, i + 2).is_ascii_digit()
}

fn power(b: &[u8], of: Number) -> Result<Number, ReadFault> {
    let (places, end) = run(b, of.end + 2)?;
    if places > 30 {
        return Err(ReadFault::TooLong);
    }
    let mut n = of.n;
    let mut d = (0..places).fold(u128::from(of.d), |d, _| d.saturating_mul(10));
    while d > u128::from(WIDEST) {
        n = (n + 5) / 10;
        d /= 10;
    }
    Ok(Number {
        n,
        d: u64::try_from(d).unwrap_or(WIDEST),
        end,
        ..of
    })
}

/// The denominator at `start`, under `numerator` after `whole`.
fn fraction(b: &[u8], start: usize, whole: u64, numerator: u64) -> Result<Number, ReadFault> {
    let (d, end) = run(b, start)?;
    if d == 0 {
        return Err(ReadFault::ZeroDenominator);
    }
    let n = whole
        .checked_mul(d)
        .and_then(|n| n.checked_add(numerator))
        .filter(|n| *n <= MOST)
        .ok_or(ReadFault::TooLarge)?;
    if at(b, end) == b'/' && (at(b, end + 1).is_ascii_digit() || at(b, end + 1) == b'/') {
        return Err(no("holds a second fraction bar"));
    }
    let next = skip(b, end);
    if next > end && at(b, next).is_ascii_digit() {
        return Err(no(
            "a number after a fraction: write the whole number first, as 1-1/4",
        ));
    }
    if matches!(at(b, end), b'.' | b',') && at(b, end + 1).is_ascii_digit() {
        return Err(no("a fraction takes whole numbers above and below its bar"));
    }
    Ok(Number {
        n,
        d,
        end,
        thousands: None,
        fraction: true,
    })
}

/// `1 1/4` or `1-1/4`, whose separator stands at `i`; nothing where no second number follows.
fn mixed(b: &[u8], i: usize, whole: u64) -> Result<Option<Number>, ReadFault> {
    let second = if at(b, i) == b'-' { i + 1 } else { skip(b, i) };
    if second >= b.len() {
        return Err(ReadFault::Unfinished);
    }
    if !at(b, second).is_ascii_digit() {
        return Ok(None);
    }
    let (numerator, bar) = run(b, second)?;
    if bar >= b.len() || (at(b, bar) == b'/' && bar + 1 >= b.len()) {
        return Err(ReadFault::Unfinished);
    }
    if at(b, bar) != b'/' || !at(b, bar + 1).is_ascii_digit() {
        return Err(no(
            "two numbers without a fraction: write a mixed number as 1-1/4",
        ));
    }
    let out = fraction(b, bar + 1, whole, numerator)?;
    if numerator >= out.d {
        if out.end >= b.len() {
            return Err(ReadFault::Unfinished); // "1 21/6" on the way to 1 21/64
        }
        return Err(no("the fraction of a mixed number must be under one"));
    }
    Ok(Some(out))
}
