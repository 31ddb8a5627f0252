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
    /// Where the figures come from.
    pub source: &'static str,
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
}

const SHIGLEY_INCH: &str = "SAE J429, as in Shigley's Mechanical Engineering Design, Table 8-9";
const ASTM: &str = "ASTM, as in Shigley & Mischke, 5th ed., p. 341 ff.";
const ISO_898: &str = "ISO 898-1:2013, Table 3 (minimum values)";
const ISO_3506: &str = "ISO 3506-1 (A1 to A5), 0.2 % stress";

const fn inch(key: &'static str, name: &'static str, mark: &'static str) -> Grade {
    Grade {
        key,
        name,
        standard: "SAE J429",
        system: System::Inch,
        mark,
        source: SHIGLEY_INCH,
    }
}
const fn astm(key: &'static str, name: &'static str, mark: &'static str) -> Grade {
    Grade {
        key,
        name,
        standard: "ASTM",
        system: System::Inch,
        mark,
        source: ASTM,
    }
}
const fn iso(key: &'static str, name: &'static str, mark: &'static str) -> Grade {
    Grade {
        key,
        name,
        standard: "ISO 898-1",
        system: System::Metric,
        mark,
        source: ISO_898,
    }
}
const fn stainless(key: &'static str, name: &'static str, mark: &'static str) -> Grade {
    Grade {
        key,
        name,
        standard: "ISO 3506-1",
        system: System::Metric,
        mark,
        source: ISO_3506,
    }
}

/// Every grade, in the order a person looks for them. Head marks: SAE J429 and ISO 898-1 (common practice).
#[rustfmt::skip]
pub const GRADES: &[Grade] = &[
    inch("sae-1", "SAE grade 1", "no lines on the head"),
    inch("sae-2", "SAE grade 2", "no lines on the head"),
    inch("sae-4", "SAE grade 4 (studs)", "no lines; studs only"),
    inch("sae-5", "SAE grade 5", "three lines, 120° apart"),
    inch("sae-5.2", "SAE grade 5.2", "three lines, close together"),
    inch("sae-7", "SAE grade 7", "five lines"),
    inch("sae-8", "SAE grade 8", "six lines"),
    Grade { key: "a574", name: "Alloy socket head (ASTM A574)", standard: "ASTM A574", system: System::Inch, mark: "hexagon socket, black", source: "ASTM A574 (proof and tensile); no verified source for the yield" },
    astm("a307", "ASTM A307", "307A or 307B"),
    astm("a325", "ASTM A325 (over 1 in)", "A325"),
    astm("a354-bd", "ASTM A354 BD", "BD, often six lines"),
    astm("a449", "ASTM A449", "A449, three lines"),
    astm("a490", "ASTM A490", "A490"),
    iso("4.6", "Class 4.6", "4.6"),
    iso("4.8", "Class 4.8", "4.8"),
    iso("5.6", "Class 5.6", "5.6"),
    iso("5.8", "Class 5.8", "5.8"),
    iso("6.8", "Class 6.8", "6.8"),
    iso("8.8", "Class 8.8", "8.8"),
    iso("9.8", "Class 9.8", "9.8"),
    iso("10.9", "Class 10.9", "10.9"),
    iso("12.9", "Class 12.9 (usual socket head)", "12.9"),
    stainless("a2-50", "Stainless A2-50 or A4-50", "A2-50, A4-50"),
    stainless("a2-70", "Stainless A2-70 or A4-70", "A2-70, A4-70"),
    stainless("a2-80", "Stainless A2-80 or A4-80", "A2-80, A4-80"),
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

/// The strength of a grade at a size. A size on a boundary belongs to the range that ends there.
///
/// # Errors
/// An unknown grade, or a size for which the standard does not define it.
///
/// ```
/// use benchslate_core::quantity::Length;
/// use benchslate_core::standards::bolt_strength::strength;
/// // SAE J429 grade 5: 85 ksi proof to 1 in.
/// let row = strength("sae-5", Length::from_inches(0.5)).unwrap();
/// assert!((row.proof.unwrap().ksi() - 85.0).abs() < 1e-9);
/// ```
pub fn strength(key: &str, size: Length) -> Result<&'static BoltStrength, NoStrength> {
    let of_grade = || rows().filter(|r| r.grade == key);
    let slack = Length::from_mm(1e-6);
    if let Some(row) = of_grade().find(|r| size >= r.from - slack && size <= r.to + slack) {
        return Ok(row);
    }
    let from = of_grade()
        .map(|r| r.from)
        .reduce(Length::min)
        .ok_or(NoStrength::UnknownGrade)?;
    let to = of_grade()
        .map(|r| r.to)
        .reduce(Length::max)
        .ok_or(NoStrength::UnknownGrade)?;
    Err(NoStrength::SizeNotDefined { from, to })
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
        assert_eq!(ksi("none", 0.5), Err(NoStrength::UnknownGrade));
    }
}
