//! Which thread is meant: `1/4-20`, `3/8-16 UNC`, `1/4-20 UNC-2B`, `#10-24`, `10-32`, `M10`, `M10x1.5`, `M6 x 0,75`, `M8-6H`?

use super::CallFault;
use super::notation::{decimal, mixed, not_defined, plain, tidy, unknown as unknown_call, whole};
use crate::quantity::{Length, Pitch, units, with_unit};
use crate::sheet::{Call, Said};
use crate::standards::unified::UnifiedSize;
use crate::standards::{metric_threads, unified};
use crate::thread::{ThreadCall, ThreadClass, ThreadSeries};

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
    match call.strip_prefix('M') {
        Some(rest) => metric(rest.trim(), text).unwrap_or_else(|| Err(unknown())),
        None => inch(&call).unwrap_or_else(|| Err(unknown())),
    }
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

/// Splits a class off the end: `1/4-20 UNC-2B` gives `1/4-20 UNC` and 2B.
fn class_of(call: &str) -> (&str, Option<ThreadClass>) {
    let Some((front, tail)) = call.rsplit_once(['-', ' ']) else {
        return (call, None);
    };
    let tail = tail.trim();
    let front = front.trim().trim_end_matches('-').trim();
    let class = match tail {
        "1A" => Some(ThreadClass::A1),
        "2A" => Some(ThreadClass::A2),
        "3A" => Some(ThreadClass::A3),
        "1B" => Some(ThreadClass::B1),
        "2B" => Some(ThreadClass::B2),
        "3B" => Some(ThreadClass::B3),
        _ => None,
    };
    if class.is_some() {
        (front, class)
    } else {
        (call, None)
    }
}

fn inch(call: &str) -> Option<Result<ThreadCall, CallFault>> {
    let (body, class) = class_of(call);
    let (body, series) = series_of(body);
    // The last dash parts the count, unless a fraction follows it (1-1/8) or there is none yet.
    let (size_text, count) = match body.rsplit_once('-') {
        Some((front, tail)) if !tail.contains('/') => (front.trim(), Some(tail.trim())),
        _ => (body, None),
    };
    let size_text = size_text
        .trim_end_matches("INCH")
        .trim_end_matches("IN.")
        .trim_end_matches("IN")
        .trim();
    let Some(count) = count else {
        return size_alone(size_text, series, class);
    };
    let count = count.trim_end_matches("TPI").trim();
    let tpi = decimal(count).filter(|tpi| (2.0..=100.0).contains(tpi))?;
    let sizes = sizes_of(size_text)?;
    let found: Vec<ThreadCall> = sizes
        .iter()
        .filter_map(|size| ThreadCall::unified(size.major(), tpi))
        .map(|thread| ThreadCall { class, ..thread })
        .collect();
    Some(match (found.as_slice(), series) {
        ([one], None | Some(ThreadSeries::Un)) => Ok(*one),
        ([one], Some(wanted)) if one.series == wanted => Ok(*one),
        ([one], Some(_)) => Err(not_defined(
            &body_name(size_text, count, series),
            INCH,
            &[one.to_string()],
        )),
        ([], Some(ThreadSeries::Uns)) => special(&sizes, size_text, tpi, class)?,
        ([], _) => {
            let near = sizes
                .first()
                .map_or_else(Vec::new, |size| calls_of(&ThreadCall::all_of_unified(size)));
            Err(not_defined(
                &body_name(size_text, count, series),
                INCH,
                &near,
            ))
        }
        (several, _) => Err(CallFault::Ambiguous(
            several
                .iter()
                .map(|one| (one.short(), one.series.label().to_owned()))
                .collect(),
        )),
    })
}

fn body_name(size: &str, count: &str, series: Option<ThreadSeries>) -> String {
    let mark = series.map_or(String::new(), |series| format!(" {}", series.mark()));
    format!("{size}-{count}{mark}")
}

fn calls_of(threads: &[ThreadCall]) -> Vec<String> {
    threads.iter().map(ToString::to_string).collect()
}

fn series_of(body: &str) -> (&str, Option<ThreadSeries>) {
    for (mark, series) in [
        ("UNEF", ThreadSeries::Unef),
        ("UNC", ThreadSeries::Unc),
        ("UNF", ThreadSeries::Unf),
        ("UNS", ThreadSeries::Uns),
        ("UN", ThreadSeries::Un),
        ("NC", ThreadSeries::Unc),
        ("NF", ThreadSeries::Unf),
    ] {
        if let Some(front) = body.strip_suffix(mark) {
            return (front.trim().trim_end_matches('-').trim(), Some(series));
        }
    }
    (body, None)
}

/// A size without a count: the series decides, or the reader is asked.
fn size_alone(
    text: &str,
    series: Option<ThreadSeries>,
    class: Option<ThreadClass>,
) -> Option<Result<ThreadCall, CallFault>> {
    let sizes = sizes_of(text)?;
    let fits = |thread: &ThreadCall| series.is_none_or(|wanted| wanted == thread.series);
    let found: Vec<ThreadCall> = sizes
        .iter()
        .flat_map(|size| ThreadCall::all_of_unified(size))
        .filter(|thread| fits(thread))
        .map(|thread| ThreadCall { class, ..thread })
        .collect();
    Some(match found.as_slice() {
        [one] => Ok(*one),
        [] => {
            let near: Vec<String> = sizes
                .iter()
                .flat_map(|size| calls_of(&ThreadCall::all_of_unified(size)))
                .collect();
            Err(not_defined(
                &format!("{text} {}", series.map_or("", ThreadSeries::mark)),
                INCH,
                &near,
            ))
        }
        several => Err(CallFault::Ambiguous(
            several
                .iter()
                .map(|one| (one.short(), one.series.label().to_owned()))
                .collect(),
        )),
    })
}

/// The sizes that a text can mean: a bare `4` is No. 4 and 4 in, and the count will tell.
fn sizes_of(text: &str) -> Option<Vec<&'static UnifiedSize>> {
    let numbered = ["#", "NO.", "NO "]
        .iter()
        .find_map(|mark| text.strip_prefix(mark));
    if let Some(number) = numbered {
        return Some(number_size(whole(number)?).into_iter().collect());
    }
    if let Some((over, under)) = mixed(text) {
        let major = Length::from_inches(f64::from(over) / f64::from(under));
        return Some(unified::of_major(major).into_iter().collect());
    }
    let inches = decimal(text)?;
    let by_inch = unified::SIZES
        .iter()
        .find(|size| (size.major_in - inches).abs() < 0.00006);
    let by_number = whole(text).and_then(number_size);
    Some(by_number.into_iter().chain(by_inch).collect())
}

fn number_size(number: u16) -> Option<&'static UnifiedSize> {
    unified::of_name(&format!("No. {number}"))
}

/// A special thread: Unified form at a diameter and count that no series has. It must be called UNS.
fn special(
    sizes: &[&'static UnifiedSize],
    text: &str,
    tpi: f64,
    class: Option<ThreadClass>,
) -> Option<Result<ThreadCall, CallFault>> {
    let typed = mixed(text)
        .map(|(over, under)| f64::from(over) / f64::from(under))
        .or_else(|| decimal(text).filter(|_| text.contains('.')))
        .or_else(|| decimal(text).filter(|inches| tpi < 30.0 && *inches <= 6.0));
    let inches = match (sizes, typed) {
        ([size], _) => size.major_in,
        (_, Some(inches)) => inches,
        _ => return None,
    };
    let major = Length::from_inches(inches);
    let pitch = Pitch::from_tpi(tpi);
    // Past this a screw of that pitch has hardly a core; the standard's formulas stop at 6 in.
    if !(0.06..=6.0).contains(&inches) || pitch.inches() * 3.0 > inches {
        return Some(Err(not_defined(&format!("{text}-{tpi} UNS"), INCH, &[])));
    }
    Some(Ok(ThreadCall {
        series: ThreadSeries::Uns,
        major,
        pitch,
        class,
    }))
}

/// Case tells the screw from the hole (6h, 6H), so the text as typed is looked at for the class.
fn metric(rest: &str, typed: &str) -> Option<Result<ThreadCall, CallFault>> {
    let (body, class) = match (rest.rsplit_once(['-', ' ']), typed.trim_end()) {
        (Some((front, "6H")), all) if all.ends_with('H') => (front, Some(ThreadClass::H6)),
        (Some((front, "6H")), _) => (front, Some(ThreadClass::H6External)),
        (Some((front, "6G")), all) if all.ends_with('g') => (front, Some(ThreadClass::G6)),
        _ => (rest, None),
    };
    let body = body.trim().trim_end_matches('-').trim();
    let (size, pitch) = match body.split_once('X') {
        Some((_, "")) => return Some(Err(CallFault::Unfinished)),
        Some((size, pitch)) => (
            size.trim(),
            Some(pitch.trim().trim_end_matches("MM").trim()),
        ),
        None => (body, None),
    };
    let major = Length::from_mm(decimal(size)?);
    if major > Length::from_mm(68.0) {
        return Some(Err(CallFault::NoSource {
            says: format!("our table of {METRIC} ends at M68"),
            cure: "take the figures of larger threads from the standard".to_owned(),
        }));
    }
    let Some(row) = metric_threads::of_major(major) else {
        return Some(Err(not_defined(
            &format!("M{size}"),
            METRIC,
            &nearest_metric(major),
        )));
    };
    let thread = match pitch {
        Some(pitch) => ThreadCall::metric(major, decimal(pitch)?),
        None if row.coarse_mm > 0.0 => ThreadCall::metric(major, row.coarse_mm),
        None => None,
    };
    let what = pitch.map_or_else(
        || format!("coarse M{size}"),
        |pitch| format!("M{size}x{pitch}"),
    );
    let found = thread.map(|thread| ThreadCall { class, ..thread });
    Some(
        found.ok_or_else(|| not_defined(&what, METRIC, &calls_of(&ThreadCall::all_of_metric(row)))),
    )
}

fn nearest_metric(major: Length) -> Vec<String> {
    let mut sizes: Vec<_> = metric_threads::SIZES.iter().collect();
    crate::order::sort_by(&mut sizes, |a, b| {
        let off = |size: &metric_threads::MetricSize| (size.major() - major).abs().mm();
        off(a).total_cmp(&off(b))
    });
    sizes
        .into_iter()
        .take(2)
        .filter_map(|size| {
            ThreadCall::all_of_metric(size)
                .first()
                .map(ToString::to_string)
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_thread_reads_back_to_itself() {
        for thread in ThreadCall::all() {
            assert_eq!(read(&thread.short()).as_ref(), Ok(&thread));
            assert_eq!(read(&thread.to_string()).as_ref(), Ok(&thread));
            for class in ThreadClass::ALL {
                if class.is_metric() == thread.series.is_metric() {
                    let with = thread.with_class(class);
                    assert_eq!(read(&with.to_string()).as_ref(), Ok(&with));
                }
            }
        }
    }

    #[test]
    fn shop_writing() {
        for (text, full) in [
            ("1/4-20", "1/4-20 UNC"),
            ("1/4 - 20", "1/4-20 UNC"),
            ("1/4\"-20", "1/4-20 UNC"),
            (".25-20", "1/4-20 UNC"),
            ("0,25-20", "1/4-20 UNC"),
            ("3/8-16 UNC", "3/8-16 UNC"),
            ("3/8 unc", "3/8-16 UNC"),
            ("1/4-20 UNC-2B", "1/4-20 UNC-2B"),
            ("1/4-20UNC-2B", "1/4-20 UNC-2B"),
            ("1/4-20-2B", "1/4-20 UNC-2B"),
            ("5/16-20 UN", "5/16-20 UN"),
            ("1-1/8-7", "1-1/8-7 UNC"),
            ("1 1/8-7", "1-1/8-7 UNC"),
            ("#10-24", "#10-24 UNC"),
            ("10-32", "#10-32 UNF"),
            ("No. 10-32", "#10-32 UNF"),
            ("6-32", "#6-32 UNC"),
            ("6-12", "6-12 UN"),
            ("4-40", "#4-40 UNC"),
            ("4-4", "4-4 UNC"),
            ("1-8", "1-8 UNC"),
            ("1-72", "#1-72 UNF"),
            ("2-4.5", "2-4.5 UNC"),
            ("1-14 UNS", "1-14 UNS"),
            (".190-24", "#10-24 UNC"),
            ("M10", "M10x1.5"),
            ("m10x1.5", "M10x1.5"),
            ("M10 X 1.25", "M10x1.25"),
            ("M6 x 0,75", "M6x0.75"),
            ("M8-6H", "M8x1.25-6H"),
            ("M8x1-6g", "M8x1-6g"),
            ("M8-6h", "M8x1.25-6h"),
        ] {
            assert_eq!(
                read(text).map(|thread| thread.to_string()).as_deref(),
                Ok(full),
                "{text}"
            );
        }
    }

    #[test]
    fn past_our_table_is_not_undefined() {
        assert!(matches!(read("M70"), Err(CallFault::NoSource { .. })));
        assert!(matches!(size("M72x6"), Err(CallFault::NoSource { .. })));
    }

    #[test]
    fn sizes_of_screws() {
        for (text, name) in [
            ("1/4", "1/4"),
            ("#10", "No. 10"),
            ("M8", "M8"),
            ("3/8-16", "3/8"),
            ("1 in", "1"),
            ("10", "No. 10"),
            (".25", "1/4"),
        ] {
            assert_eq!(
                size(text).map(|size| size.name).as_deref(),
                Ok(name),
                "{text}"
            );
            let said = said_size(text).unwrap();
            assert_eq!(said_size(&said.call).unwrap(), said, "{text}");
        }
        assert!(matches!(size("4"), Err(CallFault::Ambiguous(_))));
        assert!(matches!(size("1/"), Err(CallFault::Unfinished)));
        assert!(matches!(size("fish"), Err(CallFault::Unknown { .. })));
    }

    #[test]
    fn half_typed_is_not_wrong() {
        assert_eq!(read("  "), Err(CallFault::Empty));
        for text in ["1/", "1/4-", "M", "#", "M10x", "1/4-20 UNC-", "M6x0."] {
            assert_eq!(read(text), Err(CallFault::Unfinished), "{text}");
        }
    }

    #[test]
    fn several_are_asked_and_others_refused() {
        let Err(CallFault::Ambiguous(found)) = read("1/4") else {
            panic!()
        };
        let calls: Vec<&str> = found.iter().map(|(text, _)| text.as_str()).collect();
        assert_eq!(calls, ["1/4-20", "1/4-28", "1/4-32"]);
        for text in ["1/4-24", "M10x1.4", "M13", "3/8-16 UNF", "M5.5"] {
            assert!(
                matches!(read(text), Err(CallFault::NotDefined { .. })),
                "{text}: {:?}",
                read(text)
            );
        }
        for text in [
            "1/0-20",
            "1e3-20",
            "fish",
            "1,250-7",
            "M8-6G",
            "1/4-20 UNC-4B",
            "10'6\"-20",
            "M-6",
            "NaN-20",
        ] {
            assert!(
                matches!(read(text), Err(CallFault::Unknown { .. })),
                "{text}: {:?}",
                read(text)
            );
        }
    }
}
