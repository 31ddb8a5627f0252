//! What happens along a line through the box? Even samples, and halvings where something changes.

use super::field_box::{FieldBox, Snap, Told};

/// Changes that are closed in on along one line.
const MOST_CHANGES: usize = 6;
/// How near the two sides of a change are brought, as a share of the line.
const FINE: f64 = 1.0 / 65_536.0;
/// Halvings that tell a jump from a slope.
const HALVINGS: usize = 9;

/// A line from one point to another with what the sheet says along it: `0` to `1`, rising.
pub(super) struct Scan {
    from: Vec<f64>,
    to: Vec<f64>,
    pub(super) samples: Vec<(f64, Told)>,
    /// Numbers that run from sample to sample, and picks that do.
    pub(super) runs: Vec<bool>,
    pub(super) picks_run: Vec<bool>,
}

impl Scan {
    /// Along one field from its low to its high end, the others at their nominal.
    pub(super) fn along(own: &mut FieldBox, field: usize, count: usize) -> Self {
        let (mut from, mut to) = (own.center(), own.center());
        let mut nominal = None;
        if let Some(span) = own.spans.get(field) {
            if let (Some(from), Some(to)) = (from.get_mut(field), to.get_mut(field)) {
                (*from, *to) = (span.low, span.high);
            }
            nominal = Some((span.nominal - span.low) / (span.high - span.low));
        }
        let mut scan = Self::between(own, from, to, count);
        if let Some(t) = nominal.filter(|t| (0.0..=1.0).contains(t)) {
            scan.insert(t, Ok(own.own.clone()));
        }
        scan
    }

    /// From one point to another.
    pub(super) fn between(own: &mut FieldBox, from: Vec<f64>, to: Vec<f64>, count: usize) -> Self {
        let mut scan = Self {
            from,
            to,
            samples: Vec::with_capacity(count + 16),
            runs: Vec::new(),
            picks_run: Vec::new(),
        };
        let last = count.saturating_sub(1).max(1) as f64;
        for i in 0..count {
            let t = i as f64 / last;
            if let Some(told) = own.ask(&scan.point(t)) {
                scan.samples.push((t, told));
            }
        }
        let most = count / 3 + 1;
        scan.runs = scan.count_changes(own.numbers.len(), most, |a, b, k| {
            differ(a.numbers.get(k), b.numbers.get(k))
        });
        scan.picks_run = scan.count_changes(own.picks.len(), most, |a, b, k| {
            a.picks.get(k) != b.picks.get(k)
        });
        scan
    }

    fn point(&self, t: f64) -> Vec<f64> {
        let ends = self.from.iter().zip(&self.to);
        ends.map(|(&from, &to)| {
            if t <= 0.0 {
                from
            } else if t >= 1.0 {
                to
            } else {
                from + (to - from) * t
            }
        })
        .collect()
    }

    /// One field's number at a place of the line.
    pub(super) fn x(&self, t: f64, field: usize) -> f64 {
        self.point(t).get(field).copied().unwrap_or_default()
    }

    /// What is told, with where.
    pub(super) fn points(&self) -> Vec<(Vec<f64>, Told)> {
        let samples = self.samples.iter();
        samples
            .map(|(t, told)| (self.point(*t), told.clone()))
            .collect()
    }

    /// What is told, in order.
    pub(super) fn told(&self) -> impl Iterator<Item = &Told> {
        self.samples.iter().map(|sample| &sample.1)
    }

    fn insert(&mut self, t: f64, told: Told) {
        let at = self
            .samples
            .iter()
            .take_while(|sample| sample.0 < t)
            .count();
        if self.samples.get(at).is_none_or(|sample| sample.0 != t) {
            self.samples.insert(at, (t, told));
        }
    }

    fn count_changes(
        &self,
        items: usize,
        most: usize,
        changes: impl Fn(&Snap, &Snap, usize) -> bool,
    ) -> Vec<bool> {
        let count = |k: usize| {
            let pairs = self.samples.windows(2);
            pairs
                .filter(|pair| matches!(pair, [(_, Ok(a)), (_, Ok(b))] if changes(a, b, k)))
                .count()
        };
        (0..items).map(|k| count(k) > most).collect()
    }

    /// True where two neighbours differ in what moves in steps, or in whether there is an answer.
    fn parts(&self, own: &FieldBox, a: &Told, b: &Told) -> bool {
        match (a, b) {
            (Err(_), Err(_)) => false,
            (Ok(a), Ok(b)) => {
                let picks = self.picks_run.iter().enumerate();
                let numbers = self.runs.iter().zip(&own.numbers).enumerate();
                picks
                    .filter(|(_, runs)| !**runs)
                    .any(|(k, _)| a.picks.get(k) != b.picks.get(k))
                    || numbers
                        .filter(|(_, (runs, line))| line.stepped && !**runs)
                        .any(|(k, _)| differ(a.numbers.get(k), b.numbers.get(k)))
            }
            _ => true,
        }
    }

    /// Closes in on each change, leaving so many evaluations to others.
    pub(super) fn refine(&mut self, own: &mut FieldBox, keep: usize) {
        for _ in 0..MOST_CHANGES {
            let open = self.samples.windows(2).position(|pair| {
                matches!(pair, [(t0, a), (t1, b)] if t1 - t0 > FINE && self.parts(own, a, b))
            });
            let Some(mut at) = open else { return };
            while let Some([(t0, a), (t1, _)]) = self.samples.get(at..at + 2) {
                let (t0, t1, before) = (*t0, *t1, a.clone());
                if t1 - t0 <= FINE || own.left() <= keep {
                    break;
                }
                let t = f64::midpoint(t0, t1);
                let Some(told) = own.ask(&self.point(t)) else {
                    return;
                };
                let later = !self.parts(own, &before, &told);
                self.insert(t, told);
                at += usize::from(later);
            }
        }
    }

    /// Where a number that runs along the line leaps; none where it only slopes.
    pub(super) fn jump(&self, own: &mut FieldBox, k: usize) -> Option<f64> {
        let points: Vec<(f64, f64)> = self
            .samples
            .iter()
            .filter_map(|(t, told)| Some((*t, (*told.as_ref().ok()?.numbers.get(k)?)?)))
            .collect();
        let slope = |a: (f64, f64), b: (f64, f64)| (b.1 - a.1) / (b.0 - a.0);
        let pairs = || points.iter().zip(points.iter().skip(1));
        let mut slopes: Vec<f64> = pairs().map(|(a, b)| slope(*a, *b)).collect();
        crate::order::sort_by(&mut slopes, f64::total_cmp);
        let usual = *slopes.get(slopes.len() / 2)?;
        let odd = |a: (f64, f64), b: (f64, f64)| ((slope(a, b) - usual) * (b.0 - a.0)).abs();
        let (mut a, mut b) = pairs()
            .map(|(a, b)| (*a, *b))
            .max_by(|one, other| odd(one.0, one.1).total_cmp(&odd(other.0, other.1)))?;
        let first = odd(a, b);
        let size = a.1.abs().max(b.1.abs());
        if first <= 1e-7 * size {
            return None;
        }
        for _ in 0..HALVINGS {
            let t = f64::midpoint(a.0, b.0);
            let told = own.ask(&self.point(t))?.ok()?;
            let middle = (t, (*told.numbers.get(k)?)?);
            if odd(a, middle) >= odd(middle, b) {
                b = middle;
            } else {
                a = middle;
            }
        }
        (odd(a, b) > 0.5 * first).then_some(b.0)
    }

    /// True where a number turns back along the line.
    pub(super) fn turns(&self, k: usize) -> bool {
        let values: Vec<f64> = self
            .told()
            .filter_map(|told| *told.as_ref().ok()?.numbers.get(k)?)
            .collect();
        let (low, high) = values.iter().fold((f64::MAX, f64::MIN), |(low, high), v| {
            (low.min(*v), high.max(*v))
        });
        let noise = 1e-9 * (high - low);
        let step = |up: f64| {
            values
                .iter()
                .zip(values.iter().skip(1))
                .any(|(a, b)| up * (b - a) > noise)
        };
        step(1.0) && step(-1.0)
    }
}

/// True where two numbers differ by more than arithmetic leaves, or one is not there.
pub(super) fn differ(a: Option<&Option<f64>>, b: Option<&Option<f64>>) -> bool {
    match (a.copied().flatten(), b.copied().flatten()) {
        (Some(a), Some(b)) => (a - b).abs() > 1e-9 * a.abs().max(b.abs()),
        (a, b) => a.is_some() != b.is_some(),
    }
}
