//! What are the basic diameters and the stress area of a thread with a 60 degree form?

use super::ThreadCall;
use crate::quantity::{Area, Length};

/// Twice the height from the major diameter to the pitch line over the pitch: 3√3/8.
pub const PITCH_LINE: f64 = 0.649_519_052_838_329;
/// Major to internal minor diameter over the pitch: 5√3/8.
pub const INTERNAL_DEPTH: f64 = 1.082_531_754_730_548;
/// Major to external minor diameter over the pitch, Unified of 2003 and later (rounded root): 11√3/16.
pub const UNIFIED_ROOT: f64 = 1.190_784_930_203_603;
/// Major to external minor diameter over the pitch, ISO metric (and Unified charts to 1989): 17√3/24.
pub const METRIC_ROOT: f64 = 1.226_869_322_027_955;

/// Basic pitch diameter.
///
/// d2 = D − 0.649519 P; D the basic major diameter, P the pitch. Any thread of 60° form.
/// Source: ASME B1.1-2003, ISO 724:1993 (the same form, ISO 68-1).
///
/// ```
/// use benchslate_core::{calls, thread};
/// // Machinery's Handbook, 31st ed., p. 1978: 1/2-13 UNC has 0.4500 in.
/// let d2 = thread::pitch_diameter(calls::thread::read("1/2-13").unwrap());
/// assert!((d2.inches() - 0.4500).abs() < 0.00005);
/// ```
pub fn pitch_diameter(thread: ThreadCall) -> Length {
    thread.major - thread.pitch.length() * PITCH_LINE
}

/// Basic minor diameter of the internal thread.
///
/// D1 = D − 1.082532 P; D the basic major diameter, P the pitch. Any thread of 60° form.
/// Source: ASME B1.1-2003, ISO 724:1993.
///
/// ```
/// use benchslate_core::{calls, thread};
/// // ISO 724: M10 has 8.376 mm.
/// let d1 = thread::minor_diameter(calls::thread::read("M10").unwrap());
/// assert!((d1.mm() - 8.376).abs() < 0.0005);
/// ```
pub fn minor_diameter(thread: ThreadCall) -> Length {
    thread.major - thread.pitch.length() * INTERNAL_DEPTH
}

/// Minor (root) diameter of the external thread.
///
/// Unified: d3 = D − 1.190785 P (ASME B1.1-2003 and later; charts to 1989 print D − 1.226869 P).
/// Metric: d3 = D − 1.226869 P (ISO 898-1, root at H/6).
///
/// ```
/// use benchslate_core::{calls, thread};
/// // Machinery's Handbook, 31st ed., p. 1978: 1/2-13 UNC has 0.4084 in.
/// let d3 = thread::external_minor_diameter(calls::thread::read("1/2-13").unwrap());
/// assert!((d3.inches() - 0.4084).abs() < 0.00005);
/// ```
pub fn external_minor_diameter(thread: ThreadCall) -> Length {
    let depth = if thread.series.is_metric() {
        METRIC_ROOT
    } else {
        UNIFIED_ROOT
    };
    thread.major - thread.pitch.length() * depth
}

/// Tensile stress area of the screw.
///
/// Unified: A = π/4 (D − 0.9743 P)² (ASME B1.1-2003, appendix B). Metric: A = π/4 (d − 0.9382 P)² (ISO 898-1:2013,
/// 9.1.6). For screws up to 100 ksi; the stripping method of the standard uses another area above that.
///
/// ```
/// use benchslate_core::{calls, thread};
/// // Machinery's Handbook, 31st ed., p. 1978: 1/2-13 UNC has 0.142 in².
/// let area = thread::stress_area(calls::thread::read("1/2-13").unwrap());
/// assert!((area.in2() - 0.142).abs() < 0.0005);
/// ```
pub fn stress_area(thread: ThreadCall) -> Area {
    let factor = if thread.series.is_metric() {
        0.9382
    } else {
        0.9743
    };
    let across = (thread.major - thread.pitch.length() * factor).mm();
    Area::from_mm2(core::f64::consts::FRAC_PI_4 * across * across)
}
