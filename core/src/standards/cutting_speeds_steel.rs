//! How fast may an edge pass through steel? One table for turning, milling, drilling and reaming, by hardness, ft/min.
//!
//! Source: Machinery's Handbook, older editions, recommended cutting speeds for plain carbon and alloy steels, tool steels and
//! stainless steels (HSS tools; reaming with carbide too). Drilling and reaming were read in two reprints, turning and milling in
//! one; the carbide column of turning is that of an earlier edition, in its own reprint. A zero was not read. The reaming speed of
//! water hardening tool steel (35 beside 85 for drilling) looks like a misprint and is left out.

use super::cutting_speeds::CutterMaterial::{Carbide, HighSpeedSteel as Hss};
use super::cutting_speeds::Material::{self, *};
use super::cutting_speeds::Operation::{Drilling, Milling, Reaming, TurningFinish, TurningRough};
use super::cutting_speeds::{SpeedRow, SpeedSource, SpeedUnit};

/// One steel at one hardness, ft/min; zero where the print was not read.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct SteelRow {
    /// The work material that the row is filed under.
    pub material: Material,
    /// The row's own words.
    pub detail: &'static str,
    /// Brinell hardness from and to.
    pub hardness: (u16, u16),
    /// Turning with HSS, no difference made between roughing and finishing.
    pub turn: f64,
    /// Milling with HSS.
    pub mill: f64,
    /// Drilling with HSS.
    pub drill: f64,
    /// Reaming with HSS.
    pub ream: f64,
    /// Reaming with carbide.
    pub ream_carbide: f64,
    /// Turning with carbide, earlier edition.
    pub turn_carbide: f64,
}

const fn steel(
    material: Material,
    detail: &'static str,
    from: u16,
    to: u16,
    speeds: [f64; 6],
) -> SteelRow {
    let [turn, mill, drill, ream, ream_carbide, turn_carbide] = speeds;
    SteelRow {
        material,
        detail,
        hardness: (from, to),
        turn,
        mill,
        drill,
        ream,
        ream_carbide,
        turn_carbide,
    }
}

/// Turning, milling, drilling, reaming with HSS; reaming and turning with carbide.
#[rustfmt::skip]
pub const STEELS: &[SteelRow] = &[
    steel(FreeMachiningSteel, "1212 to 1215, hot rolled", 100, 150, [150.0, 140.0, 120.0, 80.0, 400.0, 0.0]),
    steel(FreeMachiningSteel, "1212 to 1215, cold drawn", 150, 200, [160.0, 130.0, 125.0, 80.0, 350.0, 0.0]),
    steel(FreeMachiningSteel, "1108 to 1126, hot rolled", 100, 150, [130.0, 130.0, 110.0, 75.0, 375.0, 450.0]),
    steel(FreeMachiningSteel, "1108 to 1126, cold drawn", 150, 200, [120.0, 115.0, 120.0, 80.0, 350.0, 500.0]),
    steel(FreeMachiningSteel, "1132 to 1151", 175, 225, [120.0, 115.0, 100.0, 65.0, 350.0, 500.0]),
    steel(FreeMachiningSteel, "1132 to 1151", 275, 325, [75.0, 70.0, 70.0, 45.0, 250.0, 250.0]),
    steel(FreeMachiningSteel, "1132 to 1151", 325, 375, [50.0, 45.0, 45.0, 30.0, 175.0, 175.0]),
    steel(FreeMachiningSteel, "1132 to 1151", 375, 425, [40.0, 35.0, 35.0, 20.0, 100.0, 140.0]),
    steel(FreeMachiningSteel, "leaded, 12L14", 100, 150, [140.0, 140.0, 130.0, 85.0, 400.0, 0.0]),
    steel(FreeMachiningSteel, "leaded, 12L14", 150, 200, [145.0, 130.0, 120.0, 80.0, 375.0, 0.0]),
    steel(FreeMachiningSteel, "leaded, 12L14", 200, 250, [110.0, 110.0, 90.0, 60.0, 275.0, 0.0]),
    steel(MildSteel, "1006 to 1026", 100, 125, [120.0, 110.0, 100.0, 65.0, 300.0, 500.0]),
    steel(MildSteel, "1006 to 1026", 125, 175, [110.0, 110.0, 90.0, 60.0, 275.0, 400.0]),
    steel(MildSteel, "1006 to 1026", 175, 225, [90.0, 90.0, 70.0, 45.0, 200.0, 350.0]),
    steel(MildSteel, "1006 to 1026", 225, 275, [70.0, 65.0, 60.0, 40.0, 175.0, 300.0]),
    steel(CarbonSteel, "1027 to 1050", 125, 175, [100.0, 100.0, 90.0, 60.0, 250.0, 400.0]),
    steel(CarbonSteel, "1027 to 1050", 175, 225, [85.0, 85.0, 75.0, 50.0, 200.0, 350.0]),
    steel(CarbonSteel, "1027 to 1050", 225, 275, [70.0, 70.0, 60.0, 40.0, 150.0, 300.0]),
    steel(CarbonSteel, "1027 to 1050", 275, 325, [60.0, 55.0, 50.0, 30.0, 120.0, 240.0]),
    steel(CarbonSteel, "1027 to 1050", 325, 375, [40.0, 35.0, 35.0, 20.0, 100.0, 200.0]),
    steel(CarbonSteel, "1027 to 1050", 375, 425, [30.0, 25.0, 25.0, 15.0, 80.0, 175.0]),
    steel(CarbonSteel, "1055 to 1095", 125, 175, [100.0, 90.0, 85.0, 55.0, 250.0, 375.0]),
    steel(CarbonSteel, "1055 to 1095", 175, 225, [80.0, 75.0, 70.0, 45.0, 200.0, 325.0]),
    steel(CarbonSteel, "1055 to 1095", 225, 275, [65.0, 60.0, 50.0, 30.0, 140.0, 275.0]),
    steel(CarbonSteel, "1055 to 1095", 275, 325, [50.0, 45.0, 40.0, 25.0, 110.0, 0.0]),
    steel(CarbonSteel, "1055 to 1095", 325, 375, [35.0, 30.0, 30.0, 20.0, 90.0, 0.0]),
    steel(CarbonSteel, "1055 to 1095", 375, 425, [30.0, 15.0, 15.0, 10.0, 70.0, 0.0]),
    steel(AlloySteel, "4140, 4150 resulphurised", 175, 200, [110.0, 0.0, 90.0, 60.0, 250.0, 0.0]),
    steel(AlloySteel, "4140, 4150 resulphurised", 200, 250, [90.0, 0.0, 80.0, 50.0, 225.0, 0.0]),
    steel(AlloySteel, "4140, 4150 resulphurised", 250, 300, [65.0, 0.0, 55.0, 30.0, 200.0, 0.0]),
    steel(AlloySteel, "4140, 4150 resulphurised", 300, 375, [50.0, 0.0, 40.0, 25.0, 150.0, 0.0]),
    steel(AlloySteel, "4140, 4150 resulphurised", 375, 425, [40.0, 0.0, 30.0, 15.0, 100.0, 0.0]),
    steel(AlloySteel, "leaded alloy steels", 150, 200, [0.0, 0.0, 100.0, 65.0, 285.0, 0.0]),
    steel(AlloySteel, "leaded alloy steels", 200, 250, [0.0, 0.0, 90.0, 60.0, 250.0, 0.0]),
    steel(AlloySteel, "leaded alloy steels", 250, 300, [0.0, 0.0, 65.0, 40.0, 200.0, 0.0]),
    steel(AlloySteel, "leaded alloy steels", 300, 375, [0.0, 0.0, 45.0, 30.0, 150.0, 0.0]),
    hole(ToolSteel, "water hardening, W", 150, 209, [85.0, 0.0, 200.0]),
    hole(ToolSteel, "shock resisting, S", 175, 225, [50.0, 35.0, 175.0]),
    hole(ToolSteel, "oil hardening, O", 175, 225, [45.0, 30.0, 150.0]),
    hole(ToolSteel, "high carbon, high chromium, D", 200, 250, [30.0, 20.0, 80.0]),
    hole(ToolSteel, "air hardening, A2 and alike", 210, 250, [50.0, 35.0, 150.0]),
    hole(ToolSteel, "hot work, H10 to H19", 150, 200, [60.0, 40.0, 200.0]),
    hole(ToolSteel, "hot work, H10 to H19", 200, 250, [50.0, 30.0, 150.0]),
    hole(ToolSteel, "hot work, H10 to H19", 325, 375, [30.0, 20.0, 100.0]),
    hole(ToolSteel, "hot work, H21 to H26", 150, 200, [55.0, 35.0, 150.0]),
    hole(ToolSteel, "hot work, H21 to H26", 200, 250, [40.0, 25.0, 125.0]),
    hole(ToolSteel, "hot work, H41 to H43", 150, 200, [45.0, 30.0, 150.0]),
    hole(ToolSteel, "hot work, H41 to H43", 200, 250, [35.0, 20.0, 125.0]),
    hole(ToolSteel, "special purpose, L", 150, 200, [60.0, 40.0, 200.0]),
    hole(ToolSteel, "mould, P2 to P6", 100, 150, [75.0, 50.0, 225.0]),
    hole(ToolSteel, "mould, P20 and P21", 150, 200, [60.0, 40.0, 200.0]),
    hole(ToolSteel, "high-speed steel, M1, M2, T1", 200, 250, [45.0, 30.0, 150.0]),
    hole(ToolSteel, "high-speed steel, M4, M42, T5", 225, 275, [35.0, 20.0, 100.0]),
    hole(ToolSteel, "high-speed steel, T15", 225, 275, [25.0, 15.0, 80.0]),
    hole(StainlessSteel, "430F", 135, 185, [90.0, 60.0, 250.0]),
    hole(StainlessSteel, "303", 135, 185, [85.0, 55.0, 225.0]),
    hole(StainlessSteel, "303", 225, 275, [70.0, 45.0, 200.0]),
    hole(StainlessSteel, "416", 135, 185, [90.0, 60.0, 250.0]),
    hole(StainlessSteel, "416", 185, 240, [70.0, 45.0, 200.0]),
    hole(StainlessSteel, "416", 275, 325, [40.0, 25.0, 150.0]),
    hole(StainlessSteel, "416", 375, 425, [20.0, 10.0, 80.0]),
    hole(StainlessSteel, "430 and alike", 135, 185, [65.0, 45.0, 200.0]),
    hole(StainlessSteel, "302, 304, 321", 135, 185, [55.0, 35.0, 150.0]),
    hole(StainlessSteel, "302, 304, 321", 225, 275, [50.0, 30.0, 125.0]),
    hole(StainlessSteel, "309, 310, 316", 135, 185, [50.0, 30.0, 150.0]),
    hole(StainlessSteel, "410, 420", 135, 175, [75.0, 50.0, 225.0]),
    hole(StainlessSteel, "410, 420", 175, 225, [65.0, 45.0, 200.0]),
    hole(StainlessSteel, "410, 420", 275, 325, [40.0, 25.0, 125.0]),
];

const fn hole(
    material: Material,
    detail: &'static str,
    from: u16,
    to: u16,
    [drill, ream, ream_carbide]: [f64; 3],
) -> SteelRow {
    steel(
        material,
        detail,
        from,
        to,
        [0.0, 0.0, drill, ream, ream_carbide, 0.0],
    )
}

/// The rows taken apart, one an operation.
pub fn rows() -> impl Iterator<Item = SpeedRow> {
    STEELS.iter().flat_map(|steel| {
        let part = |operation, cutter, sfm: f64, source| {
            (sfm > 0.0).then_some(SpeedRow {
                material: steel.material,
                operation,
                cutter,
                detail: steel.detail,
                hardness: Some(steel.hardness),
                low: sfm,
                high: sfm,
                unit: SpeedUnit::Sfm,
                source,
            })
        };
        let (new, old) = (SpeedSource::HandbookSteels, SpeedSource::HandbookTurning);
        [
            part(TurningRough, Hss, steel.turn, new),
            part(TurningFinish, Hss, steel.turn, new),
            part(Milling, Hss, steel.mill, new),
            part(Drilling, Hss, steel.drill, new),
            part(Reaming, Hss, steel.ream, new),
            part(Reaming, Carbide, steel.ream_carbide, new),
            part(TurningRough, Carbide, steel.turn_carbide, old),
            part(TurningFinish, Carbide, steel.turn_carbide, old),
        ]
        .into_iter()
        .flatten()
    })
}
