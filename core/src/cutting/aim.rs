//! Which cutting speed is aimed at for this operation? The published band, or the rule that a source gives in its place.

use crate::quantity::SurfaceSpeed;
use crate::source::Source;
use crate::standards::cutting::cutting_speeds::{
    CutterMaterial, Material, ORDINARY_HARDNESS_HB, Operation, SpeedBand, SpeedRow, SpeedSource,
    band_among, rows_of,
};

use super::sources::{
    ARMY_PAIR, CARBIDE_NOT_SLOW, CARBIDE_TWICE, CARBON_HALF, FREE_NOT_SLOWER, HARD_BRASS,
    HARDER_NOT_FASTER, HOLE_FACTORS, REAM_HALF, REAM_NOT_FASTER, THREAD_SHARE, TITANIUM_TURNED,
    TURN_FROM_DRILL, WROUGHT_AS_MILD,
};

use CutterMaterial::{Carbide, CarbonSteel, HighSpeedSteel};
use Operation::{Drilling, Milling, Reaming, Tapping, Threading, TurningFinish, TurningRough};

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

const SLOWEST: &str = "the slowest of these rows whose source was read: it spares the cutter, and speed is easily added";
const RECALLED: &str = "the slowest of these rows, all of them from memory: it spares the cutter";
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
const HARDER_LESS: &str =
    "yet start no faster than for softer metal of this kind: harder metal is not cut faster";
const FREE_MORE: &str =
    "yet start as for mild steel: free-machining steel is cut no slower than that";
const PAIRED: &str = "the fast end of its slowest row: the slow end goes with feeds of 0.020 in per rev and more, which a light lathe does not take";
const TITANIUM: &str =
    "yet start at the milling speed of 6Al-4V: the turning row holds for pure titanium";
const BRASS: &str =
    "no row for hard brass: five sixths of the slow end for soft brass, up to that end";
const WROUGHT: &str = "no row for wrought iron: that of mild steel";

impl SpeedAim {
    fn of(band: SpeedBand) -> Self {
        let mut aim = Self {
            low: band.low,
            start: band.start,
            high: band.high,
            because: if band.default.source.read_in_print() {
                SLOWEST
            } else {
                RECALLED
            },
            band,
            rules: Vec::new(),
        };
        let row = aim.band.default;
        if (row.source, row.operation, row.cutter)
            == (SpeedSource::ArmyStainless, TurningRough, HighSpeedSteel)
        {
            aim.start = row.high_speed();
            aim.because = PAIRED;
            aim.rules.push(&ARMY_PAIR);
        }
        aim
    }

    /// The start moved to that of a neighbour.
    fn moved(mut self, start: SurfaceSpeed, because: &'static str, rule: &'static Source) -> Self {
        self.low = self.low.min(start);
        self.high = self.high.max(start);
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

/// What speed is asked for.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct SpeedQuestion {
    /// The work material.
    pub material: Material,
    /// The operation.
    pub operation: Operation,
    /// The cutter material.
    pub cutter: CutterMaterial,
    /// Brinell hardness of the work, where known.
    pub hardness_hb: Option<u16>,
    /// Lay the quarter rule of countersinks over the drilling rows.
    pub countersink: bool,
    /// In milling: an end mill. Charts of end mills say nothing to arbor cutters and face mills where another row or rule does.
    pub end_mill: bool,
}

/// The band for an operation with an end mill, where it is milling; see [`SpeedQuestion::aim`].
pub fn speed_aim(
    material: Material,
    operation: Operation,
    cutter: CutterMaterial,
    hardness_hb: Option<u16>,
    countersink: bool,
) -> Option<SpeedAim> {
    SpeedQuestion {
        material,
        operation,
        cutter,
        hardness_hb,
        countersink,
        end_mill: true,
    }
    .aim()
}

impl SpeedQuestion {
    /// The band for an operation; nothing where no source that we know covers it. Where an operation has no row of its own, one
    /// rule (never two) is laid over another's rows:
    ///
    /// - reaming: half (TM 1-420) to two thirds of the drilling speed;
    /// - carbon-steel cutters: half of the HSS speed (Machinery's Handbook, 28th ed., cutting tool materials);
    /// - carbide, but for taps and threads: twice (shop handout) to three times (a small lathe maker's leaflet) the HSS speed;
    /// - HSS in the lathe: one to two times the drilling speed; HSS milling: one to one and a half times (unsigned shop table);
    /// - a single-point thread: a quarter to a half of the turning speed (common practice);
    /// - hard brass: five sixths of soft brass; wrought iron, but for carbide: mild steel.
    ///
    /// Then the start is kept in step with its neighbours: carbon steel starts at no more than half of HSS, carbide at no less than
    /// HSS, a reamer at no more than the drill, titanium in the lathe at no more than under the mill, harder metal at no more than
    /// softer metal of its kind, free-machining steel at no less than mild steel.
    ///
    /// ```
    /// use benchslate_core::{cutting::speed_aim, standards::cutting::cutting_speeds::*};
    /// let at = |hb| speed_aim(Material::StainlessSteel, Operation::TurningRough, CutterMaterial::HighSpeedSteel, Some(hb), false);
    /// assert!(at(270).unwrap().start <= at(260).unwrap().start); // harder is not faster
    /// ```
    pub fn aim(self) -> Option<SpeedAim> {
        let aim = self.not_faster_when_harder()?;
        if self.material != Material::FreeMachiningSteel {
            return Some(aim);
        }
        let mild = Self {
            material: Material::MildSteel,
            ..self
        };
        Some(match mild.not_faster_when_harder() {
            Some(mild) if mild.start > aim.start => {
                aim.moved(mild.start, FREE_MORE, &FREE_NOT_SLOWER)
            }
            _ => aim,
        })
    }

    fn not_faster_when_harder(self) -> Option<SpeedAim> {
        let rows = rows_of(self.material.rows_from());
        let aim = self.in_step(&rows)?;
        let Some(hb) = self.hardness_hb else {
            return Some(aim);
        };
        // a start changes only where a row begins or has ended
        let mut limits = vec![1, ORDINARY_HARDNESS_HB + 1];
        for (from, to) in rows.iter().filter_map(|row| row.hardness) {
            for limit in [from, to + 1] {
                if !limits.contains(&limit) {
                    limits.push(limit);
                }
            }
        }
        let softer = limits
            .into_iter()
            .filter(|limit| *limit < hb)
            .filter_map(|limit| {
                let softer = Self {
                    hardness_hb: Some(limit),
                    ..self
                };
                softer.in_step(&rows).map(|aim| aim.start)
            })
            .fold(aim.start, SurfaceSpeed::min);
        Some(if softer < aim.start {
            aim.moved(softer, HARDER_LESS, &HARDER_NOT_FASTER)
        } else {
            aim
        })
    }

    /// In step with the same material under another tool or cutter.
    fn in_step(self, rows: &[SpeedRow]) -> Option<SpeedAim> {
        let mut aim = self.stood_in(rows)?;
        let start = |operation, cutter| {
            let other = Self {
                operation,
                cutter,
                ..self
            };
            other.in_step(rows).map(|aim| aim.start)
        };
        if self.operation == Reaming
            && self.cutter != Carbide
            && let Some(drill) = start(Drilling, self.cutter)
            && drill < aim.start
        {
            aim = aim.moved(drill, REAM_LESS, &REAM_NOT_FASTER);
        }
        if self.material == Material::Titanium
            && self.cutter == HighSpeedSteel
            && matches!(self.operation, TurningRough | TurningFinish)
            && let Some(milled) = start(Milling, self.cutter)
            && milled < aim.start
        {
            aim = aim.moved(milled, TITANIUM, &TITANIUM_TURNED);
        }
        if self.cutter == HighSpeedSteel {
            return Some(aim);
        }
        Some(match (self.cutter, start(self.operation, HighSpeedSteel)) {
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

    /// By its own rows or one rule, or by those of the material that stands in for it.
    fn stood_in(self, rows: &[SpeedRow]) -> Option<SpeedAim> {
        match self.material {
            Material::HardBrass | Material::WroughtIron => {
                let own = rows_of(self.material);
                if let Some(aim) = self.own(&own) {
                    return Some(aim);
                }
            }
            _ => return self.own(rows),
        }
        let other = self.own(rows)?;
        match self.material {
            Material::WroughtIron if self.cutter == Carbide => None,
            Material::WroughtIron => Some(other.scaled([1.0; 3], WROUGHT, &WROUGHT_AS_MILD)),
            _ => {
                let end = other.low;
                let mut aim = other.scaled([5.0 / 6.0; 3], BRASS, &HARD_BRASS);
                aim.start = aim.low;
                aim.high = end;
                Some(aim)
            }
        }
    }

    /// The band by rows of one material, or by one rule.
    fn own(self, rows: &[SpeedRow]) -> Option<SpeedAim> {
        let with = self.by_rows_or_rule(rows);
        if self.operation != Milling || self.end_mill {
            return with;
        }
        let others: Vec<SpeedRow> = rows
            .iter()
            .copied()
            .filter(|row| !row.source.is_of_end_mills())
            .collect();
        let without = self.by_rows_or_rule(&others);
        match (with, without) {
            // carbide runs too slow as easily as too fast: another row that was read is the better one
            (Some(_), Some(without))
                if self.cutter == Carbide
                    && without.band.default.cutter == Carbide
                    && without.band.default.source.read_in_print() =>
            {
                Some(without)
            }
            (Some(with), Some(without)) if self.cutter != Carbide && without.start < with.start => {
                Some(without)
            }
            (with, without) => with.or(without),
        }
    }

    fn by_rows_or_rule(self, rows: &[SpeedRow]) -> Option<SpeedAim> {
        let find = |operation, cutter| {
            band_among(rows, operation, cutter, self.hardness_hb).map(SpeedAim::of)
        };
        let (cutter, drilled) = (self.cutter, || find(Drilling, self.cutter));
        if self.countersink {
            return drilled().map(|aim| aim.scaled([0.25; 3], SUNK, &HOLE_FACTORS));
        }
        find(self.operation, cutter)
            .or_else(|| match self.operation {
                Reaming => {
                    drilled().map(|aim| aim.scaled([0.5, 0.5, 2.0 / 3.0], REAMED, &REAM_HALF))
                }
                _ => None,
            })
            .or_else(|| {
                let hss = find(self.operation, HighSpeedSteel);
                match (cutter, self.operation) {
                    (CarbonSteel, _) => hss.map(|aim| aim.scaled([0.5; 3], CARBON, &CARBON_HALF)),
                    (Carbide, Tapping | Threading) => None,
                    (Carbide, _) => {
                        hss.map(|aim| aim.scaled([2.0, 2.0, 3.0], CARBIDE, &CARBIDE_TWICE))
                    }
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
}

impl Material {
    /// The material whose rows answer where it has none of its own.
    const fn rows_from(self) -> Self {
        match self {
            Self::HardBrass => Self::Brass,
            Self::WroughtIron => Self::MildSteel,
            other => other,
        }
    }
}
