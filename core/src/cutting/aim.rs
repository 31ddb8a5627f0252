//! Which cutting speed is aimed at for this operation? The published band, or the rule that a source gives in its place.

use crate::quantity::SurfaceSpeed;
use crate::sheet::Source;
use crate::standards::cutting_speeds::{
    CutterMaterial, Material, Operation, SpeedBand, speed_band,
};

use super::sources::{
    CARBIDE_NOT_SLOW, CARBIDE_TWICE, CARBON_HALF, HOLE_FACTORS, REAM_HALF, REAM_NOT_FASTER,
    THREAD_SHARE, TURN_FROM_DRILL,
};

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
    /// The rules that were laid over the rows, where any were.
    pub rules: Vec<&'static Source>,
}

const SLOWEST: &str = "the slowest of these rows that was read in print: it spares the cutter, and speed is easily added";
const REAMED: &str = "no reaming row for this material: half of the slowest drilling speed, up to two thirds of the fastest";
const SUNK: &str = "a quarter of the drilling speed, for a countersink or counterbore";
const CARBON: &str = "no row for carbon-steel cutters: half of the HSS speed";
const CARBIDE: &str = "no row for carbide: twice the HSS speed, up to three times";
const TURNED: &str = "no turning row for this material: the drilling speed, up to twice";
const MILLED: &str = "no milling row for this material: the drilling speed, up to half more";
const THREADED: &str =
    "no threading row for this material: a quarter of the turning speed, up to half";
const CARBON_LESS: &str =
    "yet start at half of the HSS speed: an old cutter loses its temper before HSS does";
const CARBIDE_MORE: &str = "yet start at the HSS speed: carbide gains nothing by running slower";
const REAM_LESS: &str = "yet start at the drilling speed: a reamer is run no faster than the drill";

impl SpeedAim {
    fn of(band: SpeedBand) -> Self {
        Self {
            low: band.low,
            start: band.start,
            high: band.high,
            because: SLOWEST,
            band,
            rules: Vec::new(),
        }
    }

    /// The start moved to that of a neighbour.
    fn moved(mut self, start: SurfaceSpeed, because: &'static str, rule: &'static Source) -> Self {
        self.low = self.low.min(start);
        self.start = start;
        self.because = because;
        self.rules.push(rule);
        self
    }

    /// A rule laid over it: the slow end, the start and the fast end each times its own factor.
    pub(crate) fn scaled(
        mut self,
        [low, start, high]: [f64; 3],
        because: &'static str,
        rule: &'static Source,
    ) -> Self {
        self.low = self.low * low;
        self.start = self.start * start;
        self.high = self.high * high;
        self.because = because;
        self.rules.push(rule);
        self
    }
}

/// The band for an operation; nothing where no source that we know covers it. `countersink` lays the quarter rule over the
/// drilling rows. Where an operation has no row of its own, one rule (never two) is laid over another's rows:
///
/// - reaming: half (TM 1-420) to two thirds of the drilling speed;
/// - carbon-steel cutters: half of the HSS speed (Machinery's Handbook, 28th ed., cutting tool materials);
/// - carbide, but for taps and threads: twice (shop handout) to three times (a small lathe maker's leaflet) the HSS speed;
/// - HSS in the lathe: one to two times the drilling speed; HSS milling: one to one and a half times (unsigned shop table);
/// - a single-point thread: a quarter to a half of the turning speed (common practice).
///
/// Then the start is kept in step with its neighbours: carbon steel starts at no more than half of HSS, carbide at no less than HSS,
/// a reamer at no more than the drill.
pub fn speed_aim(
    material: Material,
    operation: Operation,
    cutter: CutterMaterial,
    hardness_hb: Option<u16>,
    countersink: bool,
) -> Option<SpeedAim> {
    use CutterMaterial::{Carbide, CarbonSteel, HighSpeedSteel};
    let aim = own_aim(material, operation, cutter, hardness_hb, countersink)?;
    let start = |operation, cutter| {
        own_aim(material, operation, cutter, hardness_hb, countersink).map(|aim| aim.start)
    };
    let aim = match (operation, cutter) {
        (Operation::Reaming, HighSpeedSteel | CarbonSteel) => {
            match start(Operation::Drilling, cutter) {
                Some(drill) if drill < aim.start => aim.moved(drill, REAM_LESS, &REAM_NOT_FASTER),
                _ => aim,
            }
        }
        _ => aim,
    };
    if cutter == HighSpeedSteel {
        return Some(aim);
    }
    Some(match (cutter, start(operation, HighSpeedSteel)) {
        (CarbonSteel, Some(hss)) if hss * 0.5 < aim.start => {
            aim.moved(hss * 0.5, CARBON_LESS, &CARBON_HALF)
        }
        (Carbide, Some(hss)) if aim.start < hss => {
            let start = hss.min(aim.high);
            aim.moved(start, CARBIDE_MORE, &CARBIDE_NOT_SLOW)
        }
        _ => aim,
    })
}

/// The band by its own rows, or by one rule.
fn own_aim(
    material: Material,
    operation: Operation,
    cutter: CutterMaterial,
    hardness_hb: Option<u16>,
    countersink: bool,
) -> Option<SpeedAim> {
    use CutterMaterial::{Carbide, CarbonSteel, HighSpeedSteel};
    use Operation::{Drilling, Milling, Reaming, Tapping, Threading, TurningFinish, TurningRough};
    let find =
        |operation, cutter| speed_band(material, operation, cutter, hardness_hb).map(SpeedAim::of);
    let drilled = || find(Drilling, cutter);
    if countersink {
        return drilled().map(|aim| aim.scaled([0.25; 3], SUNK, &HOLE_FACTORS));
    }
    find(operation, cutter)
        .or_else(|| match operation {
            Reaming => drilled().map(|aim| aim.scaled([0.5, 0.5, 2.0 / 3.0], REAMED, &REAM_HALF)),
            _ => None,
        })
        .or_else(|| {
            let hss = find(operation, HighSpeedSteel);
            match (cutter, operation) {
                (CarbonSteel, _) => hss.map(|aim| aim.scaled([0.5; 3], CARBON, &CARBON_HALF)),
                (Carbide, Tapping | Threading) => None,
                (Carbide, _) => hss.map(|aim| aim.scaled([2.0, 2.0, 3.0], CARBIDE, &CARBIDE_TWICE)),
                (HighSpeedSteel, TurningRough | TurningFinish) => {
                    drilled().map(|aim| aim.scaled([1.0, 1.0, 2.0], TURNED, &TURN_FROM_DRILL))
                }
                (HighSpeedSteel, Milling) => {
                    drilled().map(|aim| aim.scaled([1.0, 1.0, 1.5], MILLED, &TURN_FROM_DRILL))
                }
                (HighSpeedSteel, Threading) => find(TurningRough, cutter)
                    .map(|aim| aim.scaled([0.25, 0.25, 0.5], THREADED, &THREAD_SHARE)),
                _ => None,
            }
        })
}
