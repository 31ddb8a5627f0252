//! What `--long` adds: the long fuzz, a mutation run over the domains, and coverage.
use super::{Bench, Count, Stage};
use crate::{
    fail::{Fail, Res},
    run,
};

/// In this order.
pub const ALL: &[Stage] = &[("fuzz", fuzz), ("mutants", mutants), ("coverage", coverage)];

/// What is mutated: where a figure or a word is made.
const ROOMS: &[&str] = &[
    "sheets",
    "powers",
    "machine/isolate",
    "cutting",
    "fastener",
    "fit",
    "pin",
    "thread",
    "quantity",
];

/// Inputs of one long fuzz test; the usual run takes fewer.
const INPUTS: &str = "1000000";

fn fuzz(bench: &Bench) -> Res<Count> {
    let mut cargo = run::cargo();
    cargo.args([
        "test",
        "--release",
        "--locked",
        "--no-fail-fast",
        "-p",
        "benchslate-core",
        "--tests",
    ]);
    cargo.env("BENCHSLATE_FUZZ", INPUTS);
    let (ok, text) = bench.logged("fuzz", &mut cargo)?;
    Ok(Count::of_cargo(ok, &text).at_least(1))
}

fn mutants(bench: &Bench) -> Res<Count> {
    installed("cargo-mutants", "cargo install --locked cargo-mutants")?;
    let mut cargo = run::cargo();
    cargo.args([
        "mutants",
        "--package",
        "benchslate-core",
        "--test-package",
        "benchslate-core,benchslate-tests",
    ]);
    for room in ROOMS {
        cargo.args(["--file", &format!("core/src/{room}/**")]);
    }
    // Nearly ten thousand mutants at a minute or more each: a share of them a run, another share by asking for it.
    let shard = std::env::var("BENCHSLATE_SHARD").unwrap_or_else(|_| "0/400".to_owned());
    cargo.args(["--shard", &shard, "--sharding", "round-robin"]);
    cargo.args([
        "--jobs",
        "2",
        "--output",
        "target/xtask-logs",
        "--no-shuffle",
    ]);
    let (ok, text) = bench.logged("mutants", &mut cargo)?;
    let last = text
        .lines()
        .rev()
        .find(|l| l.contains("mutants tested"))
        .unwrap_or_default();
    Ok(Count {
        note: last.to_owned(),
        ..Count::one(ok)
    })
}

fn coverage(bench: &Bench) -> Res<Count> {
    installed(
        "cargo-llvm-cov",
        "cargo install --locked cargo-llvm-cov && rustup component add llvm-tools",
    )?;
    let words = [
        "llvm-cov",
        "--locked",
        "-p",
        "benchslate-core",
        "-p",
        "benchslate-tests",
        "--summary-only",
    ];
    let (ok, text) = bench.logged("coverage", run::cargo().args(words))?;
    let total = text
        .lines()
        .find(|l| l.starts_with("TOTAL"))
        .unwrap_or_default();
    Ok(Count {
        note: total.split_whitespace().collect::<Vec<_>>().join(" "),
        ..Count::one(ok)
    })
}

fn installed(program: &str, command: &str) -> Res {
    match run::find(program) {
        Some(_) => Ok(()),
        None => Err(Fail::cure(
            &format!("{program} is missing; only --long needs it."),
            command,
        )),
    }
}
