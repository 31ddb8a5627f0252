//! How was the press fit figured, what is to be minded, and how does it look?

use super::super::fit_limits::tell::recalled;
use super::Case;
use crate::calls::fit::{FitCall, read};
use crate::fit::press::{Joint, Stresses, temperature};
use crate::fit::sources::*;
use crate::fit::{KindOfFit, Limits};
use crate::quantity::units::{KSI, MICRON, MPA, NUMBER, PER_F, PER_K, THOU};
use crate::quantity::{Expansion, Length, Stress, System, decimal};
use crate::sheet::*;

/// A bare number with two decimals.
pub(super) fn two(number: f64) -> String {
    decimal(number, &NUMBER, 2)
}

fn four(number: f64) -> String {
    decimal(number, &NUMBER, 4)
}

/// Stress in ksi or MPa.
fn stress(inp: &Inputs, stress: Stress) -> String {
    let value = Value::of(stress).units(&KSI, &MPA);
    match inp.system() {
        System::Inch => value.places(2, 2),
        System::Metric => value.places(1, 1),
    }
    .text_with_unit(inp.system())
}

/// Young's modulus in ksi or MPa.
fn modulus(inp: &Inputs, modulus: Stress) -> String {
    Value::of(modulus)
        .units(&KSI, &MPA)
        .places(0, 0)
        .text_with_unit(inp.system())
}

fn small(inp: &Inputs, length: Length) -> String {
    Value::of(length)
        .units(&THOU, &MICRON)
        .places(2, 1)
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
    if c.shaft.grows.is_some() && a.get("chill").is_none() {
        a.note("cold-not-enough", "Cold", "Chilling alone would take more than liquid nitrogen gives (216 K, 389 °F below the room). Heat the hub as well.");
    } else if a.get("chill").is_some() {
        a.note("cold-by-what", "Cold", "Dry ice gives about 98 K (177 °F) below the room, liquid nitrogen about 216 K (389 °F).");
    }
    if c.band
        .is_some_and(|band| band.kind() == KindOfFit::Transition)
    {
        a.note("transition", "Transition", "The loosest pair has room: it holds nothing. Measure, and figure with the measured parts.");
    }
    if c.friction.0 < c.friction.1 {
        a.note("friction", "Friction", "It is a range from common practice. Choose a press for the high end; count on the low end to hold.");
    }
    for (name, part) in [("hub", &c.hub), ("shaft", &c.shaft)] {
        if part.grows.is_none() {
            a.note(
                "heat-limit",
                "Heat",
                format!(
                    "We have no verified figure for the expansion of this {name}: enter your own."
                ),
            );
        }
    }
    a.note("shrink-or-press", "Shrink or press", "With the same interference a shrink fit held 3.66 times as much endwise and 3.2 times in torsion in old tests.");
    a.source(&JONES);
    a.note(
        "thick-ring",
        "The formula",
        "Elastic, hub and shaft of one length, nothing turning fast. The ends of a long shaft raise the stress at the edge of the hub.",
    );
    a.stop(
        "press-guard",
        "Before you press",
        "Start square with a lead, support the hub close round the hole, stand clear of the line of force, wear eye protection. \
         Cast iron and hard parts break without warning. Stop when the force passes the high figure.",
    );
    a.stop(
        "heat-guard",
        "Before you heat",
        "Heat evenly, away from oil and solvent, with gloves and tongs; the parts seize in seconds. Hardened parts lose their temper, \
         bearings and seals their grease. With dry ice or liquid nitrogen: air the room, cover skin and eyes.",
    );
    a.draw(|| section(inp, c));
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
            small(inp, most)
        )],
    };
    if inp.choice("smoothing") == "din-7190" {
        let (hole, shaft) = (
            inp.opt("rz-hole").unwrap_or(Length::ZERO),
            inp.opt("rz-shaft").unwrap_or(Length::ZERO),
        );
        lines.push(format!(
            "after smoothing: δ − 0.8 (Rz hole + Rz shaft) = {} − 0.8 ({} + {}) = {}",
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
            "Pressure, tightest pair"
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
                "p = {} / ({} (({} + {})/{} + ({} − {})/{})) = {}",
                small(inp, c.acting.1),
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
                "hub, to compare = hoop + p = {} + {} = {}",
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
    let put_in = |p: Stress| {
        format!(
            "{} × {} × π × {} × {}",
            two(middle),
            stress(inp, p),
            inp.show(c.diameter),
            inp.show(c.length)
        )
    };
    w.step(
        "Force and torque",
        &[
            "F = f p π d l".into(),
            format!(
                "press = {} = {}",
                put_in(most),
                inp.show(joint.axial_force(most, c.length, middle))
            ),
            format!(
                "hold = {} = {}",
                put_in(least),
                inp.show(joint.axial_force(least, c.length, middle))
            ),
            format!(
                "T = F d/2 = {} × {}/2 = {}",
                inp.show(joint.axial_force(least, c.length, middle)),
                inp.show(c.diameter),
                inp.show(joint.torque(least, c.length, middle))
            ),
        ],
        &SHIGLEY,
    );
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
        let Ok(rise) = temperature(c.diameter, c.interference.1, c.room, grows) else {
            continue;
        };
        w.step(
            title,
            &[
                "ΔT = (δ + room)/(α d)".into(),
                format!(
                    "ΔT = ({} + {})/({} × 10⁻⁶ × {}) = {}",
                    small(inp, c.interference.1),
                    small(inp, c.room),
                    growth(inp, grows),
                    inp.show(c.diameter),
                    inp.show(rise)
                ),
            ],
            &GROWTH,
        );
    }
}

/// Section through hub and shaft.
fn section(inp: &Inputs, c: &Case) -> Drawing {
    let (d, outside, bore, length) = (
        c.diameter.mm() / 2.0,
        c.outside.mm() / 2.0,
        c.bore.mm() / 2.0,
        c.length.mm(),
    );
    let over = length * 0.25;
    let mut drawing = Drawing::new("Section through hub and shaft", true);
    for side in [1.0, -1.0] {
        let hub = [
            pt(0.0, side * d),
            pt(length, side * d),
            pt(length, side * outside),
            pt(0.0, side * outside),
        ];
        drawing.hatch(&hub);
        drawing.path(Pen::Object, true, &hub);
        if bore > 0.0 {
            drawing.path(
                Pen::Object,
                false,
                &[pt(-over, side * bore), pt(length + over, side * bore)],
            );
        }
    }
    drawing.path(
        Pen::Object,
        true,
        &[
            pt(-over, -d),
            pt(length + over, -d),
            pt(length + over, d),
            pt(-over, d),
        ],
    );
    drawing.path(
        Pen::Centre,
        false,
        &[pt(-over * 1.6, 0.0), pt(length + over * 1.6, 0.0)],
    );
    drawing.dimension(
        pt(0.0, outside),
        pt(length, outside),
        2.0,
        inp.show(c.length),
    );
    drawing.dimension(
        pt(length + over, d),
        pt(length + over, -d),
        2.0,
        inp.show(c.diameter),
    );
    drawing.dimension(
        pt(0.0, -outside),
        pt(0.0, outside),
        3.0,
        inp.show(c.outside),
    );
    drawing
}
