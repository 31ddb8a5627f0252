//! Has any answer changed since it was accepted? A line a check of every answer to the entries of `cases`, kept in
//! `tests/golden/answers`: words, cautions, figures, working and drawing go into it.

use crate::cases;
use benchslate_core::quantity::System;
use benchslate_core::sheet::{Entry, Fault, Outcome, Sheet, Value, evaluate};
use std::path::{Path, PathBuf};

/// The lines of an answer as a reader sees them, each by what it is.
pub fn lines(sheet: &'static Sheet, entry: &Entry) -> Vec<String> {
    let outcome = evaluate(sheet, entry);
    let mut all = entered(&outcome);
    let answer = &outcome.answer;
    all.push(format!("state: {:?}", answer.state));
    let both = |value: &Value| {
        format!(
            "{} = {}",
            value.text_with_unit(System::Inch),
            value.text_with_unit(System::Metric)
        )
    };
    for line in &answer.lines {
        let band = line.band.map(|(low, high)| {
            let end = |base| both(&line.value.with_base(base));
            format!("{} to {}", end(low), end(high))
        });
        all.push(format!(
            "result {}: {}: {}; {}; {} {}",
            line.id,
            line.label,
            both(&line.value),
            line.says,
            band.unwrap_or_default(),
            line.band_says
        ));
    }
    for table in &answer.tables {
        all.push(format!("table {}: {}", table.id, table.title));
        all.push(table.columns.join(" | "));
        for row in &table.rows {
            let cells: Vec<String> = row.cells.iter().map(both).collect();
            all.push(format!("{}{}{}", cells.join(" | "), row.owned, row.chosen));
        }
        all.push(format!("note: {}", table.note));
    }
    for step in &answer.steps {
        all.push(format!("working: {}", step.title));
        all.extend(step.lines.iter().cloned());
    }
    for caution in &answer.cautions {
        let stop = if caution.stop { "stop" } else { "note" };
        all.push(format!(
            "{stop} {}: {}: {}",
            caution.id, caution.before, caution.text
        ));
    }
    all.extend(
        answer
            .sources
            .iter()
            .map(|source| format!("source: {}", source.text())),
    );
    all.push(format!("drawing: {:?}", answer.drawing));
    all
}

fn entered(outcome: &Outcome) -> Vec<String> {
    let fields = outcome.fields.iter().filter(|field| field.applies);
    let mut all: Vec<String> = fields
        .filter(|field| !field.text.is_empty())
        .map(|field| {
            let fault = field.fault.as_ref().map(Fault::text);
            let read = &field.reading;
            format!(
                "entry {}: {} -> {read} {} {}",
                field.id,
                field.text,
                field.link_text,
                fault.unwrap_or_default()
            )
        })
        .collect();
    if let Some(fault) = &outcome.fault {
        all.push(format!("fault: {}", fault.text()));
    }
    all
}

/// The golden text of a sheet: an entry a line, and after a tab four hexadecimal digits for each line of its answer.
pub fn text(sheet: &'static Sheet) -> String {
    let mut out = String::new();
    for entry in cases::all(sheet) {
        out.push_str(&name(&entry));
        out.push('\t');
        for line in lines(sheet, &entry) {
            out.push_str(&mark(&line));
        }
        out.push('\n');
    }
    out
}

/// The first entry and line that differ from a golden text; nothing where all is as it was.
pub fn first_change(sheet: &'static Sheet, golden: &str) -> Option<String> {
    let mut kept = golden.lines();
    for entry in cases::all(sheet) {
        let name = name(&entry);
        let Some((old_name, marks)) = kept.next().and_then(|line| line.split_once('\t')) else {
            return Some(format!("{name}\n  is new"));
        };
        if old_name != name {
            return Some(format!("{name}\n  stands where this stood: {old_name}"));
        }
        let now = lines(sheet, &entry);
        let mut old = marks.as_bytes().chunks(4);
        for line in &now {
            if old.next() != Some(mark(line).as_bytes()) {
                return Some(format!("{name}\n  this line has changed or is new: {line}"));
            }
        }
        if old.next().is_some() {
            return Some(format!("{name}\n  has fewer lines than before"));
        }
    }
    kept.next().map(|line| {
        let name = line.split('\t').next().unwrap_or_default();
        format!("{name}\n  is gone")
    })
}

fn name(entry: &Entry) -> String {
    let mut text = match entry.system {
        System::Inch => "in".to_owned(),
        System::Metric => "mm".to_owned(),
    };
    for (id, typed) in entry.texts() {
        text.push_str(&format!(" {id}={typed:?}"));
    }
    text.replace(['\t', '\n', '\r'], " ")
}

fn mark(line: &str) -> String {
    let mut hash = 0xcbf2_9ce4_8422_2325_u64;
    for byte in line.bytes() {
        hash = (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3);
    }
    format!("{:04x}", (hash ^ (hash >> 32)) & 0xffff)
}

/// Where the golden texts lie: in the tree where cargo was called, not where this was built.
pub fn folder() -> PathBuf {
    let here = std::env::var_os("BENCHSLATE_ROOT").map_or_else(
        || Path::new(env!("CARGO_MANIFEST_DIR")).join(".."),
        PathBuf::from,
    );
    here.join("tests/golden/answers")
}

/// A sheet's golden text.
pub fn file(sheet: &Sheet) -> PathBuf {
    folder().join(format!("{}.txt", sheet.id))
}
