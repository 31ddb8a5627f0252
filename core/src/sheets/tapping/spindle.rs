//! Which spindle step turns the tap, and what do the sources say of its speed?

use crate::cutting::sources::{NEXT_LOWER, SPEED_DEFINITION, speed_source};
use crate::cutting::*;
use crate::quantity::{Number, RotationalSpeed, SurfaceSpeed};
use crate::sheet::*;
use crate::sheets::speed_feed::{Chosen, choose_step, no_speed, tell_speeds};
use crate::standards::cutting_speeds::{CutterMaterial, Material, Operation};
use crate::thread::ThreadCall;

/// The spindle step at or below the start of the band, or a note where no source covers the metal.
pub(super) fn spindle(
    inp: &Inputs,
    a: &mut Answer,
    thread: ThreadCall,
    material: Material,
) -> Result<RotationalSpeed, Stop> {
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
    let Chosen {
        exact,
        step,
        surface,
        too_fast,
    } = choose_step(inp, "press-steps", "thread", start, thread.major)?;
    if too_fast
        && aim
            .as_ref()
            .is_some_and(|aim| surface > aim.high.max(start))
    {
        return Err(Stop::withheld(
            "press-steps",
            inp.show(start),
            format!(
                "the slowest step, {}, runs the tap at {}: past the fastest figure of the sources",
                inp.show(step),
                inp.show(surface)
            ),
            "tap it by hand, with the spindle as a guide and the power off",
        ));
    }
    a.line("rpm", step).says(if too_fast {
        "The slowest step, though faster than the start of the band. By hand is safer."
    } else {
        "The machine's step at or below the exact speed."
    });
    let line = a.line("aim", start);
    line.says(if own.is_some() {
        "As you gave it, HSS tap."
    } else {
        "Slowest figure read in print, HSS tap, with cutting oil."
    });
    if let Some(aim) = &aim {
        line.band(
            aim.low,
            aim.high,
            "slowest and fastest figure of the sources",
        );
    }
    a.line("surface", surface)
        .says("\u{3c0} \u{d7} major diameter \u{d7} spindle step.");
    a.line("rpm-exact", exact)
        .places(1, 1)
        .says("V / (\u{3c0} D).");
    a.work(|w| {
        w.step(
            "Spindle speed",
            &[
                "n = V / (\u{3c0} D)".into(),
                format!("n = {}", inp.show_to(exact, 1, 1)),
            ],
            &SPEED_DEFINITION,
        );
        w.step(
            "The machine's step",
            &["highest step at or below n".into(), inp.show(step)],
            &NEXT_LOWER,
        );
    });
    if let Some(aim) = &aim {
        tell_speeds(a, aim, own.is_some());
        for row in &aim.band.rows {
            a.source(speed_source(row.source));
        }
    }
    Ok(step)
}
