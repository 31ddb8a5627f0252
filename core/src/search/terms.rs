//! Which words are known, and which of them does a typed word stand for? Every word of every sheet once, by a number.

use super::fold::{is_filler, is_mark, one_off, pieces, stem, words};
use super::trade;

/// A known word, by number.
pub(super) type Id = u16;

/// How much a word counts that is not typed whole, has a letter wrong, or only stands near.
const BY_START: f32 = 0.75;
const BY_SLIP: f32 = 0.8;
const BY_NEARNESS: f32 = 0.55;
/// The most words that the start of one may stand for.
const MOST_STARTS: usize = 12;

/// The words.
#[derive(Default)]
pub(super) struct Terms {
    /// In order of the alphabet.
    known: Vec<(String, Id)>,
    fillers: Vec<bool>,
    /// A word and the one that it is told by.
    same: Vec<(String, String)>,
    phrases: Vec<(Vec<String>, String)>,
    near: Vec<(String, Vec<String>)>,
}

/// What a typed word stands for.
pub(super) struct Meant {
    /// Words, and how much each counts, up to 1.
    pub ids: Vec<(Id, f32)>,
    /// A question has this word.
    pub known: bool,
}

impl Terms {
    /// With the table of the trade, and no words yet.
    pub fn of_trade() -> Self {
        let mut terms = Self::default();
        for (same, group) in trade::groups() {
            let mut group = group.into_iter();
            let Some(head) = group.next().map(stem_of) else {
                continue;
            };
            if !same {
                terms.near.push((head, group.map(stem_of).collect()));
                continue;
            }
            for word in group {
                if word.contains('_') {
                    terms
                        .phrases
                        .push((word.split('_').map(stem).collect(), head.clone()));
                } else {
                    terms.same.push((stem(word), head.clone()));
                }
            }
            if head.contains(' ') {
                terms
                    .phrases
                    .push((head.split(' ').map(ToOwned::to_owned).collect(), head));
            }
        }
        terms
    }

    /// One word as it is told: its stem, or that of the word of its group.
    pub fn plain(&self, word: &str) -> String {
        let stem = stem(word);
        let same = self.same.iter().find(|(one, _)| *one == stem);
        same.map_or(stem, |(_, head)| head.clone())
    }

    /// The words of phrases of the trade that stand in these, each at its first place.
    pub fn phrases_in(&self, stems: &[String]) -> Vec<(usize, usize, String)> {
        let mut found = Vec::new();
        for (phrase, head) in &self.phrases {
            let places = stems.windows(phrase.len().max(1));
            for (at, place) in places.enumerate() {
                if place == phrase {
                    found.push((at, phrase.len(), head.clone()));
                }
            }
        }
        found
    }

    fn id(&mut self, word: &str, filler: bool) -> Id {
        match self
            .known
            .binary_search_by(|(one, _)| one.as_str().cmp(word))
        {
            Ok(at) => self.known.get(at).map_or(0, |(_, id)| *id),
            Err(at) => {
                let id = self.known.len() as Id;
                self.known.insert(at, (word.to_owned(), id));
                self.fillers.push(filler);
                id
            }
        }
    }

    /// The words of a sheet's text in their order, and behind them the phrases of the trade in it.
    pub fn learn(&mut self, text: &str) -> (Vec<Id>, Vec<Id>) {
        let all: Vec<String> = pieces(text).iter().flat_map(|piece| words(piece)).collect();
        let stems: Vec<String> = all.iter().map(|word| stem(word)).collect();
        let told: Vec<(String, bool)> = all
            .iter()
            .map(|word| (self.plain(word), is_filler(word)))
            .collect();
        let more = self.phrases_in(&stems);
        let ids = told
            .iter()
            .map(|(word, filler)| self.id(word, *filler))
            .collect();
        let more = more
            .iter()
            .map(|(_, _, head)| self.id(head, false))
            .collect();
        (ids, more)
    }

    /// True of a word that says nothing of the matter.
    pub fn is_filler(&self, id: Id) -> bool {
        self.fillers.get(usize::from(id)).copied().unwrap_or(false)
    }

    /// How many words there are.
    pub fn count(&self) -> usize {
        self.known.len()
    }

    /// A word by its plain form.
    pub fn get(&self, word: &str) -> Option<Id> {
        let at = self
            .known
            .binary_search_by(|(one, _)| one.as_str().cmp(word));
        at.ok().and_then(|at| self.known.get(at)).map(|(_, id)| *id)
    }

    /// What a typed word stands for; the last one may be half typed.
    pub fn meant(&self, word: &str, last: bool) -> Meant {
        let plain = self.plain(word);
        let mut ids: Vec<(Id, f32)> = self.get(&plain).map(|id| (id, 1.0)).into_iter().collect();
        let letters = !is_mark(word);
        if ids.is_empty() && letters && word.len() >= if last { 2 } else { 3 } {
            let from = self.known.partition_point(|(one, _)| one.as_str() < word);
            let starts = self
                .known
                .iter()
                .skip(from)
                .take_while(|(one, _)| one.starts_with(word));
            ids.extend(starts.take(MOST_STARTS).map(|(_, id)| (*id, BY_START)));
        }
        if ids.is_empty() && letters {
            let slips = self
                .known
                .iter()
                .filter(|(one, _)| !is_mark(one) && one_off(&plain, one));
            ids.extend(slips.map(|(_, id)| (*id, BY_SLIP)));
        }
        ids.retain(|(id, _)| !self.is_filler(*id));
        let known = !ids.is_empty();
        self.nearby(&plain, &mut ids);
        Meant { ids, known }
    }

    /// Adds what only stands near.
    pub fn nearby(&self, plain: &str, ids: &mut Vec<(Id, f32)>) {
        let near = self.near.iter().filter(|(head, _)| head == plain);
        for id in near
            .flat_map(|(_, near)| near)
            .filter_map(|word| self.get(word))
        {
            if !ids.iter().any(|(old, _)| *old == id) {
                ids.push((id, BY_NEARNESS));
            }
        }
    }
}

fn stem_of(word: &str) -> String {
    let stems: Vec<String> = word.split('_').map(stem).collect();
    stems.join(" ")
}
