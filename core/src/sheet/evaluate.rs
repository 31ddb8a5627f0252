//! How does an entry become an outcome? Each field is read where it applies; the function is called when all is read.

use super::read::read_field;
use super::{Answer, Entry, Fault, Field, FieldKind, Input, Inputs, Reason, Sheet, State, Stop};

/// What became of one field.
#[derive(Clone, PartialEq, Debug)]
pub struct FieldOutcome {
    /// The field's id.
    pub id: &'static str,
    /// It applies under the choices made.
    pub applies: bool,
    /// Nothing was typed: the preset's text holds.
    pub from_preset: bool,
    /// The text that holds.
    pub text: String,
    /// The text in its plain form, with its unit, for a link.
    pub link_text: String,
    /// What was understood.
    pub reading: String,
    /// What is wrong.
    pub fault: Option<Fault>,
}

/// What became of an entry.
#[derive(Clone)]
pub struct Outcome {
    /// A field each, in declared order.
    pub fields: Vec<FieldOutcome>,
    /// The answer.
    pub answer: Answer,
    /// A fault of the entry as a whole, where there is one.
    pub fault: Option<Fault>,
    /// The readings, for the powers.
    pub inputs: Inputs,
}

impl Outcome {
    /// A field's outcome by id.
    pub fn field(&self, id: &str) -> Option<&FieldOutcome> {
        self.fields.iter().find(|field| field.id == id)
    }
    /// All faults, fields' first.
    pub fn faults(&self) -> impl Iterator<Item = &Fault> {
        self.fields
            .iter()
            .filter_map(|field| field.fault.as_ref())
            .chain(self.fault.as_ref())
    }
}

/// Reads an entry against a sheet and figures the answer.
pub fn evaluate(sheet: &'static Sheet, entry: &Entry) -> Outcome {
    worked_out(sheet, entry, false)
}

/// As [`evaluate`], with the results alone: no working, no drawing.
pub fn evaluate_quietly(sheet: &'static Sheet, entry: &Entry) -> Outcome {
    worked_out(sheet, entry, true)
}

fn worked_out(sheet: &'static Sheet, entry: &Entry, quiet: bool) -> Outcome {
    let mut inputs = Inputs {
        sheet,
        values: Vec::with_capacity(sheet.fields.len()),
        typed: Vec::with_capacity(sheet.fields.len()),
        entered: Vec::with_capacity(sheet.fields.len()),
        system: entry.system,
        quiet,
    };
    let mut fields = Vec::with_capacity(sheet.fields.len());
    let mut needed = Vec::new();
    let mut faulty = false;
    for field in sheet.fields {
        let (value, outcome) = read_one(field, entry, &inputs);
        if let Some(fault) = &outcome.fault {
            // half-typed is not wrong: it is still needed
            if fault.reason == Reason::Unfinished {
                needed.push(field.id);
            } else {
                faulty = true;
            }
        } else if outcome.applies && value.is_none() && !field.is_optional {
            needed.push(field.id);
        }
        inputs.entered.push(is_entered(field, entry, &outcome));
        inputs.typed.push(outcome.text.clone());
        inputs.values.push(value);
        fields.push(outcome);
    }
    let mut fault = None;
    let answer = if faulty {
        Answer::stopped(State::Faulty)
    } else if needed.is_empty() {
        match figure(&inputs) {
            Ok(answer) => answer,
            Err(Stop::Missing(id)) => Answer::stopped(State::Incomplete(vec![id])),
            Err(Stop::Withheld(withheld)) => Answer::stopped(State::Withheld(*withheld)),
            Err(Stop::Fault(found)) => {
                fault = place_fault(*found, &mut fields);
                Answer::stopped(State::Faulty)
            }
        }
    } else {
        Answer::stopped(State::Incomplete(needed))
    };
    Outcome {
        fields,
        answer,
        fault,
        inputs,
    }
}

/// Something else than the preset says was typed, or written in by a shop.
fn is_entered(field: &Field, entry: &Entry, outcome: &FieldOutcome) -> bool {
    let preset = field.preset.text();
    entry.get(field.id).is_some_and(|text| {
        let text = text.trim();
        !text.is_empty() && preset != Some(text) && preset != Some(outcome.link_text.as_str())
    })
}

/// Which fields apply under the choices of an entry, in declared order; nothing is figured.
pub fn applying(sheet: &'static Sheet, entry: &Entry) -> Vec<bool> {
    let mut inputs = Inputs {
        sheet,
        values: Vec::with_capacity(sheet.fields.len()),
        typed: Vec::new(),
        entered: Vec::new(),
        system: entry.system,
        quiet: true,
    };
    let mut found = Vec::with_capacity(sheet.fields.len());
    for field in sheet.fields {
        // conditions hang on choices alone
        let (value, now) = match field.kind {
            FieldKind::Choice(_) => {
                let (value, outcome) = read_one(field, entry, &inputs);
                (value, outcome.applies)
            }
            _ => (None, applies(field, &inputs)),
        };
        inputs.values.push(value);
        found.push(now);
    }
    found
}

/// Calls the sheet's function and refuses an answer that holds a number that is none.
///
/// # Errors
/// What the function stops with.
pub fn figure(inputs: &Inputs) -> Result<Answer, Stop> {
    let answer = (inputs.sheet.figure)(inputs)?;
    let finite = |base: Option<f64>| base.is_none_or(f64::is_finite);
    let lines = answer.lines.iter().all(|line| finite(line.value.base()));
    let cells = answer
        .tables
        .iter()
        .flat_map(|table| &table.rows)
        .flat_map(|row| &row.cells);
    if lines && cells.into_iter().all(|cell| finite(cell.base())) {
        return Ok(answer);
    }
    Err(Stop::fault(
        "",
        Reason::OutOfRange,
        "these entries together give no finite number",
        "check the sizes against each other",
    ))
}

fn applies(field: &Field, inputs: &Inputs) -> bool {
    field.when.iter().all(|when| {
        let index = inputs
            .sheet
            .fields
            .iter()
            .position(|other| other.id == when.field);
        let value = index
            .and_then(|index| inputs.values.get(index))
            .and_then(Option::as_ref);
        matches!(value, Some(Input::Choice(choice)) if when.is.contains(&choice.id))
    })
}

fn read_one(
    field: &'static Field,
    entry: &Entry,
    inputs: &Inputs,
) -> (Option<Input>, FieldOutcome) {
    let typed = entry.get(field.id).filter(|text| !text.trim().is_empty());
    let preset = field.preset.text();
    let text = typed.or(preset).unwrap_or_default();
    let mut outcome = FieldOutcome {
        id: field.id,
        applies: applies(field, inputs),
        from_preset: typed.is_none() && field.preset.holds(),
        text: text.to_owned(),
        link_text: String::new(),
        reading: String::new(),
        fault: None,
    };
    if !outcome.applies || text.is_empty() {
        return (None, outcome);
    }
    match read_field(field, text, inputs.system) {
        Ok(read) => {
            outcome.reading = read.reading;
            outcome.link_text = read.link_text;
            (Some(read.input), outcome)
        }
        Err(fault) => {
            outcome.fault = Some(fault);
            (None, outcome)
        }
    }
}

/// Puts a fault that the function found beside its field; a fault of no field stays with the entry.
fn place_fault(mut fault: Fault, fields: &mut [FieldOutcome]) -> Option<Fault> {
    match fields.iter_mut().find(|field| field.id == fault.field) {
        Some(field) => {
            if fault.typed.is_empty() {
                fault.typed.clone_from(&field.text);
            }
            field.fault = Some(fault);
            None
        }
        None => Some(fault),
    }
}

/// A text as it stands in a link of that field; as typed where it does not read.
pub fn plain_text(field: &'static Field, text: &str, system: crate::quantity::System) -> String {
    match read_field(field, text, system) {
        Ok(read) if !text.trim().is_empty() && !read.link_text.is_empty() => read.link_text,
        _ => text.trim().to_owned(),
    }
}

/// Reads one text as a field would, and gives what was understood.
///
/// # Errors
/// The field's fault.
pub fn evaluate_field(
    field: &'static Field,
    text: &str,
    system: crate::quantity::System,
) -> Result<String, Fault> {
    read_field(field, text, system).map(|read| read.reading)
}
