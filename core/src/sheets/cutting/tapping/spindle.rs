//! Which spindle speed turns the tap, how long does it take to the bottom, and what do the sources say of its speed?

use crate::cutting::sources::{NEXT_LOWER, SPEED_DEFINITION, speed_source};
use crate::cutting::*;
use crate::quantity::{Length, Number, RotationalSpeed, SurfaceSpeed, System, Time};
use crate::sheet::*;
use crate::sheets::cutting::speed_feed::{Chosen, choose_step, no_speed, tell_speeds};
use crate::standards::cutting::cutting_speeds::{CutterMaterial, Material, Operation};
use crate::thread::ThreadCall;

static SLOWEST_FIRST: Source = Source::practice(
    "Tapping by the spindle without a tapping head starts at the machine's slowest speed",
);

/// How the tap is turned.
#[derive(Clone, Copy, PartialEq, Debug)]
pub(super) enum Turning {
    /// By hand.
    ByHand,
    /// By a spindle without a tapping head.
    Spindle {
        speed: RotationalSpeed,
        one_turn: Time,
    },
    /// By a spindle with a releasing or reversing head.
    Head { speed: RotationalSpeed },
}

/// A spindle speed with what it gives.
struct Picked {
    chosen: Chosen,
    says: String,
    rule: &'static Source,
}

/// The slowest speed of the machine, or with a head or an own speed the one at or below it.
fn pick(
    inp: &Inputs,
    thread: ThreadCall,
    start: SurfaceSpeed,
    by_rule: bool,
) -> Result<Picked, Stop> {
    let chosen = choose_step(inp, "press-steps", "thread", start, thread.major)?;
    let machine = if inp.is_entered("press-steps") {
        "your drill press"
    } else {
        "a typical drill press"
    };
    if chosen.too_fast {
        let says = format!(
            "The slowest speed ({machine}), yet faster than the one aimed at. By hand is safer."
        );
        return Ok(Picked {
            chosen,
            says,
            rule: &SLOWEST_FIRST,
        });
    }
    if by_rule {
        let says = format!("Spindle speed at or below the exact one ({machine}).");
        return Ok(Picked {
            chosen,
            says,
            rule: &NEXT_LOWER,
        });
    }
    let slowest = inp
        .list::<RotationalSpeed>("press-steps")
        .into_iter()
        .fold(chosen.step, RotationalSpeed::min);
    Ok(Picked {
        chosen: Chosen {
            step: slowest,
            surface: surface_speed(slowest, thread.major),
            ..chosen
        },
        says: format!(
            "The slowest speed ({machine}): without a tapping head nothing else leaves time to stop and reverse."
        ),
        rule: &SLOWEST_FIRST,
    })
}

/// The spindle speed with what it gives; a fault where no source covers the metal.
pub(super) fn spindle(
    inp: &Inputs,
    a: &mut Answer,
    thread: ThreadCall,
    material: Material,
) -> Result<Turning, Stop> {
    let hardness = inp.opt::<Number>("hardness").map(|hb| hb.get() as u16);
    let aim = speed_aim(
        material,
        Operation::Tapping,
        CutterMaterial::HighSpeedSteel,
        hardness,
        false,
    );
    let own: Option<SurfaceSpeed> = inp.opt("speed");
    let Some(start) = own.or(aim.as_ref().map(|aim| aim.start)) else {
        return Err(no_speed(
            "tapping speed for",
            material,
            hardness,
            "give your own cutting speed below, or tap it by hand",
        ));
    };
    let head = inp.choice("head") == "reversing";
    let Picked { chosen, says, rule } = pick(inp, thread, start, head || own.is_some())?;
    let Chosen {
        exact,
        step,
        surface,
        too_fast,
    } = chosen;
    if too_fast
        && aim
            .as_ref()
            .is_some_and(|aim| surface > aim.high.max(start))
    {
        return Err(Stop::withheld(
            "press-steps",
            inp.show(start),
            format!(
                "the slowest speed, {}, runs the tap at {}: past the fastest figure of the sources",
                inp.show(step),
                inp.show(surface)
            ),
            "tap it by hand, with the spindle as a guide and the power off",
        ));
    }
    a.line("rpm", step)
        .says(if inp.choice("hole") == "blind" && !head {
            "In this blind hole only with a releasing or reversing head, or with the power off."
                .to_owned()
        } else {
            says
        });
    if too_fast {
        a.stop("slowest-too-fast", "Before you tap at this speed", "Even the slowest speed is faster than the one aimed at. Tap by hand, with the spindle as a guide and the power off, or use a slower machine.");
    }
    let line = a.line("aim", start);
    line.says(if own.is_some() {
        "As you gave it, HSS tap."
    } else {
        "Lowest published figure, HSS tap, with cutting oil."
    });
    if let Some(aim) = &aim {
        line.band(aim.low, aim.high, "lowest and highest published figure");
    }
    a.line("surface", surface)
        .says("\u{3c0} \u{d7} major diameter \u{d7} spindle speed.");
    a.line("rpm-exact", exact)
        .places(1, 1)
        .says("V / (\u{3c0} D).");
    a.work(|w| {
        w.step(
            "Spindle speed for the cutting speed",
            &[
                "n = V / (\u{3c0} D)".into(),
                match inp.system() {
                    System::Inch => format!(
                        "n = 12 \u{d7} {} / (\u{3c0} \u{d7} {}) = {}",
                        inp.num_to(start, 2, 2),
                        inp.num(thread.major),
                        inp.show_to(exact, 1, 1)
                    ),
                    System::Metric => format!(
                        "n = 1000 \u{d7} {} / (\u{3c0} \u{d7} {}) = {}",
                        inp.num_to(start, 2, 2),
                        inp.num(thread.major),
                        inp.show_to(exact, 1, 1)
                    ),
                },
            ],
            &SPEED_DEFINITION,
        );
        w.step("Spindle speed to set", &[inp.show(step)], rule);
    });
    if let Some(aim) = &aim {
        tell_speeds(a, aim, own.is_some());
        for row in &aim.band.rows {
            a.source(speed_source(row.source));
        }
    }
    if head {
        return Ok(Turning::Head { speed: step });
    }
    Ok(Turning::Spindle {
        speed: step,
        one_turn: tap_time(1.0, step).map_err(|fault| slow(inp, &fault))?,
    })
}

fn slow(inp: &Inputs, fault: &CutFault) -> Stop {
    inp.out_of_range("press-steps", fault.to_string(), "check the speeds")
}

/// How long the tap is in the metal before it has to be stopped or reversed.
pub(super) fn seconds(
    inp: &Inputs,
    a: &mut Answer,
    speed: RotationalSpeed,
    turns: f64,
    pitch: Length,
) -> Result<(), Stop> {
    let time = tap_time(turns, speed).map_err(|fault| slow(inp, &fault))?;
    let rate = feed_rate(
        crate::quantity::FeedPerRev::from_mm_per_rev(pitch.mm()),
        speed,
    );
    a.line("seconds", time).places(1, 1).says(format!(
        "Turns / spindle speed: the tap goes in at {}.",
        inp.show_to(rate, 1, 0)
    ));
    a.work(|w| {
        w.step(
            "Time to full depth",
            &[
                "t = 60 \u{d7} turns / n".into(),
                format!(
                    "t = 60 \u{d7} {} / {} = {}",
                    inp.num_to(Number::of(turns), 1, 1),
                    inp.num(speed),
                    inp.show_to(time, 1, 1)
                ),
            ],
            &SPEED_DEFINITION,
        );
    });
    Ok(())
}
