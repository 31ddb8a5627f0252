//! How does each setting run? The marks as entered, one a setting.

use crate::machine::isolate::{Gearbox, Mark};
use crate::quantity::Count;
use crate::sheet::*;

/// The marks, one a setting.
///
/// # Errors
/// A setting that the box does not have, or marks that contradict each other.
pub fn marks(inp: &Inputs, gearbox: &Gearbox) -> Result<Vec<Mark>, Stop> {
    let mut marks = vec![Mark::Untested; gearbox.len()];
    let fault = |row: usize, column: usize, reason: Reason, says: String, cure: &str| {
        let mut fault = Fault::of("marks", reason, says, cure);
        fault.at = Some((row + 1, column));
        Err(fault.into())
    };
    for (row, cells) in inp.rows("marks").iter().enumerate() {
        let number = cells
            .get::<Count>("setting")
            .map_or(0, |n| n.get() as usize);
        let mark = cells
            .choice("mark")
            .and_then(Mark::by_id)
            .unwrap_or_default();
        let Some(own) = number.checked_sub(1).and_then(|at| marks.get_mut(at)) else {
            let says = format!(
                "the gearbox has {} settings, and this is setting {number}",
                gearbox.len()
            );
            let cure = "count settings from the slowest, 1";
            return fault(row, 1, Reason::OutOfRange, says, cure);
        };
        if mark == Mark::Untested {
            continue;
        }
        if *own != Mark::Untested && own.is_bad() != mark.is_bad() {
            let says = format!(
                "setting {number} is marked both \u{201c}{}\u{201d} and \u{201c}{}\u{201d}",
                own.words(),
                mark.words()
            );
            let cure =
                "try it again under the same load and keep one mark; bad now and then is bad";
            return fault(row, 2, Reason::Conflict, says, cure);
        }
        *own = mark;
    }
    Ok(marks)
}
