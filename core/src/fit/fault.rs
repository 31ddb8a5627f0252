//! Why is there no figure for this fit?

use super::class::FitClass;
use super::inch::{InchClass, Series};
use core::fmt;

/// The reason that a fit has no limits here. "Not defined" is the standard's word; "no source" is ours.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum FitFault {
    /// The size is nothing or less.
    SizeNotPositive,
    /// ISO 286 sizes here end at 500 mm.
    IsoSizeAbove500,
    /// ISO 286 gives this class no value at this size.
    IsoNotDefined(FitClass, Why),
    /// A fit needs one hole and one shaft.
    NeedsHoleAndShaft,
    /// The inch table starts above this size for that class.
    InchNotDefined(InchClass),
    /// The inch standard has the class at this size, but no figure here has a source that was checked.
    InchNoSource(InchClass),
    /// Inch sizes here end at 19.69 in.
    InchSizeAboveTable,
}

/// What stands against an ISO class at a size.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Why {
    /// IT14 … IT18 are not used to 1 mm.
    CoarseGradeTo1mm,
    /// Letters a and b (A and B) are not used to 1 mm.
    LettersABTo1mm,
    /// N9 and coarser is not used to 1 mm.
    CoarseNTo1mm,
    /// The letter starts above this size.
    LetterStartsAbove(u8),
    /// cd, ef, fg end at 50 mm.
    LetterEndsAt50,
    /// j exists for grades 5, 6, 7 (and 8 to 3 mm); J for 6, 7, 8.
    GradeOfJ,
    /// K is for grades to 8 above 3 mm.
    GradeOfK,
    /// K … ZC have no delta below IT3.
    HoleBelowIt3,
}

impl fmt::Display for FitFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::SizeNotPositive => f.write_str("a fit needs a size above 0"),
            Self::IsoSizeAbove500 => {
                f.write_str("the ISO 286 tables here end at 500 mm (19.685 in)")
            }
            Self::IsoNotDefined(class, why) => {
                write!(f, "ISO 286 does not define {class} at this size: {why}")
            }
            Self::NeedsHoleAndShaft => {
                f.write_str("a fit is one hole and one shaft, such as H7/m6")
            }
            Self::InchNotDefined(class) => write!(
                f,
                "ANSI B4.1 does not define {class} at this size: it starts above {} in",
                if class.series == Series::Fn {
                    "0.95"
                } else {
                    "0.24"
                }
            ),
            Self::InchNoSource(class) => {
                write!(f, "we have no verified source for {class} at this size")
            }
            Self::InchSizeAboveTable => f.write_str("the ANSI B4.1 tables here end at 19.69 in"),
        }
    }
}

impl fmt::Display for Why {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::CoarseGradeTo1mm => f.write_str("IT14 to IT18 are not used up to 1 mm"),
            Self::LettersABTo1mm => f.write_str("letters a and b are not used up to 1 mm"),
            Self::CoarseNTo1mm => f.write_str("N9 and coarser is not used up to 1 mm"),
            Self::LetterStartsAbove(mm) => write!(f, "the letter starts above {mm} mm; u or x serve below"),
            Self::LetterEndsAt50 => f.write_str("cd, ef and fg end at 50 mm"),
            Self::GradeOfJ => f.write_str("shafts have j5, j6, j7 (j8 only to 3 mm), holes have J6, J7, J8; js has every grade"),
            Self::GradeOfK => f.write_str("above 3 mm hole K goes to grade 8"),
            Self::HoleBelowIt3 => f.write_str("holes K to ZC start at grade 3"),
        }
    }
}

impl core::error::Error for FitFault {}
