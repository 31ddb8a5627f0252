//! `cargo xtask dist`: the site as one archive, the same bytes each time from the same commit.
use super::{Page, compress, hash, site};
use crate::{
    args::Args,
    fail::{Fail, Res},
    project, setup,
};
use std::{collections::BTreeMap, fs};

/// Builds the site and packs it.
pub fn command(args: &Args) -> Res {
    args.allow(&[], &[])?;
    let page = Page::app();
    let plain = site::build(&page, &setup::for_build()?)?;
    let mut files = BTreeMap::new();
    for (name, bytes) in plain {
        if compress::worth_it(&name) {
            files.insert(format!("{name}.br"), compress::brotli(&bytes)?);
            files.insert(format!("{name}.gz"), compress::gzip(&bytes)?);
        }
        files.insert(name, bytes);
    }
    let dir = project::target().join("dist");
    fs::create_dir_all(&dir)?;
    let path = dir.join(format!("benchslate-{}.tar.gz", env!("CARGO_PKG_VERSION")));
    let archive = compress::gzip(&tar("benchslate", &files)?)?;
    fs::write(&path, &archive)?;
    println!(
        "{}\n{} files, {} bytes, sha256 begins {}",
        path.display(),
        files.len(),
        archive.len(),
        hash::hex(&archive)
    );
    Ok(())
}

/// A plain ustar archive: fixed owner, mode and time, files in the order of their names.
fn tar(folder: &str, files: &BTreeMap<String, Vec<u8>>) -> Res<Vec<u8>> {
    let mut out = Vec::new();
    for (name, bytes) in files {
        let name = format!("{folder}/{name}");
        if name.len() > 100 {
            return Err(Fail::new(format!(
                "{name}: too long a name for a plain archive"
            )));
        }
        let mut head = [0_u8; 512];
        let mut put = |at: usize, text: &str| {
            for (slot, byte) in head.iter_mut().skip(at).zip(text.bytes()) {
                *slot = byte;
            }
        };
        put(0, &name);
        put(100, "0000644\0");
        put(108, "0000000\0");
        put(116, "0000000\0");
        put(124, &format!("{:011o}\0", bytes.len()));
        put(136, "00000000000\0");
        put(148, "        ");
        put(156, "0");
        put(257, "ustar\x0000");
        let sum: u32 = head.iter().copied().map(u32::from).sum();
        for (slot, byte) in head
            .iter_mut()
            .skip(148)
            .zip(format!("{sum:06o}\0 ").bytes())
        {
            *slot = byte;
        }
        out.extend_from_slice(&head);
        out.extend_from_slice(bytes);
        out.resize(out.len().next_multiple_of(512), 0);
    }
    out.resize(out.len() + 1024, 0);
    Ok(out)
}
