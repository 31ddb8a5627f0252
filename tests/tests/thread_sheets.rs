//! The sheets on threads and drills, seen as a user sees them: whole answers against printed figures, and the search.

#![allow(
    clippy::unwrap_used,
    clippy::indexing_slicing,
    reason = "a test says what it could not find"
)]

use benchslate_core::quantity::System;
use benchslate_core::search::Index;
use benchslate_core::sheet::{Entry, Outcome, Reason, evaluate};
use benchslate_core::sheets;

fn answer(sheet: &str, entry: &[(&str, &str)], system: System) -> Outcome {
    evaluate(
        sheets::by_id(sheet).unwrap(),
        &Entry::of(entry).in_system(system),
    )
}

fn text(outcome: &Outcome, id: &str, system: System) -> String {
    outcome
        .answer
        .get(id)
        .map_or_else(String::new, |line| line.value.text(system))
}

/// Drills of the charts: the "75 %" column of a drill and tap chart (two prints agree) and ISO 2306 core holes.
#[test]
fn the_usual_tap_drills_come_first() {
    for (thread, set, system, drill) in [
        ("1/4-20", "all-inch", System::Inch, "No. 7"),
        ("1/4-28", "all-inch", System::Inch, "No. 3"),
        ("3/8-16", "all-inch", System::Inch, "5/16 in"),
        ("5/16-24", "all-inch", System::Inch, "letter I"),
        ("#10-32", "all-inch", System::Inch, "No. 21"),
        ("#10-24", "all-inch", System::Inch, "No. 25"),
        ("#12-32", "all-inch", System::Inch, "No. 13"),
        ("M3", "metric", System::Metric, "2.5 mm"),
        ("M4", "metric", System::Metric, "3.3 mm"),
        ("M5", "metric", System::Metric, "4.2 mm"),
        ("M6", "metric", System::Metric, "5 mm"),
        ("M8", "metric", System::Metric, "6.8 mm"),
        ("M10", "metric", System::Metric, "8.5 mm"),
    ] {
        let outcome = answer("tap-drill", &[("thread", thread), ("drills", set)], system);
        assert_eq!(text(&outcome, "drill", system), drill, "{thread}");
    }
}

/// Machinery's Handbook, 31st ed., p. 2155, table 2: 4-40 with 0.0935 in leaves 57 %, 3-48 with 0.0820 in 63 %.
#[test]
fn percents_stand_beside_the_drills() {
    for (thread, drill, percent) in [
        ("#4-40", "No. 42", "57"),
        ("#3-48", "No. 45", "63"),
        ("#2-56", "No. 50", "69"),
    ] {
        let outcome = answer(
            "tap-drill",
            &[
                ("thread", thread),
                ("share", "60 pct"),
                ("drills", "all-inch"),
            ],
            System::Inch,
        );
        let table = outcome.answer.table_by_id("drills").unwrap();
        let row = table
            .rows
            .iter()
            .find(|row| row.cells[0].text(System::Inch) == drill)
            .unwrap();
        assert_eq!(row.cells[3].text(System::Inch), percent, "{thread} {drill}");
        assert!(row.owned);
    }
}

/// ASME B1.1 limits of size (1/4-20, 3/4-10), ISO 965-1/-2 (M10, M12x1.25).
#[test]
fn limits_as_printed() {
    for (thread, system, table, class, cells) in [
        (
            "1/4-20",
            System::Inch,
            "screw-limits",
            "2A",
            ["0.2489", "0.2408", "0.2164", "0.2127"],
        ),
        (
            "1/4-20",
            System::Inch,
            "hole-limits",
            "2B",
            ["0.1960", "0.2070", "0.2175", "0.2224"],
        ),
        (
            "3/4-10",
            System::Inch,
            "hole-limits",
            "3B",
            ["0.6420", "0.6545", "0.6850", "0.6907"],
        ),
        (
            "M10",
            System::Metric,
            "screw-limits",
            "6g",
            ["9.968", "9.732", "8.994", "8.862"],
        ),
        (
            "M12x1.25",
            System::Metric,
            "hole-limits",
            "6H",
            ["10.647", "10.912", "11.188", "11.368"],
        ),
    ] {
        let outcome = answer("thread", &[("thread", thread)], system);
        let table = outcome.answer.table_by_id(table).unwrap();
        let row = table
            .rows
            .iter()
            .find(|row| row.cells[0].text(system) == class)
            .unwrap();
        for (cell, printed) in row.cells[1..].iter().zip(cells) {
            assert_eq!(cell.text(system), printed, "{thread} {class}");
        }
    }
}

/// ASME B18.2.8-1999, table 1, and ISO 273:1979 (both from memory).
#[test]
fn clearance_holes() {
    for (screw, fit, system, hole) in [
        ("1/4", "normal", System::Inch, "0.2810"),
        ("#10", "close", System::Inch, "0.2060"),
        ("1/2", "loose", System::Inch, "0.6090"),
        ("M12", "normal", System::Metric, "13.500"),
        ("M8", "close", System::Metric, "8.400"),
    ] {
        let outcome = answer("clearance-hole", &[("screw", screw), ("fit", fit)], system);
        assert_eq!(text(&outcome, "hole", system), hole, "{screw} {fit}");
    }
    let outcome = answer("clearance-hole", &[("screw", "9/16")], System::Inch);
    assert_eq!(
        outcome
            .field("screw")
            .unwrap()
            .fault
            .as_ref()
            .unwrap()
            .reason,
        Reason::NotDefined
    );
}

#[test]
fn a_drill_that_reads_two_ways_is_asked() {
    let outcome = answer("drill", &[("drill", "7")], System::Inch);
    let fault = outcome.field("drill").unwrap().fault.as_ref().unwrap();
    assert_eq!(fault.reason, Reason::Ambiguous);
    let ways: Vec<&str> = fault.ways.iter().map(|way| way.text.as_str()).collect();
    assert_eq!(ways, ["7 mm", "#7"]);
    for way in ways {
        assert!(
            answer("drill", &[("drill", way)], System::Inch)
                .answer
                .is_complete()
        );
    }
}

#[test]
fn every_row_that_is_found_opens_whole() {
    for id in ["thread", "tap-drill", "drill"] {
        let sheet = sheets::by_id(id).unwrap();
        for find in sheet.finds.unwrap()() {
            let pairs: Vec<(&str, &str)> = find
                .entry
                .iter()
                .map(|(id, text)| (*id, text.as_str()))
                .collect();
            assert!(
                evaluate(sheet, &Entry::of(&pairs)).answer.is_complete(),
                "{id} {}",
                find.title
            );
        }
    }
}

#[test]
fn the_search_box_finds_rows() {
    let index = Index::default();
    for (typed, sheet, field, holds) in [
        ("#7", "drill", "drill", "No. 7"),
        (".201", "drill", "drill", "No. 7"),
        ("0.201", "drill", "drill", "No. 7"),
        ("13/64", "drill", "drill", "13/64 in"),
        ("letter f", "drill", "drill", "letter F"),
        ("5.1 mm", "drill", "drill", "5.1 mm"),
        ("5/16-18", "tap-drill", "thread", "5/16-18 UNC"),
        ("5/16-18", "thread", "thread", "5/16-18 UNC"),
        ("10-32", "tap-drill", "thread", "#10-32 UNF"),
        ("m8", "tap-drill", "thread", "M8x1.25"),
        ("M10x1.25", "thread", "thread", "M10x1.25"),
    ] {
        let hits = index.find(typed, System::Inch);
        assert!(
            hits.iter()
                .any(|hit| hit.sheet == sheet && hit.entry.get(field) == Some(holds)),
            "{typed}: {hits:?}"
        );
    }
}
