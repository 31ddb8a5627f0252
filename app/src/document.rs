//! A record as the app holds it: read from this device, acted on with undo, kept after each change, and never written
//! over where it could not be read.

use crate::storage::{Browser, Found, Reading, Store, WriteFault, load, save};
use benchslate_core::quantity::System;
use benchslate_core::record::{File, Head, Record, RecordFault, Shop, Undo, check};
use serde::{Serialize, de::DeserializeOwned};
use std::rc::Rc;
use yew::prelude::*;

/// A record with its past, how it was found, and what went wrong with keeping it.
#[derive(Clone, PartialEq, Debug)]
pub struct Document<R: Record> {
    /// The record and its past.
    pub undo: Undo<R>,
    /// How it was found on this device.
    pub found: Found,
    /// Why the last change was not kept.
    pub fault: Option<WriteFault>,
    /// Counts what came from elsewhere than the page's own fields.
    pub loads: u32,
    /// The text in storage as this tab last read or wrote it.
    seen: Option<String>,
    /// What was done here just now, with its time: another tab that writes at the same moment does not know of it.
    recent: Vec<(f64, R::Action)>,
}

/// For how long a thing done counts as done just now, in milliseconds. What another tab takes away later is meant.
const JUST_NOW: f64 = 1000.0;

/// What may be done to a document.
pub enum Do<R: Record> {
    /// The record's own action.
    Act(R::Action),
    /// Takes the last step back.
    Undo,
    /// Reads it again: another tab wrote it.
    Reload,
    /// Leaves what could not be read under another name and starts afresh, at the user's tap.
    Afresh,
    /// Keeping it went so; the text that was written, or why it was not.
    Kept(Result<String, WriteFault>),
}

/// The name that a record has in storage.
fn key<R: Record>() -> String {
    format!("benchslate.{}", R::NAME)
}

/// Reads the file form, also with the mark that some editors put before the text. `known` is the system of units that bare
/// figures of an older version were read in, where that is known.
///
/// # Errors
/// Why it is not taken.
pub fn read_file<R: Record + DeserializeOwned>(
    text: &str,
    known: Option<System>,
) -> Result<R, RecordFault> {
    let text = text.trim_start_matches('\u{feff}');
    let head: Head = serde_json::from_str(text).map_err(|_| RecordFault::Damaged)?;
    check::<R>(&head)?;
    let file = serde_json::from_str::<File<R>>(text).map_err(|_| RecordFault::Damaged)?;
    file.opened(known)
}

/// The system of units of this device's shop: what bare figures in its older records were read in.
fn known_system(store: &impl Store) -> System {
    let read = |text: &str| match read_file::<Shop>(text, None) {
        Ok(shop) => Reading::Good(shop.system),
        Err(_) => Reading::Corrupt,
    };
    load(store, &key::<Shop>(), read, System::default).0
}

/// Writes the file form.
pub fn write_file<R: Record + Serialize>(record: &R) -> String {
    serde_json::to_string(&File::of(record.clone())).unwrap_or_default()
}

impl<R: Record + Serialize + DeserializeOwned> Document<R> {
    /// Reads it from a store.
    pub fn load(store: &impl Store) -> Self {
        let known = Some(known_system(store));
        let read = |text: &str| match read_file(text, known) {
            Ok(record) => Reading::Good(record),
            Err(RecordFault::Newer(_)) => Reading::Newer,
            Err(_) => Reading::Corrupt,
        };
        let (now, found) = load(store, &key::<R>(), read, R::default);
        Self {
            undo: Undo::new(now),
            found,
            fault: None,
            loads: 0,
            seen: store.get(&key::<R>()).ok().flatten(),
            recent: Vec::new(),
        }
    }
    /// Keeps it in a store, and gives the text that stands there now.
    ///
    /// # Errors
    /// Why it was not kept.
    pub fn save(&self, store: &impl Store) -> Result<String, WriteFault> {
        let text = write_file(&self.undo.now);
        if self.seen.as_ref() != Some(&text) {
            save(store, &key::<R>(), &self.found, &text)?;
        }
        self.found.may_write()?;
        Ok(text)
    }
    /// The document after an action.
    #[must_use]
    pub fn after(&self, act: Do<R>, store: &impl Store) -> Self {
        let mut next = self.clone();
        match act {
            Do::Act(action) => {
                // another tab may have written without a word reaching this one yet
                next.take_fresh(store);
                next.undo.act(&action);
                let now = store.now();
                next.recent
                    .retain(|(then, _)| (0.0..JUST_NOW).contains(&(now - then)));
                next.recent.push((now, action));
            }
            Do::Undo => {
                next.undo.undo();
                next.recent.clear();
                next.loads = next.loads.wrapping_add(1);
            }
            Do::Reload => next.take_fresh(store),
            Do::Afresh => {
                if let Found::Corrupt(text) | Found::Newer(text) = &self.found
                    && store.set(&format!("{}.unread", key::<R>()), text).is_ok()
                {
                    next.found = Found::Nothing;
                }
            }
            Do::Kept(Ok(text)) => {
                next.seen = Some(text);
                next.fault = None;
            }
            Do::Kept(Err(fault)) => next.fault = Some(fault),
        }
        next
    }
    /// Takes what stands in storage where another tab wrote it, and does again what was done here at the same moment and
    /// is not in it.
    fn take_fresh(&mut self, store: &impl Store) {
        let text = store.get(&key::<R>()).ok().flatten();
        if text == self.seen || text.is_none() {
            return;
        }
        let fresh = Self::load(store);
        if fresh.found != Found::Read {
            *self = Self {
                loads: self.loads.wrapping_add(1),
                ..fresh
            };
            return;
        }
        let mut now = self.undo.now.refreshed(fresh.undo.now);
        let clock = store.now();
        // once done again it is not held on to: two tabs that disagree would go on for ever
        self.recent.retain(|(then, action)| {
            if !(0.0..JUST_NOW).contains(&(clock - then)) {
                return false;
            }
            let held = now.holds(action);
            if !held {
                now = now.after(action);
            }
            held
        });
        self.seen = fresh.seen;
        self.found = fresh.found;
        if now != self.undo.now {
            self.undo = Undo::new(now);
            self.loads = self.loads.wrapping_add(1);
        }
    }
}

impl<R: Record + Serialize + DeserializeOwned + 'static> Reducible for Document<R> {
    type Action = Do<R>;
    fn reduce(self: Rc<Self>, act: Do<R>) -> Rc<Self> {
        Rc::new(self.after(act, &Browser))
    }
}

/// The record of this device; kept after each change.
#[hook]
pub fn use_document<R: Record + Serialize + DeserializeOwned + 'static>()
-> UseReducerHandle<Document<R>> {
    let document = use_reducer_eq(|| Document::<R>::load(&Browser));
    {
        let handle = document.clone();
        let first = use_mut_ref(|| true);
        use_effect_with(
            (
                document.undo.now.clone(),
                document.found.clone(),
                document.seen.clone(),
            ),
            move |_| {
                if !std::mem::replace(&mut *first.borrow_mut(), false) {
                    let kept = handle.save(&Browser);
                    if kept.is_ok() {
                        crate::dom::tell("benchslate:saved");
                    }
                    handle.dispatch(Do::Kept(kept));
                }
            },
        );
    }
    {
        let dispatcher = document.dispatcher();
        crate::hooks::use_window_event(
            "storage",
            Callback::from(move |_| dispatcher.dispatch(Do::Reload)),
        );
    }
    document
}

#[cfg(test)]
#[path = "document_tests.rs"]
mod tests;
