//! What is entered: a plate whose stages are wanted, or ratios whose gears are wanted.

use crate::quantity::Kind;
use crate::quantity::units::MM;
use crate::record::{FEED_STEP, FEEDS, FEEDS_TURN, FOLLOWS, SPEED_STEP, SPINDLE, TURN_FEED_STEP};
use crate::sheet::*;

const SERIES: When = when("find", &["stages"]);
const GEARS: When = when("find", &["gears"]);
const FEED_BOX: When = when("box", &["feeds"]);

pub static FIELDS: &[Field] = &[
    Field::choice(
        "find",
        "Find",
        &[
            choice("stages", "stages for a plate"),
            choice("gears", "gears for ratios"),
        ],
    ),
    Field::choice(
        "box",
        "Box for",
        &[choice("feeds", "feeds"), choice("speeds", "spindle speeds")],
    ),
    Field::choice("feed-follows", "Feed follows the spindle", FOLLOWS)
        .from_shop(ShopItem::FeedFollows, "own")
        .when(&[SERIES, FEED_BOX]),
    Field::rows("feed-steps", "Feeds on the plate", FEED_STEP, 2, 48)
        .example("0.5 ipm;1 ipm;2 ipm;4 ipm")
        .hint("All of them, in any order; twice where two settings show one value.")
        .from_shop(ShopItem::FeedSteps, FEEDS)
        .when(&[SERIES, FEED_BOX, when("feed-follows", &["own"])]),
    Field::rows(
        "feed-steps-turn",
        "Feeds on the plate, per rev",
        TURN_FEED_STEP,
        2,
        48,
    )
    .example("0.002 ipr;0.004 ipr;0.008 ipr")
    .hint("All of them, in any order; twice where two settings show one value.")
    .from_shop(ShopItem::FeedStepsTurn, FEEDS_TURN)
    .when(&[SERIES, FEED_BOX, when("feed-follows", &["spindle"])]),
    Field::rows("spindle-steps", "Speeds on the plate", SPEED_STEP, 2, 48)
        .example("70 rpm;110 rpm;175 rpm;270 rpm")
        .hint("All of them, in any order; twice where two settings show one value.")
        .from_shop(ShopItem::SpindleSteps, SPINDLE)
        .when(&[SERIES, when("box", &["speeds"])]),
    Field::rows("ratios", "Ratios wanted", RATIO, 1, 12)
        .example("0.5;0.7071;1")
        .hint("Of one stage, one per row.")
        .when(&[GEARS]),
    Field::choice(
        "sense",
        "Ratio is",
        &[
            choice("driver", "driver over driven"),
            choice("driven", "driven over driver"),
        ],
    )
    .when(&[GEARS]),
    Field::count("sum-low", "Smallest tooth sum")
        .preset("50")
        .range(10.0, 300.0, "tooth sums from 10 to 300 are searched")
        .when(&[GEARS]),
    Field::count("sum-high", "Largest tooth sum")
        .preset("90")
        .range(10.0, 300.0, "tooth sums from 10 to 300 are searched")
        .when(&[GEARS]),
    Field::count("least", "Fewest teeth on a gear")
        .preset("18")
        .range(5.0, 100.0, "gears of 5 teeth and more are searched")
        .hint("Under 17 at 20\u{b0} teeth are undercut unless shifted.")
        .when(&[GEARS]),
    Field::quantity("module", "Module", Kind::Length, &[&MM])
        .example("2 mm")
        .hint("In mm. Gives the center distance.")
        .range(0.1, 30.0, "the range of gear sizes")
        .optional()
        .when(&[GEARS]),
    Field::number("dp", "Or diametral pitch")
        .example("10")
        .hint("Teeth to an inch of pitch diameter, where the gears are in inches.")
        .range(0.8, 254.0, "the range of gear sizes")
        .optional()
        .when(&[GEARS]),
];

static RATIO: &[Field] =
    &[Field::number("ratio", "Ratio")
        .example("0.5")
        .range(0.02, 50.0, "more needs two stages")];
