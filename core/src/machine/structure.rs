//! Which stages in series give this plate? Structures whose settings run through the whole series, and how well each fits.
//!
//! Structural formula: z = p1(1) p2(p1) p3(p1 p2)…, where p is the number of pairs of a group and the bracket how many steps
//! they lie apart. A smaller bracket makes settings that coincide. Source: Acherkan, Machine Tool Design (from memory).

use super::isolate::{MOST_SETTINGS, MOST_STAGES};
use super::teeth::MOST_ALTERNATIVES;

/// The most structures that are kept.
pub const MOST_STRUCTURES: usize = 12;

/// A stage of a structure: alternatives, and how many steps of the series they lie apart.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub struct Group {
    /// Alternatives.
    pub pairs: usize,
    /// Steps from one to the next.
    pub spacing: usize,
}

/// A structure and its fit to the plate.
#[derive(Clone, PartialEq, Debug)]
pub struct Structure {
    /// Its stages, the one with the smallest spacing first. They may stand in any order on the shafts.
    pub groups: Vec<Group>,
    /// Number of settings.
    pub settings: usize,
    /// Settings that repeat another's speed.
    pub doubled: usize,
    /// The largest difference of a plate value from the products, as a share.
    pub off: f64,
}

/// The common ratio of a series by its ends: (last ÷ first)^(1/(n − 1)). Nothing for fewer than two values, or ones that do
/// not rise from above 0.
///
/// ```
/// use benchslate_core::machine::structure::common_ratio;
/// assert!((common_ratio(&[180.0, 560.0, 1800.0]).unwrap() - 10.0_f64.powf(0.5)).abs() < 1e-12);
/// ```
pub fn common_ratio(values: &[f64]) -> Option<f64> {
    let (first, last) = (*values.first()?, *values.last()?);
    (values.len() > 1 && first > 0.0 && last > first)
        .then(|| libm::pow(last / first, 1.0 / (values.len() - 1) as f64))
}

/// How far apart the ends of a stage lie: ratio^(spacing × (pairs − 1)). Customary limits: 8 for speeds, 14 for feeds.
pub fn group_range(group: Group, ratio: f64) -> f64 {
    libm::pow(
        ratio,
        (group.spacing * group.pairs.saturating_sub(1)) as f64,
    )
}

/// How many steps each setting of a structure lies above the first, sorted: equal ones are settings that coincide.
pub fn steps(groups: &[Group]) -> Vec<usize> {
    let mut steps = vec![0];
    for group in groups.iter().take(MOST_STAGES) {
        steps = steps
            .iter()
            .flat_map(|step| {
                (0..group.pairs.min(MOST_SETTINGS)).map(move |at| step + at * group.spacing)
            })
            .take(1000)
            .collect();
    }
    crate::order::sort(&mut steps);
    steps
}

/// Structures that run through a plate of these values (rising, above 0, at most [`MOST_SETTINGS`]), best first: fit, then
/// fewest settings that coincide, then small clusters, then the narrowest stage. One stage alone, which fits any plate, comes last.
///
/// ```
/// use benchslate_core::machine::structure::{Group, structures};
/// // two clusters, one by 1.5 and one by 2: the only way to these six
/// let found = structures(&[1.0, 1.5, 2.0, 3.0, 4.0, 6.0]);
/// assert_eq!(found[0].groups, [Group { pairs: 2, spacing: 1 }, Group { pairs: 3, spacing: 2 }]);
/// assert!(found[0].off < 1e-12);
/// ```
pub fn structures(plate: &[f64]) -> Vec<Structure> {
    let count = plate.len();
    let rising = plate.windows(2).all(|two| matches!(two, [a, b] if a < b));
    if !(2..=MOST_SETTINGS).contains(&count) || !rising || plate.iter().any(|value| *value <= 0.0) {
        return Vec::new();
    }
    let mut found = Vec::new();
    let most = MOST_SETTINGS.min(count + count / 3);
    extend(count, most, 1, 1, &mut Vec::new(), &mut found);
    let logs: Vec<f64> = plate.iter().map(|value| libm::log(*value)).collect();
    let mut all: Vec<Structure> = found
        .into_iter()
        .filter_map(|groups| {
            let settings = groups.iter().map(|group| group.pairs).product();
            Some(Structure {
                off: misfit_of_logs(&logs, &groups)?,
                doubled: settings - count,
                settings,
                groups,
            })
        })
        .collect();
    // structures within 2.5 % fit alike; a cluster of more than four is a cone, and one stage alone explains nothing
    let key = |one: &Structure| {
        let size = one.groups.iter().map(|group| group.pairs).max();
        let widest = one
            .groups
            .iter()
            .map(|group| group.spacing * (group.pairs - 1))
            .max();
        (
            one.groups.len() == 1,
            (libm::floor(one.off / 0.005) as i64).max(4),
            one.doubled,
            size > Some(4),
            widest,
            one.groups.len(),
        )
    };
    crate::order::sort_by(&mut all, |a, b| {
        key(a).cmp(&key(b)).then_with(|| a.groups.cmp(&b.groups))
    });
    all.truncate(MOST_STRUCTURES);
    all
}

/// Adds stages with ever larger spacing that leave no gap, until the series is run through.
fn extend(
    count: usize,
    most: usize,
    reach: usize,
    settings: usize,
    groups: &mut Vec<Group>,
    found: &mut Vec<Vec<Group>>,
) {
    if reach == count {
        found.push(groups.clone());
        return;
    }
    if groups.len() == MOST_STAGES || found.len() > 2000 {
        return;
    }
    let least = groups.last().map_or(1, |last| last.spacing);
    for spacing in least..=reach {
        for pairs in 2..=MOST_ALTERNATIVES {
            let (next, all) = (reach + (pairs - 1) * spacing, settings * pairs);
            if next > count || all > most {
                break;
            }
            groups.push(Group { pairs, spacing });
            extend(count, most, next, all, groups, found);
            groups.pop();
        }
    }
}

/// The largest difference of a plate value from the best products, as a share: each alternative's factor is the mean over the
/// settings that use it. Nothing where the structure does not run through the plate.
pub fn misfit(plate: &[f64], groups: &[Group]) -> Option<f64> {
    let logs: Vec<f64> = plate.iter().map(|value| libm::log(*value)).collect();
    misfit_of_logs(&logs, groups)
}

fn misfit_of_logs(logs: &[f64], groups: &[Group]) -> Option<f64> {
    let mut settings: Vec<(usize, [usize; MOST_STAGES])> = vec![(0, [0; MOST_STAGES])];
    for (stage, group) in groups.iter().enumerate() {
        let mut next = Vec::with_capacity(settings.len().saturating_mul(group.pairs));
        for (step, levers) in settings {
            for at in 0..group.pairs {
                let mut levers = levers;
                *levers.get_mut(stage)? = at;
                next.push((step + at * group.spacing, levers));
            }
        }
        next.truncate(MOST_SETTINGS + 1);
        settings = next;
    }
    let mut rows: Vec<(f64, &[usize])> = Vec::with_capacity(settings.len());
    for (step, levers) in &settings {
        rows.push((*logs.get(*step)?, levers));
    }
    fit(
        &rows,
        &groups.iter().map(|group| group.pairs).collect::<Vec<_>>(),
    )
}

/// The largest difference of logarithms of speed from sums of one part an alternative, as a share. Rows are a setting each, all
/// settings of a box.
pub fn fit(rows: &[(f64, &[usize])], stages: &[usize]) -> Option<f64> {
    if rows.is_empty() {
        return None;
    }
    let mean = |sum: f64, n: f64| (n > 0.0).then(|| sum / n);
    let whole = rows.iter().fold(0.0, |sum, (log, _)| sum + log) / rows.len() as f64;
    let mut parts = Vec::with_capacity(stages.len());
    for (stage, &count) in stages.iter().enumerate() {
        let mut sums = vec![(0.0, 0.0); count];
        for (log, levers) in rows {
            if let Some((sum, n)) = levers.get(stage).and_then(|&at| sums.get_mut(at)) {
                *sum += log;
                *n += 1.0;
            }
        }
        for (sum, n) in &mut sums {
            *sum = mean(*sum, *n)? - whole;
        }
        parts.push(sums);
    }
    rows.iter().try_fold(0.0, |worst, (log, levers)| {
        let mut sum = whole;
        for (part, &at) in parts.iter().zip(*levers) {
            sum += part.get(at)?.0;
        }
        Some(f64::max(worst, libm::fabs(libm::expm1(log - sum))))
    })
}
