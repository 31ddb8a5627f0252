//! Which size do two or three units together make: feet and inches, thou and tenths, degrees and minutes?

use super::{
    ReadFault,
    number::{Number, at, number, skip},
    unit::{Typed, no_unit, unit_at},
};
use crate::quantity::{Kind, Unit, units::*};

/// Which unit may follow which, and which unit the whole is said in.
struct Pair {
    first: &'static Unit,
    second: &'static Unit,
    whole: &'static Unit,
    /// How many of the second make one of the first.
    ratio: u64,
}

static PAIRS: &[Pair] = &[
    Pair {
        first: &FOOT,
        second: &INCH,
        whole: &INCH,
        ratio: 12,
    },
    Pair {
        first: &INCH,
        second: &THOU,
        whole: &INCH,
        ratio: 1000,
    },
    Pair {
        first: &THOU,
        second: &TENTH,
        whole: &THOU,
        ratio: 10,
    },
    Pair {
        first: &DEGREE,
        second: &ARC_MINUTE,
        whole: &DEGREE,
        ratio: 60,
    },
    Pair {
        first: &ARC_MINUTE,
        second: &ARC_SECOND,
        whole: &DEGREE,
        ratio: 60,
    },
    Pair {
        first: &HOUR,
        second: &MINUTE,
        whole: &MINUTE,
        ratio: 60,
    },
    Pair {
        first: &MINUTE,
        second: &SECOND,
        whole: &MINUTE,
        ratio: 60,
    },
];

/// Sizes that belong together; most are one.
pub struct Parts {
    each: [Option<(Number, &'static Unit)>; 3],
    /// The unit of the whole.
    pub unit: &'static Unit,
    /// The place after it.
    pub end: usize,
}

impl Parts {
    /// One number in one unit.
    pub fn one(number: Number, unit: &'static Unit, end: usize) -> Self {
        Self {
            each: [Some((number, unit)), None, None],
            unit,
            end,
        }
    }
    /// The same number in another unit.
    pub fn told(self, unit: &'static Unit) -> Self {
        let number = self.iter().next().map(|(n, _)| n);
        Self {
            each: [number.map(|n| (n, unit)), None, None],
            unit,
            end: self.end,
        }
    }
    /// Each number with its unit.
    pub fn iter(&self) -> impl Iterator<Item = (Number, &'static Unit)> {
        self.each.iter().flatten().copied()
    }
    /// Whether there is more than one.
    pub fn several(&self) -> bool {
        self.each.iter().flatten().count() > 1
    }
}

/// Where the inches stand after a hyphen behind feet; none where a tolerance starts there, as in `5' -.002/+.005`.
fn joint(b: &[u8], hyphen: usize, kind: Kind) -> Result<Option<usize>, ReadFault> {
    let second = skip(b, hyphen + 1);
    if second >= b.len() {
        return Err(ReadFault::Unfinished);
    }
    let size = number(b, second)?;
    let end = skip(b, size.end);
    if matches!(at(b, end), b'/' | b'+') {
        return Ok(None);
    }
    if let Some(typed) = unit_at(b, end, kind)
        && at(b, skip(b, typed.end)) == b'/'
    {
        return Ok(None);
    }
    let apart = at(b, hyphen.saturating_sub(1)) == b' ';
    if at(b, second) == b'.' || (apart && size.n < size.d && !size.fraction) {
        return Err(ReadFault::Unreadable {
            why: "the hyphen before a decimal may be a minus: write the whole size in inches, as 60.002 in",
        });
    }
    Ok(Some(second))
}

const MIXED: ReadFault = ReadFault::Unreadable {
    why: "these numbers do not belong together: write one number with one unit",
};

/// The parts that start with `first` in `typed`.
pub fn compound(b: &[u8], first: Number, typed: Typed, kind: Kind) -> Result<Parts, ReadFault> {
    let mut out = Parts::one(first, typed.unit, typed.end);
    let (mut number_before, mut unit_before) = (first, typed.unit);
    for slot in 1..3 {
        let mut i = skip(b, out.end);
        let rest = b.get(i..).unwrap_or_default();
        let joined = rest.starts_with(b"and ");
        if joined {
            i = skip(b, i + 4);
        } else if matches!(rest, b"a" | b"an" | b"and") {
            return Err(ReadFault::Unfinished);
        }
        // 10'-6 1/2", as on a drawing; a tolerance may start with that sign too.
        if *unit_before == FOOT && at(b, i) == b'-' {
            match joint(b, i, kind)? {
                Some(second) => i = second,
                None => return Ok(out),
            }
        }
        if !(at(b, i).is_ascii_digit() || at(b, i) == b'.' || joined) {
            return Ok(out);
        }
        let mut follows = PAIRS.iter().filter(|p| p.first == unit_before).peekable();
        if follows.peek().is_none() || !number_before.is_whole() || number_before.fraction {
            let start = skip(b, first.end);
            let wrong = no_unit(b, start, kind);
            return Err(if matches!(wrong, ReadFault::WrongKind { .. }) {
                wrong
            } else {
                MIXED
            });
        }
        let next = number(b, i)?;
        let start = skip(b, next.end);
        if start >= b.len() {
            return Err(ReadFault::Unfinished);
        }
        let typed = unit_at(b, start, kind).ok_or_else(|| no_unit(b, start, kind))?;
        let pair = follows.find(|p| p.second == typed.unit).ok_or(MIXED)?;
        if next.thousands.is_some() || next.n >= next.d.saturating_mul(pair.ratio) {
            return Err(MIXED);
        }
        if let Some(place) = out.each.get_mut(slot) {
            *place = Some((next, typed.unit));
        }
        out.unit = pair.whole;
        out.end = typed.end;
        (number_before, unit_before) = (next, typed.unit);
    }
    Ok(out)
}
