//! Opens a link: the question it names, or why it can't be opened.

use super::Question;
use crate::app::Records;
use crate::state::{Draft, Form};
use crate::{dom, storage};
use benchslate_core::link;
use std::rc::Rc;
use yew::prelude::*;

/// The link.
#[derive(Properties, PartialEq)]
pub struct AnswerProps {
    /// The fragment, from `#/v1/` on.
    pub link: Rc<str>,
}

/// The page of a link; it is opened once, and what was typed on it before a reload stands there again.
#[component]
pub fn AnswerPage(props: &AnswerProps) -> Html {
    let records = use_context::<Records>();
    let opened = use_memo(props.link.clone(), |link| {
        let shop = records.map(|r| r.shop.undo.now.clone()).unwrap_or_default();
        let own = dom::opened_from() == "own";
        link::open(link).map(|opened| {
            let form = Form::open_in(opened, &shop, own);
            Draft::restored(form, storage::draft().as_deref(), link)
        })
    });
    match &*opened {
        Ok(start) => html! { <Question start={start.clone()} /> },
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
