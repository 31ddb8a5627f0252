//! How strong is a screw of this grade at this size: proof, yield and tensile strength, or why there is no figure?

use super::{bolt_strength_inch, bolt_strength_metric};
use crate::quantity::{Length, Stress, System};

/// One grade or property class over one range of sizes.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct BoltStrength {
    /// Key of the grade, stable: it stands in links.
    pub grade: &'static str,
    /// Least size, included.
    pub from: Length,
    /// Largest size, included.
    pub to: Length,
    /// Proof strength: the stress a screw bears without taking a set. `None`: the standard defines none.
    pub proof: Option<Stress>,
    /// Least yield strength (0.2 % stress). `None`: no verified source.
    pub yield_min: Option<Stress>,
    /// Least tensile strength.
    pub tensile: Stress,
}

/// A grade as a person names it.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Grade {
    /// Key, stable.
    pub key: &'static str,
    /// Name on screen.
    pub name: &'static str,
    /// The standard that sets it.
    pub standard: &'static str,
    /// Which threads it is made for.
    pub system: System,
    /// What the head shows.
    pub mark: &'static str,
    /// Stainless: it galls on itself.
    pub stainless: bool,
    /// Why our figures end before the standard does; empty where they span all that it defines.
    pub beyond: &'static str,
    /// What a user of the figures has to know, a sentence; or nothing.
    pub says: &'static str,
}

/// Why there is no strength to give.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum NoStrength {
    /// No grade has this key.
    UnknownGrade,
    /// The standard does not define this grade at this size.
    SizeNotDefined {
        /// Least size that it does define.
        from: Length,
        /// Largest size that it does define.
        to: Length,
    },
    /// Our figures end below this size; the standard may go on.
    FiguresEnd {
        /// Largest size that we have.
        to: Length,
    },
}

const fn grade_of(
    standard: &'static str,
    system: System,
    key: &'static str,
    name: &'static str,
    mark: &'static str,
) -> Grade {
    Grade {
        key,
        name,
        standard,
        system,
        mark,
        stainless: false,
        beyond: "",
        says: "",
    }
}
const fn sae(key: &'static str, name: &'static str, mark: &'static str) -> Grade {
    grade_of("SAE J429", System::Inch, key, name, mark)
}
const fn astm(
    standard: &'static str,
    key: &'static str,
    name: &'static str,
    mark: &'static str,
) -> Grade {
    grade_of(standard, System::Inch, key, name, mark)
}
const fn iso(key: &'static str, name: &'static str, mark: &'static str) -> Grade {
    grade_of("ISO 898-1", System::Metric, key, name, mark)
}
const fn stainless(
    standard: &'static str,
    system: System,
    key: &'static str,
    name: &'static str,
    mark: &'static str,
) -> Grade {
    Grade {
        stainless: true,
        says: "The standard defines no proof load for stainless screws.",
        ..grade_of(standard, system, key, name, mark)
    }
}
const fn a2(key: &'static str, name: &'static str, mark: &'static str) -> Grade {
    stainless("ISO 3506-1", System::Metric, key, name, mark)
}
const fn f593(key: &'static str, name: &'static str, mark: &'static str) -> Grade {
    stainless("ASTM F593", System::Inch, key, name, mark)
}
const BY_AGREEMENT: &str = "above it the strength is agreed with the maker";

/// Every grade, in the order a person looks for them. Head marks: SAE J429, ASTM and ISO 898-1 (common practice).
#[rustfmt::skip]
pub const GRADES: &[Grade] = &[
    sae("sae-1", "SAE grade 1", "no lines on the head"),
    sae("sae-2", "SAE grade 2", "no lines on the head"),
    sae("sae-4", "SAE grade 4 (studs)", "no lines; studs only"),
    sae("sae-5", "SAE grade 5", "three lines, 120° apart"),
    sae("sae-5.2", "SAE grade 5.2", "three lines, close together"),
    sae("sae-7", "SAE grade 7", "five lines"),
    sae("sae-8", "SAE grade 8", "six lines"),
    astm("ASTM A574", "a574", "Alloy socket head (ASTM A574)", "hex socket, black"),
    Grade { says: "The standard defines no proof load for A307; 33 ksi is a textbook's, to 1-1/2 in.", ..astm("ASTM A307", "a307", "ASTM A307", "307A or 307B") },
    Grade { says: "A325 marked from 2015 on (F3125) keeps 120 ksi above 1 in.", ..astm("ASTM A325", "a325", "ASTM A325, before 2015", "A325") },
    astm("ASTM F3125", "f3125-a325", "ASTM A325 of F3125, from 2015", "A325"),
    astm("ASTM A354", "a354-bc", "ASTM A354 BC", "BC"),
    astm("ASTM A354", "a354-bd", "ASTM A354 BD", "BD, often six lines"),
    astm("ASTM A449", "a449", "ASTM A449", "A449, three lines"),
    astm("ASTM A490", "a490", "ASTM A490, also of F3125", "A490"),
    f593("f593-a", "Stainless F593 A or E, annealed", "F593A, F593E"),
    f593("f593-b", "Stainless F593 B or F, annealed", "F593B, F593F"),
    f593("f593-cw", "Stainless F593 C, D, G or H, cold worked", "F593C, F593G to 5/8 in; F593D, F593H above"),
    iso("4.6", "Class 4.6", "4.6"),
    iso("4.8", "Class 4.8", "4.8"),
    iso("5.6", "Class 5.6", "5.6"),
    iso("5.8", "Class 5.8", "5.8"),
    iso("6.8", "Class 6.8", "6.8"),
    iso("8.8", "Class 8.8", "8.8"),
    iso("9.8", "Class 9.8", "9.8"),
    iso("10.9", "Class 10.9", "10.9"),
    iso("12.9", "Class 12.9 (usual socket head)", "12.9"),
    a2("a2-50", "Stainless A2-50 or A4-50", "A2-50, A4-50"),
    Grade { beyond: BY_AGREEMENT, ..a2("a2-70", "Stainless A2-70 or A4-70", "A2-70, A4-70") },
    Grade { beyond: BY_AGREEMENT, ..a2("a2-80", "Stainless A2-80 or A4-80", "A2-80, A4-80") },
];

/// The rows of both systems.
pub fn rows() -> impl Iterator<Item = &'static BoltStrength> {
    bolt_strength_inch::ROWS
        .iter()
        .chain(bolt_strength_metric::ROWS)
}

/// The grade with this key.
pub fn grade(key: &str) -> Option<&'static Grade> {
    GRADES.iter().find(|g| g.key == key)
}

/// The strength of a grade at a size. The ranges of a grade join: a size between two listed ones belongs to the upper
/// range, a size on a boundary to the one that ends there.
///
/// # Errors
/// An unknown grade; a size for which the standard does not define it, or past the end of our figures.
///
/// ```
/// use benchslate_core::quantity::Length;
/// use benchslate_core::standards::bolts::bolt_strength::strength;
/// // SAE J429 grade 5: 85 ksi proof to 1 in.
/// let row = strength("sae-5", Length::from_inches(0.5)).unwrap();
/// assert!((row.proof.unwrap().ksi() - 85.0).abs() < 1e-9);
/// ```
pub fn strength(key: &str, size: Length) -> Result<&'static BoltStrength, NoStrength> {
    let of_grade = || rows().filter(|r| r.grade == key);
    let grade = grade(key).ok_or(NoStrength::UnknownGrade)?;
    let ends = |pick: fn(Length, Length) -> Length, of: fn(&BoltStrength) -> Length| {
        of_grade()
            .map(of)
            .reduce(pick)
            .ok_or(NoStrength::UnknownGrade)
    };
    let (from, to) = (ends(Length::min, |r| r.from)?, ends(Length::max, |r| r.to)?);
    let slack = Length::from_mm(1e-6);
    if size < from - slack {
        return Err(NoStrength::SizeNotDefined { from, to });
    }
    of_grade()
        .find(|r| size <= r.to + slack)
        .ok_or(if grade.beyond.is_empty() {
            NoStrength::SizeNotDefined { from, to }
        } else {
            NoStrength::FiguresEnd { to }
        })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_grade_has_rows_and_every_row_a_grade() {
        for g in GRADES {
            assert!(rows().any(|r| r.grade == g.key), "{}", g.key);
        }
        for r in rows() {
            assert!(grade(r.grade).is_some(), "{}", r.grade);
        }
    }

    #[test]
    fn ranges_of_a_grade_rise_and_join() {
        for g in GRADES {
            let of: Vec<_> = rows().filter(|r| r.grade == g.key).collect();
            for pair in of.windows(2) {
                assert!(pair[0].to < pair[1].from, "{}", g.key);
                assert!(pair[1].from <= pair[0].to * 1.3, "{}: a gap", g.key);
            }
        }
    }

    #[test]
    fn proof_lies_below_yield_and_yield_below_tensile() {
        for r in rows() {
            assert!(r.from <= r.to, "{}", r.grade);
            if let Some(p) = r.proof {
                assert!(p < r.tensile, "{}", r.grade);
                if let Some(y) = r.yield_min {
                    assert!(p < y && y < r.tensile, "{}", r.grade);
                }
            }
        }
    }

    #[test]
    fn steps_fall_where_the_standards_put_them() {
        let proof = |g: &str, mm: f64| {
            strength(g, Length::from_mm(mm)).map(|r| r.proof.map(|p| libm::round(p.mpa())))
        };
        assert_eq!(proof("8.8", 16.0), Ok(Some(580.0)));
        assert_eq!(proof("8.8", 18.0), Ok(Some(600.0)));
        assert!(matches!(
            proof("9.8", 18.0),
            Err(NoStrength::SizeNotDefined { .. })
        ));
        let ksi = |g: &str, inch: f64| {
            strength(g, Length::from_inches(inch)).map(|r| r.proof.map(|p| libm::round(p.ksi())))
        };
        assert_eq!(ksi("sae-2", 0.75), Ok(Some(55.0)));
        assert_eq!(ksi("sae-2", 0.875), Ok(Some(33.0)));
        assert_eq!(ksi("sae-5", 1.0), Ok(Some(85.0)));
        assert_eq!(ksi("sae-5", 1.125), Ok(Some(74.0)));
        assert_eq!(ksi("a574", 0.5), Ok(Some(140.0)));
        assert_eq!(ksi("a574", 0.625), Ok(Some(135.0)));
        assert_eq!(ksi("a325", 0.5), Ok(Some(85.0)));
        assert_eq!(ksi("a325", 1.0), Ok(Some(85.0)));
        assert_eq!(ksi("a325", 1.0625), Ok(Some(74.0))); // between the listed sizes: the upper range
        assert_eq!(ksi("a449", 1.625), Ok(Some(55.0)));
        assert_eq!(ksi("none", 0.5), Err(NoStrength::UnknownGrade));
        assert!(matches!(
            strength("a2-70", Length::from_mm(27.0)),
            Err(NoStrength::FiguresEnd { .. })
        ));
        assert!(matches!(
            strength("a2-70", Length::from_mm(1.4)),
            Err(NoStrength::SizeNotDefined { .. })
        ));
    }
}
