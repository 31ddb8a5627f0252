//! Which part of a feed or speed box is bad? From how each setting runs, without opening it.

mod advice;
mod boxed;
mod draw;
mod fields;
mod gears;
mod grid;
mod look;
mod marks;
mod order;
mod plate;
mod points;
mod say;
mod tell;

use crate::quantity::Kind;
use crate::sheet::*;

/// The sheet.
pub static SHEET: Sheet = Sheet {
    id: "which-pair",
    revision: 3,
    title: "Find the bad gear pair",
    question: "Which gears are at fault?",
    aside: "stages, how each setting runs",
    words: &[
        "gearbox",
        "gear box",
        "gears grinding",
        "gear noise",
        "growl",
        "won't go into gear",
        "does not mesh",
        "feeds don't mesh",
        "feed gearbox",
        "bad pair",
        "gear pair",
        "feed box",
        "speed box",
        "quick change",
        "bad gear",
        "noisy",
        "jumps out of gear",
        "slow to mesh",
        "will not engage",
        "fault",
        "grinding",
        "lever",
        "shift fork",
        "detent",
        "back gear",
    ],
    group: Group::Run,
    fields: fields::FIELDS,
    results: &[
        Res::words("cause", "Points to"),
        Res::words("look", "Look first at"),
        Res::words("next", "Try next"),
        Res::words("cleared", "Cleared"),
        Res::words("open", "Not cleared"),
        Res::stepped("left", "Explanations that fit", Kind::Count),
        Res::stepped("settings", "Settings of the gearbox", Kind::Count),
    ],
    examples: &[
        &[
            ("stages", "5~2;2~1"),
            ("marks", "1~slow;2~slow;3~well;6~well"),
        ],
        &[
            ("plate", "none"),
            ("stages", "3~3;3~1;2~9"),
            ("marks", "1~well;2~noisy;5~noisy;12~well;17~noisy"),
        ],
        &[
            ("plate", "none"),
            ("stages", "3~~20/40 25/35 30/30;2~~16/48x20/40 32/32"),
            ("marks", "1~jumps;2~jumps;4~well;5~well;6~well"),
        ],
        &[("plate", "speeds"), ("stages", "4~2;2~1")],
    ],
    takes: &[],
    finds: None,
    figure: tell::figure,
};
