//! What a machinist types or says into one look-up box, American and British, with plurals and slips: does the question that
//! answers it come first, filled in, with its figure? Every line of `tests/cases/asks.jsonl` is a case.
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)] // a failed check

use benchslate_core::quantity::System;
use benchslate_core::search::{Hit, Index};
use benchslate_core::sheet::{evaluate, evaluate_field};
use benchslate_core::sheets;
use serde_json::Value;
use std::fmt::Write;

struct Case {
    text: String,
    sheets: Vec<String>,
    fields: Vec<(String, String)>,
    figures: Vec<String>,
}

fn texts(value: &Value) -> Vec<String> {
    let list = value.as_array().into_iter().flatten();
    list.filter_map(|one| one.as_str().map(ToOwned::to_owned))
        .collect()
}

fn cases() -> Vec<Case> {
    include_str!("../cases/asks.jsonl")
        .lines()
        .map(|line| {
            serde_json::from_str::<Value>(line).unwrap_or_else(|error| panic!("{line}: {error}"))
        })
        .map(|case| Case {
            text: case["text"].as_str().unwrap().to_owned(),
            sheets: texts(&case["sheet"]),
            fields: case["fields"]
                .as_object()
                .into_iter()
                .flatten()
                .map(|(id, text)| (id.clone(), text.as_str().unwrap().to_owned()))
                .collect(),
            figures: texts(&case["figure"]),
        })
        .collect()
}

/// A field that is filled with a text of the same reading.
fn is_filled(hit: &Hit, ids: &str, wanted: &str) -> bool {
    let sheet = sheets::by_id(hit.sheet).unwrap();
    let outcome = evaluate(sheet, &hit.entry);
    ids.split('/')
        .filter_map(|id| Some((sheet.field(id)?, hit.entry.get(id)?)))
        .any(|(field, got)| {
            let read = |text: &str| evaluate_field(field, text, System::Inch);
            let same =
                got == wanted || (read(got).is_ok() && sizes(&read(got)) == sizes(&read(wanted)));
            same && outcome.field(field.id).is_some_and(|now| now.applies)
        })
}

/// The reading up to where it tells the other system or the notation.
fn sizes(read: &Result<String, benchslate_core::sheet::Fault>) -> String {
    let read = read.as_ref().map_or("?", String::as_str);
    let mut parts: Vec<&str> = read.split(" \u{b7} ").collect();
    parts.sort_unstable();
    parts.join(" ")
}

/// Figures without the zeros that say nothing: "0.2010 in" is "0.201 in".
fn bare(text: &str) -> String {
    let short = |word: &str| {
        if word.contains('.') && word.ends_with('0') && word.parse::<f64>().is_ok() {
            word.trim_end_matches('0').trim_end_matches('.').to_owned()
        } else {
            word.to_owned()
        }
    };
    text.split(' ').map(short).collect::<Vec<_>>().join(" ")
}

fn shows(hit: &Hit, figures: &[String]) -> bool {
    let shown = format!(
        " {} ",
        bare(hit.answer.as_deref().unwrap_or_default()).replace(',', "")
    );
    figures
        .iter()
        .any(|figure| shown.contains(&format!(" {} ", bare(figure))))
}

#[test]
fn a_line_finds_its_question_its_entry_and_its_figure() {
    let index = Index::default();
    let (mut misses, mut asked, mut first, mut three) = (String::new(), 0_u32, 0_u32, 0_u32);
    let (mut fields, mut filled, mut figures, mut shown) = (0_u32, 0_u32, 0_u32, 0_u32);
    for case in cases() {
        let hits = index.find(&case.text, System::Inch);
        assert!(!hits.is_empty(), "{}: an empty page", case.text);
        if case.sheets.is_empty() {
            continue;
        }
        let names: Vec<&str> = hits.iter().map(|hit| hit.sheet).take(4).collect();
        let at = hits
            .iter()
            .position(|hit| case.sheets.iter().any(|sheet| sheet == hit.sheet));
        asked += 1;
        first += u32::from(at == Some(0));
        three += u32::from(at.is_some_and(|at| at < 3));
        if at != Some(0) {
            writeln!(
                misses,
                "{} -> {names:?}, wanted {:?}",
                case.text, case.sheets
            )
            .unwrap();
        }
        let hit = at.and_then(|at| hits.get(at));
        for (id, wanted) in &case.fields {
            let good = hit.is_some_and(|hit| is_filled(hit, id, wanted));
            fields += 1;
            filled += u32::from(good);
            if !good {
                let entry: Vec<_> = hit
                    .map(|hit| hit.entry.texts().collect())
                    .unwrap_or_default();
                writeln!(misses, "{}: {id} should be {wanted}: {entry:?}", case.text).unwrap();
            }
        }
        if !case.figures.is_empty() {
            let good = hit.is_some_and(|hit| shows(hit, &case.figures));
            figures += 1;
            shown += u32::from(good);
            if !good {
                let answer = hit.and_then(|hit| hit.answer.as_deref());
                writeln!(
                    misses,
                    "{}: shows {answer:?}, wanted {:?}",
                    case.text, case.figures
                )
                .unwrap();
            }
        }
    }
    let says = format!(
        "{misses}{asked} asked: {first} first, {three} within three; {filled} of {fields} fields, {shown} of {figures} figures"
    );
    println!("{says}");
    // the shares reached: they only rise
    assert!(three == asked && first * 100 >= asked * 97, "{says}");
    assert!(filled == fields && shown * 100 >= figures * 96, "{says}");
}

/// By hand: `cargo test --release -p benchslate-tests --test asks -- --ignored --nocapture`.
#[test]
#[ignore = "measures, by hand"]
fn a_text_takes_under_two_milliseconds() {
    let many: Vec<_> = sheets::ALL.iter().copied().cycle().take(100).collect();
    for list in [sheets::ALL, &many] {
        let started = std::time::Instant::now();
        let index = Index::new(list);
        println!("{} sheets, index: {:?}", list.len(), started.elapsed());
        let cases = cases();
        let mut worst = (std::time::Duration::ZERO, String::new());
        let started = std::time::Instant::now();
        for case in &cases {
            let one = std::time::Instant::now();
            let _ = index.find(&case.text, System::Inch);
            worst = worst.max((one.elapsed(), case.text.clone()));
        }
        let count = u32::try_from(cases.len()).unwrap();
        println!("mean {:?}, worst {worst:?}", started.elapsed() / count);
    }
}
