//! Which questions are about the machine itself: drives, feeds, dials, gearboxes? A new one is its `mod` line and its line of the list, and a file beside this.

use crate::sheet::Sheet;

pub(in crate::sheets) mod belt_drive;
pub(in crate::sheets) mod change_gears;
pub(in crate::sheets) mod dial_slack;
pub(in crate::sheets) mod dial_units;
pub(in crate::sheets) mod feed_check;
pub(in crate::sheets) mod feed_per_turn;
pub(in crate::sheets) mod gear_stages;
pub(in crate::sheets) mod plate_check;
pub(in crate::sheets) mod trip_dog;
pub(in crate::sheets) mod which_pair;

/// The sheets of this room.
pub(in crate::sheets) const ALL: &[&Sheet] = &[
    &feed_check::SHEET,
    &feed_per_turn::SHEET,
    &dial_slack::SHEET,
    &dial_units::SHEET,
    &belt_drive::SHEET,
    &change_gears::SHEET,
    &plate_check::SHEET,
    &trip_dog::SHEET,
    &which_pair::SHEET,
    &gear_stages::SHEET,
];
