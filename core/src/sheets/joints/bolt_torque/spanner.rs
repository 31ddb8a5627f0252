//! What to do with the wrench: what to set with an adapter, whether its range fits, and in which rounds to go.

use super::sources::{ADAPTER, PASSES, WRENCH};
use super::working::Case;
use super::{show_torque, torque_places};
use crate::fastener::wrench::{Reach, reach, setting_with_extension};
use crate::notation::plain;
use crate::quantity::{Angle, Length, Torque};
use crate::sheet::{Answer, Inputs, Reason, Stop};

/// The rounds of a joint with several screws, shares of the torque.
const ROUNDS: [f64; 3] = [0.3, 0.6, 1.0];

/// The adapter's angle to the wrench, degrees; none without an adapter.
fn angle(inp: &Inputs) -> Option<f64> {
    match inp.choice("adapter") {
        "straight" => Some(0.0),
        "across" => Some(90.0),
        "back" => Some(180.0),
        _ => None,
    }
}

/// What to set on a wrench with an adapter; none without one.
pub(super) fn setting(inp: &Inputs, torque: Torque) -> Result<Option<Torque>, Stop> {
    let Some(angle) = angle(inp) else {
        return Ok(None);
    };
    let (lever, extension): (Length, Length) = (inp.get("lever")?, inp.get("extension")?);
    setting_with_extension(torque, lever, extension, Angle::from_degrees(angle))
        .map(Some)
        .map_err(|_| {
            inp.out_of_range(
                "extension",
                format!(
                    "turned back it must be shorter than the wrench, {}",
                    inp.show(lever)
                ),
                "turn it across the wrench",
            )
        })
}

/// The setting leads the answer: it is what the hand needs.
pub(super) fn set_to(inp: &Inputs, case: &Case, setting: Torque, a: &mut Answer) {
    let (inch, metric) = torque_places(setting);
    a.line("set-to", setting).places(inch, metric).says(format!(
        "With this adapter; the screw then gets {}. Hold the wrench at the middle of its grip.",
        show_torque(inp, case.torque)
    ));
}

/// The step of the working that belongs to an adapter.
pub(super) fn working(inp: &Inputs, torque: Torque, setting: Option<Torque>, a: &mut Answer) {
    let (Some(setting), Some(lever), Some(extension), Some(angle)) = (
        setting,
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

/// The range of the wrench.
fn range(inp: &Inputs) -> Result<(Torque, Torque), Stop> {
    let (low, high): (Torque, Torque) = (inp.get("wrench-low")?, inp.get("wrench-high")?);
    if low > high {
        return Err(Stop::fault(
            "wrench-high",
            Reason::Conflict,
            "the highest reading of the wrench is below its lowest",
            "swap the two",
        ));
    }
    Ok((low, high))
}

/// Whose wrench: a typical one where none was given.
fn whose(inp: &Inputs) -> &'static str {
    if inp.is_entered("wrench-low") || inp.is_entered("wrench-high") {
        "your wrench"
    } else {
        "a typical wrench"
    }
}

/// The three rounds of a joint with several screws, and which of them the wrench cannot read.
pub(super) fn passes(inp: &Inputs, setting: Torque, a: &mut Answer) -> Result<(), Stop> {
    let (low, _) = range(inp)?;
    let (inch, metric) = torque_places(setting);
    let part = |share: f64| inp.show_to(setting * share, inch, metric);
    let mut says =
        "30, 60 and 100%, each next screw straight across, then again at 100% until none turns."
            .to_owned();
    let below: Vec<String> = ROUNDS
        .into_iter()
        .filter(|&share| share < 1.0 && setting * share < low)
        .map(part)
        .collect();
    if !below.is_empty() {
        says = format!(
            "{says} Not on {}, which starts at {}: {}. Take a smaller one for that, or snug the screws by feel.",
            whose(inp),
            show_torque(inp, low),
            below.join(" and ")
        );
    }
    a.words("passes", ROUNDS.map(part).join(", ")).says(says);
    a.source(&PASSES);
    Ok(())
}

/// Whether the wrench reads what is to be set.
pub(super) fn wrench(inp: &Inputs, torque: Torque, a: &mut Answer) -> Result<(), Stop> {
    let (low, high) = range(inp)?;
    let (inch, metric) = torque_places(high);
    let range = format!(
        "{} to {}",
        inp.show_to(low, inch, metric),
        inp.show_to(high, inch, metric)
    );
    let text = match reach(torque, low, high) {
        Reach::Good => format!("reads {} ({range})", show_torque(inp, torque)),
        Reach::BelowFifth => format!(
            "reads {}, but that is below {}, 20% of its highest reading, where it is not accurate",
            show_torque(inp, torque),
            show_torque(inp, high * 0.2)
        ),
        Reach::TooSmall => format!("starts at {}: take a smaller one", show_torque(inp, low)),
        Reach::TooLarge => format!("ends at {}: take a larger one", show_torque(inp, high)),
    };
    a.words("wrench", text).says(format!(
        "On {}. A torque wrench is accurate from 20% of its highest reading.",
        whose(inp)
    ));
    a.source(&WRENCH);
    Ok(())
}
