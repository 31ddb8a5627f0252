//! How fast may an edge pass through steel? One table for turning, milling, drilling and reaming, by hardness, ft/min.
//!
//! Source: reprints of a handbook's table, edition not stated: recommended cutting speeds for plain carbon and alloy steels, tool
//! steels and stainless steels (HSS tools; reaming with carbide too). Drilling and reaming were read in two reprints, turning and milling in
//! one; the carbide column of turning is that of an earlier edition, in its own reprint. A zero was not read. The reaming speed of
//! water hardening tool steel (35 beside 85 for drilling) looks like a misprint and is left out; two ends of hardness, 209 (W) and 210
//! (A2), may be misprints too (neighbors run 150 to 200 and 200 to 250): kept as the reprint has them, an open question.

use super::cutting_speeds::CutterMaterial::{Carbide, HighSpeedSteel as Hss};
use super::cutting_speeds::Material::{self, *};
use super::cutting_speeds::Operation::{Drilling, Milling, Reaming, TurningFinish, TurningRough};
use super::cutting_speeds::{KeptRow, SpeedRow, SpeedSource};

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
    pub turn: u16,
    /// Milling with HSS.
    pub mill: u16,
    /// Drilling with HSS.
    pub drill: u16,
    /// Reaming with HSS.
    pub ream: u16,
    /// Reaming with carbide.
    pub ream_carbide: u16,
    /// Turning with carbide, earlier edition.
    pub turn_carbide: u16,
}

const fn steel(
    material: Material,
    detail: &'static str,
    from: u16,
    to: u16,
    speeds: [u16; 6],
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
pub static STEELS: &[SteelRow] = &[
    steel(FreeMachiningSteel, "1212 to 1215, hot rolled", 100, 150, [150, 140, 120, 80, 400, 0]),
    steel(FreeMachiningSteel, "1212 to 1215, cold drawn", 150, 200, [160, 130, 125, 80, 350, 0]),
    steel(FreeMachiningSteel, "1108 to 1126, hot rolled", 100, 150, [130, 130, 110, 75, 375, 450]),
    steel(FreeMachiningSteel, "1108 to 1126, cold drawn", 150, 200, [120, 115, 120, 80, 350, 500]),
    steel(FreeMachiningSteel, "1132 to 1151", 175, 225, [120, 115, 100, 65, 350, 500]),
    steel(FreeMachiningSteel, "1132 to 1151", 275, 325, [75, 70, 70, 45, 250, 250]),
    steel(FreeMachiningSteel, "1132 to 1151", 325, 375, [50, 45, 45, 30, 175, 175]),
    steel(FreeMachiningSteel, "1132 to 1151", 375, 425, [40, 35, 35, 20, 100, 140]),
    steel(FreeMachiningSteel, "leaded, 12L14", 100, 150, [140, 140, 130, 85, 400, 0]),
    steel(FreeMachiningSteel, "leaded, 12L14", 150, 200, [145, 130, 120, 80, 375, 0]),
    steel(FreeMachiningSteel, "leaded, 12L14", 200, 250, [110, 110, 90, 60, 275, 0]),
    steel(MildSteel, "1006 to 1026", 100, 125, [120, 110, 100, 65, 300, 500]),
    steel(MildSteel, "1006 to 1026", 125, 175, [110, 110, 90, 60, 275, 400]),
    steel(MildSteel, "1006 to 1026", 175, 225, [90, 90, 70, 45, 200, 350]),
    steel(MildSteel, "1006 to 1026", 225, 275, [70, 65, 60, 40, 175, 300]),
    steel(CarbonSteel, "1027 to 1050", 125, 175, [100, 100, 90, 60, 250, 400]),
    steel(CarbonSteel, "1027 to 1050", 175, 225, [85, 85, 75, 50, 200, 350]),
    steel(CarbonSteel, "1027 to 1050", 225, 275, [70, 70, 60, 40, 150, 300]),
    steel(CarbonSteel, "1027 to 1050", 275, 325, [60, 55, 50, 30, 120, 240]),
    steel(CarbonSteel, "1027 to 1050", 325, 375, [40, 35, 35, 20, 100, 200]),
    steel(CarbonSteel, "1027 to 1050", 375, 425, [30, 25, 25, 15, 80, 175]),
    steel(CarbonSteel, "1055 to 1095", 125, 175, [100, 90, 85, 55, 250, 375]),
    steel(CarbonSteel, "1055 to 1095", 175, 225, [80, 75, 70, 45, 200, 325]),
    steel(CarbonSteel, "1055 to 1095", 225, 275, [65, 60, 50, 30, 140, 275]),
    steel(CarbonSteel, "1055 to 1095", 275, 325, [50, 45, 40, 25, 110, 0]),
    steel(CarbonSteel, "1055 to 1095", 325, 375, [35, 30, 30, 20, 90, 0]),
    steel(CarbonSteel, "1055 to 1095", 375, 425, [30, 15, 15, 10, 70, 0]),
    steel(AlloySteel, "4140, 4150 resulfurized", 175, 200, [110, 0, 90, 60, 250, 0]),
    steel(AlloySteel, "4140, 4150 resulfurized", 200, 250, [90, 0, 80, 50, 225, 0]),
    steel(AlloySteel, "4140, 4150 resulfurized", 250, 300, [65, 0, 55, 30, 200, 0]),
    steel(AlloySteel, "4140, 4150 resulfurized", 300, 375, [50, 0, 40, 25, 150, 0]),
    steel(AlloySteel, "4140, 4150 resulfurized", 375, 425, [40, 0, 30, 15, 100, 0]),
    steel(AlloySteel, "leaded alloy steels", 150, 200, [0, 0, 100, 65, 285, 0]),
    steel(AlloySteel, "leaded alloy steels", 200, 250, [0, 0, 90, 60, 250, 0]),
    steel(AlloySteel, "leaded alloy steels", 250, 300, [0, 0, 65, 40, 200, 0]),
    steel(AlloySteel, "leaded alloy steels", 300, 375, [0, 0, 45, 30, 150, 0]),
    hole(ToolSteel, "water hardening, W", 150, 209, [85, 0, 200]),
    hole(ToolSteel, "shock resisting, S", 175, 225, [50, 35, 175]),
    hole(ToolSteel, "oil hardening, O", 175, 225, [45, 30, 150]),
    hole(ToolSteel, "high carbon, high chromium, D", 200, 250, [30, 20, 80]),
    hole(ToolSteel, "air hardening, A2 and similar", 210, 250, [50, 35, 150]),
    hole(ToolSteel, "hot work, H10 to H19", 150, 200, [60, 40, 200]),
    hole(ToolSteel, "hot work, H10 to H19", 200, 250, [50, 30, 150]),
    hole(ToolSteel, "hot work, H10 to H19", 325, 375, [30, 20, 100]),
    hole(ToolSteel, "hot work, H21 to H26", 150, 200, [55, 35, 150]),
    hole(ToolSteel, "hot work, H21 to H26", 200, 250, [40, 25, 125]),
    hole(ToolSteel, "hot work, H41 to H43", 150, 200, [45, 30, 150]),
    hole(ToolSteel, "hot work, H41 to H43", 200, 250, [35, 20, 125]),
    hole(ToolSteel, "special purpose, L", 150, 200, [60, 40, 200]),
    hole(ToolSteel, "mold, P2 to P6", 100, 150, [75, 50, 225]),
    hole(ToolSteel, "mold, P20 and P21", 150, 200, [60, 40, 200]),
    hole(ToolSteel, "high-speed steel, M1, M2, T1", 200, 250, [45, 30, 150]),
    hole(ToolSteel, "high-speed steel, M4, M42, T5", 225, 275, [35, 20, 100]),
    hole(ToolSteel, "high-speed steel, T15", 225, 275, [25, 15, 80]),
    hole(StainlessSteel, "430F", 135, 185, [90, 60, 250]),
    hole(StainlessSteel, "303", 135, 185, [85, 55, 225]),
    hole(StainlessSteel, "303", 225, 275, [70, 45, 200]),
    hole(StainlessSteel, "416", 135, 185, [90, 60, 250]),
    hole(StainlessSteel, "416", 185, 240, [70, 45, 200]),
    hole(StainlessSteel, "416", 275, 325, [40, 25, 150]),
    hole(StainlessSteel, "416", 375, 425, [20, 10, 80]),
    hole(StainlessSteel, "430 and similar", 135, 185, [65, 45, 200]),
    hole(StainlessSteel, "302, 304, 321", 135, 185, [55, 35, 150]),
    hole(StainlessSteel, "302, 304, 321", 225, 275, [50, 30, 125]),
    hole(StainlessSteel, "309, 310, 316", 135, 185, [50, 30, 150]),
    hole(StainlessSteel, "410, 420", 135, 175, [75, 50, 225]),
    hole(StainlessSteel, "410, 420", 175, 225, [65, 45, 200]),
    hole(StainlessSteel, "410, 420", 275, 325, [40, 25, 125]),
];

const fn hole(
    material: Material,
    detail: &'static str,
    from: u16,
    to: u16,
    [drill, ream, ream_carbide]: [u16; 3],
) -> SteelRow {
    steel(
        material,
        detail,
        from,
        to,
        [0, 0, drill, ream, ream_carbide, 0],
    )
}

/// Shows the rows taken apart, one an operation.
pub(super) fn each(see: &mut dyn FnMut(SpeedRow)) {
    use SpeedSource::{HandbookSteels, HandbookTurning};
    for steel in STEELS {
        for (operation, cutter, sfm, source) in [
            (TurningRough, Hss, steel.turn, HandbookSteels),
            (TurningFinish, Hss, steel.turn, HandbookSteels),
            (Milling, Hss, steel.mill, HandbookSteels),
            (Drilling, Hss, steel.drill, HandbookSteels),
            (Reaming, Hss, steel.ream, HandbookSteels),
            (Reaming, Carbide, steel.ream_carbide, HandbookSteels),
            (TurningRough, Carbide, steel.turn_carbide, HandbookTurning),
            (TurningFinish, Carbide, steel.turn_carbide, HandbookTurning),
        ] {
            if sfm > 0 {
                let kept = KeptRow {
                    material: steel.material,
                    operation,
                    cutter,
                    source,
                    hardness: steel.hardness,
                    figures: (sfm, sfm),
                    detail: steel.detail,
                };
                see(kept.row());
            }
        }
    }
}
