//! One field: its label, what is typed as it is typed, its unit, and below it what was understood or what is wrong.

use super::{Choice, Rows, Select, choice_row, rows_editor};
use crate::shared::Shared;
use crate::state::{Act, Typed};
use benchslate_core::quantity::{System, Unit};
use benchslate_core::sheet::{
    Fault, Field, FieldKind, FieldOutcome, Preset, Reason, Sheet, lowered,
};
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// A sheet as a property.
#[derive(Clone, Copy)]
pub struct SheetRef(pub &'static Sheet);

impl PartialEq for SheetRef {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self.0, other.0)
    }
}

/// A field of a form.
#[derive(Properties, PartialEq)]
pub struct FieldProps {
    /// The sheet.
    pub sheet: SheetRef,
    /// Which of its fields.
    pub at: usize,
    /// What is typed.
    pub typed: Typed,
    /// The unit that stands behind it.
    pub unit: Option<&'static Unit>,
    /// The system in use.
    pub system: System,
    /// What became of it.
    pub outcome: Shared<FieldOutcome>,
    /// The app's own key pad serves, so the system's keyboard stays away.
    pub own_pad: bool,
    /// Told of each change.
    pub act: Callback<Act>,
}

/// The field.
#[component]
pub fn FieldView(props: &FieldProps) -> Html {
    let Some(field) = props.sheet.0.fields.get(props.at) else {
        return Html::default();
    };
    match &field.kind {
        FieldKind::Choice(choices) => {
            let choices = choices
                .iter()
                .map(|c| (AttrValue::Static(c.id), AttrValue::Static(c.label)))
                .collect::<Vec<_>>();
            let (act, at) = (props.act.clone(), props.at);
            let onchoose =
                Callback::from(move |id: AttrValue| act.emit(Act::Type(at, id.as_str().into())));
            choice_row(&Choice {
                id: id_of(field),
                label: field.label.into(),
                choices,
                chosen: props.outcome.text.clone().into(),
                onchoose,
                as_list: false,
            })
        }
        FieldKind::Rows { columns, most, .. } if columns.len() > 1 => html! {
            <div class="field" role="group" aria-labelledby={format!("{}-label", id_of(field))}>
                <span class="lab" id={format!("{}-label", id_of(field))}>{ field.label }</span>
                { rows_editor(&Rows { sheet: props.sheet, at: props.at, raw: props.typed.raw.clone(), most: *most,
                    wrong: props.outcome.fault.as_ref().filter(|f| f.reason != Reason::Unfinished).and_then(|f| f.at),
                    own_pad: props.own_pad, act: props.act.clone() }) }
                { reading(props, field) }
            </div>
        },
        _ => entry(props, field),
    }
}

fn id_of(field: &Field) -> AttrValue {
    format!("f-{}", field.id).into()
}

/// The keyboard that the system brings: none while the own pad serves.
pub fn input_mode(own_pad: bool) -> &'static str {
    if own_pad { "none" } else { "text" }
}

fn entry(props: &FieldProps, field: &'static Field) -> Html {
    let id = id_of(field);
    let (act, at) = (props.act.clone(), props.at);
    let oninput = Callback::from(move |e: InputEvent| {
        if let Some(input) = e
            .target()
            .and_then(|t| t.dyn_into::<HtmlInputElement>().ok())
        {
            act.emit(Act::Type(at, input.value().into()));
        }
    });
    let wrong = props
        .outcome
        .fault
        .as_ref()
        .is_some_and(|fault| fault.reason != Reason::Unfinished);
    let placeholder = if props.outcome.from_preset {
        // as it shows, not as a link writes it
        let text = field.preset.text().unwrap_or_default();
        text.replace(';', "; ").replace(" pct", "%") // words: a link's spelling
    } else {
        String::new()
    };
    let unit_words = props
        .unit
        .filter(|unit| !unit.spoken.is_empty() && !unit.id.is_empty());
    let vacant = props.typed.raw.is_empty() && !props.outcome.from_preset;
    html! {
        <div class={classes!("field", vacant.then_some("vacant"))}>
            <label for={id.clone()}>
                { field.label }
                if field.is_optional { <span class="maybe">{ " optional" }</span> }
                if let Some(unit) = unit_words { <span class="out">{ format!(", in {}", unit.spoken) }</span> }
            </label>
            <div class={classes!("entry", wrong.then_some("bad"))}>
                <input id={id.clone()} type="text" value={props.typed.raw.to_string()} {oninput} {placeholder}
                    inputmode={input_mode(props.own_pad)} data-pad={props.at.to_string()}
                    autocomplete="off" autocapitalize="none" autocorrect="off" spellcheck="false" enterkeyhint="next"
                    aria-describedby={format!("{id}-read")} aria-invalid={wrong.then_some("true")} />
                { unit_place(props, field) }
            </div>
            { reading(props, field) }
        </div>
    }
}

/// The unit behind the entry: a choice where there are several.
fn unit_place(props: &FieldProps, field: &'static Field) -> Html {
    let FieldKind::Quantity { units, .. } = &field.kind else {
        return Html::default();
    };
    let Some(now) = props.unit.filter(|unit| !unit.symbol.is_empty()) else {
        return Html::default();
    };
    if units.len() < 2 {
        return html! { <span class="unit" aria-hidden="true">{ now.symbol }</span> };
    }
    let (act, at, offered) = (props.act.clone(), props.at, *units);
    let onchoose = Callback::from(move |id: AttrValue| {
        if let Some(unit) = offered.iter().find(|unit| unit.id == id.as_str()) {
            act.emit(Act::Unit(at, unit));
        }
    });
    // a unit that was typed but is not offered stands first
    let typed = (!units.contains(&now)).then_some(now);
    let name = |unit: &'static Unit| {
        (
            AttrValue::Static(unit.id),
            AttrValue::Static(unit_name(unit)),
        )
    };
    let choices: Vec<_> = typed
        .into_iter()
        .chain(units.iter().copied())
        .map(name)
        .collect();
    let label = format!("Unit of {}", lowered(field.label));
    html! { <Select {label} {choices} chosen={now.id} {onchoose} /> }
}

fn unit_name(unit: &'static Unit) -> &'static str {
    if unit.symbol == "1:" {
        "1 : n"
    } else {
        unit.symbol
    }
}

/// The line below: what was understood, what is wrong, or an example to tap.
fn reading(props: &FieldProps, field: &'static Field) -> Html {
    let id = format!("{}-read", id_of(field));
    let tap = |text: String, words: String, class: &'static str| {
        let (act, id) = (props.act.clone(), field.id);
        let onclick =
            Callback::from(move |_| act.emit(Act::Set(vec![(id.to_owned(), text.clone())])));
        html! { <button type="button" class={classes!("tap", class)} {onclick}>{ words }</button> }
    };
    if let Some(fault) = &props.outcome.fault {
        if fault.reason == Reason::Unfinished {
            return html! { <p class="read" {id}>{ sentence(&fault.says, place_of(field, fault)) }</p> };
        }
        // the example of a list would take the place of all that was typed
        let is_list = matches!(field.kind, FieldKind::Rows { .. });
        let example = fault.ways.is_empty() && !is_list && !field.example.is_empty();
        return html! {
            <div class="fault" {id}>
                { fault_words(field, fault) }
                { for fault.ways.iter().map(|way| html! { <>{ " " }{ tap(way.text.clone(), format!("{}: {}", way.text, way.label), "way") }</> }) }
                if example { { " " }{ tap(field.example.to_owned(), field.example.replace(';', "; "), "") } }
            </div>
        };
    }
    if props.typed.raw.trim().is_empty() {
        return html! {
            <p class="read" {id}>
                if props.outcome.from_preset {
                    { preset_words(field.preset, &props.outcome.reading) }
                }
                if !field.hint.is_empty() { <span class="hint">{ field.hint }{ " " }</span> }
                if !props.outcome.from_preset && !field.example.is_empty() {
                    { "Try" }{ tap(field.example.to_owned(), field.example.replace(';', "; "), "") }
                }
            </p>
        };
    }
    let read = if props.outcome.reading.is_empty() {
        String::new()
    } else {
        format!("Read as {}", props.outcome.reading)
    };
    html! {
        <p class="read" {id}>
            { read }
            if !props.typed.says.is_empty() { <span class="hint">{ ". " }{ props.typed.says }</span> }
        </p>
    }
}

fn preset_words(preset: Preset, reading: &str) -> String {
    match preset {
        Preset::Shop(..) => format!("Typical: {reading}. "),
        _ => format!("Usual: {reading}. "),
    }
}

fn fault_words(field: &Field, fault: &Fault) -> Html {
    let cure = fault.cure.trim();
    html! { <>{ sentence(&fault.says, place_of(field, fault)) }if !cure.is_empty() && !cure.starts_with("for example") { { " " }{ sentence(cure, None) } }</> }
}

/// A lower-case clause as a sentence.
pub fn sentence(says: &str, place: Option<String>) -> String {
    let said = place.map_or_else(|| says.to_owned(), |place| format!("{place}: {says}"));
    let mut letters = said.chars();
    let mut text: String = letters
        .next()
        .into_iter()
        .map(|letter| letter.to_ascii_uppercase())
        .collect();
    text.push_str(letters.as_str());
    if !text.is_empty() && !text.ends_with(['.', '?', ':']) {
        text.push('.');
    }
    text
}

/// Where in a list a fault stands.
pub fn place_of(field: &Field, fault: &Fault) -> Option<String> {
    fault.at.map(|at| field.place(at))
}
