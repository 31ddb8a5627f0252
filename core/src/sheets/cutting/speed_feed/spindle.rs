//! Which spindle speed serves the cut, and what do the sources say of its speed?

use super::Cut;
use super::fields::*;
use super::step::{Chosen, choose_step, no_speed};
use crate::cutting::sources::*;
use crate::cutting::*;
use crate::quantity::units::PERCENT;
use crate::quantity::{Length, Number, Pitch, RotationalSpeed, SurfaceSpeed, System, decimal};
use crate::sheet::*;
use crate::standards::cutting::cutting_speeds::Operation;
use crate::standards::cutting::feeds::COUNTERBORE_SHARE;

/// Cuts at a share of the drilling speed: a faster one chatters and shortens the edge's life, no more.
const SLOW: &[&str] = &["sink", "counterbore"];
/// Cuts whose start is a share of a speed that their edge bears: half as fast again is within what it bears.
const SHARED: &[&str] = &["sink", "counterbore", "step", "part", "tap"];

const PARTED: &str = "half of the turning speed, up to the whole (TM 1-420): a light lathe starts slow and keeps it there if the blade sings";
const STEPPED: &str =
    "half of the drilling speed at the largest step, up to the whole: thin sheet grabs";
const BORED: &str =
    "a quarter of the drilling speed (school list); up to 85% of it (a tool maker's guide)";
const DEEP: &str = "less by a tenth for each diameter of depth from the third on, up to four tenths: the chips have a long way out";

/// What holds the spindle below what the edge bears.
#[derive(Clone, Copy, PartialEq)]
pub(super) enum Held {
    /// Nothing.
    Not,
    /// A tap begins at the slowest speed.
    Tap,
    /// A thread whose pitch is not given: nobody knows how fast the carriage goes.
    NoPitch,
    /// The carriage toward a shoulder: no faster than this.
    Carriage(RotationalSpeed),
}

/// The spindle speed and how it was found.
pub(super) struct Spindle {
    /// The speed that the aim asks for.
    pub exact: RotationalSpeed,
    /// The machine's speed to set.
    pub step: RotationalSpeed,
    /// The cutting speed there.
    pub surface: SurfaceSpeed,
    /// Even the slowest is faster than the exact one.
    pub too_fast: bool,
    /// The cutting speed aimed at.
    pub start: SurfaceSpeed,
    /// It was entered.
    pub own: bool,
    /// What the sources say.
    pub aim: Option<SpeedAim>,
    /// The machine's speeds.
    pub steps: Vec<RotationalSpeed>,
    /// What holds it down.
    pub held: Held,
    /// What is left to a drill in a deep hole.
    pub deep: f64,
    /// Whose speeds they are: nobody's own where none were entered.
    pub machine: &'static str,
}

impl Spindle {
    /// So much faster than the start that it is no longer a matter of tool life.
    pub(super) fn far_too_fast(&self, cut: &Cut) -> bool {
        self.too_fast && !cut.is_one_of(SHARED) && self.surface / self.start > FAR
    }
}

/// A slowest speed past the start by more than this is far past it (common practice).
const FAR: f64 = 1.5;

fn operation(kind: &str) -> Operation {
    match kind {
        "drill" | "sink" | "counterbore" | "step" => Operation::Drilling,
        "ream" => Operation::Reaming,
        "turn" | "bore" | "part" => Operation::TurningRough,
        "turn-finish" => Operation::TurningFinish,
        "thread" => Operation::Threading,
        "tap" => Operation::Tapping,
        _ => Operation::Milling,
    }
}

fn aim(cut: &Cut, hardness: Option<u16>, deep: f64) -> Option<SpeedAim> {
    let question = SpeedQuestion {
        material: cut.material,
        operation: operation(cut.kind),
        cutter: cut.tool,
        hardness_hb: hardness,
        countersink: cut.kind == "sink",
        end_mill: cut.is_one_of(&["end", "tslot", "dovetail"]),
    };
    let aim = question.aim()?;
    let mut aim = match cut.kind {
        "part" => aim.scaled([0.5, 0.5, 1.0], PARTED, &PART_SPEED),
        "step" => aim.scaled([0.5, 0.5, 1.0], STEPPED, &SHARES_OF_SPEED),
        "drill" if deep < 1.0 => aim.scaled([deep, deep, 1.0], DEEP, &DEEP_HOLE_RULE),
        "counterbore" => {
            let mut aim = aim.scaled([0.25, 0.25, COUNTERBORE_SHARE.1], BORED, &BORE_SHARE);
            aim.rules.push(&HOLE_FACTORS);
            aim
        }
        _ => aim,
    };
    if let Some((factor, _)) = cut.better {
        aim.high = aim.high * factor;
    }
    Some(aim)
}

/// The spindle speed for the cut.
pub(super) fn spindle(inp: &Inputs, cut: &Cut) -> Result<Spindle, Stop> {
    let hardness = inp.opt::<Number>("hardness").map(|hb| hb.get() as u16);
    let d = cut.diameter;
    let deep = inp
        .opt::<Length>("hole")
        .map_or(1.0, |hole| deep_hole_share(hole, d));
    let aim = aim(cut, hardness, deep);
    let own: Option<SurfaceSpeed> = inp.opt("speed");
    let Some(start) = own.or(aim.as_ref().map(|aim| aim.start)) else {
        return Err(no_speed(
            "cutting speed for this cut in",
            cut.material,
            hardness,
            "give your own cutting speed below, or choose another cutter material",
        ));
    };
    let (list, typical, entered) = if cut.is_one_of(MILL) {
        ("steps", "a typical mill", "your mill")
    } else if cut.is_one_of(HOLE) {
        ("press-steps", "a typical drill press", "your drill press")
    } else {
        ("lathe-steps", "a typical lathe", "your lathe")
    };
    let machine = if inp.is_entered(list) {
        entered
    } else {
        typical
    };
    let chosen = choose_step(inp, list, "diameter", start, d)?;
    let steps: Vec<RotationalSpeed> = inp.list(list);
    withhold(inp, cut, aim.as_ref(), start, list, &chosen)?;
    let (held, step) = held(inp, cut, own.is_some(), &steps, chosen.step);
    Ok(Spindle {
        exact: chosen.exact,
        step,
        surface: surface_speed(step, d),
        too_fast: chosen.too_fast,
        start,
        own: own.is_some(),
        aim,
        steps,
        held,
        deep,
        machine,
    })
}

/// What holds the spindle down, and where.
fn held(
    inp: &Inputs,
    cut: &Cut,
    own: bool,
    steps: &[RotationalSpeed],
    step: RotationalSpeed,
) -> (Held, RotationalSpeed) {
    let slowest = steps.iter().copied().fold(step, RotationalSpeed::min);
    match (cut.kind, inp.opt::<Pitch>("pitch")) {
        ("tap", _) if !own => (Held::Tap, slowest),
        ("thread", None) => (Held::NoPitch, slowest),
        ("thread", Some(pitch)) => {
            let limit = threading_limit(pitch);
            if step <= limit * (1.0 + 1e-9) {
                return (Held::Not, step);
            }
            let slower = steps
                .iter()
                .copied()
                .filter(|step| *step <= limit * (1.0 + 1e-9))
                .fold(slowest, RotationalSpeed::max);
            (Held::Carriage(limit), slower)
        }
        _ => (Held::Not, step),
    }
}

fn withhold(
    inp: &Inputs,
    cut: &Cut,
    aim: Option<&SpeedAim>,
    start: SurfaceSpeed,
    list: &'static str,
    chosen: &Chosen,
) -> Result<(), Stop> {
    match aim {
        Some(aim)
            if chosen.too_fast
                && (!cut.is_one_of(SLOW) || aim.rules.is_empty())
                && chosen.surface > aim.high.max(start) =>
        {
            Err(Stop::withheld(
                list,
                format!("{} at {}", inp.show(aim.high), inp.show(cut.diameter)),
                format!(
                    "the slowest spindle speed, {}, runs the edge at {}: past the fastest figure of the sources",
                    inp.show(chosen.step),
                    inp.show(chosen.surface)
                ),
                match cut.kind {
                    "tap" => "tap it by hand, with the spindle as a guide and the power off",
                    "ream" => "ream it by hand, or use a slower machine",
                    _ => "use a smaller cutter, a slower machine, or a back gear",
                },
            ))
        }
        _ => Ok(()),
    }
}

/// The rule of thumb of the system in use: its value, its words, and by how much it is high.
pub(super) fn rule_of_thumb(inp: &Inputs) -> (SpeedRule, &'static str, String) {
    let (rule, formula) = match inp.system() {
        System::Inch => (SpeedRule::FourTimes, "4 \u{d7} sfm / in"),
        System::Metric => (SpeedRule::ThreeTwenty, "320 \u{d7} m/min / mm"),
    };
    (rule, formula, decimal(rule.excess(), &PERCENT, 2))
}

/// The results of the spindle.
pub(super) fn tell(inp: &Inputs, a: &mut Answer, cut: &Cut, s: &Spindle) {
    a.line("rpm", s.step).says(match s.held {
        Held::Tap if s.too_fast => format!("The slowest spindle speed ({}), though faster than the lowest sourced figure: by hand is safer.", s.machine),
        Held::Tap => format!("The slowest spindle speed ({}): by power a tap begins there, whatever its edge can take. A reversing head may go up to the exact speed.", s.machine),
        Held::NoPitch => format!("The slowest spindle speed ({}): give the pitch, for the carriage has to be stopped in time.", s.machine),
        Held::Carriage(limit) if s.step <= limit * (1.0 + 1e-9) => format!("Spindle speed at or below {} ({}), where the carriage goes {}: the half nuts have to be opened in time, though the edge can take more.", inp.show_to(limit, 0, 0), s.machine, inp.show(CARRIAGE_MOST)),
        Held::Carriage(_) => format!("The slowest spindle speed ({}), though the carriage goes faster than {} with it.", s.machine, inp.show(CARRIAGE_MOST)),
        Held::Not if s.too_fast => format!("The slowest spindle speed ({}), though faster than the one aimed at.", s.machine),
        Held::Not => format!("Spindle speed at or below the exact one ({}): the rule for tool life, so not the nearest.", s.machine),
    });
    let line = a.line("aim", s.start);
    let ruled = s.aim.as_ref().is_some_and(|aim| !aim.rules.is_empty());
    line.says(if s.own {
        "As entered."
    } else if ruled {
        "Where to start, by the rule under the rows."
    } else if matches!(cut.kind, "tap" | "thread") {
        "The lowest sourced figure: what the edge can take."
    } else {
        "The lowest sourced figure; go up while the chips stay short and the edge lasts."
    });
    if let Some(aim) = &s.aim {
        line.band(
            aim.low,
            aim.high,
            match aim.band.rows.len() {
                1 => "the one sourced row".to_owned(),
                rows => format!("slowest and fastest figure of {rows} sourced rows"),
            } + if ruled {
                ", by the rule under the rows"
            } else {
                ""
            } + &cut.better.map_or_else(String::new, |(factor, _)| {
                format!(
                    ", HSS; fastest raised {}% for this cutter material",
                    decimal(factor - 1.0, &PERCENT, 0)
                )
            }),
        );
    }
    a.line("surface", s.surface)
        .says("\u{3c0} \u{d7} diameter \u{d7} spindle speed.");
    a.line("rpm-exact", s.exact)
        .places(1, 1)
        .says("With 12/\u{3c0} (1000/\u{3c0} in metric), not a rounded constant.");
    let (rule, formula, percent) = rule_of_thumb(inp);
    if let Ok(thumb) = rule.spindle_speed(s.start, cut.diameter) {
        a.line("rule", thumb)
            .says(format!("{formula}: {percent}% above the exact figure."));
    }
    if let Some(aim) = &s.aim {
        for row in &aim.band.rows {
            a.source(speed_source(row.source));
        }
        if let Some((_, source)) = cut.better {
            a.source(source);
        }
        for rule in &aim.rules {
            a.source(rule);
        }
    }
    match s.held {
        Held::Tap => {
            a.source(&TAP_SLOWEST);
        }
        Held::Carriage(_) | Held::NoPitch => {
            a.source(&CARRIAGE);
        }
        Held::Not => {}
    }
}
