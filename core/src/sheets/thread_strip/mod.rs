//! Will the thread strip? Depth that a tapped hole needs, and the load and torque at which thread or screw gives.

mod case;
mod hole;
mod tell;

use super::bolt_torque::fields::{GRADE_CHOICES, STATE_CHOICES};
use super::bolt_torque::friction;
use super::bolt_torque::sources::SHORT;
use super::bolt_torque::strength::{stop_of, strength};
use super::bolt_torque::torque_places;
use crate::calls::thread::{CALL, read};
use crate::fastener::strip::{self, First};
use crate::fastener::{proof, short_form};
use crate::quantity::units::{KSI, MPA, PSI};
use crate::quantity::{Force, Kind, Length, Share, Torque};
use crate::sheet::*;
use crate::standards::internal_strength::{H28_SHEAR_RATIO, ROWS};
use crate::thread;
use case::{Case, Hole, limits};

static H28: Source = Source::from_memory(
    "FED-STD-H28/2B, appendix B (reprinted in Machinery's Handbook)",
    "thread shear areas, length of engagement",
);
static CLASS: Source = Source::read("ASME B1.1-2003; ISO 965-1:2013", "limits of size");
static RULE: Source =
    Source::practice("1 D into steel, 1.5 D into iron and brass, 2 D into aluminium");
static IRON: Source = Source::read(
    "ASTM A48; ASM, Classes of Gray Iron (2002)",
    "class number = least tensile strength of the test bar in ksi",
);
static METAL: Source = Source::from_memory(
    "General handbook strengths; Shigley, Tables A-20 and A-22",
    "wrought metals",
);
static RATIO: Source = Source::from_memory(
    "VDI 2230 Part 1",
    "shear over tensile: steel 0.6, aluminium 0.7, grey iron 1.1",
);

/// Shear over tensile strength of a steel screw: usual and most (VDI 2230).
const SCREW_SHEAR: (f64, f64) = (0.6, 0.65);

#[allow(clippy::indexing_slicing)] // figured while compiling: a wrong index stops the build
const fn material_choices() -> [Choice; ROWS.len() + 1] {
    let mut all = [choice("own", "a tensile strength of my own"); ROWS.len() + 1];
    let mut i = 0;
    while i < ROWS.len() {
        all[i] = choice(ROWS[i].key, ROWS[i].name);
        i += 1;
    }
    all
}
static MATERIAL_CHOICES: [Choice; ROWS.len() + 1] = material_choices();

/// The sheet.
pub static SHEET: Sheet = Sheet {
    id: "thread-strip",
    revision: 1,
    title: "See whether a thread strips",
    question: "How deep must the screw go in, and what torque strips the thread first?",
    aside: "thread, material, depth",
    words: &[
        "strip", "stripped", "engagement", "depth", "tapped hole", "cast iron", "casting", "aluminium", "aluminum",
        "brass", "pull out", "shear area", "insert", "blind hole",
    ],
    group: Group::Assemble,
    fields: &[
        Field::call("thread", "Thread", &CALL).example("1/2-13"),
        Field::choice("grade", "Grade of the screw, by the marks on its head", &GRADE_CHOICES),
        Field::choice("into", "Tapped into", &MATERIAL_CHOICES),
        Field::quantity("tensile", "Tensile strength of the tapped part", Kind::Stress, const { &[&KSI, &MPA, &PSI] })
            .example("30 ksi")
            .range(5.0, 2500.0, "metals from lead to hard steel")
            .when(&[when("into", &["own"])])
            .measured(),
        Field::length("depth", "Engagement: full threads that hold")
            .example("3/4 in")
            .hint("Without chamfer, countersink and the point of the screw. Empty: only the depth needed.")
            .range_mm(0.2, 300.0, "depths of tapped holes")
            .measured()
            .monotonic()
            .optional(),
        Field::choice(
            "class",
            "Fit of the thread",
            &[
                choice("usual", "usual (2A in 2B, 6g in 6H), at its slackest"),
                choice("close", "close (3A in 3B, 6h in 6H), at its slackest"),
                choice("basic", "basic sizes, no clearance at all"),
            ],
        ).seldom(),
        Field::length("bore", "Bore of the tapped hole, if measured").seldom()
            .example("27/64 in")
            .hint("An oversize tap drill leaves less thread on the screw to shear.")
            .range_mm(0.5, 200.0, "bores of tapped holes")
            .measured()
            .optional(),
        Field::choice("state", "Thread and head are", &STATE_CHOICES),
        Field::number("factor", "Nut factor K")
            .example("0.2")
            .range(0.02, 1.0, "nut factors in print run from 0.08 to 0.5")
            .when(&[when("state", &["own"])])
            .measured(),
    ],
    results: &[
        Res::of("needed", "Engagement needed for the screw to break first", Kind::Length),
        Res::of("rule", "Rule of thumb", Kind::Length),
        Res::words("first", "What gives first"),
        Res::of("strip-torque", "Torque at which it gives", Kind::Torque),
        Res::of("strip-load", "Pull at which it gives", Kind::Force),
        Res::of("usual-share", "Usual clamp load, share of that pull at its least", Kind::Share),
        Res::of("screw-breaks", "Pull at which the screw breaks", Kind::Force),
        Res::of("screw-strips", "Pull at which the screw's thread strips", Kind::Force),
        Res::of("hole-strips", "Pull at which the tapped thread strips", Kind::Force),
        Res::of("external-area", "Shear area of the screw's thread", Kind::Area),
        Res::of("internal-area", "Shear area of the tapped thread", Kind::Area),
        Res::of("ratio", "Strength ratio J", Kind::Number),
    ],
    examples: &[
        &[("thread", "1/2-13"), ("grade", "sae-5"), ("into", "iron-30"), ("depth", "3/4 in")],
        &[("thread", "M8"), ("grade", "8.8"), ("into", "al-6061"), ("depth", "12 mm"), ("state", "oiled")],
        &[("thread", "1/4-20"), ("grade", "sae-8"), ("into", "al-6061")],
        &[("thread", "3/8-16"), ("grade", "sae-2"), ("into", "own"), ("tensile", "25 ksi"), ("depth", "1/2 in"), ("class", "basic")],
    ],
    takes: &["thread"],
    finds: None,
    figure,
};

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let thread = read(inp.call("thread")?).map_err(|_| Stop::Missing("thread"))?;
    let strength = strength(inp, thread)?;
    let hole = Hole::of(inp)?;
    let limits = limits(inp, thread)?;
    let stress_area = thread::stress_area(thread);
    let screw = strength.row.tensile;
    let case = Case {
        thread,
        screw,
        hole,
        limits,
        stress_area,
    };

    let mut a = inp.answer();
    let (needed, needed_weak) = (case.needed(hole.tensile)?, case.needed(hole.low)?);
    let line = a.line("needed", needed).says(format!(
        "{}, full threads only. {} D.",
        hole.name,
        inp.num_to(crate::quantity::Number::of(needed / thread.major), 2, 2)
    ));
    if needed_weak > needed {
        line.band(
            needed,
            needed_weak,
            "tensile strength from usual down to weakest",
        );
    }
    if let Some(d) = hole.rule_diameters {
        let text = crate::calls::notation::plain(d, 1);
        a.line("rule", thread.major * d)
            .says(format!("{text} times the diameter, common practice."));
        a.source(&RULE);
    }
    let ratio =
        strip::strength_ratio(&limits, screw, hole.tensile).map_err(|e| stop_of(e, "thread"))?;
    if let Some(depth) = inp.opt::<Length>("depth") {
        if depth.mm() < thread.pitch.mm() * 0.999_999 {
            let least = inp.show(thread.pitch.length());
            return Err(inp.out_of_range(
                "depth",
                format!("less than one thread holds; one pitch is {least}"),
                "enter the length of full threads",
            ));
        }
        at_depth(inp, &case, &strength, depth, &mut a)?;
        tell::depths(inp, &case, depth, &mut a);
    }
    a.line("ratio", crate::quantity::Number::of(ratio))
        .says("Above 1 the tapped part is the weaker and needs more depth.");
    tell::materials(inp, &case, &mut a);
    tell::working(inp, &case, &strength, needed, &mut a);
    a.source(strength.source)
        .source(hole.source())
        .source(&CLASS)
        .source(&RATIO);
    tell::cautions(inp, &case, needed, &mut a);
    a.draw(|| hole::drawing(inp, &case, needed));
    Ok(a)
}

/// What gives at the depth there is: pulls and torques, with their spread.
fn at_depth(
    inp: &Inputs,
    case: &Case,
    strength: &super::bolt_torque::strength::Strength,
    depth: Length,
    a: &mut Answer,
) -> Result<(), Stop> {
    let hole = case.hole;
    let usual = case.failure(depth, SCREW_SHEAR.0, hole.tensile, hole.shear_ratio)?;
    let weak = case.failure(depth, H28_SHEAR_RATIO, hole.low, H28_SHEAR_RATIO)?;
    let strong = case.failure(depth, SCREW_SHEAR.1, hole.tensile, hole.shear_ratio_high)?;
    let ((first, pull), (worst, low), (_, high)) = (usual.first(), weak.first(), strong.first());
    a.words("first", name(first)).says(if worst == first {
        "Also at the weakest strength in print.".to_owned()
    } else {
        format!("At the weakest strength in print: {}.", name(worst))
    });
    let rub = friction::short(inp)?;
    let torque = |k: f64, f: Force| {
        short_form::torque(k, case.thread.major, f).map_err(|e| stop_of(e, "thread"))
    };
    let (t, t_low, t_high): (Torque, Torque, Torque) = (
        torque(rub.k, pull)?,
        torque(rub.low, low)?,
        torque(rub.high, high)?,
    );
    let (inch, metric) = torque_places(t);
    let line = a
        .line("strip-torque", t)
        .places(inch, metric)
        .says("Never tighten to this. Stay under the low end; the twist breaks a screw sooner than pull alone.");
    if t_low < t_high {
        line.band(
            t_low,
            t_high,
            "least and most strength, least and most nut factor in print",
        );
    }
    let line = a
        .line("strip-load", pull)
        .says("The least of the three below.");
    if low < high {
        line.band(
            low,
            high,
            "shear 0.5 of the weakest tensile strength (H28) to the most in print (VDI 2230)",
        );
    }
    if let Some(stress) = strength.row.proof.or(strength.row.yield_min) {
        let limit =
            proof::proof_load(case.stress_area, stress).map_err(|e| stop_of(e, "thread"))?;
        let clamp = limit * proof::REUSABLE.fraction();
        a.line("usual-share", Share::from_fraction(clamp / low))
            .says(format!(
                "75 % of the proof load is {}; at the weakest in print it gives at {}.",
                inp.show(clamp),
                inp.show(low)
            ));
        if clamp > low {
            a.stop(
                "usual-torque-strips",
                "Before you tighten",
                "The usual torque for this screw may strip the thread at this depth. Go deeper, use a weaker torque, or fit an insert.",
            );
        }
    }
    a.line("screw-breaks", usual.screw_breaks)
        .says("Least tensile strength times the stress area.");
    a.line("screw-strips", usual.screw_strips)
        .says("Shear 0.6 of its tensile strength.")
        .band(
            weak.screw_strips,
            strong.screw_strips,
            "shear 0.5 to 0.65 of tensile",
        );
    a.line("hole-strips", usual.hole_strips)
        .says(format!(
            "Shear {} of its tensile strength.",
            crate::calls::notation::plain(hole.shear_ratio, 2)
        ))
        .band(
            weak.hole_strips,
            strong.hole_strips,
            "strength and shear ratio from least to most in print",
        );
    let area = |e| stop_of(e, "depth");
    a.line(
        "external-area",
        strip::external_shear_area(&case.limits, depth).map_err(area)?,
    );
    a.line(
        "internal-area",
        strip::internal_shear_area(&case.limits, depth).map_err(area)?,
    );
    a.source(&SHORT);
    Ok(())
}

/// What gives, in words.
fn name(first: First) -> &'static str {
    match first {
        First::ScrewBreaks => "the screw breaks",
        First::ScrewStrips => "the screw's thread strips",
        First::HoleStrips => "the tapped thread strips",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn examples_are_complete() {
        for example in SHEET.examples {
            let out = evaluate(&SHEET, &Entry::of(example));
            let faults: Vec<String> = out.faults().map(Fault::text).collect();
            assert!(
                out.answer.is_complete(),
                "{example:?}: {:?} {faults:?}",
                out.answer.state
            );
        }
    }
}
