//! What is entered for a belt drive, and what may come out?

use crate::quantity::Kind;
use crate::quantity::units::{INCH, MM, RPM};
use crate::sheet::*;

pub(super) static FIELDS: &[Field] = &[
    Field::choice(
        "ask",
        "Drive",
        &[
            choice("stages", "pulleys, one stage or more"),
            choice("cones", "stepped cones"),
        ],
    ),
    Field::quantity(
        "motor",
        "Motor or first shaft",
        Kind::RotationalSpeed,
        &[&RPM],
    )
    .example("1725 rpm")
    .range(1.0, 30_000.0, "the range of motor speeds")
    .measured()
    .monotonic(),
    Field::choice(
        "belt",
        "Belt",
        &[
            choice("v", "V: pitch diameters"),
            choice("flat", "flat: outside diameters"),
        ],
    ),
    Field::quantity("thick", "Belt thickness", Kind::Length, &[&INCH, &MM])
        .example("3/16 in")
        .range_mm(0.1, 25.0, "the range of belt thicknesses")
        .hint("Half of it on each side counts: a flat belt runs on the middle of its thickness.")
        .when(&[when("belt", &["flat"])])
        .measured(),
    Field::percent("slip", "Slip, each stage")
        .example("2%")
        .preset("0 pct") // words: as a link writes it
        .range(0.0, 0.2, "a belt that slips more than 20% burns")
        .hint("0 for the plain ratio; 1 to 2% is usual under load.")
        .measured()
        .monotonic(),
    Field::rows("cones", "Cone steps: driver and driven", CONES, 2, 8)
        .example("3 in~6 in;4.5 in~4.5 in;6 in~3 in")
        .hint("Step by step, as the belt lies.")
        .when(&[when("ask", &["cones"])]),
    Field::rows("stages", "Stages: driver and driven", PAIR, 1, 6)
        .example("3 in~9 in;4 in~6 in")
        .hint("From the motor to the spindle.")
        .when(&[when("ask", &["stages"])]),
    Field::rows("more", "Fixed stages before or after", PAIR, 1, 5)
        .example("2.5 in~10 in")
        .hint("Beside the cones, where there are any.")
        .when(&[when("ask", &["cones"])])
        .optional(),
    Field::quantity(
        "centres",
        "Center distance, first belt",
        Kind::Length,
        &[&INCH, &MM],
    )
    .example("20 in")
    .range_mm(10.0, 20_000.0, "the range of center distances")
    .hint("For the belt length.")
    .optional()
    .measured()
    .monotonic(),
    Field::choice(
        "run",
        "Belt runs",
        &[choice("open", "open"), choice("crossed", "crossed")],
    ),
    Field::quantity(
        "wanted",
        "Spindle speed wanted",
        Kind::RotationalSpeed,
        &[&RPM],
    )
    .example("400 rpm")
    .range(0.1, 100_000.0, "the range of spindle speeds")
    .hint("To find the pulley for it.")
    .optional(),
];

pub(super) static RESULTS: &[Res] = &[
    Res::of("spindle", "Spindle", Kind::RotationalSpeed),
    Res::of("slowest", "Slowest", Kind::RotationalSpeed),
    Res::of("fastest", "Fastest", Kind::RotationalSpeed),
    Res::of("ratio", "Ratio, output to input", Kind::Number),
    Res::of("belt-speed", "Belt speed, first pair", Kind::SurfaceSpeed),
    Res::of("length", "Belt length, first pair", Kind::Length),
    Res::of("wrap", "Wrap on the smaller pulley", Kind::Angle),
    Res::of(
        "length-spread",
        "Belt lengths of the steps differ by",
        Kind::Length,
    ),
    Res::of(
        "driven-for",
        "Last driven pulley for the speed wanted",
        Kind::Length,
    ),
    Res::of("cone-driver", "New step, driver", Kind::Length),
    Res::of("cone-driven", "New step, driven", Kind::Length),
];

pub(super) static EXAMPLES: &[&[(&str, &str)]] = &[
    &[
        ("motor", "1725 rpm"),
        ("stages", "3 in~9 in;4 in~6 in"),
        ("slip", "2 pct"), // words: as a link writes it
        ("centres", "20 in"),
        ("wanted", "400 rpm"),
    ],
    &[
        ("ask", "cones"),
        ("motor", "450 rpm"),
        ("belt", "flat"),
        ("thick", "3/16 in"),
        ("cones", "3 in~6 in;4.5 in~4.6 in;6 in~3 in"),
        ("centres", "30 in"),
        ("wanted", "600 rpm"),
    ],
];

const fn pulley(id: &'static str, label: &'static str) -> Field {
    Field::quantity(id, label, Kind::Length, const { &[&INCH, &MM] })
        .range_mm(5.0, 5000.0, "the range of pulley sizes")
        .example("6 in")
}
static PAIR: &[Field] = &[pulley("driver", "Driver"), pulley("driven", "Driven")];
static CONES: &[Field] = &[
    pulley("driver", "Driver step"),
    pulley("driven", "Driven step"),
];
