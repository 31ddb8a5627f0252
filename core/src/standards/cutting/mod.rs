//! What do the tables of cutting say: materials, speeds, feeds, power?

pub mod cutting_speeds;
pub mod cutting_speeds_band;
pub mod cutting_speeds_hole;
pub mod cutting_speeds_milling;
pub mod cutting_speeds_steel;
pub mod cutting_speeds_turning;
pub mod feeds;
pub mod feeds_end_mill;
pub mod feeds_turn;
pub mod tap_forces;
pub mod unit_power;
pub mod work_materials;
