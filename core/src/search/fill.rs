//! Which fields of a sheet does a text fill? Choices by their words first, then sizes, counts and calls by kind, by the word
//! beside them and by what the sheet still needs.

use super::index::{ChoiceWords, Doc, Known};
use super::question::{Piece, Question, What};
use super::terms::Id;
use crate::quantity::{Kind, System, units};
use crate::sheet::{Entry, Field, FieldKind, Reason, evaluate_field};

/// What one sheet makes of a text.
pub(super) struct Filled {
    /// A text each for some fields, by the field's place.
    pub texts: Vec<(usize, String)>,
    /// Words that fill a choice, a bit each.
    pub chosen: u64,
    /// Words that are a size, a count or a call of this sheet.
    pub taken: u64,
    /// How much the sizes, counts and calls tell for this sheet.
    pub score: f32,
    /// A call that reads in several ways, by its field, and the text as it was typed.
    pub guessed: Vec<(usize, String)>,
}

impl Filled {
    /// Nothing yet.
    pub const fn nothing() -> Self {
        Self {
            texts: Vec::new(),
            chosen: 0,
            taken: 0,
            score: 0.0,
            guessed: Vec::new(),
        }
    }
    /// True of a word that fills something.
    pub fn uses(&self, word: usize) -> bool {
        (self.taken | self.chosen) & bits(word, word.saturating_add(1)) != 0
    }
    /// Where not all of the text is explained, a call that reads in several ways is left to be asked.
    pub fn ask_again(&mut self) {
        for (at, typed) in self.guessed.drain(..) {
            if let Some((_, text)) = self.texts.iter_mut().find(|(field, _)| *field == at) {
                *text = typed;
            }
        }
    }
}

/// A bit for each of some words.
pub(super) fn bits(start: usize, end: usize) -> u64 {
    (start..end.min(64)).fold(0, |all, at| all | (1_u64 << at))
}

struct Filler<'a> {
    known: &'a Known,
    doc: &'a Doc,
    asked: &'a Question,
    /// Choices made, by field.
    chosen: Vec<(usize, &'static str, u64)>,
    /// Choices that another field asks for.
    implied: Vec<(usize, &'static str)>,
    out: Filled,
}

/// Fills what it can.
pub(super) fn fill(known: &Known, doc: &Doc, asked: &Question) -> Filled {
    let mut filler = Filler {
        known,
        doc,
        asked,
        chosen: Vec::new(),
        implied: Vec::new(),
        out: Filled::nothing(),
    };
    filler.choices();
    filler.pieces();
    let Filler {
        chosen,
        implied,
        mut out,
        ..
    } = filler;
    for (at, id) in chosen
        .into_iter()
        .map(|(at, id, _)| (at, id))
        .chain(implied)
    {
        out.texts.push((at, id.to_owned()));
    }
    crate::order::sort_by_key(&mut out.texts, |text| text.0);
    out
}

impl Filler<'_> {
    fn field(&self, at: usize) -> Option<&'static Field> {
        self.doc.sheet.fields.get(at)
    }

    /// The words in front and behind, over words that say nothing, name the field.
    fn beside(&self, field: usize, start: usize, end: usize) -> f32 {
        let Some(words) = self.doc.fields.get(field) else {
            return 0.0;
        };
        let names = |at: usize| {
            let token = self.asked.tokens.get(at)?;
            let named = token
                .ids
                .iter()
                .any(|(id, quality)| *quality > 0.7 && words.label.contains(id));
            (!token.filler).then_some(named && !token.mark)
        };
        let before = (0..start).rev().find_map(names).unwrap_or(false);
        let behind = (end..self.asked.tokens.len())
            .find_map(names)
            .unwrap_or(false);
        if before {
            1.0
        } else if behind {
            0.8
        } else {
            0.0
        }
    }

    fn choices(&mut self) {
        let mut found: Vec<(f32, usize, &'static str, u64)> = Vec::new();
        for (at, (field, words)) in self
            .doc
            .sheet
            .fields
            .iter()
            .zip(&self.doc.fields)
            .enumerate()
        {
            let FieldKind::Choice(list) = field.kind else {
                continue;
            };
            let mut best: Option<(f32, &'static str, u64)> = None;
            for (choice, words) in list.iter().zip(&words.choices) {
                if let Some((value, mask)) = self.choice(words)
                    && best.is_none_or(|(old, ..)| value > old)
                {
                    best = Some((value, choice.id, mask));
                }
            }
            if let Some((value, id, mask)) = best {
                let first = mask.trailing_zeros() as usize;
                let last = 64 - mask.leading_zeros() as usize;
                let given = 0.8 * self.beside(at, first, last)
                    - if field.when.is_empty() { 0.0 } else { 0.2 };
                found.push((value + given, at, id, mask));
            }
        }
        crate::order::sort_by(&mut found, |a, b| b.0.total_cmp(&a.0));
        for (_, at, id, mask) in found {
            let shared = self
                .chosen
                .iter()
                .any(|(other, _, taken)| taken & mask != 0 && !self.related(at, *other));
            if !shared && self.set(at, id) {
                self.chosen.push((at, id, mask));
                self.out.chosen |= mask;
            }
        }
    }

    /// One of the two fields hangs on the other.
    fn related(&self, one: usize, other: usize) -> bool {
        let hangs = |a: usize, b: usize| match (self.field(a), self.field(b)) {
            (Some(a), Some(b)) => a.when.iter().any(|when| when.field == b.id),
            _ => false,
        };
        hangs(one, other) || hangs(other, one)
    }

    /// How much the text says of a choice, and by which words.
    fn choice(&self, words: &ChoiceWords) -> Option<(f32, u64)> {
        let mut best: Option<(f32, f32)> = None;
        for head in &words.heads {
            let (mut got, mut all, mut letters) = (0.0, 0.0, false);
            let mut marks = true;
            for id in head {
                let weight = self.known.weight(*id).max(0.1);
                let said = self.asked.said(*id);
                let is_mark = words.marks.contains(id);
                all += weight;
                got += said.map_or(0.0, |(_, quality)| weight * quality);
                letters |= said.is_some() && (!is_mark || words.clear.contains(id));
                marks &= !is_mark || said.is_some();
            }
            let part = got / all;
            if marks && letters && part > 0.45 && best.is_none_or(|(old, _)| part > old) {
                best = Some((part, got));
            }
        }
        let (part, _) = best?;
        let (mut value, mut mask) = (part, 0_u64);
        let mut seen: Vec<Id> = Vec::new();
        for id in &words.all {
            if !seen.contains(id)
                && let Some((at, quality)) = self.asked.said(*id)
            {
                seen.push(*id);
                value += self.known.weight(*id) * quality;
                mask |= bits(at, at.saturating_add(1));
            }
        }
        Some((value, mask))
    }

    /// Makes the choices on which a field hangs, and its own; false where one contradicts what was said.
    fn set(&mut self, at: usize, id: &'static str) -> bool {
        if self
            .implied
            .iter()
            .any(|(other, text)| *other == at && *text != id)
        {
            return false;
        }
        let before = self.implied.len();
        if self.enable(at, 3) {
            self.implied.retain(|(other, _)| *other != at);
            return true;
        }
        self.implied.truncate(before);
        false
    }

    /// The field applies, or is made to by choices that nothing contradicts.
    fn enable(&mut self, at: usize, depth: u8) -> bool {
        let Some(field) = self.field(at).filter(|_| depth > 0) else {
            return false;
        };
        for when in field.when {
            let Some(parent) = self
                .doc
                .sheet
                .fields
                .iter()
                .position(|one| one.id == when.field)
            else {
                return false;
            };
            let chosen = self
                .chosen
                .iter()
                .find(|(one, ..)| *one == parent)
                .map(|(_, id, _)| *id);
            let implied = || {
                self.implied
                    .iter()
                    .find(|(one, _)| *one == parent)
                    .map(|(_, id)| *id)
            };
            let said = chosen.or_else(implied);
            let holds = said.or_else(|| self.field(parent).and_then(|one| one.preset.text()));
            if !holds.is_some_and(|id| when.is.contains(&id)) {
                let Some(first) = when.is.first().filter(|_| said.is_none()) else {
                    return false;
                };
                self.implied.push((parent, first));
            }
            if !self.enable(parent, depth.saturating_sub(1)) {
                return false;
            }
        }
        true
    }

    /// Without a further choice.
    fn applies(&self, at: usize) -> bool {
        let Some(field) = self.field(at) else {
            return false;
        };
        field.when.iter().all(|when| {
            let parent = self
                .doc
                .sheet
                .fields
                .iter()
                .position(|one| one.id == when.field);
            let said = self
                .chosen
                .iter()
                .find(|(one, ..)| Some(*one) == parent)
                .map(|(_, id, _)| *id);
            let implied = self
                .implied
                .iter()
                .find(|(one, _)| Some(*one) == parent)
                .map(|(_, id)| *id);
            let preset = parent
                .and_then(|at| self.field(at))
                .and_then(|one| one.preset.text());
            said.or(implied)
                .or(preset)
                .is_some_and(|id| when.is.contains(&id))
        })
    }

    fn pieces(&mut self) {
        let mut found: Vec<(f32, usize, usize, f32)> = Vec::new();
        for (index, piece) in self.asked.pieces.iter().enumerate() {
            if bits(piece.start, piece.end) & self.out.chosen != 0 {
                continue;
            }
            for (at, field) in self.doc.sheet.fields.iter().enumerate() {
                if let Some((fit, tells)) = self.fit(piece, at, field) {
                    found.push((fit, index, at, tells));
                }
            }
        }
        crate::order::sort_by(&mut found, |a, b| b.0.total_cmp(&a.0));
        let mut done: Vec<usize> = Vec::new();
        for (_, index, at, tells) in found {
            let (Some(piece), Some(field)) = (self.asked.pieces.get(index), self.field(at)) else {
                continue;
            };
            let mask = bits(piece.start, piece.end);
            if mask & self.out.taken != 0 || done.contains(&at) {
                continue;
            }
            let Some(text) = reads(field, piece, self.asked.system) else {
                continue;
            };
            let before = self.implied.len();
            if !self.enable(at, 3) {
                self.implied.truncate(before);
                continue;
            }
            if matches!(piece.what, What::Call(_, true)) {
                self.out.guessed.push((at, piece.typed.clone()));
            }
            done.push(at);
            self.out.taken |= mask;
            self.out.score += tells;
            self.out.texts.push((at, text));
        }
    }

    /// The first length that the sheet needs as it stands.
    fn first_needed(&self, at: usize) -> bool {
        let needed = |(at, field): (usize, &Field)| {
            field.kind_is(Kind::Length) && is_needed(field) && self.applies(at)
        };
        let mut fields = self.doc.sheet.fields.iter().enumerate();
        fields.position(needed) == Some(at)
    }

    /// How well a piece fits a field, and how much it then tells for the sheet.
    fn fit(&self, piece: &Piece, at: usize, field: &Field) -> Option<(f32, f32)> {
        let beside = self.beside(at, piece.start, piece.end);
        let takes = self.doc.sheet.takes.contains(&field.id);
        let needed = is_needed(field);
        let number = self.asked.pieces.iter().any(|other| {
            other.start == piece.start && other.end == piece.end && matches!(other.what, What::Bare)
        });
        let tells = match (&field.kind, &piece.what) {
            (FieldKind::Call(call), What::Call(read, guessed)) if std::ptr::eq(*call, *read) => {
                if !takes && !needed && beside == 0.0 {
                    return None;
                }
                if *guessed || number { 1.5 } else { 2.8 }
            }
            (FieldKind::Quantity { kind, .. }, What::Size(read)) if kind == read => {
                let plain = matches!(kind, Kind::Length | Kind::Pitch);
                if plain && beside == 0.0 && !needed && !takes {
                    return None;
                }
                if *kind == Kind::Pitch && !piece.text.contains("tpi") && beside == 0.0 {
                    return None;
                }
                2.0
            }
            (FieldKind::Quantity { kind, .. }, What::Bare) => {
                let ready = *kind == Kind::Length && (takes || self.first_needed(at));
                // a measured size is a decimal, a fraction is a name
                let named = field.is_measured && !takes && piece.text.contains('/');
                if named || (beside == 0.0 && !ready) {
                    return None;
                }
                1.2
            }
            _ => return None,
        };
        let mut fit = tells + 1.5 * beside - 0.01 * at as f32;
        fit += 0.3 * piece.end.saturating_sub(piece.start) as f32;
        fit += if needed { 0.6 } else { 0.0 } + if takes { 0.5 } else { 0.0 };
        let applies = self.applies(at);
        fit -= if applies { 0.0 } else { 0.7 } + if field.is_seldom { 0.3 } else { 0.0 };
        let tells = tells + 0.8 * beside + if takes { 0.2 } else { 0.0 };
        let tells = if takes || needed { tells } else { tells - 0.6 };
        Some((fit, if applies { tells } else { tells - 0.4 }))
    }
}

/// It has to be typed.
const fn is_needed(field: &Field) -> bool {
    !field.is_optional && !field.preset.holds() && field.preset.item().is_none()
}

/// The text that a field takes of a piece; a whole number past what a shop counts in inches is in millimetres.
fn reads(field: &'static Field, piece: &Piece, system: System) -> Option<String> {
    let bare = matches!(piece.what, What::Bare) && field.kind_is(Kind::Length);
    let mut texts = vec![piece.text.clone()];
    if bare {
        let whole = piece.text.bytes().all(|b| b.is_ascii_digit());
        let large = whole && piece.text.parse::<u32>().is_ok_and(|number| number >= 4);
        if large && system == System::Inch {
            texts.insert(0, format!("{} {}", piece.text, units::MM.id));
        } else if piece.text.contains('/') && system == System::Metric {
            texts.insert(0, format!("{} {}", piece.text, units::INCH.id));
        }
    }
    texts
        .into_iter()
        .find(|text| match evaluate_field(field, text, system) {
            Ok(_) => true,
            Err(fault) => fault.reason == Reason::Ambiguous,
        })
}

/// As an entry of the sheet.
pub(super) fn entry_of(doc: &Doc, filled: &Filled, system: System) -> Entry {
    let mut entry = Entry::default().in_system(system);
    for (at, text) in &filled.texts {
        if let Some(field) = doc.sheet.fields.get(*at) {
            entry.set(field.id, text);
        }
    }
    entry
}
