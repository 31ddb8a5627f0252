//! What range does ± leave? The worst case over the tolerances of the measured fields: each field alone, then all corners
//! up to six such fields (beyond that the changes are added). What has no answer there is told and named, what moves in
//! steps shows its choices, and what wraps round shows no range.

mod choose;
mod field_box;
mod holes;
mod inside;
mod scan;
mod types;

pub use types::*;

use crate::sheet::{Answer, Inputs};
use field_box::FieldBox;
use scan::Scan;

/// Up to this many fields all corners are tried.
const MOST_CORNER_FIELDS: usize = 6;
/// The most evaluations of one range.
const MOST_POINTS: usize = 1024;
/// Evaluations that are kept for the corners.
const FOR_CORNERS: usize = 729;

/// The range that the tolerances of an entry leave in its results; none where no field carries one.
pub fn spread(inputs: &Inputs, nominal: &Answer) -> Option<Spread> {
    let mut own = FieldBox::new(inputs, nominal, MOST_POINTS)?;
    let fields = own.spans.len();
    let mut found = Spread {
        added: fields > MOST_CORNER_FIELDS,
        ..Spread::default()
    };
    let mut scans: Vec<Scan> = Vec::new();
    for field in 0..fields {
        let mut scan = Scan::along(&mut own, field, if fields > 3 { 9 } else { 17 });
        let keep = if fields > 1 { FOR_CORNERS } else { 0 };
        scan.refine(&mut own, keep);
        holes::along(&own, &scan, field, &mut found.faults);
        choose::ends(&own, &scan, field, &mut found.picks);
        scans.push(scan);
    }
    let mut ranges = choose::single(&own, &scans);
    let drivers = choose::drivers(&own, &ranges);
    if !found.added && fields > 1 {
        let corners = own.corners();
        holes::corners(&mut own, &corners, &mut found.faults);
        let rays = choose::rays(&own, &corners);
        for (from, to) in rays {
            let mut scan = Scan::between(&mut own, from, to, 9);
            scan.refine(&mut own, 0);
            ranges.push(choose::reach(&own, scan.told()));
            scans.push(scan);
        }
        inside::search(&mut own, &corners, 0.25);
        own.pool.extend(corners.into_iter().map(|corner| corner.1));
    } else if fields == 1
        && let Some(scan) = scans.first()
    {
        inside::search(&mut own, &scan.points(), 1.0 / 16.0);
    }
    ranges.push(choose::reach(&own, own.pool.iter()));
    found.lines = choose::lines(&mut own, &scans, &ranges, &drivers, found.added);
    found.choices = choose::words(&own, &scans);
    found.also = std::mem::take(&mut own.also);
    found.evaluations = own.asked();
    Some(found)
}
