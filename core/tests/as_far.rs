//! How far does an answer go with part of its entries, and what stands beside a fault?
#![allow(clippy::unwrap_used)] // a failed check

use benchslate_core::onward::onward;
use benchslate_core::quantity::{Count, Kind, Length, System};
use benchslate_core::record::Shop;
use benchslate_core::sheet::*;
use benchslate_core::sheets;

static RULE: Source = Source::practice("A rule of this test");

const WAY: &[Choice] = &[choice("plain", "plain"), choice("held", "held back")];

static SHEET: Sheet = Sheet {
    id: "as-far",
    revision: 1,
    title: "As far as it goes",
    question: "How far does it go?",
    aside: "length",
    words: &[],
    group: Group::Identify,
    fields: &[
        Field::choice("way", "Way", WAY),
        Field::length("d", "Length").example("2 in"),
        Field::count("n", "Parts").example("4"),
        // the example changes nothing: only the ends of the range show what hangs on it
        Field::length("over", "Allowance")
            .example("0 in")
            .range_in(0.0, 1.0, "a range of this test")
            .optional(),
    ],
    results: &[
        Res::of("twice", "Twice", Kind::Length)
            .says("Of the length alone.")
            .places(2, 1),
        Res::of("with", "With allowance", Kind::Length).says("Length and allowance."),
        Res::of("each", "Each part", Kind::Length).signed(),
        Res::of("last", "Half", Kind::Length),
    ],
    examples: &[&[("d", "2 in"), ("n", "4")]],
    takes: &[],
    finds: None,
    figure,
};

fn figure(inp: &Inputs, a: &mut Answer) -> Result<(), Stop> {
    let d: Length = inp.get("d")?;
    a.line("twice", d * 2.0);
    a.line("with", d + inp.opt("over").unwrap_or(Length::ZERO));
    let held = inp.choice("way") == "held";
    a.part(|a| {
        let n: Count = inp.get("n")?;
        a.line("each", d * (1.0 / n.get()));
        a.note("parts", "About the parts", "They are even.");
        if n.get() > 9.0 {
            return Err(inp.out_of_range("n", "more than 9", "take fewer"));
        }
        if held && n.get() > 5.0 {
            return Err(Stop::withheld(
                "n",
                "5",
                "a limit of this test",
                "take fewer",
            ));
        }
        Ok(())
    })?;
    a.line("last", d * 0.5);
    a.source(&RULE);
    Ok(())
}

fn given(pairs: &[(&str, &str)]) -> (Outcome, Vec<&'static str>) {
    let outcome = evaluate(&SHEET, &Entry::of(pairs));
    let ids = outcome.answer.lines.iter().map(|line| line.id).collect();
    (outcome, ids)
}

#[test]
fn a_result_waits_for_its_own_entries_alone() {
    let (outcome, ids) = given(&[("d", "2 in")]);
    assert_eq!(outcome.answer.state, State::Incomplete(vec!["n"]));
    assert_eq!(ids, ["twice", "with", "last"]);
    assert!(outcome.answer.caution("parts").is_none());
    let (outcome, ids) = given(&[("d", "2 in"), ("n", "4")]);
    assert!(outcome.answer.is_complete());
    assert_eq!(ids, ["twice", "with", "each", "last"]);
}

#[test]
fn a_result_prints_as_it_is_declared() {
    let (outcome, _) = given(&[("d", "2 in"), ("n", "4")]);
    let line = |id| outcome.answer.get(id).unwrap();
    assert_eq!(line("twice").value.text(System::default()), "4.00");
    assert_eq!(line("twice").says, "Of the length alone.");
    assert_eq!(line("each").value.text(System::default()), "+0.5000");
}

#[test]
fn what_more_entries_would_open_is_found_by_trying() {
    let (outcome, _) = given(&[]);
    let all = wanting(&SHEET, &outcome);
    let needs: Vec<_> = all
        .iter()
        .map(|one| (one.id, one.needs.as_slice()))
        .collect();
    assert_eq!(
        needs,
        [
            ("twice", &["d"][..]),
            ("with", &["d"]),
            ("each", &["d", "n"]),
            ("last", &["d"])
        ]
    );
    assert_eq!(opens(&all, "n"), ["Each part"]);
    let (outcome, _) = given(&[("d", "2 in")]);
    let left = wanting(&SHEET, &outcome);
    assert_eq!(
        (left[0].id, left[0].needs.as_slice(), left.len()),
        ("each", &["n"][..], 1)
    );
    let (outcome, _) = given(&[("d", "2 in"), ("n", "4")]);
    assert!(wanting(&SHEET, &outcome).is_empty());
}

#[test]
fn a_fault_in_a_part_takes_that_part_and_no_other() {
    let (outcome, ids) = given(&[("d", "2 in"), ("n", "10")]);
    assert_eq!(outcome.answer.state, State::Faulty);
    assert_eq!(ids, ["twice", "with", "last"]);
    assert!(outcome.answer.caution("parts").is_none());
    assert_eq!(
        outcome.field("n").unwrap().fault.as_ref().unwrap().says,
        "more than 9"
    );
    // for the powers it is no answer at all
    assert!(benchslate_core::sheet::figure(&outcome.inputs).is_err());
    assert!(given(&[("d", "2 in"), ("n", "9")]).0.answer.is_complete());
}

#[test]
fn a_limit_leaves_nothing() {
    let at = |n| given(&[("way", "held"), ("d", "2 in"), ("n", n)]);
    assert!(at("5").0.answer.is_complete());
    let (outcome, ids) = at("6");
    assert!(matches!(outcome.answer.state, State::Withheld(_)));
    assert!(ids.is_empty());
}

#[test]
fn what_hangs_on_a_faulty_entry_goes_though_its_example_changes_nothing() {
    let (outcome, ids) = given(&[("d", "2 in"), ("n", "4"), ("over", "2 in")]);
    assert_eq!(outcome.answer.state, State::Faulty);
    assert_eq!(ids, ["twice", "each", "last"]);
    let (_, ids) = given(&[("d", "2 in"), ("n", "4"), ("over", "1 in")]);
    assert_eq!(ids, ["twice", "with", "each", "last"]);
}

#[test]
fn a_choice_that_does_not_read_is_taken_for_no_other() {
    let (outcome, ids) = given(&[("way", "other"), ("d", "2 in"), ("n", "4")]);
    assert_eq!(outcome.answer.state, State::Faulty);
    assert!(ids.is_empty());
}

#[test]
fn a_speed_does_not_stand_beside_a_hardness_that_is_at_fault() {
    let sheet = sheets::by_id("speed-feed").unwrap();
    let rpm = |hardness| {
        let mut entry = Entry::of(sheet.examples[0]);
        entry.set("hardness", hardness);
        evaluate(sheet, &entry).answer.get("rpm").is_some()
    };
    assert!(rpm("") && rpm("180"));
    assert!(!rpm("99999"));
}

#[test]
fn feed_per_tooth_stands_beside_a_radial_depth_over_the_diameter() {
    let sheet = sheets::by_id("chip-load").unwrap();
    let chip = |engaged| {
        let pairs = [
            ("teeth", "4"),
            ("rpm", "670"),
            ("feed", "3 ipm"),
            ("diameter", "1/2 in"),
            ("engaged", engaged),
        ];
        evaluate(sheet, &Entry::of(&pairs))
    };
    assert!(chip("0.5 in").answer.is_complete());
    let over = chip("0.501 in");
    assert_eq!(over.answer.state, State::Faulty);
    // 3 / (4 x 670) in a tooth
    assert_eq!(
        over.answer
            .get("chip")
            .unwrap()
            .value
            .text(System::default()),
        "0.0011"
    );
    assert!(over.answer.get("thickest").is_none() && over.answer.get("verdict").is_none());
}

#[test]
fn the_thread_and_the_metal_go_on_and_a_withheld_question_is_not_offered() {
    let tapping = sheets::by_id("tapping").unwrap();
    let outcome = evaluate(
        tapping,
        &Entry::of(&[
            ("thread", "1/4-20"),
            ("work", "gray-iron"),
            ("depth", "1/2 in"),
        ]),
    );
    let next = onward(&outcome, &Shop::default());
    let power = next
        .iter()
        .find(|next| next.sheet.id == "cutting-power")
        .unwrap();
    let carried: Vec<_> = power
        .carried
        .iter()
        .map(|one| (one.field, one.text.as_str()))
        .collect();
    assert_eq!(
        carried,
        [("thread", "1/4-20 UNC"), ("tap-work", "gray-iron")]
    );
    // the choice under which both fields apply is made
    assert!(power.entry.contains(&("cut", "tap".to_owned())));
    for next in next {
        assert!(benchslate_core::link::open(&next.link).is_ok());
    }
    let fit = sheets::by_id("fit-limits").unwrap();
    let press = |call| {
        let outcome = evaluate(fit, &Entry::of(&[("size", "1 in"), ("fit", call)]));
        onward(&outcome, &Shop::default())
            .iter()
            .any(|next| next.sheet.id == "press-fit")
    };
    assert!(press("H7/p6"));
}
