//! What is to be minded before a screw is tightened into a tapped hole?

use super::case::{Case, Verdict};
use crate::quantity::Length;
use crate::sheet::{Answer, Inputs};
use crate::sheets::joints::bolt_torque::care::BLIND_HOLE;
use crate::sheets::joints::bolt_torque::strength::Strength;

const BEFORE: &str = "Before you tighten";

/// The cautions, each by its own condition; what fails first is said once, by the same rule as the result.
pub(super) fn cautions(inp: &Inputs, case: &Case, strength: &Strength, a: &mut Answer) {
    a.stop(
        "stripped-for-good",
        BEFORE,
        "A stripped thread cannot be put back. The figures are for sound, full threads, and the machine maker's figure comes first.",
    );
    let verdict = inp
        .opt::<Length>("depth")
        .and_then(|depth| case.by_rule(depth).ok())
        .map(|(usual, low)| Case::verdict(&usual, &low));
    match verdict {
        Some(Verdict::Thread(_)) => {
            a.note(
                "too-shallow",
                BEFORE,
                "The engagement is less than needed: do not count on the screw to break first. Stay at the safe torque or go deeper.",
            );
        }
        Some(Verdict::Doubtful) => {
            a.note(
                "shallow-if-weak",
                BEFORE,
                "Deep enough for the usual strength only, not for the lowest published. Take the tapped thread as the weaker part.",
            );
        }
        Some(Verdict::Screw) | None => {}
    }
    if case.hole.iron {
        a.note(
            "old-casting",
            BEFORE,
            "An old casting may be porous, cracked or weaker than its class, and a thick one is weaker than its test bar. Look for cracks and count the threads that are really there.",
        );
    }
    if inp.choice("grade") == "unmarked" {
        a.note(
            "grade-assumed",
            BEFORE,
            format!(
                "The screw is taken as {}, the weakest there is. A stronger one needs more engagement, and the tapped thread then strips before it breaks.",
                strength.grade.name
            ),
        );
    }
    a.note("oil-in-blind-hole", BEFORE, BLIND_HOLE);
}
