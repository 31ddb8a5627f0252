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
    /// The size that its step goes up to, that size included, in hundredths of an inch.
    pub to: u16,
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

const fn step(to_in: f64) -> u16 {
    (to_in * 100.0 + 0.5) as u16
}

const fn hundredths(thou: f64) -> i16 {
    (thou * 100.0 + if thou < 0.0 { -0.5 } else { 0.5 }) as i16
}

impl Row {
    /// The size that its step goes up to, that size included, inches.
    pub fn to_in(&self) -> f64 {
        f64::from(self.to) / 100.0
    }
}

pub(super) const fn read(to_in: f64, hole_upper: f64, shaft_upper: f64, shaft_lower: f64) -> Row {
    Row {
        to: step(to_in),
        hole_upper: hundredths(hole_upper),
        shaft_upper: hundredths(shaft_upper),
        shaft_lower: hundredths(shaft_lower),
        read: Certainty::Read,
    }
}

pub(super) const fn memory(to_in: f64, hole_upper: f64, shaft_upper: f64, shaft_lower: f64) -> Row {
    Row {
        read: Certainty::FromMemory,
        ..read(to_in, hole_upper, shaft_upper, shaft_lower)
    }
}

pub(super) const fn gap(to_in: f64) -> Row {
    Row {
        to: step(to_in),
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

    /// Upper ends of the size steps, inches; all classes of a series have the same.
    pub fn steps(self) -> impl Iterator<Item = f64> {
        self.classes()
            .first()
            .into_iter()
            .flat_map(|rows| rows.iter().map(Row::to_in))
    }

    /// The shaft limits (upper, lower; thousandths) of the one print that differs from the rows kept, in the step that goes up to
    /// that size; `None` where no print differs.
    pub fn other_print(self, number: u8, row: &Row) -> Option<(f64, f64)> {
        OTHER_PRINT
            .iter()
            .find(|(class, to, ..)| self == Self::Rc && *class == number && step(*to) == row.to)
            .map(|(.., upper, lower)| (*upper, *lower))
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_class_has_the_steps_of_its_series() {
        for series in [Series::Rc, Series::Lc, Series::Lt, Series::Ln, Series::Fn] {
            let steps: Vec<f64> = series.steps().collect();
            assert!(steps.windows(2).all(|pair| pair[0] < pair[1]));
            assert_eq!(steps.last(), Some(&19.69), "{series:?}");
            for rows in series.classes() {
                let own: Vec<f64> = rows.iter().map(Row::to_in).collect();
                assert_eq!(own, steps[..own.len()], "{series:?}");
            }
        }
    }
}
