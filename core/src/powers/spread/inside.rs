//! Where a smooth result is least or most inside the box and not at a corner, how far does it really go?

use super::field_box::{FieldBox, Told};

/// Rounds of the search, each with steps half as long.
const ROUNDS: usize = 6;
/// Fields whose steps are also tried together.
const TOGETHER: usize = 3;
/// Results that are looked into.
const MOST_LOOKED: usize = 8;

/// Searches around each least and most that lies inside; what is told on the way goes to the pool.
pub(super) fn search(own: &mut FieldBox, known: &[(Vec<f64>, Told)], step: f64) {
    let mut looked = 0;
    for k in 0..own.numbers.len() {
        let smooth = own
            .numbers
            .get(k)
            .is_some_and(|line| !line.stepped && !own.wraps(line));
        for up in [1.0, -1.0] {
            if !smooth || looked >= MOST_LOOKED {
                break;
            }
            if let Some((point, best)) = extreme(known, k, up)
                && !at_ends(own, &point)
            {
                looked += 1;
                climb(own, (point, best), step, k, up);
            }
        }
    }
}

fn number(told: &Told, k: usize) -> Option<f64> {
    *told.as_ref().ok()?.numbers.get(k)?
}

/// The first of the points at which a result is most (`up` 1) or least (`up` −1).
fn extreme(known: &[(Vec<f64>, Told)], k: usize, up: f64) -> Option<(Vec<f64>, f64)> {
    let mut best: Option<(&Vec<f64>, f64)> = None;
    for (point, told) in known {
        if let Some(now) = number(told, k)
            && best.is_none_or(|(_, old)| up * (now - old) > 1e-9 * now.abs().max(old.abs()))
        {
            best = Some((point, now));
        }
    }
    best.map(|(point, now)| (point.clone(), now))
}

fn at_ends(own: &FieldBox, point: &[f64]) -> bool {
    let mut both = own.spans.iter().zip(point);
    both.all(|(span, x)| *x == span.low || *x == span.high)
}

/// Goes to the best neighbor, then tries steps half as long.
fn climb(own: &mut FieldBox, from: (Vec<f64>, f64), step: f64, k: usize, up: f64) {
    let (mut point, mut best) = from;
    let mut share = step;
    for _ in 0..ROUNDS {
        share /= 2.0;
        let mut next = None;
        for neighbor in neighbors(own, &point, share) {
            let Some(told) = own.ask(&neighbor) else {
                return;
            };
            if let Some(now) = number(&told, k)
                && up * (now - best) > 0.0
            {
                best = now;
                next = Some(neighbor);
            }
            own.pool.push(told);
        }
        point = next.unwrap_or(point);
    }
}

/// Points a share of each tolerance away, inside the box: up to three fields together, else one at a time.
fn neighbors(own: &FieldBox, point: &[f64], share: f64) -> Vec<Vec<f64>> {
    let count = own.spans.len();
    let moved = |signs: &[i8]| -> Vec<f64> {
        let all = own.spans.iter().zip(point).zip(signs);
        all.map(|((span, x), sign)| {
            let step = f64::from(*sign) * share * (span.high - span.low);
            (x + step).clamp(span.low, span.high)
        })
        .collect()
    };
    let mut found = Vec::new();
    if count <= TOGETHER {
        for number in 0..3_usize.pow(count as u32) {
            let mut rest = number;
            let mut signs = Vec::with_capacity(count);
            for _ in 0..count {
                signs.push((rest % 3) as i8 - 1);
                rest /= 3;
            }
            found.push(moved(&signs));
        }
    } else {
        for field in 0..count {
            for sign in [-1, 1] {
                let mut signs = vec![0; count];
                if let Some(one) = signs.get_mut(field) {
                    *one = sign;
                }
                found.push(moved(&signs));
            }
        }
    }
    found.retain(|neighbor| neighbor.as_slice() != point);
    found
}
