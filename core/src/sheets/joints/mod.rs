//! Which questions are about what holds parts together: pins, fits, screws? A new one is its `mod` line and its line of the list, and a file beside this.

use crate::sheet::Sheet;

pub(in crate::sheets) mod bolt_torque;
pub(in crate::sheets) mod dowel;
pub(in crate::sheets) mod fit_limits;
pub(in crate::sheets) mod press_fit;
pub(in crate::sheets) mod taper_pin;
pub(in crate::sheets) mod thread_strip;

/// The sheets of this room.
pub(in crate::sheets) const ALL: &[&Sheet] = &[
    &taper_pin::SHEET,
    &dowel::SHEET,
    &fit_limits::SHEET,
    &press_fit::SHEET,
    &bolt_torque::SHEET,
    &thread_strip::SHEET,
];
