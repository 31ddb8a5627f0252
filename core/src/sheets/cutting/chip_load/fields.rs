//! What is entered for a chip, and what may come out?

use crate::quantity::Kind;
use crate::quantity::units::*;
use crate::sheet::*;

pub(super) static FIELDS: &[Field] = &[
    Field::length("diameter", "Cutter diameter")
        .example("2-1/2 in")
        .hint("For thinning, and for what an end mill of this size stands. Empty: feed per tooth alone.")
        .range_in(0.01, 40.0, "the range of cutter sizes")
        .measured()
        .optional(),
    Field::count("teeth", "Teeth").example("8").range(
        1.0,
        200.0,
        "the range of teeth, from a fly cutter to a fine saw",
    ),
    Field::quantity("rpm", "Spindle speed", Kind::RotationalSpeed, &[&RPM])
        .example("110")
        .range(1.0, 100_000.0, "the range of spindle speeds"),
    Field::table_feed("feed", "Table feed").example("3 ipm"),
    Field::length("engaged", "Radial depth (across the feed)")
        .example("0.1 in")
        .hint("Depth of a slab cut; width of an end mill's cut to one side, its diameter in a full slot. Goes with the diameter.")
        .range_in(0.0005, 40.0, "the range of depths and widths of cut")
        .measured()
        .optional(),
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
        .range_in(0.0001, 0.2, "the range of chips in milling")
        .optional(),
    Field::length("axial", "Axial depth (along the spindle)")
        .seldom()
        .example("2 in")
        .hint("For the teeth at work at once, and for the depth of a slot.")
        .range_in(0.0005, 40.0, "the range of depths and widths of cut")
        .optional(),
    Field::quantity("helix", "Helix angle", Kind::Angle, &[&DEGREE])
        .seldom()
        .preset("0 deg")
        .example("25 deg")
        .range(0.0, 70.0, "the range of helix angles"),
];

pub(super) static RESULTS: &[Res] = &[
    Res::of("chip", "Feed per tooth", Kind::FeedPerTooth),
    Res::of("per-rev", "Feed per rev", Kind::FeedPerRev),
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
