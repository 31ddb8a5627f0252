//! What can be asked of every sheet at once? The range that ± leaves, the entry that gives a wanted result, and a
//! result plotted against an entry. Written once over the contract; a sheet knows nothing of it.

mod ask;
mod spread;
mod sweep;
mod turn;

pub use ask::{pinned, swept, turned};
pub use spread::{End, EndFault, LineSpread, PickChange, Spread, spread};
pub use sweep::{Swept, sweep};
pub use turn::{Jump, Root, Side, Turned, turn};

use crate::sheet::{Answer, FieldKind, Inputs, figure};

/// The number of a result at a changed field; none where the sheet stops there.
fn at(inputs: &Inputs, field: &str, x: f64, result: &str) -> Option<f64> {
    figure(&inputs.with(field, x))
        .ok()
        .as_ref()
        .and_then(|answer| value(answer, result))
}

fn value(answer: &Answer, result: &str) -> Option<f64> {
    answer
        .get(result)?
        .value
        .base()
        .filter(|base| base.is_finite())
}

/// The range in which a numeric field may be freed or swept; none where it has none.
fn range_of(inputs: &Inputs, field: &str) -> Option<(f64, f64)> {
    let declared = inputs.sheet().field(field)?;
    match declared.kind {
        FieldKind::Quantity { .. } => declared.range.map(|range| (range.low, range.high)),
        _ => None,
    }
}
