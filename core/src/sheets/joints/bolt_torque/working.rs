//! How was the torque or the clamp load found, step by step, in numbers that can be worked again?

use super::friction::Rub;
use super::sources::{AREA, LONG, SHORT, TARGET, VDI};
use super::strength::Strength;
use super::{show_stress, show_torque, target};
use crate::fastener::long_form;
use crate::quantity::{Area, Force, Number, Share, Stress, System, Torque};
use crate::sheet::{Answer, Inputs, Work};
use crate::thread::ThreadCall;

/// All that an answer tells of.
pub(super) struct Case {
    pub(super) thread: ThreadCall,
    pub(super) strength: Strength,
    pub(super) limit_stress: Stress,
    pub(super) area: Area,
    pub(super) proof_load: Force,
    pub(super) torque_limit: Torque,
    pub(super) clamp: Force,
    pub(super) share: Share,
    pub(super) torque: Torque,
    pub(super) rub: Rub,
}

/// The working.
pub(super) fn working(inp: &Inputs, case: &Case, a: &mut Answer) {
    a.work(|w| {
        screw(inp, case, w);
        friction(inp, case, w);
        loads(inp, case, w);
    });
}

/// Stress area and the load at the limit.
fn screw(inp: &Inputs, case: &Case, w: &mut Work) {
    let c = if case.thread.series.is_metric() {
        "0.9382"
    } else {
        "0.9743"
    };
    w.step(
        "Stress area",
        &[
            format!("A = π/4 (D − {c} P)²"),
            format!(
                "A = π/4 × ({} − {c} × {})² = {}",
                inp.num_to(case.thread.major, 4, 3),
                inp.num_to(case.thread.pitch.length(), 5, 3),
                inp.show_to(case.area, 5, 2)
            ),
        ],
        &AREA,
    );
    let (formula, thousand) = match inp.system() {
        System::Inch => ("Fp = 1000 A Sp (Sp in ksi)", "1000 × "),
        System::Metric => ("Fp = A Sp", ""),
    };
    w.step(
        format!("Load at the {} stress", case.strength.limit_name()),
        &[
            formula.into(),
            format!(
                "Fp = {thousand}{} × {} = {}",
                inp.num_to(case.area, 5, 2),
                show_stress(inp, case.limit_stress),
                inp.show(case.proof_load)
            ),
        ],
        case.strength.source,
    );
}

fn friction(inp: &Inputs, case: &Case, w: &mut Work) {
    let rub = &case.rub;
    let Some((screw, friction)) = &rub.parts else {
        return;
    };
    let bare = |x: f64, places: u8| inp.num_to(Number::of(x), places, places);
    w.step(
        "Nut factor from friction",
        &[
            "K = dm/(2 D) × (tan λ + f sec 30°)/(1 − f tan λ sec 30°) + fc dc/(2 D)".into(),
            format!(
                "dm = {}, λ = {}°, f = {}, fc = {}, dc = {}: K = {}",
                inp.num_to(screw.mean_thread_diameter, 4, 3),
                inp.num_to(screw.lead_angle(), 2, 2),
                bare(friction.thread, 3),
                bare(friction.head, 3),
                inp.num_to(screw.bearing_diameter, 4, 3),
                bare(rub.k, 4)
            ),
        ],
        &LONG,
    );
    if let Ok(parts) = long_form::vdi_torque(screw, *friction, case.clamp) {
        let total = parts.total();
        let part = |t: Torque| inp.num_to(Share::from_fraction(t / total), 0, 0);
        w.step(
            "Where the torque goes",
            &[format!(
                "{}% stretches the screw, {}% rubs in the thread, {}% under the head",
                part(parts.stretch),
                part(parts.thread),
                part(parts.head)
            )],
            &VDI,
        );
    }
}

/// Clamp load and torque, the one from the other. Inch figures give in-lb, so 12 makes ft-lb; millimeters want a thousand.
fn loads(inp: &Inputs, case: &Case, w: &mut Work) {
    let k = inp.num_to(Number::of(case.rub.k), 4, 4);
    let d = inp.num_to(case.thread.major, 4, 3);
    let (clamp, torque) = (inp.show(case.clamp), show_torque(inp, case.torque));
    let divisor = match inp.system() {
        System::Inch => "12",
        System::Metric => "1000",
    };
    if inp.choice("from") == "torque" {
        w.step(
            "Clamp load",
            &[
                format!("F = {divisor} T / (K D)"),
                format!("F = {divisor} × {torque} / ({k} × {d}) = {clamp}"),
            ],
            &SHORT,
        );
        return;
    }
    if inp.choice("from") == "share"
        && let Ok(share) = target(inp)
    {
        w.step(
            "Clamp load",
            &[
                "F = share × Fp".into(),
                format!(
                    "F = {} × {} = {clamp}",
                    inp.num_to(Number::of(share.fraction()), 3, 3),
                    inp.num(case.proof_load)
                ),
            ],
            &TARGET,
        );
    }
    w.step(
        "Torque",
        &[
            format!("T = K D F / {divisor}"),
            format!("T = {k} × {d} × {clamp} / {divisor} = {torque}"),
        ],
        &SHORT,
    );
}
