//! What is wrong with an entry, and what cures it? Typed faults that name the field, the text, what is allowed and a cure.

use super::Field;

/// Why an entry does not serve.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Reason {
    /// It can't be read.
    Unreadable,
    /// It is half typed: wait for the rest.
    Unfinished,
    /// It reads in more than one way: one is to be chosen.
    Ambiguous,
    /// It is outside the range of the formula or table.
    OutOfRange,
    /// The standard does not define this.
    NotDefined,
    /// We have no verified source for this.
    NoSource,
    /// Two entries contradict each other.
    Conflict,
}

impl Reason {
    /// For machines: the reason's name.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Unreadable => "unreadable",
            Self::Unfinished => "unfinished",
            Self::Ambiguous => "ambiguous",
            Self::OutOfRange => "out-of-range",
            Self::NotDefined => "not-defined",
            Self::NoSource => "no-source",
            Self::Conflict => "conflict",
        }
    }
}

/// One way to read an ambiguous entry: what to type instead, and what it then means.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Way {
    /// What to type.
    pub text: String,
    /// What it means.
    pub label: String,
}

/// A fault of one field, or of the whole entry (`field` empty).
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Fault {
    /// The field's id; empty for the whole entry.
    pub field: &'static str,
    /// Row and column, counted from 1, in a list.
    pub at: Option<(usize, usize)>,
    /// The text that was typed.
    pub typed: String,
    /// Why it does not serve.
    pub reason: Reason,
    /// What is wrong and what is allowed, lower case, without a full stop.
    pub says: String,
    /// What to do.
    pub cure: String,
    /// Ways to choose from.
    pub ways: Vec<Way>,
}

impl Fault {
    /// A fault of one field.
    pub fn of(
        field: &'static str,
        reason: Reason,
        says: impl Into<String>,
        cure: impl Into<String>,
    ) -> Self {
        Self {
            field,
            at: None,
            typed: String::new(),
            reason,
            says: says.into(),
            cure: cure.into(),
            ways: Vec::new(),
        }
    }
    /// One line of text: what, and the cure.
    pub fn text(&self) -> String {
        self.text_in(None)
    }
    /// The same with the place in a list by the name of its column.
    pub fn text_in(&self, field: Option<&Field>) -> String {
        let mut text = String::new();
        if let Some(at) = self.at {
            text = match field {
                Some(field) => field.place(at),
                None => format!("row {}, column {}", at.0, at.1),
            } + ": ";
        }
        text.push_str(&self.says);
        if !self.cure.is_empty() {
            text.push_str("; ");
            text.push_str(&self.cure);
        }
        text
    }
}

/// A limit is passed: the limit and the reason, and no number.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Withheld {
    /// The field that passes it; may be empty.
    pub field: &'static str,
    /// The limit, with its unit.
    pub limit: String,
    /// Why no number is given.
    pub reason: String,
    /// What to do.
    pub cure: String,
}

/// Why a sheet gives no answer.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum Stop {
    /// A field that is needed is empty.
    Missing(&'static str),
    /// A fault.
    Fault(Box<Fault>),
    /// A limit is passed.
    Withheld(Box<Withheld>),
}

impl From<Fault> for Stop {
    fn from(fault: Fault) -> Self {
        Self::Fault(Box::new(fault))
    }
}

impl From<Withheld> for Stop {
    fn from(withheld: Withheld) -> Self {
        Self::Withheld(Box::new(withheld))
    }
}

impl Stop {
    /// A fault of one field.
    pub fn fault(
        field: &'static str,
        reason: Reason,
        says: impl Into<String>,
        cure: impl Into<String>,
    ) -> Self {
        Fault::of(field, reason, says, cure).into()
    }
    /// A limit that is passed.
    pub fn withheld(
        field: &'static str,
        limit: impl Into<String>,
        reason: impl Into<String>,
        cure: impl Into<String>,
    ) -> Self {
        Withheld {
            field,
            limit: limit.into(),
            reason: reason.into(),
            cure: cure.into(),
        }
        .into()
    }
}
