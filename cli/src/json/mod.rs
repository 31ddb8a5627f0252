//! How does an answer stand in JSON?

use crate::run::Ran;
use benchslate_core::powers::{
    Change, End, Moves, NoAnswer, Place, Spread, printed_order, tell_line,
};
use benchslate_core::quantity::{System, Unit, plain};
use benchslate_core::sheet::{Fault, Line, State, Table, Value as Printed};
use serde_json::{Map, Value, json};

pub fn answer(ran: &Ran) -> Value {
    let answer = &ran.outcome.answer;
    let system = ran.outcome.inputs.system();
    let mut object = json!({
        "sheet": ran.sheet.id,
        "revision": ran.sheet.revision,
        "state": state(&answer.state),
        "link": ran.link,
        "readings": ran.outcome.fields.iter().filter(|field| field.applies && !field.reading.is_empty())
            .map(|field| json!({ "field": field.id, "text": field.text, "reading": field.reading, "preset": field.from_preset }))
            .collect::<Vec<_>>(),
        "lines": answer.lines.iter().map(|one| line(ran, one, system)).collect::<Vec<_>>(),
        "tables": answer.tables.iter().map(|one| table(one, system)).collect::<Vec<_>>(),
        "working": answer.steps.iter()
            .map(|step| json!({ "title": step.title, "lines": step.lines, "source": step.source.text() })).collect::<Vec<_>>(),
        "cautions": answer.cautions.iter()
            .map(|one| json!({ "id": one.id, "stop": one.stop, "before": one.before, "text": one.text })).collect::<Vec<_>>(),
        "sources": answer.sources.iter().map(|source| source.text()).collect::<Vec<_>>(),
    });
    if let Some(object) = object.as_object_mut() {
        if !ran.notes.is_empty() {
            object.insert("notes".into(), json!(ran.notes));
        }
        if !answer.is_complete() {
            stopped(ran, object);
        }
        powers(ran, object);
    }
    object
}

fn state(state: &State) -> &'static str {
    match state {
        State::Complete => "complete",
        State::Incomplete(_) => "incomplete",
        State::Withheld(_) => "withheld",
        State::Faulty => "faulty",
    }
}

/// The number in a unit, not rounded to what is shown but to what is kept: lengths to 0.1 nm, the rest to 12 figures. Put
/// back into a field it reads to the same.
fn number(base: f64, unit: &'static Unit) -> Value {
    let exact = unit.from_base(base);
    json!(plain(base, unit).parse::<f64>().unwrap_or(exact))
}

/// Both ends, the smaller number first: threads per inch run against the pitch.
fn ends(one: f64, other: f64, unit: &'static Unit) -> (Value, Value) {
    if unit.from_base(one) > unit.from_base(other) {
        (number(other, unit), number(one, unit))
    } else {
        (number(one, unit), number(other, unit))
    }
}

fn line(ran: &Ran, line: &Line, system: System) -> Value {
    let mut object = Map::new();
    object.insert("id".into(), json!(line.id));
    object.insert("label".into(), json!(line.label));
    if let (Some(base), Some(unit)) = (line.value.base(), line.value.unit(system)) {
        object.insert("value".into(), number(base, unit));
        object.insert("unit".into(), json!(unit.symbol));
        if let Some((low, high)) = line.band {
            let (low, high) = printed_order(&line.value, low, high, system);
            object.insert("low".into(), number(low, unit));
            object.insert("high".into(), number(high, unit));
            object.insert("band".into(), json!(line.band_says));
        }
        if let Some(spread) = &ran.spread {
            line_spread(ran, line, spread, unit, &mut object);
        }
        object.insert("exact".into(), json!(line.exact));
    }
    object.insert("text".into(), json!(plainly(&line.value.text(system))));
    object.insert("stepped".into(), json!(line.stepped));
    object.insert("convention".into(), json!(line.says));
    Value::Object(object)
}

fn table(table: &Table, system: System) -> Value {
    let cell = |cell: &Printed| match (cell.base(), cell.unit(system)) {
        (Some(base), Some(unit)) => {
            json!({ "value": number(base, unit), "unit": unit.symbol, "text": plainly(&cell.text(system)) })
        }
        _ => json!({ "text": plainly(&cell.text(system)) }),
    };
    json!({
        "id": table.id,
        "title": table.title,
        "columns": table.columns,
        "rows": table.rows.iter().map(|row| json!({
            "cells": row.cells.iter().map(cell).collect::<Vec<_>>(), "owned": row.owned, "chosen": row.chosen,
        })).collect::<Vec<_>>(),
        "note": table.note,
    })
}

fn fault(fault: &Fault) -> Value {
    json!({
        "field": fault.field,
        "row": fault.at.map(|(row, _)| row),
        "column": fault.at.map(|(_, column)| column),
        "typed": fault.typed,
        "reason": fault.reason.id(),
        "says": fault.says,
        "cure": fault.cure,
        "text": fault.text(),
        "ways": fault.ways.iter().map(|way| json!({ "text": way.text, "label": way.label })).collect::<Vec<_>>(),
    })
}

fn stopped(ran: &Ran, object: &mut Map<String, Value>) {
    match &ran.outcome.answer.state {
        State::Incomplete(needed) => {
            object.insert("needed".into(), json!(needed));
        }
        State::Withheld(held) => {
            let held = json!({ "field": held.field, "limit": held.limit, "reason": held.reason, "cure": held.cure });
            object.insert("withheld".into(), held);
        }
        State::Complete | State::Faulty => {}
    }
    let faults: Vec<Value> = ran.outcome.faults().map(fault).collect();
    if !faults.is_empty() {
        object.insert("faults".into(), json!(faults));
    }
}

/// What stands in the way, for standard error.
pub fn faults(ran: &Ran) -> Value {
    let mut object = Map::new();
    object.insert("sheet".into(), json!(ran.sheet.id));
    object.insert("state".into(), json!(state(&ran.outcome.answer.state)));
    stopped(ran, &mut object);
    Value::Object(object)
}

/// What ± does to one result: a range where one holds, the values where it moves in steps, and in words.
fn line_spread(
    ran: &Ran,
    line: &Line,
    spread: &Spread,
    unit: &'static Unit,
    object: &mut Map<String, Value>,
) {
    let Some(one) = spread.lines.iter().find(|one| one.id == line.id) else {
        return;
    };
    let (inputs, system) = (&ran.outcome.inputs, ran.outcome.inputs.system());
    if one.has_range() {
        let (low, high) = printed_order(&line.value, one.low, one.high, system);
        object.insert("spread_low".into(), number(low, unit));
        object.insert("spread_high".into(), number(high, unit));
        object.insert("driver".into(), json!(one.driver));
    }
    if one.moves == Moves::InSteps {
        let values: Vec<Value> = one.values.iter().map(|now| number(*now, unit)).collect();
        object.insert("spread_values".into(), json!(values));
    }
    if one.is_cut {
        object.insert("spread_cut".into(), json!(true));
    }
    if let Some(says) = tell_line(inputs, line, one, true) {
        object.insert("spread_says".into(), json!(plainly(&says)));
    }
}

fn whole_spread(ran: &Ran, spread: &Spread) -> Value {
    let system = ran.outcome.inputs.system();
    let x = |field: &str, base: f64| match ran.sheet.field(field).and_then(|f| f.unit(system)) {
        Some(unit) => number(base, unit),
        None => json!(base),
    };
    let change = |one: &Change| json!({ "field": one.field, "at": x(one.field, one.at), "from": plainly(&one.from), "to": plainly(&one.to) });
    let place = |one: &Place| json!({ "field": one.field, "low": x(one.field, one.low), "high": x(one.field, one.high), "end": one.end.map(End::word) });
    let fault = |one: &NoAnswer| {
        // one field at one end, as ever; and all places
        let single = one.places.first().filter(|_| one.places.len() == 1);
        json!({
            "field": single.map(|place| place.field),
            "end": single.and_then(|place| place.end).map(End::word),
            "places": one.places.iter().map(place).collect::<Vec<_>>(),
            "says": one.says,
        })
    };
    json!({
        "added": spread.added,
        "picks": spread.picks.iter().map(|pick| json!({
            "field": pick.field, "end": pick.end.word(), "what": pick.what, "becomes": plainly(&pick.becomes) })).collect::<Vec<_>>(),
        "choices": spread.choices.iter().map(|pick| json!({
            "id": pick.id, "what": pick.what,
            "values": pick.values.iter().map(|value| plainly(value)).collect::<Vec<_>>(),
            "changes": pick.changes.iter().map(change).collect::<Vec<_>>() })).collect::<Vec<_>>(),
        "faults": spread.faults.iter().map(fault).collect::<Vec<_>>(),
        "also": spread.also,
    })
}

fn powers(ran: &Ran, object: &mut Map<String, Value>) {
    if let Some(spread) = &ran.spread {
        object.insert("spread".into(), whole_spread(ran, spread));
    }
    let system = ran.outcome.inputs.system();
    let x_unit = |field: &str| ran.sheet.field(field).and_then(|field| field.unit(system));
    let y_unit = |result: &str| {
        ran.outcome
            .answer
            .get(result)
            .and_then(|line| line.value.unit(system))
    };
    let number = |base: f64, unit: Option<&'static Unit>| {
        unit.map_or(json!(base), |unit| number(base, unit))
    };
    if let (Some(turned), Some(field), Some(want)) = (&ran.turned, &ran.asked.turn, &ran.asked.want)
    {
        let (x, y) = (
            x_unit(field),
            y_unit(want.split('~').next().unwrap_or_default()),
        );
        let value = match turned {
            Err(found) => json!({ "faults": [fault(found)] }),
            Ok(turned) => json!({
                "field": field,
                "unit": x.map(|unit| unit.symbol),
                "roots": turned.roots.iter().map(|root| json!({ "x": number(root.x, x), "gives": number(root.gives, y), "met": root.met })).collect::<Vec<_>>(),
                "intervals": turned.intervals.iter().map(|one| json!({
                    "from": number(one.from, x), "to": number(one.to, x), "inside": number(one.inside, x), "gives": number(one.gives, y) })).collect::<Vec<_>>(),
                "has_no_effect": turned.has_no_effect,
                "evaluations": turned.evaluations,
                "jumps": turned.jumps.iter().map(|jump| json!({
                    "x": number(jump.x, x), "from": number(jump.from, y), "to": number(jump.to, y) })).collect::<Vec<_>>(),
                "below": turned.below.map(|side| json!({ "x": number(side.x, x), "gives": number(side.gives, y) })),
                "above": turned.above.map(|side| json!({ "x": number(side.x, x), "gives": number(side.gives, y) })),
                "reach": turned.reach.map(|(low, high)| {
                    y.map_or_else(|| [json!(low), json!(high)], |unit| ends(low, high, unit).into())
                }),
            }),
        };
        object.insert("turned".into(), value);
    }
    if let (Some(swept), Some((field, result))) = (
        &ran.swept,
        ran.asked.sweep.as_deref().and_then(|s| s.split_once('~')),
    ) {
        let (x, y) = (x_unit(field), y_unit(result));
        let value = match swept {
            Err(found) => json!({ "faults": [fault(found)] }),
            Ok(swept) => json!({
                "field": field, "result": result,
                "points": swept.points.iter().map(|(at, gives)| json!([number(*at, x), gives.map(|gives| number(gives, y))])).collect::<Vec<_>>(),
                "jumps": swept.edges.iter().map(|edge| json!({ "x": number(edge.at, x), "from": number(edge.from, y), "to": number(edge.to, y) })).collect::<Vec<_>>(),
            }),
        };
        object.insert("swept".into(), value);
    }
}

/// Data keeps the hyphen where screen and paper have a true minus.
fn plainly(text: &str) -> String {
    text.replace('\u{2212}', "-")
}
