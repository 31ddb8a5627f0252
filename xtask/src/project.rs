//! Where things are, and which versions the project pins. Each pin is read from the one place that holds it.
use crate::fail::{Doing, Fail, Res};
use std::{env, fs, path::PathBuf};

/// The work tree's top folder: that of the tree in which cargo was called. Two trees may share one target folder, and then
/// the program may have been built in the other; started without cargo it takes the tree that it was built in.
pub fn root() -> PathBuf {
    let called = env::var_os("CARGO_MANIFEST_DIR").map(PathBuf::from);
    let mut here = called
        .filter(|dir| dir.ends_with("xtask"))
        .unwrap_or_else(|| PathBuf::from(env!("CARGO_MANIFEST_DIR")));
    here.pop();
    here
}

/// The folder of everything that is built.
pub fn target() -> PathBuf {
    env::var_os("CARGO_TARGET_DIR").map_or_else(|| root().join("target"), PathBuf::from)
}

/// The pinned Rust version, from `tools/wasm-std.sh`, where it stands beside the digest that belongs to it.
pub fn rust_version() -> Res<String> {
    let file = root().join("tools/wasm-std.sh");
    let text = fs::read_to_string(&file).doing(file.display())?;
    text.lines()
        .find_map(|l| l.strip_prefix("RUST="))
        .map(|v| v.trim().to_owned())
        .ok_or_else(|| Fail::new("tools/wasm-std.sh holds no line RUST=…"))
}

/// The locked version of a package, from `Cargo.lock`.
pub fn locked(package: &str) -> Res<String> {
    let text = fs::read_to_string(root().join("Cargo.lock")).doing("Cargo.lock")?;
    let name = format!("name = \"{package}\"");
    text.split("[[package]]")
        .find(|block| block.lines().any(|l| l == name))
        .and_then(|block| {
            block
                .lines()
                .find_map(|l| l.strip_prefix("version = \"")?.strip_suffix('"'))
        })
        .map(str::to_owned)
        .ok_or_else(|| Fail::new(format!("Cargo.lock holds no {package}")))
}

/// A folder of the user that outlives a fresh clone, for tools built from source.
pub fn tool_cache() -> Res<PathBuf> {
    let base = match env::var_os("XDG_CACHE_HOME") {
        Some(dir) if !dir.is_empty() => PathBuf::from(dir),
        _ => home()?.join(".cache"),
    };
    Ok(base.join("benchslate-tools"))
}

/// The user's home folder.
pub fn home() -> Res<PathBuf> {
    env::var_os("HOME")
        .map(PathBuf::from)
        .ok_or_else(|| Fail::new("HOME is not set"))
}

/// Cargo's own folder.
pub fn cargo_home() -> Res<PathBuf> {
    match env::var_os("CARGO_HOME") {
        Some(dir) => Ok(PathBuf::from(dir)),
        None => Ok(home()?.join(".cargo")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pins_agree() {
        let rust = rust_version().unwrap_or_default();
        let manifest = fs::read_to_string(root().join("Cargo.toml")).unwrap();
        let wanted = manifest
            .lines()
            .find_map(|l| l.strip_prefix("rust-version = \""))
            .unwrap();
        assert!(
            rust.starts_with(wanted.trim_end_matches('"')),
            "Cargo.toml {wanted}, wasm-std.sh {rust}"
        );

        let bindgen = locked("wasm-bindgen").unwrap_or_default();
        for file in ["tools/wasm-bindgen/Cargo.toml", "Trunk.toml"] {
            let text = fs::read_to_string(root().join(file)).unwrap();
            assert!(
                text.contains(&bindgen),
                "{file} does not name wasm-bindgen {bindgen}"
            );
        }
    }
}
