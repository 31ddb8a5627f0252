//! Does anything break under random text? Every sheet with random texts in every field, and the look-up: no panic, no
//! number that is none, no hang.
#![allow(clippy::panic)] // a failed check

mod common;

use benchslate_core::quantity::System;
use benchslate_core::search::Index;
use benchslate_core::sheet::evaluate;
use benchslate_core::{powers, sheets};
use std::time::Instant;

fn clean(text: &str) {
    for word in ["NaN", "inf", "Infinity"] {
        assert!(
            !text.contains(word) || text.contains("infe"),
            "printed {text:?}"
        );
    }
}

#[test]
fn sheets_with_random_texts() {
    let mut rng = fastrand::Rng::with_seed(3);
    let mut complete = 0_usize;
    for round in 0..common::rounds() {
        let sheet = sheets::ALL[round % sheets::ALL.len()];
        let wild = if round % 3 == 0 { 120 } else { 8 };
        let entry = common::entry(sheet, wild, &mut rng);
        let started = Instant::now();
        let outcome = evaluate(sheet, &entry);
        for fault in outcome.faults() {
            assert!(!fault.says.is_empty(), "{} {:?}", sheet.id, fault);
            assert!(
                fault.text().chars().all(|c| c == '\n' || !c.is_control()),
                "{:?}",
                fault.text()
            );
        }
        if outcome.answer.is_complete() {
            complete += 1;
            for system in [System::Inch, System::Metric] {
                for line in &outcome.answer.lines {
                    clean(&line.value.text_with_unit(system));
                    clean(&line.says);
                }
                for cell in outcome
                    .answer
                    .tables
                    .iter()
                    .flat_map(|table| &table.rows)
                    .flat_map(|row| &row.cells)
                {
                    clean(&cell.text_with_unit(system));
                }
            }
            for text in outcome.answer.steps.iter().flat_map(|step| &step.lines) {
                clean(text);
            }
            if round % 50 == 0 {
                let _ = powers::spread(&outcome.inputs, &outcome.answer);
            }
        }
        assert!(
            started.elapsed().as_secs() < 5,
            "{} hangs on {entry:?}",
            sheet.id
        );
    }
    assert!(
        complete > common::rounds() / 20,
        "only {complete} entries were complete: the generator is too wild to tell much"
    );
}

#[test]
fn search_with_random_texts() {
    let index = Index::default();
    let mut rng = fastrand::Rng::with_seed(4);
    for _ in 0..common::rounds() / 50 {
        let hits = index.find(&common::text(&mut rng), System::Inch);
        assert!(hits.len() <= benchslate_core::search::MOST_HITS);
    }
}
