//! One of a few: as a row of choices to tap while they are few and short, else as a list to pick from.

use super::Select;
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// A choice field.
pub struct Choice {
    /// Names the group; unique on the page.
    pub id: AttrValue,
    /// What is chosen.
    pub label: AttrValue,
    /// Value and words of each choice.
    pub choices: Vec<(AttrValue, AttrValue)>,
    /// The one that holds.
    pub chosen: AttrValue,
    /// Told of the choice.
    pub onchoose: Callback<AttrValue>,
    /// Always as a list.
    pub as_list: bool,
}

/// The field.
pub fn choice_row(props: &Choice) -> Html {
    let letters: usize = props
        .choices
        .iter()
        .map(|(_, words)| words.chars().count() + 4)
        .sum();
    if props.as_list || props.choices.len() > 5 || letters > 84 {
        return html! {
            <div class="field">
                <label for={props.id.clone()}>{ props.label.clone() }</label>
                <Select id={props.id.clone()} class="wide-select" choices={props.choices.clone()} chosen={props.chosen.clone()} onchoose={props.onchoose.clone()} />
            </div>
        };
    }
    let onchange = {
        let told = props.onchoose.clone();
        Callback::from(move |e: Event| {
            if let Some(input) = e
                .target()
                .and_then(|t| t.dyn_into::<HtmlInputElement>().ok())
            {
                told.emit(input.value().into());
            }
        })
    };
    html! {
        <fieldset class="field">
            <legend>{ props.label.clone() }</legend>
            <div class="choices">
                { for props.choices.iter().map(|(value, words)| {
                    let on = *value == props.chosen;
                    html! {
                        <label class={on.then_some("on")}>
                            <input type="radio" name={props.id.clone()} value={value.clone()} checked={on} onchange={onchange.clone()} />
                            { words.clone() }
                        </label>
                    }
                }) }
            </div>
        </fieldset>
    }
}
