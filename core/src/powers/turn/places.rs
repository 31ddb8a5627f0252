//! Where does the search look first? Over the whole range, and from the entry outward in steps that grow.

/// Places over the whole range.
const WHOLE: usize = 64;
/// Counts up to this many are all tried.
const ALL_COUNTS: f64 = 256.0;
/// The first step from the entry, as a share of it.
const FIRST: f64 = 1e-6;
/// How much each step from the entry is longer than the one before.
const GROWTH: f64 = 1.6;
/// The most steps to one side.
const MOST_STEPS: usize = 64;

/// A few places, which show whether the field changes anything: rising, the entry's own among them.
pub(super) fn few(low: f64, high: f64, own: Option<f64>, counts: bool) -> Vec<f64> {
    let mut places = over(low, high, 13);
    if let Some(own) = own {
        for share in [1e-3, 0.03, 0.3] {
            let step = share * size(low, high, own);
            places.extend([own - step, own + step]);
        }
        places.push(own);
    }
    tidy(places, low, high, counts)
}

/// All places of the first look, rising.
pub(super) fn all(low: f64, high: f64, own: Option<f64>, counts: bool) -> Vec<f64> {
    if counts && high - low <= ALL_COUNTS {
        return tidy(
            (0..=(high - low) as usize)
                .map(|n| low + n as f64)
                .collect(),
            low,
            high,
            true,
        );
    }
    let mut places = over(low, high, WHOLE);
    if low < 0.0 && high > 0.0 {
        places.push(0.0);
    }
    if let Some(own) = own {
        places.push(own);
        let mut step = FIRST * size(low, high, own);
        for _ in 0..MOST_STEPS {
            if own - step < low && own + step > high {
                break;
            }
            places.extend([own - step, own + step]);
            step *= GROWTH;
        }
    }
    tidy(places, low, high, counts)
}

/// By what the steps from an entry are measured: the entry, or a hair of the range where the entry is zero.
fn size(low: f64, high: f64, own: f64) -> f64 {
    if own == 0.0 {
        1e-3 * (high - low)
    } else {
        own.abs()
    }
}

/// Even over the range, or by equal ratios where it spans more than two decades.
fn over(low: f64, high: f64, count: usize) -> Vec<f64> {
    let ratio = low > 0.0 && high / low > 100.0;
    let last = count.saturating_sub(1).max(1) as f64;
    let place = |i: usize| {
        let t = i as f64 / last;
        if i == 0 {
            low
        } else if t >= 1.0 {
            high
        } else if ratio {
            low * libm::pow(high / low, t)
        } else {
            low + (high - low) * t
        }
    };
    (0..count).map(place).collect()
}

fn tidy(mut places: Vec<f64>, low: f64, high: f64, counts: bool) -> Vec<f64> {
    if counts {
        for x in &mut places {
            *x = libm::round(*x);
        }
    }
    places.retain(|x| (low..=high).contains(x));
    crate::order::sort_by(&mut places, f64::total_cmp);
    places.dedup();
    places
}
