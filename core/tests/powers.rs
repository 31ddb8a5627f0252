//! Do the powers find what is there? On made-up sheets with known roots, jumps and ends, and on every real one.
#![allow(clippy::panic)] // a failed check

mod common;

use benchslate_core::powers::{End, spread, sweep, turn};
use benchslate_core::quantity::{Kind, Number, System};
use benchslate_core::sheet::*;
use benchslate_core::sheets;

static SOURCE: Source = Source::practice("made up for this test");

macro_rules! made_up {
    ($name:ident, $figure:expr) => {
        static $name: Sheet = Sheet {
            id: "made-up",
            revision: 1,
            title: "Made up",
            question: "What comes out?",
            aside: "",
            words: &[],
            group: Group::Identify,
            fields: &[
                Field::number("x", "X")
                    .range(-10.0, 10.0, "made up")
                    .measured(),
                Field::number("k", "K")
                    .range(-10.0, 10.0, "made up")
                    .measured()
                    .monotonic()
                    .preset("1"),
            ],
            results: &[
                Res::of("y", "Y", Kind::Number),
                Res::stepped("n", "N", Kind::Number),
                Res::words("pick", "Pick"),
            ],
            examples: &[],
            takes: &[],
            finds: None,
            figure: |inp, a| {
                let (x, k): (Number, Number) = (inp.get("x")?, inp.get("k")?);
                let f: fn(f64, f64) -> Result<f64, Stop> = $figure;
                let y = f(x.get(), k.get())?;
                a.line("y", Number::of(y));
                a.line("n", Number::of(libm::floor(y)));
                a.words("pick", if y < 2.0 { "small" } else { "large" });
                a.source(&SOURCE);
                Ok(())
            },
        };
    };
}

made_up!(SQUARE, |x, k| Ok(k * x * x));
made_up!(JUMP, |x, _| Ok(if x < 3.0 { x } else { x + 5.0 }));
made_up!(GAP, |x, _| if x > 4.0 {
    Err(Stop::withheld("x", "4", "made up", "stay below"))
} else {
    Ok(x)
});

fn inputs(sheet: &'static Sheet, x: &str, k: &str) -> (Inputs, Answer) {
    let outcome = evaluate(sheet, &Entry::of(&[("x", x), ("k", k)]));
    assert!(outcome.answer.is_complete(), "{:?}", outcome.answer.state);
    (outcome.inputs, outcome.answer)
}

#[test]
fn several_roots_are_all_found_and_put_back() {
    let turned = turn(&inputs(&SQUARE, "1", "1").0, "x", "y", 4.0).unwrap();
    let roots: Vec<f64> = turned
        .roots
        .iter()
        .map(|root| (root.x * 1e6).round() / 1e6)
        .collect();
    assert_eq!(roots, [-2.0, 2.0]);
    assert!(
        turned
            .roots
            .iter()
            .all(|root| (root.gives - 4.0).abs() < 1e-6)
    );
    assert!(turned.jumps.is_empty());
}

#[test]
fn a_touching_root_is_found() {
    let turned = turn(&inputs(&SQUARE, "1", "1").0, "x", "y", 0.0).unwrap();
    assert_eq!(turned.roots.len(), 1, "{turned:?}");
    assert!(turned.roots[0].x.abs() < 1e-3);
}

#[test]
fn none_is_said_with_the_reach() {
    let turned = turn(&inputs(&SQUARE, "1", "1").0, "x", "y", -5.0).unwrap();
    assert!(turned.roots.is_empty() && turned.jumps.is_empty());
    let (low, high) = turned.reach.unwrap();
    assert!(low >= 0.0 && (high - 100.0).abs() < 1e-9);
}

#[test]
fn a_jump_is_told_as_a_jump() {
    let turned = turn(&inputs(&JUMP, "1", "1").0, "x", "y", 5.0).unwrap();
    assert!(turned.roots.is_empty(), "{turned:?}");
    let jump = turned.jumps[0];
    assert!(
        (jump.x - 3.0).abs() < 1e-6
            && (jump.from - 3.0).abs() < 1e-3
            && (jump.to - 8.0).abs() < 1e-3,
        "{jump:?}"
    );
}

#[test]
fn a_stepped_result_lists_both_sides() {
    let turned = turn(&inputs(&JUMP, "1", "1").0, "x", "n", 5.0).unwrap();
    assert!(turned.roots.is_empty());
    assert_eq!(turned.below.unwrap().gives, 2.0);
    assert_eq!(turned.above.unwrap().gives, 8.0);
}

#[test]
fn the_range_of_a_tolerance_holds_the_inside_too() {
    let (inputs, answer) = inputs(&SQUARE, "0.5 +- 1", "1 +- 0.5");
    let found = spread(&inputs, &answer).unwrap();
    let y = &found.lines[0];
    // x from -0.5 to 1.5, k from 0.5 to 1.5: least 0 at x = 0 (inside), most 1.5 × 2.25
    assert!(
        y.low.abs() < 1e-12 && (y.high - 3.375).abs() < 1e-12,
        "{y:?}"
    );
    assert_eq!(y.driver, "x");
    assert!(!found.added);
    let pick = &found.picks[0];
    assert_eq!(
        (pick.field, pick.end, pick.becomes.as_str()),
        ("x", End::High, "large")
    );
}

#[test]
fn a_fault_at_an_end_is_shown() {
    let (inputs, answer) = inputs(&GAP, "3.5 +- 1", "1");
    let found = spread(&inputs, &answer).unwrap();
    assert_eq!(found.faults.len(), 1);
    let place = found.faults[0].places[0];
    assert_eq!((place.field, place.end), ("x", Some(End::High)));
    // the stretch without an answer begins past 4, where the sheet stops
    assert!(
        (place.low - 4.0).abs() < 1e-4 && place.high == 4.5,
        "{place:?}"
    );
}

#[test]
fn a_sweep_marks_the_entry_and_leaves_gaps_open() {
    let swept = sweep(&inputs(&GAP, "3.5", "1").0, "x", "y").unwrap();
    assert_eq!(swept.own, Some((3.5, 3.5)));
    assert!(
        swept.points.iter().any(|(_, y)| y.is_none())
            && swept.points.iter().any(|(_, y)| y.is_some())
    );
}

#[test]
fn every_sheet_takes_every_power() {
    for sheet in sheets::ALL {
        for pairs in sheet.examples {
            let outcome = evaluate(sheet, &Entry::of(pairs));
            for (field, now) in sheet.fields.iter().zip(&outcome.fields) {
                if !now.applies || !matches!(field.kind, FieldKind::Quantity { .. }) {
                    continue;
                }
                for line in &outcome.answer.lines {
                    let Some(base) = line.value.base() else {
                        continue;
                    };
                    if let Some(turned) = turn(&outcome.inputs, field.id, line.id, base) {
                        for root in &turned.roots {
                            let (unit, digit) = line.value.last_digit(System::Inch).unwrap();
                            let half = 0.5 * digit;
                            let off = (unit.from_base(root.gives) - unit.from_base(base)).abs();
                            assert!(
                                !root.met || off <= 1.001 * half,
                                "{} {} {}",
                                sheet.id,
                                field.id,
                                line.id
                            );
                        }
                        // the entry itself is always among the finds, and the work is bounded
                        let found = turned.roots.iter().any(|root| root.met)
                            || turned.has_no_effect
                            || !turned.intervals.is_empty();
                        assert!(
                            found || outcome.inputs.number(field.id).is_none(),
                            "{} {} {}: {turned:?}",
                            sheet.id,
                            field.id,
                            line.id
                        );
                        assert!(turned.evaluations <= 1500, "{}", turned.evaluations);
                    }
                    if let Some(swept) = sweep(&outcome.inputs, field.id, line.id) {
                        assert!(!swept.points.is_empty());
                    }
                }
            }
        }
    }
}

#[test]
fn a_tolerance_never_narrows_what_it_is_put_on() {
    for sheet in sheets::ALL {
        for pairs in sheet.examples {
            let plain = Entry::of(pairs);
            for field in sheet.fields.iter().filter(|field| field.is_measured) {
                let Some(text) = plain.get(field.id) else {
                    continue;
                };
                let mut entry = plain.clone();
                entry.set(field.id, &format!("{text} +- 0.001"));
                let outcome = evaluate(sheet, &entry);
                if !outcome.answer.is_complete() {
                    continue;
                }
                let found = spread(&outcome.inputs, &outcome.answer)
                    .unwrap_or_else(|| panic!("{} {}", sheet.id, field.id));
                for line in &found.lines {
                    let base = outcome.answer.get(line.id).unwrap().value.base().unwrap();
                    assert!(
                        line.low <= base && base <= line.high,
                        "{} {} {}",
                        sheet.id,
                        field.id,
                        line.id
                    );
                }
            }
        }
    }
}
