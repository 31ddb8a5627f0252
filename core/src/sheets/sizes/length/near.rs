//! Which standard drills and pins lie nearest to a size?

use crate::pin::{StandardPin, TaperSeries};
use crate::quantity::Length;
use crate::sheet::Source;
use crate::standards::{
    holes::drills::{self, Drill, DrillSeries},
    pins::dowel_pins,
};

static DRILLS: Source =
    Source::from_memory("ASME B94.11M, twist drills", "number and letter sizes");
static STOCK_DRILLS: Source = Source::from_memory(
    "ASME B94.11M and DIN 338, twist drills",
    "fraction and metric stock sizes",
);
static INCH_PINS: Source = Source::from_memory("ASME B18.8.2-2000", "taper pins, dowel pins");
static METRIC_TAPER: Source = Source::from_memory("ISO 2339", "taper pins, sizes");
static METRIC_DOWEL: Source = Source::from_memory("ISO 2338 and ISO 8734", "dowel pins, sizes");

const ALL_SERIES: [DrillSeries; 4] = [
    DrillSeries::Number,
    DrillSeries::Letter,
    DrillSeries::Fraction,
    DrillSeries::Metric,
];
/// How many are listed.
const LISTED: usize = 6;
/// A size further off than this share of itself is not near.
const NEAR_SHARE: f64 = 0.25;

/// A standard size near the one asked for.
pub struct Near {
    /// Its name: "drill No. 7", "dowel 3/16 in".
    pub name: String,
    /// Its size.
    pub size: Length,
    /// Its size less the one asked for.
    pub off: Length,
    /// Whose size it is.
    pub source: &'static Source,
}

fn is_near(size: Length, wanted: Length) -> bool {
    (size - wanted).abs().mm() <= wanted.mm() * NEAR_SHARE
}

/// The drills nearest to a size, nearest first; of two of one size the inch one first.
pub fn drills(wanted: Length) -> Vec<Near> {
    let off = |drill: &Drill| (drill.diameter - wanted).abs().mm();
    let mut near: Vec<Drill> = ALL_SERIES
        .into_iter()
        .flat_map(drills::series)
        .filter(|drill| is_near(drill.diameter, wanted))
        .collect();
    crate::order::sort_by(&mut near, |a, b| {
        off(a).total_cmp(&off(b)).then(a.series.cmp(&b.series))
    });
    near.truncate(LISTED);
    let listed = near.into_iter().map(|drill| Near {
        name: drill.name(),
        size: drill.diameter,
        off: drill.diameter - wanted,
        source: if matches!(drill.series, DrillSeries::Number | DrillSeries::Letter) {
            &DRILLS
        } else {
            &STOCK_DRILLS
        },
    });
    listed.collect()
}

/// The taper pins (by their named end) and dowels (by their nominal) nearest to a size, nearest first.
pub fn pins(wanted: Length) -> Vec<Near> {
    let mut all: Vec<Near> = Vec::new();
    let mut push = |size: Length, source: &'static Source, name: &dyn Fn() -> String| {
        if is_near(size, wanted) {
            all.push(Near {
                name: name(),
                size,
                off: size - wanted,
                source,
            });
        }
    };
    for (series, source, end) in [
        (TaperSeries::Inch, &INCH_PINS, "large end"),
        (TaperSeries::Metric, &METRIC_TAPER, "small end"),
    ] {
        for pin in StandardPin::all(series) {
            push(pin.named_end(), source, &|| {
                format!("taper pin {}, {end}", pin.name())
            });
        }
    }
    for dowel in &dowel_pins::INCH {
        push(dowel.nominal(), &INCH_PINS, &|| {
            format!("dowel {} in", dowel.size)
        });
    }
    for dowel in &dowel_pins::METRIC {
        push(dowel.nominal(), &METRIC_DOWEL, &|| {
            format!("dowel {} mm", dowel.size)
        });
    }
    // Names are made for all near ones: there are few.
    crate::order::sort_by(&mut all, |a, b| {
        a.off.abs().mm().total_cmp(&b.off.abs().mm())
    });
    all.truncate(LISTED);
    all
}
