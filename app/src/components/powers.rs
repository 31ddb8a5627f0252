//! What can be asked of every answer: turned round (which entry gives a wanted result) and plotted against an entry.

use super::field::sentence;
use super::{Choice, Fold, choice_row};
use crate::plot;
use crate::state::{Act, Form};
use benchslate_core::link::Asked;
use benchslate_core::powers::{Swept, Turned, swept, turned};
use benchslate_core::quantity::{System, plain, usual, with_unit};
use benchslate_core::sheet::{Field, FieldKind, Line, lowered};
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// The form.
#[derive(Properties, PartialEq)]
pub struct PowersProps {
    /// The form.
    pub form: Form,
    /// On paper only what was asked is shown.
    pub printing: bool,
    /// Told of each change.
    pub act: Callback<Act>,
}

/// Both parts, folded.
#[component]
pub fn Powers(props: &PowersProps) -> Html {
    let form = &props.form;
    let lines: Vec<&Line> = form
        .answer()
        .lines
        .iter()
        .filter(|line| line.value.base().is_some())
        .collect();
    let turnable = numeric(form).any(|field| field.range.is_some());
    if lines.is_empty() || numeric(form).next().is_none() {
        return Html::default();
    }
    let asked = &form.asked;
    let part = |title: &'static str, open: bool, content: fn(&PowersProps) -> Html| {
        let own = PowersProps {
            form: form.clone(),
            printing: props.printing,
            act: props.act.clone(),
        };
        let content = Callback::from(move |()| content(&own));
        html! { <div class={(!open).then_some("noprint")}><Fold {title} {open} {content} /></div> }
    };
    html! {
        <>
            if turnable { { part("Turn it round", asked.turn.is_some(), turn_part) } }
            { part("Plot it", asked.sweep.is_some(), sweep_part) }
        </>
    }
}

/// Number fields that apply.
fn numeric(form: &Form) -> impl Iterator<Item = &'static Field> {
    let applies = |field: &&'static Field| form.outcome.field(field.id).is_some_and(|f| f.applies);
    form.sheet
        .fields
        .iter()
        .filter(applies)
        .filter(|field| matches!(field.kind, FieldKind::Quantity { .. }))
}

/// Fields that one would free or sweep, what is typed first.
fn field_choices(form: &Form, ranged: bool) -> Vec<(AttrValue, AttrValue)> {
    let one = |field: &'static Field| (AttrValue::Static(field.id), AttrValue::Static(field.label));
    let given = |f: &&'static Field| form.outcome.inputs.number(f.id).is_some();
    let (first, rest): (Vec<_>, Vec<_>) = numeric(form)
        .filter(|f| f.range.is_some() || (!ranged && given(f)))
        .partition(given);
    first.into_iter().chain(rest).map(one).collect()
}

fn result_choices(form: &Form) -> Vec<(AttrValue, AttrValue)> {
    let numbers = form
        .answer()
        .lines
        .iter()
        .filter(|line| line.value.base().is_some());
    numbers
        .map(|line| (AttrValue::Static(line.id), line.label.to_string().into()))
        .collect()
}

fn first(choices: &[(AttrValue, AttrValue)]) -> AttrValue {
    choices
        .first()
        .map(|(id, _)| id.clone())
        .unwrap_or_default()
}

fn ask(
    props: &PowersProps,
    change: impl Fn(&mut Asked, AttrValue) + 'static,
) -> Callback<AttrValue> {
    let (act, asked) = (props.act.clone(), props.form.asked.clone());
    Callback::from(move |id: AttrValue| {
        let mut next = asked.clone();
        change(&mut next, id);
        act.emit(Act::Ask(next));
    })
}

/// The field's number printed in the unit that it was typed in.
fn field_text(form: &Form, field: &Field, base: f64) -> String {
    let unit = form
        .outcome
        .inputs
        .unit(field.id)
        .or_else(|| field.unit(form.system));
    unit.map_or_else(String::new, |unit| {
        let places = unit.places.saturating_add(u8::from(unit.places == 0));
        let text = with_unit(base, unit, places);
        if unit.symbol.is_empty() && text.contains('.') {
            text.trim_end_matches('0').trim_end_matches('.').to_owned()
        } else {
            text
        }
    })
}

fn line_of<'a>(form: &'a Form, id: &str) -> Option<&'a Line> {
    form.answer().get(id)
}

fn turn_part(props: &PowersProps) -> Html {
    let form = &props.form;
    let (fields, results) = (field_choices(form, true), result_choices(form));
    let freed: AttrValue = form
        .asked
        .turn
        .clone()
        .map_or_else(|| first(&fields), Into::into);
    let want = form.asked.want.clone().unwrap_or_default();
    let (result, text) = want.split_once('~').unwrap_or((want.as_str(), ""));
    let result: AttrValue = if result.is_empty() {
        first(&results)
    } else {
        result.to_owned().into()
    };
    let text = text.to_owned();
    let on_field = {
        let (result, text) = (result.clone(), text.clone());
        ask(props, move |asked, id| {
            asked.turn = Some(id.to_string());
            asked.want = Some(format!("{result}~{text}"));
        })
    };
    let on_result = {
        let (freed, text) = (freed.clone(), text.clone());
        ask(props, move |asked, id| {
            asked.turn = Some(freed.to_string());
            asked.want = Some(format!("{id}~{text}"));
        })
    };
    let on_text = {
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
    };
    let unit = line_of(form, &result)
        .and_then(|line| line.value.unit(form.system))
        .map_or("", |unit| unit.symbol);
    let found = (!text.trim().is_empty())
        .then(|| turned(&form.outcome.inputs, &form.asked))
        .flatten();
    html! {
        <>
            { choice_row(&Choice { id: "turn-result".into(), label: "Wanted".into(), choices: results, chosen: result.clone().into(), onchoose: on_result, as_list: true }) }
            <div class="field">
                <label for="turn-text">{ "at" }</label>
                <div class="entry">
                    <input id="turn-text" type="text" value={text} oninput={on_text} data-pad="" autocomplete="off" autocapitalize="none" spellcheck="false" />
                    <span class="unit">{ unit }</span>
                </div>
            </div>
            { choice_row(&Choice { id: "turn-field".into(), label: "by changing".into(), choices: fields, chosen: freed.clone().into(), onchoose: on_field, as_list: true }) }
            { match found {
                None => html! { <p class="soft">{ "Type the result that you want." }</p> },
                Some(Err(fault)) => html! { <p class="fault">{ sentence(&fault.says, None) }</p> },
                Some(Ok(found)) => turn_found(props, &freed, &result, &found),
            } }
        </>
    }
}

fn turn_found(props: &PowersProps, freed: &str, result: &str, found: &Turned) -> Html {
    let form = &props.form;
    let (Some(field), Some(line)) = (form.sheet.field(freed), line_of(form, result)) else {
        return Html::default();
    };
    let gives = |base: f64| line.value.with_base(base).text_with_unit(form.system);
    let put = |x: f64| {
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
        let (act, id) = (props.act.clone(), field.id);
        let onclick =
            Callback::from(move |_| act.emit(Act::Set(vec![(id.to_owned(), text.clone())])));
        html! { <button type="button" class="tap" {onclick}>{ "use it" }</button> }
    };
    let steps: Vec<_> = found.below.iter().chain(&found.above).collect();
    let none = found.roots.is_empty() && found.jumps.is_empty() && steps.is_empty();
    html! {
        <div role="status">
            if found.roots.len() > 1 { <p>{ format!("Found {} in this range.", found.roots.len()) }</p> }
            { for found.roots.iter().map(|root| html! {
                <p><b class="fig">{ format!("{} {}", field.label, field_text(form, field, root.x)) }</b>{ format!(" gives {} ", gives(root.gives)) }{ put(root.x) }</p>
            }) }
            { for found.jumps.iter().map(|jump| html! {
                <p>{ format!("It jumps from {} to {} at {} {}.", gives(jump.from), gives(jump.to), lowered(field.label), field_text(form, field, jump.x)) }</p>
            }) }
            { for steps.into_iter().map(|side| html! {
                <p><b class="fig">{ format!("{} {}", field.label, field_text(form, field, side.x)) }</b>{ format!(" gives {} ", gives(side.gives)) }{ put(side.x) }</p>
            }) }
            if none {
                <p>{ match found.reach {
                    Some((low, high)) => format!("Not in this range: it reaches {} to {}.", gives(low), gives(high)),
                    None => "No answer anywhere in this range.".to_owned(),
                } }</p>
            }
            <p class="soft">{ format!("Searched {} to {}.", field_text(form, field, found.searched.0), field_text(form, field, found.searched.1)) }</p>
        </div>
    }
}

fn sweep_part(props: &PowersProps) -> Html {
    let form = &props.form;
    let (fields, results) = (field_choices(form, false), result_choices(form));
    let mut asked = form.asked.clone();
    let now = asked
        .sweep
        .clone()
        .unwrap_or_else(|| format!("{}~{}", first(&fields), first(&results)));
    asked.sweep = Some(now.clone());
    let (along, result) = now.split_once('~').unwrap_or((now.as_str(), ""));
    let (along, result) = (along.to_owned(), result.to_owned());
    let on_field = {
        let result = result.clone();
        ask(props, move |asked, id| {
            asked.sweep = Some(format!("{id}~{result}"));
        })
    };
    let on_result = {
        let along = along.clone();
        ask(props, move |asked, id| {
            asked.sweep = Some(format!("{along}~{id}"));
        })
    };
    let drawn = match swept(&form.outcome.inputs, &asked) {
        Some(Ok(found)) => sweep_found(form, &along, &result, &found),
        Some(Err(fault)) => html! { <p class="fault">{ sentence(&fault.says, None) }</p> },
        None => Html::default(),
    };
    html! {
        <>
            { choice_row(&Choice { id: "sweep-result".into(), label: "Plot".into(), choices: results, chosen: result.clone().into(), onchoose: on_result, as_list: true }) }
            { choice_row(&Choice { id: "sweep-field".into(), label: "against".into(), choices: fields, chosen: along.clone().into(), onchoose: on_field, as_list: true }) }
            { drawn }
        </>
    }
}

fn sweep_found(form: &Form, along: &str, result: &str, found: &Swept) -> Html {
    let (Some(field), Some(line)) = (form.sheet.field(along), line_of(form, result)) else {
        return Html::default();
    };
    let ys: Vec<f64> = found.points.iter().filter_map(|point| point.1).collect();
    let (Some((x0, _)), Some((x1, _))) = (found.points.first(), found.points.last()) else {
        return Html::default();
    };
    let (y0, y1) = ys
        .iter()
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), &y| {
            (low.min(y), high.max(y))
        });
    if ys.is_empty() {
        return html! { <p>{ "No answer anywhere in this range." }</p> };
    }
    let gives = |base: f64| line.value.with_base(base).text_with_unit(form.system);
    let at = |x: f64| field_text(form, field, x);
    let axes = plot::Axes {
        title: format!("{} against {}", line.label, lowered(field.label)),
        x: (at(*x0), at(*x1)),
        y: (gives(y0), gives(y1)),
        x_name: lowered(field.label),
        y_name: lowered(&line.label),
    };
    let svg = plot::svg(&found.points, found.own, ((*x0, *x1), (y0, y1)), &axes);
    html! {
        <>
            <figure class="figure">{ Html::from_html_unchecked(svg.into()) }</figure>
            <div class="scroll" tabindex="0" role="region" aria-label={axes.title.clone()}>
                <table class="ranked">
                    <thead><tr><th scope="col" class="first">{ field.label }</th><th scope="col">{ line.label.to_string() }</th></tr></thead>
                    <tbody>{ for found.points.iter().step_by(4).map(|(x, y)| html! {
                        <tr><th scope="row" class="first fig">{ at(*x) }</th><td>{ y.map_or_else(|| "no answer".to_owned(), gives) }</td></tr>
                    }) }</tbody>
                </table>
            </div>
        </>
    }
}
