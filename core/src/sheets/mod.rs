//! Which sheets are there? The list, in the order of the home page within each group; a new sheet is its `mod` and one line
//! of the list here, and a file beside it.

use crate::sheet::Sheet;

// plain lines, so that tools which read the source (rustfmt, mutation runs) find the files
mod belt_drive;
mod bolt_torque;
mod change_gears;
mod chip_load;
mod clearance_hole;
mod cut_time;
mod cutting_power;
mod dial_slack;
mod dial_units;
mod dowel;
mod drill;
mod feed_check;
mod feed_per_turn;
mod fit_limits;
mod gear_stages;
mod length;
mod name_thread;
mod plate_check;
mod press_fit;
mod speed_feed;
mod surface_finish;
mod tap_drill;
mod taper_pin;
mod tapping;
mod thread;
mod thread_infeed;
mod thread_strip;
mod trip_dog;
mod which_pair;

/// Every sheet.
pub static ALL: &[&Sheet] = &[
    &length::SHEET,
    &feed_check::SHEET,
    &feed_per_turn::SHEET,
    &dial_slack::SHEET,
    &dial_units::SHEET,
    &belt_drive::SHEET,
    &change_gears::SHEET,
    &plate_check::SHEET,
    &speed_feed::SHEET,
    &chip_load::SHEET,
    &cutting_power::SHEET,
    &cut_time::SHEET,
    &surface_finish::SHEET,
    &thread_infeed::SHEET,
    &taper_pin::SHEET,
    &dowel::SHEET,
    &name_thread::SHEET,
    &drill::SHEET,
    &tap_drill::SHEET,
    &tapping::SHEET,
    &clearance_hole::SHEET,
    &thread::SHEET,
    &fit_limits::SHEET,
    &press_fit::SHEET,
    &bolt_torque::SHEET,
    &thread_strip::SHEET,
    &trip_dog::SHEET,
    &which_pair::SHEET,
    &gear_stages::SHEET,
];

/// A sheet by id.
pub fn by_id(id: &str) -> Option<&'static Sheet> {
    ALL.iter().find(|sheet| sheet.id == id).copied()
}
