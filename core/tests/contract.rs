//! Does every sheet keep the contract? Declarations in step with themselves, examples accepted, sources and conventions
//! present, and every answer under each system of units.
#![allow(clippy::panic)] // a failed check

mod common;

use benchslate_core::link::RESERVED;
use benchslate_core::quantity::System;
use benchslate_core::record::SHOP;
use benchslate_core::sheet::{
    Certainty, Entry, Field, FieldKind, Preset, Sheet, evaluate, evaluate_field,
};
use benchslate_core::sheets;
use std::collections::BTreeSet;

fn kebab(id: &str) -> bool {
    !id.is_empty()
        && id
            .chars()
            .all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-')
        && !id.starts_with('-')
}

fn unique<'a>(ids: impl Iterator<Item = &'a str>) -> bool {
    let all: Vec<&str> = ids.collect();
    all.iter().collect::<BTreeSet<_>>().len() == all.len()
}

#[test]
fn ids_are_kebab_case_and_unique() {
    assert!(unique(sheets::ALL.iter().map(|sheet| sheet.id)));
    for sheet in sheets::ALL {
        assert!(kebab(sheet.id), "{}", sheet.id);
        assert!(
            unique(sheet.fields.iter().map(|field| field.id)),
            "{}",
            sheet.id
        );
        assert!(
            unique(sheet.results.iter().map(|res| res.id)),
            "{}",
            sheet.id
        );
        for id in sheet
            .fields
            .iter()
            .map(|field| field.id)
            .chain(sheet.results.iter().map(|res| res.id))
        {
            assert!(kebab(id), "{} {id}", sheet.id);
            assert!(!RESERVED.contains(&id), "{} {id} is reserved", sheet.id);
        }
    }
}

#[test]
fn every_sheet_is_told_in_full() {
    for sheet in sheets::ALL {
        for text in [sheet.title, sheet.question, sheet.aside] {
            assert!(!text.is_empty() && !text.contains('!'), "{}", sheet.id);
        }
        assert!(
            sheet.question.ends_with('?'),
            "{}: {}",
            sheet.id,
            sheet.question
        );
        assert!(!sheet.words.is_empty(), "{} has no search words", sheet.id);
        assert!(!sheet.results.is_empty(), "{} has no results", sheet.id);
        assert!(!sheet.examples.is_empty(), "{} has no example", sheet.id);
        for id in sheet.takes {
            assert!(sheet.field(id).is_some(), "{} takes {id}", sheet.id);
        }
    }
}

#[test]
fn what_is_folded_away_is_not_needed() {
    for sheet in sheets::ALL {
        for field in sheet.fields.iter().filter(|field| field.is_seldom) {
            let hangs = field
                .when
                .iter()
                .any(|when| sheet.field(when.field).is_some_and(|on| on.is_seldom));
            assert!(
                field.is_optional || field.preset.holds() || hangs,
                "{} {}",
                sheet.id,
                field.id
            );
        }
    }
}

#[test]
fn conditions_name_earlier_choices() {
    for sheet in sheets::ALL {
        for (index, field) in sheet.fields.iter().enumerate() {
            for when in field.when {
                let earlier = sheet.fields[..index]
                    .iter()
                    .find(|other| other.id == when.field);
                let Some(FieldKind::Choice(choices)) = earlier.map(|field| &field.kind) else {
                    panic!("{} {} depends on {}", sheet.id, field.id, when.field)
                };
                assert!(!when.is.is_empty());
                for id in when.is {
                    assert!(
                        choices.iter().any(|choice| choice.id == *id),
                        "{} {} {id}",
                        sheet.id,
                        field.id
                    );
                }
            }
        }
    }
}

fn check_field(sheet: &Sheet, field: &'static Field) {
    let name = format!("{} {}", sheet.id, field.id);
    assert!(!field.label.is_empty(), "{name}");
    if let Some(range) = field.range {
        assert!(range.low < range.high && !range.why.is_empty(), "{name}");
    }
    match &field.kind {
        FieldKind::Choice(choices) => {
            assert!(
                choices.len() > 1 && unique(choices.iter().map(|choice| choice.id)),
                "{name}"
            );
        }
        FieldKind::Quantity { kind, units } => {
            assert!(
                !units.is_empty() && units.iter().all(|unit| unit.kind == *kind),
                "{name}"
            );
            assert!(field.range.is_some(), "{name} has no range");
            assert!(
                !field.example.is_empty() || field.preset.holds(),
                "{name} has no example"
            );
        }
        FieldKind::Call(_) => assert!(!field.example.is_empty(), "{name} has no example"),
        FieldKind::Rows {
            columns,
            least,
            most,
        } => {
            assert!(least <= most && !columns.is_empty(), "{name}");
            for column in *columns {
                assert!(
                    !matches!(column.kind, FieldKind::Rows { .. }) && column.when.is_empty(),
                    "{name}"
                );
            }
        }
    }
    for system in [System::Inch, System::Metric] {
        for text in [
            Some(field.example).filter(|text| !text.is_empty()),
            field.preset.text(),
        ]
        .into_iter()
        .flatten()
        {
            if let Err(fault) = evaluate_field(field, text, system) {
                panic!("{name} does not take its own {text:?}: {}", fault.text());
            }
        }
    }
}

#[test]
fn every_field_is_whole_and_takes_its_example() {
    for sheet in sheets::ALL.iter().copied().chain([&SHOP]) {
        for field in sheet.fields {
            check_field(sheet, field);
        }
    }
}

fn numbers(field: &'static Field) -> Vec<&'static Field> {
    match field.kind {
        FieldKind::Rows { columns, .. } => columns.iter().collect(),
        _ => vec![field],
    }
}

/// Past either end of its range, in each unit offered, a field's cure is a figure that it then takes.
#[test]
fn a_cure_of_a_range_is_taken_when_typed() {
    let mut tried = 0;
    for (sheet, field) in sheets::ALL.iter().flat_map(|sheet| {
        sheet
            .fields
            .iter()
            .flat_map(numbers)
            .map(move |field| (sheet, field))
    }) {
        let (FieldKind::Quantity { units, .. }, Some(range)) = (&field.kind, field.range) else {
            continue;
        };
        for unit in *units {
            for base in [range.low - 1.0 - range.low.abs(), range.high * 3.0 + 1.0] {
                let typed = format!(
                    "{:.7} {}",
                    unit.from_base(base),
                    unit.spellings.first().unwrap_or(&"")
                );
                let Err(fault) = evaluate_field(field, &typed, System::Inch) else {
                    continue;
                };
                let cure = fault.cure.strip_prefix("give ").and_then(|cure| {
                    cure.strip_suffix(" or more")
                        .or(cure.strip_suffix(" or less"))
                });
                let Some(cure) = cure else { continue };
                let taken = evaluate_field(field, cure, System::Inch);
                assert!(
                    taken.is_ok(),
                    "{} {} {typed}: {} {taken:?}",
                    sheet.id,
                    field.id,
                    fault.text()
                );
                tried += 1;
            }
        }
    }
    assert!(tried > 500, "{tried}");
}

#[test]
fn every_example_gives_a_whole_answer_in_both_systems() {
    for sheet in sheets::ALL {
        for pairs in sheet.examples {
            for system in [System::Inch, System::Metric] {
                let outcome = evaluate(sheet, &Entry::of(pairs).in_system(system));
                let faults: Vec<String> = outcome
                    .faults()
                    .map(|fault| format!("{}: {}", fault.field, fault.text()))
                    .collect();
                let answer = &outcome.answer;
                assert!(
                    answer.is_complete(),
                    "{} {pairs:?}: {:?} {faults:?}",
                    sheet.id,
                    answer.state
                );
                assert!(!answer.lines.is_empty(), "{}", sheet.id);
                assert!(!answer.sources.is_empty(), "{} names no source", sheet.id);
                assert!(!answer.steps.is_empty(), "{} shows no working", sheet.id);
                assert!(
                    !answer.cautions.is_empty(),
                    "{} has no caution or note",
                    sheet.id
                );
                assert!(answer.drawing.is_some(), "{} has no drawing", sheet.id);
                assert!(
                    !answer.lines[0].says.is_empty(),
                    "{}: the first result tells no convention",
                    sheet.id
                );
                for line in &answer.lines {
                    let res = sheet
                        .result(line.id)
                        .unwrap_or_else(|| panic!("{} gives {} undeclared", sheet.id, line.id));
                    match (&line.value, res.kind) {
                        (benchslate_core::sheet::Value::Quantity { kind, .. }, Some(declared)) => {
                            assert_eq!(*kind, declared, "{} {}", sheet.id, line.id);
                        }
                        (benchslate_core::sheet::Value::Words(_), None) => {}
                        _ => panic!(
                            "{} {}: words or quantity, against the declaration",
                            sheet.id, line.id
                        ),
                    }
                    if let (Some((low, high)), Some(base)) = (line.band, line.value.base()) {
                        assert!(
                            low <= base && base <= high,
                            "{} {}: {low} {base} {high}",
                            sheet.id,
                            line.id
                        );
                    }
                }
                for table in &answer.tables {
                    assert!(
                        table
                            .rows
                            .iter()
                            .all(|row| row.cells.len() == table.columns.len()),
                        "{} {}",
                        sheet.id,
                        table.id
                    );
                }
            }
        }
    }
}

#[test]
fn sources_name_their_place() {
    for sheet in sheets::ALL {
        let outcome = evaluate(sheet, &Entry::of(sheet.examples[0]));
        for source in &outcome.answer.sources {
            assert!(!source.title.is_empty());
            assert!(
                source.certainty == Certainty::CommonPractice || !source.place.is_empty(),
                "{}: {}",
                sheet.id,
                source.title
            );
        }
    }
}

#[test]
fn shop_fields_agree_with_the_general_shop() {
    for sheet in sheets::ALL {
        for field in sheet.fields {
            if let Preset::Shop(item, general) = field.preset {
                let own = SHOP
                    .fields
                    .iter()
                    .find(|own| matches!(own.preset, Preset::Shop(of, _) if of == item));
                assert_eq!(
                    own.map(|own| own.preset.text().unwrap_or_default()),
                    Some(general),
                    "{} {}",
                    sheet.id,
                    field.id
                );
            }
        }
    }
}

#[test]
fn opened_rows_lead_to_sheets() {
    for sheet in sheets::ALL {
        for find in sheet.finds.map(|finds| finds()).unwrap_or_default() {
            assert!(!find.keys.is_empty() && !find.title.is_empty());
            for (id, text) in &find.entry {
                let field = sheet
                    .field(id)
                    .unwrap_or_else(|| panic!("{} finds {id}", sheet.id));
                assert!(
                    evaluate_field(field, text, System::Inch).is_ok(),
                    "{} {} {id}={text}",
                    sheet.id,
                    find.title
                );
            }
        }
        for pairs in sheet.examples {
            for row in evaluate(sheet, &Entry::of(pairs))
                .answer
                .tables
                .iter()
                .flat_map(|table| &table.rows)
            {
                assert!(row.taps.len() <= row.cells.len(), "{}", sheet.id);
                for (id, text) in row.taps.iter().flatten().flatten() {
                    let field = sheet
                        .field(id)
                        .unwrap_or_else(|| panic!("{} taps {id}", sheet.id));
                    assert!(
                        text.is_empty() || evaluate_field(field, text, System::Inch).is_ok(),
                        "{} taps {id}={text}",
                        sheet.id
                    );
                }
                let Some((id, entry)) = &row.opens else {
                    continue;
                };
                let target = sheets::by_id(id).unwrap_or_else(|| panic!("{} opens {id}", sheet.id));
                assert!(
                    entry.iter().all(|(id, _)| target.field(id).is_some()),
                    "{} opens {id}",
                    sheet.id
                );
            }
        }
    }
}

#[test]
fn every_table_feed_has_the_same_ends() {
    // a feed that the plate takes is taken by every sheet that asks for a table feed
    let fields = sheets::ALL
        .iter()
        .copied()
        .chain([&SHOP])
        .flat_map(|sheet| {
            let columns = |field: &'static Field| match field.kind {
                FieldKind::Rows { columns, .. } => columns,
                _ => core::slice::from_ref(field),
            };
            sheet.fields.iter().flat_map(columns)
        });
    let ends: BTreeSet<String> = fields
        .filter_map(|field| field.range)
        .filter(|range| range.why == "the range of table feeds")
        .map(|range| format!("{} to {}", range.low, range.high))
        .collect();
    assert_eq!(ends.len(), 1, "{ends:?}");
}
