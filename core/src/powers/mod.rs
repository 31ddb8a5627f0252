//! What can be asked of every sheet at once? The range that ± leaves, the entry that gives a wanted result, and a
//! result plotted against an entry. Written once over the contract; a sheet knows nothing of it.

mod ask;
mod probe;
mod spread;
mod sweep;
mod tell;
mod turn;

pub use ask::{pinned, swept, turned};
pub use spread::{
    Change, Choices, End, LineSpread, Moves, NoAnswer, PickChange, Place, Spread, spread,
};
pub use sweep::{Edge, Level, Swept, sweep};
pub use tell::{
    Find, Told, field_text, printed_order, range_text, tell_found, tell_line, tell_none, tell_notes,
};
pub use turn::{Interval, Jump, Root, Side, Turned, turn};

use crate::sheet::{Answer, FieldKind, Inputs};

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
