//! What can this machine do? Its steps around a wanted value.

mod steps;

pub use steps::*;
