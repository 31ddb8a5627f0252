//! Will the thread strip? Depth that a tapped hole needs, the torque that is safe there, and what fails first.

mod at_depth;
mod care;
mod case;
mod hole;
mod tell;

use super::bolt_torque::fields::{GRADE_CHOICES, STATE_CHOICES};
use super::bolt_torque::strength::{stop_of, strength};
use crate::calls::thread::{CALL, read};
use crate::fastener::strip;
use crate::notation::plain;
use crate::quantity::units::{KSI, MPA, PSI};
use crate::quantity::{Kind, Length, Number};
use crate::sheet::*;
use crate::standards::bolts::internal_strength::ROWS;
use crate::thread;
use case::{Case, Hole, limits};

static H28: Source = Source::from_memory(
    "FED-STD-H28/2B, appendix B (reprinted in Machinery's Handbook)",
    "thread shear areas, length of engagement",
);
static CLASS: Source = Source::read("ASME B1.1-2003; ISO 965-1:2013", "limits of size");
static RULE: Source =
    Source::practice("1 D into steel, 1.5 D into iron, brass and bronze, 2 D into aluminum");
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
    "most shear over tensile: steel 0.65, aluminum 0.7, gray iron 1.1",
);

static MARGIN: Source = Source::practice(
    "Half again under the lowest strength, since a stripped thread cannot be put back",
);

#[allow(clippy::indexing_slicing)] // made while compiling: a wrong index stops the build
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
    revision: 2,
    title: "See whether a thread strips",
    question: "How deep must the screw go in, and what torque is safe before the thread strips?",
    aside: "thread, material, depth",
    words: &[
        "strip", "stripped", "engagement", "thread engagement", "depth", "tapped hole", "cast iron", "casting", "aluminium",
        "aluminum", "brass", "bronze", "pull out", "shear area", "insert", "blind hole", "safe torque", "sealant",
        "threadlocker", "hydraulic lock",
    ],
    group: Group::Assemble,
    fields: &[
        Field::call("thread", "Thread", &CALL).is(Thing::Thread).example("1/2-13"),
        Field::choice("grade", "Grade of the screw, by the marks on its head", &GRADE_CHOICES),
        Field::choice("into", "Tapped into", &MATERIAL_CHOICES),
        Field::quantity("tensile", "Tensile strength of the tapped part", Kind::Stress, const { &[&KSI, &MPA, &PSI] })
            .example("30 ksi")
            .range(5.0, 2500.0, "the range of tensile strengths, from lead to hard steel")
            .when(&[when("into", &["own"])])
            .measured(),
        Field::length("depth", "Engagement: full threads that hold")
            .example("3/4 in")
            .hint("Without chamfer, countersink and the point of the screw. Left empty: only the depth needed.")
            .range_mm(0.2, 300.0, "the range of tapped depths")
            .measured()
            .monotonic()
            .optional(),
        Field::choice(
            "class",
            "Fit of the thread",
            &[
                choice("usual", "usual (2A in 2B, 6g in 6H), at its loosest"),
                choice("close", "close (3A in 3B, 6h in 6H), at its loosest"),
                choice("basic", "basic sizes, no clearance at all"),
            ],
        ).seldom(),
        Field::length("bore", "Bore of the tapped hole, if measured").seldom()
            .example("27/64 in")
            .hint("An oversize tap drill leaves less thread on the screw to shear.")
            .range_mm(0.5, 200.0, "the range of tapped holes")
            .measured()
            .optional(),
        Field::choice("state", "Lubrication and finish", &STATE_CHOICES),
        Field::number("factor", "Nut factor K")
            .example("0.2")
            .range(0.02, 1.0, "published nut factors run from 0.08 to 0.5")
            .when(&[when("state", &["own"])])
            .measured(),
    ],
    results: &[
        Res::of("needed", "Engagement needed for the screw to break first", Kind::Length),
        Res::of("rule", "Rule of thumb", Kind::Length),
        Res::of("safe-torque", "Safe torque at this depth", Kind::Torque),
        Res::words("first", "What fails first"),
        Res::of("strip-torque", "Torque at failure", Kind::Torque),
        Res::of("strip-load", "Load at failure", Kind::Force),
        Res::of("usual-share", "Usual clamp load, share of the lowest load at failure", Kind::Share),
        Res::of("screw-breaks", "Breaking load of the screw", Kind::Force),
        Res::of("screw-strips", "Stripping load of the screw's thread", Kind::Force),
        Res::of("hole-strips", "Stripping load of the tapped thread", Kind::Force),
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

fn figure(inp: &Inputs, a: &mut Answer) -> Result<(), Stop> {
    let thread = read(inp.call("thread")?).map_err(|_| Stop::Missing("thread"))?;
    let strength = strength("grade", inp.choice("grade"), thread)?;
    let case = Case {
        thread,
        screw: strength.row.tensile,
        hole: Hole::of(inp)?,
        limits: limits(inp, thread)?,
        stress_area: thread::stress_area(thread),
    };

    let depth = inp.opt::<Length>("depth");
    if let Some(depth) = depth {
        enough_to_hold(inp, &case, depth)?;
        at_depth::headline(inp, &case, &strength, depth, a)?;
    }
    let needed = needed_lines(inp, &case, a)?;
    if let Some(depth) = depth {
        at_depth::loads(inp, &case, depth, a)?;
        tell::depths(inp, &case, depth, a);
    }
    let ratio = strip::strength_ratio(&case.limits, case.screw, case.hole.tensile)
        .map_err(|e| stop_of(e, "thread"))?;
    a.line("ratio", Number::of(ratio))
        .says("Above 1 the tapped part is the weaker and needs more depth.");
    tell::materials(inp, &case, a);
    tell::working(inp, &case, &strength, a);
    a.source(strength.source)
        .source(case.hole.source())
        .source(&CLASS)
        .source(&RATIO);
    care::cautions(inp, &case, &strength, a);
    a.draw(|| hole::drawing(inp, &case, needed));
    Ok(())
}

/// Refuses a depth of less than one thread.
fn enough_to_hold(inp: &Inputs, case: &Case, depth: Length) -> Result<(), Stop> {
    if depth.mm() >= case.thread.pitch.mm() * 0.999_999 {
        return Ok(());
    }
    let least = inp.show(case.thread.pitch.length());
    Err(inp.out_of_range(
        "depth",
        format!("less than one thread holds; one pitch is {least}"),
        "enter the length of full threads",
    ))
}

/// The depth needed, and the rule of thumb beside it.
fn needed_lines(inp: &Inputs, case: &Case, a: &mut Answer) -> Result<Length, Stop> {
    let (needed, weak) = (case.needed(case.hole.tensile)?, case.needed(case.hole.low)?);
    let (depth, most) = (needed.depth(), weak.depth());
    let mut says = format!(
        "{}, full threads only. {} D.",
        case.hole.name,
        inp.num_to(Number::of(depth / case.thread.major), 2, 2)
    );
    if needed.by_h28_area < needed.by_stress_area * 0.995 {
        says = format!(
            "{says} By the screw's breaking load (stress area), the deeper of two; the tensile area of FED-STD-H28 asks for {}.",
            inp.show(needed.by_h28_area)
        );
    }
    let line = a.line("needed", depth).says(says);
    if most > depth {
        line.band(
            depth,
            most,
            "tensile strength from usual down to the lowest published",
        );
    }
    if let Some(d) = case.hole.rule_diameters {
        a.line("rule", case.thread.major * d).says(format!(
            "{} times the diameter, common practice.",
            plain(d, 1)
        ));
        a.source(&RULE);
    }
    Ok(depth)
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
