//! Hands an answer on: the link to copy, the system's share sheet, a code to scan, the answer as text.

use crate::document::write_file;
use crate::{dom, qr};
use benchslate_core::record::{Kept, KeptItem};
use yew::prelude::*;

/// What is handed on.
#[derive(Properties, PartialEq)]
pub struct ShareProps {
    /// The whole address; none where it would be too long.
    pub link: Option<AttrValue>,
    /// The question.
    pub title: AttrValue,
    /// The answer as text.
    pub text: AttrValue,
    /// The same as a kept item, for a file.
    pub kept: Option<KeptItem>,
    /// Closes the panel.
    pub onclose: Callback<MouseEvent>,
}

/// The panel.
#[component]
pub fn SharePanel(props: &ShareProps) -> Html {
    let said = use_state_eq(|| AttrValue::Static(""));
    let copy = |text: AttrValue, done: &'static str| {
        let said = said.clone();
        Callback::from(move |_: MouseEvent| {
            let (said, text) = (said.clone(), text.to_string());
            wasm_bindgen_futures::spawn_local(async move {
                said.set(if dom::copy(text).await {
                    done.into()
                } else {
                    "The browser did not allow copying; mark the text and copy it by hand.".into()
                });
            });
        })
    };
    html! {
        <section class="panel" aria-label="Link">
            <div class="head"><h2>{ "Link to this answer" }</h2><button type="button" class="act plain" onclick={props.onclose.clone()}>{ "Close" }</button></div>
            { match &props.link {
                Some(link) => html! {
                    <>
                        <input class="link-text" readonly=true value={link.to_string()} aria-label="Link" />
                        <p class="row">
                            <button type="button" class="act main" onclick={copy(link.clone(), "Link copied.")}>{ "Copy link" }</button>
                            if dom::can_share() {
                                <button type="button" class="act" onclick={{
                                    let (title, link) = (props.title.clone(), link.clone());
                                    Callback::from(move |_| dom::share(&title, &link))
                                }}>{ "Share" }</button>
                            }
                            <button type="button" class="act" onclick={copy(props.text.clone(), "Answer copied.")}>{ "Copy answer as text" }</button>
                        </p>
                        <p class="soft" role="status">{ (*said).clone() }</p>
                        { match qr::svg(link) {
                            Some(svg) => html! { <div class="qr">{ Html::from_html_unchecked(svg.into()) }</div> },
                            None => html! { <p class="soft">{ "Too long for a code that a camera reads." }</p> },
                        } }
                    </>
                },
                None => html! {
                    <>
                        <p>{ "This entry is too long for a link. Save it as a file: Open a file, on the page Saved, brings it back whole." }</p>
                        <p class="row">
                            if let Some(item) = props.kept.clone() {
                                <button type="button" class="act main" onclick={Callback::from(move |_| {
                                    dom::download("benchslate-answer.json", &write_file(&Kept { items: vec![item.clone()] }));
                                })}>{ "Save as a file" }</button>
                            }
                            <button type="button" class="act" onclick={copy(props.text.clone(), "Answer copied.")}>{ "Copy answer as text" }</button>
                        </p>
                        <p class="soft" role="status">{ (*said).clone() }</p>
                    </>
                },
            } }
        </section>
    }
}
