//! What was typed into a field, and the unit that stands apart from it.

use benchslate_core::quantity::{Kind, Reading, System, Unit, link_text, read};
use benchslate_core::sheet::{Entry, Field, FieldKind, Sheet, pinned};
use std::rc::Rc;

/// Why a text stays as it is although another unit was chosen.
pub const STAYS: &str =
    "This entry has more than one part, so it stays as typed. To change its unit, type it again.";

/// One field as the user has it: the text as typed, and the unit that a bare number takes, where it was chosen.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Typed {
    /// As typed, never rewritten while it is typed in.
    pub raw: Rc<str>,
    /// Chosen for bare numbers, or held where results were turned to the other system; else the field's own.
    pub unit: Option<&'static Unit>,
    /// What the field has to say of the last unit chosen; empty as a rule.
    pub says: &'static str,
}

impl Typed {
    /// A text alone.
    pub fn of(raw: &str) -> Self {
        Self {
            raw: raw.into(),
            ..Self::default()
        }
    }
    /// The text that is evaluated: the chosen unit is added where none was typed.
    pub fn text(&self, field: &Field) -> String {
        let raw = self.raw.trim();
        let (Some(unit), Some(kind)) = (self.unit, kind_of(field)) else {
            return self.raw.to_string();
        };
        match read(raw, kind, &[unit]) {
            Ok(reading) if reading.bare && unit.symbol.ends_with(':') => with_unit(raw, unit),
            Ok(reading) if reading.bare => link_text(raw, &reading),
            Err(_) if ends_bare(raw) => with_unit(raw, unit),
            _ => self.raw.to_string(),
        }
    }
    /// Another unit was chosen: a number keeps its digits and takes the new unit; what has more parts stays, and says why.
    pub fn choose(&mut self, field: &Field, system: System, unit: &'static Unit) {
        self.says = "";
        let raw = self.raw.trim().to_owned();
        let Some(kind) = kind_of(field) else { return };
        if raw.is_empty() {
            // an own preset has no raw text to carry the unit
            if let Some(text) = field.preset.text() {
                self.raw = simple(text, kind).unwrap_or(text).into();
            }
            self.unit = Some(unit);
            return;
        }
        let own: Vec<&'static Unit> = self
            .unit
            .or_else(|| field.unit(system))
            .into_iter()
            .collect();
        match read(&raw, kind, &own) {
            Ok(reading) if reading.bare => self.unit = Some(unit),
            Err(_) if !has_unit(&raw) => self.unit = Some(unit),
            _ => match simple(&raw, kind) {
                Some(head) => {
                    self.raw = head.into();
                    self.unit = Some(unit);
                }
                None => self.says = STAYS,
            },
        }
    }
    /// Results are turned to another system than this one: what was typed keeps the unit that it was read in.
    pub fn hold(&mut self, field: &'static Field, system: System) {
        let raw = self.raw.trim();
        match kind_of(field) {
            Some(kind) if !raw.is_empty() && self.unit.is_none() => {
                let own = field.unit(system);
                let offered: Vec<&'static Unit> = own.into_iter().collect();
                if read(raw, kind, &offered).map_or(!has_unit(raw), |reading| reading.bare) {
                    self.unit = own;
                }
            }
            Some(_) => {}
            None => self.raw = pinned(field, &self.raw, system).into(),
        }
    }
}

fn kind_of(field: &Field) -> Option<Kind> {
    match field.kind {
        FieldKind::Quantity { kind, .. } => Some(kind),
        _ => None,
    }
}

fn with_unit(raw: &str, unit: &Unit) -> String {
    if unit.symbol.ends_with(':') {
        format!("{}{raw}", unit.symbol)
    } else {
        format!("{raw} {}", unit.id)
    }
}

fn is_number(c: char) -> bool {
    c.is_ascii_digit() || c == '.' || matches!(c, '¼'..='¾' | '⅐'..='⅞')
}

/// A letter or a sign of a unit stands in it.
fn has_unit(raw: &str) -> bool {
    raw.contains(|c: char| {
        c.is_ascii_alphabetic()
            || matches!(
                c,
                'µ' | 'μ' | ':' | '"' | '\'' | '″' | '′' | '”' | '°' | '%'
            )
    })
}

/// Ends in a digit, a point or a fraction glyph, and holds no letter: no unit was typed.
fn ends_bare(raw: &str) -> bool {
    raw.chars().next_back().is_some_and(is_number) && !has_unit(raw)
}

/// The number of a text that is one number and one unit; none where it has more parts.
fn simple(raw: &str, kind: Kind) -> Option<&str> {
    if let Some(rest) = raw.strip_prefix("1:").map(str::trim) {
        return ends_bare(rest).then_some(rest);
    }
    let whole = read(raw, kind, &[]).ok()?;
    let cut = raw
        .find(|c: char| has_unit(c.encode_utf8(&mut [0; 4])))
        .unwrap_or(raw.len());
    let head = raw.get(..cut)?.trim_end();
    let alone = read(head, kind, &[whole.unit]).ok()?;
    let sharp = |reading: &Reading| reading.minus == 0.0 && reading.plus == 0.0;
    let same = (alone.nominal - whole.nominal).abs() <= 1e-12 * whole.nominal.abs();
    (same && alone.bare && sharp(&whole) && sharp(&alone)).then_some(head)
}

/// The texts as the sheet takes them.
pub fn entry_of(sheet: &'static Sheet, typed: &[Typed], system: System) -> Entry {
    let mut entry = Entry::default().in_system(system);
    for (field, typed) in sheet.fields.iter().zip(typed) {
        if !typed.raw.is_empty() {
            entry.set(field.id, &typed.text(field));
        }
    }
    entry
}

/// A text as it is shown: a unit that a link added to a bare number goes to the unit's own place.
pub fn shown(field: &Field, text: &str, system: System) -> Typed {
    if let FieldKind::Quantity { units, .. } = &field.kind {
        for &unit in units.iter().filter(|unit| !unit.id.is_empty()) {
            if let Some(raw) = text
                .strip_suffix(unit.id)
                .and_then(|raw| raw.strip_suffix(' '))
                && ends_bare(raw)
            {
                let own = field.unit(system).is_some_and(|own| own == unit);
                return Typed {
                    unit: (!own).then_some(unit),
                    ..Typed::of(raw)
                };
            }
        }
    }
    Typed::of(text)
}

/// Texts as they are shown.
pub fn typed_of(sheet: &'static Sheet, entry: &Entry) -> Vec<Typed> {
    let one = |field: &Field| {
        let text = entry.get(field.id).unwrap_or_default();
        shown(field, text, entry.system)
    };
    sheet.fields.iter().map(one).collect()
}
