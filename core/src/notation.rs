//! What do all calls have in common in writing: dashes, crosses, commas, fractions and inch marks?

use crate::call::CallFault;

/// The longest call that is looked at; anything longer is no call.
const LONGEST: usize = 48;

/// One spelling for all: upper case, plain dash, `X` for the cross, single spaces; inch marks become ` IN`.
/// `None` where the text is too long or holds a character that no call has.
pub(crate) fn tidy(text: &str) -> Option<String> {
    let mut out = String::new();
    for (at, character) in text.trim().chars().enumerate() {
        if at >= LONGEST {
            return None;
        }
        match character {
            '\u{2010}'..='\u{2014}' | '\u{2212}' => out.push('-'),
            '\u{d7}' | '*' => out.push('X'),
            '"' | '\u{201c}' | '\u{201d}' | '\u{2033}' => out.push_str(" IN"),
            '\u{bc}' => fraction(&mut out, "1/4"),
            '\u{bd}' => fraction(&mut out, "1/2"),
            '\u{be}' => fraction(&mut out, "3/4"),
            '\u{215b}' => fraction(&mut out, "1/8"),
            '\u{215c}' => fraction(&mut out, "3/8"),
            '\u{215d}' => fraction(&mut out, "5/8"),
            '\u{215e}' => fraction(&mut out, "7/8"),
            _ if character.is_whitespace() => {
                if !out.ends_with(' ') {
                    out.push(' ');
                }
            }
            _ if character.is_ascii_graphic() => out.push(character.to_ascii_uppercase()),
            _ => return None,
        }
    }
    Some(out.trim().to_owned())
}

/// The fault for a text that is no call of its kind.
pub(crate) fn unknown(text: &str, expected: &str) -> CallFault {
    let short: String = text.chars().filter(|c| !c.is_control()).take(40).collect();
    CallFault::Unknown {
        says: format!("\"{short}\" is not read here"),
        cure: format!("type {expected}"),
    }
}

/// The fault for a call that reads, but that the standard does not have.
pub(crate) fn not_defined(what: &str, standard: &str, near: &[String]) -> CallFault {
    let cure = if near.is_empty() {
        String::new()
    } else {
        format!("it has {}", near.join(", "))
    };
    CallFault::NotDefined {
        says: format!("{standard} has no {what}"),
        cure,
    }
}

fn fraction(out: &mut String, text: &str) {
    if out.ends_with(|last: char| last.is_ascii_digit()) {
        out.push(' ');
    }
    out.push_str(text);
}

/// A tidied call with digits in place of the letters O, I and L that stand beside a digit, a dash or a bar; none where there
/// is no such letter.
pub(crate) fn digits_meant(call: &str) -> Option<String> {
    let all: Vec<char> = call.chars().collect();
    let beside = |at: Option<usize>| at.and_then(|at| all.get(at)).copied().unwrap_or(' ');
    let out: String = all
        .iter()
        .enumerate()
        .map(|(at, letter)| {
            let digit = match letter {
                'O' => '0',
                'I' | 'L' => '1',
                other => return *other,
            };
            let (before, after) = (beside(at.checked_sub(1)), beside(at.checked_add(1)));
            let figure = |c: char| c.is_ascii_digit() || matches!(c, '.' | '/' | '-' | '#');
            let alone = !before.is_ascii_alphabetic() && !after.is_ascii_alphabetic();
            if alone && (figure(before) || figure(after)) {
                digit
            } else {
                *letter
            }
        })
        .collect();
    (out != call).then_some(out)
}

/// A plain decimal, point or comma, without sign or exponent. A comma before three digits is refused:
/// it might part thousands.
pub(crate) fn decimal(text: &str) -> Option<f64> {
    let text = text.trim();
    let known = |c: char| c.is_ascii_digit() || c == '.' || c == ',';
    if text.is_empty() || text.len() > 12 || !text.chars().all(known) {
        return None;
    }
    let marks = text.chars().filter(|c| !c.is_ascii_digit()).count();
    if marks > 1 || text.len() == marks || text.ends_with(['.', ',']) {
        return None;
    }
    if let Some((whole, part)) = text.split_once(',')
        && part.len() == 3
        && !whole.is_empty()
        && whole != "0"
    {
        return None;
    }
    crate::quantity::number(&text.replace(',', "."))
}

/// A whole number of at most four digits.
pub(crate) fn whole(text: &str) -> Option<u16> {
    let text = text.trim();
    (!text.is_empty() && text.len() <= 4 && text.chars().all(|c| c.is_ascii_digit()))
        .then(|| text.parse().ok())
        .flatten()
}

/// A fraction or mixed number as (numerator, denominator), improper where it is mixed: `13/64`, `1-21/64`, `1 1/8`.
pub(crate) fn mixed(text: &str) -> Option<(u16, u16)> {
    let text = text.trim();
    let (front, under) = text.split_once('/')?;
    let under = whole(under).filter(|d| d.is_power_of_two() && (2..=128).contains(d))?;
    let (units, over) = match front.trim().rsplit_once([' ', '-']) {
        Some((units, over)) => (whole(units.trim_end_matches('-'))?, whole(over)?),
        None => (0, whole(front)?),
    };
    if over == 0 || (units > 0 && over >= under) || units > 99 {
        return None;
    }
    Some((units.checked_mul(under)?.checked_add(over)?, under))
}

/// A decimal with at most so many places, ties away from zero, without trailing zeros.
pub(crate) fn plain(value: f64, places: u8) -> String {
    let scale = (0..places).fold(1.0, |scale, _| scale * 10.0);
    // Sizes here are below 10,000, so the scaled figure is exact in a double and fits.
    let scaled = libm::round(value * scale) as i64;
    let sign = if scaled < 0 { "-" } else { "" };
    let digits = format!(
        "{:0>width$}",
        scaled.unsigned_abs(),
        width = usize::from(places) + 1
    );
    let (whole, part) = digits.split_at(digits.len().saturating_sub(usize::from(places)));
    let part = part.trim_end_matches('0');
    if part.is_empty() {
        format!("{sign}{whole}")
    } else {
        format!("{sign}{whole}.{part}")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_spelling() {
        assert_eq!(tidy(" 1/4 – 20\u{a0}unc ").as_deref(), Some("1/4 - 20 UNC"));
        assert_eq!(tidy("m6 × 0,75").as_deref(), Some("M6 X 0,75"));
        assert_eq!(tidy("1\u{bd}").as_deref(), Some("1 1/2"));
        assert_eq!(tidy(&"9".repeat(10_000)), None);
        assert_eq!(tidy("1/4\u{202e}"), None);
    }

    #[test]
    fn numbers() {
        assert_eq!(decimal("0,75"), Some(0.75));
        assert_eq!(decimal(".201"), Some(0.201));
        for refused in ["1,250", "1e3", "inf", "NaN", "", ".", "1.", "1.2.3", "-1"] {
            assert_eq!(decimal(refused), None, "{refused}");
        }
        assert_eq!(mixed("1-21/64"), Some((85, 64)));
        assert_eq!(mixed("1 1/8"), Some((9, 8)));
        for refused in ["1/0", "1//2", "1/1 1/2", "1/3", "0/4", "1 9/8", "1/"] {
            assert_eq!(mixed(refused), None, "{refused}");
        }
        assert_eq!(plain(1.5, 3), "1.5");
        assert_eq!(plain(10.0, 3), "10");
        assert_eq!(plain(0.35, 2), "0.35");
        assert_eq!(plain(-0.0005, 4), "-0.0005");
    }
}
