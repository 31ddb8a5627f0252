//! Is every Rust file formatted? `cargo fmt` follows `mod` lines only and so misses the files that a macro declares
//! (each sheet's own) and the floor page, which is a workspace of its own: here rustfmt is given every file by name.
use crate::{
    args::Args,
    fail::{Doing, Fail, Res},
    project, run,
};
use std::process::Command;

/// `cargo xtask fmt [--check]`.
pub fn command(args: &Args) -> Res<bool> {
    args.allow(&["--check"], &[])?;
    let status = rustfmt(args.has("--check"))?.status().doing("rustfmt")?;
    Ok(status.success())
}

/// rustfmt over all files, to write them or (`check`) to say which differ.
pub fn rustfmt(check: bool) -> Res<Command> {
    let mut git = Command::new("git");
    git.current_dir(project::root());
    git.args(["ls-files", "--cached", "--others", "--exclude-standard"])
        .arg("*.rs");
    let list = git.output().doing("git ls-files")?;
    if !list.status.success() {
        return Err(Fail::new(format!("failed: {}", run::shown(&git))));
    }
    let mut rustfmt = Command::new("rustfmt");
    rustfmt.current_dir(project::root());
    rustfmt.args(["--edition", "2024"]);
    if check {
        rustfmt.arg("--check");
    }
    rustfmt.args(String::from_utf8_lossy(&list.stdout).lines());
    Ok(rustfmt)
}
