//! Does a letter stand where a digit belongs: O for zero, I or l for one?

use super::{Choice, ReadFault, Reading, ask::words, number::at, read_plain};
use crate::quantity::{Kind, Unit};

/// The fault of an entry; where it would read with digits in place of such letters, it says so and gives the entry.
pub fn meant(b: &[u8], kind: Kind, offered: &[&'static Unit], fault: ReadFault) -> ReadFault {
    if !matches!(
        fault,
        ReadFault::Unreadable { .. } | ReadFault::WrongKind { .. }
    ) {
        return fault;
    }
    let Some(digits) = with_digits(b) else {
        return fault;
    };
    let reads =
        |read: &Result<Reading, ReadFault>| matches!(read, Ok(_) | Err(ReadFault::Ambiguous(_)));
    if !reads(&read_plain(&digits, kind, offered)) {
        return fault;
    }
    ReadFault::Meant {
        why: "a letter stands where a digit belongs",
        choice: Choice {
            text: words(&digits),
            label: "with a digit in place of the letter".into(),
        },
    }
}

/// The text with `o` as 0, `i` and `l` as 1 where they stand alone beside a digit, a point or a bar; none where there is
/// no such letter.
pub fn with_digits(b: &[u8]) -> Option<Vec<u8>> {
    let mut out = b.to_vec();
    for (i, place) in out.iter_mut().enumerate() {
        let digit = match place.to_ascii_lowercase() {
            b'o' => b'0',
            b'i' | b'l' => b'1',
            _ => continue,
        };
        let before = i.checked_sub(1).map_or(0, |i| at(b, i));
        let after = at(b, i + 1);
        let figure = |c: u8| c.is_ascii_digit() || matches!(c, b'.' | b'/');
        let alone = !before.is_ascii_alphabetic() && !after.is_ascii_alphabetic();
        if alone && (figure(before) || figure(after)) {
            *place = digit;
        }
    }
    (out != b).then_some(out)
}
