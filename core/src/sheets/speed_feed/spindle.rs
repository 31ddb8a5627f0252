//! Which spindle step serves the cut, and what do the sources say of its speed?

use super::Cut;
use super::fields::*;
use super::step::{Chosen, choose_step, no_speed, tell_speeds};
use crate::cutting::sources::*;
use crate::cutting::*;
use crate::machine::ranked;
use crate::quantity::units::*;
use crate::quantity::{Number, RotationalSpeed, Share, SurfaceSpeed, System, decimal};
use crate::sheet::*;
use crate::standards::cutting_speeds::Operation;
use crate::standards::feeds::COUNTERBORE_SHARE;

/// Cuts at a share of the drilling speed: a faster step chatters and shortens the edge's life, no more.
const SLOW: &[&str] = &["sink", "counterbore"];

const PARTED: &str =
    "about the turning speed (TM 1-420); down to half of it if the blade sings (common practice)";
const STEPPED: &str =
    "half of the drilling speed at the largest step, up to the whole: thin sheet grabs";
const BORED: &str =
    "a quarter of the drilling speed (school list); up to 85 % of it (a tool maker's guide)";

pub(super) fn spindle(inp: &Inputs, a: &mut Answer, cut: &mut Cut) -> Result<(), Stop> {
    let operation = match cut.kind {
        "drill" | "sink" | "counterbore" | "step" => Operation::Drilling,
        "ream" => Operation::Reaming,
        "turn" | "bore" | "part" => Operation::TurningRough,
        "turn-finish" => Operation::TurningFinish,
        "thread" => Operation::Threading,
        "tap" => Operation::Tapping,
        _ => Operation::Milling,
    };
    let hardness = inp.opt::<Number>("hardness").map(|hb| hb.get() as u16);
    let aim = speed_aim(
        cut.material,
        operation,
        cut.tool,
        hardness,
        cut.kind == "sink",
    )
    .map(|aim| match cut.kind {
        "part" => aim.scaled([0.5, 1.0, 1.0], PARTED, &PART_SPEED),
        "step" => aim.scaled([0.5, 0.5, 1.0], STEPPED, &SHARES_OF_SPEED),
        "counterbore" => {
            let mut aim = aim.scaled([0.25, 0.25, COUNTERBORE_SHARE.1], BORED, &BORE_SHARE);
            aim.rules.push(&HOLE_FACTORS);
            aim
        }
        _ => aim,
    })
    .map(|mut aim| {
        if let Some((factor, _)) = cut.better {
            aim.high = aim.high * factor;
        }
        aim
    });
    let own: Option<SurfaceSpeed> = inp.opt("speed");
    let Some(start) = own.or(aim.as_ref().map(|aim| aim.start)) else {
        return Err(no_speed(
            "cutting speed for this cut in",
            cut.material,
            hardness,
            "give your own cutting speed below, or choose another cutter material",
        ));
    };
    let d = cut.diameter;
    let list = if cut.is_one_of(MILL) {
        "steps"
    } else if cut.is_one_of(HOLE) {
        "press-steps"
    } else {
        "lathe-steps"
    };
    let Chosen {
        exact,
        step,
        surface,
        too_fast,
    } = choose_step(inp, list, "diameter", start, d)?;
    let steps: Vec<RotationalSpeed> = inp.list(list);
    if let (true, Some(aim)) = (too_fast, &aim)
        && (!cut.is_one_of(SLOW) || aim.rules.is_empty())
        && surface > aim.high.max(start)
    {
        return Err(Stop::withheld(
            list,
            format!("{} at {}", inp.show(aim.high), inp.show(d)),
            format!(
                "the slowest step, {}, runs the edge at {}: past the fastest figure of the sources",
                inp.show(step),
                inp.show(surface)
            ),
            "use a smaller cutter, a slower machine, or a back gear",
        ));
    }
    cut.step = step;
    a.line("rpm", step).says(if too_fast {
        "The slowest step, though faster than the start of the band."
    } else {
        "The machine's step at or below the exact speed, which is the rule for tool life; not the nearest."
    });
    let rule = match inp.system() {
        System::Inch => SpeedRule::FourTimes,
        System::Metric => SpeedRule::ThreeTwenty,
    };
    let (formula, excess) = match rule {
        SpeedRule::FourTimes => ("4 \u{d7} sfm / in", rule.excess()),
        SpeedRule::ThreeTwenty => ("320 \u{d7} m/min / mm", rule.excess()),
    };
    let percent = decimal(excess, &PERCENT, 2);
    let line = a.line("aim", start);
    line.says(if own.is_some() {
        "As you gave it."
    } else {
        "Start of the band; step up while the chips stay short and the edge lasts."
    });
    if let Some(aim) = &aim {
        line.band(
            aim.low,
            aim.high,
            match aim.band.rows.len() {
                1 => "the one sourced row".to_owned(),
                rows => format!("slowest and fastest figure of {rows} sourced rows"),
            } + if aim.rules.is_empty() {
                ""
            } else {
                ", by the rule under the rows"
            } + &cut.better.map_or_else(String::new, |(factor, _)| {
                format!(
                    ", HSS; fastest raised {} % for this cutter material",
                    decimal(factor - 1.0, &PERCENT, 0)
                )
            }),
        );
    }
    a.line("surface", surface)
        .says("\u{3c0} \u{d7} diameter \u{d7} spindle step.");
    a.line("rpm-exact", exact)
        .places(1, 1)
        .says("With 12/\u{3c0} (1000/\u{3c0} in metric), not a rounded constant.");
    if let Ok(thumb) = rule.spindle_speed(start, d) {
        a.line("rule", thumb)
            .says(format!("{formula}: {percent} % above the exact figure."));
    }
    let table = a.table(
        "steps",
        "Spindle steps around it",
        &["Step", "Against the exact speed", "Cutting speed", "Place"],
    );
    for row in ranked(&steps, exact, 6) {
        let speed = surface_speed(row.step, d);
        let place = match &aim {
            _ if row.step == step => "taken",
            Some(aim) if speed > aim.high => "past the fastest figure",
            Some(aim) if speed < aim.low => "slow but safe",
            Some(_) if row.difference > 0.0 => "inside the band, shorter tool life",
            _ if row.difference > 0.0 => "faster: shorter tool life",
            _ => "slower",
        };
        table
            .row(vec![
                Value::of(row.step),
                Value::of(Share::from_fraction(row.difference))
                    .places(1, 1)
                    .signed(),
                Value::of(speed),
                Value::words(place),
            ])
            .owned(true)
            .chosen(row.step == step);
    }
    if let Some(aim) = &aim {
        let table = tell_speeds(a, aim, own.is_some());
        table.note(format!(
            "Marked: the default, {}.{}",
            aim.because,
            if aim.band.harder_rows_left_out {
                " No hardness given: rows for metal above 260 HB are left out."
            } else {
                ""
            }
        ));
    }
    a.work(|w| {
        let (v, dn) = (inp.num_to(start, 1, 2), inp.num(d));
        let (symbols, numbers) = match inp.system() {
            System::Inch => (
                "n = 12 V / (\u{3c0} D)",
                format!("n = 12 \u{d7} {v} / (\u{3c0} \u{d7} {dn})"),
            ),
            System::Metric => (
                "n = 1000 V / (\u{3c0} D)",
                format!("n = 1000 \u{d7} {v} / (\u{3c0} \u{d7} {dn})"),
            ),
        };
        w.step(
            "Spindle speed",
            &[
                symbols.into(),
                format!("{numbers} = {}", inp.show_to(exact, 1, 1)),
            ],
            &SPEED_DEFINITION,
        );
        w.step(
            "The machine's step",
            &[
                "highest step at or below n".into(),
                format!("{} \u{2192} {}", inp.show_to(exact, 1, 1), inp.show(step)),
                format!("V = \u{3c0} D n = {}", inp.show_to(surface, 1, 1)),
            ],
            &NEXT_LOWER,
        );
        w.step(
            "Rule of thumb",
            &[formula.into(), format!("high by {percent} %")],
            &RULES_OF_THUMB,
        );
    });
    if let Some(aim) = &aim {
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
    if too_fast {
        a.note("fastest-step", "Before you cut", "Even the slowest step is faster than the start of the band. Take light cuts, keep it short and watch the edge.");
    }
    Ok(())
}
