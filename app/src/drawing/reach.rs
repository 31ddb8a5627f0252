//! How far does a shape reach, its letters included?

use super::placed::Placed;
use super::{ADVANCE, LETTER};
use benchslate_core::sheet::{Point, Shape};

/// The box around what was drawn.
#[derive(Clone, Copy)]
pub struct Extent {
    /// Its lower left corner.
    pub low: Point,
    /// Its upper right corner.
    pub high: Point,
}

impl Extent {
    /// Nothing yet.
    pub const NONE: Self = Self {
        low: Point {
            x: f64::INFINITY,
            y: f64::INFINITY,
        },
        high: Point {
            x: f64::NEG_INFINITY,
            y: f64::NEG_INFINITY,
        },
    };

    /// Widened to hold a point.
    pub fn take(&mut self, p: Point) {
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

    /// Across.
    pub fn width(&self) -> f64 {
        (self.high.x - self.low.x).max(0.0)
    }

    /// Up.
    pub fn height(&self) -> f64 {
        (self.high.y - self.low.y).max(0.0)
    }
}

/// Every point that a shape spans, in its own units.
pub fn each_point(shape: &Shape, take: &mut dyn FnMut(Point)) {
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

/// From one angle on to another, degrees; a whole turn where they are the same.
pub fn turn(from: f64, to: f64) -> f64 {
    let sweep = (to - from).rem_euclid(360.0);
    if sweep == 0.0 { 360.0 } else { sweep }
}

/// A point of a circle.
pub fn on_circle(centre: Point, radius: f64, degrees: f64) -> Point {
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
pub fn reach(shape: &Shape, scale: f64, whole: &mut Extent) {
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
