//! A form in words: its entry, its result as it is spoken, its state, all of it to copy.

use super::Form;
use benchslate_core::quantity::spoken;
use benchslate_core::sheet::{FieldKind, Preset, State, Value, lowered};

impl Form {
    /// The entry in a few words, as typed: for names and for a call.
    pub fn entry_words(&self) -> String {
        let mut words: Vec<String> = Vec::new();
        for (field, (typed, now)) in self
            .sheet
            .fields
            .iter()
            .zip(self.typed.iter().zip(&self.fields))
        {
            if now.applies
                && !typed.raw.trim().is_empty()
                && !matches!(field.preset, Preset::Shop(..))
            {
                words.push(match &field.kind {
                    FieldKind::Choice(choices) => choices
                        .iter()
                        .find(|c| c.id == now.text)
                        .map_or_else(String::new, |c| c.label.to_owned()),
                    FieldKind::Rows { .. } => {
                        format!("{} {}", lowered(field.label), now.reading)
                    }
                    FieldKind::Quantity { .. } if now.link_text.is_empty() => typed.text(field),
                    FieldKind::Quantity { .. } | FieldKind::Call(_) => now.link_text.clone(),
                });
            }
        }
        words.retain(|word| !word.is_empty());
        words.join(", ")
    }

    /// The first result with its name, for the saved list; that there is none is said too.
    pub fn first_words(&self) -> String {
        let answer = self.answer();
        match answer.lines.first().filter(|_| answer.is_complete()) {
            Some(line) => format!("{}: {}", line.label, line.value.text_with_unit(self.system)),
            None => "no answer yet".to_owned(),
        }
    }

    /// What the live region says.
    pub fn spoken_result(&self) -> String {
        let answer = self.answer();
        match answer.lines.first().filter(|_| answer.is_complete()) {
            Some(line) => match (&line.value, line.value.unit(self.system)) {
                (Value::Quantity { base, .. }, Some(unit)) => format!(
                    "{} {}",
                    line.label,
                    spoken(*base, unit, line.value.decimals(self.system))
                ),
                _ => format!("{} {}", line.label, line.value.text(self.system)),
            },
            None if self.is_empty() => String::new(),
            None => self.short_state(),
        }
    }

    /// Why there is no answer yet, in one line.
    pub fn short_state(&self) -> String {
        let name = |id: &str| {
            self.sheet
                .field(id)
                .map(|field| lowered(field.label))
                .unwrap_or_default()
        };
        match &self.answer().state {
            State::Complete => String::new(),
            State::Incomplete(needed) => format!(
                "Still needed: {}",
                needed
                    .iter()
                    .map(|id| name(id))
                    .collect::<Vec<_>>()
                    .join(", ")
            ),
            State::Withheld(withheld) => format!("No figure given: limit {}", withheld.limit),
            State::Faulty => {
                let wrong = self
                    .fields
                    .iter()
                    .find(|field| field.fault.is_some())
                    .map(|field| name(field.id));
                format!("Check {}", wrong.unwrap_or_else(|| "the entry".to_owned()))
            }
        }
    }

    /// The answer as plain text, to copy.
    pub fn text(&self) -> String {
        let mut text = format!("{}\n", self.sheet.title);
        for (field, now) in self.sheet.fields.iter().zip(&self.fields) {
            // what is typical and was not entered is left out; a shop's own figure belongs to the answer
            let typical = matches!(field.preset, Preset::Shop(..)) && now.from_preset;
            if now.applies && !now.text.is_empty() && !typical {
                let read = match &field.kind {
                    FieldKind::Choice(choices) => choices
                        .iter()
                        .find(|choice| choice.id == now.text)
                        .map_or(now.text.as_str(), |choice| choice.label),
                    FieldKind::Rows { .. } if !now.link_text.is_empty() => now.link_text.as_str(),
                    _ if now.reading.is_empty() => now.text.as_str(),
                    _ => now.reading.as_str(),
                };
                text.push_str(&format!("{}: {read}\n", field.label));
            }
        }
        for line in &self.answer().lines {
            text.push_str(&format!(
                "{}: {}",
                line.label,
                line.value.text_with_unit(self.system)
            ));
            if !line.says.is_empty() {
                text.push_str(&format!(" ({})", line.says));
            }
            text.push('\n');
        }
        for caution in &self.answer().cautions {
            text.push_str(&format!("{}: {}\n", caution.before, caution.text));
        }
        text
    }
}

/// The first words of a text, for a name.
pub fn short(words: &str) -> String {
    const MOST: usize = 160;
    match words.char_indices().nth(MOST) {
        Some((cut, _)) => format!("{} \u{2026}", words.get(..cut).unwrap_or(words)),
        None => words.to_owned(),
    }
}
