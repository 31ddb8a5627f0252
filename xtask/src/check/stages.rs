//! The stages of `cargo xtask test`, cheapest first.
use super::{Bench, Count, Stage};
use crate::{
    fail::Res,
    format, generate, licences, project, run, size,
    web::{Page, site},
};
use std::process::Command;

/// Fewer wasm tests than this means that they are no longer collected.
const WASM_FLOOR: u32 = 5;
/// The same for the tests in the browser.
const BROWSER_FLOOR: u32 = 65;
/// The same for the native tests.
const NATIVE_FLOOR: u32 = 780;

/// In this order.
pub const ALL: &[Stage] = &[
    ("fmt", fmt),
    ("clippy", clippy),
    ("clippy-wasm", clippy_wasm),
    ("docs", docs),
    ("native", native),
    ("generated", generated),
    ("wasm", wasm),
    ("build", build),
    ("browser", browser),
    ("size", sizes),
];

fn fmt(bench: &Bench) -> Res<Count> {
    let (ok, _) = bench.logged("fmt", &mut format::rustfmt(true)?)?;
    Ok(Count::one(ok))
}

fn clippy(bench: &Bench) -> Res<Count> {
    let words = [
        "clippy",
        "--workspace",
        "--all-targets",
        "--locked",
        "--",
        "-D",
        "warnings",
    ];
    let (ok, _) = bench.logged("clippy", run::cargo().args(words))?;
    Ok(Count::one(ok))
}

fn clippy_wasm(bench: &Bench) -> Res<Count> {
    let words = [
        "clippy",
        "-p",
        "benchslate-app",
        "--target",
        "wasm32-unknown-unknown",
        "--all-targets",
        "--locked",
    ];
    let (ok, _) = bench.logged(
        "clippy-wasm",
        run::cargo().args(words).args(["--", "-D", "warnings"]),
    )?;
    Ok(Count::one(ok))
}

fn docs(bench: &Bench) -> Res<Count> {
    let mut cargo = run::cargo();
    cargo
        .args(["doc", "--workspace", "--no-deps", "--locked"])
        .env("RUSTDOCFLAGS", "-D warnings");
    let (ok, _) = bench.logged("docs", &mut cargo)?;
    Ok(Count::one(ok))
}

fn native(bench: &Bench) -> Res<Count> {
    let words = ["test", "--workspace", "--locked", "--no-fail-fast"];
    let (ok, text) = bench.logged("native", run::cargo().args(words))?;
    Ok(Count::of_cargo(ok, &text).at_least(NATIVE_FLOOR))
}

fn generated(bench: &Bench) -> Res<Count> {
    let (pages, _) = bench.logged("generated", &mut generate::run_generator(true))?;
    let listed = licences::list(true)?;
    Ok(Count::one(pages && listed))
}

fn wasm(bench: &Bench) -> Res<Count> {
    // The digits of native code, for the test that compares them with those of WebAssembly.
    let mut digests = run::cargo();
    digests.args([
        "run",
        "--quiet",
        "--locked",
        "-p",
        "benchslate-tests",
        "--bin",
        "parity",
    ]);
    let digests = digests.output()?;
    if !digests.status.success() {
        bench.note("wasm", &String::from_utf8_lossy(&digests.stderr));
        return Ok(Count::one(false));
    }
    let mut cargo = run::cargo();
    cargo
        .env(
            "BENCHSLATE_PARITY",
            String::from_utf8_lossy(&digests.stdout).trim(),
        )
        .args([
            "test",
            "-p",
            "benchslate-app",
            "--target",
            "wasm32-unknown-unknown",
            "--tests",
            "--locked",
            "--no-fail-fast",
        ])
        .env("CHROMEDRIVER", &bench.browser.driver)
        .env(
            "CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUNNER",
            &bench.bindgen.test_runner,
        );
    let (ok, text) = bench.logged("wasm", &mut cargo)?;
    Ok(Count::of_cargo(ok, &text).at_least(WASM_FLOOR))
}

fn build(bench: &Bench) -> Res<Count> {
    // The compiler's own output goes to the terminal here; a failure names the command that shows it again.
    bench.note("build", "cargo xtask serve shows the build's own output");
    site::build(&Page::app(), &bench.bindgen)?;
    // The terminal door, which the browser tests compare with.
    let (ok, _) = bench.logged(
        "build",
        run::cargo().args(["build", "-p", "benchslate", "--locked"]),
    )?;
    Ok(Count::one(ok))
}

fn browser(bench: &Bench) -> Res<Count> {
    let (ok, text) = bench.logged("browser", &mut node("tests/browser/run.mjs", bench)?)?;
    Ok(Count::of_browser(ok, &text).at_least(BROWSER_FLOOR))
}

/// Node with a script of the project, told where everything is.
fn node(script: &str, bench: &Bench) -> Res<Command> {
    let mut node = Command::new("node");
    node.arg(script).current_dir(project::root());
    tell(&mut node, &bench.browser.chromium)?;
    Ok(node)
}

/// What the scripts in `tests/browser` read from their environment.
pub fn tell(node: &mut Command, chromium: &std::path::Path) -> Res {
    node.env("BENCHSLATE_SITE", Page::app().site)
        .env("BENCHSLATE_XTASK", std::env::current_exe()?)
        .env("BENCHSLATE_CLI", project::target().join("debug/benchslate"))
        .env("BENCHSLATE_CHROMIUM", chromium);
    Ok(())
}

fn sizes(bench: &Bench) -> Res<Count> {
    let visit = size::Visit::of(&site::files_of(&Page::app())?)?;
    bench.note("size", &visit.table());
    let mut count = Count::one(visit.within_gate());
    count.note = visit.line();
    Ok(count)
}
