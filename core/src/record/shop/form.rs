//! What may be entered of a shop? Declared as a sheet of its own, so that the same form shows it; the general shop is its
//! presets. Machine by machine: mill, drill press, lathe, then what stands on the bench.

use crate::machine::MOST_WHEELS;
use crate::quantity::Kind;
use crate::quantity::units::{
    HORSEPOWER, IN_PER_MIN, IN_PER_REV, KILOWATT, LBF_FT, LBF_IN, MM_PER_MIN, MM_PER_REV,
    NEWTON_METRE, PITCH_MM, RPM, THOU_PER_REV, TPI,
};
use crate::sheet::*;

/// The shop as a form. It is not in the list of questions.
pub static SHOP: Sheet = Sheet {
    id: "my-shop",
    // 2: no general table screw, dial or arbor; 3: which drills are owned is not said
    revision: 3,
    title: "My shop",
    question: "What is in the shop?",
    aside: "machines, drills, wrench",
    words: &[],
    group: Group::Run,
    fields: FIELDS,
    results: &[],
    examples: &[],
    takes: &[],
    finds: None,
    figure: |inp| Ok(inp.answer()),
};

/// A general bench mill's spindle steps: eight steps of about 1.57, invented for the general shop.
pub const SPINDLE: &str = "70;110;175;270;425;670;1050;1650";
/// The general table feed steps, in/min.
pub const FEEDS: &str = "0.5 ipm;0.75 ipm;1 ipm;1.5 ipm;2 ipm;3 ipm;4 ipm;6 ipm;8 ipm;12 ipm";
/// The general feed steps of a mill whose feed follows the spindle, in/rev, invented.
pub const FEEDS_TURN: &str =
    "0.001 ipr;0.002 ipr;0.003 ipr;0.005 ipr;0.008 ipr;0.012 ipr;0.020 ipr;0.030 ipr";
/// The general drill press's steps.
pub const DRILL_PRESS: &str = "250;390;610;1100;1650;2600";
/// The general lathe's steps: every fourth of R20, from 50.
pub const LATHE: &str = "50;80;125;200;315;500;800;1250";

static FIELDS: &[Field] = &[
    Field::rows("spindle-steps", "Mill spindle speeds", SPEED_STEP, 1, 48)
        .example("70;110;175")
        .hint("In rpm as on the plate, with ; between them.")
        .from_shop(ShopItem::SpindleSteps, SPINDLE),
    Field::choice("feed-follows", "Mill feed follows the spindle", FOLLOWS)
        .from_shop(ShopItem::FeedFollows, "own"),
    Field::rows("feed-steps", "Mill table feeds", FEED_STEP, 1, 48)
        .example("1 ipm;2 ipm;4 ipm")
        .hint("As on the plate, with ; between them.")
        .from_shop(ShopItem::FeedSteps, FEEDS)
        .when(&[when("feed-follows", &["own"])]),
    Field::rows(
        "feed-steps-turn",
        "Mill table feeds, per rev",
        TURN_FEED_STEP,
        1,
        48,
    )
    .example("0.002 ipr;0.004 ipr;0.008 ipr")
    .hint("As on the plate of a mill whose feed follows the spindle, with ; between them.")
    .from_shop(ShopItem::FeedStepsTurn, FEEDS_TURN)
    .when(&[when("feed-follows", &["spindle"])]),
    Field::quantity(
        "rapid",
        "Mill rapid traverse",
        Kind::FeedRate,
        &[&IN_PER_MIN, &MM_PER_MIN],
    )
    .example("60 ipm")
    .range(1.0, 50_000.0, "the range of rapid traverse rates")
    .from_shop(ShopItem::Rapid, "60 ipm"),
    Field::length("screw-lead", "Table screw, travel per turn")
        .example("0.200 in")
        .range_mm(0.5, 50.0, "the range of table screw leads")
        .from_shop(ShopItem::ScrewLead, "")
        .optional(),
    Field::length("dial-turn", "Table dial, reading per turn")
        .example("0.200 in")
        .hint("As engraved. Other than the screw's travel where dial and screw are of different units.")
        .range_mm(0.1, 100.0, "the range of dial readings per turn")
        .from_shop(ShopItem::DialTurn, "")
        .optional(),
    Field::count("dial-divisions", "Lines around the dial")
        .example("200")
        .range(2.0, 1000.0, "the range of lines on a dial")
        .from_shop(ShopItem::DialDivisions, "")
        .optional(),
    Field::choice("spindle-taper", "Mill spindle taper", TAPERS)
        .from_shop(ShopItem::SpindleTaper, "nmtb-40"),
    Field::length("arbor", "Arbor diameter")
        .example("1 in")
        .range_mm(5.0, 80.0, "the range of arbor sizes")
        .from_shop(ShopItem::Arbor, "")
        .optional(),
    Field::quantity(
        "motor",
        "Mill motor",
        Kind::Power,
        &[&HORSEPOWER, &KILOWATT],
    )
    .example("1 hp")
    .range(10.0, 100_000.0, "the range of shop motors")
    .from_shop(ShopItem::Motor, "1 hp"),
    Field::percent("drive-efficiency", "Drive efficiency")
        .example("75%")
        .range(0.1, 1.0, "a drive passes on part of the motor's power")
        .from_shop(ShopItem::DriveEfficiency, "75 pct"), // words: as a link writes it
    Field::rows(
        "drill-press-steps",
        "Drill press spindle speeds",
        SPEED_STEP,
        1,
        48,
    )
    .example("250;610;1100")
    .hint("In rpm as on the plate, with ; between them.")
    .from_shop(ShopItem::DrillPressSteps, DRILL_PRESS),
    Field::rows("lathe-steps", "Lathe spindle speeds", SPEED_STEP, 1, 48)
        .example("50;80;125")
        .hint("In rpm as on the plate, with ; between them.")
        .from_shop(ShopItem::LatheSteps, LATHE),
    Field::rows("lathe-feeds", "Lathe power feeds", TURN_FEED_STEP, 1, 48)
        .example("0.003 ipr;0.005 ipr;0.008 ipr")
        .hint("Per rev as on the plate, with ; between them. Empty: fed by hand.")
        .from_shop(ShopItem::LatheFeeds, "")
        .optional(),
    Field::quantity(
        "lathe-motor",
        "Lathe motor",
        Kind::Power,
        &[&HORSEPOWER, &KILOWATT],
    )
    .example("3/4 hp")
    .range(10.0, 100_000.0, "the range of shop motors")
    .from_shop(ShopItem::LatheMotor, "")
    .optional(),
    Field::quantity(
        "leadscrew",
        "Lathe leadscrew",
        Kind::Pitch,
        &[&TPI, &PITCH_MM],
    )
    .example("8 tpi")
    .range(0.5, 26.0, "the range of lathe leadscrews")
    .from_shop(ShopItem::Leadscrew, "")
    .optional(),
    Field::rows("change-wheels", "Lathe change gears (change wheels)", WHEEL, 2, MOST_WHEELS)
        .example("20;30;40;50;60;80;100;127")
        .hint("Teeth, with ; between them; a gear that you have twice is given twice.")
        .from_shop(ShopItem::ChangeWheels, "")
        .optional(),
    Field::count("thread-dial-wheel", "Thread dial, teeth of its gear")
        .example("32")
        .range(4.0, 120.0, "the range of teeth on thread dial gears")
        .from_shop(ShopItem::ThreadDialWheel, "")
        .optional(),
    Field::count("thread-dial-lines", "Thread dial, lines")
        .example("8")
        .hint("Numbered and plain ones together.")
        .range(1.0, 60.0, "the range of lines on a thread dial")
        .from_shop(ShopItem::ThreadDialLines, "")
        .optional(),
    Field::choice("drills", "Drills owned", DRILL_SETS).from_shop(ShopItem::DrillSets, "usual"),
    Field::quantity(
        "wrench-low",
        "Torque wrench, lowest reading",
        Kind::Torque,
        &[&LBF_FT, &LBF_IN, &NEWTON_METRE],
    )
    .example("10 ft-lb")
    .range(0.0, 5000.0, "the range of torque wrenches")
    .from_shop(ShopItem::WrenchLow, "10 ft-lb"),
    Field::quantity(
        "wrench-high",
        "Torque wrench, highest reading",
        Kind::Torque,
        &[&LBF_FT, &LBF_IN, &NEWTON_METRE],
    )
    .example("100 ft-lb")
    .range(0.1, 5000.0, "the range of torque wrenches")
    .from_shop(ShopItem::WrenchHigh, "100 ft-lb"),
];
/// A column of spindle steps as on a plate.
pub static SPEED_STEP: &[Field] =
    &[
        Field::quantity("speed", "Speed", Kind::RotationalSpeed, &[&RPM]).range(
            1.0,
            100_000.0,
            "the range of spindle speeds",
        ),
    ];
/// A column of feed steps as on a plate, per minute.
pub static FEED_STEP: &[Field] = &[Field::table_feed("feed", "Feed")];
/// A column of feed steps as on a plate, per turn.
pub static TURN_FEED_STEP: &[Field] = &[Field::quantity(
    "feed",
    "Feed",
    Kind::FeedPerRev,
    &[&IN_PER_REV, &MM_PER_REV, &THOU_PER_REV],
)
.range(0.0005, 5.0, "the range of power feeds")];
/// A column of wheels by their teeth.
pub static WHEEL: &[Field] = &[Field::count("teeth", "Teeth")
    .range(8.0, 400.0, "the range of teeth on change gears")
    .example("40")];
/// The drill sets that a shop may own; what each holds is in `standards::holes::drill_sets`.
pub static DRILL_SETS: &[Choice] = &[
    choice("usual", "not given: a full inch or metric set"),
    choice("all-inch", "number, letter and fraction to 1/2 in"),
    choice("fraction", "fractions to 1/2 in by 1/64"),
    choice("metric", "metric to 13 mm by 0.1 mm"),
    choice("metric-fine", "metric to 3 mm by 0.05, to 13 mm by 0.1"),
    choice("all", "inch sets and metric, with 0.05 mm steps to 3 mm"),
];

/// Whether a change of spindle step changes the feed in inches a minute.
pub static FOLLOWS: &[Choice] = &[
    choice("own", "no: in/min or mm/min, its own drive"),
    choice("spindle", "yes: in/rev or mm/rev"),
];
/// Spindle tapers by their trade names.
static TAPERS: &[Choice] = &[
    choice("nmtb-30", "7/24 No. 30"),
    choice("nmtb-40", "7/24 No. 40"),
    choice("nmtb-50", "7/24 No. 50"),
    choice("mt-2", "Morse 2"),
    choice("mt-3", "Morse 3"),
    choice("mt-4", "Morse 4"),
    choice("bs-7", "Brown & Sharpe 7"),
    choice("bs-9", "Brown & Sharpe 9"),
    choice("bs-10", "Brown & Sharpe 10"),
    choice("other", "another"),
];
