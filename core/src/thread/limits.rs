//! Between which limits must a screw or a tapped hole of a class lie?

use super::{ThreadCall, ThreadClass, ThreadSeries, UNIFIED_ROOT, minor_diameter, pitch_diameter};
use crate::quantity::Length;
use crate::standards::threads::metric_tolerances;

/// Limits of one diameter.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Between {
    /// Least.
    pub low: Length,
    /// Most.
    pub high: Length,
}

/// The limits of a thread in one class.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Limits {
    /// The screw.
    External {
        /// How far the largest screw stays under the basic size.
        allowance: Length,
        /// Major diameter.
        major: Between,
        /// Pitch diameter.
        pitch: Between,
        /// Largest minor diameter (rounded root of 2003 and later; metric: basic profile at the largest screw).
        minor_most: Length,
    },
    /// The tapped hole.
    Internal {
        /// Minor diameter: the bore.
        minor: Between,
        /// Pitch diameter.
        pitch: Between,
        /// Least major diameter.
        major_least: Length,
    },
}

/// Why there are no limits.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum LimitFault {
    /// The class belongs to the other system: 6g for an inch thread.
    OtherSystem,
    /// The standard gives no grade 6 for this fine pitch (5H is used there).
    NoGrade,
}

/// The limits of a thread in a class.
///
/// Unified (ASME B1.1-2003), inches; T(2A) is set to six places, each tolerance to four, as in the standard:
/// Td2(2A) = 0.0015 ∛D + 0.0015 √Le + 0.015 ∛P², 1A 1.5, 3A 0.75, 1B 1.95, 2B 1.3, 3B 0.975 times that;
/// Le = D for UNC, UNF, 4-, 6- and 8-UN, 9 P for the others; allowance 0.3 Td2(2A) for 1A and 2A, none for 3A.
/// Metric (ISO 965-1:2013), from its tables.
///
/// # Errors
/// [`LimitFault`] where the class is not of this thread or the standard gives none.
///
/// ```
/// use benchslate_core::{calls, thread::*};
/// // ASME B1.1, standard series: 1/4-20 UNC-2B pitch diameter 0.2175 to 0.2224 in, bore 0.196 to 0.207 in.
/// let thread = calls::thread::read("1/4-20").unwrap();
/// let Ok(Limits::Internal { pitch, minor, .. }) = limits(thread, ThreadClass::B2) else { panic!() };
/// assert!((pitch.high.inches() - 0.2224).abs() < 0.00005);
/// assert!((minor.high.inches() - 0.207).abs() < 0.00005);
/// ```
pub fn limits(thread: ThreadCall, class: ThreadClass) -> Result<Limits, LimitFault> {
    if class.is_metric() != thread.series.is_metric() {
        return Err(LimitFault::OtherSystem);
    }
    if class.is_metric() {
        metric(thread, class)
    } else {
        Ok(unified(thread, class))
    }
}

/// Length of engagement that the tolerance of a Unified thread is figured with.
pub fn engagement(thread: ThreadCall) -> Length {
    let by_diameter = match thread.series {
        ThreadSeries::Unc | ThreadSeries::Unf => true,
        ThreadSeries::Un => thread.pitch.tpi() < 9.0,
        // 1-14 is tabulated with the diameter, as the fine thread that it once was.
        ThreadSeries::Uns => same(thread.major.inches(), 1.0) && same(thread.pitch.tpi(), 14.0),
        _ => false,
    };
    if by_diameter {
        thread.major
    } else {
        thread.pitch.length() * 9.0
    }
}

fn same(a: f64, b: f64) -> bool {
    (a - b).abs() < 1e-6
}

/// Pitch diameter tolerance of class 2A in inches, not rounded: the base of all Unified tolerances.
pub fn unified_tolerance_2a(thread: ThreadCall) -> Length {
    let (d, p) = (thread.major.inches(), thread.pitch.inches());
    let le = engagement(thread).inches();
    Length::from_inches(
        0.0015 * libm::cbrt(d) + 0.0015 * libm::sqrt(le) + 0.015 * libm::cbrt(p * p),
    )
}

/// The factor of a class on the tolerance of 2A.
pub const fn unified_factor(class: ThreadClass) -> f64 {
    match class {
        ThreadClass::A1 => 1.5,
        ThreadClass::A3 => 0.75,
        ThreadClass::B1 => 1.95,
        ThreadClass::B2 => 1.3,
        ThreadClass::B3 => 0.975,
        _ => 1.0,
    }
}

fn unified(thread: ThreadCall, class: ThreadClass) -> Limits {
    let base = to_places(unified_tolerance_2a(thread).inches(), 6);
    let tolerance = to_places(base * unified_factor(class), 4);
    let d2 = to_places(pitch_diameter(thread).inches(), 4);
    if class.is_internal() {
        let (low, high) = unified_bore(thread, class);
        return Limits::Internal {
            minor: between(low, high),
            pitch: between(d2, d2 + tolerance),
            major_least: thread.major,
        };
    }
    let allowance = if class == ThreadClass::A3 {
        0.0
    } else {
        to_places(base * 0.3, 4)
    };
    let p = thread.pitch.inches();
    let major_factor = if class == ThreadClass::A1 { 0.09 } else { 0.06 };
    let major_tolerance = to_places(major_factor * libm::cbrt(p * p), 4);
    let major = to_places(thread.major.inches() - allowance, 4);
    Limits::External {
        allowance: Length::from_inches(allowance),
        major: between(major - major_tolerance, major),
        pitch: between(d2 - allowance - tolerance, d2 - allowance),
        minor_most: Length::from_inches(to_places(
            thread.major.inches() - allowance - UNIFIED_ROOT * p,
            4,
        )),
    }
}

/// Bore limits in inches: from No. 6 up classes 1B and 2B stand to three places, 3B with a three-place minimum.
fn unified_bore(thread: ThreadCall, class: ThreadClass) -> (f64, f64) {
    let (d, p) = (thread.major.inches(), thread.pitch.inches());
    let tpi = thread.pitch.tpi();
    let small = 0.05 * libm::cbrt(p * p) + 0.03 * p / d - 0.002;
    let coarse_floor = 0.25 * p - 0.4 * p * p;
    let tolerance = if class == ThreadClass::B3 {
        let floor = if tpi < 12.999 {
            0.12 * p
        } else {
            0.23 * p - 1.5 * p * p
        };
        small.max(floor).min(0.394 * p)
    } else if d < 0.24999 {
        small.max(coarse_floor).min(0.394 * p)
    } else if tpi < 3.999 {
        0.15 * p
    } else {
        coarse_floor
    };
    let low = minor_diameter(thread).inches();
    let places = if d < 0.1379 { 4 } else { 3 };
    let high = to_places(low, 4) + to_places(tolerance, 4);
    let high = if class == ThreadClass::B3 || places == 4 {
        high
    } else {
        even_thousandth(high)
    };
    (to_places(low, places), high)
}

fn metric(thread: ThreadCall, class: ThreadClass) -> Result<Limits, LimitFault> {
    let (d, p) = (thread.major.mm(), thread.pitch.mm());
    let by_pitch = metric_tolerances::of_pitch(p).ok_or(LimitFault::NoGrade)?;
    let by_diameter = metric_tolerances::of_diameter(d, p).ok_or(LimitFault::NoGrade)?;
    let d2 = to_places(pitch_diameter(thread).mm(), 3);
    let d1 = to_places(minor_diameter(thread).mm(), 3);
    let mm = |low: f64, high: f64| Between {
        low: Length::from_mm(low),
        high: Length::from_mm(high),
    };
    if class.is_internal() {
        if by_pitch.minor_um == 0.0 {
            return Err(LimitFault::NoGrade);
        }
        return Ok(Limits::Internal {
            minor: mm(d1, d1 + by_pitch.minor_um / 1000.0),
            pitch: mm(d2, d2 + by_diameter.hole_um / 1000.0),
            major_least: thread.major,
        });
    }
    let allowance = if class == ThreadClass::G6 {
        by_pitch.g_um / 1000.0
    } else {
        0.0
    };
    let (major, pitch) = (d - allowance, d2 - allowance);
    Ok(Limits::External {
        allowance: Length::from_mm(allowance),
        major: mm(major - by_pitch.major_um / 1000.0, major),
        pitch: mm(pitch - by_diameter.screw_um / 1000.0, pitch),
        minor_most: Length::from_mm(d1 - allowance),
    })
}

fn between(low_in: f64, high_in: f64) -> Between {
    Between {
        low: Length::from_inches(low_in),
        high: Length::from_inches(high_in),
    }
}

/// Four places to three, a tie to the even one (ASA Z25.1, the rounding rule of the standard's tables).
fn even_thousandth(inches: f64) -> f64 {
    let count = libm::round(inches * 10000.0) as i64;
    let (whole, rest) = (count.div_euclid(10), count.rem_euclid(10));
    let up = rest > 5 || (rest == 5 && whole.rem_euclid(2) == 1);
    (whole + i64::from(up)) as f64 / 1000.0
}

/// To so many decimals, a tie away from zero; what a double leaves of a printed tie is taken for the tie.
fn to_places(value: f64, places: u8) -> f64 {
    let scale = (0..places).fold(1.0, |scale, _| scale * 10.0);
    libm::round(value * scale + 1e-7) / scale
}
