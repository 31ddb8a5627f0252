//! What to do with the wrench: what to set with an adapter, whether its range fits, and in which rounds to go.

use super::sources::{ADAPTER, PASSES, WRENCH};
use super::{show_torque, torque_places};
use crate::calls::notation::plain;
use crate::fastener::wrench::{Reach, reach, setting_with_extension};
use crate::quantity::{Angle, Length, Torque};
use crate::sheet::{Answer, Inputs, Reason, Stop};

/// The adapter's angle to the wrench, degrees; none without an adapter.
fn angle(inp: &Inputs) -> Option<f64> {
    match inp.choice("adapter") {
        "straight" => Some(0.0),
        "across" => Some(90.0),
        "back" => Some(180.0),
        _ => None,
    }
}

/// What to set on a wrench with an adapter.
pub(super) fn set_to(inp: &Inputs, torque: Torque, a: &mut Answer) -> Result<Torque, Stop> {
    let Some(angle) = angle(inp) else {
        return Ok(torque);
    };
    let (lever, extension): (Length, Length) = (inp.get("lever")?, inp.get("extension")?);
    let setting = setting_with_extension(torque, lever, extension, Angle::from_degrees(angle))
        .map_err(|_| {
            inp.out_of_range(
                "extension",
                format!(
                    "turned back it must be shorter than the wrench, {}",
                    inp.show(lever)
                ),
                "turn it across the wrench",
            )
        })?;
    let (inch, metric) = torque_places(setting);
    a.line("set-to", setting).places(inch, metric).says(
        "So that the screw gets the torque above. Hold the wrench at the middle of its grip.",
    );
    Ok(setting)
}

/// The step of the working that belongs to an adapter.
pub(super) fn working(inp: &Inputs, torque: Torque, setting: Torque, a: &mut Answer) {
    let (Some(lever), Some(extension), Some(angle)) = (
        inp.opt::<Length>("lever"),
        inp.opt::<Length>("extension"),
        angle(inp),
    ) else {
        return;
    };
    a.work(|w| {
        w.step(
            "Setting with the adapter",
            &[
                "S = T L / (L + E cos a)".into(),
                format!(
                    "S = {} × {} / ({} + {} × cos {}°) = {}",
                    show_torque(inp, torque),
                    inp.num(lever),
                    inp.num(lever),
                    inp.num(extension),
                    plain(angle, 0),
                    show_torque(inp, setting)
                ),
            ],
            &ADAPTER,
        );
    });
}

/// The three rounds of a joint with several screws.
pub(super) fn passes(inp: &Inputs, setting: Torque, a: &mut Answer) {
    let part = |share: f64| show_torque(inp, setting * share);
    let text = format!("{}, {}, {}", part(0.3), part(0.6), part(1.0));
    a.words("passes", text).says(
        "30, 60 and 100 %, each next screw straight across, then again at 100 % until none turns.",
    );
    a.source(&PASSES);
}

/// Whether the wrench of the shop reads it.
pub(super) fn wrench(inp: &Inputs, torque: Torque, a: &mut Answer) -> Result<(), Stop> {
    let (low, high): (Torque, Torque) = (inp.get("wrench-low")?, inp.get("wrench-high")?);
    if low > high {
        return Err(Stop::fault(
            "wrench-high",
            Reason::Conflict,
            "the wrench reads to less than it reads from",
            "swap the two",
        ));
    }
    let range = format!("{} to {}", show_torque(inp, low), show_torque(inp, high));
    let text = match reach(torque, low, high) {
        Reach::Good => format!("reads it ({range})"),
        Reach::BelowFifth => format!(
            "reads it, but below {}, 20 % of its top, where it is not accurate",
            show_torque(inp, high * 0.2)
        ),
        Reach::TooSmall => format!("starts at {}: take a smaller one", show_torque(inp, low)),
        Reach::TooLarge => format!("ends at {}: take a larger one", show_torque(inp, high)),
    };
    a.words("wrench", text)
        .says("The accuracy of a torque wrench is promised from 20 % of its top.");
    a.source(&WRENCH);
    Ok(())
}
