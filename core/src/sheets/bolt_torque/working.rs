//! How was the torque or the clamp load found, step by step, and what is to be minded?

use super::friction::Rub;
use super::sources::{AREA, LONG, SHORT, TARGET, VDI};
use super::strength::Strength;
use super::{show_stress, show_torque, target};
use crate::fastener::long_form;
use crate::quantity::{Area, Force, Number, Share, Stress, Torque};
use crate::sheet::{Answer, Inputs};
use crate::thread::ThreadCall;

/// What the working tells of.
pub(super) struct Case<'a> {
    pub(super) thread: ThreadCall,
    pub(super) strength: &'a Strength,
    pub(super) limit_stress: Stress,
    pub(super) area: Area,
    pub(super) proof_load: Force,
    pub(super) clamp: Force,
    pub(super) torque: Torque,
    pub(super) rub: &'a Rub,
}

pub(super) fn working(inp: &Inputs, case: &Case, a: &mut Answer) {
    let Case {
        thread,
        strength,
        limit_stress,
        area,
        proof_load,
        clamp,
        torque,
        rub,
    } = *case;
    a.work(|w| {
        let (c, d) = (
            if thread.series.is_metric() {
                "0.9382"
            } else {
                "0.9743"
            },
            thread.major,
        );
        w.step(
            "Stress area",
            &[
                format!("A = π/4 (D − {c} P)²"),
                format!(
                    "A = π/4 ({} − {c} × {})² = {}",
                    inp.num(d),
                    inp.num_to(thread.pitch.length(), 5, 3),
                    inp.show(area)
                ),
            ],
            &AREA,
        );
        w.step(
            format!("Load at the {} stress", strength.limit_name()),
            &[
                "Fp = A Sp".into(),
                format!(
                    "Fp = {} × {} = {}",
                    inp.num(area),
                    show_stress(inp, limit_stress),
                    inp.show(proof_load)
                ),
            ],
            strength.source,
        );
        if let Some((screw, friction)) = &rub.parts {
            w.step(
                "Nut factor from friction",
                &[
                    "K = dm/(2 D) × (tan λ + f sec 30°)/(1 − f tan λ sec 30°) + fc dc/(2 D)".into(),
                    format!(
                        "dm = {}, λ = {}°, f = {}, fc = {}, dc = {}: K = {}",
                        inp.num(screw.mean_thread_diameter),
                        inp.num_to(screw.lead_angle(), 2, 2),
                        inp.num_to(Number::of(friction.thread), 3, 3),
                        inp.num_to(Number::of(friction.head), 3, 3),
                        inp.num(screw.bearing_diameter),
                        inp.num_to(Number::of(rub.k), 4, 4)
                    ),
                ],
                &LONG,
            );
            if let Ok(parts) = long_form::vdi_torque(screw, *friction, clamp) {
                let total = parts.total();
                let part = |t: Torque| inp.num_to(Share::from_fraction(t / total), 0, 0);
                w.step(
                    "Where the torque goes",
                    &[format!(
                        "{} % stretches the screw, {} % rubs in the thread, {} % under the head",
                        part(parts.stretch),
                        part(parts.thread),
                        part(parts.head)
                    )],
                    &VDI,
                );
            }
        }
        let k = inp.num_to(Number::of(rub.k), 4, 4);
        if inp.choice("from") == "torque" {
            w.step(
                "Clamp load",
                &[
                    "F = T / (K D)".into(),
                    format!(
                        "F = {} / ({k} × {}) = {}",
                        show_torque(inp, torque),
                        inp.show(d),
                        inp.show(clamp)
                    ),
                ],
                &SHORT,
            );
        } else {
            if inp.choice("from") == "share"
                && let Ok(share) = target(inp)
            {
                w.step(
                    "Clamp load",
                    &[
                        "F = share × Fp".into(),
                        format!(
                            "F = {} × {} = {}",
                            inp.show_to(share, 1, 1),
                            inp.num(proof_load),
                            inp.show(clamp)
                        ),
                    ],
                    &TARGET,
                );
            }
            w.step(
                "Torque",
                &[
                    "T = K D F".into(),
                    format!(
                        "T = {k} × {} × {} = {}",
                        inp.show(d),
                        inp.show(clamp),
                        show_torque(inp, torque)
                    ),
                ],
                &SHORT,
            );
        }
    });
}

pub(super) fn cautions(
    inp: &Inputs,
    share: Share,
    highest: Force,
    proof_load: Force,
    strength: &Strength,
    a: &mut Answer,
) {
    a.stop(
        "makers-figure",
        "Before you tighten",
        "The figure of the machine's maker comes first, and local codes where they apply. Never go past it with a figure from here.",
    );
    if highest > proof_load {
        a.note(
            "spread-past-limit",
            "Before you tighten",
            format!(
                "With this spread the clamp may pass the load at the {} stress. Tighten by a better method or aim lower.",
                strength.limit_name()
            ),
        );
    }
    if share.fraction() > 0.9 {
        a.note("past-90-percent", "Before you tighten", "More than 90 % of the limit leaves no room for error. Usual is 75 %, or 90 % for good.");
    }
    if inp.choice("grade") == "unmarked" {
        a.note(
            "grade-assumed",
            "Before you tighten",
            format!(
                "Taken as {}, the weakest there is. A marked screw may be given more.",
                strength.grade.name
            ),
        );
    }
    if strength.row.proof.is_none() {
        a.note(
            "stainless-galls",
            "Before you tighten",
            "Stainless on stainless galls and locks. Use paste, turn slowly.",
        );
    }
    a.note(
        "soft-parent",
        "Before you tighten",
        "The torque holds for a steel nut or a deep steel thread. In cast iron, aluminium or brass see whether the thread strips first; an old casting may be cracked or weaker than it looks.",
    );
    a.note(
        "oil-in-blind-hole",
        "Before you tighten",
        "Oil in a blind hole can lock the screw and split the casting. Blow it out first.",
    );
}
