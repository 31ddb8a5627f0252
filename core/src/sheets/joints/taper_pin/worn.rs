//! Which size cleans up a worn hole?

use super::any_length;
use super::tail::{self, Found};
use super::ways::{at, hub_of, opens};
use crate::pin::{self, TaperSeries, WornHole};
use crate::quantity::Length;
use crate::sheet::*;

static WORN: Source = Source::read("U.S. Army TM 9-254", "par. 3-2, damaged tapered holes");

/// Stands for a length that nothing goes by: short enough for every pin.
const SHORT: Length = Length::from_mm(1.0);

/// The answer by this way.
pub(super) fn from_worn(inp: &Inputs, series: TaperSeries) -> Result<Answer, Stop> {
    let hub = hub_of(inp, series)?;
    let at_small_face = inp.opt("worn-small");
    if at_small_face.is_some() && hub.is_none() {
        return Err(Stop::Missing("length"));
    }
    let hole = WornHole {
        at_large_face: inp.get("worn-large")?,
        at_small_face,
        // of an inch pin measured at the large face alone, no figure goes by the length
        hub: hub.unwrap_or(SHORT),
        least_cut: inp.get("least-cut")?,
    };
    let plan = pin::clean_up(&hole, series).map_err(|f| at(inp, "worn-large", f))?;
    let best = plan.sizes.first().ok_or(Stop::Missing("worn-large"))?;
    let mut a = inp.answer();
    a.words("pin", best.pin.name())
        .says("The smallest size whose reamer cuts the whole hole.");
    a.line("clean-at", plan.clean_at)
        .says("Least hole at the large face, on the diameter, that leaves no old surface.");
    a.line("least-travel", plan.least_travel).says("Along the hole, from first touch until it is clean. Wear is taken as straight between the faces.");
    if !inp.quiet() {
        let table = a.table(
            "sizes",
            "Sizes that clean up",
            &[
                "Pin",
                "off the large face",
                "reamer travels",
                "sticks out if you stop when clean",
            ],
        );
        for one in plan.sizes.iter().take(4) {
            table
                .row(vec![
                    Value::words(one.pin.name()),
                    Value::of(one.off_large_face),
                    Value::of(one.travel).places(3, 1),
                    Value::of(one.proud_when_clean).places(3, 1),
                ])
                .chosen(one.pin == best.pin)
                .opens("taper-pin", opens(one.pin, inp));
        }
        table.note("Reamed until the large end is flush. Stop when clean and the pin sticks out: cut it off at the large end.");
        let per = series.per();
        a.work(|w| {
            let seen = match hole.at_small_face {
                Some(small) => format!(
                    "D = larger of {} and {} + {} \u{f7} {per}, plus {} = {}",
                    inp.num(hole.at_large_face),
                    inp.num(small),
                    inp.num(hole.hub),
                    inp.num(hole.least_cut),
                    inp.show(plan.clean_at)
                ),
                None => format!(
                    "D = {} + {} = {} (small face not measured)",
                    inp.num(hole.at_large_face),
                    inp.num(hole.least_cut),
                    inp.show(plan.clean_at)
                ),
            };
            w.step(
                "Clean at the large face",
                &[
                    format!("D = larger of Dw and dw + L \u{f7} {per}, plus the least cut"),
                    seen,
                ],
                &WORN,
            );
        });
    }
    a.stop("next-size", "Before you ream to the next size", "Look at the wall that is left in hub and shaft. A larger pin weakens the shaft, and metal can't be put back.");
    let Some(length) = hub else {
        any_length::rest(inp, &mut a, best.pin)?;
        return Ok(a);
    };
    tail::tell(
        inp,
        &mut a,
        &Found {
            pin: best.pin,
            length,
            at: "length",
            is_picked: true,
            hole_now: hole.at_small_face,
        },
    )?;
    Ok(a)
}
