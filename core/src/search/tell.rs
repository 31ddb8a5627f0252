//! What does a hit show? The figure where its question is complete, and what was understood.

use super::fill::{Filled, bits};
use super::index::{Doc, Known};
use super::question::Question;
use crate::quantity::{Kind, System, Unit, about};
use crate::sheet::{Answer, Entry, FieldKind, Line, Outcome, lowered};

/// The most figures, and the most characters of them.
const MOST_FIGURES: usize = 3;
const MOST_CHARS: usize = 72;

/// The figure: what the text names first, then the first results. None where the answer is not complete.
pub(super) fn answer(
    known: &Known,
    doc: &Doc,
    asked: &Question,
    filled: &Filled,
    answer: &Answer,
) -> Option<String> {
    if !answer.is_complete() {
        return None;
    }
    let mut told: Vec<String> = Vec::new();
    let mut lines: Vec<&Line> = Vec::new();
    if let Some(unit) = wanted_unit(asked, filled)
        && let Some((line, base)) = answer.lines.iter().find_map(|line| of_kind(line, unit))
    {
        told.push(about(base, unit));
        lines.push(line);
    }
    if let Some(line) = named(known, doc, asked, filled, answer)
        && !lines.iter().any(|one| one.id == line.id)
    {
        told.push(figure(
            line,
            asked.system,
            answer
                .lines
                .first()
                .is_some_and(|first| first.id != line.id),
        ));
        lines.push(line);
    }
    for line in &answer.lines {
        if told.len() >= MOST_FIGURES {
            break;
        }
        let text = line.value.text_with_unit(asked.system);
        if lines.iter().any(|one| one.id == line.id) || told.contains(&text) || text.is_empty() {
            continue;
        }
        let kind = |line: &Line| line.value.unit(asked.system).map(|unit| unit.kind);
        let alike = kind(line).is_some() && lines.iter().any(|one| kind(one) == kind(line));
        let text = figure(line, asked.system, alike || line.value.is_signed());
        let long = told
            .iter()
            .map(String::len)
            .sum::<usize>()
            .saturating_add(text.len())
            > MOST_CHARS;
        if long && !told.is_empty() {
            break;
        }
        told.push(text);
        lines.push(line);
    }
    (!told.is_empty()).then(|| told.join(" \u{b7} "))
}

/// A figure, by its name where another of its kind stands beside it.
fn figure(line: &Line, system: System, by_name: bool) -> String {
    let text = line.value.text_with_unit(system);
    if by_name {
        format!("{} {text}", lowered(&line.label))
    } else {
        text
    }
}

fn of_kind<'a>(line: &'a Line, unit: &'static Unit) -> Option<(&'a Line, f64)> {
    let kind = line.value.unit(System::Inch)?.kind;
    (kind == unit.kind).then_some(line).zip(line.value.base())
}

/// The unit that an answer is wanted in: "40 thou in mm".
fn wanted_unit(asked: &Question, filled: &Filled) -> Option<&'static Unit> {
    let free = |at: usize| (filled.taken | filled.chosen) & bits(at, at.saturating_add(1)) == 0;
    let mut units = asked
        .tokens
        .iter()
        .enumerate()
        .rev()
        .filter(|(at, _)| free(*at));
    units.find_map(|(_, token)| {
        token
            .unit
            .filter(|unit| !token.filler && unit.kind != Kind::Time)
    })
}

/// The result that the text names by a word that is not the sheet's own name.
fn named<'a>(
    known: &Known,
    doc: &Doc,
    asked: &Question,
    filled: &Filled,
    answer: &'a Answer,
) -> Option<&'a Line> {
    let mut best: Option<(f32, &Line)> = None;
    for (res, words) in doc.sheet.results.iter().zip(&doc.results) {
        let Some(line) = answer.get(res.id) else {
            continue;
        };
        let (mut said, mut own, mut all) = (0.0, 0.0, 0.1);
        for id in words {
            let weight = known.weight(*id);
            all += weight;
            let at = asked
                .tokens
                .iter()
                .position(|token| token.ids.iter().any(|(one, q)| one == id && *q > 0.7));
            if let Some(at) = at
                && filled.chosen & bits(at, at.saturating_add(1)) == 0
            {
                said += weight;
                own += if doc.title.contains(id) { 0.0 } else { weight };
            }
        }
        let value = said + said / all;
        if own > 0.0 && said / all > 0.45 && best.is_none_or(|(old, _)| value > old) {
            best = Some((value, line));
        }
    }
    best.map(|(_, line)| line)
}

/// What was understood of a text, in the words of the fields: "slab mill, 3 in, gray cast iron".
pub(super) fn understood(doc: &Doc, entry: &Entry, outcome: &Outcome) -> String {
    let mut told: Vec<String> = Vec::new();
    for (field, now) in doc.sheet.fields.iter().zip(&outcome.fields) {
        let Some(text) = entry.get(field.id).filter(|_| now.applies) else {
            continue;
        };
        told.push(match &field.kind {
            FieldKind::Choice(choices) => {
                let chosen = choices.iter().find(|choice| choice.id == text);
                let label = chosen.map_or(text, |choice| choice.label);
                label
                    .split([':', '('])
                    .next()
                    .unwrap_or(label)
                    .trim()
                    .to_owned()
            }
            FieldKind::Call(_) => text.to_owned(),
            _ if now.link_text.is_empty() => text.to_owned(),
            _ => format!("{} {}", lowered(field.label), now.link_text),
        });
    }
    told.join(", ")
}
