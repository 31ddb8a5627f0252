//! Which speeds do stepped cones give, both ways, and which step is to be added for a wanted speed?

use super::*;
use crate::machine::pair_for;

pub(super) fn cones(inp: &Inputs, a: &mut Answer, drive: &Drive) -> Result<(), Stop> {
    let speeds: Vec<RotationalSpeed> = drive
        .first
        .iter()
        .map(|pair| drive.spindle(*pair))
        .collect();
    let (slow, fast) = speeds
        .iter()
        .fold((f64::INFINITY, 0.0_f64), |(low, high), n| {
            (low.min(n.rpm()), high.max(n.rpm()))
        });
    let Some(pair) = drive.first.first().copied() else {
        return Err(Stop::Missing("cones"));
    };
    a.line("slowest", RotationalSpeed::from_rpm(slow))
        .places(1, 1)
        .says(slip_says(drive));
    a.line("fastest", RotationalSpeed::from_rpm(fast))
        .places(1, 1)
        .says(slip_says(drive));
    let mut belts = Vec::new();
    for pair in &drive.first {
        belts.extend(drive.belt(inp, *pair)?);
    }
    let found = first_pair(inp, a, drive, pair)?;
    if let Some(first) = belts.first() {
        let (low, high) = belts
            .iter()
            .fold((first.length, first.length), |(low, high), belt| {
                (low.min(belt.length), high.max(belt.length))
            });
        a.line("length-spread", high - low)
            .places(3, 2)
            .says("The same belt fits every step where this is next to nothing.");
        if (high - low) / low > 0.005 {
            a.note("cones-uneven", "One belt does not fit all steps", "The lengths differ by more than half a percent: the belt is loose on one step or tight on another, unless a take-up allows for it.");
        }
        if let Some(wanted) = inp.opt::<RotationalSpeed>("wanted") {
            new_step(inp, a, drive, wanted, first.length)?;
        }
    } else if inp.opt::<RotationalSpeed>("wanted").is_some() {
        return Err(Stop::Missing("centres"));
    }
    if !inp.quiet() {
        let table = a.table(
            "steps",
            "Step by step",
            &[
                "driver",
                "driven",
                "spindle",
                "spindle, cones swapped",
                "belt length",
            ],
        );
        for (index, (pair, speed)) in drive.first.iter().zip(&speeds).enumerate() {
            let back = drive.spindle(Pulleys {
                driver: pair.driven,
                driven: pair.driver,
            });
            let length = belts.get(index).map_or_else(
                || Value::words("\u{2014}"),
                |belt| Value::of(belt.length).places(3, 1),
            );
            let cells = vec![
                Value::of(pair.driver - drive.thick),
                Value::of(pair.driven - drive.thick),
                Value::of(*speed).places(1, 1),
                Value::of(back).places(1, 1),
                length,
            ];
            table.row(cells);
        }
        table.note(
            "Cones swapped: with the driving cone on the spindle and the driven one on the motor.",
        );
    }
    a.work(|w| {
        let stages = drive.rest.len().saturating_add(1);
        w.step(
            "First step",
            &[
                "n = N \u{d7} driver \u{f7} driven \u{d7} other stages \u{d7} (1 \u{2212} s) for each stage".into(),
                format!(
                    "n = {} \u{d7} {} \u{f7} {} \u{d7} {} \u{d7} {} = {}",
                    inp.show(drive.motor),
                    inp.num(pair.driver),
                    inp.num(pair.driven),
                    inp.num_to(Number::of(stages_ratio(&drive.rest, 0.0)), 4, 4),
                    left(inp, drive, stages),
                    inp.show_to(drive.spindle(pair), 1, 1)
                ),
            ],
            &RATIO,
        );
        length_step(inp, w, drive, pair, found);
    });
    a.source(&SLIP);
    a.draw(|| draw(inp, drive, pair, drive.spindle(pair)));
    Ok(())
}

/// The step to add for a wanted speed, on the same belt as the first step.
fn new_step(
    inp: &Inputs,
    a: &mut Answer,
    drive: &Drive,
    wanted: RotationalSpeed,
    length: Length,
) -> Result<(), Stop> {
    let others = stages_ratio(&drive.rest, drive.slip) * (1.0 - drive.slip);
    let ratio = wanted / (drive.motor * others);
    let fits = drive
        .centres
        .and_then(|centres| pair_for(ratio, length, centres, drive.run));
    let Some(pair) =
        fits.filter(|pair| made(pair.driver - drive.thick) && made(pair.driven - drive.thick))
    else {
        return Err(inp.out_of_range(
            "wanted",
            "no pair of pulleys gives this speed with this belt at these centers",
            "choose a speed nearer to those of the cones, or change a fixed stage",
        ));
    };
    a.line("cone-driver", pair.driver - drive.thick)
        .places(3, 2)
        .says("For the speed wanted, on the belt of the first step.");
    a.line("cone-driven", pair.driven - drive.thick)
        .places(3, 2)
        .says("For the speed wanted, on the belt of the first step.");
    Ok(())
}
