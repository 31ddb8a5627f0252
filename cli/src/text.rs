//! How does an answer stand in a terminal?

use crate::run::Ran;
use benchslate_core::onward::onward;
use benchslate_core::powers::{
    field_text, range_text, tell_found, tell_line, tell_none, tell_notes,
};
use benchslate_core::quantity::System;
use benchslate_core::record::Shop;
use benchslate_core::sheet::{FieldKind, Line, State, Table, wanting};
use std::fmt::Write;

pub fn answer(ran: &Ran, shop: &Shop) -> String {
    let mut out = String::new();
    write(ran, shop, &mut out).unwrap_or_default();
    out
}

fn write(ran: &Ran, shop: &Shop, out: &mut String) -> std::fmt::Result {
    let answer = &ran.outcome.answer;
    let system = ran.outcome.inputs.system();
    writeln!(out, "{}", ran.sheet.title)?;
    for note in &ran.notes {
        writeln!(out, "  note: {note}")?;
    }
    for (field, now) in ran.sheet.fields.iter().zip(&ran.outcome.fields) {
        if now.applies && !now.text.is_empty() && now.fault.is_none() {
            let preset = if now.from_preset { "  (preset)" } else { "" };
            let reading = match &field.kind {
                // the word to type, then what it stands for
                FieldKind::Choice(choices) => choices
                    .iter()
                    .find(|choice| choice.id == now.text && choice.label != choice.id)
                    .map_or_else(String::new, |choice| format!("   {}", choice.label)),
                _ if now.reading.is_empty() => String::new(),
                _ => format!("   read as {}", now.reading),
            };
            writeln!(
                out,
                "  {}: {}{reading}{preset}",
                field.label,
                now.text.replace(';', "; ")
            )?;
        }
    }
    for line in &answer.lines {
        write_line(ran, line, system, out)?;
    }
    for table in &answer.tables {
        write_table(table, system, out)?;
    }
    for caution in &answer.cautions {
        let head = if caution.stop { "STOP: " } else { "" };
        writeln!(out, "\n{head}{}: {}", caution.before, caution.text)?;
    }
    if !answer.steps.is_empty() {
        writeln!(out, "\nHow it was figured")?;
    }
    for step in &answer.steps {
        writeln!(out, "  {}", step.title)?;
        for line in &step.lines {
            writeln!(out, "    {line}")?;
        }
    }
    if !answer.sources.is_empty() {
        writeln!(out, "\nSources")?;
    }
    for source in &answer.sources {
        writeln!(out, "  {}", source.text())?;
    }
    write_powers(ran, out)?;
    if let Some(link) = &ran.link {
        writeln!(out, "\n{link}")?;
    }
    write_onward(ran, shop, out)?;
    Ok(())
}

/// The next questions, with what goes along.
fn write_onward(ran: &Ran, shop: &Shop, out: &mut String) -> std::fmt::Result {
    if !ran.outcome.answer.is_complete() {
        return Ok(());
    }
    let next = onward(&ran.outcome, shop);
    if !next.is_empty() {
        writeln!(out, "\nGoes on to")?;
    }
    for next in next {
        let carried: Vec<&str> = next.carried.iter().map(|one| one.text.as_str()).collect();
        writeln!(
            out,
            "  {} ({})  {}",
            next.sheet.title,
            carried.join(", "),
            next.link
        )?;
    }
    Ok(())
}

fn write_line(ran: &Ran, line: &Line, system: System, out: &mut String) -> std::fmt::Result {
    let other = if system == System::Inch {
        System::Metric
    } else {
        System::Inch
    };
    write!(
        out,
        "\n{}: {}",
        line.label,
        line.value.text_with_unit(system)
    )?;
    if line.value.unit(system).map(|unit| unit.id) != line.value.unit(other).map(|unit| unit.id) {
        write!(out, "  \u{b7}  {}", line.value.text_with_unit(other))?;
    }
    writeln!(out)?;
    if let Some((low, high)) = line.band {
        let range = range_text(&line.value, low, high, system);
        writeln!(out, "  sources: {range}  {}", line.band_says)?;
    }
    let spread = ran
        .spread
        .as_ref()
        .and_then(|spread| spread.lines.iter().find(|one| one.id == line.id));
    let main = ran.outcome.answer.lines.first().map(|first| first.id) == Some(line.id);
    let told = spread.and_then(|spread| tell_line(&ran.outcome.inputs, line, spread, main));
    if let Some(told) = told {
        writeln!(out, "  {told}")?;
    }
    if !line.says.is_empty() {
        writeln!(out, "  {}", line.says)?;
    }
    Ok(())
}

fn write_table(table: &Table, system: System, out: &mut String) -> std::fmt::Result {
    writeln!(out, "\n{}", table.title)?;
    let mut rows: Vec<Vec<String>> = vec![table.columns.iter().map(ToString::to_string).collect()];
    rows.extend(table.rows.iter().map(|row| {
        row.cells
            .iter()
            .map(|cell| cell.text_with_unit(system))
            .collect()
    }));
    let columns = rows.iter().map(Vec::len).max().unwrap_or(0);
    let width = |column: usize| {
        rows.iter()
            .filter_map(|row| row.get(column))
            .map(|cell| cell.chars().count())
            .max()
            .unwrap_or(0)
    };
    let widths: Vec<usize> = (0..columns).map(width).collect();
    for (index, row) in rows.iter().enumerate() {
        let source = index.checked_sub(1).and_then(|index| table.rows.get(index));
        write!(
            out,
            "{}",
            if source.is_some_and(|row| row.chosen) {
                " >"
            } else {
                "  "
            }
        )?;
        for (cell, width) in row.iter().zip(&widths) {
            write!(out, "{cell:width$}   ")?;
        }
        writeln!(
            out,
            "{}",
            if source.is_some_and(|row| row.owned) {
                "in your set"
            } else {
                ""
            }
        )?;
    }
    if !table.note.is_empty() {
        writeln!(out, "  {}", table.note)?;
    }
    Ok(())
}

fn write_powers(ran: &Ran, out: &mut String) -> std::fmt::Result {
    let (inputs, answer) = (&ran.outcome.inputs, &ran.outcome.answer);
    if let Some(spread) = &ran.spread {
        for note in tell_notes(inputs, spread) {
            writeln!(out, "\n{}", note.says)?;
        }
    }
    let x_text = |id: &str, x: f64| {
        let field = ran.sheet.field(id);
        field.map_or_else(|| x.to_string(), |field| field_text(inputs, field, x))
    };
    let y_text = |id: &str, y: f64| {
        let line = answer.get(id);
        line.map_or_else(
            || y.to_string(),
            |line| line.value.with_base(y).text_with_unit(inputs.system()),
        )
    };
    match (&ran.turned, &ran.asked.turn, &ran.asked.want) {
        (Some(Err(fault)), ..) => writeln!(out, "\nSolve for another: {}", fault.text())?,
        (Some(Ok(found)), Some(field), Some(want)) => {
            let result = want.split('~').next().unwrap_or_default();
            let (Some(field), Some(line)) = (ran.sheet.field(field), answer.get(result)) else {
                return writeln!(
                    out,
                    "\nSolve for another: the entry as it stands gives no such result"
                );
            };
            writeln!(
                out,
                "\nSolve for another: {} by {}",
                line.label, field.label
            )?;
            if let Some(none) = tell_none(inputs, field, line, found) {
                writeln!(out, "  {none}")?;
            }
            for find in tell_found(inputs, field, line, found) {
                writeln!(out, "  {}  {}", find.entry, find.gives)?;
            }
        }
        _ => {}
    }
    if let (Some(Ok(swept)), Some((field, result))) = (
        &ran.swept,
        ran.asked.sweep.as_deref().and_then(|s| s.split_once('~')),
    ) {
        writeln!(out, "\n{result} against {field}")?;
        let none = || "no answer".to_owned();
        let y = |y: Option<f64>| y.map_or_else(none, |y| y_text(result, y));
        match swept.levels() {
            Some(levels) => {
                for level in levels {
                    let (from, to) = (x_text(field, level.from), x_text(field, level.to));
                    writeln!(out, "  {from} to {to}  {}", y(level.gives))?;
                }
            }
            None => {
                for (x, gives) in &swept.points {
                    writeln!(out, "  {}  {}", x_text(field, *x), y(*gives))?;
                }
            }
        }
    }
    Ok(())
}

/// What stands in the way, for standard error.
pub fn faults(ran: &Ran) -> String {
    let mut out = String::new();
    let label = |id: &str| {
        ran.sheet
            .field(id)
            .map_or(id, |field| field.label)
            .to_owned()
    };
    match &ran.outcome.answer.state {
        State::Incomplete(needed) => {
            let labels: Vec<String> = needed.iter().map(|id| label(id)).collect();
            out.push_str(&format!("still needed: {}\n", labels.join(", ")));
            if !ran.outcome.answer.lines.is_empty() {
                for result in wanting(ran.sheet, &ran.outcome) {
                    let needs: Vec<String> = result.needs.iter().map(|id| label(id)).collect();
                    out.push_str(&format!("    {}: add {}\n", result.label, needs.join(", ")));
                }
            }
        }
        State::Withheld(held) => {
            out.push_str(&format!(
                "no figure is given: {} (limit {}); {}\n",
                held.reason, held.limit, held.cure
            ));
        }
        State::Complete | State::Faulty => {}
    }
    for fault in ran.outcome.faults() {
        let text = fault.text_in(ran.sheet.field(fault.field));
        out.push_str(&format!("{}: {text}\n", label(fault.field)));
        for way in &fault.ways {
            out.push_str(&format!("    {}  {}\n", way.text, way.label));
        }
    }
    out
}
