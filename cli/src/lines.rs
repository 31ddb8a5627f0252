//! How are many links or texts answered in one run? One a line in, one JSON object a line out in the same order, faults in
//! their place.

use crate::{args, json, run};
use std::io::{BufRead, BufReader, BufWriter, Write};
use std::process::ExitCode;

/// Lines that are figured together, on as many threads as the machine has.
const BATCH: usize = 512;
/// Room for what has been read. No less than the standard input's own, so that nothing waits there unseen.
const ROOM: usize = 64 * 1024;

/// What is said to one line.
type Answer<'a> = &'a (dyn Fn(&str) -> serde_json::Value + Sync);

/// Answers every line. What has come is answered before more is waited for, so that a program can ask line by line.
pub fn lines(answer: Answer) -> ExitCode {
    let mut out = BufWriter::new(std::io::stdout().lock());
    let mut batch: Vec<Vec<u8>> = Vec::with_capacity(BATCH);
    let mut input = BufReader::with_capacity(ROOM, std::io::stdin().lock());
    loop {
        let mut line = Vec::new();
        let ended = match input.read_until(b'\n', &mut line) {
            Ok(0) => true,
            Ok(_) => {
                batch.push(line);
                false
            }
            Err(error) => {
                eprintln!("standard input: {error}");
                let _ = out.write_all(figured(&batch, answer).as_bytes());
                let _ = out.flush();
                return ExitCode::FAILURE;
            }
        };
        let waits = !input.buffer().contains(&b'\n');
        if batch.len() == BATCH || waits || ended {
            let written = out.write_all(figured(&batch, answer).as_bytes());
            if written.and_then(|()| out.flush()).is_err() {
                return ExitCode::FAILURE;
            }
            batch.clear();
        }
        if ended {
            return ExitCode::SUCCESS;
        }
    }
}

/// The answers of a batch, one a line, in its order.
fn figured(batch: &[Vec<u8>], answer: Answer) -> String {
    let threads = std::thread::available_parallelism().map_or(1, usize::from);
    let all =
        |part: &[Vec<u8>]| -> String { part.iter().map(|line| one_line(line, answer)).collect() };
    if threads == 1 || batch.len() < 8 {
        return all(batch);
    }
    std::thread::scope(|scope| {
        let parts: Vec<_> = batch
            .chunks(batch.len().div_ceil(threads).max(1))
            .map(|part| scope.spawn(move || all(part)))
            .collect();
        parts
            .into_iter()
            .map(|part| part.join().unwrap_or_default())
            .collect()
    })
}

fn one_line(line: &[u8], answer: Answer) -> String {
    let object = match std::str::from_utf8(line) {
        Ok(text) => answer(text.trim_start_matches('\u{feff}').trim()),
        Err(_) => fault("this line is not UTF-8 text"),
    };
    format!("{object}\n")
}

/// The answer to a link, or what is wrong with it.
pub fn answered(text: &str, options: &args::Options) -> serde_json::Value {
    if text.is_empty() {
        return fault("this line is blank");
    }
    let wanted = args::Wanted {
        target: text.to_owned(),
        fields: Vec::new(),
    };
    match run::run(&wanted, options) {
        Ok(ran) => json::answer(&ran),
        Err(says) => fault(&says),
    }
}

fn fault(says: &str) -> serde_json::Value {
    serde_json::json!({ "state": "faulty", "faults": [{ "field": "", "text": says }] })
}
