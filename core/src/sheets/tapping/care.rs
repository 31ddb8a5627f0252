//! When does one stop and think, and what can this tapping do to hand and work?

use crate::cutting::THREAD_BAND;
use crate::quantity::Share;
use crate::sheet::*;
use crate::standards::cutting_speeds::Material;

/// What the tap tells, what to do, in the order of doing it.
#[rustfmt::skip]
const STOPS: &[[&str; 3]] = &[
    ["starts crooked", "stop within two turns, back out, square it", "a tap bent in the hole breaks; a guide or the spindle holds it square"],
    ["turns harder, turn by turn", "back off half a turn until the chip snaps", "the flutes are packing"],
    ["still hard after backing off", "take it right out, clear hole and flutes, oil", "chips lie at the bottom or under the land"],
    ["springs: the wrench moves, the tap does not", "stop and back out at once", "it twists before it breaks"],
    ["squeaks or squeals", "oil, back off, look at the edges", "dry or dull"],
    ["stops dead in a blind hole", "measure; do not force", "it is on the bottom or on its chips"],
    ["is hard from the first turn", "measure the hole, take the next larger drill", "the hole is small or its skin is work-hardened"],
];

pub(super) fn stop_table(a: &mut Answer) {
    let table = a.table(
        "stops",
        "When to stop and think",
        &["If the tap", "Do this", "Because"],
    );
    for row in STOPS {
        table.row(row.iter().map(|cell| Value::words(*cell)).collect());
    }
    table.note("Common practice. In cast iron and brass, chips are short and need less backing off; a spiral-point tap is not backed off.");
}

pub(super) fn cautions(
    a: &mut Answer,
    inp: &Inputs,
    material: Material,
    share: Share,
    deep: bool,
    torque: bool,
) {
    if inp.choice("how") == "machine" {
        a.stop("power-tap", "Before you tap by power", "Work clamped, clutch or floating holder, and know that the spindle reverses. Try the first one by hand.");
    } else {
        a.note("hand-tap", "Before you tap by hand", "Keep both hands even on the wrench and the tap square. A broken tap is sharp and flies: glasses on.");
    }
    a.note("torque-basis", "About the torque", if torque {
        "For a square start, oil and clear flutes. We have no verified source for the torque that breaks a tap; small ones go first, and a long wrench hides it from the hand."
    } else {
        "Neither maker's table has this metal, so no torque is given. Go by feel and by less thread."
    });
    if inp.choice("hole") == "blind" {
        a.note("blind-hole", "In a blind hole", "Mark the depth on the tap. Start with taper or plug tap, clear the hole, then the bottoming tap if the thread must go near the bottom.");
    }
    if share > Share::from_percent(THREAD_BAND.2) {
        a.note("much-thread", "About so much thread", "The Army manual goes to 83 % at most. More turns hard, breaks small taps and holds hardly better.");
    }
    if deep {
        a.note("deep", "At this depth", "More than two diameters of thread adds little strength. Counterbore the top, or cut less.");
    }
    if material == Material::StainlessSteel {
        a.note(
            "stainless",
            "In stainless steel",
            "It work-hardens where a tap rubs. Keep it cutting, sulphurised oil, no taper tap.",
        );
    }
    crate::sheets::speed_feed::care::metal(a, material);
}
