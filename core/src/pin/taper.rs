//! How large is a taper at each place along it, how far does a change of diameter move a pin, and what is its angle?

use super::PinFault;
use super::fault::positive;
use crate::quantity::{Angle, Length, Taper};
use crate::standards::pins::taper_pins::{INCH_TAPER, METRIC_TAPER};

/// The two series of taper pins.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug, Default)]
pub enum TaperSeries {
    /// ASME B18.8.2: numbers, 1:48, named by the large end.
    #[default]
    Inch,
    /// ISO 2339: millimetres, 1:50, named by the small end.
    Metric,
}

impl TaperSeries {
    /// The series' taper on the diameter.
    pub const fn taper(self) -> Taper {
        match self {
            Self::Inch => INCH_TAPER,
            Self::Metric => METRIC_TAPER,
        }
    }
    /// Length in which the diameter changes by one: 48 or 50.
    pub const fn per(self) -> f64 {
        match self {
            Self::Inch => 48.0,
            Self::Metric => 50.0,
        }
    }
    /// The other series.
    pub const fn other(self) -> Self {
        match self {
            Self::Inch => Self::Metric,
            Self::Metric => Self::Inch,
        }
    }
}

/// Small end of a taper: d = D − L·T.
///
/// D large end, L length, T taper on the diameter. Valid while d is above zero. Source: ASME B18.8.2 (small end = basic
/// large end − length × 0.02083, which is 1/48 rounded); Shigley, Mechanical Engineering Design, 9th ed. (2011), Eq. (7-35).
///
/// # Errors
/// Nothing given, or a length at which the pin would run to a point.
///
/// ```
/// use benchslate_core::{pin, quantity::Length};
/// // Pin No. 4, 2 in long: 0.25 − 2/48 = 0.20833 in (ASME B18.8.2 rule)
/// let d = pin::small_end(Length::from_inches(0.25), Length::from_inches(2.0), pin::TaperSeries::Inch.taper()).unwrap();
/// assert!((d.inches() - 0.20833).abs() < 0.00001);
/// ```
pub fn small_end(large: Length, length: Length, taper: Taper) -> Result<Length, PinFault> {
    positive(large, "large end")?;
    positive(length, "length")?;
    let small = large - length * taper.ratio();
    if small.mm() > 0.0 {
        Ok(small)
    } else {
        Err(PinFault::RunsToAPoint {
            limit: large / taper.ratio(),
        })
    }
}

/// Large end of a taper: D = d + L·T. Source: ISO 2339 (1:50 on the diameter, named by the small end d).
pub fn large_end(small: Length, length: Length, taper: Taper) -> Length {
    small + length * taper.ratio()
}

/// Included angle of a taper on the diameter: 2·atan(T/2). Exact; 1:48 gives 1.1937°.
pub fn included_angle(taper: Taper) -> Angle {
    Angle::from_radians(2.0 * libm::atan(taper.ratio() / 2.0))
}

/// How far a pin moves along its hole for a change of diameter: 48 or 50 times it.
pub fn travel(on_diameter: Length, taper: Taper) -> Length {
    on_diameter / taper.ratio()
}

/// The squeeze on the diameter that driving a pin home from `proud` gives: proud·T, both parts taken as rigid.
///
/// U.S. Army TM 9-254, par. 3-1e, seats a pin from within 1/16 in of home: 0.0013 in on the diameter at 1:48.
pub fn squeeze(proud: Length, taper: Taper) -> Length {
    proud * taper.ratio()
}

/// Misfit of a 1:48 pin in a 1:50 hole (or the reverse) over a length, on the diameter: L·(1/48 − 1/50) = L/1200.
///
/// A 1:48 pin in a 1:50 hole bears at the large end and is this much slack at the small end; a 1:50 pin in a 1:48 hole
/// bears at the small end.
pub fn mismatch(length: Length) -> Length {
    length * (INCH_TAPER.ratio() - METRIC_TAPER.ratio())
}
