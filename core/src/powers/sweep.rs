//! How does a result run against an entry? The result at even steps of one field, with the entry's own place.

use super::{at, range_of};
use crate::quantity::Kind;
use crate::sheet::Inputs;

/// Points of a sweep.
const POINTS: usize = 49;

/// A result against a field.
#[derive(Clone, PartialEq, Debug)]
pub struct Swept {
    /// The field's number and the result's, base units; none where the sheet gives no answer there.
    pub points: Vec<(f64, Option<f64>)>,
    /// The entry's own place, where it has one.
    pub own: Option<(f64, f64)>,
}

/// Sweeps a field around the entry: from half to one and a half times its number, inside its range; over the whole range
/// where it is empty. None where the field is not numeric or has no range to go by.
pub fn sweep(inputs: &Inputs, field: &str, result: &str) -> Option<Swept> {
    inputs.sheet().result(result)?.kind?;
    let own = inputs.number(field);
    let range = range_of(inputs, field);
    let (low, high) = match (own.filter(|own| *own != 0.0), range) {
        (Some(own), None) => around(own),
        (Some(own), Some((low, high))) => {
            let around = around(own);
            (around.0.max(low), around.1.min(high))
        }
        (None, Some(range)) => range,
        (None, None) => return None,
    };
    let counts = inputs
        .sheet()
        .field(field)
        .is_some_and(|field| field.kind_is(Kind::Count));
    let quiet = inputs.clone().quietly();
    let last = POINTS.saturating_sub(1) as f64;
    let mut xs: Vec<f64> = (0..POINTS)
        .map(|i| {
            let x = low + (high - low) * i as f64 / last;
            if counts { libm::round(x) } else { x }
        })
        .collect();
    xs.dedup();
    let points = xs
        .into_iter()
        .map(|x| (x, at(&quiet, field, x, result)))
        .collect();
    let own = own.and_then(|x| Some((x, at(&quiet, field, x, result)?)));
    Some(Swept { points, own })
}

fn around(own: f64) -> (f64, f64) {
    let (a, b) = (own * 0.5, own * 1.5);
    (a.min(b), a.max(b))
}
