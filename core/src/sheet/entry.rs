//! What was typed? Texts by field id, kept as typed, and the system of units that results are shown in.

use crate::quantity::System;

/// Texts by field id, in the order in which they were first given.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Entry {
    /// The system that results are shown in, and whose unit a bare number takes.
    pub system: System,
    texts: Vec<(String, String)>,
}

impl Entry {
    /// From pairs of field id and text.
    pub fn of(pairs: &[(&str, &str)]) -> Self {
        let mut entry = Self::default();
        for (id, text) in pairs {
            entry.set(id, text);
        }
        entry
    }
    /// The same in another system of units.
    pub fn in_system(mut self, system: System) -> Self {
        self.system = system;
        self
    }
    /// The text of a field, where one was given.
    pub fn get(&self, id: &str) -> Option<&str> {
        self.texts
            .iter()
            .find(|(key, _)| key == id)
            .map(|(_, text)| text.as_str())
    }
    /// Sets a field's text; an empty text takes the field out.
    pub fn set(&mut self, id: &str, text: &str) {
        if text.is_empty() {
            self.texts.retain(|(key, _)| key != id);
        } else if let Some((_, old)) = self.texts.iter_mut().find(|(key, _)| key == id) {
            text.clone_into(old);
        } else {
            self.texts.push((id.to_owned(), text.to_owned()));
        }
    }
    /// All that was given.
    pub fn texts(&self) -> impl Iterator<Item = (&str, &str)> {
        self.texts
            .iter()
            .map(|(id, text)| (id.as_str(), text.as_str()))
    }
    /// True where nothing was given.
    pub fn is_empty(&self) -> bool {
        self.texts.is_empty()
    }
}
