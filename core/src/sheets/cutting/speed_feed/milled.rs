//! What does a milling cut's answer say? Its results in words, with the one verdict on the chip.

use super::Cut;
use super::fields::UNDERCUT;
use super::milling::{Lies, Milled, Set, is_end_mill};
use crate::cutting::sources::*;
use crate::cutting::{THINNING_MOST, feed_per_turn};
use crate::quantity::units::*;
use crate::quantity::{Number, decimal};
use crate::sheet::*;
use crate::standards::cutting::cutting_speeds::CutterMaterial;

pub(super) fn tell(inp: &Inputs, a: &mut Answer, cut: &Cut, m: &Milled) {
    feeds(inp, a, cut, m);
    a.words("verdict", verdict(inp, cut, m))
        .says("Against the feeds that the sources give, and against the limit where an edge rubs.");
    aim(a, cut, m);
    a.line("chip", m.chip)
        .places(fine(cut).0, fine(cut).1)
        .says("If every tooth cuts the same; with run-out some take more.");
    a.line("chip-max", m.thickest).says("The thickest point: 2 fz \u{221a}(r \u{2212} r\u{b2}), r = radial depth / diameter; fz from half the diameter up.");
    if let Some(mean) = m.mean {
        a.line("chip-mean", mean)
            .says("The mean: fz \u{221a}(radial depth / diameter).");
        a.source(&CHIP_MEAN);
    }
    let thinning = a.line("thinning", Number::of(m.thinning.min(THINNING_MOST)));
    thinning.places(2, 2).says(if m.thinning > THINNING_MOST {
        format!(
            "{} by geometry, held to 3: cutter and arbor run out, and one tooth would take it all.",
            decimal(m.thinning, &NUMBER, 2)
        )
    } else {
        "Keeps the thickest chip what it is at half the diameter; 1 from there up.".into()
    });
    a.line("feed-exact", m.exact)
        .says("Feed per tooth \u{d7} teeth \u{d7} spindle speed.");
    if !m.follows
        && let Ok(turn) = feed_per_turn(m.feed, cut.step)
    {
        a.line("per-turn", turn).says(
            "As set; on a machine whose feed follows the spindle this is the figure on the plate.",
        );
    }
    a.line("approach", m.approach)
        .places(3, 2)
        .says(if m.lies == Lies::Arbor {
            "\u{221a}(d (D \u{2212} d)), first touch to full depth."
        } else if m.lies == Lies::Centered {
            "(D \u{2212} \u{221a}(D\u{b2} \u{2212} w\u{b2})) / 2, cut centered on the cutter."
        } else {
            "\u{221a}(w (D \u{2212} w)), cut to one side; the radius from half the diameter up."
        });
    if let Some(time) = m.time {
        a.line("time", time).places(0, 0).says("Length, approach and extra travel at the feed set; a finishing face cut must run clear, which is extra.");
    }
    if let Some(removal) = m.removal {
        a.line("removal", removal)
            .places(3, 2)
            .says("Axial depth \u{d7} radial depth \u{d7} table feed.");
    }
    sources(a, cut, m);
}

/// Decimals of a feed per tooth: one more for the cutters with fine chips. They hang on the cut alone, so that the figure can be
/// worked back.
fn fine(cut: &Cut) -> (u8, u8) {
    if cut.is_one_of(&["end", "tslot", "dovetail", "saw"]) {
        (5, 4)
    } else {
        (4, 3)
    }
}

fn feeds(inp: &Inputs, a: &mut Answer, cut: &Cut, m: &Milled) {
    if m.follows
        && let Ok(turn) = feed_per_turn(m.feed, cut.step)
    {
        a.line("turn-feed", turn).says(match m.set {
            Set::AtOrBelow => "Feed at or below the exact one, per rev as on the plate: it follows the spindle.",
            Set::Slowest => "The slowest feed, though faster than the exact one, per rev as on the plate: it follows the spindle.",
            Set::ByHand => "By hand: the slowest power feed is more than these teeth can take.",
        });
    }
    a.line("feed", m.feed).says(match m.set {
        Set::ByHand => "By hand, and no faster: the slowest power feed is more than these teeth can take.",
        _ if m.follows => "What that feed gives per minute at this spindle speed; another spindle speed gives another.",
        Set::AtOrBelow if inp.is_entered("feeds") => {
            "Table feed at or below the exact one (your mill), per minute."
        }
        Set::AtOrBelow => "Table feed at or below the exact one (a typical mill), per minute.",
        Set::Slowest => "The slowest table feed, though faster than the exact one.",
    });
}

fn aim(a: &mut Answer, cut: &Cut, m: &Milled) {
    let mut says = if m.own {
        "As entered.".to_owned()
    } else if cut.is_one_of(UNDERCUT) {
        "Half an end mill's, common practice: thin neck, and chips that cannot get out.".to_owned()
    } else if m.carbide && is_end_mill(cut) {
        "The figure read for carbide at the next smaller size listed; below the smallest in proportion to the diameter.".to_owned()
    } else if m.carbide {
        "The one figure read for carbide.".to_owned()
    } else if is_end_mill(cut) {
        "By the cutter's diameter: the lightest of the sources' upper figures.".to_owned()
    } else {
        "The lightest of the sources' upper figures.".to_owned()
    };
    if !m.own && m.depth < 1.0 {
        says += &format!(" {}% of it at this depth.", decimal(m.depth, &PERCENT, 0));
    }
    if m.raised > 1.0 {
        says += &format!(
            " Raised {} times for the thinner chip.",
            decimal(m.raised, &NUMBER, 2)
        );
    }
    let line = a.line("chip-aim", m.wanted);
    line.places(fine(cut).0, fine(cut).1).says(says);
    if let Some(band) = m.band {
        line.band(
            band.low.min(m.wanted),
            band.high.max(m.wanted),
            if cut.is_one_of(UNDERCUT) {
                "half of the end mill's band, common practice"
            } else if m.carbide {
                "half for finishing, and the one figure, carbide"
            } else {
                "lightest figure or half of roughing, and heaviest figure, HSS cutters"
            },
        );
    }
}

/// Does the chip cut, rub or overload? One verdict, and none against what the sheet itself sets.
fn verdict(inp: &Inputs, cut: &Cut, m: &Milled) -> String {
    let (chip, least) = (m.compared(), m.least_chip());
    match (m.band, m.heaviest()) {
        (Some(band), Some(high)) if m.own && chip > high * (1.0 + 1e-9) => {
            let (is, most) = (inp.show_to(chip, 5, 4), inp.show_to(high, 5, 4));
            if band.by_material || band.by_chart {
                format!("Overloads: {is} is above the heaviest figure, {most}. Take a slower feed.")
            } else {
                format!("Heavy: {is} is above {most}, the most in the one table that we have.")
            }
        }
        _ if m.thickest < least * (1.0 - 1e-9) => {
            let is = format!(
                "the thickest chip is {}, under {}",
                inp.show_to(m.thickest, 5, 4),
                inp.show_to(least, 4, 3)
            );
            match (cut.kind, m.own) {
                ("saw", false) => format!(
                    "Within what the sources give for a saw, whose chips are thin ({}). A coarser saw or a slower spindle speed thickens them; never push a saw.",
                    inp.show_to(m.thickest, 5, 4)
                ),
                ("saw", true) => format!(
                    "Thin, as a saw's chips are: {is}. A coarser saw or a slower spindle speed thickens it; never push a saw."
                ),
                (_, true) => format!("Rubs: {is}. Take a faster feed or a slower spindle speed."),
                _ if m.raised == 1.0 && m.thinning > 1.0 => format!(
                    "Thin in so narrow a cut: {is}, where an edge begins to rub. Choose \u{201c}raise it for the thinner chip\u{201d}, a slower spindle speed, or a wider cut."
                ),
                _ => format!(
                    "Thin: {is}, where an edge begins to rub. A slower spindle speed thickens it."
                ),
            }
        }
        (Some(band), _) if chip < band.low * m.depth * (1.0 - 1e-9) => format!(
            "Light: below the sources' lightest figure, {}.",
            inp.show_to(band.low * m.depth, 5, 4)
        ),
        (Some(_), _) => "Within what the sources give.".into(),
        (None, _) => "Cuts; no source for this cutter and material to compare with.".into(),
    }
}

fn sources(a: &mut Answer, cut: &Cut, m: &Milled) {
    if let Some(band) = m.band {
        for (takes_part, source) in [
            (band.by_chart, &HSS_END_FEEDS),
            (
                band.by_chart || (m.carbide && is_end_mill(cut)),
                &END_FEED_BY_DIAMETER,
            ),
            (band.by_material, &KRAR_FEEDS),
            (band.by_cut, &CUT_FEEDS),
            (band.handout, &HANDOUT_FEEDS),
        ] {
            if takes_part {
                a.source(source);
            }
        }
    }
    if m.carbide {
        a.source(if is_end_mill(cut) {
            &CARBIDE_END_FEEDS
        } else {
            &CARBIDE_FACE_FEED
        });
    } else if cut.tool == CutterMaterial::Carbide {
        a.note(
            "feed-source",
            "About the feed per tooth",
            "For HSS cutters: we have no verified source for this cutter in carbide.",
        );
    }
    if cut.is_one_of(UNDERCUT) {
        a.source(&SHARES_OF_SPEED);
    }
    if m.axial.is_some() && cut.kind == "end" {
        a.source(&SLOT_DEPTH);
        a.source(&SIDE_DEPTH);
    }
    if m.thinning > 1.0 {
        a.source(&THINNING_LIMIT);
    }
    a.source(&RUBBING);
}
