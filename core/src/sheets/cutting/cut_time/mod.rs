//! How long does the cut take? Approach by geometry, overrun, passes, the way back, and the metal that goes.

mod fields;
mod gang;
mod turn;

use crate::cutting::sources::GROOVER;
use crate::cutting::*;
use crate::quantity::units::*;
use crate::quantity::{Angle, Count, FeedRate, Length, Time, decimal};
use crate::sheet::*;
use fields::{FIELDS, RESULTS};
use gang::{added, others};

pub(in crate::sheets) static SHEET: Sheet = Sheet {
    id: "cut-time",
    revision: 2,
    title: "Time for a cut",
    question: "How long does the pass take, and how far must the table travel?",
    aside: "length, cutter, feed",
    words: &[
        "cutting time",
        "machining time",
        "approach",
        "overrun",
        "overtravel",
        "removal rate",
        "minutes",
        "passes",
        "gang milling",
        "straddle milling",
    ],
    group: Group::Run,
    fields: FIELDS,
    results: RESULTS,
    examples: &[
        &[
            ("cut", "slab"),
            ("diameter", "2-1/2 in"),
            ("depth", "0.1 in"),
            ("axial", "2 in"),
            ("length", "7 in"),
            ("feed", "3 ipm"),
            ("overrun", "1/8 in"),
            ("passes", "3"),
            ("back", "20 ipm"),
        ],
        &[
            ("cut", "drill"),
            ("diameter", "3/8 in"),
            ("length", "1 in"),
            ("feed", "3 ipm"),
            ("through", "yes"),
        ],
        &[
            ("cut", "turn"),
            ("diameter", "1-1/2 in"),
            ("length", "6 in"),
            ("rpm", "200"),
            ("turn-feed", "0.008 ipr"),
            ("radial", "0.06 in"),
            ("passes", "2"),
        ],
    ],
    takes: &["diameter"],
    finds: None,
    figure,
};

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let cut = inp.choice("cut");
    if cut == "turn" {
        return turn::figure(inp);
    }
    let d: Length = inp.get("diameter")?;
    let length: Length = inp.get("length")?;
    let feed: FeedRate = inp.get("feed")?;
    let passes: Count = inp.get("passes")?;
    let overrun: Length = inp.get("overrun")?;
    let field = match cut {
        "slab" => "depth",
        "drill" => "point",
        _ => "width",
    };
    let faulty = |fault: CutFault| match fault {
        CutFault::TooLarge { limit_mm, why, .. } => inp.out_of_range(
            field,
            format!("more than {}: {why}", inp.show(Length::from_mm(limit_mm))),
            "take several passes or a larger cutter",
        ),
        other => inp.out_of_range(field, other.to_string(), "check the sizes"),
    };
    let across: Option<Length> = inp.opt(if cut == "slab" { "depth" } else { "width" });
    let across = across.unwrap_or(Length::ZERO);
    let (approach, formula) = approach_of(inp, cut, d, across)?;
    let mut approach = approach.map_err(faulty)?;
    // several cutters on one arbor: all axes are one, so the largest reaches deeper by half the difference
    let gang: Option<Length> = inp.opt("largest");
    if let Some(big) = gang {
        if big < d {
            return Err(inp.out_of_range(
                "largest",
                format!("smaller than the cutter, {}", inp.show(d)),
                "give the largest cutter here",
            ));
        }
        let first =
            slab_approach(gang_depth(across, d, big).map_err(faulty)?, big).map_err(faulty)?;
        approach = approach.max(first);
    }
    let others = others(inp, d, across)?;
    for other in &others {
        approach = approach.max(other.approach);
    }
    let clear = match (cut, inp.choice("run")) {
        ("slab" | "offset", "clear") => one_sided_exit(approach),
        ("centred", "clear") => centred_face_exit(across, d).map_err(faulty)?,
        _ => Length::ZERO,
    };
    let travel = length + approach + clear + overrun;
    let one = travel_time(travel, feed).map_err(faulty)?;
    let back = inp
        .opt::<FeedRate>("back")
        .and_then(|back| travel_time(travel, back).ok())
        .unwrap_or(Time::ZERO);
    let total = (one + back) * passes.get();
    let mut a = inp.answer();
    times(
        &mut a,
        total,
        one,
        if back == Time::ZERO {
            "At feed only; the way back and setting are extra."
        } else {
            "With the way back; setting is extra."
        },
    );
    a.line("approach", approach)
        .places(3, 2)
        .says(if gang.is_some() || !others.is_empty() {
            "\u{221a}(d (D \u{2212} d)) of the cutter that touches first.".to_owned()
        } else {
            format!("{formula}.")
        });
    a.line("travel", travel)
        .places(3, 2)
        .says(if cut == "offset" && inp.choice("run") == "clear" && across * 2.0 < d {
            "Work, approach, the same again to run clear of the work, and extra travel; the far side of the cutter still hangs beside it."
        } else {
            "Work, approach, what it runs clear, and extra travel."
        });
    match cut {
        "drill" => {
            a.line("removal", drilling_removal(d, feed))
                .says("Area of the hole \u{d7} feed.");
        }
        _ if !others.is_empty() => added(inp, &mut a, d, across, feed, &others),
        _ if gang.is_some() => {
            a.note("gang-unmeasured", "With several cutters", "The approach is that of the cutter that touches first; it cuts deeper by half the difference of the diameters. Work out the metal removed cutter by cutter, and add the powers.");
        }
        _ => {
            if let Some(axial) = inp.opt::<Length>("axial") {
                a.line("removal", milling_removal(axial, across, feed))
                    .says("Width \u{d7} depth \u{d7} feed.");
            }
        }
    }
    a.work(|w| {
        w.step(
            "Approach",
            &[
                format!("A = {formula}"),
                if gang.is_some() || !others.is_empty() {
                    format!("A = {}, the cutter that touches first", inp.show(approach))
                } else {
                    format!(
                        "A = {} = {}",
                        approach_put(inp, cut, d, across),
                        inp.show(approach)
                    )
                },
            ],
            &GROOVER,
        );
        w.step(
            "Time in seconds",
            &time_put(inp, [length, approach, clear, overrun], feed, one),
            &GROOVER,
        );
    });
    a.note("overrun", "Before you set the trip dog", "The table coasts past the trip. Leave the overrun that your own trials show, and look where the cutter goes beyond the work.");
    if inp.choice("through") == "yes" {
        a.note("breakthrough", "At the breakthrough", "Ease the feed: the drill grabs as the point comes through. Give extra travel so that the full diameter clears.");
    }
    a.draw(|| match cut {
        "slab" => picture::arbor_cut(
            d,
            across,
            approach,
            [inp.show(d), inp.show(across), inp.show(approach)],
        ),
        "drill" => {
            picture::drilled_hole(d, Some(length), approach, [inp.show(d), inp.show(length)])
        }
        _ => picture::face_cut(d, across, cut == "centred", [inp.show(d), inp.show(across)]),
    });
    Ok(a)
}

/// Both times.
fn times(a: &mut Answer, total: Time, one: Time, says: &'static str) {
    a.line("total", total).says(says);
    a.line("time", one).says("Travel / feed.");
}

/// The approach's formula with this entry's numbers in it.
fn approach_put(inp: &Inputs, cut: &str, d: Length, across: Length) -> String {
    let (big, w) = (inp.num(d), inp.num(across));
    match cut {
        "centred" => format!("({big} \u{2212} \u{221a}({big}\u{b2} \u{2212} {w}\u{b2})) / 2"),
        "offset" if across * 2.0 >= d => format!("{big} / 2"),
        "drill" => {
            let half = inp
                .opt::<Angle>("point")
                .unwrap_or(Angle::from_degrees(118.0))
                .degrees()
                / 2.0;
            format!(
                "{big} / 2 \u{d7} tan({}\u{b0})",
                decimal(90.0 - half, &NUMBER, 1)
            )
        }
        _ => format!("\u{221a}({w} \u{d7} ({big} \u{2212} {w}))"),
    }
}

/// The time's formula with this entry's numbers in it.
fn time_put(inp: &Inputs, parts: [Length; 4], feed: FeedRate, time: Time) -> [String; 2] {
    let [length, approach, clear, extra] = parts.map(|part| inp.num(part));
    [
        "t = 60 \u{d7} (L + A + clear + extra) / F".into(),
        format!(
            "t = 60 \u{d7} ({length} + {approach} + {clear} + {extra}) / {} = {}",
            inp.num_to(feed, 3, 1),
            inp.show_to(time, 1, 1)
        ),
    ]
}

/// From first touch to full depth or width, with its formula.
fn approach_of(
    inp: &Inputs,
    cut: &str,
    d: Length,
    across: Length,
) -> Result<(Result<Length, CutFault>, &'static str), Stop> {
    Ok(match cut {
        "slab" => (slab_approach(across, d), "\u{221a}(d (D \u{2212} d))"),
        "centred" => (
            centred_face_approach(across, d),
            "(D \u{2212} \u{221a}(D\u{b2} \u{2212} w\u{b2})) / 2",
        ),
        "offset" if across * 2.0 >= d => (
            offset_face_approach(across, d),
            "D / 2, from half the diameter up",
        ),
        "offset" => (
            offset_face_approach(across, d),
            "\u{221a}(w (D \u{2212} w))",
        ),
        _ => (
            drill_point(d, inp.get::<Angle>("point")?),
            "D/2 \u{d7} tan(90\u{b0} \u{2212} point/2)",
        ),
    })
}
