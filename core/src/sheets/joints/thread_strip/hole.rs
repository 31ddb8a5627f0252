//! What does the tapped hole look like, with the screw in it?

use super::case::Case;
use crate::quantity::Length;
use crate::sheet::{Drawing, Inputs, Pen, pt};

/// Section through the tapped part: screw from above, engagement as a dimension, depth needed as a mark.
pub(super) fn drawing(inp: &Inputs, case: &Case, needed: Length) -> Drawing {
    let d = case.thread.major.mm();
    let depth = inp.opt::<Length>("depth").unwrap_or(needed);
    let (r, wide, le) = (d / 2.0, 1.8 * d, depth.mm());
    let bottom = -(le.max(needed.mm()) + 0.8 * d);
    let hole = -(le + 0.4 * d);
    let plate = 0.6 * d;
    let mut drawing = Drawing::new(
        format!(
            "{} screwed {} deep into {}; {} is needed",
            case.thread.short(),
            inp.show(depth),
            case.hole.name,
            inp.show(needed)
        ),
        true,
    );
    for side in [-1.0, 1.0] {
        let block = [
            pt(side * r, 0.0),
            pt(side * wide, 0.0),
            pt(side * wide, bottom),
            pt(0.0, bottom),
            pt(0.0, hole),
            pt(side * r, hole),
        ];
        drawing.hatch(&block);
        drawing.path(
            Pen::Object,
            false,
            &[
                pt(side * r, 0.0),
                pt(side * wide, 0.0),
                pt(side * wide, bottom),
                pt(0.0, bottom),
            ],
        );
        drawing.path(
            Pen::Object,
            false,
            &[pt(side * r, 0.0), pt(side * r, hole), pt(0.0, hole)],
        );
        let minor = case.limits.internal_minor_max.mm() / 2.0;
        drawing.path(
            Pen::Thin,
            false,
            &[pt(side * minor, plate), pt(side * minor, -le)],
        );
        let clear = 0.55 * d;
        drawing.path(
            Pen::Object,
            true,
            &[
                pt(side * clear, 0.0),
                pt(side * wide, 0.0),
                pt(side * wide, plate),
                pt(side * clear, plate),
            ],
        );
    }
    drawing.path(
        Pen::Object,
        false,
        &[pt(-r, plate), pt(-r, -le), pt(r, -le), pt(r, plate)],
    );
    let (head_r, head_h) = (0.75 * d, 0.65 * d);
    drawing.path(
        Pen::Object,
        true,
        &[
            pt(-head_r, plate),
            pt(head_r, plate),
            pt(head_r, plate + head_h),
            pt(-head_r, plate + head_h),
        ],
    );
    drawing.path(
        Pen::Centre,
        false,
        &[pt(0.0, plate + head_h + 0.4 * d), pt(0.0, bottom - 0.3 * d)],
    );
    drawing.path(
        Pen::Mark,
        false,
        &[pt(-wide, -needed.mm()), pt(-r, -needed.mm())],
    );
    drawing.dimension(
        pt(wide, 0.0),
        pt(wide, -le),
        2.0,
        format!("engagement {}", inp.show(depth)),
    );
    drawing.dimension(
        pt(-wide, -needed.mm()),
        pt(-wide, 0.0),
        2.0,
        format!("needed {}", inp.show(needed)),
    );
    drawing.text(pt(0.0, plate + head_h + 0.7 * d), case.thread.short());
    drawing
}
