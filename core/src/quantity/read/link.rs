//! How is an entry written into a link?

use super::{
    Reading,
    glyphs::{PLUS_MINUS, plain},
    number::at,
};

/// The entry in plain ASCII with the unit that was understood after a bare size: for links. It reads back to the same
/// whatever units are offered.
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
    // A tolerance starts at a sign past the first character, unless the sign joins a mixed number or a unit.
    let is_tail = |i: usize| match at(b, i) {
        PLUS_MINUS => true,
        b'+' => i > 0,
        b'-' => i > 0 && b.get(i..).unwrap_or_default().contains(&b'+'),
        _ => false,
    };
    let tail = (0..b.len()).find(|i| is_tail(*i)).unwrap_or(b.len());
    let (head, tail) = b.split_at_checked(tail).unwrap_or((b, &[]));
    let mut out = String::with_capacity(b.len() + 8);
    for byte in head.trim_ascii_end() {
        if !(*byte == b' ' && out.ends_with(' ')) {
            out.push(char::from(*byte));
        }
    }
    if reading.bare && !reading.unit.id.is_empty() {
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
    out
}
