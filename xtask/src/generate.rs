//! `cargo xtask generate [--check]`: the pages that are written from the contract and the list of the app's libraries, and
//! whether they are still true.
use crate::{args::Args, fail::Res, licences, project, run};
use std::process::Command;

/// Runs the generator, which links the core (xtask itself does not).
pub fn command(args: &Args) -> Res<bool> {
    args.allow(&["--check"], &[])?;
    let check = args.has("--check");
    // Both are told of, so no short cut.
    let listed = licences::list(check)?;
    let pages = run_generator(check).status()?.success();
    Ok(listed && pages)
}

/// The generator as a command. With `check` it writes nothing and fails where a page is stale.
pub fn run_generator(check: bool) -> Command {
    let mut cargo = run::cargo();
    cargo.args([
        "run",
        "--quiet",
        "--locked",
        "-p",
        "xtask-core",
        "--bin",
        "generate",
        "--",
    ]);
    if check {
        cargo.arg("--check");
    }
    cargo
}

/// `cargo xtask accept "line" …`: takes the answers as they are now for good, and writes the lines into the change log.
pub fn accept(lines: &[String]) -> Res<bool> {
    let mut cargo = run::cargo();
    cargo.args(["run", "--quiet", "--locked", "-p", "benchslate-tests"]);
    cargo.args(["--bin", "accept", "--"]).args(lines);
    cargo.env("BENCHSLATE_ROOT", project::root());
    Ok(cargo.status()?.success())
}
