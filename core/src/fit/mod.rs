//! Fits: which limits do hole and shaft get, how loose or tight are they together, and what does a press fit take?

mod band;
mod class;
pub mod common;
mod fault;
pub mod inch;
pub mod iso;
pub mod press;
pub mod sources;

pub use band::{Band, KindOfFit, Limits};
pub use class::{FitClass, Grade, LETTERS, Letter, Member};
pub use fault::{FitFault, Why};
