//! What force, torque and power does the cut ask? Unit power with its factors, the kc1.1 form as the alternative, and drilling.

use core::f64::consts::PI;

use super::fault::{CutFault, positive};
use crate::quantity::{
    FeedPerRev, Force, Length, Power, RemovalRate, RotationalSpeed, Stress, SurfaceSpeed, Torque,
};
use crate::standards::cutting::unit_power::{ChiselEdgeRow, FEED_FACTOR, base_power, feed_factor};

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
    let cutter = base_power(hp_per_in3_min, removal) * factors.feed * factors.wear;
    Ok(CutPower {
        cutter,
        motor: motor_power(cutter, factors.efficiency)?,
    })
}

/// Power that the motor gives for a power at the cutter: Pm = Pc / E, E the share that the drive passes on.
///
/// # Errors
/// [`CutFault::NotPositive`] for an efficiency of nothing.
///
/// ```
/// use benchslate_core::{cutting::motor_power, quantity::Power};
/// // Machinery's Handbook 31st ed., p. 1152: 3.1 hp at the cutter, 80 % efficiency, 3.9 hp at the motor
/// let motor = motor_power(Power::from_watts(3.1 * 745.7), 0.8).unwrap();
/// assert!((motor.horsepower() - 3.9).abs() < 0.05);
/// ```
pub fn motor_power(cutter: Power, efficiency: f64) -> Result<Power, CutFault> {
    Ok(cutter / positive(efficiency, "the efficiency")?)
}

/// The least feed, inches per rev or per tooth, to which the feed factor is carried down; under it no edge cuts a chip (common practice).
pub const LEAST_FACTOR_FEED_IN: f64 = 0.0001;

/// The feed factor of a chip, and how it was found.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct FeedFactor {
    /// The factor C.
    pub c: f64,
    /// Carried below the printed table by the power law: an estimate.
    pub carried: bool,
}

/// Feed factor C of a feed per rev, per tooth in milling: the printed table from 0.001 to 0.060 in, and below it
/// C = (f / 0.012 in)^-0.2 down to [`LEAST_FACTOR_FEED_IN`].
///
/// The power law fits every printed row within 3 %; below the table it is an estimate, marked so.
/// Source of the table: Machinery's Handbook, Machining Power, Table 2 (from memory).
///
/// # Errors
/// [`CutFault::OutsideTable`] under 0.0001 in and over 0.060 in.
///
/// ```
/// use benchslate_core::{cutting::chip_feed_factor, quantity::FeedPerRev};
/// let of = |f| chip_feed_factor(FeedPerRev::from_in_per_rev(f)).unwrap();
/// assert_eq!((of(0.016).c, of(0.016).carried), (0.94, false)); // Table 2
/// assert!((of(0.0008).c - 1.7188).abs() < 5e-5 && of(0.0008).carried); // 15^0.2
/// ```
pub fn chip_feed_factor(feed: FeedPerRev) -> Result<FeedFactor, CutFault> {
    if let Some(c) = feed_factor(feed) {
        return Ok(FeedFactor { c, carried: false });
    }
    let (first, last) = (FEED_FACTOR.first(), FEED_FACTOR.last());
    let inches = feed.in_per_rev();
    // a last bit of the conversion is no step below the limit
    if inches * (1.0 + 1e-9) >= LEAST_FACTOR_FEED_IN
        && first.is_some_and(|row| inches < row.feed_in)
    {
        return Ok(FeedFactor {
            c: libm::pow(inches / 0.012, -0.2),
            carried: true,
        });
    }
    Err(CutFault::OutsideTable {
        what: "the feed",
        low: LEAST_FACTOR_FEED_IN,
        high: last.map_or(0.0, |row| row.feed_in),
        unit: "in",
    })
}

/// Power of a specific cutting force at a removal rate: P = kc Q, the same as force times speed.
///
/// ```
/// use benchslate_core::{cutting::specific_power, quantity::{RemovalRate, Stress}};
/// // 2721 N/mm² at 100 m/min × 0.3 mm × 3 mm, as in `turning_force`: 4.08 kW
/// let power = specific_power(Stress::from_mpa(2721.0), RemovalRate::from_mm3_per_min(90_000.0));
/// assert!((power.kilowatts() - 4.08).abs() < 0.005);
/// ```
pub fn specific_power(kc: Stress, removal: RemovalRate) -> Power {
    Power::from_watts(kc.mpa() * removal.mm3_per_min() / 60_000.0)
}

/// Power of an energy per volume at a removal rate: P = u Q, u in W·s/mm³.
///
/// ```
/// use benchslate_core::{cutting::energy_power, quantity::RemovalRate};
/// // Kalpakjian, Example 23.1 (from memory): 1,924 mm³/min at 4 W·s/mm³, 128 W
/// assert!((energy_power(4.0, RemovalRate::from_mm3_per_min(1924.0)).watts() - 128.0).abs() < 0.5);
/// ```
pub fn energy_power(w_s_per_mm3: f64, removal: RemovalRate) -> Power {
    Power::from_watts(w_s_per_mm3 * removal.mm3_per_min() / 60.0)
}

/// Chips thinner than this lie below the range for which kc1.1 and mc are usually given (textbooks: 0.05 to 2.5 mm, from memory);
/// the true force is then above the formula's.
pub const LEAST_KIENZLE_CHIP: Length = Length::from_mm(0.05);

/// Chips thicker than this lie above that range.
pub const MOST_KIENZLE_CHIP: Length = Length::from_mm(2.5);

/// Specific cutting force at a chip thickness: kc = kc1.1 / h^mc, h in mm. kc1.1 and mc are a pair of one author. Under
/// [`LEAST_KIENZLE_CHIP`] it is too low.
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
/// use benchslate_core::{cutting::drill_load, quantity::*, standards::cutting::unit_power::STANDARD_DRILL};
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
