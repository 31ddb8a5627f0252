//! How does the thread lie, and which way goes the compound?

use crate::cutting::ThreadDepth;
use crate::quantity::{Angle, Pitch};
use crate::sheet::*;

/// Three grooves of a 60-degree thread, with pitch, depth and the compound's direction.
pub(super) fn groove(
    pitch: Pitch,
    depth: ThreadDepth,
    angle: Angle,
    texts: [String; 3],
) -> Drawing {
    let [p_text, h_text, angle_text] = texts;
    let (p, h) = (pitch.mm(), pitch.mm() * depth.pitches());
    let half = h * 0.577_350_269_189_625_8;
    let crest = p / 2.0 - half;
    let mut draw = Drawing::new(
        format!("Thread of pitch {p_text}, {h_text} deep, compound at {angle_text}"),
        true,
    );
    let mut profile = Vec::new();
    for turn in 0..3 {
        let x = f64::from(turn) * p;
        profile.push(pt(x - crest, 0.0));
        profile.push(pt(x + crest, 0.0));
        profile.push(pt(x + p / 2.0, -h));
    }
    profile.push(pt(3.0 * p - crest, 0.0));
    draw.path(Pen::Object, false, &profile);
    profile.push(pt(3.0 * p - crest, -2.0 * h));
    profile.push(pt(-crest, -2.0 * h));
    draw.hatch(&profile);
    draw.dimension(pt(p / 2.0, -h), pt(1.5 * p, -h), -2.0, p_text);
    draw.dimension(
        pt(3.0 * p - crest, -h),
        pt(3.0 * p - crest, 0.0),
        -2.0,
        h_text,
    );
    let (sin, cos) = (libm::sin(angle.radians()), libm::cos(angle.radians()));
    draw.path(
        Pen::Mark,
        false,
        &[
            pt(p / 2.0, -h),
            pt(p / 2.0 + 2.2 * h * sin, -h + 2.2 * h * cos),
        ],
    );
    draw.text(pt(p / 2.0 + 2.6 * h * sin, -h + 2.7 * h * cos), angle_text);
    draw
}
