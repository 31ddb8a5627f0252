//! How does the pin sit in a hole that is there, and what is to be done where it does not?

use super::holes::Hole;
use super::lines::tell;
use super::{Pin, larger};
use crate::pin::{self, FitCharacter, Limits};
use crate::quantity::Length;
use crate::sheet::*;
use crate::standards::pins::dowel_pins::{self as table, InchDowel, InchSeries};

/// A hole farther from the nominal size than this is no hole for this pin: ten thou, or 8 % of a small pin (common practice: an
/// oversize pin makes good one thou, a step dowel a few).
fn room(nominal: Length) -> Length {
    Length::from_thou(10.0).min(nominal * 0.08)
}
/// A last digit that decides nothing.
const NOISE: Length = Length::from_um(0.01);
/// Tighter by this than the tightest hole that is printed, a pin galls or splits the part before it is home.
const TOO_TIGHT: Length = Length::from_thou(0.5);

/// Lines, verdict and what to do next for the measured hole.
pub(super) fn measured(
    inp: &Inputs,
    a: &mut Answer,
    pin: Pin,
    press: &Hole,
    slip: &Hole,
) -> Result<(), Stop> {
    let Some(hole) = inp.opt::<Length>("hole") else {
        return Ok(());
    };
    let nominal = pin.nominal();
    if (hole - nominal).abs() > room(nominal) + NOISE {
        return Err(no_fit(inp, pin, hole));
    }
    let band = pin::fit_band(pin.limits(), (hole, hole));
    a.line("measured-tightest", band.tightest)
        .places(5, 4)
        .signed()
        .says("Measured hole minus the largest pin.");
    a.line("measured-loosest", band.loosest)
        .places(5, 4)
        .signed()
        .says(format!(
            "Measured hole minus the smallest pin. {}",
            tell(inp, band)
        ));
    let (verdict, next) = if hole < press.limits.0 - TOO_TIGHT - NOISE {
        a.stop("hole-too-tight", "Before you press it", "This hole is much under the one that the pin wants: the pin galls, or a thin boss splits. Ream it first.");
        (
            "too tight: ream it",
            format!("Ream to {}.", span(inp, press.limits)),
        )
    } else if hole <= press.limits.1 + NOISE {
        (
            "holds",
            "Within or a little under the hole that holds this pin.".to_owned(),
        )
    } else if band.character() != FitCharacter::Slip {
        (
            "may hold, may not",
            "Over the hole that holds this pin: measure the pin and take the largest of several."
                .to_owned(),
        )
    } else if hole <= slip.limits.1 + NOISE {
        ("slips", held(inp, pin))
    } else {
        ("loose: neither holds nor locates", held(inp, pin))
    };
    a.words("in-hole", verdict).says(next);
    if band.character() == FitCharacter::Slip {
        a.note("worn-hole", "Before you ream a worn hole larger", "Clamp both parts in place and ream both together, so that the holes stay in line. Look at the wall that is left.");
    }
    Ok(())
}

/// What holds again in a hole that has become too large.
fn held(inp: &Inputs, pin: Pin) -> String {
    let next = larger(pin).map_or_else(
        || "a step dowel turned to suit".to_owned(),
        |size| {
            let ream = next_hole(pin, size).map_or_else(String::new, |hole| {
                format!(": ream both parts, clamped, to {}", span(inp, hole))
            });
            format!(
                "a step dowel turned to suit, or the next size, {size} {}{ream}",
                unit(pin)
            )
        },
    );
    match pin {
        Pin::Inch(row, InchSeries::Standard) => {
            let raise = InchSeries::Oversize.over() - InchSeries::Standard.over();
            let (least, most) = row.suggested_hole();
            let over = (least + raise, most + raise);
            let hole = inp.opt::<Length>("hole").unwrap_or_default();
            if hole <= over.1 + NOISE {
                format!(
                    "To hold: ream to {} for the oversize pin; else {next}.",
                    span(inp, over)
                )
            } else {
                format!("To hold: too large for the oversize pin too; {next}.")
            }
        }
        _ => format!("To hold: {next}."),
    }
}

/// The suggested hole of an inch size; metric holes go by the class that is chosen.
fn next_hole(pin: Pin, size: &str) -> Option<Limits> {
    match pin {
        Pin::Inch(..) => table::INCH
            .iter()
            .find(|row| row.size == size)
            .map(InchDowel::suggested_hole),
        Pin::M6(_) | Pin::H8(_) => None,
    }
}

fn span(inp: &Inputs, (least, most): (Length, Length)) -> String {
    format!("{} to {}", inp.num_to(least, 4, 3), inp.show_to(most, 4, 3))
}

const fn unit(pin: Pin) -> &'static str {
    match pin {
        Pin::Inch(..) => "in",
        Pin::M6(_) | Pin::H8(_) => "mm",
    }
}

fn no_fit(inp: &Inputs, pin: Pin, hole: Length) -> Stop {
    let (nominal, off) = (pin.nominal(), (hole - pin.nominal()).abs());
    if hole < nominal {
        return Stop::fault(
            "hole",
            Reason::Conflict,
            format!(
                "this hole is {} under the pin: no fit for this pin",
                inp.show(off)
            ),
            "measure again, or drill and ream the hole to size",
        );
    }
    let cure = larger(pin).map_or_else(
        || "fit a bushing in the hole".to_owned(),
        |size| {
            format!(
                "next size {size} {}: clamp both parts and ream both; or fit a bushing in the hole",
                unit(pin)
            )
        },
    );
    Stop::fault(
        "hole",
        Reason::Conflict,
        format!(
            "this hole is {} over the pin, too large: no fit for this pin",
            inp.show(off)
        ),
        cure,
    )
}
