//! What stands on the plate? Its values in rising order, printed as they were typed, each with the setting that it belongs to.

use crate::machine::isolate::{Gearbox, MOST_SETTINGS};
use crate::quantity::{Kind, Unit, decimal, plain};
use crate::sheet::*;

/// The plate's values; none where nothing is readable.
pub struct Plate {
    /// In rising order, in base units. A value may stand twice: two settings may round to it.
    pub values: Vec<f64>,
    /// Each as it was typed.
    texts: Vec<String>,
    /// The unit in which the plate was typed; empty without a plate.
    pub unit: &'static str,
}

impl Plate {
    /// Reads the plate that was asked for.
    ///
    /// # Errors
    /// More values than the search takes.
    pub fn read(inp: &Inputs) -> Result<Self, Stop> {
        let field = match (inp.choice("plate"), inp.choice("feed-follows")) {
            ("feeds", "spindle") => "feed-steps-turn",
            ("feeds", _) => "feed-steps",
            ("speeds", _) => "spindle-steps",
            _ => {
                return Ok(Self {
                    values: Vec::new(),
                    texts: Vec::new(),
                    unit: "",
                });
            }
        };
        let mut typed: Vec<(f64, &'static Unit)> = match inp.input(field) {
            Some(Input::Rows(rows)) => rows.iter().filter_map(|row| value(row)).collect(),
            _ => Vec::new(),
        };
        crate::order::sort_by(&mut typed, |a, b| a.0.total_cmp(&b.0));
        if typed.len() > MOST_SETTINGS {
            let says = format!(
                "the plate has {} values; the search takes {MOST_SETTINGS}",
                typed.len()
            );
            let cure = "enter one range of the gearbox alone";
            return Err(Stop::fault(field, Reason::OutOfRange, says, cure));
        }
        let first = typed.first().map(|(_, unit)| *unit);
        Ok(Self {
            texts: typed
                .iter()
                .map(|(base, unit)| print(*base, first.unwrap_or(unit)))
                .collect(),
            values: typed.into_iter().map(|(base, _)| base).collect(),
            unit: first.map_or("", |unit| unit.symbol),
        })
    }
    pub const fn is_empty(&self) -> bool {
        self.values.is_empty()
    }
    /// The values that settings have, as typed.
    pub fn texts(&self, places: &[usize]) -> Vec<String> {
        places
            .iter()
            .filter_map(|&at| self.texts.get(at).cloned())
            .collect()
    }
    /// A value as typed, with its unit.
    pub fn text(&self, at: usize) -> String {
        let text = self.texts.get(at).map_or("", String::as_str);
        format!("{text} {}", self.unit)
    }
    /// In which ways the values may belong to the settings, a place of the plate each: every setting its own, settings of one
    /// speed together, or one value shared by two settings that round to it, which is named. None where the counts don't agree.
    pub fn seats(&self, gearbox: &Gearbox) -> Vec<(Vec<usize>, Option<usize>)> {
        let ranks = gearbox.ranks();
        let each: Vec<usize> = (0..gearbox.len()).collect();
        let count = self.values.len();
        let shared = |own: &[usize]| -> Vec<(Vec<usize>, Option<usize>)> {
            (0..count)
                .map(|twice| {
                    let places = own.iter().map(|&at| at - usize::from(at > twice));
                    (places.collect(), Some(twice))
                })
                .collect()
        };
        if count == gearbox.len() {
            vec![(each, None)]
        } else if count == gearbox.distinct() {
            vec![(ranks, None)]
        } else if count + 1 == gearbox.len() {
            shared(&each)
        } else if count + 1 == gearbox.distinct() {
            shared(&ranks)
        } else {
            Vec::new()
        }
    }
}

fn value(row: &[Option<Input>]) -> Option<(f64, &'static Unit)> {
    match row.first()?.as_ref()? {
        Input::Quantity { nominal, unit, .. } => Some((*nominal, unit)),
        _ => None,
    }
}

/// As typed; what does not come out in a few digits is rounded.
fn print(base: f64, unit: &Unit) -> String {
    let text = plain(base, unit);
    let long = text.len() > 7;
    let places = match unit.kind {
        Kind::FeedPerRev => 5,
        _ => 3,
    };
    if long {
        decimal(base, unit, places)
    } else {
        text
    }
}
