//! How does a shape become markup?

use super::placed::Placed;
use super::reach::{on_circle, turn};
use super::text::{Num, escape};
use super::{LETTER, TIP};
use benchslate_core::sheet::{Pen, Point, Shape};
use std::fmt::Write;

/// What is drawn with: the text so far, and where the picture lies.
pub struct Pens {
    /// The markup so far.
    pub out: String,
    /// Picture units for one of the part.
    pub scale: f64,
    /// Where the part's zero lies.
    pub shift: Point,
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
    /// Draws a shape.
    pub fn shape(&mut self, shape: &Shape) {
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
