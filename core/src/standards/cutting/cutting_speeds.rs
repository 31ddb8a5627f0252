//! How fast may the edge pass through this metal? Published cutting speeds, every row with its source, and the band they leave.
//!
//! Where sources disagree all are kept. The start is the slowest figure read in print for the material: it spares the
//! cutter, and speed is easily added. Figures from memory widen the band and are marked, and give the start only where
//! nothing was read.

pub use super::cutting_speeds_band::*;
pub use super::work_materials::Material;
use super::{
    cutting_speeds_hole, cutting_speeds_milling, cutting_speeds_steel, cutting_speeds_turning,
};
use crate::quantity::SurfaceSpeed;
use core::f64::consts::PI;

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
    /// Nickel and its alloy with copper.
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
    /// Carvill, turning of plastics, high-speed steel.
    CarvillPlastics,
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

    /// Does it speak of end mills alone?
    pub const fn is_of_end_mills(self) -> bool {
        matches!(self, Self::EndMillChart | Self::CarbideEndMills)
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
            | Self::CarvillPlastics => SpeedUnit::MetresPerMinute,
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
            // V = π D n at 12.5 mm: a domain's function is not for a table to call
            SpeedUnit::RpmAt12Point5Mm => SurfaceSpeed::from_m_per_min(PI * 12.5 * figure / 1000.0),
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

/// The rows of one work material.
pub(crate) fn rows_of(material: Material) -> Vec<SpeedRow> {
    let mut rows = Vec::new();
    each(&mut |row| {
        if row.material == material {
            rows.push(row);
        }
    });
    rows
}

/// Every row of the speed tables. Library only: the sheets read the rows of one material; the checks hold each against its page.
pub fn all_speed_rows() -> impl Iterator<Item = SpeedRow> {
    let mut rows = Vec::new();
    each(&mut |row| rows.push(row));
    rows.into_iter()
}
