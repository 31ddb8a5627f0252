//! What does a stopwatch show: minutes and seconds with a colon between them?

use super::{ReadFault, Reading, number::number};
use crate::quantity::units::SECOND;

/// A time as `2:05`, `2:05.4` or `1:02:05`, also with the unit as it is printed (`2:05 min`, `1:02:05 h`); None where no
/// colon parts the figures.
pub fn clock(b: &[u8]) -> Option<Result<Reading, ReadFault>> {
    let unit: &[u8] = match b.split(|c| *c == b':').count() {
        2 => b"min",
        _ => b"h",
    };
    let b = b.strip_suffix(unit).map_or(b, <[u8]>::trim_ascii_end);
    let digits = |c: &u8| c.is_ascii_digit() || matches!(c, b':' | b'.');
    if !b.contains(&b':') || !b.iter().all(digits) || !b.first().is_some_and(u8::is_ascii_digit) {
        return None;
    }
    Some(parts(b))
}

fn parts(b: &[u8]) -> Result<Reading, ReadFault> {
    const WRONG: ReadFault = ReadFault::Unreadable {
        why: "write minutes and seconds as 2:05",
    };
    let last = b.split(|c| *c == b':').count().saturating_sub(1);
    let mut seconds = 0.0;
    for (place, part) in b.split(|c| *c == b':').enumerate() {
        let whole = part.split(|c| *c == b'.').next().unwrap_or_default();
        if part.len() > whole.len() && place < last {
            return Err(WRONG);
        }
        if place > 0 && whole.len() < 2 {
            return Err(ReadFault::Unfinished);
        }
        let read = number(part, 0)?;
        let value = read.value();
        if read.end < part.len() || place > 2 || (place > 0 && (whole.len() > 2 || value >= 60.0)) {
            return Err(WRONG);
        }
        seconds = seconds * 60.0 + value;
    }
    Ok(Reading {
        nominal: seconds,
        minus: 0.0,
        plus: 0.0,
        unit: &SECOND,
        bare: false,
        exact: None,
    })
}
