//! How fast may work turn against a lathe tool? Lathe speeds, one row a recommendation, ft/min unless a row's source is metric.
//!
//! Sources: Krar et al., Technology of Machine Tools, HSS tool bits (from memory; the book's metric column is rounded, up to 1.7
//! m/min off). Read: a lathe maker's operator's manual, Table 7.1, HSS, roughing and finishing; Lineham, A Text Book of Mechanical
//! Engineering, appendix V, p. 975 (HSS in a powerful lathe, deep cuts); TM 43-0106, Table 2-8 (stainless, HSS and carbide);
//! Machinery's Handbook, machining nickel and nickel-copper alloys (a guide to it, p. 180); a small lathe maker's leaflet (rpm on 1 in); a bench lathe maker's
//! manual (HSS; the metals that the others lack or give faster); a plastics
//! supplier's turning guide (carbide, ft/min); Carvill, Mechanical Engineer's Data Handbook, section 5.2.7, p. 176 (plastics with HSS, m/min); a threading tool maker's chart
//! (small uncoated tools, ft/min); Scientific American recipes (carbon steel roughing tool, by diameter).

use super::cutting_speeds::CutterMaterial::{
    Carbide, CarbonSteel as CarbonSteelTool, HighSpeedSteel,
};
use super::cutting_speeds::Material::*;
use super::cutting_speeds::Operation::{self, Threading, TurningFinish, TurningRough};
use super::cutting_speeds::SpeedSource::{self, *};
use super::cutting_speeds::{CutterMaterial, KeptRow, Material, SpeedRow};

const fn row(material: Material, operation: Operation, sfm: u16, detail: &'static str) -> KeptRow {
    read(
        material,
        operation,
        HighSpeedSteel,
        (sfm, sfm),
        KrarLathe,
        detail,
    )
}

const fn read(
    material: Material,
    operation: Operation,
    cutter: CutterMaterial,
    figures: (u16, u16),
    source: SpeedSource,
    detail: &'static str,
) -> KeptRow {
    KeptRow {
        material,
        operation,
        cutter,
        source,
        hardness: (0, 0),
        figures,
        detail,
    }
}

const fn harder(row: KeptRow, hardness: (u16, u16)) -> KeptRow {
    KeptRow { hardness, ..row }
}

/// Turning and threading speeds, from memory.
#[rustfmt::skip]
pub static ROWS: &[KeptRow] = &[
    row(MildSteel, TurningRough, 90, "machine steel"),
    row(MildSteel, TurningFinish, 100, "machine steel"),
    row(MildSteel, Threading, 35, "machine steel"),
    row(ToolSteel, TurningRough, 70, "tool steel"),
    row(ToolSteel, TurningFinish, 90, "tool steel"),
    row(ToolSteel, Threading, 30, "tool steel"),
    row(Bronze, TurningRough, 90, "bronze"),
    row(Bronze, TurningFinish, 100, "bronze"),
    row(Bronze, Threading, 25, "bronze"),
    row(Aluminium, TurningRough, 200, "aluminum"),
    row(Aluminium, TurningFinish, 300, "aluminum"),
    row(Aluminium, Threading, 60, "aluminum"),
];

/// Rows whose source gives roughing and finishing apart: low and high of each.
#[rustfmt::skip]
static PAIRED: &[(KeptRow, u16, u16)] = &[
    (read(MildSteel, TurningRough, HighSpeedSteel, (90, 90), LatheManual, "low-carbon steel"), 120, 120),
    (read(CarbonSteel, TurningRough, HighSpeedSteel, (50, 50), LatheManual, "high-carbon steel, annealed"), 65, 65),
    (read(AlloySteel, TurningRough, HighSpeedSteel, (45, 45), LatheManual, "alloy steel, normalized"), 60, 60),
    (read(Aluminium, TurningRough, HighSpeedSteel, (200, 200), LatheManual, "aluminum alloys"), 300, 300),
    (read(CastAluminium, TurningRough, HighSpeedSteel, (200, 200), LatheManual, "aluminum alloys"), 300, 300),
    (read(GrayIron, TurningRough, HighSpeedSteel, (70, 70), LatheManual, "cast iron"), 80, 80),
    (read(Bronze, TurningRough, HighSpeedSteel, (100, 100), LatheManual, "bronze"), 130, 130),
    (read(ToolSteel, TurningRough, HighSpeedSteel, (50, 50), BenchLathe, "tool steel"), 50, 50),
    (read(CastSteel, TurningRough, HighSpeedSteel, (80, 80), BenchLathe, "cast steel"), 80, 80),
    (read(Copper, TurningRough, HighSpeedSteel, (100, 100), BenchLathe, "copper"), 100, 100),
    (read(Titanium, TurningRough, HighSpeedSteel, (50, 50), BenchLathe, "titanium"), 50, 50),
    (read(Brass, TurningRough, HighSpeedSteel, (150, 150), BenchLathe, "brass and bronze"), 150, 150),
    (read(Brass, TurningRough, HighSpeedSteel, (196, 196), SmallLathe, "brass, 750 rpm on 1 in"), 196, 196),
    (read(StainlessSteel, TurningRough, HighSpeedSteel, (20, 40), ArmyStainless, "302 to 316"), 50, 80),
    (read(StainlessSteel, TurningRough, HighSpeedSteel, (20, 40), ArmyStainless, "420, 440, 321, 347"), 55, 90),
    (read(StainlessSteel, TurningRough, HighSpeedSteel, (30, 60), ArmyStainless, "430F, 416"), 75, 120),
    (read(StainlessSteel, TurningRough, HighSpeedSteel, (25, 55), ArmyStainless, "420F, 303"), 65, 105),
    (read(StainlessSteel, TurningRough, Carbide, (150, 200), ArmyStainless, "302 to 316"), 150, 300),
    (read(StainlessSteel, TurningRough, Carbide, (165, 220), ArmyStainless, "420, 440, 321, 347"), 165, 330),
    (read(StainlessSteel, TurningRough, Carbide, (225, 300), ArmyStainless, "430F, 416"), 225, 450),
    (read(StainlessSteel, TurningRough, Carbide, (175, 240), ArmyStainless, "420F, 303"), 195, 350),
    (read(Monel, TurningRough, HighSpeedSteel, (70, 100), HandbookNickel, "nickel-copper alloy"), 70, 100),
    (read(Monel, TurningRough, Carbide, (200, 300), HandbookNickel, "nickel-copper alloy"), 200, 300),
    // the harder alloys of the same page: to 300 HB, and harder, whose upper end is not printed
    (read(Monel, TurningRough, HighSpeedSteel, (40, 70), HandbookNickel, "nickel-copper alloy, age-hardened, to 300 HB"), 40, 70),
    (harder(read(Monel, TurningRough, HighSpeedSteel, (10, 20), HandbookNickel, "nickel-copper alloy, over 300 HB"), (301, 450)), 10, 20),
    (read(Nickel, TurningRough, HighSpeedSteel, (70, 100), HandbookNickel, "softer nickel alloys"), 70, 100),
    (read(Nickel, TurningRough, Carbide, (200, 300), HandbookNickel, "softer nickel alloys"), 200, 300),
    (read(Thermoplastic, TurningRough, Carbide, (490, 1960), PlasticsGuide, "ABS to PVDF"), 490, 1960),
    (read(Thermoplastic, TurningRough, Carbide, (320, 390), PlasticsGuide, "PAI"), 320, 390),
    (read(Thermoplastic, TurningRough, HighSpeedSteel, (50, 50), CarvillPlastics, "nylon, polyethylene"), 50, 50),
    (read(Thermoplastic, TurningRough, HighSpeedSteel, (18, 18), CarvillPlastics, "polystyrene"), 18, 18),
    (read(Thermoset, TurningRough, HighSpeedSteel, (48, 50), CarvillPlastics, "thermosetting plastics"), 48, 50),
];

/// Rows that stand alone.
#[rustfmt::skip]
static SINGLES: &[KeptRow] = &[
    read(GrayIron, TurningRough, HighSpeedSteel, (60, 60), Lineham, "cast iron with its skin on"),
    read(WroughtIron, TurningRough, HighSpeedSteel, (80, 80), Lineham, "wrought iron"),
    read(WroughtIron, TurningRough, CarbonSteelTool, (15, 35), OldRecipes, "wrought iron, 20 in and more to 1 in and less"),
    read(GrayIron, Threading, Carbide, (75, 200), ThreadingChart, "cast iron, 160 HB"),
    read(MildSteel, Threading, Carbide, (75, 200), ThreadingChart, "carbon steel"),
    read(CarbonSteel, Threading, Carbide, (75, 200), ThreadingChart, "carbon steel"),
    read(AlloySteel, Threading, Carbide, (75, 200), ThreadingChart, "alloy steel"),
    read(ToolSteel, Threading, Carbide, (75, 175), ThreadingChart, "tool steel"),
    read(StainlessSteel, Threading, Carbide, (75, 175), ThreadingChart, "300 stainless, 150 HB"),
    read(StainlessSteel, Threading, Carbide, (75, 210), ThreadingChart, "400 stainless, 195 HB"),
    read(Titanium, Threading, Carbide, (50, 100), ThreadingChart, "titanium"),
    read(Aluminium, Threading, Carbide, (75, 250), ThreadingChart, "aluminum"),
    read(Brass, Threading, Carbide, (75, 300), ThreadingChart, "brass, zinc"),
    read(Zinc, Threading, Carbide, (75, 300), ThreadingChart, "brass, zinc"),
];

/// Shows the rows that were read, the pairs taken apart.
pub(super) fn each(see: &mut dyn FnMut(SpeedRow)) {
    for kept in SINGLES {
        see(kept.row());
    }
    for (rough, low, high) in PAIRED {
        see(rough.row());
        let finish = KeptRow {
            operation: TurningFinish,
            figures: (*low, *high),
            ..*rough
        };
        see(finish.row());
    }
}
