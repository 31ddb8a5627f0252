//! How strong is the material that a thread is tapped into?
//!
//! Unit: ksi (authoritative), tensile strength (typical for wrought metals, minimum class for iron), and the largest published
//! ratio of shear to tensile strength. Sources: gray iron, ASTM A48 class number = least tensile strength in ksi of a
//! separately cast bar (ASM, Classes of Gray Iron, 2002); steel, aluminum, brass and bronze: Shigley, Tables and
//! general handbook values, from memory. Ratio: 0.5 is the basis of FED-STD-H28/2B appendix B (its factor 2) and our rule;
//! the upper ones are VDI 2230 (steel 0.6, aluminum 0.7, gray iron 1.1), from memory. Iron in a thick old casting is
//! weaker than its bar.

use crate::quantity::Stress;

/// A material to tap into.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Internal {
    /// Key, stable.
    pub key: &'static str,
    /// Name in shop words.
    pub name: &'static str,
    /// Weakest tensile strength to reckon with.
    pub low: Stress,
    /// Usual tensile strength.
    pub tensile: Stress,
    /// Shear over tensile, the largest published.
    pub shear_ratio_high: f64,
    /// Least engagement by the rule of thumb, in diameters (common practice).
    pub rule_diameters: f64,
    /// Where the strength comes from.
    pub source: &'static str,
}

/// The ratio of shear to tensile strength on which FED-STD-H28/2B builds its lengths of engagement.
pub const H28_SHEAR_RATIO: f64 = 0.5;

const A48: &str = "ASTM A48 class; low end one class down";
const BOOK: &str = "Shigley, Tables A-20 and A-22, from memory";
const GENERAL: &str = "general handbook value, from memory";

const fn row(
    key: &'static str,
    name: &'static str,
    (low, tensile): (f64, f64),
    shear_ratio_high: f64,
    rule_diameters: f64,
    source: &'static str,
) -> Internal {
    Internal {
        key,
        name,
        low: Stress::from_ksi(low),
        tensile: Stress::from_ksi(tensile),
        shear_ratio_high,
        rule_diameters,
        source,
    }
}

/// key, name, (low, usual) ksi, most shear over tensile, rule of thumb in diameters.
#[rustfmt::skip]
pub const ROWS: &[Internal] = &[
    row("iron-20",  "cast iron, old or unknown (class 20)",  (15.0, 20.0), 1.1,  1.5, A48),
    row("iron-30",  "cast iron, class 30",                   (25.0, 30.0), 1.1,  1.5, A48),
    row("iron-40",  "cast iron, class 40",                   (35.0, 40.0), 1.1,  1.5, A48),
    row("al-cast",  "aluminum casting (356-T6)",             (30.0, 33.0), 0.7,  2.0, GENERAL),
    row("al-6061",  "aluminum 6061-T6",                      (38.0, 45.0), 0.7,  2.0, GENERAL),
    row("brass",    "brass, free-cutting (360)",             (45.0, 55.0), 0.6,  1.5, GENERAL),
    row("bronze",   "bearing bronze, cast (C93200)",         (30.0, 35.0), 0.6,  1.5, GENERAL),
    row("steel-ms", "mild steel (1018, A36)",                (55.0, 58.0), 0.65, 1.0, BOOK),
    row("steel-md", "medium carbon steel (1045)",            (82.0, 91.0), 0.65, 1.0, BOOK),
];

/// The material with this key.
pub fn material(key: &str) -> Option<&'static Internal> {
    ROWS.iter().find(|r| r.key == key)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn low_is_not_above_usual_and_ratios_rise() {
        for r in ROWS {
            assert!(r.low <= r.tensile, "{}", r.key);
            assert!(H28_SHEAR_RATIO <= r.shear_ratio_high, "{}", r.key);
        }
    }
}
