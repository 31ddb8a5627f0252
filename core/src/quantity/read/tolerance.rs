//! Which tolerance follows a size: `± .0005`, `+-.0005`, `+.0000/-.0002`, `±5%`?

use super::{
    ReadFault,
    glyphs::PLUS_MINUS,
    number::{Number, at, number, skip},
    unit::{Typed, no_unit, unit_at},
};
use crate::quantity::{Kind, Unit};

/// A tolerance as typed.
#[derive(Clone, Copy)]
pub struct Tolerance {
    /// Downwards.
    pub minus: Number,
    /// Upwards.
    pub plus: Number,
    /// Its unit, where one was typed.
    pub unit: Option<&'static Unit>,
    /// The unit as spelled.
    pub typed: Option<Typed>,
    /// Whether it is in percent of the size.
    pub percent: bool,
    /// Whether one side has a unit and the other, which is not zero, has none.
    pub half_told: bool,
}

/// Which cure there is where the sides differ in their units.
pub const SAME_UNIT: ReadFault = ReadFault::Unreadable {
    why: "the two sides of a tolerance need the same unit: write it at both, as +0.0005 in/-0.0002 in",
};

const HOW: ReadFault = ReadFault::Unreadable {
    why: "write a mixed number as 1-1/4, a tolerance as ±0.0005 or +0.0005/-0.0002; sums are not read",
};

/// The tolerance that starts at `start` and ends the text.
pub fn tolerance(b: &[u8], start: usize, kind: Kind) -> Result<Tolerance, ReadFault> {
    let rest = b.get(start..).unwrap_or_default();
    let two_sided = match rest {
        [PLUS_MINUS, ..] | [b'+', b'-', ..] => Some(if at(b, start) == PLUS_MINUS { 1 } else { 2 }),
        [b'+', b'/', b'-', ..] => Some(3),
        [b'+'] | [b'+', b'/'] => return Err(ReadFault::Unfinished),
        _ => None,
    };
    if let Some(width) = two_sided {
        let (size, typed, percent, end) = part(b, skip(b, start + width), kind)?;
        return if end < b.len() {
            Err(HOW)
        } else {
            Ok(Tolerance {
                minus: size,
                plus: size,
                unit: typed.map(|t| t.unit),
                typed,
                percent,
                half_told: false,
            })
        };
    }
    one_by_one(b, start, kind)
}

/// `+.0005/-.0002`, `-.0002/+.0005`, with a space for the bar if liked.
fn one_by_one(b: &[u8], start: usize, kind: Kind) -> Result<Tolerance, ReadFault> {
    let first = at(b, start);
    if !matches!(first, b'+' | b'-') || at(b, start + 1) == b' ' {
        return Err(HOW);
    }
    let (one, typed_one, percent_one, end) = part(b, start + 1, kind)?;
    let mut i = skip(b, end);
    if i >= b.len() {
        return Err(if first == b'+' {
            ReadFault::Unfinished
        } else {
            HOW
        });
    }
    let bar = at(b, i) == b'/';
    if bar {
        i = skip(b, i + 1);
    }
    let wanted = if first == b'+' { b'-' } else { b'+' };
    if at(b, i) == wanted {
        i = skip(b, i + 1);
    } else if i >= b.len() {
        return Err(ReadFault::Unfinished);
    } else if !bar || at(b, i) != b'0' {
        return Err(HOW);
    }
    let (other, typed_other, percent_other, end) = part(b, i, kind)?;
    if end < b.len() {
        return Err(HOW);
    }
    let unit = match (typed_one, typed_other) {
        (Some(a), Some(b)) if a.unit != b.unit => return Err(SAME_UNIT),
        (a, b) => a.or(b),
    };
    // a side of nothing needs no unit
    let some = |size: &Number| size.n > 0;
    if percent_one != percent_other
        && (unit.is_some() || some(if percent_one { &other } else { &one }))
    {
        return Err(ReadFault::Unreadable {
            why: "one side is in percent and the other is not: write both alike, as +5%/-2% or +0.0005/-0.0002",
        });
    }
    let bare_side = match (typed_one, typed_other) {
        (Some(_), None) => Some(&other),
        (None, Some(_)) => Some(&one),
        _ => None,
    };
    let half_told = bare_side.is_some_and(some);
    let (minus, plus) = if first == b'+' {
        (other, one)
    } else {
        (one, other)
    };
    Ok(Tolerance {
        minus,
        plus,
        unit: unit.map(|t| t.unit),
        typed: unit,
        percent: percent_one || percent_other,
        half_told,
    })
}

/// A number, and a unit or a percent sign if one follows.
fn part(
    b: &[u8],
    start: usize,
    kind: Kind,
) -> Result<(Number, Option<Typed>, bool, usize), ReadFault> {
    let size = number(b, start)?;
    if size.thousands.is_some() {
        return Err(ReadFault::Unreadable {
            why: "a comma in a tolerance may mean thousands: write a point",
        });
    }
    let i = skip(b, size.end);
    if i >= b.len()
        || matches!(at(b, i), b'+' | b'-')
        || (at(b, i) == b'/' && !at(b, i + 1).is_ascii_alphabetic())
    {
        return Ok((size, None, false, i));
    }
    if at(b, i) == b'%' && kind != Kind::Share {
        return Ok((size, None, true, skip(b, i + 1)));
    }
    let typed = unit_at(b, i, kind).ok_or_else(|| no_unit(b, i, kind))?;
    Ok((size, Some(typed), false, skip(b, typed.end)))
}
