//! How much power does this work material take, and by which table? Unit power for the steels, coarse energy for other metals.

use super::sources::{COARSE_ENERGY, UNIT_POWER};
use crate::quantity::FeedPerRev;
use crate::source::Source;
use crate::standards::cutting::cutting_speeds::Material;
use crate::standards::cutting::unit_power::{
    PowerGroup, SPECIFIC_ENERGY_AT_MOTOR, SpecificEnergyRow, UnitPowerLookup, UnitPowerRow,
    feed_factor, unit_power,
};

/// What a work material takes.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum WorkPower {
    /// Unit power at the cutter, sharp tool: feed factor, wear and efficiency belong to it.
    Unit(UnitPowerRow),
    /// A range at the motor, for the order of magnitude.
    Coarse(SpecificEnergyRow),
}

impl WorkPower {
    /// The table.
    pub(crate) const fn source(self) -> &'static Source {
        match self {
            Self::Unit(_) => &UNIT_POWER,
            Self::Coarse(_) => &COARSE_ENERGY,
        }
    }
}

/// The row of unit power of a work material at its hardness, or at a usual one; else the coarse energy of its kind; nothing for copper
/// and its alloys, zinc and plastics, for which no figure is known.
///
/// Steel softer than its table takes the softest row, harder steel the coarse range.
///
/// ```
/// use benchslate_core::{cutting::{WorkPower, work_power}, standards::cutting::cutting_speeds::Material};
/// let Some(WorkPower::Unit(row)) = work_power(Material::MildSteel, Some(150)) else { panic!() };
/// assert_eq!(row.hp_per_in3_min, 0.74); // Machinery's Handbook 31st ed., p. 1147: plain carbon, 140 to 160 HB
/// assert!(matches!(work_power(Material::GrayIron, None), Some(WorkPower::Coarse(_))));
/// assert!(work_power(Material::Brass, None).is_none());
/// ```
pub fn work_power(material: Material, hardness_hb: Option<u16>) -> Option<WorkPower> {
    let steel = match material {
        Material::MildSteel | Material::WroughtIron => Some((PowerGroup::PlainCarbon, 150)),
        Material::CastSteel => Some((PowerGroup::PlainCarbon, 180)),
        Material::CarbonSteel => Some((PowerGroup::PlainCarbon, 200)),
        Material::FreeMachiningSteel => Some((PowerGroup::Free1108, 150)),
        Material::AlloySteel => Some((PowerGroup::Alloy4140, 200)),
        Material::ToolSteel => Some((PowerGroup::Alloy1340, 200)),
        _ => None,
    };
    let row =
        steel.and_then(
            |(group, usual)| match unit_power(group, hardness_hb.unwrap_or(usual)) {
                UnitPowerLookup::Row(row) => Some(row),
                UnitPowerLookup::Outside(softest, _) if hardness_hb < Some(softest) => {
                    match unit_power(group, softest) {
                        UnitPowerLookup::Row(row) => Some(row),
                        UnitPowerLookup::Outside(..) => None,
                    }
                }
                UnitPowerLookup::Outside(..) => None,
            },
        );
    let kind = match material {
        Material::Aluminium | Material::CastAluminium => "alumin",
        Material::GrayIron
        | Material::MalleableIron
        | Material::DuctileIron
        | Material::AusteniticIron => "cast irons",
        Material::Magnesium => "magnesium alloys",
        Material::Monel | Material::Nickel => "nickel alloys",
        Material::StainlessSteel => "stainless steels",
        Material::Titanium => "titanium alloys",
        _ if steel.is_some() => "steels",
        _ => return None,
    };
    row.map(WorkPower::Unit).or_else(|| {
        SPECIFIC_ENERGY_AT_MOTOR
            .iter()
            .find(|row| row.material.starts_with(kind))
            .copied()
            .map(WorkPower::Coarse)
    })
}

/// The feed factor of the table; below its 0.001 in carried down by (f / 0.012)^−0.2, which fits the table within 3 %.
///
/// ```
/// use benchslate_core::{cutting::thin_feed_factor, quantity::FeedPerRev};
/// let at = |feed| thin_feed_factor(FeedPerRev::from_in_per_rev(feed));
/// assert_eq!(at(0.001), Some(1.6)); // Table 2
/// assert!((at(0.0005).unwrap() - 1.888).abs() < 0.001);
/// assert_eq!(at(0.1), None);
/// ```
pub fn thin_feed_factor(feed: FeedPerRev) -> Option<f64> {
    let inches = feed.in_per_rev();
    feed_factor(feed)
        .or_else(|| (inches > 0.0 && inches < 0.001).then(|| libm::pow(inches / 0.012, -0.2)))
}
