//! Small hooks: window events, and work put off until typing pauses.

mod later;
mod window_event;

pub use later::{Later, use_later, use_saving};
pub use window_event::use_window_event;
