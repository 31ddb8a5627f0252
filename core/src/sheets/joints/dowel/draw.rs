//! A dowel through two plates: held below, slipping above.

use crate::pin::Limits;
use crate::sheet::*;

/// The pin 30 wide and 90 high; the slip hole drawn wider than it is, so that it is seen.
pub(super) fn plates(inp: &Inputs, pin: Limits, press: Limits, slip: Limits) -> Drawing {
    let range = |limits: Limits| format!("{} to {}", inp.num(limits.0), inp.num(limits.1));
    let title = format!(
        "Dowel {} through two plates: {} below to hold it, {} above to slip",
        range(pin),
        range(press),
        range(slip)
    );
    let mut d = Drawing::new(title, false);
    let (half, wide, gap) = (15.0, 60.0, 4.0);
    for side in [-1.0, 1.0] {
        d.hatch(&[
            pt(side * half, 0.0),
            pt(side * wide, 0.0),
            pt(side * wide, 40.0),
            pt(side * half, 40.0),
        ]);
        d.path(
            Pen::Object,
            true,
            &[
                pt(side * half, 0.0),
                pt(side * wide, 0.0),
                pt(side * wide, 40.0),
                pt(side * half, 40.0),
            ],
        );
        let slack = side * (half + gap);
        d.path(
            Pen::Object,
            true,
            &[
                pt(slack, 40.0),
                pt(side * wide, 40.0),
                pt(side * wide, 80.0),
                pt(slack, 80.0),
            ],
        );
    }
    d.path(
        Pen::Mark,
        true,
        &[
            pt(-half, 4.0),
            pt(-half, 76.0),
            pt(-half + 3.0, 79.0),
            pt(half - 3.0, 79.0),
            pt(half, 76.0),
            pt(half, 4.0),
            pt(half - 3.0, 1.0),
            pt(-half + 3.0, 1.0),
        ],
    );
    d.path(Pen::Centre, false, &[pt(0.0, -6.0), pt(0.0, 86.0)]);
    d.dimension(
        pt(half, 0.0),
        pt(-half, 0.0),
        2.0,
        format!("holds: {}", range(press)),
    );
    d.dimension(
        pt(-half - gap, 80.0),
        pt(half + gap, 80.0),
        2.0,
        format!("slips: {}", range(slip)),
    );
    d.text(pt(0.0, -14.0), format!("pin {}", range(pin)));
    d
}
