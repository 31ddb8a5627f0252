//! How fast may work turn against an HSS tool bit? Lathe speeds, one row a recommendation.
//!
//! Source: Krar et al., Technology of Machine Tools, lathe cutting-speed table for HSS tool bits, ft/min authoritative
//! (from memory; the book's metric column is rounded, up to 1.7 m/min off).

use super::cutting_speeds::CutterMaterial::HighSpeedSteel;
use super::cutting_speeds::Material::*;
use super::cutting_speeds::Operation::{self, Threading, TurningFinish, TurningRough};
use super::cutting_speeds::{Material, SpeedRow, SpeedSource, SpeedUnit};

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
        source: SpeedSource::KrarLathe,
    }
}

/// Turning and threading speeds.
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
