//! The digest that names files and builds.
use sha2::{Digest, Sha256};
use std::fmt::Write;

/// The first 8 bytes of SHA-256, as 16 hexadecimal digits.
pub fn hex(bytes: &[u8]) -> String {
    let mut text = String::new();
    for byte in Sha256::digest(bytes).iter().take(8) {
        // Writing to a String cannot fail.
        let _ = write!(text, "{byte:02x}");
    }
    text
}
