//! Is the machine quiet? Fixed work is timed before and after what is measured: what other programs take away shows in it.
use std::{hint::black_box, time::Instant};

/// So many times its best may the fixed work take in a quiet moment.
const SPREAD: f64 = 1.15;
/// So often a measurement is repeated until its moment was quiet.
const ROUNDS: usize = 6;

/// A measurement, and whether its moment was quiet.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Settled {
    pub time: f64,
    pub quiet: bool,
}

/// Finds quiet moments; knows the fixed work's best time so far.
pub struct Moments<F> {
    fixed: F,
    best: f64,
}

impl<F: FnMut() -> f64> Moments<F> {
    /// With the time of a fixed work, measured anew at each call; the first few find its best.
    pub fn new(mut fixed: F) -> Self {
        let best = (0..4 * ROUNDS).map(|_| fixed()).fold(f64::MAX, f64::min);
        Self { fixed, best }
    }

    /// The best time of the fixed work so far.
    pub const fn best(&self) -> f64 {
        self.best
    }

    /// The time in the first quiet moment; in the least disturbed one where none was quiet.
    pub fn settled(&mut self, mut measure: impl FnMut() -> f64) -> Settled {
        let mut least = (f64::MAX, f64::MAX);
        let mut before = (self.fixed)();
        for _ in 0..ROUNDS {
            let time = measure();
            let after = (self.fixed)();
            self.best = self.best.min(before).min(after);
            let beside = before.max(after);
            if beside < least.0 {
                least = (beside, time);
            }
            if beside <= self.best * SPREAD {
                break;
            }
            before = after;
        }
        Settled {
            time: least.1,
            quiet: least.0 <= self.best * SPREAD,
        }
    }
}

/// The median time of one run in microseconds, over a twentieth of a second or 5,000 runs.
pub fn median(mut work: impl FnMut()) -> f64 {
    let started = Instant::now();
    let mut times = Vec::new();
    while times.len() < 20 || (times.len() < 5_000 && started.elapsed().as_millis() < 50) {
        let start = Instant::now();
        work();
        times.push(start.elapsed().as_secs_f64() * 1e6);
    }
    times.sort_by(f64::total_cmp);
    times.get(times.len() / 2).copied().unwrap_or_default()
}

/// Work that never changes: short texts made, ordered and dropped, as an answer does.
pub fn fixed_work() -> f64 {
    let times = (0..400).map(|_| {
        let start = Instant::now();
        let mut texts: Vec<String> = (0..64_u32)
            .map(|n| format!("{} of it", n.wrapping_mul(2_654_435_761)))
            .collect();
        texts.sort();
        black_box(texts);
        start.elapsed().as_secs_f64() * 1e6
    });
    let mut times: Vec<f64> = times.collect();
    times.sort_by(f64::total_cmp);
    // a mean of the middle: a median alone would not see that every third run was disturbed
    let middle = times.get(100..360).unwrap_or_default();
    middle.iter().sum::<f64>() / middle.len() as f64
}

#[cfg(test)]
mod tests {
    use super::*;

    fn moments(fixed: &[f64]) -> Moments<impl FnMut() -> f64> {
        let mut rest = vec![10.0; 4 * ROUNDS];
        rest.extend_from_slice(fixed);
        let mut rest = rest.into_iter();
        Moments::new(move || rest.next().unwrap_or(30.0))
    }

    #[test]
    fn repeats_until_a_moment_is_quiet() {
        let mut times = [9.0, 8.0, 5.0, 1.0].into_iter();
        // disturbed before, after and at both ends; then quiet
        let settled =
            moments(&[20.0, 10.5, 20.0, 11.0, 10.0]).settled(|| times.next().unwrap_or_default());
        assert_eq!(
            settled,
            Settled {
                time: 1.0,
                quiet: true
            }
        );
    }

    #[test]
    fn says_so_where_none_was_quiet_and_gives_the_least_disturbed() {
        let mut times = [9.0, 5.0, 7.0].into_iter().cycle();
        let settled = moments(&[20.0, 13.0, 12.5]).settled(|| times.next().unwrap_or_default());
        assert_eq!(
            settled,
            Settled {
                time: 5.0,
                quiet: false
            }
        );
    }

    #[test]
    fn a_better_best_raises_the_bar() {
        let mut moments = moments(&[8.0, 9.9, 8.0, 8.1]);
        let mut times = [9.0, 7.0, 5.0].into_iter();
        let settled = moments.settled(|| times.next().unwrap_or_default());
        assert_eq!(
            settled,
            Settled {
                time: 5.0,
                quiet: true
            }
        );
        assert_eq!(moments.best(), 8.0);
    }
}
