//! Which calculations are kept? A list of links with names and notes, the start of the job card.

use super::Record;

/// One kept calculation.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct KeptItem {
    /// What the user calls it.
    pub name: String,
    /// Its link.
    pub link: String,
    /// The user's note.
    #[cfg_attr(feature = "serde", serde(default))]
    pub note: String,
    /// The day it was kept, as the app gives it ("2026-11-25"); may be empty.
    #[cfg_attr(feature = "serde", serde(default))]
    pub day: String,
}

/// The list, newest first.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Kept {
    /// The items.
    pub items: Vec<KeptItem>,
}

/// What may be done to the list.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum KeptAction {
    /// Keeps another, on top; the same link again moves up and keeps its note.
    Keep(KeptItem),
    /// Renames one.
    Name(usize, String),
    /// Changes a note.
    Note(usize, String),
    /// Moves one up.
    Up(usize),
    /// Takes one out.
    Remove(usize),
    /// Takes all of another list in, below what is there; links already there are passed over.
    TakeIn(Kept),
}

impl Record for Kept {
    type Action = KeptAction;
    const NAME: &'static str = "kept";
    const VERSION: u32 = 1;

    fn after(&self, action: &KeptAction) -> Self {
        let mut items = self.items.clone();
        match action {
            KeptAction::Keep(item) => {
                let mut item = item.clone();
                if let Some(at) = items.iter().position(|old| old.link == item.link) {
                    let old = items.remove(at);
                    if item.note.is_empty() {
                        item.note = old.note;
                    }
                }
                items.insert(0, item);
            }
            KeptAction::Name(at, name) => {
                if let Some(item) = items.get_mut(*at) {
                    item.name.clone_from(name);
                }
            }
            KeptAction::Note(at, note) => {
                if let Some(item) = items.get_mut(*at) {
                    item.note.clone_from(note);
                }
            }
            KeptAction::Up(at) => {
                if *at > 0 && *at < items.len() {
                    items.swap(*at, at.saturating_sub(1));
                }
            }
            KeptAction::Remove(at) => {
                if *at < items.len() {
                    items.remove(*at);
                }
            }
            KeptAction::TakeIn(other) => {
                for item in &other.items {
                    if !items.iter().any(|old| old.link == item.link) {
                        items.push(item.clone());
                    }
                }
            }
        }
        Self { items }
    }
}
