//! What becomes of a whole question in the look-up: half typed, misspelt, beyond what any sheet knows, in a shop of its own?
#![allow(clippy::panic)] // a failed check

use benchslate_core::link;
use benchslate_core::quantity::System;
use benchslate_core::record::Shop;
use benchslate_core::search::{Found, Hit, Index, MOST_CHARS};
use benchslate_core::sheets;
use std::sync::LazyLock;

static INDEX: LazyLock<Index> = LazyLock::new(Index::default);

fn ask(text: &str) -> Found {
    INDEX.ask(text, &Shop::default())
}

fn first(text: &str) -> Hit {
    let hits = ask(text).hits.into_iter().next();
    hits.unwrap_or_else(|| panic!("nothing found for {text}"))
}

#[test]
fn each_way_to_say_it_finds_the_same() {
    for (texts, sheet) in [
        (
            [
                "aluminium end mill speed",
                "aluminum endmill speeds",
                "speed for end mills in alu",
            ],
            "speed-feed",
        ),
        (
            [
                "tap drill 1/4-20",
                "1/4-20 tapping drill",
                "what drill for a 1/4-20 tap?",
            ],
            "tap-drill",
        ),
        (
            ["change wheels", "change gears", "Change Gear"],
            "change-gears",
        ),
        (
            ["surface finish", "surface roughness", "surfase finish"],
            "surface-finish",
        ),
        (
            ["spanner torque for bolts", "bolt torque", "torque bolt"],
            "bolt-torque",
        ),
    ] {
        for text in texts {
            assert_eq!(first(text).sheet, sheet, "{text}");
        }
    }
}

#[test]
fn a_word_may_be_half_typed() {
    for (text, sheet) in [
        ("surf", "surface-finish"),
        ("clearance ho", "clearance-hole"),
        ("backl", "dial-slack"),
        ("bolt tor", "bolt-torque"),
    ] {
        assert_eq!(first(text).sheet, sheet, "{text}");
    }
    let rows = ask("3/8-1").hits;
    assert!(
        rows.iter().any(|hit| hit.title.contains("3/8-16")),
        "{rows:?}"
    );
}

#[test]
fn nothing_found_is_never_empty_and_says_what_was_not_understood() {
    for text in ["tailstock offset", "qwertz", "gib"] {
        let found = ask(text);
        assert!(found.near && !found.hits.is_empty(), "{text}: {found:?}");
        assert!(found.hits.iter().all(|hit| hit.answer.is_none()), "{text}");
        assert!(!found.missed.is_empty(), "{text}");
    }
    assert_eq!(ask("feeler .012").missed, ["feeler"]);
    assert_eq!(ask(""), Found::default());
    assert_eq!(ask(&"a ".repeat(MOST_CHARS)), Found::default());
}

/// A figure for less than was asked would be a wrong one: a pipe thread is no 5-40, a coil's hole no tap drill.
#[test]
fn a_figure_stands_only_where_every_word_is_explained() {
    assert!(first("1/4-20 tap drill").answer.is_some());
    for text in [
        "1/8 npt tap drill",
        "1/4-20 tap drill for a helicoil",
        "1/2 bsw tap drill",
        "three wires 1/2-13",
        "roll pin 1/4 hole",
    ] {
        for hit in ask(text).hits {
            assert_eq!(hit.answer, None, "{text}: {hit:?}");
        }
    }
    // a call that reads in two ways is asked, not guessed, where the rest is not understood
    assert_eq!(first("1/8 npt tap drill").entry.get("thread"), Some("1/8"));
    // presets alone answer nothing
    assert_eq!(first("speeds").answer, None);
}

#[test]
fn what_is_taken_without_being_said_stands_beside_the_figure() {
    let hit = first("1/2 end mill in stainless rpm");
    assert!(
        hit.answer.is_some() && hit.aside.contains("taken: high-speed steel"),
        "{hit:?}"
    );
    let hit = first("1/2 end mill hss in stainless rpm");
    assert!(
        hit.answer.is_some() && !hit.aside.contains("taken: high-speed steel"),
        "{hit:?}"
    );
}

#[test]
fn an_answer_comes_in_the_unit_that_is_asked_for() {
    for (text, figure) in [
        ("40 thou in mm", "1.016 mm"),
        ("12.7 mm in inches", "0.5 in"),
        ("0.0005 in to microns", "12.7 \u{b5}m"),
    ] {
        let answer = first(text).answer.unwrap_or_default();
        assert!(answer.starts_with(figure), "{text}: {answer}");
    }
}

#[test]
fn every_hit_opens_and_holds_its_entry() {
    for system in [System::Inch, System::Metric] {
        let shop = Shop {
            system,
            ..Shop::default()
        };
        for text in [
            "3 in slab cutter cast iron hss",
            "m8 8.8 torque",
            "25 H7/g6",
            "7/16",
            "backlash 12 thou climb",
            "unknown bolt .312 18 threads",
        ] {
            for hit in INDEX.ask(text, &shop).hits {
                let opened = link::open(&hit.link)
                    .unwrap_or_else(|fault| panic!("{text}: {}", fault.text()));
                assert_eq!(opened.sheet.id, hit.sheet, "{text}");
                assert_eq!(opened.entry.system, system, "{text}");
                let sheet = sheets::by_id(hit.sheet).unwrap();
                assert!(
                    hit.entry.texts().all(|(id, _)| sheet.field(id).is_some()),
                    "{text}"
                );
            }
        }
    }
}

/// The order of the list says nothing: turned about, the same comes first.
#[test]
fn the_order_of_the_sheets_does_not_matter() {
    let mut turned: Vec<_> = sheets::ALL.to_vec();
    turned.reverse();
    let turned = Index::new(&turned);
    for text in [
        "1/4-20",
        "rpm",
        "horsepower",
        "H7",
        "13/32",
        "drill",
        "bolt torque",
        "speeds",
        "taper pin",
        "thread",
    ] {
        assert_eq!(
            turned.find(text, System::Inch)[0].sheet,
            first(text).sheet,
            "{text}"
        );
    }
}
