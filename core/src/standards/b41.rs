//! Which limits does ANSI B4.1 (inch) give a class of fit at a size?
//!
//! ANSI B4.1-1967 (preferred limits and fits for cylindrical parts). Thousandths of an inch are authoritative; size
//! steps are "over … up to and including", inches. The figures stand in one file a series: `b41_rc` … `b41_fn`.

use super::{
    b41_fn::FN,
    b41_lc::LC,
    b41_ln::LN,
    b41_lt::LT,
    b41_rc::{OTHER_PRINT, RC},
};

/// Upper ends of the size steps of RC, LC, LT and LN, inches.
pub const STEPS: [f64; 13] = [
    0.12, 0.24, 0.40, 0.71, 1.19, 1.97, 3.15, 4.73, 7.09, 9.85, 12.41, 15.75, 19.69,
];
/// Upper ends of the size steps of FN, inches.
pub const FINE_STEPS: [f64; 25] = [
    0.12, 0.24, 0.40, 0.56, 0.71, 0.95, 1.19, 1.58, 1.97, 2.56, 3.15, 3.94, 4.73, 5.52, 6.30, 7.09,
    7.88, 8.86, 9.85, 11.03, 12.41, 13.98, 15.75, 17.72, 19.69,
];

/// The five series.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum Series {
    /// Running and sliding.
    Rc,
    /// Locational, clearance.
    Lc,
    /// Locational, transition.
    Lt,
    /// Locational, interference.
    Ln,
    /// Force and shrink.
    Fn,
}

/// Limits of one class in one size step, in hundredths of a thousandth of an inch; the hole's lower limit is 0.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Row {
    /// Upper limit of the hole.
    pub hole_upper: i16,
    /// Upper limit of the shaft.
    pub shaft_upper: i16,
    /// Lower limit of the shaft.
    pub shaft_lower: i16,
    /// How sure the figures are.
    pub read: Certainty,
}

/// How a row came here.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Certainty {
    /// Read in print; the clearances printed beside it agree.
    Read,
    /// Recalled; agrees with the grade arithmetic of the standard.
    FromMemory,
    /// Nothing to hand.
    Missing,
}

const fn hundredths(thou: f64) -> i16 {
    (thou * 100.0 + if thou < 0.0 { -0.5 } else { 0.5 }) as i16
}

pub(super) const fn read(hole_upper: f64, shaft_upper: f64, shaft_lower: f64) -> Row {
    Row {
        hole_upper: hundredths(hole_upper),
        shaft_upper: hundredths(shaft_upper),
        shaft_lower: hundredths(shaft_lower),
        read: Certainty::Read,
    }
}

pub(super) const fn memory(hole_upper: f64, shaft_upper: f64, shaft_lower: f64) -> Row {
    Row {
        read: Certainty::FromMemory,
        ..read(hole_upper, shaft_upper, shaft_lower)
    }
}

pub(super) const fn gap() -> Row {
    Row {
        hole_upper: 0,
        shaft_upper: 0,
        shaft_lower: 0,
        read: Certainty::Missing,
    }
}

impl Series {
    /// The class numbers' rows, first class first; each class has a row a size step as far as it is to hand.
    pub const fn classes(self) -> &'static [&'static [Row]] {
        match self {
            Self::Rc => &RC,
            Self::Lc => &LC,
            Self::Lt => &LT,
            Self::Ln => &LN,
            Self::Fn => &FN,
        }
    }

    /// Upper ends of the size steps, inches.
    pub const fn steps(self) -> &'static [f64] {
        match self {
            Self::Fn => &FINE_STEPS,
            _ => &STEPS,
        }
    }

    /// The shaft limits (upper, lower; thousandths) of the one print that differs from the rows kept, in the step at that place of
    /// [`Self::steps`]; `None` where no print differs.
    pub fn other_print(self, number: u8, step: usize) -> Option<(f64, f64)> {
        let at = step.checked_sub(10)?;
        let (_, limits) = OTHER_PRINT
            .iter()
            .find(|(class, _)| self == Self::Rc && *class == number)?;
        limits.get(at).copied()
    }

    /// Where a class starts, as the standard's table prints it: LT3 and LT4 above 0.24 in, FN3 above 0.95 in, the rest at 0.
    pub const fn starts_above(self, number: u8) -> f64 {
        match (self, number) {
            (Self::Lt, 3 | 4) => 0.24,
            (Self::Fn, 3) => 0.95,
            _ => 0.0,
        }
    }
}
