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
        choice("", "the comma separates thousands"),
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
            "tenths of a millimeter"
        } else {
            "millimeters"
        },
    );
    Err(ReadFault::Ambiguous(vec![inch, metric]))
}

/// The entry with a unit written after its size, before the tolerance that starts at `tail`.
pub fn with_unit_at(b: &[u8], tail: usize, unit: &Unit) -> String {
    let mut text = words(b.get(..tail).unwrap_or_default());
    text.truncate(text.trim_end().len());
    text.push(' ');
    text.push_str(unit.id);
    if tail < b.len() {
        text.push(' ');
        text.push_str(&words(b.get(tail..).unwrap_or_default()));
    }
    text
}

/// Asks where a number without a unit is more likely meant in another one: a fraction where millimetres are the habit, a
/// pitch that is no count of threads (or a count that is no pitch), a part of one where percent are the habit.
pub fn clear_without_unit(
    b: &[u8],
    tail: usize,
    n: Number,
    usual: &'static Unit,
    has_tolerance: bool,
) -> Result<(), ReadFault> {
    let other = if *usual == units::MM && n.fraction {
        &units::INCH
    } else if *usual == units::TPI && !n.is_whole() && n.n < n.d.saturating_mul(6) {
        &units::PITCH_MM
    } else if *usual == units::PITCH_MM && n.is_whole() && n.n >= n.d.saturating_mul(8) {
        &units::TPI
    } else if *usual == units::PERCENT && n.n > 0 && n.n < n.d && !has_tolerance {
        let mut text = printed(n.value(), usual);
        text.push(' ');
        text.push_str(usual.id);
        return Err(ReadFault::Ambiguous(vec![
            Choice {
                text,
                label: "as a part of one".into(),
            },
            Choice {
                text: with_unit_at(b, tail, usual),
                label: "in percent, as it stands".into(),
            },
        ]));
    } else {
        return Ok(());
    };
    let choice = |unit: &Unit| Choice {
        text: with_unit_at(b, tail, unit),
        label: unit.spoken.into(),
    };
    Err(ReadFault::Ambiguous(vec![choice(other), choice(usual)]))
}
