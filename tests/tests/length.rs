//! The sheet that reads a length every way, against published sizes.
#![allow(clippy::unwrap_used, clippy::panic)] // a failure is a failed check

use benchslate_core::quantity::System;
use benchslate_core::sheet::{Answer, Entry, evaluate};
use benchslate_core::sheets::by_id;

fn answer(typed: &str, system: System) -> Answer {
    let mut entry = Entry::of(&[("length", typed)]);
    entry.system = system;
    evaluate(by_id("length").unwrap(), &entry).answer
}

#[track_caller]
fn says(typed: &str, want: &[(&str, &str)]) {
    let a = answer(typed, System::Inch);
    assert!(a.is_complete(), "{typed}");
    for (id, text) in want {
        let line = a.get(id).unwrap_or_else(|| panic!("{typed}: no {id}"));
        assert_eq!(
            line.value.text_with_unit(System::Inch),
            *text,
            "{typed}: {id}"
        );
    }
}

/// Number and letter drills by their decimal: ASME B94.11M, twist drills (from memory; the same figures stand in the
/// units database GNU units 2.22 for 1, 5, 7, 10, 16, F and R).
#[test]
fn a_decimal_names_its_drill() {
    for (typed, drill) in [
        (".2010", "No. 7"),
        (".2280", "No. 1"),
        (".2055", "No. 5"),
        (".1935", "No. 10"),
        (".1770", "No. 16"),
        (".1590", "No. 21"),
        (".2570", "letter F"),
        (".3680", "letter U"),
        (".3390", "letter R"),
        ("5/16", "5/16 in"),
        ("6.8 mm", "6.8 mm"),
    ] {
        says(typed, &[("drill", drill), ("drill-off", "0.0000 in")]);
    }
}

/// Taper pins by the large end: ASME B18.8.2, table 1 (from memory; No. 2 also Shigley's Mechanical Engineering Design, 9th
/// ed., table 7-5, where No. 2 has 0.1930 in). Dowels by nominal: ASME B18.8.2-2000, table 2.
#[test]
fn a_decimal_names_its_pin() {
    for (typed, pin) in [
        ("0.193", "taper pin No. 2, large end"),
        ("0.219", "taper pin No. 3, large end"),
        ("0.289", "taper pin No. 5, large end"),
        ("0.1875", "dowel 3/16 in"),
        ("0.3750", "dowel 3/8 in"),
    ] {
        says(typed, &[("pin", pin), ("pin-off", "0.0000 in")]);
    }
}

/// Decimal equivalents of fractions, from 1 in = 25.4 mm; ties of the fourth millimetre decimal up.
#[test]
fn fractions_in_both_units() {
    says(
        "21/64",
        &[
            ("inch", "0.328125 in"),
            ("mm", "8.334375 mm"),
            ("fraction-64", "21/64 in"),
            ("fraction-128", "21/64 in"),
        ],
    );
    says(
        "1-21/64",
        &[
            ("inch", "1.328125 in"),
            ("mm", "33.734375 mm"),
            ("fraction-64", "1-21/64 in"),
        ],
    );
    // 5 mm is 0.19685 in: 12.598 64ths, 25.197 128ths, worked by hand.
    says(
        "5 mm",
        &[
            ("inch", "0.19685 in"),
            ("thou", "196.9 thou"),
            ("fraction-64", "13/64 in"),
            ("fraction-64-off", "+0.00627 in"),
            ("fraction-128", "25/128 in"),
            ("fraction-128-off", "-0.00154 in"),
        ],
    );
    // Half way between 7/64 and 8/64: the larger, by our rule.
    says(
        "15/128",
        &[
            ("fraction-64", "1/8 in"),
            ("fraction-64-off", "+0.00781 in"),
            ("fraction-128", "15/128 in"),
            ("fraction-128-off", "0.00000 in"),
        ],
    );
}

/// A thou is 0.001 in, a tenth 0.0001 in (common practice); a micrometre is 0.001 mm.
#[test]
fn thou_and_tenths() {
    says(
        "14 thou 5 tenths",
        &[
            ("inch", "0.0145 in"),
            ("thou", "14.5 thou"),
            ("spoken", "fourteen thou and five tenths"),
        ],
    );
    says("254 um", &[("inch", "0.0100 in"), ("spoken", "ten thou")]);
    let a = answer("5 tenths", System::Metric);
    assert!(!a.is_complete(), "a bare tenth in a metric shop is asked");
}
