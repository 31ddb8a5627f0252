//! Which way in was chosen, and what do the ways have in common?

use super::tail::{self, Found};
use super::{any_length, gauge, measured, shaft, worn};
use crate::calls;
use crate::pin::{PinFault, StandardPin, TaperSeries};
use crate::quantity::Length;
use crate::sheet::*;

/// The sheet's function.
pub(super) fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let series = if inp.choice("series") == "metric" {
        TaperSeries::Metric
    } else {
        TaperSeries::Inch
    };
    match inp.choice("from") {
        "shaft" => shaft::from_shaft(inp, series),
        "pin" => measured::from_pin(inp),
        "gauge" => gauge::from_gauge(inp, series),
        "worn" => worn::from_worn(inp, series),
        _ => from_number(inp, series),
    }
}

fn from_number(inp: &Inputs, series: TaperSeries) -> Result<Answer, Stop> {
    let id = if series == TaperSeries::Metric {
        "size"
    } else {
        "number"
    };
    let call = calls::pin::read(inp.call(id)?, series).map_err(|_| Stop::Missing(id))?;
    let Some(length) = inp.opt("length").or(call.length) else {
        return Ok(any_length::tell(inp, call.pin));
    };
    let mut a = inp.answer();
    tail::tell(
        inp,
        &mut a,
        &Found {
            pin: call.pin,
            length,
            at: "length",
            is_picked: false,
            hole_now: None,
        },
    )?;
    Ok(a)
}

/// A fault of the formulas as a fault of a field.
pub(super) fn at(inp: &Inputs, field: &'static str, fault: PinFault) -> Stop {
    match fault {
        PinFault::NotPositive(what) => {
            inp.out_of_range(field, format!("the {what} must be more than nothing"), "")
        }
        PinFault::RunsToAPoint { limit } => inp.out_of_range(
            field,
            format!("this pin would run to a point at {}", inp.show(limit)),
            "give a shorter length or a larger pin",
        ),
        PinFault::NoTaper => Stop::fault(
            field,
            Reason::Conflict,
            "the large end must be larger than the small end",
            "change the two ends over",
        ),
        PinFault::BeyondSeries { largest } => inp.out_of_range(
            field,
            format!("the series ends at a large end of {}", inp.show(largest)),
            "bush the hole, or turn a pin to suit",
        ),
    }
}

/// What a tap on a row opens: this pin by its number, over the same length.
pub(super) fn opens(pin: StandardPin, inp: &Inputs) -> Vec<(&'static str, String)> {
    let mut entry = match pin.series() {
        TaperSeries::Inch => vec![("number", pin.call().to_owned())],
        TaperSeries::Metric => vec![
            ("series", "metric".to_owned()),
            ("size", pin.call().to_owned()),
        ],
    };
    let length = if inp.choice("from") == "pin" {
        "between"
    } else {
        "length"
    };
    for (to, from) in [("length", length), ("shaft", "shaft")] {
        if let Some(size) = inp.opt::<Length>(from) {
            entry.push((to, inp.show_plain(size)));
        }
    }
    entry
}
