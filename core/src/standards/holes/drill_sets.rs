//! Which drills are in the sets that a shop owns, and which are taken until it has said so?
//!
//! The usual sets of the trade: numbers 1 to 60 and letters A to Z, fractions 1/16 to 1/2 in by 64ths, metric 1 to 13 mm by
//! 0.1 mm, and the same with twentieths to 3 mm (common practice). The ids are those of *my shop*. Where nothing was said, an
//! inch part takes every inch drill of the lists and a metric part every metric one; nobody owns those, so nothing is marked.

use super::drills::{self, Drill, DrillSeries};

/// The id of the general shop: nothing was said of the drills owned.
pub const UNSAID: &str = "usual";

/// The ids of the sets, the general shop's first.
pub const IDS: [&str; 6] = [
    UNSAID,
    "all-inch",
    "fraction",
    "metric",
    "metric-fine",
    "all",
];

/// The drills of a set, by its id, small to large; an unknown id has none. `metric` says what the part is, where nothing was
/// said of the set.
///
/// ```
/// use benchslate_core::standards::holes::drill_sets;
/// assert_eq!(drill_sets::drills("fraction", false).len(), 29); // 1/16 to 1/2 by 64ths
/// ```
pub fn drills(id: &str, metric: bool) -> Vec<Drill> {
    each(id, metric).copied().collect()
}

/// The drills of a set, by size, without a list of their own.
pub fn each(id: &str, metric: bool) -> impl Iterator<Item = &'static Drill> + use<> {
    let held = rule(id, metric);
    drills::all().iter().filter(move |drill| held(drill))
}

/// Whether this drill is owned, as far as a set was named.
pub fn holds(id: &str, drill: &Drill) -> bool {
    id != UNSAID && rule(id, false)(drill)
}

/// Where a drill of this set is found, in words: `in your set`, `in a full inch set`.
pub fn place(id: &str, metric: bool) -> &'static str {
    match (id == UNSAID, metric) {
        (false, _) => "in your set",
        (true, false) => "in a full inch set",
        (true, true) => "in a full metric set",
    }
}

fn rule(id: &str, metric: bool) -> fn(&Drill) -> bool {
    match (id, metric) {
        (UNSAID, false) => |drill| drill.series != DrillSeries::Metric,
        (UNSAID, true) => |drill| drill.series == DrillSeries::Metric,
        ("all-inch", _) => inch,
        ("fraction", _) => |drill| drill.series == DrillSeries::Fraction && inch(drill),
        ("metric", _) => tenths,
        ("metric-fine", _) => twentieths,
        ("all", _) => |drill| inch(drill) || twentieths(drill),
        _ => |_| false,
    }
}

fn inch(drill: &Drill) -> bool {
    match drill.series {
        DrillSeries::Number => drill.code <= 60,
        DrillSeries::Letter => true,
        DrillSeries::Fraction => (4..=32).contains(&drill.code),
        DrillSeries::Metric => false,
    }
}

fn tenths(drill: &Drill) -> bool {
    drill.series == DrillSeries::Metric
        && (100..=1300).contains(&drill.code)
        && drill.code.checked_rem(10) == Some(0)
}

fn twentieths(drill: &Drill) -> bool {
    tenths(drill)
        || drill.series == DrillSeries::Metric
            && (100..=300).contains(&drill.code)
            && drill.code.checked_rem(5) == Some(0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sets_hold_their_own_drills() {
        for id in IDS.into_iter().filter(|id| *id != UNSAID) {
            for metric in [false, true] {
                assert!(
                    drills(id, metric).iter().all(|drill| holds(id, drill)),
                    "{id}"
                );
            }
        }
        assert_eq!(drills("all-inch", true).len(), 60 + 26 + 29);
        assert_eq!(drills("metric", false).len(), 121);
        assert_eq!(drills("metric-fine", false).len(), 121 + 20);
        assert_eq!(drills("all", false).len(), 60 + 26 + 29 + 121 + 20);
        assert!(drills("none", false).is_empty());
    }

    #[test]
    fn what_was_not_said_is_not_owned() {
        assert_eq!(
            drills(UNSAID, false).len() + drills(UNSAID, true).len(),
            drills::all().len()
        );
        assert!(drills::all().iter().all(|drill| !holds(UNSAID, drill)));
        assert_eq!(place(UNSAID, true), "in a full metric set");
        assert_eq!(place("metric", true), "in your set");
    }
}
