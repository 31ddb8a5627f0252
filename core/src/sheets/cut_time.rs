//! How long does the cut take? Approach by geometry, overrun, passes, the way back, and the metal that goes.

use crate::cutting::sources::GROOVER;
use crate::cutting::*;
use crate::quantity::units::*;
use crate::quantity::{Angle, Count, FeedRate, Kind, Length, Time};
use crate::sheet::*;

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
    ],
    takes: &["diameter"],
    finds: None,
    figure,
};

static OTHERS: &[Field] = &[
    Field::length("diameter", "Diameter").range_in(0.01, 40.0, "cutters of a small shop"),
    Field::length("axial", "Width").range_in(0.0005, 40.0, "less is no cut"),
    Field::length("depth", "Depth")
        .range_in(0.0005, 10.0, "less is no cut")
        .optional(),
];

const MILL: &[&str] = &["slab", "centred", "offset"];

static FIELDS: &[Field] = &[
    Field::choice(
        "cut",
        "Cut",
        &[
            choice("slab", "slab, side or form cutter, saw"),
            choice("centred", "face cutter, cut centred on it"),
            choice("offset", "face or end cutter, cut to one side"),
            choice("drill", "drill"),
        ],
    ),
    Field::length("diameter", "Cutter or drill diameter")
        .example("2 1/2 in")
        .range_in(0.01, 40.0, "cutters of a small shop")
        .measured(),
    Field::length("depth", "Depth of cut")
        .example("0.1 in")
        .hint("Toward the arbor.")
        .range_in(0.0005, 10.0, "less is no cut")
        .when(&[when("cut", &["slab"])])
        .measured(),
    Field::length("largest", "Largest cutter on the arbor")
        .example("3 in")
        .hint("With several cutters: it starts first and cuts deepest. Empty: one cutter.")
        .range_in(0.01, 40.0, "cutters of a small shop")
        .when(&[when("cut", &["slab"])])
        .optional(),
    Field::rows("others", "Other cutters on the arbor", OTHERS, 1, 8)
        .seldom()
        .example("3 in~1/2 in")
        .hint("Diameter, width, and depth where the work is stepped; width of the first below. For the metal removed.")
        .when(&[when("cut", &["slab"])])
        .optional(),
    Field::length("width", "Width of cut")
        .example("2 in")
        .hint("Across the feed.")
        .range_in(0.0005, 40.0, "a pass is no wider than the cutter")
        .when(&[when("cut", &["centred", "offset"])])
        .measured(),
    Field::length("axial", "Cut along the spindle")
        .example("2 in")
        .hint("For the metal removed.")
        .range_in(0.0005, 40.0, "less is no cut")
        .when(&[when("cut", MILL)])
        .optional(),
    Field::length("length", "Length of the work, or depth of the hole")
        .example("7 in")
        .range_in(0.005, 400.0, "a table's travel")
        .measured(),
    Field::table_feed("feed", "Feed").example("3 ipm"),
    Field::choice(
        "run",
        "At the end",
        &[
            choice("touch", "stop when the full length is cut"),
            choice("clear", "run clear of the work"),
        ],
    )
    .when(&[when("cut", MILL)]),
    Field::quantity("point", "Included point angle", Kind::Angle, &[&DEGREE])
        .seldom()
        .preset("118 deg")
        .example("118 deg")
        .range(60.0, 170.0, "drill points")
        .when(&[when("cut", &["drill"])]),
    Field::choice(
        "through",
        "The hole",
        &[choice("no", "blind"), choice("yes", "through")],
    )
    .when(&[when("cut", &["drill"])]),
    Field::length("overrun", "Extra travel")
        .seldom()
        .preset("0 in")
        .example("1/8 in")
        .range_in(0.0, 40.0, "a table's travel"),
    Field::count("passes", "Passes or holes")
        .preset("1")
        .example("3")
        .range(1.0, 1000.0, "a day's work"),
    Field::table_feed("back", "Feed on the way back")
        .seldom()
        .example("20 ipm")
        .hint("Empty: not counted.")
        .range(0.1, 50_000.0, "what a table runs at")
        .filled_from_shop(ShopItem::Rapid)
        .optional(),
];

static RESULTS: &[Res] = &[
    Res::of("total", "Time for all", Kind::Time),
    Res::of("time", "Time for one", Kind::Time),
    Res::of("approach", "Approach", Kind::Length),
    Res::of("travel", "Travel at feed", Kind::Length),
    Res::of("removal", "Metal removed while cutting", Kind::RemovalRate),
];

/// Another cutter on the arbor.
struct Other {
    diameter: Length,
    axial: Length,
    depth: Length,
    approach: Length,
}

fn others(inp: &Inputs, d: Length, across: Length) -> Result<Vec<Other>, Stop> {
    let one = |(row, cells): (usize, Cells<'_>)| {
        let faulty = |fault: CutFault| {
            let says = match fault {
                CutFault::TooLarge { limit_mm, why, .. } => {
                    format!("more than {}: {why}", inp.show(Length::from_mm(limit_mm)))
                }
                _ => "a cutter this small does not reach flat work".to_owned(),
            };
            let mut fault = Fault::of(
                "others",
                Reason::OutOfRange,
                says,
                "give its own depth, or leave it out",
            );
            fault.at = Some((row, 1));
            Stop::from(fault)
        };
        let cell = |id: &str| cells.get::<Length>(id).ok_or(Stop::Missing("others"));
        let diameter = cell("diameter")?;
        let depth = match cells.get::<Length>("depth") {
            Some(depth) => depth,
            None => gang_depth(across, d, diameter).map_err(faulty)?,
        };
        Ok(Other {
            diameter,
            axial: cell("axial")?,
            depth,
            approach: slab_approach(depth, diameter).map_err(faulty)?,
        })
    };
    (1..).zip(inp.rows("others")).map(one).collect()
}

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let cut = inp.choice("cut");
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
    let (whole, each) = (
        if total.seconds() >= 120.0 {
            &MINUTE
        } else {
            &SECOND
        },
        if one.seconds() >= 120.0 {
            &MINUTE
        } else {
            &SECOND
        },
    );
    a.line("total", total)
        .units(whole, whole)
        .says(if back == Time::ZERO {
            "At feed only; the way back and setting are extra."
        } else {
            "With the way back; setting is extra."
        });
    a.line("time", one).units(each, each).says("Travel / feed.");
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
        _ if !others.is_empty() => {
            let mut area = 0.0;
            let own = inp.opt::<Length>("axial").map(|axial| (d, axial, across));
            let rest = others
                .iter()
                .map(|one| (one.diameter, one.axial, one.depth));
            let table = a.table(
                "cutters",
                "Cutter by cutter",
                &["Cutter", "Width", "Depth", "Removed"],
            );
            for (diameter, axial, depth) in own.into_iter().chain(rest) {
                area += axial.mm() * depth.mm();
                table.row(vec![
                    Value::of(diameter),
                    Value::of(axial),
                    Value::of(depth),
                    Value::of(milling_removal(axial, depth, feed)),
                ]);
            }
            if own.is_some() {
                let all = milling_removal(Length::from_mm(area), Length::from_mm(1.0), feed);
                a.line("removal", all)
                    .says("Width \u{d7} depth of each cutter, added, \u{d7} feed.");
            } else {
                table.note("The first cutter is not counted: give its cut along the spindle.");
            }
            a.note("With several cutters", "The approach is that of the cutter that touches first. Power for a cut adds what they ask of the motor.");
        }
        _ if gang.is_some() => {
            a.note("With several cutters", "The approach is that of the cutter that touches first; it cuts deeper by half the difference of the diameters. Figure the metal removed cutter by cutter, and add the powers.");
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
    a.note("Before you set the trip dog", "The table coasts past the trip. Leave the overrun that your own trials show, and look where the cutter goes beyond the work.");
    if inp.choice("through") == "yes" {
        a.note("At the breakthrough", "Ease the feed: the drill grabs as the point comes through. Give extra travel so that the full diameter clears.");
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
