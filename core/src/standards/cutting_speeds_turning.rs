//! How fast may work turn against a lathe tool? Lathe speeds, one row a recommendation, ft/min unless a row's source is metric.
//!
//! Sources: Krar et al., Technology of Machine Tools, HSS tool bits (from memory; the book's metric column is rounded, up to 1.7
//! m/min off). Read: a lathe maker's operator's manual, Table 7.1, HSS, roughing and finishing; Lineham, A Text Book of Mechanical
//! Engineering, appendix V, p. 975 (HSS in a powerful lathe, deep cuts); TM 43-0106, Table 2-8 (stainless, HSS and carbide);
//! Machinery's Handbook, machining monel and nickel (a guide to it, p. 180); a small lathe maker's leaflet (rpm on 1 in); a plastics
//! supplier's turning guide (carbide, ft/min) and a plastics shop's page (nylon with HSS, m/min); a threading tool maker's chart
//! (small uncoated tools, ft/min).

use super::cutting_speeds::CutterMaterial::{Carbide, HighSpeedSteel};
use super::cutting_speeds::Material::*;
use super::cutting_speeds::Operation::{self, Threading, TurningFinish, TurningRough};
use super::cutting_speeds::SpeedSource::{self, *};
use super::cutting_speeds::{CutterMaterial, Material, SpeedRow, SpeedUnit};

const fn row(material: Material, operation: Operation, sfm: f64, detail: &'static str) -> SpeedRow {
    SpeedRow {
        material,
        operation,
        cutter: HighSpeedSteel,
        detail,
        hardness: None,
        low: sfm,
        high: sfm,
        unit: SpeedUnit::Sfm,
        source: KrarLathe,
    }
}

/// Turning and threading speeds, from memory.
#[rustfmt::skip]
pub const ROWS: &[SpeedRow] = &[
    row(MildSteel, TurningRough, 90.0, "machine steel"),
    row(MildSteel, TurningFinish, 100.0, "machine steel"),
    row(MildSteel, Threading, 35.0, "machine steel"),
    row(ToolSteel, TurningRough, 70.0, "tool steel"),
    row(ToolSteel, TurningFinish, 90.0, "tool steel"),
    row(ToolSteel, Threading, 30.0, "tool steel"),
    row(Bronze, TurningRough, 90.0, "bronze"),
    row(Bronze, TurningFinish, 100.0, "bronze"),
    row(Bronze, Threading, 25.0, "bronze"),
    row(Aluminium, TurningRough, 200.0, "aluminium"),
    row(Aluminium, TurningFinish, 300.0, "aluminium"),
    row(Aluminium, Threading, 60.0, "aluminium"),
];

const fn read(
    material: Material,
    operation: Operation,
    cutter: CutterMaterial,
    low: f64,
    high: f64,
    source: SpeedSource,
    detail: &'static str,
) -> SpeedRow {
    SpeedRow {
        material,
        operation,
        cutter,
        detail,
        hardness: None,
        low,
        high,
        unit: SpeedUnit::Sfm,
        source,
    }
}

/// Rows whose source gives roughing and finishing apart: low and high of each.
#[rustfmt::skip]
const PAIRED: &[(SpeedRow, f64, f64)] = &[
    (read(MildSteel, TurningRough, HighSpeedSteel, 90.0, 90.0, LatheManual, "low-carbon steel"), 120.0, 120.0),
    (read(CarbonSteel, TurningRough, HighSpeedSteel, 50.0, 50.0, LatheManual, "high-carbon steel, annealed"), 65.0, 65.0),
    (read(AlloySteel, TurningRough, HighSpeedSteel, 45.0, 45.0, LatheManual, "alloy steel, normalized"), 60.0, 60.0),
    (read(Aluminium, TurningRough, HighSpeedSteel, 200.0, 200.0, LatheManual, "aluminium alloys"), 300.0, 300.0),
    (read(CastAluminium, TurningRough, HighSpeedSteel, 200.0, 200.0, LatheManual, "aluminium alloys"), 300.0, 300.0),
    (read(GrayIron, TurningRough, HighSpeedSteel, 70.0, 70.0, LatheManual, "cast iron"), 80.0, 80.0),
    (read(Bronze, TurningRough, HighSpeedSteel, 100.0, 100.0, LatheManual, "bronze"), 130.0, 130.0),
    (read(Brass, TurningRough, HighSpeedSteel, 196.0, 196.0, SmallLathe, "brass, 750 rpm on 1 in"), 196.0, 196.0),
    (read(StainlessSteel, TurningRough, HighSpeedSteel, 20.0, 40.0, ArmyStainless, "302 to 316"), 50.0, 80.0),
    (read(StainlessSteel, TurningRough, HighSpeedSteel, 20.0, 40.0, ArmyStainless, "420, 440, 321, 347"), 55.0, 90.0),
    (read(StainlessSteel, TurningRough, HighSpeedSteel, 30.0, 60.0, ArmyStainless, "430F, 416"), 75.0, 120.0),
    (read(StainlessSteel, TurningRough, HighSpeedSteel, 25.0, 55.0, ArmyStainless, "420F, 303"), 65.0, 105.0),
    (read(StainlessSteel, TurningRough, Carbide, 150.0, 200.0, ArmyStainless, "302 to 316"), 150.0, 300.0),
    (read(StainlessSteel, TurningRough, Carbide, 165.0, 220.0, ArmyStainless, "420, 440, 321, 347"), 165.0, 330.0),
    (read(StainlessSteel, TurningRough, Carbide, 225.0, 300.0, ArmyStainless, "430F, 416"), 225.0, 450.0),
    (read(StainlessSteel, TurningRough, Carbide, 175.0, 240.0, ArmyStainless, "420F, 303"), 195.0, 350.0),
    (read(Monel, TurningRough, HighSpeedSteel, 70.0, 100.0, HandbookNickel, "monel"), 70.0, 100.0),
    (read(Monel, TurningRough, Carbide, 200.0, 300.0, HandbookNickel, "monel"), 200.0, 300.0),
    (read(Nickel, TurningRough, HighSpeedSteel, 70.0, 100.0, HandbookNickel, "softer nickel alloys"), 70.0, 100.0),
    (read(Nickel, TurningRough, Carbide, 200.0, 300.0, HandbookNickel, "softer nickel alloys"), 200.0, 300.0),
    (read(Thermoplastic, TurningRough, Carbide, 490.0, 1960.0, PlasticsGuide, "ABS to PVDF, slowest and fastest"), 490.0, 1960.0),
    (SpeedRow { unit: SpeedUnit::MetresPerMinute, ..read(Thermoplastic, TurningRough, HighSpeedSteel, 40.0, 50.0, PlasticsGuide, "nylon") }, 40.0, 50.0),
];

/// Rows that stand alone.
#[rustfmt::skip]
const SINGLES: &[SpeedRow] = &[
    read(GrayIron, TurningRough, HighSpeedSteel, 60.0, 60.0, Lineham, "cast iron with its skin on"),
    read(WroughtIron, TurningRough, HighSpeedSteel, 80.0, 80.0, Lineham, "wrought iron"),
    read(GrayIron, Threading, Carbide, 75.0, 200.0, ThreadingChart, "cast iron, 160 HB"),
    read(MildSteel, Threading, Carbide, 75.0, 200.0, ThreadingChart, "carbon steel"),
    read(CarbonSteel, Threading, Carbide, 75.0, 200.0, ThreadingChart, "carbon steel"),
    read(AlloySteel, Threading, Carbide, 75.0, 200.0, ThreadingChart, "alloy steel"),
    read(ToolSteel, Threading, Carbide, 75.0, 175.0, ThreadingChart, "tool steel"),
    read(StainlessSteel, Threading, Carbide, 75.0, 175.0, ThreadingChart, "300 stainless, 150 HB"),
    read(StainlessSteel, Threading, Carbide, 75.0, 210.0, ThreadingChart, "400 stainless, 195 HB"),
    read(Titanium, Threading, Carbide, 50.0, 100.0, ThreadingChart, "titanium"),
    read(Aluminium, Threading, Carbide, 75.0, 250.0, ThreadingChart, "aluminium"),
    read(Brass, Threading, Carbide, 75.0, 300.0, ThreadingChart, "brass, zinc"),
    read(Zinc, Threading, Carbide, 75.0, 300.0, ThreadingChart, "brass, zinc"),
];

/// All lathe rows: those from memory, the read ones, and the pairs taken apart.
pub fn rows() -> impl Iterator<Item = SpeedRow> {
    let paired = PAIRED.iter().flat_map(|(rough, low, high)| {
        let finish = SpeedRow {
            operation: TurningFinish,
            low: *low,
            high: *high,
            ..*rough
        };
        [*rough, finish]
    });
    ROWS.iter()
        .copied()
        .chain(SINGLES.iter().copied())
        .chain(paired)
}
