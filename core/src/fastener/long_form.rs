//! Torque from clamp load with the friction of thread and head apart: the long form, and the nut factor it amounts to.

use super::{Fault, positive};
use crate::quantity::{Angle, Force, Length, Pitch, Torque};
use core::f64::consts::PI;

/// What the long form needs to know of a screw.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Screw {
    /// Nominal diameter.
    pub diameter: Length,
    /// Mean diameter of the thread: its pitch diameter.
    pub mean_thread_diameter: Length,
    /// Pitch (single start: also the lead).
    pub pitch: Pitch,
    /// Half angle of the thread: 30° for Unified and metric.
    pub half_angle: Angle,
    /// Mean diameter of the face that rubs under the head or nut.
    pub bearing_diameter: Length,
}

/// The two frictions.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Friction {
    /// In the thread.
    pub thread: f64,
    /// Under the head or nut.
    pub head: f64,
}

impl Screw {
    /// A 60° screw with pitch diameter D − 0.64952 P and the given mean bearing diameter.
    pub fn sixty_degree(diameter: Length, pitch: Pitch, bearing_diameter: Length) -> Self {
        Self {
            diameter,
            mean_thread_diameter: diameter - pitch.length() * 0.649519052838329,
            pitch,
            half_angle: Angle::from_degrees(30.0),
            bearing_diameter,
        }
    }
    /// Lead angle of the thread: tan λ = P / (π dm).
    pub fn lead_angle(&self) -> Angle {
        Angle::from_radians(libm::atan(
            self.pitch.mm() / (PI * self.mean_thread_diameter.mm()),
        ))
    }
}

/// Mean diameter of the bearing face by Shigley's rule for a washer face: 1.25 D (face 1.5 D, hole D).
pub fn bearing_by_rule(diameter: Length) -> Length {
    diameter * 1.25
}

/// Mean diameter of the bearing face from its outside and the hole: (dw + dh) / 2 (VDI 2230).
pub fn bearing_mean(face: Length, hole: Length) -> Length {
    (face + hole) / 2.0
}

/// The nut factor that two frictions amount to:
/// `K = dm/(2D) · (tan λ + f sec α)/(1 − f tan λ sec α) + fc · dc/(2D)`.
///
/// dm mean thread diameter, D nominal, λ lead angle, α half angle of the thread, f and fc friction in the thread and
/// under the head, dc mean bearing diameter (with dc = 1.25 D the last term is 0.625 fc). Range: sizes above zero,
/// frictions not below zero and low enough that the denominator stays above zero. Source: Shigley's Mechanical
/// Engineering Design, eq. 8-26.
///
/// # Errors
/// Sizes or frictions outside that range.
///
/// ```
/// use benchslate_core::fastener::long_form::{Friction, Screw, bearing_by_rule, nut_factor};
/// use benchslate_core::quantity::{Angle, Length, Pitch};
/// // Shigley, example 8-3 (c): 3/4-16, dm 0.7093 in, f = fc = 0.15 gives 0.18938.
/// let d = Length::from_inches(0.75);
/// let screw = Screw {
///     diameter: d,
///     mean_thread_diameter: Length::from_inches(0.7093),
///     pitch: Pitch::from_tpi(16.0),
///     half_angle: Angle::from_degrees(30.0),
///     bearing_diameter: bearing_by_rule(d),
/// };
/// let k = nut_factor(&screw, Friction { thread: 0.15, head: 0.15 }).unwrap();
/// assert!((k - 0.18938).abs() < 0.00001);
/// ```
pub fn nut_factor(screw: &Screw, friction: Friction) -> Result<f64, Fault> {
    let d = positive(screw.diameter.mm(), "diameter")?;
    let dm = positive(screw.mean_thread_diameter.mm(), "mean thread diameter")?;
    positive(screw.pitch.mm(), "pitch")?;
    if friction.thread < 0.0 || friction.head < 0.0 {
        return Err(Fault::NotPositive { what: "friction" });
    }
    let tan_lead = screw.pitch.mm() / (PI * dm);
    let sec = 1.0 / libm::cos(screw.half_angle.radians());
    let denominator = 1.0 - friction.thread * tan_lead * sec;
    if denominator <= 0.0 {
        return Err(Fault::FrictionTooHigh {
            limit: 1.0 / (tan_lead * sec),
        });
    }
    let thread = dm / (2.0 * d) * (tan_lead + friction.thread * sec) / denominator;
    Ok(thread + friction.head * screw.bearing_diameter.mm() / (2.0 * d))
}

/// Torque in its three parts, by the short approximation of VDI 2230:
/// `M = F (0.159 P + 0.577 d2 µG + µK Dkm/2)`, with the exact 1/(2π) and 1/(2 cos 30°).
///
/// Source: VDI 2230 Part 1:2003. The parts are stretch, thread friction and head friction.
///
/// ```
/// use benchslate_core::fastener::long_form::{Friction, Screw, bearing_mean, vdi_torque};
/// use benchslate_core::quantity::{Force, Length, Pitch};
/// // VDI 2230-1:2003 Table A1: M10 8.8 at 0.14, 28.8 kN, 54 N m.
/// let mm = Length::from_mm;
/// let screw = Screw::sixty_degree(mm(10.0), Pitch::from_mm(1.5), bearing_mean(mm(14.63), mm(11.0)));
/// let parts = vdi_torque(&screw, Friction { thread: 0.14, head: 0.14 }, Force::from_newtons(28_800.0)).unwrap();
/// assert!((parts.total().newton_metres() - 54.0).abs() < 0.5);
/// ```
///
/// # Errors
/// Sizes or loads that are not above zero.
pub fn vdi_torque(screw: &Screw, friction: Friction, clamp: Force) -> Result<TorqueParts, Fault> {
    positive(screw.diameter.mm(), "diameter")?;
    positive(screw.pitch.mm(), "pitch")?;
    let f = positive(clamp.newtons(), "clamp load")? / 1000.0;
    let cos = libm::cos(screw.half_angle.radians());
    Ok(TorqueParts {
        stretch: Torque::from_newton_metres(f * screw.pitch.mm() / (2.0 * PI)),
        thread: Torque::from_newton_metres(
            f * screw.mean_thread_diameter.mm() * friction.thread / (2.0 * cos),
        ),
        head: Torque::from_newton_metres(f * screw.bearing_diameter.mm() * friction.head / 2.0),
    })
}

/// Where the torque goes.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct TorqueParts {
    /// What stretches the screw.
    pub stretch: Torque,
    /// What the thread rubs away.
    pub thread: Torque,
    /// What the head rubs away.
    pub head: Torque,
}

impl TorqueParts {
    /// All three together.
    pub fn total(&self) -> Torque {
        self.stretch + self.thread + self.head
    }
}
