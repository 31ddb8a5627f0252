//! A link as a QR code: one SVG path of whole squares.

use qrcodegen::{QrCode, QrCodeEcc};
use std::fmt::Write;

/// The `<svg>` element, with the quiet border of four squares; nothing where the text is too long for a code that a
/// camera reads from a screen.
pub fn svg(text: &str) -> Option<String> {
    if text.len() > 1200 {
        return None;
    }
    let code = QrCode::encode_text(text, QrCodeEcc::Low).ok()?;
    let size = code.size();
    let side = size + 8;
    let mut out = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-label=\"QR code of the link\" viewBox=\"0 0 {side} {side}\" shape-rendering=\"crispEdges\"><path d=\""
    );
    for y in 0..size {
        let mut x = 0;
        while x < size {
            let start = x;
            while x < size && code.get_module(x, y) {
                x += 1;
            }
            if x > start {
                let _ = write!(
                    out,
                    "M{} {}h{}v1h-{}z",
                    start + 4,
                    y + 4,
                    x - start,
                    x - start
                );
            }
            x += 1;
        }
    }
    out.push_str("\"/></svg>");
    Some(out)
}

#[cfg(test)]
mod tests {
    #[test]
    fn a_link_gives_a_code_and_a_book_does_not() {
        assert!(super::svg("https://example.org/#/v1/anything?a=1%20in").is_some());
        assert!(super::svg(&"x".repeat(3000)).is_none());
    }
}
