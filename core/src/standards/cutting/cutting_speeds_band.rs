//! Which rows speak of this metal at this hardness, and what band do they leave? A gap between rows is bridged by the slower.

use super::cutting_speeds::{CutterMaterial, Operation, SpeedRow, rows_of};
use super::work_materials::Material;
use crate::quantity::SurfaceSpeed;

/// Hardness up to which a row counts as ordinary, annealed metal where no hardness is given.
pub const ORDINARY_HARDNESS_HB: u16 = 260;
/// A row that runs past [`ORDINARY_HARDNESS_HB`] still speaks of ordinary metal where it begins at this or below, and its middle is ordinary.
const BEGINS_ORDINARY_HB: u16 = 200;

/// How a hardness was met for which no row is printed.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Bridged {
    /// It lies between rows that end and begin at these: both count, so the slower one gives the start.
    Between(u16, u16),
    /// It is softer than the softest row, which begins here and stands in: softer metal bears that speed.
    Softer(u16),
}

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
    /// How the hardness was met, where no row is printed for it.
    pub bridged: Option<Bridged>,
}

/// Does a row that is printed for these hardnesses speak of ordinary metal?
const fn is_ordinary((from, to): (u16, u16)) -> bool {
    to <= ORDINARY_HARDNESS_HB
        || (from <= BEGINS_ORDINARY_HB && u16::midpoint(from, to) <= ORDINARY_HARDNESS_HB)
}

/// The band of published cutting speeds, or nothing where no source that we know covers it.
///
/// With a hardness, rows printed for another hardness fall out, and for iron and steel above [`ORDINARY_HARDNESS_HB`] those
/// that name none. Where none is left, between two printed hardnesses the rows on both sides count, below the softest that one ([`Bridged`]);
/// nothing stands in above the hardest. Without a hardness, rows for metal harder than [`ORDINARY_HARDNESS_HB`] fall out,
/// unless there are no others; a broad row that begins with ordinary metal counts.
///
/// Library only: the sheets read the rows of a material once and ask for its bands among them.
///
/// ```
/// use benchslate_core::standards::cutting::cutting_speeds::*;
/// let of = |hb| speed_band(Material::MildSteel, Operation::Drilling, CutterMaterial::HighSpeedSteel, hb);
/// // Kalpakjian's 500 rpm at 12.5 mm is 19.6 m/min; the Navy's band is 80 to 110 ft/min.
/// let band = of(None).unwrap();
/// assert!(band.low.sfm() > 64.0 && band.high.sfm() < 111.0);
/// assert!(of(Some(400)).is_none());
/// ```
pub fn speed_band(
    material: Material,
    operation: Operation,
    cutter: CutterMaterial,
    hardness_hb: Option<u16>,
) -> Option<SpeedBand> {
    band_among(&rows_of(material), operation, cutter, hardness_hb)
}

/// [`speed_band`] among the rows of one material.
pub(crate) fn band_among(
    rows: &[SpeedRow],
    operation: Operation,
    cutter: CutterMaterial,
    hardness_hb: Option<u16>,
) -> Option<SpeedBand> {
    let matching = || {
        rows.iter()
            .copied()
            .filter(|row| (row.operation, row.cutter) == (operation, cutter))
    };
    // a row that names no hardness speaks of ordinary metal: of hard iron or steel it says nothing
    let plain_fits = |row: &SpeedRow| {
        hardness_hb.is_none_or(|hb| hb <= ORDINARY_HARDNESS_HB || !row.material.is_iron_or_steel())
    };
    let plain = matching().any(|row| row.hardness.is_none() && plain_fits(&row));
    let bridged = hardness_hb
        .filter(|_| !plain)
        .and_then(|hb| bridge(matching(), hb));
    let fits = |row: &SpeedRow| match (row.hardness, hardness_hb) {
        (None, _) => plain_fits(row),
        (Some((from, to)), Some(hb)) => {
            (from <= hb && hb <= to)
                || match bridged {
                    Some(Bridged::Between(below, above)) => to == below || from == above,
                    Some(Bridged::Softer(softest)) => from == softest,
                    None => false,
                }
        }
        (Some(range), None) => is_ordinary(range),
    };
    let mut kept: Vec<SpeedRow> = matching().filter(fits).collect();
    if kept.is_empty() && hardness_hb.is_none() {
        kept = matching().collect();
    }
    let slowest = |a: &SpeedRow, b: &SpeedRow| {
        let key = |row: &SpeedRow| (!row.source.read_in_print(), row.low_speed().m_per_min());
        key(a)
            .partial_cmp(&key(b))
            .unwrap_or(core::cmp::Ordering::Equal)
    };
    let default = kept.iter().copied().min_by(slowest)?;
    let low = kept
        .iter()
        .fold(default.low_speed(), |low, row| low.min(row.low_speed()));
    let high = kept
        .iter()
        .fold(default.high_speed(), |high, row| high.max(row.high_speed()));
    Some(SpeedBand {
        low,
        start: default.low_speed(),
        high,
        default,
        harder_rows_left_out: hardness_hb.is_none() && kept.len() < matching().count(),
        rows: kept,
        bridged,
    })
}

/// How a hardness is met that no row covers; nothing where one does, where no row names any, or past the hardest.
fn bridge(rows: impl Iterator<Item = SpeedRow>, hb: u16) -> Option<Bridged> {
    let (mut below, mut above) = (None, None);
    for (from, to) in rows.filter_map(|row| row.hardness) {
        if (from..=to).contains(&hb) {
            return None;
        }
        if to < hb {
            below = below.max(Some(to));
        } else {
            above = Some(above.map_or(from, |above: u16| above.min(from)));
        }
    }
    match (below, above) {
        (Some(below), Some(above)) => Some(Bridged::Between(below, above)),
        (None, Some(softest)) => Some(Bridged::Softer(softest)),
        _ => None,
    }
}
