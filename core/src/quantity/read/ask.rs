//! What is asked where an entry has more than one meaning?

use super::{Choice, ReadFault, glyphs::PLUS_MINUS, number::Number, unit::Typed};
use crate::quantity::{System, Unit, plain as printed, units};

/// Plain text as something to type.
pub fn words(b: &[u8]) -> String {
    let mut out = String::with_capacity(b.len() + 2);
    for byte in b {
        match *byte {
            PLUS_MINUS => out.push('±'),
            other => out.push(char::from(other)),
        }
    }
    out
}

/// `1,250`: a decimal comma or thousands?
pub fn thousands(b: &[u8], comma: usize, bare: bool, unit: &Unit) -> ReadFault {
    let choice = |mark: &str, label: &str| {
        let mut text = words(b.get(..comma).unwrap_or_default());
        text.push_str(mark);
        text.push_str(&words(b.get(comma + 1..).unwrap_or_default()));
        if bare && !unit.id.is_empty() {
            text.push(' ');
            text.push_str(unit.id);
        }
        Choice {
            text,
            label: label.into(),
        }
    };
    ReadFault::Ambiguous(vec![
        choice(".", "the comma is the decimal point"),
        choice("", "the comma parts the thousands"),
    ])
}

/// Whether a word means one thing in inch shops and another in metric ones.
pub fn metric_doubt(unit: &Unit, spelling: &str, usual: &Unit) -> bool {
    usual.system == Some(System::Metric)
        && (spelling == "tenth"
            || spelling == "tenths"
            || (*unit == units::THOU && spelling.starts_with("mil")))
}

/// Asks what a bare `tenth` or `mil` means where millimetres are the habit.
pub fn clear_in_metric(
    n: Number,
    typed: Typed,
    negative: bool,
    usual: &'static Unit,
) -> Result<(), ReadFault> {
    if !metric_doubt(typed.unit, typed.spelling, usual) {
        return Ok(());
    }
    let tenth = *typed.unit == units::TENTH;
    let size = if negative { -n.value() } else { n.value() };
    let choice = |mm: f64, unit: &Unit, label: &str| {
        let mut text = printed(mm, unit);
        text.push(' ');
        text.push_str(unit.id);
        Choice {
            text,
            label: label.into(),
        }
    };
    let inch = choice(
        typed.unit.to_base(size),
        &units::INCH,
        if tenth {
            "tenths of a thousandth of an inch"
        } else {
            "thousandths of an inch"
        },
    );
    let metric = choice(
        if tenth { size / 10.0 } else { size },
        &units::MM,
        if tenth {
            "tenths of a millimetre"
        } else {
            "millimetres"
        },
    );
    Err(ReadFault::Ambiguous(vec![inch, metric]))
}
