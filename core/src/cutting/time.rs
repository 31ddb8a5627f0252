//! How long does a pass take, and how far must the cutter travel beyond the work? Approach by geometry, overtravel apart.

use core::f64::consts::PI;

use super::fault::{CutFault, positive};
use crate::quantity::{Angle, FeedRate, Length, Time};

/// Approach of a slab or side cutter: from first touch to full depth, sqrt(d (D - d)).
///
/// Kalpakjian uses sqrt(D d), which is longer. Overtravel is extra.
///
/// # Errors
/// [`CutFault`] for nothing, or a depth beyond the radius (the arbor is in the way).
///
/// ```
/// use benchslate_core::{cutting::slab_approach, quantity::Length};
/// let a = slab_approach(Length::from_mm(9.0), Length::from_mm(60.0)).unwrap();
/// assert!((a.mm() - 21.42).abs() < 0.005); // Groover, peripheral milling problem
/// ```
pub fn slab_approach(depth: Length, diameter: Length) -> Result<Length, CutFault> {
    let big = positive(diameter.mm(), "the cutter diameter")?;
    let d = positive(depth.mm(), "the depth of cut")?;
    if d > big / 2.0 {
        return Err(CutFault::TooLarge {
            what: "the depth of cut",
            limit_mm: big / 2.0,
            why: "deeper than its radius the arbor meets the work",
        });
    }
    Ok(Length::from_mm(libm::sqrt(d * (big - d))))
}

/// Approach of a face cutter with the cut centred on it: (D - sqrt(D² - w²)) / 2.
///
/// # Errors
/// [`CutFault`] for nothing, or a width wider than the cutter.
///
/// ```
/// use benchslate_core::{cutting::centred_face_approach, quantity::Length};
/// let a = centred_face_approach(Length::from_inches(2.0), Length::from_inches(3.0)).unwrap();
/// assert!((a.inches() - 0.382).abs() < 0.0005); // Groover, face milling problem
/// ```
pub fn centred_face_approach(width: Length, diameter: Length) -> Result<Length, CutFault> {
    let big = positive(diameter.mm(), "the cutter diameter")?;
    let w = positive(width.mm(), "the width of cut")?;
    if w > big {
        return Err(CutFault::TooLarge {
            what: "the width of cut",
            limit_mm: big,
            why: "a cutter cannot cover more than its own diameter in one pass",
        });
    }
    Ok(Length::from_mm((big - libm::sqrt(big * big - w * w)) / 2.0))
}

/// Approach of a face or end cutter whose cut lies to one side with width w: sqrt(w (D - w)), and the radius from half engagement up.
///
/// # Errors
/// As [`centred_face_approach`].
pub fn offset_face_approach(width: Length, diameter: Length) -> Result<Length, CutFault> {
    centred_face_approach(width, diameter)?;
    let (w, big) = (width.mm(), diameter.mm());
    Ok(Length::from_mm(if w >= big / 2.0 {
        big / 2.0
    } else {
        libm::sqrt(w * (big - w))
    }))
}

/// Travel of a slab, side, or one-sided face or end cut from full length cut to clear of the work: the approach once more.
///
/// The cut lies to one side, so the circle leaves the work's far corner as far behind the center as it met the near one ahead.
/// The rest of a large cutter still hangs beside the work.
///
/// ```
/// use benchslate_core::{cutting::{offset_face_approach, one_sided_exit}, quantity::Length};
/// // geometry: width 0.4002 of 4.863 in, sqrt(0.4002 × 4.4628)
/// let exit = one_sided_exit(offset_face_approach(Length::from_inches(0.4002), Length::from_inches(4.863)).unwrap());
/// assert!((exit.inches() - 1.3364).abs() < 5e-5);
/// ```
pub const fn one_sided_exit(approach: Length) -> Length {
    approach
}

/// Travel of a centered face cut from full length cut to clear of the work: the diameter less the approach.
///
/// # Errors
/// As [`centred_face_approach`].
///
/// ```
/// use benchslate_core::{cutting::centred_face_exit, quantity::Length};
/// // geometry: (3 + sqrt(9 - 4)) / 2
/// let exit = centred_face_exit(Length::from_inches(2.0), Length::from_inches(3.0)).unwrap();
/// assert!((exit.inches() - 2.618).abs() < 5e-4);
/// ```
pub fn centred_face_exit(width: Length, diameter: Length) -> Result<Length, CutFault> {
    Ok(diameter - centred_face_approach(width, diameter)?)
}

/// Length of a drill's point: 0.5 D tan(90° - θ/2), θ the included angle (118° for an ordinary drill).
///
/// # Errors
/// [`CutFault::NotPositive`] for a diameter of nothing or an angle outside 0 to 180 degrees.
///
/// ```
/// use benchslate_core::{cutting::drill_point, quantity::{Angle, Length}};
/// let a = drill_point(Length::from_mm(12.7), Angle::from_degrees(118.0)).unwrap();
/// assert!((a.mm() - 3.82).abs() < 0.005); // Groover, drilling problem
/// ```
pub fn drill_point(diameter: Length, included: Angle) -> Result<Length, CutFault> {
    let d = positive(diameter.mm(), "the drill diameter")?;
    let theta = positive(included.degrees(), "the point angle")?;
    positive(180.0 - theta, "180 degrees minus the point angle")?;
    Ok(Length::from_mm(
        0.5 * d * libm::tan((90.0 - theta / 2.0) * PI / 180.0),
    ))
}

/// Time for a travel at a feed: t = L / F.
///
/// # Errors
/// [`CutFault::NotPositive`] for a feed that is not more than 0.
pub fn travel_time(travel: Length, feed: FeedRate) -> Result<Time, CutFault> {
    let f = positive(feed.mm_per_min(), "the feed")?;
    Ok(Time::from_minutes(travel.mm() / f))
}
