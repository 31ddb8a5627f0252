//! Fasteners against outside sources: areas, proof loads, torque both ways, friction, stripping, wrench.
//! Above each list: its source. Tolerances are those of the print (three figures, or the source's own rounding).

#![allow(clippy::unwrap_used)] // helpers of the checks stop where a table has no row
#![allow(clippy::type_complexity)] // rows as the print has them

use benchslate_core::fastener::long_form::{self, Friction, Screw, bearing_by_rule};
use benchslate_core::fastener::strip::{self, Limits};
use benchslate_core::fastener::{Fault, proof, short_form, wrench};
use benchslate_core::quantity::{
    Angle, Area, Force, Length, Pitch, Stress, System, Torque, nearest_fraction,
};
use benchslate_core::sheet::{Entry, Outcome, Reason, State, evaluate};
use benchslate_core::sheets;
use benchslate_core::standards::{
    bolts::bolt_strength, bolts::heads, bolts::nut_factors, bolts::preload_scatter,
};
use benchslate_core::thread::{self, ThreadCall, ThreadSeries};
use benchslate_tests::near;

fn within(got: f64, want: f64, share: f64) -> bool {
    near(got, want, want.abs() * share)
}

fn metric_area(d: f64, p: f64) -> Area {
    let (major, pitch) = (Length::from_mm(d), Pitch::from_mm(p));
    thread::stress_area(ThreadCall {
        series: ThreadSeries::MetricCoarse,
        major,
        pitch,
        class: None,
    })
}

fn inch_area(d: f64, tpi: f64) -> Area {
    let (major, pitch) = (Length::from_inches(d), Pitch::from_tpi(tpi));
    thread::stress_area(ThreadCall {
        series: ThreadSeries::Unc,
        major,
        pitch,
        class: None,
    })
}

/// EN ISO 898-1, proof loads, coarse thread, printed to three figures and not always to the nearest.
/// Columns: d mm, P mm, printed area mm², proof load N for classes 4.6 4.8 5.8 6.8 8.8 10.9 12.9.
#[rustfmt::skip]
const PROOF_METRIC: &[(f64, f64, f64, [f64; 7])] = &[
    (3.0, 0.5, 5.03, [1130.0, 1560.0, 1910.0, 2210.0, 2920.0, 4180.0, 4880.0]),
    (4.0, 0.7, 8.78, [1980.0, 2720.0, 3340.0, 3860.0, 5100.0, 7290.0, 8520.0]),
    (8.0, 1.25, 36.6, [8240.0, 11400.0, 13900.0, 16100.0, 21200.0, 30400.0, 35500.0]),
    (10.0, 1.5, 58.0, [13000.0, 18000.0, 22000.0, 25500.0, 33700.0, 48100.0, 56300.0]),
    (12.0, 1.75, 84.3, [19000.0, 26100.0, 32000.0, 37100.0, 48900.0, 70000.0, 81800.0]),
    (16.0, 2.0, 157.0, [35300.0, 48700.0, 59700.0, 69100.0, 91000.0, 130000.0, 152000.0]),
    (18.0, 2.5, 192.0, [43200.0, 59500.0, 73000.0, 84500.0, 115000.0, 159000.0, 186000.0]),
    (22.0, 2.5, 303.0, [68200.0, 93900.0, 115000.0, 133000.0, 182000.0, 252000.0, 294000.0]),
    (24.0, 3.0, 353.0, [79400.0, 109000.0, 134000.0, 155000.0, 212000.0, 293000.0, 342000.0]),
    (27.0, 3.0, 459.0, [103000.0, 142000.0, 174000.0, 202000.0, 275000.0, 381000.0, 445000.0]),
];

#[test]
fn metric_proof_loads() {
    const CLASSES: [&str; 7] = ["4.6", "4.8", "5.8", "6.8", "8.8", "10.9", "12.9"];
    for &(d, p, printed_area, loads) in PROOF_METRIC {
        for (class, want) in CLASSES.iter().zip(loads) {
            let out = torque_sheet(&metric_call(d, p), class, &[]);
            let area = result(&out, "stress-area");
            assert!(within(area, printed_area, 0.005), "M{d}: {area}");
            let got = result(&out, "proof-load");
            assert!(within(got, want, 0.01), "M{d} {class}: {got} for {want}");
        }
    }
}

/// EN ISO 898-1, least ultimate tensile loads, coarse thread, three figures. One other print has 250000 for M20 10.9: a misprint.
/// Columns: d mm, P mm, load N for 4.6 8.8 10.9 12.9.
#[rustfmt::skip]
const ULTIMATE_METRIC: &[(f64, f64, [f64; 4])] = &[
    (6.0, 1.0, [8040.0, 16100.0, 20900.0, 24500.0]),
    (8.0, 1.25, [14600.0, 29200.0, 38100.0, 44600.0]),
    (12.0, 1.75, [33700.0, 67400.0, 87700.0, 103000.0]),
    (16.0, 2.0, [62800.0, 125000.0, 163000.0, 192000.0]),
    (20.0, 2.5, [98000.0, 203000.0, 255000.0, 299000.0]),
    (24.0, 3.0, [141000.0, 293000.0, 367000.0, 431000.0]),
];

#[test]
fn metric_ultimate_loads() {
    for &(d, p, loads) in ULTIMATE_METRIC {
        for (class, want) in ["4.6", "8.8", "10.9", "12.9"].iter().zip(loads) {
            let call = metric_call(d, p);
            let entry = [("thread", &*call), ("grade", class), ("depth", "10 mm")];
            let got = result(
                &sheet("thread-strip", System::Metric, &entry),
                "screw-breaks",
            );
            assert!(within(got, want, 0.01), "M{d} {class}: {got} for {want}");
        }
    }
}

/// SAE J429 proof loads (rounded to 50 or 100 lbf), from memory. Columns: D in, threads per inch, grade, area in², proof load lbf.
#[rustfmt::skip]
const PROOF_INCH: &[(f64, f64, &str, f64, f64)] = &[
    (0.25, 20.0, "sae-5", 0.0318, 2700.0),
    (0.375, 16.0, "sae-5", 0.0775, 6600.0),
    (0.375, 16.0, "sae-8", 0.0775, 9300.0),
    (0.5, 13.0, "sae-5", 0.1419, 12100.0),
    (0.5, 13.0, "sae-8", 0.1419, 17000.0),
    (0.75, 10.0, "sae-5", 0.334, 28400.0),
];

#[test]
fn inch_proof_loads() {
    for &(d, tpi, grade, printed_area, want) in PROOF_INCH {
        let out = torque_sheet(&inch_call(d, tpi), grade, &[]);
        let area = Area::from_mm2(result(&out, "stress-area")).in2();
        assert!(within(area, printed_area, 0.006), "{d}-{tpi}: {area}");
        let got = Force::from_newtons(result(&out, "proof-load")).lbf();
        assert!(
            within(got, want, 0.006),
            "{d}-{tpi} {grade}: {got} for {want}"
        );
    }
}

/// EN ISO 898-1, stress areas, mm², three figures. Columns: d, P, area.
#[rustfmt::skip]
const AREA_METRIC: &[(f64, f64, f64)] = &[
    (3.0, 0.5, 5.03),
    (5.0, 0.8, 14.2),
    (6.0, 1.0, 20.1),
    (8.0, 1.25, 36.6),
    (10.0, 1.5, 58.0),
    (12.0, 1.75, 84.3),
    (14.0, 2.0, 115.0),
    (16.0, 2.0, 157.0),
    (18.0, 2.5, 192.0),
    (22.0, 2.5, 303.0),
    (24.0, 3.0, 353.0),
    (27.0, 3.0, 459.0),
    (30.0, 3.5, 561.0),
    (36.0, 4.0, 817.0),
    (39.0, 4.0, 976.0),
];

/// ANSI/ASME B1.1 as in Machinery's Handbook, 31st ed. (2020), p. 1978, Table 4a. Columns: D in, threads per inch, area in².
#[rustfmt::skip]
const AREA_INCH: &[(f64, f64, f64)] = &[
    (0.073, 64.0, 0.00263),
    (0.112, 40.0, 0.00604),
    (0.125, 40.0, 0.00796),
    (0.138, 32.0, 0.00909),
    (0.216, 24.0, 0.0242),
    (0.25, 20.0, 0.0318),
    (0.3125, 18.0, 0.0524),
    (0.5, 13.0, 0.142),
    (0.625, 11.0, 0.226),
    (0.75, 10.0, 0.334),
    (1.0, 8.0, 0.606),
    (1.125, 7.0, 0.763),
    (1.375, 6.0, 1.16),
    (1.75, 5.0, 1.9),
    (2.25, 4.5, 3.25),
    (2.75, 4.0, 4.93),
    (3.0, 4.0, 5.97),
    (0.06, 80.0, 0.0018),
    (0.086, 64.0, 0.00394),
    (0.112, 48.0, 0.00661),
    (0.138, 40.0, 0.01015),
    (0.164, 36.0, 0.01474),
    (0.216, 28.0, 0.0258),
    (0.3125, 24.0, 0.058),
    (0.375, 24.0, 0.0878),
    (0.5, 20.0, 0.1599),
    (0.625, 18.0, 0.256),
    (0.875, 14.0, 0.509),
    (1.0, 12.0, 0.663),
    (1.375, 12.0, 1.315),
    (1.5, 12.0, 1.581),
];

#[test]
fn stress_areas() {
    for &(d, p, want) in AREA_METRIC {
        assert!(within(metric_area(d, p).mm2(), want, 0.005), "M{d}x{p}");
    }
    for &(d, tpi, want) in AREA_INCH {
        assert!(
            within(inch_area(d, tpi).in2(), want, 0.006),
            "{d}-{tpi}: {}",
            inch_area(d, tpi).in2()
        );
    }
}

/// VDI 2230 preload and torque at 90 % of the yield strength. A: fine thread, VDI 2230:2001/2003, reprinted in a fastener
/// catalogue p. 685. B: coarse thread, VDI 2230-1:2003 Table A1, from memory. Columns: d mm, P mm, friction (thread and
/// head), preload kN for 8.8 10.9 12.9, torque N m for 8.8 10.9 12.9.
#[rustfmt::skip]
const VDI: &[(f64, f64, f64, [f64; 3], [f64; 3])] = &[
    (8.0, 1.0, 0.1, [20.7, 30.4, 35.6], [22.8, 33.5, 39.2]), // A
    (8.0, 1.0, 0.14, [19.7, 28.9, 33.9], [29.2, 42.8, 50.1]), // A
    (10.0, 1.25, 0.1, [32.4, 47.5, 55.6], [44.0, 65.0, 76.0]), // A
    (10.0, 1.25, 0.12, [31.6, 46.4, 54.3], [51.0, 75.0, 87.0]), // A
    (10.0, 1.25, 0.14, [30.8, 45.2, 52.9], [57.0, 83.0, 98.0]), // A
    (12.0, 1.25, 0.1, [49.1, 72.1, 84.4], [79.0, 116.0, 135.0]), // A
    (12.0, 1.25, 0.12, [48.0, 70.5, 82.5], [90.0, 133.0, 155.0]), // A
    (16.0, 1.5, 0.1, [89.6, 131.6, 154.0], [189.0, 278.0, 325.0]), // A
    (16.0, 1.5, 0.12, [87.6, 128.7, 150.6], [218.0, 320.0, 374.0]), // A
    (16.0, 1.5, 0.14, [85.5, 125.5, 146.9], [244.0, 359.0, 420.0]), // A
    (20.0, 1.5, 0.1, [151.0, 215.0, 252.0], [392.0, 558.0, 653.0]), // A
    (20.0, 1.5, 0.12, [148.0, 211.0, 246.0], [454.0, 646.0, 756.0]), // A
    (20.0, 1.5, 0.14, [144.0, 206.0, 241.0], [511.0, 728.0, 852.0]), // A
    (24.0, 2.0, 0.12, [209.0, 297.0, 348.0], [769.0, 1095.0, 1282.0]), // A
    (24.0, 2.0, 0.14, [204.0, 290.0, 339.0], [865.0, 1232.0, 1442.0]), // A
    (6.0, 1.0, 0.08, [10.7, 15.7, 18.4], [7.7, 11.3, 13.2]), // B
    (6.0, 1.0, 0.1, [10.4, 15.3, 17.9], [9.0, 13.2, 15.4]), // B
    (6.0, 1.0, 0.12, [10.2, 14.9, 17.4], [10.1, 14.9, 17.4]), // B
    (6.0, 1.0, 0.16, [9.6, 14.1, 16.5], [12.3, 18.0, 21.1]), // B
    (8.0, 1.25, 0.08, [19.5, 28.7, 33.6], [18.5, 27.2, 31.8]), // B
    (8.0, 1.25, 0.1, [19.1, 28.0, 32.8], [21.6, 31.8, 37.2]), // B
    (8.0, 1.25, 0.12, [18.6, 27.3, 32.0], [24.6, 36.1, 42.2]), // B
    (8.0, 1.25, 0.14, [18.1, 26.6, 31.1], [27.3, 40.1, 46.9]), // B
    (8.0, 1.25, 0.16, [17.6, 25.8, 30.2], [29.8, 43.8, 51.2]), // B
    (10.0, 1.5, 0.08, [31.0, 45.6, 53.3], [36.0, 53.0, 62.0]), // B
    (10.0, 1.5, 0.1, [30.3, 44.5, 52.1], [43.0, 63.0, 73.0]), // B
    (10.0, 1.5, 0.14, [28.8, 42.2, 49.4], [54.0, 79.0, 93.0]), // B
    (10.0, 1.5, 0.16, [27.9, 41.0, 48.0], [59.0, 87.0, 101.0]), // B
    (12.0, 1.75, 0.08, [45.2, 66.3, 77.6], [63.0, 92.0, 108.0]), // B
    (12.0, 1.75, 0.1, [44.1, 64.8, 75.9], [73.0, 108.0, 126.0]), // B
    (12.0, 1.75, 0.12, [43.0, 63.2, 74.0], [84.0, 123.0, 144.0]), // B
    (12.0, 1.75, 0.14, [41.9, 61.5, 72.0], [93.0, 137.0, 160.0]), // B
    (16.0, 2.0, 0.08, [84.7, 124.4, 145.5], [153.0, 224.0, 262.0]), // B
    (16.0, 2.0, 0.1, [82.9, 121.7, 142.4], [180.0, 264.0, 309.0]), // B
    (16.0, 2.0, 0.12, [80.9, 118.8, 139.0], [206.0, 302.0, 354.0]), // B
    (16.0, 2.0, 0.14, [78.8, 115.7, 135.4], [230.0, 338.0, 395.0]), // B
    (16.0, 2.0, 0.16, [76.6, 112.6, 131.7], [252.0, 370.0, 433.0]), // B
    (20.0, 2.5, 0.1, [134.0, 190.0, 223.0], [363.0, 517.0, 605.0]), // B
    (20.0, 2.5, 0.12, [130.0, 186.0, 217.0], [415.0, 592.0, 692.0]), // B
    (20.0, 2.5, 0.14, [127.0, 181.0, 212.0], [464.0, 661.0, 773.0]), // B
    (20.0, 2.5, 0.16, [123.0, 176.0, 206.0], [509.0, 725.0, 848.0]), // B
    (24.0, 3.0, 0.08, [196.0, 280.0, 327.0], [529.0, 754.0, 882.0]), // B
    (24.0, 3.0, 0.1, [192.0, 274.0, 320.0], [625.0, 890.0, 1041.0]), // B
    (24.0, 3.0, 0.12, [188.0, 267.0, 313.0], [714.0, 1017.0, 1190.0]), // B
    (24.0, 3.0, 0.14, [183.0, 260.0, 305.0], [798.0, 1136.0, 1329.0]), // B
];

/// Torque (N m) and share of yield (%) of a printed preload through the sheet: long form, hexagon head ISO 4014, hole ISO 273
/// medium.
fn vdi_case(d: f64, p: f64, friction: f64, class: &str, preload_kn: f64) -> (f64, f64) {
    let (f, clamp) = (friction.to_string(), format!("{preload_kn} kN"));
    let more = [
        ("from", "clamp"),
        ("clamp", &*clamp),
        ("form", "long"),
        ("head", "hex"),
        ("thread-friction", &f),
        ("head-friction", &f),
    ];
    let out = torque_sheet(&metric_call(d, p), class, &more);
    (
        result(&out, "torque"),
        result(&out, "share-of-yield") * 100.0,
    )
}

#[test]
fn vdi_2230_tables() {
    for &(d, p, friction, preloads, torques) in VDI {
        for ((class, preload), torque) in ["8.8", "10.9", "12.9"].iter().zip(preloads).zip(torques)
        {
            let (t, used) = vdi_case(d, p, friction, class, preload);
            assert!(
                within(used, 90.0, 0.015),
                "M{d}x{p} {class} at {friction}: {used}% of yield at {preload} kN"
            );
            assert!(
                within(t, torque, 0.03),
                "M{d}x{p} {class} at {friction}: {t} N m for {torque}"
            );
        }
    }
}

/// The two long forms (Shigley's with the lead angle, VDI's short approximation) agree within 1 % for usual threads.
#[test]
fn long_forms_agree() {
    for &(d, p, friction, _, _) in VDI {
        let size = Length::from_mm(d);
        let screw = Screw::sixty_degree(size, Pitch::from_mm(p), bearing_by_rule(size));
        let both = Friction {
            thread: friction,
            head: friction,
        };
        let clamp = Force::from_newtons(10_000.0);
        let k = long_form::nut_factor(&screw, both).unwrap();
        let shigley = short_form::torque(k, size, clamp).unwrap();
        let vdi = long_form::vdi_torque(&screw, both, clamp).unwrap().total();
        assert!(
            within(vdi.newton_metres(), shigley.newton_metres(), 0.01),
            "M{d}x{p} at {friction}"
        );
    }
}

/// A machine's operating manual, appendix, largest torques at friction 0.14, older basis (1986). Columns: d mm, P mm,
/// N m for 8.8 10.9 12.9. VDI 2230:2003 stands 7 to 12 % above it: shown as a disagreement, not tested for equality.
#[rustfmt::skip]
const OLDER: &[(f64, f64, [f64; 3])] = &[
    (6.0, 1.0, [10.0, 15.0, 18.0]),
    (8.0, 1.25, [25.0, 36.0, 43.0]),
    (10.0, 1.5, [49.0, 72.0, 84.0]),
    (12.0, 1.75, [85.0, 125.0, 145.0]),
    (16.0, 2.0, [210.0, 310.0, 365.0]),
    (18.0, 2.5, [300.0, 430.0, 500.0]),
    (20.0, 2.5, [425.0, 610.0, 710.0]),
    (22.0, 2.5, [580.0, 820.0, 960.0]),
    (24.0, 3.0, [730.0, 1050.0, 1220.0]),
    (27.0, 3.0, [1100.0, 1550.0, 1800.0]),
];

#[test]
fn older_lists_lie_below_the_2003_basis() {
    for &(d, p, torques) in OLDER {
        for (class, older) in ["8.8", "10.9", "12.9"].iter().zip(torques) {
            let out = torque_sheet(&metric_call(d, p), class, &[]);
            let rows = &out.answer.table_by_id("lists").unwrap().rows;
            let cell = |row: usize| rows[row].cells[1].base().unwrap();
            assert!(near(cell(2), older, 1e-9), "M{d} {class}: the list itself");
            let ratio = cell(1) / older;
            assert!(
                (1.04..1.14).contains(&ratio),
                "M{d} {class}: {} against {older}: {ratio}",
                cell(1)
            );
        }
    }
}

/// A fastener catalogue p. 686: stainless A1, A2, A4 at 90 % of the 0.2 % stress, printed to two figures (6 %).
/// Columns: d mm, P mm, friction, preload kN for 50 70 80, torque N m for 50 70 80.
#[rustfmt::skip]
const STAINLESS: &[(f64, f64, f64, [f64; 3], [f64; 3])] = &[
    (6.0, 1.0, 0.1, [3.4, 7.3, 9.7], [2.9, 6.3, 8.4]),
    (6.0, 1.0, 0.2, [3.0, 6.4, 8.4], [4.6, 10.0, 13.2]),
    (8.0, 1.25, 0.1, [6.2, 13.4, 17.9], [7.1, 15.2, 20.3]),
    (8.0, 1.25, 0.2, [5.4, 11.6, 15.5], [11.2, 24.1, 32.1]),
    (8.0, 1.25, 0.3, [4.6, 9.9, 13.3], [13.9, 30.0, 40.0]),
    (10.0, 1.5, 0.1, [9.9, 21.3, 28.4], [14.0, 30.0, 39.0]),
    (10.0, 1.5, 0.2, [8.6, 18.5, 24.7], [22.2, 47.7, 63.0]),
];

#[test]
fn stainless_torques() {
    for &(d, p, friction, preloads, torques) in STAINLESS {
        for ((class, preload), torque) in ["a2-50", "a2-70", "a2-80"]
            .iter()
            .zip(preloads)
            .zip(torques)
        {
            let row = bolt_strength::strength(class, Length::from_mm(d)).unwrap();
            assert!(
                row.proof.is_none(),
                "no proof stress is defined for stainless"
            );
            let (t, used) = vdi_case(d, p, friction, class, preload);
            assert!(
                within(used, 90.0, 0.06),
                "M{d} {class} at {friction}: {used}% of the 0.2% stress"
            );
            assert!(
                within(t, torque, 0.06),
                "M{d} {class} at {friction}: {t} N m for {torque}"
            );
        }
    }
}

/// TM 5-3895-367-14&P, app. H, Table H-1, clean and dry, lbf ft: grade 5 at 75 % of proof with K 0.2, within 14 %.
#[rustfmt::skip]
const ARMY_REQUIREMENTS: &[(f64, f64, f64)] = &[
    (0.25, 20.0, 8.0),
    (0.3125, 18.0, 17.0),
    (0.3125, 24.0, 19.0),
    (0.375, 16.0, 31.0),
    (0.375, 24.0, 35.0),
    (0.4375, 14.0, 49.0),
    (0.4375, 20.0, 55.0),
    (0.5, 13.0, 75.0),
    (0.5, 20.0, 85.0),
    (0.5625, 12.0, 110.0),
    (0.625, 11.0, 150.0),
    (0.625, 18.0, 170.0),
    (0.75, 10.0, 270.0),
    (0.75, 16.0, 295.0),
];

/// TM 9-2320-362-14&P, app. F, Table F-1, vehicle limits, clean and dry, 10 %: lbf ft (authoritative) and the book's
/// N m for grade 5, then grade 8. The sizes in inches also supply the sheet's list: here their N m column is checked. Grade 8 lies barely above grade 5, so it is a limit and not 75 % of proof.
#[rustfmt::skip]
const ARMY_LIMITS: &[(f64, f64, f64, f64)] = &[
    (6.0, 8.0, 10.0, 14.0),
    (15.0, 20.0, 21.0, 29.0),
    (26.0, 35.0, 37.0, 50.0),
    (43.0, 58.0, 60.0, 81.0),
    (90.0, 122.0, 130.0, 176.0),
    (185.0, 251.0, 260.0, 353.0),
    (300.0, 408.0, 420.0, 570.0),
    (440.0, 597.0, 635.0, 861.0),
    (10.0, 14.0, 12.0, 16.0),
    (40.0, 54.0, 48.0, 65.0),
    (70.0, 95.0, 80.0, 109.0),
    (113.0, 153.0, 132.0, 179.0),
    (176.0, 239.0, 207.0, 281.0),
    (343.0, 465.0, 399.0, 541.0),
];

#[test]
fn foot_pounds_and_newton_metres_agree_in_the_army_list() {
    for &(ft5, nm5, ft8, nm8) in ARMY_LIMITS {
        for (ft, nm) in [(ft5, nm5), (ft8, nm8)] {
            let got = Torque::from_lbf_ft(ft).newton_metres();
            assert!(near(got, nm, 1.3), "{ft} lbf ft: {got} for {nm}");
        }
        assert!(ft8 < ft5 * 1.7, "a limit list, not proof load");
    }
}

/// The same list: the grade 5 limit at K 0.2 stays below the proof load. Columns: D in, tpi coarse, lbf ft.
#[test]
fn army_grade_5_limits_stay_below_proof() {
    #[rustfmt::skip]
    let rows = [(0.25, 20.0, 6.0), (0.3125, 18.0, 15.0), (0.375, 16.0, 26.0), (0.4375, 14.0, 43.0), (0.5625, 12.0, 90.0), (0.75, 10.0, 185.0), (0.875, 9.0, 300.0), (1.0, 8.0, 440.0)];
    for (d, tpi, ft) in rows {
        let torque = format!("{ft} ft-lb");
        let more = [
            ("from", "torque"),
            ("torque", &*torque),
            ("state", "own"),
            ("factor", "0.2"),
        ];
        let out = torque_sheet(&inch_call(d, tpi), "sae-5", &more);
        let share = result(&out, "share-of-proof") * 100.0;
        assert!((50.0..90.0).contains(&share), "{d}: {share}%");
    }
}

/// T = K D F. "Mechanical Fastening, Joining, and Assembly" p. 85 (No. 10, 1275 lbf, 0.1 lbf in); Shigley, ex. 8-3.
#[test]
fn short_form_examples() {
    #[rustfmt::skip]
    let rows = [(0.3, 0.19, 1275.0, 72.7), (0.25, 0.19, 1275.0, 60.6), (0.15, 0.19, 1275.0, 36.3), (0.2, 0.75, 25000.0, 3750.0)];
    for (k, d, f, want) in rows {
        let (d, f) = (Length::from_inches(d), Force::from_lbf(f));
        let torque = short_form::torque(k, d, f).unwrap();
        assert!(
            near(torque.lbf_in(), want, 0.1),
            "K {k}: {} for {want}",
            torque.lbf_in()
        );
        let back = short_form::clamp(k, d, torque).unwrap();
        assert!(within(back.lbf(), f.lbf(), 1e-12));
    }
}

/// Shigley, Mechanical Engineering Design, ex. 8-3 (c), from memory: 3/4-16, friction 0.15, 25,000 lbf, 3551 lbf in.
/// dm 0.7093 is the mean of major and root, equal to the pitch diameter within 0.0001 in.
#[test]
fn long_form_example() {
    let d = Length::from_inches(0.75);
    let mut screw = Screw::sixty_degree(d, Pitch::from_tpi(16.0), bearing_by_rule(d));
    assert!(near(screw.mean_thread_diameter.inches(), 0.7093, 0.0002));
    assert!(near(screw.bearing_diameter.inches(), 0.9375, 1e-9));
    screw.mean_thread_diameter = Length::from_inches(0.7093);
    assert!(near(screw.lead_angle().degrees(), 1.6066, 0.0001));
    let k = long_form::nut_factor(
        &screw,
        Friction {
            thread: 0.15,
            head: 0.15,
        },
    )
    .unwrap();
    let torque = short_form::torque(k, d, Force::from_lbf(25_000.0)).unwrap();
    assert!(near(torque.lbf_in(), 3551.0, 5.0), "{}", torque.lbf_in());
}

/// Aircraft hardware torque page: 3/8-24 bolt, 5,788 lbf at 75 % of proof: 28.9 lbf ft cadmium dry, 19.9 moly anti-seize
/// (its K 0.11). Checks the cadmium factor of Shigley and the arithmetic.
#[test]
fn aircraft_bolt_dry_and_moly() {
    for (state, want) in [("cadmium", 28.9), ("moly", 19.9)] {
        let more = [("from", "clamp"), ("clamp", "5788 lbf"), ("state", state)];
        let out = torque_sheet("3/8-24", "sae-8", &more);
        let got = Torque::from_newton_metres(result(&out, "torque")).lbf_ft();
        assert!(near(got, want, 0.05), "{state}: {got}");
    }
}

/// NASA NSTS 08307 form, eq. 2 of J. Fail. Anal. Prev. 2019: F (1 - G), F (1 + G).
#[test]
fn scatter_band() {
    let more = [("from", "clamp"), ("clamp", "1000 lbf"), ("state", "plain")];
    let out = torque_sheet("3/8-16", "sae-5", &more);
    let (low, high) = out.answer.get("clamp").unwrap().band.unwrap();
    let lbf = |newtons| Force::from_newtons(newtons).lbf();
    assert!(near(lbf(low), 650.0, 1e-9) && near(lbf(high), 1350.0, 1e-9));
}

/// Power-screw torque with 60° thread and collar, worked apart: 320 lbf in, 5/8-11 (pitch diameter 0.566), collar
/// 0.8 in. Columns: friction, clamp lbf (1), nut factor (0.001).
#[test]
fn clamp_screw_by_friction() {
    let rows = [
        (0.1, 3660.0, 0.14),
        (0.15, 2580.0, 0.198),
        (0.2, 1990.0, 0.257),
    ];
    for (f, force, k) in rows {
        let screw = Screw {
            diameter: Length::from_inches(0.625),
            mean_thread_diameter: Length::from_inches(0.566),
            pitch: Pitch::from_tpi(11.0),
            half_angle: Angle::from_degrees(30.0),
            bearing_diameter: Length::from_inches(0.8),
        };
        let got_k = long_form::nut_factor(&screw, Friction { thread: f, head: f }).unwrap();
        let got = short_form::clamp(got_k, screw.diameter, Torque::from_lbf_in(320.0)).unwrap();
        // The printed force is rounded to 10 lbf.
        assert!(
            near(got.lbf(), force, 6.0),
            "friction {f}: {} for {force}",
            got.lbf()
        );
        assert!(near(got_k, k, 0.001), "friction {f}: {got_k} for {k}");
    }
}

/// TM 9-254 p. 91-92 (angled: E cos a) and NAVEDTRA 14008: wrench in, extension in, angle °, wanted, setting, tolerance.
#[test]
fn wrench_extension() {
    #[rustfmt::skip]
    let rows = [
        (12.0, 2.0,   0.0,  70.0,  60.0,  1e-9),
        (12.0, 6.0,  45.0, 100.0,  73.88, 0.01),
        (12.0, 6.0,  90.0, 100.0, 100.0,  0.01),
        (12.0, 4.0, 180.0,  60.0,  90.0,  0.01),
    ];
    for (l, e, angle, wanted, want, tolerance) in rows {
        let inch = Length::from_inches;
        let got = wrench::setting_with_extension(
            Torque::from_lbf_in(wanted),
            inch(l),
            inch(e),
            Angle::from_degrees(angle),
        );
        assert!(
            near(got.unwrap().lbf_in(), want, tolerance),
            "{l} {e} {angle}"
        );
    }
}

/// FED-STD-H28/2B app. B and ASME B1.1 app. B, thread shear areas per inch, 2A/2B, from memory. Columns: tpi, Kn, Es, Ds, En,
/// external and internal shear area in².
#[rustfmt::skip]
const SHEAR: &[(f64, [f64; 4], f64, f64)] = &[
    (18.0, [0.265, 0.2712, 0.3026, 0.2817], 0.47, 0.682),
    (13.0, [0.434, 0.4435, 0.4876, 0.4565], 0.779, 1.12),
];

/// The method of FED-STD-H28/2B app. B as reprinted in Machinery's Handbook, 24th ed., formulas 1 to 6, worked apart.
/// Columns: D in, tpi, [Kn, Es, Ds, En], screw and hole tensile ksi, tensile area in², Le in, J, engagement needed in.
#[rustfmt::skip]
const ENGAGEMENT: &[(f64, f64, [f64; 4], [f64; 2], [f64; 4])] = &[
    (0.25, 20.0, [0.207, 0.2127, 0.2408, 0.2224], [90.0, 90.0], [0.03182, 0.173, 0.6827, 0.173]),
    (0.25, 20.0, [0.207, 0.2127, 0.2408, 0.2224], [150.0, 45.0], [0.03031, 0.1648, 2.2757, 0.375]),
    (0.25, 20.0, [0.207, 0.2127, 0.2408, 0.2224], [150.0, 150.0], [0.03031, 0.1648, 0.6827, 0.1648]),
    (0.375, 16.0, [0.321, 0.3287, 0.3643, 0.3401], [90.0, 90.0], [0.07749, 0.2691, 0.6955, 0.2691]),
    (0.375, 16.0, [0.321, 0.3287, 0.3643, 0.3401], [150.0, 45.0], [0.0747, 0.2594, 2.3184, 0.6014]),
    (0.375, 16.0, [0.321, 0.3287, 0.3643, 0.3401], [150.0, 150.0], [0.0747, 0.2594, 0.6955, 0.2594]),
    (0.5, 13.0, [0.434, 0.4435, 0.4876, 0.4565], [90.0, 90.0], [0.1419, 0.3643, 0.6933, 0.3643]),
    (0.5, 13.0, [0.434, 0.4435, 0.4876, 0.4565], [90.0, 30.0], [0.1419, 0.3643, 2.08, 0.7578]),
    (0.5, 13.0, [0.434, 0.4435, 0.4876, 0.4565], [150.0, 45.0], [0.13757, 0.3532, 2.3111, 0.8163]),
];

fn limits(tpi: f64, [kn, es, ds, en]: [f64; 4]) -> Limits {
    Limits {
        internal_minor_max: Length::from_inches(kn),
        external_pitch_min: Length::from_inches(es),
        external_major_min: Length::from_inches(ds),
        internal_pitch_max: Length::from_inches(en),
        pitch: Pitch::from_tpi(tpi),
    }
}

#[test]
fn shear_areas() {
    for &(tpi, sizes, external, internal) in SHEAR {
        let (l, one) = (limits(tpi, sizes), Length::from_inches(1.0));
        assert!(
            near(
                strip::external_shear_area(&l, one).unwrap().in2(),
                external,
                0.001
            ),
            "{tpi}"
        );
        assert!(
            near(
                strip::internal_shear_area(&l, one).unwrap().in2(),
                internal,
                0.005
            ),
            "{tpi}"
        );
    }
}

#[test]
fn lengths_of_engagement() {
    for &(d, tpi, sizes, [screw, hole], [at, le, j, needed]) in ENGAGEMENT {
        let (l, screw, hole) = (
            limits(tpi, sizes),
            Stress::from_ksi(screw),
            Stress::from_ksi(hole),
        );
        let area = strip::method_area(&l, inch_area(d, tpi), screw).unwrap();
        assert!(within(area.in2(), at, 0.005), "{d}-{tpi}: {}", area.in2());
        let got = strip::engagement_equal(&l, area).unwrap().inches();
        assert!(within(got, le, 0.005), "{d}-{tpi}: {got} for {le}");
        let ratio = strip::strength_ratio(&l, screw, hole).unwrap();
        assert!(within(ratio, j, 0.005), "{d}-{tpi}: J {ratio} for {j}");
        let got = strip::engagement_needed(&l, inch_area(d, tpi), screw, hole).unwrap();
        let by_method = got.by_h28_area.inches();
        assert!(
            within(by_method, needed, 0.005),
            "{d}-{tpi}: {by_method} for {needed}"
        );
        assert!(got.depth() >= got.by_h28_area && got.depth() >= got.by_stress_area);
        // At the needed depth screw and tapped thread fail together (H28 basis: shear is half of tensile).
        let at_depth = strip::failure(
            &l,
            inch_area(d, tpi),
            got.depth(),
            (screw, 0.5),
            (hole, 0.5),
        )
        .unwrap();
        let weakest_thread = at_depth.screw_strips.min(at_depth.hole_strips);
        assert!(
            within(weakest_thread.lbf(), at_depth.screw_breaks.lbf(), 1e-9),
            "{d}-{tpi}"
        );
    }
}

/// FED-STD-H28/2B app. B, tensile area above 100 ksi, 1/2-13 with Es 0.4435: 0.13757 in² (formula from memory).
#[test]
fn area_above_100_ksi() {
    let a = strip::tensile_area_over_100_ksi(Length::from_inches(0.4435), Pitch::from_tpi(13.0))
        .unwrap();
    assert!(within(a.in2(), 0.13757, 0.003), "{}", a.in2());
}

/// Past the proof load the answer is a fault with the limit.
#[test]
fn beyond_proof_is_withheld() {
    let limit = Force::from_lbf(12_100.0);
    let fault = proof::share_of_proof(Force::from_lbf(12_101.0), limit);
    assert!(matches!(fault, Err(Fault::BeyondProof { proof, .. }) if proof == limit));
    assert!(near(
        proof::share_of_proof(limit, limit).unwrap().percent(),
        100.0,
        1e-9
    ));
}

/// Two sources that disagree are both kept: zinc 0.20 (Shigley) and 0.295 (Handbook of Bolts and Bolted Joints), plain
/// steel 0.20 and 0.30; ultrasonic 1 % (Machinery's Handbook) and 10 % (NASA).
#[test]
fn disagreements_are_kept() {
    let zinc = nut_factors::state("zinc").unwrap();
    assert_eq!((zinc.low(), zinc.high()), (0.20, 0.295));
    let plain = nut_factors::state("plain").unwrap();
    assert_eq!((plain.low(), plain.high()), (0.20, 0.30));
    assert_eq!(preload_scatter::method("ultrasonic").unwrap().percent, 1.0);
    assert_eq!(preload_scatter::ULTRASONIC_OTHER_PERCENT, 10.0);
}

/// Socket heads against a second source: ISO 4762 knurled maximum for M8 is 13.27 mm (a parts library), above the plain
/// 13; key of 3/8 and M8 by the usual hexagon series (5/16 in, 6 mm, common practice).
#[test]
fn socket_heads() {
    let m8 = heads::socket(Length::from_mm(8.0), System::Metric).unwrap();
    assert!(m8.head_diameter < Length::from_mm(13.27));
    assert!(near(m8.key.mm(), 6.0, 1e-9));
    let three_eighths = heads::socket(Length::from_inches(0.375), System::Inch).unwrap();
    assert!(near(three_eighths.key.inches(), 0.3125, 1e-9));
}

/// Torque and clamp undo each other over the whole span of shop sizes; more friction always asks for more torque.
#[test]
fn torque_and_clamp_are_inverse_and_monotonic() {
    for size in [0.06, 0.19, 0.25, 0.5, 1.0, 2.5] {
        let d = Length::from_inches(size);
        let mut last = Torque::ZERO;
        for k in [0.08, 0.11, 0.16, 0.2, 0.3, 0.5] {
            let f = Force::from_lbf(1000.0 * size);
            let t = short_form::torque(k, d, f).unwrap();
            assert!(t > last);
            last = t;
            assert!(within(
                short_form::clamp(k, d, t).unwrap().lbf(),
                f.lbf(),
                1e-12
            ));
        }
    }
}

/// A metric thread as it is called.
fn metric_call(d: f64, p: f64) -> String {
    format!("M{d}x{p}")
}

/// An inch thread as it is called: a screw number under 1/4 in, a fraction from there.
fn inch_call(d: f64, tpi: f64) -> String {
    if d < 0.25 {
        return format!("#{}-{tpi}", ((d - 0.06) / 0.013).round());
    }
    let text = nearest_fraction(Length::from_inches(d), 64).text;
    format!("{}-{tpi}", text.replace(' ', "-"))
}

/// The torque sheet in metric units, by thread, grade and more.
fn torque_sheet(thread: &str, grade: &str, more: &[(&str, &str)]) -> Outcome {
    let start = [("thread", thread), ("grade", grade)];
    sheet("bolt-torque", System::Metric, &[&start[..], more].concat())
}

/// What a sheet answers, by field texts.
fn sheet(id: &str, system: System, entry: &[(&str, &str)]) -> Outcome {
    evaluate(
        sheets::by_id(id).unwrap(),
        &Entry::of(entry).in_system(system),
    )
}

/// A result's number in base units.
fn result(out: &Outcome, id: &str) -> f64 {
    assert!(
        out.answer.is_complete(),
        "{:?} {:?}",
        out.answer.state,
        out.faults().collect::<Vec<_>>()
    );
    out.answer.get(id).unwrap().value.base().unwrap()
}

/// TM 5-3895-367-14&P, app. H, Table H-1 once more, now through the sheet: grade 5, plain and dry, usual share.
#[test]
fn sheet_gives_the_army_requirements() {
    const CALLS: [&str; 14] = [
        "1/4-20", "5/16-18", "5/16-24", "3/8-16", "3/8-24", "7/16-14", "7/16-20", "1/2-13",
        "1/2-20", "9/16-12", "5/8-11", "5/8-18", "3/4-10", "3/4-16",
    ];
    for (call, &(_, _, want)) in CALLS.iter().zip(ARMY_REQUIREMENTS) {
        let out = sheet(
            "bolt-torque",
            System::Inch,
            &[("thread", call), ("grade", "sae-5"), ("state", "plain")],
        );
        let got = Torque::from_newton_metres(result(&out, "torque")).lbf_ft();
        assert!(within(got, want, 0.14), "{call}: {got} for {want}");
        // The three units say the same.
        assert_eq!(result(&out, "torque"), result(&out, "torque-nm"));
        assert_eq!(result(&out, "torque"), result(&out, "torque-in-lb"));
    }
}

/// Shigley, ex. 8-3, through the sheet: 3/4-16, 25,000 lbf: 3750 lbf in with K 0.2; 3551 with both frictions 0.15.
#[test]
fn sheet_gives_the_textbook_example() {
    let start = [
        ("thread", "3/4-16"),
        ("grade", "sae-5"),
        ("from", "clamp"),
        ("clamp", "25000 lbf"),
    ];
    let out = sheet(
        "bolt-torque",
        System::Inch,
        &[&start[..], &[("state", "own"), ("factor", "0.2")]].concat(),
    );
    assert!(near(
        Torque::from_newton_metres(result(&out, "torque")).lbf_in(),
        3750.0,
        1e-6
    ));
    let long = [
        ("form", "long"),
        ("thread-friction", "0.15"),
        ("head-friction", "0.15"),
    ];
    let out = sheet("bolt-torque", System::Inch, &[&start[..], &long].concat());
    assert!(near(
        Torque::from_newton_metres(result(&out, "torque")).lbf_in(),
        3551.0,
        5.0
    ));
    assert!(near(result(&out, "nut-factor"), 0.18938, 0.0001));
}

/// EN ISO 898-1 and SAE J429 proof loads through the sheet, as in the lists above.
#[test]
fn sheet_gives_proof_loads() {
    for (thread, grade, want, share) in [
        ("M8", "8.8", 21_200.0, 0.01),
        ("M10", "10.9", 48_100.0, 0.01),
        ("M12", "12.9", 81_800.0, 0.01),
        ("M18", "8.8", 115_000.0, 0.01),
        ("1/2-13", "sae-8", 17_000.0 * 4.4482216152605, 0.006),
        ("3/4-10", "sae-5", 28_400.0 * 4.4482216152605, 0.006),
    ] {
        let out = sheet(
            "bolt-torque",
            System::Metric,
            &[("thread", thread), ("grade", grade)],
        );
        let got = result(&out, "proof-load");
        assert!(
            within(got, want, share),
            "{thread} {grade}: {got} for {want}"
        );
        assert!(within(result(&out, "clamp"), got * 0.75, 1e-12));
    }
}

/// Past the proof load there is no number, whichever way one came there; and what the standard does not define is
/// another fault than a grade of the other system.
#[test]
fn sheet_withholds_and_refuses() {
    let base = [("thread", "M10"), ("grade", "8.8")];
    for more in [
        &[("from", "torque"), ("torque", "90 Nm"), ("state", "moly")][..],
        &[("from", "clamp"), ("clamp", "34 kN")],
        &[("joint", "own"), ("share", "101%")],
    ] {
        let out = sheet("bolt-torque", System::Metric, &[&base[..], more].concat());
        assert!(
            matches!(out.answer.state, State::Withheld(_)),
            "{more:?}: {:?}",
            out.answer.state
        );
        assert!(out.answer.lines.is_empty());
    }
    let whole = sheet(
        "bolt-torque",
        System::Metric,
        &[&base[..], &[("joint", "own"), ("share", "100%")]].concat(),
    );
    assert!(whole.answer.is_complete());
    let reason = |entry: &[(&str, &str)]| {
        sheet("bolt-torque", System::Inch, entry)
            .faults()
            .next()
            .map(|f| f.reason)
    };
    assert_eq!(
        reason(&[("thread", "#10-24"), ("grade", "sae-5")]),
        Some(Reason::NotDefined)
    );
    assert_eq!(
        reason(&[("thread", "M18"), ("grade", "9.8")]),
        Some(Reason::NotDefined)
    );
    assert_eq!(
        reason(&[("thread", "M10"), ("grade", "sae-5")]),
        Some(Reason::Conflict)
    );
}

/// Torque from a clamp and clamp from that torque undo each other, in every state of thread and head.
#[test]
fn sheet_works_both_ways() {
    for state in nut_factors::ROWS {
        let out = sheet(
            "bolt-torque",
            System::Metric,
            &[("thread", "M12"), ("grade", "10.9"), ("state", state.key)],
        );
        let torque = format!("{:.6} Nm", result(&out, "torque"));
        let back = sheet(
            "bolt-torque",
            System::Metric,
            &[
                ("thread", "M12"),
                ("grade", "10.9"),
                ("state", state.key),
                ("from", "torque"),
                ("torque", &torque),
            ],
        );
        assert!(
            within(result(&back, "clamp"), result(&out, "clamp"), 1e-6),
            "{}",
            state.key
        );
    }
}

/// The wrench: below 20 % of its top and outside its range is said.
#[test]
fn sheet_minds_the_wrench() {
    let said = |low: &str, high: &str| {
        let entry = [
            ("thread", "3/8-16"),
            ("grade", "sae-5"),
            ("wrench-low", low),
            ("wrench-high", high),
        ];
        sheet("bolt-torque", System::Inch, &entry)
            .answer
            .get("wrench")
            .unwrap()
            .value
            .text(System::Inch)
    };
    // The torque is 30.9 ft-lb.
    assert!(said("10 ft-lb", "150 ft-lb").starts_with("reads 30.9 ft-lb ("));
    assert!(said("10 ft-lb", "160 ft-lb").contains("20%"));
    assert!(said("40 ft-lb", "160 ft-lb").starts_with("starts at"));
    assert!(said("5 ft-lb", "25 ft-lb").starts_with("ends at"));
}

/// TM 9-254 p. 91-92 through the sheet: a 12 in wrench with a 2 in adapter, set to 60 in-lb, gives 70.
#[test]
fn sheet_minds_the_adapter() {
    let entry = [
        ("thread", "3/8-16"),
        ("grade", "sae-5"),
        ("from", "torque"),
        ("torque", "70 in-lb"),
        ("adapter", "straight"),
        ("lever", "12 in"),
        ("extension", "2 in"),
    ];
    let out = sheet("bolt-torque", System::Inch, &entry);
    assert!(near(
        Torque::from_newton_metres(result(&out, "set-to")).lbf_in(),
        60.0,
        1e-9
    ));
}

/// VDI 2230-1:2003 Table A1, M10 8.8 at friction 0.14: 54 N m stands in the sheet's table of printed lists, 2.5 %.
#[test]
fn sheet_shows_the_vdi_torque() {
    let out = sheet(
        "bolt-torque",
        System::Metric,
        &[("thread", "M10"), ("grade", "8.8")],
    );
    let cell = out.answer.table_by_id("lists").unwrap().rows[1].cells[1]
        .base()
        .unwrap();
    assert!(within(cell, 54.0, 0.025), "{cell}");
}

/// FED-STD-H28/2B, app. B, through the sheet: grade 8 (150 ksi) into aluminum of 45 ksi, by the method's own tensile area (told
/// beside), and by the breaking load, which leads: the tabled depth times the stress area of ASME B1.1 over the method's
/// area (0.0318/0.03031, 0.0775/0.0747, 0.1419/0.13757). The limits are those of 2A and 2B, whose bore the table rounds: 1 %.
#[test]
fn sheet_gives_the_depth_needed() {
    for (thread, grade, ksi, method, breaking) in [
        ("1/4-20", "sae-8", "45 ksi", 0.375, 0.3934),
        ("3/8-16", "sae-8", "45 ksi", 0.6014, 0.6239),
        ("1/2-13", "sae-8", "45 ksi", 0.8163, 0.8420),
        ("1/4-20", "sae-8", "150 ksi", 0.1648, 0.1729),
        ("3/8-16", "sae-8", "150 ksi", 0.2594, 0.2691),
        // to 100 ksi both are one: least engagement in the appendix of ASME B1.1
        ("1/2-13", "sae-1", "60 ksi", 0.3643, 0.3643),
    ] {
        let out = sheet(
            "thread-strip",
            System::Inch,
            &[
                ("thread", thread),
                ("grade", grade),
                ("into", "own"),
                ("tensile", ksi),
            ],
        );
        let got = Length::from_mm(result(&out, "needed")).inches();
        assert!(
            within(got, breaking, 0.01),
            "{thread} into {ksi}: {got} for {breaking}"
        );
        let says = &out.answer.get("needed").unwrap().says;
        let told = says
            .split("asks for ")
            .nth(1)
            .map_or(got, |rest| rest.split(' ').next().unwrap().parse().unwrap());
        assert!(within(told, method, 0.01), "{thread}: {told} for {method}");
        assert_eq!(says.contains("breaking load"), grade == "sae-8", "{says}");
    }
}

/// Shear areas of 5/16-18 and 1/2-13 per inch of engagement (FED-STD-H28/2B app. B) through the sheet.
#[test]
fn sheet_gives_the_shear_areas() {
    for (thread, external, internal) in [("5/16-18", 0.470, 0.682), ("1/2-13", 0.779, 1.12)] {
        let out = sheet(
            "thread-strip",
            System::Inch,
            &[("thread", thread), ("grade", "sae-5"), ("depth", "1 in")],
        );
        let area = |id: &str| Area::from_mm2(result(&out, id)).in2();
        assert!(
            near(area("external-area"), external, 0.002),
            "{thread}: {}",
            area("external-area")
        );
        assert!(
            near(area("internal-area"), internal, 0.005),
            "{thread}: {}",
            area("internal-area")
        );
    }
}

/// Deeper never gives sooner, and a stronger part never needs more depth.
#[test]
fn strip_is_monotonic() {
    let mut last = 0.0;
    for depth in ["0.1", "0.2", "0.4", "0.8", "1.6"] {
        let out = sheet(
            "thread-strip",
            System::Inch,
            &[("thread", "1/2-13"), ("grade", "sae-5"), ("depth", depth)],
        );
        let pull = result(&out, "strip-load");
        assert!(pull >= last);
        last = pull;
    }
    let mut last = f64::INFINITY;
    for ksi in ["10 ksi", "20 ksi", "40 ksi", "80 ksi", "160 ksi"] {
        let out = sheet(
            "thread-strip",
            System::Inch,
            &[
                ("thread", "M12"),
                ("grade", "12.9"),
                ("into", "own"),
                ("tensile", ksi),
            ],
        );
        let needed = result(&out, "needed");
        assert!(needed <= last);
        last = needed;
    }
}

/// Every choice with every other thread and grade gives an answer, a fault or a limit, and never a number that is none.
#[test]
fn every_grade_and_state_is_answered() {
    for id in ["bolt-torque", "thread-strip"] {
        for thread in [
            "#0-80", "1/4-20", "1-1/8-7", "4-4", "M1.6", "M10x0.75", "M24", "M64",
        ] {
            for grade in bolt_strength::GRADES {
                for state in ["unknown", "zinc", "moly"] {
                    for extra in [("form", "long"), ("depth", "0.4")] {
                        let out = sheet(
                            id,
                            System::Inch,
                            &[
                                ("thread", thread),
                                ("grade", grade.key),
                                ("state", state),
                                extra,
                            ],
                        );
                        for line in &out.answer.lines {
                            assert!(
                                line.value.base().is_none_or(f64::is_finite),
                                "{id} {thread} {}",
                                grade.key
                            );
                        }
                        assert!(
                            out.answer.is_complete() || out.faults().count() > 0,
                            "{id} {thread} {}: {:?}",
                            grade.key,
                            out.answer.state
                        );
                    }
                }
            }
        }
    }
}
