//! How much may a tooth of this end mill bite off? By its diameter, for HSS and for carbide: a small cutter takes a small chip.
//!
//! Sources: an end mill maker's chart, HSS, Table A (feed per tooth at 1/4 in and at 1 in and over, beside the speeds of
//! `cutting_speeds_milling`); an end mill maker's chart for carbide by diameter; Carvill, section 5.4, p. 187 (carbide face mills at
//! 0.2 mm). Below the smallest size of a chart the feed goes in proportion to the diameter: an end mill maker's catalogue of 2021, p. 23,
//! has 0.002 to 0.006 mm at 1 mm and 0.006 to 0.05 mm at 6 mm. All in inches, which are authoritative.

use super::cutting_speeds::Material;
use super::feeds::{MillingCutter, ToothFeedBand, tooth_feed_band};
use crate::quantity::{FeedPerTooth, Length};

/// The smallest diameter of the chart of HSS end mills, inches.
pub const CHART_FROM: f64 = 0.25;
/// The diameter from which the chart's feed stays, inches.
pub const CHART_TO: f64 = 1.0;

/// One row of the chart of HSS end mills.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct HssEndRow {
    /// The row's own words.
    pub detail: &'static str,
    /// The materials that are filed under it, the one that it names first.
    pub materials: &'static [Material],
    /// Feed per tooth at [`CHART_FROM`], inches.
    pub small: f64,
    /// Feed per tooth at [`CHART_TO`] and over, inches.
    pub large: f64,
}

/// Feed per tooth of HSS end mills. A material that the chart does not name stands under a row with a lighter feed than low-carbon
/// steel where it is tough, and all the rest take low-carbon steel (common practice).
#[rustfmt::skip]
pub const HSS_END: &[HssEndRow] = &[
    HssEndRow { detail: "low-carbon steel", materials: &[Material::MildSteel], small: 0.001, large: 0.004 },
    HssEndRow { detail: "304 stainless steel", materials: &[Material::StainlessSteel], small: 0.001, large: 0.004 },
    HssEndRow { detail: "4140", materials: &[Material::AlloySteel, Material::CarbonSteel, Material::CastSteel, Material::ToolSteel], small: 0.0005, large: 0.003 },
    HssEndRow { detail: "4340", materials: &[Material::Titanium, Material::AusteniticIron], small: 0.0003, large: 0.002 },
    HssEndRow { detail: "nickel", materials: &[Material::Nickel, Material::Monel], small: 0.0002, large: 0.002 },
    HssEndRow { detail: "soft iron", materials: &[Material::GrayIron], small: 0.003, large: 0.008 },
    HssEndRow { detail: "aluminum", materials: &[Material::Aluminium, Material::CastAluminium], small: 0.003, large: 0.009 },
];

/// Feed per tooth of an HSS end mill, inches: straight between the two sizes of the chart, below in proportion to the diameter.
pub(super) fn end_mill_feed(material: Material, inches: f64) -> f64 {
    let row = HSS_END
        .iter()
        .find(|row| row.materials.contains(&material))
        .or(HSS_END.first());
    let (small, large) = row.map_or((0.0, 0.0), |row| (row.small, row.large));
    if inches < CHART_FROM {
        return small * inches / CHART_FROM;
    }
    let along = (inches.min(CHART_TO) - CHART_FROM) / (CHART_TO - CHART_FROM);
    small + (large - small) * along
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

/// Feed per tooth of carbide end mills (an end mill maker's chart). Two cells look like misprints and are left out: aluminum at 1/8
/// (0.005 beside 0.002 at 1/4) and nickel at 1/4 (0.008 between 0.0005 and 0.001).
#[rustfmt::skip]
pub const CARBIDE_END: &[CarbideFeedRow] = &[
    CarbideFeedRow { detail: "aluminum", materials: &[Material::Aluminium, Material::CastAluminium], at: [0.0, 0.002, 0.004, 0.006, 0.008] },
    CarbideFeedRow { detail: "brass, bronze", materials: &[Material::Brass, Material::HardBrass, Material::Bronze], at: [0.001, 0.002, 0.003, 0.004, 0.005] },
    CarbideFeedRow { detail: "plastics", materials: &[Material::Thermoplastic, Material::Thermoset], at: [0.0015, 0.003, 0.006, 0.010, 0.012] },
    CarbideFeedRow { detail: "cast and malleable iron", materials: &[Material::GrayIron, Material::MalleableIron], at: [0.0005, 0.001, 0.003, 0.005, 0.007] },
    CarbideFeedRow { detail: "nickel alloys", materials: &[Material::Nickel], at: [0.0005, 0.0, 0.001, 0.0013, 0.002] },
    CarbideFeedRow { detail: "nickel-copper alloy", materials: &[Material::Monel], at: [0.0005, 0.001, 0.0015, 0.003, 0.004] },
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
/// face mill Carvill's 0.2 mm. Half of it is the light end ("halve for finishing", common practice). Below the smallest size of the
/// chart in proportion to the diameter, and under 1/8 in never more than HSS: small carbide is brittle. Nothing where neither covers it.
///
/// ```
/// use benchslate_core::quantity::Length;
/// use benchslate_core::standards::{cutting::cutting_speeds::Material, cutting::feeds::*};
/// let of = |d| carbide_tooth_feed_band(MillingCutter::End, Material::GrayIron, Length::from_inches(d));
/// assert!((of(0.5).unwrap().start.in_per_tooth() - 0.003).abs() < 1e-12); // an end mill maker's chart
/// assert_eq!(of(0.7), of(0.5));
/// assert!((of(0.0625).unwrap().start.in_per_tooth() - 0.000_25).abs() < 1e-12); // half of that at 1/8 in
/// assert!(carbide_tooth_feed_band(MillingCutter::End, Material::Zinc, Length::from_inches(0.5)).is_none());
/// ```
pub fn carbide_tooth_feed_band(
    cutter: MillingCutter,
    material: Material,
    diameter: Length,
) -> Option<ToothFeedBand> {
    let inches = libm::round(diameter.inches() * 1e6) / 1e6;
    let feed = match cutter {
        MillingCutter::End => carbide_end_feed(material, inches)?,
        MillingCutter::Face if CARBIDE_FACE.contains(&material) => {
            FeedPerTooth::from_mm_per_tooth(0.2)
        }
        _ => return None,
    };
    let feed = match tooth_feed_band(cutter, material, diameter) {
        Some(hss) if inches < CARBIDE_DIAMETERS[0] => feed.min(hss.start),
        _ => feed,
    };
    Some(ToothFeedBand {
        low: feed * 0.5,
        start: feed,
        high: feed,
        by_material: false,
        by_cut: false,
        handout: false,
        by_chart: false,
    })
}

fn carbide_end_feed(material: Material, inches: f64) -> Option<FeedPerTooth> {
    let row = CARBIDE_END
        .iter()
        .find(|row| row.materials.contains(&material))?;
    let mut printed = CARBIDE_DIAMETERS
        .iter()
        .copied()
        .zip(row.at)
        .filter(|(_, feed)| *feed > 0.0);
    let (smallest, least) = printed.clone().next()?;
    let feed = if inches < smallest {
        least * inches / smallest
    } else {
        printed.rfind(|(size, _)| *size <= inches)?.1
    };
    Some(FeedPerTooth::from_in_per_tooth(feed))
}
