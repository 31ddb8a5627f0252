//! What does a person read of a text that was not understood? The readers' faults in the words of a field, with the ways to
//! choose from.

use super::{Fault, Field, FieldKind, Reason, Way};
use crate::call::CallFault;
use crate::quantity::{Kind, ReadFault, Unit, units_of};

pub(super) fn call_fault(field: &'static str, name: &str, text: &str, fault: CallFault) -> Fault {
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
        CallFault::Near { says, cure, ways } => {
            let mut fault = Fault::of(field, Reason::NotDefined, says, cure);
            fault.ways = ways
                .into_iter()
                .map(|(text, label)| Way { text, label })
                .collect();
            fault
        }
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

pub(super) fn read_fault(field: &'static Field, text: &str, fault: ReadFault) -> Fault {
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
        ReadFault::WrongKind { unit, kind } => {
            let units: &[&'static Unit] = match &field.kind {
                FieldKind::Quantity { units, .. } if !units.is_empty() => units,
                _ => units_of(kind),
            };
            let says = ReadFault::wrong_kind(&unit, kind);
            Fault::of(
                field.id,
                Reason::Unreadable,
                says,
                ReadFault::use_units(units),
            )
        }
        ReadFault::Meant { why, choice } => {
            let cure = format!("write {}", choice.text);
            let mut fault = Fault::of(field.id, Reason::Unreadable, why, cure);
            fault.ways = vec![Way {
                text: choice.text,
                label: choice.label,
            }];
            fault
        }
        other if field.kind_is(Kind::Length) => named_size(field, text, &other),
        other => Fault::of(field.id, Reason::Unreadable, other.text(), ""),
    }
}

/// The name of a drill or a screw where a length is asked: says what it measures.
fn named_size(field: &'static Field, text: &str, other: &ReadFault) -> Fault {
    let named = crate::calls::named::named(text);
    if named.is_empty() {
        return Fault::of(field.id, Reason::Unreadable, other.text(), "");
    }
    let what = if named.len() > 1 {
        "a drill and of a screw"
    } else {
        "a drill"
    };
    let says = format!(
        "\u{201c}{}\u{201d} is the name of {what}, not a length",
        clean(text)
    );
    let mut fault = Fault::of(field.id, Reason::Unreadable, says, "give its size");
    fault.ways = named
        .into_iter()
        .map(|(text, label)| Way { text, label })
        .collect();
    fault
}

/// Typed text made safe to show back: control and direction characters taken out, and short.
pub(super) fn clean(text: &str) -> String {
    let hidden = |c: &char| {
        c.is_control()
            || matches!(*c, '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{2069}' | '\u{feff}')
    };
    text.chars().filter(|c| !hidden(c)).take(24).collect()
}
