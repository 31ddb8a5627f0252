//! What is to be minded at a fit, and how do its zones lie?

use super::{Found, small, usual, working};
use crate::calls::fit::FitCall;
use crate::fit::inch::{self, InchClass};
use crate::fit::{KindOfFit, Limits};
use crate::quantity::Length;
use crate::sheet::*;

pub(super) fn tell(
    inp: &Inputs,
    a: &mut Answer,
    size: Length,
    call: FitCall,
    found: &Found,
    measured: (Option<Length>, Option<Length>),
) {
    a.work(|w| working::steps(inp, w, size, call, found));
    let clearance = match measured {
        (Some(hole), Some(shaft)) => Some(hole - shaft),
        _ => None,
    };
    usual::table(inp, a, size, call, clearance);
    a.draw(|| zones(inp, found));
    if let FitCall::Inch(class) = call {
        recalled(a, size, class);
        if let Some(Limits { upper, lower }) = inch::other_print(size, class) {
            a.note(
                "second-print",
                "Another source",
                format!(
                    "A textbook after the 2004 edition has the shaft at {} / {}. Taken: two editions of the handbook, whose clearances agree.",
                    small(inp, upper),
                    small(inp, lower)
                ),
            );
        }
    }
    if matches!(call, FitCall::Inch(_)) {
        a.note(
            "two-systems",
            "Two systems",
            "An inch class is not the inch form of an ISO fit: FN2 and H7/s6 differ.",
        );
    }
    if found
        .band
        .is_some_and(|band| band.kind() != KindOfFit::Clearance)
    {
        a.stop(
            "interference",
            "Before you press",
            "Support the hub square and full, stand clear of the line of force, wear eye protection. Hard pins and cast iron \
             break without warning; never strike them with a hammer.",
        );
    }
    a.note(
        "limits",
        "Limits",
        "They hold at 20 °C (68 °F): a part warm from the cut measures large.",
    );
}

/// Says where an inch row was not read.
pub(in crate::sheets) fn recalled(a: &mut Answer, size: Length, class: InchClass) {
    if inch::fit(size, class).is_ok_and(|fit| fit.certainty == inch::Certainty::FromMemory) {
        a.note(
            "measure-warm",
            "Before you work to it",
            "These limits are from memory of the standard, and agree with its grades. Check them.",
        );
    }
}

/// Tolerance zones about the line of the nominal size.
fn zones(inp: &Inputs, found: &Found) -> Drawing {
    let parts: Vec<&(String, Limits)> = found.hole.iter().chain(&found.shaft).collect();
    let far = parts
        .iter()
        .flat_map(|(_, l)| [l.upper.abs(), l.lower.abs()])
        .fold(Length::ZERO, Length::max);
    let scale = if far > Length::ZERO {
        40.0 / far.mm()
    } else {
        1.0
    };
    let mut drawing = Drawing::new(
        "Tolerance zones of hole and shaft about the line of the nominal size",
        false,
    );
    drawing.path(Pen::Centre, false, &[pt(0.0, 0.0), pt(124.0, 0.0)]);
    for (at, (name, limits)) in parts.into_iter().enumerate() {
        let left = 4.0 + 62.0 * (at as f64);
        let right = left + 24.0;
        let (up, low) = (limits.upper.mm() * scale, limits.lower.mm() * scale);
        let corners = [pt(left, low), pt(right, low), pt(right, up), pt(left, up)];
        drawing.hatch(&corners);
        drawing.path(Pen::Object, true, &corners);
        // figures beside the zone, apart from each other and off the line of the nominal size; its name on the far side
        let apart = (7.0 - (up - low)).max(0.0) / 2.0;
        for (deviation, y) in [(limits.upper, up + apart), (limits.lower, low - apart)] {
            if deviation.abs() > Length::from_um(0.001) {
                let off = if y.abs() < 4.0 {
                    f64::copysign(4.0, y)
                } else {
                    y
                };
                drawing.text(pt(right + 17.0, off), small(inp, deviation));
            }
        }
        let above = up + low >= 0.0;
        drawing.text(
            pt(
                f64::midpoint(left, right),
                if above { up + 5.0 } else { low - 5.0 },
            ),
            name.clone(),
        );
    }
    drawing
}
