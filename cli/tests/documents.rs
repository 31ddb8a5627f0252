//! Does every terminal command and every link that stands in the documents still work?
#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)] // a failure is a failed check

use benchslate_core::link::{Note, open};
use benchslate_core::sheet::evaluate;
use std::path::{Path, PathBuf};
use std::process::Command;

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR"))
        .parent()
        .unwrap()
        .to_owned()
}

/// README, guide, what changed and the reference pages, each with its text.
fn documents() -> Vec<(String, String)> {
    let root = root();
    let mut paths: Vec<PathBuf> = ["README.md", "DEVELOPERS.md", "CHANGELOG.md"]
        .iter()
        .map(|name| root.join(name))
        .collect();
    let reference = std::fs::read_dir(root.join("docs/reference")).unwrap();
    let pages = reference.map(|entry| entry.unwrap().path());
    paths.extend(pages.filter(|path| path.extension().is_some_and(|end| end == "md")));
    paths.sort();
    let text = |path: &PathBuf| {
        (
            path.display().to_string(),
            std::fs::read_to_string(path).unwrap(),
        )
    };
    paths.iter().map(text).collect()
}

/// Everything that is set as code: in single back-ticks, and the lines of fenced blocks without their comments.
fn code(text: &str) -> Vec<String> {
    let mut found = Vec::new();
    let mut fenced = false;
    for line in text.lines() {
        if line.trim_start().starts_with("```") {
            fenced = !fenced;
        } else if fenced {
            found.push(
                line.split("  #")
                    .next()
                    .unwrap_or_default()
                    .trim()
                    .to_owned(),
            );
        } else {
            // every second piece stands between back-ticks
            found.extend(
                line.split('`')
                    .skip(1)
                    .step_by(2)
                    .map(|code| code.trim().to_owned()),
            );
        }
    }
    found
}

/// The words of a command of ours as a shell gives them on; none where it is another's command.
fn words(code: &str) -> Option<Vec<String>> {
    let rest = [
        "cargo run -p benchslate -- ",
        "cargo run --release -p benchslate -- ",
        "benchslate ",
    ]
    .iter()
    .find_map(|start| code.strip_prefix(start))?;
    let (mut words, mut word, mut quote) = (Vec::new(), String::new(), None);
    for c in rest.chars() {
        match (quote, c) {
            (Some(open), _) if c == open => quote = None,
            (None, '\'' | '"') => quote = Some(c),
            (None, ' ') => words.extend((!word.is_empty()).then(|| std::mem::take(&mut word))),
            _ => word.push(c),
        }
    }
    words.extend((!word.is_empty()).then_some(word));
    Some(words)
}

/// A pattern of the help, as `<link or id>` or `[--json]`, is no command to run.
fn is_pattern(words: &[String]) -> bool {
    words
        .iter()
        .any(|word| word.contains(['<', '[', '|', '\u{2026}']) || word.contains("..."))
}

#[track_caller]
fn runs(place: &str, words: &[String]) {
    if is_pattern(words)
        || words
            .iter()
            .any(|word| word == "--lines" || word == "--shop")
    {
        return;
    }
    let out = Command::new(env!("CARGO_BIN_EXE_benchslate"))
        .args(words)
        .output()
        .unwrap();
    assert!(
        out.status.success(),
        "{place}: benchslate {words:?}\n{}",
        String::from_utf8_lossy(&out.stderr)
    );
    assert!(!out.stdout.is_empty(), "{place}: {words:?} says nothing");
}

#[test]
fn every_command_in_the_documents_runs() {
    let mut count = 0;
    for (path, text) in documents() {
        for words in code(&text).iter().filter_map(|code| words(code)) {
            runs(&path, &words);
            count += 1;
        }
    }
    assert!(
        count > 0,
        "no command was found: the reader of the documents is broken"
    );
}

#[test]
fn every_example_of_the_help_runs() {
    let out = Command::new(env!("CARGO_BIN_EXE_benchslate"))
        .arg("--help")
        .output()
        .unwrap();
    let help = String::from_utf8(out.stdout).unwrap();
    let (_, examples) = help.split_once("Examples").unwrap();
    let examples: Vec<Vec<String>> = examples
        .lines()
        .filter_map(|line| words(line.trim()))
        .collect();
    assert!(examples.len() > 1);
    for words in examples {
        runs("--help", &words);
    }
}

/// Every link in a text: from `#/v1/` to the first sign that no link holds.
fn links(text: &str) -> Vec<&str> {
    let starts = text.match_indices("#/v1/").map(|(at, _)| &text[at..]);
    let ends = |c: char| {
        c.is_whitespace() || !c.is_ascii() || matches!(c, '`' | '"' | '\'' | ')' | '|' | '<' | '>')
    };
    starts
        .map(|rest| {
            rest.split(ends)
                .next()
                .unwrap_or_default()
                .trim_end_matches(['.', ',', ';', ':'])
        })
        // `#/v1/<sheet>` tells the form
        .filter(|link| !link.trim_start_matches("#/v1/").is_empty())
        .collect()
}

#[test]
fn every_link_in_the_documents_opens_to_an_answer() {
    let mut count = 0;
    for (path, text) in documents() {
        // a case may be a wrong entry, which its page shows as refused
        let wrong_from = text.find("\n## Cases\n").unwrap_or(text.len());
        for link in links(&text) {
            let at = link.as_ptr().addr() - text.as_ptr().addr();
            let opened =
                open(link).unwrap_or_else(|fault| panic!("{path}: {link}: {}", fault.text()));
            let strange: Vec<String> = opened
                .notes
                .iter()
                .filter(|note| !matches!(note, Note::NoRevision | Note::OtherRevision(_)))
                .map(Note::text)
                .collect();
            assert!(strange.is_empty(), "{path}: {link}: {strange:?}");
            let outcome = evaluate(opened.sheet, &opened.entry);
            let faults: Vec<String> = outcome
                .faults()
                .map(benchslate_core::sheet::Fault::text)
                .collect();
            assert!(
                faults.is_empty() || at > wrong_from,
                "{path}: {link}: {faults:?}"
            );
            count += 1;
        }
    }
    assert!(
        count > 30,
        "only {count} links were found: the reader of the documents is broken"
    );
}

#[test]
fn a_field_that_no_sheet_has_would_be_found() {
    let out = Command::new(env!("CARGO_BIN_EXE_benchslate"))
        .args(["taper-pin", "pin=3"])
        .output()
        .unwrap();
    assert_eq!(out.status.code(), Some(2));
    assert_eq!(
        words("benchslate '#/v1/a?b=1 2' --json").unwrap(),
        ["#/v1/a?b=1 2", "--json"]
    );
    assert_eq!(
        links("see `#/v1/length?length=7/16%20in`."),
        ["#/v1/length?length=7/16%20in"]
    );
    assert_eq!(
        code("run `benchslate length`\n```sh\ncargo xtask test     # all\n```"),
        ["benchslate length", "cargo xtask test"]
    );
}
