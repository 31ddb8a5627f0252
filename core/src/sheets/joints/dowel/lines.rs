//! What is said of a dowel: its holes and fits, its own limits, its shear, the working.

use super::{Pin, holes};
use crate::pin::{self, FitBand, FitCharacter};
use crate::quantity::{Length, Stress};
use crate::sheet::*;
use crate::standards::pins::dowel_pins::InchSeries;

static FIT: Source = Source::practice("Clearance is hole minus pin, on the diameter");
static SHEAR: Source = Source::computed(
    "Shear over the round section",
    "F = \u{3c4} \u{d7} \u{3c0} \u{f7} 4 \u{d7} d\u{b2}",
);

/// A hole and the fit that it gives.
pub(super) fn hole_lines(
    inp: &Inputs,
    a: &mut Answer,
    pin: Pin,
    hole: &holes::Hole,
    [id, tightest, loosest, fit]: [&'static str; 4],
) {
    let band = pin::fit_band(pin.limits(), hole.limits);
    let (least, most) = hole.limits;
    a.line(id, (least + most) / 2.0)
        .places(5, 4)
        .says(hole.says.clone())
        .band(least, most, "min. and max. hole");
    a.line(tightest, band.tightest)
        .places(5, 4)
        .signed()
        .says("Smallest hole minus largest pin, on the diameter. Below zero is interference.");
    a.line(loosest, band.loosest)
        .places(5, 4)
        .signed()
        .says("Largest hole minus smallest pin, on the diameter. Below zero is interference.");
    a.words(fit, character(band)).says(tell(inp, band));
}

fn character(band: FitBand) -> &'static str {
    match band.character() {
        FitCharacter::Press => "press: holds in every pair",
        FitCharacter::Transition => "transition: some pairs hold, some slip",
        FitCharacter::Slip => "slip: free in every pair",
    }
}

/// The fit in words, with its two ends.
pub(super) fn tell(inp: &Inputs, band: FitBand) -> String {
    let show = |one: Length| inp.show_to(one.abs(), 5, 4);
    match band.character() {
        FitCharacter::Press => format!(
            "Interference {} to {}, on the diameter.",
            show(band.loosest),
            show(band.tightest)
        ),
        FitCharacter::Slip => format!(
            "Clearance {} to {}, on the diameter.",
            show(band.tightest),
            show(band.loosest)
        ),
        FitCharacter::Transition => format!(
            "From {} tight to {} loose: measure the pin, and ream to suit.",
            show(band.tightest),
            show(band.loosest)
        ),
    }
}

/// The pin's own limits.
pub(super) fn pin_line(a: &mut Answer, pin: Pin) {
    let (least, most) = pin.limits();
    let says = match pin {
        Pin::Inch(_, InchSeries::Standard) => {
            "Basic size: nominal + 0.0002 in, \u{b1}0.0001 in.".to_owned()
        }
        Pin::Inch(_, InchSeries::Oversize) => {
            "Basic size: nominal + 0.0010 in, \u{b1}0.0001 in.".to_owned()
        }
        Pin::M6(row) => format!(
            "m6. {}",
            if row.hardened {
                "Hardened to ISO 8734, or unhardened to ISO 2338."
            } else {
                "Unhardened, ISO 2338; ISO 8734 does not have this size."
            }
        ),
        Pin::H8(_) => "h8, unhardened, ISO 2338.".to_owned(),
    };
    a.line("pin-size", (least + most) / 2.0)
        .places(4, 4)
        .says(says)
        .band(least, most, "min. and max. pin");
}

/// What the pin carries.
pub(super) fn shear(inp: &Inputs, a: &mut Answer, pin: Pin) {
    match pin {
        Pin::Inch(row, _) => {
            let load = row.single_shear();
            a.line("single-shear", load)
                .says("SINGLE shear, listed: about 130000 psi at breaking. Use a part of it.");
            a.line("double-shear", load * 2.0)
                .says("Twice the single shear.");
            a.source(&super::ASME);
        }
        Pin::M6(row) | Pin::H8(row) => {
            let Some(stress) = inp.opt::<Stress>("stress") else {
                return;
            };
            a.line(
                "single-shear",
                pin::shear_force(row.nominal(), stress, pin::Shear::Single),
            )
            .says("SINGLE shear at the stress that you allow.");
            a.line(
                "double-shear",
                pin::shear_force(row.nominal(), stress, pin::Shear::Double),
            )
            .says("Twice the single shear.");
            a.source(&SHEAR);
        }
    }
}

/// The working, with this entry's numbers.
pub(super) fn working(inp: &Inputs, a: &mut Answer, pin: Pin, press: &holes::Hole) {
    let show = |one: Length| inp.num_to(one, 4, 4);
    let (least, most) = pin.limits();
    let band = pin::fit_band(pin.limits(), press.limits);
    a.work(|w| {
        if let Pin::Inch(_, series) = pin {
            let lines = ["basic = nominal + over, \u{b1}tolerance".into(), format!("{} + {} = {}, {} to {}", show(pin.nominal()), show(series.over()), show(pin.nominal() + series.over()), show(least), show(most))];
            w.step("Pin", &lines, pin.source());
        }
        let lines = [
            "tightest = smallest hole \u{2212} largest pin; loosest = largest hole \u{2212} smallest pin".into(),
            format!("{} \u{2212} {} = {}", show(press.limits.0), show(most), inp.num_to(band.tightest, 4, 4)),
            format!("{} \u{2212} {} = {}", show(press.limits.1), show(least), inp.num_to(band.loosest, 4, 4)),
        ];
        w.step("Fit in the press-fit plate", &lines, &FIT);
    });
}
