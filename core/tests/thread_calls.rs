//! Which ways to write a thread, a screw and a drill are read, asked or refused with what stands near?
#![allow(clippy::panic, clippy::unwrap_used)] // a failed check

use benchslate_core::call::CallFault;
use benchslate_core::calls::{drill, thread};

#[test]
fn spellings_of_the_shop_and_of_old_drawings() {
    for (text, want) in [
        ("1/4 x 20", "1/4-20 UNC"),
        ("1/4 20", "1/4-20 UNC"),
        ("1/4x20", "1/4-20 UNC"),
        ("1-1/8 7", "1-1/8-7 UNC"),
        ("10 24", "#10-24 UNC"),
        ("UNC 1/4", "1/4-20 UNC"),
        ("UNF 10-32", "#10-32 UNF"),
        ("1/4-20 UNRC", "1/4-20 UNC"),
        ("1/4-28 UNRF-2A", "1/4-28 UNF-2A"),
        ("3/8-32 UNREF", "3/8-32 UNEF"),
        ("1/4-20 NC", "1/4-20 UNC"),
        ("1/4-28 NF", "1/4-28 UNF"),
        ("1/4-32 NEF", "1/4-32 UNEF"),
        ("1-14 NS", "1-14 UNS"),
        ("1-1/2-8 N", "1-1/2-8 UN"),
        ("1-1/2-8UN", "1-1/2-8 UN"),
        ("1-1/2 8UN", "1-1/2-8 UN"),
        ("M10-1.5", "M10x1.5"),
        ("M10 1.25", "M10x1.25"),
        ("M10-1.25-6H", "M10x1.25-6H"),
        ("1/4-24 UNS", "1/4-24 UNS"),
    ] {
        let got = thread::read(text).unwrap_or_else(|fault| panic!("{text}: {fault:?}"));
        assert_eq!(got.to_string(), want, "{text}");
        assert_eq!(thread::read(&got.to_string()), Ok(got));
    }
}

fn near(text: &str) -> (String, String, Vec<String>) {
    match thread::read(text) {
        Err(CallFault::Near { says, cure, ways }) => {
            (says, cure, ways.into_iter().map(|way| way.0).collect())
        }
        other => panic!("{text}: {other:?}"),
    }
}

#[test]
fn a_count_outside_the_series_is_offered_as_a_special() {
    // ASME B1.1 tabulates 1-14, 10-28, 1/4-24 and 1/2-27 as UNS (Machinery's Handbook, Unified selected combinations)
    for (text, uns, standard) in [
        ("1-14", "1-14 UNS", "1-12 UNF"),
        ("1-14 UNF", "1-14 UNS", "1-8 UNC"),
        ("1-14 NF", "1-14 UNS", "1-12 UNF"),
        ("10-28", "#10-28 UNS", "#10-32 UNF"),
        ("10-36", "#10-36 UNS", "#10-24 UNC"),
        ("12-40", "#12-40 UNS", "#12-28 UNF"),
        ("1/4-24", "1/4-24 UNS", "1/4-28 UNF"),
        ("1/2-27", "1/2-27 UNS", "1/2-28 UNEF"),
    ] {
        let (says, _, ways) = near(text);
        assert!(says.contains("series"), "{says}");
        assert_eq!(ways.first().map(String::as_str), Some(uns), "{text}");
        assert!(ways.iter().any(|way| way == standard), "{text}: {ways:?}");
        for way in &ways {
            assert!(thread::read(way).is_ok(), "{way}");
        }
    }
    // BS 84: 1/2 BSW has 12 threads per inch
    assert!(near("1/2-12").1.contains("1/2 BSW"));
    assert!(!near("1/2-27").1.contains("BSW"));
    assert_eq!(near("1/4-2O").2, ["1/4-20 UNC"]);
}

#[test]
fn sizes_that_are_not_defined_are_refused_with_their_neighbours() {
    for text in [
        "#00", "00", "#000", "000", "0000", "00-90", "#000-120", "No. 00",
    ] {
        assert!(near(text).2.contains(&"#0-80 UNF".to_owned()), "{text}");
        assert!(
            matches!(thread::size(text), Err(CallFault::Near { .. })),
            "{text}"
        );
    }
    assert_eq!(thread::size("#0").unwrap().name, "No. 0");
    assert_eq!(thread::size("0").unwrap().name, "No. 0");
    for text in ["#14-20", "14-24", "#14", "#30-16"] {
        let Err(CallFault::NotDefined { says, .. }) = thread::read(text) else {
            panic!("{text}: {:?}", thread::read(text))
        };
        assert!(says.contains("old machine screw"), "{says}");
    }
    let Err(CallFault::NotDefined { says, .. }) = thread::read("#14-20") else {
        panic!()
    };
    assert!(says.contains("0.242 in, not 1/4 in"), "{says}");
    let Err(CallFault::Unknown { cure, .. }) = thread::read("8UN") else {
        panic!()
    };
    assert!(cure.contains("1-1/2-8 UN"));
}

#[test]
fn bare_decimals_of_drills_are_asked_where_inches_may_be_meant() {
    for (text, mm) in [
        (".3", "0.3 mm"),
        (".4", "0.4 mm"),
        ("0.6", "0.6 mm"),
        ("0.8", "0.8 mm"),
        ("1.1", "1.1 mm"),
    ] {
        let Err(CallFault::Ambiguous(ways)) = drill::read(text) else {
            panic!("{text}: {:?}", drill::read(text))
        };
        assert_eq!(ways.first().map(|way| way.0.as_str()), Some(mm));
        assert!(ways.len() > 1, "{text}: {ways:?}");
        for (way, _) in &ways {
            assert!(drill::read(way).is_ok(), "{way}");
        }
    }
    assert_eq!(drill::read("5.1").unwrap().name(), "5.1 mm");
    assert_eq!(drill::read("1.6").unwrap().name(), "1.6 mm");
    assert_eq!(drill::read(".25").unwrap().name(), "1/4 in");
}
