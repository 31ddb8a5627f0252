//! In which order do the settings stand on the plate? By the gears where all are known, else by how far apart the positions of each
//! lever lie, each position in its place by its own gears; what the plate contradicts is refused.

use super::boxed::{MEND, Stage, letter, shape};
use super::gears::{against_gears, against_plate, ranks};
use super::plate::Plate;
use crate::machine::isolate::{BoxFault, Gearbox};
use crate::machine::structure::fit;
use crate::machine::teeth::Ways;
use crate::sheet::*;

/// How far a plate may lie off the products of its stages, as a share: whole teeth explain 2 to 5 %.
pub const MOST_OFF: f64 = 0.08;

/// The settings in order, and where each stands on the plate.
pub struct Order {
    pub gearbox: Gearbox,
    /// The place of the plate that each setting has; empty without a plate.
    pub places: Vec<usize>,
    /// Largest difference of the plate from the products, as a share.
    pub off: Option<f64>,
    /// The place of the plate that two settings share though it stands there once.
    pub shared: Option<usize>,
}

fn refuse(fault: &BoxFault) -> Stop {
    let cure = "enter one range of the gearbox alone";
    Stop::fault("stages", Reason::OutOfRange, fault.to_string(), cure)
}

fn conflict(says: String, cure: &str) -> Stop {
    Stop::fault("stages", Reason::Conflict, says, cure)
}

/// Puts the settings in order.
///
/// # Errors
/// Counts, gears or plate that contradict each other, or an order that is not known.
pub fn ordered(stages: &[Stage], plate: &Plate) -> Result<Order, Stop> {
    let moving = || stages.iter().filter(|stage| stage.moves());
    if moving().all(|stage| stage.gears.is_some()) {
        let gearbox = by_gears(stages).map_err(|fault| refuse(&fault))?;
        against_gears(stages, &gearbox)?;
        return seated(gearbox, stages, plate, true);
    }
    if moving().all(|stage| stage.spacing.is_some()) {
        let spacing: Vec<usize> = stages.iter().map(|own| own.spacing.unwrap_or(1)).collect();
        let gearbox = by_steps(stages, &spacing).map_err(|fault| refuse(&fault))?;
        let order = seated(gearbox, stages, plate, false)?;
        against_plate(stages, &spacing, &order, plate)?;
        return Ok(order);
    }
    nested(stages, plate)
}

/// Every order in which one stage runs through inside the next, that the plate and the known gears allow.
fn nested(stages: &[Stage], plate: &Plate) -> Result<Order, Stop> {
    let mut ways: Vec<(f64, Vec<usize>, Order)> = Vec::new();
    let mut refused = None;
    for spacing in spacings(stages) {
        let gearbox = by_steps(stages, &spacing).map_err(|fault| refuse(&fault))?;
        let told = seated(gearbox, stages, plate, false).and_then(|order| {
            against_plate(stages, &spacing, &order, plate)?;
            Ok(order)
        });
        match told {
            Ok(order) => ways.push((order.off.unwrap_or(0.0), spacing, order)),
            // a count that does not agree, or gears that no order allows, are told as they are
            Err(stop) => refused = refused.or(Some(stop)),
        }
    }
    crate::order::sort_by(&mut ways, |a, b| {
        let key = |off: f64| libm::round(off * 1e6) as i64;
        key(a.0).cmp(&key(b.0)).then_with(|| a.1.cmp(&b.1))
    });
    match (ways.len(), refused) {
        (0, Some(stop))
            if stages.iter().any(|stage| stage.gears.is_some()) || uneven(stages, plate) =>
        {
            Err(stop)
        }
        (0, _) => Err(conflict(
            format!("no order of {} stages gives this plate", shape(stages)),
            MEND,
        )),
        (1, _) => ways
            .pop()
            .map(|(.., order)| order)
            .ok_or(Stop::Missing("stages")),
        _ => {
            let cure =
                "choose one: shift each lever by one position and see how far the plate goes";
            let mut fault = Fault::of(
                "stages",
                Reason::Ambiguous,
                "which lever moves by the fewest settings is not known",
                cure,
            );
            fault.ways = ways
                .iter()
                .take(6)
                .map(|(_, spacing, _)| way(stages, spacing))
                .collect();
            Err(fault.into())
        }
    }
}

fn uneven(stages: &[Stage], plate: &Plate) -> bool {
    let settings: usize = stages.iter().map(|stage| stage.places).product();
    !plate.is_empty() && !(settings.saturating_sub(1)..=settings).contains(&plate.values.len())
}

fn by_gears(stages: &[Stage]) -> Result<Gearbox, BoxFault> {
    let factors: Vec<Vec<f64>> = stages
        .iter()
        .map(|stage| {
            stage.gears.as_ref().map_or_else(
                || vec![1.0],
                |gears| gears.iter().map(Ways::factor).collect(),
            )
        })
        .collect();
    Gearbox::new(&factors)
}

/// Positions so many settings apart: a stage whose gears are known by its gears, else the first the slowest.
fn by_steps(stages: &[Stage], spacing: &[usize]) -> Result<Gearbox, BoxFault> {
    let factors: Vec<Vec<f64>> = stages
        .iter()
        .zip(spacing)
        .map(|(stage, apart)| {
            // a power of two a step: products of powers of two are exact
            let factor = |rank: usize| libm::exp2((rank * apart) as f64 / 32.0);
            ranks(stage).into_iter().map(factor).collect()
        })
        .collect();
    Gearbox::new(&factors)
}

/// The settings on the plate, in the way that fits best.
fn seated(
    gearbox: Gearbox,
    stages: &[Stage],
    plate: &Plate,
    by_gears: bool,
) -> Result<Order, Stop> {
    if plate.is_empty() {
        return Ok(Order {
            gearbox,
            places: Vec::new(),
            off: None,
            shared: None,
        });
    }
    let mut best: Option<(f64, Vec<usize>, Option<usize>)> = None;
    for (places, shared) in plate.seats(&gearbox) {
        let off = misfit(&gearbox, by_gears, &plate.values, &places).unwrap_or(f64::INFINITY);
        if best.as_ref().is_none_or(|(least, ..)| off < *least) {
            best = Some((off, places, shared));
        }
    }
    let Some((off, places, shared)) = best else {
        return Err(counts(&gearbox, stages, plate));
    };
    if off > MOST_OFF {
        let says = format!(
            "these stages miss a value of the plate by {}%, and whole teeth explain 2 to 5%",
            libm::round(off * 100.0)
        );
        let cure = "check the settings apart, the gears and the plate, or find the stages that give this plate";
        return Err(conflict(says, cure));
    }
    Ok(Order {
        gearbox,
        places,
        off: Some(off),
        shared,
    })
}

fn counts(gearbox: &Gearbox, stages: &[Stage], plate: &Plate) -> Stop {
    let (settings, distinct) = (gearbox.len(), gearbox.distinct());
    let doubled = if settings == distinct {
        String::new()
    } else {
        format!(" with {distinct} speeds")
    };
    let says = format!(
        "{} makes {settings} settings{doubled}, the plate has {}",
        shape(stages),
        plate.values.len()
    );
    conflict(says, MEND)
}

fn way(stages: &[Stage], spacing: &[usize]) -> Way {
    let gears = |stage: &Stage| {
        stage.gears.as_ref().map_or_else(String::new, |ways| {
            let names: Vec<String> = ways.iter().map(Ways::name).collect();
            format!("~{}", names.join(" "))
        })
    };
    let rows: Vec<String> = stages
        .iter()
        .zip(spacing)
        .map(|(stage, apart)| format!("{}~{apart}{}", stage.places, gears(stage)))
        .collect();
    let said: Vec<String> = spacing
        .iter()
        .enumerate()
        .map(|(at, apart)| format!("{} moves {apart}", letter(at)))
        .collect();
    Way {
        text: rows.join(";"),
        label: said.join(", "),
    }
}

/// Settings apart in every order in which one stage runs through inside the next; those entered are kept.
fn spacings(stages: &[Stage]) -> Vec<Vec<usize>> {
    fn grow(
        stages: &[Stage],
        reach: usize,
        have: &mut Vec<Option<usize>>,
        found: &mut Vec<Vec<usize>>,
    ) {
        if have.iter().all(Option::is_some) {
            found.push(have.iter().flatten().copied().collect());
            return;
        }
        for (at, stage) in stages.iter().enumerate() {
            if have.get(at).is_none_or(Option::is_some) {
                continue;
            }
            if stage.moves() && stage.spacing.is_some_and(|own| own != reach) {
                continue;
            }
            if let Some(slot) = have.get_mut(at) {
                *slot = Some(reach);
            }
            grow(stages, reach * stage.places, have, found);
            if let Some(slot) = have.get_mut(at) {
                *slot = None;
            }
        }
    }
    let mut found = Vec::new();
    grow(stages, 1, &mut vec![None; stages.len()], &mut found);
    crate::order::sort(&mut found);
    found.dedup();
    found
}

/// How far the plate lies off the products: of the gears where all are known, else of the best factors.
fn misfit(gearbox: &Gearbox, by_gears: bool, plate: &[f64], places: &[usize]) -> Option<f64> {
    let logs: Vec<f64> = places
        .iter()
        .map(|&at| plate.get(at).map(|value| libm::log(*value)))
        .collect::<Option<_>>()?;
    if by_gears {
        let differences: Vec<f64> = logs
            .iter()
            .enumerate()
            .map(|(setting, log)| gearbox.speed(setting).map(|speed| log - libm::log(speed)))
            .collect::<Option<_>>()?;
        let mean = differences.iter().sum::<f64>() / differences.len() as f64;
        return Some(differences.iter().fold(0.0, |worst, one| {
            f64::max(worst, libm::fabs(libm::expm1(one - mean)))
        }));
    }
    let rows: Vec<(f64, &[usize])> = logs
        .into_iter()
        .enumerate()
        .map(|(setting, log)| (log, gearbox.levers(setting)))
        .collect();
    fit(&rows, gearbox.stages())
}
