//! Over which intervals does a result that moves in steps have the wanted value, and what are its neighbours?

use super::search::{At, Search};
use super::smooth::{push_interval, push_root};
use super::{Sample, Side, Turned};

/// The most intervals that are listed.
const MOST_FOUND: usize = 6;
/// Halvings between two places in search of the wanted step.
const HALVINGS: usize = 48;

/// Looks at the samples in the order given, nearest to the entry first.
pub(super) fn find(search: &mut Search, samples: &[Sample], order: &[usize], found: &mut Turned) {
    for &i in order {
        if found.roots.len() + found.intervals.len() >= MOST_FOUND {
            break;
        }
        let Some(&(x, Some(gives))) = samples.get(i) else {
            continue;
        };
        if search.meets(gives) {
            run(search, samples, i, found);
        } else if let Some(&(next, Some(then))) = samples.get(i + 1)
            && !search.meets(then)
            && (search.off(gives) < 0.0) != (search.off(then) < 0.0)
            && let Some((before, at, after)) = between(search, (x, gives), (next, then), found)
        {
            let low = search.edge(at, before, Search::meets);
            let high = search.edge(at, after, Search::meets);
            push(search, low, high, found);
        }
    }
    if found.roots.is_empty() && found.intervals.is_empty() {
        for &i in order {
            if let Some(&(x, Some(gives))) = samples.get(i) {
                side(search, (x, gives), found);
            }
        }
    } else {
        (found.below, found.above) = (None, None);
    }
}

/// A sample that meets, with its neighbours that do, to the edges.
fn run(search: &mut Search, samples: &[Sample], i: usize, found: &mut Turned) {
    let meets = |search: &Search, sample: Option<&Sample>| {
        sample.and_then(|s| Some((s.0, s.1.filter(|gives| search.meets(*gives))?)))
    };
    let (mut first, mut last) = (i, i);
    while first > 0 && meets(search, samples.get(first - 1)).is_some() {
        first -= 1;
    }
    while meets(search, samples.get(last + 1)).is_some() {
        last += 1;
    }
    let (Some(from), Some(to)) = (
        meets(search, samples.get(first)),
        meets(search, samples.get(last)),
    ) else {
        return;
    };
    let known = found
        .intervals
        .iter()
        .any(|old| old.from <= from.0 && old.to >= to.0);
    if known || found.roots.iter().any(|old| old.x == from.0) {
        return;
    }
    let before = first.checked_sub(1).and_then(|at| samples.get(at));
    let low = before.map_or(from, |s| search.edge(from, s.0, Search::meets));
    let high = samples
        .get(last + 1)
        .map_or(to, |s| search.edge(to, s.0, Search::meets));
    push(search, low, high, found);
}

fn push(search: &mut Search, low: At, high: At, found: &mut Turned) {
    if low.0 < high.0 {
        push_interval(search, low, high, found);
    } else {
        push_root(search, low, found);
    }
}

/// A place between two that meets, with the two around it; else what stands on both sides of the leap.
fn between(search: &mut Search, a: At, b: At, found: &mut Turned) -> Option<(f64, At, f64)> {
    let (mut a, mut b) = (a, b);
    for _ in 0..HALVINGS {
        let Some(x) = search.between(a.0, b.0) else {
            break;
        };
        if (b.0 - a.0).abs() <= search.fine {
            break;
        }
        let gives = search.at(x)?;
        if search.meets(gives) {
            return Some((a.0, (x, gives), b.0));
        }
        if (search.off(gives) < 0.0) == (search.off(a.1) < 0.0) {
            a = (x, gives);
        } else {
            b = (x, gives);
        }
    }
    side(search, a, found);
    side(search, b, found);
    None
}

/// Keeps the nearest value below and above; of two alike the first, which is nearer to the entry.
fn side(search: &Search, at: At, found: &mut Turned) {
    let off = search.off(at.1);
    let place = if off <= 0.0 {
        &mut found.below
    } else {
        &mut found.above
    };
    if place.is_none_or(|old| off.abs() < search.off(old.gives).abs() * (1.0 - 1e-9)) {
        *place = Some(Side {
            x: at.0,
            gives: at.1,
        });
    }
}
