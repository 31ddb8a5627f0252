//! The plate as a drawing: its values on a scale of equal ratios, the series under them.

use crate::machine::{OFF, Plate};
use crate::sheet::*;

pub(super) fn draw(plate: &Plate, text: &impl Fn(f64) -> String) -> Drawing {
    let mut d = Drawing::new(
        "Values of the plate on a scale of equal ratios, the series under them",
        false,
    );
    let place = |value: f64| {
        40.0 * libm::log(value / plate.steps.first().map_or(1.0, |step| step.fitted))
            / libm::log(plate.ratio)
    };
    for step in &plate.steps {
        let pen = if step.off.abs() > OFF {
            Pen::Mark
        } else {
            Pen::Object
        };
        let (x, fitted) = (place(step.value), place(step.fitted));
        d.path(pen, false, &[pt(x, 0.0), pt(x, 30.0)]);
        d.path(Pen::Thin, false, &[pt(fitted, 0.0), pt(fitted, -15.0)]);
    }
    if let (Some(first), Some(last)) = (plate.steps.first(), plate.steps.last()) {
        d.path(
            Pen::Centre,
            false,
            &[
                pt(place(first.value) - 10.0, 0.0),
                pt(place(last.value) + 10.0, 0.0),
            ],
        );
        d.text(pt(place(first.value), 42.0), text(first.value));
        d.text(pt(place(last.value), 42.0), text(last.value));
        for step in plate
            .steps
            .iter()
            .filter(|step| step.off.abs() > OFF)
            .take(2)
        {
            d.text(pt(place(step.value), 42.0), text(step.value));
        }
    }
    d
}
