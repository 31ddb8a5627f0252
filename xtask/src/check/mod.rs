//! `cargo xtask test`: every check, one line a stage, and how many tests passed and failed in all.
mod count;
mod long;
mod stages;

use crate::{
    args::Args,
    fail::{Doing, Fail, Res},
    project, run,
    setup::{self, Bindgen, Browser},
};
use count::Count;
pub use stages::tell;
use std::{
    fs::{self, File},
    io::{IsTerminal, Write},
    path::PathBuf,
    process::Command,
    time::Instant,
};

/// What the stages share.
struct Bench {
    bindgen: Bindgen,
    browser: Browser,
    logs: PathBuf,
}

/// A stage: its name, and what it runs.
type Stage = (&'static str, fn(&Bench) -> Res<Count>);

/// Runs all stages, also after one that failed.
pub fn command(args: &Args) -> Res<bool> {
    args.allow(&["--long"], &["--only"])?;
    let mut list: Vec<Stage> = stages::ALL.to_vec();
    if args.has("--long") {
        list.extend_from_slice(long::ALL);
    }
    if let Some(only) = args.value("--only") {
        let names: Vec<&str> = only.split(',').collect();
        if let Some(odd) = names
            .iter()
            .find(|n| !list.iter().any(|(name, _)| name == *n))
        {
            let known: Vec<&str> = list.iter().map(|(name, _)| *name).collect();
            return Err(Fail::new(format!(
                "no stage `{odd}`; the stages are {}",
                known.join(", ")
            )));
        }
        list.retain(|(name, _)| names.contains(name));
    }
    let bench = Bench {
        bindgen: setup::for_build()?,
        browser: setup::for_browser()?,
        logs: project::target().join("xtask-logs"),
    };
    fs::create_dir_all(&bench.logs)?;

    let mut sum = Count::default();
    for (name, stage) in list {
        let started = Instant::now();
        if std::io::stdout().is_terminal() {
            print!("{name} …\r");
            std::io::stdout().flush()?;
        }
        // A stage that cannot even run is one failure, and says why in its log.
        let count = stage(&bench).unwrap_or_else(|why| {
            bench.note(name, &why.to_string());
            Count {
                failed: 1,
                ..Count::default()
            }
        });
        let verdict = if count.failed == 0 { "ok" } else { "FAILED" };
        println!(
            "{name:<12} {verdict:<6} {:>6} passed {:>4} failed {:>7.1} s  {}",
            count.passed,
            count.failed,
            started.elapsed().as_secs_f64(),
            count.note
        );
        if count.failed > 0 {
            bench.print_tail(name);
        }
        sum.passed += count.passed;
        sum.failed += count.failed;
    }
    println!("{} passed, {} failed", sum.passed, sum.failed);
    Ok(sum.failed == 0)
}

impl Bench {
    /// The file that holds a stage's output.
    fn log(&self, stage: &str) -> PathBuf {
        self.logs.join(format!("{stage}.log"))
    }

    /// Runs a command with its output in the stage's log. True where it succeeded; the text is what it printed.
    fn logged(&self, stage: &str, command: &mut Command) -> Res<(bool, String)> {
        let path = self.log(stage);
        let mut file = File::create(&path).doing(path.display())?;
        writeln!(file, "$ {}", run::shown(command))?;
        let status = command
            .env("CARGO_TERM_COLOR", "never")
            .stdin(std::process::Stdio::null())
            .stdout(file.try_clone()?)
            .stderr(file)
            .status()
            .doing(run::shown(command))?;
        Ok((
            status.success(),
            String::from_utf8_lossy(&fs::read(&path)?).into_owned(),
        ))
    }

    /// Adds a line to the stage's log; a log that cannot be written shows on the terminal instead.
    fn note(&self, stage: &str, text: &str) {
        let file = File::options()
            .create(true)
            .append(true)
            .open(self.log(stage));
        if file.and_then(|mut f| writeln!(f, "{text}")).is_err() {
            eprintln!("{text}");
        }
    }

    fn print_tail(&self, stage: &str) {
        let path = self.log(stage);
        let text = fs::read(&path)
            .map(|b| String::from_utf8_lossy(&b).into_owned())
            .unwrap_or_default();
        // First what failed, by name, then the end, which says why the last one did.
        let failed = |l: &&str| {
            l.ends_with("... FAILED") || l.starts_with("FAILED") || l.starts_with("error")
        };
        let lines: Vec<&str> = text.lines().collect();
        for line in text.lines().filter(failed).take(30) {
            println!("    {line}");
        }
        println!("    …");
        for line in lines.iter().skip(lines.len().saturating_sub(25)) {
            println!("    {line}");
        }
        println!("---");
    }
}
