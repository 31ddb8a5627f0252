//! What stands under the fields: the system of the results, a way to clear, the choice of keyboard, and the own key pad.

use crate::components::{Pad, PadMode, keys_for};
use crate::dom;
use crate::state::{Act, Form};
use benchslate_core::quantity::{Kind, System};
use benchslate_core::sheet::FieldKind;
use yew::prelude::*;

/// The row of settings.
pub fn settings(
    form: &Form,
    pad: PadMode,
    set_pad: &Callback<PadMode>,
    act: &Callback<Act>,
    clear: Callback<MouseEvent>,
    unclear: Callback<MouseEvent>,
) -> Html {
    let system = |system: System, words: &'static str| {
        let act = act.clone();
        let on = form.system == system;
        let onchange = Callback::from(move |_: Event| act.emit(Act::System(system)));
        html! { <label class={on.then_some("on")}><input type="radio" name="system" checked={on} {onchange} />{ words }</label> }
    };
    let (words, next) = match pad {
        PadMode::System => ("Key pad", PadMode::Own),
        PadMode::Own => ("Phone keyboard", PadMode::System),
    };
    html! {
        <div class="padtoggle row noprint">
            <div class="choices small" role="group" aria-label="Results in">{ system(System::Inch, "inch") }{ system(System::Metric, "mm") }</div>
            if !form.is_empty() { <button type="button" class="act plain" onclick={clear}>{ "Clear" }</button> }
            if form.cleared.is_some() { <button type="button" class="act plain" onclick={unclear}>{ "Undo clear" }</button> }
            <button type="button" class="act plain" onclick={set_pad.reform(move |_| next)}>{ words }</button>
        </div>
    }
}

/// The own key pad, with the first result above it.
pub fn dock(form: &Form, focused: Option<usize>, letters: Callback<MouseEvent>) -> Html {
    let field = focused.and_then(|at| form.sheet.fields.get(at));
    let taper = field.is_some_and(|f| {
        matches!(
            f.kind,
            FieldKind::Quantity {
                kind: Kind::Taper,
                ..
            }
        )
    });
    html! {
        <div class={classes!("dock", focused.is_none().then_some("resting"))} onmousedown={Callback::from(|e: MouseEvent| e.prevent_default())}>
            <div class="strip">
                <p>{ strip(form) }</p>
                <button type="button" tabindex="-1" onclick={letters} aria-label="Phone keyboard for this field">{ "abc" }</button>
                <button type="button" tabindex="-1" onclick={Callback::from(|_| dom::focus_next_input())}>{ "Next" }</button>
                <button type="button" tabindex="-1" onclick={Callback::from(|_| dom::blur())}>{ "Done" }</button>
            </div>
            <div class="pad"><Pad words={field.map(keys_for).unwrap_or_default()} tolerance={field.is_none_or(|f| f.is_measured)} colon={taper} /></div>
        </div>
    }
}

/// The first result for the strip above the pad.
fn strip(form: &Form) -> Html {
    let answer = form.answer();
    match answer.lines.first().filter(|_| answer.is_complete()) {
        Some(line) => {
            let unit = line.value.unit(form.system).map_or("", |unit| unit.symbol);
            html! { <><span class="name">{ line.label.to_string() }</span><span class="fig">{ line.value.text(form.system) }</span><span class="soft">{ unit }</span></> }
        }
        None => html! { <span class="name">{ form.short_state() }</span> },
    }
}
