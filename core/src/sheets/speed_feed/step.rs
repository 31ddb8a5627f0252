//! Which step of a machine gives a cutting speed, and how are the sourced speeds told? What speed and feed shares with tapping.

use crate::cutting::sources::speed_source;
use crate::cutting::{SpeedAim, spindle_speed, surface_speed};
use crate::machine::around;
use crate::quantity::{Length, RotationalSpeed, SurfaceSpeed};
use crate::sheet::*;
use crate::standards::cutting_speeds::{Material, ORDINARY_HARDNESS_HB};

/// A machine's step for a cutting speed.
pub(in crate::sheets) struct Chosen {
    /// The speed that was asked for.
    pub exact: RotationalSpeed,
    /// The step at or below it; the slowest where there is none.
    pub step: RotationalSpeed,
    /// The cutting speed at that step.
    pub surface: SurfaceSpeed,
    /// Even the slowest step is faster than what was asked for.
    pub too_fast: bool,
}

/// The step of a list for a cutting speed at a diameter; `field` is the one at fault where there is no such speed.
pub(in crate::sheets) fn choose_step(
    inp: &Inputs,
    list: &'static str,
    field: &'static str,
    speed: SurfaceSpeed,
    diameter: Length,
) -> Result<Chosen, Stop> {
    let exact = spindle_speed(speed, diameter).map_err(|fault| {
        inp.out_of_range(field, fault.to_string(), format!("check the {field}"))
    })?;
    let steps: Vec<RotationalSpeed> = inp.list(list);
    let found = around(&steps, exact).ok_or(Stop::Missing(list))?;
    let step = found.at_or_below.unwrap_or(found.nearest);
    Ok(Chosen {
        exact,
        step,
        surface: surface_speed(step, diameter),
        too_fast: found.at_or_below.is_none(),
    })
}

/// The work material that a choice field names.
pub(in crate::sheets) fn work_of(inp: &Inputs, field: &'static str) -> Result<Material, Stop> {
    let id = inp.choice(field);
    Material::ALL
        .iter()
        .copied()
        .find(|material| material.id() == id)
        .ok_or(Stop::Missing(field))
}

/// No source gives a speed for the work material.
pub(in crate::sheets) fn no_speed(
    what: &str,
    material: Material,
    hardness: Option<u16>,
    cure: &'static str,
) -> Stop {
    Stop::fault(
        "work",
        Reason::NoSource,
        format!(
            "we have no verified {what} {}{}",
            material.label(),
            match hardness {
                Some(hb) if hb > ORDINARY_HARDNESS_HB && material.is_iron_or_steel() => format!(
                    " at {hb} HB (rows that name no hardness count to {ORDINARY_HARDNESS_HB} HB)"
                ),
                Some(hb) => format!(" at {hb} HB"),
                None => String::new(),
            }
        ),
        cure,
    )
}

/// The rows behind an aim, the default marked unless an own speed was given.
pub(in crate::sheets) fn tell_speeds<'a>(
    a: &'a mut Answer,
    aim: &SpeedAim,
    own: bool,
) -> &'a mut Table {
    let table = a.table(
        "speeds",
        "What the sources say",
        &["Row", "From", "To", "Source"],
    );
    for row in &aim.band.rows {
        table
            .row(vec![
                Value::words(row.words()),
                Value::of(row.low_speed()),
                Value::of(row.high_speed()),
                Value::words(speed_source(row.source).text()),
            ])
            .chosen(*row == aim.band.default && !own);
    }
    table
}
