//! Where do the half nuts close, how fast does the carriage run, and is the first pass too heavy?

use super::gears;
use crate::cutting::*;
use crate::quantity::{Count, Length, Pitch, RotationalSpeed, Time};
use crate::sheet::*;

static DIAL: Source = Source::computed(
    "Geometry of leadscrew and thread dial",
    "k W p / L a whole number of leads",
);
static CARRIAGE: Source =
    Source::practice("Single-point threading toward a shoulder: 8 to 10 in/min of carriage");
static FIRST_PASS: Source =
    Source::practice("A first threading pass of at most 0.025 in along the compound");
/// Where the half nuts may be closed; false where they have to stay closed.
pub(super) fn dial(
    inp: &Inputs,
    a: &mut Answer,
    lead: Pitch,
    leadscrew: Pitch,
) -> Result<bool, Stop> {
    let (wheel, lines): (Count, Count) = (inp.get("wheel")?, inp.get("lines")?);
    let found = dial_lines(lead, leadscrew, wheel.get() as u32, lines.get() as u32);
    let text = match found {
        Some(1) => "any line of the dial".to_owned(),
        Some(every) if f64::from(every) >= lines.get() => "the same line each time".to_owned(),
        Some(every) => format!(
            "every {every}{} line, counted from the first one used",
            ordinal(every)
        ),
        None => "no line: keep them closed and reverse the spindle".to_owned(),
    };
    a.words("dial", text)
        .says("The carriage has to move a whole number of leads between lines.");
    a.source(&DIAL);
    gears::gears(inp, a, lead, leadscrew)?;
    Ok(found.is_some())
}

/// How fast the carriage runs, and how long a pass lasts.
pub(super) fn carriage(
    inp: &Inputs,
    a: &mut Answer,
    lead: Pitch,
    rpm: RotationalSpeed,
    half_nuts: bool,
) -> Result<(), Stop> {
    let fault = |fault: CutFault| inp.out_of_range("pitch", fault.to_string(), "give the pitch");
    let speed = carriage_speed(lead, rpm).map_err(fault)?;
    a.line("carriage", speed)
        .says("Lead \u{d7} spindle speed. Toward a shoulder 8 to 10 in/min is brisk.");
    if let Some(length) = inp.opt::<Length>("length") {
        let time: Time = travel_time(length, speed).map_err(fault)?;
        let says = if half_nuts {
            "Length / (lead \u{d7} spindle speed): time to open the half nuts."
        } else {
            "Length / (lead \u{d7} spindle speed): time to stop the spindle."
        };
        a.line("time", time).says(says);
        a.work(|w| {
            w.step(
                "Time for one pass in seconds",
                &[
                    "t = 60 \u{d7} L / (lead \u{d7} n)".into(),
                    format!(
                        "t = 60 \u{d7} {} / ({} \u{d7} {}) = {}",
                        inp.num(length),
                        inp.num_to(lead.length(), 5, 4),
                        inp.num(rpm),
                        inp.show_to(time, 1, 1)
                    ),
                ],
                &CARRIAGE,
            );
        });
    }
    a.source(&CARRIAGE);
    // a last bit is no step past the limit
    if speed.in_per_min() > CARRIAGE_MOST_IN_PER_MIN * (1.0 + 1e-9) {
        a.stop("fast-carriage", "Before you thread toward a shoulder", format!("The carriage runs at {}: a hand is late on it. Take a slower spindle, 8 to 10 in/min at most, or a relief groove wide enough to stop in.", inp.show_to(speed, 1, 0)));
    }
    Ok(())
}

/// A first pass that is too much for a light lathe.
pub(super) fn first_pass(inp: &Inputs, a: &mut Answer, infeed: Length, first: Length) {
    a.source(&FIRST_PASS);
    let most = Length::from_inches(FIRST_PASS_MOST_IN);
    if first <= most * (1.0 + 1e-9) {
        return;
    }
    let passes = passes_for(infeed);
    let kept = infeed * (1.0 / libm::sqrt(f64::from(passes)));
    let cure = if kept <= most * (1.0 + 1e-9) {
        format!("Take {passes} passes or more.")
    } else {
        "Rough the groove out with a narrow square tool first, or feed lighter by hand and take more passes than the 60 listed.".to_owned()
    };
    a.stop("heavy-first-pass", "Before the first pass", format!("{} along the compound is heavy: more than {} tears the thread or stalls a light lathe. {cure}", inp.show(first), inp.show_to(most, 3, 2)));
}

const fn ordinal(n: u32) -> &'static str {
    match (n % 10, n % 100) {
        (_, 11..=13) => "th",
        (1, _) => "st",
        (2, _) => "nd",
        (3, _) => "rd",
        _ => "th",
    }
}
