//! What is offered where a well-formed inch call is none of the standard series: the special of that count, the threads of
//! that size, and which old or British thread it may be?

use super::{INCH, calls_of};
use crate::call::CallFault;
use crate::quantity::Length;
use crate::standards::threads::look_alike_threads::{LOOK_ALIKES, LookAlike, LookAlikeSeries};
use crate::standards::threads::unified::UnifiedSize;
use crate::thread::ThreadCall;

/// A count that no series has at this size.
pub fn outside_series(
    what: &str,
    sizes: &[&'static UnifiedSize],
    tpi: f64,
    special: Option<ThreadCall>,
) -> CallFault {
    let mut ways: Vec<(String, String)> = Vec::new();
    if let Some(uns) = special {
        ways.push((
            uns.to_string(),
            "as a special thread, outside the series".into(),
        ));
    }
    // 1-14 is no number 1, so the threads of that are of no use
    let same = |size: &&&UnifiedSize| {
        special.is_none_or(|uns| (uns.major - size.major()).abs() < Length::from_inches(0.0001))
    };
    let of_size: Vec<ThreadCall> = sizes
        .iter()
        .filter(same)
        .flat_map(|size| ThreadCall::all_of_unified(size))
        .collect();
    let mut cure = if of_size.is_empty() {
        String::from("check the size and the count")
    } else {
        format!("they have {}", calls_of(&of_size).join(", "))
    };
    if let Some(uns) = special {
        cure.push_str(&format!("; a special is called {uns}"));
    }
    ways.extend(
        of_size
            .iter()
            .map(|thread| (thread.to_string(), thread.series.label().to_owned())),
    );
    if let Some(british) = british(sizes, tpi) {
        cure.push_str("; ");
        cure.push_str(&british);
        cure.push_str(" has that count and another angle: do not mix them");
    }
    CallFault::Near {
        says: format!("the series of {INCH} have no {what}"),
        cure,
        ways,
    }
}

/// The Whitworth thread of this size and count.
fn british(sizes: &[&'static UnifiedSize], tpi: f64) -> Option<String> {
    let size = sizes.first()?;
    let whitworth = |series| matches!(series, LookAlikeSeries::Bsw | LookAlikeSeries::Bsf);
    let same = |major: Length| (major - size.major()).abs() < Length::from_inches(0.0001);
    LOOK_ALIKES
        .iter()
        .find(|one| {
            whitworth(one.series) && same(one.major) && (one.pitch.tpi() - tpi).abs() < 0.01
        })
        .map(LookAlike::name)
}

/// The number of a call by number, whether it is marked as one, and whether a count follows: `#14-20` gives `14`.
fn number_of(call: &str) -> Option<(&str, bool, bool)> {
    let marked = ["#", "NO.", "NO "]
        .iter()
        .find_map(|mark| call.strip_prefix(mark));
    let rest = marked.unwrap_or(call).trim_start();
    let end = rest
        .find(|c: char| !c.is_ascii_digit())
        .unwrap_or(rest.len());
    let (digits, after) = rest.split_at(end);
    let parted = after.is_empty() || after.starts_with(['-', ' ', 'X']);
    (parted && !digits.is_empty()).then_some((digits, marked.is_some(), after.starts_with('-')))
}

/// `#00`, `000`: screws smaller than No. 0, which the standard does not have. Never No. 0 itself.
pub fn below_zero(call: &str) -> Option<CallFault> {
    let (digits, ..) = number_of(call)?;
    if digits.len() < 2 || digits.bytes().any(|b| b != b'0') {
        return None;
    }
    Some(CallFault::Near {
        says: format!("#{digits} is a screw smaller than #0, which {INCH} does not have"),
        cure: "the smallest here are #0 and #1".into(),
        ways: vec![
            ("#0-80 UNF".into(), "0.0600 in".into()),
            ("#1-64 UNC".into(), "0.0730 in".into()),
            ("#1-72 UNF".into(), "0.0730 in".into()),
        ],
    })
}

/// Numbers that only the old machine screws have: 0.060 in and 0.013 in for each number (from memory, ASME 1907).
pub fn old_number(call: &str) -> Option<CallFault> {
    let (digits, marked, has_count) = number_of(call)?;
    let number: u16 = digits.parse().ok()?;
    let only_old = matches!(number, 7 | 9 | 14 | 16 | 18 | 20 | 22 | 24 | 26 | 28 | 30);
    if !(marked || has_count) || !only_old || digits.starts_with('0') {
        return None;
    }
    let thousandths = 60_u32.saturating_add(13_u32.saturating_mul(u32::from(number)));
    let near = match number {
        14 => ", not 1/4 in",
        20 => ", not 5/16 in",
        24 => ", not 3/8 in",
        _ => "",
    };
    Some(CallFault::NotDefined {
        says: format!(
            "#{number} is an old machine screw of 0.{thousandths:03} in{near}; {INCH} does not have it"
        ),
        cure: "cut it by its own diameter and count, as a special such as 0.242-20 UNS".into(),
    })
}

/// `8UN`: a series of one count, without a size.
pub fn no_size(call: &str) -> Option<CallFault> {
    let count = ["UNR", "UN", "N"]
        .iter()
        .find_map(|mark| call.strip_suffix(mark))?;
    let count = count.trim_end().trim_end_matches('-');
    matches!(count, "4" | "6" | "8" | "12" | "16" | "20" | "28" | "32").then(|| {
        CallFault::Unknown {
            says: format!("{count} UN is a series; its size is still needed"),
            cure: format!("type the size first, as 1-1/2-{count} UN"),
        }
    })
}
