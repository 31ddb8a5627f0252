//! Which unit stands at this place?

use super::{ReadFault, number::at};
use crate::quantity::{Kind, Unit, units, units_of};

/// A unit that was typed.
#[derive(Clone, Copy)]
pub struct Typed {
    /// The unit.
    pub unit: &'static Unit,
    /// The spelling that it was typed in.
    pub spelling: &'static str,
    /// The place after it.
    pub end: usize,
}

/// Marks inside a unit that carry no meaning: `ft-lb`, `in. lb`, `µm/(m·K)`.
const fn passed_over(byte: u8) -> bool {
    matches!(byte, b' ' | b'.' | b'-' | b'(' | b')' | b'_')
}

/// How far `spelling` agrees with the text from `start`: (spelling used up, place in the text).
fn agree(b: &[u8], start: usize, spelling: &str) -> (bool, usize) {
    let mut i = start;
    for (k, want) in spelling.bytes().enumerate() {
        let mut j = i;
        if !want.is_ascii_digit() {
            while at(b, j) == b' ' || (passed_over(at(b, j)) && (k > 0 || at(b, j) == b'-')) {
                j += 1;
            }
        }
        if at(b, j) != want {
            return (false, j);
        }
        i = j + 1;
    }
    (true, i)
}

/// The longest unit of the kind at `start`.
pub fn unit_at(b: &[u8], start: usize, kind: Kind) -> Option<Typed> {
    let mut best: Option<Typed> = None;
    for unit in units_of(kind) {
        for spelling in unit.spellings {
            let (whole, mut end) = agree(b, start, spelling);
            if !whole || best.is_some_and(|old| old.end >= end) {
                continue;
            }
            let next = at(b, end);
            let goes_on = next.is_ascii_alphabetic()
                || (next == b'/' && !matches!(at(b, end + 1), b'+' | b'-' | 0))
                || next == b'%';
            if goes_on {
                continue;
            }
            while at(b, end) == b')' {
                end += 1;
            }
            if at(b, end) == b'.' && !at(b, end + 1).is_ascii_digit() {
                end += 1;
            }
            best = Some(Typed {
                unit,
                spelling,
                end,
            });
        }
    }
    best
}

/// Why there is no unit of the kind at `start`: the start of one, one of another kind, or none at all.
pub fn no_unit(b: &[u8], start: usize, kind: Kind) -> ReadFault {
    let begun = |kind: Kind| {
        units_of(kind).iter().flat_map(|u| u.spellings).any(|s| {
            let (whole, place) = agree(b, start, s);
            !whole && place >= b.len()
        })
    };
    if begun(kind) || (kind == Kind::Taper && begun(Kind::Angle)) {
        return ReadFault::Unfinished;
    }
    for other in units::KINDS {
        if let Some(typed) =
            unit_at(b, start, *other).filter(|t| *other != kind && t.end >= b.len())
        {
            let short = typed.spelling.len() <= 8
                && typed
                    .spelling
                    .starts_with(|c: char| c.is_ascii_alphabetic());
            return ReadFault::WrongKind {
                unit: if short { typed.spelling } else { typed.unit.id }.into(),
                kind,
            };
        }
    }
    ReadFault::Unreadable {
        why: match b.get(start) {
            Some(b'/') => "a fraction is one whole number over another, as 7/16",
            Some(b'.' | b',') => "holds more than one point or comma",
            _ => "what follows the number is not a unit known here",
        },
    }
}
