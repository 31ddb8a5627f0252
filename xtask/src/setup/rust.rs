//! Is this Rust new enough, and has it the standard library for WebAssembly?
use super::say;
use crate::{
    fail::{Fail, Res},
    project, run,
};
use std::{fs, process::Command, time::Duration};

/// rustup answers in seconds where it can at all; a machine cut off from its server must not wait for it.
const RUSTUP_LIMIT: Duration = Duration::from_secs(90);
const TARGET: &str = "wasm32-unknown-unknown";

/// Stops where rustc is older than the pinned version.
pub fn version() -> Res {
    let wanted = project::rust_version()?;
    let found = run::output("rustc", &["-V"]).unwrap_or_default();
    let found = found.split(' ').nth(1).unwrap_or("none");
    if numbers(found) >= numbers(&wanted) {
        return Ok(());
    }
    let cure = if run::find("rustup").is_some() {
        format!("rustup default {wanted}")
    } else {
        format!(
            "curl --proto '=https' -sSf https://sh.rustup.rs | sh -s -- -y --default-toolchain {wanted}"
        )
    };
    Err(Fail::cure(
        &format!("Rust {wanted} or newer is needed; found {found}."),
        &cure,
    ))
}

/// `1.95.0-nightly` as comparable numbers.
fn numbers(version: &str) -> Vec<u32> {
    let plain = version.split('-').next().unwrap_or_default();
    plain.split('.').map_while(|n| n.parse().ok()).collect()
}

/// True where the sysroot of the rustc on PATH holds the standard library for the browser.
fn has_std() -> bool {
    let Some(dir) = run::output("rustc", &["--print", "target-libdir", "--target", TARGET]) else {
        return false;
    };
    let Ok(entries) = fs::read_dir(dir) else {
        return false;
    };
    entries
        .flatten()
        .any(|e| e.file_name().to_string_lossy().starts_with("libstd-"))
}

/// Puts that standard library there: from rustup's server, or built from Debian's source. Never both: two copies
/// stop every build, so nothing is done where one is there already.
pub fn wasm_std() -> Res {
    if has_std() {
        return Ok(());
    }
    let wanted = project::rust_version()?;
    let by_hand = format!("rustup target add {TARGET}");
    let why = "the app is compiled to WebAssembly; this Rust has no standard library for it yet";
    if run::find("rustup").is_some() {
        say(&by_hand, why);
        let mut add = Command::new("rustup");
        add.args(["target", "add", TARGET])
            .current_dir(project::root());
        if run::ok_within(&mut add, RUSTUP_LIMIT) && has_std() {
            return Ok(());
        }
    }
    let exact =
        run::output("rustc", &["-V"]).is_some_and(|v| v.split(' ').nth(1) == Some(wanted.as_str()));
    if !exact || run::find("apt-get").is_none() || run::find("dpkg").is_none() {
        let text = format!(
            "The standard library for {TARGET} is missing and could not be fetched. Without rustup's server it can be \
             built from Debian's source, which needs apt and rustc {wanted} exactly."
        );
        return Err(Fail::cure(&text, &by_hand));
    }
    say(
        "building it from Debian's source of Rust, 1 to 2 minutes (tools/wasm-std.sh)",
        "rustup did not provide it",
    );
    run::ok(Command::new("bash").arg(project::root().join("tools/wasm-std.sh"))).map_err(|_| {
        Fail::cure(
            "tools/wasm-std.sh did not succeed; it needs the network once.",
            &by_hand,
        )
    })?;
    if has_std() {
        Ok(())
    } else {
        Err(Fail::cure(
            "tools/wasm-std.sh left no standard library.",
            &by_hand,
        ))
    }
}

#[cfg(test)]
mod tests {
    use super::numbers;

    #[test]
    fn versions_compare_as_numbers() {
        assert!(numbers("1.100.0") > numbers("1.95.0"));
        assert!(numbers("1.95.0-nightly") == numbers("1.95.0"));
        assert!(numbers("none") < numbers("1.95.0"));
    }
}
