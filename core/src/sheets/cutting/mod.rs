//! Which questions are about a cut: speed, feed, chip, power, time, surface? A new one is its `mod` line and its line of the list, and a file beside this.

use crate::sheet::Sheet;

pub(in crate::sheets) mod chip_load;
pub(in crate::sheets) mod cut_time;
pub(in crate::sheets) mod cutting_power;
pub(in crate::sheets) mod speed_feed;
pub(in crate::sheets) mod surface_finish;
pub(in crate::sheets) mod tapping;
pub(in crate::sheets) mod thread_infeed;

/// The sheets of this room.
pub(in crate::sheets) const ALL: &[&Sheet] = &[
    &speed_feed::SHEET,
    &tapping::SHEET,
    &chip_load::SHEET,
    &cutting_power::SHEET,
    &cut_time::SHEET,
    &surface_finish::SHEET,
    &thread_infeed::SHEET,
];
