//! Shop notation read right, asked, or refused; never silently another value.

use super::*;
use crate::quantity::{System, plain as printed, with_unit};
use units::*;

const INCHES: &[&Unit] = &[&INCH, &THOU, &MM];
const METRIC: &[&Unit] = &[&MM, &MICRON, &INCH];

fn length(text: &str) -> Result<Reading, ReadFault> {
    read(text, Kind::Length, INCHES)
}

/// A length in inches.
#[track_caller]
fn inches(text: &str, want: f64) {
    let got = length(text).unwrap_or_else(|f| panic!("{text:?}: {f:?}"));
    let exact = Exact::from_mm(want * 25.4).unwrap();
    assert_eq!(
        got.exact,
        Some(exact),
        "{text:?} read as {} mm, want {want} in",
        got.nominal
    );
}

#[track_caller]
fn refused(text: &str) {
    for kind in KINDS {
        assert!(
            read(text, *kind, &[]).is_err(),
            "{text:?} as {kind:?}: {:?}",
            read(text, *kind, &[])
        );
    }
}

#[track_caller]
fn unfinished(text: &str, kind: Kind) {
    assert_eq!(
        read(text, kind, &[]),
        Err(ReadFault::Unfinished),
        "{text:?}"
    );
}

#[test]
fn lengths() {
    for (text, want) in [
        ("1.25", 1.25),
        ("1,25", 1.25),
        ("0,750", 0.75),
        (",75", 0.75),
        (".75", 0.75),
        ("5.", 5.0),
        ("1/4", 0.25),
        ("1 1/4", 1.25),
        ("1-1/4", 1.25),
        ("1-21/64", 1.328125),
        ("-8 1/2", -8.5),
        ("−8½", -8.5),
        ("+1/4", 0.25),
        ("3/4\"", 0.75),
        ("3/4''", 0.75),
        ("3/4″", 0.75),
        ("3/4”", 0.75),
        ("3/4′′", 0.75),
        ("11/16\"", 0.6875),
        ("10'6\"", 126.0),
        ("10' 6 1/2\"", 126.5),
        ("10'6½\"", 126.5),
        ("10 ft 6 in", 126.0),
        ("10'-6 1/2\"", 126.5),
        ("10' - 6\"", 126.0),
        ("10 ft. 6 in.", 126.0),
        ("5' 3/4\"", 60.75),
        ("5'", 60.0),
        ("¾", 0.75),
        ("1¾", 1.75),
        ("1 ¾", 1.75),
        ("3⁄8", 0.375),
        ("6 1/2", 6.5),
        ("11/4", 2.75),
        ("219 thou", 0.219),
        ("5 mil", 0.005),
        ("7 tenths", 0.0007),
        ("tenth", 0.0001),
        ("14 thousandths and 5 tenths", 0.0145),
        ("14 thou 5 tenths", 0.0145),
        ("14 thousandths of an inch", 0.014),
        ("1 in 5 thou", 1.005),
        ("1/4-in", 0.25),
        ("25.4 mm", 1.0),
        ("25,4mm", 1.0),
        ("12.7 MM", 0.5),
        ("254 um", 0.01),
        ("254 µm", 0.01),
        ("254 microns", 0.01),
        ("2.54 cm", 1.0),
        ("50 uin", 0.00005),
    ] {
        inches(text, want);
    }
    assert_eq!(length("1/4 in").unwrap().unit, &INCH);
    assert_eq!(length("10'6\"").unwrap().unit, &INCH);
    assert!(length("1/4").unwrap().bare && !length("1/4 in").unwrap().bare);
    assert_eq!(read("12.7", Kind::Length, METRIC).unwrap().nominal, 12.7);
}

#[test]
fn refused_everywhere() {
    for text in [
        "4 1/2 + 9",
        "1//2",
        "1/2/3",
        "0x10",
        "1e3",
        "1E3",
        "NaN",
        "nan",
        "inf",
        "-inf",
        "infinity",
        "1/1 1/2",
        "1 5/4",
        "1.5/2",
        "1/2.5",
        "1 1.5",
        "1.5 1/2",
        "--8",
        "1.2.3",
        "1,250,000",
        "1.250,5",
        "1,250.5",
        "abc",
        "in",
        "5 furlongs",
        "¾¾",
        "¾4",
        "¾/2",
        "1/¾",
        "5²",
        "1 - 1/4",
        "1 -1/4",
        "8*2",
        "(8)",
        "5;6",
        "1_000",
        "± .0005",
        "+.0000/-.0002",
        "10.5' 6\"",
        "5 thou 12 tenths",
        "\u{202e}1.25",
        "1\u{0}25",
        "1\t25",
        "1\u{200f}.25",
        "１.25",
        "٣",
        "1.25\u{7f}",
        "1 ± 2 3",
        "1.25 ±",
        "5 in in",
        "5\"\"",
        "¡",
        "—",
    ] {
        refused(text);
    }
    refused("1/0");
    assert!(length("10' 13\"").is_err());
    assert_eq!(length("1/0"), Err(ReadFault::ZeroDenominator));
    assert_eq!(length("1 1/0"), Err(ReadFault::ZeroDenominator));
    for text in ["", "   ", "\t"] {
        assert_eq!(length(text), Err(ReadFault::Empty));
    }
    assert_eq!(length(&"1".repeat(10_000)), Err(ReadFault::TooLong));
    assert_eq!(length(&"1".repeat(65)), Err(ReadFault::TooLong));
    assert_eq!(length("1234567890123456"), Err(ReadFault::TooLong));
    assert_eq!(length("123456789012345"), Err(ReadFault::TooLarge));
    assert_eq!(length(&"½".repeat(64)), Err(ReadFault::TooLong));
}

#[test]
fn half_typed() {
    for text in [
        "10'-",
        "1/",
        "1 1/",
        "1 1",
        "1-1",
        "1-",
        ".",
        "-",
        "+",
        "-.",
        "±",
        "1.25 ±",
        "1.25 +",
        "1.25 +.0005",
        "1.25 +.0000/",
        "1.25 +.0000/-",
        "1,",
        "10'6",
        "5 i",
        "5 th",
        "5 m ± 1 mi",
        "5' 3/4",
        "14 thou and",
        "14 thou an",
        "14 thou and 5",
        "1.25 +/",
        "1.25 +-",
    ] {
        unfinished(text, Kind::Length);
    }
    unfinished("28.9 ft", Kind::Torque);
    unfinished("80 sf", Kind::SurfaceSpeed);
    unfinished("1:", Kind::Taper);
    unfinished("3°34", Kind::Angle);
    unfinished("3°34", Kind::Taper);
    unfinished("1/4 in/", Kind::Taper);
    // Every start of a good entry is read or unfinished, never called wrong.
    for (text, kind) in [
        ("1 21/64 in", Kind::Length),
        ("-8-1/2\"", Kind::Length),
        ("10'6 1/2\"", Kind::Length),
        ("1.2500 ±.0005 in", Kind::Length),
        ("1.25 +.0000/-.0002", Kind::Length),
        ("14 thousandths and 5 tenths", Kind::Length),
        ("28.9 ft-lb", Kind::Torque),
        ("80 sfm", Kind::SurfaceSpeed),
        ("3°34'12\"", Kind::Angle),
        ("1:48", Kind::Taper),
        ("1/4 in/ft", Kind::Taper),
        ("3.5 deg included", Kind::Taper),
        ("12 mm/min", Kind::FeedRate),
        ("2 min 30 s", Kind::Time),
        ("12:05.4", Kind::Time),
    ] {
        for (end, _) in text.char_indices().skip(1) {
            let start = &text[..end];
            let got = read(start, kind, &[]);
            let fine = matches!(
                got,
                Ok(_) | Err(ReadFault::Unfinished | ReadFault::Ambiguous(_))
            );
            assert!(fine, "{start:?} of {text:?}: {got:?}");
        }
        read(text, kind, &[]).unwrap();
    }
}

#[track_caller]
fn asked(text: &str, kind: Kind, offered: &[&'static Unit], want: &[&str]) {
    let Err(ReadFault::Ambiguous(choices)) = read(text, kind, offered) else {
        panic!("{text:?}: {:?}", read(text, kind, offered))
    };
    assert_eq!(
        choices.iter().map(|c| c.text.as_str()).collect::<Vec<_>>(),
        want,
        "{text:?}"
    );
    for choice in choices {
        read(&choice.text, kind, offered).unwrap_or_else(|f| panic!("{}: {f:?}", choice.text));
    }
}

#[test]
fn ambiguity_is_asked() {
    asked("1,250", Kind::Length, INCHES, &["1.250 in", "1250 in"]);
    asked("1,250 mm", Kind::Length, INCHES, &["1.250 mm", "1250 mm"]);
    asked(
        "-12,500",
        Kind::RotationalSpeed,
        &[&RPM],
        &["-12.500 rpm", "-12500 rpm"],
    );
    asked("5 tenths", Kind::Length, METRIC, &["0.0005 in", "0.5 mm"]);
    asked("tenth", Kind::Length, METRIC, &["0.0001 in", "0.1 mm"]);
    asked("5 mil", Kind::Length, METRIC, &["0.005 in", "5 mm"]);
    asked(
        "25 ± 2 thou",
        Kind::Length,
        INCHES,
        &["25 in ± 2 thou", "25 thou ± 2 thou"],
    );
    asked(
        "3.5 deg",
        Kind::Taper,
        &[&TAPER_RATIO],
        &["3.5 deg incl", "3.5 deg half"],
    );
    asked(
        "1/48",
        Kind::Taper,
        &[&TAPER_RATIO],
        &["1:48", "1/48 in/ft"],
    );
    assert_eq!(read("0,013", Kind::Length, METRIC).unwrap().nominal, 0.013);
}

#[test]
fn tolerances() {
    for (text, minus, plus) in [
        ("1.2500 ± .0005", 0.0005, 0.0005),
        ("1.2500±.0005", 0.0005, 0.0005),
        ("1.2500 +-.0005 in", 0.0005, 0.0005),
        ("1.2500 +/- .0005", 0.0005, 0.0005),
        ("1.2500 +.0000/-.0002", 0.0002, 0.0),
        ("1.2500 +.0005/-.0002", 0.0002, 0.0005),
        ("1.2500 +.0005 -.0002", 0.0002, 0.0005),
        ("1.2500 -.0002/+.0005", 0.0002, 0.0005),
        ("1.2500 +0/-.0002", 0.0002, 0.0),
        ("1.2500 +.0005/0", 0.0, 0.0005),
        ("1 1/4 ± 1/64", 1.0 / 64.0, 1.0 / 64.0),
        ("1.25 in ±2 thou", 0.002, 0.002),
        ("1.25 in +2 thou/-1 thou", 0.001, 0.002),
        ("1.25 in ± 0.0254 mm", 0.001, 0.001),
        ("1.25 ± 2%", 0.025, 0.025),
    ] {
        let got = length(text).unwrap_or_else(|f| panic!("{text:?}: {f:?}"));
        assert_eq!(got.nominal, 31.75, "{text:?}");
        let near = |a: f64, b: f64| (a - b * 25.4).abs() < 1e-12;
        assert!(
            near(got.minus, minus) && near(got.plus, plus),
            "{text:?}: {got:?}"
        );
    }
    // A unit at the end holds for both, as on a drawing.
    let both = length("25 ±0.01 mm").unwrap();
    assert_eq!((both.nominal, both.plus, both.bare), (25.0, 0.01, false));
    let turned = read("20 ± 1 tpi", Kind::Pitch, &[]).unwrap();
    assert!(
        (turned.minus - (1.27 - 25.4 / 21.0)).abs() < 1e-12
            && (turned.plus - (25.4 / 19.0 - 1.27)).abs() < 1e-12
    );
    let warm = read("68 F ± 9 F", Kind::Temperature, &[]).unwrap();
    assert!((warm.nominal - 20.0).abs() < 1e-12 && (warm.plus - 5.0).abs() < 1e-12);
    assert_eq!(read("3.5 ± 1 tenth", Kind::Length, METRIC).ok(), None);
    assert!(matches!(
        read("3.5 mm ± 1 tenth", Kind::Length, METRIC),
        Err(ReadFault::Unreadable { .. })
    ));
}

#[test]
fn links_do_not_depend_on_the_units_offered() {
    const THOUS: &[&Unit] = &[&THOU, &INCH, &MM];
    for (text, kind, offered, want) in [
        ("7/16", Kind::Length, INCHES, "7/16 in"),
        ("1¾ ± .0005", Kind::Length, INCHES, "1 3/4 in +-.0005"),
        ("-8-1/2", Kind::Length, INCHES, "-8-1/2 in"),
        ("25 ± 2", Kind::Length, THOUS, "25 thou +-2"),
        (
            "1.25+.0000/-.0002",
            Kind::Length,
            INCHES,
            "1.25 in +.0000/-.0002",
        ),
        (
            "1.25 -.0002/+.0005",
            Kind::Length,
            INCHES,
            "1.25 in -.0002/+.0005",
        ),
        ("25 ±0.01 mm", Kind::Length, INCHES, "25 mm +-0.01 mm"),
        ("14 thou 5 tenths", Kind::Length, INCHES, "14 thou 5 tenths"),
        ("28.9 ft-lb", Kind::Torque, &[&LBF_FT], "28.9 ft-lb"),
        ("80", Kind::SurfaceSpeed, &[&SFM], "80 sfm"),
        ("48", Kind::Taper, &[&TAPER_RATIO], "48 ratio"),
        ("3°34'", Kind::Angle, &[&DEGREE], "3deg34'"),
        ("0.2", Kind::Number, &[&NUMBER], "0.2"),
        ("12", Kind::Count, &[&COUNT], "12"),
    ] {
        let first = read(text, kind, offered).unwrap();
        let link = link_text(text, &first);
        assert_eq!(link, want);
        for others in [INCHES, METRIC, THOUS, &[]] {
            let again = read(&link, kind, others).unwrap_or_else(|f| panic!("{link}: {f:?}"));
            assert_eq!(
                (again.nominal, again.minus, again.plus),
                (first.nominal, first.minus, first.plus),
                "{link}"
            );
            assert_eq!(link_text(&link, &again), link);
        }
    }
}

#[test]
fn other_kinds() {
    for (text, kind, want) in [
        ("80 sfm", Kind::SurfaceSpeed, 80.0 * 0.3048),
        ("80 fpm", Kind::SurfaceSpeed, 80.0 * 0.3048),
        ("80 ft/min", Kind::SurfaceSpeed, 80.0 * 0.3048),
        ("24 m/min", Kind::SurfaceSpeed, 24.0),
        ("1:48", Kind::Taper, 1.0 / 48.0),
        ("1 : 50", Kind::Taper, 0.02),
        ("1/4 in/ft", Kind::Taper, 0.25 / 12.0),
        ("1/4\" / ft", Kind::Taper, 0.25 / 12.0),
        (
            "3.5 deg incl",
            Kind::Taper,
            2.0 * libm::tan(1.75 / 180.0 * core::f64::consts::PI),
        ),
        (
            "3°30' half",
            Kind::Taper,
            2.0 * libm::tan(3.5 / 180.0 * core::f64::consts::PI),
        ),
        ("3°34'", Kind::Angle, 3.0 + 34.0 / 60.0),
        ("3° 34′ 12″", Kind::Angle, 3.57),
        ("-3°30'", Kind::Angle, -3.5),
        ("3.5 deg", Kind::Angle, 3.5),
        ("34'", Kind::Angle, 34.0 / 60.0),
        ("28.9 ft lb", Kind::Torque, 28.9 * 1.3558179483314004),
        ("28.9 ft·lb", Kind::Torque, 28.9 * 1.3558179483314004),
        ("28.9 lb-ft", Kind::Torque, 28.9 * 1.3558179483314004),
        ("28.9 ft.-lbs.", Kind::Torque, 28.9 * 1.3558179483314004),
        ("120 in-lb", Kind::Torque, 10.0 * 1.3558179483314004),
        ("120 in. lb.", Kind::Torque, 10.0 * 1.3558179483314004),
        ("39 N·m", Kind::Torque, 39.0),
        ("39 Nm", Kind::Torque, 39.0),
        ("850 rpm", Kind::RotationalSpeed, 850.0),
        ("20 tpi", Kind::Pitch, 1.27),
        ("1.5 mm", Kind::Pitch, 1.5),
        ("212 °F", Kind::Temperature, 100.0),
        ("-40 F", Kind::Temperature, -40.0),
        ("75%", Kind::Share, 0.75),
        ("2 min 30 s", Kind::Time, 150.0),
        ("1 h 30 min", Kind::Time, 5400.0),
        ("2:05", Kind::Time, 125.0),
        ("1:02:05.5", Kind::Time, 3725.5),
        ("0.2", Kind::Number, 0.2),
        ("12", Kind::Count, 12.0),
        ("12,500", Kind::Count, 12500.0),
        ("3 hp", Kind::Power, 3.0 * 745.6998715822702),
        ("11.7 µm/(m·K)", Kind::Expansion, 11.7),
    ] {
        let got = read(text, kind, &[]).unwrap_or_else(|f| panic!("{text:?}: {f:?}"));
        assert!(
            (got.nominal - want).abs() <= want.abs() * 1e-14,
            "{text:?}: {} want {want}",
            got.nominal
        );
    }
    for wrong in ["2:75", "2:05:61", "1:02.3:05", "2:005", "1:00:00:00"] {
        let got = read(wrong, Kind::Time, &[]);
        assert!(
            matches!(got, Err(ReadFault::Unreadable { .. })),
            "{wrong} {got:?}"
        );
    }
    assert_eq!(read("3.5", Kind::Count, &[]), Err(ReadFault::NotWhole));
    assert_eq!(
        read("0 tpi", Kind::Pitch, &[]),
        Err(ReadFault::ZeroDenominator)
    );
    assert_eq!(
        read("1:0", Kind::Taper, &[]),
        Err(ReadFault::ZeroDenominator)
    );
    assert_eq!(
        read("5 lb", Kind::Length, INCHES),
        Err(ReadFault::WrongKind {
            unit: "lb".into(),
            kind: Kind::Length
        })
    );
    assert_eq!(
        read("5 mm²", Kind::Length, INCHES),
        Err(ReadFault::WrongKind {
            unit: "mm2".into(),
            kind: Kind::Length
        })
    );
    assert_eq!(
        read("1/4 in/ft", Kind::Length, INCHES),
        Err(ReadFault::WrongKind {
            unit: "in/ft".into(),
            kind: Kind::Length
        })
    );
}

/// Pseudo-random numbers, the same each time (xorshift64*; Vigna 2016).
struct Dice(u64);
impl Dice {
    fn next(&mut self) -> u64 {
        self.0 ^= self.0 >> 12;
        self.0 ^= self.0 << 25;
        self.0 ^= self.0 >> 27;
        self.0.wrapping_mul(0x2545_F491_4F6C_DD1D)
    }
    fn under(&mut self, n: u64) -> u64 {
        (self.next() >> 11) % n
    }
}

#[test]
fn every_unit_prints_and_reads_back() {
    let mut dice = Dice(7);
    for kind in KINDS {
        for unit in units_of(*kind) {
            for places in [0, unit.places, 5] {
                for _ in 0..200 {
                    let x = (dice.under(2_000_000) as f64 + 1.0) / 1000.0;
                    let x = if matches!(unit.scale, Scale::Tangent(_)) {
                        x / 100.0
                    } else if *kind == Kind::Count {
                        x.ceil()
                    } else {
                        x
                    };
                    let base = unit.to_base(x);
                    for text in [with_unit(base, unit, places), {
                        let mut t = printed(base, unit);
                        t.push(' ');
                        t.push_str(unit.id);
                        t
                    }] {
                        if text.starts_with("0 ")
                            || text.starts_with("1:0")
                            || text.contains("0.000 ")
                        {
                            continue;
                        }
                        let got = read(&text, *kind, &[])
                            .unwrap_or_else(|f| panic!("{text:?} {kind:?} {}: {f:?}", unit.id));
                        if text.starts_with(|c: char| c.is_ascii_digit()) && *kind != Kind::Taper {
                            assert_eq!(got.unit.id, unit.id, "{text}");
                        }
                        assert_eq!(
                            with_unit(got.nominal, got.unit, places),
                            with_unit(base, unit, places),
                            "{text}"
                        );
                    }
                }
            }
            for spelling in unit.spellings {
                let text = format!("2 {spelling}");
                assert_eq!(
                    read(&text, *kind, &[]).map(|r| r.unit.id),
                    Ok(unit.id),
                    "{text}"
                );
                assert!(
                    spelling.len() < 40
                        && spelling
                            .bytes()
                            .all(|b| b.is_ascii_graphic() && !b.is_ascii_uppercase())
                );
            }
        }
    }
}

#[test]
fn units_are_told_apart() {
    for kind in KINDS {
        let all = units_of(*kind);
        for (i, a) in all.iter().enumerate() {
            assert_eq!(a.kind, *kind);
            assert!(a.id.is_ascii());
            for b in all.iter().skip(i + 1) {
                assert_ne!(a.id, b.id);
                assert!(
                    a.spellings.iter().all(|s| !b.spellings.contains(s)),
                    "{} {}",
                    a.id,
                    b.id
                );
                assert!(
                    !(a.system == Some(System::Metric) && b.system == Some(System::Inch)),
                    "inch first: {} {}",
                    a.id,
                    b.id
                );
            }
        }
    }
}

#[test]
fn every_shop_fraction_is_exact() {
    for d in [2_u32, 4, 8, 16, 32, 64, 128] {
        for n in 0..=3 * d {
            let text = format!("{n}/{d}");
            let got = length(&text).unwrap();
            assert_eq!(
                got.exact.unwrap().tenth_nm() * i64::from(d),
                i64::from(n) * 254_000_000
            );
            let near = crate::quantity::nearest_fraction(
                crate::quantity::Length::from_mm(got.nominal),
                128,
            );
            assert_eq!(near.difference.mm(), 0.0);
            assert_eq!(length(&near.text).unwrap().exact, got.exact);
        }
    }
}

#[test]
fn random_text_never_panics_and_what_is_read_is_finite() {
    const BITS: &[&str] = &[
        "1", "2", "0", "7", "25", "/", " ", "-", "+", ".", ",", "\"", "'", "in", "mm", "thou",
        "tenth", "ft", "deg", "°", "±", ":", "¾", "%", "lb", "e", "and ", "µ", "²", "/ft", "min",
        "#", "\u{202e}", "x",
    ];
    let mut dice = Dice(99);
    for _ in 0..60_000 {
        let mut text = String::new();
        for _ in 0..dice.under(9) {
            text.push_str(BITS[dice.under(BITS.len() as u64) as usize]);
        }
        for kind in [
            Kind::Length,
            Kind::Taper,
            Kind::Angle,
            Kind::Torque,
            Kind::Count,
            Kind::Pitch,
            Kind::Time,
        ] {
            if let Ok(got) = read(&text, kind, &[]) {
                assert!(
                    got.nominal.is_finite() && got.minus >= 0.0 && got.plus >= 0.0,
                    "{text:?}"
                );
            }
        }
    }
}

#[test]
fn a_stray_stroke_or_point_is_named() {
    for (text, word) in [("1//2", "fraction"), ("5..", "point"), ("5 inn", "unit")] {
        let fault = read(text, Kind::Length, INCHES).unwrap_err();
        assert!(fault.text().contains(word), "{text}");
    }
}
