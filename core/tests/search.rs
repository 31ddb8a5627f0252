//! Does the look-up find what a machinist types?
#![allow(clippy::panic)] // a failed check

use benchslate_core::quantity::System;
use benchslate_core::search::{Hit, Index};
use benchslate_core::sheet::evaluate;
use benchslate_core::sheets;
use std::sync::LazyLock;

static INDEX: LazyLock<Index> = LazyLock::new(Index::default);

fn first(text: &str) -> Hit {
    INDEX
        .find(text, System::Inch)
        .into_iter()
        .next()
        .unwrap_or_else(|| panic!("nothing found for {text}"))
}

#[test]
fn rows_are_found_and_open_filled_in() {
    for (text, sheet, word) in [
        ("#7", "drill", "No. 7"),
        (".201", "drill", "No. 7"),
        ("0.201", "drill", "No. 7"),
        ("5/16-18", "", "5/16-18"),
        ("2/0 pin", "taper-pin", "2/0"),
        ("3/8-16", "", "3/8-16"),
    ] {
        let hits = INDEX.find(text, System::Inch);
        let hit = hits
            .iter()
            .find(|hit| hit.title.contains(word) && (sheet.is_empty() || hit.sheet == sheet));
        let hit = hit.unwrap_or_else(|| panic!("{text}: {hits:?}"));
        assert!(!hit.entry.is_empty(), "{text} opens with nothing filled in");
    }
}

#[test]
fn plain_sizes_and_calls_open_a_question() {
    for text in ["7/16", "11.1 mm", "1/4-20", "2/0", "H7"] {
        let hit = first(text);
        assert!(
            sheets::by_id(hit.sheet).is_some() && !hit.entry.is_empty(),
            "{text}: {hit:?}"
        );
    }
    let outcome = evaluate(sheets::by_id("length").unwrap(), &first("7/16").entry);
    assert!(outcome.answer.is_complete() || first("7/16").sheet != "length");
}

#[test]
fn words_find_questions() {
    for sheet in sheets::ALL {
        let hits = INDEX.find(sheet.title, System::Inch);
        assert!(hits.iter().any(|hit| hit.sheet == sheet.id), "{}", sheet.id);
        for word in sheet.words {
            let hits = INDEX.find(word, System::Inch);
            assert!(
                hits.iter().any(|hit| hit.sheet == sheet.id),
                "{word} does not find {}",
                sheet.id
            );
        }
    }
    assert!(INDEX.find("", System::Inch).is_empty());
}
