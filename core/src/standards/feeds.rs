//! How much may one tooth, or one turn, bite off? Published feeds for milling, drilling and turning, with the band they leave.
//!
//! Sources: Krar et al., Technology of Machine Tools, recommended feed per tooth for HSS cutters (in per tooth, from memory);
//! a trade table of milling feeds by kind of cut, publisher not stated (in per tooth); U.S. Navy training manual 14345 and
//! Machinery's Handbook, feed by drill diameter (in/rev; they disagree at the top of a band, a value inside either is right);
//! an unsigned shop handout, lathe feeds for HSS tools (in/rev), with a feed selection table (unsigned), TM 43-0106, Table 2-8
//! (stainless) and a plastics supplier's guide beside it; an end mill maker's chart for carbide by diameter; a reamer maker's guide,
//! feed per flute and stock by diameter; TM 1-420, par. 32 d, parting. All in inches, which are authoritative.

use super::cutting_speeds::Material;
use crate::quantity::{FeedPerRev, FeedPerTooth, Length};

/// The kinds of milling cutter that feed tables tell apart.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum MillingCutter {
    /// Plain (slab) mill on an arbor.
    Slab,
    /// Side mill, also straddling or slotting.
    Side,
    /// Slitting saw.
    Saw,
    /// Face or shell mill.
    Face,
    /// End mill.
    End,
    /// Form-relieved cutter.
    Form,
}

/// One row of the table by material: feed per tooth of HSS cutters, inches.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct ToothFeedRow {
    /// The row's own words.
    pub detail: &'static str,
    /// The materials that are filed under it.
    pub materials: &'static [Material],
    /// Face mill.
    pub face: f64,
    /// Slab mill.
    pub slab: f64,
    /// Slotting and side mill.
    pub side: f64,
    /// End mill.
    pub end: f64,
    /// Form-relieved cutter.
    pub form: f64,
    /// Circular saw.
    pub saw: f64,
}

/// Feed per tooth by material, HSS cutters, roughing, inches per tooth (Krar, from memory).
#[rustfmt::skip]
pub const BY_MATERIAL: &[ToothFeedRow] = &[
    ToothFeedRow { detail: "aluminium", materials: &[Material::Aluminium, Material::CastAluminium], face: 0.022, slab: 0.018, side: 0.013, end: 0.011, form: 0.007, saw: 0.005 },
    ToothFeedRow { detail: "brass and bronze, medium", materials: &[Material::Brass, Material::HardBrass, Material::Bronze], face: 0.014, slab: 0.011, side: 0.008, end: 0.007, form: 0.004, saw: 0.003 },
    ToothFeedRow { detail: "cast iron, medium", materials: &[Material::GrayIron], face: 0.013, slab: 0.010, side: 0.007, end: 0.007, form: 0.004, saw: 0.003 },
    ToothFeedRow { detail: "machine steel", materials: &[Material::MildSteel], face: 0.012, slab: 0.010, side: 0.007, end: 0.006, form: 0.004, saw: 0.003 },
    ToothFeedRow { detail: "tool steel, medium", materials: &[Material::ToolSteel], face: 0.010, slab: 0.008, side: 0.006, end: 0.005, form: 0.003, saw: 0.003 },
    ToothFeedRow { detail: "stainless steel", materials: &[Material::StainlessSteel], face: 0.006, slab: 0.005, side: 0.004, end: 0.003, form: 0.002, saw: 0.002 },
];

/// The name of the source of [`BY_MATERIAL`].
pub const BY_MATERIAL_SOURCE: &str = "Krar et al., Technology of Machine Tools: recommended feed per tooth, HSS cutters (from memory)";

/// One row of the table by kind of cut, inches per tooth.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct CutFeedRow {
    /// The row's own words.
    pub detail: &'static str,
    /// The cutter it speaks of; nothing for a kind of cut that no sheet offers.
    pub cutter: Option<MillingCutter>,
    /// Cutter diameter from which the row applies, inches.
    pub from_diameter: f64,
    /// Cutter diameter below which it applies, inches.
    pub below_diameter: f64,
    /// Low end.
    pub low: f64,
    /// High end.
    pub high: f64,
}

/// Feed per tooth by kind of cut (trade table).
#[rustfmt::skip]
pub const BY_CUT: &[CutFeedRow] = &[
    CutFeedRow { detail: "face milling", cutter: Some(MillingCutter::Face), from_diameter: 0.0, below_diameter: f64::INFINITY, low: 0.007, high: 0.007 },
    CutFeedRow { detail: "straddle milling", cutter: Some(MillingCutter::Side), from_diameter: 0.0, below_diameter: f64::INFINITY, low: 0.005, high: 0.005 },
    CutFeedRow { detail: "slot milling with side mills", cutter: Some(MillingCutter::Side), from_diameter: 0.0, below_diameter: f64::INFINITY, low: 0.003, high: 0.003 },
    CutFeedRow { detail: "slab milling, light", cutter: Some(MillingCutter::Slab), from_diameter: 0.0, below_diameter: f64::INFINITY, low: 0.004, high: 0.004 },
    CutFeedRow { detail: "end milling, 1-1/2 in and over", cutter: Some(MillingCutter::End), from_diameter: 1.5, below_diameter: f64::INFINITY, low: 0.002, high: 0.003 },
    CutFeedRow { detail: "end milling, under 1-1/2 in", cutter: Some(MillingCutter::End), from_diameter: 0.0, below_diameter: 1.5, low: 0.0002, high: 0.002 },
    CutFeedRow { detail: "sawing", cutter: Some(MillingCutter::Saw), from_diameter: 0.0, below_diameter: f64::INFINITY, low: 0.0005, high: 0.001 },
    CutFeedRow { detail: "thread milling", cutter: None, from_diameter: 0.0, below_diameter: f64::INFINITY, low: 0.0005, high: 0.001 },
];

/// The name of the source of [`BY_CUT`].
pub const BY_CUT_SOURCE: &str = "trade table of milling feeds by kind of cut, publisher not stated";

/// One row of the shop handout's milling feeds, inches per tooth.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct HandoutFeedRow {
    /// The row's own words.
    pub detail: &'static str,
    /// The materials that are filed under it.
    pub materials: &'static [Material],
    /// Face mill, low and high.
    pub face: (f64, f64),
    /// Side mill, low and high.
    pub side: (f64, f64),
}

/// Milling feeds of the unsigned shop handout, inches per tooth. Its row for copper has a misprint (0.04 for 0.004) and is left
/// out, and so is a third column whose head was lost.
#[rustfmt::skip]
pub const HANDOUT: &[HandoutFeedRow] = &[
    HandoutFeedRow { detail: "magnesium", materials: &[Material::Magnesium], face: (0.005, 0.020), side: (0.004, 0.010) },
    HandoutFeedRow { detail: "aluminium", materials: &[Material::Aluminium, Material::CastAluminium], face: (0.005, 0.020), side: (0.004, 0.010) },
    HandoutFeedRow { detail: "brass and bronze", materials: &[Material::Brass, Material::HardBrass, Material::Bronze], face: (0.004, 0.020), side: (0.004, 0.010) },
    HandoutFeedRow { detail: "cast iron, soft", materials: &[Material::GrayIron], face: (0.004, 0.016), side: (0.004, 0.009) },
];

/// A band of feeds per tooth.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct ToothFeedBand {
    /// The lightest figure, or half of a source's single figure where that is lighter ("halve for finishing", common practice).
    pub low: FeedPerTooth,
    /// Where to start: the lightest of the sources' upper figures.
    pub start: FeedPerTooth,
    /// The heaviest figure of any source.
    pub high: FeedPerTooth,
    /// True where the table by material takes part.
    pub by_material: bool,
    /// True where the table by kind of cut takes part.
    pub by_cut: bool,
    /// True where the shop handout takes part.
    pub handout: bool,
}

impl ToothFeedRow {
    /// The row's figure for a cutter.
    pub const fn feed(&self, cutter: MillingCutter) -> FeedPerTooth {
        FeedPerTooth::from_in_per_tooth(match cutter {
            MillingCutter::Slab => self.slab,
            MillingCutter::Side => self.side,
            MillingCutter::Saw => self.saw,
            MillingCutter::Face => self.face,
            MillingCutter::End => self.end,
            MillingCutter::Form => self.form,
        })
    }
}

/// The feeds per tooth that the sources leave for a cutter of this diameter in this material; nothing where no table covers it.
///
/// ```
/// use benchslate_core::quantity::Length;
/// use benchslate_core::standards::{cutting_speeds::Material, feeds::*};
/// let band = tooth_feed_band(MillingCutter::Slab, Material::MildSteel, Length::from_inches(2.5)).unwrap();
/// assert!((band.high.in_per_tooth() - 0.010).abs() < 1e-12); // Krar
/// assert!((band.start.in_per_tooth() - 0.004).abs() < 1e-12); // trade table, slab milling, light
/// ```
pub fn tooth_feed_band(
    cutter: MillingCutter,
    material: Material,
    diameter: Length,
) -> Option<ToothFeedBand> {
    let inches = diameter.inches();
    let by_material = BY_MATERIAL
        .iter()
        .find(|row| row.materials.contains(&material))
        .map(|row| row.feed(cutter).in_per_tooth())
        .map(|rough| (rough / 2.0, rough));
    let by_cut = BY_CUT
        .iter()
        .filter(|row| {
            row.cutter == Some(cutter) && row.from_diameter <= inches && inches < row.below_diameter
        })
        .map(|row| (row.low, row.high))
        .reduce(|a, b| (a.0.min(b.0), a.1.max(b.1)))
        .map(|(low, high)| (low.min(high / 2.0), high));
    let handout = HANDOUT
        .iter()
        .find(|row| row.materials.contains(&material))
        .and_then(|row| match cutter {
            MillingCutter::Face => Some(row.face),
            MillingCutter::Side => Some(row.side),
            _ => None,
        });
    let given = || [by_material, by_cut, handout].into_iter().flatten();
    let (low, high) = given().reduce(|a, b| (a.0.min(b.0), a.1.max(b.1)))?;
    let start = given().fold(high, |start, band| start.min(band.1));
    Some(ToothFeedBand {
        low: FeedPerTooth::from_in_per_tooth(low),
        start: FeedPerTooth::from_in_per_tooth(start),
        high: FeedPerTooth::from_in_per_tooth(high),
        by_material: by_material.is_some(),
        by_cut: by_cut.is_some(),
        handout: handout.is_some(),
    })
}

/// Who printed a band of drill feeds.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum DrillFeedSource {
    /// U.S. Navy training manual.
    Navy,
    /// Machinery's Handbook.
    Handbook,
}

impl DrillFeedSource {
    /// Title and place.
    pub const fn title(self) -> &'static str {
        match self {
            Self::Navy => "U.S. Navy training manual 14345, drilling: feed by drill diameter",
            Self::Handbook => "Machinery's Handbook, feed bands for drilling",
        }
    }
}

/// One band of drill feeds: over `over`, up to and including `to` (inches), in/rev.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct DrillFeedRow {
    /// Drill diameter over this, inches.
    pub over: f64,
    /// Up to and including this, inches.
    pub to: f64,
    /// Low end, in/rev.
    pub low: f64,
    /// High end, in/rev.
    pub high: f64,
    /// The source.
    pub source: DrillFeedSource,
}

const fn drill(over: f64, to: f64, low: f64, high: f64, source: DrillFeedSource) -> DrillFeedRow {
    DrillFeedRow {
        over,
        to,
        low,
        high,
        source,
    }
}

/// Drill feeds by diameter. The Navy prints "No. 80 to 1/8", "1/8 to 1/4" and so on; a size on the limit belongs to the lower band.
#[rustfmt::skip]
pub const DRILL: &[DrillFeedRow] = &[
    drill(0.0, 0.125, 0.001, 0.003, DrillFeedSource::Handbook),
    drill(0.125, 0.25, 0.002, 0.006, DrillFeedSource::Handbook),
    drill(0.25, 0.5, 0.004, 0.010, DrillFeedSource::Handbook),
    drill(0.5, 1.0, 0.007, 0.015, DrillFeedSource::Handbook),
    drill(1.0, f64::INFINITY, 0.010, 0.025, DrillFeedSource::Handbook),
    drill(0.0, 0.125, 0.001, 0.002, DrillFeedSource::Navy),
    drill(0.125, 0.25, 0.002, 0.004, DrillFeedSource::Navy),
    drill(0.25, 0.5, 0.004, 0.007, DrillFeedSource::Navy),
    drill(0.5, 1.0, 0.007, 0.015, DrillFeedSource::Navy),
    drill(1.0, f64::INFINITY, 0.015, 0.025, DrillFeedSource::Navy),
];

/// A band of feeds per turn.
#[derive(Clone, PartialEq, Debug)]
pub struct TurnFeedBand {
    /// The lightest figure of any source.
    pub low: FeedPerRev,
    /// Where to start: the lightest figure; both sources give the low end for hard metal, and it is the safe end for a drill.
    pub start: FeedPerRev,
    /// The heaviest figure of any source.
    pub high: FeedPerRev,
    /// The rows behind it.
    pub rows: Vec<DrillFeedRow>,
}

/// The drill feeds that the sources leave at this diameter; nothing for a diameter that is not positive.
pub fn drill_feed_band(diameter: Length) -> Option<TurnFeedBand> {
    // A drill called 1/4 must fall on the limit whatever the last bit of its conversion.
    let inches = libm::round(diameter.inches() * 1e6) / 1e6;
    let rows: Vec<DrillFeedRow> = DRILL
        .iter()
        .copied()
        .filter(|row| row.over < inches && inches <= row.to)
        .collect();
    let (low, high) = rows
        .iter()
        .map(|row| (row.low, row.high))
        .reduce(|a, b| (a.0.min(b.0), a.1.max(b.1)))?;
    Some(TurnFeedBand {
        low: FeedPerRev::from_in_per_rev(low),
        start: FeedPerRev::from_in_per_rev(low),
        high: FeedPerRev::from_in_per_rev(high),
        rows,
    })
}

/// Who printed a lathe feed.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum LatheFeedSource {
    /// The unsigned shop handout.
    Handout,
    /// A feed selection table for turning, unsigned.
    Selection,
    /// TM 43-0106, Table 2-8.
    Army,
    /// A plastics supplier's guide (carbide tools).
    Plastics,
}

/// One row of the lathe feeds, HSS tools, in/rev.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct LatheFeedRow {
    /// The row's own words.
    pub detail: &'static str,
    /// The materials that are filed under it.
    pub materials: &'static [Material],
    /// Roughing, low and high.
    pub rough: (f64, f64),
    /// Finishing, low and high.
    pub finish: (f64, f64),
    /// The source.
    pub source: LatheFeedSource,
}

/// Lathe feeds (unsigned shop handout; its milling row for copper has a misprint, the lathe rows agree with a second table).
#[rustfmt::skip]
pub const LATHE: &[LatheFeedRow] = &[
    LatheFeedRow { detail: "magnesium", materials: &[Material::Magnesium], rough: (0.015, 0.025), finish: (0.005, 0.010), source: LatheFeedSource::Handout },
    LatheFeedRow { detail: "aluminium", materials: &[Material::Aluminium, Material::CastAluminium], rough: (0.015, 0.025), finish: (0.005, 0.010), source: LatheFeedSource::Handout },
    LatheFeedRow { detail: "brass and bronze", materials: &[Material::Brass, Material::HardBrass, Material::Bronze], rough: (0.015, 0.025), finish: (0.003, 0.010), source: LatheFeedSource::Handout },
    LatheFeedRow { detail: "copper", materials: &[Material::Copper], rough: (0.010, 0.020), finish: (0.004, 0.008), source: LatheFeedSource::Handout },
    LatheFeedRow { detail: "cast iron, soft", materials: &[Material::GrayIron], rough: (0.015, 0.025), finish: (0.005, 0.010), source: LatheFeedSource::Handout },
    LatheFeedRow { detail: "cast iron, hard", materials: &[Material::GrayIron], rough: (0.010, 0.020), finish: (0.003, 0.010), source: LatheFeedSource::Handout },
    LatheFeedRow { detail: "mild steel", materials: &[Material::MildSteel], rough: (0.010, 0.020), finish: (0.003, 0.010), source: LatheFeedSource::Handout },
    LatheFeedRow { detail: "cast steel", materials: &[Material::CastSteel], rough: (0.010, 0.020), finish: (0.003, 0.010), source: LatheFeedSource::Handout },
    LatheFeedRow { detail: "alloy steel, hard", materials: &[Material::AlloySteel], rough: (0.010, 0.020), finish: (0.003, 0.010), source: LatheFeedSource::Handout },
    LatheFeedRow { detail: "tool steel", materials: &[Material::ToolSteel], rough: (0.010, 0.020), finish: (0.003, 0.010), source: LatheFeedSource::Handout },
    LatheFeedRow { detail: "stainless steel", materials: &[Material::StainlessSteel], rough: (0.010, 0.020), finish: (0.003, 0.010), source: LatheFeedSource::Handout },
    LatheFeedRow { detail: "titanium", materials: &[Material::Titanium], rough: (0.010, 0.020), finish: (0.003, 0.010), source: LatheFeedSource::Handout },
    LatheFeedRow { detail: "medium and high carbon steel", materials: &[Material::CarbonSteel], rough: (0.008, 0.018), finish: (0.002, 0.008), source: LatheFeedSource::Selection },
    LatheFeedRow { detail: "stainless steel", materials: &[Material::StainlessSteel], rough: (0.015, 0.050), finish: (0.005, 0.018), source: LatheFeedSource::Army },
    LatheFeedRow { detail: "thermoplastics", materials: &[Material::Thermoplastic], rough: (0.015, 0.015), finish: (0.005, 0.005), source: LatheFeedSource::Plastics },
];

/// The name of the source of [`LATHE`].
pub const LATHE_SOURCE: &str =
    "unsigned shop handout on speeds and feeds: table of lathe feeds, HSS tools";

/// Feed per turn of a parting blade with power feed, in/rev: about this (TM 1-420, par. 32 d).
pub const PART_FEED: f64 = 0.002;
/// A counterbore's share of the drill's speed and feed, from and to (a tool maker's user guide, p. 33).
pub const COUNTERBORE_SHARE: (f64, f64) = (0.80, 0.85);
/// Feed of a reamer per flute and turn, inches, from and to (a reamer maker's guide).
pub const REAM_FEED_PER_FLUTE: (f64, f64) = (0.002, 0.003);

/// Stock for the reamer by hole diameter up to and including the first figure: least and most on the diameter, inches (a reamer
/// maker's guide, 0.090 to 2.50 in).
pub const REAM_STOCK: &[(f64, f64, f64)] = &[
    (0.170, 0.005, 0.010),
    (0.280, 0.008, 0.012),
    (0.880, 0.010, 0.016),
    (2.500, 0.015, 0.030),
];

/// The reamer maker's stock for a hole, least and most on the diameter; nothing outside 0.090 to 2.50 in.
///
/// ```
/// use benchslate_core::{quantity::Length, standards::feeds::ream_stock};
/// let (least, most) = ream_stock(Length::from_inches(0.5)).unwrap();
/// assert!((least.inches() - 0.010).abs() < 1e-9 && (most.inches() - 0.016).abs() < 1e-9); // .281 to .880
/// assert!(ream_stock(Length::from_inches(3.0)).is_none());
/// ```
pub fn ream_stock(diameter: Length) -> Option<(Length, Length)> {
    let inches = libm::round(diameter.inches() * 1e6) / 1e6;
    REAM_STOCK
        .iter()
        .find(|row| (0.090..=row.0).contains(&inches))
        .map(|row| (Length::from_inches(row.1), Length::from_inches(row.2)))
}

/// One row of the carbide end mill chart: feed per tooth at 1/8, 1/4, 1/2, 3/4 and 1 in; zero where the cell is left out.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct CarbideFeedRow {
    /// The row's own words.
    pub detail: &'static str,
    /// The materials that are filed under it.
    pub materials: &'static [Material],
    /// Feed per tooth, inches, at each of [`CARBIDE_DIAMETERS`].
    pub at: [f64; 5],
}

/// The diameters of the columns of [`CARBIDE_END`], inches.
pub const CARBIDE_DIAMETERS: [f64; 5] = [0.125, 0.25, 0.5, 0.75, 1.0];

/// Feed per tooth of carbide end mills (an end mill maker's chart). Two cells look like misprints and are left out: aluminium at 1/8
/// (0.005 beside 0.002 at 1/4) and nickel at 1/4 (0.008 between 0.0005 and 0.001).
#[rustfmt::skip]
pub const CARBIDE_END: &[CarbideFeedRow] = &[
    CarbideFeedRow { detail: "aluminium", materials: &[Material::Aluminium, Material::CastAluminium], at: [0.0, 0.002, 0.004, 0.006, 0.008] },
    CarbideFeedRow { detail: "brass, bronze", materials: &[Material::Brass, Material::HardBrass, Material::Bronze], at: [0.001, 0.002, 0.003, 0.004, 0.005] },
    CarbideFeedRow { detail: "plastics", materials: &[Material::Thermoplastic, Material::Thermoset], at: [0.0015, 0.003, 0.006, 0.010, 0.012] },
    CarbideFeedRow { detail: "cast and malleable iron", materials: &[Material::GrayIron, Material::MalleableIron], at: [0.0005, 0.001, 0.003, 0.005, 0.007] },
    CarbideFeedRow { detail: "nickel alloys", materials: &[Material::Nickel], at: [0.0005, 0.0, 0.001, 0.0013, 0.002] },
    CarbideFeedRow { detail: "monel", materials: &[Material::Monel], at: [0.0005, 0.001, 0.0015, 0.003, 0.004] },
    CarbideFeedRow { detail: "leaded steels", materials: &[Material::FreeMachiningSteel], at: [0.0005, 0.0013, 0.003, 0.004, 0.0065] },
    CarbideFeedRow { detail: "tool steels", materials: &[Material::ToolSteel], at: [0.0002, 0.0008, 0.0015, 0.002, 0.003] },
    CarbideFeedRow { detail: "ductile iron", materials: &[Material::DuctileIron], at: [0.0005, 0.001, 0.002, 0.003, 0.005] },
    CarbideFeedRow { detail: "stainless steel", materials: &[Material::StainlessSteel], at: [0.0005, 0.001, 0.003, 0.004, 0.006] },
    CarbideFeedRow { detail: "low-carbon steel", materials: &[Material::MildSteel], at: [0.0005, 0.001, 0.003, 0.0045, 0.0065] },
    CarbideFeedRow { detail: "medium-carbon steel", materials: &[Material::CarbonSteel], at: [0.0005, 0.001, 0.002, 0.004, 0.005] },
    CarbideFeedRow { detail: "titanium, hard", materials: &[Material::Titanium], at: [0.0003, 0.0005, 0.001, 0.002, 0.0035] },
];

/// The metals that Carvill's carbide table covers, at 0.2 mm per tooth.
pub const CARBIDE_FACE: &[Material] = &[
    Material::MildSteel,
    Material::CarbonSteel,
    Material::StainlessSteel,
];

/// The feed per tooth that a source gives for a carbide cutter: of an end mill that of the next smaller diameter in the chart, of a
/// face mill Carvill's 0.2 mm. Half of it is the light end ("halve for finishing", common practice). Nothing where neither covers it.
///
/// ```
/// use benchslate_core::quantity::Length;
/// use benchslate_core::standards::{cutting_speeds::Material, feeds::*};
/// let of = |d| carbide_tooth_feed_band(MillingCutter::End, Material::GrayIron, Length::from_inches(d));
/// assert!((of(0.5).unwrap().start.in_per_tooth() - 0.003).abs() < 1e-12); // an end mill maker's chart
/// assert_eq!(of(0.7), of(0.5));
/// assert!(of(0.1).is_none());
/// ```
pub fn carbide_tooth_feed_band(
    cutter: MillingCutter,
    material: Material,
    diameter: Length,
) -> Option<ToothFeedBand> {
    let inches = libm::round(diameter.inches() * 1e6) / 1e6;
    let feed = match cutter {
        MillingCutter::End => {
            let row = CARBIDE_END
                .iter()
                .find(|row| row.materials.contains(&material))?;
            let (_, feed) = CARBIDE_DIAMETERS
                .iter()
                .zip(row.at)
                .rfind(|(size, feed)| **size <= inches && *feed > 0.0)?;
            FeedPerTooth::from_in_per_tooth(feed)
        }
        MillingCutter::Face if CARBIDE_FACE.contains(&material) => {
            FeedPerTooth::from_mm_per_tooth(0.2)
        }
        _ => return None,
    };
    Some(ToothFeedBand {
        low: feed * 0.5,
        start: feed,
        high: feed,
        by_material: false,
        by_cut: false,
        handout: false,
    })
}
