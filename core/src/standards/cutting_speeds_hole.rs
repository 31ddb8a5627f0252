//! How fast may a drill, a reamer or a tap turn? Speeds for hole work as printed, one row a recommendation.
//!
//! Sources: U.S. Navy training manual 14345 (HSS twist drills, ft/min); a drill press maker's manual (HSS drills, ft/min; where the
//! two say the same only the Navy is filed); Fundamentals of Machining Processes, Table 5.4 (m/min); a training course for metal
//! workers (rpm, soft metals); Machinery's Handbook, older editions, tables of drilling
//! and reaming speeds for ferrous cast metals and for light metals (ft/min, pairs; die castings left out); Kalpakjian and
//! Schmid, Table 23.11 (printed as rpm at 12.5 mm); a trade table of tap speeds, a tap maker's table by hardness (2018) and a chart of
//! suggested tapping speeds, publisher not stated, and a tap maker's page (ft/min). Two thirds, one half and one are all
//! in print as the ratio of reaming to drilling: no single factor fits, so the pairs are kept.

use super::cutting_speeds::CutterMaterial::{
    Carbide, CarbonSteel as Carbon, HighSpeedSteel as Hss,
};
use super::cutting_speeds::Material::*;
use super::cutting_speeds::Operation::{Drilling, Reaming, Tapping};
use super::cutting_speeds::SpeedSource::*;
use super::cutting_speeds::{
    CutterMaterial, Material, Operation, SpeedRow, SpeedSource, SpeedUnit,
};

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
    pub drill_sfm: f64,
    /// Reaming with HSS, ft/min.
    pub ream_sfm: f64,
    /// Reaming with carbide, ft/min.
    pub ream_carbide_sfm: f64,
    /// The source.
    pub source: SpeedSource,
}

const fn iron(
    material: Material,
    detail: &'static str,
    from: u16,
    to: u16,
    drill_sfm: f64,
    ream_sfm: f64,
    ream_carbide_sfm: f64,
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
    drill_sfm: f64,
    ream_sfm: f64,
    ream_carbide_sfm: f64,
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
pub const PAIRS: &[PairRow] = &[
    iron(GrayIron, "grey iron ASTM 20", 120, 150, 100.0, 65.0, 300.0),
    iron(GrayIron, "grey iron ASTM 25", 160, 200, 90.0, 60.0, 225.0),
    iron(GrayIron, "grey iron ASTM 30/35/40", 190, 220, 80.0, 55.0, 180.0),
    iron(GrayIron, "grey iron ASTM 45/50", 220, 260, 60.0, 40.0, 125.0),
    iron(GrayIron, "grey iron ASTM 55/60", 250, 320, 30.0, 20.0, 80.0),
    iron(AusteniticIron, "austenitic type 1, 1b, 5", 100, 215, 50.0, 30.0, 150.0),
    iron(AusteniticIron, "austenitic type 2, 3, 6", 120, 175, 40.0, 25.0, 140.0),
    iron(AusteniticIron, "austenitic type 2b, 4", 150, 250, 30.0, 20.0, 125.0),
    iron(MalleableIron, "malleable ferritic 32510/35018", 110, 160, 110.0, 75.0, 325.0),
    iron(MalleableIron, "malleable pearlitic", 160, 200, 80.0, 55.0, 250.0),
    iron(MalleableIron, "malleable pearlitic", 200, 240, 70.0, 45.0, 180.0),
    iron(MalleableIron, "malleable martensitic 53004", 200, 225, 55.0, 35.0, 160.0),
    iron(MalleableIron, "malleable martensitic 70002", 220, 260, 50.0, 30.0, 150.0),
    iron(MalleableIron, "malleable martensitic 80002", 240, 280, 45.0, 30.0, 100.0),
    iron(MalleableIron, "malleable martensitic 90001", 250, 320, 25.0, 15.0, 80.0),
    iron(DuctileIron, "ductile ferritic 60-40-18", 140, 190, 100.0, 65.0, 300.0),
    iron(DuctileIron, "ductile 80-55-06", 190, 225, 70.0, 45.0, 225.0),
    iron(DuctileIron, "ductile 80-55-06", 225, 260, 50.0, 30.0, 140.0),
    iron(DuctileIron, "ductile 100-70-03", 240, 300, 40.0, 25.0, 115.0),
    iron(DuctileIron, "ductile 120-90-02", 270, 330, 25.0, 15.0, 65.0),
    iron(DuctileIron, "ductile 120-90-02", 330, 400, 10.0, 5.0, 30.0),
    iron(CastSteel, "cast steel low carbon", 100, 150, 100.0, 65.0, 250.0),
    iron(CastSteel, "cast steel medium carbon", 125, 175, 90.0, 60.0, 240.0),
    iron(CastSteel, "cast steel medium carbon", 175, 225, 70.0, 45.0, 220.0),
    iron(CastSteel, "cast steel medium carbon", 225, 300, 55.0, 35.0, 200.0),
    iron(CastSteel, "cast steel low-carbon alloy", 150, 200, 75.0, 50.0, 220.0),
    iron(CastSteel, "cast steel low-carbon alloy", 200, 250, 65.0, 40.0, 200.0),
    iron(CastSteel, "cast steel low-carbon alloy", 250, 300, 50.0, 30.0, 150.0),
    iron(CastSteel, "cast steel medium-carbon alloy", 175, 225, 70.0, 45.0, 200.0),
    iron(CastSteel, "cast steel medium-carbon alloy", 225, 250, 60.0, 35.0, 180.0),
    iron(CastSteel, "cast steel medium-carbon alloy", 250, 300, 45.0, 30.0, 150.0),
    iron(CastSteel, "cast steel medium-carbon alloy", 300, 350, 30.0, 20.0, 140.0),
    iron(CastSteel, "cast steel medium-carbon alloy", 350, 400, 20.0, 10.0, 100.0),
    light(Aluminium, "wrought aluminium, CD", 400.0, 400.0, 800.0),
    light(Aluminium, "wrought aluminium, ST and A", 350.0, 350.0, 750.0),
    light(CastAluminium, "aluminium sand/permanent mould casting, AC", 500.0, 500.0, 900.0),
    light(CastAluminium, "aluminium sand/permanent mould casting, ST and A", 350.0, 350.0, 750.0),
    light(Magnesium, "wrought magnesium, A, CD, ST and A", 500.0, 500.0, 1000.0),
    light(Magnesium, "cast magnesium, A, CD, ST and A", 450.0, 450.0, 1000.0),
];

const fn one(
    material: Material,
    operation: Operation,
    low: f64,
    high: f64,
    source: SpeedSource,
    detail: &'static str,
) -> SpeedRow {
    let unit = match source {
        Kalpakjian => SpeedUnit::RpmAt12Point5Mm,
        FundamentalsDrilling | TrainingCourse => SpeedUnit::MetresPerMinute,
        _ => SpeedUnit::Sfm,
    };
    SpeedRow {
        material,
        operation,
        cutter: Hss,
        detail,
        hardness: None,
        low,
        high,
        unit,
        source,
    }
}

/// Drilling and tapping speeds that stand alone.
#[rustfmt::skip]
pub const SINGLES: &[SpeedRow] = &[
    one(MildSteel, Drilling, 80.0, 110.0, NavyDrills, "low carbon steel"),
    one(CarbonSteel, Drilling, 70.0, 80.0, NavyDrills, "medium carbon steel"),
    one(AlloySteel, Drilling, 50.0, 70.0, NavyDrills, "alloy steel"),
    one(StainlessSteel, Drilling, 30.0, 40.0, NavyDrills, "stainless steel"),
    one(GrayIron, Drilling, 70.0, 150.0, NavyDrills, "cast iron"),
    one(Brass, Drilling, 200.0, 300.0, NavyDrills, "brass"),
    one(Bronze, Drilling, 200.0, 300.0, NavyDrills, "bronze"),
    one(Monel, Drilling, 40.0, 50.0, NavyDrills, "monel"),
    one(Aluminium, Drilling, 200.0, 300.0, NavyDrills, "aluminium"),
    one(Aluminium, Drilling, 800.0, 3000.0, Kalpakjian, "aluminium alloys"),
    one(CastAluminium, Drilling, 800.0, 3000.0, Kalpakjian, "aluminium alloys"),
    one(Magnesium, Drilling, 1100.0, 3000.0, Kalpakjian, "magnesium alloys"),
    one(MildSteel, Drilling, 500.0, 800.0, Kalpakjian, "steels"),
    one(CarbonSteel, Drilling, 500.0, 800.0, Kalpakjian, "steels"),
    one(AlloySteel, Drilling, 500.0, 800.0, Kalpakjian, "steels"),
    one(FreeMachiningSteel, Drilling, 500.0, 800.0, Kalpakjian, "steels"),
    one(StainlessSteel, Drilling, 250.0, 500.0, Kalpakjian, "stainless steels"),
    one(Titanium, Drilling, 150.0, 500.0, Kalpakjian, "titanium alloys"),
    one(GrayIron, Drilling, 500.0, 1500.0, Kalpakjian, "cast irons"),
    one(Thermoplastic, Drilling, 800.0, 1500.0, Kalpakjian, "thermoplastics"),
    one(Thermoset, Drilling, 500.0, 1500.0, Kalpakjian, "thermosets"),
    one(ToolSteel, Drilling, 50.0, 60.0, DrillPressManual, "tool steel, 1.2 % C"),
    by_hardness(AlloySteel, Drilling, (300, 400), 20.0, 30.0, DrillPressManual, "alloy steel, 300 to 400 HB"),
    one(MalleableIron, Drilling, 80.0, 90.0, DrillPressManual, "malleable iron"),
    one(Nickel, Drilling, 40.0, 50.0, DrillPressManual, "high nickel steel or monel"),
    one(Bronze, Drilling, 70.0, 150.0, DrillPressManual, "high tensile bronze"),
    one(Zinc, Drilling, 76.0, 76.0, FundamentalsDrilling, "zinc alloys, 80 to 100 HB"),
    by_hardness(Titanium, Drilling, (110, 200), 30.0, 30.0, FundamentalsDrilling, "titanium, pure"),
    one(Copper, Drilling, 53.0, 70.0, TrainingCourse, "aluminium and copper, 10 to 16 mm"),
    one(Aluminium, Tapping, 50.0, 150.0, TapTrade, "aluminium"),
    one(Brass, Tapping, 50.0, 200.0, TapTrade, "brass"),
    one(Bronze, Tapping, 50.0, 100.0, TapTrade, "bronze"),
    one(GrayIron, Tapping, 50.0, 100.0, TapTrade, "cast iron"),
    one(Copper, Tapping, 30.0, 60.0, TapTrade, "copper"),
    one(Monel, Tapping, 20.0, 40.0, TapTrade, "monel"),
    one(StainlessSteel, Tapping, 5.0, 35.0, TapTrade, "stainless steel"),
    one(Titanium, Tapping, 10.0, 40.0, TapTrade, "titanium alloys"),
    one(Zinc, Tapping, 60.0, 150.0, TapTrade, "zinc die casting"),
    one(Magnesium, Tapping, 75.0, 200.0, TapTrade, "magnesium"),
];

const fn by_hardness(
    material: Material,
    operation: Operation,
    hardness: (u16, u16),
    low: f64,
    high: f64,
    source: SpeedSource,
    detail: &'static str,
) -> SpeedRow {
    SpeedRow {
        hardness: Some(hardness),
        ..one(material, operation, low, high, source, detail)
    }
}

const fn tap(
    material: Material,
    to: Option<(u16, u16)>,
    low: f64,
    high: f64,
    source: SpeedSource,
    detail: &'static str,
) -> SpeedRow {
    SpeedRow {
        hardness: to,
        ..one(material, Tapping, low, high, source, detail)
    }
}

/// Tapping speeds of a second and a third table, ft/min, HSS taps.
#[rustfmt::skip]
pub const TAPS: &[SpeedRow] = &[
    tap(FreeMachiningSteel, None, 40.0, 80.0, TapTrade, "steel, free machining"),
    tap(MalleableIron, None, 35.0, 60.0, TapTrade, "malleable iron"),
    tap(Thermoplastic, None, 50.0, 100.0, TapTrade, "thermoplastic"),
    tap(Thermoset, None, 50.0, 100.0, TapTrade, "thermosetting"),
    tap(MildSteel, Some((50, 200)), 50.0, 60.0, TapMaker, "structural steel, under 200 HB"),
    tap(CarbonSteel, Some((50, 250)), 50.0, 60.0, TapMaker, "plain carbon steel, under 250 HB"),
    tap(CarbonSteel, None, 35.0, 35.0, TapChart, "medium carbon steel"),
    tap(CarbonSteel, None, 10.0, 10.0, TapChart, "high carbon steel"),
    tap(AlloySteel, Some((50, 250)), 32.0, 50.0, TapMaker, "alloy steel, under 250 HB"),
    tap(AlloySteel, Some((250, 350)), 22.0, 32.0, TapMaker, "alloy steel, hardened and tempered"),
    tap(CastSteel, None, 25.0, 25.0, TapChart, "cast steel"),
    tap(StainlessSteel, Some((50, 250)), 16.0, 22.0, TapMaker, "austenitic stainless steel"),
    tap(GrayIron, Some((50, 150)), 50.0, 80.0, TapMaker, "cast iron, lamellar graphite, under 150 HB"),
    tap(GrayIron, Some((150, 300)), 30.0, 40.0, TapMaker, "cast iron, lamellar graphite, 150 to 300 HB"),
    tap(DuctileIron, Some((50, 200)), 30.0, 40.0, TapMaker, "cast iron, nodular graphite, under 200 HB"),
    tap(DuctileIron, Some((200, 300)), 20.0, 30.0, TapMaker, "cast iron, nodular graphite, 200 to 300 HB"),
    tap(Copper, Some((30, 100)), 22.0, 40.0, TapMaker, "copper, unalloyed"),
    tap(Brass, Some((30, 200)), 50.0, 65.0, TapMaker, "brass"),
    tap(Titanium, Some((50, 270)), 22.0, 40.0, TapMaker, "titanium, alloyed, under 270 HB"),
    tap(Titanium, Some((270, 350)), 16.0, 22.0, TapMaker, "titanium, alloyed, 270 to 350 HB"),
    tap(CastAluminium, None, 32.0, 150.0, TapMaker, "aluminium with silicon, all three rows"),
    tap(Thermoset, None, 22.0, 40.0, TapMaker, "thermosetting"),
    tap(Thermoplastic, None, 60.0, 105.0, TapMaker, "thermoplastic"),
    tap(AlloySteel, Some((350, 450)), 10.0, 16.0, TapMaker, "alloy steel, over 350 HB"),
    tap(StainlessSteel, Some((50, 250)), 22.0, 32.0, TapMaker, "free-machining stainless steel"),
    tap(StainlessSteel, Some((50, 300)), 10.0, 16.0, TapMaker, "ferritic-austenitic stainless steel"),
    tap(Titanium, Some((50, 200)), 32.0, 50.0, TapMaker, "titanium, unalloyed"),
    tap(Nickel, Some((50, 150)), 22.0, 40.0, TapMaker, "nickel, unalloyed"),
    tap(Nickel, Some((270, 350)), 10.0, 16.0, TapMaker, "nickel, alloyed, 270 to 350 HB"),
    tap(Bronze, Some((200, 470)), 10.0, 16.0, TapMaker, "bronze, high strength"),
    tap(ToolSteel, None, 15.0, 25.0, TapPage, "tool steels"),
    tap(Bronze, None, 30.0, 40.0, TapPage, "bronze"),
    tap(Magnesium, None, 50.0, 70.0, TapPage, "magnesium alloy"),
];

/// Carbon-steel drills run at this share of the HSS speed (U.S. Navy training manual 14345, section on drilling).
pub const CARBON_DRILL_FACTOR: f64 = 0.5;
/// Carbide drills run at this many times the HSS speed, from and to (U.S. Navy training manual 14345).
pub const CARBIDE_DRILL_FACTOR: (f64, f64) = (2.0, 3.0);

/// All rows for hole work: the pairs taken apart, the single rows, and the Navy's factors applied to its own rows.
pub fn rows() -> impl Iterator<Item = SpeedRow> {
    let paired = PAIRS.iter().flat_map(|pair| {
        let part = |operation, cutter, figure| SpeedRow {
            material: pair.material,
            operation,
            cutter,
            detail: pair.detail,
            hardness: pair.hardness,
            low: figure,
            high: figure,
            unit: SpeedUnit::Sfm,
            source: pair.source,
        };
        [
            part(Drilling, Hss, pair.drill_sfm),
            part(Reaming, Hss, pair.ream_sfm),
            part(Reaming, Carbide, pair.ream_carbide_sfm),
        ]
    });
    let factored = SINGLES
        .iter()
        .filter(|row| row.source == NavyDrills)
        .flat_map(|row| {
            let scaled = |cutter: CutterMaterial, low: f64, high: f64| SpeedRow {
                cutter,
                low: row.low * low,
                high: row.high * high,
                source: NavyDrillFactor,
                ..*row
            };
            [
                scaled(Carbon, CARBON_DRILL_FACTOR, CARBON_DRILL_FACTOR),
                scaled(Carbide, CARBIDE_DRILL_FACTOR.0, CARBIDE_DRILL_FACTOR.1),
            ]
        });
    paired
        .chain(SINGLES.iter().copied())
        .chain(TAPS.iter().copied())
        .chain(factored)
}
