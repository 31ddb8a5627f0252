//! Native times: one sheet from entry to answer, the reader, the search; each a median, each with its gate.
use benchslate_core::{
    link,
    quantity::System,
    search::Index,
    sheet::{Entry, evaluate, evaluate_field},
    sheets,
};
use std::{hint::black_box, process::ExitCode, time::Instant};

/// One sheet, entry text to finished answer.
const SHEET_US: f64 = 20.0;
/// The same for sheets that search a table or try many candidates.
const SEARCHING_US: f64 = 200.0;
/// These rank every drill, pin or thread of a table, or try many candidates.
const SEARCHING: &[&str] = &[
    "length",
    "tap-drill",
    "name-thread",
    "drill",
    "clearance-hole",
    "which-pair",
    "change-gears",
];
/// The reader, a field.
const READER_US: f64 = 1.0;
/// Search over everything.
const SEARCH_US: f64 = 2000.0;

fn main() -> ExitCode {
    // With `links`, prints the examples' links, for the terminal door's bench.
    if std::env::args().any(|a| a == "links") {
        for (sheet, entry) in examples() {
            let outcome = evaluate(sheet, &entry);
            println!(
                "{}",
                link::of(sheet, &entry, &outcome, &link::Asked::default()).unwrap_or_default()
            );
        }
        return ExitCode::SUCCESS;
    }
    let mut ok = true;
    println!("{:<52} {:>10} {:>10}", "native, median", "µs", "gate");
    for (sheet, entry) in examples() {
        let gate = if SEARCHING.contains(&sheet.id) {
            SEARCHING_US
        } else {
            SHEET_US
        };
        let texts: Vec<&str> = entry.texts().map(|(_, t)| t).collect();
        let name = format!("{} {}", sheet.id, texts.join(" "));
        ok &= row(&name, gate, || {
            black_box(evaluate(sheet, black_box(&entry)));
        });
    }
    // The slowest field of each sheet, so that one slow reader does not hide among quick ones; lists by the cell.
    for sheet in sheets::ALL {
        let read = sheet
            .fields
            .iter()
            .filter(|f| !f.example.is_empty())
            .map(|f| {
                let cells = 1.0 + f.example.matches([';', '~']).count() as f64;
                let time = median(|| {
                    let _ = black_box(evaluate_field(f, black_box(f.example), System::Inch));
                });
                (time / cells, f)
            });
        if let Some((time, field)) = read.max_by(|a, b| a.0.total_cmp(&b.0)) {
            ok &= print(
                &format!(
                    "reader, slowest of {}: {} {}",
                    sheet.id, field.id, field.example
                ),
                time,
                READER_US,
            );
        }
    }
    let index = Index::default();
    for text in ["#7", "3/8-16", "2/0 pin", "torque", "e"] {
        ok &= row(&format!("search {text}"), SEARCH_US, || {
            black_box(index.find(black_box(text), System::Inch));
        });
    }
    if ok {
        ExitCode::SUCCESS
    } else {
        ExitCode::FAILURE
    }
}

fn examples() -> Vec<(&'static benchslate_core::sheet::Sheet, Entry)> {
    sheets::ALL
        .iter()
        .flat_map(|s| s.examples.iter().map(|e| (*s, Entry::of(e))))
        .collect()
}

fn row(name: &str, gate: f64, work: impl FnMut()) -> bool {
    print(name, median(work), gate)
}

fn print(name: &str, time: f64, gate: f64) -> bool {
    let ok = time <= gate;
    let short: String = name.chars().take(52).collect();
    println!(
        "{short:<52} {time:>10.2} {gate:>10.0}{}",
        if ok { "" } else { "  OVER" }
    );
    ok
}

/// The median time of one run in microseconds, over a fifth of a second or 20,000 runs.
fn median(mut work: impl FnMut()) -> f64 {
    let started = Instant::now();
    let mut times = Vec::new();
    while times.len() < 20 || (times.len() < 20_000 && started.elapsed().as_millis() < 200) {
        let start = Instant::now();
        work();
        times.push(start.elapsed().as_secs_f64() * 1e6);
    }
    times.sort_by(f64::total_cmp);
    times.get(times.len() / 2).copied().unwrap_or_default()
}
