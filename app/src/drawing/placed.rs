//! Where do the lines and letters of a dimension go?

use super::{ADVANCE, LETTER};
use benchslate_core::sheet::Point;

/// A dimension laid out in picture units, y up.
pub struct Placed {
    /// One end, on the part.
    pub from: Point,
    /// The other.
    pub to: Point,
    /// One end of the dimension line.
    pub a: Point,
    /// The other.
    pub b: Point,
    /// Outwards, from the part to the dimension line.
    pub normal: Point,
    /// Along the line, of length 1.
    pub along: Point,
    /// Length of the line.
    pub length: f64,
    /// Middle of its letters.
    pub letters: Point,
    /// How the letters hang on that point.
    pub anchor: &'static str,
}

impl Placed {
    /// Lays it out at a scale; none where its ends are the same.
    pub fn of(a: Point, b: Point, steps: f64, text: &str, scale: f64) -> Option<Self> {
        let (from, to) = (
            Point {
                x: a.x * scale,
                y: a.y * scale,
            },
            Point {
                x: b.x * scale,
                y: b.y * scale,
            },
        );
        let (dx, dy) = (to.x - from.x, to.y - from.y);
        let length = libm::sqrt(dx * dx + dy * dy);
        if !length.is_finite() || length < 1e-9 {
            return None;
        }
        let along = Point {
            x: dx / length,
            y: dy / length,
        };
        let side = if steps < 0.0 { -1.0 } else { 1.0 };
        let normal = Point {
            x: -along.y * side,
            y: along.x * side,
        };
        let off = steps.abs() * LETTER;
        let moved = |p: Point| Point {
            x: p.x + normal.x * off,
            y: p.y + normal.y * off,
        };
        let (a, b) = (moved(from), moved(to));
        let middle = Point {
            x: f64::midpoint(a.x, b.x),
            y: f64::midpoint(a.y, b.y),
        };
        let upright = along.y.abs() > 0.5;
        let anchor = match (upright, normal.x > 0.0) {
            (false, _) => "middle",
            (true, true) => "start",
            (true, false) => "end",
        };
        // letters wider than their dimension stand clear of the extension lines
        let wide = ADVANCE * text.chars().count() as f64 > length;
        let gap = match (upright, wide) {
            (true, _) => 6.0,
            (false, true) => LETTER * 1.1,
            (false, false) => LETTER * 0.75,
        };
        let letters = Point {
            x: middle.x + normal.x * gap,
            y: middle.y + normal.y * gap,
        };
        Some(Self {
            from,
            to,
            a,
            b,
            normal,
            along,
            length,
            letters,
            anchor,
        })
    }
}
