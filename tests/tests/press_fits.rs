//! Do press and shrink fits agree with published formulas and figures?

#![allow(clippy::unwrap_used)] // a test may stop at the first wrong row

use benchslate_core::fit::press::{
    Elastic, Joint, PressFault, shop_allowance, smoothed, temperature,
};
use benchslate_core::quantity::{Expansion, Length, Stress, System};
use benchslate_core::sheet::{Entry, evaluate};
use benchslate_core::sheets;
use benchslate_core::standards::fits::fit_materials::FIT_MATERIALS;
use benchslate_tests::near;

const STEEL: Elastic = Elastic {
    modulus: Stress::from_mpa(207_000.0),
    poisson: 0.292,
};
const fn mm(value: f64) -> Length {
    Length::from_mm(value)
}

struct Case {
    /// Joint, hub outside, shaft bore, diametral interference, length; mm.
    sizes: [f64; 5],
    friction: f64,
    /// Pressure, hub hoop, shaft hoop (MPa), axial force (kN), torque (N·m).
    want: [f64; 5],
}

/// Shigley, Mechanical Engineering Design, 9th ed., Eqs. (7-39), (7-40), (7-44), (7-45), p. 399, and T = (π/2) f p l d², worked
/// outside this project; the general form (7-39) was held against the same-material form (7-40). The first is Problem 7-42
/// with the least interference of 35 H7/s6 and an assumed friction of 0.3. Equal materials, steel.
#[rustfmt::skip]
const CASES: &[Case] = &[
    Case { sizes: [35.0, 60.0, 0.0, 0.018, 50.0], friction: 0.3, want: [35.116, 71.341, -35.116, 57.918, 1013.57] },
    Case { sizes: [45.0, 72.0, 0.0, 0.033, 38.0], friction: 0.14, want: [46.252, 105.548, -46.252, 34.786, 782.68] },
    Case { sizes: [45.0, 72.0, 18.0, 0.033, 38.0], friction: 0.14, want: [41.441, 94.571, -57.229, 31.168, 701.28] },
    Case { sizes: [30.0, 34.0, 0.0, 0.020, 15.0], friction: 0.12, want: [15.28, 122.72, -15.28, 2.592, 38.88] },
    Case { sizes: [30.0, 30_000.0, 0.0, 0.020, 15.0], friction: 0.12, want: [69.0, 69.0, -69.0, 11.706, 175.58] },
];

#[test]
fn thick_cylinders() {
    for case in CASES {
        let [d, outside, bore, interference, length] = case.sizes.map(mm);
        let joint = Joint::new(d, outside, bore, STEEL, STEEL).unwrap();
        let p = joint.pressure(interference).unwrap();
        let stresses = joint.stresses(p);
        let got = [
            p.mpa(),
            stresses.hub_hoop.mpa(),
            stresses.shaft_hoop.mpa(),
            joint.axial_force(p, length, case.friction).newtons() / 1000.0,
            joint.torque(p, length, case.friction).newton_metres(),
        ];
        for (got, want) in got.into_iter().zip(case.want) {
            assert!(near(got, want, want.abs() * 0.001), "{got} not {want}");
        }
        assert!(near(
            joint.interference_for(p).mm(),
            interference.mm(),
            1e-12
        ));
    }
}

/// A result of the press fit sheet in base units, from field texts.
fn answer(entry: &[(&str, &str)], id: &str) -> f64 {
    let entry = Entry::of(entry).in_system(System::Metric);
    let out = evaluate(sheets::by_id("press-fit").unwrap(), &entry);
    let faults: Vec<_> = out.faults().collect();
    assert!(
        out.answer.is_complete(),
        "{:?} {faults:?}",
        out.answer.state
    );
    out.answer.get(id).unwrap().value.base().unwrap()
}

/// The same cases through the sheet, which has the same steel.
#[test]
fn thick_cylinders_through_the_sheet() {
    for case in CASES {
        let [d, outside, bore, interference, length] = case.sizes;
        if outside > 10_000.0 {
            continue; // past the sheet's range
        }
        let texts = [d, d + interference, outside, bore, length].map(|mm| format!("{mm:.4} mm"));
        let friction = case.friction.to_string();
        let entry = [
            ("from", "sizes"),
            ("hole", &*texts[0]),
            ("shaft", &texts[1]),
            ("outside", &texts[2]),
            ("bore", &texts[3]),
            ("length", &texts[4]),
            ("friction", "own"),
            ("coefficient", &friction),
            ("hub-strength", "2000 MPa"),
            ("shaft-strength", "2000 MPa"),
        ];
        let [pressure, hub, shaft, force, torque] = case.want;
        for (id, want) in [
            ("pressure", pressure),
            ("hub-stress", hub),
            ("shaft-stress", shaft),
            ("force", force * 1000.0),
            ("hold", force * 1000.0),
            ("torque", torque),
        ] {
            let got = answer(&entry, id);
            assert!(
                near(got, want, want.abs() * 0.001),
                "{id}: {got} not {want}"
            );
        }
    }
}

/// Different materials, heat and roughness through the sheet: the iron hub of the case below; 0.059 + 0.020 mm on 50 mm at
/// 11.7 per K, 135.0 K; 60 µm with Rz 6 and 4 leave 52 µm (DIN 7190, from memory).
#[test]
fn iron_heat_and_roughness_through_the_sheet() {
    let sizes = |hole: &'static str, shaft: &'static str, outside: &'static str| {
        [
            ("from", "sizes"),
            ("hole", hole),
            ("shaft", shaft),
            ("outside", outside),
            ("length", "40 mm"),
        ]
    };
    let with = |start: [(&'static str, &'static str); 5], more: &[(&'static str, &'static str)]| {
        [&start[..], more].concat()
    };
    let iron = with(sizes("40 mm", "40.03 mm", "80 mm"), &[("hub", "cast-iron")]);
    assert!(near(answer(&iron, "pressure"), 33.788, 0.002));
    let hot = with(
        sizes("50 mm", "50.059 mm", "150 mm"),
        &[("room", "0.02 mm")],
    );
    assert!(near(answer(&hot, "heat"), 135.0, 0.675));
    let rough = with(
        sizes("50 mm", "50.060 mm", "150 mm"),
        &[
            ("smoothing", "din-7190"),
            ("rz-hole", "6 um"),
            ("rz-shaft", "4 um"),
        ],
    );
    assert!(near(answer(&rough, "interference"), 0.052, 1e-9));
    let rule = with(sizes("68 in", "68.068 in", "100 in"), &[]);
    assert!(near(answer(&rule, "rule") / 25.4, 0.068, 1e-9));
}

/// Limit of Shigley's Eq. (7-40) for a hub without end: p = E δ/(2 d) = 207000 × 0.02/60 = 69.0 MPa.
#[test]
fn endless_hub() {
    let joint = Joint::new(mm(30.0), mm(1e7), mm(0.0), STEEL, STEEL).unwrap();
    assert!(near(joint.pressure(mm(0.02)).unwrap().mpa(), 69.0, 0.001));
}

/// Different materials: Eq. (7-39) written out by hand for a gray iron hub (100 GPa, 0.211) on a steel shaft, Shigley Table A-5,
/// 40 mm in 80 mm, 0.03 mm: hub (5/3 + 0.211)/100 000 = 1.87767e-5, shaft (1 - 0.292)/207 000 = 3.42029e-6, p = 0.03/(40 × 2.21970e-5).
#[test]
fn iron_hub_on_steel() {
    let iron = Elastic {
        modulus: Stress::from_mpa(100_000.0),
        poisson: 0.211,
    };
    let joint = Joint::new(mm(40.0), mm(80.0), mm(0.0), iron, STEEL).unwrap();
    assert!(near(joint.pressure(mm(0.03)).unwrap().mpa(), 33.788, 0.002));
}

/// Engineering reference table: ΔT = δ/(α d), the clearance added. 50 mm: 0.059 + 0.020 at 11.7 per K is 135.0 K; 2 in: 0.0027 + 0.0010
/// at 6.5 per °F is 284.6 °F.
#[test]
fn heat_to_assemble() {
    let k = temperature(
        mm(50.0),
        mm(0.059),
        mm(0.02),
        Expansion::from_per_million_kelvin(11.7),
    )
    .unwrap();
    assert!(near(k.kelvins(), 135.0, 0.675));
    let inch = Length::from_inches;
    let f = temperature(
        inch(2.0),
        inch(0.0027),
        inch(0.001),
        Expansion::from_per_million_fahrenheit(6.5),
    )
    .unwrap();
    assert!(near(f.fahrenheit_degrees(), 284.6, 1.423));
}

/// DIN 7190, from memory: 60 µm with Rz 6 and 4 leaves 60 - 0.8 × 10 = 52 µm.
#[test]
fn smoothing() {
    assert!(near(
        smoothed(
            Length::from_um(60.0),
            Length::from_um(6.0),
            Length::from_um(4.0)
        )
        .um(),
        52.0,
        1e-9
    ));
}

/// Shigley, Table A-5: each modulus in Mpsi beside it × 6.8948 within 1 %. Callister, Table B.6 (3rd ed. pp. 815-816, and the print
/// of an earlier edition, p. 455: steel 1020 6.5, stainless 304 9.6, gray irons 6.3) and Dooley: per °F is 5/9 of per °C.
#[test]
fn materials_agree_between_units() {
    let rows = [
        ("steel", 30.0, Some(6.5)),
        ("cast-iron", 14.5, Some(5.56)),
        ("bronze", 16.1, Some(10.0)),
        ("brass", 15.4, Some(11.4)),
        ("aluminum", 10.4, Some(13.1)),
        ("stainless", 27.6, Some(9.6)),
        ("copper", 17.2, Some(9.4)),
        ("titanium", 16.5, Some(4.8)),
    ];
    for (row, (id, mpsi, per_f)) in FIT_MATERIALS.iter().zip(rows) {
        assert_eq!(row.id, id);
        assert!(
            near(row.modulus.mpa() / 6894.757, mpsi, mpsi * 0.011),
            "{id}"
        );
        match (row.expansion, per_f) {
            (Some(got), Some(want)) => assert!(
                near(got.per_million_fahrenheit(), want, want * 0.02),
                "{id}"
            ),
            (got, want) => assert_eq!(got.is_some(), want.is_some(), "{id}"),
        }
        if let Some(high) = row.expansion_high {
            assert_eq!(id, "cast-iron");
            assert!(near(high.per_million_fahrenheit(), 6.3, 0.126));
        }
    }
}

/// Chart of expansion of steels, 0 to 100 °C, 10⁻⁶ per °C (an engineering reference table): 1020 11.7, 1025 12.0, 1040 11.2, 1045 11.6,
/// 304 17.2; Callister, 8th ed., Table 19.1, p. 785: 1025 steel 12.0. The table's steel lies within 4.5 % of each.
#[test]
fn steels_of_other_lists() {
    let grows = |id: &str| {
        FIT_MATERIALS
            .iter()
            .find(|row| row.id == id)
            .unwrap()
            .expansion
            .unwrap()
            .per_million_kelvin()
    };
    for listed in [11.7, 12.0, 11.2, 11.6, 12.0] {
        assert!(near(grows("steel"), listed, 0.045 * listed), "{listed}");
    }
    assert!(near(grows("stainless"), 17.2, 1e-9));
}

/// A hollow shaft lowers the pressure; a stiffer hub raises it; more interference raises it in proportion.
#[test]
fn senses() {
    let p = |outside: f64, bore: f64, interference: f64| {
        Joint::new(mm(40.0), mm(outside), mm(bore), STEEL, STEEL)
            .unwrap()
            .pressure(mm(interference))
            .unwrap()
            .mpa()
    };
    assert!(p(80.0, 20.0, 0.03) < p(80.0, 0.0, 0.03));
    assert!(p(90.0, 0.0, 0.03) > p(80.0, 0.0, 0.03));
    assert!(near(p(80.0, 0.0, 0.06), 2.0 * p(80.0, 0.0, 0.03), 1e-9));
}

#[test]
fn faults() {
    let joint = |d, outside, bore| Joint::new(mm(d), mm(outside), mm(bore), STEEL, STEEL);
    assert_eq!(joint(40.0, 40.0, 0.0), Err(PressFault::HubTooSmall));
    assert_eq!(joint(40.0, 80.0, 40.0), Err(PressFault::ShaftBoreTooLarge));
    assert_eq!(joint(0.0, 80.0, 0.0), Err(PressFault::NoDiameter));
    assert_eq!(joint(f64::NAN, 80.0, 0.0), Err(PressFault::NoDiameter));
    assert_eq!(
        joint(40.0, 80.0, 0.0).unwrap().pressure(mm(0.0)),
        Err(PressFault::NoInterference)
    );
    let air = Elastic {
        modulus: Stress::ZERO,
        poisson: 0.3,
    };
    assert_eq!(
        Joint::new(mm(40.0), mm(80.0), mm(0.0), air, STEEL),
        Err(PressFault::BadMaterial)
    );
    assert_eq!(
        temperature(mm(40.0), mm(0.1), mm(0.0), Expansion::ZERO),
        Err(PressFault::BadExpansion)
    );
}

/// Dooley, Allowance for Shrunk Fits: 68 in takes 0.068 in. F. D. Jones, Turning and Boring (Railway Master Mechanics): locomotive tires
/// of 38 to 66 in take 0.040 to 0.070 in, within 7 % of the same rule.
#[test]
fn old_shop_rule() {
    let rule = |inches: f64| shop_allowance(Length::from_inches(inches)).inches();
    assert!(near(rule(68.0), 0.068, 1e-9));
    for (diameter, allowance) in [
        (38.0, 0.040),
        (50.0, 0.053),
        (56.0, 0.060),
        (62.0, 0.066),
        (66.0, 0.070),
    ] {
        assert!(
            near(rule(diameter), allowance, 0.07 * allowance),
            "{diameter}"
        );
    }
}
