//! What is entered for tapping, and what may come out?

use super::torque::FLUTES;
use crate::calls;
use crate::quantity::Kind;
use crate::quantity::units::*;
use crate::record::DRILL_PRESS;
use crate::sheet::*;
use crate::sheets::cutting::speed_feed::{RPM_COLUMN, WORK};

pub(super) static EXAMPLES: &[&[(&str, &str)]] = &[
    &[
        ("thread", "3/8-16"),
        ("work", "gray-iron"),
        ("depth", "1/2 in"),
        ("how", "machine"),
    ],
    &[
        ("thread", "1/4-20"),
        ("work", "mild-steel"),
        ("hole", "blind"),
        ("depth", "1/2 in"),
    ],
    &[
        ("thread", "1/4-20"),
        ("work", "stainless"),
        ("hole", "blind"),
        ("depth", "3/8 in"),
        ("how", "machine"),
        ("head", "reversing"),
    ],
];

const MACHINE: &[&str] = &["machine"];

pub(super) static FIELDS: &[Field] = &[
    Field::call("thread", "Thread", &calls::thread::CALL).is(Thing::Thread)
        .example("3/8-16")
        .hint("As 1/4-20, #10-32, M10 or M10x1.25."),
    Field::choice("work", "Work material", &WORK).is(Thing::Material),
    Field::choice(
        "hole",
        "Hole",
        &[choice("through", "through"), choice("blind", "blind")],
    ),
    Field::length("depth", "Depth of full thread")
        .example("1/2 in")
        .hint("In a through hole, the thickness.")
        .range_in(0.02, 20.0, "the range of tapping depths")
        .measured(),
    Field::choice(
        "tap",
        "Last tap in the hole",
        &[
            choice("plug", "plug (second) tap"),
            choice("bottoming", "bottoming tap"),
            choice("taper", "taper (starting) tap"),
        ],
    )
    .when(&[when("hole", &["blind"])]),
    Field::choice("flutes", "Flutes of the tap", FLUTES).seldom(),
    Field::percent("share", "Your own percent of thread")
        .example("65%")
        .hint(
            "In place of the percent by metal and depth. Of the full depth, 1.299 P on the diameter.",
        )
        .range(
            0.3,
            1.0,
            "under 30% the thread strips, over 100% leaves no room for the tap",
        )
        .optional(),
    Field::choice(
        "how",
        "Turned",
        &[
            choice("hand", "by hand"),
            choice("machine", "by the spindle"),
        ],
    ),
    Field::choice(
        "head",
        "Tapping head",
        &[
            choice("none", "none: chuck of a drill press, mill or lathe"),
            choice("reversing", "releasing or reversing head"),
        ],
    )
    .when(&[when("how", MACHINE)]),
    Field::number("hardness", "Brinell hardness of the work")
        .example("180")
        .hint("If you know it: then rows for other hardnesses are left out.")
        .range(50.0, 650.0, "the range of hardness that a tap can cut")
        .seldom()
        .optional(),
    Field::quantity(
        "speed",
        "Your own cutting speed",
        Kind::SurfaceSpeed,
        &[&SFM, &M_PER_MIN],
    )
    .example("20 sfm")
    .hint("In place of the lowest published figure; then the spindle speed at or below it.")
    .range(0.3, 3000.0, "the range of tapping speeds")
    .when(&[when("how", MACHINE)])
    .optional(),
    Field::rows(
        "press-steps",
        "Drill press spindle speeds",
        RPM_COLUMN,
        1,
        48,
    )
    .example("250;610;1100")
    .hint("As on the plate, of the machine that taps.")
    .from_shop(ShopItem::DrillPressSteps, DRILL_PRESS)
    .when(&[when("how", MACHINE)]),
    Field::quantity("motor", "Motor", Kind::Power, &[&HORSEPOWER, &KILOWATT])
        .seldom()
        .example("1/2 hp")
        .hint("Of the machine that taps, for its load.")
        .range(10.0, 100_000.0, "the range of shop motors")
        .when(&[when("how", MACHINE)])
        .optional(),
    Field::percent("efficiency", "Drive efficiency")
        .seldom()
        .preset("75 pct") // words: as a link writes it
        .example("75%")
        .hint("Belt about 90, back gear 75, geared head 70 to 80 percent.")
        .range(0.1, 1.0, "a drive passes on part of the motor's power")
        .when(&[when("how", MACHINE)]),
    Field::length("wrench", "Tap wrench, over its handles")
        .seldom()
        .example("9 in")
        .hint("For the push of each hand.")
        .range_in(1.0, 60.0, "the range of tap wrench lengths")
        .when(&[when("how", &["hand"])])
        .optional(),
];

pub(super) static RESULTS: &[Res] = &[
    Res::of("share-aim", "Percent of thread to cut", Kind::Share),
    Res::of("hole-size", "Hole for that thread", Kind::Length),
    Res::words("drill", "Nearest standard drill"),
    Res::of("drill-depth", "Drill to, at full diameter", Kind::Length),
    Res::stepped("rpm", "Set the spindle to", Kind::RotationalSpeed),
    Res::of("aim", "Cutting speed aimed at", Kind::SurfaceSpeed),
    Res::stepped(
        "surface",
        "Cutting speed at that spindle speed",
        Kind::SurfaceSpeed,
    ),
    Res::of("rpm-exact", "Exact spindle speed", Kind::RotationalSpeed),
    Res::of("seconds", "Time to full depth", Kind::Time),
    Res::of("torque", "Torque of a sharp tap", Kind::Torque),
    Res::of("torque-think", "Stop and check above", Kind::Torque),
    Res::of("push", "Push of each hand on the wrench", Kind::Force),
    Res::of("power", "Power at the tap", Kind::Power),
    Res::of("motor-share", "Motor load", Kind::Share),
    Res::of("turns", "Turns to full depth", Kind::Number),
    Res::of("ratio", "Depth of thread in diameters", Kind::Number),
];
