//! Benchslate in a terminal: opens a link, or a sheet by id with fields, and prints the answer as text or JSON.

mod args;
mod contract;
mod find;
mod json;
mod lines;
mod run;
mod text;

use std::io::Write;
use std::process::ExitCode;

fn main() -> ExitCode {
    let words = args::texts(std::env::args_os().skip(1));
    match words.and_then(|words| args::parse(words.into_iter())) {
        Ok(args::Command::Help) => {
            say(args::HELP);
            ExitCode::SUCCESS
        }
        Ok(args::Command::Sheets { json }) => {
            say(&(contract::list(json) + "\n"));
            ExitCode::SUCCESS
        }
        Ok(args::Command::Lines(options)) => {
            lines::lines(&|line, text| lines::answered(line, &options, text))
        }
        Ok(args::Command::Find(text, options)) => found(&text, &options),
        Ok(args::Command::FindLines(options)) => match find::Finder::of(&options) {
            Ok(finder) => lines::lines(&|line, text| {
                text.extend_from_slice(finder.json(line).to_string().as_bytes());
            }),
            Err(says) => failed(&says, &options),
        },
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

fn failed(says: &str, options: &args::Options) -> ExitCode {
    if options.json {
        eprintln!("{}", serde_json::json!({ "fault": says }));
    } else {
        eprintln!("{says}");
    }
    ExitCode::from(2)
}

fn found(text: &str, options: &args::Options) -> ExitCode {
    match find::Finder::of(options) {
        Ok(finder) if options.json => say(&format!("{}\n", finder.json(text))),
        Ok(finder) => say(&finder.text(text)),
        Err(says) => return failed(&says, options),
    }
    ExitCode::SUCCESS
}

fn one(wanted: &args::Wanted, options: &args::Options) -> ExitCode {
    let ran = run::run(wanted, options).and_then(|ran| Ok((ran, run::shop(options)?)));
    let (ran, shop) = match ran {
        Ok(ran) => ran,
        Err(says) => return failed(&says, options),
    };
    let good = ran.outcome.answer.is_complete();
    if options.json {
        say(&format!("{}\n", json::answer(&ran)));
        if !good {
            eprintln!("{}", json::faults(&ran));
        }
    } else {
        say(&text::answer(&ran, &shop));
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
