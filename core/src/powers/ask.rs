//! How do the texts of a link ask for a power? `turn=<field>` with `want=<result>~<text>`, and `sweep=<field>~<result>`.

use super::{Swept, Turned, sweep, turn};
use crate::link::Asked;
use crate::quantity::{System, read, units_of, usual};
use crate::sheet::{Fault, Inputs, Reason, Sheet, pin};

fn unknown(what: &str, id: &str) -> Fault {
    Fault::of(
        "",
        Reason::Unreadable,
        format!("there is no {what} \u{201c}{id}\u{201d} here"),
        "choose another",
    )
}

/// What is asked, with the unit of a wanted figure written in that was typed without one: it keeps its meaning when results
/// are shown in another system than the one given.
pub fn pinned(sheet: &'static Sheet, asked: &Asked, system: System) -> Asked {
    let with_unit = |want: &str| {
        let (result, text) = want.split_once('~')?;
        let kind = sheet.result(result)?.kind?;
        let other = match system {
            System::Inch => System::Metric,
            System::Metric => System::Inch,
        };
        let text = pin(text, kind, &[usual(kind, system)], &[usual(kind, other)])?;
        Some(format!("{result}~{text}"))
    };
    let want = asked
        .want
        .as_deref()
        .map(|want| with_unit(want).unwrap_or_else(|| want.to_owned()));
    Asked {
        want,
        ..asked.clone()
    }
}

/// The search that a link asks for, worked out; none where it asks nothing.
///
/// # Errors
/// A fault where field, result or wanted text can't be taken.
pub fn turned(inputs: &Inputs, asked: &Asked) -> Option<Result<Turned, Fault>> {
    let (field, want) = (asked.turn.as_deref()?, asked.want.as_deref()?);
    Some(turn_texts(inputs, field, want))
}

fn turn_texts(inputs: &Inputs, field: &str, want: &str) -> Result<Turned, Fault> {
    let (result, text) = want.split_once('~').unwrap_or((want, ""));
    let declared = inputs
        .sheet()
        .result(result)
        .ok_or_else(|| unknown("result", result))?;
    let kind = declared
        .kind
        .ok_or_else(|| unknown("numeric result", result))?;
    let mut offered = vec![usual(kind, inputs.system())];
    offered.extend(units_of(kind));
    let wanted = read(text, kind, &offered).map_err(|fault| {
        Fault::of(
            "",
            Reason::Unreadable,
            format!(
                "wanted {}: {}",
                crate::sheet::lowered(declared.label),
                fault.text()
            ),
            "",
        )
    })?;
    turn(inputs, field, result, wanted.nominal)
        .ok_or_else(|| unknown("field that can be freed", field))
}

/// What a link asks to be swept, worked out; none where it asks nothing.
///
/// # Errors
/// A fault where field or result can't be taken.
pub fn swept(inputs: &Inputs, asked: &Asked) -> Option<Result<Swept, Fault>> {
    let (field, result) = asked.sweep.as_deref()?.split_once('~')?;
    Some(sweep(inputs, field, result).ok_or_else(|| unknown("pair of field and result", field)))
}
