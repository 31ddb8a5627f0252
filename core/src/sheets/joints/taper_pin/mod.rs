//! Which taper pin, how is its hole made, and what will it carry? From a number, a shaft, a measured pin, a gauge or a
//! worn hole.

mod any_length;
mod draw;
mod drilling;
mod fields;
mod gauge;
mod measured;
mod shaft;
mod tail;
mod ways;
mod worn;

use crate::pin::{StandardPin, TaperSeries};
use crate::quantity::{Kind, System, decimal, units, usual};
use crate::sheet::*;

/// The sheet.
pub static SHEET: Sheet = Sheet {
    id: "taper-pin",
    // 2: full sets until drills are named; a taper of no series is refused; a hole as large as the shaft too
    revision: 2,
    title: "Size a taper pin",
    question: "Which taper pin, and how is its hole drilled and reamed?",
    aside: "number, shaft, old pin or worn hole",
    words: &[
        "taper pin",
        "tapered pin",
        "taper pin reamer",
        "1:48",
        "1:50",
        "worn pin hole",
        "lever pin",
        "cross pin",
        "which end",
        "drive out a pin",
        "pin removal",
        "next size",
        "damaged hole",
        "proud",
        "seat a pin",
    ],
    group: Group::Fit,
    fields: fields::FIELDS,
    results: RESULTS,
    examples: &[
        &[("number", "3"), ("length", "1-1/2 in"), ("shaft", "3/4 in")],
        &[
            ("number", "3"),
            ("length", "1-1/2 in"),
            ("shaft", "3/4 in"),
            ("stress", "6000 psi"),
            ("load", "100 in-lb"),
        ],
        &[
            ("from", "shaft"),
            ("shaft", "5/8 in"),
            ("length", "1-1/4 in"),
        ],
        &[
            ("from", "pin"),
            ("large", "0.1412 in"),
            ("small", "0.1201 in"),
            ("between", "1 in"),
        ],
        &[
            ("from", "gauge"),
            ("gauge", "1/8 in"),
            ("depth", "0.42 in"),
            ("length", "1 in"),
        ],
        &[("from", "gauge"), ("gauge", "1/8 in"), ("depth", "0.42 in")],
        &[("from", "worn"), ("worn-large", "0.222 in")],
        &[
            ("from", "worn"),
            ("worn-large", "0.222 in"),
            ("worn-small", "0.195 in"),
            ("length", "1-1/2 in"),
        ],
        &[
            ("series", "metric"),
            ("size", "6x40"),
            ("stress", "40 MPa"),
            ("plan", "three"),
        ],
    ],
    takes: &["number"],
    finds: Some(finds),
    figure: ways::figure,
};

static RESULTS: &[Res] = &[
    Res::words("pin", "Pin"),
    Res::of("face", "Hole at the large face", Kind::Length),
    Res::of("sinks", "Large end below the face", Kind::Length),
    Res::of("clean-at", "Large-face size that cleans up", Kind::Length),
    Res::of(
        "least-travel",
        "Shortest travel of the reamer",
        Kind::Length,
    ),
    Res::of("measured-taper", "Taper measured", Kind::Taper),
    Res::of(
        "telling",
        "1:48 against 1:50 over this length",
        Kind::Length,
    ),
    Res::stepped("small-end", "Small end", Kind::Length),
    Res::stepped("large-end", "Large end", Kind::Length),
    Res::stepped("length-tolerance", "Length tolerance", Kind::Length),
    Res::stepped("middle", "Middle", Kind::Length),
    Res::stepped("share", "Middle over shaft", Kind::Share),
    Res::stepped("drill", "Drill for one pass", Kind::Length),
    Res::stepped("left", "Left to ream at the small end", Kind::Length),
    Res::words("reamer", "Reamer"),
    Res::of("squeeze", "Interference when driven", Kind::Length),
    Res::of(
        "per-thou",
        "Sinks for 0.001 in on the diameter",
        Kind::Length,
    ),
    Res::stepped("single-shear", "Force in single shear", Kind::Force),
    Res::stepped("double-shear", "Force in double shear", Kind::Force),
    Res::stepped("torque", "Torque through hub and shaft", Kind::Torque),
    Res::of("load-stress", "Shear stress at that torque", Kind::Stress),
    Res::of(
        "middle-needed",
        "Middle that the torque needs",
        Kind::Length,
    ),
];

/// Each standard pin as a row of the search box.
fn finds() -> Vec<Find> {
    let row = |pin: StandardPin| {
        let call = pin.call().to_owned();
        let end = pin.named_end().mm();
        match pin.series() {
            TaperSeries::Inch => Find {
                keys: vec![
                    format!("{call} pin"),
                    format!("#{call} pin"),
                    format!("no. {call} pin"),
                    format!("pin {call}"),
                    format!("taper pin {call}"),
                    format!("{call} taper pin"),
                ],
                title: format!("Taper pin No. {call}"),
                aside: format!("large end {} in", decimal(end, &units::INCH, 4)),
                entry: vec![("number", call)],
            },
            TaperSeries::Metric => Find {
                keys: vec![
                    format!("{call} mm pin"),
                    format!("{call}mm pin"),
                    format!("pin {call} mm"),
                    format!("{call} mm taper pin"),
                    format!("taper pin {call} mm"),
                ],
                title: format!("Taper pin {call} mm"),
                aside: format!(
                    "small end {} mm, 1:50",
                    decimal(end, usual(Kind::Length, System::Metric), 1)
                ),
                entry: vec![("series", "metric".to_owned()), ("size", call)],
            },
        }
    };
    [TaperSeries::Inch, TaperSeries::Metric]
        .into_iter()
        .flat_map(StandardPin::all)
        .map(row)
        .collect()
}
