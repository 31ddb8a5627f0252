//! Is a plate's series of steps geometric, with which ratio, and which step is off?

use crate::standards::preferred_numbers::{nearest_index, r40};

/// The most steps of a plate.
pub const MOST_STEPS: usize = 48;
/// Whole tooth numbers alone move a step by 2 to 5 % (speed charts of the reference boxes reach 5.2 %): past this it is off.
pub const OFF: f64 = 0.06;

/// One step against the fitted series.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct PlateStep {
    /// As on the plate.
    pub value: f64,
    /// What the fitted series has there.
    pub fitted: f64,
    /// value / fitted − 1.
    pub off: f64,
    /// The preferred number (ISO 3) that would stand there.
    pub preferred: f64,
}

/// What a plate's steps tell.
#[derive(Clone, PartialEq, Debug)]
pub struct Plate {
    /// Ratio from step to step: the median of all pairs, so that one worn or misread step does not move it.
    pub ratio: f64,
    /// (most / least)^(1/(n−1)), the usual formula.
    pub plain_ratio: f64,
    /// The ratio in steps of R40 (ratio 10^(1/40)), nearest whole.
    pub r40_steps: i32,
    /// Each step.
    pub steps: Vec<PlateStep>,
    /// Gaps after this step (by index) that hold about so many ratios instead of one.
    pub gaps: Vec<(usize, f64)>,
}

impl Plate {
    /// True where no step is off by more than [`OFF`] and no gap holds more than one ratio.
    pub fn is_geometric(&self) -> bool {
        self.gaps.is_empty() && self.steps.iter().all(|step| step.off.abs() <= OFF)
    }
}

/// Looks at a plate's steps, rising. Fits value = a × ratio^i by medians over the logarithms. None for fewer than three steps,
/// for more than [`MOST_STEPS`], or where they do not rise.
///
/// ```
/// use benchslate_core::machine::look_at_plate;
/// // nine speeds from 180 to 1800: ratio 10^(1/8) = 1.3335, every fifth of R40 (preferred numbers, ISO 3)
/// let plate = look_at_plate(&[180.0, 236.0, 315.0, 425.0, 560.0, 750.0, 1000.0, 1320.0, 1800.0]).unwrap();
/// assert!((plate.plain_ratio - 1.3335).abs() < 0.0001);
/// assert_eq!(plate.r40_steps, 5);
/// ```
pub fn look_at_plate(values: &[f64]) -> Option<Plate> {
    let rising = values
        .windows(2)
        .all(|pair| matches!(pair, [a, b] if a < b));
    let (first, last) = (*values.first()?, *values.last()?);
    if values.len() < 3 || values.len() > MOST_STEPS || !rising || first <= 0.0 {
        return None;
    }
    let logs: Vec<f64> = values.iter().map(|value| libm::log(*value)).collect();
    let mut slopes = Vec::new();
    for (i, low) in logs.iter().enumerate() {
        for (j, high) in logs.iter().enumerate().skip(i.saturating_add(1)) {
            slopes.push((high - low) / (j as f64 - i as f64));
        }
    }
    let slope = median(&mut slopes)?;
    let mut starts: Vec<f64> = logs
        .iter()
        .enumerate()
        .map(|(i, log)| log - slope * i as f64)
        .collect();
    let start = median(&mut starts)?;
    let r40_steps = libm::round(40.0 * slope / core::f64::consts::LN_10) as i32;
    let origin = nearest_index(libm::exp(start)).unwrap_or(0);
    let steps = values.iter().zip(0_i32..).map(|(&value, i)| {
        let fitted = libm::exp(start + slope * f64::from(i));
        PlateStep {
            value,
            fitted,
            off: value / fitted - 1.0,
            preferred: r40(origin.saturating_add(r40_steps.saturating_mul(i))),
        }
    });
    let gaps = logs
        .windows(2)
        .enumerate()
        .filter_map(|(i, pair)| match pair {
            [a, b] if (b - a) / slope > 1.6 => Some((i, (b - a) / slope)),
            _ => None,
        });
    Some(Plate {
        ratio: libm::exp(slope),
        plain_ratio: libm::pow(last / first, 1.0 / (values.len() as f64 - 1.0)),
        r40_steps,
        steps: steps.collect(),
        gaps: gaps.collect(),
    })
}

/// Two ranges behind one plate, each geometric within [`OFF`]: where the upper one starts, and the ratio of each. None where one
/// series does, or where no cut leaves three steps on either side and a geometric series in each.
///
/// ```
/// use benchslate_core::machine::two_ranges;
/// // back gear in and out, each range R20/3 of ISO 3: ratio 1.4125
/// let (at, low, high) = two_ranges(&[90.0, 125.0, 180.0, 250.0, 500.0, 710.0, 1000.0, 1400.0]).unwrap();
/// assert!(at == 4 && (low - 1.41).abs() < 0.02 && (high - 1.41).abs() < 0.02);
/// ```
pub fn two_ranges(values: &[f64]) -> Option<(usize, f64, f64)> {
    if look_at_plate(values)?.is_geometric() {
        return None;
    }
    let worst = |plate: &Plate| {
        plate
            .steps
            .iter()
            .fold(0.0, |w, step| f64::max(w, step.off.abs()))
    };
    let cuts = (3..values.len().saturating_sub(2)).filter_map(|at| {
        let (low, high) = values.split_at_checked(at)?;
        let (low, high) = (look_at_plate(low)?, look_at_plate(high)?);
        let fits = low.is_geometric() && high.is_geometric();
        fits.then(|| (worst(&low).max(worst(&high)), (at, low.ratio, high.ratio)))
    });
    cuts.min_by(|a, b| a.0.total_cmp(&b.0))
        .map(|(_, found)| found)
}

/// The size of the steps where they are all alike within a fiftieth: equal differences in place of equal ratios. None for fewer
/// than four.
pub fn equal_steps(values: &[f64]) -> Option<f64> {
    let (first, last) = (*values.first()?, *values.last()?);
    let mean = (last - first) / (values.len().checked_sub(1)? as f64);
    let alike = |pair: &[f64]| matches!(pair, [a, b] if (b - a - mean).abs() <= 0.02 * mean);
    (values.len() >= 4 && values.windows(2).all(alike)).then_some(mean)
}

/// The middle value; of two middle ones their mean. None for an empty list.
pub fn median(values: &mut [f64]) -> Option<f64> {
    crate::order::sort_by(values, f64::total_cmp);
    let half = values.len() / 2;
    let upper = *values.get(half)?;
    if values.len() % 2 == 1 {
        return Some(upper);
    }
    values
        .get(half.checked_sub(1)?)
        .map(|lower| f64::midpoint(*lower, upper))
}
