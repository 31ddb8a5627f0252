//! Which fit is meant: `H7`, `m6`, `H7/m6`, `JS7`, `ZA8`, or in inches `RC 3`, `LN2`, `FN 1`?

use crate::call::{Call, CallFault, Said};
use crate::fit::inch::{self, InchClass, SERIES, Series};
use crate::fit::{FitClass, Grade, LETTERS, Member};

/// What a field for a fit takes.
pub const EXPECTED: &str = "a hole and a shaft, as H7/m6, or an inch class, as RC3";
/// What a field for one ISO class takes.
pub const EXPECTED_CLASS: &str =
    "a hole as H7 or a shaft as m6; capitals are holes, small letters shafts";

/// A fit or class as it was called.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum FitCall {
    /// One ISO class: a hole or a shaft.
    One(FitClass),
    /// An ISO fit.
    Pair {
        /// The hole.
        hole: FitClass,
        /// The shaft.
        shaft: FitClass,
    },
    /// A class of ANSI B4.1.
    Inch(InchClass),
}

impl FitCall {
    /// The plain way to write it.
    pub fn call(&self) -> String {
        match self {
            Self::One(class) => class.to_string(),
            Self::Pair { hole, shaft } => format!("{hole}/{shaft}"),
            Self::Inch(class) => class.to_string(),
        }
    }

    /// What was understood, in words.
    pub fn reading(&self) -> String {
        let iso = |class: &FitClass| match class.member {
            Member::Hole => format!("hole {class}"),
            Member::Shaft => format!("shaft {class}"),
        };
        match self {
            Self::One(class) => format!("{} of ISO 286", iso(class)),
            Self::Pair { hole, shaft } => format!("{}, {} of ISO 286", iso(hole), iso(shaft)),
            Self::Inch(class) => format!("{class} of ANSI B4.1, {}", inch::purpose(class.series)),
        }
    }
}

/// Reads a fit, an ISO class or an inch class. Case tells holes from shafts; inch classes go by either case.
///
/// # Errors
/// [`CallFault::Unfinished`] for `H`, `H7/`, `RC`; [`CallFault::NotDefined`] for letters and numbers that the standard
/// has not; [`CallFault::Unknown`] for the rest.
///
/// ```
/// use benchslate_core::calls::fit;
/// assert_eq!(fit::read("H7 / m6").unwrap().call(), "H7/m6");
/// assert_eq!(fit::read("rc 3").unwrap().call(), "RC3");
/// assert!(fit::read("Js7").is_err());
/// ```
pub fn read(text: &str) -> Result<FitCall, CallFault> {
    let Some(call) = squeeze(text) else {
        return Err(unknown());
    };
    if call.is_empty() {
        return Err(CallFault::Empty);
    }
    if let Some(series) = SERIES
        .into_iter()
        .find(|&s| starts_with_letters(&call, inch::letters(s)))
    {
        return read_inch(call.get(2..).unwrap_or(""), series).map(FitCall::Inch);
    }
    let Some((first, second)) = call.split_once('/') else {
        return read_class(&call).map(FitCall::One);
    };
    let first = read_class(first)?;
    if second.is_empty() {
        return Err(CallFault::Unfinished);
    }
    let second = read_class(second)?;
    match (first.member, second.member) {
        (Member::Hole, Member::Shaft) => Ok(FitCall::Pair {
            hole: first,
            shaft: second,
        }),
        (Member::Shaft, Member::Hole) => Ok(FitCall::Pair {
            hole: second,
            shaft: first,
        }),
        (member, _) => Err(CallFault::Unknown {
            says: match member {
                Member::Hole => "both are holes (capital letters)".into(),
                Member::Shaft => "both are shafts (small letters)".into(),
            },
            cure: "a fit is one hole and one shaft, as H7/m6".into(),
        }),
    }
}

/// Reads one ISO class: `H7`, `js6`, `ZA8`, `h01`.
///
/// # Errors
/// As [`read`].
pub fn read_class(call: &str) -> Result<FitClass, CallFault> {
    let digits = call
        .find(|c: char| c.is_ascii_digit())
        .unwrap_or(call.len());
    let (letters, grade) = call.split_at(digits);
    if letters.is_empty() || letters.len() > 2 || !letters.bytes().all(|b| b.is_ascii_alphabetic())
    {
        return Err(unknown());
    }
    if !grade.bytes().all(|b| b.is_ascii_digit()) {
        return Err(unknown());
    }
    if letters == "IT" {
        return Err(CallFault::Unknown {
            says: "IT gives the width of a tolerance, not its position".into(),
            cure: "put a letter for the place, as H7 or h7".into(),
        });
    }
    let Some((letter, member)) = LETTERS.iter().find_map(|&(letter, small, capital)| {
        let member = if letters == small {
            Member::Shaft
        } else if letters == capital {
            Member::Hole
        } else {
            return None;
        };
        Some((letter, member))
    }) else {
        let mixed = letters.bytes().any(|b| b.is_ascii_uppercase())
            && letters.bytes().any(|b| b.is_ascii_lowercase());
        return Err(if mixed {
            CallFault::Unknown {
                says: format!("{letters} mixes capital and small letters"),
                cure: format!(
                    "type {} for a hole or {} for a shaft",
                    letters.to_ascii_uppercase(),
                    letters.to_ascii_lowercase()
                ),
            }
        } else {
            CallFault::NotDefined {
                says: format!("ISO 286 has no letter {letters}"),
                cure: "it has a to zc without i, l, o, q and w".into(),
            }
        });
    };
    let grade = match grade {
        "" => return Err(CallFault::Unfinished),
        "01" => Grade::IT01,
        _ => {
            let plain = grade.len() <= 2 && (grade == "0" || !grade.starts_with('0'));
            let number = if plain { grade.parse().ok() } else { None };
            number
                .and_then(Grade::of)
                .ok_or_else(|| CallFault::NotDefined {
                    says: "ISO 286 has no such grade".into(),
                    cure: "it has 01, 0 and 1 to 18".into(),
                })?
        }
    };
    Ok(FitClass {
        member,
        letter,
        grade,
    })
}

/// A field that takes a fit, one class, or an inch class.
pub static FIT_CALL: Call = Call {
    name: "fit",
    read: said,
};

fn said(text: &str) -> Result<Said, CallFault> {
    let call = read(text)?;
    Ok(Said {
        call: call.call(),
        reading: call.reading(),
    })
}

fn read_inch(number: &str, series: Series) -> Result<InchClass, CallFault> {
    if number.is_empty() {
        return Err(CallFault::Unfinished);
    }
    if !number.bytes().all(|b| b.is_ascii_digit()) {
        return Err(unknown());
    }
    let plain = number.len() <= 2 && !number.starts_with('0');
    let number = if plain { number.parse().ok() } else { None };
    number
        .and_then(|n| InchClass::of(series, n))
        .ok_or_else(|| {
            let letters = inch::letters(series);
            CallFault::NotDefined {
                says: format!("ANSI B4.1 has no such {letters} class"),
                cure: format!("it has {letters}1 to {letters}{}", inch::highest(series)),
            }
        })
}

fn starts_with_letters(call: &str, letters: &str) -> bool {
    call.get(..2)
        .is_some_and(|head| head.eq_ignore_ascii_case(letters))
}

/// Without spaces, with one kind of stroke between hole and shaft; `None` for what no call has.
fn squeeze(text: &str) -> Option<String> {
    let mut out = String::new();
    let mut before = ' ';
    let mut spaced = false;
    for character in text.trim().chars().take(25) {
        let next = match character {
            '/' | '-' | '\u{2044}' | '\u{2010}'..='\u{2014}' | '\u{2215}' => '/',
            c if c.is_ascii_alphanumeric() => c,
            c if c.is_whitespace() => {
                spaced = true;
                continue;
            }
            _ => return None,
        };
        // "H7 m6" is a fit; "H 7" one class; "H7 6" nothing.
        if spaced && before.is_ascii_digit() {
            if next.is_ascii_digit() {
                return None;
            }
            if next.is_ascii_alphabetic() {
                out.push('/');
            }
        }
        out.push(next);
        before = next;
        spaced = false;
    }
    (out.len() <= 16 && text.trim().chars().nth(25).is_none()).then_some(out)
}

fn unknown() -> CallFault {
    CallFault::Unknown {
        says: String::new(),
        cure: format!("type {EXPECTED}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_and_reads_back() {
        for (typed, plain) in [
            ("H7", "H7"),
            ("m6", "m6"),
            ("H7/m6", "H7/m6"),
            ("m6/H7", "H7/m6"),
            ("H7-m6", "H7/m6"),
            ("H7 m6", "H7/m6"),
            ("JS7", "JS7"),
            ("js6", "js6"),
            (" ZA 8 ", "ZA8"),
            ("zc18", "zc18"),
            ("h01", "h01"),
            ("H0", "H0"),
            ("RC 3", "RC3"),
            ("ln2", "LN2"),
            ("FN 1", "FN1"),
            ("LC11", "LC11"),
            ("CD6", "CD6"),
        ] {
            let call = read(typed).unwrap().call();
            assert_eq!(call, plain);
            assert_eq!(read(&call).unwrap().call(), call);
        }
    }

    #[test]
    fn half_typed_is_not_wrong() {
        for text in ["H", "js", "H7/", "H7/m", "RC", "F", "z"] {
            assert_eq!(read(text), Err(CallFault::Unfinished), "{text}");
        }
        assert_eq!(read("  "), Err(CallFault::Empty));
    }

    #[test]
    fn refuses_with_a_reason() {
        for text in [
            "Js7",
            "H7/H7",
            "h6/m6",
            "IT7",
            "7H",
            "H7/m6/k6",
            "H7 6",
            "H7+",
            "m6\u{202e}",
            "RCx",
            "RC3/H7",
        ] {
            assert!(
                matches!(read(text), Err(CallFault::Unknown { .. })),
                "{text} {:?}",
                read(text)
            );
        }
        for text in [
            "H19", "H07", "w6", "o6", "RC10", "RC0", "FN6", "LN4", "H001",
        ] {
            assert!(
                matches!(read(text), Err(CallFault::NotDefined { .. })),
                "{text} {:?}",
                read(text)
            );
        }
        assert!(read(&"H".repeat(10_000)).is_err());
    }
}
