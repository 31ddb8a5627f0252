//! Tapping against outside sources: speeds, percent of thread, depth of a blind hole. Above each list: its source.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    clippy::disallowed_methods,
    reason = "a check panics when it fails"
)]

use benchslate_core::cutting::*;
use benchslate_core::quantity::*;
use benchslate_core::sheet::{Entry, Outcome, evaluate};
use benchslate_core::sheets::by_id;
use benchslate_core::standards::cutting_speeds::*;
use benchslate_tests::near;

fn figured(pairs: &[(&str, &str)]) -> Outcome {
    evaluate(by_id("tapping").unwrap(), &Entry::of(pairs))
}

fn base(outcome: &Outcome, id: &str) -> f64 {
    outcome.answer.get(id).unwrap().value.base().unwrap()
}

/// One figure, ft/min. Chart of suggested tapping speeds, publisher not stated; rows that supplied no row of ours. Its ductile
/// iron (50) stands above the maker's 20 to 40 and its nickel alloys (10) below the trade table's monel (20 to 40).
const CHART: &[(Material, f64)] = &[
    (Material::MildSteel, 55.0),
    (Material::StainlessSteel, 20.0),
    (Material::GrayIron, 70.0),
    (Material::Aluminium, 80.0),
    (Material::Zinc, 80.0),
    (Material::Copper, 60.0),
    (Material::Brass, 60.0),
    (Material::Bronze, 50.0),
    (Material::Titanium, 10.0),
];

#[test]
fn tapping_bands_hold_the_charts_figures() {
    for &(material, sfm) in CHART {
        let band = speed_band(
            material,
            Operation::Tapping,
            CutterMaterial::HighSpeedSteel,
            None,
        )
        .unwrap();
        assert!(
            band.low.sfm() <= sfm + 1e-9 && sfm <= band.high.sfm() + 1e-9,
            "{material:?} {sfm}"
        );
    }
}

#[test]
fn percent_of_thread_stays_in_the_armys_band() {
    // A second tap maker's guide to machine tapping, p. 70: 75 % for general work. The band itself is OD1621's, p. 177.
    let inch = Length::from_inches;
    assert!(near(
        thread_to_cut(Material::MildSteel, inch(0.5), inch(0.5)).percent(),
        75.0,
        1e-9
    ));
    for material in Material::ALL {
        for (d, depth) in [(0.06, 0.25), (0.25, 0.25), (0.5, 2.0)] {
            let share = thread_to_cut(material, inch(d), inch(depth)).percent();
            assert!((50.0..=83.0).contains(&share));
        }
    }
    // the same page: less thread in a deep hole and with a small tap
    let shallow = thread_to_cut(Material::MildSteel, inch(0.5), inch(0.5));
    assert!(thread_to_cut(Material::MildSteel, inch(0.5), inch(1.5)) < shallow);
    assert!(thread_to_cut(Material::MildSteel, inch(0.112), inch(0.112)) < shallow);
}

/// Tap and chamfered threads, fewest and most, as in our table (TM 9-254, par. 4-27): not a check, only the way through the sheet.
const CHAMFERS: &[(&str, f64, f64)] = &[
    ("taper", 7.0, 10.0),
    ("plug", 3.0, 5.0),
    ("bottoming", 1.0, 2.0),
];

#[test]
fn blind_holes_leave_room_for_the_chamfer() {
    for &(tap, fewest, most) in CHAMFERS {
        let o = figured(&[
            ("thread", "1/4-20"),
            ("hole", "blind"),
            ("depth", "0.5 in"),
            ("tap", tap),
        ]);
        let line = o.answer.get("drill-depth").unwrap();
        let room = |threads: f64| Length::from_inches(0.5 + (threads + 1.0) * 0.05).base();
        assert!(near(base(&o, "drill-depth"), room(most), 1e-9));
        assert!(near(line.band.as_ref().unwrap().0, room(fewest), 1e-9));
    }
}

/// Thread, tap drill by D − 1/N in inches. School shop list, T.D.S. formula: it leaves 1/1.299 = 77 % of thread.
const SCHOOL: &[(&str, f64)] = &[
    ("1/4-20", 0.2000),
    ("5/16-18", 0.2569),
    ("3/8-16", 0.3125),
    ("7/16-14", 0.3661),
    ("1/2-13", 0.4231),
    ("5/8-11", 0.5341),
    ("3/4-10", 0.6500),
];

#[test]
fn the_schools_drill_is_77_percent() {
    for &(thread, hole) in SCHOOL {
        let o = figured(&[
            ("thread", thread),
            ("depth", "0.5 in"),
            ("share", "76.98 pct"),
        ]);
        assert!(
            near(
                base(&o, "hole-size"),
                Length::from_inches(hole).base(),
                0.0015
            ),
            "{thread}"
        );
    }
}

#[test]
fn chamfers_hold_the_handbooks() {
    // Machinery's Handbook, 26th ed., chamfer length: taper 8 to 10 teeth, plug 3 to 5, bottoming 1 1/2
    for (tap, fewest, most) in [
        (TapChamfer::Taper, 8.0, 10.0),
        (TapChamfer::Plug, 3.0, 5.0),
        (TapChamfer::Bottoming, 1.5, 1.5),
    ] {
        let (low, high) = tap.threads();
        assert!(f64::from(low) <= fewest && most <= f64::from(high));
    }
}
