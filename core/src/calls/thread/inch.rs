//! An inch thread: size, threads per inch, series and class in any of their orders.

use super::{INCH, calls_of, offer};
use crate::call::CallFault;
use crate::notation::{decimal, mixed, not_defined, whole};
use crate::quantity::{Length, Pitch};
use crate::standards::threads::unified::{self, UnifiedSize};
use crate::thread::{ThreadCall, ThreadClass, ThreadSeries};

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

/// The thread that a tidied call means; none where it is no inch thread at all.
pub fn inch(call: &str) -> Option<Result<ThreadCall, CallFault>> {
    let (body, class) = class_of(call);
    let (body, series) = series_of(body);
    let (size_text, count) = parts_of(body);
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
            let uns = special(&sizes, size_text, tpi, class).and_then(Result::ok);
            let what = body_name(size_text, count, series);
            Err(offer::outside_series(&what, &sizes, tpi, uns))
        }
        (several, _) => Err(CallFault::Ambiguous(
            several
                .iter()
                .map(|one| (one.short(), one.series.label().to_owned()))
                .collect(),
        )),
    })
}

/// Size and threads per inch: the last dash parts them, unless a fraction follows it (1-1/8) or there is none yet; a cross
/// or a space does it too (`1/4 x 20`, `1/4 20`).
fn parts_of(body: &str) -> (&str, Option<&str>) {
    let count = |text: &str| decimal(text.trim_end_matches("TPI")).is_some();
    if let Some((front, tail)) = body.rsplit_once('-')
        && !tail.contains('/')
        && !tail.trim().contains(' ')
    {
        return (front.trim(), Some(tail.trim()));
    }
    match body.rsplit_once(['X', ' ']) {
        Some((front, tail)) if count(tail) => {
            let front = front.trim_end_matches([' ', 'X']);
            if sizes_of(front).is_some() {
                (front, Some(tail.trim()))
            } else {
                (body, None)
            }
        }
        _ => (body, None),
    }
}

fn body_name(size: &str, count: &str, series: Option<ThreadSeries>) -> String {
    let mark = series.map_or(String::new(), |series| format!(" {}", series.mark()));
    format!("{size}-{count}{mark}")
}

/// The series, behind the size or before it. UNR is the same thread with a rounded root; N, NC, NF, NEF and NS are the
/// American National names of the same series.
fn series_of(body: &str) -> (&str, Option<ThreadSeries>) {
    for (mark, series) in [
        ("UNREF", ThreadSeries::Unef),
        ("UNRC", ThreadSeries::Unc),
        ("UNRF", ThreadSeries::Unf),
        ("UNRS", ThreadSeries::Uns),
        ("UNR", ThreadSeries::Un),
        ("UNEF", ThreadSeries::Unef),
        ("UNC", ThreadSeries::Unc),
        ("UNF", ThreadSeries::Unf),
        ("UNS", ThreadSeries::Uns),
        ("UN", ThreadSeries::Un),
        ("NEF", ThreadSeries::Unef),
        ("NC", ThreadSeries::Unc),
        ("NF", ThreadSeries::Unf),
        ("NS", ThreadSeries::Uns),
        ("N", ThreadSeries::Un),
    ] {
        let ends =
            |front: &&str| mark != "N" || front.ends_with(|c: char| !c.is_ascii_alphabetic());
        if let Some(front) = body.strip_suffix(mark).filter(ends) {
            return (front.trim().trim_end_matches('-').trim(), Some(series));
        }
        let before = body.strip_prefix(mark).map(str::trim_start);
        if let Some(rest) = before.filter(|rest| {
            rest.starts_with(['#', '.']) || rest.starts_with(|c: char| c.is_ascii_digit())
        }) {
            return (rest, Some(series));
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
pub fn sizes_of(text: &str) -> Option<Vec<&'static UnifiedSize>> {
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
