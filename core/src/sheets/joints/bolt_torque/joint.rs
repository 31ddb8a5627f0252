//! What does the joint look like: head, two plates, nut?

use super::{show_load, show_torque};
use crate::quantity::{Force, Length, Torque};
use crate::sheet::{Drawing, Inputs, Pen, pt};
use crate::thread::ThreadCall;

/// Half a section: two plates, the screw through both, a nut below; grip and size as dimensions.
pub(super) fn drawing(inp: &Inputs, thread: ThreadCall, clamp: Force, torque: Torque) -> Drawing {
    let d = thread.major.mm();
    let known = inp.opt::<Length>("grip");
    let g = known.map_or(3.0 * d, Length::mm);
    let mut drawing = Drawing::new(
        format!(
            "{} through a joint, clamped with {}, tightened with {}",
            thread.short(),
            show_load(inp, clamp),
            show_torque(inp, torque)
        ),
        known.is_some(),
    );
    let (r, head_r, head_h, wide, nut_h) = (d / 2.0, 0.75 * d, 0.65 * d, 2.0 * d, 0.85 * d);
    let hole = 0.55 * d;
    for side in [-1.0, 1.0] {
        for (top, bottom) in [(0.0, -g / 2.0), (-g / 2.0, -g)] {
            drawing.hatch(&[
                pt(side * hole, top),
                pt(side * wide, top),
                pt(side * wide, bottom),
                pt(side * hole, bottom),
            ]);
            drawing.path(
                Pen::Object,
                true,
                &[
                    pt(side * hole, top),
                    pt(side * wide, top),
                    pt(side * wide, bottom),
                    pt(side * hole, bottom),
                ],
            );
        }
    }
    drawing.path(
        Pen::Object,
        true,
        &[
            pt(-head_r, 0.0),
            pt(head_r, 0.0),
            pt(head_r, head_h),
            pt(-head_r, head_h),
        ],
    );
    drawing.path(
        Pen::Object,
        true,
        &[
            pt(-head_r, -g),
            pt(head_r, -g),
            pt(head_r, -g - nut_h),
            pt(-head_r, -g - nut_h),
        ],
    );
    let end = -g - nut_h - 0.3 * d;
    drawing.path(
        Pen::Object,
        false,
        &[pt(-r, 0.0), pt(-r, end), pt(r, end), pt(r, 0.0)],
    );
    drawing.path(
        Pen::Centre,
        false,
        &[pt(0.0, head_h + 0.4 * d), pt(0.0, end - 0.4 * d)],
    );
    if let Some(grip) = known {
        drawing.dimension(
            pt(wide, 0.0),
            pt(wide, -g),
            2.0,
            format!("grip {}", inp.show(grip)),
        );
    }
    drawing.dimension(pt(-r, end), pt(r, end), -2.0, thread.short());
    drawing.text(pt(0.0, head_h + 0.7 * d), show_torque(inp, torque));
    drawing
}
