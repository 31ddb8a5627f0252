//! Native times: one sheet from entry to answer, with and without its working, the reader, the search; each a median in a quiet
//! moment, each with its gate. With names of sheets behind it, those alone; with `links`, the examples' links.
mod quiet;

use benchslate_core::{
    link,
    quantity::System,
    search::Index,
    sheet::{Entry, evaluate, evaluate_field, evaluate_quietly},
    sheets,
};
use quiet::{Moments, fixed_work, median};
use std::{hint::black_box, process::ExitCode};

/// One sheet, entry text to finished answer; and with the results alone.
const SHEET_US: (f64, f64) = (20.0, 5.0);
/// The same for sheets that search a table or try many candidates.
const SEARCHING_US: (f64, f64) = (200.0, 100.0);
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

type Sheet = &'static benchslate_core::sheet::Sheet;

fn main() -> ExitCode {
    let named: Vec<String> = std::env::args().skip(1).collect();
    if named.iter().any(|a| a == "links") {
        for (sheet, entry) in examples(&[]) {
            let outcome = evaluate(sheet, &entry);
            let link = link::of(sheet, &entry, &outcome, &link::Asked::default());
            println!("{}", link.unwrap_or_default());
        }
        return ExitCode::SUCCESS;
    }
    let mut table = Table {
        moments: Moments::new(fixed_work),
        ok: true,
        disturbed: 0,
    };
    table.sheets(&named);
    if named.is_empty() {
        table.readers();
        table.search();
    }
    table.end()
}

fn examples(named: &[String]) -> Vec<(Sheet, Entry)> {
    let asked = |sheet: &&Sheet| named.is_empty() || named.iter().any(|id| id == sheet.id);
    let sheets = sheets::ALL.iter().filter(asked);
    sheets
        .flat_map(|s| s.examples.iter().map(|e| (*s, Entry::of(e))))
        .collect()
}

struct Table<F> {
    moments: Moments<F>,
    ok: bool,
    disturbed: usize,
}

impl<F: FnMut() -> f64> Table<F> {
    fn sheets(&mut self, named: &[String]) {
        println!("{:<52} {:>10} {:>10}", "native, median", "\u{b5}s", "gate");
        for (sheet, entry) in examples(named) {
            let (whole, quietly) = if SEARCHING.contains(&sheet.id) {
                SEARCHING_US
            } else {
                SHEET_US
            };
            let texts: Vec<&str> = entry.texts().map(|(_, t)| t).collect();
            let name = format!("{} {}", sheet.id, texts.join(" "));
            self.row(&name, whole, || {
                black_box(evaluate(sheet, black_box(&entry)));
            });
            self.row("    its results alone", quietly, || {
                black_box(evaluate_quietly(sheet, black_box(&entry)));
            });
        }
    }

    /// The slowest field of each sheet, so that one slow reader does not hide among quick ones; lists by the cell.
    fn readers(&mut self) {
        for sheet in sheets::ALL {
            let read = sheet
                .fields
                .iter()
                .filter(|f| !f.example.is_empty())
                .map(|f| {
                    let cells = 1.0 + f.example.matches([';', '~']).count() as f64;
                    let settled = self.moments.settled(|| {
                        median(|| {
                            let _ =
                                black_box(evaluate_field(f, black_box(f.example), System::Inch));
                        }) / cells
                    });
                    (settled, f)
                });
            if let Some((settled, field)) = read.max_by(|a, b| a.0.time.total_cmp(&b.0.time)) {
                let name = format!(
                    "reader, slowest of {}: {} {}",
                    sheet.id, field.id, field.example
                );
                self.print(&name, settled, READER_US);
            }
        }
    }

    fn search(&mut self) {
        let index = Index::default();
        for text in ["#7", "3/8-16", "2/0 pin", "torque", "e"] {
            self.row(&format!("search {text}"), SEARCH_US, || {
                black_box(index.find(black_box(text), System::Inch));
            });
        }
    }

    fn row(&mut self, name: &str, gate: f64, mut work: impl FnMut()) {
        let settled = self.moments.settled(|| median(&mut work));
        self.print(name, settled, gate);
    }

    fn print(&mut self, name: &str, settled: quiet::Settled, gate: f64) {
        let ok = settled.time <= gate;
        self.ok &= ok;
        self.disturbed += usize::from(!settled.quiet);
        let short: String = name.chars().take(52).collect();
        println!(
            "{short:<52} {:>10.2} {gate:>10.0}{}{}",
            settled.time,
            if ok { "" } else { "  OVER" },
            if settled.quiet { "" } else { "  disturbed" },
        );
    }

    fn end(&self) -> ExitCode {
        println!(
            "fixed work at its best: {:.1} \u{b5}s{}",
            self.moments.best(),
            match self.disturbed {
                0 => String::new(),
                count => format!(
                    "; {count} rows found no quiet moment: the machine is at work, their times are too long"
                ),
            }
        );
        if self.ok {
            ExitCode::SUCCESS
        } else {
            ExitCode::FAILURE
        }
    }
}
