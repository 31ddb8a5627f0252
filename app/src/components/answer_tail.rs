//! What follows the figures: ranked tables, drawing, cautions, working and sources, the powers.
//!
//! The figures are drawn at the key stroke; this waits for the frame after it, so that long tables never hold the keys
//! up. While there is no answer it is out of sight but stays built.

use super::answer_view::AnswerProps;
use super::{Fold, Powers, TableView};
use crate::drawing;
use crate::hooks::use_later;
use crate::shared::Shared;
use crate::state::Form;
use benchslate_core::sheet::{Answer, Caution, Table};
use yew::prelude::*;

/// Tables that stand open on screen.
const OPEN_TABLES: usize = 3;

/// The rest of the answer.
#[component]
pub fn AnswerTail(props: &AnswerProps) -> Html {
    // the answer drawn here, and whether one without an answer came after it
    let shown = use_state_eq(|| props.form.clone());
    let stopped = use_mut_ref(|| false);
    let later = use_later();
    {
        let (shown, stopped) = (shown.clone(), stopped.clone());
        use_effect_with(props.form.clone(), move |form| {
            if form.answer().is_complete() {
                let form = form.clone();
                later.put_behind_frame(move || {
                    *stopped.borrow_mut() = false;
                    shown.set(form);
                });
            } else {
                *stopped.borrow_mut() = true;
                later.forget();
            }
        });
    }
    let complete = props.form.answer().is_complete();
    let at_once = props.printing && complete;
    let hidden = !at_once && (!complete || *stopped.borrow());
    let form = if at_once { &props.form } else { &*shown };
    let answer = form.answer();
    // the first tables are the answer; those after them are to look up, folded but on paper
    let open = if props.printing {
        form.tables.len()
    } else {
        OPEN_TABLES
    };
    let table = |one: &Shared<Table>| {
        html! { <TableView key={one.id} table={one.clone()} system={form.system} sheet={form.sheet.id} act={props.act.clone()} /> }
    };
    let (stops, notes): (Vec<&Caution>, Vec<&Caution>) =
        answer.cautions.iter().partition(|c| c.stop);
    html! {
        <div {hidden}>
            <>{ for form.tables.iter().take(open).map(table) }</>
            { picture(answer) }
            <>{ for stops.into_iter().map(caution) }</>
            <>{ for notes.into_iter().map(caution) }</>
            <>{ for form.tables.iter().skip(open).map(|one| {
                let made = table(one);
                html! { <Fold key={one.id} title={one.title.to_string()} prints={true} content={Callback::from(move |()| made.clone())} /> }
            }) }</>
            { working(form, props.printing) }
            <Powers form={form.clone()} act={props.act.clone()} printing={props.printing} />
        </div>
    }
}

fn picture(answer: &Answer) -> Html {
    let Some(drawing) = &answer.drawing else {
        return Html::default();
    };
    let svg = drawing::svg(drawing);
    html! {
        <figure class="figure">
            { Html::from_html_unchecked(svg.into()) }
            if !drawing.to_scale { <figcaption>{ "Not to scale." }</figcaption> }
        </figure>
    }
}

/// A note, or a stop.
pub fn caution(caution: &Caution) -> Html {
    html! {
        <div class={if caution.stop { "stop" } else { "note" }} role="note">
            <b class="word">{ caution.before.to_string() }</b>
            <p>{ caution.text.to_string() }</p>
        </div>
    }
}

fn working(form: &Form, printing: bool) -> Html {
    let answer = form.answer();
    if answer.steps.is_empty() && answer.sources.is_empty() {
        return Html::default();
    }
    let outcome = form.outcome.clone();
    let content = Callback::from(move |()| {
        let answer = &outcome.answer;
        html! {
            <>
                <ol class="working">
                    { for answer.steps.iter().map(|step| html! {
                        <li>
                            <span class="say">{ step.title.to_string() }</span>
                            { for step.lines.iter().map(|line| html! { <span class="eq">{ line.clone() }</span> }) }
                            <span class="say">{ step.source.text() }</span>
                        </li>
                    }) }
                </ol>
                if !answer.sources.is_empty() {
                    <h2>{ "Sources" }</h2>
                    <ul class="sources">{ for answer.sources.iter().map(|source| html! { <li>{ source.text() }</li> }) }</ul>
                }
            </>
        }
    });
    html! { <Fold title="How it was figured" prints={true} forced={printing} {content} /> }
}
