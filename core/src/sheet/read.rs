//! How is a field's text read? By the field's kind; what goes wrong becomes a fault with the field, the text and a cure.

use super::{Fault, Field, FieldKind, Input, Reason, Way};
use crate::calls::CallFault;
use crate::quantity::{
    Kind, ReadFault, Reading, System, Unit, join, link_text, plain, read, with_unit,
};

/// The most characters that a field's text may have; lists may have more.
pub const MOST_CHARS: usize = 64;
/// The most characters of a list.
pub const MOST_LIST_CHARS: usize = 1500;

/// A field read: the input, what was understood, and the text in its plain form for a link.
pub(crate) struct Read {
    pub input: Input,
    pub reading: String,
    pub link_text: String,
}

pub(crate) fn read_field(field: &'static Field, text: &str, system: System) -> Result<Read, Fault> {
    read_as(field, text, system, true)
}

/// As [`read_field`]; a cell of a list, which is not told by itself, leaves the reading empty.
fn read_as(field: &'static Field, text: &str, system: System, told: bool) -> Result<Read, Fault> {
    let mut fault = match read_kind(field, text.trim(), system, told) {
        Ok(read) => return Ok(read),
        Err(fault) => fault,
    };
    fault.field = field.id;
    if fault.typed.is_empty() {
        fault.typed = text.chars().take(MOST_CHARS).collect();
    }
    if fault.cure.is_empty() && !field.example.is_empty() {
        fault.cure = format!("for example {}", field.example);
    }
    Err(fault)
}

fn read_kind(field: &'static Field, text: &str, system: System, told: bool) -> Result<Read, Fault> {
    let most = if matches!(field.kind, FieldKind::Rows { .. }) {
        MOST_LIST_CHARS
    } else {
        MOST_CHARS
    };
    if text.len() > most {
        let says = format!("this is longer than {most} characters");
        return Err(Fault::of(field.id, Reason::Unreadable, says, ""));
    }
    match &field.kind {
        FieldKind::Quantity { .. } => read_quantity(field, text, system, told),
        FieldKind::Choice(choices) => {
            let found = choices.iter().find(|choice| choice.id == text);
            let Some(choice) = found else {
                let all: Vec<&str> = choices.iter().map(|choice| choice.id).collect();
                let says = format!("\u{201c}{}\u{201d} is not one of the choices", clean(text));
                return Err(Fault::of(
                    field.id,
                    Reason::Unreadable,
                    says,
                    format!("choose {}", all.join(", ")),
                ));
            };
            Ok(Read {
                input: Input::Choice(choice),
                reading: String::new(),
                link_text: choice.id.to_owned(),
            })
        }
        FieldKind::Call(call) => match (call.read)(text) {
            Ok(said) => Ok(Read {
                link_text: said.call.clone(),
                input: Input::Call(said.call),
                reading: said.reading,
            }),
            Err(fault) => Err(call_fault(field.id, call.name, text, fault)),
        },
        FieldKind::Rows {
            columns,
            least,
            most,
        } => read_rows(field, columns, *least, *most, text, system),
    }
}

fn read_quantity(
    field: &'static Field,
    text: &str,
    system: System,
    told: bool,
) -> Result<Read, Fault> {
    let FieldKind::Quantity { kind, units } = &field.kind else {
        return Err(Fault::of(
            field.id,
            Reason::Unreadable,
            "this is not a number",
            "",
        ));
    };
    // the unit of a bare number comes first
    let own = field.unit(system);
    let mut offered: [&'static Unit; 8] = [own.unwrap_or(&crate::quantity::units::NUMBER); 8];
    let mut count = usize::from(own.is_some());
    for unit in units
        .iter()
        .filter(|unit| own.is_none_or(|own| own.id != unit.id))
    {
        if let Some(place) = offered.get_mut(count) {
            *place = unit;
            count = count.saturating_add(1);
        }
    }
    let got = read(text, *kind, offered.get(..count).unwrap_or(&[]))
        .map_err(|fault| read_fault(field, fault))?;
    check_range(field, got.nominal, got.unit)?;
    if got.minus != 0.0 || got.plus != 0.0 {
        if !field.is_measured {
            return Err(Fault::of(
                field.id,
                Reason::Unreadable,
                "\u{b1} belongs to a measured size, and this is not one",
                "leave the \u{b1} out",
            ));
        }
        check_range(field, got.nominal - got.minus, got.unit)?;
        check_range(field, got.nominal + got.plus, got.unit)?;
    }
    if *kind == Kind::Count && libm::floor(got.nominal) != got.nominal {
        return Err(Fault::of(
            field.id,
            Reason::Unreadable,
            "this counts whole things",
            "give a whole number",
        ));
    }
    let reading = if told {
        understood(*kind, &got)
    } else {
        String::new()
    };
    let link_text = link_text(text, &got);
    let input = Input::Quantity {
        kind: *kind,
        nominal: got.nominal,
        minus: got.minus,
        plus: got.plus,
        unit: got.unit,
    };
    Ok(Read {
        input,
        reading,
        link_text,
    })
}

/// What was understood, in both systems of units.
fn understood(kind: Kind, got: &Reading) -> String {
    let mut reading = plain_with_unit(got.nominal, got.unit);
    if let Some(other) = other_unit(kind, got.unit) {
        reading.push_str(" \u{b7} ");
        // lengths convert exactly; the rest is rounded to two decimals more than usual
        let text = match kind {
            Kind::Length => plain_with_unit(got.nominal, other),
            _ => with_unit(got.nominal, other, other.places.saturating_add(2)),
        };
        reading.push_str(&text);
    }
    if got.minus != 0.0 || got.plus != 0.0 {
        reading = format!(
            "{reading}, {} to {}, measured",
            plain(got.nominal - got.minus, got.unit),
            plain(got.nominal + got.plus, got.unit)
        );
    }
    reading
}

fn plain_with_unit(base: f64, unit: &'static Unit) -> String {
    join(&plain(base, unit), unit)
}

/// The usual unit of the other system, for the reading.
fn other_unit(kind: Kind, unit: &'static Unit) -> Option<&'static Unit> {
    let other = match unit.system? {
        System::Inch => crate::quantity::usual(kind, System::Metric),
        System::Metric => crate::quantity::usual(kind, System::Inch),
    };
    (other.id != unit.id).then_some(other)
}

fn check_range(field: &'static Field, base: f64, unit: &'static Unit) -> Result<(), Fault> {
    let Some(range) = field.range else {
        return Ok(());
    };
    // the ends belong to the range; a last-digit difference of a converted end is not held against the entry
    let slack = 1e-9 * (range.low.abs() + range.high.abs());
    if base >= range.low - slack && base <= range.high + slack {
        return Ok(());
    }
    // threads per inch and their like fall as the size grows
    let turned = unit.from_base(range.low) > unit.from_base(range.high);
    let (least, most) = if turned {
        (range.high, range.low)
    } else {
        (range.low, range.high)
    };
    let (low, high) = (end(least, unit, true), end(most, unit, false));
    let says = format!("outside {low} to {high}: {}", range.why);
    let cure = if (base < range.low) == turned {
        format!("give {high} or less")
    } else {
        format!("give {low} or more")
    };
    Err(Fault::of(field.id, Reason::OutOfRange, says, cure))
}

/// An end of a range, short, and rounded to its inside, so that what is shown is allowed when typed.
fn end(base: f64, unit: &'static Unit, low: bool) -> String {
    let value = unit.from_base(base);
    for places in 0..7_u8 {
        let scale = libm::pow(10.0, f64::from(places));
        let (scaled, little) = (value * scale, 1e-9 * (value * scale).abs());
        let whole = if low {
            libm::ceil(scaled - little)
        } else {
            libm::floor(scaled + little)
        };
        if (whole - scaled).abs() <= 0.02 * scaled.abs() {
            return with_unit(unit.to_base(whole / scale), unit, places);
        }
    }
    plain_with_unit(base, unit)
}

fn read_rows(
    field: &'static Field,
    columns: &'static [Field],
    least: usize,
    most: usize,
    text: &str,
    system: System,
) -> Result<Read, Fault> {
    let mut rows = Vec::new();
    let mut link_text = String::with_capacity(text.len());
    let lines = text.split([';', '\n']).map(str::trim);
    for (row_index, line) in lines.filter(|line| !line.is_empty()).enumerate() {
        let row_number = row_index.saturating_add(1);
        if row_number > most {
            let says = format!("more than {most} rows");
            return Err(Fault::of(
                field.id,
                Reason::OutOfRange,
                says,
                format!("give {most} rows or fewer"),
            ));
        }
        if line.split('~').count() > columns.len() {
            let says = format!("row {row_number} has more than {} cells", columns.len());
            return Err(Fault::of(
                field.id,
                Reason::Unreadable,
                says,
                "put ~ between cells and ; between rows",
            ));
        }
        let mut texts = line.split('~').map(str::trim);
        let mut cells = Vec::with_capacity(columns.len());
        if row_index > 0 {
            link_text.push(';');
        }
        // ends of a row that stay empty in a link are not written
        let mut gaps = 0;
        for (column_index, column) in columns.iter().enumerate() {
            let typed = texts.next().filter(|cell| !cell.is_empty());
            let cell = typed.or_else(|| column.preset.text());
            gaps = usize::from(column_index > 0).saturating_add(gaps);
            let Some(cell) = cell else {
                if column.is_optional {
                    cells.push(None);
                    continue;
                }
                let says = format!("{} is still needed", super::lowered(column.label));
                let mut fault = Fault::of(field.id, Reason::Unfinished, says, "");
                fault.at = Some((row_number, column_index.saturating_add(1)));
                return Err(fault);
            };
            let read = read_as(column, cell, system, false).map_err(|mut fault| {
                fault.at = Some((row_number, column_index.saturating_add(1)));
                if columns.len() == 1 && fault.reason == Reason::Unreadable {
                    several(&mut fault, cell);
                }
                if fault.cure.is_empty() {
                    fault.cure = example_cell(field, column_index);
                }
                fault
            })?;
            cells.push(Some(read.input));
            // a cell that the preset filled stays empty in a link
            if typed.is_some() && !read.link_text.is_empty() {
                link_text.extend(core::iter::repeat_n('~', gaps));
                link_text.push_str(&read.link_text);
                gaps = 0;
            }
        }
        rows.push(cells);
    }
    if rows.len() < least {
        let says = format!("at least {least} rows are needed, {} given", rows.len());
        return Err(Fault::of(field.id, Reason::Unfinished, says, ""));
    }
    let count = rows.len();
    let mut reading = format!("{count} {}", if count == 1 { "row" } else { "rows" });
    if let Some((one, other)) = mixed(&rows, columns.len()) {
        reading.push_str(&format!(
            "; units are mixed: {} and {}",
            one.symbol, other.symbol
        ));
    }
    Ok(Read {
        input: Input::Rows(rows),
        reading,
        link_text,
    })
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

/// A whole list in the cell of one row: says so, and gives it as rows to choose.
fn several(fault: &mut Fault, cell: &str) {
    let parts: Vec<&str> = cell
        .split([',', ' '])
        .filter(|part| !part.is_empty())
        .collect();
    let figures = |part: &&str| part.chars().all(|c| c.is_ascii_digit() || c == '.');
    if parts.len() > 2 && parts.iter().all(figures) {
        fault.says = "several values in one row".into();
        fault.cure = format!("put ; between them: {}", parts.join(";"));
    }
}

fn call_fault(field: &'static str, name: &str, text: &str, fault: CallFault) -> Fault {
    match fault {
        CallFault::Empty => Fault::of(field, Reason::Unfinished, "nothing typed yet", ""),
        CallFault::Unfinished => Fault::of(
            field,
            Reason::Unfinished,
            format!("type the rest of the {name}"),
            "",
        ),
        CallFault::Unknown { says, cure } => {
            let says = if says.is_empty() {
                format!(
                    "\u{201c}{}\u{201d} is not a {name} we can read",
                    clean(text)
                )
            } else {
                says
            };
            Fault::of(field, Reason::Unreadable, says, cure)
        }
        CallFault::NotDefined { says, cure } => Fault::of(field, Reason::NotDefined, says, cure),
        CallFault::NoSource { says, cure } => Fault::of(field, Reason::NoSource, says, cure),
        CallFault::Ambiguous(ways) => {
            let mut fault = Fault::of(
                field,
                Reason::Ambiguous,
                "this reads in more than one way",
                "choose one",
            );
            fault.ways = ways
                .into_iter()
                .map(|(text, label)| Way { text, label })
                .collect();
            fault
        }
    }
}

fn read_fault(field: &'static Field, fault: ReadFault) -> Fault {
    match fault {
        ReadFault::Ambiguous(choices) => {
            let mut fault = Fault::of(
                field.id,
                Reason::Ambiguous,
                "this reads in more than one way",
                "choose one",
            );
            fault.ways = choices
                .into_iter()
                .map(|choice| Way {
                    text: choice.text,
                    label: choice.label,
                })
                .collect();
            fault
        }
        ReadFault::Empty | ReadFault::Unfinished => {
            Fault::of(field.id, Reason::Unfinished, "type the rest", "")
        }
        other => Fault::of(field.id, Reason::Unreadable, other.text(), ""),
    }
}

/// Typed text made safe to show back: control and direction characters taken out, and short.
fn clean(text: &str) -> String {
    let hidden = |c: &char| {
        c.is_control()
            || matches!(*c, '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{2069}' | '\u{feff}')
    };
    text.chars().filter(|c| !hidden(c)).take(24).collect()
}
