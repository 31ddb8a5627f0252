//! How does what stands in the way of an answer stand in JSON?

use super::{Object, Place, state};
use crate::run::Ran;
use benchslate_core::sheet::{Fault, State};

/// What stands in the way, alone.
pub fn faults(ran: &Ran, place: Place) {
    place.object(|object| {
        put_faults(ran, object);
        put_needed(ran, object);
        object.put("sheet", ran.sheet.id);
        object.put("state", state(&ran.outcome.answer.state));
        put_withheld(ran, object);
    });
}

/// Faults of fields and of the whole entry, where there are any.
pub fn put_faults(ran: &Ran, object: &mut Object) {
    if ran.outcome.faults().next().is_some() {
        object.at("faults").list(ran.outcome.faults(), fault);
    }
}

/// The fields that are still needed.
pub fn put_needed(ran: &Ran, object: &mut Object) {
    if let State::Incomplete(needed) = &ran.outcome.answer.state {
        object.put("needed", needed);
    }
}

/// The limit that is passed.
pub fn put_withheld(ran: &Ran, object: &mut Object) {
    if let State::Withheld(held) = &ran.outcome.answer.state {
        object.at("withheld").object(|object| {
            object.put("cure", &held.cure).put("field", held.field);
            object.put("limit", &held.limit).put("reason", &held.reason);
        });
    }
}

/// One fault.
pub fn fault(place: Place, fault: &Fault) {
    place.object(|object| {
        object.put("column", fault.at.map(|(_, column)| column));
        object.put("cure", &fault.cure).put("field", fault.field);
        object.put("reason", fault.reason.id());
        object.put("row", fault.at.map(|(row, _)| row));
        object.put("says", &fault.says).put("text", fault.text());
        object.put("typed", &fault.typed);
        object.at("ways").list(&fault.ways, |place, way| {
            place.object(|object| {
                object.put("label", &way.label).put("text", &way.text);
            });
        });
    });
}
