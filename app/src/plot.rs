//! A result against a field as one SVG text: the curve, the entry's own place, and the ends of both axes.

use crate::drawing::{Num, escape};
use std::fmt::Write;

const LEFT: f64 = 14.0;
const TOP: f64 = 24.0;
const WIDE: f64 = 332.0;
const HIGH: f64 = 160.0;

/// What the axes say.
pub struct Axes {
    /// The plot in words.
    pub title: String,
    /// Least and most of the field, printed.
    pub x: (String, String),
    /// Least and most of the result, printed.
    pub y: (String, String),
    /// The field's name.
    pub x_name: String,
    /// The result's name.
    pub y_name: String,
    /// Levels of a result that moves in steps: the middle of each, its height, and what it is.
    pub levels: Vec<(f64, f64, String)>,
}

/// Levels that are written beside their lines; more would lie on one another.
const MOST_LEVELS: usize = 7;

/// The `<svg>` element; empty where there is no point to plot.
pub fn svg(
    points: &[(f64, Option<f64>)],
    own: Option<(f64, f64)>,
    range: ((f64, f64), (f64, f64)),
    axes: &Axes,
) -> String {
    let ((x0, x1), (y0, y1)) = range;
    let span = |low: f64, high: f64| if high > low { high - low } else { 1.0 };
    let place = |x: f64, y: f64| {
        (
            Num(LEFT + WIDE * (x - x0) / span(x0, x1)),
            Num(TOP + HIGH - HIGH * (y - y0) / span(y0, y1)),
        )
    };
    let mut curve = String::new();
    let mut up = true;
    for &(x, y) in points {
        match y {
            Some(y) => {
                let (px, py) = place(x, y);
                let _ = write!(curve, "{}{px} {py}", if up { 'M' } else { 'L' });
                up = false;
            }
            None => up = true,
        }
    }
    if curve.is_empty() {
        return String::new();
    }
    let bottom = TOP + HIGH;
    let mut out = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"{}\" viewBox=\"0 0 360 226\"><path class=\"thin\" d=\"M{l} {t}V{b}H{r}\"/><path class=\"curve\" d=\"{curve}\"/>",
        escape(&axes.title),
        l = Num(LEFT),
        t = Num(TOP),
        b = Num(bottom),
        r = Num(LEFT + WIDE),
    );
    if let Some((x, y)) = own {
        let (px, py) = place(x, y);
        let _ = write!(
            out,
            "<path class=\"centre\" d=\"M{px} {}V{py}H{}\"/><circle class=\"mark\" cx=\"{px}\" cy=\"{py}\" r=\"5\"/>", // words: a class of the style sheet
            Num(bottom),
            Num(LEFT)
        );
    }
    let mut words = |x: f64, y: f64, anchor: &str, text: &str| {
        let _ = write!(
            out,
            "<text x=\"{}\" y=\"{}\" font-size=\"11\" text-anchor=\"{anchor}\">{}</text>",
            Num(x),
            Num(y),
            escape(text)
        );
    };
    words(
        LEFT,
        TOP - 10.0,
        "start",
        &format!("{} {}", axes.y.1, axes.y_name),
    );
    words(LEFT + 6.0, bottom - 6.0, "start", &axes.y.0);
    words(LEFT, bottom + 16.0, "start", &axes.x.0);
    words(LEFT + WIDE, bottom + 16.0, "end", &axes.x.1);
    words(LEFT + WIDE / 2.0, bottom + 34.0, "middle", &axes.x_name);
    // the lowest and the highest stand at the axis already
    let inner = |y: f64| y > y0 && y < y1;
    if axes.levels.len() <= MOST_LEVELS {
        for (x, y, text) in axes.levels.iter().filter(|level| inner(level.1)) {
            let high = TOP + HIGH - HIGH * (y - y0) / span(y0, y1);
            words(
                LEFT + WIDE * (x - x0) / span(x0, x1),
                high - 4.0,
                "middle",
                text,
            );
        }
    }
    out.push_str("</svg>");
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn gaps_break_the_curve_and_the_entry_is_marked() {
        let axes = Axes {
            title: "t".into(),
            x: ("1".into(), "3".into()),
            y: ("0".into(), "9".into()),
            x_name: "length".into(),
            y_name: "size".into(),
            levels: vec![(2.0, 4.0, "four".into()), (1.0, 0.0, "none".into())],
        };
        let text = svg(
            &[(1.0, Some(0.0)), (2.0, None), (3.0, Some(9.0))],
            Some((1.0, 0.0)),
            ((1.0, 3.0), (0.0, 9.0)),
            &axes,
        );
        assert_eq!(text.matches('M').count(), 4);
        assert!(text.contains("circle") && !text.contains("NaN"));
        // a level between the ends is written at its line, those at the ends stand at the axis
        assert!(text.contains(">four<") && !text.contains(">none<"));
        assert!(svg(&[(1.0, None)], None, ((1.0, 1.0), (0.0, 0.0)), &axes).is_empty());
    }
}
