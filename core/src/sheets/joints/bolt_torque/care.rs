//! What is to be minded before the wrench turns?

use super::working::Case;
use crate::quantity::Force;
use crate::sheet::{Answer, Inputs};

/// When a note on tightening belongs.
const BEFORE: &str = "Before you tighten";

/// In a blind hole: said on every page where a screw goes into one.
pub(in crate::sheets) const BLIND_HOLE: &str = "In a blind hole, oil, grease, coolant, sealant or threadlocker trapped at the bottom can lock the screw before it clamps and split the casting. Blow the hole out and put the sealant on the screw, not into the hole.";

/// The cautions, each by its own condition.
pub(super) fn cautions(inp: &Inputs, case: &Case, highest: Force, a: &mut Answer) {
    let strength = &case.strength;
    a.stop(
        "makers-figure",
        BEFORE,
        "The figure of the machine's maker comes first, and local codes where they apply. Never go past it with a figure from here.",
    );
    if highest > case.proof_load {
        a.note(
            "spread-past-limit",
            BEFORE,
            format!(
                "With this spread the clamp load may pass the load at the {} stress. Tighten by a better method or aim lower.",
                strength.limit_name()
            ),
        );
    }
    // 90% as typed must not pass on the last bit
    if case.share.fraction() > 0.9 + 1e-9 {
        a.note("past-90-percent", BEFORE, "More than 90% of the limit leaves no room for error. Usual is 75%, or 90% where the joint is permanent.");
    }
    if inp.choice("grade") == "unmarked" {
        a.note(
            "grade-assumed",
            BEFORE,
            format!(
                "Taken as {}, the weakest there is. A marked screw may be given more.",
                strength.grade.name
            ),
        );
    }
    if strength.grade.stainless {
        a.note(
            "stainless-galls",
            BEFORE,
            "Stainless on stainless galls and locks. Use paste, turn slowly.",
        );
    }
    a.note(
        "soft-parent",
        BEFORE,
        "The torque holds for a steel nut or a deep steel thread. In cast iron, aluminum, brass or bronze check first at what torque the thread strips; an old casting may be cracked or weaker than it looks.",
    );
    a.note("oil-in-blind-hole", BEFORE, BLIND_HOLE);
}
