//! Is every public function of the core called by the product? What only tests call guards nothing that the user sees:
//! it is used, goes, or says "Library only" in its documentation.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

#[test]
fn every_public_function_is_called_by_the_product() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("..");
    let core = rust_files(&root.join("core/src"));
    let mut product = String::new();
    for room in ["core/src", "app/src", "cli/src", "xtask/core/src"] {
        for file in rust_files(&root.join(room)) {
            product.push_str(&code(&fs::read_to_string(file).unwrap()));
        }
    }
    // how often a name stands where it is not declared
    let mut calls: BTreeMap<&str, usize> = BTreeMap::new();
    let mut before = "";
    for word in product.split(|c: char| !c.is_alphanumeric() && c != '_') {
        *calls.entry(word).or_default() += usize::from(before != "fn");
        before = word;
    }
    let (mut seen, mut idle) = (0, Vec::new());
    for file in core {
        let source = fs::read_to_string(&file).unwrap();
        for (name, documented) in public_functions(&source) {
            seen += 1;
            let used = calls.get(name.as_str()).is_some_and(|count| *count > 0);
            if !used && !documented.contains("Library only") {
                let at = file.strip_prefix(&root).unwrap().display().to_string();
                idle.push(format!("{at}: {name}"));
            }
        }
    }
    assert!(seen > 400, "only {seen} public functions were found");
    assert!(idle.is_empty(), "{} of {seen}: {idle:#?}", idle.len());
}

#[allow(clippy::unwrap_used)] // a failed check
fn rust_files(folder: &Path) -> Vec<PathBuf> {
    let mut all = Vec::new();
    for entry in fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            all.extend(rust_files(&path));
        } else if path.extension().is_some_and(|end| end == "rs") && !path.ends_with("tests.rs") {
            all.push(path);
        }
    }
    all.sort();
    all
}

/// The source without its comments, its own tests, and its `pub use` lines.
fn code(source: &str) -> String {
    let end = own_tests(source);
    let mut text = String::new();
    let mut exporting = false;
    for line in source[..end].lines() {
        let trimmed = line.trim_start();
        exporting |= trimmed.starts_with("pub use ");
        if !exporting && !trimmed.starts_with("//") {
            text.push_str(line);
            text.push('\n');
        }
        exporting &= !trimmed.ends_with(';');
    }
    text
}

/// Where a file's own tests begin, which stand at its end; a line that only names a file of tests begins none.
fn own_tests(source: &str) -> usize {
    source
        .find("#[cfg(test)]\nmod tests {")
        .unwrap_or(source.len())
}

/// The public functions of a file, each with its documentation.
fn public_functions(source: &str) -> Vec<(String, String)> {
    let end = own_tests(source);
    let (mut all, mut words) = (Vec::new(), String::new());
    for line in source[..end].lines().map(str::trim_start) {
        if let Some(doc) = line.strip_prefix("///") {
            words.push_str(doc);
            words.push('\n');
        } else if let Some(rest) = ["pub fn ", "pub const fn "]
            .iter()
            .find_map(|start| line.strip_prefix(start))
        {
            let name: String = rest
                .chars()
                .take_while(|c| c.is_alphanumeric() || *c == '_')
                .collect();
            all.push((name, std::mem::take(&mut words)));
        } else if !line.starts_with("#[") {
            words.clear();
        }
    }
    all
}
