//! Which way in was chosen, and what do the ways have in common?

use super::tail::{self, Found};
use super::{any_length, gauge, measured, shaft, worn};
use crate::calls;
use crate::pin::{PinFault, StandardPin, TaperSeries};
use crate::quantity::{Length, System, nearest_fraction};
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
        return any_length::tell(inp, call.pin);
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

/// The length in the hub; an inch pin is known by its large end without it, a metric one is not.
pub(super) fn hub_of(inp: &Inputs, series: TaperSeries) -> Result<Option<Length>, Stop> {
    match (inp.opt("length"), series) {
        (None, TaperSeries::Metric) => Err(Stop::Missing("length")),
        (hub, _) => Ok(hub),
    }
}

/// A fault of the formulas as a fault of a field.
pub(super) fn at(inp: &Inputs, field: &'static str, fault: PinFault) -> Stop {
    match fault {
        PinFault::NotPositive(what) => {
            inp.out_of_range(field, format!("the {what} must be more than 0"), "")
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
            "swap the two ends",
        ),
        PinFault::NotATaperPin { taper } => {
            let per = 1.0 / taper.ratio();
            let half = TaperSeries::Inch.taper().ratio() / taper.ratio();
            let cure = if (1.7..2.3).contains(&half) {
                "it is about half of 1:48: if the change was measured on one side only, the ends differ by twice as much; else it is no taper pin"
            } else {
                "measure both ends and the length between them again: a taper pin changes by 0.0208 in over 1 in of length, or 0.02 mm over 1 mm"
            };
            Stop::fault(
                field,
                Reason::Conflict,
                format!(
                    "this is a taper of 1:{}, neither 1:48 nor 1:50",
                    crate::notation::plain(per, 0)
                ),
                cure,
            )
        }
        PinFault::BeyondSeries { largest } => inp.out_of_range(
            field,
            format!("the series ends at a large end of {}", inp.show(largest)),
            "fit a bushing in the hole, or turn a pin to suit",
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

/// A size as a rule has it: a whole 64th of an inch as its fraction, else in decimals.
pub(super) fn rule_size(inp: &Inputs, length: Length, inch: u8, metric: u8) -> String {
    let near = nearest_fraction(length, 64);
    if inp.system() == System::Inch && near.difference == Length::ZERO && near.numerator != 0 {
        return format!("{} in", near.text.replace(' ', "-"));
    }
    inp.show_to(length, inch, metric)
}
