//! Numbers and words as they stand in markup.

/// A coordinate with one decimal, without the printing tables of floating point.
#[derive(Clone, Copy)]
pub struct Num(pub f64);

impl std::fmt::Display for Num {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let tenths = (self.0 * 10.0).round() as i64;
        let sign = if tenths < 0 { "-" } else { "" };
        let size = tenths.unsigned_abs();
        if size.is_multiple_of(10) {
            write!(f, "{sign}{}", size / 10)
        } else {
            write!(f, "{sign}{}.{}", size / 10, size % 10)
        }
    }
}

/// Text made safe to stand in markup.
pub fn escape(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            _ => out.push(c),
        }
    }
    out
}
