//! What force, torque and power does the cut ask, and does the motor bear it? By unit power with its factors, by kc1.1, or by energy.

use crate::cutting::*;
use crate::quantity::units::*;
use crate::quantity::{Length, Power, RotationalSpeed, Stress, Torque, decimal};
use crate::sheet::*;

mod arbor;
mod chip;
mod fields;
mod methods;
mod motor;
mod tap;

use chip::{Chip, chip, milled, removed};
use fields::*;
use methods::*;
use motor::Motor;

static REMOVAL: Source = Source::computed(
    "Groover, Fundamentals of Modern Manufacturing",
    "removal rate in milling, turning and drilling",
);
static TWIST: Source = Source::read(
    "Hicks, Civil Engineering Formulas",
    "fig. 2.1, T = \u{3c0} D\u{b3} f / 16 of a round shaft",
);
static KEYED: Source = Source::from_memory(
    "ASME code for transmission shafting, 1927",
    "8000 psi of shear for plain steel, a quarter less with a keyway",
);
/// Customary shear of a keyed shaft of plain steel.
const MOST_SHEAR: Stress = Stress::from_psi(6000.0);

pub(in crate::sheets) static SHEET: Sheet = Sheet {
    id: "cutting-power",
    revision: 3,
    title: "Power for a cut",
    question: "Can the motor take this cut, and what force and torque come with it?",
    aside: "material, cut, motor",
    words: &[
        "horsepower",
        "kilowatt",
        "unit power",
        "specific cutting force",
        "kc1.1",
        "Kienzle",
        "cutting force",
        "spindle torque",
        "removal rate",
        "deepest cut",
        "motor load",
        "stall",
        "tapping",
        "gang milling",
        "straddle milling",
        "drive efficiency",
    ],
    group: Group::Run,
    fields: FIELDS,
    results: RESULTS,
    examples: EXAMPLES,
    takes: &["diameter"],
    finds: None,
    figure,
};

/// Power at the cutter by the method chosen.
fn method(inp: &Inputs, a: &mut Answer, chip: &Chip) -> Result<Need, Stop> {
    match inp.choice("by") {
        "unit" => by_unit_power(inp, a, chip),
        "kc" => by_specific_force(inp, a, chip),
        _ => by_energy(inp, a, chip),
    }
}

/// Power at the cutter: low, nominal and high, with the words for the range.
struct Need {
    low: Power,
    nominal: Power,
    high: Power,
    says: String,
    range: &'static str,
    /// The figure is already at the motor.
    at_motor: bool,
}

/// What the torque does to the arbor, where its diameter is known.
fn arbor(inp: &Inputs, a: &mut Answer, torque: Torque) -> Result<(), Stop> {
    let Some(diameter) = inp.opt::<Length>("arbor") else {
        return Ok(());
    };
    let shear = shaft_shear(torque, diameter)
        .map_err(|fault| inp.out_of_range("arbor", fault.to_string(), "give its diameter"))?;
    a.line("arbor-shear", shear)
        .says("By the twist alone: bending and the keyway come on top.");
    a.work(|w| {
        w.step(
            "Shear at the arbor's surface",
            &[
                "\u{3c4} = 16 M / (\u{3c0} d\u{b3})".into(),
                format!(
                    "\u{3c4} = 16 \u{d7} {} / (\u{3c0} \u{d7} {}\u{b3}) = {}",
                    inp.show(torque),
                    inp.show(diameter),
                    inp.show(shear)
                ),
            ],
            &TWIST,
        );
    });
    a.source(&KEYED);
    if shear > MOST_SHEAR {
        a.note(
            "arbor-shear",
            "About the arbor",
            format!("The twist alone is past {}, which is customary for a shaft of plain steel with a keyway. Take a lighter cut or a thicker arbor, and keep cutter and support close.", inp.show(MOST_SHEAR)),
        );
    }
    Ok(())
}

/// The depth that loads the motor fully.
fn deepest(inp: &Inputs, a: &mut Answer, motor: &Motor, need: &Need) -> Result<(), Stop> {
    let (field, label) = if inp.choice("cut") == "mill" {
        ("axial", "Axial depth that loads the motor fully")
    } else {
        ("depth", "Depth that loads the motor fully")
    };
    let depth: Length = inp.get(field)?;
    let most = |power: Power| depth * (1.0 / motor.share(power).fraction());
    a.line("deepest", most(need.nominal))
        .label(label)
        .places(3, 2)
        .says("In proportion, the rest as it is; tool, arbor and clamping may stand less.")
        .band(most(need.high), most(need.low), need.range);
    Ok(())
}

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    if inp.choice("cut") == "tap" {
        return tap::figure(inp);
    }
    let diameter: Length = inp.get("diameter")?;
    let rpm: RotationalSpeed = inp.get("rpm")?;
    let mut chip = chip(inp, diameter, rpm)?;
    let mut a = inp.answer();
    let mut need = method(inp, &mut a, &chip)?;
    let alone = arbor::add_up(inp, &mut a, diameter, rpm, (&mut chip, &mut need))?;
    let drilled = if inp.choice("cut") == "drill" {
        drilled(inp, diameter)?
    } else {
        None
    };
    if let Some((load, ..)) = &drilled {
        let power = torque_power(load.torque, rpm);
        need = Need {
            low: need.low.min(power),
            nominal: power,
            high: need.high.max(power),
            says: "Torque by the drilling formula \u{d7} spindle speed.".into(),
            range: "unit power with a sharp tool, to the drilling formula",
            at_motor: false,
        };
    }
    let motor = Motor::of(inp, &need)?;
    motor.tell(&mut a, &need);
    let torque = spindle_torque(motor.at_cutter(need.nominal), rpm)
        .map_err(|fault| inp.out_of_range("rpm", fault.to_string(), "give the spindle speed"))?;
    a.line("torque", torque)
        .says("P / (2 \u{3c0} n), at the spindle; the mean over one rev, teeth peak above it.");
    arbor(inp, &mut a, torque)?;
    if alone
        && inp.choice("cut") != "drill"
        && let Ok(force) = edge_force(torque, diameter)
    {
        a.line("force", force)
            .says("Along the cut, from the torque: 2 M / D.");
    }
    a.line("removal", chip.removal).says("Of metal per minute.");
    if alone && inp.choice("cut") != "drill" {
        deepest(inp, &mut a, &motor, &need)?;
    }
    if let Some((load, chisel, wear)) = drilled {
        tell_drilled(inp, &mut a, load, &chisel, wear);
    }
    a.work(|w| {
        w.step(
            "Metal removed",
            &removed(inp, diameter, rpm, &chip, alone),
            &REMOVAL,
        );
        w.step(
            "At the motor",
            &[format!(
                "Pm = {} / {} = {}",
                inp.num_to(motor.at_cutter(need.nominal), 3, 3),
                decimal(motor.efficiency, &NUMBER, 2),
                inp.show_to(motor.at_motor(need.nominal), 3, 3)
            )],
            if need.at_motor { &ENERGY } else { &FACTORS },
        );
    });
    motor.caution(
        &mut a,
        &need,
        match inp.choice("cut") {
            "drill" => {
                "Take less feed or a slower spindle, or drill a pilot hole first; clamp the work."
            }
            _ => "Take less depth or feed.",
        },
    );
    a.draw(|| match inp.choice("cut") {
        "mill" => {
            let engaged = inp.opt("engaged").unwrap_or(diameter);
            picture::face_cut(
                diameter,
                engaged,
                false,
                [inp.show(diameter), inp.show(engaged)],
            )
        }
        "turn" => picture::turned_bar(diameter, inp.show(diameter)),
        _ => picture::drilled_hole(
            diameter,
            None,
            diameter * 0.3,
            [inp.show(diameter), String::new()],
        ),
    });
    Ok(a)
}
