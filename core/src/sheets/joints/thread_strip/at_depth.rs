//! What does the thread hold at the depth there is: which torque is safe, what fails first, and at which load?

use super::case::{Case, Verdict};
use super::{MARGIN, RATIO};
use crate::fastener::{proof, short_form, strip};
use crate::quantity::{Force, Length, Number, Share, Torque};
use crate::sheet::{Answer, Inputs, Stop};
use crate::sheets::joints::bolt_torque::friction::{Finish, Rub, short};
use crate::sheets::joints::bolt_torque::sources::SHORT;
use crate::sheets::joints::bolt_torque::strength::{Strength, stop_of};
use crate::sheets::joints::bolt_torque::{show_load, torque_places};
use crate::standards::bolts::internal_strength::H28_SHEAR_RATIO;
use crate::standards::bolts::nut_factors;

/// The lowest strip torque over this is the safe one.
const SAFETY: f64 = 1.5;
/// Shear over tensile strength of a steel screw, the largest published (VDI 2230).
const SCREW_SHEAR_HIGH: f64 = 0.65;

/// What the answer leads with: the safe torque, what fails first, and the torque at failure.
pub(super) fn headline(
    inp: &Inputs,
    case: &Case,
    strength: &Strength,
    depth: Length,
    a: &mut Answer,
) -> Result<(), Stop> {
    let (usual, low) = case.by_rule(depth)?;
    let (pull, least) = (usual.first().1, low.first().1);
    let rub = rub(inp)?;
    let clamp = usual_clamp(case, strength)?;
    safe_line(inp, case, &rub, clamp, least, a)?;
    verdict_line(Case::verdict(&usual, &low), a);
    torque_line(case, &rub, pull, (least, strongest(case, depth)?), a)?;
    if let Some(clamp) = clamp {
        a.line("usual-share", Share::from_fraction(clamp / least))
            .says(format!(
                "75% of the proof load is {}; with the lowest published strength it fails at {}.",
                show_load(inp, clamp),
                show_load(inp, least)
            ));
        if clamp > least {
            a.stop(
                "usual-torque-strips",
                "Before you tighten",
                "The usual torque for this screw may strip the thread at this depth. Go deeper, use the safe torque above, or fit an insert.",
            );
        }
    }
    Ok(())
}

/// What friction does, by the state chosen or one's own factor.
fn rub(inp: &Inputs) -> Result<Rub, Stop> {
    Ok(short(match nut_factors::state(inp.choice("state")) {
        Some(state) => Finish::State(state),
        None => Finish::Own(inp.get::<Number>("factor")?.get()),
    }))
}

/// 75% of the load at the proof or 0.2% stress; none where no such strength is published.
fn usual_clamp(case: &Case, strength: &Strength) -> Result<Option<Force>, Stop> {
    let Some(stress) = strength.limit() else {
        return Ok(None);
    };
    let limit = proof::proof_load(case.stress_area, stress).map_err(|e| stop_of(e, "thread"))?;
    Ok(Some(limit * proof::REUSABLE.fraction()))
}

/// The load that fails with the largest published strengths.
fn strongest(case: &Case, depth: Length) -> Result<Force, Stop> {
    let hole = (case.hole.tensile, case.hole.shear_ratio_high);
    Ok(case.failure(depth, SCREW_SHEAR_HIGH, hole)?.first().1)
}

fn torque_at(case: &Case, k: f64, pull: Force) -> Result<Torque, Stop> {
    short_form::torque(k, case.thread.major, pull).map_err(|e| stop_of(e, "thread"))
}

/// The lowest strip torque over the margin, and never more than the screw's own usual torque.
fn safe_line(
    inp: &Inputs,
    case: &Case,
    rub: &Rub,
    clamp: Option<Force>,
    least: Force,
    a: &mut Answer,
) -> Result<(), Stop> {
    let thread = torque_at(case, rub.low, least / SAFETY)?;
    let screw = clamp
        .map(|clamp| torque_at(case, rub.k, clamp))
        .transpose()?;
    let (safe, says) = match screw {
        Some(screw) if screw <= thread => (
            screw,
            "The screw's own usual torque, 75% of its proof load; the thread holds more.",
        ),
        _ => (
            thread,
            "The lowest torque at failure over 1.5: lowest published strength, lowest nut factor. Under the screw's own usual torque.",
        ),
    };
    let mut says = says.to_owned();
    if inp.choice("state") == "unknown" && safe == thread {
        says.push_str(
            " Lubrication unknown is taken as moly, the slipperiest: name it for a closer figure.",
        );
    }
    let (inch, metric) = torque_places(safe);
    a.line("safe-torque", safe).places(inch, metric).says(says);
    a.source(&MARGIN);
    Ok(())
}

fn verdict_line(verdict: Verdict, a: &mut Answer) {
    a.words("first", verdict.words()).says(match verdict {
        Verdict::Screw => "Also with the lowest published strength. Shear taken as half of tensile strength.",
        Verdict::Doubtful => "The usual strength would break the screw, the lowest published strips the tapped thread: count on the thread. Shear taken as half of tensile strength.",
        Verdict::Thread(_) => "Also with the usual strength. Shear taken as half of tensile strength.",
    });
}

fn torque_line(
    case: &Case,
    rub: &Rub,
    pull: Force,
    (least, most): (Force, Force),
    a: &mut Answer,
) -> Result<(), Stop> {
    let nominal = torque_at(case, rub.k, pull)?;
    let (low, high) = (
        torque_at(case, rub.low, least)?,
        torque_at(case, rub.high, most)?,
    );
    let (inch, metric) = torque_places(nominal);
    let line = a
        .line("strip-torque", nominal)
        .places(inch, metric)
        .says("Never tighten to this; torsion breaks a screw sooner than tension alone.");
    if low < high {
        line.band(
            low,
            high,
            "lowest and highest published strength and nut factor",
        );
    }
    a.source(&SHORT);
    Ok(())
}

/// The loads one by one, and the shear areas behind them.
pub(super) fn loads(inp: &Inputs, case: &Case, depth: Length, a: &mut Answer) -> Result<(), Stop> {
    let hole = case.hole;
    let (usual, low) = case.by_rule(depth)?;
    let high = case.failure(
        depth,
        SCREW_SHEAR_HIGH,
        (hole.tensile, hole.shear_ratio_high),
    )?;
    let (pull, least, most) = (usual.first().1, low.first().1, high.first().1);
    let line = a
        .line("strip-load", pull)
        .says("The least of the three below.");
    if least < most {
        line.band(
            least,
            most,
            "shear 0.5 of the lowest tensile strength (H28) to the largest published (VDI 2230)",
        );
    }
    a.line("screw-breaks", usual.screw_breaks)
        .says("Least tensile strength times the stress area, as the strength standards list it.");
    a.line("screw-strips", usual.screw_strips)
        .says("Shear 0.5 of its tensile strength.")
        .band(
            low.screw_strips,
            high.screw_strips,
            "shear 0.5 to 0.65 of tensile strength",
        );
    let ratio = |r: f64| inp.num_to(Number::of(r), 2, 2);
    a.line("hole-strips", usual.hole_strips)
        .says("Shear 0.5 of its tensile strength.")
        .band(
            low.hole_strips,
            high.hole_strips,
            format!(
                "lowest tensile strength at {}, usual at {}",
                ratio(H28_SHEAR_RATIO),
                ratio(hole.shear_ratio_high)
            ),
        );
    let area = |e| stop_of(e, "depth");
    let external = strip::external_shear_area(&case.limits, depth).map_err(area)?;
    a.line("external-area", external);
    let internal = strip::internal_shear_area(&case.limits, depth).map_err(area)?;
    a.line("internal-area", internal);
    a.source(&RATIO);
    Ok(())
}
