//! What the machine sheets advise: which line leads, which caution stands on which side of its limit, and what a plate or a gear that
//! contradicts is told. Figures are worked beside each check, by independent arithmetic from the named rules.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)] // test code: a failure is a failed check

use benchslate_core::quantity::System;
use benchslate_core::sheet::{Answer, Entry, Fault, evaluate};
use benchslate_core::sheets::by_id;

fn answer(id: &str, pairs: &[(&str, &str)]) -> Answer {
    let outcome = evaluate(by_id(id).unwrap(), &Entry::of(pairs));
    assert!(
        outcome.answer.is_complete(),
        "{id} {pairs:?}: {:?} {:?}",
        outcome.answer.state,
        outcome.faults().map(Fault::text).collect::<Vec<_>>()
    );
    outcome.answer
}

fn said(answer: &Answer, id: &str) -> String {
    answer.get(id).unwrap().value.text(System::Inch)
}

fn says(answer: &Answer, id: &str) -> String {
    answer.get(id).unwrap().says.to_string()
}

fn fault(id: &str, pairs: &[(&str, &str)]) -> Fault {
    let outcome = evaluate(by_id(id).unwrap(), &Entry::of(pairs));
    let fault = outcome.faults().next().cloned();
    assert!(fault.is_some(), "{id} {pairs:?} gives an answer");
    fault.unwrap()
}

fn cautions(answer: &Answer) -> Vec<&'static str> {
    answer.cautions.iter().map(|one| one.id).collect()
}

/// Feeds timed over a minute each: plate and true feed, in/min.
fn timed(rows: &[(f64, f64)]) -> String {
    let row = |(plate, feed): &(f64, f64)| format!("{plate} ipm~{:.4} in~600 s", feed * 10.0);
    rows.iter().map(row).collect::<Vec<_>>().join(";")
}

/// An invented plate of 18 feeds, ratio 1.26.
fn plate18(unit: &str) -> String {
    (0..18)
        .map(|n| format!("{:.3} {unit}", 20.0 * libm::pow(1.26, f64::from(n))))
        .collect::<Vec<_>>()
        .join(";")
}

/// The verdict of timed feeds leads, with what is off first: a lone setting, all by one factor past whole teeth (5 %), both, or
/// nothing. Whole tooth numbers explain 2 to 5 % (common practice).
#[test]
fn the_verdict_of_timed_feeds_leads() {
    let ask = |rows: &[(f64, f64)]| answer("feed-check", &[("timings", &timed(rows))]);
    let all = |factor: f64| [1.0, 2.0, 3.0, 5.0, 8.0].map(|plate| (plate, plate * factor));
    for (rows, headline) in [
        // five within 0.8 %, one 18.9 % slow: the one is the news, not the 0.7 %
        (
            vec![
                (1.0, 0.995),
                (2.0, 1.985),
                (3.0, 2.99),
                (4.0, 3.97),
                (5.0, 4.055),
                (8.0, 7.94),
            ],
            "one setting is off: 5 in/min, slow by 18.9%",
        ),
        (all(0.993).to_vec(), "the plate holds"),
        (all(0.952).to_vec(), "the plate holds"),
        (all(1.048).to_vec(), "the plate holds"),
        (
            all(0.945).to_vec(),
            "all settings are slow by 5.5%: look at motor and belt",
        ),
        (
            all(1.055).to_vec(),
            "all settings are fast by 5.5%: look at motor and belt",
        ),
        (
            all(50.0 / 60.0).to_vec(),
            "all settings are slow by 16.7%: look at motor and belt",
        ),
        (
            vec![
                (1.0, 0.8333),
                (2.0, 1.6667),
                (3.0, 2.5),
                (5.0, 3.3),
                (8.0, 6.6667),
            ],
            "one setting is off: 5 in/min; the others are slow by 16.7%",
        ),
        // 2 and 4 swapped
        (
            vec![(1.0, 1.0), (2.0, 4.0), (4.0, 2.0), (8.0, 8.0), (16.0, 16.0)],
            "2 settings are off: 2 and 4 in/min",
        ),
        // a back gear left in for half of them: the half that holds is the plate
        (
            vec![(1.0, 1.0), (2.0, 2.0), (4.0, 1.0), (8.0, 2.0)],
            "2 settings are off: 4 and 8 in/min, slow by 75.0%",
        ),
        (
            vec![(1.0, 1.0), (2.0, 1.6), (4.0, 2.4)],
            "no two settings agree: time them again",
        ),
        (
            vec![(1.0, 1.0), (2.0, 2.0), (50.0, 50.0 / 25.4)],
            "one setting is off: 50 in/min; inches and mm mixed up?",
        ),
        (
            vec![(1.0, 1.0), (2.0, 1.5)],
            "the two settings disagree: time a third",
        ),
        (vec![(2.0, 1.98)], "this setting holds"),
        (
            vec![(2.0, 1.6)],
            "this setting is slow by 20.0%: time two more",
        ),
    ] {
        let a = ask(&rows);
        assert_eq!(a.lines[0].id, "verdict");
        let got = said(&a, "verdict");
        assert_eq!(got, headline, "{rows:?}");
    }
    // causes of a common factor stand only where there is one to explain
    assert!(ask(&all(50.0 / 60.0)).table_by_id("causes").is_some());
    assert!(ask(&all(0.952)).table_by_id("causes").is_none());
    // the sign is told in words that fit it
    assert!(says(&ask(&all(0.9)), "factor-off").contains("slower than"));
    assert!(says(&ask(&all(1.1)), "factor-off").contains("faster than"));
    // two swapped settings do not make the others unsure
    let a = ask(&[(1.0, 1.0), (2.0, 4.0), (4.0, 2.0), (8.0, 8.0), (16.0, 16.0)]);
    assert!(!says(&a, "factor").contains("55"), "{}", says(&a, "factor"));
    // +0.4 % reads as the rest, +4 % as tooth numbers
    let a = ask(&[(1.0, 1.0), (2.0, 2.008), (3.0, 3.0), (5.0, 5.2), (8.0, 8.0)]);
    let reads: Vec<String> = a
        .table_by_id("settings")
        .unwrap()
        .rows
        .iter()
        .map(|row| row.cells[5].text(System::Inch))
        .collect();
    assert_eq!(
        reads,
        [
            "as the rest",
            "as the rest",
            "as the rest",
            "whole teeth",
            "as the rest"
        ]
    );
    // a plate in mm/min is answered in mm/min
    let a = answer(
        "feed-check",
        &[(
            "timings",
            "30 mm/min~30 mm~60 s;37.5 mm/min~37.5 mm~60 s;47.5 mm/min~38 mm~60 s",
        )],
    );
    assert!(
        said(&a, "verdict").starts_with("one setting is off: 47.5 mm/min"),
        "{}",
        said(&a, "verdict")
    );
    // a setting that is off goes on to the box, with what was timed as its marks
    let plate = ("feed-steps", "1 ipm;2 ipm;3 ipm;5 ipm;8 ipm;12 ipm");
    let rows = timed(&[(1.0, 1.0), (3.0, 3.0), (5.0, 3.0), (8.0, 8.0)]);
    let a = answer("feed-check", &[("timings", &rows), plate]);
    let opens = a
        .table_by_id("settings")
        .unwrap()
        .rows
        .iter()
        .find_map(|row| row.opens.clone())
        .unwrap();
    assert_eq!(opens.0, "which-pair");
    assert!(
        opens
            .1
            .contains(&("marks", "1~well;3~well;4~rate;5~well".into())),
        "{opens:?}"
    );
}

/// Cautions of a timing: once in all, one of several once, each more than once.
#[test]
fn cautions_of_timings() {
    for (rows, ids) in [
        ("1 ipm~1 in~60 s", &["one-timing-each", "engage-feed"][..]),
        (
            "1 ipm~1 in~60 s;2 ipm~2 in~60 s",
            &["one-timing-each", "engage-feed"],
        ),
        (
            "1 ipm~1 in~60 s;1 ipm~1 in~60.2 s;2 ipm~2 in~60 s",
            &["single-timing", "engage-feed"],
        ),
        ("1 ipm~1 in~60 s;1 ipm~1 in~60.2 s", &["engage-feed"]),
    ] {
        let a = answer("feed-check", &[("timings", rows)]);
        assert_eq!(cautions(&a), ids, "{rows}");
    }
}

/// Gears of some stages only, typed in any order: the slowest settings use the slowest pair. Marks on the slowest block of three
/// of each half: 18/36 whatever its position; and a pair whose ratio the plate contradicts is named.
#[test]
fn gears_are_matched_to_the_plate_by_their_ratio() {
    let plate = plate18("mm/min");
    let marks: Vec<String> = (1..=18)
        .map(|n| {
            format!(
                "{n}~{}",
                if n % 9 >= 1 && n % 9 <= 3 {
                    "noisy"
                } else {
                    "well"
                }
            )
        })
        .collect();
    let marks = marks.join(";");
    for (gears, want) in [
        ("18/36 27/27 36/18", "A1 (18/36)"),
        ("36/18 27/27 18/36", "A3 (18/36)"),
        ("27/27 36/18 18/36", "A3 (18/36)"),
    ] {
        let stages = format!("3~3~{gears};3~1;2~9");
        for steps in [Some(plate.as_str()), None] {
            let mut pairs = vec![("stages", stages.as_str()), ("marks", marks.as_str())];
            match steps {
                Some(steps) => pairs.push(("feed-steps", steps)),
                None => pairs.push(("plate", "none")),
            }
            assert_eq!(
                said(&answer("which-pair", &pairs), "cause"),
                want,
                "{gears}"
            );
        }
        // without the settings apart the plate tells them, where it can
        let stages = format!("3~3~{gears};3~1;2");
        let a = answer(
            "which-pair",
            &[
                ("feed-steps", &plate),
                ("stages", &stages),
                ("marks", &marks),
            ],
        );
        assert_eq!(said(&a, "cause"), want);
    }
    // 45/9 is five times, where the plate goes 1.26^3 = 2.00 times, and from 18/36 it would be ten
    let told = fault(
        "which-pair",
        &[
            ("feed-steps", &plate),
            ("stages", "3~3~18/36 27/27 45/9;3~1;2~9"),
        ],
    );
    assert!(
        told.says.starts_with("45/9 at A3 contradicts the plate"),
        "{}",
        told.says
    );
    assert!(
        told.says.contains("4.00 times") && told.says.contains("10.00 times"),
        "{}",
        told.says
    );
    assert_eq!(told.at, Some((1, 3)));
    // without a plate against the other gears
    let told = fault(
        "which-pair",
        &[
            ("plate", "none"),
            ("stages", "3~3~18/36 27/27 45/9;3~1~16/40 18/38 20/35;2~9"),
        ],
    );
    assert!(
        told.says.contains("27/27 to 45/9 goes 5.00 times"),
        "{}",
        told.says
    );
    // whole teeth within 10 % are no contradiction: 35/18 is 1.94 for 2.00
    let a = answer(
        "which-pair",
        &[
            ("feed-steps", &plate),
            ("stages", "3~3~18/36 27/27 35/18;3~1;2~9"),
        ],
    );
    assert!(a.is_complete());
    // two positions of one ratio that are to lie apart
    let told = fault(
        "which-pair",
        &[
            ("feed-steps", &plate),
            ("stages", "3~3~18/36 9/18 36/18;3~1;2~9"),
        ],
    );
    assert!(
        told.says
            .contains("18/36 and 9/18 give one and the same ratio"),
        "{}",
        told.says
    );
    // settings apart that the gears of all stages contradict: by 1.26, 2 and 8 the second stage moves by 3
    let gears = "3~1~19/24 24/24 30/24;3~2~18/36 27/27 36/18;2~9~16/64 40/20";
    let told = fault("which-pair", &[("plate", "none"), ("stages", gears)]);
    assert!(
        told.says.contains("stage B moves by 3, and 2 was given"),
        "{}",
        told.says
    );
    assert!(
        answer(
            "which-pair",
            &[
                ("plate", "none"),
                ("stages", &gears.replace("3~2~", "3~3~"))
            ]
        )
        .is_complete()
    );
}

/// Twelve positions with their gears need more than 64 characters: a cone of 12 beside a tumbler.
#[test]
fn a_cone_of_twelve_is_taken() {
    let cone: Vec<String> = (16..28).map(|z| format!("{z}/30")).collect();
    let cone = cone.join(" ");
    assert!(cone.len() > 64);
    let marks: Vec<String> = (1..=12)
        .map(|n| format!("{n}~{}", if n == 7 { "noisy" } else { "well" }))
        .collect();
    let a = answer(
        "which-pair",
        &[
            ("plate", "none"),
            ("stages", &format!("12~~{cone}")),
            ("marks", &marks.join(";")),
        ],
    );
    assert_eq!(said(&a, "cause"), "A7 (22/30)");
    // four in series at each of twelve positions
    let series: Vec<String> = (16..28)
        .map(|z| format!("{z}/30x100/101x102/103x104/105"))
        .collect();
    let a = answer(
        "which-pair",
        &[
            ("plate", "none"),
            ("stages", &format!("12~~{}", series.join(" "))),
        ],
    );
    assert_eq!(said(&a, "settings"), "12");
    let thirteen = format!("12~~{cone} 29/30");
    assert!(
        fault("which-pair", &[("plate", "none"), ("stages", &thirteen)])
            .text()
            .contains("12")
    );
}

/// A plate on which two settings round to one value: typed twice or once, both are taken. 2 x 3 of 1, 1.5 and 1, 1.52, 4: products
/// 1, 1.5, 1.52, 2.28, 4, 6, on the plate 1, 1.5, 1.5, 2.3, 4, 6.
#[test]
fn a_value_that_stands_twice() {
    let stages = "2~~20/20 30/20;3~~25/25 38/25 40/10";
    for plate in [
        "1 ipm;1.5 ipm;1.5 ipm;2.3 ipm;4 ipm;6 ipm",
        "1 ipm;1.5 ipm;2.3 ipm;4 ipm;6 ipm",
    ] {
        let a = answer(
            "which-pair",
            &[
                ("feed-steps", plate),
                ("stages", stages),
                ("marks", "2~noisy;3~well"),
            ],
        );
        let grid = a.table_by_id("grid").unwrap();
        let cells: Vec<String> = grid
            .rows
            .iter()
            .flat_map(|row| row.cells.iter().map(|cell| cell.text(System::Inch)))
            .collect();
        assert_eq!(
            cells.iter().filter(|cell| cell.contains(" 1.5,")).count(),
            2,
            "{cells:?}"
        );
        let shared = says(&a, "settings").contains("Two settings share 1.5 in/min of the plate");
        assert_eq!(
            shared,
            plate.split(';').count() == 5,
            "{}",
            says(&a, "settings")
        );
    }
    // and the search for the stages takes a value twice: as two settings that round to it
    let a = answer(
        "gear-stages",
        &[(
            "feed-steps",
            "1 ipm;1.5 ipm;1.5 ipm;2.25 ipm;4 ipm;6 ipm;6 ipm;9 ipm",
        )],
    );
    assert!(a.is_complete());
}

/// A plate is told in its own unit, with the decimals that stand on it.
#[test]
fn a_plate_keeps_its_unit_and_decimals() {
    let a = answer(
        "which-pair",
        &[
            ("feed-steps", "30 mm/min;37.5 mm/min;47.5 mm/min;60 mm/min"),
            ("stages", "2~1;2~2"),
            ("marks", "1~well"),
        ],
    );
    assert!(
        said(&a, "next").ends_with("37.5 mm/min") || said(&a, "next").contains(" mm/min"),
        "{}",
        said(&a, "next")
    );
    let a = answer(
        "plate-check",
        &[("spindle-steps", "11.2 rpm;22.4 rpm;45 rpm;90 rpm;200 rpm")],
    );
    let column: Vec<String> = a
        .table_by_id("steps")
        .unwrap()
        .rows
        .iter()
        .map(|row| row.cells[0].text(System::Inch))
        .collect();
    assert_eq!(column[..3], ["11.2", "22.4", "45.0"]);
    assert!(
        said(&a, "suspect").starts_with("200"),
        "{}",
        said(&a, "suspect")
    );
    let a = answer(
        "plate-check",
        &[
            ("of", "feed"),
            ("feed-steps", "31.5 mm/min;40 mm/min;50 mm/min;63 mm/min"),
        ],
    );
    let cell = &a.table_by_id("steps").unwrap().rows[0].cells[0];
    assert_eq!(cell.text_with_unit(System::Inch), "31.5 mm/min");
}

/// The layout of a gearbox is written in words, and one stage of twelve, which fits any plate, does not lead; the notation stands
/// beside it.
#[test]
fn a_layout_in_words() {
    // an uneven plate of twelve: one stage fits it exactly, 3 x 2 x 2 within 8 %
    let uneven = "0.5 ipm;0.75 ipm;1 ipm;1.25 ipm;2 ipm;2.5 ipm;3.25 ipm;5 ipm;6.5 ipm;8.25 ipm;12.5 ipm;16.5 ipm";
    let a = answer("gear-stages", &[("feed-steps", uneven)]);
    let lead = said(&a, "structure");
    assert!(
        lead.contains(" \u{d7} ") && lead.contains("positions, moving"),
        "{lead}"
    );
    assert!(
        says(&a, "structure").contains("(1)"),
        "{}",
        says(&a, "structure")
    );
    // seven values: only one stage gives them
    let seven: Vec<String> = (0..7)
        .map(|n| format!("{:.3} ipm", libm::pow(1.4, f64::from(n))))
        .collect();
    let a = answer("gear-stages", &[("feed-steps", &seven.join(";"))]);
    let rows = &a.table_by_id("structures").unwrap().rows;
    assert_eq!(rows.last().unwrap().cells[0].text(System::Inch), "7(1)");
    // a stage past the customary range comes after those within: 18 speeds of 1.26, the last stage of 3 x 3 x 2 at 8.0
    let speeds: Vec<String> = (0..18)
        .map(|n| format!("{:.3} rpm", 31.5 * libm::pow(1.26, f64::from(n))))
        .collect();
    let a = answer(
        "gear-stages",
        &[("box", "speeds"), ("spindle-steps", &speeds.join(";"))],
    );
    assert!(
        says(&a, "range").contains("within the customary 8"),
        "{}",
        says(&a, "range")
    );
    let speeds: Vec<String> = (0..18)
        .map(|n| format!("{:.3} rpm", 31.5 * libm::pow(1.41, f64::from(n))))
        .collect();
    let a = answer(
        "gear-stages",
        &[("box", "speeds"), ("spindle-steps", &speeds.join(";"))],
    );
    assert!(
        says(&a, "range").contains("over the customary 8"),
        "{}",
        says(&a, "range")
    );
}

/// Cautions of the drives, on both sides of each limit.
#[test]
fn cautions_of_the_drives() {
    let has = |id: &str, pairs: &[(&str, &str)], caution: &str| {
        let a = answer(id, pairs);
        assert!(cautions(&a).iter().all(|id| !id.is_empty()));
        a.caution(caution).is_some()
    };
    // rim of a 12 in pulley: pi x 1 ft x rpm; 6500 ft/min at 2069 rpm
    let belt = |rpm: &str, center: &str, caution: &str| {
        has(
            "belt-drive",
            &[
                ("motor", rpm),
                ("stages", "12 in~6 in"),
                ("centres", center),
            ],
            caution,
        )
    };
    assert!(belt("2070 rpm", "30 in", "fast-rim") && !belt("2068 rpm", "30 in", "fast-rim"));
    // wrap = 180 - 2 asin(3 / C) degrees: 120 at C = 6 in; these pulleys touch at 9 in, so 12 to 1.5: 5.25 / C, 120 at 10.5 in
    let wrap = |center: &str| {
        has(
            "belt-drive",
            &[
                ("motor", "900 rpm"),
                ("stages", "12 in~1.5 in"),
                ("centres", center),
            ],
            "little-wrap",
        )
    };
    assert!(wrap("10.4 in") && !wrap("10.6 in"));
    // belt lengths of the cones' steps half a percent apart
    let cones = |step: &str| {
        let rows = format!("3 in~6 in;{step}~4.5 in;6 in~3 in");
        has(
            "belt-drive",
            &[
                ("ask", "cones"),
                ("motor", "450 rpm"),
                ("belt", "flat"),
                ("thick", "0.1 in"),
                ("cones", &rows),
                ("centres", "30 in"),
            ],
            "cones-uneven",
        )
    };
    assert!(cones("5 in") && !cones("4.5 in"));
    // V belts only
    assert!(has(
        "belt-drive",
        &[("motor", "900 rpm"), ("stages", "3 in~6 in")],
        "pulleys-as-measured"
    ));
    assert!(!has(
        "belt-drive",
        &[
            ("motor", "900 rpm"),
            ("belt", "flat"),
            ("thick", "0.1 in"),
            ("stages", "3 in~6 in")
        ],
        "pulleys-as-measured"
    ));
    // feed on its own against feed from the spindle
    let own = [("rate", "6 ipm"), ("speed", "270 rpm")];
    let spindle = [
        ("feed", "spindle"),
        ("per-rev", "0.008 ipr"),
        ("speed", "270 rpm"),
    ];
    assert!(
        has("feed-per-turn", &own, "slower-spindle")
            && !has("feed-per-turn", &own, "faster-spindle")
    );
    assert!(
        has("feed-per-turn", &spindle, "faster-spindle")
            && !has("feed-per-turn", &spindle, "slower-spindle")
    );
    let speed = |rpm: &str| {
        has(
            "feed-per-turn",
            &[
                ("rate", "6 ipm"),
                ("speed", rpm),
                ("steps", "70;110;175;270"),
            ],
            "not-on-machine",
        )
    };
    assert!(speed("271 rpm") && !speed("270 rpm"));
    // change gears: exact or not, one system or two
    let gears = |thread: &str, set: &str, caution: &str| {
        has(
            "change-gears",
            &[("leadscrew", "8 tpi"), ("thread", thread), ("wheels", set)],
            caution,
        )
    };
    // 1.5 mm over 3.175 mm is 60/127
    assert!(
        gears("1.5 mm", "20;30;40;60;80", "none-exact")
            && !gears("1.5 mm", "20;30;60;127", "none-exact")
    );
    assert!(
        gears("1.5 mm", "20;30;40;60;80", "inch-and-metric")
            && !gears("16 tpi", "20;30;40;60;80", "inch-and-metric")
    );
}

/// Backlash: the cautions of each side, and the climb limit of 0.003 in.
#[test]
fn cautions_of_backlash() {
    let has = |pairs: &[(&str, &str)], caution: &str| {
        answer("dial-slack", pairs).caution(caution).is_some()
    };
    // a move of 0.010 and of 0.012 against 0.012 of backlash
    let moved = |to: &str| {
        has(
            &[
                ("from", "0.100 in"),
                ("to", to),
                ("last", "down"),
                ("slack", "0.012 in"),
            ],
            "move-shorter",
        )
    };
    assert!(moved("0.111 in") && !moved("0.112 in"));
    let twice = |one: &str, other: &str, caution: &str| {
        has(
            &[
                ("ask", "slack"),
                ("one", one),
                ("other", other),
                ("dial-turn", ""),
            ],
            caution,
        )
    };
    assert!(
        twice("0.150 in", "0.150 in", "none-found") && !twice("0.151 in", "0.150 in", "none-found")
    );
    assert!(
        twice("0.276 in", "0.150 in", "much-backlash")
            && !twice("0.275 in", "0.150 in", "much-backlash")
    );
    assert!(
        twice("0.150 in", "0.160 in", "swapped-readings")
            && !twice("0.160 in", "0.150 in", "swapped-readings")
    );
    let cut = |cut: &str, slack: &str, nut: &str| {
        let pairs = [
            ("ask", "cut"),
            ("cut", cut),
            ("slack", slack),
            ("chip", "0.003 ipt"),
            ("nut", nut),
        ];
        evaluate(by_id("dial-slack").unwrap(), &Entry::of(&pairs)).answer
    };
    for nut in ["plain", "taken-up"] {
        let a = cut("climb", "0.003 in", nut);
        assert!(
            a.is_complete()
                && a.caution("climb-cut").is_some()
                && a.caution("conventional-cut").is_none()
        );
        let held = format!("{:?}", cut("climb", "0.0031 in", nut).state);
        assert!(
            held.contains("Withheld")
                && held.contains("0.0030 in\"")
                && !held.contains("of backlash\""),
            "{held}"
        );
    }
    let a = cut("conventional", "0.0031 in", "plain");
    assert!(
        a.is_complete()
            && a.caution("conventional-cut").is_some()
            && a.caution("climb-cut").is_none()
    );
}

/// What is always to be minded stands in every answer of its sheet.
#[test]
fn what_is_always_minded() {
    for (id, pairs, ids) in [
        (
            "which-pair",
            &[("plate", "none"), ("stages", "3~1;2~3")][..],
            &["reach-in", "trust-mark"][..],
        ),
        (
            "trip-dog",
            &[("feed", "6 ipm")],
            &["trust-trip", "trip-limit"],
        ),
        (
            "dial-units",
            &[
                ("dial", "0.2 in"),
                ("lines", "200"),
                ("lead", "5 mm"),
                ("positions", "2 in"),
            ],
            &["count-turns", "lead-error"],
        ),
        (
            "belt-drive",
            &[
                ("motor", "900 rpm"),
                ("belt", "flat"),
                ("thick", "0.1 in"),
                ("stages", "3 in~6 in"),
            ],
            &["touch-belt"],
        ),
    ] {
        assert_eq!(cautions(&answer(id, pairs)), ids, "{id}");
    }
}

/// Signed results are told in words that fit the sign; nothing begins with "Plus:".
#[test]
fn signs_are_told_in_words() {
    let off = |lead: &str| {
        says(
            &answer(
                "dial-units",
                &[
                    ("dial", "0.2 in"),
                    ("lines", "200"),
                    ("lead", lead),
                    ("positions", "2 in"),
                ],
            ),
            "share",
        )
    };
    assert!(off("5.2 mm").contains("goes further"));
    assert!(off("5 mm").contains("less far"));
    assert!(off("0.2 in").contains("what the dial says"));
    let dog = |wanted: &str| {
        says(
            &answer(
                "trip-dog",
                &[
                    ("feed", "6 ipm"),
                    ("wanted", wanted),
                    ("trials", "6.248 in;6.252 in"),
                ],
            ),
            "move-dog",
        )
    };
    assert!(dog("6.260 in").starts_with("Toward larger"));
    assert!(dog("6.240 in").starts_with("Toward smaller"));
    // stops at 6.248 and 6.252 scatter by 0.0028 in (n - 1): less than that is no reason to move the dog
    assert!(
        dog("6.2525 in").contains("leave the dog") && dog("6.2475 in").contains("leave the dog")
    );
    assert!(
        dog("6.253 in").starts_with("Toward larger")
            && dog("6.247 in").starts_with("Toward smaller")
    );
    let long = |delay: &str| {
        let a = answer("trip-dog", &[("feed", "60 ipm"), ("delay", delay)]);
        a.caution("long-overrun").is_some()
    };
    assert!(
        long("1.01 s") && !long("0.99 s"),
        "60 in/min is 1 in a second"
    );
    let gear = |thread: &str, id: &str| {
        says(
            &answer(
                "change-gears",
                &[
                    ("leadscrew", "8 tpi"),
                    ("thread", thread),
                    ("wheels", "20;30;40;60;80"),
                ],
            ),
            id,
        )
    };
    assert!(
        gear("1.5 mm", "error").contains("too coarse")
            != gear("1.5 mm", "error").contains("too fine")
    );
    assert!(
        gear("16 tpi", "error").contains("none")
            && gear("16 tpi", "over-length").contains("As long")
    );
    // belts and rims in feet per minute: 1725 rpm on 3 in is 1355 ft/min (pi x 0.25 ft x 1725 = 1354.8)
    let a = answer(
        "belt-drive",
        &[("motor", "1725 rpm"), ("stages", "3 in~9 in")],
    );
    assert_eq!(
        a.get("belt-speed")
            .unwrap()
            .value
            .text_with_unit(System::Inch),
        "1355 ft/min"
    );
    // a dial of the wrong units leads with what is set, positions in their own unit: 10 mm on a 0.1 in screw with a dial of 2.5 mm
    let a = answer(
        "dial-units",
        &[
            ("dial", "2.5 mm"),
            ("lines", "125"),
            ("lead", "0.1 in"),
            ("positions", "10 mm;25 mm"),
        ],
    );
    assert_eq!(a.lines[0].id, "reading");
    assert_eq!(
        said(&a, "reading"),
        "9 turns and 2.100 mm",
        "25 mm is 9.8425 turns of 2.54 mm"
    );
    let cell = &a.table_by_id("readings").unwrap().rows[0].cells[0];
    assert_eq!(cell.text_with_unit(System::Inch), "10.000 mm");
}
