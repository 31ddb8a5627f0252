//! What would more or less thread ask: which hole, and which standard drill?

use super::torque::printed;
use crate::cutting::TapLoad;
use crate::quantity::{Length, Share};
use crate::sheet::*;
use crate::thread::{TapDrill, TapKind, ThreadCall, hole_for, nearest_drill};

/// The standard drill nearest a thread: metric drills for a metric thread, the inch series for the others.
pub(super) fn drill_for(thread: ThreadCall, share: Share) -> Option<TapDrill> {
    nearest_drill(thread, share, TapKind::Cut, thread.series.is_metric())
}

/// Hole and nearest drill for the usual percents of thread; each row opens the tap drill sheet.
pub(super) fn share_table(
    a: &mut Answer,
    inp: &Inputs,
    thread: ThreadCall,
    torque_of: impl Fn(Length) -> Option<TapLoad>,
) {
    let table = a.table(
        "shares",
        "More or less thread",
        &["Percent of thread", "Hole", "Nearest drill", "Torque"],
    );
    let call = thread.to_string();
    for percent in [50.0, 55.0, 60.0, 65.0, 70.0, 75.0, 80.0] {
        let share = Share::from_percent(percent);
        let drill = drill_for(thread, share).map_or_else(String::new, |pick| pick.drill.name());
        let hole = hole_for(thread, share, TapKind::Cut);
        table
            .row(vec![
                Value::of(share),
                Value::of(hole),
                Value::words(drill),
                torque_of(hole)
                    .map_or_else(|| Value::words("no source"), |load| printed(load.nominal)),
            ])
            .opens(
                "tap-drill",
                vec![
                    ("thread", call.clone()),
                    ("share", format!("{} pct", inp.num(share))), // words: as a link writes it
                ],
            );
    }
    table.note("A row opens \u{201c}Pick a tap drill\u{201d} with that percent. From 60 to 72% the formula gives 1.4 times the torque; a tap maker's article says twice in 1020 steel, for 5% more strength.");
}
