//! What does the cut look like? The cutter over the work, the hole, or the bar in the lathe.

use super::Cut;
use super::milling::{Lies, Milled};
use super::per_turn::is_turned;
use crate::cutting::*;
use crate::quantity::{Angle, Length};
use crate::sheet::*;

pub(super) fn milled(inp: &Inputs, a: &mut Answer, cut: &Cut, m: &Milled) {
    let d = cut.diameter;
    a.draw(|| {
        if m.lies == Lies::Arbor {
            picture::arbor_cut(
                d,
                m.radial,
                m.approach,
                [inp.show(d), inp.show(m.radial), inp.show(m.approach)],
            )
        } else {
            picture::face_cut(
                d,
                m.radial,
                m.lies == Lies::Centered,
                [inp.show(d), inp.show(m.radial)],
            )
        }
    });
}

pub(super) fn hole_or_bar(inp: &Inputs, a: &mut Answer, cut: &Cut) {
    let d = cut.diameter;
    a.draw(|| {
        if is_turned(cut) {
            return picture::turned_bar(d, inp.show(d));
        }
        let hole: Option<Length> = inp.opt("hole");
        let point = inp
            .opt::<Angle>("point")
            .and_then(|angle| drill_point(d, angle).ok())
            .unwrap_or(Length::ZERO);
        picture::drilled_hole(
            d,
            hole,
            point,
            [
                inp.show(d),
                hole.map_or_else(String::new, |hole| inp.show(hole)),
            ],
        )
    });
}
