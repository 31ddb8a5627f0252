//! What is told beside the answer, in rows? The machine's speeds and feeds around it, the sources' feeds, remedies, work on the arbor.

use super::Cut;
use super::fields::ARBOR;
use super::milling::Milled;
use super::spindle::{Held, Spindle};
use super::step::tell_speeds;
use super::turn_feed::FeedBand;
use crate::cutting::sources::*;
use crate::cutting::{feed_per_tooth, feed_per_turn, surface_speed};
use crate::machine::{RankedStep, ranked};
use crate::quantity::{FeedPerRev, Quantity, RotationalSpeed, Share};
use crate::sheet::*;
use crate::standards::cutting::feeds::DrillFeedSource;

/// The six nearest, as they stand on the plate.
fn as_on_the_plate<T: Quantity>(steps: &[T], exact: T) -> Vec<RankedStep<T>> {
    let mut rows = ranked(steps, exact, 6);
    crate::order::sort_by(&mut rows, |a, b| a.step.base().total_cmp(&b.step.base()));
    rows
}

fn away(difference: f64) -> Value {
    Value::of(Share::from_fraction(difference))
        .places(1, 1)
        .signed()
}

pub(super) fn spindle(a: &mut Answer, cut: &Cut, s: &Spindle) {
    let table = a.table(
        "steps",
        "Spindle speeds around it",
        &["Speed", "Against the exact speed", "Cutting speed", "Place"],
    );
    let mut rows = as_on_the_plate(&s.steps, s.exact);
    if !rows.iter().any(|row| row.step == s.step) {
        let difference = s.step / s.exact - 1.0;
        rows.insert(
            0,
            RankedStep {
                step: s.step,
                difference,
            },
        );
    }
    for row in rows {
        let speed = surface_speed(row.step, cut.diameter);
        table
            .row(vec![
                Value::of(row.step),
                away(row.difference),
                Value::of(speed),
                Value::words(place(s, row.step, row.difference, cut)),
            ])
            .chosen(row.step == s.step);
    }
    if let Some(aim) = &s.aim {
        tell_speeds(a, aim, s.own);
    }
}

fn place(s: &Spindle, step: RotationalSpeed, difference: f64, cut: &Cut) -> &'static str {
    let speed = surface_speed(step, cut.diameter);
    match (&s.aim, s.held) {
        _ if step == s.step => "taken",
        (Some(aim), _) if speed > aim.high => "past the fastest figure",
        (_, Held::Tap) if step > s.step => "only with a reversing head",
        (_, Held::Carriage(_) | Held::NoPitch) if step > s.step => "carriage too fast",
        (Some(aim), _) if speed < aim.low => "slow but safe",
        (Some(_), _) if difference > 0.0 => "within the sources, shorter tool life",
        _ if difference > 0.0 => "faster: shorter tool life",
        _ => "slower",
    }
}

pub(super) fn milled(a: &mut Answer, cut: &Cut, m: &Milled) {
    let table = a.table(
        "feed-steps",
        "Table feeds around it",
        &["Feed", "Against the exact feed", "Per tooth", "Place"],
    );
    for row in as_on_the_plate(&m.feeds, m.exact) {
        let Ok(chip) = feed_per_tooth(row.step, m.teeth, cut.step) else {
            continue;
        };
        let thickest = chip.mm_per_tooth() / m.thinning;
        let place = match m.heaviest() {
            _ if row.step == m.feed => "taken",
            Some(high) if chip > high * m.raised => "above the sources",
            _ if cut.kind != "saw" && thickest < m.least_chip().mm() => "rubs",
            _ if row.difference > 0.0 => "heavier",
            _ => "lighter",
        };
        table
            .row(vec![
                match feed_per_turn(row.step, cut.step) {
                    Ok(turn) if m.follows => Value::of(turn),
                    _ => Value::of(row.step),
                },
                away(row.difference),
                Value::of(chip).places(5, 4),
                Value::words(place),
            ])
            .chosen(row.step == m.feed);
    }
}

pub(super) fn drill_feeds(a: &mut Answer, band: &FeedBand) {
    let Some(band) = &band.drill else { return };
    let table = a.table(
        "drill-feeds",
        "What the sources say of the feed",
        &["Source", "From", "To"],
    );
    for row in &band.rows {
        let source = match row.source {
            DrillFeedSource::Navy => &NAVY_FEEDS,
            DrillFeedSource::Handbook => &HANDBOOK_FEEDS,
        };
        table.row(vec![
            Value::words(source.text()),
            Value::of(FeedPerRev::from_in_per_rev(row.low)),
            Value::of(FeedPerRev::from_in_per_rev(row.high)),
        ]);
    }
    table.note("The two disagree at the top of a band; a value inside either is right.");
}

/// What to change first when the cut goes wrong, in order, with the reason.
#[rustfmt::skip]
const REMEDIES_IN_ORDER: &[[&str; 4]] = &[
    ["chatters", "one spindle speed slower", "away from the frequency that sings", "more feed per tooth, less overhang, gibs snugged, shallower"],
    ["rubs, dust for chips", "more feed", "the edge must get under the skin", "one spindle speed slower, then a sharp edge"],
    ["burns, blue chips with HSS", "one spindle speed slower", "heat goes with speed first", "coolant or oil, then a sharp edge"],
    ["squeals", "more feed", "a light chip rubs", "one spindle speed slower, a drop of oil, look for wear"],
    ["chips its edge", "less feed", "the tooth is overloaded", "backlash and looseness out, tougher cutter"],
    ["leaves a rough face", "less feed", "the marks are nearer", "a sharp edge, oil, one spindle speed faster"],
    ["labors, belt slips", "less depth", "power goes with the metal removed", "less feed, back gear"],
];

/// A thin saw is never pushed.
#[rustfmt::skip]
const SAW_REMEDIES: &[[&str; 4]] = &[
    ["chatters", "one spindle speed slower", "away from the frequency that sings", "large stiff collars, support close, work clamped near the cut"],
    ["rubs, dust for chips", "one spindle speed slower", "each tooth then takes more", "a coarser saw, a sharp saw"],
    ["burns, blue chips with HSS", "one spindle speed slower", "heat goes with speed first", "coolant or oil, then a sharp saw"],
    ["squeals", "oil", "chips pack between fine teeth", "a coarser saw, look for wear"],
    ["wanders or bends", "less feed", "the thin body gives way", "a thicker saw, larger collars, backlash out"],
    ["labors, belt slips", "less feed", "power goes with the metal removed", "several passes, back gear"],
];

/// The feed of a thread is its pitch.
#[rustfmt::skip]
const THREAD_REMEDIES: &[[&str; 4]] = &[
    ["chatters", "one spindle speed slower", "away from the frequency that sings", "a lighter pass, less overhang, gibs snugged"],
    ["tears the flanks", "oil and a sharp edge", "the edge drags", "feed in along one flank, a lighter pass"],
    ["labors, belt slips", "a lighter pass", "power goes with the metal removed", "back gear"],
];

pub(super) fn remedies(a: &mut Answer, cut: &Cut) {
    // what a tap tells stands in its own calculation
    if cut.kind == "tap" {
        return;
    }
    let table = a.table(
        "remedies",
        "If the cut goes wrong",
        &["If it", "Change first", "Because", "Then"],
    );
    let rows = match cut.kind {
        "saw" => SAW_REMEDIES,
        "thread" => THREAD_REMEDIES,
        _ => REMEDIES_IN_ORDER,
    };
    for row in rows {
        table.row(row.iter().map(|cell| Value::words(*cell)).collect());
    }
    table.note("Common practice; one change at a time.");
    a.source(&REMEDIES);
}

/// What to do on the arbor, in the order of doing it, with the reason.
#[rustfmt::skip]
const ON_THE_ARBOR: &[[&str; 3]] = &[
    ["Taper and drawbar", "wipe both tapers, draw the arbor up tight", "one chip in the taper swings the cutter"],
    ["Collars", "wipe and stone each face; use few and long ones", "a chip or burr between two faces bends the arbor when the nut pulls"],
    ["Key", "key slab, side and form cutters", "large teeth turn a cutter that only friction holds"],
    ["No key", "leave a thin saw unkeyed, held by its collars", "it then slips before it breaks; large stiff collars keep it flat"],
    ["Direction", "teeth face the cut; check the spindle's direction by hand", "a cutter the wrong way around rubs and burns at once"],
    ["Helix", "choose hand and direction so that the thrust goes toward the spindle", "thrust outward pulls the taper loose"],
    ["Place", "cutter near the column, arbor support near the cutter", "a long arbor springs and chatters"],
    ["Nut", "tighten it with the arbor support in place, and loosen it so too", "else the wrench bends the arbor"],
    ["Run-out", "indicator on the teeth, turned by hand: aim at 0.002 in or less", "with more, few teeth do all the work and mark once a turn"],
];

pub(super) fn arbor(a: &mut Answer, cut: &Cut) {
    if !cut.is_one_of(ARBOR) {
        return;
    }
    let table = a.table(
        "arbor",
        "On the arbor, in this order",
        &["What", "Do", "Because"],
    );
    for row in ON_THE_ARBOR {
        table.row(row.iter().map(|cell| Value::words(*cell)).collect());
    }
    table.note("Common practice.");
    a.source(&ARBOR_WORK);
}
