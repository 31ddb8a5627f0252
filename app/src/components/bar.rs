//! The bottom actions of an answer, and the panel that one of them opens above it.

use yew::prelude::*;

/// What stands above the bar.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Panel {
    /// Nothing.
    None,
    /// Link, code and share.
    Link,
    /// What was just saved.
    Kept,
}

impl Panel {
    /// The panel of a history entry's view.
    pub fn of(view: &str) -> Self {
        match view {
            "link" => Self::Link,
            "kept" => Self::Kept,
            _ => Self::None,
        }
    }
}

/// What the actions do.
pub struct Bar {
    /// Open panel.
    pub panel: Panel,
    /// Opens or closes the link panel.
    pub onlink: Callback<MouseEvent>,
    /// Prints.
    pub onprint: Callback<MouseEvent>,
    /// Saves.
    pub onkeep: Callback<MouseEvent>,
    /// Opens the large view.
    pub oncall: Callback<MouseEvent>,
    /// There is a result to read out.
    pub has_result: bool,
}

/// The bar.
pub fn bar(props: &Bar) -> Html {
    html! {
        <section class="bar" aria-label="With this answer">
            <button type="button" onclick={props.onlink.clone()} aria-expanded={(props.panel == Panel::Link).to_string()}>{ "Link" }</button>
            <button type="button" onclick={props.onprint.clone()}>{ "Print" }</button>
            <button type="button" onclick={props.onkeep.clone()}>{ "Save" }</button>
            <button type="button" onclick={props.oncall.clone()} disabled={!props.has_result}>{ "Read out" }</button>
        </section>
    }
}
