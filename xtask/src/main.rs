//! The project's own commands: what does `cargo xtask …` do, and with which words is it asked?
#![allow(
    clippy::case_sensitive_file_extension_comparisons,
    reason = "file names here are our own"
)]
#![allow(
    clippy::format_push_string,
    reason = "a few short texts; plain to read"
)]

mod args;
mod bench;
mod check;
mod fail;
mod format;
mod generate;
mod licences;
mod project;
mod run;
mod serve;
mod setup;
mod size;
mod web;

use args::Args;
use fail::{Fail, Res};
use std::process::ExitCode;

const HELP: &str = "\
cargo xtask serve [--port N] [--open]   build the release app and serve it on 127.0.0.1
cargo xtask test [--long]               every check; --long adds the long fuzz, mutants and coverage
cargo xtask bench                       times, natively and in the browser, against the floor page
cargo xtask size                        bytes of a first visit, and which crates they come from
cargo xtask dist                        a ready archive for any static host
cargo xtask fmt [--check]               format every Rust file, also those that a macro declares
cargo xtask generate [--check]          write the generated pages, or say which are stale
cargo xtask accept LINE ...             take changed answers as meant, with their lines of the change log
cargo xtask setup [--serve]             install what is missing for test (or for serve alone)

serve also takes --dir DIR (serve a folder, build nothing) and --under PATH (serve below a path).
test also takes --only STAGE[,STAGE] with the names that it prints.
`trunk build` and `trunk serve` call `cargo xtask trunk` by themselves (Trunk.toml).";

fn main() -> ExitCode {
    match command(&Args::from_env()) {
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => ExitCode::FAILURE,
        Err(why) => {
            eprintln!("{why}");
            ExitCode::FAILURE
        }
    }
}

/// Runs the command; `Ok(false)` is a command that ran and found something wrong.
fn command(args: &Args) -> Res<bool> {
    match args.command() {
        "serve" => serve::command(args).map(|()| true),
        "test" => check::command(args),
        "bench" => bench::command(args),
        "size" => size::command(args),
        "dist" => web::archive::command(args).map(|()| true),
        "trunk" => web::trunk::command(args).map(|()| true),
        "fmt" => format::command(args),
        "accept" => generate::accept(args.rest()),
        "generate" => generate::command(args),
        "setup" => setup::command(args).map(|()| true),
        "" | "help" | "--help" | "-h" => {
            println!("{HELP}");
            Ok(true)
        }
        other => Err(Fail::new(format!("no command `{other}`\n\n{HELP}"))),
    }
}
