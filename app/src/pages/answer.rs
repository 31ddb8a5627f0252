//! Opens a link: the question it names, or why it can't be opened.

use super::Question;
use crate::state::Form;
use benchslate_core::link;
use yew::prelude::*;

/// The page of a link, from `#/v1/` on.
pub fn answer(link: &str) -> Html {
    match link::open(link) {
        Ok(opened) => html! { <Question start={Form::open(opened)} /> },
        Err(fault) => html! {
            <main id="main" class="narrow" tabindex="-1">
                <h1>{ "This link does not open" }</h1>
                <p>{ super::question::said(&fault.text()) }</p>
                <p class="soft mono">{ link.chars().take(300).collect::<String>() }</p>
                <p><a href="#/">{ "To the list of questions" }</a></p>
            </main>
        },
    }
}
