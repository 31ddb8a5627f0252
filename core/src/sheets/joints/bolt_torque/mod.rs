//! How tight? Torque and clamp load of a screw, both ways, with the spread that friction and tightening method leave.

pub(in crate::sheets) mod care;
pub(in crate::sheets) mod fields;
pub(in crate::sheets) mod friction;
mod joint;
pub(in crate::sheets) mod sources;
mod spanner;
pub(in crate::sheets) mod strength;
mod tables;
mod working;

use crate::calls::thread::read;
use crate::fastener::{Fault, proof, short_form, tension};
use crate::notation::plain;
use crate::quantity::units::{KSI, LBF_FT, LBF_IN, MPA, NEWTON_METRE};
use crate::quantity::{Force, Length, Number, Share, Stress, System, Torque, with_unit};
use crate::sheet::*;
use crate::standards::bolts::bolt_strength::GRADES;
use crate::standards::bolts::nut_factors;
use crate::standards::bolts::preload_scatter::{self, Scatter};
use crate::thread;
use fields::{EXAMPLES, FIELDS, RESULTS};
use friction::rub;
use sources::{K_OTHER, NASA, SCATTER_BOOK, STRETCH, VDI};
use strength::{Strength, stop_of, strength};
use working::{Case, working};

/// Young's modulus of steel.
const STEEL: Stress = Stress::from_mpa(207_000.0);

/// The sheet.
pub static SHEET: Sheet = Sheet {
    id: "bolt-torque",
    revision: 2,
    title: "Torque for a bolt or screw",
    question: "What torque gives the right clamp load, or what clamp load does this torque give?",
    aside: "thread, grade",
    words: &[
        "torque",
        "bolt",
        "screw",
        "nut",
        "clamp",
        "preload",
        "proof",
        "grade",
        "ft-lb",
        "in-lb",
        "newton metre",
        "dry",
        "oiled",
        "moly",
        "anti-seize",
        "cap screw",
        "socket head",
        "nut factor",
        "stainless",
        "tighten a screw",
        "torque wrench",
        "crowfoot",
        "crow foot",
        "adapter",
        "extension",
        "spanner",
        "structural",
        "threadlocker",
        "sealant",
        "hydraulic lock",
    ],
    group: Group::Assemble,
    fields: FIELDS,
    results: RESULTS,
    examples: EXAMPLES,
    takes: &["thread"],
    finds: Some(finds),
    figure,
};

fn finds() -> Vec<Find> {
    GRADES
        .iter()
        .map(|g| Find {
            keys: vec![g.key.replace('-', " "), g.name.to_ascii_lowercase()],
            title: g.name.to_owned(),
            aside: g.mark.to_owned(),
            entry: vec![("grade", g.key.to_owned())],
        })
        .collect()
}

fn scatter_row(inp: &Inputs) -> Option<&'static Scatter> {
    let key = match inp.choice("by") {
        "wrench" => nut_factors::state(inp.choice("state")).map_or("torque-dry", |s| s.scatter),
        key => key,
    };
    preload_scatter::method(key)
}

/// Decimals of a torque (inch, metric): a small one wants another.
pub(in crate::sheets) fn torque_places(torque: Torque) -> (u8, u8) {
    if torque.newton_metres() < 10.0 {
        (2, 2)
    } else {
        (1, 1)
    }
}

pub(in crate::sheets) fn show_torque(inp: &Inputs, torque: Torque) -> String {
    let (inch, metric) = torque_places(torque);
    inp.show_to(torque, inch, metric)
}

/// Reads the entry and finds clamp load and torque, whichever was asked for.
fn case(inp: &Inputs) -> Result<Case, Stop> {
    let thread = read(inp.call("thread")?).map_err(|_| Stop::Missing("thread"))?;
    let strength = strength("grade", inp.choice("grade"), thread)?;
    let area = thread::stress_area(thread);
    let limit_stress = strength.limit().ok_or_else(|| {
        let says = format!(
            "no proof or yield strength is published for {} at {}. {}",
            strength.grade.name,
            thread.size(),
            strength.grade.says.trim_end_matches('.')
        );
        Stop::fault("grade", Reason::NoSource, says, "choose another grade")
    })?;
    let proof_load = proof::proof_load(area, limit_stress).map_err(|e| stop_of(e, "thread"))?;
    let rub = rub(inp, thread)?;
    let d = thread.major;
    let torque_at = |f: Force| short_form::torque(rub.k, d, f).map_err(|e| stop_of(e, "clamp"));
    let torque_limit = torque_at(proof_load)?;
    let clamp = match inp.choice("from") {
        "clamp" => inp.get::<Force>("clamp")?,
        "torque" => {
            short_form::clamp(rub.k, d, inp.get("torque")?).map_err(|e| stop_of(e, "torque"))?
        }
        _ => proof_load * target(inp)?.fraction(),
    };
    let share = match proof::share_of_proof(clamp, proof_load) {
        Ok(share) => share,
        Err(Fault::BeyondProof { .. }) => {
            return Err(beyond(inp, &strength, proof_load, torque_limit));
        }
        Err(other) => return Err(stop_of(other, "clamp")),
    };
    let torque = if inp.choice("from") == "torque" {
        inp.get("torque")?
    } else {
        torque_at(clamp)?
    };
    Ok(Case {
        thread,
        strength,
        limit_stress,
        area,
        proof_load,
        torque_limit,
        clamp,
        share,
        torque,
        rub,
    })
}

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let case = case(inp)?;
    let setting = spanner::setting(inp, case.torque)?;
    let mut a = inp.answer();
    if let Some(setting) = setting {
        spanner::set_to(inp, &case, setting, &mut a);
    }
    torque_line(inp, &case, setting.is_some(), &mut a)?;
    let highest = clamp_line(inp, &case, &mut a);
    share_line(&case, &mut a);
    let set = setting.unwrap_or(case.torque);
    spanner::wrench(inp, set, &mut a)?;
    spanner::passes(inp, set, &mut a)?;
    screw_lines(inp, &case, &mut a);
    combined_line(inp, &case, &mut a);
    stretch_line(inp, &case, &mut a);

    tables::states(inp, &case, &mut a);
    tables::methods(inp, case.clamp, &mut a);
    tables::lists(inp, &case, &mut a);
    working(inp, &case, &mut a);
    spanner::working(inp, case.torque, setting, &mut a);
    if matches!(inp.choice("state"), "plain" | "zinc" | "cadmium") {
        a.source(&K_OTHER);
    }
    a.source(&NASA).source(&SCATTER_BOOK);
    care::cautions(inp, &case, highest, &mut a);
    a.draw(|| joint::drawing(inp, case.thread, case.clamp, case.torque));
    Ok(a)
}

/// The torque, and the same in the other units.
fn torque_line(inp: &Inputs, case: &Case, adapter: bool, a: &mut Answer) -> Result<(), Stop> {
    let Case {
        thread,
        clamp,
        torque,
        ref rub,
        ..
    } = *case;
    let state = nut_factors::state(inp.choice("state")).map_or("your own nut factor", |s| s.state);
    let (inch, metric) = torque_places(torque);
    let line = a
        .line("torque", torque)
        .places(inch, metric)
        .says(format!("Lubrication and finish: {state}."));
    if adapter {
        line.label("Torque at the screw");
    }
    if inp.choice("from") != "torque" && rub.high > rub.low {
        let at =
            |k: f64| short_form::torque(k, thread.major, clamp).map_err(|e| stop_of(e, "clamp"));
        line.band(at(rub.low)?, at(rub.high)?, rub.spread.clone());
    }
    let in_lb = u8::from(torque.lbf_in() < 100.0);
    a.line("torque-in-lb", torque)
        .units(&LBF_IN, &LBF_IN)
        .places(in_lb, in_lb);
    a.line("torque-ft-lb", torque)
        .units(&LBF_FT, &LBF_FT)
        .places(inch, inch);
    a.line("torque-nm", torque)
        .units(&NEWTON_METRE, &NEWTON_METRE)
        .places(metric, metric);
    Ok(())
}

/// The clamp load with the spread of the method; gives the highest that it may reach.
fn clamp_line(inp: &Inputs, case: &Case, a: &mut Answer) -> Force {
    let line = a
        .line("clamp", case.clamp)
        .says("Pull along the screw, as it is left after tightening.");
    let Some(s) = scatter_row(inp) else {
        return case.clamp;
    };
    let (low, high) = short_form::scatter(case.clamp, s.percent);
    line.band(
        low,
        high,
        format!("±{}%, {} ({})", plain(s.percent, 1), s.method, s.source),
    );
    high
}

fn share_line(case: &Case, a: &mut Answer) {
    let basis = if case.strength.row.proof.is_some() {
        "Of the proof load: above it the screw takes a set. Usual: 75% where the joint comes apart again, 90% where it is permanent."
    } else {
        "Of the load at the 0.2% stress: the standard defines no proof load."
    };
    a.line("share-of-proof", case.share)
        .places(1, 1)
        .says(basis);
}

/// What the screw bears, and the torque there.
fn screw_lines(inp: &Inputs, case: &Case, a: &mut Answer) {
    let strength = &case.strength;
    let grade = strength.grade;
    let mut says = format!(
        "{}: {} times the stress area.",
        grade.name,
        show_stress(inp, case.limit_stress)
    );
    if !grade.says.is_empty() {
        says = format!("{says} {}", grade.says);
    }
    a.line("proof-load", case.proof_load)
        .label(format!("Load at the {} stress", strength.limit_name()))
        .says(says);
    let (inch, metric) = torque_places(case.torque_limit);
    a.line("torque-at-proof", case.torque_limit)
        .places(inch, metric)
        .says("With the nut factor used here. Not a figure to tighten to.");
    a.line("nut-factor", Number::of(case.rub.k))
        .says(case.rub.says.clone());
    let metric = case.thread.series.is_metric();
    a.line("stress-area", case.area).says(if metric {
        "π/4 (d − 0.9382 P)²"
    } else {
        "π/4 (D − 0.9743 P)²"
    });
}

fn stretch_line(inp: &Inputs, case: &Case, a: &mut Answer) {
    let Some(length) = inp.opt::<Length>("grip") else {
        return;
    };
    let stretch =
        Length::from_mm(case.clamp.newtons() * length.mm() / (case.area.mm2() * STEEL.mpa()));
    a.line("stretch", stretch)
        .says("Of the grip alone, thread over its whole length, steel. Head and nut add some.");
    a.source(&STRETCH);
}

/// A derived load, three figures.
pub(in crate::sheets) fn show_load(inp: &Inputs, load: Force) -> String {
    Value::of(load).text_with_unit(inp.system())
}

/// A published strength, as the standard lists it.
pub(in crate::sheets) fn show_stress(inp: &Inputs, stress: Stress) -> String {
    match inp.system() {
        System::Inch => with_unit(stress.mpa(), &KSI, 1),
        System::Metric => with_unit(stress.mpa(), &MPA, 0),
    }
}

fn target(inp: &Inputs) -> Result<Share, Stop> {
    match inp.choice("joint") {
        "permanent" => Ok(proof::PERMANENT),
        "own" => inp.get("share"),
        _ => Ok(proof::REUSABLE),
    }
}

/// Past the proof load: the limit and the reason, no number.
fn beyond(inp: &Inputs, strength: &Strength, proof_load: Force, torque_limit: Torque) -> Stop {
    let name = strength.limit_name();
    let load = show_load(inp, proof_load);
    let (field, limit) = match inp.choice("from") {
        "torque" => (
            "torque",
            format!(
                "{} in this state ({load} clamp)",
                show_torque(inp, torque_limit)
            ),
        ),
        "clamp" => ("clamp", load),
        _ => ("share", format!("100%, that is {load}")),
    };
    Stop::withheld(
        field,
        limit,
        format!(
            "this passes the load at the {name} stress of {}: the screw would stretch permanently and may break",
            strength.grade.name
        ),
        "lower it, or take a stronger grade or a larger screw",
    )
}

/// Tension and torsion together while the wrench turns.
fn combined_line(inp: &Inputs, case: &Case, a: &mut Answer) {
    let (thread, rub) = (case.thread, &case.rub);
    let (Some(yield_min), Some(f)) = (case.strength.row.yield_min, rub.thread_friction) else {
        return;
    };
    let Ok(stress) = tension::combined_stress(thread.major, thread.pitch, case.area, case.clamp, f)
    else {
        return;
    };
    let used = Share::from_fraction(stress / yield_min);
    a.line("share-of-yield", used).places(0, 0).says(format!(
        "While the wrench turns, with friction {} in the thread; the torsion dies away afterward.",
        inp.num_to(Number::of(f), 2, 2)
    ));
    a.source(&VDI);
    if used.fraction() > 1.0 {
        a.note(
            "torque-basis",
            "Before you tighten",
            "Tension and torsion together pass the minimum yield strength while the wrench turns. Oil or grease the thread, or aim lower.",
        );
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn go(pairs: &[(&str, &str)]) -> Outcome {
        evaluate(&SHEET, &Entry::of(pairs))
    }

    #[test]
    fn examples_are_complete() {
        for example in SHEET.examples {
            let out = go(example);
            let faults: Vec<String> = out.faults().map(fault_text).collect();
            assert!(
                out.answer.is_complete(),
                "{example:?}: {:?} {faults:?}",
                out.answer.state
            );
        }
    }

    fn fault_text(fault: &crate::sheet::Fault) -> String {
        fault.text()
    }
}
