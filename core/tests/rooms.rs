//! Does each room use only those below it? Read from the `crate::` paths of its source.
#![allow(clippy::unwrap_used)] // a failed check

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

/// A room and what it may use beside itself; `order` may be used by all.
#[rustfmt::skip]
const ROOMS: &[(&str, &[&str])] = &[
    ("quantity", &[]),
    ("order", &[]),
    ("source", &[]),
    ("drawing", &[]),
    ("call", &[]),
    ("notation", &["call", "quantity"]),
    ("standards", &["quantity"]),
    ("thread", &["quantity", "standards", "notation"]),
    ("pin", &["quantity", "standards"]),
    ("fit", &["quantity", "standards", "source"]),
    ("fastener", &["quantity", "standards", "thread"]),
    ("machine", &["quantity", "standards"]),
    ("cutting", &["quantity", "standards", "source", "drawing"]),
    ("calls", &["quantity", "standards", "notation", "call", "thread", "pin", "fit"]),
    ("sheet", &["quantity", "call", "calls", "source", "drawing"]),
    ("link", &["quantity", "sheet", "sheets", "record"]),
    ("record", &["quantity", "standards", "machine", "sheet", "link"]),
    ("powers", &["quantity", "sheet", "link"]),
    ("search", &["quantity", "call", "sheet", "sheets", "link", "record"]),
    ("onward", &["quantity", "sheet", "sheets", "link", "record"]),
];

#[test]
fn each_room_uses_those_below_it_alone() {
    let core = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let (mut seen, mut wrong) = (BTreeSet::new(), Vec::new());
    for file in rust_files(&core) {
        let inside = file.strip_prefix(&core).unwrap();
        let room = inside
            .iter()
            .next()
            .unwrap()
            .to_string_lossy()
            .trim_end_matches(".rs")
            .to_owned();
        if matches!(room.as_str(), "lib" | "sheets") {
            continue;
        }
        let Some((_, may)) = ROOMS.iter().find(|(name, _)| *name == room) else {
            wrong.push(format!("{room} has no row in this test"));
            continue;
        };
        seen.insert(room.clone());
        let source = fs::read_to_string(&file).unwrap();
        for used in source
            .lines()
            .filter(|line| !line.trim_start().starts_with("//"))
            .flat_map(used)
        {
            if used != room && used != "order" && !may.contains(&used) {
                wrong.push(format!("{}: {room} may not use {used}", inside.display()));
            }
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
    assert_eq!(seen.len(), ROOMS.len(), "a room of this test is gone");
}

/// The rooms that a line names; each path by itself, since no line groups rooms in braces.
fn used(line: &str) -> Vec<&str> {
    assert!(
        !line.contains("crate::{"),
        "name each room in a line of its own: {line}"
    );
    let paths = line.split("crate::").skip(1);
    paths
        .map(|path| {
            path.split(|c: char| !c.is_alphanumeric() && c != '_')
                .next()
                .unwrap_or_default()
        })
        .collect()
}

fn rust_files(folder: &Path) -> Vec<PathBuf> {
    let mut all = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            all.extend(rust_files(&path));
        } else if path.extension().is_some_and(|end| end == "rs") {
            all.push(path);
        }
    }
    all
}
