//! What should the cutter do? Speed, feed, chip, time, removal, power and surface of a cut, as plain typed functions.

mod chip;
mod fault;
mod feed;
mod power;
mod removal;
mod speed;
mod surface;
mod threading;
mod time;

pub use chip::*;
pub use fault::CutFault;
pub use feed::*;
pub use power::*;
pub use removal::*;
pub use speed::*;
pub use surface::*;
pub use threading::*;
pub use time::*;
