//! How thick is the chip in this cut, does it cut, rub or break the cutter, and which feed gives the chip that is wanted?
//!
//! Feed per tooth needs feed, teeth and speed alone; diameter and radial depth bring the rest.

use crate::cutting::sources::{CHIP_MAXIMUM, TOOTH_FEED};
use crate::cutting::*;
use crate::quantity::units::*;
use crate::quantity::{
    Angle, Count, FeedPerTooth, FeedRate, Length, Number, RotationalSpeed, decimal,
};
use crate::sheet::*;

mod fields;
mod verdict;

use fields::*;
use verdict::{slot, verdict};

static CHIP_ARC_MEAN: Source = Source::computed(
    "Geometry of the circular tooth path",
    "mean chip over the arc, 2 fz r / \u{3c6}",
);
static ENGAGEMENT: Source = Source::computed(
    "Geometry of the circular tooth path and of the helix",
    "arc acos(1 \u{2212} 2 ae/D), helix b tan \u{3bb} / (\u{3c0} D)",
);

pub(in crate::sheets) static SHEET: Sheet = Sheet {
    id: "chip-load",
    revision: 2,
    title: "Chip load and thinning",
    question: "How thick is the chip, and does it cut, rub or break the cutter?",
    aside: "cutter, feed, engagement",
    words: &[
        "chip thinning",
        "chip thickness",
        "feed per tooth",
        "mean chip",
        "rubbing",
        "radial engagement",
        "teeth in cut",
        "helix",
        "chip load",
        "radial depth",
        "full slot",
        "broken cutter",
    ],
    group: Group::Run,
    fields: FIELDS,
    results: RESULTS,
    examples: &[
        &[
            ("diameter", "2-1/2 in"),
            ("teeth", "8"),
            ("rpm", "110"),
            ("feed", "3 ipm"),
            ("engaged", "0.1 in"),
            ("axial", "2 in"),
            ("helix", "25"),
            ("chip-want", "0.002 in"),
        ],
        &[("teeth", "4"), ("rpm", "670"), ("feed", "3 ipm")],
        &[
            ("teeth", "2"),
            ("rpm", "1650"),
            ("feed", "6 ipm"),
            ("diameter", "1/8 in"),
            ("engaged", "1/16 in"),
        ],
    ],
    takes: &["diameter"],
    finds: None,
    figure,
};

/// The cut as entered.
struct Cut {
    teeth: Count,
    rpm: RotationalSpeed,
    feed: FeedRate,
    chip: FeedPerTooth,
    diameter: Option<Length>,
    engaged: Option<Length>,
    carbide: bool,
}

fn figure(inp: &Inputs, a: &mut Answer) -> Result<(), Stop> {
    let (teeth, rpm, feed) = (inp.of(&TEETH)?, inp.of(&SPINDLE)?, inp.of(&FEED)?);
    let chip = feed_per_tooth(feed, teeth, rpm)
        .map_err(|fault| inp.out_of_range("teeth", fault.to_string(), "give the teeth"))?;
    let cut = Cut {
        teeth,
        rpm,
        feed,
        chip,
        diameter: inp.of_opt(&DIAMETER),
        engaged: inp.of_opt(&ENGAGED),
        carbide: inp.one(&EDGE)? == Edge::Carbide,
    };
    a.line("chip", chip);
    a.line("per-rev", feed_per_rev(chip, teeth));
    a.work(|w| {
        let values = [
            ("F", num(cut.feed).to(3, 1)),
            ("z", num(cut.teeth)),
            ("n", num(cut.rpm)),
        ];
        let fz = num(chip).to(5, 4);
        w.put(
            inp.system(),
            "Feed per tooth",
            "fz = F / (z n)",
            &values,
            fz,
            &TOOTH_FEED,
        );
    });
    let mut thickest = None;
    if let (Some(d), Some(engaged)) = (cut.diameter, cut.engaged) {
        a.part(|a| {
            thickest = Some(thinned(inp, a, &cut, d, engaged)?);
            Ok(())
        })?;
        // the sizes are at fault: feed per tooth stands, and no verdict on a chip that nobody knows
        if thickest.is_none() {
            return Ok(());
        }
    }
    verdict(inp, a, &cut, thickest);
    slot(a, inp, &cut);
    a.note("run-out", "About run-out", "A cutter that runs out gives some teeth more than their share; with 2 thou of run-out a fine feed may be cut by one tooth alone.");
    match (cut.diameter, cut.engaged) {
        (Some(d), Some(engaged)) => {
            a.draw(|| picture::face_cut(d, engaged, false, [inp.show(d), inp.show(engaged)]))
        }
        _ => a.draw(|| tooth_step(inp.show_to(chip, 5, 4))),
    };
    // on screen the declared order holds
    crate::order::sort_by_key(&mut a.lines, |line| {
        RESULTS.iter().position(|res| res.id == line.id)
    });
    Ok(())
}

/// What diameter and radial depth make of the feed per tooth; gives the thickest chip.
fn thinned(
    inp: &Inputs,
    a: &mut Answer,
    cut: &Cut,
    d: Length,
    engaged: Length,
) -> Result<Length, Stop> {
    let faulty = |fault: CutFault| match fault {
        CutFault::TooLarge { .. } => inp.out_of_range(
            "engaged",
            format!("more than the cutter's own {}", inp.show(d)),
            "take several passes or a larger cutter",
        ),
        other => inp.out_of_range("engaged", other.to_string(), "check the sizes"),
    };
    let chip = |measure| chip_thickness(measure, cut.chip, engaged, d).map_err(faulty);
    let (thickest, mean) = (chip(ChipMeasure::Maximum)?, chip(ChipMeasure::ArcMean)?);
    a.line("thickest", thickest);
    a.line("mean", mean);
    let thinning = thinning_factor(engaged, d).map_err(faulty)?;
    a.line("thinning", Number::of(thinning));
    let feed_for = |chip: Length| {
        feed_for_chip(ChipMeasure::Maximum, chip, engaged, d)
            .map(|fz| (fz, table_feed(fz, cut.teeth, cut.rpm)))
            .map_err(faulty)
    };
    if let Some(want) = inp.of_opt(&WANTED) {
        let (fz, table) = feed_for(want)?;
        a.line("want-tooth", fz);
        a.line("want-feed", table);
    }
    let (_, least) = feed_for(rubbing_limit_at(cut.carbide, Some(d)))?;
    a.line("least-feed", least);
    let arc = arc_of_cut(engaged, d).map_err(faulty)?;
    a.line("arc", arc);
    let helix = inp.of(&HELIX)?;
    let axial = inp.of_opt(&AXIAL).unwrap_or(Length::ZERO);
    let at_work = teeth_in_cut(cut.teeth, arc, axial, helix, d).map_err(faulty)?;
    a.line("at-work", Number::of(at_work));
    if let Some(even) = even_engagement_width(cut.teeth, helix, d) {
        a.line("even", even);
    }
    if at_work < 1.0 {
        a.note("load-bands", "About the load", "Less than one tooth at work on average: the cutter knocks as each tooth enters. A helix, more teeth or a deeper cut evens it.");
    }
    working(inp, a, cut, (d, engaged), (thickest, mean, arc, at_work));
    Ok(thickest)
}

fn working(
    inp: &Inputs,
    a: &mut Answer,
    cut: &Cut,
    (d, engaged): (Length, Length),
    (thickest, mean, arc, at_work): (Length, Length, Angle, f64),
) {
    let (fz, r) = (num(cut.chip).to(5, 4), plain(engaged / d, 4));
    let thickest = num(thickest).to(5, 4);
    a.work(|w| {
        let ratio = format!(
            "r = {} / {} = {}",
            inp.num(engaged),
            inp.num(d),
            decimal(engaged / d, &NUMBER, 4)
        );
        let formula = "h = 2 fz \u{221a}(r \u{2212} r\u{b2})";
        let lines = if engaged * 2.0 >= d {
            let whole = "h = fz from half the diameter up";
            [whole.into(), ratio, inp.put_in("h", &[], thickest)]
        } else {
            [
                formula.into(),
                ratio,
                inp.put_in(formula, &[("fz", fz), ("r", r)], thickest),
            ]
        };
        w.step("Thickest chip", &lines, &CHIP_MAXIMUM);
        let mean = inp.put_in(
            "hm = 2 fz r / \u{3c6}",
            &[("fz", fz), ("r", r), ("\u{3c6}", plain(arc.radians(), 4))],
            num(mean).to(5, 4),
        );
        let lines = ["hm = 2 fz r / \u{3c6}, \u{3c6} in radians".into(), mean];
        w.step("Mean chip", &lines, &CHIP_ARC_MEAN);
        let (arc, teeth) = (inp.show_to(arc, 1, 1), decimal(at_work, &NUMBER, 2));
        w.step(
            "Teeth at work",
            &[format!("arc {arc} gives {teeth}")],
            &ENGAGEMENT,
        );
    });
}

/// The path of two teeth, one feed per tooth apart.
fn tooth_step(text: String) -> Drawing {
    let mut draw = Drawing::new(format!("Paths of two teeth, {text} apart"), false);
    for shift in [0.0, 1.0] {
        let path: Vec<_> = (0..=12)
            .map(|part| {
                let turn = core::f64::consts::PI * f64::from(part) / 12.0;
                pt(shift + 4.0 * libm::cos(turn), 4.0 * libm::sin(turn))
            })
            .collect();
        draw.path(Pen::Object, false, &path);
    }
    draw.dimension(pt(4.0, 0.0), pt(5.0, 0.0), -2.0, text);
    draw
}
