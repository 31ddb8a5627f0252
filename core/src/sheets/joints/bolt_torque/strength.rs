//! Which grade is meant, how strong is it at this size, and what is said where the standard has no figure?

use super::sources::{A574, ASTM, F593, F3125, ISO_898, ISO_3506, J429};
use crate::fastener::Fault;
use crate::notation::plain;
use crate::quantity::{Length, Stress, System, nearest_fraction, units};
use crate::sheet::{Reason, Source, Stop};
use crate::standards::bolts::bolt_strength::{self, BoltStrength, GRADES, Grade, NoStrength};
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
        Fault::BeyondProof { .. } => "this passes the proof load".to_owned(),
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
    /// What the clamp load is measured against: the proof strength, or the 0.2% stress where no proof is defined.
    pub(in crate::sheets) fn limit(&self) -> Option<Stress> {
        self.row.proof.or(self.row.yield_min)
    }
    pub(super) fn limit_name(&self) -> &'static str {
        if self.row.proof.is_some() {
            "proof"
        } else {
            "0.2%"
        }
    }
}

/// The weakest grade of a system of threads: what a screw without a mark is taken as.
const fn unmarked(metric: bool) -> &'static str {
    if metric { "4.6" } else { "sae-1" }
}

/// The strength of the grade that a field names, or why there is none. `choice` is a grade's key, or "unmarked".
///
/// # Errors
/// A grade of the other system; a size that the standard does not define, or where our figures end.
pub(in crate::sheets) fn strength(
    field: &'static str,
    choice: &str,
    thread: ThreadCall,
) -> Result<Strength, Stop> {
    let metric = thread.series.is_metric();
    let key = match choice {
        "unmarked" => unmarked(metric),
        key => key,
    };
    let no_grade = || {
        Stop::fault(
            field,
            Reason::NoSource,
            "no grade of this name",
            "choose a grade",
        )
    };
    let grade = bolt_strength::grade(key).ok_or_else(no_grade)?;
    if (grade.system == System::Metric) != metric {
        return Err(other_system(field, grade, thread));
    }
    let row = bolt_strength::strength(key, thread.major).map_err(|why| match why {
        NoStrength::UnknownGrade => no_grade(),
        NoStrength::SizeNotDefined { from, to } => Stop::fault(
            field,
            Reason::NotDefined,
            format!(
                "{} defines this grade from {} to {}, not at {}",
                grade.standard,
                size(from, metric),
                size(to, metric),
                thread.size()
            ),
            made_in(thread),
        ),
        NoStrength::FiguresEnd { to } => Stop::fault(
            field,
            Reason::NoSource,
            format!(
                "our figures for {} end at {}; {}",
                grade.name,
                size(to, metric),
                grade.beyond
            ),
            made_in(thread),
        ),
    })?;
    let source = match grade.standard {
        "SAE J429" => &J429,
        "ASTM A574" => &A574,
        "ASTM F593" => &F593,
        "ASTM F3125" => &F3125,
        "ISO 898-1" => &ISO_898,
        "ISO 3506-1" => &ISO_3506,
        _ => &ASTM,
    };
    Ok(Strength { grade, row, source })
}

fn other_system(field: &'static str, grade: &Grade, thread: ThreadCall) -> Stop {
    let (is, made, cure) = if thread.series.is_metric() {
        ("metric", "inch", "choose a class such as 8.8")
    } else {
        ("an inch thread", "metric", "choose a grade such as SAE 5")
    };
    let says = format!(
        "{} is a grade of {made} screws, and {} is {is}",
        grade.name,
        thread.short()
    );
    Stop::fault(field, Reason::Conflict, says, cure)
}

/// A nominal size as one says it: "1-1/2 in", "M24".
fn size(length: Length, metric: bool) -> String {
    if metric {
        return format!("M{}", plain(length.mm(), 1));
    }
    let near = nearest_fraction(length, 64);
    if near.difference == Length::ZERO {
        format!("{} in", near.text.replace(' ', "-"))
    } else {
        crate::quantity::with_unit(length.mm(), &units::INCH, 2)
    }
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
