//! Threads, drills, pins, dowels, fits and lengths: each caution and each refusal on both sides of its limit, the words that must
//! stand beside a figure, and the same drill named by sheet, list and look-up. Bounds are named beside each test.

#![allow(
    clippy::unwrap_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test says what it could not find"
)]

use benchslate_core::quantity::{Length, Pitch, System};
use benchslate_core::search::Index;
use benchslate_core::sheet::{Entry, Outcome, State, evaluate};
use benchslate_core::sheets;
use benchslate_core::thread::{Across, identify};

fn ask(sheet: &str, entry: &[(&str, &str)]) -> Outcome {
    evaluate(sheets::by_id(sheet).unwrap(), &Entry::of(entry))
}

/// A result in inches (or as its words stand).
fn text(outcome: &Outcome, id: &str) -> String {
    outcome
        .answer
        .get(id)
        .map_or_else(String::new, |line| line.value.text_with_unit(System::Inch))
}

fn says(outcome: &Outcome, id: &str) -> String {
    outcome
        .answer
        .get(id)
        .map_or_else(String::new, |line| line.says.to_string())
}

fn fault(outcome: &Outcome) -> String {
    outcome
        .faults()
        .map(benchslate_core::sheet::Fault::text)
        .collect()
}

/// Whether a caution stands, and whether it stops.
fn caution(outcome: &Outcome, id: &str) -> Option<bool> {
    assert!(outcome.answer.is_complete(), "{}", fault(outcome));
    outcome.answer.caution(id).map(|caution| caution.stop)
}

/// A table of entries that differ in one field, each with what a caution is to be.
fn both_sides(
    sheet: &str,
    id: &str,
    common: &[(&str, &str)],
    field: &'static str,
    cases: &[(&str, Option<bool>)],
) {
    for (typed, wanted) in cases {
        let entry = [common, &[(field, *typed)]].concat();
        assert_eq!(
            caution(&ask(sheet, &entry), id),
            *wanted,
            "{sheet} {id}: {field} {typed}"
        );
    }
}

const STOP: Option<bool> = Some(true);
const NOTE: Option<bool> = Some(false);

// ASME B1.1 minor diameters of 2B, from its table: 9/16-18 0.502 to 0.515, 5/8-18 0.565 to 0.578, 5/8-24 0.580 to 0.590.
#[test]
fn a_drill_outside_the_minor_diameter_says_so_first() {
    for (thread, set, drill, first, within) in [
        (
            "9/16-18",
            "usual",
            "33/64 in",
            "0.0006 in over the largest",
            "12.9 mm",
        ),
        (
            "9/16-18",
            "all-inch",
            "1/2 in",
            "0.0020 in under the smallest",
            "12.9 mm",
        ),
        (
            "5/8-18",
            "usual",
            "37/64 in",
            "0.0001 in over the largest",
            "14.5 mm",
        ),
        (
            "5/8-24",
            "usual",
            "37/64 in",
            "0.0019 in under the smallest",
            "14.75 mm",
        ),
    ] {
        let outcome = ask("tap-drill", &[("thread", thread), ("drills", set)]);
        assert_eq!(text(&outcome, "drill"), drill, "{thread} {set}");
        let says = says(&outcome, "drill");
        assert!(says.starts_with(first), "{thread}: {says}");
        assert!(says.contains(within), "{thread}: {says}");
        assert_eq!(caution(&outcome, "outside-minor-limits"), STOP);
        assert_eq!(outcome.answer.cautions[0].id, "outside-minor-limits");
    }
    for thread in ["1/4-20", "3/8-16", "M6", "M10x1.25", "#12-32"] {
        let outcome = ask("tap-drill", &[("thread", thread)]);
        assert_eq!(caution(&outcome, "outside-minor-limits"), None, "{thread}");
        assert!(says(&outcome, "drill").starts_with("Nearest in a full"));
    }
    // limits of the tapped hole hold after forming: no drill is held against them
    let formed = ask("tap-drill", &[("thread", "9/16-18"), ("tap", "form")]);
    assert_eq!(caution(&formed, "outside-minor-limits"), None);
}

// Whoever asks for less thread than the class allows gets it, and is told.
#[test]
fn the_percent_wanted_goes_before_the_class() {
    let outcome = ask("tap-drill", &[("thread", "1/4-20"), ("share", "55 pct")]);
    assert_eq!(text(&outcome, "drill"), "No. 3"); // 0.213 in: 57 %, over 0.207 in
    assert_eq!(caution(&outcome, "outside-minor-limits"), STOP);
}

// ISO 2306 core-hole drills, as carried in an open-source library (read): M1.6 1.25, M1.8 1.45 (D − P), M2.2 1.75, M2.5 2.05 mm.
#[test]
fn twentieths_of_a_millimeter_are_in_the_sets_that_have_them() {
    for (thread, drill) in [
        ("M1.6", "1.25 mm"),
        ("M1.8", "1.45 mm"),
        ("M2.2", "1.75 mm"),
        ("M2.5", "2.05 mm"),
    ] {
        for set in ["usual", "metric-fine"] {
            let outcome = ask("tap-drill", &[("thread", thread), ("drills", set)]);
            assert_eq!(text(&outcome, "drill"), drill, "{thread} {set}");
        }
        // of inch and metric drills together another may be nearer still: No. 46 for M2.5
        let all = ask("tap-drill", &[("thread", thread), ("drills", "all")]);
        let rows = &all.answer.table_by_id("drills").unwrap().rows;
        assert!(
            rows.iter()
                .any(|row| row.owned && row.cells[0].text(System::Inch) == drill)
        );
        let tenths = ask("tap-drill", &[("thread", thread), ("drills", "metric")]);
        assert_ne!(text(&tenths, "drill"), drill, "{thread}");
    }
}

// Until a set is named an inch thread takes inch drills and a metric one metric drills; the charts' own drills.
#[test]
fn look_up_list_and_sheet_name_one_drill() {
    let sheet = sheets::by_id("tap-drill").unwrap();
    let mut rows = 0;
    for find in sheet.finds.unwrap()() {
        let (_, call) = &find.entry[0];
        let outcome = ask("tap-drill", &[("thread", call)]);
        let drill = text(&outcome, "drill");
        assert!(
            find.aside.starts_with(&format!("{drill}, ")),
            "{call}: {} against {drill}",
            find.aside
        );
        // the metric list ends at 50 mm
        if find.aside.contains("in a full") {
            assert_eq!(
                drill.ends_with(" mm"),
                call.starts_with('M'),
                "{call} {drill}"
            );
        }
        let chosen: Vec<String> = outcome
            .answer
            .table_by_id("drills")
            .unwrap()
            .rows
            .iter()
            .filter(|row| row.chosen)
            .map(|row| row.cells[0].text(System::Inch))
            .collect();
        assert_eq!(chosen, [drill], "{call}");
        rows += 1;
    }
    assert!(rows > 150, "{rows}");
    for (thread, drill) in [
        ("3/8-16", "5/16 in"),
        ("M6", "5 mm"),
        ("M8", "6.8 mm"),
        ("M10", "8.5 mm"),
        ("1/2-13", "27/64 in"),
        ("1/4-28", "No. 3"),
        ("#8-32", "No. 29"),
        ("5/8-11", "17/32 in"),
    ] {
        assert_eq!(
            text(&ask("tap-drill", &[("thread", thread)]), "drill"),
            drill
        );
    }
}

#[test]
fn your_set_is_said_of_a_set_that_was_named_alone() {
    for (sheet, entry) in [
        ("tap-drill", vec![("thread", "1/4-20")]),
        ("tap-drill", vec![("thread", "M6")]),
        ("clearance-hole", vec![("screw", "1/4")]),
        ("clearance-hole", vec![("screw", "M8")]),
        ("taper-pin", vec![("number", "3"), ("length", "1-1/2")]),
        ("drill", vec![("drill", "#7")]),
    ] {
        let all = |entry: &[(&str, &str)]| {
            let outcome = ask(sheet, entry);
            let owned = outcome
                .answer
                .tables
                .iter()
                .any(|table| table.rows.iter().any(|row| row.owned));
            let words: String = outcome
                .answer
                .lines
                .iter()
                .map(|line| line.says.to_string())
                .collect();
            (owned, words.contains("your set"))
        };
        assert_eq!(all(&entry), (false, false), "{sheet} {entry:?}");
        let named = [entry.as_slice(), &[("drills", "all")]].concat();
        assert!(all(&named).0, "{sheet} {entry:?}");
    }
    for (set, place) in [("usual", "in a full inch set"), ("all-inch", "in your set")] {
        let outcome = ask("tap-drill", &[("thread", "1/4-20"), ("drills", set)]);
        assert!(says(&outcome, "drill").contains(place));
    }
}

// 100 (D − d) / (1.299 P): M6 with 5 mm 77 %, 4.5 mm 115 %, 5.6 mm 31 %, 5.7 mm 23 %.
#[test]
fn the_drill_in_hand_gets_a_percent_and_one_verdict() {
    for (drill, percent, verdict, stop) in [
        ("4.5 mm", "115%", "too small", STOP),
        (
            "4.75 mm",
            "96%",
            "small, outside the limits of its class",
            None,
        ),
        ("5 mm", "77%", "serves", None),
        (
            "5.3 mm",
            "54%",
            "large, outside the limits of its class",
            None,
        ),
        (
            "5.6 mm",
            "31%",
            "large, outside the limits of its class",
            None,
        ),
        ("5.7 mm", "23%", "too large", STOP),
        ("6 mm", "0%", "too large", STOP),
    ] {
        let outcome = ask("tap-drill", &[("thread", "M6"), ("hand", drill)]);
        let share = text(&outcome, "hand-share");
        assert_eq!(share, percent, "{drill}");
        assert_eq!(text(&outcome, "hand-says"), verdict, "{drill}");
        assert_eq!(caution(&outcome, "hand-drill"), stop, "{drill}");
    }
    let none = ask("tap-drill", &[("thread", "M6")]);
    assert!(none.answer.get("hand-share").is_none());
    let within = ask("tap-drill", &[("thread", "M6"), ("hand", "5 mm")]);
    assert!(says(&within, "hand-says").contains("within the minor diameter"));
}

// Common practice: 55 to 80 % for a cut thread.
#[test]
fn much_and_little_thread_are_noted_past_their_ends() {
    let common = [("thread", "1/4-20"), ("drills", "all-inch")];
    both_sides(
        "tap-drill",
        "much-thread",
        &common,
        "share",
        &[("78 pct", None), ("82 pct", NOTE)],
    );
    both_sides(
        "tap-drill",
        "little-thread",
        &common,
        "share",
        &[("57 pct", None), ("48 pct", NOTE)],
    );
    both_sides(
        "tap-drill",
        "form-tap",
        &[("thread", "1/4-20")],
        "tap",
        &[("cut", None), ("form", NOTE)],
    );
}

// ASME B1.1: 2A of #12-24 is 0.2078 to 0.2150 in over the crests; 1/4-20 2A 0.2408 to 0.2489.
#[test]
fn the_thread_whose_limits_hold_the_reading_comes_first() {
    for (size, tpi, name) in [
        (0.215, 24.0, "#12-24 UNC"),
        (0.214, 24.0, "#12-24 UNC"),
        (0.213, 24.0, "#12-24 UNC"),
        // over the basic 0.216 it is no #12; 7/32 BSW is 0.2188
        (0.2175, 24.0, "7/32 BSW"),
        (0.189, 28.0, "#10-28 UNS"),
        (0.247, 20.0, "1/4-20 UNC"),
        (0.242, 20.0, "1/4-20 UNC"),
        (0.995, 14.0, "1-14 UNS"),
        (0.995, 12.0, "1-12 UNF"),
        (2.875, 8.0, "2-1/2 NPT"),
        (3.49, 8.0, "3 NPT"),
        (0.266, 22.0, "#16-22 obsolete A.S.M.E."),
        (0.448, 16.0, "#30-16 obsolete A.S.M.E."),
    ] {
        let found = identify(
            Across::Screw,
            Length::from_inches(size),
            Pitch::from_tpi(tpi),
            10,
        );
        assert_eq!(found[0].standard.name(), name, "{size} {tpi}");
        assert!(found[0].inside, "{size} {tpi}");
    }
}

// The numbered screws of 1907: 0.060 in + 0.013 in a number.
#[test]
fn old_numbered_screws_are_told_and_marked_obsolete() {
    let outcome = ask(
        "name-thread",
        &[("diameter", "0.242 in"), ("pitch", "24 tpi")],
    );
    let rows = &outcome.answer.table_by_id("candidates").unwrap().rows;
    let old = rows
        .iter()
        .find(|row| row.cells[0].text(System::Inch).starts_with("#14-24"))
        .unwrap();
    assert!(
        old.cells
            .iter()
            .any(|cell| cell.text(System::Inch).contains("obsolete"))
    );
    for number in [14, 16, 18, 20, 24, 30] {
        let size = 0.060 + 0.013 * f64::from(number);
        let listed = benchslate_core::standards::threads::look_alike_threads::LOOK_ALIKES
            .iter()
            .filter(|one| one.size.starts_with(&format!("#{number}-")))
            .inspect(|one| assert!((one.major.inches() - size).abs() < 1e-9));
        assert!(listed.count() >= 2, "{number}");
    }
    for (size, pitch, wanted) in [("0.266 in", "22 tpi", NOTE), ("0.247 in", "20 tpi", None)] {
        let outcome = ask("name-thread", &[("diameter", size), ("pitch", pitch)]);
        assert_eq!(caution(&outcome, "obsolete-thread"), wanted);
    }
}

#[test]
fn a_reading_outside_every_limit_says_how_far() {
    // 1/4-20: nothing larger than 0.2500 in; 3/8-16 2A not under 0.3643 in
    let over = ask(
        "name-thread",
        &[("diameter", "0.2515 in"), ("pitch", "20 tpi")],
    );
    assert_eq!(text(&over, "name"), "1/4-20 UNC");
    assert!(
        says(&over, "name").contains("0.0015 in over its largest"),
        "{}",
        says(&over, "name")
    );
    let under = ask(
        "name-thread",
        &[("diameter", "0.361 in"), ("pitch", "16 tpi")],
    );
    assert!(
        says(&under, "name").contains("under its smallest"),
        "{}",
        says(&under, "name")
    );
    let held = ask(
        "name-thread",
        &[("diameter", "0.370 in"), ("pitch", "16 tpi")],
    );
    assert!(
        !says(&held, "name").contains("its largest"),
        "{}",
        says(&held, "name")
    );
    assert_eq!(
        (text(&held, "size-min"), text(&held, "size-max")),
        ("0.3643 in".into(), "0.3750 in".into())
    );
}

#[test]
fn pipe_threads_and_two_angles_are_cautioned_where_they_are_near() {
    let of = |diameter, pitch| ask("name-thread", &[("diameter", diameter), ("pitch", pitch)]);
    assert_eq!(caution(&of("0.405 in", "27 tpi"), "pipe-thread"), NOTE);
    assert_eq!(caution(&of("0.247 in", "20 tpi"), "pipe-thread"), None);
    assert_eq!(caution(&of("0.247 in", "20 tpi"), "chase-thread"), STOP); // 1/4 BSW has 55 degrees
    assert_eq!(caution(&of("0.497 in", "13 tpi"), "chase-thread"), None); // 1/2 BSW has 12
    assert_eq!(caution(&of("0.189 in", "28 tpi"), "chase-thread"), None); // 1 BA is 0.020 in off
}

// ISO 273: M4 normal 4.5 mm; No. 16 is 0.1770 in = 4.496 mm.
#[test]
fn a_drill_a_little_under_a_clearance_hole_is_said_to_be_under() {
    let under = ask("clearance-hole", &[("screw", "M4"), ("drills", "all-inch")]);
    assert!(
        says(&under, "drill").contains("under the hole of the table"),
        "{}",
        says(&under, "drill")
    );
    let exact = ask("clearance-hole", &[("screw", "M4")]);
    assert_eq!(text(&exact, "drill"), "4.5 mm");
    assert!(!says(&exact, "drill").contains("under"));
}

// ASME B18.8.2 1:48 and ISO 2339 1:50, each with 15 % of room: 0.0170 to 0.02396 in over 1 in.
#[test]
fn a_slope_of_no_pin_is_refused() {
    for (large, answers) in [
        ("0.2168", false),
        ("0.2172", true),
        ("0.2200", true),
        ("0.22083", true),
        ("0.2238", true),
        ("0.2241", false),
    ] {
        let outcome = ask(
            "taper-pin",
            &[
                ("from", "pin"),
                ("large", large),
                ("small", "0.2"),
                ("between", "1"),
            ],
        );
        assert_eq!(
            outcome.answer.is_complete(),
            answers,
            "{large}: {}",
            fault(&outcome)
        );
    }
    let of = |large: &'static str| {
        fault(&ask(
            "taper-pin",
            &[
                ("from", "pin"),
                ("large", large),
                ("small", "0.2500"),
                ("between", "3"),
            ],
        ))
    };
    let half = of("0.2812");
    assert!(half.contains("1:96") && half.contains("one side"), "{half}");
    let other = of("0.3000"); // 1:60
    assert!(
        other.contains("1:60") && !other.contains("one side"),
        "{other}"
    );
}

// No. 2/0: 0.1410 in at the large end, 0.12017 in an inch along.
#[test]
fn ends_that_agree_with_no_size_are_noted() {
    let of = |large: &'static str, small: &'static str| {
        ask(
            "taper-pin",
            &[
                ("from", "pin"),
                ("large", large),
                ("small", small),
                ("between", "1"),
            ],
        )
    };
    assert_eq!(caution(&of("0.1455", "0.1247"), "ends-off"), None);
    assert_eq!(caution(&of("0.1465", "0.1257"), "ends-off"), NOTE);
}

// Cross pin of a quarter to a third of the shaft, common practice. No. 4, 1 in long: 0.2396 in in the middle.
#[test]
fn a_pin_too_large_for_its_shaft_is_cautioned() {
    let common = [("number", "4"), ("length", "1")];
    both_sides(
        "taper-pin",
        "shaft-weak",
        &common,
        "shaft",
        &[
            ("0.721", None),
            ("0.717", NOTE),
            ("0.481", NOTE),
            ("0.477", None),
        ],
    );
    both_sides(
        "taper-pin",
        "shaft-cut-through",
        &common,
        "shaft",
        &[
            ("0.717", None),
            ("0.481", None),
            ("0.477", STOP),
            ("0.2510", STOP),
        ],
    );
    let gone = ask(
        "taper-pin",
        &[("number", "4"), ("length", "1"), ("shaft", "0.2499")],
    );
    assert!(
        fault(&gone).contains("as large as this shaft"),
        "{}",
        fault(&gone)
    );
}

#[test]
fn the_other_cautions_of_a_taper_pin_have_two_sides() {
    use benchslate_core::pin::{StandardPin, TaperSeries};
    let three = StandardPin::all(TaperSeries::Inch)
        .into_iter()
        .find(|pin| pin.call() == "3")
        .unwrap();
    let (least, most) = three.usual_lengths();
    for (length, wanted) in [
        (least.inches() - 0.01, NOTE),
        (least.inches(), None),
        (most.inches(), None),
        (most.inches() + 0.01, NOTE),
    ] {
        let outcome = ask(
            "taper-pin",
            &[("number", "3"), ("length", &format!("{length:.4} in"))],
        );
        assert_eq!(caution(&outcome, "order-pin"), wanted, "{length}");
    }
    both_sides(
        "taper-pin",
        "stronger-pin",
        &[("number", "3"), ("length", "1-1/2")],
        "stress",
        &[("", None), ("6000 psi", NOTE)],
    );
    both_sides(
        "taper-pin",
        "any-length",
        &[("number", "3")],
        "length",
        &[("", NOTE), ("1-1/2", None)],
    );
    for entry in [
        vec![("number", "3")],
        vec![("number", "3"), ("length", "1-1/2")],
    ] {
        let outcome = ask("taper-pin", &entry);
        let out = outcome.answer.caution("drive-out").unwrap();
        assert!(out.text.contains("small end"));
        assert!(
            outcome
                .answer
                .caution("ream-taper")
                .unwrap()
                .text
                .contains("1/16 in")
        );
    }
}

// Machinery's Handbook, 31st ed., p. 227: d = √(4T / (π S D)); No. 3, 1-1/2 in long (0.20338 in) in a 3/4 in shaft at 6000 psi
// carries π/4 × 0.20338² × 6000 × 0.75 = 146.2 lbf in.
#[test]
fn a_torque_over_what_the_pin_carries_is_a_stop() {
    let common = [
        ("number", "3"),
        ("length", "1-1/2"),
        ("shaft", "3/4"),
        ("stress", "6000 psi"),
    ];
    both_sides(
        "taper-pin",
        "pin-overloaded",
        &common,
        "load",
        &[("145 in-lb", None), ("147.5 in-lb", STOP)],
    );
    let none = ask(
        "taper-pin",
        &[("number", "3"), ("length", "1-1/2"), ("load", "100 in-lb")],
    );
    assert_eq!(none.answer.state, State::Incomplete(vec!["shaft"]));
}

// Depth / 48 + gauge: 0.125 + 0.42/48 = 0.13375 in, No. 2/0 (0.1410) sticks out (0.1410 − 0.13375) × 48 = 0.348 in.
#[test]
fn gauge_and_worn_hole_need_no_length() {
    let gauge = ask(
        "taper-pin",
        &[("from", "gauge"), ("gauge", "1/8"), ("depth", "0.42")],
    );
    assert_eq!(text(&gauge, "face"), "0.1338 in");
    assert_eq!(text(&gauge, "pin"), "No. 2/0");
    let sinks = gauge.answer.get("sinks").unwrap().value.base().unwrap() / 25.4;
    assert!((sinks + 0.348).abs() < 0.0005, "{sinks}");
    assert!(gauge.answer.get("squeeze").is_some() && gauge.answer.get("small-end").is_none());
    let worn = ask("taper-pin", &[("from", "worn"), ("worn-large", "0.222")]);
    assert_eq!(text(&worn, "clean-at"), "0.2240 in");
    assert_eq!(text(&worn, "pin"), "No. 4");
    for entry in [
        vec![
            ("from", "worn"),
            ("worn-large", "0.222"),
            ("worn-small", "0.195"),
        ],
        vec![
            ("from", "gauge"),
            ("series", "metric"),
            ("gauge", "3 mm"),
            ("depth", "10 mm"),
        ],
    ] {
        let outcome = ask("taper-pin", &entry);
        assert_eq!(
            outcome.answer.state,
            State::Incomplete(vec!["length"]),
            "{entry:?}"
        );
    }
}

// The steeper pin binds at its large end, the flatter at its small end (geometry).
#[test]
fn which_end_binds_is_said() {
    let inch = ask("taper-pin", &[("number", "3"), ("length", "1")]);
    assert!(says(&inch, "telling").contains("binds at its large end"));
    let metric = ask("taper-pin", &[("series", "metric"), ("size", "6x40")]);
    assert!(says(&metric, "telling").contains("binds at its small end"));
}

// ASME B18.8.2, 1/4 in: hole 0.2495 to 0.2500, pin 0.2501 to 0.2503, oversize pin in 0.2503 to 0.2508 (raised by its 0.0008).
#[test]
fn a_measured_dowel_hole_gets_one_verdict_and_what_next() {
    for (hole, verdict, next) in [
        ("0.2489", "too tight: ream it", "Ream to 0.2495"),
        ("0.2491", "holds", "Within"),
        ("0.2500", "holds", "Within"),
        ("0.2502", "may hold, may not", "measure the pin"),
        ("0.2508", "slips", "oversize pin; else a step dowel"),
        (
            "0.2511",
            "slips",
            "too large for the oversize pin too; a step dowel",
        ),
        (
            "0.2515",
            "loose: neither holds nor locates",
            "next size, 5/16 in: ream both parts, clamped, to 0.3120 to 0.3125 in",
        ),
        (
            "0.2599",
            "loose: neither holds nor locates",
            "next size, 5/16 in: ream both parts, clamped, to 0.3120 to 0.3125 in",
        ),
    ] {
        let outcome = ask("dowel", &[("pin", "1/4"), ("hole", hole)]);
        assert_eq!(
            text(&outcome, "in-hole"),
            verdict,
            "{hole}: {}",
            fault(&outcome)
        );
        assert!(
            says(&outcome, "in-hole").contains(next),
            "{hole}: {}",
            says(&outcome, "in-hole")
        );
    }
    let common = [("pin", "1/4")];
    both_sides(
        "dowel",
        "hole-too-tight",
        &common,
        "hole",
        &[("0.2489", STOP), ("0.2491", None)],
    );
    both_sides(
        "dowel",
        "worn-hole",
        &common,
        "hole",
        &[("0.2502", None), ("0.2504", NOTE)],
    );
    for (hole, words) in [
        ("0.2601", "next size 5/16 in"),
        ("0.2399", "under the pin"),
        ("0.300", "no fit for this pin"),
    ] {
        let outcome = ask("dowel", &[("pin", "1/4"), ("hole", hole)]);
        assert!(
            fault(&outcome).contains(words),
            "{hole}: {}",
            fault(&outcome)
        );
    }
    let largest = ask("dowel", &[("pin", "1"), ("hole", "1.02")]);
    assert!(fault(&largest).contains("bushing"), "{}", fault(&largest));
}

#[test]
fn a_brittle_boss_is_noted_for_iron_alone() {
    both_sides(
        "dowel",
        "brittle-boss",
        &[("pin", "1/8")],
        "metal",
        &[("iron", NOTE), ("aluminium", None)],
    );
}

#[test]
fn the_look_up_of_a_dowel_has_the_hole_of_its_sheet() {
    let hit = Index::default()
        .find("1/4 dowel", System::Inch)
        .into_iter()
        .find(|hit| hit.sheet == "dowel")
        .unwrap();
    let figure = hit.answer.unwrap();
    let sheet = evaluate(sheets::by_id("dowel").unwrap(), &hit.entry);
    let first = sheet.answer.lines.first().unwrap();
    assert!(
        figure.starts_with(&first.value.text_with_unit(System::Inch)),
        "{figure}"
    );
}

// ISO 286: H7/g6 clearance, H7/k6 transition, H7/s6 interference at 3/4 in; LC2 clearance, LT3 transition, FN2 interference.
#[test]
fn before_you_press_stands_at_transition_and_interference_alone() {
    both_sides(
        "fit-limits",
        "interference",
        &[("size", "3/4 in")],
        "fit",
        &[
            ("H7/g6", None),
            ("H7/h6", None),
            ("H7/k6", STOP),
            ("H7/s6", STOP),
            ("LC2", None),
            ("LT3", STOP),
            ("FN2", STOP),
            ("H7", None),
        ],
    );
}

// A tenth of the size and half a millimeter: 0.0947 in at 3/4 in.
#[test]
fn a_measure_far_from_the_size_is_refused_on_both_sides() {
    for id in ["hole", "shaft"] {
        for (measure, answers) in [
            ("0.6552", false),
            ("0.6554", true),
            ("0.8446", true),
            ("0.8448", false),
        ] {
            let outcome = ask(
                "fit-limits",
                &[("size", "3/4 in"), ("fit", "H7/g6"), (id, measure)],
            );
            assert_eq!(outcome.answer.is_complete(), answers, "{id} {measure}");
            assert_eq!(
                fault(&outcome).contains("far from"),
                !answers,
                "{id} {measure}"
            );
        }
    }
}

// 20H7: 0 to +21 µm; 20g6: −7 to −20 µm (ISO 286-2).
#[test]
fn too_large_and_too_small_are_told_apart_to_the_limit() {
    for (hole, shaft, hole_says, shaft_says) in [
        ("20.021", "19.993", "within H7", "within g6"),
        (
            "20.022",
            "19.994",
            "1.0 \u{b5}m too large for H7",
            "1.0 \u{b5}m too large for g6",
        ),
        ("20", "19.98", "within H7", "within g6"),
        (
            "19.999",
            "19.979",
            "1.0 \u{b5}m too small for H7",
            "1.0 \u{b5}m too small for g6",
        ),
    ] {
        let outcome = ask(
            "fit-limits",
            &[
                ("size", "20 mm"),
                ("fit", "H7/g6"),
                ("hole", &format!("{hole} mm")),
                ("shaft", &format!("{shaft} mm")),
            ],
        );
        // in micrometers although results are in inches: the size was typed in millimeters
        assert_eq!(text(&outcome, "hole-check"), hole_says);
        assert_eq!(text(&outcome, "shaft-check"), shaft_says);
    }
    let inch = ask("fit-limits", &[("size", "3/4 in"), ("fit", "H7/g6")]);
    assert!(says(&inch, "hole-most").contains("thou"));
}

#[test]
fn the_ends_of_the_fit_tables_are_named_as_they_are() {
    let of =
        |size: &'static str, fit: &'static str| ask("fit-limits", &[("size", size), ("fit", fit)]);
    assert!(of("19.69 in", "RC3").answer.is_complete());
    assert!(fault(&of("19.7 in", "RC3")).contains("19.69 in"));
    assert!(of("500 mm", "H7/g6").answer.is_complete());
    assert!(fault(&of("501 mm", "H7/g6")).contains("500 mm"));
}

#[test]
fn usual_fits_stand_by_their_loosest_pair() {
    for size in ["1/4 in", "3/4 in", "1 in", "2 in", "5 in"] {
        let outcome = ask("fit-limits", &[("size", size), ("fit", "FN1")]);
        let rows = &outcome.answer.table_by_id("usual").unwrap().rows;
        let clearances: Vec<f64> = rows
            .iter()
            .map(|row| row.cells[1].base().unwrap())
            .collect();
        assert!(
            clearances.windows(2).all(|pair| pair[0] >= pair[1] - 1e-6),
            "{size}: {clearances:?}"
        );
        let at = |fit: &str| {
            rows.iter()
                .position(|row| row.cells[0].text(System::Inch) == fit)
        };
        assert!(at("LN2") < at("FN1"), "{size}");
    }
    let press = ask("fit-limits", &[("size", "1 in"), ("fit", "FN2")]);
    let line = press.answer.get("loosest").unwrap();
    assert_eq!(line.label, "Loosest pair");
    assert!(line.says.contains("Interference 0.00"), "{}", line.says);
    let free = ask("fit-limits", &[("size", "1 in"), ("fit", "RC4")]);
    assert_eq!(free.answer.get("loosest").unwrap().label, "Max. clearance");
}

#[test]
fn the_other_notes_of_a_fit_have_two_sides() {
    both_sides(
        "fit-limits",
        "two-systems",
        &[("size", "1 in")],
        "fit",
        &[("H7/g6", None), ("RC4", NOTE)],
    );
    // a textbook's appendix after B4.1 (R2004) differs above 9.85 in
    both_sides(
        "fit-limits",
        "second-print",
        &[("fit", "RC4")],
        "size",
        &[("9.85 in", None), ("9.86 in", NOTE)],
    );
    // FN1 from 3.94 to 4.73 in is from memory
    both_sides(
        "fit-limits",
        "measure-warm",
        &[("fit", "FN1")],
        "size",
        &[
            ("3.94 in", None),
            ("3.95 in", NOTE),
            ("4.73 in", NOTE),
            ("4.74 in", None),
        ],
    );
}

// 25.4 mm = 1 in; 11.1 mm = 0.43701 in, 0.00049 in under 7/16.
#[test]
fn a_nearest_size_is_too_large_or_too_small_in_words() {
    for (typed, id, words) in [
        ("11.1 mm", "fraction-64-off", "Too large by that much."),
        ("11.13 mm", "fraction-64-off", "Too small by that much."),
        ("7/16", "fraction-64-off", "Exactly this size."),
        ("0.2005", "drill-off", "Too large by that much."),
        ("0.2015", "drill-off", "Too small by that much."),
    ] {
        let outcome = ask("length", &[("length", typed)]);
        assert_eq!(says(&outcome, id), words, "{typed}");
    }
    let third = ask("length", &[("length", "1/3")]);
    for step in &third.answer.steps {
        assert!(
            !step.lines.iter().any(|line| line.contains("333333")),
            "{:?}",
            step.lines
        );
    }
}

// ASME B1.1: allowance of 3/8-16 2A 0.0013 in, of 3A none; ISO 965-1: M10 6g 32 µm.
#[test]
fn the_allowance_of_a_thread_is_a_figure() {
    for (thread, inches) in [
        ("3/8-16", 0.0013),
        ("3/8-16 UNC-3A", 0.0),
        ("M10", 0.032 / 25.4),
    ] {
        let outcome = ask("thread", &[("thread", thread)]);
        let got = outcome
            .answer
            .get("allowance")
            .unwrap()
            .value
            .base()
            .unwrap()
            / 25.4;
        assert!((got - inches).abs() < 0.00001, "{thread}: {got}");
    }
}
