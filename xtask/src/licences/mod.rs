//! Which libraries end in the app, under which licences, and which notices do these ask for? Read from
//! `cargo metadata` and from each library's own files: the list that the page *About* shows, and the texts beside it.
mod packages;
mod pick;
mod texts;

use crate::{
    fail::{Doing, Res},
    project,
};
use packages::Package;
use std::{fs, path::PathBuf};

/// The name of the file with the notices, in the built site.
pub const FILE: &str = "licences.txt";

fn list_file() -> PathBuf {
    project::root().join("app/src/licences.rs")
}

/// Writes the list for the page *About*, or with `check` says whether it is stale. True where all is well.
pub fn list(check: bool) -> Res<bool> {
    let new = rust_list(&packages::in_app()?);
    if fs::read_to_string(list_file()).is_ok_and(|old| old == new) {
        return Ok(true);
    }
    if check {
        println!("stale: app/src/licences.rs; `cargo xtask generate` writes it");
        return Ok(false);
    }
    fs::write(list_file(), new).doing("writing app/src/licences.rs")?;
    println!("app/src/licences.rs");
    Ok(true)
}

/// The notices of everything that is in the app, as one text.
pub fn notices() -> Res<String> {
    texts::notices(&packages::in_app()?)
}

fn rust_list(packages: &[Package]) -> String {
    let mut rows: Vec<String> = packages
        .iter()
        .map(|p| format!("    ({:?}, {:?}),\n", p.name, p.licence))
        .collect();
    // Two versions of one library are one row.
    rows.dedup();
    format!(
        "//! Which libraries are in the app, and under which licences? Written by `cargo xtask generate` from what cargo says;\n\
         //! do not edit. Their notices stand beside the app in `{FILE}`.\n\n\
         /// Name and licence.\n\
         pub const LICENCES: &[(&str, &str)] = &[\n{}];\n",
        rows.concat()
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_library_stands_in_the_list_and_in_the_notices() {
        let (packages, text) = (
            packages::in_app().ok().unwrap(),
            notices().ok().unwrap_or_default(),
        );
        let list = rust_list(&packages);
        assert!(packages.len() > 20, "{}", packages.len());
        for package in &packages {
            assert!(list.contains(&format!("({:?}, ", package.name)));
            assert!(
                text.contains(&format!("{} {}", package.name, package.version)),
                "{}",
                package.name
            );
        }
        for held in ["yew", "gloo", "wasm-bindgen"] {
            assert!(packages.iter().any(|p| p.name == held), "{held}");
        }
        for only_built_with in ["syn", "yew-macro", "serde_derive"] {
            assert!(
                packages.iter().all(|p| p.name != only_built_with),
                "{only_built_with}"
            );
        }
        // The text itself once, however its lines are broken; a library with other words has its own.
        let mit = text.matches("\nMIT\n").count();
        assert!((1..5).contains(&mit), "{mit} texts of the MIT licence");
    }
}
