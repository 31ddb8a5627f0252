//! Where does a size fall on a steel rule? One inch by 64ths, or twenty millimetres by halves, with the size scribed.

use crate::quantity::{Length, MM_PER_INCH, System, whole};
use crate::sheet::{Drawing, Inputs, Pen, pt};

/// Height of the rule's edge, in millimetres.
const HIGH: f64 = 9.0;

/// A piece of a rule.
struct Piece {
    /// Length in millimetres.
    span: f64,
    /// Divisions.
    parts: u32,
    /// Length units (inches, millimetres) in it.
    units: f64,
    /// Steps of divisions and how long their lines are.
    lines: &'static [(u32, f64)],
}

const INCH: Piece = Piece {
    span: MM_PER_INCH,
    parts: 64,
    units: 1.0,
    lines: &[
        (64, 6.0),
        (32, 5.0),
        (16, 4.2),
        (8, 3.4),
        (4, 2.6),
        (2, 1.8),
        (1, 1.1),
    ],
};
const METRIC: Piece = Piece {
    span: 20.0,
    parts: 40,
    units: 20.0,
    lines: &[(20, 6.0), (10, 4.6), (2, 3.2), (1, 1.8)],
};

/// The piece of rule that holds the length.
pub fn drawing(inp: &Inputs, length: Length) -> Drawing {
    let (piece, name) = match inp.system() {
        System::Inch => (&INCH, "64ths of an inch"),
        System::Metric => (&METRIC, "half millimeters"),
    };
    let first = libm::floor(length.mm() / piece.span);
    let start = first * piece.span;
    let at = length.mm() - start;
    let size = inp.show(length);
    let mut d = Drawing::new(
        format!("A piece of rule in {name} with {size} marked on it"),
        true,
    );
    d.path(
        Pen::Object,
        true,
        &[
            pt(0.0, 0.0),
            pt(piece.span, 0.0),
            pt(piece.span, HIGH),
            pt(0.0, HIGH),
        ],
    );
    for n in 0..=piece.parts {
        let x = piece.span * f64::from(n) / f64::from(piece.parts);
        let long = piece
            .lines
            .iter()
            .find(|(step, _)| n.is_multiple_of(*step))
            .map_or(0.0, |(_, long)| *long);
        d.path(Pen::Thin, false, &[pt(x, HIGH), pt(x, HIGH - long)]);
    }
    for (x, label) in [(0.0, first), (piece.span, first + 1.0)] {
        let mut text = String::new();
        whole(&mut text, (label * piece.units) as u64);
        d.text(pt(x, -2.0), text);
    }
    d.path(Pen::Mark, false, &[pt(at, 0.5), pt(at, HIGH + 3.0)]);
    if first == 0.0 && at > 0.0 {
        d.dimension(pt(0.0, HIGH), pt(at, HIGH), 2.0, size);
    } else {
        d.text(pt(at, HIGH + 4.5), size);
    }
    d
}
