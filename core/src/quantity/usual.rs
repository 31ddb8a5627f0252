//! In which unit does a shop of each system expect a kind of quantity?

use super::{Kind, System, Unit, units_of};

/// The usual unit of a kind in a system: the first of its units that belongs there, or to both.
pub fn usual(kind: Kind, system: System) -> &'static Unit {
    let units = units_of(kind);
    let own = units.iter().find(|unit| unit.system == Some(system));
    own.or_else(|| units.iter().find(|unit| unit.system.is_none()))
        .or_else(|| units.first())
        .copied()
        .unwrap_or(&super::units::NUMBER)
}
