//! Which speed of a machine gives a cutting speed, and how are the sourced speeds told? What speed and feed shares with tapping.

use crate::cutting::sources::speed_source;
use crate::cutting::{SpeedAim, spindle_speed, surface_speed};
use crate::machine::around;
use crate::quantity::{Length, RotationalSpeed, SurfaceSpeed};
use crate::sheet::*;
use crate::standards::cutting::cutting_speeds::{Bridged, Material, ORDINARY_HARDNESS_HB};

/// A machine's step for a cutting speed.
pub(in crate::sheets) struct Chosen {
    /// The speed that was asked for.
    pub exact: RotationalSpeed,
    /// The machine's speed at or below it; the slowest where there is none.
    pub step: RotationalSpeed,
    /// The cutting speed at that spindle speed.
    pub surface: SurfaceSpeed,
    /// Even the slowest one is faster than what was asked for.
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

/// The rows behind an aim, the default marked unless an own speed was given; its note names the rule, the rows left out and a gap.
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
    let bridged = match aim.band.bridged {
        Some(Bridged::Between(below, above)) => format!(
            " No row is printed for this hardness: those to {below} and from {above} HB stand in, and the slower gives the start."
        ),
        Some(Bridged::Softer(softest)) => format!(
            " No row is printed for metal so soft: the softest, from {softest} HB, stands in."
        ),
        None => String::new(),
    };
    let harder = if aim.band.harder_rows_left_out {
        format!(" No hardness given: rows for metal above {ORDINARY_HARDNESS_HB} HB are left out.")
    } else {
        String::new()
    };
    table.note(format!(
        "Marked: the default, {}.{bridged}{harder}",
        aim.because
    ));
    table
}
