//! What did one mean by a line of text? A whole question is taken apart into words, sizes, calls and choices, given to the
//! fields that can take them, and each sheet stands by how much of it that sheet explains.
//!
//! Nothing here knows a sheet by name: all is read from the contract, and the synonyms of the trade stand in one table.

mod fill;
mod fold;
mod index;
mod question;
mod rank;
mod tell;
mod terms;
mod trade;

use crate::link::{self, Asked};
use crate::quantity::System;
use crate::record::Shop;
use crate::sheet::{Entry, Sheet, evaluate_quietly};
use crate::sheets;
use fill::Filled;
use index::{Known, key_of};
use question::Question;

/// The most hits that are given.
pub const MOST_HITS: usize = 12;
/// The most characters of a text.
pub const MOST_CHARS: usize = 200;
/// The most table rows beside the questions.
const MOST_ROWS: usize = 5;
/// Questions that explain less than this part of what the best one explains are left out.
const LEAST_PART: f32 = 0.22;
/// How much it tells that the text is all that a question needs.
const COMPLETE: f32 = 0.8;

/// One hit: what opens with a tap.
#[derive(Clone, PartialEq, Debug)]
pub struct Hit {
    /// What it is.
    pub title: String,
    /// Beside it: what was understood, or what the question works from.
    pub aside: String,
    /// The sheet that opens.
    pub sheet: &'static str,
    /// Filled in with this.
    pub entry: Entry,
    /// The fragment that opens it, with the shop where the entry says nothing of it.
    pub link: String,
    /// The figure, where the entry is complete.
    pub answer: Option<String>,
}

/// What a text finds.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Found {
    /// Best first; where nothing answers it, the nearest questions.
    pub hits: Vec<Hit>,
    /// Words that no question knows.
    pub missed: Vec<String>,
    /// Nothing answers the text: the hits are only near.
    pub near: bool,
}

/// The index, made once.
pub struct Index {
    known: Known,
}

impl Default for Index {
    fn default() -> Self {
        Self::new(sheets::ALL)
    }
}

/// A sheet with what it makes of a text.
struct Ranked {
    score: f32,
    doc: usize,
    filled: Filled,
    row: Option<usize>,
}

impl Index {
    /// An index over these sheets.
    pub fn new(sheets: &[&'static Sheet]) -> Self {
        Self {
            known: Known::of(sheets),
        }
    }

    /// The best hits for a text, best first, in the general shop.
    pub fn find(&self, text: &str, system: System) -> Vec<Hit> {
        let shop = Shop {
            system,
            ..Shop::default()
        };
        self.ask(text, &shop).hits
    }

    /// What a text finds in this shop. Nothing only for an empty text, or one longer than [`MOST_CHARS`].
    ///
    /// ```
    /// use benchslate_core::{record::Shop, search::Index};
    /// let found = Index::default().ask("40 thou in mm", &Shop::default());
    /// assert!(found.hits[0].answer.as_ref().unwrap().starts_with("1.016 mm"));
    /// ```
    pub fn ask(&self, text: &str, shop: &Shop) -> Found {
        let text = text.trim_start();
        if text.trim_end().is_empty() || text.len() > MOST_CHARS {
            return Found::default();
        }
        let asked = Question::of(text, &self.known, shop.system);
        let mut ranked = self.ranked(text, &asked);
        let mut rows = self.rows(text, shop);
        let near = ranked.is_empty() && rows.is_empty();
        if near {
            ranked = self.simplest();
        }
        let (mut hits, used) = self.hits(&ranked, &asked, shop);
        // half of a row's name is no word that was not understood
        let missed = if rows.is_empty() {
            asked.missed(used)
        } else {
            Vec::new()
        };
        rows.retain(|row| !hits.iter().any(|hit| hit.link == row.link));
        hits.truncate(MOST_HITS.saturating_sub(rows.len()));
        hits.extend(rows);
        Found { hits, missed, near }
    }

    /// Best first, a complete one before its like; and the words that the first ones use.
    fn hits(&self, ranked: &[Ranked], asked: &Question, shop: &Shop) -> (Vec<Hit>, u64) {
        let mut scored: Vec<(f32, u64, Hit)> = Vec::with_capacity(ranked.len());
        for one in ranked {
            if let Some(hit) = self.hit(one, asked, shop) {
                let complete = if hit.answer.is_some() { COMPLETE } else { 0.0 };
                scored.push((one.score + complete, one.filled.taken, hit));
            }
        }
        crate::order::sort_by(&mut scored, |a, b| b.0.total_cmp(&a.0));
        let used = scored.iter().take(3).fold(0, |all, one| all | one.1);
        (scored.into_iter().map(|one| one.2).collect(), used)
    }

    /// The sheets that explain something of it, best first.
    fn ranked(&self, text: &str, asked: &Question) -> Vec<Ranked> {
        let rows = self.rows_named(&key_of(text));
        let mut ranked = Vec::new();
        for (at, doc) in self.known.docs.iter().enumerate() {
            let mut filled = fill::fill(&self.known, doc, asked);
            if !rank::explains_all(doc, asked, &filled) {
                filled.ask_again();
            }
            let row = rows
                .iter()
                .find(|(sheet, _)| *sheet == at)
                .map(|(_, row)| *row);
            let named = if row.is_some() { 1.0 } else { 0.0 };
            let score = rank::score(&self.known, doc, asked, &filled) + named;
            if score > 0.05 {
                ranked.push(Ranked {
                    score,
                    doc: at,
                    filled,
                    row,
                });
            }
        }
        crate::order::sort_by(&mut ranked, |a, b| b.score.total_cmp(&a.score));
        let best = ranked.first().map_or(0.0, |best| best.score);
        ranked.retain(|one| one.score >= LEAST_PART * best);
        ranked.truncate(MOST_HITS);
        ranked
    }

    /// Where nothing answers: the questions that ask for least.
    fn simplest(&self) -> Vec<Ranked> {
        let mut all: Vec<usize> = (0..self.known.docs.len()).collect();
        crate::order::sort_by_key(&mut all, |at| {
            self.known.docs.get(*at).map_or(0, |doc| doc.fields.len())
        });
        all.truncate(4);
        all.into_iter()
            .map(|doc| Ranked {
                score: 0.0,
                doc,
                filled: Filled::nothing(),
                row: None,
            })
            .collect()
    }

    /// Table rows by this very key: sheet and row.
    fn rows_named(&self, key: &str) -> Vec<(usize, usize)> {
        let keys = &self.known.keys;
        let from = keys.partition_point(|(one, ..)| one.as_str() < key);
        keys.iter()
            .skip(from)
            .take_while(|(one, ..)| one == key)
            .map(|(_, sheet, row)| (usize::from(*sheet), usize::from(*row)))
            .collect()
    }

    /// Table rows whose key begins with the text.
    fn rows(&self, text: &str, shop: &Shop) -> Vec<Hit> {
        let key = key_of(text);
        let keys = &self.known.keys;
        let from = keys.partition_point(|(one, ..)| *one <= key);
        let mut seen: Vec<(u16, u16)> = Vec::new();
        let exact = self.rows_named(&key);
        for (one, sheet, row) in keys.iter().skip(from) {
            if !one.starts_with(&key) || seen.len() >= MOST_ROWS {
                break;
            }
            let known = exact.contains(&(usize::from(*sheet), usize::from(*row)));
            if *one != key && !known && !seen.contains(&(*sheet, *row)) {
                seen.push((*sheet, *row));
            }
        }
        let hit = |(sheet, row): (u16, u16)| {
            let doc = self.known.docs.get(usize::from(sheet))?;
            let find = doc.finds.get(usize::from(row))?;
            let mut entry = Entry::default().in_system(shop.system);
            for (id, text) in &find.entry {
                entry.set(id, text);
            }
            Some(Hit {
                title: find.title.clone(),
                aside: find.aside.clone(),
                sheet: doc.sheet.id,
                link: opened(doc.sheet, &entry, shop).1,
                entry,
                answer: None,
            })
        };
        seen.into_iter().filter_map(hit).collect()
    }

    fn hit(&self, one: &Ranked, asked: &Question, shop: &Shop) -> Option<Hit> {
        let doc = self.known.docs.get(one.doc)?;
        let row = one.row.and_then(|row| doc.finds.get(row));
        let mut entry = fill::entry_of(doc, &one.filled, asked.system);
        if let Some(row) = row {
            for (id, text) in &row.entry {
                entry.set(id, text);
            }
        }
        let (outcome, link) = opened(doc.sheet, &entry, shop);
        // a figure of presets alone answers nothing that was asked
        let answer = if one.filled.taken == 0 && row.is_none() {
            None
        } else {
            tell::answer(&self.known, doc, asked, &one.filled, &outcome.answer)
        };
        let understood = tell::understood(doc, &entry, &outcome, answer.is_some());
        let aside = match row.filter(|_| answer.is_none()) {
            Some(row) => row.aside.clone(),
            None if understood.is_empty() => doc.sheet.aside.to_owned(),
            None => understood,
        };
        let title = row.map_or_else(|| doc.sheet.title.to_owned(), |row| row.title.clone());
        Some(Hit {
            title,
            aside,
            sheet: doc.sheet.id,
            entry,
            link,
            answer,
        })
    }
}

/// An entry worked out in a shop, and its link.
fn opened(sheet: &'static Sheet, entry: &Entry, shop: &Shop) -> (crate::sheet::Outcome, String) {
    let mut whole = entry.clone();
    if sheet
        .fields
        .iter()
        .any(|field| field.preset.item().is_some())
        && *shop != Shop::default()
    {
        let start = shop.start(sheet);
        for field in sheet.fields {
            if let (Some(_), None, Some(text)) = (
                field.preset.item(),
                entry.get(field.id),
                start.get(field.id),
            ) {
                whole.set(field.id, text);
            }
        }
    }
    let outcome = evaluate_quietly(sheet, &whole);
    let link = link::of(sheet, &whole, &outcome, &Asked::default());
    let link = link.unwrap_or_else(|| format!("#/v1/{}", sheet.id));
    (outcome, link)
}
