//! What would more entries give? Results that an entry does not give yet, and which fields open them, found by trying.
//!
//! Nothing is declared: each empty field is filled with its example, and what then comes is what it opens. So it can't
//! differ from what the function does.

use super::{Entry, FieldKind, Outcome, Sheet, evaluate_quietly};

/// A result that an entry does not give yet.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Wanting {
    /// The declared result's id.
    pub id: &'static str,
    /// What it is, on screen.
    pub label: &'static str,
    /// The fields that open it, in the order of the form; none where it takes another choice.
    pub needs: Vec<&'static str>,
}

/// The results that an entry of this outcome does not give yet and would with more entries, in declared order.
///
/// ```
/// use benchslate_core::{sheet::{Entry, evaluate, wanting}, sheets};
/// let sheet = sheets::by_id("length").unwrap();
/// let wanting = wanting(sheet, &evaluate(sheet, &Entry::default()));
/// assert!(wanting.iter().all(|result| result.needs.first() == Some(&"length")));
/// ```
pub fn wanting(sheet: &'static Sheet, outcome: &Outcome) -> Vec<Wanting> {
    let open: Vec<(&'static str, &'static str)> = sheet
        .fields
        .iter()
        .zip(&outcome.fields)
        .filter(|(field, found)| {
            let empty = found.text.is_empty() || found.fault.is_some();
            found.applies && empty && !matches!(field.kind, FieldKind::Choice(_))
        })
        .filter_map(|(field, _)| Some((field.id, example(sheet, outcome, field.id)?)))
        .collect();
    if open.is_empty() {
        return Vec::new();
    }
    let full = given(sheet, outcome, &open, None);
    let without: Vec<Vec<&'static str>> = open
        .iter()
        .map(|(id, _)| given(sheet, outcome, &open, Some(id)))
        .collect();
    sheet
        .results
        .iter()
        .filter(|res| outcome.answer.get(res.id).is_none() && full.contains(&res.id))
        .map(|res| Wanting {
            id: res.id,
            label: res.label,
            needs: open
                .iter()
                .zip(&without)
                .filter(|(_, given)| !given.contains(&res.id))
                .map(|((id, _), _)| *id)
                .collect(),
        })
        .collect()
}

/// The labels of the results that a field opens.
pub fn opens(wanting: &[Wanting], field: &str) -> Vec<&'static str> {
    let opened = wanting
        .iter()
        .filter(|result| result.needs.contains(&field));
    opened.map(|result| result.label).collect()
}

/// A text that the field takes: of the sheet's own example under the same choices, else the field's.
fn example(sheet: &'static Sheet, outcome: &Outcome, id: &str) -> Option<&'static str> {
    let alike = |pairs: &&&[(&'static str, &'static str)]| {
        pairs.iter().any(|(field, _)| *field == id)
            && sheet
                .fields
                .iter()
                .zip(&outcome.fields)
                .all(|(field, found)| {
                    !matches!(field.kind, FieldKind::Choice(_))
                        || pairs.iter().find(|(of, _)| *of == field.id).map_or_else(
                            || field.preset.text() == Some(found.text.as_str()),
                            |(_, text)| *text == found.text,
                        )
                })
    };
    let of_examples = sheet.examples.iter().find(alike);
    let own = sheet.field(id).map_or("", |field| field.example);
    of_examples
        .and_then(|pairs| pairs.iter().find(|(field, _)| *field == id))
        .map(|(_, text)| *text)
        .or(Some(own))
        .filter(|text| !text.is_empty())
}

/// The results given with the open fields filled, but one.
fn given(
    sheet: &'static Sheet,
    outcome: &Outcome,
    open: &[(&'static str, &'static str)],
    but: Option<&str>,
) -> Vec<&'static str> {
    let mut entry = Entry::default().in_system(outcome.inputs.system());
    for found in outcome.fields.iter().filter(|field| !field.from_preset) {
        if found.fault.is_none() && !found.text.is_empty() {
            entry.set(found.id, &found.text);
        }
    }
    for (id, text) in open {
        if but != Some(*id) {
            entry.set(id, text);
        }
    }
    let lines = evaluate_quietly(sheet, &entry).answer.lines;
    lines.iter().map(|line| line.id).collect()
}
