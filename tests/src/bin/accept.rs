//! Accepts the answers as they are now: writes them to `tests/golden/answers`, and what the user sees of the change into the
//! change log. Called as `cargo xtask accept "line"`; a new sheet, too, needs its line.

use benchslate_core::sheets;
use benchslate_tests::golden;
use std::{error::Error, fs, process::ExitCode};

fn main() -> Result<ExitCode, Box<dyn Error>> {
    let lines: Vec<String> = std::env::args().skip(1).collect();
    let changed: Vec<_> = sheets::ALL
        .iter()
        .copied()
        .filter(|sheet| {
            let kept = fs::read_to_string(golden::file(sheet)).unwrap_or_default();
            kept != golden::text(sheet)
        })
        .collect();
    if changed.is_empty() {
        println!("no answer has changed");
        return Ok(ExitCode::SUCCESS);
    }
    let ids: Vec<&str> = changed.iter().map(|sheet| sheet.id).collect();
    println!("changed: {}", ids.join(", "));
    if lines.iter().all(|line| line.trim().is_empty()) {
        println!("say what the user sees of it: cargo xtask accept \"Sheet, revision n: ...\"");
        return Ok(ExitCode::FAILURE);
    }
    fs::create_dir_all(golden::folder())?;
    for sheet in changed {
        fs::write(golden::file(sheet), golden::text(sheet))?;
    }
    let log = golden::folder().join("../../../CHANGELOG.md");
    let old = fs::read_to_string(&log)?;
    let mark = "\n<!-- accepted lines go here -->\n";
    let (before, after) = old
        .split_once(mark)
        .ok_or("CHANGELOG.md has lost the mark before which accepted lines go")?;
    let mut new = String::new();
    for line in &lines {
        new.push_str("\n- ");
        new.push_str(line);
    }
    fs::write(&log, format!("{before}{new}{mark}{after}"))?;
    Ok(ExitCode::SUCCESS)
}
