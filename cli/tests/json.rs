//! Is the JSON that is written straight to the text the same as a tree of it would give: keys in order, escapes, numbers? And
//! does every key that was ever given still stand in its place?
#![allow(clippy::unwrap_used)] // a failure is a failed check

use benchslate_core::link::{self, Asked};
use benchslate_core::sheet::{Entry, evaluate};
use benchslate_core::sheets;
use serde_json::Value;
use std::collections::BTreeSet;
use std::io::Write;
use std::process::{Command, Stdio};

/// Together they bring every part of an answer: ±, solved for another, swept, withheld, half typed, faults with ways.
const LINKS: &str = "#/v1/taper-pin?from=gauge&depth=0.42%20in&length=1%20in&rev=2&gauge=1/8%20in%2B-1%25
#/v1/name-thread?diameter=9.85%20mm&by=count&threads=10&over=15%20mm&rev=2&turn=threads&want=size-max~0.3937%20in
#/v1/length?length=x
#/v1/length?length=1,234
#/v1/drill?drill=%237&rev=2&sweep=drill~size
#/v1/drill?drill=%237&rev=2&turn=drill&want=size~0.2010%20in
#/v1/gear-stages?find=gears&ratios=0.5;0.7071;1&rev=3&sweep=sum-high~sum
#/v1/press-fit?from=sizes&shaft=0.6246%20in&outside=1-1/4%20in&length=7/8%20in&hub=cast-iron&friction=dry&rev=3&hole=0.6240%20in%2B-1%25
#/v1/bolt-torque?thread=M8x1.25&from=clamp&clamp=9%20kn&state=moly&rev=2
#/v1/tap-drill?thread=1/4-20%20UNC&rev=2&turn=share&want=drill-size~0.221100%20in
#/v1/taper-pin?from=gauge&gauge=1/8%20in&depth=0.42%20in&rev=2&turn=gauge&want=sinks~-0.3480%20in
#/v1/length
#/v1/gear-stages?
#/v1/gear-stages?find=gears&rev=3&ratios=x

#/v1/nothing-such
a \"line\" that is \\ no link \u{2033}";

/// Every key with its kind that 0.2 gave; lines are only ever added.
const SHAPE: &str = include_str!("golden/json-shape.txt");

fn examples() -> String {
    let all = sheets::ALL
        .iter()
        .flat_map(|sheet| sheet.examples.iter().map(move |pairs| (*sheet, pairs)));
    let links = all.filter_map(|(sheet, pairs)| {
        let entry = Entry::of(pairs);
        let outcome = evaluate(sheet, &entry);
        link::of(sheet, &entry, &outcome, &Asked::default())
    });
    links.fold(String::new(), |all, link| all + &link + "\n")
}

fn answers(input: String) -> Vec<String> {
    let mut child = Command::new(env!("CARGO_BIN_EXE_benchslate"))
        .arg("--lines")
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut stdin = child.stdin.take().unwrap();
    let writer = std::thread::spawn(move || stdin.write_all(input.as_bytes()).unwrap());
    let out = child.wait_with_output().unwrap();
    writer.join().unwrap();
    let text = String::from_utf8(out.stdout).unwrap();
    text.lines().map(str::to_owned).collect()
}

#[test]
fn every_answer_is_written_as_a_tree_would_be() {
    let input = examples() + LINKS;
    let wanted = input.lines().count();
    let answers = answers(input);
    assert_eq!(answers.len(), wanted);
    for answer in answers {
        let tree: Value = serde_json::from_str(&answer).unwrap();
        assert_eq!(tree.to_string(), answer);
    }
}

/// Each key on the way to a value, and the value's kind.
fn walk(value: &Value, path: &str, shape: &mut BTreeSet<String>) {
    let kind = match value {
        Value::Object(fields) => {
            let dot = if path.is_empty() { "" } else { "." };
            for (key, value) in fields {
                walk(value, &format!("{path}{dot}{key}"), shape);
            }
            return;
        }
        Value::Array(items) => {
            shape.insert(format!("{path}[]"));
            for item in items {
                walk(item, &format!("{path}[]"), shape);
            }
            return;
        }
        Value::Bool(_) => "truth",
        Value::Number(_) => "number",
        Value::String(_) => "text",
        Value::Null => "null",
    };
    shape.insert(format!("{path} {kind}"));
}

#[test]
fn no_key_of_an_answer_was_lost() {
    let mut shape = BTreeSet::new();
    for answer in answers(examples() + LINKS) {
        walk(&serde_json::from_str(&answer).unwrap(), "", &mut shape);
    }
    let lost: Vec<&str> = SHAPE
        .lines()
        .filter(|line| !shape.contains(*line))
        .collect();
    assert!(lost.is_empty(), "{lost:#?}");
}
