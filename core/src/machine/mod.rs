//! What can this machine do, and what does it do? Its steps, its plate, its true feeds, its stops, the structure of its boxes
//! and which part of one is bad.

mod belt;
mod dial;
pub mod isolate;
mod plate;
mod steps;
pub mod structure;
pub mod teeth;
mod timing;
mod train;
mod trip;

pub use belt::*;
pub use dial::*;
pub use plate::*;
pub use steps::*;
pub use timing::*;
pub use train::*;
pub use trip::*;
