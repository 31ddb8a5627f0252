//! Which spindle speeds are standard? The R20 series of nominal speeds with their limits, and its exact terms.
//!
//! Source: DIN 804 (March 1977), on-load speeds for machine tools, connected with ISO 229:1973; rpm. The limits are taken from
//! the exact term 100 × 10^(i/20), not from the rounded nominal; one printed cell (200 at +6 %, 212) differs from that rule
//! (211.498), and the table is authoritative. One decade; others by a factor of ten. R20/2 starts at 112; it is not R10.

use crate::quantity::RotationalSpeed;

/// One nominal speed and its limits, rpm.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct SpeedStep {
    /// Nominal speed.
    pub nominal: f64,
    /// Lower limit, -2 %.
    pub lower: f64,
    /// Upper limit, +3 %: mechanical deviation alone.
    pub upper_mechanical: f64,
    /// Upper limit, +6 %: mechanical and electrical deviation.
    pub upper: f64,
}

const fn step(nominal: f64, lower: f64, upper_mechanical: f64, upper: f64) -> SpeedStep {
    SpeedStep {
        nominal,
        lower,
        upper_mechanical,
        upper,
    }
}

/// The series R20 from 100 to 1000 rpm.
#[rustfmt::skip]
pub const R20: &[SpeedStep] = &[
    step(100.0, 98.0, 103.0, 106.0),
    step(112.0, 110.0, 116.0, 119.0),
    step(125.0, 123.0, 130.0, 133.0),
    step(140.0, 138.0, 145.0, 150.0),
    step(160.0, 155.0, 163.0, 168.0),
    step(180.0, 174.0, 183.0, 188.0),
    step(200.0, 196.0, 206.0, 212.0),
    step(224.0, 219.0, 231.0, 237.0),
    step(250.0, 246.0, 259.0, 266.0),
    step(280.0, 276.0, 290.0, 299.0),
    step(315.0, 310.0, 326.0, 335.0),
    step(355.0, 348.0, 365.0, 376.0),
    step(400.0, 390.0, 410.0, 422.0),
    step(450.0, 438.0, 460.0, 473.0),
    step(500.0, 491.0, 516.0, 531.0),
    step(560.0, 551.0, 579.0, 596.0),
    step(630.0, 618.0, 650.0, 669.0),
    step(710.0, 694.0, 729.0, 750.0),
    step(800.0, 778.0, 818.0, 842.0),
    step(900.0, 873.0, 918.0, 945.0),
    step(1000.0, 980.0, 1030.0, 1060.0),
];

/// The exact term of R20 with this index: 100 × 10^(i/20) rpm; index 0 is 100 rpm, 20 is 1000 rpm.
///
/// ```
/// use benchslate_core::standards::speed_series::exact_term;
/// assert!((exact_term(3).rpm() - 141.25).abs() < 0.01); // DIN 804: the nominal is 140
/// ```
pub fn exact_term(index: i32) -> RotationalSpeed {
    RotationalSpeed::from_rpm(100.0 * libm::pow(10.0, f64::from(index) / 20.0))
}

/// The R20 step whose nominal is nearest in ratio, in any decade, and its nominal speed there. Nothing for a speed that is not positive.
pub fn nearest_step(speed: RotationalSpeed) -> Option<(SpeedStep, RotationalSpeed)> {
    let rpm = speed.rpm();
    if !(rpm > 0.0 && rpm.is_finite()) {
        return None;
    }
    let index = libm::round(20.0 * libm::log10(rpm / 100.0));
    let decade = libm::floor(index / 20.0);
    let scale = libm::pow(10.0, decade);
    let place = (index - 20.0 * decade) as usize;
    R20.get(place)
        .map(|step| (*step, RotationalSpeed::from_rpm(step.nominal * scale)))
}
