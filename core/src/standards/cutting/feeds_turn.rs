//! How much may one turn bite off? Published feeds for drilling, turning, parting and reaming, with the band they leave.
//!
//! Sources: U.S. Navy training manual 14345 and a reprint of handbook bands, edition not stated: feed by drill diameter (in/rev; they
//! disagree at the top of a band, a value inside either is right); an unsigned shop handout, lathe feeds for HSS tools (in/rev), with
//! a feed selection table (unsigned), TM 43-0106, Table 2-8 (stainless) and a plastics supplier's guide beside it; a reamer maker's
//! guide, feed per flute and stock by diameter; TM 1-420, par. 32 d, parting. All in inches, which are authoritative.

use super::cutting_speeds::Material;
use crate::quantity::{FeedPerRev, Length};

/// Who printed a band of drill feeds.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum DrillFeedSource {
    /// U.S. Navy training manual.
    Navy,
    /// Reprint of handbook bands, edition not stated.
    Handbook,
}

impl DrillFeedSource {
    /// Title and place.
    pub const fn title(self) -> &'static str {
        match self {
            Self::Navy => "U.S. Navy training manual 14345, drilling: feed by drill diameter",
            Self::Handbook => {
                "Reprint of a handbook table, edition not stated: feed bands for drilling"
            }
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
    LatheFeedRow { detail: "aluminum", materials: &[Material::Aluminium, Material::CastAluminium], rough: (0.015, 0.025), finish: (0.005, 0.010), source: LatheFeedSource::Handout },
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
/// use benchslate_core::{quantity::Length, standards::cutting::feeds::ream_stock};
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
