//! How is a named standard thing written? One reader a kind of call: thread, drill, pin, fit.

pub mod drill;
pub mod fit;
pub(crate) mod named;
pub(crate) mod notation;
pub mod pin;
pub mod thread;

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
