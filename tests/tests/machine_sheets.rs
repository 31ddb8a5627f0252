//! Do the machine sheets answer with the figures of the sources, not only the functions behind them?
//!
//! "Worked" stands for arithmetic done apart from this program from the rule that is named. The functions themselves are checked
//! in `isolate` and `machine_drives`.

#![allow(clippy::unwrap_used, clippy::indexing_slicing, clippy::panic)] // helpers of the checks stop where there is no answer

use benchslate_core::quantity::System;
use benchslate_core::sheet::{Answer, Entry, evaluate};
use benchslate_core::sheets;
use benchslate_tests::near;

fn answer(id: &str, pairs: &[(&str, &str)]) -> Answer {
    let found = evaluate(sheets::by_id(id).unwrap(), &Entry::of(pairs));
    let faults: Vec<String> = found
        .faults()
        .map(benchslate_core::sheet::Fault::text)
        .collect();
    assert!(
        found.answer.is_complete(),
        "{id} {pairs:?}: {:?} {faults:?}",
        found.answer.state
    );
    found.answer
}
fn said(answer: &Answer, line: &str) -> String {
    answer.get(line).unwrap().value.text(System::Inch)
}
fn base(answer: &Answer, line: &str) -> f64 {
    answer.get(line).unwrap().value.base().unwrap()
}
/// A cell of the answer's table, as printed.
fn cell(answer: &Answer, table: &str, row: usize, column: usize) -> String {
    answer.table_by_id(table).unwrap().rows[row].cells[column].text(System::Inch)
}
fn list(values: &[f64], unit: &str) -> String {
    let values: Vec<String> = values.iter().map(|v| format!("{v:.4} {unit}")).collect();
    values.join(";")
}

/// Worked, F = 60 s / t: travel in, turns, time s, feed in/min; the plate is put at that feed, so the sheet must find no difference,
/// and at half of it, so that it must find twice.
#[test]
fn timed_feeds() {
    for (travel, turns, time, feed) in [
        (5.0, 1, 60.0, 5.0),
        (0.5, 1, 60.0, 0.5),
        (2.0, 1, 6.0, 20.0),
        (1.25, 1, 20.4, 3.6765),
        (6.0, 1, 19.1, 18.8482),
        (0.25, 4, 12.1, 4.9587),
        (0.2, 10, 240.0, 0.5),
    ] {
        for (plate, factor) in [(feed, 1.0), (feed / 2.0, 2.0)] {
            let row = format!("{plate} ipm~{travel} in~{time} s~{turns}");
            let a = answer("feed-check", &[("timings", &row)]);
            assert!(
                near(base(&a, "factor"), factor, 0.0001 * factor),
                "{row}: {}",
                base(&a, "factor")
            );
            assert_eq!(cell(&a, "settings", 0, 1), format!("{feed:.3}"), "{row}");
        }
    }
}

/// Worked, root sum of squares of relative parts (JCGM 100:2008, 5.1.6): relative u percent, twice of it on the sheet. Watch and thumb
/// is preset to 0.1 s: Faux and Godolphin (Am. J. Phys. 87, 2019, abstract) have 0.07 s for one event, start and stop √2 × 0.07.
#[test]
fn what_measuring_explains() {
    for (row, watch, percent) in [
        ("20 ipm~10 in~30 s", "0.1 s", 0.334),
        ("0.5 ipm~0.5 in~60 s", "0.1 s", 0.433),
        ("5 ipm~2.5 in~30 s", "0.1 s", 0.343),
        ("20 ipm~2 in~6 s", "0.3 s", 5.001),
    ] {
        let a = answer("feed-check", &[("timings", row), ("watch", watch)]);
        assert_eq!(
            cell(&a, "settings", 0, 3),
            format!("{:.1}", 2.0 * percent),
            "{row}"
        );
    }
    let a = answer("feed-check", &[("timings", "20 ipm~10 in~30 s")]);
    // worked: 1 % at 0.1 s is 10 s, at 20 in/min 3.3333 in
    assert!(near(base(&a, "travel-wanted") / 25.4, 3.3333, 0.001));
    assert!(near(0.07 * core::f64::consts::SQRT_2, 0.1, 0.0015));
}

/// Lecture slides, nine-speed gear box (PSG data book p. 7.20): 3(1) 3(3), 1.333. DIN 804 (March 1977): derived series R20/2, R20/4 (two,
/// named by a motor's 1400 and 2800 rpm; from memory), R20/6. ISO 3: R5, R20 and R80 step by 1.58, 1.12 and 1.03.
#[test]
fn plates_of_the_series() {
    let nine = [
        180.0, 236.0, 315.0, 425.0, 560.0, 750.0, 1000.0, 1320.0, 1800.0,
    ];
    let a = answer("plate-check", &[("spindle-steps", &list(&nine, "rpm"))]);
    assert!(near(base(&a, "ratio"), 1.333, 0.001));
    assert!(near(base(&a, "ratio-ends"), 1.333, 0.001));
    assert_eq!(said(&a, "series"), "one geometric series");
    let a = answer(
        "gear-stages",
        &[("box", "speeds"), ("spindle-steps", &list(&nine, "rpm"))],
    );
    assert_eq!(
        said(&a, "structure"),
        "3 \u{d7} 3 positions, moving 1 and 3 settings"
    );
    for (values, terms) in [
        (
            &[
                112.0, 140.0, 180.0, 224.0, 280.0, 355.0, 450.0, 560.0, 710.0, 900.0,
            ][..],
            2.0,
        ),
        (&[140.0, 224.0, 355.0, 560.0, 900.0, 1400.0], 4.0),
        (&[112.0, 180.0, 280.0, 450.0, 710.0, 1120.0], 4.0),
        (
            &[
                11.2, 22.4, 45.0, 90.0, 180.0, 355.0, 710.0, 1400.0, 2800.0, 5600.0,
            ],
            6.0,
        ),
    ] {
        let a = answer("plate-check", &[("spindle-steps", &list(values, "rpm"))]);
        assert_eq!(said(&a, "series"), "one geometric series");
        // R20 steps by the twentieth root of ten
        assert!(near(
            base(&a, "ratio"),
            libm::pow(10.0, terms / 20.0),
            0.012
        ));
        let rows = &a.table_by_id("steps").unwrap().rows;
        assert_eq!(rows.len(), values.len());
        for row in rows {
            assert_eq!(
                row.cells[0].text(System::Inch),
                row.cells[3].text(System::Inch),
                "each is a preferred number"
            );
        }
    }
    for (root, printed) in [(5.0, 1.58), (20.0, 1.12), (80.0, 1.03)] {
        let plate: Vec<f64> = (0..6)
            .map(|n| 100.0 * libm::pow(10.0, f64::from(n) / root))
            .collect();
        let a = answer("plate-check", &[("spindle-steps", &list(&plate, "rpm"))]);
        assert!(near(base(&a, "ratio"), printed, 0.005), "R{root}");
    }
}

/// z = p1(1) p2(p1) p3(p1 p2)…: machine tool design texts (Acherkan; Mehta), from memory; 3(1) 2(2) 2(6) has 12 settings and 10 speeds
/// (worked).
#[test]
fn structures_of_a_plate() {
    for (places, formula) in [
        (9, "3(1) \u{d7} 3(3)"),
        (16, "2(1) \u{d7} 2(2) \u{d7} 2(4) \u{d7} 2(8)"),
        (18, "3(1) \u{d7} 3(3) \u{d7} 2(9)"),
    ] {
        let plate: Vec<f64> = (0..places).map(|n| libm::pow(1.26, f64::from(n))).collect();
        let a = answer("gear-stages", &[("feed-steps", &list(&plate, "ipm"))]);
        let table = a.table_by_id("structures").unwrap();
        let row = table
            .rows
            .iter()
            .find(|row| row.cells[0].text(System::Inch) == formula)
            .unwrap_or_else(|| panic!("{formula}"));
        assert_eq!(row.cells[1].text(System::Inch), places.to_string());
        assert_eq!(row.cells[2].text(System::Inch), "0", "every step once");
    }
    let a = answer(
        "which-pair",
        &[("plate", "none"), ("stages", "3~1;2~2;2~6")],
    );
    assert_eq!(said(&a, "settings"), "12");
    assert!(
        a.get("settings")
            .unwrap()
            .says
            .starts_with("10 speeds: 2 settings repeat")
    );
}

/// Drawn stages of one sum (18/47 …, 51/39 …, 21/55 …; module 3 is an example), and the nearest pair of a sum (worked): sum, ratios,
/// gears, farthest off in percent, centre distance at module 3.
#[test]
fn gears_for_ratios() {
    for (sum, ratios, gears, off, centre) in [
        (65, "0.38298;0.75676;1.5", "18/47, 28/37, 39/26", 0.0, 97.5),
        (90, "1.30769;1.64706", "51/39, 56/34", 0.0, 135.0),
        (76, "0.38182;0.61702;1", "21/55, 29/47, 38/38", 0.0, 114.0),
        (60, "0.7937", "27/33", 3.08, 90.0),
        (72, "0.5", "24/48", 0.0, 108.0),
        (58, "0.5675", "21/37", 0.01, 87.0),
        (60, "1.122", "32/28", 1.86, 90.0),
    ] {
        let sum = sum.to_string();
        let a = answer(
            "gear-stages",
            &[
                ("find", "gears"),
                ("ratios", ratios),
                ("sum-low", &sum),
                ("sum-high", &sum),
                ("least", "12"),
                ("module", "3 mm"),
            ],
        );
        assert_eq!(said(&a, "gears"), gears);
        assert!(near(base(&a, "worst") * 100.0, off, 0.005), "{gears}");
        assert!(near(base(&a, "centre"), centre, 1e-9));
    }
}

/// Machine tool design texts: a pair of a feed box from 1/5 to 2.8, of a speed box from 1/4 to 2; ranges 14 and 8. From memory.
#[test]
fn customary_limits_of_a_pair() {
    for (kind, ratio, says) in [
        ("feeds", "0.2", "within"),
        ("feeds", "2.7975", "within"),
        ("feeds", "0.19", "outside"),
        ("feeds", "2.9", "outside"),
        ("speeds", "0.25", "within"),
        ("speeds", "2", "within"),
        ("speeds", "0.2", "outside"),
        ("speeds", "2.1", "outside"),
    ] {
        let a = answer(
            "gear-stages",
            &[
                ("find", "gears"),
                ("box", kind),
                ("ratios", ratio),
                ("sum-low", "300"),
                ("sum-high", "300"),
            ],
        );
        assert_eq!(cell(&a, "pairs", 0, 5), says, "{kind} {ratio}");
    }
}

/// Rough feeds of the drawn box of Acherkan and Chernov (from memory), independent search: the two that `isolate` has not asked of
/// the sheet. And its gears for the spindle (27/53; 16/38 …) are taken with their plate.
#[test]
fn bad_pairs() {
    for (bad, points) in [
        (&[10, 11, 12, 13, 14, 15, 16, 17, 18][..], "C2"),
        (
            &[1, 4, 7, 10, 11, 12, 13, 14, 15, 16, 17, 18][..],
            "B1 and C2",
        ),
    ] {
        let marks: Vec<String> = (1..=18)
            .map(|n| format!("{n}~{}", if bad.contains(&n) { "noisy" } else { "well" }))
            .collect();
        let a = answer(
            "which-pair",
            &[
                ("plate", "none"),
                ("stages", "3~3;3~1;2~9"),
                ("marks", &marks.join(";")),
            ],
        );
        assert_eq!(said(&a, "cause"), points);
    }
    let plate = [
        31.5, 40.0, 50.0, 63.0, 80.0, 100.0, 125.0, 160.0, 200.0, 250.0, 315.0, 400.0, 500.0,
        630.0, 800.0, 1000.0, 1250.0, 1600.0,
    ];
    // third stage in its fast place: the nine fastest
    let marks: Vec<String> = (1..=18)
        .map(|n| format!("{n}~{}", if n > 9 { "noisy" } else { "well" }))
        .collect();
    let a = answer(
        "which-pair",
        &[
            ("plate", "speeds"),
            ("spindle-steps", &list(&plate, "rpm")),
            (
                "stages",
                "3~~16/38 19/35 22/32;3~~17/46 27/37 38/26;2~~19/69 82/38",
            ),
            ("marks", &marks.join(";")),
        ],
    );
    assert_eq!(said(&a, "cause"), "C2 (82/38)");
}

/// Worked: the same two teeth meet every z₂ / gcd turns of the driver; 21/37 every 37 (all pairs of teeth meet), 27/27 each turn,
/// 18/40 every 20.
#[test]
fn teeth_that_meet_again() {
    for (gears, says) in [
        ("21/37", "every 37 turns"),
        ("18/40", "every 20 turns"),
        ("27/27", "every turn"),
    ] {
        let stages = format!("2~~{gears} 30/30");
        let a = answer(
            "which-pair",
            &[
                ("plate", "none"),
                ("stages", &stages),
                ("marks", "1~noisy;2~well"),
            ],
        );
        let b = answer(
            "which-pair",
            &[
                ("plate", "none"),
                ("stages", &stages),
                ("marks", "1~well;2~noisy"),
            ],
        );
        let both = [a, b].map(|a| a.get("look").unwrap().says.to_string());
        assert!(
            both.iter()
                .any(|look| look.contains(gears) && look.contains(says)),
            "{both:?}"
        );
    }
}

/// Trains in print, asked of the sheet with the wheels of the print: Practical Treatise on Milling and Milling Machines (c. 1914), p. 57
/// (319 divisions, ratio 4; quarter degrees, 40/11) and pp. 62-63 (leads of 3.60 and 6.16 in over the machine's 10 in); Rose, Modern
/// Machine-Shop Practice, vol. 1, figs. 1236 to 1240 (11 threads from a screw of 4).
#[test]
fn trains_in_print() {
    for (ratio, wheels) in [
        ("4", "24;48;64;72"),
        ("3.6363636364", "40;44;64;100"),
        ("0.36", "24;48;100;32"),
        ("0.616", "56;44;40;100"),
        ("0.3636363636", "18;66;48;36"),
    ] {
        let a = answer(
            "change-gears",
            &[("for", "ratio"), ("ratio", ratio), ("wheels", wheels)],
        );
        let wanted: f64 = ratio.parse().unwrap();
        assert!(near(base(&a, "ratio-found"), wanted, 1e-9), "{ratio}");
        assert!(near(base(&a, "error"), 0.0, 1e-9), "{ratio}");
        // all four wheels, drivers over driven
        let train = said(&a, "train");
        for wheel in wheels.split(';') {
            assert!(train.contains(wheel), "{train}");
        }
    }
    let a = answer(
        "change-gears",
        &[
            ("leadscrew", "4 tpi"),
            ("thread", "11 tpi"),
            ("wheels", "18;66;48;36"),
        ],
    );
    assert_eq!(said(&a, "cuts"), "11.0000");
}

/// Worked: 28 in and 10 in at 0.5 in/min are 56 and 20 min.
#[test]
fn long_strokes() {
    for (travel, minutes) in [("28 in", 56.0), ("10 in", 20.0)] {
        let a = answer(
            "cut-time",
            &[
                ("cut", "slab"),
                ("diameter", "3 in"),
                ("depth", "0.001 in"),
                ("length", travel),
                ("feed", "0.5 ipm"),
            ],
        );
        // less the approach that the sheet adds, √(d (D − d)) = √(0.001 × 2.999) = 0.05476 in
        assert!(near(
            base(&a, "time") / 60.0 - 0.05476 / 0.5,
            minutes,
            0.001
        ));
    }
}

/// Groover, Fundamentals of Modern Manufacturing, turning problem: 400 mm at 150 mm, 0.3 mm a turn, in 5 min at 125.7 m/min, which are
/// 266.7 rpm. Kalpakjian and Schmid, titanium rod, published answers: 75 to 65 mm, 400 rpm, 200 mm/min over 200 mm: 1.0 min and
/// 219,911 mm3/min. Example 23.1, from memory: 12.5 to 12.0 mm, 150 mm at 200 mm/min and 400 rpm: 0.75 min, 1,924 mm3/min.
#[test]
fn a_pass_in_the_lathe() {
    let turned = |diameter, length, rpm, feed, depth| {
        answer(
            "cut-time",
            &[
                ("cut", "turn"),
                ("diameter", diameter),
                ("length", length),
                ("rpm", rpm),
                ("turn-feed", feed),
                ("radial", depth),
            ],
        )
    };
    let a = turned("150 mm", "400 mm", "266.6667", "0.3 mm/rev", "4 mm");
    assert!(near(base(&a, "time") / 60.0, 5.0, 1e-5));
    let a = turned("75 mm", "200 mm", "400", "0.5 mm/rev", "5 mm");
    assert!(near(base(&a, "time") / 60.0, 1.0, 1e-9));
    assert!(near(base(&a, "removal"), 219_911.0, 1.0));
    let a = turned("12.5 mm", "150 mm", "400", "0.5 mm/rev", "0.25 mm");
    assert!(near(base(&a, "time") / 60.0, 0.75, 1e-9));
    assert!(near(base(&a, "removal"), 1_924.0, 1.0));
}

/// The first fault of an entry.
fn fault(id: &str, pairs: &[(&str, &str)]) -> benchslate_core::sheet::Fault {
    let found = evaluate(sheets::by_id(id).unwrap(), &Entry::of(pairs));
    found.faults().next().unwrap().clone()
}

/// ISO 3, R20/3: 90, 125, 180, 250 and on from 500, ratio 10^(3/20) = 1.4125 in each, with the gap of a back gear between. Worked:
/// 100 to 600 by hundreds. A plate read from the fast end is the same plate; a misread row is named.
#[test]
fn plates_that_are_not_one_series() {
    let steps = |steps: &str| answer("plate-check", &[("spindle-steps", steps)]);
    let a = steps("90;125;180;250;500;710;1000;1400");
    let series = said(&a, "series");
    assert!(
        series.starts_with("two ranges: 90 rpm to 250 rpm by 1.4"),
        "{series}"
    );
    assert!(series.contains("500 rpm to 1400 rpm by 1.4"), "{series}");
    let a = steps("100;200;300;400;500;600");
    assert_eq!(
        said(&a, "series"),
        "equal differences of 100 rpm, not equal ratios"
    );
    let (up, down) = (steps("180;236;315;425"), steps("425;315;236;180"));
    assert_eq!(said(&up, "ratio"), said(&down, "ratio"));
    let stray = fault("plate-check", &[("spindle-steps", "180;236;1315;425;560")]);
    assert_eq!(stray.at, Some((4, 1)));
}

/// Centre distance of spur gears: (N + n) / 2P and module × (N + n) / 2, the rules of Machinery's Handbook, spur gears, from memory.
/// Worked: 18 and 36 teeth of 10 DP stand 2.7 in apart, of module 2, 54 mm; 72/18 is the most that a sum of 90 gives.
#[test]
fn gears_by_pitch_and_out_of_reach() {
    let ask = |pairs: &[(&'static str, &'static str)]| {
        [&[("find", "gears"), ("ratios", "0.5;1")][..], pairs].concat()
    };
    let a = answer("gear-stages", &ask(&[("dp", "10")]));
    assert!(near(base(&a, "centre"), 2.7 * 25.4, 1e-9));
    let a = answer("gear-stages", &ask(&[("module", "2")]));
    assert!(near(base(&a, "centre"), 54.0, 1e-9));
    assert_eq!(
        fault("gear-stages", &ask(&[("dp", "10"), ("module", "2")])).field,
        "dp"
    );
    let far = fault("gear-stages", &[("find", "gears"), ("ratios", "0.5;40")]);
    assert_eq!(far.at, Some((2, 1)));
    assert!(far.says.contains("4.00"), "{}", far.says);
}

/// Worked: 3 × 3 × 2 is 18 settings, and the plate below has 4; the count is told before the order of the levers is asked.
#[test]
fn a_box_that_cannot_give_the_plate() {
    let plate = ("feed-steps", "1 ipm;2 ipm;4 ipm;8 ipm");
    let told = fault("which-pair", &[plate, ("stages", "3;3;2")]);
    assert!(
        told.says.contains("makes 18 settings, the plate has 4"),
        "{}",
        told.says
    );
    let few = fault("which-pair", &[plate, ("stages", "2;2")]);
    assert_eq!(few.ways.len(), 2);
}

/// Worked: toward larger figures the table follows the dial; turned back, the dial first takes up the slack. At one place it reads
/// more come to from below: 0.204 (0.004 past zero) against 0.192, slack 0.012. The other way about the sheet says so.
#[test]
fn slack_readings_the_right_way_round() {
    let read = |one: &'static str, other: &'static str| {
        answer(
            "dial-slack",
            &[
                ("ask", "slack"),
                ("one", one),
                ("other", other),
                ("dial-turn", "0.2 in"),
            ],
        )
    };
    for (one, other, swapped) in [
        ("0.004 in", "0.192 in", false),
        ("0.192 in", "0.004 in", true),
        ("0.112 in", "0.100 in", false),
    ] {
        let a = read(one, other);
        assert!(near(base(&a, "slack-found") / 25.4, 0.012, 1e-9));
        let told = a
            .cautions
            .iter()
            .any(|caution| caution.before.contains("swapped"));
        assert_eq!(told, swapped, "{one} {other}");
    }
}

/// A list typed into one row, with commas or spaces between, is read as its values.
#[test]
fn a_list_in_one_row() {
    for typed in ["20,30,40", "20 30 40", "20, 30, 40"] {
        let sheet = sheets::by_id("change-gears").unwrap();
        let entry = Entry::of(&[("for", "ratio"), ("ratio", "2"), ("wheels", typed)]);
        let found = evaluate(sheet, &entry);
        let wheels = found.field("wheels").unwrap();
        assert_eq!(wheels.link_text, "20;30;40", "{typed}: {:?}", wheels.fault);
    }
}

/// Worked, s = F t: 18 in/min more carries the table 0.060 in further, so 60 x 0.060 / 18 = 0.2 s and the dog trips at 6.2333 in; for a
/// stop at 6.250 in at 6 in/min (overrun 0.020) it must trip at 6.230, 0.0033 in sooner. Stops that say nothing or too little are refused.
#[test]
fn delay_from_stops_at_two_feeds() {
    let stops = |rows: &'static str| {
        [
            ("feed", "6 ipm"),
            ("by", "stops"),
            ("at-feeds", rows),
            ("wanted", "6.250 in"),
        ]
    };
    let a = answer("trip-dog", &stops("2 ipm~6.240 in;20 ipm~6.300 in"));
    for (line, inch) in [
        ("trip-found", 6.23333),
        ("trip-at", 6.23),
        ("move-dog", -0.00333),
    ] {
        assert!(near(base(&a, line) / 25.4, inch, 1e-5), "{line}");
    }
    assert!(near(base(&a, "delay-found"), 0.2, 1e-9));
    for rows in [
        "2 ipm~6.240 in;2 ipm~6.300 in",
        "2 ipm~6.340 in;20 ipm~6.300 in",
    ] {
        assert_eq!(fault("trip-dog", &stops(rows)).field, "at-feeds", "{rows}");
    }
}

/// A bare number on an inch machine under a reading in mm: the form says that units are mixed.
#[test]
fn mixed_units_in_a_list_are_named() {
    let read = |trials: &str| {
        let found = evaluate(
            sheets::by_id("trip-dog").unwrap(),
            &Entry::of(&[("feed", "6 ipm"), ("trials", trials)]),
        );
        found.field("trials").unwrap().reading.clone()
    };
    assert_eq!(read("158.7 mm;158.8"), "2 rows; units are mixed: mm and in");
    assert_eq!(read("158.7 mm;158.8 mm"), "2 rows: 158.7, 158.8 mm");
}
