//! A result against an entry: drawn, and as a table. Steps are drawn as steps.

use super::super::field::sentence;
use super::super::{Choice, choice_row};
use super::worked::{Worked, use_worked};
use super::{PowersProps, ask, field_choices, first, line_of, result_choices};
use crate::plot;
use crate::state::Form;
use benchslate_core::powers::{Swept, field_text, swept};
use benchslate_core::sheet::{Fault, Field, Line, lowered};
use yew::prelude::*;

/// What is asked: the field and the result.
fn asked(form: &Form) -> (AttrValue, AttrValue) {
    match form.asked.sweep.as_deref().and_then(|s| s.split_once('~')) {
        Some((along, result)) => (along.to_owned().into(), result.to_owned().into()),
        None => (
            first(&field_choices(form, false)),
            first(&result_choices(form)),
        ),
    }
}

/// The questions, and under them the graph.
pub(super) fn part(props: &PowersProps) -> Html {
    let form = &props.form;
    let (fields, results) = (field_choices(form, false), result_choices(form));
    let (along, result) = asked(form);
    let (along_now, result_now) = (along.clone(), result.clone());
    let on_field = ask(props, move |asked, id| {
        asked.sweep = Some(format!("{id}~{result_now}"));
    });
    let on_result = ask(props, move |asked, id| {
        asked.sweep = Some(format!("{along_now}~{id}"));
    });
    html! {
        <>
            { choice_row(&Choice { id: "sweep-result".into(), label: "Graph".into(), choices: results, chosen: result, onchoose: on_result, as_list: true }) }
            { choice_row(&Choice { id: "sweep-field".into(), label: "against".into(), choices: fields, chosen: along, onchoose: on_field, as_list: true }) }
            <Drawn ..props.clone() />
        </>
    }
}

fn work(form: &Form) -> Option<Result<Swept, Fault>> {
    let (along, result) = asked(form);
    let mut asked = form.asked.clone();
    asked.sweep = Some(format!("{along}~{result}"));
    swept(&form.outcome.inputs, &asked)
}

/// The graph.
#[component]
fn Drawn(props: &PowersProps) -> Html {
    let form = &props.form;
    let (along, result) = asked(form);
    match use_worked(form, props.printing, work) {
        Worked::Waiting => html! { <p class="soft">{ "Drawing it." }</p> },
        Worked::Done(found) => match (&*found, form.sheet.field(&along), line_of(form, &result)) {
            (Some(Err(fault)), ..) => {
                html! { <p class="fault">{ sentence(&fault.says, None) }</p> }
            }
            (Some(Ok(found)), Some(field), Some(line)) => drawn(form, field, line, found),
            _ => Html::default(),
        },
    }
}

fn drawn(form: &Form, field: &Field, line: &Line, found: &Swept) -> Html {
    let ys: Vec<f64> = found.points.iter().filter_map(|point| point.1).collect();
    let (Some((x0, _)), Some((x1, _))) = (found.points.first(), found.points.last()) else {
        return Html::default();
    };
    if ys.is_empty() {
        return html! { <p>{ "No answer anywhere in this range." }</p> };
    }
    let curve = found.curve();
    let ends = (f64::INFINITY, f64::NEG_INFINITY);
    let (y0, y1) = curve
        .iter()
        .filter_map(|point| point.1)
        .fold(ends, |(low, high), y| (low.min(y), high.max(y)));
    let gives = |base: f64| line.value.with_base(base).text_with_unit(form.system);
    let at = |x: f64| field_text(&form.outcome.inputs, field, x);
    let levels = found.levels();
    let marks = levels.iter().flatten().filter_map(|level| {
        let gives = level.gives?;
        Some((
            f64::midpoint(level.from, level.to),
            gives,
            line.value.with_base(gives).text(form.system),
        ))
    });
    let axes = plot::Axes {
        levels: marks.collect(),
        title: format!("{} against {}", line.label, lowered(field.label)),
        x: (at(*x0), at(*x1)),
        y: (gives(y0), gives(y1)),
        x_name: lowered(field.label),
        y_name: lowered(&line.label),
    };
    let svg = plot::svg(&curve, found.own, ((*x0, *x1), (y0, y1)), &axes);
    let none = || "no answer".to_owned();
    let rows: Vec<(String, String)> = match levels {
        Some(levels) => levels
            .iter()
            .map(|level| {
                let place = format!("{} to {}", at(level.from), at(level.to));
                (place, level.gives.map_or_else(none, gives))
            })
            .collect(),
        None => found
            .points
            .iter()
            .step_by(4)
            .map(|(x, y)| (at(*x), y.map_or_else(none, gives)))
            .collect(),
    };
    html! {
        <>
            <figure class="figure">{ Html::from_html_unchecked(svg.into()) }</figure>
            <div class="scroll" tabindex="0" role="region" aria-label={axes.title.clone()}>
                <table class="ranked">
                    <thead><tr><th scope="col" class="first">{ field.label }</th><th scope="col">{ line.label.to_string() }</th></tr></thead>
                    <tbody>{ for rows.into_iter().map(|(x, y)| html! {
                        <tr><th scope="row" class="first fig">{ x }</th><td>{ y }</td></tr>
                    }) }</tbody>
                </table>
            </div>
            if !found.edges.is_empty() { <p class="soft">{ "It moves in steps: it jumps at the places drawn, and does not slope from one to the next." }</p> }
        </>
    }
}
