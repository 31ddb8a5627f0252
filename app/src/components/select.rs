//! A list to pick from that always shows what holds, also after the user picked and something else changed it.

use wasm_bindgen::JsCast;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

/// A list.
#[derive(Properties, PartialEq)]
pub struct SelectProps {
    /// Its id, where a label points at it.
    #[prop_or_default]
    pub id: Option<AttrValue>,
    /// Its class.
    #[prop_or_default]
    pub class: Classes,
    /// Its name, where no label points at it.
    #[prop_or_default]
    pub label: Option<AttrValue>,
    /// Value and words of each choice.
    pub choices: Vec<(AttrValue, AttrValue)>,
    /// The one that holds.
    pub chosen: AttrValue,
    /// Told of the choice.
    pub onchoose: Callback<AttrValue>,
}

/// The list.
#[component]
pub fn Select(props: &SelectProps) -> Html {
    let node = use_node_ref();
    {
        let node = node.clone();
        use_effect_with(
            (props.chosen.clone(), props.choices.clone()),
            move |(chosen, _)| {
                if let Some(select) = node.cast::<HtmlSelectElement>()
                    && select.value() != chosen.as_str()
                {
                    select.set_value(chosen);
                }
            },
        );
    }
    let onchange = {
        let told = props.onchoose.clone();
        Callback::from(move |e: Event| {
            if let Some(select) = e
                .target()
                .and_then(|t| t.dyn_into::<HtmlSelectElement>().ok())
            {
                told.emit(select.value().into());
            }
        })
    };
    html! {
        <select ref={node} id={props.id.clone()} class={props.class.clone()} aria-label={props.label.clone()} {onchange}>
            { for props.choices.iter().map(|(value, words)| html! {
                <option value={value.clone()} selected={*value == props.chosen}>{ words.clone() }</option>
            }) }
        </select>
    }
}
