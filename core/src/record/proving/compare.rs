//! How far is a measured value from what it should be, and can the measuring itself explain that?

use super::Measured;
use crate::quantity::{Kind, NOTHING, join, signed, units};

/// A measured value against a wanted one.
#[derive(Clone, Copy, PartialEq, Debug)]
pub(super) struct Compared {
    /// Measured less wanted, in the base unit.
    pub difference: f64,
    /// The same as a share of the wanted value; none where that is zero or a temperature.
    pub share: Option<f64>,
    /// Whether the ± that was typed covers the difference; none where no ± was typed.
    pub explained: Option<bool>,
}

/// Compares. The ranges of both sides are taken at their full width.
pub(super) fn compare(measured: &Measured, wanted: &Measured, kind: Kind) -> Compared {
    let difference = measured.value - wanted.value;
    let has_range =
        measured.minus > 0.0 || measured.plus > 0.0 || wanted.minus > 0.0 || wanted.plus > 0.0;
    // the last bits of a conversion are not held against the entry
    let slack = 1e-9 * (measured.value.abs() + wanted.value.abs());
    let meet = measured.value - measured.minus <= wanted.value + wanted.plus + slack
        && measured.value + measured.plus >= wanted.value - wanted.minus - slack;
    Compared {
        difference,
        share: (kind != Kind::Temperature && wanted.value != 0.0)
            .then(|| difference / wanted.value),
        explained: has_range.then_some(meet),
    }
}

/// The signed difference in the measured value's unit, and as a share: "+0.05 in/min, +2.5%".
pub(super) fn difference_text(compared: &Compared, measured: &Measured, kind: Kind) -> String {
    let unit = match kind {
        Kind::Temperature if measured.unit == &units::FAHRENHEIT => &units::FAHRENHEIT_DIFFERENCE,
        Kind::Temperature => &units::KELVIN_DIFFERENCE,
        _ => measured.unit,
    };
    let places = unit.places.saturating_add(u8::from(kind == Kind::FeedRate));
    let digits = signed(compared.difference, unit, places);
    let mut text = join(&digits, unit);
    if let Some(share) = compared.share {
        let percent = signed(share, &units::PERCENT, 1);
        if percent != NOTHING {
            text.push_str(", ");
            text.push_str(&join(&percent, &units::PERCENT));
        }
    }
    text
}
