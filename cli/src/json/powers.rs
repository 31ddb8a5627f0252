//! How do ±, solving for another and a sweep stand in JSON?

use super::{Object, Place, number, plainly, stopped::fault};
use crate::run::Ran;
use benchslate_core::powers::{
    Change, End, LineSpread as Spreads, Moves, NoAnswer, Place as At, Side, Spread, Swept, Turned,
    printed_order, tell_line,
};
use benchslate_core::quantity::Unit;
use benchslate_core::sheet::Line;

/// What ± does to one result: a range where one holds, the values where it moves in steps, and in words.
pub struct LineSpread<'a> {
    ran: &'a Ran,
    line: &'a Line,
    one: &'a Spreads,
}

impl<'a> LineSpread<'a> {
    /// Of one result, where ± was given.
    pub fn of(ran: &'a Ran, line: &'a Line) -> Option<Self> {
        let spread = ran.spread.as_ref()?;
        let one = spread.lines.iter().find(|one| one.id == line.id)?;
        Some(Self { ran, line, one })
    }

    /// What moves it most.
    pub fn put_driver(&self, object: &mut Object) {
        if self.one.has_range() {
            object.put("driver", self.one.driver);
        }
    }

    /// The rest, all of whose keys begin alike.
    pub fn put(&self, unit: &'static Unit, object: &mut Object) {
        let one = self.one;
        let inputs = &self.ran.outcome.inputs;
        if one.is_cut {
            object.put("spread_cut", true);
        }
        if one.has_range() {
            let (low, high) = printed_order(&self.line.value, one.low, one.high, inputs.system());
            object.put("spread_high", number(high, unit));
            object.put("spread_low", number(low, unit));
        }
        if let Some(says) = tell_line(inputs, self.line, one, true) {
            object.put("spread_says", plainly(&says));
        }
        if one.moves == Moves::InSteps {
            let values = object.at("spread_values");
            values.list(&one.values, |place, now| place.leaf(number(*now, unit)));
        }
    }
}

/// The ± as a whole.
pub fn put_spread(ran: &Ran, object: &mut Object) {
    if let Some(spread) = &ran.spread {
        object
            .at("spread")
            .object(|object| whole(ran, spread, object));
    }
}

fn whole(ran: &Ran, spread: &Spread, object: &mut Object) {
    let x = |field: &str, base: f64| counted(base, x_unit(ran, field));
    let change = |place: Place, one: &Change| {
        place.object(|object| {
            object.put("at", x(one.field, one.at));
            object
                .put("field", one.field)
                .put("from", plainly(&one.from));
            object.put("to", plainly(&one.to));
        });
    };
    object.put("added", spread.added).put("also", &spread.also);
    object.at("choices").list(&spread.choices, |place, pick| {
        place.object(|object| {
            object.at("changes").list(&pick.changes, change);
            object.put("id", pick.id);
            let values = object.at("values");
            values.list(&pick.values, |place, value| place.leaf(plainly(value)));
            object.put("what", &pick.what);
        });
    });
    let faults = object.at("faults");
    faults.list(&spread.faults, |place, one| no_answer(ran, one, place));
    object.at("picks").list(&spread.picks, |place, pick| {
        place.object(|object| {
            object.put("becomes", plainly(&pick.becomes));
            object.put("end", pick.end.word()).put("field", pick.field);
            object.put("what", &pick.what);
        });
    });
}

fn no_answer(ran: &Ran, one: &NoAnswer, place: Place) {
    // one field at one end, as ever; and all places
    let single = one.places.first().filter(|_| one.places.len() == 1);
    let at = |place: Place, one: &At| {
        let x = |base: f64| counted(base, x_unit(ran, one.field));
        place.object(|object| {
            object.put("end", one.end.map(End::word));
            object.put("field", one.field);
            object.put("high", x(one.high)).put("low", x(one.low));
        });
    };
    place.object(|object| {
        let end = single.and_then(|place| place.end).map(End::word);
        object.put("end", end);
        object.put("field", single.map(|place| place.field));
        object.at("places").list(&one.places, at);
        object.put("says", &one.says);
    });
}

fn x_unit(ran: &Ran, field: &str) -> Option<&'static Unit> {
    let system = ran.outcome.inputs.system();
    ran.sheet.field(field).and_then(|field| field.unit(system))
}

fn y_unit(ran: &Ran, result: &str) -> Option<&'static Unit> {
    let line = ran.outcome.answer.get(result)?;
    line.value.unit(ran.outcome.inputs.system())
}

fn counted(base: f64, unit: Option<&'static Unit>) -> f64 {
    unit.map_or(base, |unit| number(base, unit))
}

/// Both ends, the smaller number first: threads per inch run against the pitch.
fn ends(one: f64, other: f64, unit: Option<&'static Unit>) -> [f64; 2] {
    match unit {
        Some(unit) if unit.from_base(one) > unit.from_base(other) => {
            [number(other, unit), number(one, unit)]
        }
        _ => [counted(one, unit), counted(other, unit)],
    }
}

/// What solving for another found.
pub fn put_turned(ran: &Ran, object: &mut Object) {
    let asked = &ran.asked;
    if let (Some(turned), Some(field), Some(want)) = (&ran.turned, &asked.turn, &asked.want) {
        let y = y_unit(ran, want.split('~').next().unwrap_or_default());
        object.at("turned").object(|object| match turned {
            Err(found) => object.at("faults").list([found], fault),
            Ok(turned) => solved(turned, field, (x_unit(ran, field), y), object),
        });
    }
}

type Units = (Option<&'static Unit>, Option<&'static Unit>);

fn solved(turned: &Turned, field: &str, (x, y): Units, object: &mut Object) {
    let side = |place: Place, side: Option<Side>| match side {
        Some(side) => place.object(|object| {
            object.put("gives", counted(side.gives, y));
            object.put("x", counted(side.x, x));
        }),
        None => place.leaf(None::<f64>),
    };
    side(object.at("above"), turned.above);
    side(object.at("below"), turned.below);
    object.put("evaluations", turned.evaluations);
    object.put("field", field);
    object.put("has_no_effect", turned.has_no_effect);
    let intervals = object.at("intervals");
    intervals.list(&turned.intervals, |place, one| {
        place.object(|object| {
            object.put("from", counted(one.from, x));
            object.put("gives", counted(one.gives, y));
            object.put("inside", counted(one.inside, x));
            object.put("to", counted(one.to, x));
        });
    });
    object.at("jumps").list(&turned.jumps, |place, jump| {
        jumps(place, (jump.x, jump.from, jump.to), (x, y));
    });
    let reach = turned.reach.map(|(low, high)| ends(low, high, y));
    object.put("reach", reach.as_ref().map(<[f64; 2]>::as_slice));
    object.at("roots").list(&turned.roots, |place, root| {
        place.object(|object| {
            object.put("gives", counted(root.gives, y));
            object.put("met", root.met).put("x", counted(root.x, x));
        });
    });
    object.put("unit", x.map(|unit| unit.symbol));
}

fn jumps(place: Place, (at, from, to): (f64, f64, f64), (x, y): Units) {
    place.object(|object| {
        object.put("from", counted(from, y));
        object.put("to", counted(to, y)).put("x", counted(at, x));
    });
}

/// What a sweep found.
pub fn put_swept(ran: &Ran, object: &mut Object) {
    let asked = ran.asked.sweep.as_deref();
    let asked = asked.and_then(|sweep| sweep.split_once('~'));
    if let (Some(swept), Some((field, result))) = (&ran.swept, asked) {
        let units = (x_unit(ran, field), y_unit(ran, result));
        object.at("swept").object(|object| match swept {
            Err(found) => object.at("faults").list([found], fault),
            Ok(swept) => curve(swept, (field, result), units, object),
        });
    }
}

fn curve(swept: &Swept, (field, result): (&str, &str), (x, y): Units, object: &mut Object) {
    object.put("field", field);
    object.at("jumps").list(&swept.edges, |place, edge| {
        jumps(place, (edge.at, edge.from, edge.to), (x, y));
    });
    object
        .at("points")
        .list(&swept.points, |place, (at, gives)| {
            let point = [Some(counted(*at, x)), gives.map(|gives| counted(gives, y))];
            place.leaf(point.as_slice());
        });
    object.put("result", result);
}
