//! How is a drawing that came as data put on screen? As one SVG text: the sheet chose the shapes, here scale, pens and
//! letters are chosen. Classes only, no inline style, so that the content policy holds.

mod pens;
mod placed;
mod reach;
mod text;

pub use text::{Num, escape};

use benchslate_core::sheet::{Drawing, Point};
use pens::Pens;
use reach::{Extent, each_point, reach};
use std::fmt::Write;

/// Width of the picture in its own units; a phone shows them nearly one to one.
const WIDTH: f64 = 360.0;
/// The most height.
const HEIGHT: f64 = 260.0;
/// Height of a letter.
const LETTER: f64 = 13.0;
/// Width of a letter of the tabular face.
const ADVANCE: f64 = LETTER * 0.61;
const TIP: f64 = 9.0;
const PAD: f64 = 8.0;

/// The whole `<svg>` element.
pub fn svg(drawing: &Drawing) -> String {
    let mut geometry = Extent::NONE;
    for shape in &drawing.shapes {
        each_point(shape, &mut |p| geometry.take(p));
    }
    if !geometry.width().is_finite() || geometry.width() + geometry.height() <= 0.0 {
        return String::new();
    }
    let mut scale = ((WIDTH - 2.0 * PAD) / geometry.width().max(1e-9))
        .min((HEIGHT - 2.0 * PAD) / geometry.height().max(1e-9));
    let mut whole = Extent::NONE;
    // letters keep their size while the part scales, so the fit is found in a few rounds
    for _ in 0..4 {
        whole = Extent::NONE;
        for shape in &drawing.shapes {
            reach(shape, scale, &mut whole);
        }
        let rest_x = whole.width() - geometry.width() * scale;
        let rest_y = whole.height() - geometry.height() * scale;
        let by_x = (WIDTH - 2.0 * PAD - rest_x).max(60.0) / geometry.width().max(1e-9);
        let by_y = (HEIGHT - 2.0 * PAD - rest_y).max(40.0) / geometry.height().max(1e-9);
        scale = by_x.min(by_y);
    }
    for shape in &drawing.shapes {
        reach(shape, scale, &mut whole);
    }
    let width = WIDTH.max(whole.width() + 2.0 * PAD);
    let height = whole.height() + 2.0 * PAD;
    let shift = Point {
        x: (width - whole.width()) / 2.0 - whole.low.x,
        y: PAD + whole.high.y,
    };
    let mut pen = Pens {
        out: String::with_capacity(1500),
        scale,
        shift,
    };
    let _ = write!(
        pen.out,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"{}\" viewBox=\"0 0 {} {}\">",
        escape(&drawing.title),
        Num(width),
        Num(height)
    );
    for shape in &drawing.shapes {
        pen.shape(shape);
    }
    pen.out.push_str("</svg>");
    pen.out
}

#[cfg(test)]
mod tests {
    use super::*;
    use benchslate_core::sheet::{Pen, pt};

    #[test]
    fn a_drawing_stays_inside_its_picture_and_keeps_its_words() {
        let mut drawing = Drawing::new("A pin <1:48>", true);
        drawing.path(
            Pen::Object,
            true,
            &[pt(0.0, -1.0), pt(0.0, 1.0), pt(6.0, 0.8), pt(6.0, -0.8)],
        );
        drawing.dimension(pt(0.0, -1.0), pt(6.0, -1.0), -2.0, "1.500 in");
        drawing.dimension(pt(0.0, -1.0), pt(0.0, 1.0), 2.0, "0.2190");
        let text = svg(&drawing);
        assert!(text.contains("A pin &lt;1:48&gt;") && text.contains("1.500 in"));
        assert!(!text.contains("style=") && !text.contains("NaN") && !text.contains("=\"-"));
    }

    #[test]
    fn an_empty_drawing_gives_no_picture() {
        assert_eq!(svg(&Drawing::new("nothing", false)), "");
    }
}
