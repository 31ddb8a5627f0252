//! What do the tables of drills and clearance holes say?

pub mod clearance_holes;
pub mod drill_sets;
pub mod drills;
