//! Solve for another: which entry gives a wanted result?

use super::super::field::sentence;
use super::super::{Choice, choice_row};
use super::worked::{Worked, use_worked};
use super::{PowersProps, ask, field_choices, first, line_of, result_choices};
use crate::state::{Act, Form};
use benchslate_core::powers::{Find, Turned, field_text, tell_found, tell_none, turned};
use benchslate_core::quantity::{System, plain, usual};
use benchslate_core::sheet::{Fault, Field};
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// What is asked: the field, the result, the text that is wanted.
fn asked(form: &Form) -> (AttrValue, AttrValue, String) {
    let field: AttrValue = form
        .asked
        .turn
        .clone()
        .map_or_else(|| first(&field_choices(form, true)), Into::into);
    let want = form.asked.want.clone().unwrap_or_default();
    let (result, text) = want.split_once('~').unwrap_or((want.as_str(), ""));
    let result: AttrValue = if result.is_empty() {
        first(&result_choices(form))
    } else {
        result.to_owned().into()
    };
    (field, result, text.to_owned())
}

/// The questions, and under them what is found.
pub(super) fn part(props: &PowersProps) -> Html {
    let form = &props.form;
    let (freed, result, text) = asked(form);
    let (field_now, result_now) = (freed.clone(), result.clone());
    let text_now = text.clone();
    let on_field = ask(props, move |asked, id| {
        asked.turn = Some(id.to_string());
        asked.want = Some(format!("{result_now}~{text_now}"));
    });
    let text_now = text.clone();
    let on_result = ask(props, move |asked, id| {
        asked.turn = Some(field_now.to_string());
        asked.want = Some(format!("{id}~{text_now}"));
    });
    let on_text = on_text(props, &freed, &result);
    // what a bare number is read in
    let unit = form
        .sheet
        .result(&result)
        .and_then(|res| res.kind)
        .map_or("", |kind| usual(kind, form.system).symbol);
    let any = !text.trim().is_empty();
    let (results, fields) = (result_choices(form), field_choices(form, true));
    html! {
        <>
            { choice_row(&Choice { id: "turn-result".into(), label: "Wanted".into(), choices: results, chosen: result, onchoose: on_result, as_list: true }) }
            <div class="field">
                <label for="turn-text">{ "at" }</label>
                <div class="entry">
                    <input id="turn-text" type="text" value={text} oninput={on_text} data-pad="" autocomplete="off" autocapitalize="none" spellcheck="false" />
                    <span class="unit">{ unit }</span>
                </div>
            </div>
            { choice_row(&Choice { id: "turn-field".into(), label: "by changing".into(), choices: fields, chosen: freed, onchoose: on_field, as_list: true }) }
            if any { <Found ..props.clone() /> } else { <p class="soft">{ "Type the result that you want." }</p> }
        </>
    }
}

fn on_text(props: &PowersProps, freed: &AttrValue, result: &AttrValue) -> Callback<InputEvent> {
    let (freed, result) = (freed.clone(), result.clone());
    let set = ask(props, move |asked, text| {
        let any = !text.trim().is_empty();
        asked.turn = any.then(|| freed.to_string());
        asked.want = any.then(|| format!("{result}~{text}"));
    });
    Callback::from(move |e: InputEvent| {
        if let Some(input) = e
            .target()
            .and_then(|t| t.dyn_into::<HtmlInputElement>().ok())
        {
            set.emit(input.value().into());
        }
    })
}

fn work(form: &Form) -> Option<Result<Turned, Fault>> {
    turned(&form.outcome.inputs, &form.asked)
}

/// What is found.
#[component]
fn Found(props: &PowersProps) -> Html {
    let form = &props.form;
    match use_worked(form, props.printing, work) {
        Worked::Waiting => html! { <p class="soft" role="status">{ "Working it out." }</p> },
        Worked::Done(found) => match &*found {
            None => Html::default(),
            Some(Err(fault)) => html! { <p class="fault">{ sentence(&fault.says, None) }</p> },
            Some(Ok(found)) => finds(props, found),
        },
    }
}

fn finds(props: &PowersProps, found: &Turned) -> Html {
    let form = &props.form;
    let (freed, result, _) = asked(form);
    let (Some(field), Some(line)) = (form.sheet.field(&freed), line_of(form, &result)) else {
        return Html::default();
    };
    let inputs = &form.outcome.inputs;
    let all = tell_found(inputs, field, line, found);
    let none = tell_none(inputs, field, line, found);
    let single = found.intervals.is_empty();
    let (low, high) = found.searched;
    let (low, high) = (
        field_text(inputs, field, low),
        field_text(inputs, field, high),
    );
    html! {
        <div role="status">
            if let Some(none) = &none { <p>{ none }</p> }
            { for all.iter().map(|find| html! {
                <p><b class="fig">{ &find.entry }</b>{ format!(" {} ", find.gives) }{ put(props, field, find, single) }</p>
            }) }
            if none.is_none() { <p class="soft">{ format!("Searched {low} to {high}.") }</p> }
        </div>
    }
}

/// The button that puts the number into the field, where the wanted value is met.
fn put(props: &PowersProps, field: &'static Field, find: &Find, single: bool) -> Html {
    let Some(x) = find.put else {
        return Html::default();
    };
    let form = &props.form;
    let unit = form
        .outcome
        .inputs
        .unit(field.id)
        .or_else(|| field.unit(form.system))
        .unwrap_or_else(|| usual(benchslate_core::quantity::Kind::Number, System::Inch));
    let text = if unit.id.is_empty() {
        plain(x, unit)
    } else {
        format!("{} {}", plain(x, unit), unit.id)
    };
    let says = if single {
        "Use it".to_owned()
    } else {
        format!("Use {}", field_text(&form.outcome.inputs, field, x))
    };
    let (act, id) = (props.act.clone(), field.id);
    let onclick = Callback::from(move |_| act.emit(Act::Set(vec![(id.to_owned(), text.clone())])));
    html! { <button type="button" class="tap" {onclick}>{ says }</button> }
}
