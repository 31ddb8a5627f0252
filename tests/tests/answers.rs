//! Has any answer changed since it was accepted? Every figure, word, caution and line of working of some hundred entries a
//! sheet. A change that is meant is accepted with `cargo xtask accept "what the user sees of it"`, which writes that line
//! into the change log.
#![allow(clippy::panic)] // a failed check

use benchslate_core::sheets;
use benchslate_tests::golden;

#[test]
fn answers_are_as_they_were_accepted() {
    let mut changed = Vec::new();
    for sheet in sheets::ALL {
        let file = golden::file(sheet);
        let kept = std::fs::read_to_string(&file).unwrap_or_default();
        if let Some(change) = golden::first_change(sheet, &kept) {
            changed.push(format!("{}: {change}", sheet.id));
        }
    }
    assert!(
        changed.is_empty(),
        "the first change of each sheet; where it is meant: cargo xtask accept \"a line for the change log\"\n{}",
        changed.join("\n")
    );
}

#[test]
fn no_answer_is_kept_of_a_sheet_that_is_gone() {
    for file in std::fs::read_dir(golden::folder()).unwrap() {
        let name = file.unwrap().file_name().to_string_lossy().into_owned();
        let id = name.trim_end_matches(".txt");
        assert!(sheets::by_id(id).is_some(), "{name}");
    }
}
