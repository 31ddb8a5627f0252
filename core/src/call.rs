//! How does a named standard thing come in: a text, its reader, what was understood, or why not?

/// How a named standard thing is written (a thread, a drill, a pin, a fit): a reader that gives the plain way to
/// write it and what was understood.
pub struct Call {
    /// What it is, in words: "thread", "drill".
    pub name: &'static str,
    /// The reader.
    pub read: fn(&str) -> Result<Said, CallFault>,
}

/// What a call reader understood.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Said {
    /// The plain ASCII way to write it, which reads back to the same.
    pub call: String,
    /// What was understood, for the line under the field.
    pub reading: String,
}

/// Why a call can't be taken.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum CallFault {
    /// Nothing typed.
    Empty,
    /// Half typed: wait for the rest.
    Unfinished,
    /// It can't be read; `says` may be empty, the field then says so in its own words.
    Unknown {
        /// What is wrong, lower case, no full stop.
        says: String,
        /// What to type.
        cure: String,
    },
    /// It reads in more than one way: (what to type, what it means).
    Ambiguous(Vec<(String, String)>),
    /// Well formed, but the standard does not define it.
    NotDefined {
        /// What is not defined, and by which standard.
        says: String,
        /// The nearest that is.
        cure: String,
    },
    /// As [`CallFault::NotDefined`], with what stands near to choose from.
    Near {
        /// What is not defined, and by which standard.
        says: String,
        /// What to do.
        cure: String,
        /// What to type, and what it is.
        ways: Vec<(String, String)>,
    },
    /// Well formed, and the standard may define it, but our tables do not reach it.
    NoSource {
        /// Where our tables end.
        says: String,
        /// What to do.
        cure: String,
    },
}
