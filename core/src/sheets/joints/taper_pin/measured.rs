//! Which pin was it, by its measured ends?

use super::tail::{self, Found};
use super::ways::{at, opens};
use crate::pin::{self, TaperSeries};
use crate::quantity::units::DEGREE;
use crate::quantity::{Length, Quantity, with_unit};
use crate::sheet::*;

/// Farther off than this at an end, a pin is not simply that number: a third of the step between small numbers, 0.0155 in.
const ENDS_AGREE: Length = Length::from_thou(5.0);

/// The answer by this way.
pub(super) fn from_pin(inp: &Inputs) -> Result<Answer, Stop> {
    let (large, small, between) = (inp.get("large")?, inp.get("small")?, inp.get("between")?);
    let measured = pin::identify(large, small, between).map_err(|f| at(inp, "large", f))?;
    let best = measured.matches.first().ok_or(Stop::Missing("large"))?;
    let mut a = inp.answer();
    a.words("pin", best.pin.name())
        .says("The nearest standard pin by both ends.");
    a.line("measured-taper", measured.taper)
        .says(match measured.nearer {
            TaperSeries::Inch => "Change of diameter over length. Nearer to 1:48 (inch pins) than to 1:50 (metric pins).",
            TaperSeries::Metric => {
                "Change of diameter over length. Nearer to 1:50 (metric pins) than to 1:48 (inch pins)."
            }
        });
    a.line("telling", measured.telling)
        .places(5, 4)
        .says("On the diameter. Measure closer than this to tell the series apart.");
    if !inp.quiet() {
        let table = a.table(
            "matches",
            "Nearest standard pins",
            &["Pin", "large end off", "small end off"],
        );
        for one in measured.matches.iter().take(4) {
            table
                .row(vec![
                    Value::words(one.pin.name()),
                    Value::of(one.large_off).signed(),
                    Value::of(one.small_off).signed(),
                ])
                .chosen(one.pin == best.pin)
                .opens("taper-pin", opens(one.pin, inp));
        }
        table.note("Measured minus standard, at these two places. An inch pin is told by its large end, a metric one by its small end.");
        a.work(|w| {
            w.step(
                "Taper",
                &[
                    "T = (D \u{2212} d) \u{f7} L".into(),
                    format!(
                        "T = ({} \u{2212} {}) \u{f7} {} = {}",
                        inp.num(large),
                        inp.num(small),
                        inp.num(between),
                        inp.show(measured.taper)
                    ),
                    format!(
                        "included angle = 2 atan(T \u{f7} 2) = {}",
                        with_unit(pin::included_angle(measured.taper).base(), &DEGREE, 2)
                    ),
                ],
                &tail::DEFINITION,
            );
        });
    }
    let worst = best.worst();
    // a last bit is no step past the limit
    if worst > ENDS_AGREE * (1.0 + 1e-9) {
        a.note(
            "ends-off",
            "Before you order by this number",
            format!(
                "An end is off by {}: this pin was shortened, is worn, or is no standard size. Gauge the hole and go by that.",
                inp.show(worst)
            ),
        );
    }
    tail::tell(
        inp,
        &mut a,
        &Found {
            pin: best.pin,
            length: between,
            at: "between",
            is_picked: true,
            hole_now: None,
        },
    )?;
    Ok(a)
}
