//! The app as a WebAssembly module with its JavaScript: cargo, then wasm-bindgen.
use super::Page;
use crate::{
    fail::{Doing, Res},
    project, run,
    setup::Bindgen,
};
use std::{env, fs, path::PathBuf, process::Command};

/// What wasm-bindgen wrote.
pub struct Module {
    /// The module.
    pub wasm: Vec<u8>,
    /// The JavaScript that loads it.
    pub js: Vec<u8>,
}

/// Compiles the page's package. With `names`, functions keep their names (for the size report).
pub fn module(page: &Page, bindgen: &Bindgen, names: bool) -> Res<Module> {
    let mut cargo = run::cargo();
    cargo
        .current_dir(&page.root)
        .args([
            "build",
            "--locked",
            "--profile",
            "web",
            "--target",
            "wasm32-unknown-unknown",
            "-p",
            page.package,
        ])
        .arg("--target-dir")
        .arg(&page.target)
        .env("CARGO_ENCODED_RUSTFLAGS", remaps(page)?.join("\x1f"));
    run::ok(&mut cargo)?;

    let out = page
        .target
        .join(if names { "bindgen-names" } else { "bindgen" });
    let _ = fs::remove_dir_all(&out);
    let mut tool = Command::new(&bindgen.tool);
    tool.args([
        "--target",
        "web",
        "--no-typescript",
        "--out-name",
        "app",
        "--out-dir",
    ])
    .arg(&out);
    if !names {
        tool.args(["--remove-name-section", "--remove-producers-section"]);
    }
    tool.arg(
        page.target
            .join(format!("wasm32-unknown-unknown/web/{}.wasm", page.package)),
    );
    run::ok(&mut tool)?;
    Ok(Module {
        wasm: fs::read(out.join("app_bg.wasm")).doing("reading app_bg.wasm")?,
        js: fs::read(out.join("app.js")).doing("reading app.js")?,
    })
}

/// Panic texts name source files; these flags keep the builder's folders out of them, so that the same commit
/// gives the same bytes in any folder.
fn remaps(page: &Page) -> Res<Vec<String>> {
    let mut pairs: Vec<(PathBuf, &str)> =
        vec![(page.root.clone(), "/app"), (project::root(), "/app")];
    let sources = project::cargo_home()?.join("registry/src");
    if let Ok(registries) = fs::read_dir(&sources) {
        pairs.extend(registries.flatten().map(|r| (r.path(), "/crates")));
    }
    if let Some(sysroot) = run::output("rustc", &["--print", "sysroot"]) {
        pairs.push((PathBuf::from(sysroot).join("lib/rustlib/src/rust"), "/rust"));
    }
    let mut flags: Vec<String> = pairs
        .iter()
        .map(|(from, to)| format!("--remap-path-prefix={}={to}", from.display()))
        .collect();
    if let Ok(own) = env::var("BENCHSLATE_RUSTFLAGS") {
        flags.extend(own.split_whitespace().map(str::to_owned));
    }
    Ok(flags)
}
