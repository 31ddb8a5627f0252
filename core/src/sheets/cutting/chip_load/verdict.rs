//! Does the chip cut, rub or break the cutter, and how deep may a slot be? One verdict, and the caution that goes with it.

use super::Cut;
use crate::cutting::sources::RUBBING;
use crate::cutting::*;
use crate::quantity::{Length, System};
use crate::sheet::*;

static SLOTTING: Source = Source::read(
    "An end mill maker's chart",
    "slotting 20% slower, deep slotting 50%; a teaching table: half a diameter deep",
);
/// Rubs, cuts, heavy or too heavy: one of them.
pub(super) fn verdict(inp: &Inputs, a: &mut Answer, cut: &Cut, thickest: Option<Length>) {
    let chip = thickest.unwrap_or(Length::from_mm(cut.chip.mm_per_tooth()));
    let show = |limit: Length| limit_text(inp, limit);
    // without a radial depth only the feed per tooth is known: the chip may be thinner
    let what = if thickest.is_some() {
        "the thickest chip"
    } else {
        "the feed per tooth"
    };
    let found = chip_verdict(chip, cut.carbide, cut.diameter);
    let words = match found {
        ChipVerdict::Rubs(rub) => format!("Rubs: {what} is under {}", show(rub)),
        ChipVerdict::Cuts(rub) if thickest.is_some() => {
            format!("Cuts: {what} is at or over {}", show(rub))
        }
        ChipVerdict::Cuts(rub) => format!(
            "Cuts from half the diameter up: {what} is at or over {}; a narrow cut thins it",
            show(rub)
        ),
        ChipVerdict::Heavy(limits) => format!(
            "Heavy in steel for this size: {what} is over {}; in aluminum up to {}",
            show(limits.steel),
            show(limits.soft)
        ),
        ChipVerdict::Breaks(limits) => format!(
            "Too heavy for this size: {what} is over {}, the most for any metal",
            show(limits.soft)
        ),
    };
    a.words("verdict", words).says("Rubbing: half a thou for a ground edge, one thou for carbide, less for a small cutter; common practice. Heavy: an end mill maker's chart by diameter, to 1 in.");
    match found {
        ChipVerdict::Breaks(_) => {
            a.stop("too-heavy", "Before you take this feed", "More per tooth than any row of the chart gives an end mill of this size: it is likely to break. Take a slower feed or a faster spindle, or more teeth.");
        }
        ChipVerdict::Heavy(limits) => {
            a.note("heavy", "Before you take this feed", format!("Heavy for an end mill of this size, except in aluminum and soft iron. In steel start at {} per tooth or less.", show(limits.steel)));
        }
        _ => {}
    }
    a.source(&RUBBING);
    if cut
        .diameter
        .is_some_and(|d| chip_limits(cut.carbide, d).is_some())
    {
        a.source(if cut.carbide {
            &CARBIDE_BY_DIAMETER
        } else {
            &HSS_BY_DIAMETER
        })
        .source(&SMALL_IN_PROPORTION);
    }
}

/// A small limit with the digits that it has, to a millionth of an inch.
fn limit_text(inp: &Inputs, limit: Length) -> String {
    inp.show_plain(match inp.system() {
        System::Inch => Length::from_inches(libm::round(limit.inches() * 1e6) / 1e6),
        System::Metric => Length::from_mm(libm::round(limit.mm() * 1e4) / 1e4),
    })
}

/// A full slot: how deep, and what it asks.
pub(super) fn slot(a: &mut Answer, inp: &Inputs, cut: &Cut) {
    let (Some(d), Some(engaged)) = (cut.diameter, cut.engaged) else {
        return;
    };
    if engaged < d * (1.0 - 1e-9) {
        return;
    }
    a.source(&SLOTTING);
    if inp
        .opt::<Length>("axial")
        .is_some_and(|axial| axial > d * (1.0 + 1e-9))
    {
        a.stop("deep-slot", "Before you cut this slot", "Deeper than the cutter's diameter in one pass: the chips pack and the cutter breaks. Take half a diameter per pass, one diameter at most.");
    } else {
        a.note("full-slot", "In a full slot", "Both sides cut and the chips have no way out: half a diameter deep per pass, one at most, a fifth less speed than beside an edge, and clear the chips.");
    }
}
