//! Tables of published standards: one file a standard, one row a line.

pub mod bolt_strength;
mod bolt_strength_inch;
mod bolt_strength_metric;
pub mod clearance_holes;
pub mod cutting_speeds;
pub mod cutting_speeds_hole;
mod cutting_speeds_milling;
mod cutting_speeds_turning;
pub mod dowel_pins;
pub mod drill_sets;
pub mod drills;
pub mod feeds;
pub mod heads;
pub mod internal_strength;
pub mod look_alike_threads;
pub mod metric_threads;
pub mod metric_tolerances;
pub mod nut_factors;
pub mod preload_scatter;
pub mod set_screws;
pub mod speed_series;
pub mod taper_pins;
pub mod thread_friction;
pub mod unified;
pub mod unit_power;
