//! How is a list put in order? One stable sort for every kind of row: each type that is sorted by the standard library
//! brings its own copy of a large sorting machine into the browser, and the lists here are short.
use std::{cmp::Ordering, mem};

/// Puts the items in order; equal ones keep the order that they had. An order that contradicts itself gives some order,
/// never a panic. Takes n log n comparisons and as many words of memory as there are items, twice.
///
/// ```
/// let mut rows = vec![(2, "b"), (1, "x"), (2, "a")];
/// benchslate_core::order::sort_by(&mut rows, |a, b| a.0.cmp(&b.0));
/// assert_eq!(rows, [(1, "x"), (2, "b"), (2, "a")]);
/// ```
pub fn sort_by<T>(items: &mut [T], mut compare: impl FnMut(&T, &T) -> Ordering) {
    let mut places = places(
        items.len(),
        &mut |a, b| match (items.get(a), items.get(b)) {
            (Some(a), Some(b)) => compare(a, b),
            _ => Ordering::Equal,
        },
    );
    follow(&mut places, &mut |a, b| items.swap(a, b));
}

/// Puts the items in their own order.
///
/// ```
/// let mut teeth = [45, 36, 40];
/// benchslate_core::order::sort(&mut teeth);
/// assert_eq!(teeth, [36, 40, 45]);
/// ```
pub fn sort<T: Ord>(items: &mut [T]) {
    sort_by(items, T::cmp);
}

/// Puts the items in the order of a key, which is worked out anew for each comparison.
pub fn sort_by_key<T, K: Ord>(items: &mut [T], key: impl Fn(&T) -> K) {
    sort_by(items, |a, b| key(a).cmp(&key(b)));
}

/// Which item belongs at each place, by merging runs of doubled length.
fn places(count: usize, compare: &mut dyn FnMut(usize, usize) -> Ordering) -> Vec<usize> {
    let mut from: Vec<usize> = (0..count).collect();
    let mut to = Vec::with_capacity(count);
    let mut width = 1;
    while width < count {
        for pair in from.chunks(2 * width) {
            let (mut left, mut right) = pair.split_at(width.min(pair.len()));
            if let (Some(a), Some(b)) = (left.last(), right.first())
                && compare(*b, *a) != Ordering::Less
            {
                to.extend_from_slice(pair);
                continue;
            }
            while let (Some((a, rest_left)), Some((b, rest_right))) =
                (left.split_first(), right.split_first())
            {
                if compare(*b, *a) == Ordering::Less {
                    to.push(*b);
                    right = rest_right;
                } else {
                    to.push(*a);
                    left = rest_left;
                }
            }
            to.extend_from_slice(left);
            to.extend_from_slice(right);
        }
        mem::swap(&mut from, &mut to);
        to.clear();
        width *= 2;
    }
    from
}

/// Brings each item to its place, one ring of exchanges after the other.
fn follow(places: &mut [usize], swap: &mut dyn FnMut(usize, usize)) {
    for start in 0..places.len() {
        let mut at = start;
        while let Some(place) = places.get_mut(at) {
            let wanted = mem::replace(place, at);
            if wanted == start {
                break;
            }
            swap(at, wanted);
            at = wanted;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn agrees_with_std_and_keeps_equal_items_as_they_were() {
        let mut random = fastrand::Rng::with_seed(7);
        for count in (0..70).chain([255, 256, 257, 1000]) {
            for most in [1, 3, 20, 100_000] {
                let rows: Vec<(u32, usize)> =
                    (0..count).map(|at| (random.u32(0..most), at)).collect();
                let mut expected = rows.clone();
                expected.sort_by_key(|row| row.0);
                let mut ours = rows.clone();
                sort_by(&mut ours, |a, b| a.0.cmp(&b.0));
                assert_eq!(ours, expected);
                let mut ours = rows.clone();
                sort_by_key(&mut ours, |row| row.0);
                assert_eq!(ours, expected);
                let mut ours = expected;
                ours.reverse();
                sort(&mut ours);
                let mut whole = rows;
                whole.sort_unstable();
                assert_eq!(ours, whole);
            }
        }
    }

    #[test]
    fn an_order_that_contradicts_itself_loses_nothing() {
        let mut random = fastrand::Rng::with_seed(8);
        let mut items: Vec<u32> = (0..500).collect();
        sort_by(&mut items, |_, _| {
            if random.bool() {
                Ordering::Less
            } else {
                Ordering::Greater
            }
        });
        items.sort_unstable();
        assert!(items.iter().copied().eq(0..500));
    }
}
