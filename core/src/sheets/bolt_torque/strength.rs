//! Which grade is meant, how strong is it at this size, and what is said where the standard has no figure?

use super::sources::{A574, ASTM, ISO_898, ISO_3506, J429};
use crate::calls::notation::plain;
use crate::fastener::Fault;
use crate::quantity::{Stress, System};
use crate::sheet::{Inputs, Reason, Source, Stop};
use crate::standards::bolt_strength::{self, BoltStrength, GRADES, Grade, NoStrength};
use crate::thread::ThreadCall;

/// A domain fault as the stop of a field.
pub(in crate::sheets) fn stop_of(fault: Fault, field: &'static str) -> Stop {
    let says = match fault {
        Fault::NotPositive { what } => format!("{what} must be above zero"),
        Fault::PitchTooCoarse { .. } => "the pitch is too coarse for the diameter".to_owned(),
        Fault::LimitsOutOfOrder => "the limits of this thread do not lie in order".to_owned(),
        Fault::FrictionTooHigh { limit } => {
            format!("friction must stay below {}", plain(limit, 2))
        }
        Fault::BeyondProof { .. } | Fault::TorqueBeyondProof { .. } => {
            "this passes the proof load".to_owned()
        }
    };
    Stop::fault(field, Reason::OutOfRange, says, "check the entry")
}

/// The grade that the entry names, with its strength at this size.
pub(in crate::sheets) struct Strength {
    pub(in crate::sheets) grade: &'static Grade,
    pub(in crate::sheets) row: &'static BoltStrength,
    pub(in crate::sheets) source: &'static Source,
}

impl Strength {
    /// What the clamp load is measured against: the proof strength, or the 0.2 % stress where no proof is defined.
    pub(super) fn limit(&self) -> Option<Stress> {
        self.row.proof.or(self.row.yield_min)
    }
    pub(super) fn limit_name(&self) -> &'static str {
        if self.row.proof.is_some() {
            "proof"
        } else {
            "0.2 %"
        }
    }
}

/// The strength of the grade chosen, or why there is none.
pub(in crate::sheets) fn strength(inp: &Inputs, thread: ThreadCall) -> Result<Strength, Stop> {
    let metric = thread.series.is_metric();
    let key = match inp.choice("grade") {
        "unmarked" if metric => "4.6",
        "unmarked" => "sae-1",
        key => key,
    };
    let no_grade = || {
        Stop::fault(
            "grade",
            Reason::NoSource,
            "no grade of this name",
            "choose a grade",
        )
    };
    let grade = bolt_strength::grade(key).ok_or_else(no_grade)?;
    if (grade.system == System::Metric) != metric {
        let (is, made) = if metric {
            ("metric", "inch")
        } else {
            ("an inch thread", "metric")
        };
        let says = format!(
            "{} is a grade of {made} screws, and {} is {is}",
            grade.name,
            thread.short()
        );
        let cure = if metric {
            "choose a class such as 8.8"
        } else {
            "choose a grade such as SAE 5"
        };
        return Err(Stop::fault("grade", Reason::Conflict, says, cure));
    }
    let row = bolt_strength::strength(key, thread.major).map_err(|why| match why {
        NoStrength::UnknownGrade => no_grade(),
        NoStrength::SizeNotDefined { from, to } => Stop::fault(
            "grade",
            Reason::NotDefined,
            format!(
                "{} does not define {} at this size; it runs from {} to {}",
                grade.standard,
                grade.name,
                inp.show(from),
                inp.show(to)
            ),
            made_in(thread),
        ),
    })?;
    let source = match grade.standard {
        "SAE J429" => &J429,
        "ASTM A574" => &A574,
        "ASTM" => &ASTM,
        "ISO 898-1" => &ISO_898,
        _ => &ISO_3506,
    };
    Ok(Strength { grade, row, source })
}

/// Which grades are made in this size.
fn made_in(thread: ThreadCall) -> String {
    let fits = |g: &&Grade| {
        (g.system == System::Metric) == thread.series.is_metric()
            && bolt_strength::strength(g.key, thread.major).is_ok()
    };
    let names: Vec<&str> = GRADES.iter().filter(fits).map(|g| g.name).collect();
    if names.is_empty() {
        return "no grade here is made in this size: ask the maker".to_owned();
    }
    format!("made in this size: {}", names.join(", "))
}
