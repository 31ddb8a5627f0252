//! Screw threads: sizes, limits, tap drills, and which thread is this?

mod basic;
mod call;
mod identify;
mod limits;
mod pick;
mod tap_drill;

pub use basic::*;
pub use call::*;
pub use identify::*;
pub use limits::*;
pub use pick::*;
pub use tap_drill::*;
