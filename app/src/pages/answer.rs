//! Opens a link: the question it names, or why it can't be opened.

use super::Question;
use crate::state::Form;
use benchslate_core::link;
use std::rc::Rc;
use yew::prelude::*;

/// The link.
#[derive(Properties, PartialEq)]
pub struct AnswerProps {
    /// The fragment, from `#/v1/` on.
    pub link: Rc<str>,
}

/// The page.
#[component]
pub fn Answer(props: &AnswerProps) -> Html {
    match link::open(&props.link) {
        Ok(opened) => html! { <Question start={Form::open(opened)} /> },
        Err(fault) => html! {
            <main id="main" class="narrow" tabindex="-1">
                <h1>{ "This link does not open" }</h1>
                <p>{ super::question::said(&fault.text()) }</p>
                <p class="soft mono">{ props.link.chars().take(300).collect::<String>() }</p>
                <p><a href="#/">{ "To the list of questions" }</a></p>
            </main>
        },
    }
}
