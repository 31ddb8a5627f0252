//! What do the tables of fasteners say: strength, heads, friction, torque?

pub mod bolt_strength;
mod bolt_strength_inch;
mod bolt_strength_metric;
pub mod heads;
pub mod internal_strength;
pub mod nut_factors;
pub mod preload_scatter;
pub mod thread_friction;
pub mod torque_lists;
