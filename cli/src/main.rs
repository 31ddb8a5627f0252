//! Benchslate in a terminal: opens a link, or a sheet by id with fields, and prints the answer as text or JSON.

mod args;
mod contract;
mod json;
mod run;
mod text;

use std::io::{BufRead, BufWriter, Write};
use std::process::ExitCode;

fn main() -> ExitCode {
    match args::parse(std::env::args().skip(1)) {
        Ok(args::Command::Help) => {
            say(args::HELP);
            ExitCode::SUCCESS
        }
        Ok(args::Command::Sheets { json }) => {
            say(&(contract::list(json) + "\n"));
            ExitCode::SUCCESS
        }
        Ok(args::Command::Lines(options)) => lines(&options),
        Ok(args::Command::One(wanted, options)) => one(&wanted, &options),
        Err(says) => {
            eprintln!("{says}\n{}", args::HELP);
            ExitCode::from(2)
        }
    }
}

/// Writes to standard output; a reader that has gone away is no fault of ours.
fn say(text: &str) {
    let _ = std::io::stdout().lock().write_all(text.as_bytes());
}

fn one(wanted: &args::Wanted, options: &args::Options) -> ExitCode {
    let ran = match run::run(wanted, options) {
        Ok(ran) => ran,
        Err(says) => {
            if options.json {
                eprintln!("{}", serde_json::json!({ "fault": says }));
            } else {
                eprintln!("{says}");
            }
            return ExitCode::from(2);
        }
    };
    let good = ran.outcome.answer.is_complete();
    if options.json {
        say(&format!("{}\n", json::answer(&ran)));
        if !good {
            eprintln!("{}", json::faults(&ran));
        }
    } else {
        say(&text::answer(&ran));
        if !good {
            eprint!("{}", text::faults(&ran));
        }
    }
    if good {
        ExitCode::SUCCESS
    } else {
        ExitCode::FAILURE
    }
}

/// Lines that are figured together, on as many threads as the machine has.
const BATCH: usize = 512;

/// One link a line in, one JSON object a line out, in the same order; faults stand in place.
fn lines(options: &args::Options) -> ExitCode {
    let mut out = BufWriter::new(std::io::stdout().lock());
    let mut batch = Vec::with_capacity(BATCH);
    let mut input = std::io::stdin().lock().lines();
    loop {
        let line = input.next();
        let ended = line.is_none();
        match line {
            Some(Ok(line)) if !line.trim().is_empty() => batch.push(line),
            Some(Err(_)) => return ExitCode::FAILURE,
            _ => {}
        }
        if batch.len() == BATCH || ended {
            if out.write_all(figured(&batch, options).as_bytes()).is_err() {
                return ExitCode::FAILURE;
            }
            batch.clear();
        }
        if ended {
            break;
        }
    }
    if out.flush().is_ok() {
        ExitCode::SUCCESS
    } else {
        ExitCode::FAILURE
    }
}

/// The answers of a batch, one a line, in its order.
fn figured(batch: &[String], options: &args::Options) -> String {
    let threads = std::thread::available_parallelism().map_or(1, usize::from);
    let share = batch.len().div_ceil(threads).max(1);
    std::thread::scope(|scope| {
        let parts: Vec<_> = batch
            .chunks(share)
            .map(|part| {
                scope.spawn(move || {
                    part.iter()
                        .map(|line| one_line(line, options))
                        .collect::<String>()
                })
            })
            .collect();
        parts
            .into_iter()
            .map(|part| part.join().unwrap_or_default())
            .collect()
    })
}

fn one_line(line: &str, options: &args::Options) -> String {
    let wanted = args::Wanted {
        target: line.to_owned(),
        fields: Vec::new(),
    };
    let object = match run::run(&wanted, options) {
        Ok(ran) => json::answer(&ran),
        Err(says) => {
            serde_json::json!({ "state": "faulty", "faults": [{ "field": "", "text": says }] })
        }
    };
    format!("{object}\n")
}
