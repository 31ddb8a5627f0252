//! Whose figures and formulas are these?

use super::inch::Series;
use crate::source::Source;

/// Grades, letters and delta.
pub static ISO_286: Source = Source::read("ISO 286-1:2010", "Tables 1 to 5");
/// Hole less shaft.
pub static FIT_TERMS: Source = Source::read("ISO 286-1:2010", "terms of fits");
/// Usual fits.
pub static PREFERRED: Source =
    Source::from_memory("ANSI B4.2-1978 and ANSI B4.1-1967", "preferred fits");
static B41_RC: Source = Source::read(
    "ANSI B4.1-1967, in Machinery's Handbook, 31st ed.",
    "Tables 8a and 8b",
);
static B41_LC: Source = Source::read("ANSI B4.1-1967", "Table 9");
static B41_LT: Source = Source::read(
    "ANSI B4.1-1967, in Machinery's Handbook, 31st ed.",
    "Table 10",
);
static B41_LN: Source = Source::read(
    "ANSI B4.1-1967, in Machinery's Handbook, 31st ed.",
    "Table 12, p. 660",
);
static B41_FN: Source = Source::read(
    "ANSI B4.1-1967, in Machinery's Handbook, 27th ed. p. 663 and 31st ed.",
    "Table 11",
);

/// Where the rows of a series were read.
pub fn b41_source(series: Series) -> &'static Source {
    match series {
        Series::Rc => &B41_RC,
        Series::Lc => &B41_LC,
        Series::Lt => &B41_LT,
        Series::Ln => &B41_LN,
        Series::Fn => &B41_FN,
    }
}

/// Pressure and stress.
pub static SHIGLEY: Source = Source::read(
    "Shigley, Mechanical Engineering Design, 9th ed.",
    "Eqs. (7-39), (7-44), (7-45), p. 399",
);
/// Stiffness of materials.
pub static SHIGLEY_A5: Source = Source::read(
    "Shigley, Mechanical Engineering Design, 9th ed.",
    "Table A-5",
);
static CALLISTER: Source = Source::read(
    "Callister, Fundamentals of Materials Science and Engineering, 3rd ed.",
    "Table B.6, pp. 815-816",
);
static DOOLEY: Source = Source::read(
    "Dooley, Applied Science for Metal Workers",
    "Coefficients of Expansion",
);

/// Where the expansion of a material of `standards::fits::fit_materials` was read; none where it has none.
pub fn growth_sources(material: &str) -> impl Iterator<Item = &'static Source> {
    let old = (material == "cast-iron").then_some(&DOOLEY);
    let new = (!matches!(material, "other" | "")).then_some(&CALLISTER);
    old.into_iter().chain(new)
}

/// Growth with heat.
pub static GROWTH: Source = Source::computed(
    "Definition of linear expansion",
    "ΔT = (δ + clearance)/(α d)",
);
/// Highest temperature for putting together.
pub static JOINING: Source = Source::from_memory(
    "DIN 7190",
    "highest joining temperatures: 350 °C for mild steel and iron",
);
/// Least strengths where none is entered.
pub static FIT_STRENGTH: Source = Source::from_memory(
    "ASTM A36, A48 class 20 and general handbook values",
    "least strength of usual hub and shaft materials",
);
/// Interference lost to roughness.
pub static DIN_7190: Source = Source::from_memory("DIN 7190", "loss of interference");
/// Friction.
pub static FRICTION: Source = Source::practice("Friction of press fits");
/// A thousandth to the inch.
pub static SHRUNK: Source = Source::read(
    "Dooley, Applied Science for Metal Workers",
    "Allowance for Shrunk Fits",
);
/// Shrink against press.
pub static JONES: Source = Source::read(
    "F. D. Jones, Turning and Boring",
    "shrink and force fits compared",
);
