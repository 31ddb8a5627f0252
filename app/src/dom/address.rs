//! Where are we? The fragment, the entries of the history, and the marks that they carry. A browser that refuses to
//! write them (too often) is left alone.

use gloo::utils::{history, window};
use wasm_bindgen::JsValue;

/// The present fragment, with its `#`.
pub fn fragment() -> String {
    window().location().hash().unwrap_or_default()
}

/// The page's address up to the fragment.
pub fn base() -> String {
    let href = window().location().href().unwrap_or_default();
    href.split('#').next().unwrap_or_default().to_owned()
}

/// The mark of the present history entry: where the page was opened from, and the view that stands over it.
fn entry_mark() -> (String, String) {
    let state = history().state().ok().and_then(|state| state.as_string());
    let state = state.unwrap_or_default();
    match state.split_once(':') {
        Some((from, view)) => (from.to_owned(), view.to_owned()),
        None => (String::new(), state),
    }
}

/// Puts a mark on the present history entry.
fn write_mark(from: &str, view: &str) {
    let mark = JsValue::from_str(&format!("{from}:{view}"));
    let _ = history().replace_state_with_url(&mark, "", None);
}

/// Adds a history entry with its mark.
fn add(mark: &str, fragment: &str) {
    let _ = history().push_state_with_url(&JsValue::from_str(mark), "", Some(fragment));
}

/// The view that stands over the page in the present history entry (`call`, `link`, `kept`); empty for the page
/// itself, or `under` where a view was added above it.
pub fn view() -> String {
    entry_mark().1
}

/// Where the page of the present history entry was opened from: `own` (from within), `saved` (the saved list), else empty.
pub fn opened_from() -> String {
    entry_mark().0
}

/// Remembers with the present history entry where its page was opened from.
pub fn mark_opened_from(from: &str) {
    write_mark(from, &view());
}

/// Marks the present history entry as the one under a view that is about to be added.
pub fn mark_under() {
    write_mark(&opened_from(), "under");
}

/// Writes the fragment into the present history entry.
pub fn replace(fragment: &str) {
    let history = history();
    let state = history.state().unwrap_or(JsValue::NULL);
    let _ = history.replace_state_with_url(&state, "", Some(fragment));
}

/// Adds a history entry for the same fragment with a tag.
pub fn push_view(tag: &str) {
    add(&format!("{}:{tag}", opened_from()), &fragment());
}

/// Adds a history entry for a page that was changed as a whole, so that Back leads to what stood there.
pub fn push(fragment: &str) {
    add("own:", fragment);
}

/// One step back.
pub fn back() {
    let _ = history().back();
}

/// Goes to a fragment, as a tapped link would.
pub fn go(fragment: &str) {
    let _ = window().location().set_hash(fragment);
}
