//! Which chip does a cutter of this diameter bear? Where it rubs, where it is heavy in steel, and where it breaks.

use super::chip::rubbing_limit;
use crate::quantity::Length;
use crate::source::Source;

/// Feed per tooth of HSS end mills by diameter.
pub(crate) static HSS_BY_DIAMETER: Source = Source::read(
    "An end mill maker's chart",
    "HSS, feed per tooth by diameter: low-carbon steel 0.001 at 1/4 in, 0.004 at 1 in; aluminum 0.003 and 0.009",
);
/// Feed per tooth of carbide end mills by diameter.
pub(crate) static CARBIDE_BY_DIAMETER: Source = Source::read(
    "An end mill maker's chart, carbide",
    "feed per tooth by diameter: low-carbon steel 0.001 at 1/4 in, 0.0065 at 1 in; aluminum 0.002 and 0.008",
);
/// Small cutters bear a feed in proportion to their diameter.
pub(crate) static SMALL_IN_PROPORTION: Source = Source::read(
    "End mill maker's catalogue, 2021",
    "p. 23: in every group of metals the feed per tooth grows with the diameter, 0.002 to 0.006 mm at 1 mm, 0.006 to 0.05 at 6, 0.014 to 0.08 at 12",
);

/// Diameters of the charts' columns, inches.
const DIAMETERS: [f64; 5] = [0.125, 0.25, 0.5, 0.75, 1.0];
/// Low-carbon steel, HSS, inches per tooth. The chart prints 1/4 and 1 in; straight between, in proportion below.
const HSS_STEEL: [f64; 5] = [0.0005, 0.001, 0.002, 0.003, 0.004];
/// Aluminum, HSS, the most of the chart, likewise.
const HSS_SOFT: [f64; 5] = [0.0015, 0.003, 0.005, 0.007, 0.009];
/// Low-carbon steel, carbide.
const CARBIDE_STEEL: [f64; 5] = [0.0005, 0.001, 0.003, 0.0045, 0.0065];
/// Aluminum, carbide, in proportion below 1/4 in.
const CARBIDE_SOFT: [f64; 5] = [0.001, 0.002, 0.004, 0.006, 0.008];

/// A cutter rubs below this share of its diameter, or below the common limit if that is less: half of the charts' feed in steel.
const RUB_SHARE: f64 = 0.002;

/// What the charts give as feed per tooth for an end mill of one diameter, as the thickest chip.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct ChipLimits {
    /// Low-carbon steel: more is heavy.
    pub steel: Length,
    /// Aluminum, the most that any row of metal gives: more is likely to break it.
    pub soft: Length,
}

/// The charts' feed per tooth for an end mill of a diameter, HSS or carbide; nothing over 1 in, where they end.
///
/// - Straight between the columns, in proportion to the diameter below the first.
/// - Range: up to 1 in. Sources: an end mill maker's charts, HSS and carbide; the proportion: end mill maker's catalogue, 2021, p. 23.
///
/// ```
/// use benchslate_core::{cutting::chip_limits, quantity::Length};
/// let at = |d| chip_limits(false, Length::from_inches(d)).unwrap();
/// assert!((at(0.25).steel.inches() - 0.001).abs() < 1e-12); // the chart, HSS, low-carbon steel
/// assert!((at(1.0).soft.inches() - 0.009).abs() < 1e-12); // the chart, HSS, aluminum
/// assert!((at(0.0625).steel.inches() - 0.00025).abs() < 1e-12); // a quarter of 1/4 in
/// assert!(chip_limits(false, Length::from_inches(1.25)).is_none());
/// ```
pub fn chip_limits(carbide: bool, diameter: Length) -> Option<ChipLimits> {
    // rounded so that a printed size meets its own column whatever the last bit of its conversion
    let d = libm::round(diameter.inches() * 1e9) / 1e9;
    let (steel, soft) = if carbide {
        (&CARBIDE_STEEL, &CARBIDE_SOFT)
    } else {
        (&HSS_STEEL, &HSS_SOFT)
    };
    (d > 0.0 && d <= 1.0).then(|| ChipLimits {
        steel: Length::from_inches(between(steel, d)),
        soft: Length::from_inches(between(soft, d)),
    })
}

/// A column's figure at a diameter, inches: in proportion below the first, straight between.
fn between(figures: &[f64; 5], d: f64) -> f64 {
    let mut before = (0.0, 0.0);
    for at in DIAMETERS.iter().copied().zip(figures.iter().copied()) {
        if d <= at.0 {
            return before.1 + (at.1 - before.1) * (d - before.0) / (at.0 - before.0);
        }
        before = at;
    }
    before.1
}

/// Thickness of chip below which a cutter of a diameter rubs: [`rubbing_limit`], and less for a small cutter, since its charted
/// feed is less (half of the feed in steel; common practice).
///
/// ```
/// use benchslate_core::{cutting::rubbing_limit_at, quantity::Length};
/// assert!((rubbing_limit_at(false, Some(Length::from_inches(0.5))).thou() - 0.5).abs() < 1e-9);
/// assert!((rubbing_limit_at(false, Some(Length::from_inches(0.125))).thou() - 0.25).abs() < 1e-9); // half of the chart's 0.0005 in
/// ```
pub fn rubbing_limit_at(carbide: bool, diameter: Option<Length>) -> Length {
    let common = rubbing_limit(carbide);
    diameter.map_or(common, |d| common.min(d * RUB_SHARE))
}

/// What becomes of a chip.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum ChipVerdict {
    /// Thinner than the rubbing limit.
    Rubs(Length),
    /// At or over the rubbing limit, and within the chart where one covers the cutter.
    Cuts(Length),
    /// Over the chart's feed in steel.
    Heavy(ChipLimits),
    /// Over every row of the chart for the size.
    Breaks(ChipLimits),
}

/// The verdict on a thickest chip: one of four, for an end mill of a diameter where it is known.
///
/// ```
/// use benchslate_core::{cutting::{chip_verdict, ChipVerdict}, quantity::Length};
/// let of = |thou| chip_verdict(Length::from_thou(thou), false, Some(Length::from_inches(0.125)));
/// assert!(matches!(of(0.2), ChipVerdict::Rubs(_)));
/// assert!(matches!(of(0.5), ChipVerdict::Cuts(_))); // the chart's own feed in steel
/// assert!(matches!(of(1.0), ChipVerdict::Heavy(_)));
/// assert!(matches!(of(1.8), ChipVerdict::Breaks(_)));
/// ```
pub fn chip_verdict(thickest: Length, carbide: bool, diameter: Option<Length>) -> ChipVerdict {
    let rub = rubbing_limit_at(carbide, diameter);
    // a last bit is no step past a limit
    let over = |limit: Length| thickest > limit * (1.0 + 1e-9);
    match diameter.and_then(|d| chip_limits(carbide, d)) {
        Some(limits) if over(limits.soft) => ChipVerdict::Breaks(limits),
        Some(limits) if over(limits.steel) => ChipVerdict::Heavy(limits),
        _ if thickest < rub * (1.0 - 1e-9) => ChipVerdict::Rubs(rub),
        _ => ChipVerdict::Cuts(rub),
    }
}
