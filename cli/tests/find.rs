//! Does the look-up in a terminal give hits with their entries, links and figures, and stay in step line by line?
#![allow(clippy::unwrap_used, clippy::indexing_slicing)] // a failure is a failed check

use serde_json::Value;
use std::io::{BufRead, BufReader, Write};
use std::process::{Command, Output, Stdio};

fn run(args: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_benchslate"))
        .args(args)
        .output()
        .unwrap()
}

// No. 7 (0.2010 in) before a 1/4-20 tap: Machinery's Handbook, 31st ed., tap drill sizes; 40 thou is 1.016 mm by definition.
#[test]
fn a_text_gives_its_hits_with_entry_link_and_figure() {
    let out = run(&["find", "1/4-20", "tap", "drill", "--json"]);
    assert!(out.status.success());
    let found: Value = serde_json::from_slice(&out.stdout).unwrap();
    assert_eq!(found["text"], "1/4-20 tap drill");
    let best = &found["hits"][0];
    assert_eq!(best["sheet"], "tap-drill");
    assert_eq!(best["entry"]["thread"], "1/4-20");
    assert!(best["answer"].as_str().unwrap().contains("0.2010 in"));
    let link = best["link"].as_str().unwrap();
    let opened = run(&[link, "--json"]);
    let opened: Value = serde_json::from_slice(&opened.stdout).unwrap();
    assert_eq!(opened["state"], "complete");

    let text = String::from_utf8(run(&["find", "40 thou in mm"]).stdout).unwrap();
    assert!(text.contains("1.016 mm"), "{text}");
    let metric =
        String::from_utf8(run(&["find", "40 thou in mm", "--units", "mm"]).stdout).unwrap();
    assert!(metric.contains("u=mm"), "{metric}");
    let near = String::from_utf8(run(&["find", "tailstock offset"]).stdout).unwrap();
    assert!(near.contains("Not understood: tailstock"), "{near}");
    assert_eq!(run(&["find"]).status.code(), Some(2));
}

#[test]
fn a_text_is_answered_before_the_next_is_waited_for() {
    let mut child = Command::new(env!("CARGO_BIN_EXE_benchslate"))
        .args(["find", "--lines"])
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut stdin = child.stdin.take().unwrap();
    let mut stdout = BufReader::new(child.stdout.take().unwrap());
    for (text, sheet) in [("#7", "drill"), ("bolt torque", "bolt-torque"), ("", "")] {
        writeln!(stdin, "{text}").unwrap();
        stdin.flush().unwrap();
        let mut line = String::new();
        stdout.read_line(&mut line).unwrap();
        let found: Value = serde_json::from_str(&line).unwrap();
        assert_eq!(found["text"], text);
        assert_eq!(
            found["hits"][0]["sheet"].as_str().unwrap_or_default(),
            sheet
        );
    }
    drop(stdin);
    assert!(child.wait().unwrap().success());
}
