//! How smooth will the surface be? What geometry alone leaves: nose radius and feed, a ball's scallops, a slab cutter's marks.

use crate::cutting::sources::TOOTH_FEED;
use crate::cutting::*;
use crate::quantity::units::*;
use crate::quantity::{Count, FeedPerRev, FeedRate, Kind, Length, Number, RotationalSpeed};
use crate::sheet::*;

static GROOVER_FINISH: Source = Source::from_memory(
    "Groover, Fundamentals of Modern Manufacturing",
    "surface finish, Ri = f\u{b2} / (32 NR)",
);
static GEOMETRY: Source = Source::computed(
    "Geometry of a round edge",
    "f\u{b2} / (8 r) and r \u{2212} \u{221a}(r\u{b2} \u{2212} (s/2)\u{b2})",
);
static CONSTANTS: Source = Source::practice(
    "Average roughness is printed as f\u{b2}/(32 r), f\u{b2}/(31.2 r), and with a constant 27% larger",
);

pub(in crate::sheets) static SHEET: Sheet = Sheet {
    id: "surface-finish",
    revision: 2,
    title: "Surface finish from feed and nose radius",
    question: "How rough will this feed leave the surface?",
    aside: "feed, nose radius or cutter",
    words: &[
        "surface roughness",
        "Ra",
        "Rt",
        "Rz",
        "microinch",
        "finish",
        "scallop",
        "cusp",
        "feed marks",
        "nose radius",
        "step over",
        "ball",
        "surface finish",
        "roughness",
        "stepover",
    ],
    group: Group::Run,
    fields: FIELDS,
    results: RESULTS,
    examples: &[
        &[
            ("by", "nose"),
            ("radius", "1/32 in"),
            ("turn-feed", "0.005 ipr"),
        ],
        &[("by", "ball"), ("radius", "1/8 in"), ("step", "0.02 in")],
        &[
            ("by", "slab"),
            ("radius", "1-1/4 in"),
            ("teeth", "8"),
            ("rpm", "110"),
            ("feed", "3 ipm"),
        ],
    ],
    takes: &["radius"],
    finds: None,
    figure,
};

static FIELDS: &[Field] = &[
    Field::choice(
        "by",
        "Made by",
        &[
            choice("nose", "round nose of a lathe, boring or fly tool"),
            choice("ball", "ball or round form cutter, pass beside pass"),
            choice("slab", "slab cutter, feed marks"),
        ],
    ),
    Field::length("radius", "Radius")
        .example("1/32 in")
        .hint("Of the nose, of the ball, or half the slab cutter's diameter.")
        .range_in(0.001, 20.0, "the range of nose and cutter radii")
        .measured(),
    Field::quantity(
        "turn-feed",
        "Feed per rev",
        Kind::FeedPerRev,
        &[&IN_PER_REV, &MM_PER_REV, &THOU_PER_REV],
    )
    .example("0.005 ipr")
    .range(
        0.001,
        10.0,
        "the range of feeds on lathes and drill presses",
    )
    .when(&[when("by", &["nose"])]),
    Field::length("step", "Step over")
        .example("0.02 in")
        .range_in(0.0005, 20.0, "the range of stepovers")
        .when(&[when("by", &["ball"])])
        .measured(),
    Field::count("teeth", "Teeth")
        .example("8")
        .range(
            1.0,
            200.0,
            "the range of teeth, from a fly cutter to a fine saw",
        )
        .when(&[when("by", &["slab"])]),
    Field::quantity("rpm", "Spindle speed", Kind::RotationalSpeed, &[&RPM])
        .example("110")
        .range(1.0, 100_000.0, "the range of spindle speeds")
        .when(&[when("by", &["slab"])]),
    Field::table_feed("feed", "Table feed")
        .example("3 ipm")
        .when(&[when("by", &["slab"])]),
    Field::choice(
        "run-out",
        "The cutter",
        &[
            choice("one", "runs out: one tooth makes the mark"),
            choice("true", "runs true: each tooth makes one"),
        ],
    )
    .when(&[when("by", &["slab"])]),
];

static RESULTS: &[Res] = &[
    Res::of("valley", "Peak to valley Rt", Kind::Length),
    Res::of("mean", "Average roughness Ra", Kind::Length),
    Res::of("spacing", "Distance between marks", Kind::Length),
    Res::of("per-inch", "Marks per inch", Kind::Number),
];

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let by = inp.choice("by");
    let radius: Length = inp.get("radius")?;
    let field = match by {
        "nose" => "turn-feed",
        "ball" => "step",
        _ => "feed",
    };
    let faulty = |fault: CutFault| match fault {
        CutFault::TooLarge { limit_mm, why, .. } => inp.out_of_range(
            field,
            format!("more than {}: {why}", inp.show(Length::from_mm(limit_mm))),
            "take a smaller feed or a larger radius",
        ),
        other => inp.out_of_range(field, other.to_string(), "check the entries"),
    };
    let spacing = match by {
        "nose" => Length::from_mm(inp.get::<FeedPerRev>("turn-feed")?.mm_per_rev()),
        "ball" => inp.get("step")?,
        _ => mark_spacing(
            inp.get::<FeedRate>("feed")?,
            inp.get::<RotationalSpeed>("rpm")?,
            inp.get::<Count>("teeth")?,
            inp.choice("run-out") == "one",
        )
        .map_err(faulty)?,
    };
    let valley = match by {
        "ball" => scallop_height(spacing, radius),
        _ => peak_to_valley(FeedPerRev::from_mm_per_rev(spacing.mm()), radius),
    }
    .map_err(faulty)?;
    let mut a = inp.answer();
    a.line("valley", valley)
        .units(&MICROINCH, &MICRON)
        .says(if by == "ball" {
            "r \u{2212} \u{221a}(r\u{b2} \u{2212} (s/2)\u{b2}), exact."
        } else {
            "f\u{b2} / (8 r), from the geometry alone."
        });
    if by == "nose" {
        let mean =
            mean_roughness(FeedPerRev::from_mm_per_rev(spacing.mm()), radius).map_err(faulty)?;
        a.line("mean", mean)
            .units(&MICROINCH, &MICRON)
            .says("f\u{b2} / (32 r), Groover's constant, by the geometry alone.")
            .band(
                mean,
                mean * 1.27,
                "the published constants: 32, 31.2, and one 27% larger",
            );
    }
    a.line("spacing", spacing).says(match by {
        "slab" if inp.choice("run-out") == "one" => "Once per rev: feed / spindle speed.",
        "slab" => "Once per tooth: feed / (teeth \u{d7} spindle speed).",
        _ => "As given.",
    });
    a.line("per-inch", Number::of(25.4 / spacing.mm()))
        .places(1, 1)
        .says("25.4 mm / distance.");
    a.work(|w| {
        if by == "slab" {
            w.step(
                "Distance between marks",
                &[
                    if inp.choice("run-out") == "one" {
                        "s = F / n"
                    } else {
                        "s = F / (z n)"
                    }
                    .into(),
                    format!("s = {}", inp.show_to(spacing, 4, 3)),
                ],
                &TOOTH_FEED,
            );
        }
        let (s, r) = (inp.num_to(spacing, 5, 4), inp.num_to(radius, 5, 4));
        let put = if by == "ball" {
            format!("h = {r} \u{2212} \u{221a}({r}\u{b2} \u{2212} ({s}/2)\u{b2})")
        } else {
            format!("h = {s}\u{b2} / (8 \u{d7} {r})")
        };
        w.step(
            "Peak to valley Rt",
            &[format!("{put} = {}", inp.show_to(valley, 7, 5))],
            &GEOMETRY,
        );
        if by == "nose" {
            w.step(
                "Average roughness Ra",
                &[
                    "Ra = f\u{b2} / (32 r)".into(),
                    format!(
                        "Ra = {s}\u{b2} / (32 \u{d7} {r}) = {}",
                        inp.show_to(valley / 4.0, 7, 5)
                    ),
                ],
                &GROOVER_FINISH,
            );
        }
    });
    if by == "nose" {
        a.source(&CONSTANTS);
    }
    a.note("real-surface", "About the real surface", "Geometry is the least that is left. A built-up edge, chatter, wear and play add to it; in soft metal it can be twice as rough.");
    a.draw(|| marks(spacing, valley, [inp.show(radius), inp.show(spacing)]));
    Ok(a)
}

/// Three marks of a round edge side by side.
fn marks(spacing: Length, valley: Length, texts: [String; 2]) -> Drawing {
    let [r_text, s_text] = texts;
    let s = spacing.mm();
    // drawn steep enough to see: the marks are flat in truth
    let high = (valley.mm() / s).max(0.2) * s;
    let mut draw = Drawing::new(
        format!(
            "Marks {s_text} apart left by a radius of {r_text}; height drawn larger than it is"
        ),
        false,
    );
    let mut profile = Vec::new();
    for mark in 0..3 {
        for part in 0..=8 {
            let x = f64::from(part) / 8.0;
            profile.push(pt(
                (f64::from(mark) + x) * s,
                high * (2.0 * x - 1.0) * (2.0 * x - 1.0),
            ));
        }
    }
    draw.path(Pen::Object, false, &profile);
    profile.push(pt(3.0 * s, -1.5 * high));
    profile.push(pt(0.0, -1.5 * high));
    draw.hatch(&profile);
    draw.dimension(pt(s, high), pt(2.0 * s, high), 2.0, s_text);
    draw.text(pt(1.5 * s, -0.8 * high), format!("radius {r_text}"));
    draw
}
