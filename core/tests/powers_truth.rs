//! Do the powers tell the truth? What ± does at corners, at steps and at wraps, and entries found for a wanted result: on
//! the cases that once misled, and as properties over generated entries.
#![allow(clippy::panic, clippy::unwrap_used, clippy::indexing_slicing)] // a failed check

mod common;

use benchslate_core::powers::*;
use benchslate_core::quantity::{Kind, Number, System, plain};
use benchslate_core::sheet::*;
use benchslate_core::sheets;

/// The most evaluations of one search, and of one range.
const MOST: (usize, usize) = (5000, 1024);

fn outcome(sheet: &str, pairs: &[(&str, &str)]) -> Outcome {
    let sheet = sheets::by_id(sheet).unwrap();
    let outcome = evaluate(sheet, &Entry::of(pairs));
    assert!(
        outcome.answer.is_complete(),
        "{}: {:?} {:?}",
        sheet.id,
        outcome.answer.state,
        outcome.faults().collect::<Vec<_>>()
    );
    outcome
}

fn spread_of(outcome: &Outcome) -> Spread {
    let found = spread(&outcome.inputs, &outcome.answer).unwrap();
    assert!(found.evaluations <= MOST.1, "{}", found.evaluations);
    found
}

fn line<'a>(spread: &'a Spread, id: &str) -> &'a LineSpread {
    spread.lines.iter().find(|line| line.id == id).unwrap()
}

const INCH: f64 = 25.4;

// --- ±

#[test]
fn the_worst_pair_without_an_answer_is_named() {
    // the tightest pair yields: 0.0024 in of interference, of which the ends one at a time know nothing
    let out = outcome(
        "press-fit",
        &[
            ("from", "sizes"),
            ("hole", "0.9990 \u{b1}.0005"),
            ("shaft", "1.0004 \u{b1}.0005"),
            ("outside", "2 in"),
            ("length", "1 1/4 in"),
            ("hub-strength", "60 ksi"),
        ],
    );
    let found = spread_of(&out);
    assert_eq!(found.faults.len(), 1, "{:?}", found.faults);
    let fault = &found.faults[0];
    let ends: Vec<_> = fault.places.iter().map(|p| (p.field, p.end)).collect();
    assert_eq!(ends, [("hole", Some(End::Low)), ("shaft", Some(End::High))]);
    assert!(fault.says.contains("yields"), "{}", fault.says);
    // the range is marked as cut short and says so
    let force = line(&found, "interference");
    assert!(force.is_cut, "{force:?}");
    let shown = out.answer.get("interference").unwrap();
    let says = tell_line(&out.inputs, shown, force, false).unwrap();
    assert!(says.contains("cut short"), "{says}");
    let notes = tell_notes(&out.inputs, &found);
    assert!(
        notes[0].is_fault
            && notes[0].says.contains("(low end) with")
            && notes[0].says.contains("(high end)"),
        "{notes:?}"
    );
}

#[test]
fn the_loosest_pair_without_an_answer_is_named() {
    let out = outcome(
        "press-fit",
        &[
            ("from", "sizes"),
            ("hole", "0.9990 \u{b1}.0010"),
            ("shaft", "1.0004 \u{b1}.0005"),
            ("outside", "2 in"),
            ("length", "1 1/4 in"),
        ],
    );
    let found = spread_of(&out);
    let ends: Vec<_> = found.faults[0]
        .places
        .iter()
        .map(|p| (p.field, p.end))
        .collect();
    assert_eq!(
        ends,
        [("hole", Some(End::High)), ("shaft", Some(End::Low))],
        "{:?}",
        found.faults
    );
}

#[test]
fn a_pair_that_holds_throughout_is_not_called_cut() {
    let out = outcome(
        "press-fit",
        &[
            ("from", "sizes"),
            ("hole", "0.9990 \u{b1}.0002"),
            ("shaft", "1.0004 \u{b1}.0002"),
            ("outside", "2 in"),
            ("length", "1 1/4 in"),
        ],
    );
    let found = spread_of(&out);
    let interference = line(&found, "interference");
    assert!(found.faults.is_empty() && !interference.is_cut, "{found:?}");
    assert!((interference.low - 0.0010 * INCH).abs() < 1e-9);
    assert!((interference.high - 0.0018 * INCH).abs() < 1e-9);
}

#[test]
fn a_result_that_vanishes_inside_is_cut_short() {
    // at the tight end chilling takes more than liquid nitrogen gives: the line goes, the answer stays
    let out = outcome(
        "press-fit",
        &[
            ("from", "sizes"),
            ("hole", "0.9990 \u{b1}.0005"),
            ("shaft", "1.0004 \u{b1}.0005"),
            ("outside", "2 in"),
            ("length", "1 1/4 in"),
        ],
    );
    let found = spread_of(&out);
    let cut: Vec<_> = found
        .lines
        .iter()
        .filter(|line| line.is_cut)
        .map(|line| line.id)
        .collect();
    assert!(cut.contains(&"chill"), "{cut:?}");
    assert!(!cut.contains(&"interference"), "{cut:?}");
}

#[test]
fn a_stepped_result_that_jumps_shows_no_range() {
    // true limits ±0.0078: 0.2266 lies half way between two 64ths
    let out = outcome("length", &[("length", "0.2275 \u{b1} 0.003")]);
    let found = spread_of(&out);
    let off = line(&found, "fraction-64-off");
    assert_eq!(off.moves, Moves::Jumping);
    assert!(
        !off.has_range() && (off.changes[0].at - 0.2265625 * INCH).abs() < 1e-3,
        "{off:?}"
    );
    // which 64th it is, and where it changes
    let choice = found
        .choices
        .iter()
        .find(|c| c.id == "fraction-64")
        .unwrap();
    assert_eq!(choice.values, ["15/64 in", "7/32 in"]);
    assert!(
        (choice.changes[0].at - 0.2265625 * INCH).abs() < 1e-5,
        "{choice:?}"
    );
    // and inside one 64th the range is right
    let out = outcome("length", &[("length", "0.2275 \u{b1} 0.0005")]);
    let found = spread_of(&out);
    let off = line(&found, "fraction-64-off");
    assert!(off.has_range(), "{off:?}");
    assert!((off.low - (0.234375 - 0.228) * INCH).abs() < 1e-9);
    assert!((off.high - (0.234375 - 0.227) * INCH).abs() < 1e-9);
}

#[test]
fn a_result_that_turns_back_shows_no_range() {
    let lead = |lead: &str| {
        outcome(
            "dial-units",
            &[
                ("dial", "0.200 in"),
                ("lines", "200"),
                ("lead", lead),
                ("positions", "0.5 in;1 in"),
            ],
        )
    };
    // 5.08 mm, where the dial is right, lies inside
    let out = lead("5 mm \u{b1}.15");
    let after = line(&spread_of(&out), "line-after").clone();
    assert_eq!(after.moves, Moves::Wrapping);
    assert!(!after.has_range());
    // and here it does not
    let out = lead("5 mm \u{b1}.05");
    assert!(line(&spread_of(&out), "line-after").has_range());
}

#[test]
fn two_readings_near_zero_show_no_range_of_slack() {
    let slack = |one: &str, other: &str| {
        let out = outcome(
            "dial-slack",
            &[
                ("ask", "slack"),
                ("how", "dial"),
                ("one", one),
                ("other", other),
            ],
        );
        line(&spread_of(&out), "slack-found").clone()
    };
    assert_eq!(
        slack("0.100 in \u{b1}.002", "0.101 in").moves,
        Moves::Wrapping
    );
    let plain = slack("0.100 in \u{b1}.002", "0.112 in");
    assert!(
        plain.has_range() && (plain.low - 0.010 * INCH).abs() < 1e-9,
        "{plain:?}"
    );
}

#[test]
fn threads_per_inch_stand_in_rising_order() {
    let out = outcome(
        "name-thread",
        &[("diameter", "0.247 in"), ("pitch", "20 tpi \u{b1}1")],
    );
    let found = spread_of(&out);
    let shown = out.answer.get("pitch-measured").unwrap();
    let says = tell_line(&out.inputs, shown, line(&found, "pitch-measured"), false).unwrap();
    assert!(says.starts_with("19.00 to 21.00 tpi"), "{says}");
}

#[test]
fn a_pick_that_changes_is_told_with_its_choices() {
    let entry = |diameter: &str| {
        outcome(
            "speed-feed",
            &[
                ("cut", "drill"),
                ("diameter", diameter),
                ("press-steps", "210 rpm;297 rpm;420 rpm;595 rpm"),
            ],
        )
    };
    let narrow = entry("0.9 in \u{b1}.001");
    let found = spread_of(&narrow);
    let rpm = line(&found, "rpm");
    assert_eq!(rpm.moves, Moves::Not);
    let shown = narrow.answer.get("rpm").unwrap();
    assert!(
        tell_line(&narrow.inputs, shown, rpm, true)
            .unwrap()
            .contains("the same over")
    );
    let wide = entry("0.9 in \u{b1}.2");
    let found = spread_of(&wide);
    let rpm = line(&found, "rpm");
    assert_eq!(rpm.moves, Moves::InSteps, "{rpm:?}");
    assert!(rpm.values.len() > 1 && !rpm.changes.is_empty());
    for change in &rpm.changes {
        // just below and just above the place the pick is another
        let at = |x: f64| {
            figure(&wide.inputs.with("diameter", x))
                .unwrap()
                .get("rpm")
                .unwrap()
                .value
                .text_with_unit(System::Inch)
        };
        assert_eq!(at(change.at - 1e-3), change.from);
        assert_eq!(at(change.at + 1e-3), change.to);
    }
}

// --- solved for another

fn solve(out: &Outcome, field: &str, result: &str, wanted: f64) -> Turned {
    let found = turn(&out.inputs, field, result, wanted).unwrap();
    assert!(found.evaluations <= MOST.0, "{}", found.evaluations);
    found
}

/// Puts a number back as a text, as the button does, and gives the result.
fn put_back(
    sheet: &'static Sheet,
    entry: &Entry,
    out: &Outcome,
    field: &str,
    x: f64,
    result: &str,
) -> Option<f64> {
    let unit = out
        .inputs
        .unit(field)
        .or_else(|| sheet.field(field).unwrap().unit(out.inputs.system()))?;
    let mut entry = entry.clone();
    entry.set(field, format!("{} {}", plain(x, unit), unit.id).trim());
    let now = evaluate(sheet, &entry);
    now.answer.get(result)?.value.base()
}

#[test]
fn the_mills_power_has_one_speed_each_and_no_jump() {
    let pairs = [
        ("axial", "2 in"),
        ("by", "unit"),
        ("cut", "mill"),
        ("diameter", "2 1/2 in"),
        ("engaged", "0.1 in"),
        ("feed", "3 ipm"),
        ("group", "plain-carbon"),
        ("hardness", "150"),
        ("rpm", "110"),
        ("teeth", "8"),
        ("wear", "slab"),
    ];
    let out = outcome("cutting-power", &pairs);
    let unit = out
        .answer
        .get("motor-need")
        .unwrap()
        .value
        .unit(System::Inch)
        .unwrap();
    for hp in [0.75, 0.78, 0.80, 0.83, 0.86, 0.9, 0.95, 1.0] {
        let found = solve(&out, "rpm", "motor-need", unit.to_base(hp));
        assert!(found.jumps.is_empty(), "{hp}: {:?}", found.jumps);
        let reaches = found
            .reach
            .is_some_and(|(low, high)| (low..=high).contains(&unit.to_base(hp)));
        assert_eq!(!found.roots.is_empty(), reaches, "{hp}: {found:?}");
        for root in &found.roots {
            let back = put_back(
                out.inputs.sheet(),
                &Entry::of(&pairs),
                &out,
                "rpm",
                root.x,
                "motor-need",
            );
            assert!(
                (unit.from_base(back.unwrap()) - hp).abs() <= 0.005,
                "{hp}: {root:?}"
            );
        }
    }
}

#[test]
fn the_entry_itself_is_found_in_a_narrow_window() {
    let out = outcome(
        "dial-slack",
        &[
            ("ask", "slack"),
            ("how", "indicator"),
            ("moved", "0.038 in"),
            ("turned", "0.050 in"),
        ],
    );
    // moved = turned less slack, turned = moved and slack; both signs answer
    for (field, slack, right) in [
        ("moved", 0.012, 0.038),
        ("moved", 0.010, 0.040),
        ("moved", 0.020, 0.030),
        ("turned", 0.010, 0.048),
        ("turned", 0.012, 0.050),
    ] {
        let found = solve(&out, field, "slack-found", slack * INCH);
        assert!(
            found
                .roots
                .iter()
                .any(|root| root.met && (root.x - right * INCH).abs() < 1e-6),
            "{field} {slack}: {found:?}"
        );
    }
}

#[test]
fn a_field_without_effect_is_told_at_once() {
    for pairs in [
        &[("diameter", ".247 in"), ("pitch", "20 tpi")][..],
        &[
            ("by", "count"),
            ("diameter", "9.85 mm"),
            ("over", "15 mm"),
            ("threads", "10"),
        ][..],
    ] {
        let out = outcome("name-thread", pairs);
        let found = solve(&out, "diameter", "pitch-measured", 2.54);
        assert!(
            found.has_no_effect && found.evaluations < 40,
            "{}",
            found.evaluations
        );
        assert!(found.roots.is_empty() && found.intervals.is_empty() && found.below.is_none());
        let (field, shown) = (
            out.inputs.sheet().field("diameter").unwrap(),
            out.answer.get("pitch-measured").unwrap(),
        );
        let says = tell_none(&out.inputs, field, shown, &found).unwrap();
        assert!(says.contains("does not depend on"), "{says}");
        assert!(tell_found(&out.inputs, field, shown, &found).is_empty());
    }
}

#[test]
fn a_step_is_answered_by_an_interval() {
    let out = outcome(
        "speed-feed",
        &[
            ("cut", "drill"),
            ("diameter", "0.9 in"),
            ("press-steps", "210 rpm;297 rpm;420 rpm;595 rpm"),
        ],
    );
    let unit = out
        .answer
        .get("rpm")
        .unwrap()
        .value
        .unit(System::Inch)
        .unwrap();
    let found = solve(&out, "diameter", "rpm", unit.to_base(297.0));
    let one = found
        .intervals
        .first()
        .unwrap_or_else(|| panic!("{found:?}"));
    let at = |x: f64| {
        unit.from_base(
            figure(&out.inputs.with("diameter", x))
                .unwrap()
                .get("rpm")
                .unwrap()
                .value
                .base()
                .unwrap(),
        )
    };
    assert!(one.from < one.inside && one.inside < one.to);
    assert_eq!(
        (at(one.from), at(one.inside), at(one.to)),
        (297.0, 297.0, 297.0)
    );
    assert_ne!(at(one.from - 1e-6), 297.0);
    assert_ne!(at(one.to + 1e-6), 297.0);
    // a speed that the machine does not have: its neighbours, and nothing to take over
    let found = solve(&out, "diameter", "rpm", unit.to_base(300.0));
    assert!(found.intervals.is_empty() && found.roots.is_empty());
    assert_eq!(unit.from_base(found.below.unwrap().gives), 297.0);
    assert_eq!(unit.from_base(found.above.unwrap().gives), 420.0);
    let told = tell_found(
        &out.inputs,
        out.inputs.sheet().field("diameter").unwrap(),
        out.answer.get("rpm").unwrap(),
        &found,
    );
    assert!(
        told.len() == 2 && told.iter().all(|find| find.put.is_none()),
        "{told:?}"
    );
}

// --- made-up sheets

static SOURCE: Source = Source::practice("made up for this test");

macro_rules! made_up {
    ($name:ident, $res:expr, $figure:expr) => {
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
                    .range(-1000.0, 1000.0, "made up")
                    .measured(),
                Field::number("k", "K")
                    .range(-10.0, 10.0, "made up")
                    .measured()
                    .preset("1"),
            ],
            results: &[$res],
            examples: &[],
            takes: &[],
            finds: None,
            figure: |inp, a| {
                let (x, k): (Number, Number) = (inp.get("x")?, inp.get("k")?);
                let f: fn(f64, f64) -> Result<f64, Stop> = $figure;
                a.line("y", Number::of(f(x.get(), k.get())?));
                a.source(&SOURCE);
                Ok(())
            },
        };
    };
}

made_up!(
    WINDOW,
    Res::of("y", "Y", Kind::Number),
    |x, _| if (2.0..=2.001).contains(&x) {
        Ok(x)
    } else {
        Err(Stop::withheld("x", "2 to 2.001", "made up", "stay inside"))
    }
);
made_up!(FLAT, Res::of("y", "Y", Kind::Number), |x, _| Ok(
    x.clamp(2.0, 5.0)
));
made_up!(STAIRS, Res::stepped("y", "Y", Kind::Number), |x, _| Ok(
    libm::floor(x)
));
made_up!(
    INSIDE,
    Res::of("y", "Y", Kind::Number),
    |x, _| if (1.01..1.02).contains(&x) {
        Err(Stop::withheld("x", "1.01", "made up", "go on"))
    } else {
        Ok(x)
    }
);
made_up!(BOWL, Res::of("y", "Y", Kind::Number), |x, k| Ok((x - 0.3)
    * (x - 0.3)
    + k));

fn made(sheet: &'static Sheet, x: &str) -> Outcome {
    let out = evaluate(sheet, &Entry::of(&[("x", x)]));
    assert!(out.answer.is_complete(), "{:?}", out.answer.state);
    out
}

#[test]
fn a_window_of_a_hair_is_searched_to_its_ends() {
    let out = made(&WINDOW, "2.0005");
    for wanted in [2.0, 2.00001, 2.0005, 2.00099, 2.001] {
        let found = solve(&out, "x", "y", wanted);
        assert!(
            found
                .roots
                .iter()
                .any(|root| (root.x - wanted).abs() < 1e-8),
            "{wanted}: {found:?}"
        );
    }
    let none = solve(&out, "x", "y", 2.1);
    assert!(none.roots.is_empty() && none.jumps.is_empty(), "{none:?}");
}

#[test]
fn a_level_stretch_is_given_as_an_interval() {
    let found = solve(&made(&FLAT, "3"), "x", "y", 5.0);
    let one = found.intervals[0];
    assert!(
        (one.from - 5.0).abs() < 1e-6 && one.to == 1000.0,
        "{found:?}"
    );
    let found = solve(&made(&FLAT, "3"), "x", "y", 4.0);
    assert!(
        found.intervals.is_empty() && found.roots.len() == 1,
        "{found:?}"
    );
}

#[test]
fn a_plot_of_steps_has_levels_and_their_places() {
    let swept = sweep(&made(&STAIRS, "3").inputs, "x", "y").unwrap();
    let places: Vec<f64> = swept
        .edges
        .iter()
        .map(|edge| (edge.at * 1e4).round() / 1e4)
        .collect();
    assert_eq!(places, [2.0, 3.0, 4.0]);
    let levels = swept.levels().unwrap();
    let gives: Vec<f64> = levels.iter().filter_map(|level| level.gives).collect();
    assert_eq!(gives, [1.0, 2.0, 3.0, 4.0]);
    assert!((levels[1].from - 2.0).abs() < 1e-5 && (levels[1].to - 3.0).abs() < 1e-5);
    // no slanting line: neighbours on the curve share the result or the place
    for pair in swept.curve().windows(2) {
        assert!(pair[0].1 == pair[1].1 || pair[0].0 == pair[1].0, "{pair:?}");
    }
    // a smooth result has none
    let smooth = sweep(&made(&BOWL, "3").inputs, "x", "y").unwrap();
    assert!(smooth.edges.is_empty() && smooth.levels().is_none());
}

#[test]
fn a_stretch_inside_without_an_answer_is_told() {
    let out = made(&INSIDE, "1 \u{b1} .05");
    let found = spread_of(&out);
    let place = found.faults[0].places[0];
    assert_eq!(place.end, None);
    assert!(
        (place.low - 1.01).abs() < 1e-4 && (place.high - 1.02).abs() < 1e-4,
        "{place:?}"
    );
    assert!(line(&found, "y").is_cut);
}

#[test]
fn the_least_inside_is_found() {
    let found = spread_of(&made(&BOWL, "0.5 \u{b1} 0.51"));
    let y = line(&found, "y");
    assert!(
        (y.low - 1.0).abs() < 1e-4 && (y.high - (0.71 * 0.71 + 1.0)).abs() < 1e-9,
        "{y:?}"
    );
}

// --- properties

/// Examples and generated entries of every sheet, some with a tolerance on measured fields.
fn entries(
    seed: u64,
    rounds: usize,
    tolerances: bool,
    mut check: impl FnMut(&'static Sheet, &Entry, &Outcome, &mut fastrand::Rng),
) {
    let mut rng = fastrand::Rng::with_seed(seed);
    // BENCHSLATE_FUZZ over 50,000 multiplies them
    let rounds = rounds * (common::rounds() / 50_000).max(1);
    for sheet in sheets::ALL {
        let generated = (0..rounds).map(|_| None);
        for example in sheet.examples.iter().map(Some).chain(generated) {
            let mut entry = example.map_or_else(
                || common::entry(sheet, 0, &mut rng),
                |pairs| Entry::of(pairs),
            );
            if tolerances {
                for field in sheet.fields.iter().filter(|field| field.is_measured) {
                    let Some(text) = entry.get(field.id).filter(|text| !text.is_empty()) else {
                        continue;
                    };
                    if rng.u8(..) < 160 {
                        let share = ["0.05", "0.3", "1", "4"][rng.usize(..4)];
                        let text = format!("{text} +- {share}%");
                        entry.set(field.id, &text);
                    }
                }
            }
            let out = evaluate(sheet, &entry);
            if out.answer.is_complete() {
                check(sheet, &entry, &out, &mut rng);
            }
        }
    }
}

#[test]
fn no_point_inside_the_tolerance_gives_a_result_outside_its_range() {
    let mut tried = 0;
    entries(11, 12, true, |sheet, entry, out, rng| {
        let Some(found) = spread(&out.inputs, &out.answer) else {
            return;
        };
        assert!(
            found.evaluations <= MOST.1,
            "{}: {}",
            sheet.id,
            found.evaluations
        );
        let system = out.inputs.system();
        for _ in 0..12 {
            let mut inputs = out.inputs.clone();
            for (field, _, low, high) in out.inputs.tolerances() {
                inputs = inputs.with(field.id, low + (high - low) * rng.f64());
            }
            let Ok(answer) = figure(&inputs) else {
                assert!(
                    !found.faults.is_empty(),
                    "{} {entry:?}: a hole is not told",
                    sheet.id
                );
                continue;
            };
            for one in &found.lines {
                let nominal = out.answer.get(one.id).unwrap();
                let Some(now) = answer.get(one.id).and_then(|line| line.value.base()) else {
                    assert!(
                        one.is_cut,
                        "{} {} {entry:?}: it vanishes and is not told",
                        sheet.id, one.id
                    );
                    continue;
                };
                tried += 1;
                let (unit, digit) = nominal.value.last_digit(system).unwrap();
                let (low, high) = printed_order(&nominal.value, one.low, one.high, system);
                let (low, high, now) = (
                    unit.from_base(low),
                    unit.from_base(high),
                    unit.from_base(now),
                );
                let slack = digit.max(2e-3 * (high - low)).max(1e-9 * now.abs());
                let inside = low - slack <= now && now <= high + slack;
                match one.moves {
                    Moves::Not | Moves::Through if !nominal.stepped => {
                        assert!(
                            inside || one.is_cut,
                            "{} {} {entry:?}: {now} outside {low} to {high}",
                            sheet.id,
                            one.id
                        );
                    }
                    _ => {}
                }
            }
        }
    });
    assert!(tried > 5_000, "{tried}");
}

#[test]
fn what_is_solved_gives_what_was_wanted() {
    let (mut met, mut most, mut tried) = (0, 0, 0);
    entries(12, 3, false, |sheet, entry, out, rng| {
        let system = out.inputs.system();
        for (field, now) in sheet.fields.iter().zip(&out.fields) {
            if !now.applies || !matches!(field.kind, FieldKind::Quantity { .. }) {
                continue;
            }
            for line in &out.answer.lines {
                let Some(base) = line.value.base() else {
                    continue;
                };
                if rng.u8(..) < 160 {
                    continue;
                }
                let wanted = if rng.bool() {
                    base
                } else {
                    base * (0.9 + 0.2 * rng.f64())
                };
                let Some(found) = turn(&out.inputs, field.id, line.id, wanted) else {
                    continue;
                };
                tried += 1;
                most = most.max(found.evaluations);
                let name = format!("{} {} {} {entry:?}", sheet.id, field.id, line.id);
                assert!(found.evaluations <= MOST.0, "{name}: {}", found.evaluations);
                let (unit, digit) = line.value.with_base(wanted).last_digit(system).unwrap();
                let half = 0.5 * digit;
                let off = |gives: f64| (unit.from_base(gives) - unit.from_base(wanted)).abs();
                let meets = |gives: f64| off(gives) <= half * 1.001;
                for find in tell_found(&out.inputs, field, line, &found) {
                    let Some(x) = find.put else { continue };
                    met += 1;
                    let gives = put_back(sheet, entry, out, field.id, x, line.id);
                    assert!(
                        gives.is_some_and(meets),
                        "{name}: {find:?} gives {gives:?}, wanted {wanted}"
                    );
                }
                for one in &found.intervals {
                    let at = |x: f64| {
                        figure(&out.inputs.with(field.id, x))
                            .ok()
                            .and_then(|a| a.get(line.id)?.value.base())
                    };
                    assert!(
                        at(one.from).is_some_and(meets) && at(one.to).is_some_and(meets),
                        "{name}: {one:?}"
                    );
                    // the last digit in which the field is printed
                    let own = out
                        .inputs
                        .unit(field.id)
                        .or_else(|| field.unit(system))
                        .unwrap();
                    let printed = (own
                        .to_base(own.from_base(one.to) + libm::pow(10.0, -f64::from(own.places)))
                        - one.to)
                        .abs();
                    let grid = if field.kind_is(Kind::Count) {
                        1.0
                    } else {
                        printed
                    };
                    for (x, inside) in [
                        (one.from - grid, one.from > found.searched.0),
                        (one.to + grid, one.to < found.searched.1),
                    ] {
                        let beyond = (found.searched.0..=found.searched.1).contains(&x);
                        assert!(
                            !inside
                                || !beyond
                                || !at(x).is_some_and(|gives| off(gives)
                                    <= half
                                        * if line.stepped || field.kind_is(Kind::Count) {
                                            0.99
                                        } else {
                                            1e-9
                                        }),
                            "{name}: it also holds at {x}: {one:?}"
                        );
                    }
                }
                // the entry's own result is always found
                if wanted == base && out.inputs.number(field.id).is_some() {
                    let any = !found.roots.is_empty()
                        || !found.intervals.is_empty()
                        || found.has_no_effect;
                    assert!(any, "{name}: {found:?}");
                }
            }
        }
    });
    println!("{tried} searches, {met} put back, at most {most} evaluations");
    assert!(met > 300, "{met}");
}

#[test]
fn a_sweep_is_bounded_and_never_slants_over_a_step() {
    entries(13, 1, false, |sheet, entry, out, _| {
        for (field, now) in sheet.fields.iter().zip(&out.fields) {
            if !now.applies || out.inputs.number(field.id).is_none() {
                continue;
            }
            for line in out
                .answer
                .lines
                .iter()
                .filter(|line| line.stepped && line.value.base().is_some())
            {
                let Some(swept) = sweep(&out.inputs, field.id, line.id) else {
                    continue;
                };
                assert!(swept.evaluations <= 1200, "{} {entry:?}", sheet.id);
                for edge in &swept.edges {
                    assert!(
                        edge.from != edge.to,
                        "{} {} {}",
                        sheet.id,
                        field.id,
                        line.id
                    );
                }
            }
        }
    });
}

/// Every search over every example: evaluations counted, and the clock looked at by hand (`--ignored --nocapture`, release).
#[test]
#[ignore = "a measurement"]
fn how_long_a_search_takes() {
    let mut all = Vec::new();
    for sheet in sheets::ALL {
        for pairs in sheet.examples {
            let out = evaluate(sheet, &Entry::of(pairs));
            for (field, now) in sheet.fields.iter().zip(&out.fields) {
                if !now.applies || !matches!(field.kind, FieldKind::Quantity { .. }) {
                    continue;
                }
                for line in &out.answer.lines {
                    let Some(base) = line.value.base() else {
                        continue;
                    };
                    for share in [1.0, 1.1] {
                        let mut best = (f64::MAX, 0);
                        for _ in 0..3 {
                            let start = std::time::Instant::now();
                            let Some(found) = turn(&out.inputs, field.id, line.id, base * share)
                            else {
                                continue;
                            };
                            best = (
                                best.0.min(start.elapsed().as_secs_f64() * 1e3),
                                found.evaluations,
                            );
                        }
                        if best.1 > 0 {
                            all.push((best, format!("{} {} {}", sheet.id, field.id, line.id)));
                        }
                    }
                }
            }
        }
    }
    all.sort_by(|a, b| b.0.0.total_cmp(&a.0.0));
    for one in all.iter().take(25) {
        println!("{one:?}");
    }
    all.sort_by_key(|one| std::cmp::Reverse(one.0.1));
    for one in all.iter().take(8) {
        println!("{one:?}");
    }
}
