//! How fast may a milling cutter run? Milling speeds as printed, one row a recommendation.
//!
//! Sources by row: Carvill, Mechanical Engineer's Data Handbook, section 5.4, p. 187 (m/min); Tabellenbuch Zerspantechnik,
//! 5th ed. 2022, pp. 272 and 274 (m/min); Krar et al., Technology of Machine Tools (ft/min, from memory); Machine Shop Work,
//! Table IV (ft/min, carbon steel); a milling machine maker's manual (ft/min, HSS); an end mill maker's chart, roughing to
//! finishing (ft/min, HSS); carbide end mills, makers' charts (ft/min). The printed unit is the authoritative one. Of the last
//! three only the metals that the others lack are filed: the rest of each chart is a check. Two doubtful cells of Carvill's carbide
//! table (mild steel with K20, steel castings) are left out.

use super::cutting_speeds::CutterMaterial::{
    Carbide, CarbonSteel as Carbon, HighSpeedSteel as Hss,
};
use super::cutting_speeds::Material::*;
use super::cutting_speeds::SpeedSource::*;
use super::cutting_speeds::{
    CutterMaterial, Material, Operation, SpeedRow, SpeedSource, SpeedUnit,
};

const fn row(
    material: Material,
    cutter: CutterMaterial,
    low: f64,
    high: f64,
    source: SpeedSource,
    detail: &'static str,
) -> SpeedRow {
    let unit = match source {
        KrarMilling | MachineShopWork | MillManual | EndMillChart | CarbideEndMills => {
            SpeedUnit::Sfm
        }
        _ => SpeedUnit::MetresPerMinute,
    };
    SpeedRow {
        material,
        operation: Operation::Milling,
        cutter,
        detail,
        hardness: None,
        low,
        high,
        unit,
        source,
    }
}

/// Milling speeds.
#[rustfmt::skip]
pub const ROWS: &[SpeedRow] = &[
    row(GrayIron, Hss, 20.0, 20.0, CarvillHss, "cast iron"),
    row(MildSteel, Hss, 28.0, 28.0, CarvillHss, "low-carbon steel"),
    row(Bronze, Hss, 35.0, 35.0, CarvillHss, "bronze"),
    row(HardBrass, Hss, 45.0, 45.0, CarvillHss, "hard brass"),
    row(Copper, Hss, 60.0, 60.0, CarvillHss, "copper"),
    row(Aluminium, Hss, 100.0, 100.0, CarvillHss, "aluminium alloy"),
    row(MildSteel, Carbide, 150.0, 150.0, CarvillCarbide, "mild steel, brazed P10"),
    row(MildSteel, Carbide, 130.0, 130.0, CarvillCarbide, "mild steel, brazed P30"),
    row(MildSteel, Carbide, 100.0, 100.0, CarvillCarbide, "mild steel, brazed P40"),
    row(MildSteel, Carbide, 200.0, 200.0, CarvillCarbide, "mild steel, indexable P10"),
    row(MildSteel, Carbide, 170.0, 170.0, CarvillCarbide, "mild steel, indexable P30"),
    row(MildSteel, Carbide, 130.0, 130.0, CarvillCarbide, "mild steel, indexable P40"),
    row(CarbonSteel, Carbide, 120.0, 120.0, CarvillCarbide, "carbon steel 0.7 %C, brazed P10"),
    row(CarbonSteel, Carbide, 90.0, 90.0, CarvillCarbide, "carbon steel 0.7 %C, brazed P30"),
    row(CarbonSteel, Carbide, 75.0, 75.0, CarvillCarbide, "carbon steel 0.7 %C, brazed P40"),
    row(CarbonSteel, Carbide, 150.0, 150.0, CarvillCarbide, "carbon steel 0.7 %C, indexable P10"),
    row(CarbonSteel, Carbide, 90.0, 90.0, CarvillCarbide, "carbon steel 0.7 %C, indexable P30"),
    row(CarbonSteel, Carbide, 75.0, 75.0, CarvillCarbide, "carbon steel 0.7 %C, indexable P40"),
    row(StainlessSteel, Carbide, 100.0, 100.0, CarvillCarbide, "stainless steel, brazed P10"),
    row(StainlessSteel, Carbide, 100.0, 100.0, CarvillCarbide, "stainless steel, brazed P30"),
    row(StainlessSteel, Carbide, 100.0, 100.0, CarvillCarbide, "stainless steel, brazed P40"),
    row(StainlessSteel, Carbide, 125.0, 125.0, CarvillCarbide, "stainless steel, indexable P10"),
    row(StainlessSteel, Carbide, 125.0, 125.0, CarvillCarbide, "stainless steel, indexable P30"),
    row(StainlessSteel, Carbide, 115.0, 115.0, CarvillCarbide, "stainless steel, indexable P40"),
    row(MildSteel, Hss, 25.0, 25.0, Tabellenbuch, "mild (soft unalloyed) steel"),
    row(MildSteel, Carbide, 70.0, 70.0, Tabellenbuch, "mild (soft unalloyed) steel"),
    row(AlloySteel, Hss, 20.0, 20.0, Tabellenbuch, "low alloy steel"),
    row(AlloySteel, Carbide, 60.0, 60.0, Tabellenbuch, "low alloy steel"),
    row(StainlessSteel, Hss, 12.0, 12.0, Tabellenbuch, "austenitic stainless steel"),
    row(StainlessSteel, Carbide, 45.0, 45.0, Tabellenbuch, "austenitic stainless steel"),
    row(GrayIron, Hss, 25.0, 25.0, Tabellenbuch, "gray cast iron"),
    row(GrayIron, Carbide, 60.0, 60.0, Tabellenbuch, "gray cast iron"),
    row(MalleableIron, Hss, 18.0, 18.0, Tabellenbuch, "malleable cast iron"),
    row(MalleableIron, Carbide, 50.0, 50.0, Tabellenbuch, "malleable cast iron"),
    row(CastAluminium, Hss, 80.0, 80.0, Tabellenbuch, "aluminium, hard cast"),
    row(CastAluminium, Carbide, 120.0, 120.0, Tabellenbuch, "aluminium, hard cast"),
    row(AlloySteel, Hss, 40.0, 70.0, KrarMilling, "alloy steel"),
    row(AlloySteel, Carbide, 150.0, 250.0, KrarMilling, "alloy steel"),
    row(Aluminium, Hss, 500.0, 1000.0, KrarMilling, "aluminum"),
    row(Aluminium, Carbide, 1000.0, 2000.0, KrarMilling, "aluminum"),
    row(GrayIron, Hss, 50.0, 80.0, KrarMilling, "cast iron"),
    row(GrayIron, Carbide, 125.0, 200.0, KrarMilling, "cast iron"),
    row(FreeMachiningSteel, Hss, 100.0, 150.0, KrarMilling, "free-machining steel"),
    row(FreeMachiningSteel, Carbide, 400.0, 600.0, KrarMilling, "free-machining steel"),
    row(MildSteel, Hss, 70.0, 100.0, KrarMilling, "machine steel"),
    row(MildSteel, Carbide, 150.0, 250.0, KrarMilling, "machine steel"),
    row(StainlessSteel, Hss, 30.0, 80.0, KrarMilling, "stainless steel"),
    row(StainlessSteel, Carbide, 100.0, 300.0, KrarMilling, "stainless steel"),
    row(ToolSteel, Hss, 60.0, 70.0, KrarMilling, "tool steel"),
    row(ToolSteel, Carbide, 125.0, 200.0, KrarMilling, "tool steel"),
    row(GrayIron, Carbon, 60.0, 60.0, MachineShopWork, "soft cast iron"),
    row(CastSteel, Carbon, 40.0, 40.0, MachineShopWork, "hard cast steel"),
    row(WroughtIron, Carbon, 45.0, 45.0, MachineShopWork, "wrought iron"),
    row(MildSteel, Carbon, 36.0, 36.0, MachineShopWork, "soft machine steel"),
    row(CarbonSteel, Carbon, 24.0, 24.0, MachineShopWork, "hard machine steel"),
    row(ToolSteel, Carbon, 30.0, 30.0, MachineShopWork, "tool steel, annealed"),
    row(Brass, Carbon, 120.0, 120.0, MachineShopWork, "soft brass"),
    row(HardBrass, Carbon, 100.0, 100.0, MachineShopWork, "hard brass"),
    row(Bronze, Carbon, 80.0, 80.0, MachineShopWork, "bronze"),
    row(ToolSteel, Hss, 50.0, 50.0, MillManual, "tool steel"),
    row(CastSteel, Hss, 80.0, 80.0, MillManual, "cast steel"),
    row(Brass, Hss, 150.0, 150.0, MillManual, "brass and bronze"),
    row(Bronze, Hss, 150.0, 150.0, MillManual, "brass and bronze"),
    row(Copper, Hss, 100.0, 100.0, MillManual, "copper"),
    row(Titanium, Hss, 50.0, 50.0, MillManual, "titanium"),
    row(Thermoplastic, Hss, 300.0, 800.0, MillManual, "plastics"),
    row(Titanium, Hss, 25.0, 40.0, EndMillChart, "titanium 6Al-4V, 310 HB"),
    row(Magnesium, Hss, 800.0, 1000.0, EndMillChart, "magnesium"),
    row(Zinc, Hss, 800.0, 1000.0, EndMillChart, "zinc die castings, 100 HB"),
    row(Monel, Hss, 60.0, 80.0, EndMillChart, "K-monel, 285 HB"),
    row(Nickel, Hss, 60.0, 80.0, EndMillChart, "nickel, 280 HB"),
    row(Thermoset, Hss, 800.0, 1000.0, EndMillChart, "phenolic laminate"),
    row(FreeMachiningSteel, Carbide, 150.0, 400.0, CarbideEndMills, "leaded steels"),
    row(ToolSteel, Carbide, 30.0, 150.0, CarbideEndMills, "tool steels"),
    row(DuctileIron, Carbide, 100.0, 375.0, CarbideEndMills, "ductile iron"),
    row(Brass, Carbide, 250.0, 500.0, CarbideEndMills, "brass and bronze"),
    row(Bronze, Carbide, 250.0, 500.0, CarbideEndMills, "brass and bronze"),
    row(Aluminium, Carbide, 400.0, 1200.0, CarbideEndMills, "aluminium and its alloys"),
    row(GrayIron, Carbide, 100.0, 500.0, CarbideEndMills, "cast and malleable iron"),
    row(MalleableIron, Carbide, 100.0, 500.0, CarbideEndMills, "cast and malleable iron"),
    row(Magnesium, Carbide, 400.0, 400.0, CarbideEndMills, "magnesium"),
    row(Magnesium, Carbide, 800.0, 1400.0, CarbideEndMills, "magnesium, another maker"),
    row(Copper, Carbide, 450.0, 850.0, CarbideEndMills, "copper and its alloys"),
    row(Monel, Carbide, 100.0, 200.0, CarbideEndMills, "monel"),
    row(Nickel, Carbide, 50.0, 150.0, CarbideEndMills, "nickel alloys"),
    row(Titanium, Carbide, 100.0, 400.0, CarbideEndMills, "titanium, soft"),
    row(Titanium, Carbide, 50.0, 150.0, CarbideEndMills, "titanium, hard"),
    row(Thermoplastic, Carbide, 500.0, 1500.0, CarbideEndMills, "plastics"),
];
