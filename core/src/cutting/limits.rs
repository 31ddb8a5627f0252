//! What holds a cut back besides its edge? The depth of a slot, a deep hole, the carriage at a shoulder, the collars of an arbor, run-out.

use crate::quantity::{FeedRate, Length, Pitch, RotationalSpeed};

/// The share of the feed that an end mill takes at a depth along the spindle, or nothing where it is too deep for one pass.
///
/// In a full slot whole to half a diameter deep, 75 % at one diameter, 50 % at one and a half, straight between; no deeper (milling
/// catalogue, 2021-2022, p. 115). A cut to one side is judged as a slot of the depth × its share of three quarters of the diameter, and
/// no deeper than [`SIDE_DEPTH_MOST`] diameters (common practice).
///
/// ```
/// use benchslate_core::{cutting::depth_share, quantity::Length};
/// let slot = |deep| depth_share(Length::from_inches(deep), Length::from_inches(1.0), Length::from_inches(1.0));
/// assert_eq!((slot(0.5), slot(1.0), slot(1.5)), (Some(1.0), Some(0.75), Some(0.5))); // the catalogue
/// assert_eq!(slot(1.6), None);
/// ```
pub fn depth_share(axial: Length, radial: Length, diameter: Length) -> Option<f64> {
    let deep = axial / diameter;
    // rounded so that a depth on the limit meets it whatever the last bit of its conversion
    let slot = libm::round(deep * slot_share(radial, diameter) * 1e9) / 1e9;
    if slot > SLOT_DEPTH_MOST || (!is_slot(radial, diameter) && deep > SIDE_DEPTH_MOST + 1e-9) {
        return None;
    }
    Some((1.0 - (slot - 0.5).max(0.0) / 2.0).min(1.0))
}

/// The deepest full slot in one pass, in diameters.
pub const SLOT_DEPTH_MOST: f64 = 1.5;
/// The deepest cut to one side in one pass, in diameters: about the flutes of a regular end mill.
pub const SIDE_DEPTH_MOST: f64 = 3.0;
/// From this share of the diameter on a cut is a slot.
const SLOT_FROM: f64 = 0.75;

/// Is the cut so wide that it counts as a full slot?
pub fn is_slot(radial: Length, diameter: Length) -> bool {
    slot_share(radial, diameter) >= 1.0
}

fn slot_share(radial: Length, diameter: Length) -> f64 {
    (radial / diameter / SLOT_FROM).min(1.0)
}

/// The deepest pass at a width of cut: [`depth_share`] is nothing beyond.
pub fn deepest_pass(radial: Length, diameter: Length) -> Length {
    let share = slot_share(radial, diameter);
    let most = SLOT_DEPTH_MOST / share;
    diameter
        * if share >= 1.0 {
            most
        } else {
            most.min(SIDE_DEPTH_MOST)
        }
}

/// The share of speed and feed that is left to a drill in a deep hole: a tenth less at three diameters, two at four, three at five, four
/// at six and more (a public drilling guide: 35 to 40 % at six).
///
/// ```
/// use benchslate_core::{cutting::deep_hole_share, quantity::Length};
/// let at = |deep| deep_hole_share(Length::from_inches(deep), Length::from_inches(1.0));
/// assert_eq!((at(2.9), at(3.0), at(5.5), at(16.0)), (1.0, 0.9, 0.7, 0.6));
/// ```
pub fn deep_hole_share(hole: Length, diameter: Length) -> f64 {
    let deep = libm::floor(libm::round(hole / diameter * 1e9) / 1e9);
    if deep < DEEP_HOLE {
        1.0
    } else {
        (12.0 - deep.min(6.0)) / 10.0
    }
}

/// From so many diameters a hole is deep.
pub const DEEP_HOLE: f64 = 3.0;

/// How fast the carriage may run toward a shoulder while a hand minds the half nuts: 10 in/min (common practice).
pub const CARRIAGE_MOST: FeedRate = FeedRate::from_mm_per_min(254.0);

/// The fastest spindle at which the carriage keeps to [`CARRIAGE_MOST`]: F / P.
///
/// ```
/// use benchslate_core::{cutting::threading_limit, quantity::Pitch};
/// assert!((threading_limit(Pitch::from_tpi(20.0)).rpm() - 200.0).abs() < 1e-9); // 10 in/min × 20 per inch
/// ```
pub fn threading_limit(lead: Pitch) -> RotationalSpeed {
    RotationalSpeed::from_rpm(CARRIAGE_MOST.mm_per_min() / lead.mm())
}

/// How deep a cutter reaches before the collars beside it touch the work: (D − collar) / 2, a collar being one and a half times the
/// arbor (common practice). Without an arbor: one of 1 in, or collars of half the diameter for a small cutter.
///
/// ```
/// use benchslate_core::{cutting::collar_reach, quantity::Length};
/// let inch = Length::from_inches;
/// assert!((collar_reach(inch(4.0), Some(inch(1.25))).inches() - 1.0625).abs() < 1e-9); // collars of 1-7/8
/// assert!((collar_reach(inch(4.0), None).inches() - 1.25).abs() < 1e-9);
/// ```
pub fn collar_reach(diameter: Length, arbor: Option<Length>) -> Length {
    let collar = arbor.map_or_else(
        || Length::from_inches(1.5).min(diameter * 0.5),
        |arbor| arbor * 1.5,
    );
    (diameter - collar) * 0.5
}

/// The most that a feed is raised for a thin chip: an arbor cutter never runs true enough for more (common practice).
pub const THINNING_MOST: f64 = 3.0;
