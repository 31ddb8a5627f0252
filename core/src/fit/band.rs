//! What do the limits of hole and shaft give together: how loose, how tight, what kind of fit?

use crate::quantity::Length;

/// Limit deviations: what is added to the nominal size. Both carry their sign.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Limits {
    /// Upper limit deviation (ES of a hole, es of a shaft).
    pub upper: Length,
    /// Lower limit deviation (EI, ei).
    pub lower: Length,
}

impl Limits {
    /// The largest size allowed.
    pub fn largest(&self, nominal: Length) -> Length {
        nominal + self.upper
    }

    /// The smallest size allowed.
    pub fn smallest(&self, nominal: Length) -> Length {
        nominal + self.lower
    }

    /// The width of the zone.
    pub fn tolerance(&self) -> Length {
        self.upper - self.lower
    }
}

/// The kind of a fit.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum KindOfFit {
    /// Always room between the parts (or, at the limit, none).
    Clearance,
    /// Room or interference, as the parts come out.
    Transition,
    /// The shaft is always the larger.
    Interference,
}

impl KindOfFit {
    /// The trade's word.
    pub const fn text(self) -> &'static str {
        match self {
            Self::Clearance => "clearance fit",
            Self::Transition => "transition fit",
            Self::Interference => "interference fit",
        }
    }
}

/// The band of a fit on the diameter: hole less shaft, so that interference is negative.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Band {
    /// Limits of the hole.
    pub hole: Limits,
    /// Limits of the shaft.
    pub shaft: Limits,
    /// Largest hole less smallest shaft.
    pub max_clearance: Length,
    /// Smallest hole less largest shaft.
    pub min_clearance: Length,
}

impl Band {
    /// From the limits of both members.
    pub fn of(hole: Limits, shaft: Limits) -> Self {
        Self {
            hole,
            shaft,
            max_clearance: hole.upper - shaft.lower,
            min_clearance: hole.lower - shaft.upper,
        }
    }

    /// Clearance where the least is not below 0, interference where the most is not above 0, else transition
    /// (ISO 286-1:2010, 3.3). A hundredth of a micrometre is taken as 0.
    pub fn kind(&self) -> KindOfFit {
        const NOISE_UM: f64 = 0.01;
        if self.min_clearance.um() >= -NOISE_UM {
            KindOfFit::Clearance
        } else if self.max_clearance.um() <= NOISE_UM {
            KindOfFit::Interference
        } else {
            KindOfFit::Transition
        }
    }

    /// Where between tightest (0) and loosest (1) a measured clearance lies; outside 0 … 1 it is outside the band.
    pub fn place(&self, clearance: Length) -> f64 {
        (clearance - self.min_clearance) / (self.max_clearance - self.min_clearance)
    }
}
