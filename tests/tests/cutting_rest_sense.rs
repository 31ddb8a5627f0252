//! Would a careful machinist act on the answers of tapping, power, chip load, time, finish and thread infeed? Figures against
//! arithmetic worked here, and every caution on both sides of its limit. Above each list: its source.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    clippy::disallowed_methods,
    reason = "a check panics when it fails"
)]

use std::f64::consts::PI;

use benchslate_core::quantity::*;
use benchslate_core::sheet::{Entry, Fault, Outcome, State, evaluate};
use benchslate_core::sheets::by_id;
use benchslate_core::standards::cutting::cutting_speeds::*;
use benchslate_tests::near;

type Pairs<'a> = Vec<(&'a str, &'a str)>;

fn ask(sheet: &str, pairs: &[(&str, &str)]) -> Outcome {
    evaluate(by_id(sheet).unwrap(), &Entry::of(pairs))
}

/// A whole answer.
fn figured(sheet: &str, pairs: &[(&str, &str)]) -> Outcome {
    let o = ask(sheet, pairs);
    let faults: Vec<String> = o.faults().map(Fault::text).collect();
    assert_eq!(
        o.answer.state,
        State::Complete,
        "{sheet} {pairs:?} {faults:?}"
    );
    o
}

/// The pairs with others set in place of theirs.
fn with<'a>(pairs: &[(&'a str, &'a str)], more: &[(&'a str, &'a str)]) -> Pairs<'a> {
    let mut out: Pairs = pairs
        .iter()
        .filter(|(id, _)| more.iter().all(|(other, _)| other != id))
        .copied()
        .collect();
    out.extend_from_slice(more);
    out
}

fn base(o: &Outcome, id: &str) -> f64 {
    o.answer
        .get(id)
        .unwrap_or_else(|| panic!("no {id}"))
        .value
        .base()
        .unwrap()
}

fn stops(o: &Outcome, id: &str) -> bool {
    o.answer.caution(id).is_some_and(|caution| caution.stop)
}

fn notes(o: &Outcome, id: &str) -> bool {
    o.answer.caution(id).is_some_and(|caution| !caution.stop)
}

fn text(o: &Outcome, id: &str) -> String {
    o.answer.get(id).unwrap().value.text_with_unit(System::Inch)
}

/// The working's lines as one text.
fn working(o: &Outcome) -> String {
    let lines: Vec<String> = o
        .answer
        .steps
        .iter()
        .map(|step| step.lines.join("\n"))
        .collect();
    lines.join("\n")
}

fn fault(o: &Outcome, field: &str) -> String {
    let found: Vec<String> = o
        .faults()
        .filter(|fault| fault.field == field)
        .map(Fault::text)
        .collect();
    assert_eq!(found.len(), 1, "{found:?}");
    found[0].clone()
}

const TAP: &[(&str, &str)] = &[
    ("thread", "1/4-20"),
    ("work", "mild-steel"),
    ("depth", "1/2 in"),
    ("how", "machine"),
    ("press-steps", "610;250;390"),
];

/// Low and high, ft/min: a tap maker's page, London, machine tapping with HSS taps.
const LONDON: &[(Material, f64, f64)] = &[
    (Material::MildSteel, 30.0, 50.0),
    (Material::CarbonSteel, 20.0, 40.0),
    (Material::StainlessSteel, 10.0, 20.0),
    (Material::GrayIron, 30.0, 60.0),
];

#[test]
fn london_rows_stand_in_the_tapping_bands() {
    for &(material, low, high) in LONDON {
        let band = speed_band(
            material,
            Operation::Tapping,
            CutterMaterial::HighSpeedSteel,
            None,
        );
        let rows = band.unwrap().rows;
        assert!(
            rows.iter().any(|row| near(row.low_speed().sfm(), low, 1e-9)
                && near(row.high_speed().sfm(), high, 1e-9)),
            "{material:?}"
        );
    }
    // the page's slowest figure for mild steel and gray iron is where tapping starts
    for work in ["mild-steel", "gray-iron"] {
        let o = figured("tapping", &with(TAP, &[("work", work)]));
        assert!(near(
            SurfaceSpeed::from_base(base(&o, "aim")).sfm(),
            30.0,
            1e-9
        ));
    }
}

#[test]
fn a_spindle_without_a_head_starts_at_its_slowest_speed() {
    let rpm = |more: &[(&'static str, &'static str)]| {
        RotationalSpeed::from_base(base(&figured("tapping", &with(TAP, more)), "rpm")).rpm()
    };
    // 30 ft/min on 1/4 in is 458 rpm (12 × 30 / (π / 4))
    assert!(near(rpm(&[]), 250.0, 1e-9));
    assert!(near(rpm(&[("head", "reversing")]), 390.0, 1e-9));
    assert!(near(rpm(&[("speed", "30 sfm")]), 390.0, 1e-9));
    // 10 threads of 1/20 in and the 5 of a plug tap: 15 turns, 60 × 15 / 250 s
    let o = figured("tapping", TAP);
    assert!(near(base(&o, "seconds"), 3.6, 1e-9));
    assert!(
        figured("tapping", &with(TAP, &[("how", "hand")]))
            .answer
            .get("seconds")
            .is_none()
    );
}

#[test]
fn the_slowest_speed_may_be_too_fast() {
    // 458.4 rpm at 30 ft/min; 917 rpm at 60, the fastest figure
    let at = |steps| ask("tapping", &with(TAP, &[("press-steps", steps)]));
    assert!(!stops(&at("458;1000"), "slowest-too-fast"));
    assert!(stops(&at("459;1000"), "slowest-too-fast"));
    assert!(stops(&at("916;1000"), "slowest-too-fast"));
    assert!(matches!(at("918;1000").answer.state, State::Withheld(_)));
}

#[test]
fn cautions_of_the_hand_and_of_the_spindle_keep_apart() {
    let all = [
        "hand-tap",
        "blind-hole",
        "power-tap",
        "blind-by-power",
        "tapping-head",
        "blind-with-head",
    ];
    for (how, head, hole, wanted) in [
        ("hand", "none", "through", &["hand-tap"][..]),
        ("hand", "none", "blind", &["hand-tap", "blind-hole"]),
        ("machine", "none", "through", &["power-tap"]),
        ("machine", "none", "blind", &["power-tap", "blind-by-power"]),
        ("machine", "reversing", "through", &["tapping-head"]),
        (
            "machine",
            "reversing",
            "blind",
            &["tapping-head", "blind-with-head"],
        ),
    ] {
        let o = figured(
            "tapping",
            &with(TAP, &[("how", how), ("head", head), ("hole", hole)]),
        );
        for id in all {
            assert_eq!(
                o.answer.caution(id).is_some(),
                wanted.contains(&id),
                "{how} {head} {hole} {id}"
            );
            // all by the spindle are stops, all by hand notes
            assert_eq!(
                stops(&o, id),
                wanted.contains(&id) && how == "machine",
                "{id}"
            );
        }
        let turns = o.answer.get("turns").unwrap().says.to_string();
        assert_eq!(turns.contains("Back off"), how == "hand", "{turns}");
        let rows = &o.answer.table_by_id("stops").unwrap().rows;
        let told: Vec<String> = rows
            .iter()
            .flat_map(|row| &row.cells)
            .map(|cell| cell.text(System::Inch))
            .collect();
        assert_eq!(told.join(" ").contains("back off"), how == "hand");
        assert_eq!(told.join(" ").contains("switch off"), how == "machine");
    }
    // a spiral-point tap pushes its chips ahead: it is not backed off
    let o = figured(
        "tapping",
        &with(TAP, &[("how", "hand"), ("flutes", "spiral-point")]),
    );
    assert!(
        o.answer
            .get("turns")
            .unwrap()
            .says
            .contains("without backing off")
    );
    // the blind hole's setting sends to the head or the hand, the through hole's does not
    let says = |hole| {
        figured("tapping", &with(TAP, &[("hole", hole)]))
            .answer
            .get("rpm")
            .unwrap()
            .says
            .to_string()
    };
    assert!(
        says("blind").contains("only with a releasing")
            && says("through").starts_with("The slowest speed")
    );
}

#[test]
fn cautions_of_the_thread_on_both_sides() {
    let o = |more: &[(&'static str, &'static str)]| figured("tapping", &with(TAP, more));
    // OD1621, p. 177: 83 % at most
    assert!(
        !notes(&o(&[("share", "83 pct")]), "much-thread")
            && notes(&o(&[("share", "83.5 pct")]), "much-thread")
    );
    // two diameters of thread
    assert!(
        !notes(&o(&[("depth", "0.5 in")]), "deep") && notes(&o(&[("depth", "0.51 in")]), "deep")
    );
    assert!(!notes(&o(&[]), "stainless") && notes(&o(&[("work", "stainless")]), "stainless"));
    for (work, known) in [("mild-steel", true), ("titanium", false)] {
        let o = o(&[("work", work), ("press-steps", "100")]);
        assert_eq!(
            (notes(&o, "torque-basis"), notes(&o, "torque-unknown")),
            (known, !known),
            "{work}"
        );
    }
    // less thread in stainless than in mild steel, at any depth
    for depth in ["1/4 in", "0.45 in", "0.6 in"] {
        let share = |work| base(&o(&[("work", work), ("depth", depth)]), "share-aim");
        assert!(share("stainless") < share("mild-steel"), "{depth}");
    }
    let words: Vec<String> = o(&[("work", "stainless"), ("hole", "blind"), ("how", "hand")])
        .answer
        .cautions
        .iter()
        .map(|caution| caution.text.to_string())
        .collect();
    assert!(!words.join(" ").contains("taper or plug"));
}

#[test]
fn the_motor_of_the_tap_on_both_sides() {
    let o = figured("tapping", TAP);
    let (nominal, high) = (
        base(&o, "power"),
        o.answer.get("power").unwrap().band.unwrap().1,
    );
    let at = |power: f64, share: f64| {
        let motor = format!("{:.9} kW", power / 0.75 / share / 1000.0);
        figured(
            "tapping",
            &with(TAP, &[("press-steps", "250"), ("motor", motor.as_str())]),
        )
    };
    assert!(high > nominal * 1.01);
    assert!(stops(&at(nominal, 1.001), "over-motor"));
    let under = at(nominal, 0.999);
    assert!(!stops(&under, "over-motor") && notes(&under, "over-motor-at-high-end"));
    assert!(
        at(high, 0.999)
            .answer
            .caution("over-motor-at-high-end")
            .is_none()
    );
}

/// Cut by cut: the entry, and the removal worked apart, mm³/min.
fn cuts() -> Vec<(&'static str, Pairs<'static>, f64)> {
    vec![
        (
            "mill",
            vec![
                ("cut", "mill"),
                ("diameter", "50 mm"),
                ("rpm", "100"),
                ("teeth", "8"),
                ("feed", "80 mm/min"),
                ("engaged", "5 mm"),
                ("axial", "20 mm"),
            ],
            5.0 * 20.0 * 80.0,
        ),
        (
            "turn",
            vec![
                ("cut", "turn"),
                ("diameter", "40 mm"),
                ("rpm", "200"),
                ("turn-feed", "0.2 mm/rev"),
                ("depth", "1.5 mm"),
                ("entering", "45 deg"),
            ],
            PI * 40.0 * 200.0 * 0.2 * 1.5,
        ),
        (
            "drill",
            vec![
                ("cut", "drill"),
                ("diameter", "12 mm"),
                ("rpm", "300"),
                ("turn-feed", "0.15 mm/rev"),
            ],
            PI * 144.0 / 4.0 * 0.15 * 300.0,
        ),
    ]
}

#[test]
fn power_of_every_cut_by_every_method() {
    // Kp 0.74 at 150 HB (Machinery's Handbook 31st ed., p. 1147); C between the printed rows at 0.1 mm (1.2535), 0.2 mm (1.0886)
    // and 0.15 mm (1.1547) by straight lines; W 1.1, 1.3, 1.3; 1 hp per in³/min is 745.7 W / 16,387.064 mm³
    let unit = [
        ("slab", 1.1, 0.1),
        ("turn-normal", 1.3, 0.2),
        ("drill", 1.3, 0.15),
    ];
    let factor = |mm: f64| {
        let rows = [
            (0.003, 1.3),
            (0.004, 1.25),
            (0.006, 1.15),
            (0.007, 1.11),
            (0.009, 1.06),
        ];
        let f = mm / 25.4;
        let at = rows
            .windows(2)
            .find(|pair| pair[0].0 <= f && f <= pair[1].0)
            .unwrap();
        at[0].1 + (at[1].1 - at[0].1) * (f - at[0].0) / (at[1].0 - at[0].0)
    };
    // chips: 8 teeth at 100 rpm and 80 mm/min 0.1 mm a tooth, mean over the arc; f sin 45°; f/2 sin 59°
    let arc = f64::acos(1.0 - 2.0 * 5.0 / 50.0);
    let chips = [
        0.1 * 2.0 * 0.1 / arc,
        0.2 * f64::sin(PI / 4.0),
        0.075 * f64::sin(59.0 * PI / 180.0),
    ];
    for (index, (cut, pairs, removal)) in cuts().into_iter().enumerate() {
        let share = with(&pairs, &[("efficiency", "80 pct")]);
        let check = |o: &Outcome, cutter: f64, what: &str| {
            assert!(
                near(base(o, "cutter-need") / cutter, 1.0, 1e-4),
                "{cut} {what}: {} for {cutter}",
                base(o, "cutter-need")
            );
            assert!(
                near(base(o, "motor-need") / cutter * 0.8, 1.0, 1e-4),
                "{cut} {what}"
            );
        };
        let (wear, w, feed) = unit[index];
        let o = figured(
            "cutting-power",
            &with(
                &share,
                &[("by", "unit"), ("hardness", "150"), ("wear", wear)],
            ),
        );
        check(
            &o,
            0.74 * 745.699_87 / 16_387.064 * removal * factor(feed) * w,
            "unit",
        );
        // C45 has no reference rake: 1.2 for milling all the same; soft steel 1800 at 6 degrees, mc 0.2 (Tabellenbuch)
        for (metal, kc11, mc, rake) in [
            ("c45", 2220.0, 0.14, 1.0),
            ("soft-steel", 1800.0, 0.2, 1.0 - 0.06),
        ] {
            let o = figured(
                "cutting-power",
                &with(&share, &[("by", "kc"), ("metal", metal)]),
            );
            let kc = if cut == "mill" {
                kc11 * 1.2 / rake
            } else {
                kc11
            };
            check(&o, kc / chips[index].powf(mc) * removal / 60_000.0, metal);
        }
        // Kalpakjian, steels: 2.7 to 9.3 W s/mm³ at the motor, where 80 % is in it
        let o = figured(
            "cutting-power",
            &with(&share, &[("by", "energy"), ("kind", "steel")]),
        );
        check(&o, 6.0 * removal / 60.0 * 0.8, "energy");
        // the energy's own 80 % holds whatever the drive
        let other = figured(
            "cutting-power",
            &with(
                &pairs,
                &[
                    ("by", "energy"),
                    ("kind", "steel"),
                    ("efficiency", "50 pct"),
                ],
            ),
        );
        assert!(near(
            base(&other, "motor-need") / base(&o, "motor-need"),
            1.0,
            1e-9
        ));
    }
}

#[test]
fn the_entering_angle_thins_the_chip() {
    let at = |angle| {
        let o = figured(
            "cutting-power",
            &with(
                &cuts()[1].1,
                &[("by", "kc"), ("metal", "c45"), ("entering", angle)],
            ),
        );
        base(&o, "cutter-need")
    };
    // the same metal goes; kc grows with sin^-mc
    assert!(near(at("30 deg") / at("90 deg"), 0.5f64.powf(-0.14), 1e-9));
}

#[test]
fn the_motor_stops_on_both_sides_in_every_cut_and_method() {
    let mut entries: Vec<Pairs> = Vec::new();
    for (_, pairs, _) in cuts() {
        entries.push(with(
            &pairs,
            &[("by", "unit"), ("hardness", "150"), ("wear", "face-heavy")],
        ));
        entries.push(with(&pairs, &[("by", "kc"), ("metal", "e295")]));
        entries.push(with(&pairs, &[("by", "energy"), ("kind", "steel")]));
    }
    entries.push(with(
        &cuts()[2].1,
        &[
            ("by", "unit"),
            ("hardness", "150"),
            ("wear", "drill"),
            ("kd", "18000"),
        ],
    ));
    entries.push(vec![
        ("cut", "tap"),
        ("thread", "3/8-16"),
        ("tap-work", "mild-steel"),
        ("rpm", "250"),
    ]);
    for entry in entries {
        let o = figured("cutting-power", &entry);
        let (nominal, high) = (
            base(&o, "motor-need"),
            o.answer.get("motor-need").unwrap().band.unwrap().1,
        );
        let at = |power: f64, share: f64| {
            let motor = format!("{:.9} kW", power / share / 1000.0);
            figured("cutting-power", &with(&entry, &[("motor", motor.as_str())]))
        };
        let over = at(nominal, 1.001);
        assert!(stops(&over, "over-motor"), "{entry:?}");
        assert!(
            over.answer.caution("motor-is-one-limit").is_none()
                && over.answer.caution("over-motor-at-high-end").is_none()
        );
        assert!(!stops(&at(nominal, 0.999), "over-motor"), "{entry:?}");
        if high > nominal * 1.01 {
            assert!(
                notes(&at(high, 1.001), "over-motor-at-high-end"),
                "{entry:?}"
            );
        }
        let well = at(high, 0.999);
        assert!(
            notes(&well, "motor-is-one-limit")
                && well.answer.caution("over-motor-at-high-end").is_none()
        );
        assert!(well.answer.caution("over-motor").is_none());
    }
}

const SAW: &[(&str, &str)] = &[
    ("by", "unit"),
    ("hardness", "150"),
    ("diameter", "4 in"),
    ("rpm", "100"),
    ("teeth", "20"),
    ("feed", "2 ipm"),
    ("engaged", "1/2 in"),
    ("axial", "1/16 in"),
];

#[test]
fn small_chips_have_a_power_too() {
    // 4 in saw, 36 teeth, 70 rpm, 2 in/min: 0.0008 in per tooth; C = (0.000794/0.012)^-0.2, Q = 1/16 in³/min, Kp 0.74, W 1.1
    let o = figured(
        "cutting-power",
        &with(SAW, &[("rpm", "70"), ("teeth", "36")]),
    );
    let c = (2.0f64 / 70.0 / 36.0 / 0.012).powf(-0.2);
    assert!(near(
        Power::from_base(base(&o, "cutter-need")).horsepower(),
        0.74 * c / 16.0 * 1.1,
        1e-6
    ));
    assert!(working(&o).contains("0.00079 in/tooth") && !working(&o).contains("in/rev"));
    // 2000 teeth a minute: 2 in/min is the table's end, 0.001 in per tooth; 0.2 in/min is where the factor ends
    assert!(!notes(&figured("cutting-power", SAW), "thin-feed"));
    assert!(notes(
        &figured("cutting-power", &with(SAW, &[("feed", "1.99 ipm")])),
        "thin-feed"
    ));
    assert!(notes(
        &figured("cutting-power", &with(SAW, &[("feed", "0.2 ipm")])),
        "thin-feed"
    ));
    let said = fault(
        &ask("cutting-power", &with(SAW, &[("feed", "0.19 ipm")])),
        "feed",
    );
    assert!(
        said.contains("in/tooth") && said.contains("0.0001 to 0.060"),
        "{said}"
    );
    // per rev in the lathe: the table's far end
    let turned = with(
        &cuts()[1].1,
        &[
            ("by", "unit"),
            ("hardness", "150"),
            ("turn-feed", "0.060 ipr"),
        ],
    );
    figured("cutting-power", &turned);
    let said = fault(
        &ask(
            "cutting-power",
            &with(&turned, &[("turn-feed", "0.061 ipr")]),
        ),
        "turn-feed",
    );
    assert!(
        said.contains("in/rev") && said.contains("per rev"),
        "{said}"
    );
    // (f/0.012)^-0.2 lies within 3 % of every printed row (Machinery's Handbook, Machining Power, Table 2, from memory)
    for row in benchslate_core::standards::cutting::unit_power::FEED_FACTOR {
        assert!(
            ((row.feed_in / 0.012).powf(-0.2) / row.c - 1.0).abs() < 0.03,
            "{row:?}"
        );
    }
}

#[test]
fn kienzle_keeps_to_its_chips() {
    let turned = with(
        &cuts()[1].1,
        &[
            ("by", "kc"),
            ("metal", "c45"),
            ("entering", "90 deg"),
            ("depth", "1 mm"),
        ],
    );
    let at = |feed| ask("cutting-power", &with(&turned, &[("turn-feed", feed)]));
    assert!(notes(&at("0.049 mm/rev"), "thin-chip") && !notes(&at("0.051 mm/rev"), "thin-chip"));
    assert_eq!(at("2.5 mm/rev").answer.state, State::Complete);
    assert!(fault(&at("2.6 mm/rev"), "turn-feed").contains("kc1.1 holds to"));
    // full slot: the mean chip is 2/pi of the feed per tooth (geometry)
    let slot = with(
        &cuts()[0].1,
        &[("by", "kc"), ("metal", "c45"), ("engaged", "50 mm")],
    );
    let kc = 2220.0 * 1.2 / (0.1f64 * 2.0 / PI).powf(0.14);
    let o = figured("cutting-power", &slot);
    assert!(near(
        base(&o, "cutter-need") / (kc * 50.0 * 20.0 * 80.0 / 60_000.0),
        1.0,
        1e-9
    ));
    assert!(
        fault(
            &ask("cutting-power", &with(&slot, &[("engaged", "50.1 mm")])),
            "engaged"
        )
        .contains("more than the cutter's own")
    );
    let bar = |depth| {
        ask(
            "cutting-power",
            &with(&turned, &[("turn-feed", "0.1 mm/rev"), ("depth", depth)]),
        )
    };
    assert_eq!(bar("19.9 mm").answer.state, State::Complete);
    assert!(fault(&bar("20 mm"), "depth").contains("nothing would be left"));
}

#[test]
fn arbor_gang_and_drill_have_their_notes() {
    let cut = with(&cuts()[0].1, &[("by", "kc"), ("metal", "iron")]);
    let torque = Torque::from_base(base(&figured("cutting-power", &cut), "torque")).lbf_in();
    // 6000 psi: d = (16 M / (pi 6000))^(1/3)
    let limit = (16.0 * torque / PI / 6000.0).cbrt();
    let at = |share: f64| {
        let arbor = format!("{:.6} in", limit * share);
        figured("cutting-power", &with(&cut, &[("arbor", arbor.as_str())]))
    };
    assert!(notes(&at(0.999), "arbor-shear") && at(1.001).answer.caution("arbor-shear").is_none());
    let gang = figured("cutting-power", &with(&cut, &[("others", "60 mm~8~10 mm")]));
    assert!(notes(&gang, "gang-power") && !notes(&figured("cutting-power", &cut), "gang-power"));
    let drill = with(
        &cuts()[2].1,
        &[("by", "unit"), ("hardness", "150"), ("wear", "drill")],
    );
    assert!(!notes(&figured("cutting-power", &drill), "two-figures"));
    assert!(notes(
        &figured("cutting-power", &with(&drill, &[("kd", "24000")])),
        "two-figures"
    ));
}

const CHIP: &[(&str, &str)] = &[
    ("teeth", "2"),
    ("rpm", "1000"),
    ("diameter", "1/8 in"),
    ("engaged", "1/16 in"),
];

#[test]
fn the_chip_needs_feed_teeth_and_speed_alone() {
    // 3 in/min over 4 × 670 is 0.00112 in
    let o = figured(
        "chip-load",
        &[("teeth", "4"), ("rpm", "670"), ("feed", "3 ipm")],
    );
    assert!(near(
        FeedPerTooth::from_base(base(&o, "chip")).in_per_tooth(),
        3.0 / 2680.0,
        1e-12
    ));
    assert!(
        text(&o, "verdict").starts_with("Cuts from half the diameter up")
            && o.answer.get("thickest").is_none()
    );
    let o = figured(
        "chip-load",
        &[("teeth", "4"), ("rpm", "670"), ("feed", "0.5 ipm")],
    );
    assert!(text(&o, "verdict").starts_with("Rubs"));
    // with the diameter alone an end mill's chart speaks
    let o = figured(
        "chip-load",
        &[
            ("teeth", "2"),
            ("rpm", "1650"),
            ("feed", "6 ipm"),
            ("diameter", "1/8"),
        ],
    );
    assert!(text(&o, "verdict").starts_with("Too heavy"));
    // half the diameter or more leaves the chip, and the mean is 2 r / phi
    let o = figured(
        "chip-load",
        &with(CHIP, &[("feed", "1 ipm"), ("engaged", "1/8 in")]),
    );
    assert!(near(
        base(&o, "mean") / base(&o, "thickest"),
        2.0 / PI,
        1e-9
    ));
}

/// Diameter, feed per tooth in low-carbon steel and in aluminum, in: an end mill maker's chart, HSS; 1/4 and 1 in are printed, 1/16
/// and 1/8 in are in proportion (end mill maker's catalogue, 2021, p. 23: the feed grows with the diameter).
const HSS_CHART: &[(&str, f64, f64)] = &[
    ("1/16", 0.00025, 0.00075),
    ("1/8", 0.0005, 0.0015),
    ("1/4", 0.001, 0.003),
    ("1", 0.004, 0.009),
];
/// The same, an end mill maker's chart, carbide: low-carbon steel and aluminum (1/8 in aluminum in proportion).
const CARBIDE_CHART: &[(&str, f64, f64)] = &[
    ("1/8", 0.0005, 0.001),
    ("1/4", 0.001, 0.002),
    ("1/2", 0.003, 0.004),
    ("3/4", 0.0045, 0.006),
    ("1", 0.0065, 0.008),
];

#[test]
fn one_verdict_by_the_charts() {
    for (tool, chart) in [("hss", HSS_CHART), ("carbide", CARBIDE_CHART)] {
        for &(d, steel, soft) in chart {
            let at = |chip: f64| {
                let feed = format!("{:.9} ipm", chip * 2000.0);
                figured(
                    "chip-load",
                    &with(
                        CHIP,
                        &[
                            ("tool", tool),
                            ("diameter", d),
                            ("engaged", d),
                            ("feed", feed.as_str()),
                        ],
                    ),
                )
            };
            let begins = |chip: f64, word: &str| {
                let o = at(chip);
                assert!(
                    text(&o, "verdict").starts_with(word),
                    "{tool} {d} {chip}: {}",
                    text(&o, "verdict")
                );
                assert_eq!(stops(&o, "too-heavy"), word == "Too heavy");
                assert_eq!(notes(&o, "heavy"), word == "Heavy");
            };
            begins(steel * 0.999, "Cuts");
            begins(steel * 1.001, "Heavy");
            begins(soft * 0.999, "Heavy");
            begins(soft * 1.001, "Too heavy");
        }
    }
    // over 1 in the charts end: a slab cutter or face mill takes more
    let o = figured(
        "chip-load",
        &with(CHIP, &[("diameter", "1 1/8 in"), ("feed", "40 ipm")]),
    );
    assert!(text(&o, "verdict").starts_with("Cuts"));
    // a narrow cut thins a raised feed: 1/100 of the diameter leaves a fifth of it
    let o = figured(
        "chip-load",
        &with(
            CHIP,
            &[
                ("diameter", "1/2"),
                ("engaged", "0.005 in"),
                ("feed", "6 ipm"),
            ],
        ),
    );
    assert!(text(&o, "verdict").starts_with("Cuts"));
}

#[test]
fn rubbing_slots_and_teeth_on_both_sides() {
    let at = |more: &[(&'static str, &'static str)]| figured("chip-load", &with(CHIP, more));
    // half a thou for HSS, a thou for carbide; a quarter of a thou at 1/8 in
    for (tool, d, feed_low, feed_high) in [
        ("hss", "1/2", "0.99 ipm", "1.01 ipm"),
        ("carbide", "1/2", "1.99 ipm", "2.01 ipm"),
        ("hss", "1/8", "0.49 ipm", "0.51 ipm"),
    ] {
        let verdict = |feed| {
            text(
                &at(&[
                    ("tool", tool),
                    ("diameter", d),
                    ("engaged", d),
                    ("feed", feed),
                ]),
                "verdict",
            )
        };
        assert!(
            verdict(feed_low).starts_with("Rubs") && verdict(feed_high).starts_with("Cuts"),
            "{tool} {d}"
        );
    }
    let slot = |engaged, axial| at(&[("engaged", engaged), ("axial", axial), ("feed", "1 ipm")]);
    assert!(
        notes(&slot("1/8 in", "1/8 in"), "full-slot")
            && !stops(&slot("1/8 in", "1/8 in"), "deep-slot")
    );
    assert!(
        stops(&slot("1/8 in", "0.126 in"), "deep-slot")
            && !notes(&slot("1/8 in", "0.126 in"), "full-slot")
    );
    let beside = slot("0.124 in", "0.2 in");
    assert!(
        beside.answer.caution("full-slot").is_none()
            && beside.answer.caution("deep-slot").is_none()
    );
    // half engaged is a quarter turn: 4 teeth make one at work
    let teeth = |teeth| {
        at(&[
            ("teeth", teeth),
            ("feed", "1 ipm"),
            ("diameter", "1/2"),
            ("engaged", "1/4"),
        ])
    };
    assert!(notes(&teeth("3"), "load-bands") && !notes(&teeth("4"), "load-bands"));
}

#[test]
fn a_side_cut_runs_clear_by_its_own_approach() {
    // plane geometry: sqrt(w (D − w)) ahead and as much behind; the radius from half the diameter up; centered D − A
    let at = |cut, width: &'static str, run| {
        let o = figured(
            "cut-time",
            &[
                ("cut", cut),
                ("diameter", "4.863"),
                ("width", width),
                ("length", "4.804"),
                ("overrun", "0.4"),
                ("run", run),
                ("feed", "2 ipm"),
            ],
        );
        Length::from_base(base(&o, "travel")).inches()
    };
    let side = f64::sqrt(0.4002 * (4.863 - 0.4002));
    assert!(near(at("offset", "0.4002", "touch"), 5.204 + side, 1e-5));
    assert!(near(
        at("offset", "0.4002", "clear"),
        5.204 + 2.0 * side,
        1e-5
    )); // 7.877
    assert!(near(at("offset", "3", "clear"), 5.204 + 4.863, 1e-5));
    assert!(near(at("centred", "3", "clear"), 5.204 + 4.863, 1e-5));
    assert!(near(
        at("centred", "3", "touch"),
        5.204 + (4.863 - f64::sqrt(4.863f64.powi(2) - 9.0)) / 2.0,
        1e-5
    ));
}

#[test]
fn times_are_told_in_minutes_and_seconds() {
    let at = |length| {
        figured(
            "cut-time",
            &[
                ("cut", "drill"),
                ("diameter", "3/8"),
                ("point", "118"),
                ("length", length),
                ("feed", "3 ipm"),
            ],
        )
    };
    // 7 in and the point of 0.1127 in at 3 in/min: 7.1127 / 3 min = 142.3 s
    let o = at("7 in");
    assert_eq!(text(&o, "time"), "2:22 min");
    assert!(
        working(&o).contains("60 \u{d7} (7.0000 + 0.1127 + 0.0000 + 0.0000) / 3.000 = 142.3 s"),
        "{}",
        working(&o)
    );
    // 4.35 in are 89.25 s; 200 in are 66 min 40 s and the point's 2 s
    assert_eq!(text(&at("4.35 in"), "time"), "89.3 s");
    assert_eq!(text(&at("200 in"), "time"), "1:06:42 h");
    let turned = figured(
        "cut-time",
        &[
            ("cut", "turn"),
            ("diameter", "1.5"),
            ("length", "6"),
            ("rpm", "200"),
            ("turn-feed", "0.008 ipr"),
        ],
    );
    assert!(
        working(&turned).contains("60 \u{d7} (6.0000 + 0.0000) / (0.00800 \u{d7} 200) = 225.0 s")
    );
    // cautions of time, each with its cut
    assert!(stops(&turned, "engage-feed") && !notes(&turned, "overrun"));
    assert!(notes(&o, "overrun") && !notes(&o, "breakthrough"));
    let through = figured(
        "cut-time",
        &[
            ("cut", "drill"),
            ("diameter", "3/8"),
            ("length", "1"),
            ("feed", "3 ipm"),
            ("through", "yes"),
        ],
    );
    assert!(notes(&through, "breakthrough"));
    let slab = [
        ("cut", "slab"),
        ("diameter", "2.5"),
        ("depth", "0.1"),
        ("length", "7"),
        ("feed", "3 ipm"),
    ];
    let gang = figured("cut-time", &with(&slab, &[("largest", "3")]));
    assert!(notes(&gang, "gang-unmeasured") && !notes(&gang, "gang-approach"));
    let others = figured("cut-time", &with(&slab, &[("others", "3 in~1/2 in")]));
    assert!(notes(&others, "gang-approach") && !notes(&others, "gang-unmeasured"));
    assert!(
        figured("cut-time", &slab)
            .answer
            .caution("gang-approach")
            .is_none()
    );
}

#[test]
fn the_finish_keeps_to_its_nose() {
    // Groover's constant through the sheet: f²/32r, and a fault once the feed passes the radius
    let o = figured(
        "surface-finish",
        &[("radius", "1/32"), ("turn-feed", "0.010 ipr")],
    );
    assert!(near(
        Length::from_base(base(&o, "mean")).inches() * 1e6,
        100.0,
        1e-6
    ));
    let at = |feed| {
        ask(
            "surface-finish",
            &[("radius", "0.010 in"), ("turn-feed", feed)],
        )
    };
    assert_eq!(at("0.010 ipr").answer.state, State::Complete);
    assert!(fault(&at("0.0101 ipr"), "turn-feed").contains("0.0100 in"));
    assert!(notes(&o, "real-surface"));
}

#[test]
fn passes_go_by_the_pitch() {
    // 29 1/2 degrees: x = 0.5954 P / cos 29.5°; (x / 0.025)² rounded up, from 8 to 60
    for (pitch, passes) in [
        ("20 tpi", 8.0),
        ("16 tpi", 8.0),
        ("10 tpi", 8.0),
        ("8 tpi", 12.0),
        ("6 tpi", 21.0),
        ("4 tpi", 47.0),
        ("2 tpi", 60.0),
    ] {
        let o = figured("thread-infeed", &[("pitch", pitch)]);
        assert!(near(base(&o, "pass-count"), passes, 1e-9), "{pitch}");
        assert_eq!(
            o.answer.table_by_id("passes").unwrap().rows.len() as f64,
            passes
        );
        // too coarse for the list: the stop is said and the cure is not "more passes"
        assert_eq!(stops(&o, "heavy-first-pass"), pitch == "2 tpi", "{pitch}");
    }
    let own = |passes| figured("thread-infeed", &[("pitch", "4 tpi"), ("passes", passes)]);
    assert!(stops(&own("46"), "heavy-first-pass") && !stops(&own("47"), "heavy-first-pass"));
    assert!(
        own("8")
            .answer
            .caution("heavy-first-pass")
            .unwrap()
            .text
            .contains("Take 47 passes")
    );
}

#[test]
fn the_carriage_and_the_half_nuts() {
    // 20 threads an inch: 200 rpm are 10 in/min
    let at = |rpm| {
        figured(
            "thread-infeed",
            &[("pitch", "20 tpi"), ("rpm", rpm), ("length", "1 in")],
        )
    };
    assert!(!stops(&at("200"), "fast-carriage") && stops(&at("201"), "fast-carriage"));
    assert!(near(
        FeedRate::from_base(base(&at("200"), "carriage")).in_per_min(),
        10.0,
        1e-9
    ));
    assert!(near(base(&at("200"), "time"), 6.0, 1e-9));
    // a metric lead on an inch screw finds no line: the half nuts stay closed, and no line speaks of opening them
    let nuts = |pitch| {
        figured(
            "thread-infeed",
            &[
                ("pitch", pitch),
                ("leadscrew", "8 tpi"),
                ("rpm", "60"),
                ("length", "1 in"),
            ],
        )
    };
    let (inch, metric) = (nuts("16 tpi"), nuts("1.5 mm"));
    assert!(stops(&inch, "half-nuts") && !stops(&inch, "half-nuts-stay"));
    assert!(stops(&metric, "half-nuts-stay") && !stops(&metric, "half-nuts"));
    assert!(text(&metric, "dial").starts_with("no line"));
    assert!(
        inch.answer
            .get("time")
            .unwrap()
            .says
            .contains("open the half nuts")
    );
    assert!(
        metric
            .answer
            .get("time")
            .unwrap()
            .says
            .contains("stop the spindle")
    );
    // change gears that are exact, and those that are not
    let gears = |wheels| {
        figured(
            "thread-infeed",
            &[
                ("pitch", "1.5 mm"),
                ("leadscrew", "8 tpi"),
                ("wheels", wheels),
            ],
        )
    };
    assert!(!notes(&gears("40;60;127"), "none-exact") && notes(&gears("30;64"), "none-exact"));
    assert!(notes(&inch, "depth-basis"));
}

/// What speed and feed sets, chip load and power take: a start is never called too heavy, and has a power.
#[test]
fn the_cutting_sheets_chain() {
    let mut chained = 0;
    let metals = [
        "mild-steel",
        "stainless",
        "tool-steel",
        "gray-iron",
        "aluminium",
    ];
    for (tool, work) in ["hss", "carbide"]
        .into_iter()
        .flat_map(|tool| metals.map(|work| (tool, work)))
    {
        for d in [
            "1/16", "3/32", "1/8", "3/16", "1/4", "3/8", "1/2", "3/4", "1",
        ] {
            let asked = [
                ("cut", "end"),
                ("work", work),
                ("tool", tool),
                ("diameter", d),
                ("teeth", "2"),
                ("width", d),
                ("axial", "0.02 in"),
            ];
            let o = ask("speed-feed", &asked);
            if o.answer.state != State::Complete {
                continue;
            }
            let rpm = format!(
                "{:.6} rpm",
                RotationalSpeed::from_base(base(&o, "rpm")).rpm()
            );
            let feed = format!(
                "{:.9} ipm",
                FeedRate::from_base(base(&o, "feed")).in_per_min()
            );
            let cut = [
                ("diameter", d),
                ("teeth", "2"),
                ("rpm", rpm.as_str()),
                ("feed", feed.as_str()),
                ("engaged", d),
                ("axial", "0.02 in"),
            ];
            let chip = figured("chip-load", &with(&cut, &[("tool", tool)]));
            let verdict = text(&chip, "verdict");
            assert!(
                !verdict.starts_with("Too heavy"),
                "{tool} {work} {d}: {verdict}"
            );
            assert!(
                work != "mild-steel" || !verdict.starts_with("Heavy"),
                "{tool} {d}: {verdict}"
            );
            for method in [
                &[("by", "unit"), ("hardness", "150")][..],
                &[("by", "kc"), ("metal", "c45")],
                &[("by", "energy"), ("kind", "steel")],
            ] {
                figured("cutting-power", &with(&cut, method));
            }
            chained += 1;
        }
    }
    assert!(chained > 40, "only {chained} starts");
}
