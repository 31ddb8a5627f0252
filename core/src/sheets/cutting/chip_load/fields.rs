//! What is entered for a chip, and what may come out?

use crate::quantity::units::*;
use crate::quantity::{Angle, Count, FeedRate, Kind, Length, RotationalSpeed};
use crate::sheet::*;

/// What the cutter is made of.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Edge {
    Hss,
    Carbide,
}
impl Choices for Edge {
    const ALL: &'static [Self] = &[Self::Hss, Self::Carbide];
    const SHOWN: &'static [Choice] = &[
        choice("hss", "high-speed steel"),
        choice("carbide", "carbide"),
    ];
}

const CUT: Range = Range::inches(0.0005, 40.0, "the range of depths and widths of cut");

pub(super) const DIAMETER: Of<Length> = Of::length("diameter", "Cutter diameter")
    .example("2-1/2 in")
    .hint(
        "For thinning, and for what an end mill of this size stands. Empty: feed per tooth alone.",
    )
    .range(Range::inches(0.01, 40.0, "the range of cutter sizes"))
    .measured()
    .optional();
pub(super) const TEETH: Of<Count> = Of::count("teeth", "Teeth")
    .example("8")
    .range(Range::within(
        1.0,
        200.0,
        "the range of teeth, from a fly cutter to a fine saw",
    ));
pub(super) const SPINDLE: Of<RotationalSpeed> =
    Of::quantity("rpm", "Spindle speed", const { &[&RPM] })
        .example("110")
        .range(Range::within(1.0, 100_000.0, "the range of spindle speeds"));
pub(super) const FEED: Of<FeedRate> = Of::table_feed("feed", "Table feed").example("3 ipm");
pub(super) const ENGAGED: Of<Length> = Of::length("engaged", "Radial depth (across the feed)")
    .example("0.1 in")
    .hint("Depth of a slab cut; width of an end mill's cut to one side, its diameter in a full slot. Goes with the diameter.")
    .range(CUT)
    .measured()
    .optional();
pub(super) const EDGE: Of<One<Edge>> = Of::choice("tool", "Cutter material");
pub(super) const WANTED: Of<Length> = Of::length("chip-want", "Thickest chip wanted")
    .seldom()
    .example("0.002 in")
    .hint("For the feed that gives it.")
    .range(Range::inches(0.0001, 0.2, "the range of chips in milling"))
    .optional();
pub(super) const AXIAL: Of<Length> = Of::length("axial", "Axial depth (along the spindle)")
    .seldom()
    .example("2 in")
    .hint("For the teeth at work at once, and for the depth of a slot.")
    .range(CUT)
    .optional();
pub(super) const HELIX: Of<Angle> = Of::quantity("helix", "Helix angle", const { &[&DEGREE] })
    .seldom()
    .preset("0 deg")
    .example("25 deg")
    .range(Range::within(0.0, 70.0, "the range of helix angles"));

pub(super) static FIELDS: &[Field] = &[
    DIAMETER.field,
    TEETH.field,
    SPINDLE.field,
    FEED.field,
    ENGAGED.field,
    EDGE.field,
    WANTED.field,
    AXIAL.field,
    HELIX.field,
];

pub(super) static RESULTS: &[Res] = &[
    Res::of("chip", "Feed per tooth", Kind::FeedPerTooth)
        .says("Table feed / (teeth \u{d7} spindle speed), if every tooth cuts the same."),
    Res::of("per-rev", "Feed per rev", Kind::FeedPerRev)
        .says("What one tooth takes where run-out leaves it alone at work."),
    Res::of("thickest", "Thickest chip", Kind::Length)
        .places(5, 4)
        .says("2 fz \u{221a}(r \u{2212} r\u{b2}), r = radial depth / diameter; fz itself from half the diameter up."),
    Res::of("mean", "Mean chip", Kind::Length)
        .places(5, 4)
        .says("2 fz r / \u{3c6} over the arc of cut \u{3c6}; fz \u{221a}r, often printed, is 5% more at a quarter of the diameter and 57% more in a full slot."),
    Res::words("verdict", "The chip"),
    Res::of("thinning", "Feed may be raised by the factor", Kind::Number)
        .places(2, 2)
        .says("Keeps the thickest chip what it is at half the diameter; 1 from there up."),
    Res::of("want-tooth", "Feed per tooth for the chip wanted", Kind::FeedPerTooth)
        .says("Wanted thickest chip / (2 \u{221a}(r \u{2212} r\u{b2}))."),
    Res::of("want-feed", "Table feed for the chip wanted", Kind::FeedRate)
        .says("At that spindle speed."),
    Res::of("least-feed", "Table feed at which it begins to rub", Kind::FeedRate)
        .says("Where the thickest chip falls to the rubbing limit."),
    Res::of("arc", "Arc of cut", Kind::Angle)
        .places(1, 1)
        .says("Cut to one side: acos(1 \u{2212} 2 r)."),
    Res::of("at-work", "Teeth at work on average", Kind::Number)
        .places(2, 2)
        .says("Teeth \u{d7} (arc / 360\u{b0} + axial depth \u{d7} tan \u{3bb} / (\u{3c0} D))."),
    Res::of("even", "Width at which the load is even", Kind::Length)
        .places(3, 2)
        .says("The helix's pitch along the axis, or a whole multiple of it."),
];
