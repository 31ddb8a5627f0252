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
