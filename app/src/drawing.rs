//! How is a drawing that came as data put on screen? As one SVG text: the sheet chose the shapes, here scale, pens and
//! letters are chosen. Classes only, no inline style, so that the content policy holds.

use benchslate_core::sheet::{Drawing, Pen, Point, Shape};
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

#[derive(Clone, Copy)]
struct Extent {
    low: Point,
    high: Point,
}

impl Extent {
    const NONE: Self = Self {
        low: Point {
            x: f64::INFINITY,
            y: f64::INFINITY,
        },
        high: Point {
            x: f64::NEG_INFINITY,
            y: f64::NEG_INFINITY,
        },
    };
    fn take(&mut self, p: Point) {
        if p.x.is_finite() && p.y.is_finite() {
            self.low = Point {
                x: self.low.x.min(p.x),
                y: self.low.y.min(p.y),
            };
            self.high = Point {
                x: self.high.x.max(p.x),
                y: self.high.y.max(p.y),
            };
        }
    }
    fn width(&self) -> f64 {
        (self.high.x - self.low.x).max(0.0)
    }
    fn height(&self) -> f64 {
        (self.high.y - self.low.y).max(0.0)
    }
}

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

fn each_point(shape: &Shape, take: &mut dyn FnMut(Point)) {
    match shape {
        Shape::Path { points, .. } | Shape::Hatch { points } => {
            points.iter().copied().for_each(take);
        }
        Shape::Circle { centre, radius, .. } => {
            take(Point {
                x: centre.x - radius,
                y: centre.y - radius,
            });
            take(Point {
                x: centre.x + radius,
                y: centre.y + radius,
            });
        }
        Shape::Arc {
            centre,
            radius,
            from,
            to,
            ..
        } => {
            let sweep = turn(*from, *to);
            for step in 0..=12 {
                take(on_circle(
                    *centre,
                    *radius,
                    from + sweep * f64::from(step) / 12.0,
                ));
            }
        }
        Shape::Dimension { a, b, .. } => {
            take(*a);
            take(*b);
        }
        Shape::Text { at, .. } => take(*at),
    }
}

fn turn(from: f64, to: f64) -> f64 {
    let sweep = (to - from).rem_euclid(360.0);
    if sweep == 0.0 { 360.0 } else { sweep }
}

fn on_circle(centre: Point, radius: f64, degrees: f64) -> Point {
    let (sin, cos) = (
        libm::sin(degrees.to_radians()),
        libm::cos(degrees.to_radians()),
    );
    Point {
        x: centre.x + radius * cos,
        y: centre.y + radius * sin,
    }
}

/// How far a shape reaches at a scale, in picture units with y up.
fn reach(shape: &Shape, scale: f64, whole: &mut Extent) {
    each_point(shape, &mut |p| {
        whole.take(Point {
            x: p.x * scale,
            y: p.y * scale,
        });
    });
    match shape {
        Shape::Text { at, text } => around(
            whole,
            Point {
                x: at.x * scale,
                y: at.y * scale,
            },
            text,
            "middle",
        ),
        Shape::Dimension { a, b, steps, text } => {
            if let Some(placed) = Placed::of(*a, *b, *steps, text, scale) {
                for p in [placed.a, placed.b] {
                    whole.take(Point {
                        x: p.x + placed.normal.x * 4.0,
                        y: p.y + placed.normal.y * 4.0,
                    });
                }
                around(whole, placed.letters, text, placed.anchor);
            }
        }
        _ => {}
    }
}

fn around(whole: &mut Extent, at: Point, text: &str, anchor: &str) {
    let width = ADVANCE * text.chars().count() as f64;
    let left = match anchor {
        "middle" => at.x - width / 2.0,
        "end" => at.x - width,
        _ => at.x,
    };
    whole.take(Point {
        x: left,
        y: at.y - LETTER * 0.6,
    });
    whole.take(Point {
        x: left + width,
        y: at.y + LETTER * 0.6,
    });
}

/// A dimension laid out in picture units, y up.
struct Placed {
    from: Point,
    to: Point,
    a: Point,
    b: Point,
    /// Outwards, from the part to the dimension line.
    normal: Point,
    along: Point,
    length: f64,
    letters: Point,
    anchor: &'static str,
}

impl Placed {
    fn of(a: Point, b: Point, steps: f64, text: &str, scale: f64) -> Option<Self> {
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

struct Pens {
    out: String,
    scale: f64,
    shift: Point,
}

impl Pens {
    /// From picture units (y up) to the picture's own (y down).
    fn down(&self, p: Point) -> (Num, Num) {
        (Num(p.x + self.shift.x), Num(self.shift.y - p.y))
    }
    fn place(&self, p: Point) -> (Num, Num) {
        self.down(Point {
            x: p.x * self.scale,
            y: p.y * self.scale,
        })
    }
    fn shape(&mut self, shape: &Shape) {
        match shape {
            Shape::Path {
                points,
                closed,
                pen,
            } => self.run(points, *closed, class(*pen)),
            Shape::Hatch { points } => self.run(points, true, "hatch"),
            Shape::Circle {
                centre,
                radius,
                pen,
            } => {
                let (x, y) = self.place(*centre);
                let _ = write!(
                    self.out,
                    "<circle class=\"{}\" cx=\"{x}\" cy=\"{y}\" r=\"{}\"/>",
                    class(*pen),
                    Num(radius * self.scale)
                );
            }
            Shape::Arc {
                centre,
                radius,
                from,
                to,
                pen,
            } => {
                let sweep = turn(*from, *to).min(359.9);
                let (x1, y1) = self.place(on_circle(*centre, *radius, *from));
                let (x2, y2) = self.place(on_circle(*centre, *radius, from + sweep));
                let r = Num(radius * self.scale);
                let large = u8::from(sweep > 180.0);
                let _ = write!(
                    self.out,
                    "<path class=\"{}\" d=\"M{x1} {y1}A{r} {r} 0 {large} 0 {x2} {y2}\"/>",
                    class(*pen)
                );
            }
            Shape::Dimension { a, b, steps, text } => {
                if let Some(placed) = Placed::of(*a, *b, *steps, text, self.scale) {
                    self.dimension(&placed, text);
                }
            }
            Shape::Text { at, text } => {
                let at = Point {
                    x: at.x * self.scale,
                    y: at.y * self.scale,
                };
                self.letters(at, "middle", text);
            }
        }
    }
    fn run(&mut self, points: &[Point], closed: bool, class: &str) {
        let _ = write!(self.out, "<path class=\"{class}\" d=\"");
        for (index, point) in points.iter().enumerate() {
            let (x, y) = self.place(*point);
            let _ = write!(self.out, "{}{x} {y}", if index == 0 { 'M' } else { 'L' });
        }
        self.out.push_str(if closed { "Z\"/>" } else { "\"/>" });
    }
    fn line(&mut self, from: Point, to: Point) {
        let ((x1, y1), (x2, y2)) = (self.down(from), self.down(to));
        let _ = write!(
            self.out,
            "<path class=\"thin\" d=\"M{x1} {y1}L{x2} {y2}\"/>"
        );
    }
    fn dimension(&mut self, d: &Placed, text: &str) {
        for (part, end) in [(d.from, d.a), (d.to, d.b)] {
            let (off_x, off_y) = (end.x - part.x, end.y - part.y);
            if off_x.abs() + off_y.abs() > 4.0 {
                let start = Point {
                    x: part.x + d.normal.x * 3.0,
                    y: part.y + d.normal.y * 3.0,
                };
                self.line(
                    start,
                    Point {
                        x: end.x + d.normal.x * 4.0,
                        y: end.y + d.normal.y * 4.0,
                    },
                );
            }
        }
        // short ones get their tips from outside
        let inward = if d.length > 2.6 * TIP { 1.0 } else { -1.0 };
        let tail = if inward > 0.0 { 0.0 } else { TIP * 1.8 };
        self.line(
            Point {
                x: d.a.x - d.along.x * tail,
                y: d.a.y - d.along.y * tail,
            },
            Point {
                x: d.b.x + d.along.x * tail,
                y: d.b.y + d.along.y * tail,
            },
        );
        self.tip(d.a, d.along, inward);
        self.tip(d.b, d.along, -inward);
        self.letters(d.letters, d.anchor, text);
    }
    fn tip(&mut self, at: Point, along: Point, way: f64) {
        let back = Point {
            x: at.x + along.x * TIP * way,
            y: at.y + along.y * TIP * way,
        };
        let side = |s: f64| Point {
            x: back.x - along.y * 3.0 * s,
            y: back.y + along.x * 3.0 * s,
        };
        let ((x0, y0), (x1, y1), (x2, y2)) =
            (self.down(at), self.down(side(1.0)), self.down(side(-1.0)));
        let _ = write!(
            self.out,
            "<path class=\"tip\" d=\"M{x0} {y0}L{x1} {y1}L{x2} {y2}Z\"/>"
        );
    }
    fn letters(&mut self, at: Point, anchor: &str, text: &str) {
        let (x, y) = self.down(Point {
            x: at.x,
            y: at.y - LETTER * 0.35,
        });
        let _ = write!(
            self.out,
            "<text x=\"{x}\" y=\"{y}\" font-size=\"{}\" text-anchor=\"{anchor}\">{}</text>",
            Num(LETTER),
            escape(text)
        );
    }
}

const fn class(pen: Pen) -> &'static str {
    match pen {
        Pen::Object => "obj",
        Pen::Hidden => "hidden",
        Pen::Centre => "centre",
        Pen::Thin => "thin",
        Pen::Mark => "curve",
    }
}

/// A coordinate with one decimal, without the printing tables of floating point.
#[derive(Clone, Copy)]
pub struct Num(pub f64);

impl std::fmt::Display for Num {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let tenths = (self.0 * 10.0).round() as i64;
        let sign = if tenths < 0 { "-" } else { "" };
        let size = tenths.unsigned_abs();
        if size.is_multiple_of(10) {
            write!(f, "{sign}{}", size / 10)
        } else {
            write!(f, "{sign}{}.{}", size / 10, size % 10)
        }
    }
}

/// Text made safe to stand in markup.
pub fn escape(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            _ => out.push(c),
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;
    use benchslate_core::sheet::pt;

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
