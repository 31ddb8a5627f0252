//! Which questions go on from an answer? Those that take what it gives and what was entered, filled in, with their figure.
//!
//! A field and a result say what they are ([`Thing`]); no sheet names another one.

use crate::link::{self, Asked};
use crate::record::Shop;
use crate::sheet::{
    Entry, Field, FieldKind, Outcome, Sheet, State, Thing, Value, evaluate_quietly, plain_text,
};
use crate::sheets;

/// The most questions that are offered.
const MOST: usize = 4;
/// The least weight of what is carried along.
const LEAST: u16 = 4;

/// How an offer ranks: the weight of what is carried, whether the answer gave it, whether a figure comes at once.
type Worth = (u16, bool, bool);

/// A figure that goes along.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Carried {
    /// The field that it goes into.
    pub field: &'static str,
    /// What it is, by the name that it has in the answer or the entry it comes from.
    pub label: String,
    /// The text in the field.
    pub text: String,
}

/// A question that goes on from an answer.
#[derive(Clone)]
pub struct Onward {
    /// The sheet.
    pub sheet: &'static Sheet,
    /// Its entry: what was carried, the choices that take it, what the shop says.
    pub entry: Vec<(&'static str, String)>,
    /// What was carried.
    pub carried: Vec<Carried>,
    /// The link that opens it.
    pub link: String,
}

/// The questions that go on from an answer, those that take most of it first; none where there is no answer yet.
///
/// ```
/// use benchslate_core::{onward::onward, record::Shop, sheet::{Entry, evaluate}, sheets};
/// let sheet = sheets::by_id("tap-drill").unwrap();
/// let outcome = evaluate(sheet, &Entry::of(&[("thread", "1/4-20")]));
/// let next = onward(&outcome, &Shop::default());
/// assert!(next.iter().any(|next| next.carried.iter().any(|one| one.field == "thread")));
/// ```
pub fn onward(outcome: &Outcome, shop: &Shop) -> Vec<Onward> {
    if outcome.answer.lines.is_empty() {
        return Vec::new();
    }
    let here = outcome.inputs.sheet();
    let mut found: Vec<(Worth, Onward)> = sheets::ALL
        .iter()
        .filter(|sheet| !std::ptr::eq(**sheet, here))
        .filter_map(|sheet| carry(outcome, shop, sheet))
        .collect();
    crate::order::sort_by(&mut found, |a, b| b.0.cmp(&a.0));
    found.truncate(MOST);
    found.into_iter().map(|(_, next)| next).collect()
}

/// What goes along into one sheet, and how much it is worth; none where it is too little.
fn carry(outcome: &Outcome, shop: &Shop, sheet: &'static Sheet) -> Option<(Worth, Onward)> {
    let mut entry = shop.start(sheet).in_system(outcome.inputs.system());
    let mut carried: Vec<Carried> = Vec::new();
    let mut worth = 0;
    let mut given = false;
    for field in sheet.fields {
        let Some(thing) = field.thing else { continue };
        let Some((label, text, is_result)) = offered(outcome, thing, field) else {
            continue;
        };
        if !reaches(sheet, field, &mut entry, &carried) {
            continue;
        }
        entry.set(field.id, &text);
        worth += thing.weight() * if is_result { 2 } else { 1 };
        given |= is_result;
        carried.push(Carried {
            field: field.id,
            label,
            text,
        });
    }
    if worth < LEAST {
        return None;
    }
    let next = evaluate_quietly(sheet, &entry);
    if next.faults().next().is_some() || matches!(next.answer.state, State::Withheld(_)) {
        return None;
    }
    // what is carried counts most, then that the answer gave it, then that a figure comes at once
    let worth = (worth, given, !next.answer.lines.is_empty());
    let link = link::whole(sheet, &entry, &next, &Asked::default())?;
    let entry = sheet
        .fields
        .iter()
        .filter_map(|field| Some((field.id, entry.get(field.id)?.to_owned())))
        .collect();
    Some((
        worth,
        Onward {
            sheet,
            entry,
            carried,
            link,
        },
    ))
}

/// What the answer, else the entry, has of a thing, as a text that the field takes.
fn offered(
    outcome: &Outcome,
    thing: Thing,
    field: &'static Field,
) -> Option<(String, String, bool)> {
    let here = outcome.inputs.sheet();
    let system = outcome.inputs.system();
    let results = here.results.iter().filter(|res| res.thing == Some(thing));
    let of_result = results
        .filter_map(|res| outcome.answer.get(res.id))
        .find_map(|line| {
            Some((
                line.label.to_string(),
                text_of(&line.value, field, system)?,
                true,
            ))
        });
    let of_field = || {
        let fields = here.fields.iter().zip(&outcome.fields);
        let mut same = fields.filter(|(from, now)| {
            from.thing == Some(thing) && now.applies && now.fault.is_none() && !now.from_preset
        });
        same.find_map(|(from, now)| {
            let text = if now.link_text.is_empty() {
                &now.text
            } else {
                &now.link_text
            };
            let text = (!text.is_empty() && takes(field, text, system)).then(|| text.clone())?;
            Some((from.label.to_owned(), text, false))
        })
    };
    of_result.or_else(of_field)
}

/// A value as a text that the field takes.
fn text_of(
    value: &Value,
    field: &'static Field,
    system: crate::quantity::System,
) -> Option<String> {
    let text = match value {
        Value::Words(words) => words.to_string(),
        Value::Quantity { .. } => value.text_with_unit(system).replace('\u{2212}', "-"),
    };
    takes(field, &text, system).then(|| plain_text(field, &text, system))
}

fn takes(field: &'static Field, text: &str, system: crate::quantity::System) -> bool {
    match &field.kind {
        FieldKind::Choice(choices) => choices.iter().any(|choice| choice.id == text),
        _ => crate::sheet::evaluate_field(field, text, system).is_ok(),
    }
}

/// Makes the choices under which a field applies; false where a choice that was carried speaks against it.
fn reaches(
    sheet: &'static Sheet,
    field: &'static Field,
    entry: &mut Entry,
    carried: &[Carried],
) -> bool {
    let mut chosen: Vec<(&'static str, &'static str)> = Vec::new();
    for when in field.when {
        let preset = sheet.field(when.field).and_then(|of| of.preset.text());
        let now = entry
            .get(when.field)
            .or(preset)
            .unwrap_or_default()
            .to_owned();
        if when.is.contains(&now.as_str()) {
            continue;
        }
        // a choice that something carried already hangs on stays
        let settled = carried.iter().any(|one| {
            one.field == when.field
                || sheet
                    .field(one.field)
                    .is_some_and(|of| of.when.iter().any(|w| w.field == when.field))
        });
        match when.is.first() {
            Some(first) if !settled => chosen.push((when.field, first)),
            _ => return false,
        }
    }
    for (id, text) in chosen {
        entry.set(id, text);
    }
    true
}
