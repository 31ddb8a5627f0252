//! The answer: results, ranked tables, drawing, cautions, working and sources, or what is still missing.

use super::field::sentence;
use super::{Fold, Powers, ResultRow, TableView, result_line};
use crate::drawing;
use crate::shared::Shared;
use crate::state::{Act, Form};
use benchslate_core::powers::{End, Spread, spread};
use benchslate_core::sheet::{Answer, Caution, Sheet, State, Table, Withheld};
use yew::prelude::*;

/// Tables that stand open on screen.
const OPEN_TABLES: usize = 3;

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
    let sheet = form.sheet;
    if !answer.is_complete() {
        return html! {
            <section class="answer" aria-label="Answer">
                { stopped(form, &props.act) }
                { for answer.cautions.iter().map(caution) }
            </section>
        };
    }
    let spread = spread(&form.outcome.inputs, answer);
    let row = |at: usize| {
        answer.lines.get(at).map(|line| {
            let own = spread
                .as_ref()
                .and_then(|s| s.lines.iter().find(|l| l.id == line.id))
                .filter(|l| l.low < l.high);
            let driver = own
                .and_then(|l| sheet.field(l.driver))
                .map_or("", |f| f.label);
            result_line(&ResultRow {
                line,
                system: form.system,
                main: at == 0,
                spread: own,
                driver,
            })
        })
    };
    // the first tables are the answer; those after them are to look up, folded but on paper
    let open = if props.printing {
        form.tables.len()
    } else {
        OPEN_TABLES
    };
    let table = |one: &Shared<Table>| {
        html! { <TableView key={one.id} table={one.clone()} system={form.system} sheet={sheet.id} act={props.act.clone()} /> }
    };
    let (stops, notes): (Vec<&Caution>, Vec<&Caution>) =
        answer.cautions.iter().partition(|c| c.stop);
    html! {
        <section class="answer" aria-label="Answer">
            <>{ for row(0) }</>
            if answer.lines.len() > 1 { <div class="smalls">{ for (1..answer.lines.len()).filter_map(row) }</div> }
            if let Some(spread) = &spread { { at_the_ends(sheet, spread) } }
            <>{ for form.tables.iter().take(open).map(table) }</>
            { picture(answer) }
            <>{ for stops.into_iter().map(caution) }</>
            <>{ for notes.into_iter().map(caution) }</>
            <>{ for form.tables.iter().skip(open).map(|one| {
                let made = table(one);
                html! { <Fold key={one.id} title={one.title.to_string()} content={Callback::from(move |()| made.clone())} /> }
            }) }</>
            { working(props) }
            <Powers form={form.clone()} act={props.act.clone()} printing={props.printing} />
        </section>
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

fn caution(caution: &Caution) -> Html {
    html! {
        <div class={if caution.stop { "stop" } else { "note" }} role="note">
            <b class="word">{ caution.before.to_string() }</b>
            <p>{ caution.text.to_string() }</p>
        </div>
    }
}

fn working(props: &AnswerProps) -> Html {
    let answer = props.form.answer();
    if answer.steps.is_empty() && answer.sources.is_empty() {
        return Html::default();
    }
    let outcome = props.form.outcome.clone();
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
    html! { <Fold title="How it was figured" forced={props.printing} {content} /> }
}

/// What is still missing, what is wrong, or which limit is passed.
fn stopped(form: &Form, act: &Callback<Act>) -> Html {
    let answer = form.answer();
    match &answer.state {
        State::Incomplete(needed) => {
            let names: Vec<String> = needed
                .iter()
                .filter_map(|id| form.sheet.field(id))
                .map(|f| f.label.to_ascii_lowercase())
                .collect();
            html! {
                <>
                    <p class="need">{ if names.is_empty() { "Still needed: more of the entry.".to_owned() } else { format!("Still needed: {}.", names.join(", ")) } }</p>
                    if form.is_empty() { { example(form.sheet, act) } }
                </>
            }
        }
        State::Withheld(withheld) => limit(form, withheld),
        State::Faulty => {
            if let Some(fault) = &form.outcome.fault {
                html! {
                    <div class="fault" role="note">{ sentence(&fault.says, fault.at) }if !fault.cure.is_empty() { { " " }{ sentence(&fault.cure, None) } }</div>
                }
            } else {
                let names: Vec<String> = form
                    .fields
                    .iter()
                    .filter(|f| f.fault.is_some())
                    .filter_map(|f| form.sheet.field(f.id))
                    .map(|f| f.label.to_ascii_lowercase())
                    .collect();
                html! { <p class="need">{ format!("No answer yet: look at {}.", names.join(", ")) }</p> }
            }
        }
        State::Complete => Html::default(),
    }
}

fn limit(form: &Form, withheld: &Withheld) -> Html {
    let field = form
        .sheet
        .field(withheld.field)
        .map(|field| field.label.to_ascii_lowercase());
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

/// What changes at the ends of the tolerances: picks, and ends without an answer.
fn at_the_ends(sheet: &'static Sheet, spread: &Spread) -> Html {
    let name = |id: &str| {
        sheet
            .field(id)
            .map_or_else(|| id.to_owned(), |f| f.label.to_ascii_lowercase())
    };
    let end = |end: End| if end == End::Low { "low" } else { "high" };
    html! {
        <>
            if spread.added { <p class="soft">{ "More than six sizes carry \u{b1}: each was moved alone and the changes added." }</p> }
            { for spread.picks.iter().map(|p| html! { <p class="span">{ format!("At the {} end of {}: {} becomes {}.", end(p.end), name(p.field), p.what.to_ascii_lowercase(), p.becomes) }</p> }) }
            { for spread.faults.iter().map(|f| html! { <p class="fault">{ format!("At the {} end of {}: {}.", end(f.end), name(f.field), f.says) }</p> }) }
        </>
    }
}
