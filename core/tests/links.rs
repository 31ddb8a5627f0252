//! Do links keep what they promise? Equal entries give equal links, a link reads back to the same answer, old links open,
//! and hostile text gives a fault.
#![allow(clippy::panic)] // a failed check

mod common;

use benchslate_core::link::{self, Asked, Fault, Note, open};
use benchslate_core::sheet::{Entry, evaluate};
use benchslate_core::sheets;

#[test]
fn round_trip_of_generated_entries() {
    let mut rng = fastrand::Rng::with_seed(1);
    for sheet in sheets::ALL {
        for _ in 0..400 {
            let entry = common::entry(sheet, 30, &mut rng);
            let outcome = evaluate(sheet, &entry);
            let Some(link) = link::state_of(sheet, &entry, &outcome, &Asked::default()) else {
                continue;
            };
            assert!(link.is_ascii() && link.len() <= link::MOST_CHARS);
            assert!(!link.ends_with(['.', ',', ')']), "{link}");
            let opened = open(&link).unwrap();
            assert_eq!(opened.sheet.id, sheet.id);
            assert!(opened.notes.is_empty(), "{link} {:?}", opened.notes);
            let again = evaluate(sheet, &opened.entry);
            assert_eq!(again.answer, outcome.answer, "{link}");
            assert_eq!(
                link::state_of(sheet, &opened.entry, &again, &Asked::default()),
                Some(link)
            );
            let faults = |outcome: &benchslate_core::sheet::Outcome| {
                outcome
                    .faults()
                    .map(|fault| fault.reason)
                    .collect::<Vec<_>>()
            };
            assert_eq!(faults(&again), faults(&outcome));
        }
    }
}

#[test]
fn links_that_were_given_out_still_open() {
    // one link a line; a line is never changed or taken out, only added to
    for line in include_str!("../../tests/golden/links.txt")
        .lines()
        .filter(|line| line.starts_with("#/"))
    {
        let opened = open(line).unwrap_or_else(|fault| panic!("{line}: {}", fault.text()));
        assert!(
            opened
                .notes
                .iter()
                .all(|note| matches!(note, Note::OtherRevision(_) | Note::NoRevision)),
            "{line}: {:?}",
            opened.notes
        );
        let outcome = evaluate(opened.sheet, &opened.entry);
        assert!(
            outcome.answer.is_complete(),
            "{line}: {:?}",
            outcome.answer.state
        );
    }
}

#[test]
fn every_sheet_has_a_link_in_the_golden_file() {
    let golden = include_str!("../../tests/golden/links.txt");
    for sheet in sheets::ALL {
        assert!(
            golden.contains(&format!("#/v1/{}", sheet.id)),
            "add a link of {} to tests/golden/links.txt",
            sheet.id
        );
    }
}

#[test]
fn hostile_links_give_faults() {
    let id = sheets::ALL[0].id;
    let field = sheets::ALL[0].fields[0].id;
    assert_eq!(open("").err(), Some(Fault::NotALink));
    assert_eq!(open("hello").err(), Some(Fault::NotALink));
    assert_eq!(open("#/v1/").err(), Some(Fault::NotALink));
    assert_eq!(
        open("#/v9/x?y=1").err(),
        Some(Fault::UnknownVersion("v9".into()))
    );
    assert_eq!(
        open("#/v1/no-such").err(),
        Some(Fault::UnknownSheet("no-such".into()))
    );
    assert_eq!(
        open(&format!("#/v1/{id}?{field}={}", "1".repeat(50_000))).err(),
        Some(Fault::TooLong)
    );
    let damaged = open(&format!("#/v1/{id}?{field}=%zz%")).unwrap();
    assert_eq!(damaged.entry.get(field), Some("%zz%"));
    assert!(matches!(damaged.notes[..], [Note::BadEncoding(_)]));
    let twice = open(&format!("#/v1/{id}?{field}=1&{field}=2&unknown=3&&=")).unwrap();
    assert_eq!(twice.entry.get(field), Some("1"));
    assert!(
        twice
            .notes
            .contains(&Note::UnknownKey("unknown".into(), "3".into()))
    );
    let plus = open(&format!("#/v1/{id}?{field}=1+2%2B3")).unwrap();
    assert_eq!(plus.entry.get(field), Some("1+2+3"), "plus is always plus");
}

#[test]
fn random_links_never_panic() {
    let mut rng = fastrand::Rng::with_seed(2);
    for _ in 0..common::rounds() / 5 {
        let sheet = sheets::ALL[rng.usize(..sheets::ALL.len())];
        let mut link = format!("#/v1/{}?", sheet.id);
        for _ in 0..rng.usize(..6) {
            let key = if rng.bool() {
                sheet.fields[rng.usize(..sheet.fields.len())].id.to_owned()
            } else {
                common::text(&mut rng)
            };
            link.push_str(&format!("{key}={}&", common::text(&mut rng)));
        }
        if let Ok(opened) = open(&link) {
            let outcome = evaluate(opened.sheet, &opened.entry);
            let _ = link::of(opened.sheet, &opened.entry, &outcome, &opened.asked);
        }
    }
}

#[test]
fn a_whole_address_opens_too() {
    let id = sheets::ALL[0].id;
    assert!(open(&format!("https://host.example/sub/path/#/v1/{id}")).is_ok());
    assert!(
        evaluate(sheets::ALL[0], &Entry::default())
            .faults()
            .next()
            .is_none()
    );
}
