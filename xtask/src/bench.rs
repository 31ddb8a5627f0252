//! `cargo xtask bench`: times natively, through the terminal door, and in the browser against the floor page measured
//! in the same run.
use crate::{
    args::Args,
    check,
    fail::{Doing, Fail, Res},
    project, run, setup,
    web::{Page, site},
};
use std::{
    fs::File,
    io::Write,
    process::{Command, Stdio},
    time::Instant,
};

/// This many links through `--lines` …
const LINKS: usize = 10_000;
/// … may take this long.
const LINKS_SECONDS: f64 = 1.0;

/// Runs all three; with an option, one.
pub fn command(args: &Args) -> Res<bool> {
    args.allow(&["--native", "--browser"], &[])?;
    let mut ok = true;
    if !args.has("--browser") {
        ok &= native()?;
        ok &= lines()?;
    }
    if !args.has("--native") {
        ok &= browser()?;
    }
    println!(
        "{}",
        if ok {
            "all within their gates"
        } else {
            "some over their gates"
        }
    );
    Ok(ok)
}

fn program(name: &str, package: &str) -> Res<Command> {
    run::ok(run::cargo().args([
        "build",
        "--release",
        "--quiet",
        "--locked",
        "-p",
        package,
        "--bin",
        name,
    ]))?;
    Ok(Command::new(project::target().join("release").join(name)))
}

fn native() -> Res<bool> {
    Ok(program("bench", "xtask-core")?.status()?.success())
}

/// Ten thousand links through one process.
fn lines() -> Res<bool> {
    let examples = program("bench", "xtask-core")?
        .arg("links")
        .output()?
        .stdout;
    let examples = String::from_utf8_lossy(&examples).into_owned();
    let links: Vec<&str> = examples
        .lines()
        .filter(|l| !l.is_empty())
        .cycle()
        .take(LINKS)
        .collect();
    if links.is_empty() {
        return Err(Fail::new("no sheet has an example"));
    }
    let path = project::target().join("xtask-logs/links.txt");
    std::fs::create_dir_all(project::target().join("xtask-logs"))?;
    writeln!(File::create(&path)?, "{}", links.join("\n"))?;
    let mut door = program("benchslate", "benchslate")?;
    let started = Instant::now();
    let out = door
        .arg("--lines")
        .stdin(File::open(&path)?)
        .stderr(Stdio::inherit())
        .output()
        .doing("benchslate --lines")?;
    let seconds = started.elapsed().as_secs_f64();
    let answers = String::from_utf8_lossy(&out.stdout).lines().count();
    let ok = answers == LINKS && seconds <= LINKS_SECONDS;
    let verdict = if ok { "" } else { "  OVER" };
    println!(
        "\n{LINKS} links through --lines: {answers} answers, {seconds:.2} s, gate {LINKS_SECONDS} s{verdict}\n"
    );
    Ok(ok)
}

fn browser() -> Res<bool> {
    let bindgen = setup::for_build()?;
    let browser = setup::for_browser()?;
    // The page asks it for a link of each sheet.
    program("bench", "xtask-core")?;
    site::build(&Page::app(), &bindgen)?;
    site::build(&Page::floor(), &bindgen)?;
    let mut node = Command::new("node");
    node.arg("tests/browser/bench.mjs")
        .current_dir(project::root())
        .env("BENCHSLATE_FLOOR", Page::floor().site);
    check::tell(&mut node, &browser.chromium)?;
    Ok(node.status()?.success())
}

#[cfg(test)]
mod tests {
    use crate::project;

    #[test]
    fn floor_is_built_with_the_same_profile() {
        let profile = |file: &str| {
            let text = std::fs::read_to_string(project::root().join(file)).unwrap();
            let (_, from) = text.split_once("[profile.web]").unwrap();
            from.split("\n[")
                .next()
                .unwrap()
                .split("\n\n")
                .next()
                .unwrap()
                .trim()
                .to_owned()
        };
        assert_eq!(profile("Cargo.toml"), profile("tests/floor/Cargo.toml"));
    }
}
