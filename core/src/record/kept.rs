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
    /// The first result when it was kept, or that there was none yet; empty in lists of older versions.
    #[cfg_attr(feature = "serde", serde(default))]
    pub answer: String,
}

/// Where a kept item leads.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Leads<'a> {
    /// To a calculation: the fragment, from `#/` on, whatever stood before it.
    Answer(&'a str),
    /// To a test in the proving record.
    Proving(&'a str),
    /// Nowhere that this program knows: it is shown as text, and never as a link.
    Nowhere,
}

impl KeptItem {
    /// Where the item leads. A list may come from anywhere, so only a calculation that [`crate::link::open`] takes or a test
    /// of the proving record is a link.
    ///
    /// ```
    /// use benchslate_core::record::{KeptItem, Leads};
    /// let to = |link: &str| KeptItem { link: link.into(), ..KeptItem::default() };
    /// assert_eq!(to("#/v1/length?length=1%20in").leads(), Leads::Answer("#/v1/length?length=1%20in"));
    /// assert_eq!(to("https://evil.example/").leads(), Leads::Nowhere);
    /// ```
    pub fn leads(&self) -> Leads<'_> {
        let link = self.link.as_str();
        let is_ours = link.starts_with("#/") && !link.contains(char::is_control);
        if is_ours && (link == "#/proving" || link.starts_with("#/proving?of=")) {
            Leads::Proving(link)
        } else if is_ours && crate::link::open(link).is_ok() {
            Leads::Answer(link)
        } else {
            Leads::Nowhere
        }
    }
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
    /// Renames the item of this link.
    Name(String, String),
    /// Changes the note on the item of this link.
    Note(String, String),
    /// Moves the item of this link up.
    Up(String),
    /// Removes the item of this link.
    Remove(String),
    /// Takes all of another list in, below what is there; links already there are passed over.
    TakeIn(Kept),
}

impl Record for Kept {
    type Action = KeptAction;
    const NAME: &'static str = "kept";
    const VERSION: u32 = 1;

    fn after(&self, action: &KeptAction) -> Self {
        let mut items = self.items.clone();
        let place = |link: &str| self.items.iter().position(|item| item.link == link);
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
            KeptAction::Name(link, name) => {
                if let Some(item) = place(link).and_then(|at| items.get_mut(at)) {
                    item.name.clone_from(name);
                }
            }
            KeptAction::Note(link, note) => {
                if let Some(item) = place(link).and_then(|at| items.get_mut(at)) {
                    item.note.clone_from(note);
                }
            }
            KeptAction::Up(link) => {
                if let Some(at) = place(link).filter(|at| *at > 0) {
                    items.swap(at, at.saturating_sub(1));
                }
            }
            KeptAction::Remove(link) => {
                if let Some(at) = place(link) {
                    items.remove(at);
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

    fn holds(&self, action: &KeptAction) -> bool {
        let has = |item: &KeptItem| self.items.iter().any(|own| own.link == item.link);
        match action {
            KeptAction::Keep(item) => has(item),
            KeptAction::TakeIn(other) => other.items.iter().all(has),
            // the order of another tab will do as well
            KeptAction::Up(_) => true,
            _ => self.after(action) == *self,
        }
    }
}

impl Kept {
    /// How many items of another list are not in this one yet.
    pub fn lacks(&self, other: &Self) -> usize {
        let has = |item: &&KeptItem| self.items.iter().any(|own| own.link == item.link);
        let mut links: Vec<&str> = Vec::new();
        for item in other.items.iter().filter(|item| !has(item)) {
            if !links.contains(&item.link.as_str()) {
                links.push(&item.link);
            }
        }
        links.len()
    }
}
