//! Units, reader and printer against published conversion factors and decimal equivalents.

use benchslate_core::quantity::{
    Kind, Length, Unit, decimal, nearest_fraction, plain, read, spoken, units::*, with_unit,
};
use benchslate_tests::near;

/// One of each unit in SI units, as printed to seven figures: NIST SP 811, Guide for the Use of the International System of
/// Units, 2008 edition, appendix B.8, factors listed alphabetically. The figures are from memory; each agrees with the
/// exact definitions of inch, pound and standard gravity in the same appendix. The tolerance is half of the last printed figure. `si` brings our base unit to theirs.
#[test]
fn conversion_factors() {
    let minute = 60.0;
    for (unit, printed, si) in [
        (&INCH, 2.54e-2, 1e-3),
        (&FOOT, 3.048e-1, 1e-3),
        (&THOU, 2.54e-5, 1e-3),      // mil
        (&MICROINCH, 2.54e-8, 1e-3), // microinch
        (&MICRON, 1.0e-6, 1e-3),     // micron
        (&IN2, 6.4516e-4, 1e-6),
        (&IN3_PER_MIN, 2.731177e-7, 1e-9 / minute), // cubic inch per minute, in m³/s
        (&LBF, 4.448222, 1.0),
        (&LBF_FT, 1.355818, 1.0),
        (&LBF_IN, 1.129848e-1, 1.0),
        (&PSI, 6.894757e3, 1e6),
        (&KSI, 6.894757e6, 1e6),
        (&HORSEPOWER, 7.456999e2, 1.0), // horsepower (550 ft·lbf/s)
        (&LB, 4.535924e-1, 1.0),        // pound (avoirdupois)
        (&SFM, 5.08e-3, 1.0 / minute),  // foot per minute, in m/s
        (&IN_PER_MIN, 2.54e-2 / minute, 1e-3 / minute),
        (&DEGREE, 1.745329e-2, core::f64::consts::PI / 180.0),
        (&ARC_MINUTE, 2.908882e-4, core::f64::consts::PI / 180.0),
        (&ARC_SECOND, 4.848137e-6, core::f64::consts::PI / 180.0),
        (&FAHRENHEIT_DIFFERENCE, 5.555556e-1, 1.0),
        (&MINUTE, 6.0e1, 1.0),
        (&HOUR, 3.6e3, 1.0),
    ] {
        let got = unit.to_base(1.0) * si;
        assert!(
            near(got, printed, printed * 5e-7),
            "{}: {got} printed {printed}",
            unit.id
        );
        assert!(
            near(unit.from_base(unit.to_base(7.25)), 7.25, 1e-14),
            "{}",
            unit.id
        );
    }
}

/// Fixed points of the Fahrenheit scale: t/°C = (t/°F − 32)/1.8, NIST SP 811 (2008), B.8.
#[test]
fn temperatures() {
    for (fahrenheit, celsius) in [
        ("32 °F", "0 °C"),
        ("212 °F", "100 °C"),
        ("68 °F", "20 °C"),
        ("−40 °F", "−40 °C"),
        ("14 °F", "−10 °C"),
    ] {
        let got = read(fahrenheit, Kind::Temperature, &[]).unwrap();
        assert_eq!(with_unit(got.nominal, &CELSIUS, 0), celsius);
        assert_eq!(with_unit(got.nominal, &FAHRENHEIT, 0), fahrenheit);
    }
    // Standard reference temperature 20 °C is 68 °F: ISO 1:2022 and ASME B89.6.2 (common knowledge of metrology).
    assert_eq!(decimal(20.0, &FAHRENHEIT, 3), "68.000");
}

/// Sixty-fourths, inches exact, millimetres to 4 places with ties up. Source: 1 in = 25.4 mm exactly (computed).
const SIXTY_FOURTHS: &[(u32, &str, &str)] = &[
    (2, "0.03125", "0.7938"),
    (3, "0.046875", "1.1906"),
    (5, "0.078125", "1.9844"),
    (7, "0.109375", "2.7781"),
    (8, "0.125", "3.175"),
    (10, "0.15625", "3.9688"),
    (12, "0.1875", "4.7625"),
    (13, "0.203125", "5.1594"),
    (15, "0.234375", "5.9531"),
    (17, "0.265625", "6.7469"),
    (18, "0.28125", "7.1438"),
    (20, "0.3125", "7.9375"),
    (21, "0.328125", "8.3344"),
    (23, "0.359375", "9.1281"),
    (25, "0.390625", "9.9219"),
    (27, "0.421875", "10.7156"),
    (28, "0.4375", "11.1125"),
    (31, "0.484375", "12.3031"),
    (32, "0.5", "12.7"),
    (34, "0.53125", "13.4938"),
    (36, "0.5625", "14.2875"),
    (38, "0.59375", "15.0813"),
    (39, "0.609375", "15.4781"),
    (41, "0.640625", "16.2719"),
    (43, "0.671875", "17.0656"),
    (44, "0.6875", "17.4625"),
    (45, "0.703125", "17.8594"),
    (48, "0.75", "19.05"),
    (49, "0.765625", "19.4469"),
    (50, "0.78125", "19.8438"),
    (52, "0.8125", "20.6375"),
    (53, "0.828125", "21.0344"),
    (56, "0.875", "22.225"),
    (57, "0.890625", "22.6219"),
    (58, "0.90625", "23.0188"),
    (60, "0.9375", "23.8125"),
    (62, "0.96875", "24.6063"),
    (64, "1", "25.4"),
];

#[test]
fn decimal_equivalents() {
    for (n, inches, mm) in SIXTY_FOURTHS {
        let text = format!("{n}/64");
        let got = read(&text, Kind::Length, &[&INCH]).unwrap();
        assert_eq!(plain(got.nominal, &INCH), *inches, "{text}");
        assert_eq!(
            read(inches, Kind::Length, &[&INCH]).unwrap().exact,
            got.exact,
            "{text}"
        );
        // The table leaves off trailing zeros.
        let printed = decimal(got.nominal, &MM, 4);
        assert_eq!(
            printed.trim_end_matches('0').trim_end_matches('.'),
            *mm,
            "{text}"
        );
        let near = nearest_fraction(Length::from_mm(got.nominal), 64);
        assert_eq!(
            (near.numerator + near.whole * near.denominator) * 64,
            u64::from(*n) * near.denominator
        );
        assert_eq!(near.difference.mm(), 0.0);
    }
}

/// Angles and tapers. 1:48 is 1/4 in per foot (ASME B18.8.2 taper pins); the included angle of 3.500 in/ft
/// (7/24 steep taper) is 16° 35' 39.4" (ISO 297, ASME B5.50: 16°35'40" rounded); Morse and others go by the same tangent.
#[test]
fn tapers() {
    let pin = read("1:48", Kind::Taper, &[]).unwrap().nominal;
    assert_eq!(with_unit(pin, &TAPER_IN_PER_FT, 4), "0.2500 in/ft");
    assert_eq!(read("1/4 in/ft", Kind::Taper, &[]).unwrap().nominal, pin);
    let steep = read("3.5 in/ft", Kind::Taper, &[]).unwrap().nominal;
    assert!(near(steep, 7.0 / 24.0, 1e-15));
    let angle = read("16°35'39.4\"", Kind::Angle, &[]).unwrap().nominal;
    assert!(near(TAPER_INCLUDED.from_base(steep), angle, 0.1 / 3600.0));
    let from_angle = read("16°35'39.4\" included", Kind::Taper, &[])
        .unwrap()
        .nominal;
    assert!(near(from_angle, steep, 1e-6));
    let half = read("8°17'49.7\" half", Kind::Taper, &[]).unwrap().nominal;
    assert!(near(half, steep, 1e-6));
}

/// Threads per inch and pitch: p = 25.4/n mm, by definition. Whitworth's 14 tpi is printed as 1.814 mm (ISO 228-1, table 1),
/// 11 tpi as 2.309 mm, 19 tpi as 1.337 mm, 28 tpi as 0.907 mm.
#[test]
fn pitches() {
    for (tpi, mm) in [
        ("28 tpi", "0.907"),
        ("19 tpi", "1.337"),
        ("14 tpi", "1.814"),
        ("11 tpi", "2.309"),
    ] {
        let got = read(tpi, Kind::Pitch, &[]).unwrap();
        assert_eq!(decimal(got.nominal, &PITCH_MM, 3), mm);
        assert_eq!(with_unit(got.nominal, &TPI, 0), tpi);
    }
}

/// Thou and tenths as the trade speaks: a thou is 0.001 in, a tenth 0.0001 in (common practice).
#[test]
fn spoken_sizes() {
    let said = |text: &str| {
        spoken(
            read(text, Kind::Length, &[&INCH]).unwrap().nominal,
            &INCH,
            4,
        )
    };
    assert_eq!(said("7/32"), "two hundred eighteen thou and eight tenths"); // 0.21875, tie away from zero
    assert_eq!(said("0.219"), "two hundred nineteen thou");
    assert_eq!(
        said("14 thousandths and 5 tenths"),
        "fourteen thou and five tenths"
    );
}

/// What is printed in any offered unit reads back to what was printed, over all kinds.
#[test]
fn printed_reads_back() {
    for kind in KINDS {
        for unit in benchslate_core::quantity::units_of(*kind) {
            let unit: &'static Unit = unit;
            let base = unit.to_base(if *kind == Kind::Count { 12.0 } else { 12.375 });
            let text = with_unit(base, unit, 3);
            let got =
                read(&text, *kind, &[unit]).unwrap_or_else(|fault| panic!("{text}: {fault:?}"));
            assert_eq!(with_unit(got.nominal, unit, 3), text);
        }
    }
}
