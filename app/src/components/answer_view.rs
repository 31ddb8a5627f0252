//! The answer: its figures at once and the rest behind them, or what is still missing.

use super::answer_tail::{AnswerTail, caution};
use super::field::{place_of, sentence};
use super::{ResultRow, result_line};
use crate::state::{Act, Form};
use benchslate_core::powers::{spread, tell_line, tell_notes};
use benchslate_core::sheet::{Sheet, State, Withheld, lowered, wanting};
use yew::prelude::*;

/// The form whose answer it is.
#[derive(Properties, PartialEq)]
pub struct AnswerProps {
    /// The form.
    pub form: Form,
    /// On paper: all is unfolded.
    pub printing: bool,
    /// Told of each change.
    pub act: Callback<Act>,
}

/// The answer.
#[component]
pub fn AnswerView(props: &AnswerProps) -> Html {
    let form = &props.form;
    let answer = form.answer();
    let complete = answer.is_complete();
    // what an entry lacks, or is at fault for, leaves out only what hangs on it
    let some = !answer.lines.is_empty();
    // built by the first answer and kept out of sight from then on: a fault that an entry passes through costs no rebuilding,
    // and what was unfolded stays so
    let figures = use_mut_ref(|| None::<Html>);
    if some {
        *figures.borrow_mut() = Some(results(form));
    }
    let figures = figures.borrow().clone();
    let has_tail = figures.is_some();
    html! {
        <section class="answer" aria-label="Answer">
            <div hidden={!some}>{ figures.unwrap_or_default() }</div>
            if !complete {
                { stopped(form, &props.act) }
                { for answer.cautions.iter().map(caution) }
            }
            if has_tail { <AnswerTail form={form.clone()} printing={props.printing} act={props.act.clone()} /> }
        </section>
    }
}

/// The figures, and what the tolerances do to them.
fn results(form: &Form) -> Html {
    let (answer, inputs) = (form.answer(), &form.outcome.inputs);
    let whole = answer.is_complete();
    let spread = whole.then(|| spread(inputs, answer)).flatten();
    let row = |at: usize| {
        answer.lines.get(at).map(|line| {
            let own = spread
                .as_ref()
                .and_then(|s| s.lines.iter().find(|l| l.id == line.id));
            result_line(&ResultRow {
                line,
                system: form.system,
                main: at == 0,
                spread: own.and_then(|own| tell_line(inputs, line, own, at == 0)),
            })
        })
    };
    html! {
        <>
            <>{ for row(0) }</>
            if answer.lines.len() > 1 { <div class="smalls">{ for (1..answer.lines.len()).filter_map(row) }</div> }
            if let Some(spread) = &spread {
                { for tell_notes(inputs, spread).into_iter().map(|note| html! {
                    <p class={if note.is_fault { "fault" } else { "span" }}>{ note.says }</p>
                }) }
            }
        </>
    }
}

/// What is still missing, what is wrong, or which limit is passed.
fn stopped(form: &Form, act: &Callback<Act>) -> Html {
    let answer = form.answer();
    match &answer.state {
        State::Incomplete(needed) => {
            let names: Vec<String> = needed
                .iter()
                .filter_map(|id| form.sheet.field(id))
                .map(|f| lowered(f.label))
                .collect();
            html! {
                <>
                    <p class="need">{ if names.is_empty() { "Still needed: more of the entry.".to_owned() } else { format!("Still needed: {}.", names.join(", ")) } }</p>
                    { for more(form) }
                    if form.is_empty() { { example(form.sheet, act) } }
                </>
            }
        }
        State::Withheld(withheld) => limit(form, withheld),
        State::Faulty => {
            if let Some(fault) = &form.outcome.fault {
                let place = form
                    .sheet
                    .field(fault.field)
                    .and_then(|field| place_of(field, fault));
                html! {
                    <div class="fault" role="note">{ sentence(&fault.says, place) }if !fault.cure.is_empty() { { " " }{ sentence(&fault.cure, None) } }</div>
                }
            } else {
                let names: Vec<String> = form
                    .fields
                    .iter()
                    .filter(|f| f.fault.is_some())
                    .filter_map(|f| form.sheet.field(f.id))
                    .map(|f| format!("the {} entry", lowered(f.label)))
                    .collect();
                let lead = if answer.lines.is_empty() {
                    "No answer yet:"
                } else {
                    "For the rest,"
                };
                html! { <p class="need">{ format!("{lead} check {}.", names.join(", ")) }</p> }
            }
        }
        State::Complete => Html::default(),
    }
}

/// Which results further entries open, where some stand already: "Feed: add teeth."
fn more(form: &Form) -> Vec<Html> {
    if form.answer().lines.is_empty() {
        return Vec::new();
    }
    let name = |id: &&str| form.sheet.field(id).map(|field| lowered(field.label));
    let wanting = wanting(form.sheet, &form.outcome);
    let opened = wanting.iter().filter(|result| !result.needs.is_empty());
    opened
        .map(|result| {
            let needs: Vec<String> = result.needs.iter().filter_map(name).collect();
            html! { <p class="need">{ format!("{}: add {}.", result.label, needs.join(", ")) }</p> }
        })
        .collect()
}

fn limit(form: &Form, withheld: &Withheld) -> Html {
    let field = form
        .sheet
        .field(withheld.field)
        .map(|field| lowered(field.label));
    html! {
        <div class="withheld" role="note">
            <b>{ "No figure given" }</b>
            <p>{ format!("Limit: {}{}. ", withheld.limit, field.map(|f| format!(" ({f})")).unwrap_or_default()) }{ sentence(&withheld.reason, None) }</p>
            if !withheld.cure.is_empty() { <p>{ sentence(&withheld.cure, None) }</p> }
        </div>
    }
}

/// The one-tap example.
fn example(sheet: &'static Sheet, act: &Callback<Act>) -> Html {
    let Some(example) = sheet.examples.first() else {
        return Html::default();
    };
    let act = act.clone();
    let onclick = Callback::from(move |_| {
        act.emit(Act::Fill(
            example
                .iter()
                .map(|(id, text)| ((*id).to_owned(), (*text).to_owned()))
                .collect(),
        ));
    });
    html! { <p><button type="button" class="act" {onclick}>{ "Show an example" }</button></p> }
}
