//! Which box was entered? Its stages with their settings in the order of the plate, checked against the plate.

use crate::machine::isolate::{Gearbox, MOST_SETTINGS, Mark};
use crate::machine::structure::fit;
use crate::machine::teeth::{Ways, read_stage};
use crate::quantity::{FeedPerRev, FeedRate, Kind, Quantity, RotationalSpeed, plain};
use crate::sheet::*;

/// How far a plate may lie off the products of its stages, as a share: whole teeth explain 2 to 5 %.
const MOST_OFF: f64 = 0.08;

const MEND: &str = "correct the places or the plate, or find the stages that give this plate";

/// A stage as entered.
#[derive(Clone)]
pub struct Stage {
    pub places: usize,
    pub spacing: Option<usize>,
    pub gears: Option<Vec<Ways>>,
}

/// The box as entered.
pub struct Boxed {
    pub gearbox: Gearbox,
    pub stages: Vec<Stage>,
    /// The plate's value of each setting, printed; empty without a plate.
    pub plate: Vec<String>,
    /// The unit of the plate's values; empty without a plate.
    pub unit: &'static str,
    /// Largest difference of the plate from the products, as a share.
    pub off: Option<f64>,
}

pub fn letter(stage: usize) -> char {
    ['A', 'B', 'C', 'D', 'E'].get(stage).copied().unwrap_or('?')
}

/// The plate's values in rising order, in base units, with how each is printed; their unit and their field.
type Plate = (Vec<f64>, Vec<String>, &'static str, &'static str);

fn plate(inp: &Inputs) -> Result<Plate, Stop> {
    fn of<Q: Quantity>(inp: &Inputs, field: &'static str) -> Result<Plate, Stop> {
        let mut values: Vec<f64> = inp
            .list::<Q>(field)
            .into_iter()
            .map(Quantity::base)
            .collect();
        crate::order::sort_by(&mut values, f64::total_cmp);
        let unit = inp.unit_of::<Q>();
        let print = |base: f64| {
            let (inch, metric) = match unit.kind {
                Kind::FeedPerRev => (4, 3),
                _ if unit.places == 0 => (0, u8::from(unit.id == "mm/min")),
                _ => (2, 1),
            };
            inp.num_to(Q::from_base(base), inch, metric)
        };
        if let Some(twice) = values.windows(2).find_map(|two| match two {
            [a, b] if a == b => Some(*a),
            _ => None,
        }) {
            let says = format!("{} is on the plate twice", plain(twice, unit));
            return Err(Stop::fault(
                field,
                Reason::Conflict,
                says,
                "enter each value once",
            ));
        }
        let texts = values.iter().map(|&value| print(value)).collect();
        Ok((values, texts, unit.symbol, field))
    }
    match inp.choice("plate") {
        "feeds" if inp.choice("feed-follows") == "spindle" => {
            of::<FeedPerRev>(inp, "feed-steps-turn")
        }
        "feeds" => of::<FeedRate>(inp, "feed-steps"),
        "speeds" => of::<RotationalSpeed>(inp, "spindle-steps"),
        _ => Ok((Vec::new(), Vec::new(), "", "")),
    }
}

/// Reads the box.
///
/// # Errors
/// A box that is too large, that does not agree with itself or with the plate, or whose order is not known.
pub fn read(inp: &Inputs) -> Result<Boxed, Stop> {
    let (values, texts, unit, plate_field) = plate(inp)?;
    if values.len() > MOST_SETTINGS {
        let says = format!(
            "the plate has {} values; the search takes {MOST_SETTINGS}",
            values.len()
        );
        return Err(Stop::fault(
            plate_field,
            Reason::OutOfRange,
            says,
            "enter one range of the box alone",
        ));
    }
    let stages = stages(inp)?;
    let settings: usize = stages.iter().map(|stage| stage.places).product();
    let by = shape(&stages);
    if settings > MOST_SETTINGS {
        let says = format!("{by} makes {settings} settings; the search takes {MOST_SETTINGS}");
        return Err(Stop::fault(
            "stages",
            Reason::OutOfRange,
            says,
            "leave out the stage that stands still, and enter one range",
        ));
    }
    if settings < 2 {
        return Err(Stop::fault(
            "stages",
            Reason::OutOfRange,
            "a box of one setting has nothing to tell apart",
            "give the places of each lever",
        ));
    }
    // without gears or steps apart each setting has a value of its own: the count is wrong before the order is asked
    let nested = stages
        .iter()
        .all(|stage| stage.gears.is_none() && stage.spacing.is_none());
    if nested && !values.is_empty() && values.len() != settings {
        let says = format!(
            "{by} makes {settings} settings, the plate has {}",
            values.len()
        );
        return Err(Stop::fault("stages", Reason::Conflict, says, MEND));
    }
    let gearbox = ordered(&stages, &values)?;
    let counts = [gearbox.distinct(), gearbox.len()];
    if !values.is_empty() && !counts.contains(&values.len()) {
        let doubled = if counts == [settings; 2] {
            String::new()
        } else {
            format!(" with {} speeds", gearbox.distinct())
        };
        let says = format!(
            "{by} makes {settings} settings{doubled}, the plate has {}",
            values.len()
        );
        return Err(Stop::fault("stages", Reason::Conflict, says, MEND));
    }
    let place = |setting: usize| {
        if values.len() == gearbox.len() {
            Some(setting)
        } else {
            gearbox.ranks().get(setting).copied()
        }
    };
    let places: Vec<usize> = (0..gearbox.len()).filter_map(place).collect();
    let off = misfit(&gearbox, &stages, &values, &places);
    if let Some(off) = off.filter(|off| *off > MOST_OFF) {
        let says = format!(
            "these stages miss a value of the plate by {} %, and whole teeth explain 2 to 5 %",
            libm::round(off * 100.0)
        );
        let cure = "check the steps apart, the gears and the plate, or find the stages that give this plate";
        return Err(Stop::fault("stages", Reason::Conflict, says, cure));
    }
    let plate = places
        .iter()
        .filter_map(|&at| texts.get(at).cloned())
        .collect();
    Ok(Boxed {
        gearbox,
        stages,
        plate,
        unit,
        off,
    })
}

fn shape(stages: &[Stage]) -> String {
    stages
        .iter()
        .map(|stage| stage.places.to_string())
        .collect::<Vec<_>>()
        .join(" \u{d7} ")
}

fn stages(inp: &Inputs) -> Result<Vec<Stage>, Stop> {
    let mut stages = Vec::new();
    for (row, cells) in inp.rows("stages").iter().enumerate() {
        let places = cells
            .get::<crate::quantity::Count>("places")
            .map_or(0, |n| n.get() as usize);
        let gears = cells.call("gears").and_then(|text| read_stage(text).ok());
        if let Some(own) = gears.as_ref().filter(|own| own.len() != places) {
            let says = format!(
                "stage {} has {places} places, and gears for {}",
                letter(row),
                own.len()
            );
            let mut fault = Fault::of(
                "stages",
                Reason::Conflict,
                says,
                "give the gears of each place, with a space between places",
            );
            fault.at = Some((row + 1, 3));
            return Err(fault.into());
        }
        let spacing = cells
            .get::<crate::quantity::Count>("spacing")
            .map(|n| n.get() as usize);
        stages.push(Stage {
            places,
            spacing,
            gears,
        });
    }
    Ok(stages)
}

/// The box with its settings in order: by its gears where all are known, else by the steps apart.
fn ordered(stages: &[Stage], plate: &[f64]) -> Result<Gearbox, Stop> {
    let refuse = |fault: crate::machine::isolate::BoxFault| {
        Stop::fault(
            "stages",
            Reason::OutOfRange,
            fault.to_string(),
            "enter one range of the box alone",
        )
    };
    let moving = || stages.iter().filter(|stage| stage.places > 1);
    if moving().all(|stage| stage.gears.is_some()) {
        let factors: Vec<Vec<f64>> = stages
            .iter()
            .map(|stage| {
                stage.gears.as_ref().map_or_else(
                    || vec![1.0],
                    |gears| gears.iter().map(Ways::factor).collect(),
                )
            })
            .collect();
        return Gearbox::new(&factors).map_err(refuse);
    }
    if moving().all(|stage| stage.spacing.is_some()) {
        return by_steps(
            stages,
            &stages
                .iter()
                .map(|stage| stage.spacing.unwrap_or(1))
                .collect::<Vec<_>>(),
        )
        .map_err(refuse);
    }
    if moving().any(|stage| stage.gears.is_some()) {
        return Err(Stop::fault(
            "stages",
            Reason::Unfinished,
            "gears are known for some stages only, so the order of the settings is not",
            "give the steps apart for each stage too, or the gears of all",
        ));
    }
    // every nested order that the plate allows
    let mut ways: Vec<(f64, Vec<usize>)> = spacings(stages)
        .into_iter()
        .filter_map(|spacing| {
            let gearbox = by_steps(stages, &spacing).ok()?;
            let places: Vec<usize> = (0..gearbox.len()).collect();
            let off = misfit(&gearbox, &[], plate, &places).unwrap_or(0.0);
            (off <= MOST_OFF).then_some((off, spacing))
        })
        .collect();
    crate::order::sort_by(&mut ways, |a, b| {
        let key = |off: f64| libm::round(off * 1e6) as i64;
        key(a.0).cmp(&key(b.0)).then_with(|| a.1.cmp(&b.1))
    });
    match ways.as_slice() {
        [] => Err(Stop::fault(
            "stages",
            Reason::Conflict,
            format!("no order of {} stages gives this plate", shape(stages)),
            MEND,
        )),
        [(_, only)] => by_steps(stages, only).map_err(refuse),
        _ => {
            let mut fault = Fault::of(
                "stages",
                Reason::Ambiguous,
                "which lever moves the fewest steps is not known",
                "choose one: shift each lever by one place and see how far the plate goes",
            );
            fault.ways = ways
                .iter()
                .take(6)
                .map(|(_, spacing)| way(stages, spacing))
                .collect();
            Err(fault.into())
        }
    }
}

fn by_steps(
    stages: &[Stage],
    spacing: &[usize],
) -> Result<Gearbox, crate::machine::isolate::BoxFault> {
    let both: Vec<(usize, usize)> = stages
        .iter()
        .map(|stage| stage.places)
        .zip(spacing.iter().copied())
        .collect();
    Gearbox::by_steps(&both)
}

fn way(stages: &[Stage], spacing: &[usize]) -> Way {
    let rows: Vec<String> = stages
        .iter()
        .zip(spacing)
        .map(|(stage, steps)| format!("{}~{steps}", stage.places))
        .collect();
    let said: Vec<String> = spacing
        .iter()
        .enumerate()
        .map(|(at, steps)| format!("{} moves {steps}", letter(at)))
        .collect();
    Way {
        text: rows.join(";"),
        label: said.join(", "),
    }
}

/// Steps apart in every order in which one stage runs through inside the next; those entered are kept.
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
            if stage.places > 1 && stage.spacing.is_some_and(|own| own != reach) {
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

/// How far the plate lies off the products: of the gears where known, else of the best factors.
fn misfit(gearbox: &Gearbox, stages: &[Stage], plate: &[f64], places: &[usize]) -> Option<f64> {
    let logs: Vec<f64> = places
        .iter()
        .map(|&at| plate.get(at).map(|value| libm::log(*value)))
        .collect::<Option<_>>()?;
    if logs.is_empty() {
        return None;
    }
    if !stages.is_empty()
        && stages
            .iter()
            .all(|stage| stage.gears.is_some() || stage.places == 1)
    {
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

/// The marks, one a setting.
///
/// # Errors
/// A setting that the box does not have, or marks that contradict each other.
pub fn marks(inp: &Inputs, gearbox: &Gearbox) -> Result<Vec<Mark>, Stop> {
    let mut marks = vec![Mark::Untested; gearbox.len()];
    for (row, cells) in inp.rows("marks").iter().enumerate() {
        let number = cells
            .get::<crate::quantity::Count>("setting")
            .map_or(0, |n| n.get() as usize);
        let mark = cells
            .choice("mark")
            .and_then(Mark::by_id)
            .unwrap_or_default();
        let Some(own) = number.checked_sub(1).and_then(|at| marks.get_mut(at)) else {
            let says = format!(
                "the box has {} settings, and this is setting {number}",
                gearbox.len()
            );
            let mut fault = Fault::of(
                "marks",
                Reason::OutOfRange,
                says,
                "count settings from the slowest, 1",
            );
            fault.at = Some((row + 1, 1));
            return Err(fault.into());
        };
        if mark == Mark::Untested {
            continue;
        }
        if *own != Mark::Untested && own.is_bad() != mark.is_bad() {
            let says = format!(
                "setting {number} is marked both \u{201c}{}\u{201d} and \u{201c}{}\u{201d}",
                own.words(),
                mark.words()
            );
            let cure =
                "try it again under the same load and keep one mark; bad now and then is bad";
            let mut fault = Fault::of("marks", Reason::Conflict, says, cure);
            fault.at = Some((row + 1, 2));
            return Err(fault.into());
        }
        *own = mark;
    }
    Ok(marks)
}
