//! How tight? Torque and clamp load of a screw, both ways, with the spread that friction and tightening method leave.

pub(super) mod fields;
pub(super) mod friction;
mod joint;
pub(super) mod sources;
mod spanner;
pub(super) mod strength;
mod tables;
mod working;

use crate::calls::notation::plain;
use crate::calls::thread::read;
use crate::fastener::{Fault, proof, short_form, tension};
use crate::quantity::units::{KSI, LBF_FT, LBF_IN, MPA, NEWTON_METRE};
use crate::quantity::{Force, Length, Number, Share, Stress, System, Torque, with_unit};
use crate::sheet::*;
use crate::standards::bolt_strength::GRADES;
use crate::standards::nut_factors;
use crate::standards::preload_scatter::{self, Scatter};
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
    revision: 1,
    title: "Tighten a screw",
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

/// A torque small enough to want another decimal.
pub(super) fn torque_places(torque: Torque) -> (u8, u8) {
    if torque.newton_metres() < 10.0 {
        (2, 2)
    } else {
        (1, 1)
    }
}

pub(super) fn show_torque(inp: &Inputs, torque: Torque) -> String {
    let (inch, metric) = torque_places(torque);
    inp.show_to(torque, inch, metric)
}

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let thread = read(inp.call("thread")?).map_err(|_| Stop::Missing("thread"))?;
    let strength = strength(inp, thread)?;
    let area = thread::stress_area(thread);
    let limit_stress = strength.limit().ok_or_else(|| {
        Stop::fault(
            "grade",
            Reason::NoSource,
            "no verified proof or yield strength for this grade",
            "choose another grade",
        )
    })?;
    let proof_load = proof::proof_load(area, limit_stress).map_err(|e| stop_of(e, "thread"))?;
    let rub = rub(inp, thread)?;
    let d = thread.major;
    let torque_at = |k: f64, f: Force| short_form::torque(k, d, f).map_err(|e| stop_of(e, "clamp"));
    let torque_limit = torque_at(rub.k, proof_load)?;

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
        torque_at(rub.k, clamp)?
    };

    let mut a = inp.answer();
    let state_name =
        nut_factors::state(inp.choice("state")).map_or("your own nut factor", |s| s.state);
    let (inch_places, metric_places) = torque_places(torque);
    let line = a
        .line("torque", torque)
        .places(inch_places, metric_places)
        .says(format!("Thread and head: {state_name}."));
    if inp.choice("from") != "torque" && rub.high > rub.low {
        line.band(
            torque_at(rub.low, clamp)?,
            torque_at(rub.high, clamp)?,
            rub.spread.clone(),
        );
    }
    let line = a
        .line("clamp", clamp)
        .says("Pull along the screw, as it is left after tightening.");
    let scatter = scatter_row(inp);
    let mut highest = clamp;
    if let Some(s) = scatter {
        let (low, high) = short_form::scatter(clamp, s.percent);
        highest = high;
        line.band(
            low,
            high,
            format!("± {} %, {} ({})", plain(s.percent, 1), s.method, s.source),
        );
    }
    let basis = match strength.row.proof {
        Some(_) => {
            "Of the proof load: above it the screw takes a set. Usual: 75 % where the joint comes apart again, 90 % for good."
        }
        None => {
            "Of the load at the 0.2 % stress: the standard defines no proof load for stainless."
        }
    };
    a.line("share-of-proof", share).places(1, 1).says(basis);
    a.line("torque-in-lb", torque)
        .units(&LBF_IN, &LBF_IN)
        .places(1, 1);
    a.line("torque-ft-lb", torque)
        .units(&LBF_FT, &LBF_FT)
        .places(inch_places, inch_places);
    a.line("torque-nm", torque)
        .units(&NEWTON_METRE, &NEWTON_METRE)
        .places(metric_places, metric_places);
    let setting = spanner::set_to(inp, torque, &mut a)?;
    spanner::wrench(inp, setting, &mut a)?;
    spanner::passes(inp, setting, &mut a);
    a.line("proof-load", proof_load)
        .label(format!("Load at the {} stress", strength.limit_name()))
        .says(format!(
            "{}: {} times the stress area.",
            strength.grade.name,
            show_stress(inp, limit_stress)
        ));
    let (pi, pm) = torque_places(torque_limit);
    a.line("torque-at-proof", torque_limit)
        .places(pi, pm)
        .says("With the nut factor used here. Not a figure to tighten to.");
    a.line("nut-factor", Number::of(rub.k))
        .says(rub.says.clone());
    a.line("stress-area", area)
        .says(if thread.series.is_metric() {
            "π/4 (d − 0.9382 P)²"
        } else {
            "π/4 (D − 0.9743 P)²"
        });
    let case = Case {
        thread,
        strength: &strength,
        limit_stress,
        area,
        proof_load,
        clamp,
        torque,
        rub: &rub,
    };
    yield_line(inp, &case, &mut a);
    if let Some(length) = inp.opt::<Length>("grip") {
        let stretch = Length::from_mm(clamp.newtons() * length.mm() / (area.mm2() * STEEL.mpa()));
        a.line("stretch", stretch)
            .says("Of the grip alone, thread over its whole length, steel. Head and nut add some.");
        a.source(&STRETCH);
    }

    tables::states(inp, d, clamp, torque, proof_load, &mut a);
    tables::methods(inp, clamp, &mut a);
    tables::lists(inp, thread, &strength, torque, &mut a);
    working(inp, &case, &mut a);
    spanner::working(inp, torque, setting, &mut a);
    if matches!(inp.choice("state"), "plain" | "zinc" | "cadmium") {
        a.source(&K_OTHER);
    }
    a.source(&NASA).source(&SCATTER_BOOK);
    working::cautions(inp, share, highest, proof_load, &strength, &mut a);
    a.draw(|| joint::drawing(inp, thread, clamp, torque));
    Ok(a)
}

pub(super) fn show_stress(inp: &Inputs, stress: Stress) -> String {
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
    let (field, limit) = match inp.choice("from") {
        "torque" => (
            "torque",
            format!(
                "{} in this state ({} clamp)",
                show_torque(inp, torque_limit),
                inp.show(proof_load)
            ),
        ),
        "clamp" => ("clamp", inp.show(proof_load)),
        _ => ("share", format!("100 %, that is {}", inp.show(proof_load))),
    };
    Stop::withheld(
        field,
        limit,
        format!(
            "this passes the load at the {name} stress of {}: the screw would stretch for good and may break",
            strength.grade.name
        ),
        "lower it, or take a stronger grade or a larger screw",
    )
}

fn yield_line(inp: &Inputs, case: &Case, a: &mut Answer) {
    let Case {
        thread,
        strength,
        area,
        clamp,
        rub,
        ..
    } = *case;
    let (Some(yield_min), Some(f)) = (strength.row.yield_min, rub.thread_friction) else {
        return;
    };
    let Ok(stress) = tension::combined_stress(thread.major, thread.pitch, area, clamp, f) else {
        return;
    };
    let used = Share::from_fraction(stress / yield_min);
    a.line("share-of-yield", used).places(0, 0).says(format!(
        "While the wrench turns, with friction {} in the thread; the twist dies away afterwards.",
        inp.num_to(Number::of(f), 2, 2)
    ));
    a.source(&VDI);
    if used.fraction() > 1.0 {
        a.note(
            "torque-basis",
            "Before you tighten",
            "Pull and twist together pass the least yield strength while the wrench turns. Oil or grease the thread, or aim lower.",
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
            let faults: Vec<String> = out.faults().map(Fault_text).collect();
            assert!(
                out.answer.is_complete(),
                "{example:?}: {:?} {faults:?}",
                out.answer.state
            );
        }
    }

    #[allow(non_snake_case)]
    fn Fault_text(fault: &crate::sheet::Fault) -> String {
        fault.text()
    }
}
