//! What is screwed into what: limits of the thread, strength of screw and hole?

use super::{IRON, METAL};
use crate::fastener::strip::{self, Failure, Limits};
use crate::quantity::{Area, Length, Stress};
use crate::sheet::{Inputs, Reason, Source, Stop};
use crate::sheets::bolt_torque::strength::stop_of;
use crate::standards::internal_strength::{self, H28_SHEAR_RATIO, Internal};
use crate::thread::{ThreadCall, ThreadClass};

/// The tapped part.
#[derive(Clone, Copy)]
pub(super) struct Hole {
    pub(super) name: &'static str,
    pub(super) low: Stress,
    pub(super) tensile: Stress,
    pub(super) shear_ratio: f64,
    pub(super) shear_ratio_high: f64,
    pub(super) rule_diameters: Option<f64>,
    pub(super) iron: bool,
}

impl Hole {
    /// The part that the entry names.
    pub(super) fn of(inp: &Inputs) -> Result<Self, Stop> {
        if let Some(row) = internal_strength::material(inp.choice("into")) {
            return Ok(Self::from_row(row));
        }
        let tensile = inp.get("tensile")?;
        Ok(Self {
            name: "your own strength",
            low: tensile,
            tensile,
            shear_ratio: H28_SHEAR_RATIO,
            shear_ratio_high: H28_SHEAR_RATIO,
            rule_diameters: None,
            iron: false,
        })
    }
    /// A row of the table.
    pub(super) fn from_row(row: &'static Internal) -> Self {
        Self {
            name: row.name,
            low: row.low,
            tensile: row.tensile,
            shear_ratio: row.shear_ratio,
            shear_ratio_high: row.shear_ratio_high,
            rule_diameters: Some(row.rule_diameters),
            iron: row.key.starts_with("iron"),
        }
    }
    /// Where its strength comes from.
    pub(super) fn source(&self) -> &'static Source {
        if self.iron { &IRON } else { &METAL }
    }
}

/// Screw, hole and thread together.
#[derive(Clone, Copy)]
pub(super) struct Case {
    pub(super) thread: ThreadCall,
    pub(super) screw: Stress,
    pub(super) hole: Hole,
    pub(super) limits: Limits,
    pub(super) stress_area: Area,
}

impl Case {
    /// Depth needed in a part of this tensile strength.
    pub(super) fn needed(&self, tensile: Stress) -> Result<Length, Stop> {
        strip::engagement_needed(&self.limits, self.stress_area, self.screw, tensile)
            .map_err(|e| stop_of(e, "thread"))
    }
    /// The pulls at which each part gives.
    pub(super) fn failure(
        &self,
        depth: Length,
        screw_ratio: f64,
        tensile: Stress,
        ratio: f64,
    ) -> Result<Failure, Stop> {
        strip::failure(
            &self.limits,
            self.stress_area,
            depth,
            (self.screw, screw_ratio),
            (tensile, ratio),
        )
        .map_err(|e| stop_of(e, "depth"))
    }
}

/// The limits of the thread in the fit chosen, with a measured bore put in.
pub(super) fn limits(inp: &Inputs, thread: ThreadCall) -> Result<Limits, Stop> {
    let metric = thread.series.is_metric();
    let (screw, hole) = match (inp.choice("class"), metric) {
        ("close", false) => (ThreadClass::A3, ThreadClass::B3),
        ("close", true) => (ThreadClass::H6External, ThreadClass::H6),
        (_, false) => (ThreadClass::A2, ThreadClass::B2),
        (_, true) => (ThreadClass::G6, ThreadClass::H6),
    };
    let mut limits = if inp.choice("class") == "basic" {
        Limits::basic(thread.major, thread.pitch)
    } else {
        Limits::of_classes(thread, screw, hole).ok_or_else(|| {
            Stop::fault(
                "class",
                Reason::NotDefined,
                format!(
                    "the standard has no {} in {} for {}",
                    screw.mark(),
                    hole.mark(),
                    thread.short()
                ),
                "take the basic sizes",
            )
        })?
    };
    if let Some(bore) = inp.opt::<Length>("bore") {
        let least = Limits::basic(thread.major, thread.pitch).internal_minor_max;
        if bore < least - Length::from_mm(1e-6) || bore >= limits.external_pitch_min {
            return Err(inp.out_of_range(
                "bore",
                format!(
                    "a bore from {} (basic) to below {} (pitch line of the slackest screw) leaves a thread to figure with",
                    inp.show(least),
                    inp.show(limits.external_pitch_min)
                ),
                "measure again, or leave it empty",
            ));
        }
        limits.internal_minor_max = bore;
    }
    Ok(limits)
}
