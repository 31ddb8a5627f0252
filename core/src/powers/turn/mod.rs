//! Which entry gives a wanted result? One numeric field is freed and searched over its range and outward from the entry;
//! every find is put back in and shown to give the wanted value, an interval is given as an interval, a jump as a jump.

mod places;
mod search;
mod smooth;
mod steps;

use super::range_of;
use crate::sheet::Inputs;
use search::Search;

/// The most evaluations of one search.
const MOST_EVALUATIONS: usize = 5000;
/// The most finds that are listed.
const MOST_FOUND: usize = 8;
/// Ends of windows that are looked for.
const MOST_EDGES: usize = 4;

/// A place of the field and the result there, where there is one.
type Sample = (f64, Option<f64>);

/// An entry that gives the wanted value.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Root {
    /// The field's number, base unit.
    pub x: f64,
    /// The result with it put back in, base unit.
    pub gives: f64,
    /// It is the wanted value to its printed digits.
    pub met: bool,
}

/// All entries of an interval give the wanted value to its printed digits.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Interval {
    /// Least of the field, base unit.
    pub from: f64,
    /// Most.
    pub to: f64,
    /// A round number inside.
    pub inside: f64,
    /// The result there, base unit.
    pub gives: f64,
}

/// The result jumps over the wanted value.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Jump {
    /// Where, base unit of the field.
    pub x: f64,
    /// From, base unit of the result.
    pub from: f64,
    /// To.
    pub to: f64,
}

/// A value beside the wanted one, for a result that moves in steps.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Side {
    /// The field's number, base unit.
    pub x: f64,
    /// The result there.
    pub gives: f64,
}

/// What the search found.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Turned {
    /// Entries that give the wanted value, rising.
    pub roots: Vec<Root>,
    /// Intervals that give it throughout, rising.
    pub intervals: Vec<Interval>,
    /// Jumps over it.
    pub jumps: Vec<Jump>,
    /// Where a result that moves in steps never meets the wanted value: the nearest below it.
    pub below: Option<Side>,
    /// The nearest above it.
    pub above: Option<Side>,
    /// Least and most that the result reaches in the field's range; none where it has no answer anywhere in it.
    pub reach: Option<(f64, f64)>,
    /// The range that was searched, base unit of the field.
    pub searched: (f64, f64),
    /// The field changes nothing: the result is the same wherever there is one.
    pub has_no_effect: bool,
    /// How often the sheet was evaluated: at most 5,000 times.
    pub evaluations: usize,
}

/// Searches a field's range for entries that give the wanted value of a result (base unit). None where the field is not
/// numeric, has no range, or the result is not declared.
pub fn turn(inputs: &Inputs, field: &str, result: &str, wanted: f64) -> Option<Turned> {
    let (low, high) = range_of(inputs, field)?;
    let field = inputs.sheet().field(field)?.id;
    let stepped = inputs.sheet().result(result)?.stepped;
    let own = inputs
        .number(field)
        .filter(|own| (low..=high).contains(own));
    let mut search = Search::new(inputs, field, result, wanted, MOST_EVALUATIONS);
    let mut found = Turned {
        searched: (low, high),
        ..Turned::default()
    };
    let mut samples: Vec<Sample> = Vec::new();
    let counts = search.counts;
    // a result may show more decimals where it is small: those at the entry hold
    if let Some(own) = own {
        let _ = search.at(own);
    }
    for places in [places::few, places::all] {
        for x in places(low, high, own, counts) {
            if !samples.iter().any(|sample| sample.0 == x) {
                samples.push((x, search.at(x)));
            }
        }
        found.reach = reach(&samples);
        let answers = samples.iter().filter(|sample| sample.1.is_some()).count();
        let flat = found.reach.is_some_and(|(a, b)| search.is_flat(a, b));
        // a field of whole numbers, or a step, may well change only far from the entry
        found.has_no_effect = flat && answers > 2;
        if found.has_no_effect && !stepped {
            break;
        }
    }
    if !found.has_no_effect {
        crate::order::sort_by(&mut samples, |a, b| a.0.total_cmp(&b.0));
        add_edges(&mut search, &mut samples, own);
        found.reach = reach(&samples);
        let order = nearest_first(&samples, own);
        if stepped || counts {
            steps::find(&mut search, &samples, &order, &mut found);
        } else {
            smooth::find(&mut search, &samples, &order, &mut found);
            nearest_in_print(&mut search, &samples, &order, &mut found);
        }
    }
    crate::order::sort_by(&mut found.roots, |a, b| a.x.total_cmp(&b.x));
    crate::order::sort_by(&mut found.intervals, |a, b| a.from.total_cmp(&b.from));
    found.evaluations = search.asked();
    Some(found)
}

fn reach(samples: &[Sample]) -> Option<(f64, f64)> {
    let mut values = samples.iter().filter_map(|sample| sample.1);
    let first = values.next()?;
    Some(values.fold((first, first), |(low, high), now| {
        (low.min(now), high.max(now))
    }))
}

/// Adds the last places that still have an answer on both sides of each end of a window, those nearest the entry first.
fn add_edges(search: &mut Search, samples: &mut Vec<Sample>, own: Option<f64>) {
    let mut more = Vec::new();
    for i in nearest_first(samples, own) {
        if more.len() >= MOST_EDGES {
            break;
        }
        match (samples.get(i), samples.get(i + 1)) {
            (Some(&(a, Some(gives))), Some(&(b, None)))
            | (Some(&(b, None)), Some(&(a, Some(gives)))) => {
                let (x, gives) = search.window((a, gives), b);
                if x != a {
                    more.push((x, Some(gives)));
                }
            }
            _ => {}
        }
    }
    samples.extend(more);
    crate::order::sort_by(samples, |a, b| a.0.total_cmp(&b.0));
}

/// The places of the samples, the nearest to the entry first; rising where there is no entry.
fn nearest_first(samples: &[Sample], own: Option<f64>) -> Vec<usize> {
    let mut order: Vec<usize> = (0..samples.len()).collect();
    if let Some(own) = own {
        let home = samples.iter().filter(|sample| sample.0 < own).count();
        crate::order::sort_by_key(&mut order, |&i| i.abs_diff(home));
    }
    order
}

/// Where nothing was found: a place that gives the wanted value in print all the same, as at the end of a window.
fn nearest_in_print(search: &mut Search, samples: &[Sample], order: &[usize], found: &mut Turned) {
    if !found.roots.is_empty() || !found.intervals.is_empty() {
        return;
    }
    let mut best: Option<(f64, f64)> = None;
    for &i in order {
        if let Some(&(x, Some(gives))) = samples.get(i)
            && search.meets(gives)
        {
            best = Some(best.map_or((x, gives), |old| search.nearer(old, (x, gives))));
        }
    }
    if let Some(best) = best {
        smooth::push_root(search, best, found);
    }
}
