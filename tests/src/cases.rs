//! Which entries stand for a sheet in the checks? Its examples, the links that were given out, the cases of judgement,
//! both sides of every limit, every choice, and generated entries.

use benchslate_core::link;
use benchslate_core::quantity::{System, Unit, plain};
use benchslate_core::sheet::{Entry, FieldKind, Sheet};
use serde_json::Value as Json;
use std::{fs, path::Path};

/// Generated entries a sheet.
const GENERATED: usize = 40;

/// Entries that people meet: examples, links that were given out, cases of judgement.
pub fn named(sheet: &'static Sheet) -> Vec<Entry> {
    let mut all: Vec<Entry> = sheet
        .examples
        .iter()
        .map(|pairs| Entry::of(pairs))
        .collect();
    let links = include_str!("../golden/links.txt").lines();
    all.extend(
        links
            .filter_map(|line| link::open(line).ok())
            .filter(|opened| opened.sheet.id == sheet.id)
            .map(|opened| opened.entry),
    );
    for case in judged().iter().filter(|case| case["sheet"] == sheet.id) {
        all.extend(entries_of(case));
    }
    all
}

/// All cases of judgement, in the order of their files.
///
/// # Panics
/// Where the files can't be read: a failed check.
#[allow(clippy::unwrap_used)] // a failed check
pub fn judged() -> Vec<Json> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("cases/judgement");
    let mut files: Vec<_> = fs::read_dir(folder)
        .unwrap()
        .map(|file| file.unwrap().path())
        .collect();
    files.sort();
    files
        .iter()
        .flat_map(|file| {
            let text = fs::read_to_string(file).unwrap();
            text.lines()
                .map(|line| serde_json::from_str(line).unwrap())
                .collect::<Vec<Json>>()
        })
        .collect()
}

/// The entry, or the entries, of a case.
pub fn entries_of(case: &Json) -> Vec<Entry> {
    let one = |fields: &Json| {
        let mut entry = Entry::default();
        for (id, text) in fields.as_object().into_iter().flatten() {
            let text = text.as_str().unwrap_or_default();
            if id == "u" {
                entry.system = if text == "mm" {
                    System::Metric
                } else {
                    System::Inch
                };
            } else {
                entry.set(id, text);
            }
        }
        entry
    };
    match &case["entries"] {
        Json::Array(entries) => entries.iter().map(one).collect(),
        _ => vec![one(&case["entry"])],
    }
}

/// All: the named ones, each limit of each field at both sides, each choice, and generated ones.
pub fn all(sheet: &'static Sheet) -> Vec<Entry> {
    let mut entries = named(sheet);
    for pairs in sheet.examples {
        entries.push(Entry::of(pairs).in_system(System::Metric));
    }
    if let Some(pairs) = sheet.examples.first() {
        let base = Entry::of(pairs);
        for field in sheet.fields {
            for text in edges(field) {
                let mut entry = base.clone();
                entry.set(field.id, &text);
                entries.push(entry);
            }
        }
    }
    let mut rng = fastrand::Rng::with_seed(7);
    entries.extend((0..GENERATED).map(|_| crate::entries::entry(sheet, 8, &mut rng)));
    entries
}

/// Texts at both sides of each end of a field's range, and each choice.
fn edges(field: &'static benchslate_core::sheet::Field) -> Vec<String> {
    match (&field.kind, field.range) {
        (FieldKind::Choice(choices), _) => {
            choices.iter().map(|choice| choice.id.to_owned()).collect()
        }
        (FieldKind::Quantity { units, .. }, Some(range)) => {
            let Some(unit) = units.first() else {
                return Vec::new();
            };
            let little = 1e-3 * (range.high - range.low);
            [
                range.low,
                range.low - little,
                range.high,
                range.high + little,
            ]
            .map(|base| typed(base, unit))
            .into()
        }
        _ => Vec::new(),
    }
}

fn typed(base: f64, unit: &Unit) -> String {
    format!("{} {}", plain(base, unit), unit.id)
        .trim()
        .to_owned()
}
