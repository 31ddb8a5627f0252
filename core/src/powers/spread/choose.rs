//! What is shown of each result: a range, the values that are met, or that no range holds?

use super::field_box::{FieldBox, Told};
use super::scan::{Scan, differ};
use super::{Change, Choices, End, LineSpread, Moves, PickChange};

/// Values and picks that are listed.
const MOST_LISTED: usize = 8;

/// Least and most of each number, and whether it was missing somewhere.
pub(super) type Reach = Vec<(f64, f64, bool)>;

/// The reach of what was told, with the nominal.
pub(super) fn reach<'t>(own: &FieldBox, told: impl Iterator<Item = &'t Told>) -> Reach {
    let base = |v: &Option<f64>| v.map_or((f64::MAX, f64::MIN, true), |v| (v, v, false));
    let mut reach: Reach = own.own.numbers.iter().map(base).collect();
    for told in told {
        for (k, one) in reach.iter_mut().enumerate() {
            match told.as_ref().ok().and_then(|snap| *snap.numbers.get(k)?) {
                Some(now) => (one.0, one.1) = (one.0.min(now), one.1.max(now)),
                None => one.2 = true,
            }
        }
    }
    reach
}

/// The reach along each field by itself.
pub(super) fn single(own: &FieldBox, scans: &[Scan]) -> Vec<Reach> {
    scans.iter().map(|scan| reach(own, scan.told())).collect()
}

/// The field that moves each number most.
pub(super) fn drivers(own: &FieldBox, single: &[Reach]) -> Vec<&'static str> {
    let of = |k: usize| {
        let mut best = ("", 0.0);
        for (span, reach) in own.spans.iter().zip(single) {
            if let Some((low, high, _)) = reach.get(k)
                && high - low > best.1
            {
                best = (span.field.id, high - low);
            }
        }
        best.0
    };
    (0..own.numbers.len()).map(of).collect()
}

/// Lines from the corner where a result is least to that where it is most, for results whose insides matter.
pub(super) fn rays(own: &FieldBox, corners: &[(Vec<f64>, Told)]) -> Vec<(Vec<f64>, Vec<f64>)> {
    let mut rays: Vec<(Vec<f64>, Vec<f64>)> = Vec::new();
    for (k, line) in own.numbers.iter().enumerate() {
        if !line.stepped && !own.wraps(line) {
            continue;
        }
        let value = |told: &Told| told.as_ref().ok().and_then(|snap| *snap.numbers.get(k)?);
        let known = || {
            corners
                .iter()
                .filter_map(|(p, told)| Some((p, value(told)?)))
        };
        let least = known().min_by(|a, b| a.1.total_cmp(&b.1));
        let most = known().max_by(|a, b| a.1.total_cmp(&b.1));
        if let (Some((from, low)), Some((to, high))) = (least, most)
            && low < high
            && rays.len() < 3
            && !rays.iter().any(|ray| ray.0 == *from && ray.1 == *to)
        {
            rays.push((from.clone(), to.clone()));
        }
    }
    rays
}

/// All numeric results.
pub(super) fn lines(
    own: &mut FieldBox,
    scans: &[Scan],
    reaches: &[Reach],
    drivers: &[&'static str],
    added: bool,
) -> Vec<LineSpread> {
    let numbers = own.numbers.clone();
    let mut lines = Vec::with_capacity(numbers.len());
    for (k, line) in numbers.into_iter().enumerate() {
        let base = line.value.base().unwrap_or_default();
        let mut one = LineSpread {
            id: line.id,
            moves: Moves::Not,
            low: base,
            high: base,
            driver: drivers.get(k).copied().unwrap_or_default(),
            is_cut: false,
            values: Vec::new(),
            changes: Vec::new(),
        };
        for (low, high, cut) in reaches.iter().filter_map(|reach| reach.get(k)) {
            one.is_cut |= cut;
            if added {
                one.low += low - base;
                one.high += high - base;
            } else {
                one.low = one.low.min(*low);
                one.high = one.high.max(*high);
            }
        }
        if one.low < one.high {
            settle(own, scans, k, &mut one);
        }
        if matches!(one.moves, Moves::Jumping | Moves::Wrapping) {
            (one.low, one.high) = (base, base);
        }
        lines.push(one);
    }
    lines
}

/// How a result that moves does so.
fn settle(own: &mut FieldBox, scans: &[Scan], k: usize, one: &mut LineSpread) {
    let Some(line) = own.numbers.get(k).copied() else {
        return;
    };
    one.moves = Moves::Through;
    if own.wraps(line)
        && scans
            .iter()
            .any(|scan| scan.turns(k) || scan.jump(own, k).is_some())
    {
        one.moves = Moves::Wrapping;
        return;
    }
    if !line.stepped {
        return;
    }
    let mut running = false;
    for (field, scan) in scans.iter().enumerate() {
        if scan.runs.get(k) != Some(&true) {
            continue;
        }
        running = true;
        if let Some(t) = scan.jump(own, k) {
            one.moves = Moves::Jumping;
            if let Some(span) = own.spans.get(field) {
                one.changes.push(Change {
                    field: span.field.id,
                    at: scan.x(t, field),
                    from: String::new(),
                    to: String::new(),
                });
            }
            return;
        }
    }
    if running {
        return;
    }
    let mut values: Vec<f64> = Vec::new();
    let told = scans.iter().flat_map(Scan::told).chain(&own.pool);
    for snap in told.flatten() {
        if let Some(Some(now)) = snap.numbers.get(k)
            && !values
                .iter()
                .any(|old| !differ(Some(&Some(*old)), Some(&Some(*now))))
        {
            values.push(*now);
        }
    }
    crate::order::sort_by(&mut values, f64::total_cmp);
    if values.len() > MOST_LISTED {
        one.moves = Moves::Jumping;
        return;
    }
    one.moves = Moves::InSteps;
    let print = |snap: &super::field_box::Snap| {
        let now = (*snap.numbers.get(k)?)?;
        Some(line.value.with_base(now).text_with_unit(own.system))
    };
    one.changes = changes(own, scans, print);
    one.values = values;
}

/// Where something printed becomes something else, along each field by itself.
fn changes(
    own: &FieldBox,
    scans: &[Scan],
    print: impl Fn(&super::field_box::Snap) -> Option<String>,
) -> Vec<Change> {
    let mut found = Vec::new();
    for (field, (span, scan)) in own.spans.iter().zip(scans).enumerate() {
        for pair in scan.samples.windows(2) {
            let [(_, Ok(a)), (t, Ok(b))] = pair else {
                continue;
            };
            if let (Some(from), Some(to)) = (print(a), print(b))
                && from != to
                && found.len() < MOST_LISTED
            {
                found.push(Change {
                    field: span.field.id,
                    at: scan.x(*t, field),
                    from,
                    to,
                });
            }
        }
    }
    found
}

/// Picks that are others at the ends of a field.
pub(super) fn ends(own: &FieldBox, scan: &Scan, field: usize, picks: &mut Vec<PickChange>) {
    let Some(span) = own.spans.get(field) else {
        return;
    };
    let ends = [
        (End::Low, scan.samples.first()),
        (End::High, scan.samples.last()),
    ];
    for (end, sample) in ends {
        let Some((_, Ok(snap))) = sample else {
            continue;
        };
        let both = own.own.picks.iter().zip(&snap.picks);
        for (pick, (was, now)) in own.picks.iter().zip(both) {
            if let (Some(was), Some(becomes)) = (was, now)
                && was != becomes
            {
                picks.push(PickChange {
                    id: pick.id,
                    field: span.field.id,
                    end,
                    what: pick.what.clone(),
                    becomes: becomes.clone(),
                });
            }
        }
    }
}

/// Picks of which several are met, few enough to list.
pub(super) fn words(own: &FieldBox, scans: &[Scan]) -> Vec<Choices> {
    let mut found = Vec::new();
    for (k, pick) in own.picks.iter().enumerate() {
        if scans
            .iter()
            .any(|scan| scan.picks_run.get(k) == Some(&true))
        {
            continue;
        }
        let mut values: Vec<String> = own
            .own
            .picks
            .get(k)
            .cloned()
            .flatten()
            .into_iter()
            .collect();
        let told = scans.iter().flat_map(Scan::told).chain(&own.pool);
        for snap in told.flatten() {
            if let Some(Some(now)) = snap.picks.get(k)
                && !values.contains(now)
            {
                values.push(now.clone());
            }
        }
        if values.len() < 2 || values.len() > MOST_LISTED {
            continue;
        }
        found.push(Choices {
            id: pick.id,
            what: pick.what.clone(),
            values,
            changes: changes(own, scans, |snap| snap.picks.get(k).cloned().flatten()),
        });
    }
    found
}
