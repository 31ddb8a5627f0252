//! How long does the cut take? Approach by geometry, overrun, passes, the way back, and the metal that goes.

mod fields;
mod gang;
mod turn;

use crate::cutting::sources::GROOVER;
use crate::cutting::*;
use crate::quantity::units::*;
use crate::quantity::{Angle, Count, FeedRate, Length, Time};
use crate::sheet::*;
use fields::{FIELDS, RESULTS};
use gang::{added, others};

pub(super) static SHEET: Sheet = Sheet {
    id: "cut-time",
    revision: 1,
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
            ("diameter", "2 1/2 in"),
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
            ("diameter", "1 1/2 in"),
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
    let (approach, formula) = match cut {
        "slab" => (slab_approach(across, d), "\u{221a}(d (D \u{2212} d))"),
        "centred" => (
            centred_face_approach(across, d),
            "(D \u{2212} \u{221a}(D\u{b2} \u{2212} w\u{b2})) / 2",
        ),
        "offset" => (
            offset_face_approach(across, d),
            "\u{221a}(w (D \u{2212} w)), the radius from half engagement up",
        ),
        _ => (
            drill_point(d, inp.get::<Angle>("point")?),
            "D/2 \u{d7} tan(90\u{b0} \u{2212} point/2)",
        ),
    };
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
    // clear of the work: a slab cutter's own approach again, a face cutter's whole diameter less the approach
    let clear = match (cut, inp.choice("run")) {
        ("slab", "clear") => approach,
        ("centred" | "offset", "clear") => d - approach,
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
        .says("Work, approach, what it runs clear, and extra travel.");
    match cut {
        "drill" => {
            a.line("removal", drilling_removal(d, feed))
                .says("Area of the hole \u{d7} feed.");
        }
        _ if !others.is_empty() => added(inp, &mut a, d, across, feed, &others),
        _ if gang.is_some() => {
            a.note("gang-unmeasured", "With several cutters", "The approach is that of the cutter that touches first; it cuts deeper by half the difference of the diameters. Figure the metal removed cutter by cutter, and add the powers.");
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
                format!("A = {}", inp.show(approach)),
            ],
            &GROOVER,
        );
        w.step(
            "Time",
            &[
                "t = (L + A + clear + extra) / F".into(),
                format!(
                    "t = ({} + {} + {} + {}) / {} = {}",
                    inp.num(length),
                    inp.num(approach),
                    inp.num(clear),
                    inp.num(overrun),
                    inp.num(feed),
                    inp.show_to(one, 1, 1)
                ),
            ],
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

/// Both times, in minutes from two minutes up.
fn times(a: &mut Answer, total: Time, one: Time, says: &'static str) {
    let unit = |time: Time| {
        if time.seconds() >= 120.0 {
            &MINUTE
        } else {
            &SECOND
        }
    };
    a.line("total", total)
        .units(unit(total), unit(total))
        .says(says);
    a.line("time", one)
        .units(unit(one), unit(one))
        .says("Travel / feed.");
}
