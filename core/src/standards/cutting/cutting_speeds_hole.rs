//! How fast may a drill, a reamer or a tap turn? Speeds for hole work as printed, one row a recommendation.
//!
//! Sources: U.S. Navy training manual 14345 (HSS twist drills, ft/min); a drill press maker's manual (HSS drills, ft/min; where the
//! two say the same only the Navy is filed); Fundamentals of Machining Processes, Table 5.4 (m/min); a training course for metal
//! workers (rpm, soft metals); reprints of a handbook's tables of
//! drilling and reaming speeds for ferrous cast metals and for light metals, edition not stated (ft/min, pairs; die castings left out); Kalpakjian and
//! Schmid, Table 23.11 (printed as rpm at 12.5 mm); a trade table of tap speeds, a tap maker's table by hardness (2018) and a chart of
//! suggested tapping speeds, publisher not stated, and a tap maker's page (ft/min). Two thirds, one half and one are all
//! in print as the ratio of reaming to drilling: no single factor fits, so the pairs are kept.

use super::cutting_speeds::CutterMaterial::{
    Carbide, CarbonSteel as Carbon, HighSpeedSteel as Hss,
};
use super::cutting_speeds::Material::*;
use super::cutting_speeds::Operation::{Drilling, Reaming, Tapping};
use super::cutting_speeds::SpeedSource::*;
use super::cutting_speeds::{KeptRow, Material, Operation, SpeedRow, SpeedSource};

/// One row of the pair tables: drilling and reaming speed of one metal, ft/min.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct PairRow {
    /// The work material that the row is filed under.
    pub material: Material,
    /// The row's own words.
    pub detail: &'static str,
    /// Brinell hardness from and to.
    pub hardness: Option<(u16, u16)>,
    /// Drilling with HSS, ft/min.
    pub drill_sfm: u16,
    /// Reaming with HSS, ft/min.
    pub ream_sfm: u16,
    /// Reaming with carbide, ft/min.
    pub ream_carbide_sfm: u16,
    /// The source.
    pub source: SpeedSource,
}

const fn iron(
    material: Material,
    detail: &'static str,
    from: u16,
    to: u16,
    drill_sfm: u16,
    ream_sfm: u16,
    ream_carbide_sfm: u16,
) -> PairRow {
    PairRow {
        material,
        detail,
        hardness: Some((from, to)),
        drill_sfm,
        ream_sfm,
        ream_carbide_sfm,
        source: HandbookCastFerrous,
    }
}

const fn light(
    material: Material,
    detail: &'static str,
    drill_sfm: u16,
    ream_sfm: u16,
    ream_carbide_sfm: u16,
) -> PairRow {
    PairRow {
        material,
        detail,
        hardness: None,
        drill_sfm,
        ream_sfm,
        ream_carbide_sfm,
        source: HandbookLightMetals,
    }
}

/// Drilling and reaming speeds as pairs, ft/min.
#[rustfmt::skip]
pub static PAIRS: &[PairRow] = &[
    iron(GrayIron, "gray iron ASTM 20", 120, 150, 100, 65, 300),
    iron(GrayIron, "gray iron ASTM 25", 160, 200, 90, 60, 225),
    iron(GrayIron, "gray iron ASTM 30/35/40", 190, 220, 80, 55, 180),
    iron(GrayIron, "gray iron ASTM 45/50", 220, 260, 60, 40, 125),
    iron(GrayIron, "gray iron ASTM 55/60", 250, 320, 30, 20, 80),
    iron(AusteniticIron, "austenitic type 1, 1b, 5", 100, 215, 50, 30, 150),
    iron(AusteniticIron, "austenitic type 2, 3, 6", 120, 175, 40, 25, 140),
    iron(AusteniticIron, "austenitic type 2b, 4", 150, 250, 30, 20, 125),
    iron(MalleableIron, "malleable ferritic 32510/35018", 110, 160, 110, 75, 325),
    iron(MalleableIron, "malleable pearlitic", 160, 200, 80, 55, 250),
    iron(MalleableIron, "malleable pearlitic", 200, 240, 70, 45, 180),
    iron(MalleableIron, "malleable martensitic 53004", 200, 225, 55, 35, 160),
    iron(MalleableIron, "malleable martensitic 70002", 220, 260, 50, 30, 150),
    iron(MalleableIron, "malleable martensitic 80002", 240, 280, 45, 30, 100),
    iron(MalleableIron, "malleable martensitic 90001", 250, 320, 25, 15, 80),
    iron(DuctileIron, "ductile ferritic 60-40-18", 140, 190, 100, 65, 300),
    iron(DuctileIron, "ductile 80-55-06", 190, 225, 70, 45, 225),
    iron(DuctileIron, "ductile 80-55-06", 225, 260, 50, 30, 140),
    iron(DuctileIron, "ductile 100-70-03", 240, 300, 40, 25, 115),
    iron(DuctileIron, "ductile 120-90-02", 270, 330, 25, 15, 65),
    iron(DuctileIron, "ductile 120-90-02", 330, 400, 10, 5, 30),
    iron(CastSteel, "cast steel low carbon", 100, 150, 100, 65, 250),
    iron(CastSteel, "cast steel medium carbon", 125, 175, 90, 60, 240),
    iron(CastSteel, "cast steel medium carbon", 175, 225, 70, 45, 220),
    iron(CastSteel, "cast steel medium carbon", 225, 300, 55, 35, 200),
    iron(CastSteel, "cast steel low-carbon alloy", 150, 200, 75, 50, 220),
    iron(CastSteel, "cast steel low-carbon alloy", 200, 250, 65, 40, 200),
    iron(CastSteel, "cast steel low-carbon alloy", 250, 300, 50, 30, 150),
    iron(CastSteel, "cast steel medium-carbon alloy", 175, 225, 70, 45, 200),
    iron(CastSteel, "cast steel medium-carbon alloy", 225, 250, 60, 35, 180),
    iron(CastSteel, "cast steel medium-carbon alloy", 250, 300, 45, 30, 150),
    iron(CastSteel, "cast steel medium-carbon alloy", 300, 350, 30, 20, 140),
    iron(CastSteel, "cast steel medium-carbon alloy", 350, 400, 20, 10, 100),
    light(Aluminium, "wrought aluminum, CD", 400, 400, 800),
    light(Aluminium, "wrought aluminum, ST and A", 350, 350, 750),
    light(CastAluminium, "aluminum sand/permanent mold casting, AC", 500, 500, 900),
    light(CastAluminium, "aluminum sand/permanent mold casting, ST and A", 350, 350, 750),
    light(Magnesium, "wrought magnesium, A, CD, ST and A", 500, 500, 1000),
    light(Magnesium, "cast magnesium, A, CD, ST and A", 450, 450, 1000),
];

const fn one(
    material: Material,
    operation: Operation,
    low: u16,
    high: u16,
    source: SpeedSource,
    detail: &'static str,
) -> KeptRow {
    KeptRow {
        material,
        operation,
        cutter: Hss,
        source,
        hardness: (0, 0),
        figures: (low, high),
        detail,
    }
}

/// Drilling and tapping speeds that stand alone.
#[rustfmt::skip]
pub static SINGLES: &[KeptRow] = &[
    one(MildSteel, Drilling, 80, 110, NavyDrills, "low carbon steel"),
    one(CarbonSteel, Drilling, 70, 80, NavyDrills, "medium carbon steel"),
    one(AlloySteel, Drilling, 50, 70, NavyDrills, "alloy steel"),
    one(StainlessSteel, Drilling, 30, 40, NavyDrills, "stainless steel"),
    one(GrayIron, Drilling, 70, 150, NavyDrills, "cast iron"),
    one(Brass, Drilling, 200, 300, NavyDrills, "brass"),
    one(Bronze, Drilling, 200, 300, NavyDrills, "bronze"),
    one(Monel, Drilling, 40, 50, NavyDrills, "nickel-copper alloy"),
    one(Aluminium, Drilling, 200, 300, NavyDrills, "aluminum"),
    one(Aluminium, Drilling, 800, 3000, Kalpakjian, "aluminum alloys"),
    one(CastAluminium, Drilling, 800, 3000, Kalpakjian, "aluminum alloys"),
    one(Magnesium, Drilling, 1100, 3000, Kalpakjian, "magnesium alloys"),
    one(MildSteel, Drilling, 500, 800, Kalpakjian, "steels"),
    one(CarbonSteel, Drilling, 500, 800, Kalpakjian, "steels"),
    one(AlloySteel, Drilling, 500, 800, Kalpakjian, "steels"),
    one(FreeMachiningSteel, Drilling, 500, 800, Kalpakjian, "steels"),
    one(StainlessSteel, Drilling, 250, 500, Kalpakjian, "stainless steels"),
    one(Titanium, Drilling, 150, 500, Kalpakjian, "titanium alloys"),
    one(GrayIron, Drilling, 500, 1500, Kalpakjian, "cast irons"),
    one(Thermoplastic, Drilling, 800, 1500, Kalpakjian, "thermoplastics"),
    one(Thermoset, Drilling, 500, 1500, Kalpakjian, "thermosets"),
    one(ToolSteel, Drilling, 50, 60, DrillPressManual, "tool steel, 1.2% C"),
    by_hardness(AlloySteel, Drilling, (300, 400), 20, 30, DrillPressManual, "alloy steel, 300 to 400 HB"),
    one(MalleableIron, Drilling, 80, 90, DrillPressManual, "malleable iron"),
    one(Nickel, Drilling, 40, 50, DrillPressManual, "high nickel steel or nickel-copper alloy"),
    one(Bronze, Drilling, 70, 150, DrillPressManual, "high tensile bronze"),
    one(Zinc, Drilling, 76, 76, FundamentalsDrilling, "zinc alloys, 80 to 100 HB"),
    by_hardness(Titanium, Drilling, (110, 200), 30, 30, FundamentalsDrilling, "titanium, pure"),
    // the page says 22 m/min in words and prints rpm that come to 53 to 70 m/min at 10 to 16 mm
    one(Copper, Drilling, 22, 70, TrainingCourse, "copper: 22 m/min in its words, to 70 by its rpm"),
    one(Aluminium, Tapping, 50, 150, TapTrade, "aluminum"),
    one(Brass, Tapping, 50, 200, TapTrade, "brass"),
    one(Bronze, Tapping, 50, 100, TapTrade, "bronze"),
    one(GrayIron, Tapping, 50, 100, TapTrade, "cast iron"),
    one(Copper, Tapping, 30, 60, TapTrade, "copper"),
    one(Monel, Tapping, 20, 40, TapTrade, "nickel-copper alloy"),
    one(StainlessSteel, Tapping, 5, 35, TapTrade, "stainless steel"),
    one(Titanium, Tapping, 10, 40, TapTrade, "titanium alloys"),
    one(Zinc, Tapping, 60, 150, TapTrade, "zinc die casting"),
    one(Magnesium, Tapping, 75, 200, TapTrade, "magnesium"),
];

const fn by_hardness(
    material: Material,
    operation: Operation,
    hardness: (u16, u16),
    low: u16,
    high: u16,
    source: SpeedSource,
    detail: &'static str,
) -> KeptRow {
    KeptRow {
        hardness,
        ..one(material, operation, low, high, source, detail)
    }
}

const fn tap(
    material: Material,
    hardness: (u16, u16),
    low: u16,
    high: u16,
    source: SpeedSource,
    detail: &'static str,
) -> KeptRow {
    by_hardness(material, Tapping, hardness, low, high, source, detail)
}

/// No hardness given.
const NONE: (u16, u16) = (0, 0);

/// Tapping speeds of a second and a third table, ft/min, HSS taps.
#[rustfmt::skip]
pub static TAPS: &[KeptRow] = &[
    tap(FreeMachiningSteel, NONE, 40, 80, TapTrade, "steel, free machining"),
    tap(MalleableIron, NONE, 35, 60, TapTrade, "malleable iron"),
    tap(Thermoplastic, NONE, 50, 100, TapTrade, "thermoplastic"),
    tap(Thermoset, NONE, 50, 100, TapTrade, "thermosetting"),
    tap(MildSteel, (50, 200), 50, 60, TapMaker, "structural steel, under 200 HB"),
    tap(CarbonSteel, (50, 250), 50, 60, TapMaker, "plain carbon steel, under 250 HB"),
    tap(CarbonSteel, NONE, 35, 35, TapChart, "medium carbon steel"),
    tap(CarbonSteel, NONE, 10, 10, TapChart, "high carbon steel"),
    tap(AlloySteel, (50, 250), 32, 50, TapMaker, "alloy steel, under 250 HB"),
    tap(AlloySteel, (250, 350), 22, 32, TapMaker, "alloy steel, hardened and tempered"),
    tap(CastSteel, NONE, 25, 25, TapChart, "cast steel"),
    tap(StainlessSteel, (50, 250), 16, 22, TapMaker, "austenitic stainless steel"),
    tap(GrayIron, (50, 150), 50, 80, TapMaker, "cast iron, lamellar graphite, under 150 HB"),
    tap(GrayIron, (150, 300), 30, 40, TapMaker, "cast iron, lamellar graphite, 150 to 300 HB"),
    tap(DuctileIron, (50, 200), 30, 40, TapMaker, "cast iron, nodular graphite, under 200 HB"),
    tap(DuctileIron, (200, 300), 20, 30, TapMaker, "cast iron, nodular graphite, 200 to 300 HB"),
    tap(Copper, (30, 100), 22, 40, TapMaker, "copper, unalloyed"),
    tap(Brass, (30, 200), 50, 65, TapMaker, "brass"),
    tap(Titanium, (50, 270), 22, 40, TapMaker, "titanium, alloyed, under 270 HB"),
    tap(Titanium, (270, 350), 16, 22, TapMaker, "titanium, alloyed, 270 to 350 HB"),
    tap(CastAluminium, NONE, 32, 150, TapMaker, "aluminum with silicon, all three rows"),
    tap(Thermoset, NONE, 22, 40, TapMaker, "thermosetting"),
    tap(Thermoplastic, NONE, 60, 105, TapMaker, "thermoplastic"),
    tap(AlloySteel, (350, 450), 10, 16, TapMaker, "alloy steel, over 350 HB"),
    tap(StainlessSteel, (50, 250), 22, 32, TapMaker, "free-machining stainless steel"),
    tap(StainlessSteel, (50, 300), 10, 16, TapMaker, "ferritic-austenitic stainless steel"),
    tap(Titanium, (50, 200), 32, 50, TapMaker, "titanium, unalloyed"),
    tap(Nickel, (50, 150), 22, 40, TapMaker, "nickel, unalloyed"),
    tap(Nickel, (270, 350), 10, 16, TapMaker, "nickel, alloyed, 270 to 350 HB"),
    tap(Bronze, (200, 470), 10, 16, TapMaker, "bronze, high strength"),
    tap(MildSteel, NONE, 30, 50, TapPage, "mild steel"),
    tap(CarbonSteel, NONE, 20, 40, TapPage, "carbon steel"),
    tap(StainlessSteel, NONE, 10, 20, TapPage, "stainless steel"),
    tap(GrayIron, NONE, 30, 60, TapPage, "gray cast iron"),
    tap(ToolSteel, NONE, 15, 25, TapPage, "tool steels"),
    tap(Bronze, NONE, 30, 40, TapPage, "bronze"),
    tap(Magnesium, NONE, 50, 70, TapPage, "magnesium alloy"),
];

/// Carbon-steel drills run at this share of the HSS speed (U.S. Navy training manual 14345, section on drilling).
pub const CARBON_DRILL_FACTOR: f64 = 0.5;
/// Carbide drills run at this many times the HSS speed, from and to (U.S. Navy training manual 14345).
pub const CARBIDE_DRILL_FACTOR: (f64, f64) = (2.0, 3.0);

/// Shows the rows for hole work that are figured from others: the pairs taken apart, and the Navy's factors over its own rows.
pub(super) fn each(see: &mut dyn FnMut(SpeedRow)) {
    for pair in PAIRS {
        for (operation, cutter, figure) in [
            (Drilling, Hss, pair.drill_sfm),
            (Reaming, Hss, pair.ream_sfm),
            (Reaming, Carbide, pair.ream_carbide_sfm),
        ] {
            see(SpeedRow {
                cutter,
                hardness: pair.hardness,
                ..one(
                    pair.material,
                    operation,
                    figure,
                    figure,
                    pair.source,
                    pair.detail,
                )
                .row()
            });
        }
    }
    for kept in SINGLES.iter().filter(|row| row.source == NavyDrills) {
        let row = kept.row();
        for (cutter, low, high) in [
            (Carbon, CARBON_DRILL_FACTOR, CARBON_DRILL_FACTOR),
            (Carbide, CARBIDE_DRILL_FACTOR.0, CARBIDE_DRILL_FACTOR.1),
        ] {
            see(SpeedRow {
                cutter,
                low: row.low * low,
                high: row.high * high,
                source: NavyDrillFactor,
                ..row
            });
        }
    }
}
