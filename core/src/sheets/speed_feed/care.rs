//! What does this kind of cutter ask for? Arbor work in order of doing it, and what the newer cuts can do to work and hand.

use super::fields::{ARBOR, UNDERCUT};
use crate::cutting::sources::{ARBOR_WORK, SHARES_OF_SPEED, THROAT_FIRST};
use crate::sheet::*;
use crate::standards::cutting_speeds::Material;

/// What to do on the arbor, in the order of doing it, with the reason.
#[rustfmt::skip]
const ON_THE_ARBOR: &[[&str; 3]] = &[
    ["Taper and drawbar", "wipe both tapers, draw the arbor up tight", "one chip in the taper swings the cutter"],
    ["Collars", "wipe and stone each face; use few and long ones", "a chip or burr between two faces bends the arbor when the nut pulls"],
    ["Key", "key slab, side and form cutters", "heavy teeth turn a cutter that only friction holds"],
    ["No key", "leave a thin saw unkeyed, held by its collars", "it then slips before it breaks; large stiff collars keep it flat"],
    ["Direction", "teeth face the cut; check the spindle's direction by hand", "a cutter the wrong way round rubs and burns at once"],
    ["Helix", "choose hand and direction so that the thrust goes toward the spindle", "thrust outward pulls the taper loose"],
    ["Place", "cutter near the column, arbor support near the cutter", "a long arbor springs and chatters"],
    ["Nut", "tighten it with the arbor support in place, and loosen it so too", "else the wrench bends the arbor"],
    ["Run-out", "indicator on the teeth, turned by hand: aim at 0.002 in or less", "with more, few teeth do all the work and mark once a turn"],
];

pub(super) fn care(a: &mut Answer, kind: &str) {
    if ARBOR.contains(&kind) {
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
    if UNDERCUT.contains(&kind) {
        a.source(&SHARES_OF_SPEED);
    }
    match kind {
        "tslot" => {
            a.source(&THROAT_FIRST);
            a.note("t-slot", "Before the T-slot", "Mill the throat first to full depth. Both sides cut and one of them climbs: table slack out, cross slide locked, feed by hand to begin. Clear chips with a brush, spindle stopped; packed chips break the neck.");
        }
        "dovetail" => {
            a.note("dovetail", "Before the dovetail", "Mill the step square first and leave the angle little to do. The points of the teeth are weak: feed against the cutter, small passes, lock the idle slide.");
        }
        "fly" => {
            a.stop("fly-cutter", "Before you start the fly cutter", "Bit clamped with little overhang and turned once by hand clear of work and clamps. Stand out of its plane: a loose bit flies. It hits once a turn, so knocks show slack.");
        }
        "bore" => {
            a.note("boring", "Before you bore", "Thickest and shortest bar that goes in; edge at or a hair above centre so that it springs clear. If it sings, slower and finer before anything else. In a boring head on the mill, give the mill's steps as the lathe's.");
        }
        "part" => {
            a.stop("parting", "Before you part off", "Blade square, on centre and short; carriage locked, slides snug, close to the chuck, never between centres to the end. Steady feed and oil. If it digs in, stop the spindle before you back out.");
        }
        "step" => {
            a.stop("sheet", "Before you drill sheet", "Clamp it on a backing board, never hold it by hand: sheet that grabs spins and cuts. Diameter here is the largest step. Ease off as each step breaks through.");
        }
        "counterbore" => {
            a.note("counterbore", "Before you counterbore", "Pilot a free fit in the hole and oiled, depth stop set, spindle slow. If it chatters, slower and a steadier feed.");
        }
        _ => {}
    }
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
