//! How are the many ways to write one sign brought to one, so that the rest of the reader sees plain ASCII?

use super::ReadFault;

/// Most characters of an entry.
pub const MOST: usize = 64;
/// The sign of a two-sided tolerance in the plain text; no entry can hold it otherwise.
pub const PLUS_MINUS: u8 = 1;

const ROOM: usize = 160;
const STRANGE: ReadFault = ReadFault::Unreadable {
    why: "holds a character that is not shop notation",
};

/// An entry in plain lower-case ASCII.
pub struct Plain {
    bytes: [u8; ROOM],
    len: usize,
}

impl Plain {
    /// The plain text, outer space removed.
    pub fn bytes(&self) -> &[u8] {
        self.bytes.get(..self.len).unwrap_or_default().trim_ascii()
    }

    fn push(&mut self, more: &[u8]) -> Result<(), ReadFault> {
        let end = self.len + more.len();
        self.bytes
            .get_mut(self.len..end)
            .ok_or(ReadFault::TooLong)?
            .copy_from_slice(more);
        self.len = end;
        Ok(())
    }

    fn last(&self) -> Option<u8> {
        self.len
            .checked_sub(1)
            .and_then(|i| self.bytes.get(i))
            .copied()
    }
}

/// Brings an entry to plain text: quotes, dashes, vulgar fractions, degree and micro signs; anything else is refused.
pub fn plain(text: &str) -> Result<Plain, ReadFault> {
    if text.len() > MOST * 4 {
        return Err(ReadFault::TooLong);
    }
    let mut out = Plain {
        bytes: [0; ROOM],
        len: 0,
    };
    for (count, c) in text.trim().chars().enumerate() {
        if count >= MOST {
            return Err(ReadFault::TooLong);
        }
        if let Some((n, d)) = vulgar(c) {
            out.push(&[b' ', n, b'/'])?;
            if d == 10 {
                out.push(b"10")?;
            } else {
                out.push(&[b'0' + d])?;
            }
            out.push(b" ")?;
            continue;
        }
        match c {
            '!'..='~' => {
                let byte = c.to_ascii_lowercase() as u8;
                single(&mut out, byte)?;
            }
            ' ' | '\u{a0}' | '\u{2007}' | '\u{2009}' | '\u{202f}' | '·' | '⋅' | '∙' => {
                out.push(b" ")?;
            }
            '−' | '–' | '‐' | '‑' => out.push(b"-")?,
            '⁄' | '∕' => out.push(b"/")?,
            '″' | '”' | '“' | '„' | '‟' => out.push(b"\"")?,
            '′' | '’' | '‘' => single(&mut out, b'\'')?,
            'µ' | 'μ' => out.push(b"u")?,
            '±' => out.push(&[PLUS_MINUS])?,
            '°' | 'º' => out.push(b"deg")?,
            '²' | '³' if out.last().is_some_and(|b| b.is_ascii_alphabetic()) => {
                out.push(if c == '²' { b"2" } else { b"3" })?;
            }
            _ => return Err(STRANGE),
        }
    }
    Ok(out)
}

/// Two single quotes are one double one.
fn single(out: &mut Plain, byte: u8) -> Result<(), ReadFault> {
    if byte == b'\'' && out.last() == Some(b'\'') {
        out.len -= 1;
        return out.push(b"\"");
    }
    out.push(&[byte])
}

/// Numerator (its digit) and denominator of a vulgar-fraction glyph.
const fn vulgar(c: char) -> Option<(u8, u8)> {
    Some(match c {
        '½' => (b'1', 2),
        '⅓' => (b'1', 3),
        '⅔' => (b'2', 3),
        '¼' => (b'1', 4),
        '¾' => (b'3', 4),
        '⅕' => (b'1', 5),
        '⅖' => (b'2', 5),
        '⅗' => (b'3', 5),
        '⅘' => (b'4', 5),
        '⅙' => (b'1', 6),
        '⅚' => (b'5', 6),
        '⅐' => (b'1', 7),
        '⅛' => (b'1', 8),
        '⅜' => (b'3', 8),
        '⅝' => (b'5', 8),
        '⅞' => (b'7', 8),
        '⅑' => (b'1', 9),
        '⅒' => (b'1', 10),
        _ => return None,
    })
}
