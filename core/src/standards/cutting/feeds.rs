//! How much may one tooth bite off? Published feeds for milling, with the band they leave; end mills by their diameter.
//!
//! Sources: Krar et al., Technology of Machine Tools, recommended feed per tooth for HSS cutters (in per tooth, from memory);
//! a trade table of milling feeds by kind of cut, publisher not stated (in per tooth); an unsigned shop handout. End mills:
//! `feeds_end_mill`; drills and lathe tools: `feeds_turn`. All in inches, which are authoritative.

use super::cutting_speeds::Material;
pub use super::feeds_end_mill::*;
pub use super::feeds_turn::*;
use crate::quantity::{FeedPerTooth, Length};

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
    ToothFeedRow { detail: "aluminum", materials: &[Material::Aluminium, Material::CastAluminium], face: 0.022, slab: 0.018, side: 0.013, end: 0.011, form: 0.007, saw: 0.005 },
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

/// The diameter at which the trade table's row for end mills changes, inches.
const CUT_STEP: f64 = 1.5;

/// Feed per tooth by kind of cut (trade table).
#[rustfmt::skip]
pub const BY_CUT: &[CutFeedRow] = &[
    CutFeedRow { detail: "face milling", cutter: Some(MillingCutter::Face), from_diameter: 0.0, below_diameter: f64::INFINITY, low: 0.007, high: 0.007 },
    CutFeedRow { detail: "straddle milling", cutter: Some(MillingCutter::Side), from_diameter: 0.0, below_diameter: f64::INFINITY, low: 0.005, high: 0.005 },
    CutFeedRow { detail: "slot milling with side mills", cutter: Some(MillingCutter::Side), from_diameter: 0.0, below_diameter: f64::INFINITY, low: 0.003, high: 0.003 },
    CutFeedRow { detail: "slab milling, light", cutter: Some(MillingCutter::Slab), from_diameter: 0.0, below_diameter: f64::INFINITY, low: 0.004, high: 0.004 },
    CutFeedRow { detail: "end milling, 1-1/2 in and over", cutter: Some(MillingCutter::End), from_diameter: CUT_STEP, below_diameter: f64::INFINITY, low: 0.002, high: 0.003 },
    CutFeedRow { detail: "end milling, under 1-1/2 in", cutter: Some(MillingCutter::End), from_diameter: 0.0, below_diameter: CUT_STEP, low: 0.0002, high: 0.002 },
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
    HandoutFeedRow { detail: "aluminum", materials: &[Material::Aluminium, Material::CastAluminium], face: (0.005, 0.020), side: (0.004, 0.010) },
    HandoutFeedRow { detail: "brass and bronze", materials: &[Material::Brass, Material::HardBrass, Material::Bronze], face: (0.004, 0.020), side: (0.004, 0.010) },
    HandoutFeedRow { detail: "cast iron, soft", materials: &[Material::GrayIron], face: (0.004, 0.016), side: (0.004, 0.009) },
];

/// A band of feeds per tooth.
#[allow(clippy::struct_excessive_bools)] // which of four tables take part, each named where it is set
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
    /// True where the chart of HSS end mills takes part.
    pub by_chart: bool,
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
/// use benchslate_core::standards::{cutting::cutting_speeds::Material, cutting::feeds::*};
/// let band = tooth_feed_band(MillingCutter::Slab, Material::MildSteel, Length::from_inches(2.5)).unwrap();
/// assert!((band.high.in_per_tooth() - 0.010).abs() < 1e-12); // Krar
/// assert!((band.start.in_per_tooth() - 0.004).abs() < 1e-12); // trade table, slab milling, light
/// let end = |d| tooth_feed_band(MillingCutter::End, Material::MildSteel, Length::from_inches(d)).unwrap().start.in_per_tooth();
/// assert!((end(0.25) - 0.001).abs() < 1e-12); // an end mill maker's chart, low-carbon steel
/// assert!((end(0.0625) - 0.000_25).abs() < 1e-12); // in proportion below 1/4 in
/// ```
pub fn tooth_feed_band(
    cutter: MillingCutter,
    material: Material,
    diameter: Length,
) -> Option<ToothFeedBand> {
    // a cutter called 1/4 must fall on the limit whatever the last bit of its conversion
    let inches = libm::round(diameter.inches() * 1e6) / 1e6;
    let end = (cutter == MillingCutter::End).then(|| end_mill_feed(material, inches));
    // a row that names no diameter speaks of large end mills: a small one takes it in proportion
    let share = end.map_or(1.0, |_| inches.min(1.0));
    let by_material = BY_MATERIAL
        .iter()
        .find(|row| row.materials.contains(&material))
        .map(|row| row.feed(cutter).in_per_tooth() * share)
        .map(|rough| (rough / 2.0, rough));
    let by_cut = BY_CUT
        .iter()
        .filter(|row| {
            row.cutter == Some(cutter) && row.from_diameter <= inches && inches < row.below_diameter
        })
        .map(|row| (row.low, row.high))
        .reduce(|a, b| (a.0.min(b.0), a.1.max(b.1)))
        .map(|(low, high)| match end {
            // its range runs over all diameters: the least is that of the smallest
            Some(chart) => (chart / 2.0, high * (inches / CHART_FROM).min(1.0)),
            None => (low.min(high / 2.0), high),
        });
    let handout = HANDOUT
        .iter()
        .find(|row| row.materials.contains(&material))
        .and_then(|row| match cutter {
            MillingCutter::Face => Some(row.face),
            MillingCutter::Side => Some(row.side),
            _ => None,
        });
    let by_chart = end.map(|feed| (feed / 2.0, feed));
    let given = || {
        [by_chart, by_material, by_cut, handout]
            .into_iter()
            .flatten()
    };
    let start = given().map(|band| band.1).reduce(f64::min)?;
    // under 1-1/2 in the trade row holds a start back, but its top is no small cutter's
    let by_cut_top = by_cut.filter(|_| end.is_none() || inches >= CUT_STEP);
    let (low, high) = [by_chart, by_material, by_cut_top, handout]
        .into_iter()
        .flatten()
        .fold((start, start), |a, b| (a.0.min(b.0), a.1.max(b.1)));
    let low = if end.is_some() {
        low.min(start / 2.0)
    } else {
        low
    };
    Some(ToothFeedBand {
        low: FeedPerTooth::from_in_per_tooth(low),
        start: FeedPerTooth::from_in_per_tooth(start),
        high: FeedPerTooth::from_in_per_tooth(high),
        by_material: by_material.is_some(),
        by_cut: by_cut.is_some(),
        handout: handout.is_some(),
        by_chart: by_chart.is_some(),
    })
}
