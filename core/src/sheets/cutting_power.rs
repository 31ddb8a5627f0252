//! What force, torque and power does the cut ask, and does the motor bear it? By unit power with its factors, by kc1.1, or by energy.

use crate::cutting::*;
use crate::quantity::units::*;
use crate::quantity::{
    Angle, Count, FeedPerRev, FeedPerTooth, FeedRate, Length, Power, RemovalRate, RotationalSpeed,
    Stress, SurfaceSpeed, System, Torque, decimal,
};
use crate::sheet::*;

mod arbor;
mod fields;
mod methods;
mod motor;
mod tap;

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
    "8,000 psi of shear for plain steel, a quarter less with a keyway",
);
/// Customary shear of a keyed shaft of plain steel.
const MOST_SHEAR: Stress = Stress::from_psi(6000.0);

pub(super) static SHEET: Sheet = Sheet {
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

/// The cut as the power formulas need it.
struct Chip {
    removal: RemovalRate,
    /// Feed that the feed factor is entered with: per tooth in milling, per rev else.
    feed: FeedPerRev,
    /// In milling: the same feed by its own name.
    per_tooth: Option<FeedPerTooth>,
    /// Chip thickness that kc1.1 is entered with.
    thickness: Length,
    thickness_says: &'static str,
    /// In turning: depth, entering angle and surface speed, for the force itself.
    turned: Option<(Length, Angle, SurfaceSpeed)>,
}

impl Chip {
    /// The feed with its unit, per tooth or per rev.
    fn feed_text(&self, inp: &Inputs) -> String {
        match self.per_tooth {
            Some(feed) => inp.show_to(feed, 5, 4),
            None => inp.show_to(self.feed, 4, 3),
        }
    }
}

fn chip(inp: &Inputs, diameter: Length, rpm: RotationalSpeed) -> Result<Chip, Stop> {
    match inp.choice("cut") {
        "mill" => {
            let feed: FeedRate = inp.get("feed")?;
            let (depth, engaged): (Length, Length) = (inp.get("axial")?, inp.get("engaged")?);
            milled(feed, inp.get("teeth")?, rpm, (depth, engaged), diameter).map_err(|fault| {
                match fault {
                    CutFault::TooLarge { .. } => inp.out_of_range(
                        "engaged",
                        format!("more than the cutter's own {}", inp.show(diameter)),
                        "take several passes or a larger cutter",
                    ),
                    other => inp.out_of_range("engaged", other.to_string(), "check the sizes"),
                }
            })
        }
        "turn" => {
            let feed: FeedPerRev = inp.get("turn-feed")?;
            let (depth, entering): (Length, Angle) = (inp.get("depth")?, inp.get("entering")?);
            if depth * 2.0 >= diameter {
                return Err(inp.out_of_range(
                    "depth",
                    format!(
                        "half of {} or more: nothing would be left",
                        inp.show(diameter)
                    ),
                    "give the depth on the radius, less than half the diameter",
                ));
            }
            let speed = surface_speed(rpm, diameter);
            Ok(Chip {
                removal: turning_removal(speed, feed, depth),
                feed,
                per_tooth: None,
                thickness: Length::from_mm(feed.mm_per_rev() * libm::sin(entering.radians())),
                thickness_says: "f sin \u{3ba}",
                turned: Some((depth, entering, speed)),
            })
        }
        _ => {
            let feed: FeedPerRev = inp.get("turn-feed")?;
            let point: Angle = inp.get("point")?;
            Ok(Chip {
                removal: drilling_removal(diameter, feed_rate(feed, rpm)),
                feed,
                per_tooth: None,
                thickness: Length::from_mm(
                    feed.mm_per_rev() / 2.0 * libm::sin(point.radians() / 2.0),
                ),
                thickness_says: "f/2 \u{d7} sin(point/2), two lips",
                turned: None,
            })
        }
    }
}

/// The chip of a milling cutter that takes so much along and across the spindle.
fn milled(
    feed: FeedRate,
    teeth: Count,
    rpm: RotationalSpeed,
    (axial, engaged): (Length, Length),
    diameter: Length,
) -> Result<Chip, CutFault> {
    let fz = feed_per_tooth(feed, teeth, rpm)?;
    Ok(Chip {
        removal: milling_removal(axial, engaged, feed),
        feed: FeedPerRev::from_mm_per_rev(fz.mm_per_tooth()),
        per_tooth: Some(fz),
        thickness: chip_thickness(ChipMeasure::ArcMean, fz, engaged, diameter)?,
        thickness_says: "mean chip 2 fz ae / (D \u{3c6}), \u{3c6} the arc of cut in radians",
        turned: None,
    })
}

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

/// How the metal removed comes about, with this entry's numbers.
fn removed(
    inp: &Inputs,
    diameter: Length,
    rpm: RotationalSpeed,
    chip: &Chip,
    alone: bool,
) -> Vec<String> {
    let (d, n) = (inp.num(diameter), inp.num(rpm));
    let sum = inp.show_to(chip.removal, 3, 1);
    // the metric unit is 1,000 mm³ large
    let per = match inp.system() {
        System::Inch => "",
        System::Metric => " / 1000",
    };
    let length = |field: &str| inp.num(inp.opt::<Length>(field).unwrap_or(Length::ZERO));
    let feed = inp.num_to(chip.feed, 5, 4);
    match inp.choice("cut") {
        "mill" if alone => vec![
            "Q = axial depth \u{d7} radial depth \u{d7} feed".into(),
            format!(
                "Q = {} \u{d7} {} \u{d7} {}{per} = {sum}",
                length("axial"),
                length("engaged"),
                inp.num_to(
                    inp.opt("feed").unwrap_or(FeedRate::from_mm_per_min(0.0)),
                    3,
                    1
                )
            ),
        ],
        "mill" => vec![format!("Q = {sum}, all cutters")],
        "turn" => vec![
            "Q = \u{3c0} D n f d, at the outside diameter".into(),
            format!(
                "Q = \u{3c0} \u{d7} {d} \u{d7} {n} \u{d7} {feed} \u{d7} {}{per} = {sum}",
                length("depth")
            ),
        ],
        _ => vec![
            "Q = \u{3c0} D\u{b2} / 4 \u{d7} f n".into(),
            format!("Q = \u{3c0} \u{d7} {d}\u{b2} / 4 \u{d7} {feed} \u{d7} {n}{per} = {sum}"),
        ],
    }
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
        .says("In proportion, the rest as it is; tool, arbor and clamping may bear less.")
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
