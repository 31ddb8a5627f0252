//! What does the cut look like? Cutter, work, depth and width as drawings, true to scale.

use crate::drawing::{Drawing, Pen, pt};
use crate::quantity::Length;

/// A slab, side, form cutter or saw from its end: the work below, the depth and the approach.
pub(crate) fn arbor_cut(
    diameter: Length,
    depth: Length,
    approach: Length,
    texts: [String; 3],
) -> Drawing {
    let (d, a, x) = (diameter.mm(), depth.mm(), approach.mm());
    let [d_text, a_text, x_text] = texts;
    let r = d / 2.0;
    let mut draw = Drawing::new(
        format!("Cutter {d_text} seen from its end, about to cut {a_text} deep; approach {x_text}"),
        true,
    );
    let left = -x - 1.3 * r;
    let floor = -1.2 * r - a;
    draw.circle(Pen::Object, pt(0.0, r), r);
    draw.circle(Pen::Object, pt(0.0, r), r * 0.3);
    draw.path(Pen::Centre, false, &[pt(-1.15 * r, r), pt(1.15 * r, r)]);
    draw.path(Pen::Centre, false, &[pt(0.0, -0.15 * r), pt(0.0, 2.15 * r)]);
    // the work's corner stands where the cutter first touches
    let work = [
        pt(-x, a),
        pt(left, a),
        pt(left, floor * 0.4),
        pt(1.3 * r, floor * 0.4),
        pt(1.3 * r, 0.0),
        pt(-x, 0.0),
    ];
    draw.path(Pen::Object, true, &work);
    draw.hatch(&work);
    draw.dimension(pt(left, 0.0), pt(left, a), 2.0, a_text);
    draw.dimension(pt(-x, 2.0 * r), pt(0.0, 2.0 * r), 2.0, x_text);
    draw.dimension(pt(1.2 * r, 0.0), pt(1.2 * r, 2.0 * r), -2.0, d_text);
    draw
}

/// A face or end cutter from above: the width that it covers, centred or to one side.
pub(crate) fn face_cut(
    diameter: Length,
    width: Length,
    centred: bool,
    texts: [String; 2],
) -> Drawing {
    let (d, w) = (diameter.mm(), width.mm());
    let [d_text, w_text] = texts;
    let r = d / 2.0;
    let place = if centred {
        "centered on it"
    } else {
        "to one side"
    };
    let mut draw = Drawing::new(
        format!("Cutter {d_text} from above, covering {w_text} of work, {place}"),
        true,
    );
    let (low, high) = if centred {
        (-w / 2.0, w / 2.0)
    } else {
        (-r, w - r)
    };
    draw.circle(Pen::Object, pt(0.0, 0.0), r);
    draw.path(Pen::Centre, false, &[pt(-1.15 * r, 0.0), pt(1.15 * r, 0.0)]);
    draw.path(Pen::Centre, false, &[pt(0.0, -1.15 * r), pt(0.0, 1.15 * r)]);
    let work = [
        pt(0.0, low),
        pt(2.4 * r, low),
        pt(2.4 * r, high),
        pt(0.0, high),
    ];
    draw.path(Pen::Object, true, &work);
    draw.hatch(&work);
    draw.dimension(pt(2.4 * r, low), pt(2.4 * r, high), -2.0, w_text);
    draw.dimension(pt(-r, -r), pt(r, -r), -2.0, d_text);
    draw
}

/// A drill over its hole: diameter, depth and point.
pub(crate) fn drilled_hole(
    diameter: Length,
    depth: Option<Length>,
    point: Length,
    texts: [String; 2],
) -> Drawing {
    let (d, p) = (diameter.mm(), point.mm());
    let h = depth.map_or(2.0 * d, Length::mm);
    let [d_text, h_text] = texts;
    let r = d / 2.0;
    let mut draw = Drawing::new(
        format!(
            "Drill {d_text} and the hole it makes{}",
            if depth.is_some() {
                format!(", {h_text} deep")
            } else {
                String::new()
            }
        ),
        true,
    );
    draw.path(
        Pen::Object,
        false,
        &[
            pt(-r, h * 0.8),
            pt(-r, -h),
            pt(0.0, -h - p),
            pt(r, -h),
            pt(r, h * 0.8),
        ],
    );
    draw.path(Pen::Centre, false, &[pt(0.0, h), pt(0.0, -h - 1.6 * p)]);
    for side in [-1.0, 1.0] {
        let work = [
            pt(side * r, 0.0),
            pt(side * 2.6 * r, 0.0),
            pt(side * 2.6 * r, -h),
            pt(side * r, -h),
        ];
        draw.path(Pen::Object, true, &work);
        draw.hatch(&work);
    }
    draw.dimension(pt(-r, h * 0.8), pt(r, h * 0.8), 2.0, d_text);
    if depth.is_some() {
        draw.dimension(pt(2.6 * r, -h), pt(2.6 * r, 0.0), -2.0, h_text);
    }
    draw
}

/// A bar in the lathe: its diameter.
pub(crate) fn turned_bar(diameter: Length, text: String) -> Drawing {
    let r = diameter.mm() / 2.0;
    let mut draw = Drawing::new(format!("Bar of {text} turning, tool from the front"), true);
    let bar = [
        pt(-3.0 * r, -r),
        pt(3.0 * r, -r),
        pt(3.0 * r, r),
        pt(-3.0 * r, r),
    ];
    draw.path(Pen::Object, true, &bar);
    draw.path(Pen::Centre, false, &[pt(-3.4 * r, 0.0), pt(3.4 * r, 0.0)]);
    let tool = [pt(0.0, -r), pt(0.5 * r, -1.8 * r), pt(-0.5 * r, -1.8 * r)];
    draw.path(Pen::Mark, true, &tool);
    draw.dimension(pt(3.0 * r, -r), pt(3.0 * r, r), -2.0, text);
    draw
}
