//! Would a careful machinist act on what speed and feed answers? Orders that must hold everywhere, limits tried from both sides, and
//! figures by outside tables or by hand. Sources beside each.

#![allow(
    clippy::unwrap_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a check panics when it fails"
)]

use benchslate_core::cutting::{SpeedQuestion, speed_aim};
use benchslate_core::quantity::*;
use benchslate_core::sheet::{Entry, Outcome, State, evaluate};
use benchslate_core::sheets::by_id;
use benchslate_core::standards::cutting::cutting_speeds::*;
use benchslate_core::standards::cutting::feeds::*;
use benchslate_tests::near;

use CutterMaterial::{Carbide, CarbonSteel as Carbon, HighSpeedSteel as Hss};

const OPERATIONS: [Operation; 7] = [
    Operation::Milling,
    Operation::Drilling,
    Operation::Reaming,
    Operation::Tapping,
    Operation::TurningRough,
    Operation::TurningFinish,
    Operation::Threading,
];

fn asked(pairs: &[(&str, &str)]) -> Outcome {
    evaluate(by_id("speed-feed").unwrap(), &Entry::of(pairs))
}

fn with(pairs: &[(&str, &str)], more: &[(&str, &str)]) -> Outcome {
    let mut all = pairs.to_vec();
    all.extend_from_slice(more);
    asked(&all)
}

fn base(outcome: &Outcome, id: &str) -> f64 {
    let line = outcome.answer.get(id);
    line.unwrap_or_else(|| panic!("no {id}: {:?}", outcome.answer.state))
        .value
        .base()
        .unwrap()
}

fn has(outcome: &Outcome, id: &str) -> bool {
    assert_eq!(outcome.answer.state, State::Complete);
    outcome.answer.caution(id).is_some()
}

/// Self-evident: harder metal of a kind is not cut faster; where no source speaks there is a gap.
fn never_rises(operations: &[Operation]) {
    for material in Material::ALL {
        for operation in operations {
            for cutter in [Hss, Carbide, Carbon] {
                let mut last: Option<(u16, f64)> = None;
                for hb in (80..=500).step_by(5) {
                    let question = SpeedQuestion {
                        material,
                        operation: *operation,
                        cutter,
                        hardness_hb: Some(hb),
                        countersink: false,
                        end_mill: true,
                    };
                    let Some(aim) = question.aim() else { continue };
                    assert!(
                        aim.low <= aim.start && aim.start <= aim.high,
                        "{question:?}"
                    );
                    let start = aim.start.sfm();
                    if let Some((softer, before)) = last {
                        assert!(
                            start <= before + 1e-9,
                            "{material:?} {operation:?} {cutter:?}: {before} at {softer} HB, {start} at {hb} HB"
                        );
                    }
                    last = Some((hb, start));
                }
            }
        }
    }
}

#[test]
fn no_start_rises_with_hardness_under_the_mill_and_the_drill() {
    never_rises(&OPERATIONS[..3]);
}

#[test]
fn no_start_rises_with_hardness_in_the_lathe_and_under_the_tap() {
    never_rises(&OPERATIONS[3..]);
}

#[test]
fn no_start_of_an_arbor_cutter_or_a_countersink_rises_with_hardness() {
    for material in Material::ALL {
        for (operation, countersink, cutter) in [
            (Operation::Milling, false, Hss),
            (Operation::Milling, false, Carbide),
            (Operation::Drilling, true, Hss),
        ] {
            let starts = (80..=500).step_by(5).filter_map(|hb| {
                let question = SpeedQuestion {
                    material,
                    operation,
                    cutter,
                    hardness_hb: Some(hb),
                    countersink,
                    end_mill: false,
                };
                question.aim().map(|aim| aim.start.sfm())
            });
            let starts: Vec<f64> = starts.collect();
            assert!(
                starts.windows(2).all(|two| two[1] <= two[0] + 1e-9),
                "{material:?} {operation:?} {starts:?}"
            );
        }
    }
}

/// Common practice: free-machining steel is cut no slower than mild, carbon steel at half of HSS or less, carbide at HSS or more, a
/// reamer no faster than the drill.
#[test]
fn starts_keep_their_order_at_every_hardness() {
    let start = |material, operation, cutter, hb| {
        speed_aim(material, operation, cutter, hb, false).map(|aim| aim.start.sfm())
    };
    let hardnesses = [
        None,
        Some(100),
        Some(150),
        Some(200),
        Some(250),
        Some(265),
        Some(300),
    ];
    for hb in hardnesses {
        for operation in OPERATIONS {
            for cutter in [Hss, Carbide, Carbon] {
                let of = |material| start(material, operation, cutter, hb);
                if let (Some(free), Some(mild)) =
                    (of(Material::FreeMachiningSteel), of(Material::MildSteel))
                {
                    assert!(free + 1e-9 >= mild, "{operation:?} {cutter:?} {hb:?}");
                }
            }
            for material in Material::ALL {
                let of = |cutter| start(material, operation, cutter, hb);
                let Some(hss) = of(Hss) else { continue };
                assert!(of(Carbon).is_none_or(|carbon| carbon <= hss / 2.0 + 1e-6));
                assert!(of(Carbide).is_none_or(|carbide| carbide >= hss - 1e-6));
                if operation == Operation::Reaming {
                    let drill = start(material, Operation::Drilling, Hss, hb);
                    assert!(
                        drill.is_none_or(|drill| hss <= drill + 1e-6),
                        "{material:?}"
                    );
                }
            }
        }
    }
}

/// A tap maker's table of HSS tap speeds, 2018: cast iron of 150 to 300 HB 30 to 40 ft/min, nodular of 200 to 300 HB 20 to 30. Both
/// begin with ordinary metal, so they count where no hardness is given; a step such as 225 to 275 HB does not.
#[test]
fn broad_rows_count_without_a_hardness() {
    let tap = |material| speed_aim(material, Operation::Tapping, Hss, None, false).unwrap();
    assert!(near(tap(Material::GrayIron).start.sfm(), 30.0, 1e-9));
    assert!(near(tap(Material::DuctileIron).start.sfm(), 20.0, 1e-9));
    let mild = speed_band(Material::MildSteel, Operation::TurningRough, Hss, None).unwrap();
    assert!(mild.rows.iter().all(|row| row.hardness != Some((225, 275))));
}

/// Machinery's Handbook, a guide to it, p. 180: age-hardened nickel-copper alloy at 40 to 70 ft/min to 300 HB, at 10 to 20 where harder.
#[test]
fn age_hardened_nickel_copper_starts_slower() {
    let turn = |hb| speed_aim(Material::Monel, Operation::TurningRough, Hss, hb, false).unwrap();
    assert!(near(turn(None).start.sfm(), 40.0, 1e-9));
    assert!(near(turn(Some(300)).start.sfm(), 40.0, 1e-9));
    assert!(near(turn(Some(301)).start.sfm(), 10.0, 1e-9));
    // a row for harder metal does not stand in where one that names no hardness speaks
    let bronze = speed_aim(Material::Bronze, Operation::Tapping, Hss, Some(100), false).unwrap();
    assert!(near(bronze.start.sfm(), 30.0, 1e-9)); // a tap maker's page, London
}

/// Between 225 to 275 and 325 to 375 HB the table of tool steels prints nothing: the slower neighbor stands in and is named; under the
/// softest row that one stands in; over the hardest nothing does.
#[test]
fn a_gap_is_bridged_by_the_slower_row_and_named() {
    let of = |hb| speed_band(Material::ToolSteel, Operation::Drilling, Hss, Some(hb));
    let gap = of(300).unwrap();
    assert_eq!(gap.bridged, Some(Bridged::Between(275, 325)));
    let (below, above) = (of(275).unwrap().start, of(325).unwrap().start);
    assert!(gap.start <= below.min(above));
    assert!(of(325).unwrap().bridged.is_none());
    assert!(of(380).is_none());
    let soft = speed_band(Material::AlloySteel, Operation::Reaming, Hss, Some(120)).unwrap();
    assert_eq!(soft.bridged, Some(Bridged::Softer(150)));
    let outcome = asked(&[
        ("cut", "drill"),
        ("work", "tool-steel"),
        ("diameter", "1/4"),
        ("hardness", "300"),
    ]);
    let note = &outcome.answer.table_by_id("speeds").unwrap().note;
    assert!(note.contains("275") && note.contains("325"), "{note}");
}

/// End mill maker's catalogue, 2021, p. 23, carbide: at most 0.006 mm at 1 mm, 0.05 at 6 and 0.08 at 12, over all metals; HSS a little
/// more at most (a third). Straight between the sizes; no cutter of ours starts past it, and none falls as the diameter grows.
#[test]
fn the_feed_of_an_end_mill_grows_with_its_diameter() {
    let most = |mm: f64| {
        let (a, b) = if mm < 6.0 {
            ((1.0, 0.006), (6.0, 0.05))
        } else {
            ((6.0, 0.05), (12.0, 0.08))
        };
        a.1 + (b.1 - a.1) * (mm - a.0) / (b.0 - a.0)
    };
    for material in Material::ALL {
        let mut last = [0.0, 0.0];
        for mm in [
            1.0, 1.5, 2.0, 3.0, 3.175, 4.0, 6.0, 6.35, 8.0, 10.0, 12.0, 20.0, 25.4, 38.1, 50.0,
        ] {
            let d = Length::from_mm(mm);
            let hss = tooth_feed_band(MillingCutter::End, material, d).unwrap();
            let carbide = carbide_tooth_feed_band(MillingCutter::End, material, d);
            for (index, band) in [Some(hss), carbide].into_iter().enumerate() {
                let Some(band) = band else { continue };
                let start = band.start.mm_per_tooth();
                assert!(band.low <= band.start && band.start <= band.high);
                assert!(start + 1e-12 >= last[index], "{material:?} {mm} mm");
                assert!(
                    mm > 12.0 || start <= most(mm) * 1.34 || index == 1,
                    "{material:?} {mm} mm: {start}"
                );
                last[index] = start;
            }
            if let Some(carbide) = carbide.filter(|_| mm < 3.175) {
                assert!(carbide.start <= hss.start, "{material:?} {mm} mm");
            }
        }
    }
    // an end mill maker's chart, HSS, Table A, at 1/4 in: low-carbon steel 0.001, 4140 0.0005, nickel 0.0002; below in proportion
    let of = |material, d| {
        tooth_feed_band(MillingCutter::End, material, Length::from_inches(d))
            .unwrap()
            .start
            .in_per_tooth()
    };
    assert!(near(of(Material::MildSteel, 0.25), 0.001, 1e-9));
    assert!(near(of(Material::AlloySteel, 0.25), 0.0005, 1e-9));
    assert!(near(of(Material::Nickel, 0.25), 0.0002, 1e-9));
    assert!(near(of(Material::MildSteel, 0.125), 0.0005, 1e-9));
}

/// What the sheet itself sets is never called heavy, overloading or rubbing in the same answer.
#[test]
fn no_answer_contradicts_its_own_feed() {
    for material in Material::ALL {
        for tool in ["hss", "carbide"] {
            for (cut, teeth, size) in [
                ("end", "2", "1/32"),
                ("end", "4", "1/8"),
                ("end", "4", "1/2"),
                ("end", "2", "1"),
                ("saw", "60", "3"),
                ("slab", "8", "3"),
                ("face", "6", "4"),
                ("tslot", "6", "3/4"),
            ] {
                for radial in ["0.001", "1/64"] {
                    let outcome = asked(&[
                        ("cut", cut),
                        ("work", material.id()),
                        ("tool", tool),
                        ("diameter", size),
                        ("teeth", teeth),
                        ("width", radial),
                        ("depth", radial),
                        ("lies", "side"),
                    ]);
                    let Some(verdict) = outcome.answer.get("verdict") else {
                        continue;
                    };
                    let says = verdict.value.text(System::Inch);
                    for word in [
                        "Heavy",
                        "Overloads",
                        "Rubs",
                        "per tooth per",
                        "in/tooth per",
                    ] {
                        assert!(
                            !says.contains(word),
                            "{material:?} {tool} {cut} {size}: {says}"
                        );
                    }
                    assert!(cut != "saw" || !says.contains("faster feed"), "{says}");
                }
            }
        }
    }
}

/// Milling catalogue, 2021-2022, p. 115: whole feed at half a diameter, 75 % at one, 50 % at one and a half; deeper it prints nothing.
#[test]
fn a_slot_is_held_to_its_depth() {
    let slot = [
        ("cut", "end"),
        ("work", "mild-steel"),
        ("diameter", "1/2"),
        ("teeth", "4"),
        ("width", "1/2"),
    ];
    let at = |deep| with(&slot, &[("axial", deep)]);
    let whole = base(&at("1/4"), "chip-aim");
    for (deep, share) in [("1/2", 0.75), ("3/4", 0.5)] {
        assert!(
            near(base(&at(deep), "chip-aim") / whole, share, 1e-9),
            "{deep}"
        );
    }
    assert!(!has(&at("0.25"), "deep-pass") && has(&at("0.26"), "deep-pass"));
    assert!(matches!(at("0.751").answer.state, State::Withheld(_)));
    assert!(has(&asked(&slot), "slot-depth-open") && !has(&at("1/4"), "slot-depth-open"));
    // to one side: up to three diameters (common practice)
    let side = |deep| {
        with(
            &slot[..4],
            &[("width", "0.05"), ("lies", "side"), ("axial", deep)],
        )
    };
    assert!(!has(&side("0.75"), "long-edge") && has(&side("0.76"), "long-edge"));
    assert!(has(&side("1.5"), "long-edge"));
    assert!(matches!(side("1.51").answer.state, State::Withheld(_)));
}

/// Two drill makers' advice and a public drilling guide: from three diameters peck, with a tenth less.
#[test]
fn drills_are_told_of_depth_size_and_metal() {
    let drill = [
        ("cut", "drill"),
        ("work", "mild-steel"),
        ("diameter", "1/4"),
    ];
    let hole = |deep| with(&drill, &[("hole", deep)]);
    assert!(!has(&hole("0.74"), "peck") && has(&hole("0.75"), "peck"));
    for (deep, share) in [
        ("0.75", 0.9),
        ("1", 0.8),
        ("1.25", 0.7),
        ("1.5", 0.6),
        ("4", 0.6),
    ] {
        let (deep, shallow) = (hole(deep), hole("0.5"));
        for id in ["aim", "feed-aim"] {
            assert!(
                near(base(&deep, id) / base(&shallow, id), share, 1e-9),
                "{id}"
            );
        }
    }
    let sized = |size| asked(&[("cut", "drill"), ("work", "brass"), ("diameter", size)]);
    assert!(!has(&sized("1/2"), "pilot-hole") && has(&sized("33/64"), "pilot-hole"));
    assert!(has(&sized("1/2"), "brass-grabs") && !has(&hole("0.5"), "brass-grabs"));
    let of = |work| asked(&[("cut", "drill"), ("work", work), ("diameter", "1/4")]);
    assert!(has(&of("stainless"), "work-hardens") && !has(&of("mild-steel"), "work-hardens"));
    assert!(has(&of("brass"), "power-unknown") && !has(&of("mild-steel"), "power-unknown"));
}

/// By hand: 10 in/min at 20 per inch is 200 rpm, at 8 per inch 80 rpm.
#[test]
fn threading_is_held_by_the_carriage() {
    let thread = |pitch, steps| {
        asked(&[
            ("cut", "thread"),
            ("work", "brass"),
            ("diameter", "1/4"),
            ("pitch", pitch),
            ("lathe-steps", steps),
        ])
    };
    let rpm = |outcome: &Outcome| RotationalSpeed::from_base(base(outcome, "rpm")).rpm();
    assert!(near(rpm(&thread("20 tpi", "50;200")), 200.0, 1e-9));
    assert!(near(rpm(&thread("20 tpi", "50;201")), 50.0, 1e-9));
    assert!(near(rpm(&thread("8 tpi", "20;79;81")), 79.0, 1e-9));
    assert!(!has(&thread("20 tpi", "200;400"), "carriage-fast"));
    assert!(has(&thread("20 tpi", "201;400"), "carriage-fast"));
    // 1/2 in of thread at 10 in/min takes 3 s
    let run = with(
        &[
            ("cut", "thread"),
            ("work", "brass"),
            ("diameter", "1/4"),
            ("pitch", "20 tpi"),
        ],
        &[("lathe-steps", "200"), ("run", "1/2")],
    );
    assert!(near(base(&run, "time"), 3.0, 1e-9));
    let stop = &run.answer.caution("half-nuts").unwrap().text;
    assert!(stop.contains("0.8 s"), "{stop}"); // 1/8 in at 10 in/min is 0.75 s
    let open = asked(&[("cut", "thread"), ("work", "brass"), ("diameter", "1/4")]);
    assert!(has(&open, "no-pitch") && !has(&run, "no-pitch"));
}

/// Common practice: a tap begins at the slowest spindle speed; an entered speed is the user's own.
#[test]
fn a_tap_begins_at_the_slowest_speed() {
    let tap = [
        ("cut", "tap"),
        ("work", "aluminium"),
        ("diameter", "1/4"),
        ("pitch", "20 tpi"),
    ];
    let rpm = |outcome: &Outcome| RotationalSpeed::from_base(base(outcome, "rpm")).rpm();
    let slow = with(&tap, &[("press-steps", "610;250;390")]);
    assert!(near(rpm(&slow), 250.0, 1e-9));
    let own = with(&tap, &[("press-steps", "610;250;390"), ("speed", "40 sfm")]);
    assert!(near(rpm(&own), 610.0, 1e-9)); // 40 sfm on 1/4 in is 611 rpm
    let text = &slow.answer.caution("power-tap").unwrap().text;
    assert!(
        text.contains("blind hole") && text.contains("0.21 in per second"),
        "{text}"
    ); // 250/60/20
}

/// Half as fast again as the aim is far past it (common practice); the source's fastest figure is the end.
#[test]
fn a_machine_that_is_too_fast_is_told() {
    // gray iron starts at 60 ft/min: 229.2 rpm on 1 in, one and a half times that 343.8
    let at = |steps| {
        asked(&[
            ("cut", "drill"),
            ("work", "gray-iron"),
            ("diameter", "1"),
            ("press-steps", steps),
        ])
    };
    assert!(!has(&at("229"), "fastest-step") && !has(&at("229"), "far-too-fast"));
    assert!(has(&at("230"), "fastest-step") && !has(&at("230"), "far-too-fast"));
    assert!(has(&at("343"), "fastest-step") && !has(&at("343"), "far-too-fast"));
    assert!(has(&at("345"), "far-too-fast") && !has(&at("345"), "fastest-step"));
    // Kalpakjian's fastest for cast irons, 1500 rpm at 12.5 mm: 193 ft/min, 738 rpm on 1 in
    assert!(has(&at("737"), "far-too-fast"));
    // a countersink at half as fast again only chatters
    let sink = asked(&[
        ("cut", "sink"),
        ("work", "gray-iron"),
        ("diameter", "1"),
        ("press-steps", "100"),
    ]);
    assert!(has(&sink, "fastest-step") && !has(&sink, "far-too-fast"));
    assert!(matches!(at("745").answer.state, State::Withheld(_)));
}

/// Geometry: (4 − 1.5 × 1.25) / 2 = 1.0625 in below the collars; without an arbor (4 − 1.5) / 2 = 1.25 in.
#[test]
fn a_cutter_is_held_to_its_collars() {
    let side = |depth, arbor: &[(&str, &str)]| {
        with(
            &[
                ("cut", "side"),
                ("work", "gray-iron"),
                ("diameter", "4"),
                ("teeth", "18"),
                ("depth", depth),
            ],
            arbor,
        )
    };
    let arbor = [("arbor", "1 1/4 in")];
    assert!(
        !has(&side("1.06", &arbor), "collars-hit") && has(&side("1.07", &arbor), "collars-hit")
    );
    assert!(!has(&side("1.24", &[]), "collars") && has(&side("1.26", &[]), "collars"));
}

/// The thinning factor is held to three; the run-out is told past two (common practice).
#[test]
fn a_thin_chip_raises_the_feed_three_times_at_most() {
    let slab = |depth| {
        asked(&[
            ("cut", "slab"),
            ("work", "mild-steel"),
            ("diameter", "3"),
            ("teeth", "8"),
            ("depth", depth),
            ("thinning", "raise"),
        ])
    };
    let aim = |depth| FeedPerTooth::from_base(base(&slab(depth), "chip-aim")).in_per_tooth();
    // trade table of milling feeds: slab milling, light, 0.004 in; by geometry 6.15 times
    assert!(near(aim("0.02"), 0.012, 1e-9));
    // 1 / (2 sqrt(r - r2)) is two at r = 0.067: 0.201 in of 3
    assert!(has(&slab("0.19"), "thinning-run-out") && !has(&slab("0.21"), "thinning-run-out"));
}

/// Unit power worked apart: Machinery's Handbook, 31st ed., p. 1147, 0.74 hp per in3/min at 150 HB; C 1.25 at 0.004 in, W 1.3, E 0.75.
/// 1/2 in at 390 rpm: 0.7854 x 0.25 x 1.56 = 0.3063 in3/min, so 0.491 hp. Kalpakjian, cast irons: 1.6 to 5.5 W s/mm3 at the motor.
#[test]
fn power_stands_beside_speed_and_feed() {
    let drill = [
        ("cut", "drill"),
        ("work", "mild-steel"),
        ("diameter", "1/2"),
        ("turn-feed", "0.004 ipr"),
        ("press-steps", "390"),
    ];
    let hp = |outcome: &Outcome| Power::from_base(base(outcome, "motor-need")).horsepower();
    let o = with(&drill, &[("motor", "1 hp"), ("efficiency", "75 pct")]);
    assert!(near(hp(&o), 0.4911, 0.0005), "{}", hp(&o));
    assert!(near(base(&o, "share"), 0.4911, 0.0005));
    // 2 x 2.5 wide... slab: 0.1 in x 2 in x 3 in/min = 0.6 in3/min = 9832 mm3/min; (1.6 + 5.5) / 2 = 3.55 W s/mm3: 582 W
    let slab = asked(&[
        ("cut", "slab"),
        ("work", "gray-iron"),
        ("diameter", "2.5"),
        ("teeth", "8"),
        ("depth", "0.1"),
        ("axial", "2"),
        ("steps", "100"),
        ("chip", "0.00375 ipt"),
        ("feeds", "3 ipm"),
    ]);
    assert!(
        near(base(&slab, "motor-need"), 581.7, 0.5),
        "{}",
        base(&slab, "motor-need")
    );
    // Machinery's Handbook, 31st ed., p. 1152, example: 7/8 in, 0.008 in/rev, 2313 lbf of thrust
    let push = asked(&[
        ("cut", "drill"),
        ("work", "carbon-steel"),
        ("diameter", "7/8"),
        ("turn-feed", "0.008 ipr"),
    ]);
    assert!(near(
        Force::from_base(base(&push, "thrust")).lbf() / 2313.0,
        1.0,
        0.005
    ));
    // Groover's kind of turning: 90 ft/min x 0.010 x 0.06 in x 12 = 0.648 in3/min
    let turn = asked(&[
        ("cut", "turn"),
        ("work", "mild-steel"),
        ("diameter", "1"),
        ("turn-feed", "0.010 ipr"),
        ("cut-depth", "0.06"),
        ("lathe-steps", "343.7747"),
        ("lathe-motor", "0.5 hp"),
    ]);
    assert!(near(
        RemovalRate::from_base(base(&turn, "removal")).in3_per_min(),
        0.648,
        0.001
    ));
}

/// The motor's limit from both sides, at the nominal figure and at the high end.
#[test]
fn a_cut_that_stalls_is_a_stop_where_it_is_set() {
    let drill = [
        ("cut", "drill"),
        ("work", "mild-steel"),
        ("diameter", "1/2"),
    ];
    let free = asked(&drill);
    let need = Power::from_base(base(&free, "motor-need"));
    let (_, high) = free.answer.get("motor-need").unwrap().band.unwrap();
    let high = Power::from_base(high);
    let on = |power: Power| {
        let motor = format!("{:.6} W", power.watts());
        let motor = motor.replace(" W", "");
        let kilowatt = motor.parse::<f64>().unwrap() / 1000.0;
        with(&drill, &[("motor", &format!("{kilowatt:.8} kW"))])
    };
    assert!(has(&on(need * 0.99), "over-motor"));
    let between = on(need * 1.01);
    assert!(!has(&between, "over-motor") && has(&between, "over-motor-at-high-end"));
    assert!(has(&on(high * 0.99), "over-motor-at-high-end"));
    assert!(!has(&on(high * 1.01), "over-motor-at-high-end"));
}

/// "t = 60 × 7.475 / 2.00 = 224 s" has to come out as printed, in both systems.
#[test]
fn the_working_of_a_time_computes_as_printed() {
    let mut seen = 0;
    for pairs in [
        &[
            ("cut", "slab"),
            ("work", "gray-iron"),
            ("diameter", "2.5"),
            ("teeth", "8"),
            ("depth", "3/32"),
            ("length", "7"),
        ][..],
        &[
            ("cut", "end"),
            ("diameter", "1/2"),
            ("teeth", "4"),
            ("width", "1/8"),
            ("length", "4"),
            ("work", "mild-steel"),
        ][..],
        &[
            ("cut", "drill"),
            ("work", "mild-steel"),
            ("diameter", "3/8"),
            ("hole", "1"),
        ][..],
    ] {
        for system in [System::Inch, System::Metric] {
            let entry = Entry::of(pairs).in_system(System::Inch);
            let entry = if system == System::Metric {
                let mut metric = Entry::default().in_system(system);
                for (id, text) in pairs {
                    let unit = ["diameter", "depth", "width", "length", "hole"].contains(id);
                    metric.set(
                        id,
                        &if unit {
                            format!("{text} in")
                        } else {
                            (*text).to_owned()
                        },
                    );
                }
                metric
            } else {
                entry
            };
            let outcome = evaluate(by_id("speed-feed").unwrap(), &entry);
            for line in outcome.answer.steps.iter().flat_map(|step| &step.lines) {
                let Some(rest) = line.strip_prefix("t = 60 \u{d7} ") else {
                    continue;
                };
                let (travel, rest) = rest.split_once(" / ").unwrap();
                let (feed, time) = rest.split_once(" = ").unwrap();
                let travel: f64 = travel
                    .trim_matches(['(', ')'])
                    .split(" + ")
                    .map(|part| part.parse::<f64>().unwrap())
                    .sum();
                let feed: f64 = feed.parse().unwrap();
                let (minutes, seconds) = match time.strip_suffix(" min") {
                    Some(minutes) => (minutes.parse::<f64>().unwrap(), 0.0),
                    None => (
                        0.0,
                        time.strip_suffix(" s").unwrap().parse::<f64>().unwrap(),
                    ),
                };
                let printed = minutes * 60.0 + seconds;
                assert!((60.0 * travel / feed - printed).abs() < 0.6, "{line}");
                seen += 1;
            }
        }
    }
    assert_eq!(seen, 6);
}

/// Where nothing was entered an answer speaks of a typical machine, never of the reader's own.
#[test]
fn nothing_that_was_not_entered_is_called_yours() {
    let says = |outcome: &Outcome| {
        let lines = outcome.answer.lines.iter();
        lines
            .map(|line| line.says.to_string())
            .collect::<Vec<_>>()
            .join(" ")
    };
    let end = [
        ("cut", "end"),
        ("work", "mild-steel"),
        ("diameter", "1/2"),
        ("teeth", "4"),
        ("width", "1/8"),
        ("axial", "1/4"),
    ];
    let typical = says(&asked(&end));
    assert!(typical.contains("a typical mill") && typical.contains("a typical motor"));
    assert!(!typical.contains("your "), "{typical}");
    let own = says(&with(
        &end,
        &[
            ("steps", "100;400"),
            ("feeds", "1 ipm;2 ipm"),
            ("motor", "2 hp"),
        ],
    ));
    assert!(own.contains("your mill") && own.contains("Of your motor") && !own.contains("typical"));
}

/// The machine's speeds and feeds stand as on its plate.
#[test]
fn tables_stand_as_on_the_plate() {
    let outcome = asked(&[
        ("cut", "end"),
        ("work", "mild-steel"),
        ("diameter", "1/2"),
        ("teeth", "4"),
        ("width", "1/8"),
    ]);
    for id in ["steps", "feed-steps"] {
        let table = outcome.answer.table_by_id(id).unwrap();
        let figures: Vec<f64> = table
            .rows
            .iter()
            .map(|row| row.cells[0].base().unwrap())
            .collect();
        assert!(
            figures.len() > 3 && figures.windows(2).all(|two| two[0] < two[1]),
            "{figures:?}"
        );
        assert_eq!(table.rows.iter().filter(|row| row.chosen).count(), 1);
    }
}
