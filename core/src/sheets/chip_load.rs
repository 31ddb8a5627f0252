//! How thick is the chip in this cut, and which feed gives the chip that is wanted? Mean and thickest, and teeth at work.

use crate::cutting::sources::{CHIP_MAXIMUM, CHIP_MEAN, RUBBING, TOOTH_FEED};
use crate::cutting::*;
use crate::quantity::units::*;
use crate::quantity::{Angle, Count, FeedRate, Kind, Length, Number, RotationalSpeed, decimal};
use crate::sheet::*;

static ENGAGEMENT: Source = Source::computed(
    "Geometry of the circular tooth path and of the helix",
    "arc acos(1 \u{2212} 2 ae/D), helix b tan \u{3bb} / (\u{3c0} D)",
);

pub(super) static SHEET: Sheet = Sheet {
    id: "chip-load",
    revision: 1,
    title: "Chip load and thinning",
    question: "How thick is the chip, and does it cut or rub?",
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
    ],
    group: Group::Run,
    fields: FIELDS,
    results: RESULTS,
    examples: &[&[
        ("diameter", "2 1/2 in"),
        ("teeth", "8"),
        ("rpm", "110"),
        ("feed", "3 ipm"),
        ("engaged", "0.1 in"),
        ("axial", "2 in"),
        ("helix", "25"),
        ("chip-want", "0.002 in"),
    ]],
    takes: &["diameter"],
    finds: None,
    figure,
};

static FIELDS: &[Field] = &[
    Field::length("diameter", "Cutter diameter")
        .example("2 1/2 in")
        .range_in(0.01, 40.0, "cutters of a small shop")
        .measured(),
    Field::count("teeth", "Teeth").example("8").range(
        1.0,
        200.0,
        "cutters have from one tooth to a fine saw's",
    ),
    Field::quantity("rpm", "Spindle speed", Kind::RotationalSpeed, &[&RPM])
        .example("110")
        .range(1.0, 100_000.0, "what a spindle turns"),
    Field::table_feed("feed", "Table feed").example("3 ipm"),
    Field::length("engaged", "Engagement across the feed")
        .example("0.1 in")
        .hint("Depth of a slab cut; width of an end mill's cut to one side.")
        .range_in(0.0005, 40.0, "less is no cut")
        .measured(),
    Field::choice(
        "tool",
        "Cutter material",
        &[
            choice("hss", "high-speed steel"),
            choice("carbide", "carbide"),
        ],
    ),
    Field::length("chip-want", "Thickest chip wanted")
        .seldom()
        .example("0.002 in")
        .hint("For the feed that gives it.")
        .range_in(0.0001, 0.2, "what teeth bear")
        .optional(),
    Field::length("axial", "Cut along the spindle")
        .seldom()
        .example("2 in")
        .hint("For the teeth at work at once.")
        .range_in(0.0005, 40.0, "less is no cut")
        .optional(),
    Field::quantity("helix", "Helix angle", Kind::Angle, &[&DEGREE])
        .seldom()
        .preset("0 deg")
        .example("25 deg")
        .range(0.0, 70.0, "helices of cutters"),
];

static RESULTS: &[Res] = &[
    Res::of("chip", "Feed per tooth", Kind::FeedPerTooth),
    Res::of("thickest", "Thickest chip", Kind::Length),
    Res::of("mean", "Mean chip", Kind::Length),
    Res::words("verdict", "The chip"),
    Res::of("thinning", "Feed may be raised by the factor", Kind::Number),
    Res::of(
        "want-tooth",
        "Feed per tooth for the chip wanted",
        Kind::FeedPerTooth,
    ),
    Res::of(
        "want-feed",
        "Table feed for the chip wanted",
        Kind::FeedRate,
    ),
    Res::of(
        "least-feed",
        "Table feed at which it begins to rub",
        Kind::FeedRate,
    ),
    Res::of("arc", "Arc of cut", Kind::Angle),
    Res::of("at-work", "Teeth at work on average", Kind::Number),
    Res::of("even", "Width at which the load is even", Kind::Length),
];

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let d: Length = inp.get("diameter")?;
    let teeth: Count = inp.get("teeth")?;
    let rpm: RotationalSpeed = inp.get("rpm")?;
    let feed: FeedRate = inp.get("feed")?;
    let engaged: Length = inp.get("engaged")?;
    let faulty = |fault: CutFault| match fault {
        CutFault::TooLarge { .. } => inp.out_of_range(
            "engaged",
            format!("more than the cutter's own {}", inp.show(d)),
            "take several passes or a larger cutter",
        ),
        other => inp.out_of_range("engaged", other.to_string(), "check the sizes"),
    };
    let chip = feed_per_tooth(feed, teeth, rpm).map_err(faulty)?;
    let factor = chip_factor(ChipMeasure::Maximum, engaged, d).map_err(faulty)?;
    let mean_factor = chip_factor(ChipMeasure::Mean, engaged, d).map_err(faulty)?;
    let thickest = Length::from_mm(chip.mm_per_tooth() * factor);
    let mean = Length::from_mm(chip.mm_per_tooth() * mean_factor);
    let rub = rubbing_limit(inp.choice("tool") == "carbide");
    let feed_for = |chip: Length| {
        feed_for_chip(ChipMeasure::Maximum, chip, engaged, d)
            .map(|fz| (fz, table_feed(fz, teeth, rpm)))
    };
    let mut a = inp.answer();
    a.line("chip", chip)
        .says("Table feed / (teeth \u{d7} spindle speed), if every tooth cuts alike.");
    a.line("thickest", thickest).places(5, 4).says("2 fz \u{221a}(r \u{2212} r\u{b2}), r = engagement / diameter; fz itself from half engagement up.");
    a.line("mean", mean)
        .places(5, 4)
        .says("fz \u{221a}(engagement / diameter), the usual approximation.");
    a.words(
        "verdict",
        if thickest < rub {
            format!(
                "Rubs: the thickest chip is under {}.",
                inp.show_to(rub, 4, 3)
            )
        } else {
            format!(
                "Cuts: the thickest chip is at or over {}.",
                inp.show_to(rub, 4, 3)
            )
        },
    )
    .says("Half a thou for a ground edge, one thou for carbide: common practice, no standard.");
    a.line("thinning", Number::of(1.0 / factor))
        .places(2, 2)
        .says("Keeps the thickest chip what it is at half engagement; 1 from there up.");
    if let Some(want) = inp.opt::<Length>("chip-want") {
        let (fz, table) = feed_for(want).map_err(faulty)?;
        a.line("want-tooth", fz)
            .says("Wanted thickest chip / (2 \u{221a}(r \u{2212} r\u{b2})).");
        a.line("want-feed", table).says("At that spindle speed.");
    }
    let (_, least) = feed_for(rub).map_err(faulty)?;
    a.line("least-feed", least)
        .says("Where the thickest chip falls to the rubbing limit.");
    let arc = arc_of_cut(engaged, d).map_err(faulty)?;
    a.line("arc", arc)
        .places(1, 1)
        .says("Cut to one side: acos(1 \u{2212} 2 ae/D).");
    let helix: Angle = inp.get("helix")?;
    let axial = inp.opt::<Length>("axial").unwrap_or(Length::ZERO);
    let at_work = teeth_in_cut(teeth, arc, axial, helix, d).map_err(faulty)?;
    a.line("at-work", Number::of(at_work))
        .places(2, 2)
        .says("Teeth \u{d7} (arc / 360\u{b0} + width tan \u{3bb} / (\u{3c0} D)).");
    if let Some(even) = even_engagement_width(teeth, helix, d) {
        a.line("even", even)
            .places(3, 2)
            .says("The helix's pitch along the axis, or a whole number of times of it.");
    }
    a.work(|w| {
        w.step(
            "Feed per tooth",
            &[
                "fz = F / (z n)".into(),
                format!(
                    "fz = {} / ({} \u{d7} {}) = {}",
                    inp.num(feed),
                    inp.num(teeth),
                    inp.num(rpm),
                    inp.show_to(chip, 5, 4)
                ),
            ],
            &TOOTH_FEED,
        );
        let r = decimal(engaged / d, &NUMBER, 4);
        w.step(
            "Thickest chip",
            &[
                "h = 2 fz \u{221a}(r \u{2212} r\u{b2})".into(),
                format!("r = {} / {} = {r}", inp.num(engaged), inp.num(d)),
                format!(
                    "h = {} \u{d7} {} = {}",
                    inp.num_to(chip, 5, 4),
                    decimal(factor, &NUMBER, 4),
                    inp.show_to(thickest, 5, 4)
                ),
            ],
            &CHIP_MAXIMUM,
        );
        w.step(
            "Mean chip",
            &[
                "hm = fz \u{221a}r".into(),
                format!(
                    "hm = {} \u{d7} {} = {}",
                    inp.num_to(chip, 5, 4),
                    decimal(mean_factor, &NUMBER, 4),
                    inp.show_to(mean, 5, 4)
                ),
            ],
            &CHIP_MEAN,
        );
        w.step(
            "Teeth at work",
            &[format!(
                "arc {} = {}",
                inp.show_to(arc, 1, 1),
                decimal(at_work, &NUMBER, 2)
            )],
            &ENGAGEMENT,
        );
    });
    a.source(&RUBBING);
    if at_work < 1.0 {
        a.note("load-bands", "About the load", "Less than one tooth at work on average: the cutter knocks as each tooth enters. A helix, more teeth or a deeper cut evens it.");
    }
    a.note("run-out", "About run-out", "A cutter that runs out gives some teeth more than their share; with 2 thou of run-out a fine feed may be cut by one tooth alone.");
    a.draw(|| picture::face_cut(d, engaged, false, [inp.show(d), inp.show(engaged)]));
    Ok(a)
}
