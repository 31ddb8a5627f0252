//! Does the guide name every key that a link keeps for itself? One who writes a sheet must not have to find them by a
//! refusal.
#![allow(missing_docs, clippy::unwrap_used)] // a test says what failed by panicking

use benchslate_core::link::RESERVED;

#[test]
fn the_guide_names_every_reserved_key() {
    let guide = concat!(env!("CARGO_MANIFEST_DIR"), "/../DEVELOPERS.md");
    let room = concat!(env!("CARGO_MANIFEST_DIR"), "/src/link/mod.rs");
    for file in [guide, room] {
        let text = std::fs::read_to_string(file).unwrap();
        for key in RESERVED {
            assert!(
                text.contains(&format!("`{key}`")),
                "{file} does not name `{key}`"
            );
        }
    }
}
