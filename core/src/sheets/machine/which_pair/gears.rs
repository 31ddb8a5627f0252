//! Do the gears agree with the order and the plate? Which position is the slowest by its teeth, and which pair contradicts.

use super::boxed::{Stage, letter, position};
use super::order::Order;
use super::plate::Plate;
use crate::machine::isolate::Gearbox;
use crate::machine::median;
use crate::machine::teeth::Ways;
use crate::sheet::*;

/// How far a pair's ratio may lie off the plate's or off its neighbours', as a share: whole teeth move both values of a plate by
/// 2 to 5 %.
const MOST_OFF: f64 = 0.1;

/// The place of each position of a lever from the slowest, 0: by its gears where known, else as typed.
pub fn ranks(stage: &Stage) -> Vec<usize> {
    let Some(gears) = &stage.gears else {
        return (0..stage.places).collect();
    };
    let factors: Vec<f64> = gears.iter().map(Ways::factor).collect();
    factors
        .iter()
        .enumerate()
        .map(|(at, own)| {
            let before =
                |(other, factor): (usize, &f64)| factor < own || (factor == own && other < at);
            factors
                .iter()
                .enumerate()
                .filter(|&one| before(one))
                .count()
        })
        .collect()
}

fn fault(row: usize, says: String, cure: &str) -> Stop {
    let mut fault = Fault::of("stages", Reason::Conflict, says, cure);
    fault.at = Some((row + 1, 3));
    fault.into()
}

/// Two positions of one ratio where they are to lie apart.
fn same_ratio(row: usize, stage: &Stage) -> Result<(), Stop> {
    let Some(gears) = &stage.gears else {
        return Ok(());
    };
    for (at, one) in gears.iter().enumerate() {
        for other in gears.iter().skip(at + 1) {
            if (one.factor() / other.factor() - 1.0).abs() < 1e-9 {
                let says = format!(
                    "{} and {} give one and the same ratio",
                    one.name(),
                    other.name()
                );
                return Err(fault(
                    row,
                    says,
                    "check the teeth of both, and count them again",
                ));
            }
        }
    }
    Ok(())
}

/// Settings apart as typed, against the order that the gears of all stages give.
///
/// # Errors
/// Gears that move the plate otherwise than typed.
pub fn against_gears(stages: &[Stage], gearbox: &Gearbox) -> Result<(), Stop> {
    let order = gearbox.ranks();
    for (row, stage) in stages.iter().enumerate().filter(|(_, stage)| stage.moves()) {
        let Some(apart) = stage.spacing else { continue };
        let places = ranks(stage);
        let mut moves = Vec::new();
        for setting in 0..gearbox.len() {
            let mut levers = gearbox.levers(setting).to_vec();
            let Some(own) = levers.get(row).and_then(|&at| places.get(at)) else {
                continue;
            };
            let up = places.iter().position(|place| *place == own + 1);
            let (Some(up), Some(slot)) = (up, levers.get_mut(row)) else {
                continue;
            };
            *slot = up;
            let there = gearbox.setting(&levers).and_then(|at| order.get(at));
            if let (Some(from), Some(to)) = (order.get(setting), there) {
                moves.push(to.saturating_sub(*from));
            }
        }
        if !moves.contains(&apart) {
            let says = format!(
                "by its gears a position of stage {} moves by {}, and {apart} was given",
                letter(row),
                moves.first().copied().unwrap_or(0)
            );
            return Err(fault(
                row,
                says,
                "leave the settings apart empty, or check the teeth",
            ));
        }
    }
    Ok(())
}

/// The gears of some stages against the plate, and without one against each other.
///
/// # Errors
/// A pair whose ratio the plate or the other pairs contradict.
pub fn against_plate(
    stages: &[Stage],
    spacing: &[usize],
    order: &Order,
    plate: &Plate,
) -> Result<(), Stop> {
    for (row, stage) in stages.iter().enumerate() {
        same_ratio(row, stage)?;
    }
    if plate.is_empty() {
        return against_each_other(stages, spacing);
    }
    for (row, stage) in stages.iter().enumerate() {
        let Some(gears) = stage.gears.as_ref().filter(|own| own.len() > 1) else {
            continue;
        };
        let by_plate: Vec<f64> = (0..gears.len())
            .map(|at| mean_log(row, at, order, plate))
            .collect();
        let apart: Vec<f64> = gears
            .iter()
            .zip(&by_plate)
            .map(|(way, log)| libm::log(way.factor()) - log)
            .collect();
        let (mut worst, mut against) = (0.0_f64, None);
        for (at, own) in apart.iter().enumerate() {
            let rest = apart.iter().enumerate().filter(|(other, _)| *other != at);
            let mut others: Vec<f64> = rest.map(|(_, log)| *log).collect();
            let off = libm::expm1((own - median(&mut others).unwrap_or(*own)).abs());
            if off > worst + 1e-9 {
                (worst, against) = (off, Some(at));
            }
        }
        let Some(at) = against.filter(|_| worst > MOST_OFF) else {
            continue;
        };
        // told beside the position whose gears agree best with the rest
        let beside = usize::from(at == 0);
        let name = |at: usize| gears.get(at).map_or_else(String::new, Ways::name);
        let ratio = |logs: f64| format!("{:.2}", libm::exp(logs));
        let log = |at: usize| gears.get(at).map_or(0.0, |way| libm::log(way.factor()));
        let by = |at: usize| by_plate.get(at).copied().unwrap_or(0.0);
        let says = format!(
            "{} at {} contradicts the plate: from {} to it the plate goes {} times as fast, these teeth {} times",
            name(at),
            position(row, at),
            name(beside),
            ratio(by(at) - by(beside)),
            ratio(log(at) - log(beside)),
        );
        return Err(fault(
            row,
            says,
            "count the teeth again, driver first, or check the settings apart",
        ));
    }
    Ok(())
}

/// The mean of the plate's values over the settings that use a position, as a logarithm.
fn mean_log(stage: usize, at: usize, order: &Order, plate: &Plate) -> f64 {
    let uses = order.gearbox.using(stage, at);
    let (mut sum, mut count) = (0.0, 0.0);
    for (setting, place) in order.places.iter().enumerate() {
        if let Some(value) = plate
            .values
            .get(*place)
            .filter(|_| uses >> setting & 1 == 1)
        {
            sum += libm::log(*value);
            count += 1.0;
        }
    }
    if count > 0.0 { sum / count } else { 0.0 }
}

/// Two neighbouring positions of a lever whose gears are known.
struct Gap {
    row: usize,
    /// How many times as fast, as a logarithm.
    log: f64,
    /// Settings apart.
    apart: f64,
    name: String,
}

/// Without a plate: one ratio a setting, from all gaps between positions whose gears are known.
fn against_each_other(stages: &[Stage], spacing: &[usize]) -> Result<(), Stop> {
    let gaps = gaps(stages, spacing);
    let mut worst: Option<(f64, f64, &Gap)> = None;
    for (at, gap) in gaps.iter().enumerate() {
        // one ratio a setting, as all the other gaps have it
        let others = gaps.iter().enumerate().filter(|(other, _)| *other != at);
        let mut steps: Vec<f64> = others.map(|(_, gap)| gap.log / gap.apart).collect();
        let Some(step) = median(&mut steps) else {
            continue;
        };
        let off = libm::expm1((gap.log - step * gap.apart).abs());
        if off > 1.5 * MOST_OFF && worst.is_none_or(|(most, ..)| off > most - 1e-9) {
            worst = Some((off, step, gap));
        }
    }
    let Some((_, step, gap)) = worst else {
        return Ok(());
    };
    let says = format!(
        "{} goes {:.2} times as fast, and the other gears make it {:.2} for {} settings apart",
        gap.name,
        libm::exp(gap.log),
        libm::exp(step * gap.apart),
        gap.apart
    );
    Err(fault(
        gap.row,
        says,
        "count the teeth again, driver first, or check the settings apart",
    ))
}

fn gaps(stages: &[Stage], spacing: &[usize]) -> Vec<Gap> {
    let mut gaps = Vec::new();
    for (row, (stage, apart)) in stages.iter().zip(spacing).enumerate() {
        let mut ways: Vec<&Ways> = stage.gears.iter().flatten().collect();
        crate::order::sort_by(&mut ways, |a, b| a.factor().total_cmp(&b.factor()));
        for two in ways.windows(2) {
            if let [slow, fast] = two {
                gaps.push(Gap {
                    row,
                    log: libm::log(fast.factor() / slow.factor()),
                    apart: *apart as f64,
                    name: format!("{} to {}", slow.name(), fast.name()),
                });
            }
        }
    }
    gaps
}
