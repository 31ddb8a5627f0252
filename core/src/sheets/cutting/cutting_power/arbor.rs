//! What do several cutters on one arbor ask together? Each is figured with its own teeth, depth and width; then they add up.

use super::{Chip, Need, method, milled};
use crate::cutting::*;
use crate::quantity::{Count, FeedRate, Length, RotationalSpeed};
use crate::sheet::*;
use crate::standards::cutting::unit_power::ENERGY_EFFICIENCY;

static ADDED: Source = Source::computed(
    "Statics of one arbor",
    "powers and torques of its cutters add",
);

/// Columns of the other cutters.
pub(super) static OTHERS: &[Field] = &[
    Field::length("diameter", "Diameter").range_in(0.01, 40.0, "the range of cutter sizes"),
    Field::count("teeth", "Teeth").range(
        1.0,
        200.0,
        "the range of teeth, from a fly cutter to a fine saw",
    ),
    Field::length("axial", "Width").range_in(0.0005, 40.0, "the range of depths and widths of cut"),
    Field::length("engaged", "Depth")
        .range_in(0.0005, 40.0, "the range of depths and widths of cut")
        .optional(),
];

/// One cutter with what it takes and asks.
pub(super) struct Cutter {
    diameter: Length,
    engaged: Length,
    chip: Chip,
    need: Need,
}

/// A fault of one cell, counted from 1.
fn at(row: usize, column: usize, says: String, cure: &str) -> Stop {
    let mut fault = Fault::of("others", Reason::OutOfRange, says, cure);
    fault.at = Some((row, column));
    fault.into()
}

/// The other cutters, figured as the first is, at its feed and speed.
pub(super) fn others(
    inp: &Inputs,
    diameter: Length,
    rpm: RotationalSpeed,
) -> Result<Vec<Cutter>, Stop> {
    let mut out = Vec::new();
    for (row, cells) in (1..).zip(inp.rows("others")) {
        let cell = |id: &'static str| cells.get::<Length>(id).ok_or(Stop::Missing("others"));
        let (own, axial) = (cell("diameter")?, cell("axial")?);
        let teeth: Count = cells.get("teeth").ok_or(Stop::Missing("others"))?;
        let feed: FeedRate = inp.get("feed")?;
        let engaged = match cells.get::<Length>("engaged") {
            Some(depth) => depth,
            None => gang_depth(inp.get("engaged")?, diameter, own).map_err(|_| {
                at(
                    row,
                    1,
                    "a cutter this small does not reach flat work".into(),
                    "give its depth, or leave it out",
                )
            })?,
        };
        let chip = milled(feed, teeth, rpm, (axial, engaged), own)
            .map_err(|fault| at(row, 4, fault.to_string(), "check depth and diameter"))?;
        // what is told of the method is told once, with the first cutter
        let mut aside = Answer::new(inp.sheet, true);
        let need = method(inp, &mut aside, &chip).map_err(|stop| match stop {
            Stop::Fault(fault) => at(row, 2, fault.says, &fault.cure),
            other => other,
        })?;
        out.push(Cutter {
            diameter: own,
            engaged,
            chip,
            need,
        });
    }
    Ok(out)
}

/// Adds the others to the first cutter, and tells each; true where there are none.
pub(super) fn add_up(
    inp: &Inputs,
    a: &mut Answer,
    diameter: Length,
    rpm: RotationalSpeed,
    (chip, need): (&mut Chip, &mut Need),
) -> Result<bool, Stop> {
    let others = others(inp, diameter, rpm)?;
    if others.is_empty() {
        return Ok(true);
    }
    let at_cutter = |need: &Need| {
        need.nominal
            * if need.at_motor {
                ENERGY_EFFICIENCY
            } else {
                1.0
            }
    };
    let engaged: Length = inp.get("engaged")?;
    let rows = core::iter::once((diameter, engaged, chip.removal, at_cutter(need))).chain(
        others.iter().map(|one| {
            (
                one.diameter,
                one.engaged,
                one.chip.removal,
                at_cutter(&one.need),
            )
        }),
    );
    let table = a.table(
        "cutters",
        "Cutter by cutter",
        &["Cutter", "Depth", "Removed", "Power", "Torque"],
    );
    let mut sum = Vec::new();
    for (diameter, depth, removal, power) in rows {
        sum.push(inp.num_to(power, 3, 3));
        table.row(vec![
            Value::of(diameter),
            Value::of(depth),
            Value::of(removal),
            Value::of(power),
            spindle_torque(power, rpm).map_or_else(|_| Value::words(""), Value::of),
        ]);
    }
    table.note("Power and torque at the cutter, one feed and speed for all.");
    for one in &others {
        chip.removal = chip.removal + one.chip.removal;
        need.low = need.low + one.need.low;
        need.nominal = need.nominal + one.need.nominal;
        need.high = need.high + one.need.high;
    }
    need.says = format!("Sum of {} cutters, each with its own chip.", sum.len());
    a.work(|w| {
        w.step(
            "Several cutters",
            &[
                "P = P1 + P2 + \u{2026}".into(),
                format!(
                    "P = {} = {}",
                    sum.join(" + "),
                    inp.show_to(at_cutter(need), 3, 3)
                ),
            ],
            &ADDED,
        );
    });
    a.note("gang-power", "With several cutters", "The sum is the mean load: stagger the teeth so that they do not all land at once, long work clamped well, arbor support close. Where no depth is given, flat work is taken: a larger cutter goes deeper by half the difference.");
    Ok(false)
}
