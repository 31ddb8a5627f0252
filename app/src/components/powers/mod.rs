//! What can be asked of every answer: solved for another entry (which one gives a wanted result) and a graph against an
//! entry.

mod graph;
mod solve;
mod worked;

use super::Fold;
use crate::state::{Act, Form};
use benchslate_core::link::Asked;
use benchslate_core::sheet::{Field, FieldKind, Line};
use yew::prelude::*;

/// The form.
#[derive(Properties, PartialEq, Clone)]
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
    let any = form
        .answer()
        .lines
        .iter()
        .any(|line| line.value.base().is_some());
    let solvable = numeric(form).any(|field| field.range.is_some());
    if !any || numeric(form).next().is_none() {
        return Html::default();
    }
    let asked = &form.asked;
    let part = |title: &'static str, open: bool, content: fn(&PowersProps) -> Html| {
        let own = props.clone();
        let content = Callback::from(move |()| content(&own));
        html! { <div class={(!open).then_some("noprint")}><Fold {title} {open} {content} /></div> }
    };
    html! {
        <>
            if solvable { { part("Solve for another", asked.turn.is_some(), solve::part) } }
            { part("Graph", asked.sweep.is_some(), graph::part) }
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

fn line_of<'a>(form: &'a Form, id: &str) -> Option<&'a Line> {
    form.answer().get(id)
}
