//! Which stages make this plate, and which gears make this stage? Structures of a box and tooth counts on fixed shafts.

mod fields;
mod gears;
mod series;

use crate::quantity::Kind;
use crate::sheet::*;

/// The sheet.
pub static SHEET: Sheet = Sheet {
    id: "gear-stages",
    revision: 3,
    title: "Work out how a gearbox is laid out",
    question: "Which levers and gear stages give this plate, and which gears give these ratios?",
    aside: "plate, or ratios",
    words: &[
        "gearbox",
        "gear box",
        "stages of a box",
        "layout of a gearbox",
        "structure",
        "structural formula",
        "speed chart",
        "ray diagram",
        "tooth counts",
        "number of teeth",
        "gear pair",
        "centre distance",
        "center distance",
        "tooth sum",
        "cluster",
        "gear ratio",
    ],
    group: Group::Run,
    fields: fields::FIELDS,
    results: &[
        Res::words("structure", "Stages"),
        Res::stepped("plate-off", "Farthest off the plate", Kind::Share),
        Res::stepped("found", "Layouts found", Kind::Count),
        Res::of("ratio", "Ratio from setting to setting", Kind::Number),
        Res::stepped("range", "Widest stage, end to end", Kind::Number),
        Res::words("gears", "Gears, driver/driven"),
        Res::stepped("worst", "Farthest off a ratio", Kind::Share),
        Res::stepped("sum", "Tooth sum", Kind::Count),
        Res::stepped("centre", "Center distance", Kind::Length),
    ],
    examples: &[
        &[],
        &[("box", "speeds")],
        &[("find", "gears"), ("ratios", "0.5;0.7071;1")],
        &[
            ("find", "gears"),
            ("ratios", "2;1.5;1"),
            ("sense", "driven"),
            ("module", "2 mm"),
            ("box", "speeds"),
        ],
    ],
    takes: &[],
    finds: None,
    figure: |inp| {
        if inp.choice("find") == "gears" {
            gears::figure(inp)
        } else {
            series::figure(inp)
        }
    },
};

static STRUCTURE: Source = Source::from_memory(
    "Acherkan, Machine Tool Design",
    "structural formula z = p1(1) p2(p1) p3(p1 p2)",
);
static LIMITS: Source = Source::from_memory(
    "Machine tool design texts",
    "gear ratios 1/4 to 2 for speeds, 1/5 to 2.8 for feeds; stage range 8 and 14",
);
static SUM: Source = Source::from_memory(
    "Machine tool design texts",
    "tooth sum constant on fixed shafts of one module",
);
static TRADE: Source = Source::practice("Rounding to whole teeth moves a speed or feed by 2 to 5%");
