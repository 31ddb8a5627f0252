//! How does the press fit look?

use super::Case;
use crate::sheet::{Drawing, Inputs, Pen, pt};

/// Section through hub and shaft.
pub(super) fn section(inp: &Inputs, c: &Case) -> Drawing {
    let (d, outside, bore, length) = (
        c.diameter.mm() / 2.0,
        c.outside.mm() / 2.0,
        c.bore.mm() / 2.0,
        c.length.mm(),
    );
    let over = length * 0.25;
    let mut drawing = Drawing::new("Section through hub and shaft", true);
    for side in [1.0, -1.0] {
        let hub = [
            pt(0.0, side * d),
            pt(length, side * d),
            pt(length, side * outside),
            pt(0.0, side * outside),
        ];
        drawing.hatch(&hub);
        drawing.path(Pen::Object, true, &hub);
        if bore > 0.0 {
            drawing.path(
                Pen::Object,
                false,
                &[pt(-over, side * bore), pt(length + over, side * bore)],
            );
        }
    }
    drawing.path(
        Pen::Object,
        true,
        &[
            pt(-over, -d),
            pt(length + over, -d),
            pt(length + over, d),
            pt(-over, d),
        ],
    );
    drawing.path(
        Pen::Centre,
        false,
        &[pt(-over * 1.6, 0.0), pt(length + over * 1.6, 0.0)],
    );
    drawing.dimension(
        pt(0.0, outside),
        pt(length, outside),
        2.0,
        inp.show(c.length),
    );
    drawing.dimension(
        pt(length + over, d),
        pt(length + over, -d),
        2.0,
        inp.show(c.diameter),
    );
    drawing.dimension(
        pt(0.0, -outside),
        pt(0.0, outside),
        3.0,
        inp.show(c.outside),
    );
    drawing
}
