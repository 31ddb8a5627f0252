//! Which box was entered? Its stages with their settings in the order of the plate, checked against the plate.

use super::order::ordered;
use super::plate::Plate;
use crate::machine::isolate::{Gearbox, MOST_SETTINGS};
use crate::machine::teeth::{Ways, read_stage};
use crate::quantity::Count;
use crate::sheet::*;

pub const MEND: &str =
    "correct the positions or the plate, or find the stages that give this plate";

/// A stage as entered.
#[derive(Clone)]
pub struct Stage {
    pub places: usize,
    pub spacing: Option<usize>,
    pub gears: Option<Vec<Ways>>,
}

impl Stage {
    /// True where a lever has something to choose.
    pub const fn moves(&self) -> bool {
        self.places > 1
    }
}

/// The box as entered.
pub struct Boxed {
    pub gearbox: Gearbox,
    pub stages: Vec<Stage>,
    /// The plate's value of each setting, as typed; empty without a plate.
    pub plate: Vec<String>,
    /// The unit of the plate's values; empty without a plate.
    pub unit: &'static str,
    /// Largest difference of the plate from the products, as a share.
    pub off: Option<f64>,
    /// The plate's value that two settings round to though it stands there once.
    pub shared: Option<String>,
}

pub fn letter(stage: usize) -> char {
    ['A', 'B', 'C', 'D', 'E'].get(stage).copied().unwrap_or('?')
}

/// "A2", a position of a lever.
pub fn position(stage: usize, at: usize) -> String {
    format!("{}{}", letter(stage), at + 1)
}

/// "3 × 3 × 2".
pub fn shape(stages: &[Stage]) -> String {
    let places: Vec<String> = stages
        .iter()
        .map(|stage| stage.places.to_string())
        .collect();
    places.join(" \u{d7} ")
}

/// Reads the box.
///
/// # Errors
/// A box that is too large, that does not agree with itself or with the plate, or whose order is not known.
pub fn read(inp: &Inputs) -> Result<Boxed, Stop> {
    let plate = Plate::read(inp)?;
    let stages = stages(inp)?;
    let settings: usize = stages.iter().map(|stage| stage.places).product();
    let refuse =
        |says: String, cure: &str| Err(Stop::fault("stages", Reason::OutOfRange, says, cure));
    if settings > MOST_SETTINGS {
        let by = shape(&stages);
        return refuse(
            format!("{by} makes {settings} settings; the search takes {MOST_SETTINGS}"),
            "leave out the stage that stands still, and enter one range",
        );
    }
    if settings < 2 {
        return refuse(
            "a gearbox of one setting has nothing to tell apart".into(),
            "give the positions of each lever",
        );
    }
    let order = ordered(&stages, &plate)?;
    Ok(Boxed {
        plate: plate.texts(&order.places),
        unit: plate.unit,
        off: order.off,
        shared: order.shared.map(|at| plate.text(at)),
        gearbox: order.gearbox,
        stages,
    })
}

fn stages(inp: &Inputs) -> Result<Vec<Stage>, Stop> {
    let mut stages = Vec::new();
    let count = |cells: &Cells<'_>, id: &str| cells.get::<Count>(id).map(|n| n.get() as usize);
    for (row, cells) in inp.rows("stages").iter().enumerate() {
        let places = count(cells, "places").unwrap_or(0);
        let gears = cells.call("gears").and_then(|text| read_stage(text).ok());
        if let Some(own) = gears.as_ref().filter(|own| own.len() != places) {
            let says = format!(
                "stage {} has {places} positions, and gears for {}",
                letter(row),
                own.len()
            );
            let cure = "give the gears of each position, with a space between positions";
            let mut fault = Fault::of("stages", Reason::Conflict, says, cure);
            fault.at = Some((row + 1, 3));
            return Err(fault.into());
        }
        stages.push(Stage {
            places,
            spacing: count(cells, "spacing"),
            gears,
        });
    }
    Ok(stages)
}
