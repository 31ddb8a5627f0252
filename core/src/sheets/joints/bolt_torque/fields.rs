//! What is asked, what comes out, and which entries show it.

use crate::calls::thread::CALL;
use crate::quantity::units::{KILONEWTON, LBF, LBF_FT, LBF_IN, NEWTON, NEWTON_METRE};
use crate::quantity::{Kind, Unit};
use crate::sheet::*;
use crate::standards::bolts::bolt_strength::GRADES;
use crate::standards::bolts::nut_factors;

#[allow(clippy::indexing_slicing)] // made while compiling: a wrong index stops the build
const fn grade_choices() -> [Choice; GRADES.len() + 1] {
    let mut all =
        [choice("unmarked", "No mark, or not known (taken as the weakest)"); GRADES.len() + 1];
    let mut i = 0;
    while i < GRADES.len() {
        all[i + 1] = choice(GRADES[i].key, GRADES[i].name);
        i += 1;
    }
    all
}
pub(in crate::sheets) static GRADE_CHOICES: [Choice; GRADES.len() + 1] = grade_choices();

#[allow(clippy::indexing_slicing)] // made while compiling: a wrong index stops the build
const fn state_choices() -> [Choice; nut_factors::ROWS.len() + 1] {
    let rows = nut_factors::ROWS;
    let mut all = [choice("own", "a nut factor of my own"); nut_factors::ROWS.len() + 1];
    let mut i = 0;
    while i < rows.len() {
        all[i] = choice(rows[i].key, rows[i].state);
        i += 1;
    }
    all
}
pub(in crate::sheets) static STATE_CHOICES: [Choice; nut_factors::ROWS.len() + 1] = state_choices();

const TORQUE_UNITS: &[&Unit] = &[&LBF_FT, &LBF_IN, &NEWTON_METRE];

/// The fields.
pub(super) static FIELDS: &[Field] = &[
    Field::call("thread", "Thread", &CALL)
        .is(Thing::Thread)
        .example("3/8-16"),
    Field::choice("grade", "Grade, by the marks on the head", &GRADE_CHOICES),
    Field::choice(
        "from",
        "Start from",
        &[
            choice("share", "the usual share of the proof load"),
            choice("clamp", "a clamp load"),
            choice("torque", "a torque"),
        ],
    ),
    Field::choice(
        "joint",
        "The joint",
        &[
            choice("reusable", "reusable: comes apart again (75%)"),
            choice("permanent", "permanent (90%)"),
            choice("own", "a share of my own"),
        ],
    )
    .when(&[when("from", &["share"])]),
    Field::percent("share", "Share of the proof load")
        .example("60%")
        .range(
            0.01,
            2.0,
            "a share from 1% to 200%; past 100% only the limit is told",
        )
        .when(&[when("from", &["share"]), when("joint", &["own"])])
        .monotonic(),
    Field::quantity(
        "clamp",
        "Clamp load",
        Kind::Force,
        const { &[&LBF, &NEWTON, &KILONEWTON] },
    )
    .example("5000 lbf")
    .range(0.1, 10_000_000.0, "the range of clamp loads")
    .when(&[when("from", &["clamp"])])
    .measured()
    .monotonic(),
    Field::quantity("torque", "Torque", Kind::Torque, TORQUE_UNITS)
        .example("28.9 ft-lb")
        .range(0.001, 100_000.0, "the range of torques")
        .when(&[when("from", &["torque"])])
        .measured()
        .monotonic(),
    Field::choice("state", "Lubrication and finish", &STATE_CHOICES)
        .hint("A figure for dry threads overloads an oiled screw."),
    Field::choice(
        "form",
        "Method",
        &[
            choice("short", "a nut factor"),
            choice("long", "friction of thread and head, each by itself"),
        ],
    )
    .seldom(),
    Field::number("factor", "Nut factor K")
        .example("0.2")
        .range(0.02, 1.0, "published nut factors run from 0.08 to 0.5")
        .when(&[when("state", &["own"]), when("form", &["short"])])
        .measured()
        .monotonic(),
    Field::number("thread-friction", "Friction in the thread")
        .seldom()
        .example("0.15")
        .hint("Empty: the middle of the friction class that belongs to the state.")
        .range(0.01, 1.0, "the range of friction, metal on metal")
        .when(&[when("form", &["long"])])
        .measured()
        .monotonic()
        .optional(),
    Field::number("head-friction", "Friction under the head")
        .seldom()
        .example("0.15")
        .range(0.01, 1.0, "the range of friction, metal on metal")
        .when(&[when("form", &["long"])])
        .measured()
        .monotonic()
        .optional(),
    Field::choice(
        "head",
        "Bearing face under the head",
        &[
            choice("rule", "a face of 1.5 D (mean 1.25 D)"),
            choice("hex", "a hex head, usual hole"),
            choice("socket", "a socket head, usual hole"),
        ],
    )
    .seldom()
    .when(&[when("form", &["long"])]),
    Field::choice(
        "by",
        "Tightened by",
        &[
            choice("wrench", "torque wrench"),
            choice("feel", "feel"),
            choice("tensioner", "hydraulic tensioner"),
            choice("washer", "load indicating washer"),
            choice("yield", "wrench that senses yield"),
            choice("stretch", "measured stretch"),
            choice("ultrasonic", "ultrasonic"),
        ],
    ),
    Field::choice(
        "adapter",
        "Adapter or crowfoot on the wrench",
        &[
            choice("none", "none"),
            choice("straight", "straight ahead, in line"),
            choice("across", "across, at a right angle"),
            choice("back", "back along the wrench"),
        ],
    )
    .seldom(),
    Field::length("lever", "Wrench: middle of the grip to its drive")
        .seldom()
        .example("12 in")
        .range_mm(20.0, 3000.0, "the range of torque wrenches")
        .when(&[when("adapter", &["straight", "across", "back"])])
        .measured()
        .monotonic(),
    Field::length("extension", "Adapter: drive to the middle of the screw")
        .seldom()
        .example("2 in")
        .range_mm(1.0, 2000.0, "the range of adapter lengths")
        .when(&[when("adapter", &["straight", "across", "back"])])
        .measured()
        .monotonic(),
    Field::length("grip", "Grip: thickness that is clamped")
        .seldom()
        .example("1-1/2 in")
        .hint("For the stretch and the drawing.")
        .range_mm(0.5, 2000.0, "the range of grip lengths")
        .measured()
        .monotonic()
        .optional(),
    Field::quantity(
        "wrench-low",
        "Wrench reads from",
        Kind::Torque,
        TORQUE_UNITS,
    )
    .example("10 ft-lb")
    .range(0.0, 100_000.0, "the range of torque wrenches")
    .from_shop(ShopItem::WrenchLow, "10 ft-lb"),
    Field::quantity("wrench-high", "Wrench reads to", Kind::Torque, TORQUE_UNITS)
        .example("100 ft-lb")
        .range(0.01, 100_000.0, "the range of torque wrenches")
        .from_shop(ShopItem::WrenchHigh, "100 ft-lb"),
];

/// The results.
pub(super) static RESULTS: &[Res] = &[
    Res::of("torque", "Torque", Kind::Torque),
    Res::of("clamp", "Clamp load", Kind::Force),
    Res::of("share-of-proof", "Share of the proof load", Kind::Share),
    Res::of("torque-in-lb", "The same in inch-pounds", Kind::Torque),
    Res::of("torque-ft-lb", "The same in foot-pounds", Kind::Torque),
    Res::of("torque-nm", "The same in newton meters", Kind::Torque),
    Res::of("set-to", "Set the wrench to", Kind::Torque),
    Res::words("wrench", "Torque wrench"),
    Res::words("passes", "Several screws: tighten in rounds at"),
    Res::of("proof-load", "Proof load", Kind::Force),
    Res::of("torque-at-proof", "Torque at the proof load", Kind::Torque),
    Res::of("nut-factor", "Nut factor K", Kind::Number),
    Res::of("stress-area", "Stress area", Kind::Area),
    Res::of(
        "share-of-yield",
        "Combined tension and torsion, share of yield",
        Kind::Share,
    ),
    Res::of("stretch", "Stretch of the screw", Kind::Length),
];

/// Entries with a whole answer.
pub(super) static EXAMPLES: &[&[(&str, &str)]] = &[
    &[
        ("thread", "3/8-16"),
        ("grade", "sae-5"),
        ("grip", "1-1/2 in"),
    ],
    &[
        ("thread", "M10"),
        ("grade", "8.8"),
        ("from", "torque"),
        ("torque", "45 Nm"),
        ("state", "oiled"),
    ],
    &[
        ("thread", "1/2-13"),
        ("grade", "a574"),
        ("form", "long"),
        ("head", "socket"),
    ],
    &[
        ("thread", "M8"),
        ("grade", "a2-70"),
        ("from", "clamp"),
        ("clamp", "9 kN"),
        ("state", "moly"),
    ],
    &[
        ("thread", "5/16-18"),
        ("grade", "sae-8"),
        ("joint", "own"),
        ("share", "60%"),
        ("state", "own"),
        ("factor", "0.16"),
        ("adapter", "straight"),
        ("lever", "12 in"),
        ("extension", "2 in"),
    ],
];
