//! What range does ± leave? The worst case over the tolerances of the measured fields: all corners up to six such
//! fields, one at a time and added beyond that; with points between where a field is not declared monotonic.

use super::value;
use crate::quantity::System;
use crate::sheet::{Answer, Field, Inputs, Stop, figure};

/// Up to this many fields all corners are tried.
const MOST_CORNER_FIELDS: usize = 6;
/// The most evaluations of one range.
const MOST_POINTS: usize = 1024;

/// Which end of a tolerance.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum End {
    /// The low end.
    Low,
    /// The high end.
    High,
}

/// The range of one result, base units.
#[derive(Clone, PartialEq, Debug)]
pub struct LineSpread {
    /// The result.
    pub id: &'static str,
    /// Least.
    pub low: f64,
    /// Most.
    pub high: f64,
    /// The field that drives the range most.
    pub driver: &'static str,
}

/// A pick that is another at one end.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct PickChange {
    /// The field whose end it is.
    pub field: &'static str,
    /// Which end.
    pub end: End,
    /// What is picked: the result's or table's name.
    pub what: String,
    /// What it becomes.
    pub becomes: String,
}

/// An end at which the sheet gives no answer.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct EndFault {
    /// The field whose end it is.
    pub field: &'static str,
    /// Which end.
    pub end: End,
    /// Why, in words.
    pub says: String,
}

/// What ± leaves.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Spread {
    /// More than six fields: changes one at a time, added.
    pub added: bool,
    /// Ranges by result.
    pub lines: Vec<LineSpread>,
    /// Picks that change.
    pub picks: Vec<PickChange>,
    /// Ends without an answer.
    pub faults: Vec<EndFault>,
}

struct Span {
    field: &'static Field,
    low: f64,
    high: f64,
}

impl Span {
    fn point(&self, step: usize, steps: usize) -> f64 {
        // the ends exactly
        if step == 0 {
            self.low
        } else if step.saturating_add(1) >= steps {
            self.high
        } else {
            self.low + (self.high - self.low) * step as f64 / (steps.saturating_sub(1)) as f64
        }
    }
}

/// The range that the tolerances of an entry leave in its results; none where no field carries one.
pub fn spread(inputs: &Inputs, nominal: &Answer) -> Option<Spread> {
    let spans: Vec<Span> = inputs
        .tolerances()
        .into_iter()
        .map(|(field, _, low, high)| Span { field, low, high })
        .collect();
    if spans.is_empty() {
        return None;
    }
    let quiet = inputs.clone().quietly();
    let mut found = Spread {
        added: spans.len() > MOST_CORNER_FIELDS,
        ..Spread::default()
    };
    let ids: Vec<(&'static str, f64)> = nominal
        .lines
        .iter()
        .filter_map(|line| Some((line.id, line.value.base()?)))
        .collect();
    // one at a time: drivers, picks and faults, and the added range
    let mut ranges: Vec<LineSpread> = ids
        .iter()
        .map(|&(id, base)| LineSpread {
            id,
            low: base,
            high: base,
            driver: "",
        })
        .collect();
    let mut widest = vec![0.0_f64; ids.len()];
    let mut added: Vec<(f64, f64)> = ids.iter().map(|&(_, base)| (base, base)).collect();
    for span in &spans {
        let steps = if span.field.is_monotonic { 2 } else { 5 };
        let mut own: Vec<(f64, f64)> = ids.iter().map(|&(_, base)| (base, base)).collect();
        for step in 0_usize..steps {
            let end = match step {
                0 => Some(End::Low),
                step if step.saturating_add(1) == steps => Some(End::High),
                _ => None,
            };
            match figure(&quiet.with(span.field.id, span.point(step, steps))) {
                Ok(answer) => {
                    widen(&mut own, &ids, &answer);
                    if let Some(end) = end {
                        compare_picks(nominal, &answer, span.field.id, end, &mut found.picks);
                    }
                }
                Err(stop) => {
                    if let Some(end) = end {
                        found.faults.push(EndFault {
                            field: span.field.id,
                            end,
                            says: stop_text(&stop),
                        });
                    }
                }
            }
        }
        let own_and_base = own.iter().zip(&ids).map(|(own, (_, base))| (*own, *base));
        for (((own, base), sum), (range, widest)) in own_and_base
            .zip(&mut added)
            .zip(ranges.iter_mut().zip(&mut widest))
        {
            sum.0 += own.0 - base;
            sum.1 += own.1 - base;
            if own.1 - own.0 > *widest {
                *widest = own.1 - own.0;
                range.driver = span.field.id;
            }
            range.low = range.low.min(own.0);
            range.high = range.high.max(own.1);
        }
    }
    if found.added {
        for (range, sum) in ranges.iter_mut().zip(&added) {
            (range.low, range.high) = *sum;
        }
    } else if spans.len() > 1 {
        corners(&quiet, &spans, &ids, &mut ranges);
    }
    found.lines = ranges;
    Some(found)
}

fn corners(quiet: &Inputs, spans: &[Span], ids: &[(&'static str, f64)], ranges: &mut [LineSpread]) {
    let count = |inner: usize| -> Vec<usize> {
        spans
            .iter()
            .map(|span| if span.field.is_monotonic { 2 } else { inner })
            .collect()
    };
    let total = |steps: &[usize]| {
        steps
            .iter()
            .fold(1_usize, |all, &steps| all.saturating_mul(steps))
    };
    let mut steps = count(5);
    if total(&steps) > MOST_POINTS {
        steps = count(3);
    }
    let mut own: Vec<(f64, f64)> = ranges.iter().map(|range| (range.low, range.high)).collect();
    for number in 0..total(&steps).min(MOST_POINTS) {
        let mut rest = number;
        let mut inputs = quiet.clone();
        for (span, &steps) in spans.iter().zip(&steps) {
            inputs = inputs.with(span.field.id, span.point(rest % steps.max(1), steps));
            rest /= steps.max(1);
        }
        if let Ok(answer) = figure(&inputs) {
            widen(&mut own, ids, &answer);
        }
    }
    for (range, own) in ranges.iter_mut().zip(own) {
        (range.low, range.high) = own;
    }
}

fn widen(own: &mut [(f64, f64)], ids: &[(&'static str, f64)], answer: &Answer) {
    for (own, (id, _)) in own.iter_mut().zip(ids) {
        if let Some(now) = value(answer, id) {
            own.0 = own.0.min(now);
            own.1 = own.1.max(now);
        }
    }
}

/// Results in words and chosen rows that are others at an end.
fn compare_picks(
    nominal: &Answer,
    now: &Answer,
    field: &'static str,
    end: End,
    picks: &mut Vec<PickChange>,
) {
    for line in nominal
        .lines
        .iter()
        .filter(|line| line.value.base().is_none())
    {
        let words = |answer: &Answer| {
            answer
                .get(line.id)
                .map(|line| line.value.text(System::Inch))
        };
        if let (Some(was), Some(becomes)) = (words(nominal), words(now))
            && was != becomes
        {
            picks.push(PickChange {
                field,
                end,
                what: line.label.to_string(),
                becomes,
            });
        }
    }
    for table in &nominal.tables {
        let chosen = |answer: &Answer| -> Option<String> {
            let row = answer
                .table_by_id(table.id)?
                .rows
                .iter()
                .find(|row| row.chosen)?;
            Some(row.cells.first()?.text(System::Inch))
        };
        if let (Some(was), Some(becomes)) = (chosen(nominal), chosen(now))
            && was != becomes
        {
            picks.push(PickChange {
                field,
                end,
                what: table.title.to_string(),
                becomes,
            });
        }
    }
}

fn stop_text(stop: &Stop) -> String {
    match stop {
        Stop::Missing(field) => format!("{field} is needed there"),
        Stop::Fault(fault) => fault.text(),
        Stop::Withheld(withheld) => format!("limit {}: {}", withheld.limit, withheld.reason),
    }
}
