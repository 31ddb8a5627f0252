//! Which size is usual through this shaft and hub?

use super::tail::{self, Found};
use super::ways::{at, opens};
use crate::pin::{self, TaperSeries};
use crate::quantity::Length;
use crate::sheet::*;

static QUARTER: Source = Source::practice("Pin about a quarter of the shaft's diameter");

/// The answer by this way.
pub(super) fn from_shaft(inp: &Inputs, series: TaperSeries) -> Result<Answer, Stop> {
    let shaft: Length = inp.get("shaft")?;
    let hub: Length = inp.get("length")?;
    if hub <= shaft {
        let says = format!(
            "the hub must be larger than its shaft of {}",
            inp.show(shaft)
        );
        return Err(Stop::fault(
            "length",
            Reason::Conflict,
            says,
            "give the hub's outside diameter",
        ));
    }
    let choices = pin::for_shaft(shaft, hub, series).map_err(|f| at(inp, "shaft", f))?;
    let best = choices.first().ok_or(Stop::Missing("shaft"))?;
    let mut a = inp.answer();
    if !inp.quiet() {
        let table = a.table(
            "sizes",
            "Nearest to a quarter of the shaft",
            &["Pin", "middle", "of the shaft", "off a quarter"],
        );
        for one in choices.iter().take(4) {
            let name = if one.usual_length {
                one.pin.name()
            } else {
                format!("{} (not usual so long)", one.pin.name())
            };
            let row = vec![
                Value::words(name),
                Value::of(one.middle),
                Value::of(one.share),
                Value::of(one.off).signed(),
            ];
            table
                .row(row)
                .chosen(one.pin == best.pin)
                .opens("taper-pin", opens(one.pin, inp));
        }
        table.note("A guide only: check the shear, and mind that a larger hole weakens the shaft.");
        a.work(|w| {
            w.step(
                "A quarter of the shaft",
                &[
                    "d = shaft \u{f7} 4".into(),
                    format!(
                        "d = {} \u{f7} 4 = {}",
                        inp.num(shaft),
                        inp.show(shaft / 4.0)
                    ),
                ],
                &QUARTER,
            );
        });
    }
    tail::tell(
        inp,
        &mut a,
        &Found {
            pin: best.pin,
            length: hub,
            at: "length",
            is_picked: true,
            hole_now: None,
        },
    )?;
    Ok(a)
}
