//! Which pin is the hole for, by a gauge that sinks into it?

use super::any_length;
use super::tail::{self, Found};
use super::ways::{at, hub_of, opens};
use crate::pin::{self, StandardPin, TaperSeries};
use crate::quantity::Length;
use crate::sheet::*;

static TIP: Source = Source::read(
    "D. Winkel, Machinist's Workshop",
    "shop tip on taper pins: depth \u{f7} 48 + shank",
);
static CONE: Source = Source::practice("Geometry of a ball in a cone");

/// The answer by this way.
pub(super) fn from_gauge(inp: &Inputs, series: TaperSeries) -> Result<Answer, Stop> {
    let gauge: Length = inp.get("gauge")?;
    let hub = hub_of(inp, series)?;
    let (t, per) = (series.taper(), series.per());
    let (face, lines, source): (_, _, &'static Source) = match inp.choice("gauge-kind") {
        "ball" => {
            let depth: Length = inp.get("depth")?;
            let face = pin::face_from_ball(gauge, depth, t).map_err(|f| at(inp, "gauge", f))?;
            let form = "D = b \u{d7} \u{221a}(1 + T\u{b2} \u{f7} 4) + T \u{d7} (h + b \u{f7} 2)";
            (
                face,
                [
                    form.to_owned(),
                    format!(
                        "b = {}, h = {}, T = 1 \u{f7} {per}: D = {}",
                        inp.num(gauge),
                        inp.num(depth),
                        inp.show(face)
                    ),
                ],
                &CONE,
            )
        }
        "taper" => {
            let proud: Length = inp.get("stands")?;
            let face =
                pin::face_from_taper_gauge(gauge, proud, t).map_err(|f| at(inp, "stands", f))?;
            (
                face,
                [
                    format!("D = G \u{2212} p \u{f7} {per}"),
                    format!(
                        "D = {} \u{2212} {} \u{f7} {per} = {}",
                        inp.num(gauge),
                        inp.num(proud),
                        inp.show(face)
                    ),
                ],
                &tail::DEFINITION,
            )
        }
        _ => {
            let depth: Length = inp.get("depth")?;
            let face =
                pin::face_from_plain_pin(gauge, depth, t).map_err(|f| at(inp, "depth", f))?;
            (
                face,
                [
                    format!("D = g + h \u{f7} {per}"),
                    format!(
                        "D = {} + {} \u{f7} {per} = {}",
                        inp.num(gauge),
                        inp.num(depth),
                        inp.show(face)
                    ),
                ],
                &TIP,
            )
        }
    };
    let mut pins = StandardPin::all(series);
    pins.retain(|one| hub.is_none_or(|hub| one.small_end(hub).is_ok()));
    // an inch pin's large end is the same at any length
    let length = hub.unwrap_or(Length::ZERO);
    let off = |one: &StandardPin| pin::sunk(*one, face, length);
    crate::order::sort_by(&mut pins, |a, b| {
        off(a).abs().mm().total_cmp(&off(b).abs().mm())
    });
    let best = *pins.first().ok_or_else(|| {
        inp.out_of_range(
            "length",
            "every pin would run to a point over this length",
            "",
        )
    })?;
    let mut a = inp.answer();
    a.line("face", face).says(match series {
        TaperSeries::Inch => {
            "On the diameter, for a taper of 1:48. A burred lip does not count in this."
        }
        TaperSeries::Metric => {
            "On the diameter, for a taper of 1:50. A burred lip does not count in this."
        }
    });
    a.words("pin", best.name())
        .says("The size whose large end comes nearest to flush in this hole.");
    a.line("sinks", off(&best))
        .signed()
        .says("Pushed in by hand, on its length. Below zero it sticks out by that much.");
    a.work(|w| w.step("Hole at the large face", &lines, source));
    if !inp.quiet() {
        let table = a.table(
            "sizes",
            "Pins for this hole",
            &["Pin", "large end", "sinks below the face"],
        );
        for one in pins.iter().take(4) {
            table
                .row(vec![
                    Value::words(one.name()),
                    Value::of(one.large_end(length)),
                    Value::of(off(one)).signed(),
                ])
                .chosen(*one == best)
                .opens("taper-pin", opens(*one, inp));
        }
        table.note("Below zero the pin's large end sticks out by that much.");
    }
    let Some(length) = hub else {
        any_length::rest(inp, &mut a, best)?;
        return Ok(a);
    };
    tail::tell(
        inp,
        &mut a,
        &Found {
            pin: best,
            length,
            at: "length",
            is_picked: true,
            hole_now: None,
        },
    )?;
    Ok(a)
}
