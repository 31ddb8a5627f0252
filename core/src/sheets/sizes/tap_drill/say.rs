//! What is said of the drill that is named, and what is to be minded before it is used?

use crate::quantity::Share;
use crate::sheet::*;
use crate::standards::holes::drill_sets;
use crate::standards::holes::drills::DrillSeries;
use crate::thread::{Bore, TapDrill, TapKind, TapPick, ThreadCall, minor_limits};

/// In one line: first whether it lies outside the minor diameter's limits, then whose drill it is.
pub(super) fn pick(
    inp: &Inputs,
    thread: ThreadCall,
    tap: TapKind,
    set: &str,
    pick: &TapPick,
) -> String {
    let mut says =
        against(inp, thread, pick.bore).map_or_else(String::new, |first| match pick.within {
            Some(drill) => format!("{first}; {} lies within. ", drill.name()),
            None => format!("{first}; no standard drill near lies within. "),
        });
    let place = drill_sets::place(set, thread.series.is_metric());
    says.push_str(&if !pick.in_set {
        format!(
            "No drill {place} comes within 12% of the percent wanted; this is {}.",
            nearest_of(pick)
        )
    } else if pick.passed_over {
        format!("Nearest {place} to the percent wanted of those within the minor diameter\u{2019}s limits.")
    } else {
        format!("Nearest {place} to the percent wanted.")
    });
    if tap == TapKind::Form {
        says.push_str(" The limits of the minor diameter hold after forming: try it in scrap.");
    }
    says
}

/// What the drill that is not in the set is the nearest of.
fn nearest_of(pick: &TapPick) -> &'static str {
    match (pick.drill.drill.series == DrillSeries::Metric, pick.bore) {
        (true, Some(Bore::Within)) => {
            "the nearest metric drill within the minor diameter\u{2019}s limits"
        }
        (false, Some(Bore::Within)) => {
            "the nearest inch drill within the minor diameter\u{2019}s limits"
        }
        (true, _) => "the nearest metric drill",
        (false, _) => "the nearest inch drill",
    }
}

/// How far a drill lies outside the minor diameter's limits, with the limit; none where it lies within or none are known.
pub(super) fn against(inp: &Inputs, thread: ThreadCall, bore: Option<Bore>) -> Option<String> {
    let (minor, class) = minor_limits(thread)?;
    let class = class.mark();
    match bore? {
        Bore::Within => None,
        Bore::Under(by) => Some(format!(
            "{} under the smallest minor diameter of class {class}, {}",
            inp.show(by),
            inp.show(minor.low)
        )),
        Bore::Over(by) => Some(format!(
            "{} over the largest minor diameter of class {class}, {}",
            inp.show(by),
            inp.show(minor.high)
        )),
    }
}

/// The stop that comes before all others where the drill lies outside the limits.
pub(super) fn outside(inp: &Inputs, a: &mut Answer, thread: ThreadCall, pick: Option<&TapPick>) {
    let Some(pick) = pick else { return };
    let Some(first) = against(inp, thread, pick.bore) else {
        return;
    };
    let what = match pick.bore {
        Some(Bore::Under(_)) => {
            "The tap cuts more than the thread\u{2019}s depth, turns hard and may break."
        }
        _ => {
            "The thread is shallower than its class allows: a plain plug gauge rejects it, though many charts take such a drill."
        }
    };
    let cure = pick.within.map_or_else(
        || "Bore or ream the hole where the class matters.".to_owned(),
        |drill| format!("Use {} where the class matters.", drill.name()),
    );
    a.stop(
        "outside-minor-limits",
        "Before you drill",
        format!("{} is {first}. {what} {cure}", pick.drill.drill.name()),
    );
}

/// Beside the row of the look-up: the drill and where it comes from.
pub(super) fn aside(thread: ThreadCall, pick: &TapPick) -> String {
    let name = pick.drill.drill.name();
    if !pick.in_set {
        return format!("{name}, the nearest drill there is to 75%");
    }
    let place = drill_sets::place(drill_sets::UNSAID, thread.series.is_metric());
    format!("{name}, nearest to 75% {place}")
}

/// The other cautions.
pub(super) fn cautions(a: &mut Answer, tap: TapKind, pick: Option<TapDrill>) {
    a.stop(
        "trial-hole",
        "Before you drill",
        "Check the drill with a micrometer and cut a trial hole in scrap: a hole that came out too large can't be undone.",
    );
    if tap == TapKind::Form {
        a.note("form-tap", "Before you form", "Form taps need metal that flows: soft steel, aluminum, brass that bends. They break in cast iron, which must be cut.");
    } else if pick.is_some_and(|pick| pick.share > Share::from_percent(80.0)) {
        a.note("much-thread", "Before you tap", "Over about 80% of thread the tap turns hard and small taps break; the thread gains little strength.");
    } else if pick.is_some_and(|pick| pick.share < Share::from_percent(55.0)) {
        a.note("little-thread", "Before you tap", "Under about 55% the thread is shallow. It serves in tough metal and deep holes, not in cast iron or aluminum under load.");
    }
}
