//! What is entered about a slack screw, and what may come out?

use crate::quantity::Kind;
use crate::quantity::units::{IN_PER_TOOTH, INCH, MM, MM_PER_TOOTH, THOU};
use crate::sheet::*;

pub(super) static FIELDS: &[Field] = &[
    Field::choice(
        "ask",
        "Wanted",
        &[
            choice("move", "true move from the dial"),
            choice("slack", "backlash from two readings"),
            choice("cut", "climb or conventional"),
        ],
    ),
    length("from", "Dial, before")
        .example("0.100 in")
        .when(MOVE)
        .monotonic(),
    length("to", "Dial, after")
        .example("0.600 in")
        .hint("Counted on past whole turns, not back to zero.")
        .when(MOVE)
        .monotonic(),
    Field::choice(
        "last",
        "Last move before that",
        &[
            choice("up", "toward larger figures"),
            choice("down", "toward smaller figures"),
        ],
    )
    .when(MOVE),
    Field::choice(
        "how",
        "Read how",
        &[
            choice("dial", "dial twice at one place of the table"),
            choice("indicator", "dial against an indicator on the table"),
        ],
    )
    .when(SLACK),
    length("one", "Dial, reached from below")
        .example("0.004 in")
        .hint("Turning toward larger figures; it reads more than the other by the backlash.")
        .when(TWICE),
    length("other", "Dial, reached from above")
        .example("0.192 in")
        .when(TWICE),
    Field::length("dial-turn", "Dial reading per turn")
        .example("0.200 in")
        .range_mm(0.1, 100.0, "the range of dial readings per turn")
        .hint("Where zero lies between the two readings.")
        .when(TWICE)
        .filled_from_shop(ShopItem::DialTurn)
        .optional(),
    length("turned", "Dial turned back by")
        .example("0.050 in")
        .when(SEEN)
        .monotonic(),
    length("moved", "Indicator moved by")
        .example("0.038 in")
        .when(SEEN)
        .monotonic(),
    Field::quantity("slack", "Backlash", Kind::Length, &[&INCH, &MM, &THOU])
        .example("0.012 in")
        .range_in(0.0, 0.125, "more backlash than that calls for a new nut")
        .hint("On the dial, from both directions at one place.")
        .when(&[when("ask", &["move", "cut"])])
        .measured(),
    Field::choice(
        "cut",
        "Cut",
        &[
            choice("conventional", "conventional: feed against the cutter"),
            choice("climb", "climb: feed with the cutter"),
        ],
    )
    .when(CUT),
    Field::choice(
        "nut",
        "Screw",
        &[
            choice("plain", "plain nut"),
            choice(
                "taken-up",
                "backlash taken out: double nut or eliminator set",
            ),
        ],
    )
    .when(CLIMB),
    Field::quantity(
        "chip",
        "Feed per tooth",
        Kind::FeedPerTooth,
        &[&IN_PER_TOOTH, &MM_PER_TOOTH],
    )
    .example("0.003 ipt")
    .range(0.0005, 2.0, "the range of feeds per tooth")
    .when(CUT)
    .measured()
    .monotonic(),
];

pub(super) static RESULTS: &[Res] = &[
    Res::of("true-move", "Table moves", Kind::Length),
    Res::of("lost", "Lost in the backlash", Kind::Length),
    Res::of(
        "still",
        "Still to turn before the table moves",
        Kind::Length,
    ),
    Res::of("set-to", "Turn the dial to", Kind::Length),
    Res::of("slack-found", "Backlash", Kind::Length).wraps(),
    Res::words("verdict", "Direction of feed"),
    Res::of(
        "bite",
        "Largest bite if the cutter pulls",
        Kind::FeedPerTooth,
    ),
];

pub(super) static EXAMPLES: &[&[(&str, &str)]] = &[
    &[
        ("from", "0.100 in"),
        ("to", "0.600 in"),
        ("last", "down"),
        ("slack", "0.012 in"),
    ],
    &[
        ("ask", "slack"),
        ("one", "0.004 in"),
        ("other", "0.192 in"),
        ("dial-turn", "0.200 in"),
    ],
    &[
        ("ask", "slack"),
        ("how", "indicator"),
        ("turned", "0.050 in"),
        ("moved", "0.038 in"),
    ],
    &[("ask", "cut"), ("slack", "0.012 in"), ("chip", "0.003 ipt")],
    &[
        ("ask", "cut"),
        ("cut", "climb"),
        ("slack", "0.002 in"),
        ("chip", "0.003 ipt"),
    ],
];

const MOVE: &[When] = &[when("ask", &["move"])];
const SLACK: &[When] = &[when("ask", &["slack"])];
const TWICE: &[When] = &[when("ask", &["slack"]), when("how", &["dial"])];
const SEEN: &[When] = &[when("ask", &["slack"]), when("how", &["indicator"])];
const CUT: &[When] = &[when("ask", &["cut"])];
const CLIMB: &[When] = &[when("ask", &["cut"]), when("cut", &["climb"])];

const fn length(id: &'static str, label: &'static str) -> Field {
    Field::quantity(id, label, Kind::Length, const { &[&INCH, &MM, &THOU] })
        .range(-5000.0, 5000.0, "the range of table travels")
        .measured()
}
