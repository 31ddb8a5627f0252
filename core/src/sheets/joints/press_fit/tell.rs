//! How was the press fit worked out, in numbers that can be worked again?

use super::super::fit_limits::tell::recalled;
use super::lines::{small, stress, two};
use super::{Case, care, draw};
use crate::calls::fit::{FitCall, read};
use crate::fit::Limits;
use crate::fit::press::{Joint, Stresses, temperature};
use crate::fit::sources::*;
use crate::quantity::units::{INCH, KSI, MM, MPA, NUMBER, PER_F, PER_K};
use crate::quantity::{Expansion, Length, Stress, System, decimal};
use crate::sheet::*;

fn four(number: f64) -> String {
    decimal(number, &NUMBER, 4)
}

/// Young's modulus in ksi or MPa.
fn modulus(inp: &Inputs, modulus: Stress) -> String {
    Value::of(modulus)
        .units(&KSI, &MPA)
        .places(0, 0)
        .text_with_unit(inp.system())
}

/// A small length in inches or millimeters, for a formula beside the diameter.
fn beside(inp: &Inputs, length: Length) -> String {
    Value::of(length)
        .units(&INCH, &MM)
        .places(5, 5)
        .text_with_unit(inp.system())
}

fn growth(inp: &Inputs, expansion: Expansion) -> String {
    Value::of(expansion)
        .units(&PER_F, &PER_K)
        .places(2, 1)
        .text(inp.system())
}

pub(super) fn tell(
    inp: &Inputs,
    a: &mut Answer,
    c: &Case,
    joint: &Joint,
    (least, most): (Stress, Stress),
    stresses: &Stresses,
) {
    let chills = a.get("chill").is_some();
    a.work(|w| {
        interference(inp, w, c);
        pressure(inp, w, c, joint, most);
        stress_steps(inp, w, joint, most, stresses);
        forces(inp, w, c, joint, least, most);
        heat(inp, w, c, chills);
    });
    match inp.opt_call("fit").map(read) {
        Some(Ok(FitCall::Inch(class))) => {
            recalled(a, c.diameter, class);
            a.source(b41_source(class.series))
        }
        Some(_) => a.source(&ISO_286),
        None => a,
    }
    .source(&SHIGLEY_A5);
    for id in ["hub", "shaft-material"] {
        for source in growth_sources(inp.choice(id)) {
            a.source(source);
        }
    }
    a.source(&FRICTION);
    care::cautions(inp, a, c);
    a.draw(|| draw::section(inp, c));
}

fn interference(inp: &Inputs, w: &mut Work, c: &Case) {
    let (least, most) = c.interference;
    let mut lines = match c.band {
        Some(band) => {
            let Limits { upper, lower } = band.shaft;
            vec![
                format!(
                    "most = shaft upper − hole lower = {} − ({}) = {}",
                    small(inp, upper),
                    small(inp, band.hole.lower),
                    small(inp, most)
                ),
                format!(
                    "least = shaft lower − hole upper = {} − ({}) = {}",
                    small(inp, lower),
                    small(inp, band.hole.upper),
                    small(inp, least)
                ),
            ]
        }
        None => vec![format!(
            "δ = shaft − hole = {} − {} = {}",
            inp.show_plain(c.diameter + most),
            inp.show_plain(c.diameter),
            beside(inp, most)
        )],
    };
    if inp.choice("smoothing") == "din-7190" {
        let (hole, shaft) = (
            inp.opt("rz-hole").unwrap_or(Length::ZERO),
            inp.opt("rz-shaft").unwrap_or(Length::ZERO),
        );
        lines.push(format!(
            "minus the roughness: δ − 0.8 (Rz hole + Rz shaft) = {} − 0.8 × ({} + {}) = {}",
            small(inp, most),
            small(inp, hole),
            small(inp, shaft),
            small(inp, c.acting.1)
        ));
        w.step("Interference on the diameter", &lines, &DIN_7190);
    } else {
        w.step("Interference on the diameter", &lines, &FIT_TERMS);
    }
}

fn pressure(inp: &Inputs, w: &mut Work, c: &Case, joint: &Joint, most: Stress) {
    let (hub, shaft) = (c.hub.elastic, c.shaft.elastic);
    let (h, s) = (joint.hub_factor(), joint.shaft_factor());
    w.step(
        if c.band.is_some() {
            "Pressure at most interference"
        } else {
            "Pressure"
        },
        &[
            format!(
                "H = (D² + d²)/(D² − d²), D = {}, d = {}: H = {}",
                inp.show(c.outside),
                inp.show(c.diameter),
                four(h)
            ),
            format!(
                "S = (d² + b²)/(d² − b²), b = {}: S = {}",
                inp.show(c.bore),
                four(s)
            ),
            "p = δ / (d ((H + νh)/Eh + (S − νs)/Es))".into(),
            format!(
                "p = {} / ({} × (({} + {}) / {} + ({} − {}) / {})) = {}",
                beside(inp, c.acting.1),
                inp.show(c.diameter),
                four(h),
                four(hub.poisson),
                modulus(inp, hub.modulus),
                four(s),
                four(shaft.poisson),
                modulus(inp, shaft.modulus),
                stress(inp, most)
            ),
        ],
        &SHIGLEY,
    );
}

fn stress_steps(inp: &Inputs, w: &mut Work, joint: &Joint, most: Stress, stresses: &Stresses) {
    w.step(
        "Stresses",
        &[
            format!(
                "hub, hoop = p H = {} × {} = {}",
                stress(inp, most),
                four(joint.hub_factor()),
                stress(inp, stresses.hub_hoop)
            ),
            format!(
                "shaft, hoop = −p S = −{} × {} = {}",
                stress(inp, most),
                four(joint.shaft_factor()),
                stress(inp, stresses.shaft_hoop)
            ),
            format!(
                "hub, against yield = hoop + p = {} + {} = {}",
                stress(inp, stresses.hub_hoop),
                stress(inp, most),
                stress(inp, stresses.hub_equivalent)
            ),
        ],
        &SHIGLEY,
    );
}

fn forces(inp: &Inputs, w: &mut Work, c: &Case, joint: &Joint, least: Stress, most: Stress) {
    let middle = f64::midpoint(c.friction.0, c.friction.1);
    // ksi and inches give thousands of lbf, lbf and inches in-lb; MPa and millimeters give N and thousandths of N·m
    let (formula, thousand, turn, divisor) = match inp.system() {
        System::Inch => (
            "F = 1000 f p π d l (p in ksi)",
            "1000 × ",
            "T = F d/24",
            "24",
        ),
        System::Metric => ("F = f p π d l", "", "T = F d/2000", "2000"),
    };
    let push = |name: &str, p: Stress| {
        format!(
            "{name} = {thousand}{} × {} × π × {} × {} = {}",
            two(middle),
            precise(inp, p),
            inp.show(c.diameter),
            inp.show(c.length),
            inp.show(joint.axial_force(p, c.length, middle))
        )
    };
    w.step(
        "Force and torque",
        &[
            formula.into(),
            push("press", most),
            push("hold", least),
            format!(
                "{turn} = {} × {} / {divisor} = {}",
                inp.show(joint.axial_force(least, c.length, middle)),
                inp.show(c.diameter),
                inp.show(joint.torque(least, c.length, middle))
            ),
        ],
        &SHIGLEY,
    );
}

/// Stress with more figures, so that the product comes out as printed.
fn precise(inp: &Inputs, stress: Stress) -> String {
    Value::of(stress)
        .units(&KSI, &MPA)
        .places(4, 3)
        .all_figures()
        .text_with_unit(inp.system())
}

fn heat(inp: &Inputs, w: &mut Work, c: &Case, chills: bool) {
    for (title, part) in [
        ("Heat for the hub", &c.hub),
        ("Cold for the shaft", &c.shaft),
    ] {
        let Some(grows) = part.grows else {
            continue;
        };
        if title.starts_with("Cold") && !chills {
            continue;
        }
        let Ok(rise) = temperature(c.diameter, c.interference.1, c.clearance, grows) else {
            continue;
        };
        w.step(
            title,
            &[
                "ΔT = (δ + clearance)/(α d)".into(),
                format!(
                    "ΔT = ({} + {}) / ({} × 10⁻⁶ × {}) = {}",
                    beside(inp, c.interference.1),
                    beside(inp, c.clearance),
                    growth(inp, grows),
                    inp.show(c.diameter),
                    inp.show(rise)
                ),
            ],
            &GROWTH,
        );
    }
}
