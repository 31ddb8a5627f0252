//! The train as a drawing: pitch circles of one module, in a row.

use crate::machine::Train;
use crate::sheet::*;

/// Gears as pitch circles of one module, in a row.
pub(super) fn draw(train: Train) -> Drawing {
    let mut d = Drawing::new(
        "The train as pitch circles: drivers and driven gears from the first shaft to the last",
        true,
    );
    let radius = |teeth: u32| f64::from(teeth) / 2.0;
    let mut wheel = |x: f64, teeth: u32, word: &str, pen: Pen, up: f64| {
        d.circle(pen, pt(x, 0.0), radius(teeth));
        d.circle(Pen::Thin, pt(x, 0.0), 2.0);
        d.text(pt(x, up * (radius(teeth) + 8.0)), format!("{word} {teeth}"));
    };
    let x = radius(train.driver) + radius(train.driven);
    wheel(0.0, train.driver, "driver", Pen::Mark, 1.0);
    wheel(x, train.driven, "driven", Pen::Object, 1.0);
    if let Some((c, last)) = train.second {
        wheel(x, c, "driver", Pen::Mark, -1.0);
        wheel(
            x + radius(c) + radius(last),
            last,
            "driven",
            Pen::Object,
            1.0,
        );
    }
    d
}
