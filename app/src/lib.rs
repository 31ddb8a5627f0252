//! Benchslate in the browser: everything on screen is derived from the sheet contract.
use yew::prelude::*;

/// The whole app.
#[component]
pub fn App() -> Html {
    html! { <main><h1>{ "Benchslate" }</h1></main> }
}

/// Mounts the app into the page's body.
pub fn start() {
    yew::Renderer::<App>::new().render();
}
