//! The same screw in other states of thread and head, and by other ways of tightening.

use super::{scatter_row, torque_places};
use crate::fastener::short_form;
use crate::quantity::{Force, Length, Number, Share, Torque};
use crate::sheet::{Answer, Inputs, Value};
use crate::standards::nut_factors::{self, NutFactor};
use crate::standards::preload_scatter;

pub(super) fn states(
    inp: &Inputs,
    d: Length,
    clamp: Force,
    torque: Torque,
    proof_load: Force,
    a: &mut Answer,
) {
    if inp.quiet() {
        return;
    }
    let chosen = inp.choice("state");
    let table = a.table(
        "states",
        "The same screw in other states",
        &[
            "Thread and head",
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
        let (inch, metric) = torque_places(t);
        let clamp_cell = if f > proof_load {
            Value::words("past the proof load")
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
    table.note("Where two sources differ the lower nut factor is used: a torque from it may leave the screw slacker, never tighter.");
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
            "Least clamp",
            "Most clamp",
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
    table.note("The lists disagree on ultrasonic: 1 % in one, 10 % in the other.");
}
