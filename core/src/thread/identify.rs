//! Which thread is this, from a measured diameter and a counted or measured pitch? Ranked, with what tells them apart.

use super::{ThreadCall, minor_diameter};
use crate::quantity::{Angle, Length, Pitch};
use crate::standards::look_alike_threads::{LOOK_ALIKES, LookAlike, LookAlikeSeries};

/// What was measured across.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Across {
    /// Over the crests of a screw.
    Screw,
    /// The bore of a tapped hole.
    Bore,
}

/// A thread that the measured one may be.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Standard {
    /// Unified or metric, 60 degrees.
    Thread(ThreadCall),
    /// One that looks like it.
    LookAlike(LookAlike),
}

impl Standard {
    /// As it is called.
    pub fn name(&self) -> String {
        match self {
            Self::Thread(thread) => thread.to_string(),
            Self::LookAlike(other) => other.name(),
        }
    }
    /// Its major diameter.
    pub const fn major(&self) -> Length {
        match self {
            Self::Thread(thread) => thread.major,
            Self::LookAlike(other) => other.major,
        }
    }
    /// Its pitch.
    pub const fn pitch(&self) -> Pitch {
        match self {
            Self::Thread(thread) => thread.pitch,
            Self::LookAlike(other) => other.pitch,
        }
    }
    /// Its included angle.
    pub const fn angle(&self) -> Angle {
        match self {
            Self::Thread(_) => Angle::from_degrees(60.0),
            Self::LookAlike(other) => other.series.angle(),
        }
    }
    /// Its basic bore.
    pub fn bore(&self) -> Length {
        match self {
            Self::Thread(thread) => minor_diameter(*thread),
            Self::LookAlike(other) => {
                other.major - other.pitch.length() * (2.0 * other.series.depth())
            }
        }
    }
    /// The standard that has it.
    pub const fn source(&self) -> &'static str {
        match self {
            Self::Thread(thread) if thread.series.is_metric() => "ISO 261",
            Self::Thread(_) => "ASME B1.1",
            Self::LookAlike(other) => other.series.standard(),
        }
    }
    /// How usual it is: 0 coarse, 1 fine, 2 the rest. Ties go to the usual one.
    const fn rarity(&self) -> u8 {
        use super::ThreadSeries::{MetricCoarse, MetricFine, Unc, Unf};
        match self {
            Self::Thread(thread) => match thread.series {
                Unc | MetricCoarse => 0,
                Unf | MetricFine => 1,
                _ => 2,
            },
            Self::LookAlike(other) => match other.series {
                LookAlikeSeries::Bsw => 1,
                _ => 2,
            },
        }
    }
}

/// A candidate with how far it is from what was measured.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Candidate {
    /// The thread.
    pub standard: Standard,
    /// Measured less basic diameter (major of the screw, bore of the hole).
    pub off_diameter: Length,
    /// Measured less basic pitch.
    pub off_pitch: Pitch,
    /// How badly it fits; below 1 both are within what tolerance and a rule allow.
    pub misfit: f64,
}

/// The threads that fit a measured diameter and pitch best, best first, at most so many.
///
/// A screw is made under its basic size and a bore over it, so the room for the difference is one-sided: 0.09 ∛P²
/// (in inches, the loosest class of ASME B1.1) plus 0.05 P of wear and burr to that side, 0.02 P to the other. A
/// pitch may be 1.5 % off (a count over an inch). What is beyond counts in multiples of that room.
pub fn identify(across: Across, measured: Length, pitch: Pitch, most: usize) -> Vec<Candidate> {
    let threads = ThreadCall::all().into_iter().map(Standard::Thread);
    let others = LOOK_ALIKES.iter().map(|other| Standard::LookAlike(*other));
    let mut found: Vec<Candidate> = threads
        .chain(others)
        // what its pitch alone rules out: the misfit below is never less
        .filter(|standard| {
            let basic = standard.pitch().mm();
            0.75 * ((pitch.mm() - basic).abs() / basic / 0.015) < 12.5
        })
        .map(|standard| candidate(standard, across, measured, pitch))
        .filter(|one| one.misfit < 12.0)
        .collect();
    crate::order::sort_by(&mut found, |a, b| {
        a.misfit
            .total_cmp(&b.misfit)
            .then(a.standard.rarity().cmp(&b.standard.rarity()))
    });
    found.truncate(most);
    // Two that fit badly are enough to see that nothing fits.
    let fitting = found.iter().filter(|one| one.misfit < 6.0).count();
    found.truncate(if fitting < 2 { 2 } else { fitting });
    found
}

fn candidate(standard: Standard, across: Across, measured: Length, pitch: Pitch) -> Candidate {
    let p = standard.pitch();
    let basic = match across {
        Across::Screw => standard.major(),
        Across::Bore => standard.bore(),
    };
    let off_diameter = measured - basic;
    let off_pitch = pitch - p;
    let tolerance = 0.09 * libm::cbrt(p.inches() * p.inches()) * 25.4;
    let (worn, over) = (tolerance + 0.05 * p.mm(), 0.02 * p.mm());
    // Positive to the side where metal is missing.
    let missing = match across {
        Across::Screw => -off_diameter.mm(),
        Across::Bore => off_diameter.mm(),
    };
    // The middle of the tolerance is the likeliest place; half of the room lies to each side of it.
    let middle = (worn - over) / 2.0;
    let half = f64::midpoint(worn, over);
    let diameter = (missing - middle).abs() / half;
    let relative = (off_pitch.mm() / p.mm()).abs() / 0.015;
    let misfit = if diameter > relative {
        diameter
    } else {
        relative
    };
    Candidate {
        standard,
        off_diameter,
        off_pitch,
        misfit: f64::midpoint(misfit, f64::midpoint(diameter, relative)),
    }
}
