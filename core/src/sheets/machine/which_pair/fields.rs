//! What is entered of a box: its plate, its stages and how each setting ran.

use crate::call::CallFault;
use crate::machine::teeth::{MOST_ALTERNATIVES, TeethFault, Ways, read_stage};
use crate::record::{FEED_STEP, FEEDS, FEEDS_TURN, FOLLOWS, SPEED_STEP, SPINDLE, TURN_FEED_STEP};
use crate::sheet::*;

/// Gear pairs of a stage: driver/driven, a space between positions of the lever, x between pairs in series.
pub static GEARS: Call = Call {
    name: "list of gear pairs",
    read: said,
};

fn said(text: &str) -> Result<Said, CallFault> {
    let ways = read_stage(text).map_err(|fault| match fault {
        TeethFault::Empty => CallFault::Empty,
        TeethFault::Unfinished => CallFault::Unfinished,
        TeethFault::Part(part) => {
            let shown: String = part.chars().filter(char::is_ascii_graphic).collect();
            CallFault::Unknown {
                says: format!("\u{201c}{shown}\u{201d} is no gear pair"),
                cure: "write driver/driven, as 18/36, with a space between positions of the lever"
                    .into(),
            }
        }
        TeethFault::Many => CallFault::Unknown {
            says: format!(
                "more than {MOST_ALTERNATIVES} positions, or more than four pairs in series"
            ),
            cure: "enter fewer".into(),
        },
    })?;
    let parts: Vec<String> = ways.iter().map(Ways::name).collect();
    let count = parts.len();
    Ok(Said {
        call: parts.join(" "),
        reading: format!(
            "{count} {}, driver over driven",
            if count == 1 { "position" } else { "positions" }
        ),
    })
}

pub static FIELDS: &[Field] = &[
    Field::choice("plate", "Plate shows", &[
        choice("feeds", "feeds"),
        choice("speeds", "spindle speeds"),
        choice("none", "nothing readable"),
    ]),
    Field::choice("feed-follows", "Feed follows the spindle", FOLLOWS)
        .from_shop(ShopItem::FeedFollows, "own")
        .when(&[when("plate", &["feeds"])]),
    Field::rows("feed-steps", "Feeds on the plate", FEED_STEP, 2, 48)
        .example("0.5 ipm;1 ipm;2 ipm;4 ipm")
        .hint("All of them, in any order; twice where two settings show one value.")
        .from_shop(ShopItem::FeedSteps, FEEDS)
        .when(&[when("plate", &["feeds"]), when("feed-follows", &["own"])]),
    Field::rows("feed-steps-turn", "Feeds on the plate, per rev", TURN_FEED_STEP, 2, 48)
        .example("0.002 ipr;0.004 ipr;0.008 ipr")
        .hint("All of them, in any order; twice where two settings show one value.")
        .from_shop(ShopItem::FeedStepsTurn, FEEDS_TURN)
        .when(&[when("plate", &["feeds"]), when("feed-follows", &["spindle"])]),
    Field::rows("spindle-steps", "Speeds on the plate", SPEED_STEP, 2, 48)
        .example("70 rpm;110 rpm;175 rpm;270 rpm")
        .hint("All of them, in any order; twice where two settings show one value.")
        .from_shop(ShopItem::SpindleSteps, SPINDLE)
        .when(&[when("plate", &["speeds"])]),
    Field::rows("stages", "Stages of the gearbox", STAGES, 1, 5)
        .example("5~2;2~1")
        .hint("A row a lever or cluster, A first: how many positions it has, position 1 the slowest, and how many settings of the plate one position moves, or its gears."),
    Field::rows("marks", "How each setting runs", MARKS, 0, 72)
        .example("1~slow;2~well")
        .hint("Setting 1 is the slowest. Or tap the grid below.")
        .optional(),
];

static STAGES: &[Field] = &[
    Field::count("places", "Positions").example("3").range(
        1.0,
        12.0,
        "the range of positions of a lever, or gears of a cone",
    ),
    Field::count("spacing", "Settings apart")
        .example("1")
        .range(1.0, 36.0, "plates of up to 36 settings are searched")
        .optional(),
    Field::call("gears", "Gears, driver/driven", &GEARS)
        .example("18/36 27/27 36/18")
        .optional(),
];
static MARKS: &[Field] = &[
    Field::count("setting", "Setting").example("1").range(
        1.0,
        36.0,
        "gearboxes of up to 36 settings are searched",
    ),
    Field::choice(
        "mark",
        "Runs",
        &[
            choice("untested", "not tried"),
            choice("well", "goes in well"),
            choice("slow", "slow to go in"),
            choice("no-mesh", "won't go into gear"),
            choice("jumps", "jumps out"),
            choice("noisy", "noisy"),
            choice("rate", "wrong feed or speed"),
        ],
    ),
];
