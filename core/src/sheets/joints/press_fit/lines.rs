//! What does a press or shrink fit take and give, in figures: force, torque, heat and stresses?

use super::{Case, press_stop};
use crate::fit::press::{Joint, Stresses, shop_allowance, temperature};
use crate::fit::sources::SHRUNK;
use crate::quantity::units::{INCH, KSI, MICRON, MPA, NUMBER, US_TON};
use crate::quantity::{
    Length, Stress, System, Temperature, TemperatureDifference, Torque, decimal,
};
use crate::sheet::*;

/// The room in which parts are put together: 70 °F.
const ROOM: Temperature = Temperature::from_fahrenheit(70.0);
/// How far liquid nitrogen at -196 °C lies below a room of 20 °C.
const COLDEST: TemperatureDifference = TemperatureDifference::from_kelvins(216.0);

/// A bare number with two decimals.
pub(super) fn two(number: f64) -> String {
    decimal(number, &NUMBER, 2)
}

/// Stress in ksi or MPa, three figures at most.
pub(super) fn stress(inp: &Inputs, stress: Stress) -> String {
    Value::of(stress)
        .units(&KSI, &MPA)
        .places(2, 1)
        .text_with_unit(inp.system())
}

/// Decimals of a torque (inch, metric), about three figures.
fn torque_places(torque: Torque) -> (u8, u8) {
    match torque.newton_metres() {
        ..10.0 => (2, 2),
        ..100.0 => (1, 1),
        ..150.0 => (1, 0),
        _ => (0, 0),
    }
}

/// A small length, in inches to a hundredth of a thou or in microns.
pub(super) fn small(inp: &Inputs, length: Length) -> String {
    Value::of(length)
        .units(&INCH, &MICRON)
        .places(5, 1)
        .text_with_unit(inp.system())
}

/// What presses it on, and what it holds. With measured parts there is but one pair.
pub(super) fn strength(a: &mut Answer, c: &Case, joint: &Joint, (least, most): (Stress, Stress)) {
    let (low, high) = c.friction;
    let middle = f64::midpoint(low, high);
    let (friction, worked) = if low < high {
        (
            format!("friction {} to {}", two(low), two(high)),
            "; the middle is taken.",
        )
    } else {
        (format!("friction {}", two(low)), ".")
    };
    let force = |p: Stress, f: f64| joint.axial_force(p, c.length, f);
    let torque = |f: f64| joint.torque(least, c.length, f);
    let single = c.band.is_none();
    let slip = if single {
        "At the moment of slip, no factor of safety."
    } else {
        "Least interference, at the moment of slip, no factor of safety."
    };
    let press = force(most, middle);
    for (id, says) in [
        ("force", format!("At full length, {friction}{worked}")),
        (
            "force-tons",
            "Tons of 2000 lbf, as on the gauge of a shop press.".to_owned(),
        ),
    ] {
        let line = a.line(id, press).says(says);
        if id == "force-tons" {
            line.units(&US_TON, &US_TON);
        }
        if single && id == "force" {
            line.label("Press force");
        }
        if low < high {
            line.band(force(most, low), force(most, high), friction.clone());
        }
    }
    let (inch, metric) = torque_places(torque(middle));
    let line = a
        .line("torque", torque(middle))
        .places(inch, metric)
        .says(slip);
    if low < high && least > Stress::ZERO {
        line.band(torque(low), torque(high), friction.clone());
    }
    let line = a.line("hold", force(least, middle)).says(slip);
    if low < high && least > Stress::ZERO {
        line.band(force(least, low), force(least, high), friction);
    }
}

/// How hot the hub, or how cold the shaft.
pub(super) fn heat(inp: &Inputs, a: &mut Answer, c: &Case) -> Result<(), Stop> {
    let change =
        |grows| temperature(c.diameter, c.interference.1, c.clearance, grows).map_err(press_stop);
    let with = format!(
        "{}{} of clearance on the diameter",
        if c.band.is_some() {
            "most interference and "
        } else {
            ""
        },
        inp.show_plain(c.clearance)
    );
    if let Some(grows) = c.hub.grows {
        let rise = change(grows)?;
        let to = ROOM + rise;
        let line = a.line("heat", rise).says(format!(
            "Above the shaft: to about {} from {}; {with}.",
            inp.show(to),
            inp.show(ROOM)
        ));
        let also = c.hub.grows_also.map(change).transpose()?;
        if let Some(less) = also {
            line.band(less, rise, "two lists of expansion");
        }
        let line = a.line("heat-to", to).says(format!(
            "From a shaft at {}; measure it at the bore with a temperature stick or probe.",
            inp.show(ROOM)
        ));
        if let Some(less) = also {
            line.band(ROOM + less, to, "two lists of expansion");
        }
    }
    if let Some(grows) = c.shaft.grows {
        let drop = change(grows)?;
        if drop <= COLDEST {
            let line = a
                .line("chill", drop)
                .says(format!("Below the hub; {with}."));
            if let Some(less) = c.shaft.grows_also.map(change).transpose()? {
                line.band(less, drop, "two lists of expansion");
            }
        }
    }
    Ok(())
}

/// Interference, pressure and stresses, all stresses in one unit.
pub(super) fn stresses(
    inp: &Inputs,
    a: &mut Answer,
    c: &Case,
    (least, most): (Stress, Stress),
    stresses: &Stresses,
) {
    let pair = if c.band.is_some() {
        "Most interference. "
    } else {
        ""
    };
    let smooth = if inp.choice("smoothing") == "din-7190" {
        ", minus what the roughness takes"
    } else {
        ""
    };
    let line = a.line("interference", c.acting.1).places(5, 4);
    line.says(format!("{pair}On the diameter{smooth}."));
    if c.acting.0 < c.acting.1 {
        line.band(c.acting.0, c.acting.1, "limits of the fit");
    }
    a.line("rule", shop_allowance(c.diameter))
        .places(5, 4)
        .says("A thousandth to the inch of diameter, for shrunk fits in iron and steel.");
    a.source(&SHRUNK);
    let line = a
        .line("pressure", most)
        .units(&KSI, &MPA)
        .places(2, 1)
        .says(format!("{pair}Even over the length."));
    if least < most {
        line.band(least, most, "limits of the fit");
    }
    for (id, value, says) in [
        ("hub-stress", stresses.hub_hoop, "Tension, at the bore."),
        (
            "shaft-stress",
            stresses.shaft_hoop,
            "At the surface; a minus is compression.",
        ),
        (
            "hub-compare",
            stresses.hub_equivalent,
            "Hoop minus radial stress (largest shear), at the bore.",
        ),
        (
            "shaft-compare",
            stresses.shaft_equivalent,
            "Largest difference of stresses (largest shear).",
        ),
    ] {
        let line = a
            .line(id, value)
            .units(&KSI, &MPA)
            .places(2, 1)
            .says(format!("{pair}{says}"));
        match id {
            "hub-compare" if c.hub.brittle => {
                line.label("Hub stress against tensile strength");
            }
            "shaft-compare" if c.shaft.brittle => {
                line.label("Shaft stress against tensile strength");
            }
            _ => {}
        }
    }
}

/// A temperature difference in whole degrees of the system in use.
pub(super) fn degrees(inp: &Inputs, kelvins: f64, fahrenheit: &'static str) -> String {
    match inp.system() {
        System::Inch => fahrenheit.to_owned(),
        System::Metric => inp.show(TemperatureDifference::from_kelvins(kelvins)),
    }
}
