//! What did one mean by a few characters? Look-up over titles, questions, search words and table rows, and over the
//! fields that can take the text itself.

use crate::quantity::System;
use crate::sheet::{Entry, Reason, Sheet, evaluate_field};
use crate::sheets;

/// The most hits that are given.
pub const MOST_HITS: usize = 12;

/// One hit: what opens with a tap.
#[derive(Clone, PartialEq, Debug)]
pub struct Hit {
    /// What it is.
    pub title: String,
    /// Beside it.
    pub aside: String,
    /// The sheet that opens.
    pub sheet: &'static str,
    /// Filled in with this.
    pub entry: Entry,
}

struct Item {
    keys: Vec<String>,
    title: String,
    aside: String,
    sheet: &'static Sheet,
    entry: Vec<(&'static str, String)>,
}

/// The index, made once.
pub struct Index {
    items: Vec<Item>,
}

impl Default for Index {
    fn default() -> Self {
        Self::new(sheets::ALL)
    }
}

impl Index {
    /// An index over these sheets.
    pub fn new(sheets: &[&'static Sheet]) -> Self {
        let mut items = Vec::new();
        for &sheet in sheets {
            let mut keys: Vec<String> = sheet.words.iter().map(|word| fold(word)).collect();
            keys.extend([fold(sheet.title), fold(sheet.question), fold(sheet.id)]);
            items.push(Item {
                keys,
                title: sheet.title.into(),
                aside: sheet.aside.into(),
                sheet,
                entry: Vec::new(),
            });
        }
        for &sheet in sheets {
            for find in sheet.finds.map(|finds| finds()).unwrap_or_default() {
                let keys = find.keys.iter().map(|key| fold(key)).collect();
                items.push(Item {
                    keys,
                    title: find.title,
                    aside: find.aside,
                    sheet,
                    entry: find.entry,
                });
            }
        }
        Self { items }
    }

    /// The best hits for a text, best first.
    pub fn find(&self, text: &str, system: System) -> Vec<Hit> {
        let wanted = fold(text);
        if wanted.is_empty() || text.len() > 64 {
            return Vec::new();
        }
        let mut ranked: Vec<(u32, usize)> = Vec::new();
        for (at, item) in self.items.iter().enumerate() {
            let best = item.keys.iter().filter_map(|key| rank(key, &wanted)).min();
            if let Some(best) = best {
                ranked.push((best, at));
            }
        }
        crate::order::sort(&mut ranked);
        let hit = |at: usize| {
            self.items.get(at).map(|item| Hit {
                title: item.title.clone(),
                aside: item.aside.clone(),
                sheet: item.sheet.id,
                entry: filled(system, &item.entry),
            })
        };
        // whole keys first, then the fields that take the text as it is, then the rest
        let whole = ranked.iter().take_while(|(rank, _)| *rank == 0).count();
        let (first, rest) = ranked.split_at(whole);
        let mut hits: Vec<Hit> = first.iter().filter_map(|&(_, at)| hit(at)).collect();
        hits.extend(self.takers(text, system));
        hits.extend(rest.iter().take(MOST_HITS).filter_map(|&(_, at)| hit(at)));
        let mut seen: Vec<(&str, Entry)> = Vec::new();
        hits.retain(|hit| {
            let key = (hit.sheet, hit.entry.clone());
            let new = !seen.contains(&key);
            if new {
                seen.push(key);
            }
            new
        });
        hits.truncate(MOST_HITS);
        hits
    }

    fn takers(&self, text: &str, system: System) -> Vec<Hit> {
        let mut hits = Vec::new();
        let sheets = self
            .items
            .iter()
            .filter(|item| item.entry.is_empty())
            .map(|item| item.sheet);
        for sheet in sheets {
            for id in sheet.takes {
                let Some(field) = sheet.field(id) else {
                    continue;
                };
                let read = evaluate_field(field, text, system);
                let reads = match &read {
                    Ok(_) => true,
                    Err(fault) => fault.reason == Reason::Ambiguous,
                };
                if reads {
                    let mut entry = Entry::default().in_system(system);
                    entry.set(id, text.trim());
                    hits.push(Hit {
                        title: sheet.title.into(),
                        aside: read.unwrap_or_default(),
                        sheet: sheet.id,
                        entry,
                    });
                    break;
                }
            }
        }
        hits
    }
}

fn filled(system: System, pairs: &[(&'static str, String)]) -> Entry {
    let mut entry = Entry::default().in_system(system);
    for (id, text) in pairs {
        entry.set(id, text);
    }
    entry
}

/// 0 the whole key, 1 its start, 2 the start of a word in it, 3 all of the wanted words somewhere in it.
fn rank(key: &str, wanted: &str) -> Option<u32> {
    if key == wanted {
        return Some(0);
    }
    if key.starts_with(wanted) {
        return Some(1);
    }
    let starts_word = |word: &str| key.split(' ').any(|part| part.starts_with(word));
    if starts_word(wanted) {
        return Some(2);
    }
    wanted.split(' ').all(starts_word).then_some(3)
}

/// Lower case, single spaces, a leading zero before a point taken off.
fn fold(text: &str) -> String {
    let mut folded = String::with_capacity(text.len());
    for word in text.split_whitespace() {
        if !folded.is_empty() {
            folded.push(' ');
        }
        let word = if word.starts_with("0.") {
            word.get(1..).unwrap_or(word)
        } else {
            word
        };
        folded.extend(word.chars().map(|c| match c {
            '\u{201d}' | '\u{2033}' => '"',
            c => c.to_ascii_lowercase(),
        }));
    }
    folded
}
