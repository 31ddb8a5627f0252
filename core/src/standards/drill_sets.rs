//! Which drills are in the sets that a shop owns?
//!
//! The usual sets of the trade: numbers 1 to 60 and letters A to Z, fractions 1/16 to 1/2 in by 64ths, metric 1 to 13 mm by
//! 0.1 mm (common practice). The ids are those of *my shop*.

use super::drills::{self, Drill, DrillSeries};

/// The ids of the sets, the general shop's first.
pub const IDS: [&str; 4] = ["all-inch", "fraction", "metric", "all"];

/// The drills of a set, by its id, small to large; an unknown id has none.
///
/// ```
/// use benchslate_core::standards::drill_sets;
/// assert_eq!(drill_sets::drills("fraction").len(), 29); // 1/16 to 1/2 by 64ths
/// ```
pub fn drills(id: &str) -> Vec<Drill> {
    each(id).copied().collect()
}

/// The drills of a set, by size, without a list of their own.
pub fn each(id: &str) -> impl Iterator<Item = &'static Drill> + use<> {
    let series = series_of(id);
    drills::all()
        .iter()
        .filter(move |drill| series(drill.series) && in_set(drill))
}

/// Whether a set holds this drill.
pub fn holds(id: &str, drill: &Drill) -> bool {
    series_of(id)(drill.series) && in_set(drill)
}

fn series_of(id: &str) -> fn(DrillSeries) -> bool {
    match id {
        "all-inch" => |series| series != DrillSeries::Metric,
        "fraction" => |series| series == DrillSeries::Fraction,
        "metric" => |series| series == DrillSeries::Metric,
        "all" => |_| true,
        _ => |_| false,
    }
}

fn in_set(drill: &Drill) -> bool {
    match drill.series {
        DrillSeries::Number => drill.code <= 60,
        DrillSeries::Letter => true,
        DrillSeries::Fraction => (4..=32).contains(&drill.code),
        DrillSeries::Metric => {
            (100..=1300).contains(&drill.code) && drill.code.checked_rem(10) == Some(0)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sets_hold_their_own_drills() {
        for id in IDS {
            assert!(drills(id).iter().all(|drill| holds(id, drill)), "{id}");
        }
        assert_eq!(drills("all-inch").len(), 60 + 26 + 29);
        assert_eq!(drills("metric").len(), 121);
        assert!(drills("none").is_empty());
    }
}
