//! What is an entry as a link, and a link as an entry? `#/v1/<sheet>?<field>=<text>&…`: readable, ASCII, typed text with
//! its unit, only what differs from the default, in declared order, so that equal entries give equal links.
//!
//! Reserved keys, which no field or result may have as its id ([`RESERVED`]):
//!
//! | key | what it says | example |
//! | --- | --- | --- |
//! | `u` | the system of units that results are shown in, where it is not the inch | `u=mm` |
//! | `rev` | the sheet's revision, where it is not 1 | `rev=2` |
//! | `turn` | turned round: the field that is free | `turn=percent` |
//! | `want` | turned round: the result and its wanted text | `want=hole~0.201 in` |
//! | `sweep` | plotted: the field and the result | `sweep=percent~hole` |

mod encode;
mod open;
mod shop;

pub use open::{Fault, Note, Opened, open};
pub use shop::{of_shop, open_shop};

use crate::quantity::System;
use crate::sheet::{Entry, Field, Outcome, Preset, Sheet};

/// The most characters of a link to hand on; beyond it a file is offered.
pub const MOST_CHARS: usize = 2000;
/// The most characters of a link that opens: what is kept, and the address while one works, may pass [`MOST_CHARS`].
pub const MOST_READ: usize = 40_000;
/// Keys that no field or result may have as its id; the page of this room says what each is for.
pub const RESERVED: &[&str] = &["u", "rev", "turn", "want", "sweep"];

/// What is asked of the powers, as it stands in a link.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
pub struct Asked {
    /// Turned round: the field that is free.
    pub turn: Option<String>,
    /// Turned round: the result and the wanted text, `result~text`.
    pub want: Option<String>,
    /// Swept: the field and the result, `field~result`.
    pub sweep: Option<String>,
}

impl Asked {
    /// True where nothing is asked.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }
}

/// The link of an entry that was evaluated: fields that apply, in declared order. None where it would be longer than
/// [`MOST_CHARS`].
///
/// ```
/// use benchslate_core::{link, sheet::Entry};
/// assert_eq!(link::open("#/v1/nothing-such").err(), Some(link::Fault::UnknownSheet("nothing-such".into())));
/// ```
pub fn of(
    sheet: &'static Sheet,
    entry: &Entry,
    outcome: &Outcome,
    asked: &Asked,
) -> Option<String> {
    whole(sheet, entry, outcome, asked).filter(|link| link.len() <= MOST_CHARS)
}

/// As [`of`], however long, up to [`MOST_READ`]: for what is kept on the device or goes out in a file.
pub fn whole(
    sheet: &'static Sheet,
    entry: &Entry,
    outcome: &Outcome,
    asked: &Asked,
) -> Option<String> {
    write(sheet, entry, outcome, asked, false)
}

/// As [`whole`], with the texts of fields that do not apply now: what the address bar keeps, so that nothing typed is lost.
pub fn state_of(
    sheet: &'static Sheet,
    entry: &Entry,
    outcome: &Outcome,
    asked: &Asked,
) -> Option<String> {
    write(sheet, entry, outcome, asked, true)
}

fn write(
    sheet: &'static Sheet,
    entry: &Entry,
    outcome: &Outcome,
    asked: &Asked,
    all: bool,
) -> Option<String> {
    let mut pairs = texts(sheet, entry, outcome, all);
    pairs.retain(|(field, text)| {
        let typed = entry.get(field.id).unwrap_or_default();
        !is_preset(field.preset, typed, text)
    });
    let pairs = pairs
        .into_iter()
        .map(|(field, text)| (field.id.to_owned(), text))
        .collect();
    join(sheet, pairs, entry.system, asked)
}

/// What was entered, in declared order: in its plain form where it reads, else as typed.
fn texts(
    sheet: &'static Sheet,
    entry: &Entry,
    outcome: &Outcome,
    all: bool,
) -> Vec<(&'static Field, String)> {
    let mut texts = Vec::new();
    for (field, now) in sheet.fields.iter().zip(&outcome.fields) {
        let Some(typed) = entry.get(field.id).filter(|text| !text.trim().is_empty()) else {
            continue;
        };
        if !now.applies && !all {
            continue;
        }
        let reads = now.applies && now.fault.is_none() && !now.link_text.is_empty();
        let text = if reads { now.link_text.as_str() } else { typed };
        texts.push((field, text.to_owned()));
    }
    texts
}

/// Keys and texts as a link, with the reserved keys behind them.
fn join(
    sheet: &'static Sheet,
    mut pairs: Vec<(String, String)>,
    system: System,
    asked: &Asked,
) -> Option<String> {
    let mut more = |key: &str, text: &str| pairs.push((key.to_owned(), text.to_owned()));
    if system != System::default() {
        more("u", system_id(system));
    }
    for (key, text) in [
        ("turn", &asked.turn),
        ("want", &asked.want),
        ("sweep", &asked.sweep),
    ] {
        if let Some(text) = text {
            more(key, text);
        }
    }
    if sheet.revision != 1 {
        more("rev", &sheet.revision.to_string());
    }
    let mut link = format!("#/v1/{}", sheet.id);
    for (at, (key, text)) in pairs.iter().enumerate() {
        link.push(if at == 0 { '?' } else { '&' });
        link.push_str(key);
        link.push('=');
        encode::encode(text, &mut link);
    }
    encode::guard_end(&mut link);
    (link.len() <= MOST_READ).then_some(link)
}

/// A text that says what the preset says, as typed or in its plain form, is left out.
fn is_preset(preset: Preset, typed: &str, link_text: &str) -> bool {
    preset
        .text()
        .is_some_and(|text| text == typed.trim() || text == link_text)
}

/// The id of a system of units in links.
pub const fn system_id(system: System) -> &'static str {
    match system {
        System::Inch => "in",
        System::Metric => "mm",
    }
}

/// A system of units by its id.
pub fn system_of(id: &str) -> Option<System> {
    [System::Inch, System::Metric]
        .into_iter()
        .find(|&system| system_id(system) == id)
}
