//! Does what is typed stay what it was? Every spelling with every tolerance prints a link text that opens to the same
//! reading for ever; what has two meanings is asked; what is asked or refused offers the user's own figures.
#![allow(clippy::panic, clippy::unwrap_used, clippy::indexing_slicing)] // a failed check

use benchslate_core::link::{self, Note, open};
use benchslate_core::quantity::{
    Kind, ReadFault, Reading, System, Unit, link_text, read, units, units_of,
};
use benchslate_core::record::proving::read_measured;
use benchslate_core::sheet::{Entry, Fault, FieldKind, Outcome, Reason, Value, evaluate};
use benchslate_core::sheets;

/// Sizes without a unit, as they are typed.
const SIZES: &[&str] = &[
    "1.25", "1,25", ".75", "0,750", "5.", "1/4", "1 1/4", "1-1/4", "1-21/64", "12-63/64", "1¼",
    "¾", "3⁄8", "-8 1/2", "−8½", "-8-1/2", "+1/4", "250", "0.1875", "007.5",
];
/// Tolerances behind it; `{u}` is a unit of the kind.
const TOLERANCES: &[&str] = &[
    "",
    " ±.002",
    "±.002",
    " ± 1/64",
    " +-.0005",
    " +/-.002",
    " +/- 1/16",
    "+.0005/-.0000",
    " +.0005/-.0000",
    " +.0005 / -.0002",
    " +.0005 -.0002",
    " -.0002/+.0005",
    " -.0002 +.0005",
    " -.001/0",
    " +.001/0",
    " +1/64/-0",
    " ±5%",
    " +5%/-2%",
    " ±1%",
    " ± .5 {u}",
    " +.5 {u}/-.25 {u}",
    " -.25 {u}/+.5 {u}",
    " ± 1-1/2 {u}",
    " +.5 {u}/-0",
];

/// The same value, tolerance and unit.
fn same(a: &Reading, b: &Reading) -> bool {
    (a.nominal, a.minus, a.plus, a.exact) == (b.nominal, b.minus, b.plus, b.exact)
        && a.unit == b.unit
}

/// Units offered in other shops, other fields and nowhere.
fn offers(kind: Kind) -> Vec<Vec<&'static Unit>> {
    let all = units_of(kind);
    let mut offers: Vec<Vec<&'static Unit>> = all
        .iter()
        .map(|first| {
            let rest = all.iter().filter(|unit| *unit != first);
            [*first].into_iter().chain(rest.copied()).collect()
        })
        .collect();
    offers.push(Vec::new());
    offers
}

/// Checks that a text that reads prints a link text that opens to the same reading, three times over.
#[track_caller]
fn for_ever(text: &str, kind: Kind, offered: &[&'static Unit]) -> bool {
    let Ok(first) = read(text, kind, offered) else {
        return false;
    };
    let link = link_text(text, &first);
    assert!(link.is_ascii(), "{text:?} prints {link:?}");
    if link.len() > 64 {
        return false; // a sheet refuses it as too long
    }
    for (at, others) in offers(kind).iter().enumerate() {
        let mut now = link.clone();
        // once in every shop, three times in the first
        for opening in 1..=(if at == 0 { 3 } else { 1 }) {
            let again = read(&now, kind, others).unwrap_or_else(|fault| {
                panic!("{text:?} as {kind:?} prints {link:?}: opening {opening} gives {fault:?}")
            });
            assert!(
                same(&first, &again),
                "{text:?} as {kind:?} prints {link:?}: {first:?} {again:?}"
            );
            let next = link_text(&now, &again);
            assert_eq!(next, link, "{text:?} as {kind:?}, opening {opening}");
            now = next;
        }
    }
    true
}

#[test]
fn every_spelling_with_every_tolerance_opens_for_ever() {
    let (mut tried, mut taken) = (0_u32, 0_u32);
    for kind in units::KINDS {
        let all = units_of(*kind);
        let spellings: Vec<&str> = all
            .iter()
            .flat_map(|unit| unit.spellings.iter().copied())
            .collect();
        let most = if *kind == Kind::Length {
            SIZES.len()
        } else {
            9
        };
        for size in SIZES.iter().take(most) {
            for tolerance in TOLERANCES {
                // bare, and with each spelling of each unit; the tolerance in the size's unit and in the kind's first
                let mut texts: Vec<(String, Vec<&'static Unit>)> = Vec::new();
                for offered in offers(*kind) {
                    texts.push((format!("{size}{tolerance}"), offered));
                }
                for spelling in &spellings {
                    texts.push((format!("{size} {spelling}{tolerance}"), Vec::new()));
                    if tolerance.len() < 8 {
                        texts.push((format!("{size}{spelling}{tolerance}"), Vec::new()));
                    }
                }
                for (text, offered) in texts {
                    // a unit of the tolerance's own: each in turn
                    let next = tried as usize % all.len();
                    let units = [all[next].id, all[(next + 1) % all.len()].id];
                    let count = if text.contains("{u}") { 2 } else { 1 };
                    for unit in &units[..count] {
                        tried += 1;
                        taken += u32::from(for_ever(&text.replace("{u}", unit), *kind, &offered));
                    }
                }
            }
        }
    }
    assert!(
        taken > tried / 3,
        "only {taken} of {tried} were read: the generator tells little"
    );
}

#[test]
fn hyphens_of_numbers_feet_and_units_are_no_tolerance() {
    const INCHES: &[&Unit] = &[&units::INCH, &units::MM];
    for (text, want, low, high) in [
        ("1-1/4 +/-.002", 1.25, 0.002, 0.002),
        ("1-1/4 +.0005/-.0000", 1.25, 0.0, 0.0005),
        ("1-1/4 ±.002", 1.25, 0.002, 0.002),
        ("1-1/2 +/- 1/64", 1.5, 1.0 / 64.0, 1.0 / 64.0),
        ("5'-3\" ±.01", 63.0, 0.01, 0.01),
        ("5'-3\" +.01/-.02", 63.0, 0.02, 0.01),
        ("5'-6 1/2\" +/- 1/16", 66.5, 0.0625, 0.0625),
        ("5' -.002/+.005", 60.0, 0.002, 0.005),
        ("1/4-in +.001/-.002", 0.25, 0.002, 0.001),
        ("14 thou 5 tenths ±.1 thou", 0.0145, 0.0001, 0.0001),
    ] {
        let got =
            read(text, Kind::Length, INCHES).unwrap_or_else(|fault| panic!("{text}: {fault:?}"));
        let near = |mm: f64, inches: f64| (mm - inches * 25.4).abs() < 1e-6;
        // of feet a bare tolerance is in the unit that the whole is said in
        let unit = if got.unit == &units::FOOT { 12.0 } else { 1.0 };
        assert!(
            near(got.nominal, want) && near(got.minus, low * unit) && near(got.plus, high * unit),
            "{text}: {got:?}"
        );
        assert!(for_ever(text, Kind::Length, INCHES), "{text}");
    }
    for (text, kind, link) in [
        ("25 ft-lb ±5%", Kind::Torque, "25 ft-lb +-5%"),
        ("25 ft-lb +1/-2", Kind::Torque, "25 ft-lb +1/-2"),
        ("8°7'48\" ± 1'", Kind::Angle, "8deg7'48\" +-1'"),
        ("5 tenths", Kind::Length, "5 tenths of a thou"),
        ("a tenth", Kind::Length, "1 tenth of a thou"),
        ("5 mil ± 1 mil", Kind::Length, "5 thou +-1 thou"),
    ] {
        let got = read(text, kind, &[]).unwrap();
        assert_eq!(link_text(text, &got), link);
        assert!(for_ever(text, kind, &[]));
    }
    for text in ["5' -.002\"", "5'-.002\"", "5' -0.5\""] {
        assert!(
            matches!(
                read(text, Kind::Length, INCHES),
                Err(ReadFault::Unreadable { .. })
            ),
            "{text}"
        );
    }
}

#[test]
fn sides_of_a_tolerance_agree_in_their_units() {
    for text in [
        "10 +.5 in/-5%",
        "10 +5%/-.5 in",
        ".2500 +.0005/-1%",
        "10 +5%/-.5",
        "1.25 in +2 thou/-.001",
        "1.25 in +.002/-1 thou",
        "10 in +.5 in/-2 thou",
        "1.25 +.002/-1 thou",
    ] {
        let Err(ReadFault::Unreadable { why }) = read(text, Kind::Length, &[&units::INCH]) else {
            panic!("{text}: {:?}", read(text, Kind::Length, &[&units::INCH]))
        };
        assert!(why.contains("write"), "{text}: no cure in {why:?}");
    }
    for (text, minus, plus) in [
        ("10 +5%/-2%", 0.2, 0.5),
        ("10 +5%/-0", 0.0, 0.5),
        ("10 +0/-5%", 0.5, 0.0),
        ("10 in +2 thou/-0", 0.0, 0.002),
        ("10 in +.5 in/-.25", 0.25, 0.5),
        ("10 +.5 in/-.25 in", 0.25, 0.5),
    ] {
        let got = read(text, Kind::Length, &[&units::INCH])
            .unwrap_or_else(|fault| panic!("{text}: {fault:?}"));
        assert!(
            (got.minus / 25.4 - minus).abs() < 1e-9 && (got.plus / 25.4 - plus).abs() < 1e-9,
            "{text}: {got:?}"
        );
    }
}

fn faults(sheet: &str, field: &str, text: &str, system: System) -> Option<Fault> {
    let sheet = sheets::by_id(sheet).unwrap();
    let mut entry = Entry::of(sheet.examples[0]);
    entry.system = system;
    entry.set(field, text);
    evaluate(sheet, &entry).field(field).unwrap().fault.clone()
}

fn said(sheet: &str, field: &str, text: &str) -> Fault {
    faults(sheet, field, text, System::Inch)
        .unwrap_or_else(|| panic!("{sheet} takes {field}={text}"))
}

fn ways(fault: &Fault) -> Vec<&str> {
    fault.ways.iter().map(|way| way.text.as_str()).collect()
}

#[test]
fn wrong_entries_are_named_in_plain_words() {
    for (text, says, cure) in [
        (
            ".25 kg",
            "\u{201c}kg\u{201d} is not a length",
            "use in, mm or thou",
        ),
        (
            "25 rpm",
            "\u{201c}rpm\u{201d} is not a length",
            "use in, mm or thou",
        ),
        (
            "3°",
            "\u{201c}deg\u{201d} is not a length",
            "use in, mm or thou",
        ),
        ("-0.5", "a length can't be minus", "give 0 in or more"),
        (
            "1..25",
            "two points or commas in a row: write one, as 1.25",
            "for example 7/16 in",
        ),
        (
            "O.25",
            "a letter stands where a digit belongs",
            "write 0.25",
        ),
    ] {
        let fault = said("length", "length", text);
        assert_eq!(
            (fault.says.as_str(), fault.cure.as_str()),
            (says, cure),
            "{text}"
        );
    }
    for (text, want) in [
        ("O.25", vec!["0.25"]),
        ("0.O25", vec!["0.025"]),
        ("I/4", vec!["1/4"]),
        ("l/4 in", vec!["1/4 in"]),
        ("#7", vec!["0.2010 in"]),
        ("F", vec!["0.2570 in"]),
        ("No. 10", vec!["0.1935 in", "0.1900 in"]),
    ] {
        let fault = said("length", "length", text);
        assert_eq!(ways(&fault), want, "{text}");
        for way in want {
            assert!(
                faults("length", "length", way, System::Inch).is_none(),
                "{way}"
            );
        }
    }
    // ISO 1000: 1 kgf is 9.80665 N
    let torque = read("3 kgf·m", Kind::Torque, &[]).unwrap();
    assert!((torque.nominal - 29.419_95).abs() < 1e-9);
}

#[test]
fn numbers_that_fit_another_unit_better_are_asked() {
    for (sheet, field, text, want) in [
        ("change-gears", "thread", "1.5", vec!["1.5 mm", "1.5 tpi"]),
        (
            "thread-infeed",
            "pitch",
            "1.25",
            vec!["1.25 mm", "1.25 tpi"],
        ),
        ("name-thread", "pitch", "1.25", vec!["1.25 mm", "1.25 tpi"]),
        ("belt-drive", "slip", "0.02", vec!["2 pct", "0.02 pct"]),
    ] {
        let fault = said(sheet, field, text);
        assert_eq!(
            (fault.reason, ways(&fault)),
            (Reason::Ambiguous, want),
            "{sheet} {text}"
        );
    }
    let metric = |sheet, field, text| faults(sheet, field, text, System::Metric);
    assert_eq!(
        ways(&metric("length", "length", "11/16").unwrap()),
        ["11/16 in", "11/16 mm"]
    );
    assert_eq!(
        ways(&metric("name-thread", "pitch", "20").unwrap()),
        ["20 tpi", "20 mm"]
    );
    for (sheet, field, text) in [
        ("change-gears", "thread", "20"),
        ("change-gears", "thread", "11.5"),
        ("thread-infeed", "pitch", "16"),
        ("belt-drive", "slip", "2"),
        ("length", "length", "11/16"),
    ] {
        assert_eq!(
            faults(sheet, field, text, System::Inch),
            None,
            "{sheet} {text}"
        );
    }
    assert_eq!(metric("name-thread", "pitch", "1.5"), None);
}

#[test]
fn readings_show_no_false_digits_and_the_smaller_number_first() {
    let reading = |sheet: &str, field: &str, text: &str| {
        let sheet = sheets::by_id(sheet).unwrap();
        let mut entry = Entry::of(sheet.examples[0]);
        entry.set(field, text);
        evaluate(sheet, &entry)
            .field(field)
            .unwrap()
            .reading
            .clone()
    };
    assert_eq!(
        reading("length", "length", "1/3"),
        "about 0.33333 in \u{b7} 8.4667 mm"
    );
    assert_eq!(
        reading("length", "length", "7/24"),
        "about 0.29167 in \u{b7} 7.4083 mm"
    );
    assert_eq!(
        reading("length", "length", "7/16"),
        "0.4375 in \u{b7} 11.1125 mm"
    );
    assert_eq!(
        reading("length", "length", "1/128"),
        "0.0078125 in \u{b7} 0.1984375 mm"
    );
    assert_eq!(
        reading("name-thread", "pitch", "20 ± 1 tpi"),
        "20 tpi \u{b7} 1.270 mm, 19 to 21, measured"
    );
    assert_eq!(
        reading("name-thread", "pitch", "11 tpi"),
        "11 tpi \u{b7} 2.309 mm"
    );
}

fn list(text: &str) -> Result<String, Fault> {
    let sheet = sheets::by_id("plate-check").unwrap();
    let entry = Entry::of(&[("of", "feed"), ("feed-steps", text)]);
    let outcome = evaluate(sheet, &entry);
    let field = outcome.field("feed-steps").unwrap();
    field
        .fault
        .clone()
        .map_or_else(|| Ok(field.link_text.replace(" ipm", "")), Err)
}

#[test]
fn lists_are_typed_as_on_a_plate() {
    for (text, want) in [
        ("25,32,43", "25;32;43"),
        ("25, 32, 43", "25;32;43"),
        ("25 32 43", "25;32;43"),
        ("25\t32\t43", "25;32;43"),
        ("25\n32\n43\n", "25;32;43"),
        ("25;32;43", "25;32;43"),
        ("25 ; 32, 43 56", "25;32;43;56"),
        ("70 ipm, 110 ipm, 175 ipm", "70;110;175"),
        ("70 ipm 110 ipm 175 ipm", "70;110;175"),
        ("1/2, 3/4, 1", "1/2;3/4;1"),
        ("1/2 3/4 1 1 3/8 2", "1/2;3/4;1;1-3/8;2"),
        ("1/2, 3/4, 1, 1 3/8, 2", "1/2;3/4;1;1-3/8;2"),
        ("1/2 3/4 1 1-3/8 2", "1/2;3/4;1;1-3/8;2"),
        ("2 1 3/8 1/2", "2;1-3/8;1/2"),
        ("100,125,160,200", "100;125;160;200"),
        ("12,5;25,2;50", "12,5;25,2;50"),
        ("25,32,43,", "25;32;43"),
    ] {
        assert_eq!(
            list(text).unwrap_or_else(|fault| panic!("{text:?}: {fault:?}")),
            want,
            "{text:?}"
        );
    }
    for (text, want) in [
        (
            "25, 32, 43, 1,161",
            vec!["25; 32; 43; 1161", "25; 32; 43; 1; 161"],
        ),
        (
            "25,32,43,1,161",
            vec!["25; 32; 43; 1161", "25; 32; 43; 1; 161"],
        ),
        (
            "1,161,1500,2000",
            vec!["1161; 1500; 2000", "1; 161; 1500; 2000"],
        ),
        (
            "0,5, 0,75, 1,25",
            vec!["0.5; 0.75; 1.25", "0; 5; 0; 75; 1; 25"],
        ),
        ("4 2 1 1/2", vec!["4; 2; 1-1/2", "4; 2; 1; 1/2"]),
        (
            "25;1,161;2000",
            vec!["25; 1.161 ipm; 2000", "25; 1161 ipm; 2000"],
        ),
    ] {
        let fault = list(text)
            .err()
            .unwrap_or_else(|| panic!("{text:?} is taken"));
        assert_eq!(
            (fault.reason, ways(&fault)),
            (Reason::Ambiguous, want),
            "{text:?}"
        );
    }
    let two = list("25,32").unwrap_err();
    assert_eq!(ways(&two), ["25; 32", "25.32"]);
}

#[test]
fn faults_of_a_list_hold_what_was_typed_and_no_marks_of_links() {
    let fault = list("25/32/43").unwrap_err();
    assert_eq!(ways(&fault), ["25; 32; 43"]);
    let timings = said("feed-check", "timings", "1 ipm~1 in~61.3 s~4~5~6~7");
    assert_eq!(timings.cure, "give each value its own cell");
    let cell = said(
        "feed-check",
        "timings",
        "1 ipm~1 in~61.3 s;2 ipm~1,250 in~30 s",
    );
    assert_eq!(cell.at, Some((2, 2)));
    assert_eq!(
        ways(&cell),
        [
            "1 ipm~1 in~61.3 s; 2 ipm~1.250 in~30 s",
            "1 ipm~1 in~61.3 s; 2 ipm~1250 in~30 s"
        ]
    );
    for fault in [fault, timings, cell] {
        assert!(
            !fault.says.contains(['~', ';']) && !fault.cure.contains(['~', ';']),
            "{fault:?}"
        );
    }
}

#[test]
fn a_list_is_read_back_with_its_values() {
    let sheet = sheets::by_id("plate-check").unwrap();
    let outcome = evaluate(sheet, &Entry::of(&[("spindle-steps", "25, 32 43")]));
    assert_eq!(
        outcome.field("spindle-steps").unwrap().reading,
        "3 rows: 25, 32, 43 rpm"
    );
}

#[test]
fn links_of_lists_open_for_ever() {
    for text in [
        "25 32 43",
        "1/2, 3/4, 1 3/8",
        "1/2 3/4 1 1 3/8 2",
        "70 ipm, 110 ipm, 175 ipm",
    ] {
        let sheet = sheets::by_id("plate-check").unwrap();
        let feeds = |text| evaluate(sheet, &Entry::of(&[("of", "feed"), ("feed-steps", text)]));
        let first = feeds(text);
        let link = first.field("feed-steps").unwrap().link_text.clone();
        assert!(!link.is_empty());
        let again = feeds(&link);
        assert_eq!(again.field("feed-steps").unwrap().link_text, link);
        assert_eq!(again.answer, first.answer);
    }
}

#[test]
fn a_measured_feed_is_no_timing_in_disguise() {
    let read = |text: &str| read_measured(text, Kind::FeedRate, System::Inch);
    for text in ["1/80", "5 / 60.2", "5/60", "1/16"] {
        let says = read(text).expect_err(text);
        assert!(
            says.contains(" in / ") && says.contains(" s"),
            "{text}: {says}"
        );
        let (over, under) = text.split_once('/').unwrap();
        let cure = format!("{} in / {} s", over.trim(), under.trim());
        assert!(says.contains(&cure), "{text}: {says}");
        assert!(read(&cure).is_ok(), "{cure}");
    }
    // 4 in in 121 s are 1.983 in/min
    let feed = read("4 in in 121 s").unwrap();
    assert!((feed.value / 25.4 - 240.0 / 121.0).abs() < 1e-9);
    assert_eq!(feed, read("4 in / 121 s").unwrap());
    for (text, ipm) in [
        ("1/2", 0.5),
        ("1-3/8", 1.375),
        ("2", 2.0),
        ("1/80 ipm", 0.0125),
    ] {
        assert!(
            (read(text).unwrap().value / 25.4 - ipm).abs() < 1e-9,
            "{text}"
        );
    }
    let over = read_measured("0.02 mm in 300 mm", Kind::Length, System::Metric).unwrap();
    assert_eq!((over.value, over.over_mm), (0.02, Some(300.0)));
}

#[test]
fn a_link_without_a_revision_claims_nothing() {
    let sheet = sheets::ALL.iter().find(|sheet| sheet.revision > 1).unwrap();
    let bare = open(&format!("#/v1/{}", sheet.id)).unwrap();
    assert_eq!(bare.notes, [Note::NoRevision]);
    assert!(!bare.notes[0].text().contains("have changed"));
    let old = open(&format!("#/v1/{}?rev=1", sheet.id)).unwrap();
    assert_eq!(old.notes, [Note::OtherRevision(1)]);
    let now = open(&format!("#/v1/{}?rev={}", sheet.id, sheet.revision)).unwrap();
    assert!(now.notes.is_empty());
    let units = open("#/v1/length?length=7/16&units=mm").unwrap();
    assert!(
        units.notes[0].text().ends_with("write u=mm"),
        "{}",
        units.notes[0].text()
    );
}

/// Every figure of every example, in both systems, reads back to what is printed.
#[test]
fn printed_results_read_back() {
    let mut checked = 0_u32;
    let mut check = |value: &Value, system: System, place: &str| {
        let (Value::Quantity { kind, .. }, Some(unit), Some(base)) =
            (value, value.unit(system), value.base())
        else {
            return;
        };
        let text = value.text_with_unit(system);
        let got = read(&text, *kind, &[unit])
            .unwrap_or_else(|fault| panic!("{place}: {text:?} as {kind:?}: {fault:?}"));
        let off = (unit.from_base(got.nominal) - unit.from_base(base)).abs();
        let last = libm::pow(10.0, -f64::from(value.decimals(system)));
        // derived loads and stresses are printed to three figures
        let size = unit.from_base(base).abs();
        let room = if matches!(kind, Kind::Force | Kind::Stress) {
            (0.5 * last).max(0.005 * size)
        } else {
            0.5 * last
        };
        // minutes and seconds are printed to the second
        let room = if text.contains(':') && *kind == Kind::Time {
            unit.from_base(0.5)
        } else {
            room
        };
        assert!(
            off <= room + 1e-9 * size,
            "{place}: {text:?} reads {}",
            got.nominal
        );
        checked += 1;
    };
    for sheet in sheets::ALL {
        for example in sheet.examples {
            let answered: Outcome = evaluate(sheet, &Entry::of(example));
            for system in [System::Inch, System::Metric] {
                for line in &answered.answer.lines {
                    check(&line.value, system, &format!("{} {}", sheet.id, line.id));
                }
                for table in &answered.answer.tables {
                    for cell in table.rows.iter().flat_map(|row| &row.cells) {
                        check(cell, system, &format!("{} {}", sheet.id, table.id));
                    }
                }
            }
        }
    }
    assert!(checked > 2000, "{checked}");
}

/// What a program computed with all its digits goes back into a field.
#[test]
fn numbers_of_programs_are_read() {
    for (text, inches) in [
        ("0.31882834645669295 in", 0.318_828_346_456_692_95),
        ("5e-06 in", 5e-6),
        ("1.5e-3 in", 1.5e-3),
        ("12.000000000000002", 12.0),
    ] {
        let got = read(text, Kind::Length, &[&units::INCH])
            .unwrap_or_else(|fault| panic!("{text}: {fault:?}"));
        assert!(
            (got.nominal / 25.4 - inches).abs() < 1e-8,
            "{text}: {got:?}"
        );
        assert!(for_ever(text, Kind::Length, &[&units::INCH]));
    }
    for text in ["1e3", "1e+3", "2e", "1e-40", "1234567890123456"] {
        assert!(read(text, Kind::Length, &[]).is_err(), "{text}");
    }
}

/// Every quantity field of every sheet: its example with each tolerance form prints a link that opens again.
#[test]
fn links_of_fields_with_tolerances_open_for_ever() {
    let mut taken = 0_u32;
    for sheet in sheets::ALL {
        for example in sheet.examples {
            for field in sheet.fields {
                let FieldKind::Quantity { .. } = field.kind else {
                    continue;
                };
                if !field.is_measured || field.example.is_empty() {
                    continue;
                }
                for tolerance in [
                    " ±1%",
                    " +/- 1%",
                    " +1%/-0",
                    " ±.0001",
                    " +.0001/-.0000",
                    " -.0001/+.0002",
                ] {
                    let mut entry = Entry::of(example);
                    entry.set(field.id, &format!("{}{tolerance}", field.example));
                    let outcome = evaluate(sheet, &entry);
                    if !outcome.answer.is_complete() {
                        continue;
                    }
                    let asked = link::Asked::default();
                    let mut link = link::of(sheet, &entry, &outcome, &asked).unwrap();
                    for _ in 0..3 {
                        let opened = open(&link).unwrap();
                        let again = evaluate(sheet, &opened.entry);
                        assert_eq!(again.answer, outcome.answer, "{link}");
                        assert_eq!(
                            again.field(field.id).unwrap().reading,
                            outcome.field(field.id).unwrap().reading
                        );
                        let next = link::of(sheet, &opened.entry, &again, &asked).unwrap();
                        assert_eq!(next, link);
                        link = next;
                    }
                    taken += 1;
                }
            }
        }
    }
    assert!(taken > 200, "{taken}");
}

#[test]
fn steps_typed_as_on_a_plate_reach_the_proving_record() {
    use benchslate_core::record::{Record, Shop, ShopAction, proving::Plate};
    let items = vec![("feed-steps".to_owned(), "1/2, 3/4, 1 3/8".to_owned())];
    let shop = Shop::default().after(&ShopAction::Fill(System::Inch, items));
    assert_eq!(Plate::of(&shop).feeds, ["1/2 ipm", "3/4 ipm", "1-3/8 ipm"]);
}
