//! What can this machine do, and what does it do? Its steps, its plate, its true feeds, its stops.

mod plate;
mod steps;
mod timing;
mod trip;

pub use plate::*;
pub use steps::*;
pub use timing::*;
pub use trip::*;
