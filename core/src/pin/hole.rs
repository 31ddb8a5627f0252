//! How is the hole for a taper pin drilled: with one drill, or in steps, and how much is left for the reamer?

use super::PinFault;
use super::fault::positive;
use core::cmp::Ordering;

use crate::quantity::{Length, Taper};
use crate::standards::holes::drills::Drill;

/// The least that one drill should leave for the reamer at the small end, on the diameter (common practice: a thou or
/// more, so that the whole hole is cut). Published lists go closer: TM 9-254, Table 3-1, is at times over the small end.
pub const LEAST_LEFT: Length = Length::from_thou(1.0);

/// A drill for the whole depth.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct SingleDrill {
    /// The drill.
    pub drill: Drill,
    /// Left for the reamer at the small end, on the diameter; below zero the drill is larger than the small end.
    pub left_small: Length,
    /// Left for the reamer at the large end, on the diameter.
    pub left_large: Length,
}

/// The best drills for one pass right through, at most so many: those that leave [`LEAST_LEFT`] or more, nearest first; then the
/// closer ones, nearest first.
pub fn best_drills<'a>(
    large: Length,
    small: Length,
    drills: impl Iterator<Item = &'a Drill>,
    most: usize,
) -> Vec<SingleDrill> {
    let mut best: Vec<SingleDrill> = Vec::with_capacity(most.saturating_add(1));
    for drill in drills {
        let row = passed(large, small, drill);
        let place = best.partition_point(|known| better(&row, known) != Ordering::Less);
        if place < most {
            best.insert(place, row);
            best.truncate(most);
        }
    }
    best
}

fn passed(large: Length, small: Length, drill: &Drill) -> SingleDrill {
    SingleDrill {
        drill: *drill,
        left_small: small - drill.diameter,
        left_large: large - drill.diameter,
    }
}

fn better(a: &SingleDrill, b: &SingleDrill) -> Ordering {
    let short = |row: &SingleDrill| row.left_small.mm() < LEAST_LEFT.mm() - 1e-9;
    short(a)
        .cmp(&short(b))
        .then(a.left_small.abs().mm().total_cmp(&b.left_small.abs().mm()))
}

/// One drill of a stepped hole.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Step {
    /// The drill.
    pub drill: Drill,
    /// How deep from the large face, to the full diameter, not to the point; none for right through.
    pub depth: Option<Length>,
}

/// A stepped hole: the drill right through first, then larger ones from the large end, each to a depth where the taper
/// still leaves `least_left` on the diameter: x = (D − c − drill)/T.
///
/// The depths aimed at divide the length evenly into `steps` parts. Two steps at the least; a step for which there is no
/// drill between its neighbours is left out.
///
/// # Errors
/// Ends that do not taper, or no drill that goes through.
pub fn step_plan(
    large: Length,
    length: Length,
    taper: Taper,
    least_left: Length,
    drills: &[Drill],
    steps: u32,
) -> Result<Vec<Step>, PinFault> {
    positive(large, "large end")?;
    positive(length, "length")?;
    let room_at = |depth: Length| large - depth * taper.ratio() - least_left;
    let largest_under = |limit: Length| {
        drills
            .iter()
            .filter(|d| d.diameter.mm() <= limit.mm() + 1e-9)
            .max_by(|a, b| a.diameter.mm().total_cmp(&b.diameter.mm()))
    };
    let through =
        largest_under(room_at(length)).ok_or(PinFault::NotPositive("drill that goes through"))?;
    let mut plan = vec![Step {
        drill: *through,
        depth: None,
    }];
    let mut last = through.diameter;
    for part in (1..steps).rev() {
        let aim = length * (f64::from(part) / f64::from(steps));
        let Some(drill) = largest_under(room_at(aim)) else {
            continue;
        };
        if drill.diameter.mm() <= last.mm() + 1e-9 {
            continue;
        }
        let deepest = (room_at(Length::ZERO) - drill.diameter) / taper.ratio();
        plan.push(Step {
            drill: *drill,
            depth: Some(deepest.min(length)),
        });
        last = drill.diameter;
    }
    Ok(plan)
}
