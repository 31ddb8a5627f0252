//! Why was an entry not read, and what could be typed instead?

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
        /// The symbol of the unit that was typed.
        unit: String,
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
            Self::WrongKind { unit } => {
                let mut text = unit.clone();
                text.push_str(" does not measure this");
                text
            }
            Self::ZeroDenominator => "divides by zero".into(),
            Self::NotWhole => "must be a whole number".into(),
            Self::TooLong => "is too long: at most 64 characters and 15 digits".into(),
            Self::TooLarge => "is too large for any machine".into(),
        }
    }
}
