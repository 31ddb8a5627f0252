//! What does the cut ask of the motor? Power at the cutter and at the motor, and how far is the motor loaded?

use super::Need;
use crate::cutting::motor_power;
use crate::quantity::{Power, Share};
use crate::sheet::*;
use crate::standards::cutting::unit_power::ENERGY_EFFICIENCY;

/// This machine's motor and what arrives at the cutter.
pub(super) struct Motor {
    power: Power,
    /// Whose motor: a typical one where none was given.
    whose: &'static str,
    /// Share that arrives; a table at the motor has its own.
    pub efficiency: f64,
    /// The table is at the motor already.
    counted: bool,
}

impl Motor {
    pub(super) fn of(inp: &Inputs, need: &Need) -> Result<Self, Stop> {
        let efficiency: Share = inp.get("efficiency")?;
        Ok(Self {
            power: match inp.opt("lathe-motor") {
                Some(power) => power,
                None => inp.get("motor")?,
            },
            whose: if inp.is_entered("motor") || inp.is_entered("lathe-motor") {
                "Power from the motor / power of your motor."
            } else {
                "Power from the motor / power of a typical motor; enter yours."
            },
            efficiency: if need.at_motor {
                ENERGY_EFFICIENCY
            } else {
                efficiency.fraction()
            },
            counted: need.at_motor,
        })
    }
    pub(super) fn at_cutter(&self, power: Power) -> Power {
        if self.counted {
            power * self.efficiency
        } else {
            power
        }
    }
    pub(super) fn at_motor(&self, power: Power) -> Power {
        if self.counted {
            return power;
        }
        // the field's range keeps the efficiency over nothing
        motor_power(power, self.efficiency).unwrap_or(power)
    }
    pub(super) fn share(&self, power: Power) -> Share {
        Share::from_fraction(self.at_motor(power) / self.power)
    }
    /// Need, share and power at the cutter.
    pub(super) fn tell(&self, a: &mut Answer, need: &Need) {
        a.line("motor-need", self.at_motor(need.nominal))
            .says(if self.counted {
                "The table is at the motor: an efficiency of 80% is in it."
            } else {
                "Power at the cutter / drive efficiency."
            })
            .band(
                self.at_motor(need.low),
                self.at_motor(need.high),
                need.range,
            );
        a.line("share", self.share(need.nominal))
            .says(self.whose)
            .band(self.share(need.low), self.share(need.high), need.range);
        a.line("cutter-need", self.at_cutter(need.nominal))
            .says(need.says.clone())
            .band(
                self.at_cutter(need.low),
                self.at_cutter(need.high),
                need.range,
            );
    }
    /// What to mind before the cut, by the share that it asks.
    pub(super) fn caution(&self, a: &mut Answer, need: &Need, less: &'static str) {
        if self.share(need.nominal).fraction() > 1.0 {
            a.stop(
                "over-motor",
                "Before you take this cut",
                format!("It needs more than the motor gives: the belt slips or the spindle stalls in the cut. {less}"),
            );
        } else if self.share(need.high).fraction() > 1.0 {
            a.note(
                "over-motor-at-high-end",
                "Before you take this cut",
                format!("At the high end of the range it needs more than the motor gives. {less}"),
            );
        } else {
            a.note(
                "motor-is-one-limit",
                "Before you take this cut",
                "Power is one limit. Work clamps, arbor, cutter and a worn drive may give way first.",
            );
        }
    }
}
