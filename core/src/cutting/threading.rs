//! How far in does the compound go for a thread, and in which passes? Depth by the convention named, infeed along the angle, equal areas.

use super::fault::{CutFault, positive};
use crate::quantity::{Angle, Length, Pitch};

/// Which depth of a 60-degree external thread is meant: all three have been in print.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum ThreadDepth {
    /// American National, 0.6495 P: older charts, the 29-degree table among them.
    AmericanNational,
    /// Unified external to 1989, 0.6134 P (17/24 of the sharp height).
    UnifiedTo1989,
    /// Unified with rounded root (UNR), 2003 and later, 0.5954 P.
    Unr2003,
}

impl ThreadDepth {
    /// Depth in pitches: 3/4, 17/24 and 11/16 of the sharp height cos 30° P, less nothing.
    ///
    /// ```
    /// use benchslate_core::cutting::ThreadDepth::*;
    /// assert_eq!((AmericanNational.pitches() * 1e4).round(), 6495.0);
    /// assert_eq!((UnifiedTo1989.pitches() * 1e4).round(), 6134.0);
    /// assert_eq!((Unr2003.pitches() * 1e4).round(), 5954.0);
    /// ```
    pub const fn pitches(self) -> f64 {
        const SHARP: f64 = 0.8660254037844386;
        match self {
            Self::AmericanNational => SHARP * 3.0 / 4.0,
            Self::UnifiedTo1989 => SHARP * 17.0 / 24.0,
            Self::Unr2003 => SHARP * 11.0 / 16.0,
        }
    }
}

/// Infeed on the compound: depth / cos(angle), the angle measured from square to the work.
///
/// # Errors
/// [`CutFault::NotPositive`] for a pitch of nothing or an angle of 90 degrees or more.
///
/// ```
/// use benchslate_core::{cutting::{compound_infeed, ThreadDepth}, quantity::{Angle, Pitch}};
/// let x = compound_infeed(Pitch::from_tpi(10.0), ThreadDepth::AmericanNational, Angle::from_degrees(29.0)).unwrap();
/// assert!((x.inches() - 0.0742).abs() < 0.0002); // table of compound infeed at 29 degrees
/// ```
pub fn compound_infeed(pitch: Pitch, depth: ThreadDepth, angle: Angle) -> Result<Length, CutFault> {
    let p = positive(pitch.mm(), "the pitch")?;
    let cos = positive(
        libm::cos(angle.radians()),
        "the cosine of the compound angle",
    )?;
    Ok(Length::from_mm(p * depth.pitches() / cos))
}

/// Total infeed after each pass so that every pass takes the same area: x sqrt(i / passes).
///
/// ```
/// use benchslate_core::{cutting::equal_area_passes, quantity::Length};
/// let passes = equal_area_passes(Length::from_inches(0.060), 4);
/// assert_eq!(passes.len(), 4);
/// assert!((passes[0].inches() - 0.030).abs() < 1e-12); // sqrt(1/4)
/// ```
pub fn equal_area_passes(total: Length, passes: u16) -> Vec<Length> {
    (1..=passes)
        .map(|pass| total * libm::sqrt(f64::from(pass) / f64::from(passes)))
        .collect()
}

/// At every how many lines of the thread dial may the half nuts be closed? The smallest count of lines over which the carriage
/// moves a whole number of leads; nothing where one turn of the dial is not enough: then leave the half nuts closed and reverse.
///
/// k W p / L has to be a whole number of leads: W teeth of the dial's wheel, p pitch of the leadscrew, L lines on the dial.
/// Source: geometry; it gives the usual rule of a leadscrew of 8 per inch, 32 teeth and 8 lines.
///
/// ```
/// use benchslate_core::{cutting::dial_lines, quantity::Pitch};
/// let lines = |tpi| dial_lines(Pitch::from_tpi(tpi), Pitch::from_tpi(8.0), 32, 8);
/// assert_eq!(lines(16.0), Some(1)); // even: any line
/// assert_eq!(lines(13.0), Some(2)); // odd: any numbered line
/// assert_eq!(lines(11.5), Some(4)); // half threads: every other numbered line
/// ```
pub fn dial_lines(lead: Pitch, leadscrew: Pitch, wheel_teeth: u32, lines: u32) -> Option<u32> {
    if lead.mm() <= 0.0 || leadscrew.mm() <= 0.0 || wheel_teeth == 0 || lines == 0 {
        return None;
    }
    let leads_per_line = f64::from(wheel_teeth) * leadscrew.mm() / (f64::from(lines) * lead.mm());
    (1..=lines).find(|count| {
        let leads = leads_per_line * f64::from(*count);
        (leads - libm::round(leads)).abs() < 1e-6
    })
}
