//! What can be wrong with a question about a pin?

use crate::quantity::{Length, Taper};

/// Why there is no answer.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum PinFault {
    /// A size, load or length must be more than nothing; its name is given.
    NotPositive(&'static str),
    /// The pin would run to a point before its length is over.
    RunsToAPoint {
        /// The length at which it would.
        limit: Length,
    },
    /// The large end must be larger than the small end.
    NoTaper,
    /// The taper is that of no series: farther than 15 % from 1:48 and from 1:50.
    NotATaperPin {
        /// The taper, on the diameter.
        taper: Taper,
    },
    /// The series has nothing this large.
    BeyondSeries {
        /// Its largest size at this length, at the large end.
        largest: Length,
    },
}

/// `Ok` where the length is more than nothing.
pub(super) fn positive(length: Length, name: &'static str) -> Result<Length, PinFault> {
    if length.mm() > 0.0 {
        Ok(length)
    } else {
        Err(PinFault::NotPositive(name))
    }
}
