//! Will the thread strip: how much metal shears, how deep must the screw go in, and what fails first?

use super::{Fault, positive};
use crate::quantity::{Area, Force, Length, Pitch, Stress};
use crate::thread::{self, ThreadCall, ThreadClass};
use core::f64::consts::PI;

/// tan 30°, the flank of a 60° thread.
const TAN_30: f64 = 0.5773502691896257;

/// The four limits of size that decide the shear areas, and the pitch.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Limits {
    /// Largest minor diameter of the tapped thread (Kn).
    pub internal_minor_max: Length,
    /// Least pitch diameter of the screw (Es).
    pub external_pitch_min: Length,
    /// Least major diameter of the screw (Ds).
    pub external_major_min: Length,
    /// Largest pitch diameter of the tapped thread (En).
    pub internal_pitch_max: Length,
    /// Pitch.
    pub pitch: Pitch,
}

impl Limits {
    /// Basic sizes of a 60° thread without tolerance: the best case, for when no class limits are known.
    pub fn basic(diameter: Length, pitch: Pitch) -> Self {
        let p = pitch.length();
        Self {
            internal_minor_max: diameter - p * 1.082531754730548,
            external_pitch_min: diameter - p * 0.649519052838329,
            external_major_min: diameter,
            internal_pitch_max: diameter - p * 0.649519052838329,
            pitch,
        }
    }
    /// Worst case of two classes: the loosest screw in the loosest hole. `None` where the standard has no such limits.
    ///
    /// ```
    /// use benchslate_core::fastener::strip::Limits;
    /// use benchslate_core::{calls, thread::ThreadClass};
    /// // 1/2-13, 2A in 2B: Kn 0.434, Es 0.4435, Ds 0.4876, En 0.4565 in (FED-STD-H28/2B appendix B).
    /// let l = Limits::of_classes(calls::thread::read("1/2-13").unwrap(), ThreadClass::A2, ThreadClass::B2).unwrap();
    /// assert!((l.external_pitch_min.inches() - 0.4435).abs() < 0.00011);
    /// assert!((l.internal_minor_max.inches() - 0.434).abs() < 0.00051);
    /// ```
    pub fn of_classes(thread: ThreadCall, screw: ThreadClass, hole: ThreadClass) -> Option<Self> {
        let thread::Limits::External { major, pitch, .. } = thread::limits(thread, screw).ok()?
        else {
            return None;
        };
        let (external_major_min, external_pitch_min) = (major.low, pitch.low);
        let thread::Limits::Internal { minor, pitch, .. } = thread::limits(thread, hole).ok()?
        else {
            return None;
        };
        Some(Self {
            internal_minor_max: minor.high,
            external_pitch_min,
            external_major_min,
            internal_pitch_max: pitch.high,
            pitch: thread.pitch,
        })
    }
    fn check(&self) -> Result<(), Fault> {
        positive(self.pitch.mm(), "pitch")?;
        positive(self.internal_minor_max.mm(), "minor diameter")?;
        let in_order = self.internal_minor_max < self.external_pitch_min
            && self.internal_pitch_max < self.external_major_min
            && self.external_pitch_min < self.external_major_min;
        if in_order {
            Ok(())
        } else {
            Err(Fault::LimitsOutOfOrder)
        }
    }
}

/// Shear area of the screw's thread: `ASs = π n Le Kn [1/(2n) + 0.57735 (Es − Kn)]`.
///
/// n threads per length, Le length of engagement. Range: full threads over the whole of Le. Source: FED-STD-H28/2B,
/// appendix B; ASME B1.1, appendix B.
///
/// # Errors
/// A length not above zero; limits out of order.
///
/// ```
/// use benchslate_core::fastener::strip::{Limits, external_shear_area};
/// use benchslate_core::quantity::{Length, Pitch};
/// let inch = Length::from_inches;
/// // 1/2-13, 2A/2B, per inch of engagement: 0.779 in² (FED-STD-H28/2B appendix B).
/// let limits = Limits {
///     internal_minor_max: inch(0.434),
///     external_pitch_min: inch(0.4435),
///     external_major_min: inch(0.4876),
///     internal_pitch_max: inch(0.4565),
///     pitch: Pitch::from_tpi(13.0),
/// };
/// assert!((external_shear_area(&limits, inch(1.0)).unwrap().in2() - 0.779).abs() < 0.0005);
/// ```
pub fn external_shear_area(limits: &Limits, engagement: Length) -> Result<Area, Fault> {
    limits.check()?;
    let le = positive(engagement.mm(), "engagement")?;
    let (p, kn) = (limits.pitch.mm(), limits.internal_minor_max.mm());
    Ok(Area::from_mm2(
        PI / p * le * kn * (p / 2.0 + TAN_30 * (limits.external_pitch_min.mm() - kn)),
    ))
}

/// Shear area of the tapped thread: `ASn = π n Le Ds [1/(2n) + 0.57735 (Ds − En)]`. As [`external_shear_area`].
///
/// # Errors
/// A length not above zero; limits out of order.
pub fn internal_shear_area(limits: &Limits, engagement: Length) -> Result<Area, Fault> {
    limits.check()?;
    let le = positive(engagement.mm(), "engagement")?;
    let (p, ds) = (limits.pitch.mm(), limits.external_major_min.mm());
    Ok(Area::from_mm2(
        PI / p * le * ds * (p / 2.0 + TAN_30 * (ds - limits.internal_pitch_max.mm())),
    ))
}

/// The length of engagement at which the screw breaks before its thread strips, thread and hole of equal strength:
/// `Le = 2 At / (π Kn [1/2 + 0.57735 n (Es − Kn)])`. The 2 makes the shear area twice the tensile area.
///
/// Source: FED-STD-H28/2B, appendix B (reprinted in Machinery's Handbook).
///
/// # Errors
/// Limits out of order; an area not above zero.
pub fn engagement_equal(limits: &Limits, tensile_area: Area) -> Result<Length, Fault> {
    let at = positive(tensile_area.mm2(), "stress area")?;
    let per_length = external_shear_area(limits, Length::from_mm(1.0))?.mm2();
    Ok(Length::from_mm(2.0 * at / per_length))
}

/// The ratio J: `J = (ASs × screw tensile) / (ASn × hole tensile)`. Above 1 the hole is the weaker and needs more depth.
///
/// Source: FED-STD-H28/2B, appendix B.
///
/// # Errors
/// Limits out of order; strengths not above zero.
pub fn strength_ratio(limits: &Limits, screw: Stress, hole: Stress) -> Result<f64, Fault> {
    positive(screw.mpa(), "screw strength")?;
    positive(hole.mpa(), "strength of the tapped part")?;
    let one = Length::from_mm(1.0);
    let shear = external_shear_area(limits, one)?.mm2() / internal_shear_area(limits, one)?.mm2();
    Ok(shear * (screw / hole))
}

/// Tensile area for screws above 100 ksi in the stripping method only: `A = π (Es/2 − 0.16238 P)²`.
///
/// `Es` is the least pitch diameter of the screw. Source: FED-STD-H28/2B, appendix B.
///
/// # Errors
/// A size not above zero; a pitch too coarse for the diameter.
pub fn tensile_area_over_100_ksi(pitch_diameter_min: Length, pitch: Pitch) -> Result<Area, Fault> {
    positive(pitch_diameter_min.mm(), "pitch diameter")?;
    positive(pitch.mm(), "pitch")?;
    let radius = pitch_diameter_min.mm() / 2.0 - 0.16238 * pitch.mm();
    if radius <= 0.0 {
        return Err(Fault::PitchTooCoarse {
            diameter: pitch_diameter_min,
        });
    }
    Ok(Area::from_mm2(PI * radius * radius))
}

/// The tensile area that the stripping method uses: another formula above 100 ksi. Source: FED-STD-H28/2B, appendix B.
///
/// # Errors
/// As the area formulas.
pub fn method_area(limits: &Limits, stress_area: Area, screw: Stress) -> Result<Area, Fault> {
    if screw.ksi() > 100.0 {
        tensile_area_over_100_ksi(limits.external_pitch_min, limits.pitch)
    } else {
        Ok(stress_area)
    }
}

/// The length of engagement needed, by the two breaking loads in use.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Needed {
    /// By the breaking load of the strength standards: stress area times tensile strength.
    pub by_stress_area: Length,
    /// By the tensile area of FED-STD-H28, which is smaller above 100 ksi.
    pub by_h28_area: Length,
}

impl Needed {
    /// The deeper of the two: the safer one.
    pub fn depth(&self) -> Length {
        self.by_stress_area.max(self.by_h28_area)
    }
}

/// The length of engagement needed so that the screw breaks first: `Q = Le` where J ≤ 1, else `Q = J Le`.
///
/// Once with the stress area, which gives the breaking loads that SAE J429, ASTM and ISO 898-1 list, and once with the
/// method's own tensile area ([`method_area`]). Source: FED-STD-H28/2B, appendix B.
///
/// # Errors
/// As the formulas it is made of.
///
/// ```
/// use benchslate_core::fastener::strip::{Limits, engagement_needed};
/// use benchslate_core::quantity::{Area, Length, Pitch, Stress};
/// let inch = Length::from_inches;
/// // 1/4-20, 150 ksi into 45 ksi: 0.375 in by the method (FED-STD-H28/2B appendix B); 5 % more by the stress area.
/// let limits = Limits {
///     internal_minor_max: inch(0.207),
///     external_pitch_min: inch(0.2127),
///     external_major_min: inch(0.2408),
///     internal_pitch_max: inch(0.2224),
///     pitch: Pitch::from_tpi(20.0),
/// };
/// let ksi = Stress::from_ksi;
/// let needed = engagement_needed(&limits, Area::from_in2(0.0318), ksi(150.0), ksi(45.0)).unwrap();
/// assert!((needed.by_h28_area.inches() - 0.375).abs() < 0.002);
/// assert!((needed.depth().inches() - 0.394).abs() < 0.002);
/// ```
pub fn engagement_needed(
    limits: &Limits,
    stress_area: Area,
    screw: Stress,
    hole: Stress,
) -> Result<Needed, Fault> {
    let deeper = strength_ratio(limits, screw, hole)?.max(1.0);
    let by = |area: Area| engagement_equal(limits, area).map(|le| le * deeper);
    Ok(Needed {
        by_stress_area: by(stress_area)?,
        by_h28_area: by(method_area(limits, stress_area, screw)?)?,
    })
}

/// What fails first.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum First {
    /// The screw breaks across its thread.
    ScrewBreaks,
    /// The screw's own thread strips.
    ScrewStrips,
    /// The tapped thread strips.
    HoleStrips,
}

/// The three loads at which something fails.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Failure {
    /// The screw breaks.
    pub screw_breaks: Force,
    /// The screw's thread strips.
    pub screw_strips: Force,
    /// The tapped thread strips.
    pub hole_strips: Force,
}

impl Failure {
    /// The least of the three, and which it is. On a tie the screw is named.
    pub fn first(&self) -> (First, Force) {
        let mut least = (First::ScrewBreaks, self.screw_breaks);
        if self.screw_strips < least.1 {
            least = (First::ScrewStrips, self.screw_strips);
        }
        if self.hole_strips < least.1 {
            least = (First::HoleStrips, self.hole_strips);
        }
        least
    }
}

/// The loads at which each part fails, from tensile strengths and their ratios of shear to tensile strength.
///
/// `F = A S` for the break, with the stress area as the strength standards have it (SAE J429, ISO 898-1: breaking loads);
/// `F = AS r S` for each thread, with the shear areas of FED-STD-H28. Uniform sharing over the engaged threads; nut spreading
/// and bell-mouthing are not counted, so real strength is somewhat less. Source: FED-STD-H28/2B, appendix B.
///
/// # Errors
/// As the area formulas.
pub fn failure(
    limits: &Limits,
    stress_area: Area,
    engagement: Length,
    (screw, screw_shear_ratio): (Stress, f64),
    (hole, hole_shear_ratio): (Stress, f64),
) -> Result<Failure, Fault> {
    positive(screw.mpa(), "screw strength")?;
    positive(hole.mpa(), "strength of the tapped part")?;
    let ss = external_shear_area(limits, engagement)?.mm2();
    let sn = internal_shear_area(limits, engagement)?.mm2();
    let at = positive(stress_area.mm2(), "stress area")?;
    Ok(Failure {
        screw_breaks: Force::from_newtons(at * screw.mpa()),
        screw_strips: Force::from_newtons(ss * screw_shear_ratio * screw.mpa()),
        hole_strips: Force::from_newtons(sn * hole_shear_ratio * hole.mpa()),
    })
}
