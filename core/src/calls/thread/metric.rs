//! A metric thread: M, size, pitch and class.

use super::{METRIC, calls_of};
use crate::call::CallFault;
use crate::notation::{decimal, not_defined};
use crate::quantity::Length;
use crate::standards::threads::metric_threads;
use crate::thread::{ThreadCall, ThreadClass};

/// The thread behind its M; none where it is no thread at all.
/// Case tells the screw from the hole (6h, 6H), so the text as typed is looked at for the class.
pub fn metric(rest: &str, typed: &str) -> Option<Result<ThreadCall, CallFault>> {
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
        // the dash or the space of an old drawing: M10-1.5, M10 1.5
        None => match body.split_once(['-', ' ']) {
            Some((size, pitch)) if decimal(pitch).is_some() => (size.trim(), Some(pitch.trim())),
            _ => (body, None),
        },
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
