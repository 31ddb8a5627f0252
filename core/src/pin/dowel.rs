//! How does a dowel sit in its hole: always tight, always loose, or as it happens?

use crate::quantity::Length;

/// Least and most size of a pin or a hole.
pub type Limits = (Length, Length);

/// The fit of a pin in a hole, on the diameter. Clearance is positive, interference negative.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct FitBand {
    /// Largest pin in the smallest hole.
    pub tightest: Length,
    /// Smallest pin in the largest hole.
    pub loosest: Length,
}

/// What a band of fits means at the bench.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum FitCharacter {
    /// Every pair holds: press.
    Press,
    /// Some pairs hold, some are free: transition.
    Transition,
    /// Every pair goes together by hand: slip.
    Slip,
}

/// The band of fits of a pin in a hole: hole least − pin most, to hole most − pin least.
///
/// ```
/// use benchslate_core::{pin, quantity::Length};
/// // 6 m6 in 6 H7: 12 µm tight to 8 µm loose (ISO 286-2)
/// let (mm, um) = (Length::from_mm, |l: Length| (l.um() * 10.0).round() / 10.0);
/// let band = pin::fit_band((mm(6.004), mm(6.012)), (mm(6.0), mm(6.012)));
/// assert_eq!((um(band.tightest), um(band.loosest)), (-12.0, 8.0));
/// assert_eq!(band.character(), pin::FitCharacter::Transition);
/// ```
pub fn fit_band(pin: Limits, hole: Limits) -> FitBand {
    FitBand {
        tightest: hole.0 - pin.1,
        loosest: hole.1 - pin.0,
    }
}

impl FitBand {
    /// Press, transition or slip. Line to line counts as holding on the loose side and as free on the tight side.
    pub fn character(self) -> FitCharacter {
        const LINE: f64 = 1e-7;
        if self.loosest.mm() <= LINE {
            FitCharacter::Press
        } else if self.tightest.mm() >= -LINE {
            FitCharacter::Slip
        } else {
            FitCharacter::Transition
        }
    }
    /// Least and most interference, where every pair holds (line to line is zero).
    pub fn interference(self) -> Limits {
        (-self.loosest, -self.tightest)
    }
}

/// Shop practice for a slip hole of a ground inch dowel: nominal + 0.0005 to + 0.0012 in (a machine shop's published
/// guide). Other lists give more room: see `standards::pins::dowel_pins::PRACTICE`.
pub fn inch_slip_hole(nominal: Length) -> Limits {
    (
        nominal + Length::from_thou(0.5),
        nominal + Length::from_thou(1.2),
    )
}
