//! Which cutting speed is aimed at for this operation? The published band, or the rule that a source gives in its place.

use crate::quantity::SurfaceSpeed;
use crate::sheet::Source;
use crate::standards::cutting_speeds::{
    CutterMaterial, Material, Operation, SpeedBand, speed_band,
};

use super::sources::{HOLE_FACTORS, REAM_HALF};

/// A band of cutting speeds with its start and its reason.
#[derive(Clone, PartialEq, Debug)]
pub struct SpeedAim {
    /// The slowest figure.
    pub low: SurfaceSpeed,
    /// Where to start.
    pub start: SurfaceSpeed,
    /// The fastest figure.
    pub high: SurfaceSpeed,
    /// Why the start is where it is, in words.
    pub because: &'static str,
    /// The rows behind it.
    pub band: SpeedBand,
    /// The rule that was laid over the rows, where one was.
    pub rule: Option<&'static Source>,
}

const SLOWEST: &str = "the slowest figure read in print for this material: it spares the cutter, and speed is easily added";
const REAMED: &str = "no reaming row for this material: half of the slowest drilling speed, up to two thirds of the fastest";
const SUNK: &str = "a quarter of the drilling speed, for a countersink or counterbore";

impl SpeedAim {
    /// A rule laid over the rows: the slow end and the start times `low`, the fast end times `high`.
    pub(crate) fn scaled(
        band: SpeedBand,
        low: f64,
        high: f64,
        because: &'static str,
        rule: &'static Source,
    ) -> Self {
        Self {
            low: band.low * low,
            start: band.start * low,
            high: band.high * high,
            because,
            band,
            rule: Some(rule),
        }
    }
}

/// The band for an operation; nothing where no source that we know covers it. `countersink` lays the quarter rule over the
/// drilling rows; reaming without a row of its own takes half (TM 1-420) to two thirds of the drilling speed.
pub fn speed_aim(
    material: Material,
    operation: Operation,
    cutter: CutterMaterial,
    hardness_hb: Option<u16>,
    countersink: bool,
) -> Option<SpeedAim> {
    let find = |operation| speed_band(material, operation, cutter, hardness_hb);
    if countersink {
        return find(Operation::Drilling)
            .map(|band| SpeedAim::scaled(band, 0.25, 0.25, SUNK, &HOLE_FACTORS));
    }
    if let Some(band) = find(operation) {
        let (low, start, high) = (band.low, band.start, band.high);
        return Some(SpeedAim {
            low,
            start,
            high,
            because: SLOWEST,
            band,
            rule: None,
        });
    }
    if operation == Operation::Reaming {
        return find(Operation::Drilling)
            .map(|band| SpeedAim::scaled(band, 0.5, 2.0 / 3.0, REAMED, &REAM_HALF));
    }
    None
}
