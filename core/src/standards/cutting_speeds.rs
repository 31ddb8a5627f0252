//! How fast may the edge pass through this metal? Published cutting speeds, every row with its source, and the band they leave.
//!
//! Where sources disagree all are kept. The start is the slowest figure read in print for the material: it spares the
//! cutter, and speed is easily added. Figures from memory widen the band and are marked, and give the start only where
//! nothing was read.

use super::{
    cutting_speeds_hole, cutting_speeds_milling, cutting_speeds_steel, cutting_speeds_turning,
};
use crate::quantity::{Length, RotationalSpeed, SurfaceSpeed};

/// The work materials that the tables know, as a shop calls them.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum Material {
    /// Leaded or resulphurised steel for automatic lathes.
    FreeMachiningSteel,
    /// Mild or machine steel, low carbon.
    MildSteel,
    /// Carbon steel from about 0.4 to 0.7 % C.
    CarbonSteel,
    /// Alloy steel, annealed.
    AlloySteel,
    /// Tool steel, annealed.
    ToolSteel,
    /// Stainless steel.
    StainlessSteel,
    /// Steel castings.
    CastSteel,
    /// Wrought iron.
    WroughtIron,
    /// Grey cast iron: most machine castings.
    GrayIron,
    /// Malleable cast iron.
    MalleableIron,
    /// Ductile (nodular) cast iron.
    DuctileIron,
    /// Austenitic cast iron, rich in nickel.
    AusteniticIron,
    /// Brass, soft.
    Brass,
    /// Brass, hard.
    HardBrass,
    /// Bronze.
    Bronze,
    /// Copper.
    Copper,
    /// Wrought aluminium alloy.
    Aluminium,
    /// Cast aluminium alloy.
    CastAluminium,
    /// Magnesium alloy.
    Magnesium,
    /// Zinc die casting.
    Zinc,
    /// Titanium alloy.
    Titanium,
    /// Nickel copper alloy (monel).
    Monel,
    /// Nickel and its softer alloys.
    Nickel,
    /// Thermoplastics.
    Thermoplastic,
    /// Thermosets.
    Thermoset,
}

impl Material {
    /// All of them, in the order of a list on screen.
    pub const ALL: [Self; 25] = [
        Self::MildSteel,
        Self::FreeMachiningSteel,
        Self::CarbonSteel,
        Self::AlloySteel,
        Self::ToolSteel,
        Self::StainlessSteel,
        Self::CastSteel,
        Self::WroughtIron,
        Self::GrayIron,
        Self::MalleableIron,
        Self::DuctileIron,
        Self::AusteniticIron,
        Self::Brass,
        Self::HardBrass,
        Self::Bronze,
        Self::Copper,
        Self::Aluminium,
        Self::CastAluminium,
        Self::Magnesium,
        Self::Zinc,
        Self::Titanium,
        Self::Monel,
        Self::Nickel,
        Self::Thermoplastic,
        Self::Thermoset,
    ];

    /// True for the metals that are hardened by heat and called by their Brinell figure.
    pub const fn is_iron_or_steel(self) -> bool {
        matches!(
            self,
            Self::FreeMachiningSteel
                | Self::MildSteel
                | Self::CarbonSteel
                | Self::AlloySteel
                | Self::ToolSteel
                | Self::StainlessSteel
                | Self::CastSteel
                | Self::WroughtIron
                | Self::GrayIron
                | Self::MalleableIron
                | Self::DuctileIron
                | Self::AusteniticIron
        )
    }

    /// The word that stands in links, stable for ever.
    pub const fn id(self) -> &'static str {
        match self {
            Self::FreeMachiningSteel => "free-machining-steel",
            Self::MildSteel => "mild-steel",
            Self::CarbonSteel => "carbon-steel",
            Self::AlloySteel => "alloy-steel",
            Self::ToolSteel => "tool-steel",
            Self::StainlessSteel => "stainless",
            Self::CastSteel => "cast-steel",
            Self::WroughtIron => "wrought-iron",
            Self::GrayIron => "gray-iron",
            Self::MalleableIron => "malleable-iron",
            Self::DuctileIron => "ductile-iron",
            Self::AusteniticIron => "austenitic-iron",
            Self::Brass => "brass",
            Self::HardBrass => "hard-brass",
            Self::Bronze => "bronze",
            Self::Copper => "copper",
            Self::Aluminium => "aluminium",
            Self::CastAluminium => "cast-aluminium",
            Self::Magnesium => "magnesium",
            Self::Zinc => "zinc",
            Self::Titanium => "titanium",
            Self::Monel => "monel",
            Self::Nickel => "nickel",
            Self::Thermoplastic => "thermoplastic",
            Self::Thermoset => "thermoset",
        }
    }

    /// The label on screen.
    pub const fn label(self) -> &'static str {
        match self {
            Self::FreeMachiningSteel => "free-machining steel",
            Self::MildSteel => "mild (low-carbon) steel",
            Self::CarbonSteel => "medium and high carbon steel",
            Self::AlloySteel => "alloy steel, annealed",
            Self::ToolSteel => "tool steel, annealed",
            Self::StainlessSteel => "stainless steel",
            Self::CastSteel => "cast steel",
            Self::WroughtIron => "wrought iron",
            Self::GrayIron => "grey cast iron",
            Self::MalleableIron => "malleable iron",
            Self::DuctileIron => "ductile iron",
            Self::AusteniticIron => "austenitic (nickel) cast iron",
            Self::Brass => "brass, soft",
            Self::HardBrass => "brass, hard",
            Self::Bronze => "bronze",
            Self::Copper => "copper",
            Self::Aluminium => "aluminium, wrought",
            Self::CastAluminium => "aluminium, cast",
            Self::Magnesium => "magnesium",
            Self::Zinc => "zinc die casting",
            Self::Titanium => "titanium",
            Self::Monel => "monel",
            Self::Nickel => "nickel, soft alloys too",
            Self::Thermoplastic => "plastic that melts (thermoplastic)",
            Self::Thermoset => "plastic that chars (thermoset)",
        }
    }
}

/// What the cutting edge is made of.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum CutterMaterial {
    /// Plain high-carbon tool steel, as in old cutters.
    CarbonSteel,
    /// High-speed steel.
    HighSpeedSteel,
    /// Cemented carbide.
    Carbide,
}

/// What the cutter does, as far as speed tables tell operations apart.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum Operation {
    /// Milling with any cutter.
    Milling,
    /// Drilling with twist drills.
    Drilling,
    /// Machine reaming.
    Reaming,
    /// Tapping by machine.
    Tapping,
    /// Turning, roughing.
    TurningRough,
    /// Turning, finishing.
    TurningFinish,
    /// Cutting a thread with a single point.
    Threading,
}

/// Where a cutting speed stands in print.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum SpeedSource {
    /// Carvill, milling speeds, high-speed steel.
    CarvillHss,
    /// Carvill, milling speeds, carbide at 0.2 mm per tooth.
    CarvillCarbide,
    /// Tabellenbuch Zerspantechnik.
    Tabellenbuch,
    /// Krar, milling.
    KrarMilling,
    /// Krar, lathe.
    KrarLathe,
    /// Machine Shop Work, carbon-steel cutters.
    MachineShopWork,
    /// Navy manual, drills.
    NavyDrills,
    /// Navy manual's factor for other drill materials, applied to its own row.
    NavyDrillFactor,
    /// Cast ferrous metals, drilling and reaming pairs.
    HandbookCastFerrous,
    /// Light metals, drilling and reaming pairs.
    HandbookLightMetals,
    /// Kalpakjian, drilling, figured back from the printed rpm.
    Kalpakjian,
    /// Trade table of tapping speeds.
    TapTrade,
    /// A tap maker's table by hardness.
    TapMaker,
    /// A chart of suggested tapping speeds.
    TapChart,
    /// A second tap maker's page of machine tapping speeds.
    TapPage,
    /// Steels by hardness, HSS: turning, milling, drilling, reaming.
    HandbookSteels,
    /// Steels by hardness, turning with carbide.
    HandbookTurning,
    /// Monel and nickel.
    HandbookNickel,
    /// Army manual, turning of stainless steel.
    ArmyStainless,
    /// A lathe maker's operator's manual.
    LatheManual,
    /// Another lathe maker's manual, no difference made between roughing and finishing.
    BenchLathe,
    /// The unsigned shop handout; its last column is milling, the other heads are lost.
    Handout,
    /// A small lathe maker's leaflet, figured back from rpm on 1 in.
    SmallLathe,
    /// A textbook of 1905, deep cuts in a powerful lathe.
    Lineham,
    /// A milling machine maker's manual.
    MillManual,
    /// An end mill maker's chart, HSS.
    EndMillChart,
    /// Carbide end mills, makers' charts.
    CarbideEndMills,
    /// A drill press maker's manual.
    DrillPressManual,
    /// Fundamentals of Machining Processes.
    FundamentalsDrilling,
    /// A training course for metal workers, figured back from rpm.
    TrainingCourse,
    /// A plastics supplier's guide.
    PlasticsGuide,
    /// A plastics shop's page.
    PlasticsShop,
    /// A threading tool maker's chart.
    ThreadingChart,
    /// A book of recipes, carbon steel tool.
    OldRecipes,
}

impl SpeedSource {
    /// Was the figure read in print (true) or recalled (false)?
    pub const fn read_in_print(self) -> bool {
        !matches!(self, Self::KrarMilling | Self::KrarLathe)
    }

    /// The unit in which it prints.
    pub const fn unit(self) -> SpeedUnit {
        match self {
            Self::Kalpakjian => SpeedUnit::RpmAt12Point5Mm,
            Self::CarvillHss
            | Self::CarvillCarbide
            | Self::Tabellenbuch
            | Self::FundamentalsDrilling
            | Self::TrainingCourse
            | Self::PlasticsShop => SpeedUnit::MetresPerMinute,
            _ => SpeedUnit::Sfm,
        }
    }
}

/// The unit in which the source prints, which is the authoritative one.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum SpeedUnit {
    /// Feet per minute.
    Sfm,
    /// Metres per minute.
    MetresPerMinute,
    /// Turns per minute of a drill of 12.5 mm.
    RpmAt12Point5Mm,
}

/// One row of a speed table: a recommendation of one source.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct SpeedRow {
    /// The work material that the row is filed under.
    pub material: Material,
    /// The operation.
    pub operation: Operation,
    /// The cutter material.
    pub cutter: CutterMaterial,
    /// The row's own words, with condition or cutter grade.
    pub detail: &'static str,
    /// Brinell hardness from and to, where the source gives it.
    pub hardness: Option<(u16, u16)>,
    /// Low end, in the unit of the source.
    pub low: f64,
    /// High end, in the unit of the source; equal to `low` where one figure is printed.
    pub high: f64,
    /// The unit of the source.
    pub unit: SpeedUnit,
    /// The source.
    pub source: SpeedSource,
}

/// A row as the tables keep it: all printed figures are whole, so it is short.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct KeptRow {
    /// The work material.
    pub material: Material,
    /// The operation.
    pub operation: Operation,
    /// The cutter material.
    pub cutter: CutterMaterial,
    /// The source.
    pub source: SpeedSource,
    /// Brinell hardness from and to; zero where the source gives none.
    pub hardness: (u16, u16),
    /// Low and high end, in the unit of the source.
    pub figures: (u16, u16),
    /// The row's own words.
    pub detail: &'static str,
}

impl KeptRow {
    /// The row, unpacked.
    pub fn row(&self) -> SpeedRow {
        SpeedRow {
            material: self.material,
            operation: self.operation,
            cutter: self.cutter,
            detail: self.detail,
            hardness: (self.hardness.1 > 0).then_some(self.hardness),
            low: f64::from(self.figures.0),
            high: f64::from(self.figures.1),
            unit: self.source.unit(),
            source: self.source,
        }
    }
}

impl SpeedRow {
    fn speed(&self, figure: f64) -> SurfaceSpeed {
        match self.unit {
            SpeedUnit::Sfm => SurfaceSpeed::from_sfm(figure),
            SpeedUnit::MetresPerMinute => SurfaceSpeed::from_m_per_min(figure),
            SpeedUnit::RpmAt12Point5Mm => crate::cutting::surface_speed(
                RotationalSpeed::from_rpm(figure),
                Length::from_mm(12.5),
            ),
        }
    }

    /// The row in words; with the hardness where a handbook tells its rows apart by that.
    pub fn words(&self) -> String {
        let aisi = if self.detail.starts_with(|c: char| c.is_ascii_digit()) {
            "AISI "
        } else {
            ""
        };
        match (self.hardness, self.source) {
            (
                Some((from, to)),
                SpeedSource::HandbookSteels
                | SpeedSource::HandbookTurning
                | SpeedSource::HandbookCastFerrous,
            ) => format!("{aisi}{}, {from} to {to} HB", self.detail),
            _ => self.detail.to_owned(),
        }
    }

    /// The low end as a speed.
    pub fn low_speed(&self) -> SurfaceSpeed {
        self.speed(self.low)
    }

    /// The high end as a speed.
    pub fn high_speed(&self) -> SurfaceSpeed {
        self.speed(self.high)
    }
}

/// Hardness up to which a row counts as ordinary, annealed metal where no hardness is given.
pub const ORDINARY_HARDNESS_HB: u16 = 260;

/// The band that the sources leave for one material, operation and cutter.
#[derive(Clone, PartialEq, Debug)]
pub struct SpeedBand {
    /// The slowest figure of all sources.
    pub low: SurfaceSpeed,
    /// Where to start.
    pub start: SurfaceSpeed,
    /// The fastest figure of all sources.
    pub high: SurfaceSpeed,
    /// The row that gives the start: the default source.
    pub default: SpeedRow,
    /// All rows that the band covers, the default one among them.
    pub rows: Vec<SpeedRow>,
    /// True where no hardness was given and harder rows were left out.
    pub harder_rows_left_out: bool,
}

/// Shows every row of the speed tables.
fn each(see: &mut dyn FnMut(SpeedRow)) {
    for kept in [
        cutting_speeds_milling::ROWS,
        cutting_speeds_hole::SINGLES,
        cutting_speeds_hole::TAPS,
        cutting_speeds_turning::ROWS,
    ]
    .into_iter()
    .flatten()
    {
        see(kept.row());
    }
    cutting_speeds_hole::each(see);
    cutting_speeds_turning::each(see);
    cutting_speeds_steel::each(see);
}

/// Every row of the speed tables.
pub fn all_speed_rows() -> impl Iterator<Item = SpeedRow> {
    let mut rows = Vec::new();
    each(&mut |row| rows.push(row));
    rows.into_iter()
}

/// The band of published cutting speeds, or nothing where no source that we know covers it.
///
/// With a hardness, rows printed for another hardness fall out, and for iron and steel above [`ORDINARY_HARDNESS_HB`] those
/// that name none. Without one, rows for metal harder than
/// [`ORDINARY_HARDNESS_HB`] fall out, unless there are no others.
///
/// ```
/// use benchslate_core::standards::cutting_speeds::*;
/// let band = speed_band(Material::MildSteel, Operation::Drilling, CutterMaterial::HighSpeedSteel, None).unwrap();
/// // Kalpakjian's 500 rpm at 12.5 mm is 19.6 m/min; the Navy's band is 80 to 110 ft/min.
/// assert!(band.low.sfm() > 64.0 && band.high.sfm() < 111.0);
/// ```
pub fn speed_band(
    material: Material,
    operation: Operation,
    cutter: CutterMaterial,
    hardness_hb: Option<u16>,
) -> Option<SpeedBand> {
    let mut matching = Vec::new();
    each(&mut |row| {
        if (row.material, row.operation, row.cutter) == (material, operation, cutter) {
            matching.push(row);
        }
    });
    let fits = |row: &SpeedRow| match (row.hardness, hardness_hb) {
        (None, None) => true,
        // a row that names no hardness speaks of ordinary metal: of hard iron or steel it says nothing
        (None, Some(hb)) => hb <= ORDINARY_HARDNESS_HB || !material.is_iron_or_steel(),
        (Some((from, to)), Some(hb)) => from <= hb && hb <= to,
        (Some((_, to)), None) => to <= ORDINARY_HARDNESS_HB,
    };
    let mut rows: Vec<SpeedRow> = matching.iter().copied().filter(fits).collect();
    if rows.is_empty() && hardness_hb.is_none() {
        rows.clone_from(&matching);
    }
    let default = rows.iter().copied().min_by(|a, b| {
        let key = |row: &SpeedRow| (!row.source.read_in_print(), row.low_speed().m_per_min());
        key(a)
            .partial_cmp(&key(b))
            .unwrap_or(core::cmp::Ordering::Equal)
    })?;
    let low = rows
        .iter()
        .fold(default.low_speed(), |low, row| low.min(row.low_speed()));
    let high = rows
        .iter()
        .fold(default.high_speed(), |high, row| high.max(row.high_speed()));
    Some(SpeedBand {
        low,
        start: default.low_speed(),
        high,
        default,
        harder_rows_left_out: hardness_hb.is_none() && rows.len() < matching.len(),
        rows,
    })
}
