//! What does a hit show? The figure where its question is complete, and what was understood.

use super::fill::{Filled, bits};
use super::index::{Doc, Known};
use super::question::Question;
use super::rank::{explains, explains_all};
use crate::quantity::{System, Unit, about};
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
    if !answer.is_complete() || !explains_all(doc, asked, filled) {
        return None;
    }
    let mut told: Vec<String> = Vec::new();
    let mut lines: Vec<&Line> = Vec::new();
    if let Some((at, unit)) = asked.wanted.filter(|(at, _)| !filled.uses(*at)) {
        if let Some((line, base)) = answer.lines.iter().find_map(|line| of_kind(line, unit)) {
            told.push(about(base, unit));
            lines.push(line);
        } else if !explains(doc, asked, at) {
            return None;
        }
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
            if let Some((at, quality)) = asked.said(*id)
                && filled.chosen & bits(at, at.saturating_add(1)) == 0
            {
                said += weight * quality;
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

/// The most choices that are told though nobody made them.
const MOST_TAKEN: usize = 3;

/// What was understood of a text, in the words of the fields: "slab mill, diameter 3 in"; with a figure also what was
/// taken without being said: "taken: mild steel, high-speed steel".
pub(super) fn understood(doc: &Doc, entry: &Entry, outcome: &Outcome, with_figure: bool) -> String {
    let (mut told, mut taken): (Vec<String>, Vec<String>) = (Vec::new(), Vec::new());
    for (field, now) in doc.sheet.fields.iter().zip(&outcome.fields) {
        let said = entry.get(field.id);
        if !now.applies || now.text.is_empty() {
            continue;
        }
        match &field.kind {
            FieldKind::Choice(choices) => {
                let chosen = choices.iter().find(|choice| choice.id == now.text);
                let label = short(chosen.map_or("", |choice| choice.label));
                let list = if said.is_some() {
                    &mut told
                } else {
                    &mut taken
                };
                if said.is_some() || !(field.is_seldom || field.preset.item().is_some()) {
                    list.push(label);
                }
            }
            _ if said.is_none() => {}
            FieldKind::Call(_) => told.push(now.text.clone()),
            _ if now.link_text.is_empty() => told.push(now.text.clone()),
            _ => told.push(format!("{} {}", lowered(field.label), now.link_text)),
        }
    }
    let mut text = told.join(", ");
    if with_figure && !taken.is_empty() {
        taken.truncate(MOST_TAKEN);
        text = format!("{text}; taken: {}", taken.join(", "));
    }
    text
}

/// A choice without what its label explains behind a colon or in brackets.
fn short(label: &str) -> String {
    let head = label.split(':').next().unwrap_or(label);
    let Some((before, rest)) = head.split_once(" (") else {
        return head.trim().to_owned();
    };
    let after = rest.split_once(')').map_or("", |(_, after)| after);
    format!("{before}{after}").trim().to_owned()
}
