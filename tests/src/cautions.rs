//! Which cautions can each sheet give? Read from the calls of `.stop("id", …)` and `.note("id", …)` in its source.

use benchslate_core::sheets;
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};
use std::{fs, iter};

/// Every caution that is written in a sheet's own file or folder, by sheet and id.
///
/// # Panics
/// Where the source can't be read, or a file of the sheets belongs to none: a failed check.
#[allow(clippy::unwrap_used, clippy::panic)] // a failed check
pub fn written() -> BTreeSet<(&'static str, String)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../core/src/sheets");
    let mut all = BTreeSet::new();
    for file in rust_files(&folder) {
        let inside = file.strip_prefix(&folder).unwrap();
        // a room, then the sheet's own file or folder in it; what a room's sheets share gives no caution by id
        let Some(own) = inside.iter().nth(1) else {
            continue;
        };
        let id = own
            .to_string_lossy()
            .trim_end_matches(".rs")
            .replace('_', "-");
        for caution in ids(&fs::read_to_string(&file).unwrap()) {
            let Some(sheet) = sheets::by_id(&id) else {
                panic!("{} gives {caution}, and is no sheet's", inside.display());
            };
            all.insert((sheet.id, caution));
        }
    }
    all
}

#[allow(clippy::unwrap_used)] // a failed check
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

/// A first text in kebab case with another argument behind it; with the call wrapped over lines too.
fn ids(source: &str) -> Vec<String> {
    let calls = [".stop(", ".note("];
    let starts = calls.iter().flat_map(|call| {
        let mut from = 0;
        iter::from_fn(move || {
            let at = source.get(from..)?.find(call)? + from + call.len();
            from = at;
            Some(at)
        })
    });
    starts
        .filter_map(|at| {
            let rest = source.get(at..)?.trim_start().strip_prefix('"')?;
            let (id, behind) = rest.split_once('"')?;
            let kebab = id
                .chars()
                .all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-');
            (kebab && !id.is_empty() && behind.trim_start().starts_with(',')).then(|| id.to_owned())
        })
        .collect()
}
