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
    let (answer, fault) = as_far_as_it_goes(&inputs, &mut fields, needed, faulty);
    Outcome {
        fields,
        answer,
        fault,
        inputs,
    }
}

/// The answer as far as the readings go. What a field lacks, or is at fault for, leaves out only what depends on it; a
/// fault that the function finds in the entry as a whole, and a limit that is passed, leave nothing.
fn as_far_as_it_goes(
    inputs: &Inputs,
    fields: &mut [FieldOutcome],
    mut needed: Vec<&'static str>,
    faulty: bool,
) -> (Answer, Option<Fault>) {
    if inputs.lacks_a_list_or_choice(fields) {
        let state = if faulty {
            State::Faulty
        } else {
            State::Incomplete(needed)
        };
        return (Answer::stopped(state), None);
    }
    let mut answer = Answer::new(inputs.sheet, inputs.quiet);
    let mut fault = None;
    let whole = needed.is_empty() && !faulty;
    match run(inputs, &mut answer) {
        // what an empty field is said to be at fault for comes from its being empty
        Err(Stop::Withheld(withheld)) if whole || is_filled(fields, withheld.field) => {
            return (Answer::stopped(State::Withheld(*withheld)), None);
        }
        Err(Stop::Fault(found)) if whole || is_filled(fields, found.field) => {
            let fault = place_fault(*found, fields);
            return (Answer::stopped(State::Faulty), fault);
        }
        Err(Stop::Withheld(_) | Stop::Fault(_)) => {
            answer = Answer::new(inputs.sheet, inputs.quiet);
        }
        Err(Stop::Missing(id)) => answer.lacks(id),
        Ok(()) => {}
    }
    for field in inputs.sheet.fields {
        let found = fields.iter().find(|found| found.id == field.id);
        if field.is_optional && found.is_some_and(|found| found.fault.is_some()) {
            keep_what_does_not_hang_on(field, inputs, &mut answer);
        }
    }
    let mut faulty = faulty;
    if let Some(found) = answer.fault.take() {
        faulty = true;
        fault = place_fault(*found, fields);
    }
    for id in std::mem::take(&mut answer.lacking) {
        let at_fault = fields
            .iter()
            .any(|field| field.id == id && field.fault.is_some());
        if !at_fault && !needed.contains(&id) {
            needed.push(id);
        }
    }
    answer.state = if faulty {
        State::Faulty
    } else if needed.is_empty() {
        State::Complete
    } else {
        State::Incomplete(needed)
    };
    (answer, fault)
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

/// Takes out of an answer what hangs on a field that may stay empty and is at fault: the function takes it for empty, and
/// whoever typed into it did not mean that. Tried with its example and both ends of its range: what differs from one of
/// them, or does not come there, goes; all of it where nothing can be tried.
fn keep_what_does_not_hang_on(field: &'static Field, inputs: &Inputs, answer: &mut Answer) {
    let probes = probes(field, inputs);
    if probes.is_empty() {
        answer.lines.clear();
    }
    for probe in probes {
        let mut other = Answer::new(inputs.sheet, true);
        // what stands when a fault stops it hangs on nothing that comes after
        let _ = run(&probe, &mut other);
        answer.lines.retain(|line| {
            let same = other.get(line.id);
            same.is_some_and(|same| same.value == line.value && same.band == line.band)
        });
    }
    answer.tables.clear();
    answer.steps.clear();
    answer.drawing = None;
}

/// The readings with the field's example in it, and with each end of its range.
fn probes(field: &'static Field, inputs: &Inputs) -> Vec<Inputs> {
    let quiet = inputs.clone().quietly();
    let mut probes = Vec::new();
    let at = inputs
        .sheet
        .fields
        .iter()
        .position(|other| other.id == field.id);
    if let (Some(at), Ok(read)) = (at, read_field(field, field.example, inputs.system)) {
        let mut filled = quiet.clone();
        if let Some(slot) = filled.values.get_mut(at) {
            *slot = Some(read.input);
            probes.push(filled);
        }
    }
    let ends = field.range.iter().flat_map(|range| [range.low, range.high]);
    probes.extend(ends.map(|end| quiet.with(field.id, end)));
    probes
}

impl Inputs {
    /// A choice that can't be read, or a list that is needed and not there: the function would take either for another one.
    fn lacks_a_list_or_choice(&self, fields: &[FieldOutcome]) -> bool {
        let fields = self.sheet.fields.iter().zip(fields).zip(&self.values);
        fields.into_iter().any(|((field, found), value)| {
            found.applies
                && value.is_none()
                && match field.kind {
                    FieldKind::Choice(_) => true,
                    FieldKind::Rows { .. } => !field.is_optional || found.fault.is_some(),
                    FieldKind::Quantity { .. } | FieldKind::Call(_) => false,
                }
        })
    }
}

fn is_filled(fields: &[FieldOutcome], id: &str) -> bool {
    let mut fields = fields.iter();
    fields.any(|field| field.id == id && !field.text.is_empty() && field.fault.is_none())
}

/// Calls the sheet's function for an answer that is whole, or why it is not; an answer that holds a number that is none
/// is refused.
///
/// # Errors
/// What the function, or a part of it, stops with.
pub fn figure(inputs: &Inputs) -> Result<Answer, Stop> {
    let mut answer = Answer::new(inputs.sheet, inputs.quiet);
    run(inputs, &mut answer)?;
    match (answer.fault.take(), answer.lacking.first()) {
        (Some(fault), _) => Err(Stop::Fault(fault)),
        (None, Some(id)) => Err(Stop::Missing(id)),
        (None, None) => Ok(answer),
    }
}

/// Calls the function; what it put in stands in the answer, whatever it stops with.
fn run(inputs: &Inputs, answer: &mut Answer) -> Result<(), Stop> {
    let ran = (inputs.sheet.figure)(inputs, answer);
    let finite = |base: Option<f64>| base.is_none_or(f64::is_finite);
    let lines = answer.lines.iter().all(|line| finite(line.value.base()));
    let cells = answer
        .tables
        .iter()
        .flat_map(|table| &table.rows)
        .flat_map(|row| &row.cells);
    if lines && cells.into_iter().all(|cell| finite(cell.base())) {
        return ran;
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
