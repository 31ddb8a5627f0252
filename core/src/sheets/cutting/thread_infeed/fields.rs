//! What is entered for the infeed of a thread, and what may come out?

use crate::machine::MOST_WHEELS;
use crate::quantity::Kind;
use crate::quantity::units::*;
use crate::record::WHEEL;
use crate::sheet::*;

pub(super) static FIELDS: &[Field] = &[
    Field::quantity(
        "pitch",
        "Pitch or threads per inch",
        Kind::Pitch,
        &[&TPI, &PITCH_MM, &PITCH_INCH],
    )
    .example("16 tpi")
    .hint("Of the thread; with several starts the lead is the pitch times the starts.")
    .range(0.2, 26.0, "the range of threads cut in a lathe"),
    Field::choice(
        "depth",
        "Depth by",
        &[
            choice("unr", "Unified, rounded root, 2003 and later: 0.5954 P"),
            choice("unified", "Unified to 1989: 0.6134 P"),
            choice("national", "American National, older charts: 0.6495 P"),
        ],
    ),
    Field::quantity(
        "angle",
        "Compound (top slide) set over from square",
        Kind::Angle,
        &[&DEGREE],
    )
    .preset("29.5 deg")
    .example("29 deg")
    .hint("29, 29-1/2 or 30; 0 for straight in.")
    .range(
        0.0,
        30.0,
        "beyond half of the thread's 60 degrees the tool scrapes the trailing flank",
    ),
    Field::count("passes", "Passes")
        .example("8")
        .hint("Empty: by the pitch, 8 or as many as keep the first one to 0.025 in.")
        .range(1.0, 60.0, "at most 60 passes are listed")
        .optional(),
    Field::count("starts", "Starts")
        .seldom()
        .preset("1")
        .example("2")
        .range(1.0, 12.0, "the range of thread starts"),
    Field::quantity("rpm", "Spindle speed", Kind::RotationalSpeed, &[&RPM])
        .seldom()
        .example("80")
        .hint("For the time that is left before the shoulder.")
        .range(1.0, 10_000.0, "the range of lathe spindle speeds")
        .optional(),
    Field::length("length", "Length of the thread")
        .seldom()
        .example("1 in")
        .range_in(0.01, 100.0, "the range of thread lengths")
        .optional(),
    Field::quantity(
        "leadscrew",
        "Leadscrew",
        Kind::Pitch,
        &[&TPI, &PITCH_MM, &PITCH_INCH],
    )
    .seldom()
    .example("8 tpi")
    .hint("For the thread dial and the change gears.")
    .range(0.5, 26.0, "the range of lathe leadscrews")
    .filled_from_shop(ShopItem::Leadscrew)
    .optional(),
    Field::rows(
        "wheels",
        "Change gears (change wheels) of the lathe",
        WHEEL,
        2,
        MOST_WHEELS,
    )
    .seldom()
    .example("20;24;28;32;36;40;44;48;56;64;72;80;100;127")
    .hint("Teeth, one per row; with the leadscrew, for the train that cuts the lead.")
    .filled_from_shop(ShopItem::ChangeWheels)
    .optional(),
    Field::number("fixed", "Leadscrew turns with 1:1 gears")
        .seldom()
        .example("1/2")
        .preset("1")
        .range(0.001, 1000.0, "the range of gearbox and stud gear ratios")
        .hint("For one spindle turn: 1 with no gearbox and equal stud gears."),
    Field::count("wheel", "Teeth of the thread dial's gear")
        .seldom()
        .preset("32")
        .example("32")
        .range(4.0, 120.0, "the range of teeth on thread dial gears")
        .filled_from_shop(ShopItem::ThreadDialWheel),
    Field::count("lines", "Lines on the thread dial")
        .seldom()
        .preset("8")
        .example("8")
        .hint("Numbered and plain ones together.")
        .range(1.0, 60.0, "the range of lines on a thread dial")
        .filled_from_shop(ShopItem::ThreadDialLines),
];

pub(super) static RESULTS: &[Res] = &[
    Res::of(
        "infeed",
        "Feed the compound (top slide) in by",
        Kind::Length,
    ),
    Res::of("depth", "Depth of the thread", Kind::Length),
    Res::stepped("pass-count", "Passes", Kind::Number),
    Res::of("first", "First pass", Kind::Length),
    Res::of("last", "Last pass", Kind::Length),
    Res::of("lead", "Lead: gear the lathe for", Kind::Pitch),
    Res::of("carriage", "Carriage runs at", Kind::FeedRate),
    Res::of("time", "Time for one pass", Kind::Time),
    Res::words("dial", "Close the half nuts at"),
    Res::words("train", "Change gears (change wheels)"),
    Res::stepped("cuts", "They cut the lead", Kind::Pitch),
    Res::stepped("over-length", "Off over the length", Kind::Length),
    Res::words("fits", "On the quadrant"),
];
