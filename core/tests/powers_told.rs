//! Do the words of the powers say where a step changes, and that a neighbor is only the nearest?
#![allow(clippy::unwrap_used)] // a failed check

use benchslate_core::powers::*;
use benchslate_core::sheet::{Entry, Outcome, evaluate};
use benchslate_core::sheets;

/// A drill press with few speeds: high-speed steel in mild steel.
fn drill(diameter: &str) -> Outcome {
    let pairs = [
        ("cut", "drill"),
        ("diameter", diameter),
        ("press-steps", "210 rpm;297 rpm;420 rpm;595 rpm"),
    ];
    evaluate(sheets::by_id("speed-feed").unwrap(), &Entry::of(&pairs))
}

/// What ± on the diameter is said to do to the speed.
fn said(diameter: &str) -> (usize, String) {
    let out = drill(diameter);
    let found = spread(&out.inputs, &out.answer).unwrap();
    let line = found.lines.iter().find(|line| line.id == "rpm").unwrap();
    let shown = out.answer.get("rpm").unwrap();
    let says = tell_line(&out.inputs, shown, line, true).unwrap();
    (line.changes.len(), says)
}

#[test]
fn one_change_or_two_are_told_each_by_its_place() {
    for (diameter, places) in [("0.9 in \u{b1}.2", 1), ("0.7 in \u{b1}.15", 2)] {
        let (changes, says) = said(diameter);
        assert_eq!(changes, places, "{diameter}: {says}");
        assert!(says.contains(", changing at "), "{says}");
        assert_eq!(says.matches(" and at ").count(), places - 1, "{says}");
        assert!(!says.contains("times"), "{says}");
    }
}

#[test]
fn more_changes_are_counted() {
    let (changes, says) = said("0.7 in \u{b1}.4");
    assert!(changes > 2, "{says}");
    assert!(
        says.contains(&format!(", changing {changes} times, first at ")),
        "{says}"
    );
}

#[test]
fn a_neighbor_is_called_the_nearest_on_its_side() {
    let out = drill("0.9 in");
    let shown = out.answer.get("rpm").unwrap();
    let unit = shown
        .value
        .unit(benchslate_core::quantity::System::Inch)
        .unwrap();
    let found = turn(&out.inputs, "diameter", "rpm", unit.to_base(300.0)).unwrap();
    let field = out.inputs.sheet().field("diameter").unwrap();
    let told = tell_found(&out.inputs, field, shown, &found);
    let gives: Vec<&str> = told.iter().map(|find| find.gives.as_str()).collect();
    assert_eq!(
        gives,
        [
            "gives 297 rpm, the nearest on that side",
            "gives 420 rpm, the nearest on that side"
        ]
    );
}
