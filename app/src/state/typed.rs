//! What was typed into a field, and the unit that stands apart from it.

use benchslate_core::quantity::{System, Unit};
use benchslate_core::sheet::{Entry, Field, FieldKind, Sheet};
use std::rc::Rc;

/// One field as the user has it: the text as typed, and the unit that a bare number takes, where it was chosen.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Typed {
    /// As typed, never rewritten while it is typed in.
    pub raw: Rc<str>,
    /// Chosen for bare numbers; else the field's own.
    pub unit: Option<&'static Unit>,
}

impl Typed {
    /// The text that is evaluated: the chosen unit is added where the text ends in a bare number.
    pub fn text(&self) -> String {
        let raw = self.raw.trim();
        match self.unit {
            Some(unit) if ends_bare(raw) => with_unit(raw, unit),
            _ => self.raw.to_string(),
        }
    }
}

fn with_unit(raw: &str, unit: &Unit) -> String {
    if unit.symbol.ends_with(':') {
        format!("{}{raw}", unit.symbol)
    } else {
        format!("{raw} {}", unit.id)
    }
}

/// Ends in a digit, a point or a fraction glyph, and holds no letter: no unit was typed.
pub fn ends_bare(raw: &str) -> bool {
    let last = raw.chars().next_back();
    let number = |c: char| c.is_ascii_digit() || c == '.' || matches!(c, '¼'..='¾' | '⅐'..='⅞');
    last.is_some_and(number)
        && !raw.contains(|c: char| {
            c.is_alphabetic() || matches!(c, ':' | '"' | '\'' | '″' | '′' | '”' | '°')
        })
}

/// The text without the unit typed behind its number.
pub fn bare(raw: &str) -> &str {
    let number = |c: char| c.is_ascii_digit() || c == '.' || matches!(c, '¼'..='¾' | '⅐'..='⅞');
    // a unit may hold digits (in2): take off from the first letter behind the last digit that stands before a letter
    let cut = raw
        .find(|c: char| c.is_alphabetic() || matches!(c, '"' | '″' | '”' | '°' | '%'))
        .unwrap_or(raw.len());
    let head = raw.get(..cut).unwrap_or(raw).trim_end();
    head.trim_end_matches(|c: char| !number(c))
        .trim_start_matches("1:")
}

/// The texts as the sheet takes them.
pub fn entry_of(sheet: &'static Sheet, typed: &[Typed], system: System) -> Entry {
    let mut entry = Entry::default().in_system(system);
    for (field, typed) in sheet.fields.iter().zip(typed) {
        if !typed.raw.is_empty() {
            entry.set(field.id, &typed.text());
        }
    }
    entry
}

/// Texts as they are shown: a unit that a link added to a bare number goes to the unit's own place.
pub fn typed_of(sheet: &'static Sheet, entry: &Entry) -> Vec<Typed> {
    let one = |field: &Field| {
        let text = entry.get(field.id).unwrap_or_default();
        if let FieldKind::Quantity { units, .. } = &field.kind {
            for &unit in units.iter().filter(|unit| !unit.id.is_empty()) {
                if let Some(raw) = text
                    .strip_suffix(unit.id)
                    .and_then(|raw| raw.strip_suffix(' '))
                    && ends_bare(raw)
                {
                    let own = field.unit(entry.system).is_some_and(|own| own == unit);
                    return Typed {
                        raw: raw.into(),
                        unit: (!own).then_some(unit),
                    };
                }
            }
        }
        Typed {
            raw: text.into(),
            unit: None,
        }
    };
    sheet.fields.iter().map(one).collect()
}
