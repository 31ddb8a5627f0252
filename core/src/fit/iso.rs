//! What are the limits of an ISO 286 class at a size, and what does a hole and shaft give together?

use super::band::{Band, Limits};
use super::class::{FitClass, Letter, Member};
use super::fault::{FitFault, Why};
use crate::quantity::Length;
use crate::standards::fits::iso286_deviations::{
    BETWEEN, BetweenStep, DEVIATIONS, DeviationStep, NONE,
};
use crate::standards::fits::iso286_grades::{GRADES, GradeStep};

/// A twentieth of a micrometre: half of the finest grade's last digit is still whole.
const PER_UM: i32 = 20;

/// Sizes that differ by less than this are one size: 1.9685 in must not leave its step by a rounding.
const NOISE_MM: f64 = 1e-9;

struct Steps {
    size_mm: f64,
    grade: &'static GradeStep,
    fine: &'static DeviationStep,
    between: &'static BetweenStep,
}

/// Limit deviations of one class at a nominal size. A size on a boundary belongs to the lower step.
///
/// ```
/// use benchslate_core::{fit::{FitClass, Letter, iso}, quantity::Length};
/// let m6 = FitClass::shaft(Letter::M, 6).unwrap();
/// let limits = iso::limits(Length::from_mm(6.0), &m6).unwrap();
/// assert_eq!((limits.upper.um(), limits.lower.um()), (12.0, 4.0)); // ISO 286-2:2010, m6 over 3 to 6
/// ```
///
/// - Shafts a … h: es is the tabulated deviation, ei = es - IT. Shafts k … zc: ei is tabulated, es = ei + IT.
/// - Holes A … H: EI is the shaft's es with the other sign. Holes K … ZC: ES = -ei + delta, where
///   delta = IT(n) - IT(n-1) for K, M, N to IT8 and P … ZC to IT7, and 0 to 3 mm.
/// - JS, js: half of the grade either way, not rounded. M6 over 250 to 315 is -9, not -11. N9 and coarser is 0 above 3 mm.
///
/// Range: above 0 to 500 mm, IT01 … IT18. Source: ISO 286-1:2010, Tables 1 to 5.
///
/// # Errors
/// [`FitFault::IsoNotDefined`] where the standard has no value, [`FitFault::IsoSizeAbove500`] past the tables.
pub fn limits(size: Length, class: &FitClass) -> Result<Limits, FitFault> {
    let steps = steps(size)?;
    let twentieths = |why| FitFault::IsoNotDefined(*class, why);
    if steps.size_mm <= 1.0 && class.grade.number() >= 14 {
        return Err(twentieths(Why::CoarseGradeTo1mm));
    }
    let width = steps.width(class.grade.number());
    let (upper, lower) = match class.member {
        Member::Shaft => steps.shaft(*class, width),
        Member::Hole => steps.hole(*class, width),
    }
    .map_err(twentieths)?;
    Ok(Limits {
        upper: length(upper),
        lower: length(lower),
    })
}

/// The width of a grade at a size. Range and errors as [`limits`].
///
/// # Errors
/// [`FitFault::SizeNotPositive`] and [`FitFault::IsoSizeAbove500`].
pub fn width(size: Length, grade: super::Grade) -> Result<Length, FitFault> {
    Ok(length(steps(size)?.width(grade.number())))
}

/// What a hole and a shaft of one nominal size give together; interference is negative clearance.
///
/// # Errors
/// As [`limits`], and [`FitFault::NeedsHoleAndShaft`] where the classes are not one of each.
pub fn fit(size: Length, hole: &FitClass, shaft: &FitClass) -> Result<Band, FitFault> {
    if hole.member != Member::Hole || shaft.member != Member::Shaft {
        return Err(FitFault::NeedsHoleAndShaft);
    }
    Ok(Band::of(limits(size, hole)?, limits(size, shaft)?))
}

fn length(twentieths: i32) -> Length {
    Length::from_mm(f64::from(twentieths) / f64::from(PER_UM * 1000))
}

fn steps(size: Length) -> Result<Steps, FitFault> {
    let size_mm = size.mm() - NOISE_MM;
    if size.mm().is_nan() || size_mm <= 0.0 {
        return Err(FitFault::SizeNotPositive);
    }
    let within = |to: u16| size_mm <= f64::from(to);
    let grade = GRADES.iter().find(|s| within(s.to_mm));
    let fine = DEVIATIONS.iter().find(|s| within(s.to_mm));
    let between = BETWEEN.iter().find(|s| within(s.to_mm));
    match (grade, fine, between) {
        (Some(grade), Some(fine), Some(between)) => Ok(Steps {
            size_mm,
            grade,
            fine,
            between,
        }),
        _ => Err(FitFault::IsoSizeAbove500),
    }
}

impl Steps {
    fn width(&self, grade: i8) -> i32 {
        self.grade.twentieths(grade).unwrap_or(0)
    }

    /// Delta of holes: the grade less the next finer one, nothing to 3 mm.
    fn delta(&self, grade: i8, coarsest: i8) -> i32 {
        if self.grade.to_mm == 3 || grade > coarsest {
            return 0;
        }
        self.width(grade) - self.width(grade.saturating_sub(1))
    }

    /// The tabulated magnitude of a letter in twentieths.
    fn magnitude(&self, letter: Letter) -> Result<i32, Why> {
        use Letter::{A, B, Cd, Ef, Fg, T, V, Y};
        if self.size_mm <= 1.0 && matches!(letter, A | B) {
            return Err(Why::LettersABTo1mm);
        }
        let um = match letter {
            Cd | Ef | Fg => self
                .between
                .between
                .get(usize::from(letter > Cd) + usize::from(letter > Ef)),
            other => column(other).and_then(|at| self.fine.um.get(at)),
        };
        match um {
            Some(&um) if um != NONE => Ok(i32::from(um) * PER_UM),
            _ => Err(match letter {
                T => Why::LetterStartsAbove(24),
                V => Why::LetterStartsAbove(14),
                Y => Why::LetterStartsAbove(18),
                _ => Why::LetterEndsAt50,
            }),
        }
    }

    fn shaft(&self, class: FitClass, it: i32) -> Result<(i32, i32), Why> {
        let grade = class.grade.number();
        let from_below = |ei: i32| (ei + it, ei);
        Ok(match class.letter {
            Letter::H => (0, -it),
            Letter::Js => (it / 2, -it / 2),
            Letter::J => from_below(-j(
                self.between.j,
                grade.saturating_sub(if grade == 5 { 5 } else { 6 }),
            )?),
            Letter::K if !(4..=7).contains(&grade) => from_below(0),
            letter if letter < Letter::H => {
                let es = -self.magnitude(letter)?;
                (es, es - it)
            }
            letter => from_below(self.magnitude(letter)?),
        })
    }

    fn hole(&self, class: FitClass, it: i32) -> Result<(i32, i32), Why> {
        use Letter::{H, J, Js, K, M, N};
        let (letter, grade) = (class.letter, class.grade.number());
        let to_3mm = self.grade.to_mm == 3;
        let from_above = |es: i32| (es, es - it);
        if letter >= K && grade < 3 {
            return Err(Why::HoleBelowIt3);
        }
        Ok(match letter {
            H => (it, 0),
            Js => (it / 2, -it / 2),
            J => from_above(j(self.between.hole_j, grade.saturating_sub(6))?),
            K if grade > 8 && !to_3mm => return Err(Why::GradeOfK),
            M if grade == 6 && self.grade.to_mm == 315 => from_above(-9 * PER_UM),
            N if grade > 8 && self.size_mm <= 1.0 => return Err(Why::CoarseNTo1mm),
            N if grade > 8 && !to_3mm => from_above(0),
            letter if letter < H => {
                let ei = self.magnitude(letter)?;
                (ei + it, ei)
            }
            letter => {
                let coarsest = if letter <= N { 8 } else { 7 };
                from_above(self.delta(grade, coarsest) - self.magnitude(letter)?)
            }
        })
    }
}

/// A tabulated j or J, in twentieths; `at` counts the grades that have one.
fn j(row: [u16; 3], at: i8) -> Result<i32, Why> {
    let value = usize::try_from(at).ok().and_then(|at| row.get(at).copied());
    value
        .filter(|&um| um != NONE)
        .map(|um| i32::from(um) * PER_UM)
        .ok_or(Why::GradeOfJ)
}

/// Column of the table of deviations; h, js, j and the letters between have none.
fn column(letter: Letter) -> Option<usize> {
    use crate::standards::fits::iso286_deviations::COLUMNS;
    let text = letter.text(Member::Shaft);
    COLUMNS.iter().position(|&c| c == text)
}
