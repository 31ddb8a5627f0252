//! What is to be minded before parts are pressed, heated or cooled?

use super::lines::{degrees, small, stress};
use super::{Case, Part, most_interference};
use crate::fit::KindOfFit;
use crate::fit::press::{Joint, Stresses};
use crate::fit::sources::{FIT_STRENGTH, JOINING, JONES};
use crate::quantity::{Quantity, Stress, Temperature};
use crate::sheet::{Answer, Inputs};

/// Above this mild steel and iron lose strength (DIN 7190, from memory).
const HOTTEST: Temperature = Temperature::from_celsius(350.0);

/// Where no strength was entered: whether a usual material of this kind yields or cracks.
pub(super) fn strength(
    inp: &Inputs,
    a: &mut Answer,
    c: &Case,
    joint: &Joint,
    most: Stress,
    stresses: &Stresses,
) {
    let least = |id: &str, part: &Part| part.least.filter(|_| inp.opt::<Stress>(id).is_none());
    let lighter = |stress: Stress, strength: Stress| {
        small(inp, most_interference(joint, most, stress, strength))
    };
    let hub = stresses.hub_equivalent;
    if let Some(limit) = least("hub-strength", &c.hub)
        && hub > limit
    {
        a.source(&FIT_STRENGTH);
        let (comes, most) = (stress(inp, hub), lighter(hub, limit));
        let limit = stress(inp, limit);
        if c.hub.brittle {
            a.stop("hub-cracks", "Before you press", format!(
                "The bore of the hub comes to {comes}; ordinary gray iron (class 20) stands {limit}: it may crack without warning. Take {most} of interference or less, a thicker hub, or enter the iron's own strength."
            ));
        } else {
            a.note("hub-yields", "Before you press", format!(
                "The bore of the hub comes to {comes}; in its soft state this metal yields at {limit}, and then holds less than shown. Take {most} of interference or less, a thicker hub, or enter the hub's own strength."
            ));
        }
    }
    let shaft = stresses.shaft_equivalent;
    if let Some(limit) = least("shaft-strength", &c.shaft)
        && shaft > limit
    {
        a.source(&FIT_STRENGTH);
        a.note("shaft-yields", "Before you press", format!(
            "The shaft or bushing comes to {}; in its soft state this metal {} at {}, and then holds less than shown. Take {} of interference or less, or enter its own strength.",
            stress(inp, shaft),
            if c.shaft.brittle { "breaks" } else { "yields" },
            stress(inp, limit),
            lighter(shaft, limit)
        ));
    }
    let hot = a.get("heat-to").and_then(|line| line.value.base());
    if hot.is_some_and(|hot| hot > HOTTEST.base()) {
        a.source(&JOINING);
        a.stop("too-hot", "Before you heat", "Above about 660 °F (350 °C) steel and iron lose strength. Cool the shaft as well, or take a lighter fit.");
    }
}

/// The cautions of every press fit, each by its own condition.
pub(super) fn cautions(inp: &Inputs, a: &mut Answer, c: &Case) {
    let ice = degrees(inp, 98.0, "177 °F");
    let nitrogen = degrees(inp, 216.0, "389 °F");
    if a.get("chill").is_some() {
        a.note(
            "cold-by-what",
            "Cold",
            format!(
                "Dry ice cools to about {ice} below the room, liquid nitrogen to about {nitrogen}."
            ),
        );
    } else if c.shaft.grows.is_some() {
        a.note("cold-not-enough", "Cold", format!(
            "Cooling alone would take more than liquid nitrogen gives ({nitrogen} below the room). Heat the hub as well."
        ));
    }
    if c.band
        .is_some_and(|band| band.kind() == KindOfFit::Transition)
    {
        a.note("transition", "Transition", "The loosest pair has clearance: it holds nothing. Measure, and work with the measured parts.");
    }
    if c.friction.0 < c.friction.1 {
        a.note("friction", "Friction", "It is a range from common practice. Choose a press for the high end; count on the low end to hold.");
    }
    for (id, name, part) in [
        ("heat-limit", "hub", &c.hub),
        ("cold-limit", "shaft", &c.shaft),
    ] {
        if part.grows.is_none() {
            a.note(
                id,
                "Heat",
                format!(
                    "We have no verified figure for the expansion of this {name}: enter your own."
                ),
            );
        }
    }
    a.note("shrink-or-press", "Shrink or press", "With the same interference a shrink fit held 3.66 times as much endwise and 3.2 times in torsion in old tests.");
    a.source(&JONES);
    a.note(
        "thick-ring",
        "The formula",
        "Elastic, hub and shaft of one length, nothing turning fast. The ends of a long shaft raise the stress at the edge of the hub.",
    );
    a.stop(
        "press-guard",
        "Before you press",
        "Start square with a lead, support the hub close around the hole, stand clear of the line of force, wear eye protection. \
         Cast iron and hard parts break without warning. Stop when the force passes the high figure.",
    );
    a.stop(
        "heat-guard",
        "Before you heat",
        "Heat evenly, away from oil and solvent, with gloves and tongs; the parts seize in seconds. Hardened parts lose their temper from about 350 °F (175 °C), rolling bearings stand 250 °F (120 °C) at most, seals less. With dry ice or liquid nitrogen: air the room, cover skin and eyes.",
    );
}
