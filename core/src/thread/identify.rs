//! Which thread is this, from a measured diameter and a counted or measured pitch? Ranked, with what tells them apart.

use super::{Limits, ThreadCall, ThreadClass, ThreadSeries, limits, minor_diameter};
use crate::quantity::{Angle, Length, Pitch};
use crate::standards::threads::look_alike_threads::{LOOK_ALIKES, LookAlike, LookAlikeSeries};
use crate::standards::threads::unified;
use std::sync::LazyLock;

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
    /// Least and most size of a usual part as measured so: a screw over the crests (2A to the basic size, 6g to 6h, or what its
    /// standard has), a hole's minor diameter (2B, 6H); `None` where no limits are to hand.
    pub fn limits(&self, across: Across) -> Option<(Length, Length)> {
        match (self, across) {
            (Self::LookAlike(other), Across::Screw) => other.screw_limits(),
            (Self::LookAlike(other), Across::Bore) => other.hole_limits(),
            (Self::Thread(thread), across) => {
                let metric = thread.series.is_metric();
                let class = match (across, metric) {
                    (Across::Screw, false) => ThreadClass::A2,
                    (Across::Screw, true) => ThreadClass::G6,
                    (Across::Bore, false) => ThreadClass::B2,
                    (Across::Bore, true) => ThreadClass::H6,
                };
                match limits(*thread, class).ok()? {
                    Limits::External { major, .. } => Some((major.low, thread.major)),
                    Limits::Internal { minor, .. } => Some((minor.low, minor.high)),
                }
            }
        }
    }
    /// How usual it is: 0 coarse, 1 fine and what stands in for it, 2 the rest of the standard series, [`RARE`] obsolete ones and
    /// more special counts.
    pub const fn rarity(&self) -> u8 {
        use super::ThreadSeries::{MetricCoarse, MetricFine, Unc, Unf, Uns};
        match self {
            Self::Thread(thread) => match thread.series {
                Unc | MetricCoarse => 0,
                Unf | MetricFine => 1,
                // 1-14 was the fine thread of 1 in bolts
                Uns if thread.major.mm() > 25.3
                    && thread.pitch.mm() > 1.8
                    && thread.pitch.mm() < 1.83 =>
                {
                    1
                }
                Uns => RARE + 1,
                _ => 2,
            },
            Self::LookAlike(other) => match other.series {
                LookAlikeSeries::Bsw | LookAlikeSeries::Npt => 1,
                LookAlikeSeries::Asme1907 => RARE,
                _ => 2,
            },
        }
    }
}

/// From here on a thread is met on old machines and in special work alone.
pub const RARE: u8 = 3;

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
    /// Whether a usual part of it may measure so: the diameter within its limits, the pitch within 1.5 %.
    pub inside: bool,
}

impl Candidate {
    /// Under the least size (below zero) or over the most (above zero) of a usual part; zero within, or where no limits are to hand.
    pub fn outside(&self, across: Across, measured: Length) -> Length {
        match self.standard.limits(across) {
            Some((low, _)) if measured < low => measured - low,
            Some((_, high)) if measured > high => measured - high,
            _ => Length::ZERO,
        }
    }
}

/// The threads that fit a measured diameter and pitch best, best first, at most so many.
///
/// First those of which a usual part may measure so (the diameter within the limits of its class, the pitch within 1.5 %, as by a
/// count over an inch): the more usual series first. Then the rest, by how far they are off: a screw is made under its basic size
/// and a bore over it, so the room is one-sided, 0.09 ∛P² (in inches, the loosest class of ASME B1.1) plus 0.05 P of wear and burr
/// to that side, 0.02 P to the other. What is beyond counts in multiples of that room.
///
/// ```
/// use benchslate_core::{quantity::{Length, Pitch}, thread::{Across, identify}};
/// // ASME B1.1: class 2A of #12-24 runs from 0.2078 to 0.2150 in over the crests.
/// let found = identify(Across::Screw, Length::from_inches(0.2140), Pitch::from_tpi(24.0), 3);
/// assert_eq!(found[0].standard.name(), "#12-24 UNC");
/// ```
pub fn identify(across: Across, measured: Length, pitch: Pitch, most: usize) -> Vec<Candidate> {
    let mut found: Vec<Candidate> = standards()
        .iter()
        .copied()
        // what its pitch alone rules out: the misfit below is never less
        .filter(|standard| {
            let basic = standard.pitch().mm();
            0.75 * ((pitch.mm() - basic).abs() / basic / 0.015) < 12.5
        })
        .map(|standard| candidate(standard, across, measured, pitch))
        .filter(|one| one.inside || one.misfit < 12.0)
        .collect();
    let usual = |one: &Candidate| {
        if one.inside {
            one.standard.rarity()
        } else {
            u8::MAX
        }
    };
    // a worn usual thread is likelier than a rare one that happens to lie nearer
    let unlikely = |one: &Candidate| {
        if one.standard.rarity() >= RARE {
            one.misfit + 0.5
        } else {
            one.misfit
        }
    };
    crate::order::sort_by(&mut found, |a, b| {
        usual(a)
            .cmp(&usual(b))
            .then(unlikely(a).total_cmp(&unlikely(b)))
            .then(a.standard.rarity().cmp(&b.standard.rarity()))
    });
    found.truncate(most);
    // Two that fit badly are enough to see that nothing fits.
    let fitting = found
        .iter()
        .filter(|one| one.inside || one.misfit < 6.0)
        .count();
    found.truncate(if fitting < 2 { 2 } else { fitting });
    found
}

/// All that a measured thread may be, made once: the standard threads, the common special counts, and what looks like them.
fn standards() -> &'static [Standard] {
    static ALL: LazyLock<Vec<Standard>> = LazyLock::new(|| {
        let threads = ThreadCall::all().iter().copied().chain(specials());
        let others = LOOK_ALIKES.iter().map(|other| Standard::LookAlike(*other));
        threads.map(Standard::Thread).chain(others).collect()
    });
    &ALL
}

/// The common special counts as threads.
fn specials() -> impl Iterator<Item = ThreadCall> {
    unified::SPECIALS.iter().flat_map(|(major, counts)| {
        counts.iter().map(|&tpi| ThreadCall {
            series: ThreadSeries::Uns,
            major: Length::from_inches(*major),
            pitch: Pitch::from_tpi(f64::from(tpi)),
            class: None,
        })
    })
}

/// A last digit that is not held against a thread.
const NOISE: Length = Length::from_mm(0.001);

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
    // asked only of the few whose pitch fits: the limits cost more than all the rest
    let within = || match standard.limits(across) {
        Some((low, high)) => measured >= low - NOISE && measured <= high + NOISE,
        // where no limits are to hand, class 2A's tolerance (0.06 ∛P², inches) from the basic size
        None => (-NOISE.mm()..=tolerance * 2.0 / 3.0).contains(&missing),
    };
    Candidate {
        standard,
        inside: relative <= 1.0 + 1e-9 && within(),
        off_diameter,
        off_pitch,
        misfit: f64::midpoint(misfit, f64::midpoint(diameter, relative)),
    }
}
