//! The same screw in other states of thread and head, and by other ways of tightening.

use super::sources::{ARMY, OLDER, VDI};
use super::strength::Strength;
use super::working::Case;
use super::{scatter_row, torque_places};
use crate::fastener::long_form::{self, Friction, Screw};
use crate::fastener::{short_form, tension};
use crate::quantity::{Force, Number, Share, System, Torque};
use crate::sheet::{Answer, Inputs, Source, Value};
use crate::standards::bolts::nut_factors::{self, NutFactor};
use crate::standards::{bolts::heads, bolts::preload_scatter, bolts::torque_lists};
use crate::thread::{ThreadCall, ThreadSeries};

pub(super) fn states(inp: &Inputs, case: &Case, a: &mut Answer) {
    if inp.quiet() {
        return;
    }
    let (d, clamp, torque) = (case.thread.major, case.clamp, case.torque);
    // the same decimals down the column: those of the torque above
    let (inch, metric) = torque_places(torque);
    let chosen = inp.choice("state");
    let table = a.table(
        "states",
        "The same screw in other states",
        &[
            "Lubrication and finish",
            "Nut factor",
            "Torque for this clamp",
            "Clamp at this torque",
            "Source",
        ],
    );
    let mut line = |s: &NutFactor, k: f64, source: &'static str, is_default: bool| {
        let (Ok(t), Ok(f)) = (
            short_form::torque(k, d, clamp),
            short_form::clamp(k, d, torque),
        ) else {
            return;
        };
        let clamp_cell = if f > case.proof_load {
            Value::words(format!("past the {} load", case.strength.limit_name()))
        } else {
            Value::of(f)
        };
        table
            .row(vec![
                Value::words(s.state),
                Value::of(Number::of(k)),
                Value::of(t).places(inch, metric),
                clamp_cell,
                Value::words(source),
            ])
            .chosen(is_default && s.key == chosen);
    };
    for s in nut_factors::ROWS {
        line(s, s.k, s.source, true);
        if let Some((k, source)) = s.other {
            line(s, k, source, false);
        }
    }
    table.note("Where two sources differ the lower nut factor is used: a torque from it may leave the screw looser, never tighter.");
}

pub(super) fn methods(inp: &Inputs, clamp: Force, a: &mut Answer) {
    if inp.quiet() {
        return;
    }
    let chosen = scatter_row(inp);
    let table = a.table(
        "methods",
        "How near each way of tightening comes",
        &[
            "Tightened by",
            "Plus or minus",
            "Min. clamp",
            "Max. clamp",
            "List",
        ],
    );
    for s in preload_scatter::ROWS.iter().rev() {
        if s.key == "strain" {
            continue;
        }
        let (low, high) = short_form::scatter(clamp, s.percent);
        table
            .row(vec![
                Value::words(s.method),
                Value::of(Share::from_percent(s.percent)),
                Value::of(low),
                Value::of(high),
                Value::words(s.source),
            ])
            .chosen(chosen.is_some_and(|c| c.key == s.key));
    }
    table.note(format!(
        "The lists disagree on ultrasonic: 1% in one, {}% in the other.",
        crate::notation::plain(preload_scatter::ULTRASONIC_OTHER_PERCENT, 0)
    ));
}

/// Published lists for this size and grade, beside our figure.
pub(super) fn lists(inp: &Inputs, case: &Case, a: &mut Answer) {
    if inp.quiet() {
        return;
    }
    let Case {
        thread,
        ref strength,
        torque,
        ..
    } = *case;
    let (size, key) = (thread.major, strength.grade.key);
    let mut found: Vec<(&'static str, Torque, &'static Source)> = Vec::new();
    if let Some(t) = vdi(thread, strength) {
        found.push((
            "90% of the yield strength, friction 0.14, hex head",
            t,
            &VDI,
        ));
    }
    if thread.series == ThreadSeries::MetricCoarse
        && let Some(t) = torque_lists::older_torque(size, key)
    {
        found.push((
            "largest torque, friction 0.14, on the basis of 1986",
            t,
            &OLDER,
        ));
    }
    if !thread.series.is_metric()
        && let Some(t) = torque_lists::army_limit(size, key)
    {
        found.push(("vehicle limit, clean and dry, 10%", t, &ARMY));
    }
    if found.is_empty() {
        return;
    }
    let table = a.table(
        "lists",
        "What published lists say",
        &["Basis", "Torque", "List"],
    );
    let (inch, metric) = torque_places(torque);
    let cell = |t: Torque| Value::of(t).places(inch, metric);
    table
        .row(vec![
            Value::words("this answer"),
            cell(torque),
            Value::words(""),
        ])
        .chosen(true);
    for (basis, t, source) in &found {
        table.row(vec![
            Value::words(*basis),
            cell(*t),
            Value::words(source.title),
        ]);
    }
    table.note("Lists rest on different shares of strength and different friction, so they differ. The maker's figure comes first.");
    for (_, _, source) in found {
        a.source(source);
    }
}

/// VDI 2230:2003 at 90% of yield, friction 0.14 in thread and head, for metric steel screws with a hexagon head.
fn vdi(thread: ThreadCall, strength: &Strength) -> Option<Torque> {
    if !thread.series.is_metric() || strength.row.proof.is_none() {
        return None;
    }
    let head = heads::hex(thread.major, System::Metric)?;
    let screw = Screw::sixty_degree(
        thread.major,
        thread.pitch,
        long_form::bearing_mean(head.bearing, head.hole),
    );
    let clamp = tension::assembly_preload(
        thread.major,
        thread.pitch,
        strength.row.yield_min?,
        0.14,
        0.9,
    )
    .ok()?;
    let friction = Friction {
        thread: 0.14,
        head: 0.14,
    };
    Some(long_form::vdi_torque(&screw, friction, clamp).ok()?.total())
}
