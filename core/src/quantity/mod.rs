//! Units as types, shop notation in, plain figures out. Uses nothing else of the core.

mod kind;
mod typed;

pub use kind::*;
pub use typed::*;
