//! Brotli and gzip at their best, made before serving, and kept: level 11 is slow, and most files stay the same.
use super::hash;
use crate::{fail::Res, project};
use flate2::{Compression, GzBuilder};
use std::{fs, io::Write};

/// Brotli, quality 11.
pub fn brotli(bytes: &[u8]) -> Res<Vec<u8>> {
    let kept = project::target().join("brotli").join(hash::hex(bytes));
    if let Ok(old) = fs::read(&kept) {
        return Ok(old);
    }
    let mut out = Vec::new();
    let params = brotli::enc::BrotliEncoderParams {
        quality: 11,
        lgwin: 22,
        size_hint: bytes.len(),
        ..Default::default()
    };
    brotli::BrotliCompress(&mut &*bytes, &mut out, &params)?;
    fs::create_dir_all(project::target().join("brotli"))?;
    // Moved into place whole, so that an interrupted run leaves no half file behind.
    let part = kept.with_extension(std::process::id().to_string());
    fs::write(&part, &out)?;
    fs::rename(part, kept)?;
    Ok(out)
}

/// Gzip, level 9, without a time stamp.
pub fn gzip(bytes: &[u8]) -> Res<Vec<u8>> {
    let mut out = GzBuilder::new()
        .mtime(0)
        .write(Vec::new(), Compression::best());
    out.write_all(bytes)?;
    Ok(out.finish()?)
}

/// True for files that gain by it; pictures in PNG do not.
pub fn worth_it(name: &str) -> bool {
    [
        ".html",
        ".css",
        ".js",
        ".wasm",
        ".svg",
        ".webmanifest",
        ".json",
        ".txt",
    ]
    .iter()
    .any(|e| name.ends_with(e))
}
