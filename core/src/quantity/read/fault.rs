//! Why was an entry not read, and what could be typed instead?

use crate::quantity::{Kind, Unit, units_of};

/// One way to read an ambiguous entry.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Choice {
    /// What to type instead: "1.250 in".
    pub text: String,
    /// What it means, in words: "one point two five zero inches".
    pub label: String,
}

/// Why an entry was not read.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum ReadFault {
    /// Nothing was typed.
    Empty,
    /// The start of something that would be read: more is to be typed.
    Unfinished,
    /// Not shop notation.
    Unreadable {
        /// What is wrong and what to type, in one line.
        why: &'static str,
    },
    /// It has more than one meaning; these are they.
    Ambiguous(Vec<Choice>),
    /// It carries a unit of another kind.
    WrongKind {
        /// The unit that was typed, as it is typed.
        unit: String,
        /// The kind that is asked for.
        kind: Kind,
    },
    /// Not shop notation as it stands, but a slip of the keys away from it.
    Meant {
        /// What is wrong, in one line.
        why: &'static str,
        /// What was most likely meant.
        choice: Choice,
    },
    /// A fraction or a ratio over nothing.
    ZeroDenominator,
    /// A whole number is wanted here.
    NotWhole,
    /// Past the bound on characters or digits.
    TooLong,
    /// Past the bound on size.
    TooLarge,
}

impl ReadFault {
    /// The fault in one plain line, lower case.
    pub fn text(&self) -> String {
        match self {
            Self::Empty => "nothing is entered".into(),
            Self::Unfinished => "not finished yet".into(),
            Self::Unreadable { why } => (*why).into(),
            Self::Ambiguous(choices) => {
                let mut text = String::from("has more than one meaning:");
                for (i, choice) in choices.iter().enumerate() {
                    text.push_str(if i == 0 { " " } else { " or " });
                    text.push_str(&choice.text);
                }
                text
            }
            Self::WrongKind { unit, kind } => {
                let mut text = Self::wrong_kind(unit, *kind);
                let units = Self::use_units(units_of(*kind));
                if !units.is_empty() {
                    text.push_str(": ");
                    text.push_str(&units);
                }
                text
            }
            Self::Meant { why, choice } => {
                let mut text = String::from(*why);
                text.push_str(": write ");
                text.push_str(&choice.text);
                text
            }
            Self::ZeroDenominator => "divides by zero".into(),
            Self::NotWhole => "must be a whole number".into(),
            Self::TooLong => "is too long: at most 64 characters and 15 digits".into(),
            Self::TooLarge => "is too large for any machine".into(),
        }
    }

    /// What a unit of another kind is not: "\u{201c}kg\u{201d} is not a length".
    pub(crate) fn wrong_kind(unit: &str, kind: Kind) -> String {
        let mut text = String::from("\u{201c}");
        text.push_str(unit);
        text.push_str("\u{201d} is not ");
        text.push_str(kind.noun());
        text
    }

    /// Which units to type: "use in, mm or thou"; empty where the kind has none.
    pub(crate) fn use_units(units: &[&'static Unit]) -> String {
        let mut text = String::new();
        let named = units.iter().filter(|unit| !unit.id.is_empty()).take(3);
        let ids: Vec<&str> = named.map(|unit| unit.id).collect();
        for (i, id) in ids.iter().enumerate() {
            text.push_str(match i {
                0 => "use ",
                _ if i + 1 == ids.len() => " or ",
                _ => ", ",
            });
            text.push_str(id);
        }
        text
    }
}
