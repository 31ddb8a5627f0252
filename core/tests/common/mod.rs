//! What the tests share: generated texts and entries.
#![allow(dead_code)] // each test file uses its own part

use benchslate_core::quantity::System;
use benchslate_core::sheet::{Entry, Field, FieldKind, Sheet};

/// How many inputs a fuzz test tries: 50,000, or what `BENCHSLATE_FUZZ` says.
pub fn rounds() -> usize {
    std::env::var("BENCHSLATE_FUZZ")
        .ok()
        .and_then(|n| n.parse().ok())
        .unwrap_or(50_000)
}

const PIECES: &[&str] = &[
    "0",
    "1",
    "2",
    "7",
    "16",
    "3",
    "1/4",
    "1 1/4",
    "-8 1/2",
    ".",
    ",",
    "/",
    "-",
    " ",
    "#",
    "in",
    "mm",
    "thou",
    "tenth",
    "\"",
    "''",
    "'",
    "\u{2033}",
    "\u{bd}",
    "\u{be}",
    "\u{b1}",
    "+-",
    "+.0000/-.0002",
    "e3",
    "0x10",
    "NaN",
    "inf",
    "1e308",
    "99999999999999999999",
    "H7",
    "m6",
    "H7/m6",
    "RC 3",
    "FN2",
    "1/4-20",
    "M10x1.5",
    "M1",
    "#10-24",
    "2/0",
    "No. 7",
    "letter F",
    "1:48",
    "deg",
    "\u{b0}",
    "sfm",
    "ipm",
    "rpm",
    "ft-lb",
    "N\u{b7}m",
    "pct",
    "%",
    ";",
    "~",
    "\n",
    "\0",
    "\u{202e}",
    "\u{200b}",
    "\u{1f529}",
    "&",
    "=",
    "?",
    "0.0000001",
    "250",
    "1,250",
    "14 thousandths and 5 tenths",
];

/// Less than `n`, from the same draw on every machine: `usize` itself draws otherwise where it has 32 bits, as it has
/// in WebAssembly.
fn below(rng: &mut fastrand::Rng, n: usize) -> usize {
    usize::try_from(rng.u64(..n as u64)).unwrap_or(0)
}

/// A text of random pieces, now and then very long.
pub fn text(rng: &mut fastrand::Rng) -> String {
    if rng.u16(..) == 0 {
        return "1".repeat(10_000);
    }
    (0..below(rng, 5))
        .map(|_| {
            PIECES
                .get(below(rng, PIECES.len()))
                .copied()
                .unwrap_or_default()
        })
        .collect()
}

/// A text that a field is likely to take.
pub fn likely(field: &Field, rng: &mut fastrand::Rng) -> String {
    match &field.kind {
        FieldKind::Choice(choices) => choices
            .get(below(rng, choices.len()))
            .map_or("", |choice| choice.id)
            .to_owned(),
        FieldKind::Quantity { units, .. } if rng.u8(..) < 200 => {
            let Some(range) = field.range else {
                return field.example.to_owned();
            };
            let Some(unit) = units.get(below(rng, units.len())) else {
                return String::new();
            };
            let base = range.low + (range.high - range.low) * libm::pow(rng.f64(), 3.0);
            format!(
                "{} {}",
                benchslate_core::quantity::decimal(base, unit, unit.places),
                unit.id
            )
        }
        _ if field.example.is_empty() => field.preset.text().unwrap_or("1").to_owned(),
        _ => field.example.to_owned(),
    }
}

/// An entry of a sheet: likely texts, some random, some left out.
pub fn entry(sheet: &'static Sheet, wild: u8, rng: &mut fastrand::Rng) -> Entry {
    let mut entry = Entry::default();
    if rng.bool() {
        entry.system = System::Metric;
    }
    for field in sheet.fields {
        match rng.u8(..) {
            n if n < wild => entry.set(field.id, &text(rng)),
            n if n > 230 => {}
            _ => entry.set(field.id, &likely(field, rng)),
        }
    }
    entry
}
