//! Does a number lie in its field's range? Past it a fault with the limit, the reason and a cure.

use super::{Fault, Field, FieldKind, Reason};
use crate::quantity::{Unit, join, plain, with_unit};

pub(super) fn check_range(
    field: &'static Field,
    base: f64,
    unit: &'static Unit,
) -> Result<(), Fault> {
    let Some(range) = field.range else {
        return Ok(());
    };
    // the ends belong to the range; a last-digit difference of a converted end is not held against the entry
    let slack = 1e-9 * (range.low.abs() + range.high.abs());
    if base >= range.low - slack && base <= range.high + slack {
        return Ok(());
    }
    if base < 0.0 && range.low >= 0.0 {
        let noun = match field.kind {
            FieldKind::Quantity { kind, .. } => kind.noun(),
            _ => "this",
        };
        // threads per inch fall as the size grows
        let turned = unit.from_base(range.low) > unit.from_base(range.high);
        let low = end(if turned { range.high } else { range.low }, unit, true);
        return Err(Fault::of(
            field.id,
            Reason::OutOfRange,
            format!("{noun} can't be minus"),
            format!("give {low} or more"),
        ));
    }
    // threads per inch and their like fall as the size grows
    let turned = unit.from_base(range.low) > unit.from_base(range.high);
    let (least, most) = if turned {
        (range.high, range.low)
    } else {
        (range.low, range.high)
    };
    let (low, high) = (end(least, unit, true), end(most, unit, false));
    let says = format!("outside {low} to {high}: {}", range.why);
    let cure = if (base < range.low) == turned {
        format!("give {high} or less")
    } else {
        format!("give {low} or more")
    };
    Err(Fault::of(field.id, Reason::OutOfRange, says, cure))
}

/// An end of a range, short, and rounded to its inside, so that what is shown is allowed when typed.
fn end(base: f64, unit: &'static Unit, low: bool) -> String {
    let value = unit.from_base(base);
    for places in 0..7_u8 {
        let scale = libm::pow(10.0, f64::from(places));
        let (scaled, little) = (value * scale, 1e-9 * (value * scale).abs());
        let whole = if low {
            libm::ceil(scaled - little)
        } else {
            libm::floor(scaled + little)
        };
        if (whole - scaled).abs() <= 0.02 * scaled.abs() {
            return with_unit(unit.to_base(whole / scale), unit, places);
        }
    }
    join(&plain(base, unit), unit)
}
