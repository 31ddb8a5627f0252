//! Does the terminal door keep its word? Text, JSON, many lines, faults and exit codes.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)] // a failure is a failed check

use serde_json::Value;
use std::io::Write;
use std::process::{Command, Output, Stdio};

fn run(args: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_benchslate"))
        .args(args)
        .output()
        .unwrap()
}

fn json(bytes: &[u8]) -> Value {
    serde_json::from_slice(bytes).unwrap()
}

#[test]
fn an_answer_as_json_has_value_unit_and_text() {
    let out = run(&["length", "length=7/16", "--json"]);
    assert!(out.status.success());
    let answer = json(&out.stdout);
    let line = answer["lines"]
        .as_array()
        .unwrap()
        .iter()
        .find(|line| line["id"] == "mm")
        .unwrap()
        .clone();
    // 1 in = 25.4 mm by definition: 7/16 in = 11.1125 mm
    assert_eq!(line["value"], 11.1125);
    assert_eq!(line["text"], "11.1125");
    assert_eq!(line["unit"], "mm");
    assert!(
        line["convention"]
            .as_str()
            .is_some_and(|says| !says.is_empty())
    );
    assert_eq!(answer["link"], "#/v1/length?length=7/16%20in");
}

#[test]
fn the_link_of_an_answer_gives_the_same_answer() {
    let first = json(&run(&["length", "length=11.1 mm", "--json"]).stdout);
    let again = json(&run(&[first["link"].as_str().unwrap(), "--json"]).stdout);
    assert_eq!(first, again);
}

#[test]
fn faults_go_to_standard_error_with_a_failing_exit() {
    let out = run(&["length", "length=1/0", "--json"]);
    assert!(!out.status.success());
    let fault = json(&out.stderr);
    assert_eq!(fault["state"], "faulty");
    assert_eq!(fault["faults"][0]["field"], "length");
    assert!(!fault["faults"][0]["cure"].as_str().unwrap().is_empty());
    assert_eq!(run(&["no-such-thing"]).status.code(), Some(2));
    assert_eq!(run(&["length", "width=1"]).status.code(), Some(2));
}

#[test]
fn many_lines_run_in_one_process_with_faults_in_place() {
    let mut child = Command::new(env!("CARGO_BIN_EXE_benchslate"))
        .arg("--lines")
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let links = "#/v1/length?length=1/2%20in\nnonsense\n\n#/v1/length?length=1//2\n#/v1/length?length=3%20mm\n";
    child
        .stdin
        .take()
        .unwrap()
        .write_all(links.as_bytes())
        .unwrap();
    let out = child.wait_with_output().unwrap();
    assert!(out.status.success());
    let lines: Vec<Value> = out
        .stdout
        .split(|b| *b == b'\n')
        .filter(|line| !line.is_empty())
        .map(json)
        .collect();
    let states: Vec<&str> = lines
        .iter()
        .map(|line| line["state"].as_str().unwrap())
        .collect();
    assert_eq!(
        states,
        ["complete", "faulty", "faulty", "faulty", "complete"]
    );
    assert_eq!(lines[2]["faults"][0]["text"], "this line is blank");
}

#[test]
fn the_contract_is_printed_whole() {
    let all = json(&run(&["sheets", "--json"]).stdout);
    let sheets = all["sheets"].as_array().unwrap();
    assert_eq!(sheets.len(), benchslate_core::sheets::ALL.len());
    for sheet in sheets {
        assert!(
            !sheet["fields"].as_array().unwrap().is_empty()
                && !sheet["results"].as_array().unwrap().is_empty()
        );
    }
}

#[test]
fn units_and_a_shop_file_are_taken() {
    let answer = json(&run(&["length", "length=10", "--units", "mm", "--json"]).stdout);
    assert_eq!(answer["link"], "#/v1/length?length=10%20mm&u=mm");
    let file = std::env::temp_dir().join(format!("benchslate-shop-{}.json", std::process::id()));
    std::fs::write(
        &file,
        r#"{"record":"my-shop","version":1,"data":{"system":"Metric","items":[]}}"#,
    )
    .unwrap();
    let path = file.to_str().unwrap();
    let answer = json(&run(&["length", "length=10", "--shop", path, "--json"]).stdout);
    assert_eq!(answer["link"], "#/v1/length?length=10%20mm&u=mm");
    std::fs::write(&file, r#"{"record":"my-shop","version":99,"data":{}}"#).unwrap();
    let out = run(&["length", "length=10", "--shop", path]);
    assert_eq!(out.status.code(), Some(2));
    assert!(
        String::from_utf8(out.stderr)
            .unwrap()
            .contains("newer version")
    );
    std::fs::remove_file(&file).unwrap();
}
