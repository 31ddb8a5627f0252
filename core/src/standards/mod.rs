//! Tables of published standards: one file a standard, one row a line.

//! See the room's list in DEVELOPERS.md.

pub mod bolt_strength;
mod bolt_strength_inch;
mod bolt_strength_metric;
pub mod drills;
pub mod heads;
pub mod internal_strength;
pub mod metric_threads;
pub mod nut_factors;
pub mod preload_scatter;
pub mod set_screws;
pub mod thread_friction;
pub mod unified;
