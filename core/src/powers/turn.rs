//! Which entry gives a wanted result? One numeric field is freed and searched over its range; every root is put back in
//! and shown to give the wanted value, and a jump is reported as a jump.

use super::{at, range_of};
use crate::quantity::Kind;
use crate::sheet::Inputs;

/// Points of the scan.
const POINTS: usize = 256;
/// The most roots that are listed.
const MOST_ROOTS: usize = 8;
/// Halvings of one interval: past the last bit of a double.
const HALVINGS: usize = 60;

/// An entry that gives the wanted value.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Root {
    /// The field's number, base unit.
    pub x: f64,
    /// The result with it put back in, base unit.
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

/// A choice beside the wanted value, for a result that moves in steps.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Side {
    /// The field's number, base unit.
    pub x: f64,
    /// The result there.
    pub gives: f64,
}

/// What turning round found.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Turned {
    /// Entries that give the wanted value, rising.
    pub roots: Vec<Root>,
    /// Jumps over it.
    pub jumps: Vec<Jump>,
    /// For a stepped result: the nearest below or at the wanted value, where the field may stand.
    pub below: Option<Side>,
    /// For a stepped result: the nearest above.
    pub above: Option<Side>,
    /// Least and most that the result reaches in the field's range; none where it has no answer anywhere in it.
    pub reach: Option<(f64, f64)>,
    /// The range that was searched, base unit of the field.
    pub searched: (f64, f64),
}

/// Searches a field's range for entries that give the wanted value of a result. None where the field is not numeric, has
/// no range, or the result is not declared.
pub fn turn(inputs: &Inputs, field: &str, result: &str, wanted: f64) -> Option<Turned> {
    let (low, high) = range_of(inputs, field)?;
    let counts = inputs
        .sheet()
        .field(field)
        .is_some_and(|field| field.kind_is(Kind::Count));
    let stepped = counts || inputs.sheet().result(result)?.stepped;
    let quiet = inputs.clone().quietly();
    let f = |x: f64| at(&quiet, field, x, result);
    let mut turned = Turned {
        searched: (low, high),
        ..Turned::default()
    };
    let samples: Vec<(f64, Option<f64>)> = grid(low, high, inputs.number(field), counts)
        .into_iter()
        .map(|x| (x, f(x)))
        .collect();
    for &(x, gives) in &samples {
        let Some(gives) = gives else { continue };
        let reach = turned.reach.get_or_insert((gives, gives));
        (reach.0, reach.1) = (reach.0.min(gives), reach.1.max(gives));
        let side = if gives <= wanted {
            &mut turned.below
        } else {
            &mut turned.above
        };
        let nearer = side.is_none_or(|old| (gives - wanted).abs() < (old.gives - wanted).abs());
        if stepped && nearer {
            *side = Some(Side { x, gives });
        }
    }
    if stepped {
        return Some(turned);
    }
    let scale = turned
        .reach
        .map_or(1.0, |(low, high)| (high - low).abs())
        .max(wanted.abs())
        .max(f64::MIN_POSITIVE);
    let close = |gives: f64| (gives - wanted).abs() <= 1e-9 * scale;
    for pair in samples.windows(2) {
        let [(a, Some(fa)), (b, Some(fb))] = pair else {
            continue;
        };
        if turned.roots.len() >= MOST_ROOTS {
            break;
        }
        if close(*fa) {
            push_root(&mut turned.roots, Root { x: *a, gives: *fa }, high - low);
        } else if (fa < &wanted) != (fb < &wanted) && !close(*fb) {
            match halve(&f, (*a, *fa), (*b, *fb), wanted) {
                Found::Root(root) if close(root.gives) => {
                    push_root(&mut turned.roots, root, high - low);
                }
                Found::Root(root) => turned.jumps.push(Jump {
                    x: root.x,
                    from: *fa,
                    to: *fb,
                }),
                Found::Jump(jump) => turned.jumps.push(jump),
            }
        }
    }
    for three in samples.windows(3) {
        let [(a, Some(fa)), (_, Some(fb)), (c, Some(fc))] = three else {
            continue;
        };
        let (da, db, dc) = (fa - wanted, fb - wanted, fc - wanted);
        let touches = da.signum() == db.signum()
            && db.signum() == dc.signum()
            && db.abs() <= da.abs()
            && db.abs() <= dc.abs();
        if touches
            && !close(*fb)
            && turned.roots.len() < MOST_ROOTS
            && let Some(root) = narrow(&f, *a, *c, wanted)
            && close(root.gives)
        {
            push_root(&mut turned.roots, root, high - low);
        }
    }
    if let Some(&(x, Some(gives))) = samples.last()
        && close(gives)
    {
        push_root(&mut turned.roots, Root { x, gives }, high - low);
    }
    crate::order::sort_by(&mut turned.roots, |a, b| a.x.total_cmp(&b.x));
    Some(turned)
}

enum Found {
    Root(Root),
    Jump(Jump),
}

/// Halves an interval over whose ends the result passes the wanted value.
fn halve(f: &impl Fn(f64) -> Option<f64>, a: (f64, f64), b: (f64, f64), wanted: f64) -> Found {
    let (mut a, mut b) = (a, b);
    for _ in 0..HALVINGS {
        let x = f64::midpoint(a.0, b.0);
        if x <= a.0 || x >= b.0 {
            break;
        }
        let Some(gives) = f(x) else {
            return Found::Jump(Jump {
                x,
                from: a.1,
                to: b.1,
            });
        };
        if gives == wanted {
            return Found::Root(Root { x, gives });
        }
        if (gives < wanted) == (a.1 < wanted) {
            a = (x, gives);
        } else {
            b = (x, gives);
        }
    }
    let nearer = if (a.1 - wanted).abs() <= (b.1 - wanted).abs() {
        a
    } else {
        b
    };
    // still apart after the last halving: a jump
    if (a.1 - b.1).abs() > 1e-6 * (a.1.abs() + b.1.abs()) {
        return Found::Jump(Jump {
            x: b.0,
            from: a.1,
            to: b.1,
        });
    }
    Found::Root(Root {
        x: nearer.0,
        gives: nearer.1,
    })
}

/// Narrows down on a place where the result touches the wanted value without passing it.
fn narrow(f: &impl Fn(f64) -> Option<f64>, a: f64, c: f64, wanted: f64) -> Option<Root> {
    let (mut low, mut high) = (a, c);
    for _ in 0..HALVINGS {
        let third = (high - low) / 3.0;
        let (left, right) = (low + third, high - third);
        let (off_left, off_right) = ((f(left)? - wanted).abs(), (f(right)? - wanted).abs());
        if off_left < off_right {
            high = right;
        } else {
            low = left;
        }
    }
    let x = f64::midpoint(low, high);
    Some(Root { x, gives: f(x)? })
}

fn push_root(roots: &mut Vec<Root>, root: Root, span: f64) {
    if !roots
        .iter()
        .any(|old| (old.x - root.x).abs() <= 1e-9 * span)
    {
        roots.push(root);
    }
}

/// Points of the scan: even, or by equal ratios where the range spans more than two decades; the entry's own among them.
fn grid(low: f64, high: f64, own: Option<f64>, counts: bool) -> Vec<f64> {
    let ratio = low > 0.0 && high / low > 100.0;
    let last = POINTS.saturating_sub(1) as f64;
    let mut points: Vec<f64> = (0..POINTS)
        .map(|i| {
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
        })
        .collect();
    points.extend(own.filter(|own| *own > low && *own < high));
    if counts {
        for x in &mut points {
            *x = libm::round(*x);
        }
    }
    crate::order::sort_by(&mut points, f64::total_cmp);
    points.dedup();
    points
}
