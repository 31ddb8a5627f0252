//! What do the tables of pins say?

pub mod dowel_pins;
pub mod taper_pins;
