//! What force, torque and power does the cut ask? Unit power with its factors, the kc1.1 form as the alternative, and drilling.

use core::f64::consts::PI;

use super::fault::{CutFault, positive};
use crate::quantity::{
    FeedPerRev, Force, Length, Power, RemovalRate, RotationalSpeed, Stress, SurfaceSpeed, Torque,
};
use crate::standards::unit_power::{ChiselEdgeRow, base_power};

/// The factors that belong to unit power. A bare constant is never a power.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct PowerFactors {
    /// Feed factor C: thin chips cost more.
    pub feed: f64,
    /// Wear factor W: dull tools cost more.
    pub wear: f64,
    /// Efficiency E of the machine, from motor to cutter.
    pub efficiency: f64,
}

/// Power at the cutter and at the motor.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct CutPower {
    /// At the cutter.
    pub cutter: Power,
    /// At the motor.
    pub motor: Power,
}

/// Power by unit power: Pc = Kp C Q W at the cutter, Pm = Pc / E at the motor.
///
/// - Kp: hp per in³/min, sharp tool, chip of 0.012 in; Q: removal rate; C, W, E as in [`PowerFactors`].
/// - Source: Machinery's Handbook, Machining Power.
///
/// # Errors
/// [`CutFault::NotPositive`] for an efficiency of nothing.
///
/// ```
/// use benchslate_core::{cutting::*, quantity::*};
/// let q = turning_removal(SurfaceSpeed::from_sfm(350.0), FeedPerRev::from_in_per_rev(0.016), Length::from_inches(0.1));
/// let p = unit_power_cut(0.62, q, PowerFactors { feed: 0.94, wear: 1.3, efficiency: 0.8 }).unwrap();
/// assert!((p.cutter.horsepower() - 5.09).abs() < 0.005); // AISI 4130 at 180-200 HB
/// ```
pub fn unit_power_cut(
    hp_per_in3_min: f64,
    removal: RemovalRate,
    factors: PowerFactors,
) -> Result<CutPower, CutFault> {
    let efficiency = positive(factors.efficiency, "the efficiency")?;
    let cutter = base_power(hp_per_in3_min, removal) * factors.feed * factors.wear;
    Ok(CutPower {
        cutter,
        motor: cutter / efficiency,
    })
}

/// Specific cutting force at a chip thickness: kc = kc1.1 / h^mc, h in mm. kc1.1 and mc are a pair of one author.
///
/// # Errors
/// [`CutFault::NotPositive`] for a chip of nothing.
pub fn specific_force(kc11: Stress, mc: f64, chip: Length) -> Result<Stress, CutFault> {
    let h = positive(chip.mm(), "the chip thickness")?;
    Ok(kc11 / libm::pow(h, mc))
}

/// Cutting force in turning by the kc1.1 form: Fc = kc b h, with b = ap / sin κ and h = f sin κ, κ the entering angle.
///
/// # Errors
/// [`CutFault::NotPositive`] for a feed of nothing or an angle outside 0 to 180 degrees.
///
/// ```
/// use benchslate_core::{cutting::turning_force, quantity::*};
/// let f = turning_force(Stress::from_mpa(1990.0), 0.26, Length::from_mm(3.0), FeedPerRev::from_mm_per_rev(0.3), Angle::from_degrees(90.0)).unwrap();
/// assert!((f.newtons() - 2449.0).abs() < 1.0); // E295, kc 2721 N/mm²
/// ```
pub fn turning_force(
    kc11: Stress,
    mc: f64,
    depth: Length,
    feed: FeedPerRev,
    entering: crate::quantity::Angle,
) -> Result<Force, CutFault> {
    let sin = positive(
        libm::sin(entering.radians()),
        "the sine of the entering angle",
    )?;
    let chip = Length::from_mm(feed.mm_per_rev() * sin);
    let kc = specific_force(kc11, mc, chip)?;
    Ok(Force::from_newtons(kc.mpa() * depth.mm() / sin * chip.mm()))
}

/// Power of a force at a surface speed: P = F V.
pub fn force_power(force: Force, speed: SurfaceSpeed) -> Power {
    Power::from_watts(force.newtons() * speed.m_per_min() / 60.0)
}

/// Torque on a spindle from power: M = P / (2 π n).
///
/// # Errors
/// [`CutFault::NotPositive`] for a spindle that does not turn.
pub fn spindle_torque(power: Power, speed: RotationalSpeed) -> Result<Torque, CutFault> {
    let n = positive(speed.rpm(), "the spindle speed")?;
    Ok(Torque::from_newton_metres(
        power.watts() * 60.0 / (2.0 * PI * n),
    ))
}

/// Force at the edge of a cutter from torque: F = 2 M / D.
///
/// # Errors
/// [`CutFault::NotPositive`] for a diameter of nothing.
pub fn edge_force(torque: Torque, diameter: Length) -> Result<Force, CutFault> {
    let d = positive(diameter.mm(), "the diameter")?;
    Ok(Force::from_newtons(2000.0 * torque.newton_metres() / d))
}

/// Shear at the surface of a solid round shaft, as an arbor or a shank: τ = 16 M / (π d³); keyways and bending not counted.
///
/// Source: Hicks, Civil Engineering Formulas, fig. 2.1.
///
/// # Errors
/// [`CutFault::NotPositive`] for a diameter of nothing.
///
/// ```
/// use benchslate_core::{cutting::shaft_shear, quantity::{Length, Torque}};
/// // Singer, Strength of Materials, problem 304: 15 kip·ft on 4 in
/// let shear = shaft_shear(Torque::from_lbf_ft(15_000.0), Length::from_inches(4.0)).unwrap();
/// assert!((shear.psi() - 14_324.0).abs() < 1.0);
/// ```
pub fn shaft_shear(torque: Torque, diameter: Length) -> Result<Stress, CutFault> {
    let d = positive(diameter.mm(), "the diameter")?;
    Ok(Stress::from_mpa(
        16_000.0 * torque.newton_metres() / (PI * d * d * d),
    ))
}

/// Thrust and torque of a drill.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct DrillLoad {
    /// Thrust along the drill.
    pub thrust: Force,
    /// Torque on the drill.
    pub torque: Torque,
}

/// Thrust and torque of a twist drill in inch units: T = 2 Kd Ff FT B W + Kd D² J W (lbf), M = Kd Ff FM A W (in·lbf).
///
/// - Ff = f^0.8 (f in in/rev), FT = D^0.8, FM = D^1.8 (D in inches): these give the printed tables; printed FT at 8.80 mm
///   (5.96) is a misprint for 5.70. A, B, J from the chisel edge; Kd by work material; W wear.
/// - Source: Machinery's Handbook 31st ed., pp. 1152-1153. SI constants differ.
///
/// # Errors
/// [`CutFault::NotPositive`] for a diameter or feed of nothing.
///
/// ```
/// use benchslate_core::{cutting::drill_load, quantity::*, standards::unit_power::STANDARD_DRILL};
/// let load = drill_load(24000.0, Length::from_inches(0.875), FeedPerRev::from_in_per_rev(0.008), &STANDARD_DRILL, 1.3).unwrap();
/// assert!((load.torque.lbf_in() / 559.0 - 1.0).abs() < 0.005); // Machinery's Handbook 31st ed., p. 1152, example
/// ```
pub fn drill_load(
    kd: f64,
    diameter: Length,
    feed: FeedPerRev,
    chisel: &ChiselEdgeRow,
    wear: f64,
) -> Result<DrillLoad, CutFault> {
    let d = positive(diameter.inches(), "the drill diameter")?;
    let f = positive(feed.in_per_rev(), "the feed")?;
    let feed_factor = drill_feed_factor(f);
    let thrust = 2.0 * kd * feed_factor * drill_thrust_factor(d) * chisel.b * wear
        + kd * d * d * chisel.j * wear;
    let torque = kd * feed_factor * drill_torque_factor(d) * chisel.a * wear;
    Ok(DrillLoad {
        thrust: Force::from_lbf(thrust),
        torque: Torque::from_lbf_in(torque),
    })
}

/// Feed factor of drilling: f^0.8, in the unit of the constants that go with it.
pub fn drill_feed_factor(feed: f64) -> f64 {
    libm::pow(feed, 0.8)
}

/// Thrust factor of drilling: D^0.8.
pub fn drill_thrust_factor(diameter: f64) -> f64 {
    libm::pow(diameter, 0.8)
}

/// Torque factor of drilling: D^1.8.
pub fn drill_torque_factor(diameter: f64) -> f64 {
    libm::pow(diameter, 1.8)
}

/// Power of a torque at a spindle speed: P = 2 π n M (M N / 63025 in inch units).
pub fn torque_power(torque: Torque, speed: RotationalSpeed) -> Power {
    Power::from_watts(torque.newton_metres() * 2.0 * PI * speed.rpm() / 60.0)
}
