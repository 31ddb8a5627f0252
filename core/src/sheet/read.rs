//! How is a field's text read? By the field's kind; what goes wrong becomes a fault with the field, the text and a cure.

use super::misread::{call_fault, clean, read_fault};
use super::range::check_range;
use super::rows::read_rows;
use super::{Fault, Field, FieldKind, Input, Reason};
use crate::quantity::{
    Kind, Reading, Scale, System, Unit, about, about_digits, link_text, read, to_figures, with_unit,
};

/// The most characters that a field's text may have; lists may have more.
pub const MOST_CHARS: usize = 64;
/// The most characters of a call in a cell of a list, which may be a list of its own: a dozen gear pairs.
const MOST_CELL_CHARS: usize = 400;
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
pub(super) fn read_as(
    field: &'static Field,
    text: &str,
    system: System,
    told: bool,
) -> Result<Read, Fault> {
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
    let most = match field.kind {
        FieldKind::Rows { .. } => MOST_LIST_CHARS,
        FieldKind::Call(_) if !told => MOST_CELL_CHARS,
        _ => MOST_CHARS,
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
        } => read_rows(field, columns, (*least, *most), text, system),
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
        .map_err(|fault| read_fault(field, text, fault))?;
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
    if link_text.len() > MOST_CHARS {
        // it would not open again
        let says = format!("this is longer than {MOST_CHARS} characters");
        return Err(Fault::of(
            field.id,
            Reason::Unreadable,
            says,
            "leave out spaces and zeros that say nothing",
        ));
    }
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
    let mut reading = about(got.nominal, got.unit);
    if let Some(other) = other_unit(kind, got.unit) {
        reading.push_str(" \u{b7} ");
        // lengths convert exactly; the rest is rounded to four figures
        let text = match kind {
            Kind::Length if reading.starts_with("about") => {
                with_unit(got.nominal, other, other.places.saturating_add(1))
            }
            Kind::Length => about(got.nominal, other),
            _ => {
                let (base, places) =
                    to_figures(got.nominal, other, other.places.saturating_add(2), 4);
                with_unit(base, other, places)
            }
        };
        reading.push_str(&text);
    }
    if got.minus != 0.0 || got.plus != 0.0 {
        let (mut low, mut high) = (got.nominal - got.minus, got.nominal + got.plus);
        // threads per inch run against the pitch: the smaller number stands first
        if matches!(got.unit.scale, Scale::Inverse(_)) {
            (low, high) = (high, low);
        }
        reading = format!(
            "{reading}, {} to {}, measured",
            about_digits(low, got.unit),
            about_digits(high, got.unit)
        );
    }
    reading
}

/// The usual unit of the other system, for the reading.
fn other_unit(kind: Kind, unit: &'static Unit) -> Option<&'static Unit> {
    let other = match unit.system? {
        System::Inch => crate::quantity::usual(kind, System::Metric),
        System::Metric => crate::quantity::usual(kind, System::Inch),
    };
    (other.id != unit.id).then_some(other)
}
