//! What is screwed into what: limits of the thread, strength of screw and hole?

use super::{IRON, METAL};
use crate::fastener::strip::{self, Failure, First, Limits, Needed};
use crate::quantity::{Area, Length, Stress};
use crate::sheet::{Inputs, Reason, Source, Stop};
use crate::sheets::joints::bolt_torque::strength::stop_of;
use crate::standards::bolts::internal_strength::{self, H28_SHEAR_RATIO, Internal};
use crate::thread::{ThreadCall, ThreadClass};

/// The tapped part.
#[derive(Clone, Copy)]
pub(super) struct Hole {
    pub(super) name: &'static str,
    pub(super) low: Stress,
    pub(super) tensile: Stress,
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

/// What fails first, by the one rule that all lines of an answer follow: shear is half of tensile strength (FED-STD-H28).
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub(super) enum Verdict {
    /// The screw breaks, also with the lowest published strength of the tapped part.
    Screw,
    /// The screw breaks with the usual strength; with the lowest the tapped thread strips.
    Doubtful,
    /// A thread strips with the usual strength: the depth lies under the depth needed.
    Thread(First),
}

impl Verdict {
    /// In words.
    pub(super) const fn words(self) -> &'static str {
        match self {
            Self::Screw => "the screw breaks",
            Self::Doubtful => "in doubt: the tapped thread may strip",
            Self::Thread(First::ScrewStrips) => "the screw's thread strips",
            Self::Thread(_) => "the tapped thread strips",
        }
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
    pub(super) fn needed(&self, tensile: Stress) -> Result<Needed, Stop> {
        strip::engagement_needed(&self.limits, self.stress_area, self.screw, tensile)
            .map_err(|e| stop_of(e, "thread"))
    }
    /// The loads at which each part fails: screw and tapped part with their shear over tensile strength.
    pub(super) fn failure(
        &self,
        depth: Length,
        screw_ratio: f64,
        (tensile, ratio): (Stress, f64),
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
    /// The loads by the rule, with the usual strength of the tapped part and with the lowest published one.
    pub(super) fn by_rule(&self, depth: Length) -> Result<(Failure, Failure), Stop> {
        let with = |tensile| self.failure(depth, H28_SHEAR_RATIO, (tensile, H28_SHEAR_RATIO));
        Ok((with(self.hole.tensile)?, with(self.hole.low)?))
    }
    /// What fails first.
    pub(super) fn verdict(usual: &Failure, low: &Failure) -> Verdict {
        match (usual.first().0, low.first().0) {
            (First::ScrewBreaks, First::ScrewBreaks) => Verdict::Screw,
            (First::ScrewBreaks, _) => Verdict::Doubtful,
            (thread, _) => Verdict::Thread(thread),
        }
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
                    "a bore from {} (basic) to below {} (pitch line of the loosest screw) leaves a thread to work with",
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
