//! What is entered for a taper pin?

use crate::calls::pin::{INCH_CALL, METRIC_CALL};
use crate::quantity::Kind;
use crate::quantity::units::{KSI, LBF_FT, LBF_IN, MPA, NEWTON_METRE, PSI};
use crate::record::DRILL_SETS;
use crate::sheet::*;

static WAYS: &[Choice] = &[
    choice("number", "a pin number"),
    choice("shaft", "shaft and hub"),
    choice("pin", "a measured pin"),
    choice("gauge", "a gauge in the hole"),
    choice("worn", "a worn hole"),
];
static SERIES: &[Choice] = &[
    choice("inch", "inch, 1:48"),
    choice("metric", "metric, 1:50"),
];
static GAUGES: &[Choice] = &[
    choice("plain", "plain pin or drill shank"),
    choice("ball", "ball"),
    choice("taper", "taper gauge or sound pin"),
];
static PLANS: &[Choice] = &[
    choice("one", "one drill"),
    choice("two", "two steps"),
    choice("three", "three steps"),
    choice("four", "four steps"),
];

const IN_A_HUB: &[When] = &[when("from", &["number", "shaft", "gauge", "worn"])];
const GAUGE: When = when("from", &["gauge"]);
const WORN: &[When] = &[when("from", &["worn"])];
const PIN: &[When] = &[when("from", &["pin"])];
/// A gauge measures a hole that is there already.
const DRILLED: &[When] = &[when("from", &["number", "shaft", "pin", "worn"])];
const SIZES: &str = "taper pins run from 1/16 to 2 in";

/// In the order of the form.
pub(super) static FIELDS: &[Field] = &[
    Field::choice("from", "Start from", WAYS),
    Field::choice("series", "Series", SERIES)
        .hint("Inch pins are named by the large end, metric pins by the small end.")
        .when(IN_A_HUB),
    Field::call("number", "Pin number", &INCH_CALL)
        .example("2/0")
        .when(&[when("from", &["number"]), when("series", &["inch"])]),
    Field::call("size", "Pin size", &METRIC_CALL)
        .example("6x40")
        .hint("The small end in mm, with the length if you like.")
        .when(&[when("from", &["number"]), when("series", &["metric"])]),
    Field::choice("gauge-kind", "Gauge", GAUGES).when(&[GAUGE]),
    Field::length("gauge", "Diameter of the gauge")
        .example("1/8 in")
        .hint("Of a taper gauge: its large end.")
        .range_in(0.02, 2.5, SIZES)
        .when(&[GAUGE])
        .measured(),
    Field::length("depth", "Depth below the face")
        .example("0.42 in")
        .hint("To the end of the pin, or to the top of the ball (minus where it sticks out).")
        .range_in(-2.5, 13.0, "the longest pins are 13 in")
        .when(&[GAUGE, when("gauge-kind", &["plain", "ball"])])
        .measured(),
    Field::length("stands", "Gauge sticks out")
        .example("0.25 in")
        .hint("Its large end over the face; minus where it has sunk under it.")
        .range_in(-13.0, 13.0, "the longest pins are 13 in")
        .when(&[GAUGE, when("gauge-kind", &["taper"])])
        .measured(),
    Field::length("worn-large", "Worn hole at the large face")
        .example("0.222 in")
        .hint("The largest size over wear and burr.")
        .range_in(0.02, 2.5, SIZES)
        .when(WORN)
        .measured(),
    Field::length("worn-small", "Worn hole at the small face")
        .example("0.195 in")
        .range_in(0.02, 2.5, SIZES)
        .when(WORN)
        .measured()
        .optional(),
    Field::length("least-cut", "Smallest cut on the diameter")
        .seldom()
        .example("0.002 in")
        .hint("What the reamer should take everywhere, so that no old surface is left.")
        .preset("0.002 in")
        .range_in(0.0, 0.1, "more than 0.1 in is not a cleanup cut")
        .when(WORN),
    Field::length("large", "Large end measured")
        .example("0.1412 in")
        .hint("Clear of the rounded end.")
        .range_in(0.02, 2.5, SIZES)
        .when(PIN)
        .measured(),
    Field::length("small", "Small end measured")
        .example("0.1201 in")
        .hint("Clear of the rounded end.")
        .range_in(0.02, 2.5, SIZES)
        .when(PIN)
        .measured(),
    Field::length("between", "Length between the two places")
        .example("1 in")
        .hint("Along the pin, from one place of measuring to the other.")
        .range_in(0.1, 13.0, "the longest pins are 13 in")
        .when(PIN)
        .measured(),
    Field::length("length", "Length in the hub")
        .example("1-1/2 in")
        .hint(
            "The hub's diameter where the pin goes through. A metric pin is not known without it.",
        )
        .range_in(0.05, 13.0, "the longest pins are 13 in")
        .when(IN_A_HUB)
        .measured()
        .optional(),
    Field::length("shaft", "Shaft diameter")
        .example("3/4 in")
        .range_in(0.05, 12.0, "shafts up to 12 in are covered")
        .when(IN_A_HUB)
        .measured()
        .optional(),
    Field::length("proud", "Sticks out when pushed in by hand")
        .seldom()
        .example("1/16 in")
        .hint("Before it is driven home.")
        .preset("1/16 in")
        .range_in(
            0.0,
            0.25,
            "a pin that sticks out more than 1/4 in can't be driven home",
        ),
    Field::quantity(
        "stress",
        "Shear stress allowed",
        Kind::Stress,
        &[&PSI, &KSI, &MPA],
    )
    .seldom()
    .example("6000 psi")
    .hint("For what the pin will carry. 6000 psi is the figure of the handbook's example.")
    .range(1.0, 1500.0, "pins of any steel shear below 1500 MPa")
    .optional(),
    Field::quantity(
        "load",
        "Torque to carry",
        Kind::Torque,
        &[&LBF_IN, &LBF_FT, &NEWTON_METRE],
    )
    .seldom()
    .example("500 in-lb")
    .hint("Through hub and shaft: what does it put on the pin? The shaft's diameter is needed.")
    .range(
        0.001,
        1_000_000.0,
        "the range of torques on shafts of this size",
    )
    .when(IN_A_HUB)
    .optional(),
    Field::choice("plan", "Drilling", PLANS)
        .seldom()
        .when(DRILLED),
    Field::choice("drills", "Drills owned", DRILL_SETS)
        .when(DRILLED)
        .from_shop(ShopItem::DrillSets, "usual"),
];
