//! Read out: one result in very large figures with its spoken form, and the screen kept awake.

use super::Select;
use super::result_line::{figure, in_other};
use crate::dom;
use benchslate_core::quantity::{System, spoken};
use benchslate_core::sheet::{Line, Value, lowered};
use yew::prelude::*;

/// The results that may be read out.
#[derive(Properties, PartialEq)]
pub struct CallProps {
    /// Results, the main one first.
    pub lines: Vec<Line>,
    /// The question.
    pub title: AttrValue,
    /// The entry in a few words.
    pub entry: AttrValue,
    /// The system in use.
    pub system: System,
}

/// The view.
#[component]
pub fn CallView(props: &CallProps) -> Html {
    let at = use_state_eq(|| 0_usize);
    use_effect_with((), |()| {
        let lock = dom::keep_awake();
        move || drop(lock)
    });
    let Some(line) = props.lines.get(*at).or_else(|| props.lines.first()) else {
        return Html::default();
    };
    let (figure, behind) = figure(line, props.system);
    let size = match figure.chars().count() {
        0..=6 => "",
        7..=8 => "l8",
        9..=10 => "l10",
        11..=14 => "l14",
        _ => "l24",
    };
    let said = match (&line.value, line.value.unit(props.system)) {
        (Value::Quantity { base, .. }, Some(unit)) => {
            spoken(*base, unit, line.value.decimals(props.system))
        }
        _ => String::new(),
    };
    let below = match in_other(line, props.system) {
        Some(alt) if behind.is_empty() => alt,
        Some(alt) => format!("{behind} \u{b7} {alt}"),
        None => behind.to_owned(),
    };
    let onchoose = {
        let at = at.clone();
        Callback::from(move |id: AttrValue| at.set(id.parse().unwrap_or(0)))
    };
    let name = |(index, line): (usize, &Line)| {
        (
            AttrValue::from(index.to_string()),
            AttrValue::from(line.label.to_string()),
        )
    };
    let choices: Vec<_> = props.lines.iter().enumerate().map(name).collect();
    html! {
        <main class="call" id="main" tabindex="-1">
            <h1 class="of">{ format!("{}, {}", line.label, lowered(&props.title)) }if !props.entry.is_empty() { <br />{ props.entry.clone() } }</h1>
            <p class={classes!("huge", size)}>{ figure }</p>
            if !said.is_empty() { <p class="spoken">{ said }</p> }
            <p class="of">{ below }</p>
            <div class="row">
                <button type="button" class="act main" onclick={Callback::from(|_| dom::back())}>{ "Back" }</button>
                if props.lines.len() > 1 {
                    <Select class="wide-select" label="Result" {choices} chosen={at.to_string()} {onchoose} />
                }
            </div>
        </main>
    }
}
