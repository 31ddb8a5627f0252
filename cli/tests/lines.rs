//! Does the terminal stay in step with a program that asks it line by line, whatever bytes come?
#![allow(clippy::unwrap_used, clippy::indexing_slicing)] // a failure is a failed check

use serde_json::Value;
use std::io::{BufRead, BufReader, Write};
use std::process::{Command, Stdio};

const LINK: &[u8] = b"#/v1/length?length=1/2%20in\n";

fn lines_of(input: Vec<u8>) -> Vec<Value> {
    let mut child = Command::new(env!("CARGO_BIN_EXE_benchslate"))
        .arg("--lines")
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut stdin = child.stdin.take().unwrap();
    let writer = std::thread::spawn(move || stdin.write_all(&input).unwrap());
    let out = child.wait_with_output().unwrap();
    writer.join().unwrap();
    assert!(out.status.success());
    let lines = out
        .stdout
        .split(|byte| *byte == b'\n')
        .filter(|line| !line.is_empty());
    lines
        .map(|line| serde_json::from_slice(line).unwrap())
        .collect()
}

#[test]
fn a_line_is_answered_before_the_next_is_waited_for() {
    let mut child = Command::new(env!("CARGO_BIN_EXE_benchslate"))
        .arg("--lines")
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    let mut stdin = child.stdin.take().unwrap();
    let mut stdout = BufReader::new(child.stdout.take().unwrap());
    for length in ["1/2", "3/4", "1"] {
        stdin
            .write_all(format!("#/v1/length?length={length}%20in\n").as_bytes())
            .unwrap();
        stdin.flush().unwrap();
        // it would hang here if the answer came only at the end of the input
        let mut answer = String::new();
        stdout.read_line(&mut answer).unwrap();
        let answer: Value = serde_json::from_str(&answer).unwrap();
        assert_eq!(answer["link"], format!("#/v1/length?length={length}%20in"));
    }
    // half a line waits for its end
    stdin.write_all(b"#/v1/length?len").unwrap();
    stdin.write_all(b"gth=2%20in\n").unwrap();
    drop(stdin);
    let mut rest = String::new();
    stdout.read_line(&mut rest).unwrap();
    assert!(rest.contains("length=2%20in"), "{rest}");
    assert!(child.wait().unwrap().success());
}

#[test]
fn every_line_has_its_object_whatever_bytes_it_holds() {
    let mut input = Vec::new();
    for _ in 0..600 {
        input.extend_from_slice(LINK);
    }
    input.extend_from_slice(b"\xff\xfe#/v1/length\n\n   \n");
    input.extend_from_slice(LINK);
    input.extend_from_slice(b"#/v1/length?length=3%20mm"); // the last line needs no end
    let lines = lines_of(input);
    assert_eq!(lines.len(), 605);
    let state = |at: usize| lines[at]["state"].as_str().unwrap();
    assert!((0..600).all(|at| state(at) == "complete"));
    assert_eq!([state(600), state(601), state(602)], ["faulty"; 3]);
    assert_eq!(
        lines[600]["faults"][0]["text"],
        "this line is not UTF-8 text"
    );
    assert_eq!([state(603), state(604)], ["complete"; 2]);
}

#[test]
fn nothing_in_gives_nothing_out() {
    assert!(lines_of(Vec::new()).is_empty());
    assert_eq!(
        lines_of([b"\xef\xbb\xbf", LINK].concat())[0]["state"],
        "complete"
    );
}

#[cfg(unix)]
#[test]
fn an_argument_that_is_not_utf_8_is_a_fault() {
    use std::os::unix::ffi::OsStrExt;
    let bad = std::ffi::OsStr::from_bytes(b"length=\xff");
    let out = Command::new(env!("CARGO_BIN_EXE_benchslate"))
        .arg("length")
        .arg(bad)
        .output()
        .unwrap();
    assert_eq!(out.status.code(), Some(2));
    let says = String::from_utf8(out.stderr).unwrap();
    assert!(
        says.contains("argument 2") && says.contains("not UTF-8") && !says.contains("panicked"),
        "{says}"
    );
}

fn answer(words: &[&str]) -> Value {
    let out = Command::new(env!("CARGO_BIN_EXE_benchslate"))
        .args(words)
        .arg("--json")
        .output()
        .unwrap();
    serde_json::from_slice(&out.stdout).unwrap()
}

fn line<'a>(answer: &'a Value, id: &str) -> &'a Value {
    answer["lines"]
        .as_array()
        .unwrap()
        .iter()
        .find(|line| line["id"] == id)
        .unwrap()
}

#[test]
fn the_smaller_number_of_a_range_stands_first() {
    // 20 threads per inch, counted to one: 19 to 21, though the pitch runs the other way
    let words = ["name-thread", "diameter=.247", "pitch=20 ± 1 tpi"];
    let json = answer(&words);
    let pitch = line(&json, "pitch-measured");
    assert_eq!(
        (&pitch["spread_low"], &pitch["spread_high"]),
        (&Value::from(19.0), &Value::from(21.0))
    );
    let out = Command::new(env!("CARGO_BIN_EXE_benchslate"))
        .args(words)
        .output()
        .unwrap();
    let text = String::from_utf8(out.stdout).unwrap();
    assert!(text.contains("19.00 to 21.00 tpi"), "{text}");
    assert!(text.contains("19 to 21, measured"), "{text}");
}

#[test]
fn a_value_in_json_can_be_put_back() {
    for link in [
        "#/v1/length?length=8.098%20mm",
        "#/v1/drill?drill=%237",
        "#/v1/length?length=1/3%20in",
    ] {
        let first = answer(&[link]);
        for line in first["lines"].as_array().unwrap() {
            let Some(value) = line["value"].as_f64() else {
                continue;
            };
            let text = value.to_string();
            let figures = text.trim_start_matches(['-', '0', '.']).replace('.', "");
            assert!(figures.len() <= 15, "{link} {}: {text}", line["id"]);
            // nothing is nothing, not what an addition left of it
            assert!(
                value == 0.0 || value.abs() > 1e-9,
                "{link} {}: {text}",
                line["id"]
            );
        }
    }
    let first = answer(&["#/v1/length?length=8.098%20mm"]);
    let inches = line(&first, "inch")["value"].as_f64().unwrap();
    let back = answer(&["length", &format!("length={inches} in")]);
    assert_eq!(line(&back, "mm")["value"], 8.098);
    let want = format!("want=inch~{inches} in");
    let turned = answer(&["#/v1/length?length=8%20mm", "turn=length", &want]);
    assert!(turned["turned"]["faults"].is_null(), "{}", turned["turned"]);
}

#[test]
fn an_unknown_name_in_a_link_is_named_in_text_and_in_json() {
    let link = "#/v1/length?length=10&units=mm";
    let json = answer(&[link]);
    assert!(json["notes"][0].as_str().unwrap().contains("units = mm"));
    let out = Command::new(env!("CARGO_BIN_EXE_benchslate"))
        .arg(link)
        .output()
        .unwrap();
    let text = String::from_utf8(out.stdout).unwrap();
    assert!(
        text.contains("note: ") && text.contains("write u=mm"),
        "{text}"
    );
}

#[test]
fn a_shop_file_may_start_with_a_mark_of_its_encoding() {
    let file = std::env::temp_dir().join(format!("benchslate-mark-{}.json", std::process::id()));
    let text = "\u{feff}{\"record\":\"my-shop\",\"version\":1,\"data\":{\"system\":\"Metric\",\"items\":[]}}";
    std::fs::write(&file, text).unwrap();
    let answer = answer(&["length", "length=10", "--shop", file.to_str().unwrap()]);
    std::fs::remove_file(&file).unwrap();
    assert_eq!(answer["link"], "#/v1/length?length=10%20mm&u=mm");
}
