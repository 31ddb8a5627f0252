//! What was asked on the command line?

use benchslate_core::link::system_of;
use benchslate_core::quantity::System;
use std::ffi::OsString;

pub const HELP: &str = "\
Benchslate in a terminal

  benchslate <link or id> [field=text ...]   the answer as text
      --json          the answer as JSON; faults as JSON on standard error
      --units in|mm   system of units for results and bare numbers
      --shop FILE     a my-shop file, for a calculation that is started here by its id
  benchslate --lines                         one link per line from standard input, one JSON object per line out, each
                                             as soon as the input waits; a blank or unreadable line gives its fault
  benchslate find <text> [--json]            the questions that a line of text asks, best first, each with its figure
                                             where it is complete; --units and --shop as above
  benchslate find --lines                    one text a line from standard input, one JSON object a line out
  benchslate sheets [--json]                 every calculation with its fields and results

Examples
  benchslate length length=7/16
  benchslate '#/v1/length?length=7/16%20in' --json
  benchslate find 1/4-20 tap drill
";

/// Options of a run.
#[derive(Default)]
pub struct Options {
    pub json: bool,
    pub units: Option<System>,
    pub shop: Option<String>,
}

/// A link or an id, and fields given beside it.
pub struct Wanted {
    pub target: String,
    pub fields: Vec<(String, String)>,
}

pub enum Command {
    Help,
    Sheets { json: bool },
    Lines(Options),
    Find(String, Options),
    FindLines(Options),
    One(Wanted, Options),
}

/// The arguments as text.
///
/// # Errors
/// Names the argument that is no UTF-8.
pub fn texts(args: impl Iterator<Item = OsString>) -> Result<Vec<String>, String> {
    let text = |(at, arg): (usize, OsString)| {
        arg.into_string().map_err(|arg| {
            let shown: String = arg.to_string_lossy().chars().take(60).collect();
            format!(
                "argument {}, \u{201c}{shown}\u{201d}, is not UTF-8 text; type it in UTF-8",
                at.saturating_add(1)
            )
        })
    };
    args.enumerate().map(text).collect()
}

pub fn parse(mut args: impl Iterator<Item = String>) -> Result<Command, String> {
    let mut options = Options::default();
    let mut lines = false;
    let mut words = Vec::new();
    while let Some(arg) = args.next() {
        match arg.as_str() {
            "--json" => options.json = true,
            "--lines" => lines = true,
            "--help" | "-h" => return Ok(Command::Help),
            "--units" => {
                let id = args.next().ok_or("--units takes in or mm")?;
                options.units = Some(
                    system_of(&id).ok_or_else(|| format!("--units takes in or mm, not {id}"))?,
                );
            }
            "--shop" => options.shop = Some(args.next().ok_or("--shop takes a file")?),
            flag if flag.starts_with("--") => return Err(format!("there is no option {flag}")),
            _ => words.push(arg),
        }
    }
    if words.first().is_some_and(|word| word == "find") {
        let text = words.split_off(1).join(" ");
        return match (lines, text.is_empty()) {
            (true, true) => Ok(Command::FindLines(options)),
            (true, false) => Err("find --lines reads its texts from standard input".to_owned()),
            (false, true) => Err("find takes a text, as find 1/4-20 tap drill".to_owned()),
            (false, false) => Ok(Command::Find(text, options)),
        };
    }
    if lines {
        return Ok(Command::Lines(options));
    }
    let mut words = words.into_iter();
    let target = match words.next() {
        None => return Ok(Command::Help),
        Some(word) if word == "help" => return Ok(Command::Help),
        Some(word) if word == "sheets" => return Ok(Command::Sheets { json: options.json }),
        Some(word) => word,
    };
    let mut fields = Vec::new();
    for word in words {
        let (id, text) = word
            .split_once('=')
            .ok_or_else(|| format!("\u{201c}{word}\u{201d} is not field=text"))?;
        fields.push((id.to_owned(), text.to_owned()));
    }
    Ok(Command::One(Wanted { target, fields }, options))
}
