//! What power does a tap ask? The torque of the tapping sheet at this spindle speed.

use super::Need;
use super::motor::Motor;
use crate::cutting::*;
use crate::quantity::units::*;
use crate::quantity::{Length, RotationalSpeed, Share, decimal};
use crate::sheet::*;
use crate::sheets::cutting::speed_feed::work_of;
use crate::sheets::cutting::tapping::{tap_cut, tell_torque};
use crate::sheets::sizes::tap_drill::CUT;
use crate::sheets::sizes::thread::{source_of, thread_of};
use crate::thread::{TapKind, hole_for};

pub(super) fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let thread = thread_of(inp, "thread")?;
    let material = work_of(inp, "tap-work")?;
    let share: Share = inp.get("thread-share")?;
    let rpm: RotationalSpeed = inp.get("rpm")?;
    let hole = hole_for(thread, share, TapKind::Cut);
    let cut = tap_cut(inp, thread, hole, false);
    let Some(load) = tap_load(material, None, &cut) else {
        return Err(Stop::fault(
            "tap-work",
            Reason::NoSource,
            format!(
                "we have no verified torque of a tap in {}",
                material.label()
            ),
            "tap it by hand, with less thread",
        ));
    };
    let need = Need {
        low: torque_power(load.low, rpm),
        nominal: torque_power(load.nominal, rpm),
        high: torque_power(load.high, rpm),
        says: "2 \u{3c0} n \u{d7} torque of a sharp tap, with oil.".into(),
        range: "two tap makers' rows for the metal",
        at_motor: false,
    };
    let motor = Motor::of(inp, &need)?;
    let mut a = inp.answer();
    motor.tell(&mut a, &need);
    tell_torque(&mut a, material, &cut, &load);
    a.work(|w| {
        w.step(
            "Hole",
            &[format!(
                "D \u{2212} 1.299038 P \u{d7} {} = {}",
                inp.show(share),
                inp.show(hole)
            )],
            &CUT,
        );
        w.step(
            "At the motor",
            &[format!(
                "Pm = {} / {} = {}",
                inp.num_to(need.nominal, 3, 3),
                decimal(motor.efficiency, &NUMBER, 2),
                inp.show_to(motor.at_motor(need.nominal), 3, 3)
            )],
            &TAP_BY_PITCH,
        );
    });
    motor.caution(
        &mut a,
        &need,
        "Take a slower spindle speed, less thread, or tap by hand.",
    );
    a.source(source_of(thread));
    a.draw(|| picture::drilled_hole(hole, None, Length::ZERO, [inp.show(hole), String::new()]));
    Ok(a)
}
