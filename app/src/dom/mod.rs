//! What does the app ask of the browser? Each of these few things may fail quietly. What a well-kept library does, it
//! does here too; by hand stands only what gloo has no part for, or what it would hide: its history keeps its marks in
//! memory, where a reload loses them, and both it and its storage stop the program where a browser refuses.

mod address;
mod device;
mod files;
mod focus;
mod notices;

pub use address::*;
pub use device::*;
pub use files::*;
pub use focus::*;
pub use notices::*;

use gloo::timers::future::TimeoutFuture;
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::spawn_local;

/// The window.
pub fn window() -> Option<web_sys::Window> {
    web_sys::window()
}

/// The document's root element.
pub fn root() -> Option<web_sys::HtmlElement> {
    gloo::utils::document_element().dyn_into().ok()
}

/// The title in the tab.
pub fn title(text: &str) {
    gloo::utils::document().set_title(text);
}

/// A `<meta>` of the page by name.
pub fn meta(name: &str) -> Option<String> {
    let found = gloo::utils::document()
        .query_selector(&format!("meta[name=\"{name}\"]"))
        .ok()
        .flatten()?;
    found.get_attribute("content")
}

/// Opens the print dialogue.
pub fn print() {
    let _ = gloo::utils::window().print();
}

/// Does this after the page was brought up to date.
pub fn soon(work: impl FnOnce() + 'static) {
    spawn_local(async {
        TimeoutFuture::new(0).await;
        work();
    });
}
