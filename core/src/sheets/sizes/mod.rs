//! Which questions are about sizes, threads and the holes before them? A new one is its `mod` line and its line of the list, and a file beside this.

use crate::sheet::Sheet;

pub(in crate::sheets) mod clearance_hole;
pub(in crate::sheets) mod drill;
pub(in crate::sheets) mod length;
pub(in crate::sheets) mod name_thread;
pub(in crate::sheets) mod tap_drill;
pub(in crate::sheets) mod thread;

/// The sheets of this room.
pub(in crate::sheets) const ALL: &[&Sheet] = &[
    &length::SHEET,
    &name_thread::SHEET,
    &drill::SHEET,
    &tap_drill::SHEET,
    &clearance_hole::SHEET,
    &thread::SHEET,
];
