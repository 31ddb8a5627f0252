//! Where are wasm-bindgen's two programs at the version of `Cargo.lock`? Built once a user from `tools/wasm-bindgen`,
//! into a cache folder whose name holds the version, so that they outlive a fresh clone and a bump starts clean.
use super::say;
use crate::{
    fail::{Doing, Fail, Res},
    project, run,
};
use std::{fs, path::PathBuf};

/// The two programs.
pub struct Bindgen {
    /// Turns a compiled module into a module and its JavaScript.
    pub tool: PathBuf,
    /// Runs wasm tests in a browser.
    pub test_runner: PathBuf,
}

/// Finds them, or builds them.
pub fn installed() -> Res<Bindgen> {
    let version = project::locked("wasm-bindgen")?;
    let cache = project::tool_cache()?;
    let dir = cache.join(format!("wasm-bindgen-{version}"));
    let found = Bindgen {
        tool: dir.join("wasm-bindgen"),
        test_runner: dir.join("wasm-bindgen-test-runner"),
    };
    if found.tool.is_file() && found.test_runner.exists() {
        return Ok(found);
    }
    say(
        &format!("building wasm-bindgen {version}, about 2 minutes, once for this user"),
        "it joins the app's WebAssembly to the browser and must be of the very version in Cargo.lock",
    );
    let manifest = project::root().join("tools/wasm-bindgen/Cargo.toml");
    if !fs::read_to_string(&manifest)?.contains(&format!("\"={version}\"")) {
        return Err(Fail::new(format!(
            "tools/wasm-bindgen/Cargo.toml does not pin wasm-bindgen-cli ={version}"
        )));
    }
    // Built beside its place and moved in whole: an interrupted build leaves nothing that looks finished.
    let build = cache.join(format!("build-{}", std::process::id()));
    let mut cargo = run::cargo();
    cargo
        .args(["build", "--locked", "--manifest-path"])
        .arg(&manifest)
        .arg("--target-dir")
        .arg(&build);
    run::ok(&mut cargo).doing("building wasm-bindgen (it needs the crate registry once)")?;
    let made = build.join("made");
    fs::create_dir_all(&made)?;
    fs::rename(build.join("debug/wasm-bindgen"), made.join("wasm-bindgen"))?;
    std::os::unix::fs::symlink("wasm-bindgen", made.join("wasm-bindgen-test-runner"))?;
    let _ = fs::remove_dir_all(&dir);
    fs::rename(&made, &dir)?;
    fs::remove_dir_all(&build)?;
    Ok(found)
}
