//! Which sheets are there? The list; a new sheet is one line here and a file beside it.

use crate::sheet::Sheet;

/// Declares the files and lists their sheets, in the order of the home page within each group.
macro_rules! sheets {
    ($($file:ident),* $(,)?) => {
        $(mod $file;)*
        /// Every sheet.
        pub static ALL: &[&Sheet] = &[$(&$file::SHEET),*];
    };
}

sheets!(
    length,
    feed_check,
    feed_per_turn,
    dial_slack,
    dial_units,
    belt_drive,
    change_gears,
    plate_check,
    speed_feed,
    chip_load,
    cutting_power,
    cut_time,
    surface_finish,
    thread_infeed,
    taper_pin,
    dowel,
    name_thread,
    drill,
    tap_drill,
    tapping,
    clearance_hole,
    thread,
    fit_limits,
    press_fit,
    bolt_torque,
    thread_strip,
    trip_dog,
    which_pair,
    gear_stages,
);

/// A sheet by id.
pub fn by_id(id: &str) -> Option<&'static Sheet> {
    ALL.iter().find(|sheet| sheet.id == id).copied()
}
