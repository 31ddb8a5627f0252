//! Why a command stopped: one text for the person at the terminal.
use std::fmt;

/// What most functions here give back.
pub type Res<T = ()> = Result<T, Fail>;

/// A reason to stop, and what to do about it.
pub struct Fail(String);

impl Fail {
    /// A reason in words.
    pub fn new(text: impl Into<String>) -> Self {
        Self(text.into())
    }

    /// A reason, and the one command that the user must run.
    pub fn cure(why: &str, command: &str) -> Self {
        Self(format!(
            "{why}\nRun this, then the same command again:\n\n    {command}\n"
        ))
    }
}

impl fmt::Display for Fail {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl<E: std::error::Error> From<E> for Fail {
    fn from(e: E) -> Self {
        Self(e.to_string())
    }
}

/// Adds what was being done to an error that only says what went wrong.
pub trait Doing<T> {
    /// `what` is a short phrase: "reading index.html".
    fn doing(self, what: impl fmt::Display) -> Res<T>;
}

impl<T, E: Into<Fail>> Doing<T> for Result<T, E> {
    fn doing(self, what: impl fmt::Display) -> Res<T> {
        self.map_err(|e| Fail(format!("{what}: {}", e.into())))
    }
}
