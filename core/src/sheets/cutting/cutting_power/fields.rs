//! What is entered for the power of a cut, and what may come out?

use super::arbor::OTHERS;
use crate::calls;
use crate::quantity::Kind;
use crate::quantity::units::*;
use crate::sheet::*;
use crate::sheets::cutting::speed_feed::WORK;
use crate::sheets::cutting::tapping::FLUTES;

pub(super) static EXAMPLES: &[&[(&str, &str)]] = &[
    &[
        ("by", "unit"),
        ("cut", "mill"),
        ("group", "plain-carbon"),
        ("hardness", "150"),
        ("wear", "slab"),
        ("diameter", "2-1/2 in"),
        ("rpm", "110"),
        ("teeth", "8"),
        ("feed", "3 ipm"),
        ("engaged", "0.1 in"),
        ("axial", "2 in"),
    ],
    &[
        ("by", "kc"),
        ("metal", "iron"),
        ("diameter", "4 in"),
        ("rpm", "70"),
        ("teeth", "18"),
        ("feed", "1.5 ipm"),
        ("engaged", "1/2 in"),
        ("axial", "1/8 in"),
        ("others", "4 in~18~1/8 in"),
    ],
    &[
        ("by", "kc"),
        ("cut", "turn"),
        ("metal", "iron"),
        ("diameter", "1-1/2 in"),
        ("rpm", "200"),
        ("turn-feed", "0.008 ipr"),
        ("depth", "0.06 in"),
    ],
    &[
        ("by", "unit"),
        ("cut", "drill"),
        ("group", "plain-carbon"),
        ("hardness", "190"),
        ("wear", "drill"),
        ("diameter", "3/8 in"),
        ("rpm", "610"),
        ("turn-feed", "0.005 ipr"),
        ("kd", "24000"),
    ],
    &[
        ("by", "unit"),
        ("hardness", "150"),
        ("diameter", "4 in"),
        ("rpm", "70"),
        ("teeth", "36"),
        ("feed", "2 ipm"),
        ("engaged", "1/2 in"),
        ("axial", "1/16 in"),
    ],
    &[
        ("cut", "tap"),
        ("thread", "3/8-16"),
        ("tap-work", "mild-steel"),
        ("rpm", "250"),
    ],
];

/// In the order of the table of specific cutting force.
pub(super) static FORCE_MATERIALS: &[Choice] = &[
    choice("soft-steel", "soft unalloyed steel"),
    choice("low-alloy", "low alloy steel"),
    choice("austenitic", "austenitic stainless steel"),
    choice("iron", "gray cast iron"),
    choice("aluminium", "aluminum, wrought"),
    choice("cast-aluminium", "aluminum, cast"),
    choice("e295", "E295 (St 50)"),
    choice("e335", "E335 (St 60)"),
    choice("e360", "E360 (St 70)"),
    choice("42crmo4", "42CrMo4"),
    choice("16mncr5", "16MnCr5"),
    choice("c45", "C45"),
];

/// In the order of the table of specific energy.
pub(super) static ENERGY_MATERIALS: &[Choice] = &[
    choice("aluminium", "aluminum alloys"),
    choice("cast-iron", "cast irons"),
    choice("high-temperature", "high-temperature alloys"),
    choice("magnesium", "magnesium alloys"),
    choice("nickel", "nickel alloys"),
    choice("stainless", "stainless steels"),
    choice("steel", "steels"),
    choice("titanium", "titanium alloys"),
];

static GROUPS: &[Choice] = &[
    choice("plain-carbon", "plain carbon steels"),
    choice("free-1108", "free-machining, AISI 1108 to 1132"),
    choice("free-1137", "free-machining, AISI 1137 to 1151"),
    choice("alloy-4140", "alloy, 4140, 4340, 5140, 8640 group"),
    choice("alloy-4130", "alloy, 4130, 4320, 4615, 8620 group"),
    choice("alloy-1340", "alloy, 1330, 1335, 1340, E52100"),
];

static WEARS: &[Choice] = &[
    choice("slab", "slab milling"),
    choice("end", "end milling"),
    choice("face-light", "face milling, light and medium"),
    choice("face-heavy", "face milling, extra heavy"),
    choice("turn-finish", "turning, finishing"),
    choice("turn-normal", "turning, normal"),
    choice("turn-heavy", "turning, extra heavy"),
    choice("drill", "drilling, normal"),
    choice("drill-hard", "drilling, hard metal, dull drill"),
    choice("sharp", "sharp tool"),
];

const CUTTERS: &[&str] = &["mill", "turn", "drill"];
const TAP: &[When] = &[when("cut", &["tap"])];

pub(super) static FIELDS: &[Field] = &[
    Field::choice(
        "cut",
        "Cut",
        &[
            choice("mill", "milling"),
            choice("turn", "turning"),
            choice("drill", "drilling"),
            choice("tap", "tapping"),
        ],
    ),
    Field::choice(
        "by",
        "Method",
        &[
            choice("unit", "unit power, steels"),
            choice("kc", "specific force kc1.1"),
            choice("energy", "rough estimate, any metal"),
        ],
    )
    .when(&[when("cut", CUTTERS)]),
    Field::choice("group", "Steel", GROUPS).when(&[when("cut", CUTTERS), when("by", &["unit"])]),
    Field::number("hardness", "Brinell hardness")
        .example("150")
        .range(80.0, 360.0, "the range of the unit power table")
        .when(&[when("cut", CUTTERS), when("by", &["unit"])]),
    Field::choice("wear", "Wear factor for", WEARS)
        .when(&[when("cut", CUTTERS), when("by", &["unit"])]),
    Field::choice("metal", "Metal", FORCE_MATERIALS)
        .when(&[when("cut", CUTTERS), when("by", &["kc"])]),
    Field::choice("kind", "Kind of metal", ENERGY_MATERIALS)
        .when(&[when("cut", CUTTERS), when("by", &["energy"])]),
    Field::call("thread", "Thread", &calls::thread::CALL).is(Thing::Thread)
        .example("3/8-16")
        .hint("As 1/4-20, #10-32, M10 or M10x1.25.")
        .when(TAP),
    Field::choice("tap-work", "Work material", &WORK).is(Thing::Material).when(TAP),
    Field::percent("thread-share", "Percent of thread left by the hole")
        .preset("75 pct") // words: as a link writes it
        .example("65%")
        .hint("Of the full depth, 1.299 P on the diameter.")
        .range(
            0.3,
            1.0,
            "under 30% the thread strips, over 100% leaves no room for the tap",
        )
        .when(TAP),
    Field::choice("flutes", "Flutes of the tap", FLUTES)
        .seldom()
        .when(TAP),
    Field::length("diameter", "Diameter")
        .example("2-1/2 in")
        .hint("Of the cutter or drill; in the lathe, of the work before the cut.")
        .range_in(0.01, 40.0, "the range of cutter and work sizes")
        .when(&[when("cut", CUTTERS)])
        .measured(),
    Field::quantity("rpm", "Spindle speed", Kind::RotationalSpeed, &[&RPM])
        .example("110")
        .range(1.0, 100_000.0, "the range of spindle speeds"),
    Field::count("teeth", "Teeth")
        .example("8")
        .range(1.0, 200.0, "the range of teeth, from a fly cutter to a fine saw")
        .when(&[when("cut", &["mill"])]),
    Field::table_feed("feed", "Table feed")
        .example("3 ipm")
        .when(&[when("cut", &["mill"])]),
    Field::length("engaged", "Radial depth (across the feed)")
        .example("0.1 in")
        .hint("Depth of a slab cut; width of a face or end cut.")
        .range_in(0.0005, 40.0, "the range of depths and widths of cut")
        .when(&[when("cut", &["mill"])])
        .measured(),
    Field::length("axial", "Axial depth (along the spindle)")
        .example("2 in")
        .hint("Width of a slab cut; depth of a face or end cut.")
        .range_in(0.0005, 40.0, "the range of depths and widths of cut")
        .when(&[when("cut", &["mill"])])
        .measured(),
    Field::rows("others", "Other cutters on the arbor", OTHERS, 1, 8)
        .seldom()
        .example("3 in~12~1/2 in")
        .hint("Diameter, teeth, width, and depth where the work is stepped. Feed and speed are those of all.")
        .when(&[when("cut", &["mill"])])
        .optional(),
    Field::length("arbor", "Arbor or shank diameter")
        .seldom()
        .example("1 in")
        .hint("For the twist it takes.")
        .range_mm(1.0, 80.0, "the range of arbor and shank sizes")
        .when(&[when("cut", &["mill"])])
        .filled_from_shop(ShopItem::Arbor)
        .optional(),
    Field::quantity(
        "turn-feed",
        "Feed per rev",
        Kind::FeedPerRev,
        &[&IN_PER_REV, &MM_PER_REV, &THOU_PER_REV],
    )
    .example("0.008 ipr")
    .range(0.001, 10.0, "the range of feeds on lathes and drill presses")
    .when(&[when("cut", &["turn", "drill"])]),
    Field::length("depth", "Depth of cut")
        .example("0.06 in")
        .hint("On the radius.")
        .range_in(0.0005, 10.0, "the range of depths in one pass")
        .when(&[when("cut", &["turn"])])
        .measured(),
    Field::quantity(
        "entering",
        "Entering angle (90\u{b0} minus the lead angle)",
        Kind::Angle,
        &[&DEGREE],
    )
    .seldom()
    .preset("90 deg")
    .example("75 deg")
    .hint("Between the edge and the feed; 90 is square to the work, a lead angle of 0.")
    .range(10.0, 90.0, "the range of entering angles")
    .when(&[when("cut", &["turn"])]),
    Field::quantity("point", "Included point angle", Kind::Angle, &[&DEGREE])
        .seldom()
        .preset("118 deg")
        .example("118 deg")
        .range(60.0, 170.0, "the range of drill point angles")
        .when(&[when("cut", &["drill"])]),
    Field::number("kd", "Kd of the work, for thrust")
        .seldom()
        .example("24000")
        .hint("Inch constant; 24000 for steel of 200 HB. Empty: no thrust.")
        .range(500.0, 100_000.0, "the range of factors in the drilling table")
        .when(&[when("cut", &["drill"]), when("by", &["unit"])])
        .optional(),
    Field::choice(
        "web",
        "Drill point",
        &[
            choice("plain", "ordinary, chisel edge 0.18 D"),
            choice("split", "split, 0.03 D"),
        ],
    )
    .seldom()
    .when(&[when("cut", &["drill"]), when("by", &["unit"])]),
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
    .when(&[when("cut", &["turn"])])
    .filled_from_shop(ShopItem::LatheMotor)
    .optional(),
    Field::quantity("motor", "Motor", Kind::Power, &[&HORSEPOWER, &KILOWATT])
        .example("1 hp")
        .range(10.0, 100_000.0, "the range of shop motors")
        .from_shop(ShopItem::Motor, "1 hp"),
    Field::percent("efficiency", "Drive efficiency")
        .example("75%")
        .hint("Belt about 90, back gear 75, geared head 70 to 80 percent.")
        .range(0.1, 1.0, "a drive passes on part of the motor's power")
        .from_shop(ShopItem::DriveEfficiency, "75 pct"), // words: as a link writes it
];

pub(super) static RESULTS: &[Res] = &[
    Res::of("motor-need", "Power from the motor", Kind::Power),
    Res::of("share", "Motor load", Kind::Share),
    Res::of("cutter-need", "Power at the cutter", Kind::Power),
    Res::of("torque", "Torque at the spindle", Kind::Torque),
    Res::of("torque-think", "Stop and check above", Kind::Torque),
    Res::of("arbor-shear", "Shear at the arbor's surface", Kind::Stress),
    Res::of("force", "Cutting force", Kind::Force),
    Res::of("thrust", "Thrust of the drill", Kind::Force),
    Res::of(
        "drill-torque",
        "Torque of the drill, by its own formula",
        Kind::Torque,
    ),
    Res::of("removal", "Metal removed", Kind::RemovalRate),
    Res::of("deepest", "Depth that loads the motor fully", Kind::Length),
];
