//! Does the proving record keep what is typed, compare rightly, and stand anything? Reducer, undo, the file form,
//! measured texts, customary limits that judge nothing, and random actions.

#![allow(clippy::unwrap_used)] // the helpers of these tests stop at what is missing

mod common;

use benchslate_core::quantity::{Kind, System};
use benchslate_core::record::proving::*;
use benchslate_core::record::*;
use benchslate_core::standards::threads::acceptance_limits::ACCEPTANCE_LIMITS;

fn begun() -> Undo<Proving> {
    let mut undo = Undo::new(Proving::default());
    let plate = Plate::of(&Shop::default());
    undo.act(&ProvingAction::Begin(
        "Old shaper".into(),
        plate,
        "2026-11-25".into(),
    ));
    undo
}

fn on(undo: &mut Undo<Proving>, action: TestAction) {
    undo.act(&ProvingAction::On(action));
}

fn measure(undo: &mut Undo<Proving>, id: &str, text: &str) -> ProvingLine {
    on(
        undo,
        TestAction::Measured(id.into(), text.into(), System::Inch),
    );
    line(undo, id)
}

fn line(undo: &Undo<Proving>, id: &str) -> ProvingLine {
    let shown = view(undo.now.now().unwrap());
    let lines = shown.sections.into_iter().flat_map(|section| section.lines);
    lines.chain(shown.left).find(|line| line.id == id).unwrap()
}

#[test]
fn every_axis_has_both_ways_the_ladder_and_the_rapid() {
    let undo = begun();
    let test = undo.now.now().unwrap();
    let shown = view(test);
    for (axis, ways) in [
        ("a1", ["left", "right"]),
        ("a2", ["in", "out"]),
        ("a3", ["up", "down"]),
    ] {
        let section = shown
            .sections
            .iter()
            .find(|section| section.id == axis)
            .unwrap();
        for (way, name) in ways.iter().enumerate() {
            let feeds: Vec<&ProvingLine> = section
                .lines
                .iter()
                .filter(|line| line.id.starts_with(&format!("{axis}.{way}.f.")))
                .collect();
            assert_eq!(feeds.len(), 10, "each step of the general shop");
            assert!(
                feeds
                    .iter()
                    .all(|line| line.label.ends_with(name) && line.is_size)
            );
        }
        // the way that hurts is warned of at its line: first feed, first trip, first rapid
        let stops = section
            .lines
            .iter()
            .filter(|line| line.caution.as_ref().is_some_and(|c| c.stop));
        assert_eq!(stops.count(), 3);
    }
    let mut ids: Vec<&str> = shown
        .sections
        .iter()
        .flat_map(|s| &s.lines)
        .map(|line| line.id.as_str())
        .collect();
    let count = ids.len();
    ids.sort_unstable();
    ids.dedup();
    assert_eq!(ids.len(), count, "each id once");
    assert_eq!(count, shown.count);
}

#[test]
fn a_short_ladder_tries_the_ends_and_the_middle() {
    let mut undo = begun();
    on(&mut undo, TestAction::Ladder(Ladder::Three));
    let shown = view(undo.now.now().unwrap());
    let section = shown
        .sections
        .iter()
        .find(|section| section.id == "a1")
        .unwrap();
    let feeds: Vec<&str> = section
        .lines
        .iter()
        .filter(|line| line.id.starts_with("a1.0.f."))
        .map(|line| line.label.as_str())
        .collect();
    assert_eq!(
        feeds,
        [
            "Feed 0.5 ipm, left",
            "Feed 3 ipm, left",
            "Feed 12 ipm, left"
        ]
    );
}

#[test]
fn a_measured_feed_stands_against_the_plate() {
    let mut undo = begun();
    // by hand: 2.05 − 2 = 0.05, 2.5 %; 2 lies outside 2.04 to 2.06
    let off = measure(&mut undo, "a1.0.f.2 ipm", "2.05 +-0.01 ipm");
    assert_eq!(off.expected, "2 in/min, on the plate");
    assert_eq!(off.difference, "+0.050 in/min, +2.5% against the plate");
    assert_eq!(off.explained, "more than measuring explains");
    // 2 lies inside 1.9 to 2.1
    let near = measure(&mut undo, "a1.0.f.2 ipm", "2.05 +-0.1 ipm");
    assert_eq!(near.explained, "within what measuring explains");
    // no figure for the measuring, no word on it
    let plain = measure(&mut undo, "a1.0.f.2 ipm", "1.9");
    assert_eq!(plain.difference, "−0.100 in/min, −5.0% against the plate");
    assert_eq!(plain.explained, "");
    // a bare number takes the system's unit: 50 mm/min against 50.8
    on(
        &mut undo,
        TestAction::Measured("a1.0.f.2 ipm".into(), "50".into(), System::Metric),
    );
    let metric = line(&undo, "a1.0.f.2 ipm");
    assert!(
        metric.reading.starts_with("50 mm/min"),
        "{}",
        metric.reading
    );
    assert!(metric.difference.contains("−1.6%"), "{}", metric.difference); // 0.8 / 50.8 = 1.575 %
}

#[test]
fn travel_over_time_is_a_feed() {
    // by hand: 10 × 60 ÷ 30 = 20; ends 9.98 × 60 ÷ 30.2 = 19.8278, 10.02 × 60 ÷ 29.8 = 20.1745
    let feed = read_measured("10 in +-0.02 in / 30 +-0.2 s", Kind::FeedRate, System::Inch).unwrap();
    let inches = |base: f64| base / 25.4;
    assert!((inches(feed.value) - 20.0).abs() < 1e-9);
    assert!((inches(feed.value - feed.minus) - 19.827_814_6).abs() < 1e-6);
    assert!((inches(feed.value + feed.plus) - 20.174_496_6).abs() < 1e-6);
    // what a division leaves is rounded and says so: 600 ÷ 29.2 = 20.5479…
    let long = read_measured("10 in / 29.2 s", Kind::FeedRate, System::Inch).unwrap();
    assert_eq!(
        long.reading(Kind::FeedRate),
        "about 20.548 in/min \u{b7} about 521.9 mm/min"
    );
    let metric = read_measured("150 mm / 2 min", Kind::FeedRate, System::Inch).unwrap();
    assert!((metric.value - 75.0).abs() < 1e-9);
    for text in [
        "10 / 30",
        "10 in / 0 s",
        "10 in /",
        "/ 30 s",
        "10 in / 30 mm",
        "10 in / 1 s +-2 s",
        "-10 in / 3 s",
    ] {
        assert!(
            read_measured(text, Kind::FeedRate, System::Inch).is_err(),
            "{text}"
        );
    }
}

#[test]
fn an_alignment_reads_with_its_length() {
    let reading = read_measured("0.02 mm / 300 mm", Kind::Length, System::Inch).unwrap();
    assert_eq!((reading.value, reading.over_mm), (0.02, Some(300.0)));
    let foot = read_measured("0.0008 in / ft", Kind::Length, System::Inch).unwrap();
    assert_eq!(foot.over_mm, Some(304.8));
    assert_eq!(
        read_measured("1/64 in", Kind::Length, System::Inch)
            .unwrap()
            .over_mm,
        None
    );
    assert!(
        read_measured("8", Kind::Length, System::Inch)
            .unwrap_err()
            .contains("look at the unit")
    );
}

#[test]
fn faults_stand_beside_the_text_and_nothing_typed_is_lost() {
    let mut undo = begun();
    let long = "9".repeat(300);
    for text in [
        "brisk",
        "2..5",
        "1,250",
        "12 kg",
        "",
        " ",
        "2 ipm 3",
        "\u{202e}2",
        "1/0",
        "-3 ipm",
        long.as_str(),
    ] {
        let shown = measure(&mut undo, "a2.1.f.4 ipm", text);
        assert_eq!(shown.finding.measured, text);
        assert_eq!(
            shown.fault.is_empty(),
            text.trim().is_empty(),
            "{text}: {}",
            shown.fault
        );
        assert!(shown.difference.is_empty() && shown.explained.is_empty());
    }
    on(
        &mut undo,
        TestAction::Wanted("a2.1.f.4 ipm".into(), "slow".into(), System::Inch),
    );
    let shown = measure(&mut undo, "a2.1.f.4 ipm", "4 ipm");
    assert!(!shown.wanted_fault.is_empty() && shown.difference.is_empty());
    assert_eq!(shown.finding.wanted, "slow");
}

#[test]
fn an_axis_may_run_at_a_part_of_the_plate() {
    let mut undo = begun();
    on(
        &mut undo,
        TestAction::Axis(2, AxisPart::Share, "1/2".into()),
    );
    let half = measure(&mut undo, "a3.0.f.4 ipm", "2.1");
    assert_eq!(half.expected, "2 in/min, 0.5 of the plate's 4 ipm");
    assert_eq!(half.difference, "+0.100 in/min, +5.0% against the plate");
    for bad in ["", "0", "-1", "half"] {
        on(&mut undo, TestAction::Axis(2, AxisPart::Share, bad.into()));
        let none = line(&undo, "a3.0.f.4 ipm");
        assert!(
            none.difference.is_empty() && !none.wanted_fault.is_empty(),
            "{bad}"
        );
        assert_eq!(none.finding.measured, "2.1 ipm");
    }
    on(
        &mut undo,
        TestAction::Wanted("a3.0.f.4 ipm".into(), "2.1 ipm".into(), System::Inch),
    );
    let own = line(&undo, "a3.0.f.4 ipm");
    assert_eq!(
        own.difference,
        "0.000 in/min, 0.0% against the wanted figure"
    );
}

#[test]
fn warmth_stands_against_the_room() {
    let mut undo = begun();
    measure(&mut undo, "run.room", "20 C");
    let nose = measure(&mut undo, "run.nose", "41 C");
    assert_eq!(nose.difference, "+21 °C over the room");
    let nose = measure(&mut undo, "run.nose", "104 F"); // 40 °C, 36 Fahrenheit degrees over
    assert_eq!(nose.difference, "+36 °F over the room");
    assert_eq!(nose.explained, "");
}

/// The limits: 0.025 mm in 300 mm is 0.001 in a foot, 0.02 is 0.0008, 0.015 is 0.0006 (by hand: × 304.8 ÷ 300 ÷ 25.4).
#[test]
fn customary_limits_are_named_so_and_judge_nothing() {
    let mut undo = begun();
    for row in ACCEPTANCE_LIMITS {
        let id = format!("align.{}", row.key);
        for text in ["0.000001 in", "0.2 in", "0.2 in +-0.001 in"] {
            let shown = measure(&mut undo, &id, text);
            assert!(
                shown.customary.ends_with("customary, unverified"),
                "{}",
                shown.customary
            );
            assert_eq!(
                (shown.difference.as_str(), shown.explained.as_str()),
                ("", "")
            );
            assert_eq!(shown.finding.mark, Mark::Open);
        }
    }
    for (key, text) in [
        (
            "table-long",
            "0.025 mm in 300 mm (0.0010 in a foot): customary, unverified",
        ),
        (
            "taper-far",
            "0.02 mm in 300 mm (0.0008 in a foot): customary, unverified",
        ),
        (
            "slot-long",
            "0.015 mm in 300 mm (0.0006 in a foot): customary, unverified",
        ),
        ("axial-slip", "0.01 mm (0.0004 in): customary, unverified"),
    ] {
        assert_eq!(line(&undo, &format!("align.{key}")).customary, text);
    }
}

#[test]
fn what_was_found_at_a_lost_line_is_kept_below() {
    let mut undo = begun();
    measure(&mut undo, "a2.0.f.4 ipm", "3.9 ipm");
    on(
        &mut undo,
        TestAction::Note("a2.slack".into(), "worn in the middle".into()),
    );
    on(&mut undo, TestAction::RemoveAxis(1));
    let shown = view(undo.now.now().unwrap());
    let left: Vec<(&str, &str)> = shown
        .left
        .iter()
        .map(|line| (line.label.as_str(), line.finding.measured.as_str()))
        .collect();
    assert_eq!(
        left,
        [
            ("Axis 2, removed: feed 4 ipm, one way", "3.9 ipm"),
            ("Axis 2, removed: slack", "")
        ]
    );
    on(&mut undo, TestAction::AddAxis);
    assert_eq!(
        undo.now.now().unwrap().axes.last().unwrap().key,
        4,
        "a key is never used twice"
    );
    assert!(undo.undo() && undo.undo());
    assert!(view(undo.now.now().unwrap()).left.is_empty());
}

#[test]
fn tests_have_names_of_their_own_and_undo_reaches_the_start() {
    let mut undo = begun();
    let plate = Plate::of(&Shop::default());
    undo.act(&ProvingAction::Begin(
        "Old shaper".into(),
        plate.clone(),
        String::new(),
    ));
    undo.act(&ProvingAction::Begin("  ".into(), plate, String::new()));
    let names: Vec<&str> = undo
        .now
        .tests
        .iter()
        .map(|test| test.machine.as_str())
        .collect();
    assert_eq!(names, ["Old shaper", "Old shaper (2)", "Machine"]);
    undo.act(&ProvingAction::Remove(0));
    assert_eq!(
        undo.now.now().unwrap().machine,
        "Machine",
        "the open one stays open"
    );
    undo.act(&ProvingAction::Open(77));
    on(&mut undo, TestAction::Mark("before.oil".into(), Mark::Good));
    on(&mut undo, TestAction::Mark("before.oil".into(), Mark::Open));
    assert!(
        undo.now.now().unwrap().found.is_empty(),
        "what says nothing is not kept"
    );
    while undo.undo() {}
    assert_eq!(undo.now, Proving::default());
}

#[test]
fn the_file_comes_back_and_a_newer_one_is_refused() {
    let mut undo = begun();
    measure(&mut undo, "a1.1.rapid", "59 ipm");
    on(&mut undo, TestAction::Mark("a1.1.rapid".into(), Mark::Bad));
    let text = serde_json::to_string(&File::of(undo.now.clone())).unwrap();
    assert_eq!(
        serde_json::from_str::<File<Proving>>(&text).unwrap().data,
        undo.now
    );
    let head: Head = serde_json::from_str(&text).unwrap();
    assert_eq!(check::<Proving>(&head), Ok(()));
    assert!(check::<Kept>(&head).is_err());
    assert_eq!(
        check::<Proving>(&Head { version: 3, ..head }),
        Err(RecordFault::Newer(3))
    );
    // a file that lacks what came later reads with what stands there by itself
    let early = r#"{"record":"proving","version":1,"data":{"tests":[{"machine":"Mill","found":[{"id":"a1.slack","measured":"8 thou"}]}]}}"#;
    let early: File<Proving> = serde_json::from_str(early).unwrap();
    assert_eq!(early.data.now().unwrap().axes.len(), 3);
    // taken in beside what is there, once
    undo.act(&ProvingAction::TakeIn(early.data.clone()));
    assert_eq!((undo.now.tests.len(), undo.now.open), (2, 1));
    undo.act(&ProvingAction::TakeIn(early.data));
    assert_eq!(undo.now.tests.len(), 2);
}

#[test]
fn the_plate_of_a_test_does_not_follow_the_shop() {
    let shop = Shop::default().after(&ShopAction::Item("feed-steps".into(), "1 ipm;2 ipm".into()));
    let plate = Plate::of(&shop);
    assert_eq!(
        (plate.feeds.as_slice(), plate.follows),
        (["1 ipm".to_owned(), "2 ipm".to_owned()].as_slice(), false)
    );
    assert_eq!(plate.rapid, "60 ipm");
    let mut undo = begun();
    // as a version wrote it that knew no feeds per turn
    let plate = Plate {
        follows: true,
        ..plate
    };
    on(&mut undo, TestAction::Plate(plate));
    assert!(
        view(undo.now.now().unwrap())
            .plate_note
            .contains("one spindle speed only")
    );
}

#[test]
fn feeds_per_turn_are_reckoned_at_the_spindle_step() {
    let shop = Shop::default()
        .after(&ShopAction::Item("feed-follows".into(), "spindle".into()))
        .after(&ShopAction::Item(
            "feed-steps-turn".into(),
            "0.005 ipr;0.2 mm/rev".into(),
        ));
    let plate = Plate::of(&shop);
    assert_eq!(plate.feeds, ["0.005 ipr", "0.2 mm/rev"]);
    let mut undo = begun();
    on(&mut undo, TestAction::Plate(plate));
    let at = |undo: &Undo<Proving>, id: &str| {
        let shown = view(undo.now.now().unwrap());
        let lines = shown.sections.into_iter().flat_map(|part| part.lines);
        lines.into_iter().find(|line| line.id == id).unwrap()
    };
    assert_eq!(
        at(&undo, "a1.0.f.0.005 ipr").expected,
        "0.005 ipr on the plate: write the spindle speed above"
    );
    on(&mut undo, TestAction::Spindle("270".into()));
    measure(&mut undo, "a1.0.f.0.005 ipr", "1.40 ipm");
    // 0.005 in a turn, 270 turns a minute: 1.35 in a minute
    let line = at(&undo, "a1.0.f.0.005 ipr");
    assert_eq!(line.expected, "1.35 in/min, 0.005 ipr at 270 rpm");
    assert!(
        line.difference.starts_with("+0.050 in/min, +3.7%"),
        "{}",
        line.difference
    );
    assert_eq!(
        at(&undo, "a1.0.f.0.2 mm/rev").expected,
        "54 mm/min, 0.2 mm/rev at 270 rpm"
    );
    on(&mut undo, TestAction::Spindle("fast".into()));
    let line = at(&undo, "a1.0.f.0.005 ipr");
    assert!(
        line.wanted_fault.starts_with("the spindle speed above:"),
        "{}",
        line.wanted_fault
    );
}

#[test]
fn random_actions_never_panic_and_lose_nothing() {
    let mut rng = fastrand::Rng::with_seed(14);
    let ids = [
        "a1.0.f.2 ipm",
        "a2.1.rapid",
        "a9.0.f.x",
        "run.room",
        "run.nose",
        "align.table-flat",
        "",
        ".",
        "a.b.c",
        "a4.1.trip-feed",
    ];
    for _ in 0..common::rounds() / 500 {
        let mut undo = Undo::new(Proving::default());
        for _ in 0..rng.usize(1..40) {
            let text = common::text(&mut rng);
            let id = ids[rng.usize(..ids.len())].to_owned();
            let at = rng.usize(..5);
            let part = [
                AxisPart::Name,
                AxisPart::One,
                AxisPart::Other,
                AxisPart::Share,
            ][rng.usize(..4)];
            let plate = Plate {
                feeds: vec![text.clone(), "2 ipm".into()],
                rapid: text.clone(),
                ..Plate::default()
            };
            let action = match rng.usize(..18) {
                0 => ProvingAction::Begin(text, plate, String::new()),
                1 => ProvingAction::Open(at),
                2 => ProvingAction::Remove(at),
                3 => ProvingAction::TakeIn(undo.now.clone()),
                4 => ProvingAction::On(TestAction::AddAxis),
                5 => ProvingAction::On(TestAction::RemoveAxis(at)),
                6 | 7 => ProvingAction::On(TestAction::Axis(at, part, text)),
                8 => ProvingAction::On(TestAction::Plate(plate)),
                9 => ProvingAction::On(TestAction::Ladder(Ladder::Three)),
                10 => ProvingAction::On(TestAction::Wanted(id, text, System::Inch)),
                11 => ProvingAction::On(TestAction::Mark(id, Mark::Bad)),
                12 => ProvingAction::On(TestAction::Note(id, text)),
                _ => ProvingAction::On(TestAction::Measured(id, text, System::Inch)),
            };
            undo.act(&action);
            if let ProvingAction::On(TestAction::Measured(id, text, _)) = &action
                && let Some(test) = undo.now.now()
            {
                // as typed, or with the unit that it was read in
                let kinds = [
                    Kind::Length,
                    Kind::FeedRate,
                    Kind::RotationalSpeed,
                    Kind::Temperature,
                ];
                let kept = test.at(id).measured;
                let with_unit = |kind: &Kind| pin_measured(text, *kind, System::Inch) == kept;
                assert!(
                    kept == *text || kinds.iter().any(with_unit),
                    "{text} {kept}"
                );
            }
            if let Some(test) = undo.now.now() {
                let shown = view(test);
                let lines = || {
                    shown
                        .sections
                        .iter()
                        .flat_map(|s| &s.lines)
                        .chain(&shown.left)
                };
                for finding in &test.found {
                    assert!(
                        lines().any(|line| line.finding == *finding),
                        "{finding:?} is nowhere shown"
                    );
                }
                let _ = shown.summary();
            }
        }
        while undo.undo() {}
    }
}

#[test]
fn what_differs_between_two_shops_is_named() {
    assert!(shop_differences(&Shop::default(), &Shop::default()).is_empty());
    let other = Shop::default()
        .after(&ShopAction::System(System::Metric))
        .after(&ShopAction::Item("feed-follows".into(), "spindle".into()))
        .after(&ShopAction::Item(
            "spindle-steps".into(),
            "90 rpm;150 rpm".into(),
        ))
        .after(&ShopAction::Item("rapid".into(), "fast".into()));
    let found = shop_differences(&Shop::default(), &other);
    let labels: Vec<&str> = found.iter().map(|one| one.label.as_str()).collect();
    assert_eq!(
        labels,
        [
            "Results in",
            "Mill spindle speeds",
            "Mill feed follows the spindle",
            "Mill rapid traverse"
        ]
    );
    assert_eq!(found[1].theirs, "90 rpm; 150 rpm");
    assert_eq!(found[2].theirs, "yes: in/rev or mm/rev");
    assert!(found[3].theirs == "fast" && !found[3].fault.is_empty());
}

#[test]
fn a_renamed_test_is_found_by_the_name_under_which_it_was_kept() {
    let mut undo = begun();
    for name in ["Old shaper, r", "Old shaper, rebuilt"] {
        on(&mut undo, TestAction::Machine(name.into()));
    }
    assert_eq!(undo.now.called("Old shaper"), Some(0));
    assert_eq!(undo.now.called("Old shaper, rebuilt"), Some(0));
    assert_eq!(undo.now.called("Lathe"), None);
    // the name of another test now goes before an old one
    let plate = Plate::of(&Shop::default());
    undo.act(&ProvingAction::Begin(
        "Old shaper".into(),
        plate,
        String::new(),
    ));
    assert_eq!(undo.now.called("Old shaper"), Some(1));
    for n in 0..99 {
        on(&mut undo, TestAction::Machine(format!("Shaper {n}")));
    }
    assert!(undo.now.tests[1].was.len() < 30);
}
