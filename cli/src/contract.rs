//! The whole contract as a list: what may be asked, with which fields, and what comes out.

use benchslate_core::quantity::{Kind, System, plain};
use benchslate_core::sheet::{Field, FieldKind, Range, Sheet};
use benchslate_core::sheets;
use serde_json::{Value, json};

pub fn list(as_json: bool) -> String {
    if as_json {
        let all: Vec<Value> = sheets::ALL.iter().map(|sheet| one(sheet)).collect();
        return json!({ "sheets": all }).to_string();
    }
    let lines: Vec<String> = sheets::ALL
        .iter()
        .map(|sheet| format!("{:18} {}", sheet.id, sheet.question))
        .collect();
    lines.join("\n")
}

fn one(sheet: &Sheet) -> Value {
    json!({
        "id": sheet.id,
        "revision": sheet.revision,
        "title": sheet.title,
        "question": sheet.question,
        "group": sheet.group.title(),
        "words": sheet.words,
        "fields": sheet.fields.iter().map(field).collect::<Vec<_>>(),
        "results": sheet.results.iter().map(|res| json!({
            "id": res.id, "label": res.label, "kind": res.kind.map(kind_name), "stepped": res.stepped,
            "units": res.kind.map(|kind| units(benchslate_core::quantity::units_of(kind))),
        })).collect::<Vec<_>>(),
        "examples": sheet.examples.iter().map(|pairs| {
            pairs.iter().map(|(id, text)| ((*id).to_owned(), json!(text))).collect::<serde_json::Map<_, _>>()
        }).collect::<Vec<_>>(),
    })
}

fn units(units: &[&'static benchslate_core::quantity::Unit]) -> Vec<&'static str> {
    units.iter().map(|unit| unit.id).collect()
}

fn kind_name(kind: Kind) -> String {
    format!("{kind:?}")
}

/// The allowed range in the unit that a bare number takes in the inch system.
fn range_of(field: &Field, range: Range) -> Value {
    match field.unit(System::Inch) {
        Some(unit) => {
            let ends = [range.low, range.high].map(|base| {
                plain(base, unit)
                    .parse::<f64>()
                    .unwrap_or(unit.from_base(base))
            });
            // threads per inch run against the pitch
            let (low, high) = (ends[0].min(ends[1]), ends[0].max(ends[1]));
            json!({ "low": low, "high": high, "unit": unit.id, "why": range.why })
        }
        None => json!({ "low": range.low, "high": range.high, "unit": "", "why": range.why }),
    }
}

fn field(field: &Field) -> Value {
    let (kind, more) = match &field.kind {
        FieldKind::Quantity {
            kind,
            units: offered,
        } => (kind_name(*kind), json!({ "units": units(offered) })),
        FieldKind::Choice(choices) => {
            let choices: Vec<Value> = choices
                .iter()
                .map(|one| json!({ "id": one.id, "label": one.label }))
                .collect();
            ("Choice".into(), json!({ "choices": choices }))
        }
        FieldKind::Call(call) => ("Call".into(), json!({ "call": call.name })), // words: a key of the contract
        FieldKind::Rows {
            columns,
            least,
            most,
        } => {
            let columns: Vec<Value> = columns.iter().map(self::field).collect();
            (
                "Rows".into(),
                json!({ "columns": columns, "least": least, "most": most }),
            )
        }
    };
    let mut object = json!({
        "id": field.id,
        "label": field.label,
        "kind": kind,
        "example": field.example,
        "hint": field.hint,
        "default": field.preset.text(),
        "from_shop": field.preset.item().is_some(),
        "range": field.range.map(|range| range_of(field, range)),
        "when": field.when.iter().map(|when| json!({ "field": when.field, "is": when.is })).collect::<Vec<_>>(),
        "measured": field.is_measured,
        "optional": field.is_optional,
    });
    if let (Some(object), Value::Object(more)) = (object.as_object_mut(), more) {
        object.extend(more);
    }
    object
}
