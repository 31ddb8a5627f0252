//! Which thread is meant: `1/4-20`, `3/8-16 UNC`, `1/4-20 UNC-2B`, `#10-24`, `10-32`, `M10`, `M10x1.5`, `M6 x 0,75`, `M8-6H`?

mod inch;
mod metric;
mod offer;
#[cfg(test)]
mod tests;

use crate::call::{Call, CallFault, Said};
use crate::notation::{digits_meant, plain, tidy, unknown as unknown_call};
use crate::quantity::{Length, units, with_unit};
use crate::thread::ThreadCall;
use inch::{inch, sizes_of};
use metric::metric;

/// What a field for a thread takes.
pub const EXPECTED: &str = "a thread, as 1/4-20, #10-32, 3/8-16 UNC, M10 or M10x1.25";
const INCH: &str = "ASME B1.1";
const METRIC: &str = "ISO 261";

/// The thread that is meant.
///
/// # Errors
/// [`CallFault`]: empty, unfinished, no thread at all, several threads (a size without its count), or a
/// size and pitch that the standard does not have.
///
/// ```
/// use benchslate_core::calls::thread;
/// assert_eq!(thread::read("1/4-20").unwrap().to_string(), "1/4-20 UNC");
/// assert_eq!(thread::read("10-32 unf-2b").unwrap().to_string(), "#10-32 UNF-2B");
/// assert_eq!(thread::read("M6 x 0,75").unwrap().to_string(), "M6x0.75");
/// ```
pub fn read(text: &str) -> Result<ThreadCall, CallFault> {
    let unknown = || unknown_call(text, EXPECTED);
    let call = tidy(text).ok_or_else(unknown)?;
    if call.is_empty() {
        return Err(CallFault::Empty);
    }
    if matches!(call.as_str(), "#" | "NO" | "NO." | "M" | ".")
        || call.ends_with(['-', '/', '.', ','])
    {
        return Err(CallFault::Unfinished);
    }
    let other = offer::below_zero(&call).or_else(|| offer::old_number(&call));
    if let Some(fault) = other.or_else(|| offer::no_size(&call)) {
        return Err(fault);
    }
    let found = match call.strip_prefix('M') {
        Some(rest) => metric(rest.trim(), text),
        None => inch(&call),
    };
    found.unwrap_or_else(|| Err(letter_for_digit(&call).unwrap_or_else(unknown)))
}

/// `1/4-2O`: with a digit in place of the letter it reads.
fn letter_for_digit(call: &str) -> Option<CallFault> {
    let digits = digits_meant(call)?;
    let found = match digits.strip_prefix('M') {
        Some(rest) => metric(rest.trim(), &digits),
        None => inch(&digits),
    };
    let thread = found?.ok()?;
    Some(CallFault::Near {
        says: "a letter stands where a digit belongs".into(),
        cure: format!("write {thread}"),
        ways: vec![(thread.to_string(), thread.series.label().to_owned())],
    })
}

/// A field that takes a thread.
pub static CALL: Call = Call {
    name: "thread",
    read: said,
};

fn said(text: &str) -> Result<Said, CallFault> {
    let thread = read(text)?;
    let metric = thread.series.is_metric();
    let (unit, places) = if metric {
        (&units::MM, 3)
    } else {
        (&units::INCH, 4)
    };
    let pitch = if metric {
        format!("pitch {} mm", plain(thread.pitch.mm(), 3))
    } else {
        format!("{} threads per inch", plain(thread.pitch.tpi(), 3))
    };
    let reading = format!(
        "{}, major {}, {pitch}",
        thread.series.label(),
        with_unit(thread.major.mm(), unit, places)
    );
    Ok(Said {
        call: thread.to_string(),
        reading,
    })
}

/// A field that takes the size of a screw, with or without its pitch.
pub static SIZE: Call = Call {
    name: "screw size",
    read: said_size,
};

fn said_size(text: &str) -> Result<Said, CallFault> {
    let size = size(text)?;
    let (unit, places) = if size.metric {
        (&units::MM, 3)
    } else {
        (&units::INCH, 4)
    };
    let reading = format!(
        "screw {}, {}",
        size.name,
        with_unit(size.major.mm(), unit, places)
    );
    let call = if size.name.chars().all(|c| c.is_ascii_digit()) {
        format!("{} in", size.name)
    } else {
        size.name
    };
    Ok(Said {
        call: call.replace("No. ", "#"),
        reading,
    })
}

/// The size of a screw, whatever its pitch.
#[derive(Clone, PartialEq, Debug)]
pub struct ScrewSize {
    /// Metric or Unified?
    pub metric: bool,
    /// Basic major diameter.
    pub major: Length,
    /// As it is called: `No. 10`, `1/4`, `M8`.
    pub name: String,
}

/// Reads the size of a screw: `#10`, `3/8`, `M8`, or a whole call.
///
/// # Errors
/// [`CallFault`] as for [`read`]; a bare small number (4) can be a number or inches, and is asked.
pub fn size(text: &str) -> Result<ScrewSize, CallFault> {
    let of_thread = |thread: ThreadCall| ScrewSize {
        metric: thread.series.is_metric(),
        major: thread.major,
        name: thread.size(),
    };
    let fault = match read(text) {
        Ok(thread) => return Ok(of_thread(thread)),
        Err(fault) => fault,
    };
    let call = tidy(text).unwrap_or_default();
    if offer::below_zero(&call)
        .or_else(|| offer::old_number(&call))
        .is_some()
    {
        return Err(fault);
    }
    let front = ["INCH", "IN.", "IN"]
        .iter()
        .find_map(|mark| call.strip_suffix(mark));
    let found = sizes_of(front.unwrap_or(&call).trim()).unwrap_or_default();
    let found: Vec<_> = found
        .into_iter()
        .filter(|size| front.is_none() || !size.name.starts_with("No."))
        .collect();
    match found.as_slice() {
        [one] => Ok(ScrewSize {
            metric: false,
            major: one.major(),
            name: one.name.to_owned(),
        }),
        [number, inch] => Err(CallFault::Ambiguous(vec![
            (
                number.name.replace("No. ", "#"),
                format!("number {}", inch.name),
            ),
            (format!("{} in", inch.name), format!("{} in", inch.name)),
        ])),
        _ => Err(fault),
    }
}

fn calls_of(threads: &[ThreadCall]) -> Vec<String> {
    threads.iter().map(ToString::to_string).collect()
}
