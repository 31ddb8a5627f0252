//! What would more or less thread ask: which hole, and which standard drill?

use crate::quantity::Share;
use crate::sheet::*;
use crate::thread::{TapDrill, TapKind, ThreadCall, hole_for, nearest_drill};

/// The standard drill nearest a thread: metric drills for a metric thread, the inch series for the others.
pub(super) fn drill_for(thread: ThreadCall, share: Share) -> Option<TapDrill> {
    nearest_drill(thread, share, TapKind::Cut, thread.series.is_metric())
}

/// Hole and nearest drill for the usual percents of thread; each row opens the tap drill sheet.
pub(super) fn share_table(a: &mut Answer, inp: &Inputs, thread: ThreadCall) {
    let table = a.table(
        "shares",
        "More or less thread",
        &["Thread", "Hole", "Nearest drill"],
    );
    for percent in [50.0, 55.0, 60.0, 65.0, 70.0, 75.0, 80.0] {
        let share = Share::from_percent(percent);
        let drill = drill_for(thread, share).map_or_else(String::new, |pick| pick.drill.name());
        table
            .row(vec![
                Value::of(share),
                Value::of(hole_for(thread, share, TapKind::Cut)),
                Value::words(drill),
            ])
            .opens(
                "tap-drill",
                vec![
                    ("thread", thread.to_string()),
                    ("share", format!("{} pct", inp.num(share))),
                ],
            );
    }
    table.note("A row opens the tap drill sheet with the drills that you own. 1020 steel by one tap maker: from 60 to 72 % the torque doubles for 5 % more strength.");
}
