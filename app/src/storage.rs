//! What is kept on this device, and what happens where storage is refused, full, corrupt or from a newer version?
//! Nothing that could not be read is ever written over; the app works on in memory and says so.

use std::cell::{Cell, RefCell};
use std::collections::BTreeMap;

/// Why a text could not be kept.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum WriteFault {
    /// The browser gives this page no storage.
    Refused,
    /// There is no room left.
    Full,
    /// What stands there could not be read, so it is left alone.
    Guarded,
}

impl WriteFault {
    /// The same in words for the screen.
    pub fn words(self) -> &'static str {
        match self {
            Self::Refused => {
                "This browser stores nothing for this page. It lasts until the page is closed; save it as a file."
            }
            Self::Full => {
                "The device has no room left for this. It lasts until the page is closed; save it as a file."
            }
            Self::Guarded => {
                "What was saved before could not be read, so it is left untouched. New entries last until the page is closed."
            }
        }
    }
}

/// A place that holds texts by name.
pub trait Store {
    /// The text under a name; `Err` where storage is refused.
    ///
    /// # Errors
    /// [`WriteFault::Refused`] where the browser gives no storage.
    fn get(&self, key: &str) -> Result<Option<String>, WriteFault>;
    /// Puts a text under a name.
    ///
    /// # Errors
    /// Why it was not kept.
    fn set(&self, key: &str, text: &str) -> Result<(), WriteFault>;
    /// Milliseconds on a clock that only moves forward or is set: to tell what was done just now.
    fn now(&self) -> f64;
}

/// How a kept document was found.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum Found {
    /// Nothing was there yet.
    Nothing,
    /// Read whole.
    Read,
    /// Storage is refused.
    Refused,
    /// It could not be read; here it is, as it stands.
    Corrupt(String),
    /// A newer version of the app wrote it; here it is, as it stands.
    Newer(String),
}

impl Found {
    /// Whether new entries may be written over it.
    ///
    /// # Errors
    /// Why they may not.
    pub fn may_write(&self) -> Result<(), WriteFault> {
        match self {
            Self::Nothing | Self::Read => Ok(()),
            Self::Refused => Err(WriteFault::Refused),
            Self::Corrupt(_) | Self::Newer(_) => Err(WriteFault::Guarded),
        }
    }

    /// What the page says about it, where there is something to say.
    pub fn words(&self) -> Option<&'static str> {
        match self {
            Self::Nothing | Self::Read => None,
            Self::Refused => Some(
                "This browser stores nothing for this page. All works, but what you enter here lasts only until the page is closed.",
            ),
            Self::Corrupt(_) => Some(
                "What was saved here could not be read. It is left untouched; save it as a file before starting over.",
            ),
            Self::Newer(_) => Some(
                "What was saved here was written by a newer version of Benchslate. It is left untouched; reload to get that version.",
            ),
        }
    }
}

/// What a reader makes of a kept text.
#[derive(Debug)]
pub enum Reading<T> {
    /// Read whole.
    Good(T),
    /// Not understood.
    Corrupt,
    /// From a newer version.
    Newer,
}

/// Loads a document: the document (or a fresh one) and how it was found.
pub fn load<T>(
    store: &impl Store,
    key: &str,
    read: impl Fn(&str) -> Reading<T>,
    fresh: impl Fn() -> T,
) -> (T, Found) {
    match store.get(key) {
        Err(_) => (fresh(), Found::Refused),
        Ok(None) => (fresh(), Found::Nothing),
        Ok(Some(text)) => match read(&text) {
            Reading::Good(document) => (document, Found::Read),
            Reading::Corrupt => (fresh(), Found::Corrupt(text)),
            Reading::Newer => (fresh(), Found::Newer(text)),
        },
    }
}

/// Keeps a document, unless that would write over what could not be read.
///
/// # Errors
/// Why it was not kept.
pub fn save(store: &impl Store, key: &str, found: &Found, text: &str) -> Result<(), WriteFault> {
    found.may_write()?;
    store.set(key, text)
}

/// The browser's storage for this page. Over web-sys, not gloo's storage: that stops the program where a browser gives
/// none, and keeps texts as JSON, which what stands on devices is not.
pub struct Browser;

impl Store for Browser {
    fn get(&self, key: &str) -> Result<Option<String>, WriteFault> {
        local()
            .ok_or(WriteFault::Refused)?
            .get_item(key)
            .map_err(|_| WriteFault::Refused)
    }
    fn set(&self, key: &str, text: &str) -> Result<(), WriteFault> {
        local()
            .ok_or(WriteFault::Refused)?
            .set_item(key, text)
            .map_err(|_| WriteFault::Full)
    }
    fn now(&self) -> f64 {
        js_sys::Date::now()
    }
}

const DRAFT: &str = "benchslate.draft";

/// Puts a form aside for a reload of this tab; a browser that refuses is left alone.
pub fn put_draft(text: &str) {
    if let Some(store) = session() {
        let _ = store.set_item(DRAFT, text);
    }
}

/// The form that was put aside in this tab.
pub fn draft() -> Option<String> {
    session()?.get_item(DRAFT).ok().flatten()
}

fn session() -> Option<web_sys::Storage> {
    web_sys::window()?.session_storage().ok().flatten()
}

fn local() -> Option<web_sys::Storage> {
    web_sys::window()?.local_storage().ok().flatten()
}

/// A store in memory, for tests and as a stand-in.
#[derive(Default)]
pub struct Memory {
    texts: RefCell<BTreeMap<String, String>>,
    /// Set to make every write fail.
    pub fault: Option<WriteFault>,
    /// Its clock.
    pub clock: Cell<f64>,
}

impl Store for Memory {
    fn get(&self, key: &str) -> Result<Option<String>, WriteFault> {
        match self.fault {
            Some(WriteFault::Refused) => Err(WriteFault::Refused),
            _ => Ok(self.texts.borrow().get(key).cloned()),
        }
    }
    fn set(&self, key: &str, text: &str) -> Result<(), WriteFault> {
        if let Some(fault) = self.fault {
            Err(fault)
        } else {
            self.texts
                .borrow_mut()
                .insert(key.to_owned(), text.to_owned());
            Ok(())
        }
    }
    fn now(&self) -> f64 {
        self.clock.get()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Reading<u32> {
        match text.strip_prefix("v1 ").map(str::parse) {
            Some(Ok(number)) => Reading::Good(number),
            _ if text.starts_with("v2 ") => Reading::Newer,
            _ => Reading::Corrupt,
        }
    }

    #[test]
    fn what_could_not_be_read_is_never_written_over() {
        for text in ["v2 9", "rubbish"] {
            let store = Memory::default();
            store.set("k", text).unwrap();
            let (value, found) = load(&store, "k", read, || 0);
            assert_eq!(value, 0);
            assert!(found.words().is_some());
            assert_eq!(save(&store, "k", &found, "v1 1"), Err(WriteFault::Guarded));
            assert_eq!(store.get("k").unwrap().as_deref(), Some(text));
        }
    }

    #[test]
    fn refused_and_full_are_told_apart() {
        let mut store = Memory::default();
        let (_, found) = load(&store, "k", read, || 0);
        assert_eq!(found, Found::Nothing);
        store.fault = Some(WriteFault::Full);
        assert_eq!(save(&store, "k", &found, "v1 1"), Err(WriteFault::Full));
        store.fault = Some(WriteFault::Refused);
        assert_eq!(load(&store, "k", read, || 0).1, Found::Refused);
    }
}
