//! Tables of published standards: one file a standard, one row a line.

pub mod drills;
pub mod metric_threads;
pub mod unified;
