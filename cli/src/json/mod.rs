//! How does an answer stand in JSON? Written straight to the text; keys in ascending order.

mod powers;
mod stopped;
mod write;

pub use write::{Object, Place};

use crate::run::Ran;
use benchslate_core::powers::printed_order;
use benchslate_core::quantity::{System, Unit, plain};
use benchslate_core::sheet::{Line, State, Table, Value as Printed};
use std::borrow::Cow;

/// Room for a usual answer.
const USUAL: usize = 8 * 1024;

/// The answer as one object.
pub fn answer(ran: &Ran) -> String {
    written(|text| append_answer(ran, text))
}

/// What stands in the way, for standard error.
pub fn faults(ran: &Ran) -> String {
    written(|text| stopped::faults(ran, Place::end_of(text)))
}

fn written(append: impl FnOnce(&mut Vec<u8>)) -> String {
    let mut text = Vec::with_capacity(USUAL);
    append(&mut text);
    String::from_utf8(text).unwrap_or_default()
}

/// Appends the answer as one object.
pub fn append_answer(ran: &Ran, text: &mut Vec<u8>) {
    let answer = &ran.outcome.answer;
    let system = ran.outcome.inputs.system();
    let complete = answer.is_complete();
    Place::end_of(text).object(|object| {
        let cautions = object.at("cautions");
        cautions.list(&answer.cautions, |place, one| {
            place.object(|object| {
                object.put("before", &one.before).put("id", one.id);
                object.put("stop", one.stop).put("text", &one.text);
            });
        });
        if !complete {
            stopped::put_faults(ran, object);
        }
        let lines = object.at("lines");
        lines.list(&answer.lines, |place, one| line(ran, one, system, place));
        object.put("link", ran.link.as_deref());
        if !complete {
            stopped::put_needed(ran, object);
        }
        if !ran.notes.is_empty() {
            object.put("notes", &ran.notes);
        }
        readings(ran, object.at("readings"));
        object.put("revision", ran.sheet.revision);
        object.put("sheet", ran.sheet.id);
        let sources = object.at("sources");
        sources.list(&answer.sources, |place, source| place.leaf(source.text()));
        powers::put_spread(ran, object);
        object.put("state", state(&answer.state));
        powers::put_swept(ran, object);
        let tables = object.at("tables");
        tables.list(&answer.tables, |place, one| table(one, system, place));
        powers::put_turned(ran, object);
        if !complete {
            stopped::put_withheld(ran, object);
        }
        let working = object.at("working");
        working.list(&answer.steps, |place, step| {
            place.object(|object| {
                object.put("lines", &step.lines);
                object.put("source", step.source.text());
                object.put("title", &step.title);
            });
        });
    });
}

fn state(state: &State) -> &'static str {
    match state {
        State::Complete => "complete",
        State::Incomplete(_) => "incomplete",
        State::Withheld(_) => "withheld",
        State::Faulty => "faulty",
    }
}

fn readings(ran: &Ran, place: Place) {
    let read = ran.outcome.fields.iter();
    let read = read.filter(|field| field.applies && !field.reading.is_empty());
    place.list(read, |place, field| {
        place.object(|object| {
            object.put("field", field.id);
            object.put("preset", field.from_preset);
            object.put("reading", &field.reading);
            object.put("text", &field.text);
        });
    });
}

/// The number in a unit, not rounded to what is shown but to what is kept: lengths to 0.1 nm, the rest to 12 figures. Put
/// back into a field it reads to the same.
fn number(base: f64, unit: &'static Unit) -> f64 {
    let exact = unit.from_base(base);
    plain(base, unit).parse().unwrap_or(exact)
}

fn line(ran: &Ran, line: &Line, system: System, place: Place) {
    let counted = line.value.base().zip(line.value.unit(system));
    let band = counted.and(line.band);
    let band = band.map(|(low, high)| printed_order(&line.value, low, high, system));
    let spread = counted.and_then(|_| powers::LineSpread::of(ran, line));
    place.object(|object| {
        if band.is_some() {
            object.put("band", &line.band_says);
        }
        object.put("convention", &line.says);
        if let Some(spread) = &spread {
            spread.put_driver(object);
        }
        if counted.is_some() {
            object.put("exact", line.exact);
        }
        if let (Some((_, high)), Some((_, unit))) = (band, counted) {
            object.put("high", number(high, unit));
        }
        object.put("id", line.id).put("label", &line.label);
        if let (Some((low, _)), Some((_, unit))) = (band, counted) {
            object.put("low", number(low, unit));
        }
        if let (Some(spread), Some((_, unit))) = (&spread, counted) {
            spread.put(unit, object);
        }
        object.put("stepped", line.stepped);
        object.put("text", plainly(&line.value.text(system)));
        if let Some((base, unit)) = counted {
            object.put("unit", unit.symbol);
            object.put("value", number(base, unit));
        }
    });
}

fn table(table: &Table, system: System, place: Place) {
    let cell = |place: Place, cell: &Printed| {
        place.object(|object| {
            object.put("text", plainly(&cell.text(system)));
            if let (Some(base), Some(unit)) = (cell.base(), cell.unit(system)) {
                object.put("unit", unit.symbol);
                object.put("value", number(base, unit));
            }
        });
    };
    place.object(|object| {
        object.put("columns", &table.columns).put("id", table.id);
        object.put("note", &table.note);
        object.at("rows").list(&table.rows, |place, row| {
            place.object(|object| {
                object.at("cells").list(&row.cells, cell);
                object.put("chosen", row.chosen).put("owned", row.owned);
            });
        });
        object.put("title", &table.title);
    });
}

/// Data keeps the hyphen where screen and paper have a true minus.
fn plainly(text: &str) -> Cow<'_, str> {
    if text.contains('\u{2212}') {
        Cow::Owned(text.replace('\u{2212}', "-"))
    } else {
        Cow::Borrowed(text)
    }
}
