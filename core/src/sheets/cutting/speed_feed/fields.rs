//! What is entered for a cut, and what may come out?

pub(super) use super::cuts::*;
use crate::quantity::Kind;
use crate::quantity::units::*;
use crate::record::{
    DRILL_PRESS, FEED_STEP, FEEDS, FEEDS_TURN, FOLLOWS, LATHE, SPINDLE, TURN_FEED_STEP,
};
use crate::sheet::*;
use crate::standards::cutting::cutting_speeds::Material;

pub(super) static EXAMPLES: &[&[(&str, &str)]] = &[
    &[
        ("cut", "slab"),
        ("work", "gray-iron"),
        ("diameter", "2-1/2 in"),
        ("teeth", "8"),
        ("depth", "3/32 in"),
        ("axial", "2 in"),
        ("length", "7 in"),
    ],
    &[
        ("cut", "end"),
        ("work", "mild-steel"),
        ("diameter", "1/2 in"),
        ("teeth", "4"),
        ("width", "1/8 in"),
        ("lies", "side"),
        ("axial", "1/4 in"),
        ("length", "4 in"),
    ],
    &[
        ("cut", "drill"),
        ("work", "mild-steel"),
        ("diameter", "3/8 in"),
        ("hole", "1 in"),
    ],
];

#[allow(
    clippy::indexing_slicing,
    reason = "a const loop within both arrays' own length"
)]
pub(in crate::sheets) const WORK: [Choice; Material::ALL.len()] = {
    let mut list = [choice("", ""); Material::ALL.len()];
    let mut i = 0;
    while i < list.len() {
        list[i] = choice(Material::ALL[i].id(), Material::ALL[i].label());
        i += 1;
    }
    list
};

static TOOLS: &[Choice] = &[
    choice("hss", "high-speed steel"),
    choice("carbide", "carbide"),
    choice("carbon", "carbon steel (old cutters)"),
    choice("cobalt", "cobalt high-speed steel"),
    choice("cast-alloy", "cast alloy (cobalt and chromium)"),
];

/// A column of spindle speeds with the id that these sheets have had from the start.
pub(in crate::sheets) static RPM_COLUMN: &[Field] =
    &[
        Field::quantity("rpm", "Speed", Kind::RotationalSpeed, &[&RPM]).range(
            1.0,
            100_000.0,
            "the range of spindle speeds",
        ),
    ];
pub(super) static FIELDS: &[Field] = &[
    Field::choice("cut", "Cut", CUTS),
    Field::choice("work", "Work material", &WORK).is(Thing::Material),
    Field::choice("tool", "Cutter material", TOOLS),
    Field::number("hardness", "Brinell hardness of the work")
        .seldom()
        .example("180")
        .hint("If you know it: then rows for other hardnesses are left out.")
        .range(
            50.0,
            650.0,
            "the range of Brinell hardness of metal that can be cut",
        )
        .optional(),
    Field::length("diameter", "Diameter")
        .example("2-1/2 in")
        .hint("Of the cutter or drill; in the lathe, of the work.")
        .range_in(0.01, 40.0, "the range of cutter and work sizes")
        .measured(),
    Field::count("teeth", "Teeth")
        .example("8")
        .hint("For the feed; the spindle needs the diameter alone.")
        .range(1.0, 200.0, "the range of teeth, from a fly cutter to a fine saw")
        .when(&[when("cut", MILL)])
        .optional(),
    Field::count("flutes", "Flutes of the reamer")
        .example("6")
        .hint("For its feed.")
        .range(1.0, 40.0, "the range of reamer flutes")
        .when(&[when("cut", &["ream"])])
        .optional(),
    Field::length("depth", "Radial depth (depth of cut)")
        .example("3/32 in")
        .hint("From the surface toward the arbor. For the feed.")
        .range_in(0.0005, 10.0, "the range of depths in one pass")
        .when(&[when("cut", ARBOR)])
        .measured()
        .optional(),
    Field::length("width", "Radial depth (width of cut)")
        .example("1/8 in")
        .hint("Across the feed, seen along the spindle. For the feed.")
        .range_in(
            0.0005,
            40.0,
            "the range of widths in one pass",
        )
        .when(&[when("cut", FACE)])
        .measured()
        .optional(),
    Field::choice(
        "lies",
        "The cut lies",
        &[
            choice("centred", "centered on the cutter"),
            choice("side", "to one side"),
        ],
    )
    .when(&[when("cut", FACE)]),
    Field::length("axial", "Axial depth (along the spindle)")
        .example("2 in")
        .hint("Width of a slab, side or saw cut; depth of a face or end cut. For the power, and how deep a slot may be.")
        .range_in(0.0005, 40.0, "the range of depths of cut")
        .when(&[when("cut", MILL)])
        .optional(),
    Field::length("length", "Length of the pass")
        .example("7 in")
        .hint("Of the work; approach is added. For the time.")
        .range_in(0.01, 400.0, "the range of table travels")
        .when(&[when("cut", MILL)])
        .optional(),
    Field::length("overrun", "Extra travel at the ends")
        .seldom()
        .preset("0 in")
        .example("1/8 in")
        .range_in(0.0, 40.0, "the range of table travels")
        .when(&[when("cut", MILL)]),
    Field::length("hole", "Depth of the hole")
        .example("1 in")
        .hint("Full diameter; the point is added. For the time, and whether to peck.")
        .range_in(0.005, 60.0, "the range of drilling depths")
        .when(&[when("cut", &["drill"])])
        .optional(),
    Field::length("cut-depth", "Depth of cut, on the radius")
        .example("0.06 in")
        .hint("For the power.")
        .range_in(0.0005, 10.0, "the range of depths in one pass")
        .when(&[when("cut", TURNED)])
        .optional(),
    Field::length("run", "Length of the thread")
        .example("3/4 in")
        .hint("From the start to the shoulder or the end. For the time.")
        .range_in(0.01, 400.0, "the range of threads cut in a lathe")
        .when(&[when("cut", &["thread"])])
        .optional(),
    Field::quantity("point", "Included point angle", Kind::Angle, &[&DEGREE])
        .seldom()
        .preset("118 deg")
        .example("118 deg")
        .range(60.0, 170.0, "the range of drill point angles")
        .when(&[when("cut", &["drill"])]),
    Field::quantity(
        "speed",
        "Your own cutting speed",
        Kind::SurfaceSpeed,
        &[&SFM, &M_PER_MIN],
    )
    .seldom()
    .example("80 sfm")
    .hint("In place of the lowest sourced figure.")
    .range(0.3, 3000.0, "the range of cutting speeds")
    .optional(),
    Field::quantity(
        "chip",
        "Your own feed per tooth",
        Kind::FeedPerTooth,
        &[&IN_PER_TOOTH, &MM_PER_TOOTH, &THOU_PER_TOOTH],
    )
    .seldom()
    .example("0.004 ipt")
    .hint("In place of the sourced figure.")
    .range(0.0005, 5.0, "the range of feeds per tooth")
    .when(&[when("cut", MILL)])
    .optional(),
    Field::choice(
        "thinning",
        "In a narrow cut",
        &[
            choice("leave", "leave the feed"),
            choice("raise", "raise it for the thinner chip"),
        ],
    )
    .seldom()
    .when(&[when("cut", MILL)]),
    Field::quantity(
        "turn-feed",
        "Your own feed per rev",
        Kind::FeedPerRev,
        &[&IN_PER_REV, &MM_PER_REV, &THOU_PER_REV],
    )
    .example("0.004 ipr")
    .hint("In place of the lowest sourced figure.")
    .range(0.0005, 5.0, "the range of feeds per rev")
    .when(&[when("cut", PER_TURN)])
    .optional(),
    Field::quantity(
        "pitch",
        "Pitch or threads per inch",
        Kind::Pitch,
        &[&TPI, &PITCH_MM, &PITCH_INCH],
    )
    .example("16 tpi")
    .hint("The feed per rev is the lead. In the lathe it also limits the spindle.")
    .range(0.1, 26.0, "the range of thread pitches")
    .when(&[when("cut", &["tap", "thread"])])
    .optional(),
    Field::rows("steps", "Mill spindle speeds", RPM_COLUMN, 1, 48)
        .example("70;110;175")
        .hint("As on the plate.")
        .from_shop(ShopItem::SpindleSteps, SPINDLE)
        .when(&[when("cut", MILL)]),
    Field::rows("press-steps", "Drill press speeds", RPM_COLUMN, 1, 48)
        .example("250;610;1100")
        .hint("As on the plate.")
        .from_shop(ShopItem::DrillPressSteps, DRILL_PRESS)
        .when(&[when("cut", HOLE)]),
    Field::rows("lathe-steps", "Lathe spindle speeds", RPM_COLUMN, 1, 48)
        .example("50;80;125")
        .hint("As on the plate.")
        .from_shop(ShopItem::LatheSteps, LATHE)
        .when(&[when("cut", LATHE_CUTS)]),
    Field::choice("feed-follows", "Table feed follows the spindle", FOLLOWS)
        .from_shop(ShopItem::FeedFollows, "own")
        .when(&[when("cut", MILL)]),
    Field::rows("feeds", "Table feeds", FEED_STEP, 1, 48)
        .example("1 ipm;2 ipm;4 ipm")
        .hint("As on the plate, per minute.")
        .from_shop(ShopItem::FeedSteps, FEEDS)
        .when(&[when("cut", MILL), when("feed-follows", &["own"])]),
    Field::rows("feeds-turn", "Table feeds, per rev", TURN_FEED_STEP, 1, 48)
        .example("0.002 ipr;0.004 ipr;0.008 ipr")
        .hint("As on the plate, per rev of the spindle.")
        .from_shop(ShopItem::FeedStepsTurn, FEEDS_TURN)
        .when(&[when("cut", MILL), when("feed-follows", &["spindle"])]),
    Field::rows("turn-feeds", "Power feeds", TURN_FEED_STEP, 1, 48)
        .example("0.003 ipr;0.005 ipr;0.008 ipr")
        .hint("Per rev, where the machine has them; empty: in the lathe those of the shop, else by hand.")
        .when(&[when("cut", PER_TURN)])
        .optional(),
    Field::rows("lathe-feeds", "Lathe power feeds", TURN_FEED_STEP, 1, 48)
        .example("0.003 ipr;0.005 ipr;0.008 ipr")
        .hint("Per rev, as on the plate; empty: by hand.")
        .from_shop(ShopItem::LatheFeeds, "")
        .when(&[when("cut", LATHE_FED)])
        .optional(),
    Field::length("arbor", "Arbor diameter")
        .seldom()
        .example("1 in")
        .hint("For how deep the cutter reaches below its collars.")
        .range_mm(5.0, 80.0, "the range of arbor sizes")
        .when(&[when("cut", ARBOR)])
        .filled_from_shop(ShopItem::Arbor)
        .optional(),
    Field::quantity(
        "lathe-motor",
        "Motor of the lathe",
        Kind::Power,
        &[&HORSEPOWER, &KILOWATT],
    )
    .seldom()
    .example("3/4 hp")
    .hint("Empty: the motor below.")
    .range(10.0, 100_000.0, "the range of shop motors")
    .when(&[when("cut", TURNED)])
    .filled_from_shop(ShopItem::LatheMotor)
    .optional(),
    Field::quantity("motor", "Motor", Kind::Power, &[&HORSEPOWER, &KILOWATT])
        .seldom()
        .example("1 hp")
        .range(10.0, 100_000.0, "the range of shop motors")
        .from_shop(ShopItem::Motor, "1 hp")
        .when(&[when("cut", POWERED)]),
    Field::percent("efficiency", "Drive efficiency")
        .seldom()
        .example("75%")
        .hint("Belt about 90, back gear 75, geared head 70 to 80 percent.")
        .range(0.1, 1.0, "a drive passes on part of the motor's power")
        .from_shop(ShopItem::DriveEfficiency, "75 pct") // words: as a link writes it
        .when(&[when("cut", POWERED)]),
];

pub(super) static RESULTS: &[Res] = &[
    Res::stepped("rpm", "Set the spindle to", Kind::RotationalSpeed),
    Res::stepped("feed", "Set the feed to", Kind::FeedRate),
    Res::stepped("turn-feed", "Set the feed per rev to", Kind::FeedPerRev),
    Res::words("verdict", "The chip"),
    Res::of("aim", "Cutting speed aimed at", Kind::SurfaceSpeed),
    Res::stepped(
        "surface",
        "Cutting speed at that spindle speed",
        Kind::SurfaceSpeed,
    ),
    Res::of("rpm-exact", "Exact spindle speed", Kind::RotationalSpeed),
    Res::of("rule", "By the rule of thumb", Kind::RotationalSpeed),
    Res::of("chip-aim", "Feed per tooth aimed at", Kind::FeedPerTooth),
    Res::stepped("chip", "Feed per tooth as set", Kind::FeedPerTooth),
    Res::stepped("chip-max", "Thickest chip", Kind::Length),
    Res::stepped("chip-mean", "Mean chip", Kind::Length),
    Res::of("thinning", "Feed may be raised by the factor", Kind::Number),
    Res::stepped(
        "feed-exact",
        "Exact table feed at that spindle speed",
        Kind::FeedRate,
    ),
    Res::of("feed-aim", "Feed per rev aimed at", Kind::FeedPerRev),
    Res::stepped("per-turn", "Feed per rev", Kind::FeedPerRev),
    Res::of(
        "stock",
        "Leave for the reamer, on the diameter",
        Kind::Length,
    ),
    Res::of("before", "Drill or bore before reaming to", Kind::Length),
    Res::of("approach", "Approach", Kind::Length),
    Res::stepped("time", "Time for the pass", Kind::Time),
    Res::stepped("removal", "Metal removed", Kind::RemovalRate),
    Res::stepped("motor-need", "Power from the motor", Kind::Power),
    Res::stepped("share", "Motor load", Kind::Share),
    Res::stepped("thrust", "Push on the drill", Kind::Force),
];
