//! What does it take to press or shrink this fit together, and what does it then hold?

mod care;
mod draw;
mod fields;
mod lines;
mod tell;

use super::fit_limits::stop as fit_stop;
use crate::calls::fit::{FitCall, read};
use crate::fit::press::{Elastic, Joint, PressFault, Stresses, smoothed};
use crate::fit::{Band, inch, iso};
use crate::quantity::{Expansion, Length, Number, Stress};
use crate::sheet::*;
use crate::standards::fits::fit_materials::FIT_MATERIALS;

pub(in crate::sheets) static SHEET: Sheet = Sheet {
    id: "press-fit",
    revision: 3,
    title: "Force and heat for a press fit",
    question: "How hard to press, how hot to shrink, and what will it hold?",
    aside: "fit or sizes, hub, length",
    words: &[
        "press fit",
        "shrink fit",
        "interference",
        "force fit",
        "drive fit",
        "arbor press",
        "tonnage",
        "tons",
        "shrink",
        "chill",
        "bushing",
        "bearing",
        "heat",
        "freeze",
        "expansion",
        "torque of a press fit",
        "thick cylinder",
        "Lame",
    ],
    group: Group::Fit,
    fields: fields::FIELDS,
    results: fields::RESULTS,
    examples: &[
        &[
            ("size", "1 in"),
            ("fit", "FN2"),
            ("outside", "2 in"),
            ("length", "1-1/4 in"),
        ],
        &[
            ("size", "25 mm"),
            ("fit", "H7/p6"),
            ("outside", "50 mm"),
            ("bore", "18 mm"),
            ("length", "25 mm"),
            ("hub", "cast-iron"),
            ("shaft-material", "bronze"),
        ],
        &[
            ("from", "sizes"),
            ("hole", "0.6240 in"),
            ("shaft", "0.6246 in"),
            ("outside", "1-1/4 in"),
            ("length", "7/8 in"),
            ("hub", "cast-iron"),
            ("friction", "dry"),
        ],
    ],
    takes: &[],
    finds: None,
    figure,
};

/// One part: how stiff, and how far it grows where that is known.
struct Part {
    elastic: Elastic,
    grows: Option<Expansion>,
    /// By another list, where two differ.
    grows_also: Option<Expansion>,
    /// The least usual strength of its material; none where that is not in the list.
    least: Option<Stress>,
    /// It cracks and does not yield.
    brittle: bool,
}

fn part(inp: &Inputs, choice: &str, ids: [&'static str; 3]) -> Result<Part, Stop> {
    let [modulus, poisson, growth] = ids;
    let own = inp.opt::<Expansion>(growth);
    Ok(
        match FIT_MATERIALS
            .iter()
            .find(|row| row.id == inp.choice(choice))
        {
            Some(row) => Part {
                elastic: Elastic {
                    modulus: row.modulus,
                    poisson: row.poisson,
                },
                grows: own.or(row.expansion),
                grows_also: row.expansion_high.filter(|_| own.is_none()),
                least: Some(row.strength),
                brittle: row.brittle,
            },
            None => Part {
                elastic: Elastic {
                    modulus: inp.get(modulus)?,
                    poisson: inp.get::<Number>(poisson)?.get(),
                },
                grows: own,
                grows_also: None,
                least: None,
                brittle: false,
            },
        },
    )
}

/// Everything read: sizes, materials, least and most interference as it acts.
struct Case {
    diameter: Length,
    outside: Length,
    bore: Length,
    length: Length,
    clearance: Length,
    hub: Part,
    shaft: Part,
    band: Option<Band>,
    /// Before smoothing.
    interference: (Length, Length),
    /// After smoothing.
    acting: (Length, Length),
    friction: (f64, f64),
}

/// Joint diameter, least and most interference, and the band where it comes from a class of fit.
type Sizes = (Length, (Length, Length), Option<Band>);

fn sizes(inp: &Inputs) -> Result<Sizes, Stop> {
    if inp.choice("from") == "sizes" {
        let (hole, shaft): (Length, Length) = (inp.get("hole")?, inp.get("shaft")?);
        return Ok((hole, (shaft - hole, shaft - hole), None));
    }
    let size: Length = inp.get("size")?;
    let band = match read(inp.call("fit")?) {
        Ok(FitCall::Pair { hole, shaft }) => iso::fit(size, &hole, &shaft),
        Ok(FitCall::Inch(class)) => inch::fit(size, class).map(|fit| fit.band),
        _ => Err(crate::fit::FitFault::NeedsHoleAndShaft),
    }
    .map_err(|fault| fit_stop("size", "fit", fault))?;
    Ok((size, (-band.max_clearance, -band.min_clearance), Some(band)))
}

/// Friction of press fits, least and most: common practice; the spread is real.
fn friction(inp: &Inputs) -> Result<(f64, f64), Stop> {
    Ok(match inp.choice("friction") {
        "dry" => (0.12, 0.20),
        "oiled" => (0.06, 0.12),
        _ => {
            let own = inp.get::<Number>("coefficient")?.get();
            (own, own)
        }
    })
}

fn case(inp: &Inputs) -> Result<Case, Stop> {
    let (diameter, interference, band) = sizes(inp)?;
    let fit_field = if band.is_some() { "fit" } else { "shaft" };
    if interference.1 <= Length::from_um(0.001) {
        return Err(Stop::withheld(
            fit_field,
            inp.show(Length::ZERO),
            "the shaft is never larger than the hole: nothing holds",
            "take a tighter fit, as FN2 or H7/s6",
        ));
    }
    if interference.1 > diameter * 0.01 {
        return Err(inp.out_of_range(
            fit_field,
            "an interference of more than a hundredth of the diameter is past any elastic fit",
            "check both sizes",
        ));
    }
    let acting = if inp.choice("smoothing") == "din-7190" {
        let (hole, shaft): (Length, Length) = (inp.get("rz-hole")?, inp.get("rz-shaft")?);
        (
            smoothed(interference.0, hole, shaft),
            smoothed(interference.1, hole, shaft),
        )
    } else {
        interference
    };
    if acting.1 <= Length::from_um(0.001) {
        return Err(Stop::withheld(
            "rz-hole",
            inp.show(interference.1),
            "the roughness takes up all the interference when the parts are pressed",
            "take finer surfaces or a tighter fit",
        ));
    }
    Ok(Case {
        diameter,
        outside: inp.get("outside")?,
        bore: inp.get("bore")?,
        length: inp.get("length")?,
        clearance: inp.get("room")?,
        hub: part(inp, "hub", ["hub-modulus", "hub-poisson", "hub-growth"])?,
        shaft: part(
            inp,
            "shaft-material",
            ["shaft-modulus", "shaft-poisson", "shaft-growth"],
        )?,
        band,
        interference,
        acting: (acting.0.max(Length::ZERO), acting.1),
        friction: friction(inp)?,
    })
}

fn press_stop(fault: PressFault) -> Stop {
    let field = match fault {
        PressFault::HubTooSmall => "outside",
        PressFault::ShaftBoreTooLarge => "bore",
        PressFault::BadMaterial => "hub-modulus",
        _ => "length",
    };
    Stop::fault(
        field,
        Reason::Conflict,
        fault.to_string(),
        "check the sizes against each other",
    )
}

/// The largest interference that keeps a part's stress under a strength.
fn most_interference(joint: &Joint, most: Stress, stress: Stress, strength: Stress) -> Length {
    joint.interference_for(most * (strength / stress))
}

/// Refuses numbers past the elastic range, where the strength was given.
fn within_yield(
    inp: &Inputs,
    c: &Case,
    joint: &Joint,
    most: Stress,
    stresses: &Stresses,
) -> Result<(), Stop> {
    for (id, stress, name, part) in [
        ("hub-strength", stresses.hub_equivalent, "hub", &c.hub),
        (
            "shaft-strength",
            stresses.shaft_equivalent,
            "shaft",
            &c.shaft,
        ),
    ] {
        let Some(strength) = inp.opt::<Stress>(id) else {
            continue;
        };
        if stress > strength {
            let fails = if part.brittle {
                "it cracks"
            } else {
                "it yields, and the elastic formula no longer holds"
            };
            return Err(Stop::withheld(
                id,
                lines::stress(inp, strength),
                format!(
                    "at the most interference the {name} comes to {}: {fails}",
                    lines::stress(inp, stress)
                ),
                format!(
                    "take {} of interference or less, a thicker hub or a stronger material",
                    lines::small(inp, most_interference(joint, most, stress, strength))
                ),
            ));
        }
    }
    Ok(())
}

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let c = case(inp)?;
    let joint = Joint::new(
        c.diameter,
        c.outside,
        c.bore,
        c.hub.elastic,
        c.shaft.elastic,
    )
    .map_err(press_stop)?;
    let most = joint.pressure(c.acting.1).map_err(press_stop)?;
    let least = joint.pressure(c.acting.0).unwrap_or(Stress::ZERO);
    let stresses = joint.stresses(most);
    within_yield(inp, &c, &joint, most, &stresses)?;

    let mut a = inp.answer();
    lines::strength(&mut a, &c, &joint, (least, most));
    lines::heat(inp, &mut a, &c)?;
    lines::stresses(inp, &mut a, &c, (least, most), &stresses);
    care::strength(inp, &mut a, &c, &joint, most, &stresses);
    if !inp.quiet() {
        tell::tell(inp, &mut a, &c, &joint, (least, most), &stresses);
    }
    Ok(a)
}
