//! Gearboxes in stages: products, structures, tooth sums and which pair is bad, against worked boxes and an independent search.
#![allow(clippy::unwrap_used, clippy::indexing_slicing)] // test code: a failure is a failed check

use benchslate_core::machine::isolate::*;
use benchslate_core::machine::structure::*;
use benchslate_core::machine::teeth::*;
use benchslate_core::quantity::System;
use benchslate_core::sheet::{Entry, Outcome, Reason, Sheet, evaluate};
use benchslate_core::sheets::by_id;
use benchslate_tests::near;

/// A box as drawn, and its plate.
struct Drawn {
    input_rpm: f64,
    before: &'static str,
    groups: [&'static str; 3],
    after: &'static str,
    lead: f64,
    values: [f64; 18],
    plate: [f64; 18],
    /// Largest deviation of the products from the plate, percent.
    worst: f64,
    /// The group that goes through its places from setting to setting, and the one after it; the third halves the plate.
    order: [usize; 2],
}

// Kinematic diagrams of a knee mill as printed in machine tool textbooks: Acherkan, Machine Tool Design; Chernov, Machine Tools.
// From memory; sums of teeth and plates agree. Feeds in mm/min, spindle in rpm.
const FEED_A: Drawn = Drawn {
    input_rpm: 1420.0,
    before: "26/44 24/64",
    groups: [
        "18/36 27/27 36/18",
        "18/40 21/37 24/34",
        "13/45x18/40 40/40",
    ],
    after: "28/35 18/33 33/37 18/16 18/18",
    lead: 6.0,
    values: [
        24.18, 30.5, 37.93, 48.36, 60.99, 75.85, 96.71, 121.98, 151.71, 185.99, 234.58, 291.75,
        371.98, 469.16, 583.5, 743.96, 938.32, 1166.99,
    ],
    plate: [
        23.5, 30.0, 37.5, 47.5, 60.0, 75.0, 95.0, 118.0, 150.0, 190.0, 235.0, 300.0, 375.0, 475.0,
        600.0, 750.0, 950.0, 1180.0,
    ],
    worst: 3.4,
    order: [1, 0],
};
const SPINDLE_B: Drawn = Drawn {
    input_rpm: 1460.0,
    before: "27/53",
    groups: ["16/38 19/35 22/32", "17/46 27/37 38/26", "19/69 82/38"],
    after: "",
    lead: 1.0,
    values: [
        31.87, 41.09, 52.04, 62.93, 81.13, 102.75, 126.04, 162.5, 205.79, 249.75, 321.99, 407.79,
        493.14, 635.8, 805.2, 987.68, 1273.41, 1612.7,
    ],
    plate: [
        31.5, 40.0, 50.0, 63.0, 80.0, 100.0, 125.0, 160.0, 200.0, 250.0, 315.0, 400.0, 500.0,
        630.0, 800.0, 1000.0, 1250.0, 1600.0,
    ],
    worst: 4.1,
    order: [0, 1],
};
const FEED_B: Drawn = Drawn {
    input_rpm: 1430.0,
    before: "26/50 26/57",
    groups: FEED_A.groups,
    after: FEED_A.after,
    lead: 6.0,
    values: [
        26.06, 32.87, 40.88, 52.13, 65.75, 81.77, 104.25, 131.49, 163.53, 200.49, 252.87, 314.49,
        400.97, 505.73, 628.98, 801.95, 1011.46, 1257.95,
    ],
    plate: [
        25.0, 31.5, 40.0, 50.0, 63.0, 80.0, 100.0, 125.0, 160.0, 200.0, 250.0, 315.0, 400.0, 500.0,
        630.0, 800.0, 1000.0, 1250.0,
    ],
    worst: 5.2,
    order: FEED_A.order,
};

fn gearbox(drawn: &Drawn) -> Gearbox {
    let factors: Vec<Vec<f64>> = drawn
        .groups
        .iter()
        .map(|group| {
            read_stage(group)
                .unwrap()
                .iter()
                .map(Ways::factor)
                .collect()
        })
        .collect();
    Gearbox::new(&factors).unwrap()
}

/// 18 values of each box to 0.1 %, the order of the levers, and the largest deviation from the plate.
#[test]
fn drawn_boxes_give_their_speeds() {
    for drawn in [&FEED_A, &SPINDLE_B, &FEED_B] {
        let gearbox = gearbox(drawn);
        assert_eq!((gearbox.len(), gearbox.distinct()), (18, 18));
        let fixed = drawn.input_rpm
            * chain(drawn.before).unwrap()
            * chain(drawn.after).unwrap()
            * drawn.lead;
        let mut worst = 0.0_f64;
        for setting in 0..18 {
            let got = fixed * gearbox.speed(setting).unwrap();
            assert!(
                near(got, drawn.values[setting], drawn.values[setting] * 0.001),
                "{setting}: {got}"
            );
            worst = worst.max((got / drawn.plate[setting] - 1.0).abs() * 100.0);
        }
        assert!(near(worst, drawn.worst, 0.05), "{worst}");
        // as listed for all 18: A1 B1 C1, A1 B2 C1, ... and for the spindle A1 B1 C1, A2 B1 C1, ...
        for setting in 0..18 {
            let mut listed = [0, 0, setting / 9];
            (listed[drawn.order[0]], listed[drawn.order[1]]) = (setting % 3, setting / 3 % 3);
            assert_eq!(gearbox.levers(setting), listed);
        }
    }
    // the slow half has the first place of the last group, the fast half the second
    assert!((0..18).all(|setting| gearbox(&FEED_A).levers(setting)[2] == setting / 9));
}

/// Another knee mill's spindle: Handbook of the Young Milling Operator, kinematic diagram (fig. 111): 1440 rpm, 26/54, then 16/39 or 19/36,
/// 18 speeds from 30 to 1500 rpm, read; the third pair, the two stages after it and the plate between from memory. The whole
/// teeth lie within 4 % of the plate, the ends within 3 %.
#[test]
fn a_box_whose_range_was_read() {
    let plate = [
        30.0, 37.5, 47.5, 60.0, 75.0, 95.0, 118.0, 150.0, 190.0, 235.0, 300.0, 375.0, 475.0, 600.0,
        750.0, 950.0, 1180.0, 1500.0,
    ];
    let stages = ["16/39 19/36 22/33", "18/47 28/37 39/26", "19/71 82/38"];
    let factors = stages.map(|stage| {
        let ways = read_stage(stage).unwrap();
        ways.iter().map(Ways::factor).collect::<Vec<f64>>()
    });
    let gearbox = Gearbox::new(&factors).unwrap();
    assert_eq!((gearbox.len(), gearbox.distinct()), (18, 18));
    let input = 1440.0 * chain("26/54").unwrap();
    for (setting, plate) in plate.into_iter().enumerate() {
        let got = input * gearbox.speed(setting).unwrap();
        let share = if setting % 17 == 0 { 0.03 } else { 0.04 };
        assert!(near(got, plate, plate * share), "{setting}: {got}");
    }
    // the sheet takes the gears with the plate, and names the lever's place
    let steps: Vec<String> = plate.iter().map(|rpm| format!("{rpm} rpm")).collect();
    let marks: Vec<String> = (1..=18)
        .map(|n| format!("{n}~{}", if n % 3 == 2 { "noisy" } else { "well" }))
        .collect();
    let outcome = asked(&[
        ("plate", "speeds"),
        ("spindle-steps", &steps.join(";")),
        (
            "stages",
            &format!("3~~{};3~~{};2~~{}", stages[0], stages[1], stages[2]),
        ),
        ("marks", &marks.join(";")),
    ]);
    assert_eq!(said(&outcome, "cause"), "A2 (19/36)");
}

/// Slowest feed and rapid traverse of the same diagram: 24.18 mm/min (plate 23.5), 2255.6 mm/min or 88.8 in/min (plate 2300).
#[test]
fn chains_of_the_drawn_box() {
    let slowest = 1420.0
        * 6.0
        * chain("26/44 24/64 18/36 18/40 13/45 18/40 28/35 18/33 33/37 18/16 18/18").unwrap();
    assert!(near(slowest, 24.18, 0.02), "{slowest}");
    let rapid = 1420.0 * 6.0 * chain("26/44 44/57 57/43 28/35 18/33 33/37 18/16 18/18").unwrap();
    assert!(
        near(rapid, 2255.6, 0.5) && near(rapid / 25.4, 88.8, 0.05),
        "{rapid}"
    );
}

/// Nine speeds 180 to 1800: lecture slides, design of a nine-speed gearbox (Indian engineering college, quoting the PSG data
/// book p. 7.20). Step 1.333; first group exponents 0 1 2, second 0 3 6.
#[test]
fn nine_speeds() {
    let speeds = [
        180.0, 236.0, 315.0, 425.0, 560.0, 750.0, 1000.0, 1320.0, 1800.0,
    ];
    assert!(near(
        common_ratio(&[180.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 1800.0]).unwrap(),
        1.333,
        0.001
    ));
    let groups = [
        Group {
            pairs: 3,
            spacing: 1,
        },
        Group {
            pairs: 3,
            spacing: 3,
        },
    ];
    let found = structures(&speeds);
    assert_eq!(found[0].groups, groups);
    let gearbox = Gearbox::by_steps(&[(3, 1), (3, 3)]).unwrap();
    for (setting, levers) in [
        [0, 0],
        [1, 0],
        [2, 0],
        [0, 1],
        [1, 1],
        [2, 1],
        [0, 2],
        [1, 2],
        [2, 2],
    ]
    .iter()
    .enumerate()
    {
        assert_eq!(gearbox.levers(setting), levers);
    }
}

/// z = p1(1) p2(p1) p3(p1 p2)…: standard machine tool design texts (Acherkan, Machine Tool Design; Mehta), from memory.
#[test]
fn structural_formulas() {
    let group = |(pairs, spacing): (usize, usize)| Group { pairs, spacing };
    for (groups, count, last) in [
        (&[(3, 1), (3, 3), (2, 9)][..], 18, 9),
        (&[(2, 1), (2, 2), (2, 4), (2, 8)][..], 16, 8),
        (&[(3, 1), (3, 3)][..], 9, 6),
    ] {
        let groups: Vec<Group> = groups.iter().copied().map(group).collect();
        assert_eq!(
            steps(&groups),
            (0..count).collect::<Vec<_>>(),
            "every step once"
        );
        let end = groups.last().unwrap();
        assert_eq!(end.spacing * (end.pairs - 1), last);
        // and the search finds it for a geometric plate of that many steps
        let plate: Vec<f64> = (0..count).map(|n| libm::pow(1.26, n as f64)).collect();
        assert!(
            structures(&plate)
                .iter()
                .any(|one| one.groups == groups && one.doubled == 0),
            "{groups:?}"
        );
    }
    // a wrong spacing: 12 settings, 10 speeds, steps 2 and 8 twice (independent arithmetic on the same rule)
    let wrong = [(3, 1), (2, 2), (2, 6)].map(group);
    let all = steps(&wrong);
    assert_eq!(all.len(), 12);
    let twice: Vec<usize> = all
        .windows(2)
        .filter(|two| two[0] == two[1])
        .map(|two| two[0])
        .collect();
    assert_eq!(twice, [2, 8]);
    assert_eq!(
        Gearbox::by_steps(&[(3, 1), (2, 2), (2, 6)])
            .unwrap()
            .distinct(),
        10
    );
    // last group of 3(1) 3(3) 2(9) at 1.26: a range of 8.0, the limit for speeds
    assert!(near(group_range(group((2, 9)), 1.26), 8.0, 0.01));
}

/// Ranges 40 to 1: 12 steps 1.3984, 16 steps 1.2788, 18 steps 1.2424 (independent arithmetic; the last is 1.24234 and was
/// rounded up).
#[test]
fn common_ratios() {
    for (steps, ratio) in [(12, 1.3984), (16, 1.2788), (18, 1.2424)] {
        let mut plate = vec![0.4; steps];
        *plate.last_mut().unwrap() = 16.0;
        assert!(near(common_ratio(&plate).unwrap(), ratio, 0.0001));
    }
    // trap: 180 stands for 177.8, so 180 x 1.3335 = 240 is not the printed 236
    assert!(near(100.0 * libm::pow(10.0, 2.0 / 8.0), 177.8, 0.05));
}

/// Tooth sums and ratios of stages on fixed shafts of one module (numbers of drawn boxes; the rule: tooth sum constant).
#[test]
fn constant_centre_distance() {
    for (stage, sum, centre, ratios) in [
        ("18/47 28/37 39/26", 65, 97.5, &[0.38298, 0.75676, 1.5][..]),
        ("51/39 56/34", 90, 135.0, &[1.30769, 1.64706][..]),
        ("21/55 29/47 38/38", 76, 114.0, &[0.38182, 0.61702, 1.0][..]),
    ] {
        let ways = read_stage(stage).unwrap();
        for (way, ratio) in ways.iter().zip(ratios) {
            assert_eq!(way.pairs()[0].sum(), sum);
            assert!(near(
                f64::from(way.pairs()[0].sum()) * 3.0 / 2.0,
                centre,
                1e-9
            ));
            assert!(near(way.factor(), *ratio, 0.000005 + 1e-9));
        }
        // turned round: these pairs are the nearest of that sum to these ratios
        let set = sums_for(ratios, Sense::DriverOverDriven, sum, sum, 12).remove(0);
        let names: Vec<String> = set.pairs.iter().map(|near| near.pair.to_string()).collect();
        assert_eq!(names.join(" "), stage);
        assert!(set.worst < 0.0001);
    }
    let steps = |text: &str| {
        let ways = read_stage(text).unwrap();
        ways.windows(2)
            .map(|two| two[1].factor() / two[0].factor())
            .collect::<Vec<_>>()
    };
    for (text, printed) in [
        ("18/47 28/37 39/26", &[1.976, 1.9821][..]),
        ("51/39 56/34", &[1.2595][..]),
        ("21/55 29/47 38/38", &[1.616, 1.6207][..]),
    ] {
        assert!(
            steps(text)
                .iter()
                .zip(printed)
                .all(|(got, want)| near(*got, *want, 0.0001)),
            "{text}"
        );
    }
    // trap: with mixed modules it is module x sum that stays: 19/71 at 4 mm beside 82/38 at 3 mm, both 180 mm
    let mixed = read_stage("19/71 82/38").unwrap();
    assert_eq!(
        (mixed[0].pairs()[0].sum() * 4, mixed[1].pairs()[0].sum() * 3),
        (360, 360)
    );
}

/// All pairs of a tooth sum, nearest first, by trying each.
fn pairs_of_sum(sum: u32, wanted: f64, sense: Sense, least: u32) -> Vec<NearPair> {
    let mut all: Vec<NearPair> = (least..=sum - least)
        .map(|driver| {
            let pair = Pair {
                driver,
                driven: sum - driver,
            };
            let ratio = f64::from(driver) / f64::from(sum - driver);
            let ratio = match sense {
                Sense::DriverOverDriven => ratio,
                Sense::DrivenOverDriver => ratio.recip(),
            };
            NearPair {
                pair,
                off: ratio / wanted - 1.0,
            }
        })
        .collect();
    all.sort_by(|a, b| a.off.abs().total_cmp(&b.off.abs()));
    all
}

/// Nearest pair of a tooth sum (independent arithmetic; driver over driven).
#[test]
fn pair_searches() {
    for (sum, wanted, best, error) in [
        (60, 0.7937, "27/33", 3.08),
        (72, 0.5, "24/48", 0.0),
        (58, 0.5675, "21/37", 0.01),
        (60, 1.122, "32/28", 1.86),
    ] {
        let found = nearest_of_sum(sum, wanted, Sense::DriverOverDriven, 12).unwrap();
        assert_eq!(found.pair.to_string(), best);
        assert!(near(found.off.abs() * 100.0, error, 0.005), "{}", found.off);
    }
}

/// Four-speed sliding-mesh exercise as published (tooth sum rule and first pair read; the rest independent arithmetic). The
/// book's ratio is driven over driver: 40/20 x 40/20 = 4, sum 60; 2.24 gives 32/28 and 2.2857; 1.38 gives 24/36 and 1.3333, or
/// 25/35 and 1.4286.
#[test]
fn four_speed_exercise() {
    let reversed = |ratio: f64| {
        nearest_of_sum(60, ratio, Sense::DrivenOverDriver, 12)
            .unwrap()
            .pair
    };
    let constant = Pair {
        driver: 20,
        driven: 40,
    };
    assert_eq!((constant.sum(), constant.ratio()), (60, Some(0.5)));
    let second = reversed(2.24 / 2.0);
    assert_eq!((second.driven, second.driver), (32, 28));
    assert!(
        near(2.0 * 32.0 / 28.0, 2.2857, 0.00005)
            && near(2.0 / second.ratio().unwrap(), 2.2857, 0.00005)
    );
    let third = reversed(1.38 / 2.0);
    assert_eq!((third.driven, third.driver), (24, 36));
    assert!(near(2.0 / third.ratio().unwrap(), 1.3333, 0.00005));
}

/// Cone gears of the usual inch quick-change box, half a thread an inch a tooth (from memory): 8 to 14 threads an inch, in the
/// order of the cone. One bad place is one cone gear; all bad is the tumbler.
#[test]
fn cone_and_tumbler() {
    let teeth = [16, 18, 20, 22, 23, 24, 26, 28];
    let tpi = [8.0, 9.0, 10.0, 11.0, 11.5, 12.0, 13.0, 14.0];
    let text: Vec<String> = teeth.iter().map(|z| format!("{z}/2")).collect();
    let cone: Vec<f64> = read_stage(&text.join(" "))
        .unwrap()
        .iter()
        .map(Ways::factor)
        .collect();
    let gearbox = Gearbox::new(&[cone]).unwrap();
    for (setting, tpi) in tpi.iter().enumerate() {
        assert_eq!(gearbox.levers(setting), [setting]);
        assert!(near(gearbox.speed(setting).unwrap(), tpi * 1.0, 1e-12));
    }
    let one: Vec<Mark> = (0..8)
        .map(|n| if n == 4 { Mark::Noisy } else { Mark::Well })
        .collect();
    assert_eq!(
        explain(&gearbox, &one).exact[0].causes,
        [Cause::Alternative { stage: 0, at: 4 }]
    );
    assert_eq!(
        explain(&gearbox, &[Mark::Noisy; 8]).verdict,
        Verdict::Common
    );
}

/// Meander drive, pairs 1/2 and 2/1 alternately: 1/4 1/2 1 2, range 8 (machine tool texts).
#[test]
fn meander() {
    let stage: Vec<f64> = read_stage("18/36x18/36 18/36 18/36x36/18 36/18")
        .unwrap()
        .iter()
        .map(Ways::factor)
        .collect();
    assert_eq!(stage, [0.25, 0.5, 1.0, 2.0]);
    assert_eq!(stage[3] / stage[0], 8.0);
}

fn rough(steps: &[usize]) -> Vec<Mark> {
    (1..=18)
        .map(|step| {
            if steps.contains(&step) {
                Mark::Noisy
            } else {
                Mark::Well
            }
        })
        .collect()
}

fn letters(causes: &[Cause]) -> Vec<String> {
    let name = |(stage, at): (usize, usize)| format!("{}{}", ["A", "B", "C"][stage], at + 1);
    let mut names = Vec::new();
    for cause in causes {
        match *cause {
            Cause::Alternative { stage, at } => names.push(name((stage, at))),
            Cause::Both { first, second } => names.extend([name(first), name(second)]),
            other => names.push(format!("{other:?}")),
        }
    }
    names
}

/// Rough feeds of the drawn box (step 1 the slowest) and what explains them, by independent search.
#[test]
fn rough_feeds_of_the_drawn_box() {
    let gearbox = gearbox(&FEED_A);
    for (steps, suspects) in [
        (&[1, 2, 3, 10, 11, 12][..], &["A1"][..]),
        (&[2, 5, 8, 11, 14, 17][..], &["B2"][..]),
        (&[1, 2, 3, 4, 5, 6, 7, 8, 9][..], &["C1"][..]),
        (&[10, 11, 12, 13, 14, 15, 16, 17, 18][..], &["C2"][..]),
        (&[1, 2, 3, 6, 9, 10, 11, 12, 15, 18][..], &["A1", "B3"][..]),
        (
            &[1, 4, 7, 10, 11, 12, 13, 14, 15, 16, 17, 18][..],
            &["B1", "C2"][..],
        ),
    ] {
        let found = explain(&gearbox, &rough(steps));
        assert_eq!((found.verdict, found.count), (Verdict::One, 1), "{steps:?}");
        assert_eq!(letters(&found.exact[0].causes), suspects);
        assert_eq!(found.suspects.len(), suspects.len(), "the rest is cleared");
    }
    // only where both are in
    let found = explain(&gearbox, &rough(&[16, 17, 18]));
    assert!(found.suspects.is_empty());
    assert_eq!((found.verdict, found.count), (Verdict::Combination, 1));
    assert_eq!(letters(&found.exact[0].causes), ["A3", "C2"]);
    // one feed alone: A2, B2, C1 are in it and each runs well elsewhere
    let found = explain(&gearbox, &rough(&[5]));
    assert!(found.suspects.is_empty());
    assert_eq!((found.verdict, found.count), (Verdict::Alone, 1));
    assert_eq!(found.exact[0].causes, [Cause::Alone(4)]);
    assert_eq!(gearbox.levers(4), [1, 1, 0]);
    // all bad: the common train
    let found = explain(&gearbox, &[Mark::Slow; 18]);
    assert_eq!(found.verdict, Verdict::Common);
    assert_eq!(found.exact[0].causes, [Cause::Common]);
    // a wrong mark among the blocks of A1: nothing fits, A1 comes nearest with that mark against it
    let found = explain(&gearbox, &rough(&[1, 2, 3, 10, 11, 12, 17]));
    assert_eq!(found.verdict, Verdict::Contradiction);
    assert_eq!(letters(&found.near[0].causes), ["A1"]);
    assert_eq!(found.near[0].against, 1 << 16);
}

/// In a 3 x 3 x 2 box four settings locate any single bad pair (1, 5, 12, 17 do), three cannot: every set of settings is tried
/// here by its own count of signatures. Problem class: Colbourn, Fan, Horsley, Disjoint spread systems and fault location.
#[test]
fn four_settings_locate_and_three_cannot() {
    let gearbox = gearbox(&FEED_A);
    // by hand: setting n (from 0) is A = n / 3 % 3, B = n % 3, C = n / 9
    let own = |set: &[usize]| {
        let mut seen = std::collections::BTreeSet::from([Vec::new()]);
        let pair = |stage: usize, at: usize| {
            let tried = |n: &&usize| [**n / 3 % 3, **n % 3, **n / 9][stage] == at;
            set.iter().filter(tried).copied().collect::<Vec<_>>()
        };
        [
            (0, 0),
            (0, 1),
            (0, 2),
            (1, 0),
            (1, 1),
            (1, 2),
            (2, 0),
            (2, 1),
        ]
        .iter()
        .all(|&(stage, at)| seen.insert(pair(stage, at)))
    };
    let (mut fours, mut threes) = (0, 0);
    for set in 0_u64..1 << 18 {
        let settings: Vec<usize> = (0..18).filter(|n| set >> n & 1 == 1).collect();
        if settings.len() <= 4 {
            let can = own(&settings);
            assert_eq!(locates(&gearbox, set), can, "{settings:?}");
            fours += usize::from(can && settings.len() == 4);
            threes += usize::from(can && settings.len() <= 3);
        }
    }
    assert!(fours > 0 && threes == 0, "{fours} {threes}");
    assert!(own(&[0, 4, 11, 16]));
    let found = plan(&gearbox);
    assert_eq!(
        (found.settings.len(), found.fewest, own(&found.settings)),
        (4, true, true)
    );
}

/// Following the advice finds every single fault of every box shape that is allowed, and never one that is not there.
#[test]
fn the_advice_finds_every_single_fault() {
    let shapes: &[&[(usize, usize)]] = &[
        &[(3, 3), (3, 1), (2, 9)],
        &[(2, 1), (2, 2), (2, 4), (2, 8)],
        &[(4, 1), (3, 4), (3, 12)],
        &[(3, 1), (3, 3), (2, 9), (2, 18)],
        &[(2, 1), (2, 2), (2, 4), (2, 8), (2, 16)],
        &[(5, 2), (2, 1)],
        &[(8, 1)],
        &[(6, 1), (6, 6)],
        &[(3, 1), (2, 2), (2, 6)],
    ];
    let mut most = 0;
    for shape in shapes {
        let Ok(gearbox) = Gearbox::by_steps(shape) else {
            continue;
        };
        for (stage, at) in gearbox.alternatives() {
            let cause = Cause::Alternative { stage, at };
            let touches = cause.touches(&gearbox);
            let mut marks = vec![Mark::Untested; gearbox.len()];
            for tried in 1.. {
                let found = explain(&gearbox, &marks);
                let Some(trial) = next(&gearbox, &marks, &found).trials.first().copied() else {
                    assert_eq!(found.exact[0].causes, [cause], "{shape:?}");
                    assert_eq!(found.verdict, Verdict::One);
                    break;
                };
                // located as soon as one is left
                if found.verdict == Verdict::One && found.exact[0].causes == [cause] {
                    most = most.max(tried - 1);
                    break;
                }
                marks[trial.setting] = if touches >> trial.setting & 1 == 1 {
                    Mark::Slow
                } else {
                    Mark::Well
                };
                assert!(tried <= gearbox.len(), "{shape:?}");
            }
        }
    }
    assert!(most <= 11, "{most} settings tried");
}

/// Hunting teeth (independent arithmetic): 21/37 hunts.
#[test]
fn hunting_teeth() {
    assert_eq!(
        (meets_again(21, 37), is_hunting(21, 37)),
        (Some((37, 21)), true)
    );
    assert_eq!(
        (meets_again(27, 27), is_hunting(27, 27)),
        (Some((1, 1)), false)
    );
    assert_eq!(
        (meets_again(18, 40), is_hunting(18, 40)),
        (Some((20, 9)), false)
    );
}

/// The bounds are faults, and the worst case stays quick.
#[test]
fn bounds() {
    assert_eq!(
        Gearbox::by_steps(&[(6, 1), (7, 6)]),
        Err(BoxFault::Settings(42))
    );
    assert_eq!(Gearbox::by_steps(&[(2, 1); 6]), Err(BoxFault::Stages(6)));
    assert_eq!(Gearbox::by_steps(&[]), Err(BoxFault::Empty));
    assert_eq!(
        Gearbox::by_steps(&[(usize::MAX, usize::MAX)]),
        Err(BoxFault::Settings(37))
    );
}

/// R20 and R5 as terms of R40 (ISO 3): 20 and 5 values, as the nominal speeds of DIN 804.
#[test]
fn preferred_numbers() {
    use benchslate_core::standards::preferred_numbers::R40;
    let r20 = [
        1.0, 1.12, 1.25, 1.4, 1.6, 1.8, 2.0, 2.24, 2.5, 2.8, 3.15, 3.55, 4.0, 4.5, 5.0, 5.6, 6.3,
        7.1, 8.0, 9.0,
    ];
    assert!(
        R40.iter()
            .step_by(2)
            .zip(r20)
            .all(|(term, want)| near(*term, want, 1e-12))
    );
    let r5 = [1.0, 1.6, 2.5, 4.0, 6.3];
    assert!(
        R40.iter()
            .step_by(8)
            .zip(r5)
            .all(|(term, want)| near(*term, want, 1e-12))
    );
    let ratio = |steps: usize| {
        common_ratio(&[1.0, 10.0])
            .map(|all| libm::pow(all, 1.0 / steps as f64))
            .unwrap()
    };
    assert!(near(ratio(20), 1.122, 0.0005) && near(ratio(5), 1.5849, 0.00005));
}

fn asked(pairs: &[(&str, &str)]) -> Outcome {
    evaluate(by_id("which-pair").unwrap(), &Entry::of(pairs))
}

fn said(outcome: &Outcome, id: &str) -> String {
    assert!(
        outcome.answer.is_complete(),
        "{:?} {:?}",
        outcome.answer.state,
        outcome.faults().collect::<Vec<_>>()
    );
    outcome.answer.get(id).unwrap().value.text(System::Inch)
}

/// The drawn box of [`FEED_A`] as it would be typed.
const TYPED_GEARS: (&str, &str) = (
    "stages",
    "3~~18/36 27/27 36/18;3~~18/40 21/37 24/34;2~~13/45x18/40 40/40",
);
const TYPED_PLATE: (&str, &str) = (
    "feed-steps",
    "23.5 mm/min;30 mm/min;37.5 mm/min;47.5 mm/min;60 mm/min;75 mm/min;95 mm/min;118 mm/min;150 mm/min;190 mm/min;235 mm/min;\
     300 mm/min;375 mm/min;475 mm/min;600 mm/min;750 mm/min;950 mm/min;1180 mm/min",
);

/// The rough feeds of the drawn box, asked of the sheet (independent search, as above), with the box by its gears and by its
/// spacing, and the same grid by taps.
#[test]
fn the_sheet_says_the_same() {
    for stages in [TYPED_GEARS, ("stages", "3~3;3~1;2~9")] {
        for (bad, points) in [
            (&[1, 2, 3, 10, 11, 12][..], "A1"),
            (&[2, 5, 8, 11, 14, 17][..], "B2"),
            (&[1, 2, 3, 4, 5, 6, 7, 8, 9][..], "C1"),
            (&[1, 2, 3, 6, 9, 10, 11, 12, 15, 18][..], "A1 and B3"),
            (&[16, 17, 18][..], "A3 with C2, only both together"),
            (&[5][..], "setting 5 alone"),
        ] {
            let marks: Vec<String> = (1..=18)
                .map(|n| format!("{n}~{}", if bad.contains(&n) { "noisy" } else { "well" }))
                .collect();
            let outcome = asked(&[TYPED_PLATE, stages, ("marks", &marks.join(";"))]);
            let mut got = said(&outcome, "cause");
            for gears in [" (18/36)", " (21/37)", " (13/45x18/40)", " (24/34)"] {
                got = got.replace(gears, "");
            }
            assert_eq!(got, points);
            // by taps from an empty grid: two taps make "well", six "noisy"
            let mut text = String::new();
            for n in 1..=18_usize {
                for _ in 0..if bad.contains(&n) { 5 } else { 1 } {
                    let outcome = asked(&[TYPED_PLATE, stages, ("marks", &text)]);
                    let name = format!("{n}:");
                    let grid = outcome.answer.table_by_id("grid").unwrap();
                    let (row, at) = grid
                        .rows
                        .iter()
                        .find_map(|row| {
                            Some((
                                row,
                                row.cells
                                    .iter()
                                    .position(|cell| cell.text(System::Inch).starts_with(&name))?,
                            ))
                        })
                        .unwrap();
                    text = row.taps[at].clone().unwrap()[0].1.clone();
                }
            }
            assert_eq!(text, marks.join(";"));
        }
    }
    // trap: a back gear is two pairs in series at one place of the lever, and no setting tells them apart
    let slow = "1~slow;5~slow;9~slow;10~well;14~well;18~well";
    let outcome = asked(&[TYPED_PLATE, TYPED_GEARS, ("marks", slow)]);
    assert_eq!(said(&outcome, "cause"), "C1 (13/45x18/40)");
    assert!(
        outcome
            .answer
            .get("cause")
            .unwrap()
            .says
            .contains("in series")
    );
    // trap: all bad is the common train, not a pair
    let outcome = asked(&[
        TYPED_PLATE,
        TYPED_GEARS,
        ("marks", "1~noisy;5~noisy;12~noisy;17~noisy"),
    ]);
    // so far two pairs at once would do as well, and that is said
    assert_eq!(
        said(&outcome, "cause"),
        "what all settings share, or A1 (18/36) and B2 (21/37)"
    );
    let more = "1~noisy;5~noisy;12~noisy;17~noisy;9~noisy";
    let outcome = asked(&[TYPED_PLATE, TYPED_GEARS, ("marks", more)]);
    assert_eq!(said(&outcome, "cause"), "what all settings share");
    // nothing marked: four settings to try
    let outcome = asked(&[TYPED_PLATE, TYPED_GEARS]);
    assert!(
        said(&outcome, "next")
            .matches(|c: char| c.is_ascii_digit())
            .count()
            > 4
    );
    assert!(
        outcome
            .answer
            .get("next")
            .unwrap()
            .says
            .starts_with("These 4 ")
    );
}

/// Each bad entry gets its own answer with the cure.
#[test]
fn bad_entries() {
    let fault = |pairs: &[(&str, &str)], field: &str, reason: Reason, word: &str| {
        let outcome = asked(pairs);
        let fault = outcome
            .faults()
            .next()
            .unwrap_or_else(|| panic!("{pairs:?}"))
            .clone();
        assert_eq!(
            (fault.field, fault.reason),
            (field, reason),
            "{}",
            fault.text()
        );
        assert!(
            fault.text().contains(word) && !fault.cure.is_empty(),
            "{}",
            fault.text()
        );
        fault
    };
    let none = ("plate", "none");
    fault(
        &[none, ("stages", "3~1;3~3"), ("marks", "1~well;1~slow")],
        "marks",
        Reason::Conflict,
        "both",
    );
    fault(
        &[none, ("stages", "3~1;3~3"), ("marks", "10~well")],
        "marks",
        Reason::OutOfRange,
        "9 settings",
    );
    fault(
        &[none, ("stages", "6~1;7~6")],
        "stages",
        Reason::OutOfRange,
        "42 settings",
    );
    fault(
        &[TYPED_PLATE, ("stages", "3~1;3~3;2~8")],
        "stages",
        Reason::Conflict,
        "",
    );
    fault(
        &[TYPED_PLATE, ("stages", "4~1;4~4")],
        "stages",
        Reason::Conflict,
        "16 settings",
    );
    fault(
        &[("stages", "2~1;5~2"), ("feed-steps", "1 ipm;1 ipm;2 ipm")],
        "stages",
        Reason::Conflict,
        "10 settings, the plate has 3",
    );
    fault(
        &[TYPED_PLATE, ("stages", "3~~18/36 27/27;3~1;2~9")],
        "stages",
        Reason::Conflict,
        "stage A has 3 positions",
    );
    // gears that do not give the plate
    fault(
        &[
            TYPED_PLATE,
            (
                "stages",
                "3~~18/36 27/27 36/18;3~~18/40 21/37 24/34;2~~20/45x18/40 40/40",
            ),
        ],
        "stages",
        Reason::Conflict,
        "miss a value",
    );
    // a plate that is no product: 3 x 2 out of 1 2 3 4 5 60
    let odd = ("feed-steps", "1 ipm;2 ipm;3 ipm;4 ipm;5 ipm;60 ipm");
    fault(
        &[odd, ("stages", "3;2")],
        "stages",
        Reason::Conflict,
        "no order",
    );
    // which lever is which: the choices are offered, and each opens
    let outcome = fault(
        &[TYPED_PLATE, ("stages", "3;3;2")],
        "stages",
        Reason::Ambiguous,
        "lever",
    );
    assert_eq!(outcome.ways.len(), 6, "each order of three stages");
    for way in outcome.ways {
        assert!(
            asked(&[TYPED_PLATE, ("stages", &way.text)])
                .answer
                .is_complete(),
            "{}",
            way.text
        );
    }
    // marks that no cause explains: an answer, with what to try again
    let marks = "1~slow;2~slow;3~slow;10~slow;11~slow;12~slow;17~slow;4~well;5~well;6~well;7~well;8~well;9~well;13~well;14~well;\
                 15~well;16~well;18~well";
    let outcome = asked(&[none, ("stages", "3~3;3~1;2~9"), ("marks", marks)]);
    assert_eq!(said(&outcome, "cause"), "A1, if setting 17 is marked wrong");
    assert_eq!(said(&outcome, "next"), "setting 17 again");
}

/// Tooth counts asked of the sheet: the drawn stage of sum 76, and the four-speed exercise with its ratio driven over driver.
#[test]
fn gears_of_the_sheet() {
    let sheet = by_id("gear-stages").unwrap();
    let outcome = evaluate(
        sheet,
        &Entry::of(&[
            ("find", "gears"),
            ("ratios", "0.38182;0.61702;1"),
            ("sum-low", "76"),
            ("sum-high", "76"),
            ("module", "3 mm"),
        ]),
    );
    assert_eq!(said(&outcome, "gears"), "21/55, 29/47, 38/38");
    assert!(near(
        outcome.answer.get("centre").unwrap().value.base().unwrap(),
        114.0,
        1e-9
    ));
    let outcome = evaluate(
        sheet,
        &Entry::of(&[
            ("find", "gears"),
            ("ratios", "2;1.12;0.69"),
            ("sense", "driven"),
            ("sum-low", "60"),
            ("sum-high", "60"),
        ]),
    );
    assert_eq!(said(&outcome, "gears"), "20/40, 28/32, 36/24");
    // a plate of 18 steps of 1.26: 3(1) 3(3) 2(9), the last stage at the limit of 8 for speeds
    let plate: Vec<String> = (0..18)
        .map(|n| format!("{:.3} rpm", 31.5 * libm::pow(1.26, f64::from(n))))
        .collect();
    let outcome = evaluate(
        sheet,
        &Entry::of(&[("box", "speeds"), ("spindle-steps", &plate.join(";"))]),
    );
    assert_eq!(
        said(&outcome, "structure"),
        "3 \u{d7} 3 \u{d7} 2 positions, moving 1, 3 and 9 settings"
    );
    assert!(near(
        outcome.answer.get("range").unwrap().value.base().unwrap(),
        8.0,
        0.01
    ));
}

/// The best of five runs, so that a busy machine does not count.
fn quick(sheet: &'static Sheet, entry: &Entry) {
    let took = (0..5)
        .map(|_| {
            let started = std::time::Instant::now();
            let outcome = evaluate(sheet, entry);
            assert!(
                outcome.answer.is_complete(),
                "{entry:?} {:?}",
                outcome.answer.state
            );
            started.elapsed()
        })
        .min()
        .unwrap();
    if std::env::var("SHOW").is_ok() {
        eprintln!("{took:?} {entry:?}");
    }
    assert!(
        took.as_millis() < if cfg!(debug_assertions) { 60 } else { 2 },
        "{took:?} {entry:?}"
    );
}

/// Boxes of 36 settings and five stages, half marked, take no longer than the budget (50 ms at a quarter of the speed of a slow
/// browser; natively 2 ms, with leave for a busy machine in an unoptimised build).
#[test]
fn the_largest_boxes_are_quick() {
    let mut rng = fastrand::Rng::with_seed(8);
    for stages in [
        "3~1;3~3;2~9;2~18",
        "2~1;2~2;2~4;2~8;2~16",
        "6~1;6~6",
        "12~1;3~12",
        "4~1;3~4;3~12",
    ] {
        let settings: usize = stages
            .split(';')
            .map(|row| row.split('~').next().unwrap().parse::<usize>().unwrap())
            .product();
        // nothing marked: the plan is searched; one good and all others bad: sets of three causes are
        let bad: Vec<String> = (2..=settings).map(|n| format!("{n}~slow")).collect();
        for marks in [String::new(), format!("1~well;{}", bad.join(";"))] {
            let entry = Entry::of(&[("plate", "none"), ("stages", stages), ("marks", &marks)]);
            quick(by_id("which-pair").unwrap(), &entry);
        }
        for round in 0..12 {
            let mut marks = Vec::new();
            for n in 1..=settings {
                if round == 0 || rng.u8(..) < 160 {
                    marks.push(format!(
                        "{n}~{}",
                        if rng.u8(..) < 20 * round {
                            "slow"
                        } else {
                            "well"
                        }
                    ));
                }
            }
            let entry = Entry::of(&[
                ("plate", "none"),
                ("stages", stages),
                ("marks", &marks.join(";")),
            ]);
            quick(by_id("which-pair").unwrap(), &entry);
        }
    }
    let sheet = by_id("gear-stages").unwrap();
    let ratios = ["0.2"; 12].join(";");
    quick(
        sheet,
        &Entry::of(&[
            ("find", "gears"),
            ("ratios", &ratios),
            ("sum-low", "10"),
            ("sum-high", "300"),
            ("least", "5"),
        ]),
    );
    for steps in [12, 24, 29, 36] {
        let plate: Vec<String> = (0..steps)
            .map(|n| format!("{:.3} rpm", 31.5 * libm::pow(1.12, f64::from(n))))
            .collect();
        quick(
            sheet,
            &Entry::of(&[("box", "speeds"), ("spindle-steps", &plate.join(";"))]),
        );
    }
}

/// The nearest pair found directly is the first of the whole list.
#[test]
fn nearest_pair_of_a_sum() {
    for sum in [24, 57, 60, 101, 120] {
        for ratio in [
            0.05, 0.2, 0.37, 0.5, 0.69, 0.7937, 1.0, 1.122, 1.9, 5.3, 40.0,
        ] {
            for sense in [Sense::DriverOverDriven, Sense::DrivenOverDriver] {
                let all = pairs_of_sum(sum, ratio, sense, 12);
                let near = nearest_of_sum(sum, ratio, sense, 12).unwrap();
                assert_eq!(near.off.abs(), all[0].off.abs(), "{sum} {ratio} {sense:?}");
            }
        }
    }
}

/// Where the plan says that fewer settings can't do, every smaller set fails; and its own set does.
#[test]
fn plans_are_the_fewest_where_they_say_so() {
    let shapes: &[&[(usize, usize)]] = &[
        &[(2, 1), (2, 2), (2, 4), (2, 8)],
        &[(5, 2), (2, 1)],
        &[(4, 2), (2, 1)],
        &[(3, 1), (2, 3), (2, 6)],
        &[(8, 1)],
        &[(4, 1), (4, 4)],
    ];
    for shape in shapes {
        let gearbox = Gearbox::by_steps(shape).unwrap();
        let found = plan(&gearbox);
        let set = found.settings.iter().fold(0_u64, |set, n| set | 1 << n);
        assert!(locates(&gearbox, set), "{shape:?}");
        let least = (1_u64..1 << gearbox.len())
            .filter(|set| locates(&gearbox, *set))
            .map(u64::count_ones)
            .min();
        let own = found.settings.len() as u32;
        assert!(
            least == Some(own) || (!found.fewest && least < Some(own)),
            "{shape:?} {least:?} {found:?}"
        );
    }
}
