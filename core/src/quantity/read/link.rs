//! How is an entry written into a link?

use super::{
    Reading,
    compound::{Parts, compound},
    glyphs::{PLUS_MINUS, plain},
    is_signed,
    number::{at, number, skip},
    unit::unit_at,
};
use crate::quantity::units;

/// The entry in plain ASCII with the unit that was understood after a bare size: for links. It reads back to the same
/// whatever units are offered, and what it reads back to is written the same again.
///
/// ```
/// use benchslate_core::quantity::{Kind, link_text, read, units};
/// let text = "1¼ ± .0005";
/// let reading = read(text, Kind::Length, &[&units::INCH]).unwrap();
/// assert_eq!(link_text(text, &reading), "1 1/4 in +-.0005");
/// ```
pub fn link_text(text: &str, reading: &Reading) -> String {
    let Ok(plain) = plain(text) else {
        return text.into();
    };
    let b = plain.bytes();
    let split = split(b, reading);
    let (head, tail) = b.split_at_checked(split.tail).unwrap_or((b, &[]));
    let mut out = String::with_capacity(b.len() + 8);
    for byte in head.trim_ascii_end() {
        if !(*byte == b' ' && out.ends_with(' ')) {
            out.push(char::from(*byte));
        }
    }
    if split.bare && !reading.unit.id.is_empty() {
        out.push(' ');
        // In lower case, as a typed unit arrives here, so that equal entries give equal links.
        out.push_str(&reading.unit.id.to_ascii_lowercase());
    }
    if !tail.is_empty() {
        out.push(' ');
    }
    for byte in tail {
        match *byte {
            PLUS_MINUS => out.push_str("+-"),
            b' ' if out.ends_with(['-', ' ']) => {}
            other => out.push(char::from(other)),
        }
    }
    if split.several { out } else { clear(out) }
}

/// Where an entry that was read parts into size and tolerance.
struct Split {
    /// Where the tolerance starts; the end where there is none.
    tail: usize,
    /// No unit stands after the size.
    bare: bool,
    /// The size is of two or three units.
    several: bool,
}

/// The size is read once more: a hyphen may join a mixed number, feet and inches or a unit, and a plus ends them all.
fn split(b: &[u8], reading: &Reading) -> Split {
    let whole = Split {
        tail: b.len(),
        bare: reading.bare,
        several: false,
    };
    let sign = |c: &u8| matches!(*c, PLUS_MINUS | b'+' | b'-');
    let one = reading.unit != &units::THOU && reading.unit != &units::TENTH;
    if one && !b.iter().skip(1).any(sign) {
        return whole;
    }
    let start = if sign(&at(b, 0)) { skip(b, 1) } else { 0 };
    let Ok(first) = number(b, start) else {
        return whole;
    };
    let i = skip(b, first.end);
    if i >= b.len() || is_signed(b, i) {
        return Split {
            tail: i,
            bare: true,
            several: false,
        };
    }
    let kind = reading.unit.kind;
    let parts = unit_at(b, i, kind).and_then(|typed| compound(b, first, typed, kind).ok());
    parts.map_or(whole, |parts| Split {
        tail: skip(b, parts.end),
        bare: false,
        several: Parts::several(&parts),
    })
}

/// A tenth and a mil are asked where millimetres are the habit; a link says them so that they never are.
fn clear(text: String) -> String {
    if !text.contains("tenth") && !text.contains("mil") {
        return text;
    }
    let mut out = String::with_capacity(text.len() + 12);
    if text == "tenth" || text == "a tenth" {
        return "1 tenth of a thou".into();
    }
    let mut rest = text.as_str();
    while let Some(from) = rest.find(|c: char| c.is_ascii_alphabetic()) {
        let (before, word) = rest.split_at(from);
        let end = word
            .find(|c: char| !c.is_ascii_alphabetic())
            .unwrap_or(word.len());
        let (word, after) = word.split_at(end);
        out.push_str(before);
        out.push_str(match word {
            "mil" | "mils" => "thou",
            other => other,
        });
        let of = after.trim_start_matches([' ', '.', '-']).starts_with("of");
        if (word == "tenth" || word == "tenths") && !of {
            out.push_str(" of a thou");
        }
        rest = after;
    }
    out.push_str(rest);
    out
}
