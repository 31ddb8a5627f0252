//! A text under the keys, handed on when they rest or the field is left, so that undo takes back a whole entry at once. What
//! comes from elsewhere (undo, another tab, the unit that a figure was read in) is shown once nobody types here.

use crate::hooks::{Later, use_window_event};
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// A text field.
#[derive(Properties, PartialEq)]
pub struct TypingProps {
    /// What stands there while nobody types.
    pub value: AttrValue,
    /// Told of the text.
    pub onput: Callback<String>,
    /// What it is.
    pub label: AttrValue,
    /// Its id, where a label points at it.
    #[prop_or_default]
    pub id: Option<AttrValue>,
    /// Its class.
    #[prop_or_default]
    pub class: Classes,
    /// Shown while it is empty.
    #[prop_or_default]
    pub placeholder: AttrValue,
    /// What stands there is at fault.
    #[prop_or_default]
    pub bad: bool,
    /// The id of the line that says what was understood.
    #[prop_or_default]
    pub described: Option<AttrValue>,
}

/// The field.
#[component]
pub fn Typing(props: &TypingProps) -> Html {
    let text = use_state_eq(|| props.value.clone());
    let typing = use_state_eq(|| false);
    let later = use_memo((), |()| Later::default());
    {
        // what was typed last is handed on, not forgotten, when the page is left
        let later = (*later).clone();
        use_effect_with((), move |()| move || later.flush());
    }
    {
        let later = (*later).clone();
        use_window_event("pagehide", Callback::from(move |_| later.flush()));
    }
    {
        let text = text.clone();
        use_effect_with((props.value.clone(), *typing), move |(value, typing)| {
            if !typing {
                text.set(value.clone());
            }
        });
    }
    let oninput = {
        let typing = typing.clone();
        let (text, later, onput) = (text.clone(), (*later).clone(), props.onput.clone());
        Callback::from(move |e: InputEvent| {
            let input = e
                .target()
                .and_then(|t| t.dyn_into::<HtmlInputElement>().ok());
            if let Some(input) = input {
                let (typed, onput) = (input.value(), onput.clone());
                typing.set(true);
                text.set(typed.clone().into());
                later.put(350, move || onput.emit(typed));
            }
        })
    };
    let onblur = {
        let later = (*later).clone();
        Callback::from(move |_: FocusEvent| {
            later.flush();
            typing.set(false);
        })
    };
    html! {
        <input type="text" id={props.id.clone()} class={classes!(props.class.clone(), props.bad.then_some("bad"))} value={(*text).clone()} {oninput} {onblur}
            placeholder={props.placeholder.clone()} aria-label={props.label.clone()} aria-invalid={props.bad.then_some("true")} aria-describedby={props.described.clone()}
            autocomplete="off" autocapitalize="none" spellcheck="false" enterkeyhint="next" />
    }
}
