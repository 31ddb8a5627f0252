//! What was asked on the command line: a command, then options with or without a value.
use crate::fail::{Fail, Res};

/// The words after `cargo xtask`.
pub struct Args {
    words: Vec<String>,
}

impl Args {
    /// The words of this process.
    pub fn from_env() -> Self {
        Self {
            words: std::env::args().skip(1).collect(),
        }
    }

    /// The first word, or an empty text.
    pub fn command(&self) -> &str {
        self.words.first().map_or("", String::as_str)
    }

    /// The words after the command.
    pub fn rest(&self) -> &[String] {
        self.words.get(1..).unwrap_or_default()
    }

    /// Stops at an option that the command does not know.
    pub fn allow(&self, flags: &[&str], values: &[&str]) -> Res {
        let mut words = self.words.iter().skip(1);
        while let Some(word) = words.next() {
            let name = word.split('=').next().unwrap_or(word);
            if values.contains(&name) {
                if !word.contains('=') && words.next().is_none() {
                    return Err(Fail::new(format!("{name} needs a value")));
                }
            } else if !flags.contains(&word.as_str()) {
                let known = [flags, values].concat().join(", ");
                return Err(Fail::new(format!(
                    "{} does not know `{word}`; it knows: {known}",
                    self.command()
                )));
            }
        }
        Ok(())
    }

    /// True where the option stands.
    pub fn has(&self, flag: &str) -> bool {
        self.words.iter().any(|w| w == flag)
    }

    /// The value of `--name value` or `--name=value`.
    pub fn value(&self, name: &str) -> Option<&str> {
        let at = self
            .words
            .iter()
            .position(|w| w.split('=').next() == Some(name))?;
        match self.words.get(at)?.split_once('=') {
            Some((_, value)) => Some(value),
            None => self.words.get(at + 1).map(String::as_str),
        }
    }
}
