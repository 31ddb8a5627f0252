//! How much of a text does a sheet explain? The more of it stands in its title, question, words and fields, the rarer those
//! words are, and the more of its sizes and calls the sheet can take, the farther in front it stands.

use super::fill::{Filled, bits};
use super::index::{Doc, Known};
use super::question::Question;
use super::terms::Id;

/// A word that fills a choice counts as much as one of the question.
const CHOSEN: f32 = 0.7;

/// How much of the text this sheet explains.
pub(super) fn score(known: &Known, doc: &Doc, asked: &Question, filled: &Filled) -> f32 {
    let mut score = filled.score;
    for (at, token) in asked.tokens.iter().enumerate() {
        let bit = bits(at, at.saturating_add(1));
        if filled.taken & bit != 0 {
            continue;
        }
        let chosen = filled.chosen & bit != 0;
        let (mut best, mut all) = (0.0_f32, 0.0_f32);
        for (id, quality) in &token.ids {
            let place = match doc.posts.binary_search_by_key(id, |post| post.0) {
                Ok(post) => doc.posts.get(post).map_or(0.0, |post| post.1),
                Err(_) => continue,
            };
            let place = if chosen { place.max(CHOSEN) } else { place };
            let value = place * known.weight(*id) * quality;
            best = best.max(value);
            all += value;
        }
        score += best + 0.15 * (all - best).min(best);
    }
    score += phrases(known, doc, asked);
    score += 0.8 * title(known, doc, &asked.line);
    if filled.taken != 0 {
        score += 0.5 / doc.sheet.fields.len().max(1) as f32;
    }
    score
}

/// Every word of the text says something to this sheet or fills something: only then is its figure the answer.
pub(super) fn explains_all(doc: &Doc, asked: &Question, filled: &Filled) -> bool {
    asked.tokens.iter().enumerate().all(|(at, token)| {
        let wanted = asked.wanted.is_some_and(|(unit, _)| unit == at);
        token.filler || token.joined || wanted || filled.uses(at) || explains(doc, asked, at)
    })
}

/// The word stands in the sheet.
pub(super) fn explains(doc: &Doc, asked: &Question, word: usize) -> bool {
    let said = |id: &Id| doc.posts.binary_search_by_key(id, |post| post.0).is_ok();
    let token = asked.tokens.get(word);
    token.is_some_and(|token| token.known && token.ids.iter().any(|(id, _)| said(id)))
}

fn weigh(known: &Known, ids: &[Id]) -> f32 {
    ids.iter().map(|id| known.weight(*id)).sum()
}

/// The share of the title that was said.
fn title(known: &Known, doc: &Doc, line: &[Id]) -> f32 {
    let all = weigh(known, &doc.title).max(0.1);
    let said: f32 = doc
        .title
        .iter()
        .filter(|id| line.contains(id))
        .map(|id| known.weight(*id))
        .sum();
    said / all
}

/// The best of the phrases that stand in the text, that are the text, or that the text begins.
fn phrases(known: &Known, doc: &Doc, asked: &Question) -> f32 {
    let line = asked.line.as_slice();
    let mut best = 0.0_f32;
    for (count, short) in &doc.phrases {
        let value = if short == line || *short == asked.words {
            // of two that say the same, the one with the same small words
            let whole = *count == asked.tokens.len() && short == line;
            weigh(known, short) * if whole { 1.1 } else { 0.7 }
        } else if short.len() > 1 && line.windows(short.len()).any(|part| part == short) {
            0.6 * weigh(known, short)
        } else if line.len() > 1 && short.windows(line.len()).any(|part| part == line) {
            0.35 * weigh(known, line)
        } else {
            0.0
        };
        best = best.max(value);
    }
    best
}
