//! What do the tables of screw threads say: sizes, pitches, tolerances?

pub mod acceptance_limits;
pub mod look_alike_threads;
pub mod metric_threads;
pub mod metric_tolerances;
pub mod unified;
