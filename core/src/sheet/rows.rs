//! How is a list read? Rows by `;` or a new line, cells by `~` or a tab; a list of one column also as on a plate, with
//! commas or spaces between its values.

use super::read::{MOST_CHARS, MOST_LIST_CHARS, Read, read_as};
use super::split::{Parted, part};
use super::{Fault, Field, Input, Reason, Way};
use crate::quantity::{System, Unit, about_digits, join};

/// A list that is being read.
struct List<'a> {
    field: &'static Field,
    columns: &'static [Field],
    system: System,
    /// The rows as texts.
    lines: Vec<&'a str>,
    link_text: String,
    rows: Vec<Vec<Option<Input>>>,
}

pub(super) fn read_rows(
    field: &'static Field,
    columns: &'static [Field],
    (least, most): (usize, usize),
    text: &str,
    system: System,
) -> Result<Read, Fault> {
    let parted = match columns {
        [only] => one_column(field, only, text, system)?,
        _ => None,
    };
    let lines: Vec<&str> = match &parted {
        Some(parted) => parted.iter().map(String::as_str).collect(),
        None => lines(text).collect(),
    };
    if lines.len() > most {
        let says = format!("more than {most} rows");
        let cure = format!("give {most} rows or fewer");
        return Err(Fault::of(field.id, Reason::OutOfRange, says, cure));
    }
    let mut list = List {
        field,
        columns,
        system,
        lines,
        link_text: String::with_capacity(text.len()),
        rows: Vec::new(),
    };
    for row in 0..list.lines.len() {
        list.read_row(row)?;
    }
    if list.rows.len() < least {
        let says = format!(
            "at least {least} rows are needed, {} given",
            list.rows.len()
        );
        return Err(Fault::of(field.id, Reason::Unfinished, says, ""));
    }
    if list.link_text.len() > MOST_LIST_CHARS {
        let says = format!("this list is longer than {MOST_LIST_CHARS} characters");
        return Err(Fault::of(
            field.id,
            Reason::Unreadable,
            says,
            "give fewer rows",
        ));
    }
    let reading = told(&list.rows, columns.len());
    Ok(Read {
        input: Input::Rows(list.rows),
        reading,
        link_text: list.link_text,
    })
}

fn lines(text: &str) -> impl Iterator<Item = &str> {
    let lines = text.split([';', '\n']).map(str::trim);
    lines.filter(|line| !line.is_empty())
}

fn cells(line: &str) -> impl Iterator<Item = &str> {
    let mark = if line.contains('~') { '~' } else { '\t' };
    line.split(mark).map(str::trim)
}

/// The values of a list of one column where commas or spaces part them; none where each line is one value.
fn one_column(
    field: &'static Field,
    column: &'static Field,
    text: &str,
    system: System,
) -> Result<Option<Vec<String>>, Fault> {
    if !text.contains([',', ' ', '\t']) {
        return Ok(None);
    }
    let reads = |cell: &str| read_as(column, cell, system, false).err().map(|f| f.reason);
    let each: Vec<&str> = lines(text).collect();
    let mut values = Vec::new();
    for (at, line) in each.iter().enumerate() {
        match part(line, each.len() == 1, &reads) {
            Parted::One => values.push((*line).to_owned()),
            Parted::Many(parts) => values.extend(parts),
            Parted::Asked(ways) => {
                let says = "this list reads in more than one way";
                let mut fault = Fault::of(field.id, Reason::Ambiguous, says, "choose one");
                fault.ways = ways
                    .into_iter()
                    .map(|(parts, label)| Way {
                        text: with_line(&each, at, &parts.join("; ")),
                        label: label.into(),
                    })
                    .collect();
                return Err(fault);
            }
        }
    }
    Ok(Some(values))
}

/// All lines, with another text in place of one of them.
fn with_line(lines: &[&str], at: usize, text: &str) -> String {
    let each: Vec<&str> = lines
        .iter()
        .enumerate()
        .map(|(line, old)| if line == at { text } else { *old })
        .collect();
    each.join("; ")
}

impl List<'_> {
    fn read_row(&mut self, row: usize) -> Result<(), Fault> {
        let line = self.lines.get(row).copied().unwrap_or_default();
        let mut texts: Vec<&str> = if self.columns.len() > 1 {
            cells(line).collect()
        } else {
            line.split('~').map(str::trim).collect()
        };
        while texts.len() > self.columns.len() && texts.last().is_some_and(|cell| cell.is_empty()) {
            texts.pop();
        }
        if texts.len() > self.columns.len() {
            let (row, most) = (row.saturating_add(1), self.columns.len());
            let (says, cure) = match most {
                1 => (
                    format!("row {row} has more than one value"),
                    "give each value its own row",
                ),
                _ => (
                    format!("row {row} has more than {most} values"),
                    "give each value its own cell",
                ),
            };
            return Err(Fault::of(self.field.id, Reason::Unreadable, says, cure));
        }
        let mut inputs = Vec::with_capacity(self.columns.len());
        if row > 0 {
            self.link_text.push(';');
        }
        // ends of a row that stay empty in a link are not written
        let mut gaps = 0;
        for (at, column) in self.columns.iter().enumerate() {
            let typed = texts.get(at).copied().filter(|cell| !cell.is_empty());
            let cell = typed.or_else(|| column.preset.text());
            gaps = usize::from(at > 0).saturating_add(gaps);
            let place = Some((row.saturating_add(1), at.saturating_add(1)));
            let Some(cell) = cell else {
                if column.is_optional {
                    inputs.push(None);
                    continue;
                }
                let says = format!("{} is still needed", super::lowered(column.label));
                let mut fault = Fault::of(self.field.id, Reason::Unfinished, says, "");
                fault.at = place;
                return Err(fault);
            };
            let read = read_as(column, cell, self.system, false).map_err(|mut fault| {
                fault.at = place;
                self.cured(fault, cell, (row, at), &texts)
            })?;
            inputs.push(Some(read.input));
            // a cell that the preset filled stays empty in a link
            if typed.is_some() && !read.link_text.is_empty() {
                self.link_text.extend(core::iter::repeat_n('~', gaps));
                self.link_text.push_str(&read.link_text);
                gaps = 0;
            }
        }
        self.rows.push(inputs);
        Ok(())
    }

    /// A cell's fault with what cures it: the ways to choose from hold the whole list as it was typed.
    fn cured(
        &self,
        mut fault: Fault,
        cell: &str,
        (row, column): (usize, usize),
        texts: &[&str],
    ) -> Fault {
        if self.columns.len() == 1 && fault.reason == Reason::Unreadable && fault.ways.is_empty() {
            several(&mut fault, cell);
        }
        for way in &mut fault.ways {
            let each: Vec<&str> = texts
                .iter()
                .enumerate()
                .map(|(at, old)| {
                    if at == column {
                        way.text.as_str()
                    } else {
                        *old
                    }
                })
                .collect();
            way.text = with_line(&self.lines, row, &each.join("~"));
        }
        if fault.cure.is_empty() {
            fault.cure = example_cell(self.field, column);
        }
        fault.typed = fault.typed.chars().take(MOST_CHARS).collect();
        fault
    }
}

/// The count of rows; of one column also its values.
fn told(rows: &[Vec<Option<Input>>], columns: usize) -> String {
    let count = rows.len();
    let mut reading = format!("{count} {}", if count == 1 { "row" } else { "rows" });
    if let Some((one, other)) = mixed(rows, columns) {
        reading.push_str(&format!(
            "; units are mixed: {} and {}",
            one.symbol, other.symbol
        ));
    } else if columns == 1 {
        reading.push_str(&values(rows));
    }
    reading
}

/// The values of a list of one column, with their unit behind the last; empty where they are no quantities of one unit.
fn values(rows: &[Vec<Option<Input>>]) -> String {
    let mut text = String::new();
    let mut of: Option<&'static Unit> = None;
    for row in rows {
        let Some(Some(Input::Quantity { nominal, unit, .. })) = row.first() else {
            return String::new();
        };
        if of.is_some_and(|of| of != *unit) {
            return String::new();
        }
        text.push_str(if of.is_none() { ": " } else { ", " });
        text.push_str(&about_digits(*nominal, unit));
        of = Some(unit);
    }
    of.map_or_else(String::new, |unit| join(&text, unit))
}

/// Two units that stand in one column, where there are two: a bare number under a metric one is easily overlooked.
fn mixed(rows: &[Vec<Option<Input>>], columns: usize) -> Option<(&'static Unit, &'static Unit)> {
    (0..columns).find_map(|column| {
        let mut units = rows.iter().filter_map(|row| match row.get(column) {
            Some(Some(Input::Quantity { unit, .. })) => Some(*unit),
            _ => None,
        });
        let first = units.next()?;
        units
            .find(|unit| unit.system != first.system)
            .map(|other| (first, other))
    })
}

/// The example's cell of a column that has none of its own.
fn example_cell(field: &'static Field, column: usize) -> String {
    let cell = field
        .example
        .split(';')
        .filter_map(|row| row.split('~').nth(column))
        .find(|cell| !cell.is_empty());
    cell.map_or_else(String::new, |cell| format!("for example {cell}"))
}

/// Several values in the cell of one row that could not be parted: says so.
fn several(fault: &mut Fault, cell: &str) {
    let parts = cell.split([',', ' ', '\t', '/', '|']).map(str::trim);
    let parts: Vec<&str> = parts.filter(|part| !part.is_empty()).collect();
    let figures = |part: &&str| part.chars().all(|c| c.is_ascii_digit() || c == '.');
    if parts.len() > 2 && parts.iter().all(figures) {
        fault.says = "several values in one row".into();
        fault.cure = "give each value its own row".into();
        fault.ways = vec![Way {
            text: parts.join("; "),
            label: "each a row of its own".into(),
        }];
    }
}
