//! What does it take to press or shrink this fit together, and what does it then hold?

mod fields;
mod tell;

use super::fit_limits::stop as fit_stop;
use crate::calls::fit::{FitCall, read};
use crate::fit::press::{
    Elastic, Joint, PressFault, Stresses, shop_allowance, smoothed, temperature,
};
use crate::fit::sources::SHRUNK;
use crate::fit::{Band, inch, iso};
use crate::quantity::units::{KSI, MPA, PSI};
use crate::quantity::{Expansion, Length, Number, Stress, TemperatureDifference};
use crate::sheet::*;
use crate::standards::fit_materials::FIT_MATERIALS;

pub(super) static SHEET: Sheet = Sheet {
    id: "press-fit",
    revision: 2,
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
            ("length", "1 1/4 in"),
        ],
        &[
            ("size", "16 mm"),
            ("fit", "H7/s6"),
            ("outside", "30 mm"),
            ("length", "20 mm"),
            ("hub", "cast-iron"),
        ],
        &[
            ("from", "sizes"),
            ("hole", "0.6240 in"),
            ("shaft", "0.6252 in"),
            ("outside", "1 1/4 in"),
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
            },
            None => Part {
                elastic: Elastic {
                    modulus: inp.get(modulus)?,
                    poisson: inp.get::<Number>(poisson)?.get(),
                },
                grows: own,
                grows_also: None,
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
    room: Length,
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
            "smoothing in the press takes up all the interference",
            "take finer surfaces or a tighter fit",
        ));
    }
    Ok(Case {
        diameter,
        outside: inp.get("outside")?,
        bore: inp.get("bore")?,
        length: inp.get("length")?,
        room: inp.get("room")?,
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

/// Refuses numbers past the elastic range, where the strength was given.
fn within_yield(inp: &Inputs, stresses: &Stresses) -> Result<(), Stop> {
    for (id, stress, name) in [
        ("hub-strength", stresses.hub_equivalent, "hub"),
        ("shaft-strength", stresses.shaft_equivalent, "shaft"),
    ] {
        if let Some(strength) = inp.opt::<Stress>(id)
            && stress > strength
        {
            return Err(Stop::withheld(
                id,
                inp.show(strength),
                format!(
                    "at the tightest pair the {name} comes to {}: it yields, and the elastic formula no longer holds",
                    inp.show(stress)
                ),
                "take less interference, a thicker hub or a stronger material",
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
    within_yield(inp, &stresses)?;

    let mut a = inp.answer();
    strength_lines(&mut a, &c, &joint, (least, most));
    heat_lines(inp, &mut a, &c)?;
    stress_lines(inp, &mut a, &c, (least, most), &stresses);
    if !inp.quiet() {
        tell::tell(inp, &mut a, &c, &joint, (least, most), &stresses);
    }
    Ok(a)
}

/// What presses it on, and what it holds. With measured parts there is but one pair.
fn strength_lines(a: &mut Answer, c: &Case, joint: &Joint, (least, most): (Stress, Stress)) {
    let (low, high) = c.friction;
    let middle = f64::midpoint(low, high);
    let (friction, figured) = if low < high {
        (
            format!("friction {} to {}", tell::two(low), tell::two(high)),
            "; figured with the middle.",
        )
    } else {
        (format!("friction {}", tell::two(low)), ".")
    };
    let force = |p: Stress, f: f64| joint.axial_force(p, c.length, f);
    let torque = |f: f64| joint.torque(least, c.length, f);
    let slip = "At the moment of slip, no factor of safety.";
    let single = c.band.is_none();
    let line = a
        .line("force", force(most, middle))
        .says(format!("At full length, {friction}{figured}"));
    if single {
        line.label("Press force");
    }
    if low < high {
        line.band(force(most, low), force(most, high), friction.clone());
    }
    let line = a.line("torque", torque(middle)).says(slip);
    if single {
        line.label("Torque it holds");
    }
    if low < high && least > Stress::ZERO {
        line.band(torque(low), torque(high), friction.clone());
    }
    let line = a.line("hold", force(least, middle)).says(slip);
    if single {
        line.label("Push it holds");
    }
    if low < high && least > Stress::ZERO {
        line.band(force(least, low), force(least, high), friction);
    }
}

/// How far liquid nitrogen at -196 °C lies below a room of 20 °C.
const COLDEST: TemperatureDifference = TemperatureDifference::from_kelvins(216.0);

fn heat_lines(inp: &Inputs, a: &mut Answer, c: &Case) -> Result<(), Stop> {
    for (id, part) in [("heat", &c.hub), ("chill", &c.shaft)] {
        let Some(grows) = part.grows else { continue };
        let change =
            temperature(c.diameter, c.interference.1, c.room, grows).map_err(press_stop)?;
        if id == "chill" && change > COLDEST {
            continue;
        }
        let also = part
            .grows_also
            .and_then(|grows| temperature(c.diameter, c.interference.1, c.room, grows).ok());
        let line = a.line(id, change).says(format!(
            "Against the other part, {}with {} of room on the diameter.",
            if c.band.is_some() {
                "tightest pair, "
            } else {
                ""
            },
            inp.show_plain(c.room)
        ));
        if let Some(less) = also {
            line.band(less, change, "two lists of expansion");
        }
    }
    Ok(())
}

fn stress_lines(
    inp: &Inputs,
    a: &mut Answer,
    c: &Case,
    (least, most): (Stress, Stress),
    stresses: &Stresses,
) {
    let pair = if c.band.is_some() {
        "Tightest pair. "
    } else {
        ""
    };
    let smooth = if inp.choice("smoothing") == "din-7190" {
        ", after smoothing"
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
        .units(&PSI, &MPA)
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
            "Hoop less radial stress (largest shear), at the bore.",
        ),
        (
            "shaft-compare",
            stresses.shaft_equivalent,
            "Largest difference of stresses (largest shear).",
        ),
    ] {
        a.line(id, value)
            .units(&KSI, &MPA)
            .says(format!("{pair}{says}"));
    }
}
