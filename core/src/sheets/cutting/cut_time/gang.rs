//! What do several cutters on one arbor add up to?

use crate::cutting::*;
use crate::quantity::{FeedRate, Length};
use crate::sheet::*;

/// Another cutter on the arbor.
pub(super) struct Other {
    diameter: Length,
    axial: Length,
    depth: Length,
    /// From first touch to full depth.
    pub(super) approach: Length,
}

/// The other cutters as typed, each with its depth and approach.
pub(super) fn others(inp: &Inputs, d: Length, across: Length) -> Result<Vec<Other>, Stop> {
    let one = |(row, cells): (usize, Cells<'_>)| {
        let faulty = |fault: CutFault| {
            let says = match fault {
                CutFault::TooLarge { limit_mm, why, .. } => {
                    format!("more than {}: {why}", inp.show(Length::from_mm(limit_mm)))
                }
                _ => "a cutter this small does not reach flat work".to_owned(),
            };
            let mut fault = Fault::of(
                "others",
                Reason::OutOfRange,
                says,
                "give its own depth, or leave it out",
            );
            fault.at = Some((row, 1));
            Stop::from(fault)
        };
        let cell = |id: &str| cells.get::<Length>(id).ok_or(Stop::Missing("others"));
        let diameter = cell("diameter")?;
        let depth = match cells.get::<Length>("depth") {
            Some(depth) => depth,
            None => gang_depth(across, d, diameter).map_err(faulty)?,
        };
        Ok(Other {
            diameter,
            axial: cell("axial")?,
            depth,
            approach: slab_approach(depth, diameter).map_err(faulty)?,
        })
    };
    (1..).zip(inp.rows("others")).map(one).collect()
}

/// The metal that all cutters remove together.
pub(super) fn added(
    inp: &Inputs,
    a: &mut Answer,
    d: Length,
    across: Length,
    feed: FeedRate,
    others: &[Other],
) {
    let mut area = 0.0;
    let own = inp.opt::<Length>("axial").map(|axial| (d, axial, across));
    let rest = others
        .iter()
        .map(|one| (one.diameter, one.axial, one.depth));
    let table = a.table(
        "cutters",
        "Cutter by cutter",
        &["Cutter", "Width", "Depth", "Removed"],
    );
    for (diameter, axial, depth) in own.into_iter().chain(rest) {
        area += axial.mm() * depth.mm();
        table.row(vec![
            Value::of(diameter),
            Value::of(axial),
            Value::of(depth),
            Value::of(milling_removal(axial, depth, feed)),
        ]);
    }
    if own.is_some() {
        let all = milling_removal(Length::from_mm(area), Length::from_mm(1.0), feed);
        a.line("removal", all)
            .says("Width \u{d7} depth of each cutter, added, \u{d7} feed.");
    } else {
        table.note("The first cutter is not counted: give its axial depth.");
    }
    a.note("gang-approach", "With several cutters", "The approach is that of the cutter that touches first. Power for a cut adds what they need from the motor.");
}
