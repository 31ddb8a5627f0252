//! Benchslate's core: shop calculations as plain data and pure functions. No clock, no screen, no I/O, no panic.
#![forbid(unsafe_code)]

pub mod call;
pub mod calls;
pub mod cutting;
pub mod drawing;
pub mod fastener;
pub mod fit;
pub mod link;
pub mod machine;
pub(crate) mod notation;
pub mod order;
pub mod pin;
pub mod powers;
pub mod quantity;
pub mod record;
pub mod search;
pub mod sheet;
pub mod sheets;
pub mod source;
pub mod standards;
pub mod thread;
