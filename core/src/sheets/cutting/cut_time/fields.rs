//! What does the time of a cut ask, and what does it answer?

use crate::quantity::Kind;
use crate::quantity::units::*;
use crate::sheet::*;

static OTHERS: &[Field] = &[
    Field::length("diameter", "Diameter").range_in(0.01, 40.0, "the range of cutter sizes"),
    Field::length("axial", "Width").range_in(0.0005, 40.0, "the range of depths and widths of cut"),
    Field::length("depth", "Depth")
        .range_in(0.0005, 10.0, "the range of depths in one pass")
        .optional(),
];

const MILL: &[&str] = &["slab", "centred", "offset"];
const TABLE: &[&str] = &["slab", "centred", "offset", "drill"];
const TURN: &[&str] = &["turn"];

pub(super) static FIELDS: &[Field] = &[
    Field::choice(
        "cut",
        "Cut",
        &[
            choice("slab", "slab, side or form cutter, saw"),
            choice("centred", "face cutter, cut centered on it"),
            choice("offset", "face or end cutter, cut to one side"),
            choice("drill", "drill"),
            choice("turn", "turning or boring in the lathe"),
        ],
    ),
    Field::length("diameter", "Diameter")
        .example("2-1/2 in")
        .hint("Of the cutter or drill; in the lathe, of the work before the pass.")
        .range_in(0.01, 40.0, "the range of cutter and work sizes")
        .measured(),
    Field::length("depth", "Depth of cut")
        .example("0.1 in")
        .hint("Toward the arbor.")
        .range_in(0.0005, 10.0, "the range of depths in one pass")
        .when(&[when("cut", &["slab"])])
        .measured(),
    Field::length("largest", "Largest cutter on the arbor")
        .example("3 in")
        .hint("With several cutters: it starts first and cuts deepest. Empty: one cutter.")
        .range_in(0.01, 40.0, "the range of cutter sizes")
        .when(&[when("cut", &["slab"])])
        .optional(),
    Field::rows("others", "Other cutters on the arbor", OTHERS, 1, 8)
        .seldom()
        .example("3 in~1/2 in")
        .hint("Diameter, width, and depth where the work is stepped; width of the first below. For the metal removed.")
        .when(&[when("cut", &["slab"])])
        .optional(),
    Field::length("width", "Width of cut (radial depth, across the feed)")
        .example("2 in")
        .hint("On the work, not of the cutter.")
        .range_in(0.0005, 40.0, "the range of widths in one pass")
        .when(&[when("cut", &["centred", "offset"])])
        .measured(),
    Field::length("axial", "Axial depth (along the spindle)")
        .example("2 in")
        .hint("For the metal removed.")
        .range_in(0.0005, 40.0, "the range of depths and widths of cut")
        .when(&[when("cut", MILL)])
        .optional(),
    Field::length("length", "Length of the work, or depth of the hole")
        .example("7 in")
        .range_in(0.005, 400.0, "the range of table travels")
        .measured(),
    Field::table_feed("feed", "Feed")
        .example("3 ipm")
        .when(&[when("cut", TABLE)]),
    Field::quantity("rpm", "Spindle speed", Kind::RotationalSpeed, &[&RPM])
        .example("200")
        .range(1.0, 100_000.0, "the range of spindle speeds")
        .when(&[when("cut", TURN)]),
    Field::quantity(
        "turn-feed",
        "Feed per rev",
        Kind::FeedPerRev,
        &[&IN_PER_REV, &MM_PER_REV, &THOU_PER_REV],
    )
    .example("0.008 ipr")
    .range(0.001, 10.0, "the range of feeds on lathes and drill presses")
    .when(&[when("cut", TURN)]),
    Field::length("radial", "Depth of cut")
        .example("0.06 in")
        .hint("On the radius. For the metal removed.")
        .range_in(0.0005, 10.0, "the range of depths in one pass")
        .when(&[when("cut", TURN)])
        .optional(),
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
        .range(60.0, 170.0, "the range of drill point angles")
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
        .range_in(0.0, 40.0, "the range of table travels"),
    Field::count("passes", "Passes or holes")
        .preset("1")
        .example("3")
        .range(1.0, 1000.0, "at most 1000 passes or holes are added up"),
    Field::table_feed("back", "Feed on the way back")
        .seldom()
        .example("20 ipm")
        .hint("Empty: not counted.")
        .range(0.1, 50_000.0, "the range of rapid traverse rates")
        .filled_from_shop(ShopItem::Rapid)
        .when(&[when("cut", TABLE)])
        .optional(),
];

pub(super) static RESULTS: &[Res] = &[
    Res::of("total", "Time for all", Kind::Time),
    Res::of("time", "Time for one", Kind::Time),
    Res::of("approach", "Approach", Kind::Length),
    Res::of("travel", "Travel at feed", Kind::Length),
    Res::of("removal", "Metal removed while cutting", Kind::RemovalRate),
];
