//! Which part of a gearbox explains the settings that run badly, and which setting tells most when tried next?
//!
//! A box is stages in series, each with its alternatives; a setting is one alternative of each. A cause (a pair of gears, what all
//! settings share) touches a set of settings. Faults are taken to be steady: a bad part is bad in every setting that uses it.
//! First the fewest settings that tell any single bad pair, then those that clear the pairs still in doubt, so that a second bad
//! pair can't hide behind the first. Source of the logic: group testing over a product of classes; every list is a complete search.

mod cause;
mod explain;
mod gearbox;
mod known;
mod mark;
mod next;
mod plan;
mod sound;

pub use cause::*;
pub use explain::*;
pub use gearbox::*;
pub use mark::*;
pub use next::*;
pub use plan::*;
pub use sound::*;
