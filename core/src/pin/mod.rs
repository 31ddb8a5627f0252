//! Taper pins and dowels: which pin is it, which hole does it need, how is that hole made, and what will the pin carry?
//!
//! Plain typed functions; the tables are in `standards::pins::taper_pins` and `standards::pins::dowel_pins`. Inch taper pins are
//! named by their LARGE end (1:48), metric ones by their SMALL end (1:50); here both are one [`StandardPin`].

mod choose;
mod dowel;
mod fault;
mod gauge;
mod hole;
mod measured;
mod standard;
mod strength;
mod taper;
mod worn;

pub use choose::*;
pub use dowel::*;
pub use fault::*;
pub use gauge::*;
pub use hole::*;
pub use measured::*;
pub use standard::*;
pub use strength::*;
pub use taper::*;
pub use worn::*;
