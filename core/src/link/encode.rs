//! How does a text stand in a fragment? ASCII stays readable, the rest is percent-encoded; `+` is always plus.

/// Stays as it is: readable, and not cut off where people paste links into messages.
const fn is_plain(byte: u8) -> bool {
    byte.is_ascii_alphanumeric()
        || matches!(
            byte,
            b'-' | b'.' | b'_' | b'~' | b'/' | b',' | b':' | b';' | b'+'
        )
}

pub(super) fn encode(text: &str, link: &mut String) {
    for byte in text.bytes() {
        if is_plain(byte) {
            link.push(char::from(byte));
        } else {
            percent(byte, link);
        }
    }
}

fn percent(byte: u8, link: &mut String) {
    let digit = |nibble: u8| {
        char::from_digit(u32::from(nibble), 16)
            .unwrap_or('0')
            .to_ascii_uppercase()
    };
    link.push('%');
    link.push(digit(byte >> 4));
    link.push(digit(byte & 15));
}

/// A link that ends in a stop or a comma loses it when it is pasted into a sentence: that last character is encoded.
pub(super) fn guard_end(link: &mut String) {
    if let Some(last) = link
        .bytes()
        .last()
        .filter(|last| matches!(last, b'.' | b',' | b':' | b';'))
    {
        link.pop();
        percent(last, link);
    }
}

/// The text of a percent-encoded piece; none where it is malformed.
pub(super) fn decode(piece: &str) -> Option<String> {
    let mut bytes = Vec::with_capacity(piece.len());
    let mut rest = piece.bytes();
    while let Some(byte) = rest.next() {
        if byte == b'%' {
            let mut nibble = || char::from(rest.next()?).to_digit(16);
            let (high, low) = (nibble()?, nibble()?);
            bytes.push(u8::try_from(high << 4 | low).ok()?);
        } else {
            bytes.push(byte);
        }
    }
    String::from_utf8(bytes).ok()
}
