//! Can this wrench set that torque, and what to set it to with an extension?

use super::{Fault, positive};
use crate::quantity::{Angle, Length, Torque};

/// How a torque lies in a wrench's range.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Reach {
    /// Inside the range and at or above 20 % of its top.
    Good,
    /// Inside the scale, but below 20 % of its top, where the accuracy is not promised.
    BelowFifth,
    /// Below the scale.
    TooSmall,
    /// Above the scale.
    TooLarge,
}

/// Where a torque lies in a wrench's range. The promised accuracy starts at 20 % of the top (ISO 6789; common practice).
///
/// ```
/// use benchslate_core::fastener::wrench::{Reach, reach};
/// use benchslate_core::quantity::Torque;
/// let ft = Torque::from_lbf_ft;
/// assert_eq!(reach(ft(25.0), ft(10.0), ft(150.0)), Reach::BelowFifth);
/// assert_eq!(reach(ft(30.0), ft(10.0), ft(150.0)), Reach::Good);
/// ```
pub fn reach(torque: Torque, low: Torque, high: Torque) -> Reach {
    if torque > high {
        Reach::TooLarge
    } else if torque < low {
        Reach::TooSmall
    } else if torque < high * 0.2 {
        Reach::BelowFifth
    } else {
        Reach::Good
    }
}

/// What to set on the wrench when an extension of length E stands at an angle a to it: `setting = T L / (L + E cos a)`.
///
/// L from grip to drive, E from drive to screw; 0° straight on, 90° across (no change), 180° back along the wrench.
/// Range: L above zero, L + E cos a above zero. Source: TM 9-254 p. 91-92; NAVEDTRA 14008.
///
/// # Errors
/// Lengths outside that range.
///
/// ```
/// use benchslate_core::fastener::wrench::setting_with_extension;
/// use benchslate_core::quantity::{Angle, Length, Torque};
/// // TM 9-254 p. 91: 12 in wrench, 2 in extension, 70 in-lb wanted: set 60.
/// let inch = Length::from_inches;
/// let set = setting_with_extension(Torque::from_lbf_in(70.0), inch(12.0), inch(2.0), Angle::from_degrees(0.0)).unwrap();
/// assert!((set.lbf_in() - 60.0).abs() < 1e-9);
/// ```
pub fn setting_with_extension(
    wanted: Torque,
    wrench: Length,
    extension: Length,
    angle: Angle,
) -> Result<Torque, Fault> {
    let l = positive(wrench.mm(), "wrench length")?;
    let effective = positive(
        l + extension.mm() * libm::cos(angle.radians()),
        "lever with extension",
    )?;
    Ok(wanted * (l / effective))
}
