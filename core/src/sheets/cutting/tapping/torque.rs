//! What torque does the tap ask, what share of the motor or push of the hands is that, and above what does one stop and check?

use crate::cutting::*;
use crate::quantity::units::*;
use crate::quantity::{Force, Length, Power, RotationalSpeed, Share, Torque, decimal};
use crate::sheet::*;
use crate::standards::cutting::cutting_speeds::Material;
use crate::standards::cutting::tap_forces::{TapAuthor, TapFlutes, WORN_TAP, tap_factor};
use crate::thread::{ThreadCall, ThreadSeries};

/// How the chips leave the tap.
pub(in crate::sheets) static FLUTES: &[Choice] = &[
    choice("straight", "straight"),
    choice("spiral-point", "spiral point, chips go ahead"),
    choice("spiral", "spiral, chips come out"),
];

/// The tap of an entry in its hole.
pub(in crate::sheets) fn tap_cut(
    inp: &Inputs,
    thread: ThreadCall,
    hole: Length,
    bottoming: bool,
) -> TapCut {
    TapCut {
        major: thread.major,
        pitch: thread.pitch.length(),
        hole,
        fine: !matches!(
            thread.series,
            ThreadSeries::Unc | ThreadSeries::MetricCoarse
        ),
        flutes: match inp.choice("flutes") {
            "spiral-point" => TapFlutes::SpiralPoint,
            "spiral" => TapFlutes::Spiral,
            _ => TapFlutes::Straight,
        },
        bottoming,
    }
}

/// A torque of a tap as it is printed: small ones need inch pounds.
pub(in crate::sheets) fn printed(torque: Torque) -> Value {
    Value::of(torque).units(&LBF_IN, &NEWTON_METRE).places(1, 2)
}

/// Torque with a sharp tap, above what to stop and check, each maker's row, and the working.
pub(in crate::sheets) fn tell_torque(
    a: &mut Answer,
    material: Material,
    cut: &TapCut,
    load: &TapLoad,
) {
    let range = match load.rows.len() {
        1 => "one row of one maker".to_owned(),
        rows => format!("least and most of {rows} rows"),
    };
    a.line("torque", load.nominal)
        .units(&LBF_IN, &NEWTON_METRE)
        .places(1, 2)
        .says(if one_author(load) {
            "Sharp tap, oil; only one maker gives this metal."
        } else {
            "Sharp tap, oil: the middle of two tap makers' figures."
        })
        .band(load.low, load.high, range.clone());
    a.line("torque-think", load.nominal * WORN_TAP)
        .units(&LBF_IN, &NEWTON_METRE)
        .places(1, 2)
        .says("Twice a sharp tap's, the published figure for a worn one. There: back out, clear, oil, look at the tap.")
        .band(load.low * WORN_TAP, load.high * WORN_TAP, range);
    let table = a.table(
        "torques",
        "What the tap makers say of the torque",
        &["Metal", "Specific force, as published", "Torque", "Source"],
    );
    for (row, torque) in &load.rows {
        table.row(vec![
            Value::words(row.detail),
            Value::words(format!("{} N/mm\u{b2}", decimal(row.kc, &NUMBER, 0))),
            printed(*torque),
            Value::words(source(row.author).title),
        ]);
    }
    table.note("Each force goes with its own maker's formula. A spiral point takes 60 to 65%, spiral flutes 70 to 75% of a hand tap's torque in the first maker's own trial.");
    a.work(|w| {
        for author in [TapAuthor::ByArea, TapAuthor::ByPitch] {
            let Some((row, torque)) = load.rows.iter().find(|(row, _)| row.author == author)
            else {
                continue;
            };
            let (kc, d) = (decimal(row.kc, &NUMBER, 0), decimal(cut.major.mm(), &NUMBER, 3));
            let torque = decimal(torque.newton_metres(), &NUMBER, 2);
            let hole = decimal(cut.hole.mm(), &NUMBER, 3);
            match author {
                TapAuthor::ByArea => {
                    let k = tap_factor(material, cut.flutes, cut.bottoming, cut.fine);
                    w.step(
                        "Torque by the area of thread",
                        &[
                            "M = tan 30\u{b0} kc K (D \u{2212} d)\u{b2} (D + 2 d) / 24000, mm and N\u{b7}m".into(),
                            format!(
                                "M = 0.57735 \u{d7} {kc} \u{d7} {} \u{d7} ({d} \u{2212} {hole})\u{b2} \u{d7} ({d} + 2 \u{d7} {hole}) / 24000 = {torque}",
                                decimal(k.unwrap_or_default(), &NUMBER, 2)
                            ),
                        ],
                        &TAP_BY_AREA,
                    );
                }
                TapAuthor::ByPitch => {
                    w.step(
                        "Torque by the pitch",
                        &[
                            "M = kc P\u{b2} D / 8000 for a hole of D \u{2212} P, then by (D \u{2212} d)\u{b2} (D + 2 d) to this hole".into(),
                            format!(
                                "M = {kc} \u{d7} {}\u{b2} \u{d7} {d} / 8000, brought to a hole of {hole}: {torque}",
                                decimal(cut.pitch.mm(), &NUMBER, 3)
                            ),
                        ],
                        &TAP_BY_PITCH,
                    );
                }
            }
        }
    });
    for author in [TapAuthor::ByArea, TapAuthor::ByPitch] {
        if load.rows.iter().any(|(row, _)| row.author == author) {
            a.source(source(author));
        }
    }
    a.source(&TAP_WORN);
}

/// True where all rows are one maker's.
fn one_author(load: &TapLoad) -> bool {
    load.rows
        .windows(2)
        .all(|pair| matches!(pair, [(one, _), (other, _)] if one.author == other.author))
}

const fn source(author: TapAuthor) -> &'static Source {
    match author {
        TapAuthor::ByArea => &TAP_BY_AREA,
        TapAuthor::ByPitch => &TAP_BY_PITCH,
    }
}

/// Power at the tap and its share of the motor, where the motor is given.
pub(super) fn by_spindle(inp: &Inputs, a: &mut Answer, load: &TapLoad, step: RotationalSpeed) {
    a.line("power", torque_power(load.nominal, step))
        .says("2 \u{3c0} n \u{d7} torque, at the tap, sharp.")
        .band(
            torque_power(load.low, step),
            torque_power(load.high, step),
            "by the torque's range",
        );
    let (Some(motor), Some(efficiency)) =
        (inp.opt::<Power>("motor"), inp.opt::<Share>("efficiency"))
    else {
        return;
    };
    let share = |torque: Torque| {
        Share::from_fraction(torque_power(torque, step) / efficiency.fraction() / motor)
    };
    a.line("motor-share", share(load.nominal))
        .says("Power at the tap / drive efficiency / motor.")
        .band(share(load.low), share(load.high), "by the torque's range");
    if share(load.nominal).fraction() > 1.0 {
        a.stop("over-motor", "Before you tap by power", "A sharp tap needs more than the motor gives at this speed: the spindle stalls with the tap in the hole. Take a slower speed, less thread, or tap by hand.");
    } else if share(load.high).fraction() > 1.0 {
        a.note("over-motor-at-high-end", "Before you tap by power", "At the high end of the range a sharp tap needs more than the motor gives: the spindle may stall with the tap in the hole. Take a slower speed, less thread, or tap by hand.");
    }
}

/// The push of each hand at the ends of the wrench.
pub(super) fn by_hand(inp: &Inputs, a: &mut Answer, load: &TapLoad) {
    let Some(wrench) = inp.opt::<Length>("wrench") else {
        return;
    };
    let push = |torque: Torque| Force::from_newtons(torque.newton_metres() * 1000.0 / wrench.mm());
    a.line("push", push(load.nominal))
        .places(1, 1)
        .says("Torque / length, both hands even. Stop and check above twice that.")
        .band(push(load.low), push(load.high), "by the torque's range");
}
