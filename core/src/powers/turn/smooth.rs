//! Where does a result that moves smoothly pass, touch or keep the wanted value?

use super::search::{At, Search};
use super::{Interval, Jump, MOST_FOUND, Root, Sample, Turned};

/// Touches that are looked into.
const MOST_TOUCHES: usize = 4;
/// Narrowings of one touch.
const NARROWINGS: usize = 40;

/// Looks at the samples in the order given, nearest to the entry first.
pub(super) fn find(search: &mut Search, samples: &[Sample], order: &[usize], found: &mut Turned) {
    for &i in order {
        if found.roots.len() + found.intervals.len() + found.jumps.len() >= MOST_FOUND {
            return;
        }
        let Some(&(x, Some(gives))) = samples.get(i) else {
            continue;
        };
        if search.is_on(gives) {
            keep(search, samples, i, found);
        } else if let Some(&(next, Some(then))) = samples.get(i.saturating_add(1))
            && !search.is_on(then)
            && (search.off(gives) < 0.0) != (search.off(then) < 0.0)
        {
            pass(search, (x, gives), (next, then), 0, found);
        }
    }
    touches(search, samples, order, found);
}

/// A place that has the wanted value: alone, or with its neighbours, whose ends are then searched.
fn keep(search: &mut Search, samples: &[Sample], i: usize, found: &mut Turned) {
    let on = |search: &Search, sample: Option<&Sample>| {
        sample.and_then(|s| Some((s.0, s.1.filter(|gives| search.is_on(*gives))?)))
    };
    let (mut first, mut last) = (i, i);
    while first > 0 && on(search, samples.get(first - 1)).is_some() {
        first -= 1;
    }
    while on(search, samples.get(last + 1)).is_some() {
        last += 1;
    }
    let (Some(from), Some(to)) = (
        on(search, samples.get(first)),
        on(search, samples.get(last)),
    ) else {
        return;
    };
    if first == last {
        push_root(search, from, found);
        return;
    }
    if found
        .intervals
        .iter()
        .any(|old| old.from <= from.0 && old.to >= to.0)
    {
        return;
    }
    let before = first.checked_sub(1).and_then(|at| samples.get(at));
    let after = samples.get(last + 1);
    let low = before.map_or(from, |s| search.edge(from, s.0, Search::is_on));
    let high = after.map_or(to, |s| search.edge(to, s.0, Search::is_on));
    push_interval(search, low, high, found);
}

/// Adds an interval, with a round number inside.
pub(super) fn push_interval(search: &mut Search, low: At, high: At, found: &mut Turned) {
    let inside = search.roundest(low, high.0);
    found.intervals.push(Interval {
        from: low.0,
        to: high.0,
        inside: inside.0,
        gives: inside.1,
    });
}

/// Between two places the result passes the wanted value: a root or a jump; where there is no answer between, each side
/// is looked at by itself.
fn pass(search: &mut Search, a: At, b: At, depth: usize, found: &mut Turned) {
    match search.close_in(a, b) {
        Ok((left, right)) if search.leaps(left.1, right.1) => {
            found.jumps.push(Jump {
                x: right.0,
                from: left.1,
                to: right.1,
            });
        }
        Ok((left, right)) => {
            let nearer = search.nearer(left, right);
            push_root(search, nearer, found);
        }
        Err(gap) if depth < 3 => {
            let left = search.window(a, gap);
            let right = search.window(b, gap);
            for (near, far) in [(a, left), (right, b)] {
                if (search.off(near.1) < 0.0) != (search.off(far.1) < 0.0) {
                    pass(search, near, far, depth + 1, found);
                }
            }
        }
        Err(_) => {}
    }
}

/// Places at which the result comes near the wanted value and turns back.
fn touches(search: &mut Search, samples: &[Sample], order: &[usize], found: &mut Turned) {
    let mut looked = 0;
    for &i in order {
        let three = i
            .checked_sub(1)
            .and_then(|at| samples.get(at..at.saturating_add(3)));
        let Some([(a, Some(fa)), (_, Some(fb)), (c, Some(fc))]) = three else {
            continue;
        };
        let (da, db, dc) = (search.off(*fa), search.off(*fb), search.off(*fc));
        let same = da.signum() == db.signum() && db.signum() == dc.signum();
        let dip = (da.abs() - db.abs()).max(dc.abs() - db.abs());
        let nearest = db.abs() <= da.abs() && db.abs() <= dc.abs();
        // what a parabola through the three can still dip by
        if !same || !nearest || dip <= 0.0 || db.abs() > 2.0 * dip || search.is_on(*fb) {
            continue;
        }
        if looked >= MOST_TOUCHES || found.roots.len() >= MOST_FOUND {
            return;
        }
        looked += 1;
        let (at, crossed) = narrow(search, *a, *c, db < 0.0);
        match (at, crossed) {
            // it does pass: once on each side
            (Some(at), true) => {
                pass(search, (*a, *fa), at, 0, found);
                pass(search, at, (*c, *fc), 0, found);
            }
            (Some(at), false) if search.meets(at.1) && near(search, at.1) => {
                push_root(search, at, found);
            }
            _ => {}
        }
    }
}

/// So near that it is a touch, not only the same in print.
fn near(search: &Search, gives: f64) -> bool {
    search.off(gives).abs() <= 0.01 * search.half_digit()
}

/// Narrows down on the place nearest the wanted value; true where it was passed on the way.
fn narrow(search: &mut Search, a: f64, c: f64, below: bool) -> (Option<At>, bool) {
    let (mut low, mut high) = (a, c);
    let mut best = None;
    for _ in 0..NARROWINGS {
        let third = (high - low) / 3.0;
        let (left, right) = (low + third, high - third);
        let (Some(at_left), Some(at_right)) = (search.at(left), search.at(right)) else {
            return (best, false);
        };
        let (l, r) = ((left, at_left), (right, at_right));
        let nearer = search.nearer(l, r);
        best = Some(best.map_or(nearer, |old| search.nearer(old, nearer)));
        if let Some(past) = [l, r]
            .into_iter()
            .find(|at| !search.is_on(at.1) && (search.off(at.1) < 0.0) != below)
        {
            return (Some(past), true);
        }
        if search.is_on(nearer.1) {
            break;
        }
        if search.off(at_left).abs() < search.off(at_right).abs() {
            high = right;
        } else {
            low = left;
        }
    }
    (best, false)
}

/// Adds a root, once.
pub(super) fn push_root(search: &mut Search, at: At, found: &mut Turned) {
    let at = search.typed(at);
    let known = |x: f64| (x - at.0).abs() <= 1e-9 * x.abs().max(at.0.abs());
    let (low, high) = found.searched;
    if found
        .roots
        .iter()
        .any(|old| known(old.x) || (old.x - at.0).abs() <= 1e-13 * (high - low))
    {
        return;
    }
    found.roots.push(Root {
        x: at.0,
        gives: at.1,
        met: search.meets(at.1),
    });
}
