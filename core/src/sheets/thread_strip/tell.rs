//! Other materials, other depths, the working and what to mind.

use super::case::{Case, Hole};
use super::{H28, SCREW_SHEAR, name};
use crate::fastener::strip;
use crate::quantity::{Length, Number};
use crate::sheet::{Answer, Inputs, Value};
use crate::sheets::bolt_torque::show_stress;
use crate::sheets::bolt_torque::strength::Strength;
use crate::standards::internal_strength::{H28_SHEAR_RATIO, ROWS};

/// The same screw in other materials, strongest first.
pub(super) fn materials(inp: &Inputs, case: &Case, a: &mut Answer) {
    if inp.quiet() {
        return;
    }
    let table = a.table(
        "materials",
        "The same screw in other materials",
        &[
            "Tapped into",
            "Tensile strength",
            "Engagement needed",
            "In diameters",
            "Rule of thumb",
        ],
    );
    let mut rows: Vec<Hole> = ROWS.iter().map(Hole::from_row).collect();
    crate::order::sort_by(&mut rows, |x, y| {
        y.tensile.mpa().total_cmp(&x.tensile.mpa())
    });
    for hole in rows {
        let Ok(needed) = case.needed(hole.tensile) else {
            continue;
        };
        table
            .row(vec![
                Value::words(hole.name),
                Value::words(show_stress(inp, hole.tensile)),
                Value::of(needed),
                Value::of(Number::of(needed / case.thread.major)).places(2, 2),
                Value::words(hole.rule_diameters.map_or(String::new(), |d| {
                    format!("{} D", crate::calls::notation::plain(d, 1))
                })),
            ])
            .chosen(hole.name == case.hole.name);
    }
    table.note("Full threads, so that the screw breaks before the thread strips. Weakest iron needs more: see the range above.");
}

/// The same hole at other depths.
pub(super) fn depths(inp: &Inputs, case: &Case, depth: Length, a: &mut Answer) {
    if inp.quiet() {
        return;
    }
    let table = a.table(
        "depths",
        "Other depths",
        &[
            "Engagement",
            "In diameters",
            "Gives at least at",
            "Gives usually at",
            "What gives",
        ],
    );
    let mut all: Vec<(Length, bool)> = [0.5, 1.0, 1.5, 2.0, 2.5]
        .iter()
        .map(|x| (case.thread.major * *x, false))
        .collect();
    all.retain(|(d, _)| (*d - depth).abs().mm() > 1e-6);
    all.push((depth, true));
    crate::order::sort_by(&mut all, |x, y| x.0.mm().total_cmp(&y.0.mm()));
    for (d, is_entry) in all {
        let hole = case.hole;
        let (Ok(weak), Ok(usual)) = (
            case.failure(d, H28_SHEAR_RATIO, hole.low, H28_SHEAR_RATIO),
            case.failure(d, SCREW_SHEAR.0, hole.tensile, hole.shear_ratio),
        ) else {
            continue;
        };
        let (first, pull) = usual.first();
        table
            .row(vec![
                Value::of(d),
                Value::of(Number::of(d / case.thread.major)).places(2, 2),
                Value::of(weak.first().1),
                Value::of(pull),
                Value::words(name(first)),
            ])
            .chosen(is_entry);
    }
    table.note("The formula shares the load evenly. In truth the first threads carry most, and past 1.5 D more depth adds little.");
}

/// The working.
pub(super) fn working(
    inp: &Inputs,
    case: &Case,
    strength: &Strength,
    needed: Length,
    a: &mut Answer,
) {
    let l = case.limits;
    a.work(|w| {
        w.step(
            "Sizes that decide",
            &[format!(
                "Kn = {} (largest bore), Es = {} and Ds = {} (slackest screw), En = {} (slackest hole), P = {}",
                inp.num(l.internal_minor_max),
                inp.num(l.external_pitch_min),
                inp.num(l.external_major_min),
                inp.num(l.internal_pitch_max),
                inp.num_to(l.pitch.length(), 5, 3)
            )],
            &super::CLASS,
        );
        if let Ok(at) = strip::method_area(&l, case.stress_area, case.screw) {
            let over = case.screw.ksi() > 100.0;
            w.step(
                "Tensile area of the screw",
                &[
                    format!("{}: {} tensile", strength.grade.name, show_stress(inp, case.screw)),
                    if over {
                        format!("above 100 ksi: At = π (Es/2 − 0.16238 P)² = {}", inp.show_to(at, 5, 2))
                    } else {
                        format!("to 100 ksi: the stress area, At = {}", inp.show_to(at, 5, 2))
                    },
                ],
                &H28,
            );
            if let (Ok(le), Ok(j)) =
                (strip::engagement_equal(&l, at), strip::strength_ratio(&l, case.screw, case.hole.tensile))
            {
                w.step(
                    "Depth for equal strength",
                    &[
                        "Le = 2 At / (π Kn [1/2 + 0.57735 n (Es − Kn)])".into(),
                        format!("Le = {}", inp.show(le)),
                    ],
                    &H28,
                );
                w.step(
                    "Strength ratio",
                    &[
                        "J = (ASs × screw) / (ASn × tapped part)".into(),
                        format!(
                            "J with {} and {} = {}",
                            show_stress(inp, case.screw),
                            show_stress(inp, case.hole.tensile),
                            inp.num_to(Number::of(j), 3, 3)
                        ),
                    ],
                    &H28,
                );
                let how = if j > 1.0 { "Q = J Le" } else { "J is not above 1: Q = Le" };
                w.step("Depth needed", &[how.into(), format!("Q = {}", inp.show(needed))], &H28);
            }
        }
        if let Some(depth) = inp.opt::<Length>("depth")
            && let (Ok(ss), Ok(sn)) = (strip::external_shear_area(&l, depth), strip::internal_shear_area(&l, depth))
        {
            w.step(
                "Shear areas at this depth",
                &[
                    "ASs = π n Le Kn [1/(2n) + 0.57735 (Es − Kn)]".into(),
                    format!("ASs = {}", inp.show(ss)),
                    "ASn = π n Le Ds [1/(2n) + 0.57735 (Ds − En)]".into(),
                    format!("ASn = {}", inp.show(sn)),
                ],
                &H28,
            );
        }
    });
}

/// What to mind.
pub(super) fn cautions(inp: &Inputs, case: &Case, needed: Length, a: &mut Answer) {
    a.stop(
        "stripped-for-good",
        "Before you tighten",
        "A stripped thread cannot be put back. The figures are for sound, full threads and the machine maker's figure comes first.",
    );
    if case.hole.iron {
        a.note(
            "old-casting",
            "Before you tighten",
            "An old casting may be porous, cracked or weaker than its class, and a thick one is weaker than its test bar. Look for cracks and count the threads that are really there.",
        );
    }
    if inp.opt::<Length>("depth").is_some_and(|d| d < needed) {
        a.note(
            "too-shallow",
            "Before you tighten",
            "There is less thread than needed: the thread strips before the screw breaks.",
        );
    }
    a.note(
        "oil-in-blind-hole",
        "Before you tighten",
        "Oil in a blind hole can lock the screw and split the casting. Blow it out first.",
    );
}
