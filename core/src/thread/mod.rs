//! Screw threads: sizes, limits, tap drills, and which thread is this?

mod basic;
mod call;

pub use basic::*;
pub use call::*;
