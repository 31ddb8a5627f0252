//! How are many links or texts answered in one run? One a line in, one JSON object a line out in the same order, faults in
//! their place.

use crate::{args, json, run};
use std::io::{BufRead, BufReader, Write};
use std::process::ExitCode;

/// Lines that are figured together, on as many threads as the machine has.
const BATCH: usize = 512;
/// Room for what has been read. No less than the standard input's own, so that nothing waits there unseen.
const ROOM: usize = 64 * 1024;

/// Appends what is said to one line: a JSON object.
type Answer<'a> = &'a (dyn Fn(&str, &mut Vec<u8>) + Sync);

/// Answers every line. What has come is answered before more is waited for, so that a program can ask line by line.
pub fn lines(answer: Answer) -> ExitCode {
    let mut out = std::io::stdout().lock();
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
                let _ = write(&figured(&batch, answer), &mut out);
                let _ = out.flush();
                return ExitCode::FAILURE;
            }
        };
        let waits = !input.buffer().contains(&b'\n');
        if batch.len() == BATCH || waits || ended {
            let written = write(&figured(&batch, answer), &mut out);
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

/// Writes the parts of a batch one after another.
fn write(parts: &[Vec<u8>], out: &mut impl Write) -> std::io::Result<()> {
    parts.iter().try_for_each(|part| out.write_all(part))
}

/// The answers of a batch in its order, one a line, a part for each thread.
fn figured(batch: &[Vec<u8>], answer: Answer) -> Vec<Vec<u8>> {
    let threads = std::thread::available_parallelism().map_or(1, usize::from);
    let all = |part: &[Vec<u8>]| {
        let mut text = Vec::new();
        for line in part {
            one_line(line, answer, &mut text);
        }
        text
    };
    if threads == 1 || batch.len() < 8 {
        return vec![all(batch)];
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

fn one_line(line: &[u8], answer: Answer, text: &mut Vec<u8>) {
    match std::str::from_utf8(line) {
        Ok(line) => answer(line.trim_start_matches('\u{feff}').trim(), text),
        Err(_) => fault("this line is not UTF-8 text", text),
    }
    text.push(b'\n');
}

/// Appends the answer to a link, or what is wrong with it.
pub fn answered(line: &str, options: &args::Options, text: &mut Vec<u8>) {
    if line.is_empty() {
        return fault("this line is blank", text);
    }
    let wanted = args::Wanted {
        target: line.to_owned(),
        fields: Vec::new(),
    };
    match run::run(&wanted, options) {
        Ok(ran) => json::append_answer(&ran, text),
        Err(says) => fault(&says, text),
    }
}

fn fault(says: &str, text: &mut Vec<u8>) {
    json::Place::end_of(text).object(|object| {
        object.at("faults").list([says], |place, says| {
            place.object(|object| {
                object.put("field", "").put("text", says);
            });
        });
        object.put("state", "faulty");
    });
}
