//! How is a named standard thing written? One reader a kind of call: thread, drill, pin, fit.

pub mod drill;
pub mod fit;
pub(crate) mod named;
pub mod pin;
pub mod thread;
