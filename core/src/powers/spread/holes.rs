//! Where inside the ± is there no answer, and which fields together bring it about?

use super::field_box::{FieldBox, Told};
use super::scan::Scan;
use super::{End, NoAnswer, Place};

/// Places that are told.
const MOST_TOLD: usize = 8;

/// Stretches of one field without an answer, the others at their nominal.
pub(super) fn along(own: &FieldBox, scan: &Scan, field: usize, faults: &mut Vec<NoAnswer>) {
    let Some(span) = own.spans.get(field) else {
        return;
    };
    let mut samples = scan.samples.as_slice();
    while faults.len() < MOST_TOLD {
        let start = samples.iter().take_while(|s| s.1.is_ok()).count();
        samples = samples.get(start..).unwrap_or_default();
        let count = samples.iter().take_while(|s| s.1.is_err()).count();
        let (Some((first, Err(at_first))), Some((last, Err(at_last)))) =
            (samples.first(), samples.get(count.saturating_sub(1)))
        else {
            return;
        };
        // what is said at the end of the tolerance itself is told
        let (end, says) = if *first <= 0.0 {
            (Some(End::Low), at_first)
        } else if *last >= 1.0 {
            (Some(End::High), at_last)
        } else {
            (None, at_first)
        };
        faults.push(NoAnswer {
            places: vec![Place {
                field: span.field.id,
                low: scan.x(*first, field),
                high: scan.x(*last, field),
                end,
            }],
            says: says.clone(),
        });
        samples = samples.get(count..).unwrap_or_default();
    }
}

/// Corners without an answer that no field alone explains: the fewest fields that bring it about.
pub(super) fn corners(
    own: &mut FieldBox,
    corners: &[(Vec<f64>, Told)],
    faults: &mut Vec<NoAnswer>,
) {
    for (point, told) in corners {
        let Err(says) = told else { continue };
        if faults.len() >= MOST_TOLD {
            return;
        }
        if faults.iter().any(|fault| covers(own, fault, point)) {
            continue;
        }
        let (mut point, mut says) = (point.clone(), says.clone());
        let center = own.center();
        for (field, nominal) in center.iter().enumerate() {
            let mut nearer = point.clone();
            if let Some(x) = nearer.get_mut(field) {
                *x = *nominal;
            }
            if nearer != point
                && let Some(Err(now)) = own.ask(&nearer)
            {
                (point, says) = (nearer, now);
            }
        }
        let places = own.spans.iter().zip(&point).filter_map(|(span, &x)| {
            let end = if x == span.low {
                Some(End::Low)
            } else if x == span.high {
                Some(End::High)
            } else {
                None
            };
            (x != span.nominal).then_some(Place {
                field: span.field.id,
                low: x,
                high: x,
                end,
            })
        });
        let places: Vec<Place> = places.collect();
        if !places.is_empty() {
            faults.push(NoAnswer { places, says });
        }
    }
}

/// True where a place that is told already holds a point.
fn covers(own: &FieldBox, fault: &NoAnswer, point: &[f64]) -> bool {
    fault.places.iter().all(|place| {
        let at = own
            .spans
            .iter()
            .position(|span| span.field.id == place.field);
        at.and_then(|at| point.get(at))
            .is_some_and(|x| (place.low..=place.high).contains(x))
    })
}
