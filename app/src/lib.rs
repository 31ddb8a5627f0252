//! Benchslate in the browser: a shell around the core. Every form, answer and list on screen is derived from the
//! sheet contract; nothing here knows a sheet by name.
//!
//! `app` holds route and shell, `pages` one file a page, `components` one a visual part, `state` what one has typed.

pub mod app;
pub mod components;
pub mod document;
pub mod dom;
pub mod drawing;
pub mod hooks;
pub mod licences;
pub mod links;
pub mod pages;
pub mod plot;
pub mod qr;
pub mod route;
pub mod shared;
pub mod state;
pub mod storage;

pub use app::App;

/// Mounts the app into the page's body.
pub fn start() {
    yew::Renderer::<App>::new().render();
}
