//! A thread in section: a few turns with its diameters and its pitch.

use crate::quantity::{Length, Pitch};
use crate::sheet::*;
use crate::thread::{ThreadCall, minor_diameter, pitch_diameter};

/// A few turns of the screw in section. A fine thread is drawn coarser than it is, so that it can be seen.
/// Major diameter and pitch are drawn in any case, `others` to the right.
pub(in crate::sheets) fn drawing(
    title: String,
    thread: ThreadCall,
    others: &[Length],
    show: &dyn Fn(Length) -> String,
) -> Drawing {
    let (d, real) = (thread.major.mm(), thread.pitch.mm());
    let coarse = d * 0.16;
    let to_scale = real >= coarse;
    let p = if to_scale { real } else { coarse };
    let drawn = |size: Length| d - (d - size.mm()) * p / real;
    let (d2, d1) = (drawn(pitch_diameter(thread)), drawn(minor_diameter(thread)));
    let count = 6_u32;
    let length = p * f64::from(count);
    let mut upper = Vec::new();
    for turn in 0..count {
        let x = p * f64::from(turn);
        // Basic form (ISO 68-1): crest P/8, root P/4, flanks 5/16 P along the axis.
        for (along, across) in [
            (0.0, d),
            (p / 8.0, d),
            (p * 7.0 / 16.0, d1),
            (p * 11.0 / 16.0, d1),
        ] {
            upper.push(pt(x + along, across / 2.0));
        }
    }
    upper.push(pt(length, d / 2.0));
    let lower: Vec<Point> = upper
        .iter()
        .rev()
        .map(|point| pt(point.x, -point.y))
        .collect();
    let outline: Vec<Point> = upper.into_iter().chain(lower).collect();
    let mut drawing = Drawing::new(title, to_scale);
    drawing.path(Pen::Object, true, &outline);
    drawing.path(Pen::Centre, false, &[pt(-p, 0.0), pt(length + p, 0.0)]);
    for side in [0.5, -0.5] {
        drawing.path(
            Pen::Thin,
            false,
            &[pt(0.0, d2 * side), pt(length, d2 * side)],
        );
    }
    drawing.dimension(
        pt(p / 16.0, d / 2.0),
        pt(p * 17.0 / 16.0, d / 2.0),
        1.5,
        show(thread.pitch.length()),
    );
    // Figures stand beside their lines: the major diameter to the left, the other two to the right.
    drawing.dimension(pt(0.0, -d / 2.0), pt(0.0, d / 2.0), 2.0, show(thread.major));
    for (size, steps) in others.iter().zip([1.5, 6.5]) {
        let half = drawn(*size) / 2.0;
        drawing.dimension(pt(length, half), pt(length, -half), steps, show(*size));
    }
    drawing
}

/// Words for a pitch: "20 threads per inch" or "pitch 1.5 mm".
pub(in crate::sheets) fn pitch_words(pitch: Pitch, metric: bool) -> String {
    if metric {
        format!("{} mm", crate::notation::plain(pitch.mm(), 3))
    } else {
        format!("{} tpi", crate::notation::plain(pitch.tpi(), 2))
    }
}
