//! What can this cut do to hand, cutter and work, and what is done about it before?

use super::Cut;
use super::fields::{ARBOR, LATHE_CUTS, MILL, UNDERCUT};
use super::milling::Milled;
use super::per_turn::Fed;
use super::spindle::{Held, Spindle};
use crate::cutting::sources::*;
use crate::cutting::{CARRIAGE_MOST, collar_reach, deepest_pass, is_slot, travel_time};
use crate::quantity::{FeedRate, Length, Share};
use crate::sheet::*;
use crate::standards::cutting::cutting_speeds::Material;

/// What every cut of its kind needs.
pub(super) fn care(a: &mut Answer, cut: &Cut) {
    if cut.is_one_of(UNDERCUT) {
        a.source(&SHARES_OF_SPEED);
    }
    match cut.kind {
        "tslot" => {
            a.source(&THROAT_FIRST);
            a.note("t-slot", "Before the T-slot", "Mill the throat first to full depth. Both sides cut and one of them climbs: backlash out, cross slide locked, feed by hand to begin. Clear chips with a brush, spindle stopped; packed chips break the neck.");
        }
        "dovetail" => {
            a.note("dovetail", "Before the dovetail", "Mill the step square first and leave the angle little to do. The points of the teeth are weak: feed against the cutter, small passes, lock the idle slide.");
        }
        "fly" => {
            a.stop("fly-cutter", "Before you start the fly cutter", "Bit clamped with little overhang and turned once by hand clear of work and clamps. Stand out of its plane: a loose bit flies. It hits once a turn, so knocks show looseness.");
        }
        "bore" => {
            a.note("boring", "Before you bore", "Thickest and shortest bar that goes in; edge at or a hair above center so that it springs clear. If it sings, slower and finer before anything else. In a boring head on the mill, give the mill's speeds as the lathe's.");
        }
        "part" => {
            a.stop("parting", "Before you part off", "Blade square, on center and short; carriage locked, slides snug, close to the chuck, never between centers to the end. Steady feed and oil. If it digs in, stop the spindle before you back out.");
        }
        "step" => {
            a.stop("sheet", "Before you drill sheet", "Clamp it on a backing board, never hold it by hand: sheet that grabs spins and cuts. Diameter here is the largest step. Ease off as each step breaks through.");
        }
        "counterbore" => {
            a.note("counterbore", "Before you counterbore", "Pilot a free fit in the hole and oiled, depth stop set, spindle slow. If it chatters, slower and a steadier feed.");
        }
        "ream" => {
            a.note("reamed-large", "If the reamed hole comes out large", "Look in this order: run-out of spindle or chuck, drilled hole off line, built-up edge, too little stock, too fast. Let the reamer float, never turn it backward.");
        }
        _ => {}
    }
    a.stop("start-spindle", "Before you start the spindle", "Work clamped against the cut and stops tight, guard on, glasses on, no gloves, key out. Clear chips with a brush, spindle stopped.");
    if cut.is_one_of(MILL) {
        a.note("feed-direction", "Which way to feed", "Feed against the cutter unless the table's backlash is taken out: in climb milling the cutter pulls the work in.");
    }
    if cut.kind == "saw" {
        a.note("thin-saw", "Before you saw", "Leave a thin saw unkeyed so that it slips before it breaks. Keep the arbor run-out small, and climb only with the backlash taken out.");
    }
}

/// What the spindle asks of the hand.
pub(super) fn spindle(inp: &Inputs, a: &mut Answer, cut: &Cut, s: &Spindle) {
    if s.far_too_fast(cut) {
        a.stop("far-too-fast", "Before you cut", format!(
            "Even the slowest spindle speed runs the edge at {} where {} is aimed at: it burns and grabs. {}",
            inp.show_to(s.surface, 0, 0),
            inp.show_to(s.start, 0, 0),
            match cut.kind {
                "drill" => "Use a slower machine or a back gear, or drill to the largest size that it can drive and bore the rest.",
                "ream" => "Ream by hand, with the spindle as a guide and the power off.",
                _ => "Use a smaller cutter, a slower machine, or a back gear.",
            }
        ));
    } else if s.too_fast {
        a.note("fastest-step", "Before you cut", "Even the slowest spindle speed is faster than the one aimed at. Take light cuts, keep it short and watch the edge.");
    }
    if s.held == Held::NoPitch {
        a.note(
            "no-pitch",
            "About the spindle speed",
            "Give the pitch: it says how fast the carriage goes toward the shoulder.",
        );
    }
}

/// What a milling cut can do.
pub(super) fn milled(inp: &Inputs, a: &mut Answer, cut: &Cut, m: &Milled) {
    if m.raised > 2.0 {
        a.note("thinning-run-out", "Before you raise the feed so much", "Cutter and arbor run out: with 0.002 in of it one tooth takes that much more than the others. Set the indicator on the teeth first, or leave the feed.");
    }
    if cut.kind == "end" {
        depth(inp, a, cut, m);
    }
    if cut.is_one_of(ARBOR) {
        collars(inp, a, cut, m.radial);
    }
}

fn depth(inp: &Inputs, a: &mut Answer, cut: &Cut, m: &Milled) {
    let slot = is_slot(m.radial, cut.diameter);
    match m.axial {
        None if slot => {
            a.note("slot-depth-open", "About the depth of the slot", format!("The feed holds to half a diameter deep, {}. Give the axial depth for more; a slot is deepened in passes.", inp.show(cut.diameter * 0.5)));
        }
        Some(_) if m.depth < 1.0 => {
            a.note("deep-pass", "At this depth", format!("The chips have a long way out and the cutter bends: {} of the feed is left, and {} is the most at this width. A light machine takes half a diameter per pass.", inp.show_to(Share::from_fraction(m.depth), 0, 0), inp.show(deepest_pass(m.radial, cut.diameter))));
        }
        Some(axial) if axial / cut.diameter > 1.5 + 1e-9 => {
            a.note("long-edge", "At this depth", "So long an edge bends away from the work and chatters: less width, less feed, or two passes.");
        }
        _ => {}
    }
}

/// A cutter reaches only so deep before its collars touch.
fn collars(inp: &Inputs, a: &mut Answer, cut: &Cut, depth: Length) {
    let arbor: Option<Length> = inp.opt("arbor");
    let reach = collar_reach(cut.diameter, arbor);
    if depth < reach {
        return;
    }
    a.source(&COLLARS);
    let reach = inp.show(reach.max(Length::ZERO));
    if arbor.is_some() {
        a.stop("collars-hit", "Before you set the depth", format!("Collars of one and a half times this arbor leave the cutter {reach} of reach: they hit the work first. Measure them, take a larger cutter, or thinner collars."));
    } else {
        a.note("collars", "Before you set the depth", format!("On a usual arbor the collars leave this cutter about {reach} of reach: they would hit the work first. Measure them, or give the arbor."));
    }
}

/// What a cut fed so much a turn can do.
pub(super) fn fed(inp: &Inputs, a: &mut Answer, cut: &Cut, s: &Spindle, feed: Option<&Fed>) {
    match cut.kind {
        "drill" => drill(inp, a, cut, s),
        "tap" => tap(inp, a, s, feed.map(|fed| fed.feed)),
        "thread" => thread(inp, a, cut, feed.map(|fed| fed.feed)),
        _ => {}
    }
}

fn drill(inp: &Inputs, a: &mut Answer, cut: &Cut, s: &Spindle) {
    a.note("breakthrough", "At the breakthrough", "Ease the feed: the drill grabs as the point comes through. Hold the work in a vise or clamps, never by hand.");
    if cut.diameter > Length::from_inches(0.5) {
        a.note("pilot-hole", "Before so large a drill", format!("Drill a pilot hole first, about as wide as the web of the large drill (near {}): it takes away about half of the push. Clamp the work to the table.", inp.show_to(cut.diameter * 0.2, 2, 0)));
        a.source(&PILOT);
    }
    if s.deep < 1.0 {
        a.note("peck", "In a deep hole", format!("From three diameters on withdraw the drill often to clear the chips and bring oil: packed chips break it. Speed and feed are lowered to {} unless you gave your own.", inp.show_to(Share::from_fraction(s.deep), 0, 0)));
        a.source(&PECKING);
    }
    if matches!(
        cut.material,
        Material::Brass | Material::HardBrass | Material::Bronze
    ) {
        a.note("brass-grabs", "In brass and bronze", "An ordinary drill pulls itself in, above all when it opens a hole or breaks through. Dub the lips: stone a small flat on each, so that they scrape instead of hook.");
    }
}

fn tap(inp: &Inputs, a: &mut Answer, s: &Spindle, feed: Option<FeedRate>) {
    let way = feed.map_or_else(String::new, |feed| {
        let second = Length::from_mm(feed.mm_per_min() / 60.0);
        format!(
            " At {} it goes {} per second.",
            inp.show(s.step),
            inp.show_to(second, 2, 1)
        )
    });
    a.stop("power-tap", "Before you tap by power", format!("Work clamped, slowest spindle speed, a clutch or a floating holder, and know that the spindle reverses.{way} In a blind hole tap by power only with a releasing or reversing head and the stop set short of the bottom; else by hand, with the spindle as a guide and the power off. If the tap slows, squeals or springs, stop and check: wrong hole, full flutes or a dull tap."));
}

fn thread(inp: &Inputs, a: &mut Answer, cut: &Cut, feed: Option<FeedRate>) {
    let near = Length::from_inches(0.125);
    let way = feed
        .and_then(|feed| Some((feed, travel_time(near, feed).ok()?)))
        .map_or_else(String::new, |(feed, time)| {
            format!(
                " The carriage goes {}, the last {} before the shoulder in {}.",
                inp.show_to(feed, 1, 0),
                inp.show_to(near, 3, 1),
                inp.show_to(time, 1, 1)
            )
        });
    a.stop("half-nuts", "Before you engage the half nuts", format!("The feed is the lead of the thread.{way} Know where you will let go, cut a groove to run out into, and go slower if you cannot let go in time."));
    if feed.is_some_and(|feed| feed > CARRIAGE_MOST * (1.0 + 1e-9)) {
        a.stop("carriage-fast", "Before you engage the half nuts", format!("Even the slowest spindle speed drives the carriage past {}: turn the spindle by hand, thread away from the shoulder, or use a back gear.", inp.show_to(CARRIAGE_MOST, 0, 0)));
    }
    debug_assert!(cut.is_one_of(LATHE_CUTS));
}

/// Where a feed could not be given.
pub(super) fn no_feed(a: &mut Answer, cut: &Cut) {
    if cut.is_one_of(&["tap", "thread"]) {
        return;
    }
    a.note("feed-source", "About the feed", if cut.kind == "ream" {
        "Give the flutes of the reamer, or your own feed, to get the feed per minute."
    } else {
        "We have no verified source for the feed of this cut. Give your own to get the feed per minute."
    });
}

/// What the chips, the dust and the skin of this material can do in a cut; hardening apart, which tapping tells in its own words.
pub(super) fn material(a: &mut Answer, cut: &Cut) {
    if matches!(
        cut.material,
        Material::StainlessSteel | Material::Monel | Material::Nickel | Material::AusteniticIron
    ) {
        a.note("work-hardens", "In this metal", "It work-hardens where an edge rubs or dwells, and then takes the edge off. Sharp tool, keep it cutting with a steady feed, oil; never let it spin in place.");
    }
    metal(a, cut.material);
}

/// What the chips and the dust of this material can do.
pub(in crate::sheets) fn metal(a: &mut Answer, material: Material) {
    match material {
        Material::Magnesium => {
            a.stop("magnesium", "Before you cut magnesium", "Chips and dust burn and water makes it worse. Sharp tools, no rubbing, no water; keep dry sand or a class D extinguisher at hand.");
        }
        Material::Titanium => {
            a.stop("titanium", "Before you cut titanium", "Fine chips and dust burn, and water on the fire makes it worse. Sharp tool, steady feed, no rubbing; clear chips often; keep dry sand or a class D extinguisher at hand.");
        }
        Material::Thermoset => {
            a.stop("thermoset", "Before you cut thermoset", "Its dust harms the lungs and can burn, more so with glass or cloth in it. Extraction at the cutter and a dust mask; no air blast, no sparks.");
        }
        Material::GrayIron
        | Material::MalleableIron
        | Material::DuctileIron
        | Material::AusteniticIron => {
            a.note("iron-dust", "In cast iron", "Its dust harms the lungs and wears slides: vacuum or mask, no air blast, wipe the ways after.");
        }
        _ => {}
    }
}
