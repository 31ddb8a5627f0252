//! How thick is the chip really? Mean and maximum chip for a narrow cut, the feed that gives a wanted chip, and teeth in the cut.

use core::f64::consts::PI;

use super::fault::{CutFault, positive};
use crate::quantity::{Angle, Count, FeedPerTooth, Length};

/// Which thickness of the chip is meant: the two thin by different factors.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum ChipMeasure {
    /// The mean over the arc, by the usual approximation sqrt(ae/D): 5 % high at a quarter of the diameter, 57 % in a full slot.
    Mean,
    /// The true mean over the arc of a cut to one side, 2 (ae/D) / φ, φ the arc in radians; 2/π in a full slot.
    ArcMean,
    /// The thickest point of the arc, 2 sqrt(r - r²) with r = ae/D.
    Maximum,
}

fn engagement(radial: Length, diameter: Length) -> Result<f64, CutFault> {
    let d = positive(diameter.mm(), "the cutter diameter")?;
    let ae = positive(radial.mm(), "the width of engagement")?;
    if ae > d * (1.0 + 1e-12) {
        return Err(CutFault::TooLarge {
            what: "the width of engagement",
            limit_mm: d,
            why: "a cutter cannot engage more than its own diameter",
        });
    }
    Ok((ae / d).min(1.0))
}

/// Chip thickness as a share of the feed per tooth, at an engagement ae measured across the feed (the depth of a slab cut).
///
/// - Maximum: 2 sqrt(r - r²), r = ae/D, and 1 from half engagement up (geometry; entering angle 90 degrees).
/// - Mean: sqrt(ae/D) below half engagement (indexable milling catalogue, 2026 ed., p. 802, which uses it beyond too).
/// - `ArcMean`: (1 - cos φ) / φ = 2 r / φ with φ = acos(1 - 2 r), from 0 to a full slot (geometry; the textbooks' mean chip
///   hm = 360° fz ae / (π φ° D)).
///
/// # Errors
/// [`CutFault`] for nothing, or for an engagement wider than the cutter.
///
/// ```
/// use benchslate_core::{cutting::{chip_factor, ChipMeasure}, quantity::Length};
/// let (d, ae) = (Length::from_mm(100.0), Length::from_mm(20.0));
/// assert!((chip_factor(ChipMeasure::Maximum, ae, d).unwrap() - 0.8).abs() < 1e-12); // 2 sqrt(0.2 - 0.04)
/// assert!((chip_factor(ChipMeasure::Mean, ae, d).unwrap() - 0.4472).abs() < 5e-5); // sqrt(0.2)
/// assert!((chip_factor(ChipMeasure::ArcMean, d, d).unwrap() - 2.0 / 3.14159265).abs() < 1e-8); // full slot
/// ```
pub fn chip_factor(
    measure: ChipMeasure,
    radial: Length,
    diameter: Length,
) -> Result<f64, CutFault> {
    let r = engagement(radial, diameter)?;
    Ok(match measure {
        ChipMeasure::Maximum if r >= 0.5 => 1.0,
        ChipMeasure::Maximum => 2.0 * libm::sqrt(r - r * r),
        ChipMeasure::Mean => libm::sqrt(r),
        ChipMeasure::ArcMean => 2.0 * r / libm::acos(1.0 - 2.0 * r),
    })
}

/// How many times the feed may be raised in a narrow cut so that the thickest chip stays what it is at half engagement:
/// 1 / (2 sqrt(r - r²)), and exactly 1 from half engagement up.
///
/// # Errors
/// As [`chip_factor`].
pub fn thinning_factor(radial: Length, diameter: Length) -> Result<f64, CutFault> {
    chip_factor(ChipMeasure::Maximum, radial, diameter).map(|share| 1.0 / share)
}

/// The chip that a feed per tooth leaves.
///
/// # Errors
/// As [`chip_factor`].
pub fn chip_thickness(
    measure: ChipMeasure,
    per_tooth: FeedPerTooth,
    radial: Length,
    diameter: Length,
) -> Result<Length, CutFault> {
    Ok(Length::from_mm(
        per_tooth.mm_per_tooth() * chip_factor(measure, radial, diameter)?,
    ))
}

/// The feed per tooth that gives a wanted chip.
///
/// # Errors
/// As [`chip_factor`].
///
/// ```
/// use benchslate_core::{cutting::{feed_for_chip, ChipMeasure}, quantity::Length};
/// let fz = feed_for_chip(ChipMeasure::Mean, Length::from_mm(0.16), Length::from_mm(20.0), Length::from_mm(100.0)).unwrap();
/// assert!((fz.mm_per_tooth() - 0.36).abs() < 0.006); // indexable milling catalogue, 2026 ed., p. 802
/// ```
pub fn feed_for_chip(
    measure: ChipMeasure,
    chip: Length,
    radial: Length,
    diameter: Length,
) -> Result<FeedPerTooth, CutFault> {
    Ok(FeedPerTooth::from_mm_per_tooth(
        chip.mm() / chip_factor(measure, radial, diameter)?,
    ))
}

/// Angle through which a tooth stays in the cut when the cut lies to one side (slab, side, end cutters): acos(1 - 2 ae/D).
///
/// # Errors
/// As [`chip_factor`].
pub fn arc_of_cut(radial: Length, diameter: Length) -> Result<Angle, CutFault> {
    let r = engagement(radial, diameter)?;
    Ok(Angle::from_radians(libm::acos(1.0 - 2.0 * r)))
}

/// Teeth in the cut at once, on average: straight teeth give z φ/360; a helix adds z b tan(λ)/(π D) for a cut of width b along the axis.
///
/// # Errors
/// [`CutFault::NotPositive`] for no teeth or no diameter.
pub fn teeth_in_cut(
    teeth: Count,
    arc: Angle,
    axial: Length,
    helix: Angle,
    diameter: Length,
) -> Result<f64, CutFault> {
    let z = positive(teeth.get(), "the number of teeth")?;
    let d = positive(diameter.mm(), "the cutter diameter")?;
    Ok(z * arc.degrees() / 360.0 + z * axial.mm() * libm::tan(helix.radians()) / (PI * d))
}

/// The width of cut at which a helical cutter always has the same length of edge at work: the axial pitch π D / (z tan λ), or a
/// whole number of times of it. Nothing for straight teeth.
pub fn even_engagement_width(teeth: Count, helix: Angle, diameter: Length) -> Option<Length> {
    let tan = libm::tan(helix.radians());
    (tan > 0.0 && teeth.get() > 0.0).then(|| diameter * (PI / (teeth.get() * tan)))
}

/// Thickness of chip below which an edge rubs rather than cuts, by the cutter material. Common practice, no standard and no
/// verified source: about half a thou for a ground edge, one thou for carbide with its honed edge.
pub const fn rubbing_limit(carbide: bool) -> Length {
    Length::from_thou(if carbide { 1.0 } else { 0.5 })
}
