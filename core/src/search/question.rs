//! What was typed, taken apart: words and what they stand for, and the pieces that are a size, a count or a call.

use super::fold::{is_filler, is_mark, pieces, stem, words};
use super::index::Known;
use super::terms::Id;
use crate::call::CallFault;
use crate::quantity::{Kind, System, Unit, read, units, units_of};
use crate::sheet::Call;

/// The most words of a text that are looked at.
const MOST_TOKENS: usize = 32;
/// The most words of a piece: `No. 4`, `2 1/2 in`, `M10 x 1.25`.
const MOST_PARTS: usize = 4;

/// One word as typed.
#[allow(clippy::struct_excessive_bools)] // four plain yes-or-no findings of one word
pub(super) struct Token {
    pub raw: String,
    /// What it stands for, and how much each counts.
    pub ids: Vec<(Id, f32)>,
    /// Some question has this word.
    pub known: bool,
    pub filler: bool,
    pub mark: bool,
    /// It is told by the word before it: "horse power".
    pub joined: bool,
    /// The unit that it spells.
    pub unit: Option<&'static Unit>,
}

/// What a piece may be.
#[derive(Clone)]
pub(super) enum What {
    /// A number alone.
    Bare,
    /// A number with a unit of this kind.
    Size(Kind),
    /// A named standard thing, written plainly; `guessed` where it reads in several ways.
    Call(&'static Call, bool),
}

/// Words that belong together: a size, a count or a call.
pub(super) struct Piece {
    pub start: usize,
    pub end: usize,
    pub text: String,
    /// As it stands in the text.
    pub typed: String,
    pub what: What,
}

/// A text, taken apart.
pub(super) struct Question {
    pub tokens: Vec<Token>,
    pub pieces: Vec<Piece>,
    pub system: System,
    /// The words that say something, each by what it most likely stands for, [`Id::MAX`] where by nothing.
    pub line: Vec<Id>,
    /// The same without sizes, counts and calls.
    pub words: Vec<Id>,
    /// What the words stand for: the meaning, the word that says it best, how much it counts.
    said: Vec<(Id, usize, f32)>,
    /// The unit that the answer is wanted in, and which word says so: "40 thou in mm".
    pub wanted: Option<(usize, &'static Unit)>,
}

impl Question {
    pub fn of(text: &str, known: &Known, system: System) -> Self {
        let mut tokens = tokens(text, known);
        join_words(&mut tokens, known);
        let id = |token: &Token| {
            token
                .ids
                .first()
                .filter(|(_, q)| *q > 0.7)
                .map_or(Id::MAX, |(id, _)| *id)
        };
        let said = || tokens.iter().filter(|token| !token.filler);
        let (line, words) = (
            said().map(id).collect(),
            said().filter(|token| !token.mark).map(id).collect(),
        );
        let said = meanings(&tokens);
        let wanted = wanted_unit(&tokens);
        let mut question = Self {
            tokens,
            pieces: Vec::new(),
            system,
            line,
            words,
            said,
            wanted,
        };
        question.read_pieces(known);
        question
    }

    /// How well the text says a word, and where.
    pub fn said(&self, id: Id) -> Option<(usize, f32)> {
        let at = self.said.binary_search_by_key(&id, |one| one.0).ok()?;
        self.said.get(at).map(|(_, at, quality)| (*at, *quality))
    }

    /// The words that no question knows, but those that fill something.
    pub fn missed(&self, used: u64) -> Vec<String> {
        let is_used = |at: usize| used & super::fill::bits(at, at.saturating_add(1)) != 0;
        let words = self.tokens.iter().enumerate();
        words
            .filter(|(at, token)| !token.known && !token.filler && !is_used(*at))
            .map(|(_, token)| token.raw.clone())
            .collect()
    }

    /// True where the whole text is one piece.
    fn is_all(&self, start: usize, end: usize) -> bool {
        start == 0 && end == self.tokens.len()
    }

    fn read_pieces(&mut self, known: &Known) {
        let mut found = Vec::new();
        for start in 0..self.tokens.len() {
            let most = self.tokens.len().min(start.saturating_add(MOST_PARTS));
            for end in (start.saturating_add(1)..=most).rev() {
                if self.may_be_piece(start, end) {
                    self.read_piece(start, end, known, &mut found);
                }
            }
        }
        // a number whose unit stands behind it is no bare one
        let sizes: Vec<(usize, usize)> = found
            .iter()
            .filter(|piece| matches!(piece.what, What::Size(_)))
            .map(|piece| (piece.start, piece.end))
            .collect();
        found.retain(|piece| {
            let longer = |size: &(usize, usize)| size.0 == piece.start && size.1 > piece.end;
            !(matches!(piece.what, What::Bare) && sizes.iter().any(longer))
        });
        self.pieces = found;
    }

    /// A mark or its head in front, then marks, units and the x of a thread.
    fn may_be_piece(&self, start: usize, end: usize) -> bool {
        let Some(([first, rest @ ..], lone)) = self
            .tokens
            .get(start..end)
            .map(|part| (part, end.saturating_sub(start) == 1))
        else {
            return false;
        };
        let follows = |token: &Token| {
            token.mark || token.unit.is_some() || token.raw == "x" || is_threads(token)
        };
        if first.mark {
            return rest.iter().all(follows);
        }
        if lone {
            return self.is_letter(start);
        }
        is_head(&first.raw)
            && rest.first().is_some_and(|next| next.mark)
            && rest.iter().all(follows)
    }

    /// A letter by itself: a capital, or beside the word drill or letter.
    fn is_letter(&self, at: usize) -> bool {
        let Some(token) = self.tokens.get(at) else {
            return false;
        };
        let [letter] = token.raw.as_bytes() else {
            return false;
        };
        let beside = |at: Option<usize>| {
            at.and_then(|at| self.tokens.get(at)).is_some_and(|near| {
                ["drill", "letter"].contains(&stem(&near.raw.to_ascii_lowercase()).as_str())
            })
        };
        let named = beside(at.checked_sub(1)) || (beside(at.checked_add(1)) && *letter != b'a');
        letter.is_ascii_alphabetic()
            && (named
                || self.is_all(at, at.saturating_add(1))
                || (letter.is_ascii_uppercase() && !token.filler))
    }

    fn read_piece(&self, start: usize, end: usize, known: &Known, found: &mut Vec<Piece>) {
        let Some(part) = self.tokens.get(start..end) else {
            return;
        };
        let mut text = String::new();
        for token in part {
            if !text.is_empty() {
                text.push(' ');
            }
            text.push_str(if is_threads(token) && !text.is_empty() {
                "tpi"
            } else {
                &token.raw
            });
        }
        let typed = text.clone();
        let mut add = |text: String, what: What| {
            found.push(Piece {
                start,
                end,
                text,
                typed: typed.clone(),
                what,
            });
        };
        if read(&text, Kind::Number, &[]).is_ok() {
            add(text.clone(), What::Bare);
        } else if text.ends_with(|c: char| !c.is_ascii_digit()) {
            for kind in units::KINDS {
                if let Ok(got) = read(&text, *kind, &[])
                    && !got.bare
                {
                    add(text.clone(), What::Size(*kind));
                }
            }
        }
        for call in &known.calls {
            match (call.read)(&text) {
                Ok(_) => add(text.clone(), What::Call(call, false)),
                Err(CallFault::Ambiguous(ways)) => {
                    // alone it is asked; in a question the usual one is meant
                    let way = ways.into_iter().next().filter(|_| !self.is_all(start, end));
                    add(
                        way.map_or_else(|| text.clone(), |way| way.0),
                        What::Call(call, true),
                    );
                }
                Err(_) => {}
            }
        }
    }
}

/// A unit without a number behind "in", "to" or "as", or at the end.
fn wanted_unit(tokens: &[Token]) -> Option<(usize, &'static Unit)> {
    let mut all = tokens.iter().enumerate().rev();
    let (at, token) =
        all.find(|(_, token)| token.unit.is_some() && !token.filler && !token.mark)?;
    let before = at.checked_sub(1).and_then(|at| tokens.get(at))?;
    let asked = ["in", "to", "as", "into"].contains(&before.raw.to_ascii_lowercase().as_str());
    let last = at.saturating_add(1) == tokens.len() && !before.mark;
    token.unit.filter(|_| asked || last).map(|unit| (at, unit))
}

/// Each meaning once, by the word that says it best.
fn meanings(tokens: &[Token]) -> Vec<(Id, usize, f32)> {
    let mut all: Vec<(Id, usize, f32)> = Vec::new();
    for (at, token) in tokens.iter().enumerate() {
        for (id, quality) in &token.ids {
            match all.iter_mut().find(|one| one.0 == *id) {
                Some(old) if *quality > old.2 => *old = (*id, at, *quality),
                Some(_) => {}
                None => all.push((*id, at, *quality)),
            }
        }
    }
    crate::order::sort_by_key(&mut all, |one| one.0);
    all
}

/// "18 threads" is 18 to the inch.
fn is_threads(token: &Token) -> bool {
    matches!(token.raw.as_str(), "threads" | "thread")
}

/// What may stand before the number of a call: `No. 7`, `RC 5`, `letter F`.
fn is_head(raw: &str) -> bool {
    let letters = raw.bytes().all(|b| b.is_ascii_alphabetic());
    (letters && raw.len() <= 2)
        || matches!(raw.to_ascii_lowercase().as_str(), "number" | "letter" | "#")
}

/// The unit that a text spells.
fn unit_of(raw: &str) -> Option<&'static Unit> {
    let plain: String = raw
        .chars()
        .filter(|c| !matches!(c, '.' | '-'))
        .flat_map(char::to_lowercase)
        .collect();
    let mut all = units::KINDS.iter().flat_map(|kind| units_of(*kind));
    all.find(|unit| unit.spellings.contains(&plain.as_str()))
        .copied()
}

fn tokens(text: &str, known: &Known) -> Vec<Token> {
    let mut tokens = Vec::new();
    let half_typed = !text.ends_with(char::is_whitespace);
    let pieces = pieces(text);
    for (at, piece) in pieces.iter().enumerate() {
        let last = half_typed && at.saturating_add(1) == pieces.len();
        let unit = unit_of(piece);
        let parts = words(piece);
        if unit.is_some() || parts.len() < 2 {
            let ids = parts.iter().map(|word| known.terms.meant(word, last));
            let (mut all, mut is_known) = (Vec::new(), false);
            for meant in ids {
                all.extend(meant.ids);
                is_known |= meant.known;
            }
            tokens.push(token(piece.clone(), all, is_known, unit));
        } else {
            for word in parts {
                let meant = known.terms.meant(&word, last);
                tokens.push(token(word, meant.ids, meant.known, None));
            }
        }
    }
    tokens.truncate(MOST_TOKENS);
    tokens
}

fn token(raw: String, ids: Vec<(Id, f32)>, known: bool, unit: Option<&'static Unit>) -> Token {
    let folded = raw.to_ascii_lowercase();
    let filler = is_filler(&folded);
    Token {
        mark: is_mark(&raw),
        ids: if filler { Vec::new() } else { ids },
        known: known || unit.is_some(),
        filler,
        joined: false,
        raw,
        unit,
    }
}

/// Phrases of the trade, and words that are written as one elsewhere: "horse power".
fn join_words(tokens: &mut [Token], known: &Known) {
    let stems: Vec<String> = tokens
        .iter()
        .map(|token| stem(&token.raw.to_ascii_lowercase()))
        .collect();
    let mut joined = known.terms.phrases_in(&stems);
    for (at, pair) in tokens.windows(2).enumerate() {
        if let [a, b] = pair
            && !a.mark
            && !b.mark
            && !(a.filler && b.filler)
        {
            let whole = format!("{}{}", a.raw, b.raw).to_ascii_lowercase();
            joined.push((at, 2, known.terms.plain(&whole)));
        }
    }
    for (at, count, head) in joined {
        let Some(id) = known.terms.get(&head) else {
            continue;
        };
        for token in tokens.iter_mut().skip(at).take(count) {
            token.known = true;
        }
        for token in tokens.iter_mut().skip(at).take(count).skip(1) {
            token.joined = true;
        }
        if let Some(first) = tokens.get_mut(at) {
            first.filler = false;
            first.ids.insert(0, (id, 1.0));
        }
    }
}
