//! How would it be in other materials and at other depths, and how was it worked out?

use super::H28;
use super::case::{Case, Hole};
use crate::fastener::strip;
use crate::quantity::{Length, Number, System};
use crate::sheet::{Answer, Inputs, Value, Work};
use crate::sheets::joints::bolt_torque::show_stress;
use crate::sheets::joints::bolt_torque::strength::Strength;
use crate::standards::bolts::internal_strength::ROWS;

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
        let Ok(needed) = case.needed(hole.tensile).map(|needed| needed.depth()) else {
            continue;
        };
        table
            .row(vec![
                Value::words(hole.name),
                Value::words(show_stress(inp, hole.tensile)),
                Value::of(needed),
                Value::of(Number::of(needed / case.thread.major)).places(2, 2),
                Value::words(hole.rule_diameters.map_or(String::new(), |d| {
                    format!("{} D", crate::notation::plain(d, 1))
                })),
            ])
            .chosen(hole.name == case.hole.name);
    }
    table.note("Full threads, so that the screw breaks before the thread strips. Where the strength is lower more is needed: see the range above.");
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
            "Lowest load at failure",
            "Usual load at failure",
            "What fails first",
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
        let Ok((usual, low)) = case.by_rule(d) else {
            continue;
        };
        table
            .row(vec![
                Value::of(d),
                Value::of(Number::of(d / case.thread.major)).places(2, 2),
                Value::of(low.first().1),
                Value::of(usual.first().1),
                Value::words(Case::verdict(&usual, &low).words()),
            ])
            .chosen(is_entry);
    }
    table.note("The formula shares the load evenly. In truth the first threads carry most, and past 1.5 D more depth adds little.");
}

/// The working.
pub(super) fn working(inp: &Inputs, case: &Case, strength: &Strength, a: &mut Answer) {
    let l = case.limits;
    a.work(|w| {
        w.step(
            "Sizes that decide",
            &[format!(
                "Kn = {} (largest bore), Es = {} and Ds = {} (loosest screw), En = {} (loosest hole), P = {}",
                inp.num(l.internal_minor_max),
                inp.num(l.external_pitch_min),
                inp.num(l.external_major_min),
                inp.num(l.internal_pitch_max),
                inp.num_to(l.pitch.length(), 5, 3)
            )],
            &super::CLASS,
        );
        breaking(inp, case, strength, w);
        depth_needed(inp, case, w);
        if let Some(depth) = inp.opt::<Length>("depth") {
            shear_areas(inp, case, depth, w);
        }
    });
}

/// The breaking load of the screw.
fn breaking(inp: &Inputs, case: &Case, strength: &Strength, w: &mut Work) {
    let (formula, thousand) = match inp.system() {
        System::Inch => ("F = 1000 As Rm (Rm in ksi)", "1000 × "),
        System::Metric => ("F = As Rm", ""),
    };
    let load = crate::quantity::Force::from_newtons(case.stress_area.mm2() * case.screw.mpa());
    w.step(
        "Breaking load of the screw",
        &[
            formula.into(),
            format!(
                "F = {thousand}{} × {} = {}",
                inp.num_to(case.stress_area, 5, 2),
                show_stress(inp, case.screw),
                inp.show(load)
            ),
        ],
        strength.source,
    );
}

/// The depth for equal strength, the strength ratio and the depth needed.
fn depth_needed(inp: &Inputs, case: &Case, w: &mut Work) {
    let l = case.limits;
    let one = Length::from_mm(match inp.system() {
        System::Inch => crate::quantity::MM_PER_INCH,
        System::Metric => 1.0,
    });
    let (Ok(le), Ok(j), Ok(needed), Ok(ss), Ok(sn)) = (
        strip::engagement_equal(&l, case.stress_area),
        strip::strength_ratio(&l, case.screw, case.hole.tensile),
        case.needed(case.hole.tensile),
        strip::external_shear_area(&l, one),
        strip::internal_shear_area(&l, one),
    ) else {
        return;
    };
    w.step(
        "Depth for equal strength",
        &[
            "Le = 2 As P / (π Kn [P/2 + 0.57735 (Es − Kn)])".into(),
            format!(
                "Le = 2 × {} × {p} / (π × {kn} × ({p} / 2 + 0.57735 × ({} − {kn}))) = {}",
                inp.num_to(case.stress_area, 5, 2),
                inp.num_to(l.external_pitch_min, 5, 4),
                inp.show(le),
                p = inp.num_to(l.pitch.length(), 6, 4),
                kn = inp.num_to(l.internal_minor_max, 5, 4),
            ),
        ],
        &H28,
    );
    w.step(
        "Strength ratio",
        &[
            "J = (ASs × screw) / (ASn × tapped part), shear areas per unit of depth".into(),
            format!(
                "J = {} × {} / ({} × {}) = {}",
                inp.num_to(ss, 4, 3),
                show_stress(inp, case.screw),
                inp.num_to(sn, 4, 3),
                show_stress(inp, case.hole.tensile),
                inp.num_to(Number::of(j), 3, 3)
            ),
        ],
        &H28,
    );
    let q = inp.show(needed.by_stress_area);
    let mut lines = if j > 1.0 {
        let put_in = format!(
            "Q = {} × {} = {q}",
            inp.num_to(Number::of(j), 3, 3),
            inp.num(le)
        );
        vec!["Q = J Le".to_owned(), put_in]
    } else {
        vec!["J is not above 1: Q = Le".to_owned(), format!("Q = {q}")]
    };
    if needed.by_h28_area < needed.by_stress_area
        && let Ok(at) = strip::method_area(&l, case.stress_area, case.screw)
    {
        lines.push(format!(
            "with the area of FED-STD-H28 above 100 ksi, π (Es/2 − 0.16238 P)² = {}: {}; the deeper one counts",
            inp.show_to(at, 5, 2),
            inp.show(needed.by_h28_area)
        ));
    }
    w.step("Depth needed", &lines, &H28);
}

/// The shear areas at a depth.
fn shear_areas(inp: &Inputs, case: &Case, depth: Length, w: &mut Work) {
    let l = case.limits;
    let (Ok(ss), Ok(sn)) = (
        strip::external_shear_area(&l, depth),
        strip::internal_shear_area(&l, depth),
    ) else {
        return;
    };
    let put_in = |name: &str, across: Length, a: Length, b: Length, area| {
        format!(
            "{name} = π × {le} / {p} × {} × ({p} / 2 + 0.57735 × ({} − {})) = {}",
            inp.num_to(across, 5, 4),
            inp.num_to(a, 5, 4),
            inp.num_to(b, 5, 4),
            inp.show(area),
            le = inp.num(depth),
            p = inp.num_to(l.pitch.length(), 6, 4),
        )
    };
    let (kn, ds) = (l.internal_minor_max, l.external_major_min);
    w.step(
        "Shear areas at this depth",
        &[
            "ASs = π Le/P Kn [P/2 + 0.57735 (Es − Kn)]".into(),
            put_in("ASs", kn, l.external_pitch_min, kn, ss),
            "ASn = π Le/P Ds [P/2 + 0.57735 (Ds − En)]".into(),
            put_in("ASn", ds, ds, l.internal_pitch_max, sn),
        ],
        &H28,
    );
}
