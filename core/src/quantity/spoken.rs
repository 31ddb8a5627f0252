//! How is a result said on a call, where nobody sees the digits?

use super::{Fraction, Kind, NOTHING, Unit, decimal, units};

const ONES: [&str; 20] = [
    "zero",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
    "sixteen",
    "seventeen",
    "eighteen",
    "nineteen",
];
const TENS: [&str; 10] = [
    "", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety",
];
/// From here on numbers are said digit by digit.
const MOST_SAID: u64 = 1_000_000_000_000;

/// The number and its unit in words, rounded as printed. Inch sizes are said in thou and tenths (0.0001 in), whole inches
/// first; other units as a decimal.
///
/// ```
/// use benchslate_core::quantity::{spoken, units};
/// assert_eq!(spoken(5.5626, &units::INCH, 4), "two hundred nineteen thou");
/// assert_eq!(spoken(4.769, &units::MM, 3), "four point seven six nine millimeters");
/// ```
pub fn spoken(base: f64, unit: &Unit, places: u8) -> String {
    let digits = decimal(base, unit, places);
    if digits == NOTHING {
        return "no number".into();
    }
    let (minus, size) = digits
        .strip_prefix('-')
        .map_or((false, digits.as_str()), |rest| (true, rest));
    let (whole, part) = size.split_once('.').unwrap_or((size, ""));
    let part = part.trim_end_matches('0');
    let mut text = String::new();
    if minus {
        text.push_str("minus ");
    }
    if unit.kind == Kind::Length && *unit == units::INCH {
        inches(&mut text, whole, part);
    } else if *unit == units::THOU {
        thou(&mut text, value(whole), part);
    } else if *unit == units::TAPER_RATIO {
        text.push_str("one to ");
        number(&mut text, whole, part);
    } else {
        number(&mut text, whole, part);
        if !unit.spoken.is_empty() {
            text.push(' ');
            unit_word(&mut text, unit.spoken, whole == "1" && part.is_empty());
        }
    }
    text
}

/// A fraction of an inch in words, without its unit: "seven sixteenths", "one and a half".
///
/// ```
/// use benchslate_core::quantity::{Length, nearest_fraction, spoken_fraction};
/// let near = nearest_fraction(Length::from_inches(0.4375), 64);
/// assert_eq!(spoken_fraction(&near), "seven sixteenths");
/// ```
pub fn spoken_fraction(fraction: &Fraction) -> String {
    let mut text = String::new();
    if fraction.negative {
        text.push_str("minus ");
    }
    if fraction.whole != 0 || fraction.numerator == 0 {
        words(&mut text, fraction.whole);
        if fraction.numerator == 0 {
            return text;
        }
        text.push_str(" and ");
    }
    match (fraction.numerator, fraction.denominator) {
        (1, 2) if fraction.whole != 0 => text.push_str("a half"),
        (1, 4) if fraction.whole != 0 => text.push_str("a quarter"),
        (n, d) => {
            words(&mut text, n);
            let name = match d {
                2 => " half",
                3 => " third",
                4 => " quarter",
                5 => " fifth",
                8 => " eighth",
                10 => " tenth",
                16 => " sixteenth",
                32 => " thirty-second",
                64 => " sixty-fourth",
                128 => " one-hundred-twenty-eighth",
                _ => {
                    text.push_str(" over ");
                    words(&mut text, d);
                    return text;
                }
            };
            text.push_str(name);
            if n != 1 {
                text.push('s');
            }
        }
    }
    text
}

/// Whole inches, then thou and tenths.
fn inches(text: &mut String, whole: &str, part: &str) {
    let inch = value(whole);
    if inch > 0 || part.is_empty() {
        words(text, inch);
        let quarter = match part {
            "5" => " and a half inches",
            "25" => " and a quarter inches",
            "75" => " and three quarter inches",
            "" if inch == 1 => " inch",
            "" => " inches",
            _ => "",
        };
        text.push_str(quarter);
        if !quarter.is_empty() {
            return;
        }
        text.push_str(if inch == 1 {
            " inch and "
        } else {
            " inches and "
        });
    }
    let (thousandths, rest) = part.split_at_checked(3).unwrap_or((part, ""));
    let missing = 3 - thousandths.len() as u32;
    thou(text, value(thousandths) * 10_u64.pow(missing), rest);
}

/// Thou, and the digits after them as tenths.
fn thou(text: &mut String, count: u64, part: &str) {
    if count > 0 || part.is_empty() {
        words(text, count);
        text.push_str(" thou");
    }
    let (tenths, finer) = part.split_at_checked(1).unwrap_or((part, ""));
    if tenths.is_empty() {
        return;
    }
    if count > 0 {
        text.push_str(" and ");
    }
    number(text, tenths, finer);
    text.push_str(if tenths == "1" && finer.is_empty() {
        " tenth"
    } else {
        " tenths"
    });
    if count == 0 {
        text.push_str(" of a thou");
    }
}

/// A decimal: whole part, "point", digit by digit.
fn number(text: &mut String, whole: &str, part: &str) {
    if value(whole) < MOST_SAID {
        words(text, value(whole));
    } else {
        digit_by_digit(text, whole);
    }
    if !part.is_empty() {
        text.push_str(" point ");
        digit_by_digit(text, part);
    }
}

fn digit_by_digit(text: &mut String, digits: &str) {
    for (i, byte) in digits.bytes().enumerate() {
        if i > 0 {
            text.push(' ');
        }
        text.push_str(name(&ONES, u64::from(byte.saturating_sub(b'0'))));
    }
}

fn name(table: &[&'static str], i: u64) -> &'static str {
    table.get(i as usize).copied().unwrap_or_default()
}

/// The value of a run of digits; a very long one is as good as the largest.
fn value(digits: &str) -> u64 {
    digits.bytes().fold(0, |n: u64, b| {
        n.saturating_mul(10)
            .saturating_add(u64::from(b.saturating_sub(b'0')))
    })
}

/// A whole number in words: "one hundred eighty-seven".
fn words(text: &mut String, n: u64) {
    for (size, name) in [
        (1_000_000_000, " billion"),
        (1_000_000, " million"),
        (1_000, " thousand"),
        (100, " hundred"),
    ] {
        if n >= size {
            words(text, n / size);
            text.push_str(name);
            if !n.is_multiple_of(size) {
                text.push(' ');
                words(text, n % size);
            }
            return;
        }
    }
    if n < 20 {
        return text.push_str(name(&ONES, n));
    }
    text.push_str(name(&TENS, n / 10));
    if !n.is_multiple_of(10) {
        text.push('-');
        text.push_str(name(&ONES, n % 10));
    }
}

/// The unit's word, in the singular where there is one of it: "inch per minute".
fn unit_word(text: &mut String, plural: &str, one: bool) {
    if !one {
        return text.push_str(plural);
    }
    let head = [
        " per ",
        " of ",
        " to ",
        " Celsius",
        " Fahrenheit",
        " included",
    ]
    .iter()
    .filter_map(|tail| plural.find(tail))
    .min();
    let (head, tail) = plural
        .split_at_checked(head.unwrap_or(plural.len()))
        .unwrap_or((plural, ""));
    let one = if let Some(stem) = head.strip_suffix("inches") {
        text.push_str(stem);
        "inch"
    } else if let Some(stem) = head.strip_suffix("feet") {
        text.push_str(stem);
        "foot"
    } else {
        head.strip_suffix('s').unwrap_or(head)
    };
    text.push_str(one);
    text.push_str(tail);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{Length, nearest_fraction, read, units::*};

    #[test]
    fn inch_sizes_are_said_in_thou_and_tenths() {
        for (inches, places, want) in [
            (0.219, 4, "two hundred nineteen thou"),
            (0.1878, 4, "one hundred eighty-seven thou and eight tenths"),
            (0.0145, 4, "fourteen thou and five tenths"),
            (0.0005, 4, "five tenths of a thou"),
            (0.0001, 4, "one tenth of a thou"),
            (0.00025, 5, "two point five tenths of a thou"),
            (1.0, 4, "one inch"),
            (1.5, 4, "one and a half inches"),
            (2.25, 4, "two and a quarter inches"),
            (1.219, 4, "one inch and two hundred nineteen thou"),
            (12.0005, 4, "twelve inches and five tenths of a thou"),
            (-0.005, 4, "minus five thou"),
            (0.0, 4, "zero inches"),
            (0.25, 4, "two hundred fifty thou"),
        ] {
            assert_eq!(spoken(inches * 25.4, &INCH, places), want);
        }
        assert_eq!(
            spoken(0.0145 * 25.4, &THOU, 1),
            "fourteen thou and five tenths"
        );
    }

    #[test]
    fn other_units_are_said_as_decimals() {
        for (x, unit, places, want) in [
            (4.769, &MM, 3, "four point seven six nine millimeters"),
            (1.0, &MM, 3, "one millimeter"),
            (850.0, &RPM, 0, "eight hundred fifty r p m"),
            (80.0, &SFM, 0, "eighty surface feet per minute"),
            (1.0, &SFM, 0, "one surface foot per minute"),
            (28.9, &LBF_FT, 1, "twenty-eight point nine foot-pounds"),
            (1.0, &IN_PER_MIN, 2, "one inch per minute"),
            (48.0, &TAPER_RATIO, 3, "one to forty-eight"),
            (-3.5, &DEGREE, 2, "minus three point five degrees"),
            (75.0, &PERCENT, 0, "seventy-five percent"),
            (0.2, &NUMBER, 3, "zero point two"),
            (
                1_234_567.0,
                &PSI,
                0,
                "one million two hundred thirty-four thousand five hundred sixty-seven p s i",
            ),
        ] {
            assert_eq!(spoken(unit.to_base(x), unit, places), want);
        }
        assert_eq!(spoken(f64::NAN, &MM, 3), "no number");
    }

    #[test]
    fn fractions() {
        for (text, want) in [
            ("7/16", "seven sixteenths"),
            ("1/2", "one half"),
            ("1 1/2", "one and a half"),
            ("-1 1/4", "minus one and a quarter"),
            ("1 21/64", "one and twenty-one sixty-fourths"),
            ("3/128", "three one-hundred-twenty-eighths"),
            ("1/64", "one sixty-fourth"),
            ("2", "two"),
            ("0", "zero"),
        ] {
            let mm = read(text, Kind::Length, &[&INCH]).unwrap().nominal;
            assert_eq!(
                spoken_fraction(&nearest_fraction(Length::from_mm(mm), 128)),
                want
            );
        }
    }
}
