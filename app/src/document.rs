//! A record as the app holds it: read from this device, acted on with undo, kept after each change, and never written
//! over where it could not be read.

use crate::storage::{Browser, Found, Reading, Store, WriteFault, load, save};
use benchslate_core::record::{File, Head, Record, RecordFault, Undo, check};
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
}

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
    /// Keeping it went so.
    Kept(Option<WriteFault>),
}

/// The name that a record has in storage.
fn key<R: Record>() -> String {
    format!("benchslate.{}", R::NAME)
}

/// Reads the file form.
///
/// # Errors
/// Why it is not taken.
pub fn read_file<R: Record + DeserializeOwned>(text: &str) -> Result<R, RecordFault> {
    let head: Head = serde_json::from_str(text).map_err(|_| RecordFault::Damaged)?;
    check::<R>(&head)?;
    serde_json::from_str::<File<R>>(text)
        .map(|file| file.data)
        .map_err(|_| RecordFault::Damaged)
}

/// Writes the file form.
pub fn write_file<R: Record + Serialize>(record: &R) -> String {
    serde_json::to_string(&File::of(record.clone())).unwrap_or_default()
}

impl<R: Record + Serialize + DeserializeOwned> Document<R> {
    /// Reads it from a store.
    pub fn load(store: &impl Store) -> Self {
        let read = |text: &str| match read_file(text) {
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
        }
    }
    /// Keeps it in a store.
    ///
    /// # Errors
    /// Why it was not kept.
    pub fn save(&self, store: &impl Store) -> Result<(), WriteFault> {
        save(store, &key::<R>(), &self.found, &write_file(&self.undo.now))
    }
    /// The document after an action.
    #[must_use]
    pub fn after(&self, act: Do<R>, store: &impl Store) -> Self {
        let mut next = self.clone();
        match act {
            Do::Act(action) => next.undo.act(&action),
            Do::Undo => {
                next.undo.undo();
                next.loads = next.loads.wrapping_add(1);
            }
            Do::Reload => {
                let fresh = Self::load(store);
                if fresh.undo.now != next.undo.now || fresh.found != next.found {
                    next = Self {
                        loads: next.loads.wrapping_add(1),
                        ..fresh
                    };
                }
            }
            Do::Afresh => {
                if let Found::Corrupt(text) | Found::Newer(text) = &self.found
                    && store.set(&format!("{}.unread", key::<R>()), text).is_ok()
                {
                    next.found = Found::Nothing;
                }
            }
            Do::Kept(fault) => next.fault = fault,
        }
        next
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
            (document.undo.now.clone(), document.found.clone()),
            move |_| {
                if !std::mem::replace(&mut *first.borrow_mut(), false) {
                    handle.dispatch(Do::Kept(handle.save(&Browser).err()));
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
mod tests {
    use super::*;
    use crate::storage::Memory;
    use benchslate_core::record::{Kept, KeptAction, KeptItem};

    fn item(link: &str) -> KeptAction {
        KeptAction::Keep(KeptItem {
            name: "Feed box lever".into(),
            link: link.into(),
            ..KeptItem::default()
        })
    }

    #[test]
    fn what_is_kept_comes_back_and_can_be_taken_back() {
        let store = Memory::default();
        let document = Document::<Kept>::load(&store).after(Do::Act(item("#/v1/a?b=1")), &store);
        document.save(&store).unwrap();
        let again = Document::<Kept>::load(&store);
        assert_eq!(again.found, Found::Read);
        assert_eq!(again.undo.now, document.undo.now);
        assert!(document.after(Do::Undo, &store).undo.now.items.is_empty());
    }

    #[test]
    fn a_newer_file_is_left_alone_until_the_user_says_so() {
        let store = Memory::default();
        let newer = r#"{"record":"kept","version":99,"data":{"other":1}}"#;
        store.set("benchslate.kept", newer).unwrap();
        let document = Document::<Kept>::load(&store).after(Do::Act(item("#/v1/a")), &store);
        assert_eq!(document.save(&store), Err(WriteFault::Guarded));
        assert_eq!(
            store.get("benchslate.kept").unwrap().as_deref(),
            Some(newer)
        );
        let afresh = document.after(Do::Afresh, &store);
        afresh.save(&store).unwrap();
        assert_eq!(
            store.get("benchslate.kept.unread").unwrap().as_deref(),
            Some(newer)
        );
    }
}
