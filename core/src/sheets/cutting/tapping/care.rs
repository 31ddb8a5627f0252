//! When does one stop and look, and what can this tapping do to hand and work?

use super::spindle::Turning;
use crate::cutting::THREAD_BAND;
use crate::quantity::{Length, Share};
use crate::sheet::*;
use crate::standards::cutting::cutting_speeds::Material;

/// By hand: what the tap tells, what to do, in the order of doing it.
#[rustfmt::skip]
const BY_HAND: &[[&str; 3]] = &[
    ["starts crooked", "stop within two turns, back out, square it", "a tap bent in the hole breaks; a guide or the spindle holds it square"],
    ["turns harder, turn by turn", "back off half a turn until the chip snaps", "the flutes are packing"],
    ["still hard after backing off", "take it right out, clear hole and flutes, oil", "chips lie at the bottom or under the land"],
    ["springs: the wrench moves, the tap does not", "stop and back out at once", "it twists before it breaks"],
    ["squeaks or squeals", "oil, back off, look at the edges", "dry or dull"],
    ["stops dead in a blind hole", "measure; do not force", "it is on the bottom or on its chips"],
    ["is hard from the first turn", "measure the hole, take the next larger drill", "the hole is small or its skin is work-hardened"],
];

/// By the spindle: the same, with a hand on the switch.
#[rustfmt::skip]
const BY_SPINDLE: &[[&str; 3]] = &[
    ["pushes or bends at the start", "stop the spindle, turn it back by hand, line up hole and spindle", "the spindle is not over the hole, or the work moves"],
    ["squeals or smokes", "stop the spindle; oil, slower, look at the edges", "dry, dull or too fast"],
    ["slows the spindle, or slips in the chuck", "switch off, turn it back out by hand, clear the chips", "chips pack the flutes, or the hole is small"],
    ["stalls in the hole", "switch off; do not jog it: work it loose by hand", "a jog either way snaps it"],
    ["comes out with packed flutes", "clear it; a spiral-point tap in a through hole, a spiral-flute tap in a blind one", "under power nothing breaks the chips"],
];

pub(super) fn stop_table(a: &mut Answer, turning: Turning) {
    let table = a.table(
        "stops",
        "When to stop and check",
        &["If the tap", "Do this", "Because"],
    );
    let rows = match turning {
        Turning::ByHand => BY_HAND,
        _ => BY_SPINDLE,
    };
    for row in rows {
        table.row(row.iter().map(|cell| Value::words(*cell)).collect());
    }
    table.note(match turning {
        Turning::ByHand => "Common practice. In cast iron and brass, chips are short and need less backing off; a spiral-point tap is not backed off.",
        _ => "Common practice.",
    });
}

/// What is known when the cautions are told.
pub(super) struct Care {
    pub turning: Turning,
    pub material: Material,
    pub share: Share,
    pub blind: bool,
    /// Deeper than two diameters.
    pub deep: bool,
    /// A torque is given.
    pub torque: bool,
    pub pitch: Length,
}

pub(super) fn cautions(a: &mut Answer, inp: &Inputs, care: &Care) {
    turned(a, inp, care);
    if care.torque {
        a.note("torque-basis", "About the torque", match care.turning {
            Turning::ByHand => "For a square start, oil and clear flutes. We have no verified source for the torque that breaks a tap; small ones go first, and a long wrench hides it from the hand.",
            _ => "For a square start, oil and clear flutes. We have no verified source for the torque that breaks a tap; small ones go first.",
        });
    } else {
        a.note("torque-unknown", "About the torque", match care.turning {
            Turning::ByHand => "Neither maker's table has this metal, so no torque is given. Go by feel and by less thread.",
            _ => "Neither maker's table has this metal, so no torque is given. Tap the first hole by hand, and cut less thread.",
        });
    }
    if care.share > Share::from_percent(THREAD_BAND.2) {
        a.note("much-thread", "About so much thread", "The Army manual goes to 83% at most. More turns hard, breaks small taps and holds hardly better.");
    }
    if care.deep {
        a.note("deep", "At this depth", "More than two diameters of thread adds little strength. Counterbore the top, or cut less.");
    }
    if care.material == Material::StainlessSteel {
        a.note(
            "stainless",
            "In stainless steel",
            "It work-hardens where a tap rubs. Keep it cutting, sulfurized oil, less thread than in mild steel, and start with a plug tap: the thin chips of a taper tap rub.",
        );
    }
    crate::sheets::cutting::speed_feed::cautions::metal(a, care.material);
}

/// What belongs to the hand, or to the spindle that turns the tap.
fn turned(a: &mut Answer, inp: &Inputs, care: &Care) {
    match care.turning {
        Turning::ByHand => {
            a.note("hand-tap", "Before you tap by hand", "Keep both hands even on the wrench and the tap square. A broken tap is sharp and flies: glasses on.");
            if care.blind {
                a.note("blind-hole", "In a blind hole", if care.material == Material::StainlessSteel {
                    "Mark the depth on the tap. Start with a plug tap, clear the hole, then the bottoming tap if the thread must go near the bottom."
                } else {
                    "Mark the depth on the tap. Start with taper or plug tap, clear the hole, then the bottoming tap if the thread must go near the bottom."
                });
            }
        }
        Turning::Spindle { one_turn, .. } => {
            a.stop("power-tap", "Before you tap by power", "Work clamped so that it cannot turn with the tap, oil on, hand on the switch, chuck only so tight that it slips before the tap breaks. Know how the spindle reverses: many a drill press does not, and then the tap comes out by hand with the power off. Try it on scrap.");
            if care.blind {
                a.stop("blind-by-power", "Before you tap this blind hole by power", format!("Do not, without a releasing or reversing head: past full thread the bottom is one turn away, {}, and a tap that bottoms breaks. Tap it by hand, with the spindle as a guide and the power off.", inp.show_to(one_turn, 1, 1)));
            }
        }
        Turning::Head { .. } => {
            a.stop("tapping-head", "Before you tap with the head", "Head set for this tap's size, its arm against a firm stop, work clamped, oil on. Feed with the tap, never ahead of it; to come out lift the quill, and let the head reverse.");
            if care.blind {
                a.stop("blind-with-head", "Before you tap this blind hole by power", format!("Depth stop set so that the head releases at least one turn, {}, short of the bottom, and tried with the spindle at rest. Blow or wash the chips out first.", inp.show_to(care.pitch, 4, 2)));
            }
        }
    }
}
