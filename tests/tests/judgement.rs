//! Usual jobs in a small shop with old machines, and wrong or dangerous entries: does each answer hold what an experienced
//! person demands of it? Every line of `tests/cases/judgement/*.jsonl` is a case; its `source` stands in the line.
//! `BENCHSLATE_CASES=tap` runs only the cases whose id, sheet or file holds that text.
#![allow(clippy::panic)] // a failed check

use benchslate_tests::judgement::objections;
use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

#[test]
fn a_careful_machinist_would_act_on_every_answer() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("cases/judgement");
    let only = std::env::var("BENCHSLATE_CASES").unwrap_or_default();
    let mut files: Vec<_> = fs::read_dir(&folder)
        .unwrap()
        .map(|file| file.unwrap().path())
        .collect();
    files.sort();
    let (mut tried, mut failed, mut ids) = (0, Vec::new(), BTreeSet::new());
    for file in files {
        let name = file.file_name().unwrap().to_string_lossy().into_owned();
        for (index, line) in fs::read_to_string(&file).unwrap().lines().enumerate() {
            let case: serde_json::Value = serde_json::from_str(line)
                .unwrap_or_else(|error| panic!("{name}, line {}: {error}", index + 1));
            let text = |key: &str| case[key].as_str().unwrap_or_default().to_owned();
            let (id, sheet) = (text("id"), text("sheet"));
            assert!(ids.insert(id.clone()), "{name}: {id} stands twice");
            for key in ["id", "reason", "source"] {
                assert!(
                    !text(key).is_empty(),
                    "{name}, line {}: no {key}",
                    index + 1
                );
            }
            if ![&id, &sheet, &name].iter().any(|text| text.contains(&only)) {
                continue;
            }
            tried += 1;
            match objections(&case) {
                Err(error) => panic!("{name}: {id}: {error}"),
                Ok(found) if found.is_empty() => {}
                Ok(found) => failed.push(format!("{id} ({sheet}): {}", found.join("; "))),
            }
        }
    }
    println!("{tried} cases");
    assert!(
        failed.is_empty(),
        "{} of {tried}:\n{}",
        failed.len(),
        failed.join("\n")
    );
    assert!(tried > 0, "no case holds {only:?}");
}
