//! Does a form do what its actions say? Without any screen.

use super::*;
use benchslate_core::quantity::units;
use benchslate_core::sheet::State;
use benchslate_core::sheets;

fn open(link: &str) -> Form {
    Form::open(link::open(link).unwrap())
}

#[test]
fn a_link_opens_shows_and_writes_itself_again() {
    for &sheet in sheets::ALL {
        for example in sheet.examples {
            let entry = Entry::of(example);
            let wanted =
                link::of(sheet, &entry, &evaluate(sheet, &entry), &Asked::default()).unwrap();
            assert_eq!(open(&wanted).link().as_deref(), Some(wanted.as_str()));
        }
    }
}

#[test]
fn the_unit_of_a_bare_number_stands_in_its_own_place() {
    let form = open("#/v1/length?length=7/16%20mm");
    assert_eq!(&*form.typed[0].raw, "7/16");
    assert_eq!(form.unit(0), Some(&units::MM));
    let form = form.after(Act::Unit(0, &units::INCH));
    assert_eq!(form.answer().lines[0].value.text(System::Inch), "0.4375");
    assert_eq!(form.link().as_deref(), Some("#/v1/length?length=7/16%20in"));
}

#[test]
fn half_typed_text_stays_as_typed_and_asks_for_the_rest() {
    let form = open("#/v1/length")
        .after(Act::Unit(0, &units::MM))
        .after(Act::Type(0, "1/".into()));
    assert_eq!(&*form.typed[0].raw, "1/");
    assert!(matches!(form.answer().state, State::Incomplete(_)));
}

#[test]
fn choosing_a_unit_takes_the_typed_one_off() {
    let form = open("#/v1/length")
        .after(Act::Type(0, "1-1/2 in".into()))
        .after(Act::Unit(0, &units::MM));
    assert_eq!(&*form.typed[0].raw, "1-1/2");
    assert_eq!(form.unit(0), Some(&units::MM));
}

#[test]
fn an_entry_too_long_to_hand_on_is_kept_whole() {
    let rows = "1.25 ipm~1.0625 in~61.5 s~10;".repeat(60);
    let form = open("#/v1/feed-check").after(Act::Type(0, rows.trim_end_matches(';').into()));
    assert_eq!(form.link(), None);
    let kept = form.kept("2026-11-26".into()).unwrap();
    assert!(kept.link.len() > link::MOST_CHARS && kept.name.len() < 250);
    let again = open(&kept.link);
    assert_eq!(again.whole_link(), Some(kept.link));
    assert_eq!(
        again.entry().get("timings"),
        Some(rows.trim_end_matches(';'))
    );
}

#[test]
fn clearing_leaves_an_empty_link() {
    let form = open("#/v1/length?length=7/16%20in").after(Act::Clear);
    assert!(form.is_empty());
    assert_eq!(form.address().as_deref(), Some("#/v1/length"));
}

/// The readings of a form's number fields, in base units.
fn readings(form: &Form) -> Vec<Option<f64>> {
    let fields = form.sheet.fields.iter();
    fields
        .map(|field| form.outcome.inputs.number(field.id))
        .collect()
}

#[test]
fn results_in_another_system_read_no_entry_again() {
    let form = open("#/v1/bolt-torque?thread=3/8-16&grade=sae-5&from=torque&torque=25%20ft-lb");
    let metric = form.after(Act::System(System::Metric));
    assert_eq!(readings(&metric), readings(&form));
    assert!(metric.address().unwrap().contains("torque=25%20ft-lb"));
    assert!(metric.link().unwrap().contains("u=mm"));
    for &sheet in sheets::ALL {
        for example in sheet.examples {
            for (one, other) in [
                (System::Inch, System::Metric),
                (System::Metric, System::Inch),
            ] {
                let entry = Entry::of(example).in_system(one);
                let outcome = evaluate(sheet, &entry);
                let Some(link) = link::of(sheet, &entry, &outcome, &Asked::default()) else {
                    continue;
                };
                let form = open(&link);
                let turned = form.after(Act::System(other));
                assert_eq!(readings(&turned), readings(&form), "{link}");
                let lists = |form: &Form| {
                    let rows = sheet.fields.iter().filter(|field| {
                        matches!(field.kind, benchslate_core::sheet::FieldKind::Rows { .. })
                    });
                    let texts =
                        rows.map(|field| form.outcome.field(field.id).unwrap().link_text.clone());
                    texts.collect::<Vec<_>>()
                };
                assert_eq!(lists(&turned), lists(&form), "{link}");
                let again = open(&turned.address().unwrap());
                assert_eq!(readings(&again), readings(&form), "{link}");
                let back = turned.after(Act::System(one));
                assert_eq!(back.link(), form.link());
            }
        }
    }
}

#[test]
fn a_bare_number_goes_on_in_the_unit_that_it_was_begun_in() {
    let form = open("#/v1/length").after(Act::Type(0, "1/".into()));
    let form = form
        .after(Act::System(System::Metric))
        .after(Act::Type(0, "1/4".into()));
    assert_eq!(form.outcome.inputs.number("length"), Some(6.35));
    // a share of it is no unit
    let form = open("#/v1/length").after(Act::Type(0, "10 +-5%".into()));
    let turned = form.after(Act::System(System::Metric));
    assert_eq!(turned.outcome.inputs.number("length"), Some(254.0));
    assert_eq!(&*turned.typed[0].raw, "10 +-5%");
    // an empty field takes the new system's unit
    let empty = open("#/v1/length").after(Act::System(System::Metric));
    let typed = empty.after(Act::Type(0, "7".into()));
    assert_eq!(typed.outcome.inputs.number("length"), Some(7.0));
}

#[test]
fn a_wanted_figure_keeps_its_unit_too() {
    let form = open("#/v1/bolt-torque?thread=3/8-16&grade=sae-5&turn=load&want=torque~25");
    let turned = form.after(Act::System(System::Metric));
    let want = turned.asked.want.clone().unwrap();
    assert_eq!(want, "torque~25 ft-lb");
}

#[test]
fn another_unit_never_cuts_an_entry() {
    for raw in [
        "14 thou 5 tenths",
        "1 ft 3 in",
        "1 in 5 thou",
        "5' 3\"",
        "1-1/4 in \u{b1}.01 in",
        "25 mm \u{b1} 1 thou",
        ".750 in +.001 in/-.002 in",
        "3/4\" \u{b1}.002",
        "a tenth",
    ] {
        let before = open("#/v1/length").after(Act::Type(0, raw.into()));
        for unit in [&units::INCH, &units::MM, &units::THOU] {
            let after = before.after(Act::Unit(0, unit));
            assert_eq!(&*after.typed[0].raw, raw);
            assert!(!after.typed[0].says.is_empty(), "{raw}: says why");
            assert_eq!(readings(&after), readings(&before), "{raw}");
            let typed = after.after(Act::Type(0, "1".into()));
            assert_eq!(typed.typed[0].says, "");
        }
    }
    for (raw, head) in [
        ("14 thou", "14"),
        ("1-1/2 in", "1-1/2"),
        ("3/4\"", "3/4"),
        ("2.5mm", "2.5"),
        ("7", "7"),
        ("1-1/4 \u{b1}.01", "1-1/4 \u{b1}.01"),
    ] {
        let form = open("#/v1/length")
            .after(Act::Type(0, raw.into()))
            .after(Act::Unit(0, &units::MM));
        assert_eq!(
            (&*form.typed[0].raw, form.typed[0].says),
            (head, ""),
            "{raw}"
        );
        assert_eq!(form.unit(0), Some(&units::MM), "{raw}");
        assert!(form.answer().is_complete(), "{raw}");
    }
}

#[test]
fn what_was_cleared_comes_back() {
    let form =
        open("#/v1/bolt-torque?thread=3/8-16&grade=sae-5").after(Act::System(System::Metric));
    let shop = owned(false);
    let cleared = form.after(Act::Clear).after(Act::Shop(shop.clone(), shop));
    assert!(cleared.cleared.is_some());
    let back = cleared.after(Act::Unclear);
    assert_eq!(back.link(), form.link());
    assert_eq!(back.system, System::Metric);
    assert!(back.cleared.is_none() && back.loads != form.loads);
    // once something is entered, there is nothing to take back
    let typed = cleared.after(Act::Type(0, "1".into()));
    assert!(typed.cleared.is_none());
}

#[test]
fn the_last_stroke_lives_through_a_reload_of_its_own_address() {
    let at = "#/v1/length?length=7%20in";
    let long = "x".repeat(60_000);
    for (raw, system) in [
        ("7.25", System::Inch),
        ("1/", System::Metric),
        (long.as_str(), System::Inch),
    ] {
        let form = open(at)
            .after(Act::Type(0, raw.into()))
            .after(Act::System(system));
        assert_eq!(form.address().is_none(), raw.len() > 40_000);
        let text = Draft::text(&form, &["#/v1/length", at]);
        let again = Draft::restored(open(at), Some(&text), at);
        assert!(again.typed == form.typed);
        assert_eq!(again.system, system);
        assert_eq!(readings(&again), readings(&form));
        // not at another address, and not where the text is none of ours
        let other = "#/v1/length?length=8%20in";
        assert_eq!(
            &*Draft::restored(open(other), Some(&text), other).typed[0].raw,
            "8"
        );
        assert_eq!(
            &*Draft::restored(open(at), Some("{}"), at).typed[0].raw,
            "7"
        );
    }
}

#[test]
fn what_has_no_answer_is_saved_with_that_word() {
    let none = open("#/v1/bolt-torque").kept(String::new()).unwrap();
    assert_eq!(none.answer, "no answer yet");
    let some = open("#/v1/length?length=7/16%20in")
        .kept(String::new())
        .unwrap();
    assert!(some.answer.contains("0.4375 in"), "{}", some.answer);
}

/// A shop of which everything is entered, none of it as the typical shop has it.
fn owned(follows: bool) -> Shop {
    use benchslate_core::record::{Record, ShopAction};
    let items = [
        ("spindle-steps", "45;95;190;400;800"),
        ("feed-follows", if follows { "spindle" } else { "own" }),
        ("feed-steps", "0.7;1.4;2.8;5.6"),
        ("feed-steps-turn", "0.0015;0.004;0.01"),
        ("rapid", "45"),
        ("screw-lead", "0.25"),
        ("dial-turn", "0.25"),
        ("dial-divisions", "250"),
        ("spindle-taper", "nmtb-30"),
        ("arbor", "7/8"),
        ("motor", "2"),
        ("drive-efficiency", "60 pct"),
        ("drill-press-steps", "80;150;280;520;960"),
        ("lathe-steps", "60;120;240;480"),
        ("lathe-feeds", "0.004;0.008"),
        ("lathe-motor", "3/4"),
        ("leadscrew", "6"),
        ("change-wheels", "20;25;30;35;40;50;60;75;100"),
        ("thread-dial-wheel", "24"),
        ("thread-dial-lines", "6"),
        ("drills", "metric"),
        ("wrench-low", "20"),
        ("wrench-high", "80"),
    ];
    items.into_iter().fold(Shop::default(), |shop, (id, text)| {
        shop.after(&ShopAction::Item(id.into(), text.into()))
    })
}

/// What an answer says, as text.
fn says(form: &Form) -> String {
    let answer = form.answer();
    let lines = answer.lines.iter();
    let lines = lines.map(|line| {
        format!(
            "{}: {} {}\n",
            line.id,
            line.value.text_with_unit(form.system),
            line.says
        )
    });
    format!(
        "{:?}\n{}{:?}",
        answer.state,
        lines.collect::<String>(),
        answer
            .tables
            .iter()
            .map(|table| &table.rows)
            .collect::<Vec<_>>()
    )
}

/// Opens a sheet from home, types its example where no shop says anything, and walks through its choices: each on its own,
/// and each two that bring fields up.
#[test]
fn my_shop_is_used_whichever_choice_brought_the_field_up() {
    use benchslate_core::sheet::FieldKind;
    let mut seen = 0;
    for shop in [owned(false), owned(true)] {
        for &sheet in sheets::ALL {
            if !sheet
                .fields
                .iter()
                .any(|field| field.preset.item().is_some())
            {
                continue;
            }
            let home = crate::links::to(sheet, &shop, &[]);
            let opened = link::open(&home).unwrap();
            assert!(
                !shop.differs(sheet, &opened.entry),
                "{home}: greets its owner as a stranger"
            );
            let mut form = Form::open_in(opened, &shop, false);
            let at = |id: &str| {
                sheet
                    .fields
                    .iter()
                    .position(|field| field.id == id)
                    .unwrap()
            };
            for (id, text) in *sheet.examples.first().unwrap() {
                if sheet.field(id).unwrap().preset.item().is_none() {
                    form = form.after(Act::Type(at(id), (*text).into()));
                }
            }
            let gates: Vec<usize> = (0..sheet.fields.len())
                .filter(|at| {
                    sheet
                        .fields
                        .iter()
                        .any(|f| f.when.iter().any(|w| w.field == sheet.fields[*at].id))
                })
                .collect();
            let choices = |at: usize| match &sheet.fields[at].kind {
                FieldKind::Choice(choices) if sheet.fields[at].preset.item().is_none() => *choices,
                _ => &[],
            };
            let mut same = |form: &Form, what: &str| {
                seen += 1;
                let mine = form.after(Act::Shop(shop.clone(), shop.clone()));
                assert_eq!(says(form), says(&mine), "{}: {what}", sheet.id);
                assert!(!form.other_shop(&shop), "{}: {what}", sheet.id);
            };
            same(&form, "as opened");
            for one in 0..sheet.fields.len() {
                for first in choices(one) {
                    let now = form.after(Act::Type(one, first.id.into()));
                    same(&now, first.id);
                    for other in gates
                        .iter()
                        .copied()
                        .filter(|other| *other > one && gates.contains(&one))
                    {
                        for second in choices(other) {
                            let then = now.after(Act::Type(other, second.id.into()));
                            same(&then, &format!("{}, {}", first.id, second.id));
                        }
                    }
                }
            }
        }
    }
    assert!(seen > 500, "{seen}");
}

#[test]
fn a_link_from_another_shop_stays_with_its_figures() {
    let sheet = sheets::by_id("speed-feed").unwrap();
    let theirs = crate::links::to(sheet, &owned(false), &[]);
    let mine = Shop::default();
    let form = Form::open_in(link::open(&theirs).unwrap(), &mine, false);
    assert!(form.other_shop(&mine) && form.carries_shop());
    let opened = link::open("#/v1/speed-feed").unwrap();
    let typical = Form::open_in(opened, &owned(false), false);
    assert!(typical.other_shop(&owned(false)) && !typical.carries_shop());
    // typed figures stay as typed when the shop is changed under them
    let work = sheet
        .fields
        .iter()
        .position(|field| field.id == "diameter")
        .unwrap();
    let typed = form
        .after(Act::Type(work, "2 1/2".into()))
        .after(Act::System(System::Metric));
    let changed = typed.after(Act::Shop(mine.clone(), mine));
    assert_eq!(changed.typed[work], typed.typed[work]);
    assert_eq!(changed.outcome.inputs.number("diameter"), Some(63.5));
}
