//! What should the cutter do? Speed, feed, chip, time, removal, power and surface of a cut, as plain typed functions.

mod aim;
mod chip;
mod chip_limits;
mod fault;
mod feed;
mod infeed;
mod limits;
pub(crate) mod picture;
mod power;
mod removal;
pub(crate) mod sources;
mod speed;
mod surface;
mod tap_torque;
mod tapping;
mod threading;
mod time;
mod work_power;

pub use aim::*;
pub use chip::*;
pub use chip_limits::*;
pub use fault::CutFault;
pub use feed::*;
pub use infeed::*;
pub use limits::*;
pub use power::*;
pub use removal::*;
pub use speed::*;
pub use surface::*;
pub use tap_torque::*;
pub use tapping::*;
pub use threading::*;
pub use time::*;
pub use work_power::*;
