//! How are the finds of the powers put in words? The same on screen and in a terminal.

use super::{Change, LineSpread, Moves, NoAnswer, Place, Spread, Turned};
use crate::quantity::{System, with_unit};
use crate::sheet::{Field, Inputs, Line, Value, lowered};

/// A field's number (base unit) in the unit that it was typed in.
pub fn field_text(inputs: &Inputs, field: &Field, base: f64) -> String {
    let unit = inputs
        .unit(field.id)
        .or_else(|| field.unit(inputs.system()));
    unit.map_or_else(String::new, |unit| {
        let places = unit.places.saturating_add(u8::from(unit.places == 0));
        let text = with_unit(base, unit, places);
        if unit.symbol.is_empty() && text.contains('.') {
            text.trim_end_matches('0').trim_end_matches('.').to_owned()
        } else {
            text
        }
    })
}

/// Two results in the order of their printed numbers: of two pitches the finer has more threads per inch.
///
/// ```
/// use benchslate_core::{powers::printed_order, quantity::{Pitch, System}, sheet::Value};
/// let pitch = Value::of(Pitch::from_tpi(20.0)); // kept in millimeters
/// assert_eq!(printed_order(&pitch, 1.21, 1.34, System::Inch), (1.34, 1.21)); // 19 to 21 tpi
/// ```
pub fn printed_order(value: &Value, low: f64, high: f64, system: System) -> (f64, f64) {
    match value.unit(system) {
        Some(unit) if unit.from_base(low) > unit.from_base(high) => (high, low),
        _ => (low, high),
    }
}

/// "a to b", in the order of the printed numbers.
pub fn range_text(value: &Value, low: f64, high: f64, system: System) -> String {
    let (low, high) = printed_order(value, low, high, system);
    let (low, high) = (value.with_base(low), value.with_base(high));
    let from = if low.unit(system) == high.unit(system) {
        low.text(system)
    } else {
        low.text_with_unit(system)
    };
    format!("{from} to {}", high.text_with_unit(system))
}

fn label(inputs: &Inputs, id: &str) -> String {
    let field = inputs.sheet().field(id);
    field.map_or_else(|| id.to_owned(), |field| lowered(field.label))
}

fn place(inputs: &Inputs, id: &str, base: f64) -> String {
    let field = inputs.sheet().field(id);
    let text = field.map_or_else(String::new, |field| field_text(inputs, field, base));
    format!("{} {text}", label(inputs, id))
}

/// "a, b or c".
fn one_of(words: &[String]) -> String {
    match words {
        [] => String::new(),
        [one] => one.clone(),
        [most @ .., last] => format!("{} or {last}", most.join(", ")),
    }
}

/// What ± does to one numeric result; none where it does nothing worth a line. The main result is also told to hold.
pub fn tell_line(inputs: &Inputs, line: &Line, one: &LineSpread, main: bool) -> Option<String> {
    let system = inputs.system();
    let cut = if one.is_cut {
        "; cut short: part of the \u{b1} has no such figure"
    } else {
        ""
    };
    Some(match one.moves {
        Moves::Not if one.is_cut => "part of the \u{b1} has no such figure".to_owned(),
        Moves::Not if main && line.stepped => "the same over the whole \u{b1}".to_owned(),
        Moves::Not => return None,
        // the same in print
        Moves::Through if !one.is_cut && is_same_in_print(line, one, system) => return None,
        Moves::Through => {
            let range = range_text(&line.value, one.low, one.high, system);
            let driver = if one.driver.is_empty() {
                String::new()
            } else {
                format!(", driven most by {}", label(inputs, one.driver))
            };
            format!("{range} over the \u{b1}{driver}{cut}")
        }
        Moves::InSteps => {
            let mut values: Vec<String> = one
                .values
                .iter()
                .map(|now| line.value.with_base(*now).text_with_unit(system))
                .collect();
            values.dedup();
            let changes = changes(inputs, &one.changes);
            format!("{} over the \u{b1}{changes}{cut}", one_of(&values))
        }
        Moves::Jumping => {
            let at = one.changes.first().map_or_else(String::new, |change| {
                format!(", as at {}", place(inputs, change.field, change.at))
            });
            format!("it jumps inside the \u{b1}{at}: no range")
        }
        Moves::Wrapping => "it wraps around or turns back inside the \u{b1}: no range".to_owned(),
    })
}

fn is_same_in_print(line: &Line, one: &LineSpread, system: System) -> bool {
    let text = |base: f64| line.value.with_base(base).text_with_unit(system);
    text(one.low) == text(one.high)
}

fn changes(inputs: &Inputs, changes: &[Change]) -> String {
    let mut places: Vec<String> = changes
        .iter()
        .map(|change| place(inputs, change.field, change.at))
        .collect();
    places.dedup();
    match places.len() {
        0 => String::new(),
        1 | 2 => format!(", changing at {}", places.join(" and at ")),
        more => format!(
            ", changing {more} times, first at {}",
            places.swap_remove(0)
        ),
    }
}

/// A sentence about the ±.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Told {
    /// Something has no answer or goes wrong there.
    pub is_fault: bool,
    /// The sentence.
    pub says: String,
}

/// What is told of the ± besides the results: picks that change, places without an answer, what else comes up.
pub fn tell_notes(inputs: &Inputs, spread: &Spread) -> Vec<Told> {
    let mut told = Vec::new();
    let mut say = |is_fault, says| told.push(Told { is_fault, says });
    for fault in &spread.faults {
        say(true, no_answer(inputs, fault));
    }
    if !spread.also.is_empty() {
        say(
            true,
            format!(
                "Somewhere inside the \u{b1} this comes up too: {}.",
                spread.also.join("; ")
            ),
        );
    }
    for pick in &spread.choices {
        let what = &pick.what;
        say(
            false,
            format!(
                "Inside the \u{b1}, {what}: {}{}.",
                one_of(&pick.values),
                changes(inputs, &pick.changes)
            ),
        );
    }
    let known = |id: &str| spread.choices.iter().any(|pick| pick.id == id);
    for pick in spread.picks.iter().filter(|pick| !known(pick.id)) {
        let (end, field) = (pick.end.word(), label(inputs, pick.field));
        say(
            false,
            format!(
                "At the {end} end of {field}, {}: {}.",
                pick.what, pick.becomes
            ),
        );
    }
    if spread.added {
        say(
            false,
            "More than six sizes carry \u{b1}: each was moved alone and the changes added."
                .to_owned(),
        );
    }
    told
}

fn no_answer(inputs: &Inputs, fault: &NoAnswer) -> String {
    let one = |at: &Place| {
        let stretch = if at.low == at.high {
            place(inputs, at.field, at.low)
        } else {
            let field = inputs.sheet().field(at.field);
            let to = field.map_or_else(String::new, |field| field_text(inputs, field, at.high));
            format!("{} to {to}", place(inputs, at.field, at.low))
        };
        match at.end {
            Some(end) => format!("{stretch} ({} end)", end.word()),
            None => stretch,
        }
    };
    let places: Vec<String> = fault.places.iter().map(one).collect();
    format!(
        "No answer at {}: {}.",
        places.join(" with "),
        fault.says.trim_end_matches('.')
    )
}

/// One find of a search, in words.
#[derive(Clone, PartialEq, Debug)]
pub struct Find {
    /// The entry: "Cutter diameter 1.0443 in".
    pub entry: String,
    /// What it gives: "gives 300 rpm".
    pub gives: String,
    /// The number to put into the field (base unit), where the wanted value is met.
    pub put: Option<f64>,
}

/// What a search found, in words; empty where there is nothing, which [`tell_none`] explains.
pub fn tell_found(inputs: &Inputs, field: &Field, line: &Line, found: &Turned) -> Vec<Find> {
    let system = inputs.system();
    let at = |x: f64| field_text(inputs, field, x);
    let gives = |base: f64| {
        format!(
            "gives {}",
            line.value.with_base(base).text_with_unit(system)
        )
    };
    let mut told = Vec::new();
    for root in &found.roots {
        told.push(Find {
            entry: format!("{} {}", field.label, at(root.x)),
            gives: gives(root.gives),
            put: root.met.then_some(root.x),
        });
    }
    for one in &found.intervals {
        told.push(Find {
            entry: format!("{} {} to {}", field.label, at(one.from), at(one.to)),
            gives: gives(one.gives),
            put: Some(one.inside),
        });
    }
    for jump in &found.jumps {
        let (from, to) = (
            line.value.with_base(jump.from),
            line.value.with_base(jump.to),
        );
        told.push(Find {
            entry: format!("{} {}", field.label, at(jump.x)),
            gives: format!(
                "is where it jumps from {} to {}",
                from.text_with_unit(system),
                to.text_with_unit(system)
            ),
            put: None,
        });
    }
    let sides = [found.below, found.above];
    for side in sides.into_iter().flatten() {
        told.push(Find {
            entry: format!("{} {}", field.label, at(side.x)),
            gives: format!("{}, the nearest on that side", gives(side.gives)),
            put: None,
        });
    }
    told
}

/// Why a search met nothing; none where something was met.
pub fn tell_none(inputs: &Inputs, field: &Field, line: &Line, found: &Turned) -> Option<String> {
    let system = inputs.system();
    let text = |base: f64| line.value.with_base(base).text_with_unit(system);
    let name = lowered(field.label);
    if found.has_no_effect {
        let stays = found
            .reach
            .map_or_else(String::new, |(now, _)| format!(": it stays {}", text(now)));
        return Some(format!(
            "{} does not depend on {name}{stays}. Change another entry.",
            line.label
        ));
    }
    let met = found.roots.iter().any(|root| root.met) || !found.intervals.is_empty();
    if met {
        return None;
    }
    let searched = format!(
        "{} to {}",
        field_text(inputs, field, found.searched.0),
        field_text(inputs, field, found.searched.1)
    );
    Some(match found.reach {
        None => format!("There is no answer anywhere from {name} {searched}."),
        Some((low, high)) => {
            let reach = range_text(&line.value, low, high, system);
            format!("No {name} from {searched} gives that. It reaches {reach}.")
        }
    })
}
