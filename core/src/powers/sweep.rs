//! How does a result run against an entry? The result at even places of one field, with the entry's own place, and where
//! it jumps from one level to another.

use super::probe::Probe;
use super::range_of;
use crate::quantity::Kind;
use crate::sheet::Inputs;

/// Even places of a sweep.
const POINTS: usize = 49;
/// The most evaluations of one sweep.
const MOST_EVALUATIONS: usize = 1200;
/// How near the two sides of a jump are brought, as a share of what is swept.
const FINE: f64 = 1e-7;
/// Halvings after which a slope has flattened out, and a jump has not.
const TELLS: usize = 8;
/// Jumps that are looked for between two even places, so deep.
const DEPTH: usize = 5;

/// A jump from one level to another.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Edge {
    /// The field's number, base unit.
    pub at: f64,
    /// The result below it, base unit.
    pub from: f64,
    /// The result above it.
    pub to: f64,
}

/// A stretch of the field over which the result stays the same.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Level {
    /// From, base unit of the field.
    pub from: f64,
    /// To.
    pub to: f64,
    /// The result, base unit; none where the sheet gives no answer.
    pub gives: Option<f64>,
}

/// A result against a field.
#[derive(Clone, PartialEq, Debug)]
pub struct Swept {
    /// The field's number and the result's at even places, base units; none where the sheet gives no answer there.
    pub points: Vec<(f64, Option<f64>)>,
    /// Jumps of a result that moves in steps, rising.
    pub edges: Vec<Edge>,
    /// The entry's own place, where it has one.
    pub own: Option<(f64, f64)>,
    /// How often the sheet was evaluated: at most 1,200 times.
    pub evaluations: usize,
}

impl Swept {
    /// The line to draw: the points, and both sides of each jump at its place.
    pub fn curve(&self) -> Vec<(f64, Option<f64>)> {
        let mut curve = Vec::with_capacity(self.points.len() + 2 * self.edges.len());
        let mut edges = self.edges.iter().peekable();
        for point in &self.points {
            while let Some(edge) = edges.next_if(|edge| edge.at <= point.0) {
                curve.push((edge.at, Some(edge.from)));
                curve.push((edge.at, Some(edge.to)));
            }
            curve.push(*point);
        }
        curve
    }

    /// The levels of a result that does nothing but jump; none where it also slopes, or stays the same throughout.
    pub fn levels(&self) -> Option<Vec<Level>> {
        if self.edges.is_empty() {
            return None;
        }
        let mut levels: Vec<Level> = Vec::new();
        let mut after_jump = true;
        for pair in self.curve().windows(2) {
            let [(a, fa), (b, fb)] = *pair else { continue };
            let same = match (fa, fb) {
                (Some(fa), Some(fb)) => is_same(fa, fb),
                (fa, fb) => fa == fb,
            };
            match levels.last_mut() {
                Some(last) if same && !after_jump => last.to = b,
                _ if same => levels.push(Level {
                    from: a,
                    to: b,
                    gives: fa,
                }),
                // both sides of a jump, or the end of a window
                _ if a == b || fa.is_none() || fb.is_none() => {}
                _ => return None,
            }
            after_jump = !same;
        }
        Some(levels)
    }
}

fn is_same(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs())
}

/// Sweeps a field around the entry: from half to one and a half times its number, inside its range; over the whole range
/// where it is empty. None where the field is not numeric or has no range to go by.
pub fn sweep(inputs: &Inputs, field: &str, result: &str) -> Option<Swept> {
    let declared = inputs.sheet().result(result)?;
    declared.kind?;
    let own = inputs.number(field);
    let (low, high) = stretch(own, range_of(inputs, field))?;
    let counts = inputs
        .sheet()
        .field(field)
        .is_some_and(|field| field.kind_is(Kind::Count));
    let mut sweeper = Sweeper {
        probe: Probe::new(inputs, MOST_EVALUATIONS),
        field,
        result,
        fine: FINE * (high - low),
        edges: Vec::new(),
    };
    let last = POINTS.saturating_sub(1) as f64;
    let mut xs: Vec<f64> = (0..POINTS)
        .map(|i| {
            let x = low + (high - low) * i as f64 / last;
            if counts { libm::round(x) } else { x }
        })
        .collect();
    xs.dedup();
    let points: Vec<(f64, Option<f64>)> = xs.into_iter().map(|x| (x, sweeper.at(x))).collect();
    let own = own.and_then(|x| Some((x, sweeper.at(x)?)));
    if declared.stepped {
        for pair in points.windows(2) {
            if let [(a, Some(fa)), (b, Some(fb))] = *pair {
                sweeper.split((a, fa), (b, fb), if counts { 0 } else { DEPTH });
            }
        }
        crate::order::sort_by(&mut sweeper.edges, |a, b| a.at.total_cmp(&b.at));
    }
    Some(Swept {
        points,
        edges: sweeper.edges,
        own,
        evaluations: sweeper.probe.asked(),
    })
}

fn stretch(own: Option<f64>, range: Option<(f64, f64)>) -> Option<(f64, f64)> {
    match (own.filter(|own| *own != 0.0), range) {
        (Some(own), None) => Some(around(own)),
        (Some(own), Some((low, high))) => {
            let around = around(own);
            Some((around.0.max(low), around.1.min(high)))
        }
        (None, range) => range,
    }
}

fn around(own: f64) -> (f64, f64) {
    let (a, b) = (own * 0.5, own * 1.5);
    (a.min(b), a.max(b))
}

struct Sweeper<'a> {
    probe: Probe,
    field: &'a str,
    result: &'a str,
    fine: f64,
    edges: Vec<Edge>,
}

impl Sweeper<'_> {
    fn at(&mut self, x: f64) -> Option<f64> {
        self.probe.at(self.field, x, self.result)
    }

    /// Finds the jumps between two places; a slope has none. Where it may not be looked for, the jump is put in the middle.
    fn split(&mut self, a: (f64, f64), b: (f64, f64), depth: usize) {
        if is_same(a.1, b.1) {
            return;
        }
        let apart = |a: (f64, f64), b: (f64, f64)| (a.1 - b.1).abs();
        let (mut left, mut right) = (a, b);
        if depth == 0 || self.probe.left() == 0 {
            let at = f64::midpoint(a.0, b.0);
            (left.0, right.0) = (at, at);
        }
        let mut halvings = 0;
        while right.0 - left.0 > self.fine {
            let x = f64::midpoint(left.0, right.0);
            let Some(gives) = self.at(x) else { break };
            if apart(left, (x, gives)) >= apart((x, gives), right) {
                right = (x, gives);
            } else {
                left = (x, gives);
            }
            halvings += 1;
            if halvings == TELLS && apart(left, right) < apart(a, b) / 8.0 {
                return;
            }
        }
        self.edges.push(Edge {
            at: right.0,
            from: left.1,
            to: right.1,
        });
        if depth > 0 && self.probe.left() > 0 {
            self.split(a, left, depth - 1);
            self.split(right, b, depth - 1);
        }
    }
}
