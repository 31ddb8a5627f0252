//! Which feed step serves a milling cut, and does the chip cut, rub or overload?

use super::Cut;
use super::fields::*;
use crate::cutting::sources::*;
use crate::cutting::*;
use crate::machine::{around, ranked};
use crate::quantity::units::*;
use crate::quantity::{Count, FeedPerRev, FeedPerTooth, FeedRate, Length, Number, Share, decimal};
use crate::sheet::*;
use crate::standards::cutting_speeds::CutterMaterial;
use crate::standards::feeds::{
    MillingCutter, ToothFeedBand, carbide_tooth_feed_band, tooth_feed_band,
};

pub(super) fn milling(inp: &Inputs, a: &mut Answer, cut: &Cut) -> Result<(), Stop> {
    let d = cut.diameter;
    let teeth: Count = inp.get("teeth")?;
    let arbor = cut.is_one_of(ARBOR);
    let radial_field = if arbor { "depth" } else { "width" };
    let radial: Length = inp.get(radial_field)?;
    let centred = !arbor && inp.choice("lies") == "centred";
    let faulty = |fault: CutFault| match fault {
        CutFault::TooLarge { limit_mm, why, .. } => inp.out_of_range(
            radial_field,
            format!("more than {}: {why}", inp.show(Length::from_mm(limit_mm))),
            "take several passes or a larger cutter",
        ),
        other => inp.out_of_range(radial_field, other.to_string(), "check the sizes"),
    };
    let approach = if arbor {
        slab_approach(radial, d)
    } else if centred {
        centred_face_approach(radial, d)
    } else {
        offset_face_approach(radial, d)
    }
    .map_err(faulty)?;
    let cutter = cut.milling_cutter();
    let carbide = cutter
        .filter(|_| cut.tool == CutterMaterial::Carbide)
        .and_then(|cutter| carbide_tooth_feed_band(cutter, cut.material, d));
    let band = carbide
        .or_else(|| cutter.and_then(|cutter| tooth_feed_band(cutter, cut.material, d)))
        .map(|band| {
            if cut.is_one_of(UNDERCUT) {
                ToothFeedBand {
                    low: band.low * 0.5,
                    start: band.start * 0.5,
                    high: band.high * 0.5,
                    ..band
                }
            } else {
                band
            }
        });
    let own: Option<FeedPerTooth> = inp.opt("chip");
    let Some(start) = own.or(band.map(|band| band.start)) else {
        return Err(Stop::fault(
            "cut",
            Reason::NoSource,
            format!(
                "we have no verified feed per tooth for this cutter in {}",
                cut.material.label()
            ),
            "give your own feed per tooth below",
        ));
    };
    // a centred cut passes through the thickest point of the tooth's path
    let factor = if centred {
        1.0
    } else {
        thinning_factor(radial, d).map_err(faulty)?
    };
    let raised = inp.choice("thinning") == "raise" && own.is_none();
    let wanted = if raised { start * factor } else { start };
    let exact = table_feed(wanted, teeth, cut.step);
    let follows = inp.choice("feed-follows") == "spindle";
    let feeds: Vec<FeedRate> = if follows {
        let turns: Vec<FeedPerRev> = inp.list("feeds-turn");
        let at_step = |turn: &FeedPerRev| feed_rate(*turn, cut.step);
        turns.iter().map(at_step).collect()
    } else {
        inp.list("feeds")
    };
    let steps = if follows { "feeds-turn" } else { "feeds" };
    let found = around(&feeds, exact).ok_or(Stop::Missing(steps))?;
    let feed = found.at_or_below.unwrap_or(found.nearest);
    let chip = feed_per_tooth(feed, teeth, cut.step).map_err(faulty)?;
    let thickest = Length::from_mm(chip.mm_per_tooth() / factor);
    let mean = if centred {
        None
    } else {
        chip_thickness(ChipMeasure::Mean, chip, radial, d).ok()
    };
    let rub = rubbing_limit(cut.tool == CutterMaterial::Carbide);
    let says = verdict(
        inp,
        band,
        if raised { chip / factor } else { chip },
        thickest,
        rub,
    );

    if follows && let Ok(turn) = feed_per_turn(feed, cut.step) {
        a.line("turn-feed", turn)
            .says(if found.at_or_below.is_some() {
                "The machine's feed step at or below the exact feed, per turn as on the plate: it follows the spindle."
            } else {
                "The slowest feed step, though faster than the exact feed, per turn as on the plate: it follows the spindle."
            });
    }
    a.line("feed", feed).says(if follows {
        "What that step gives a minute at this spindle step; another spindle step gives another."
    } else if found.at_or_below.is_some() {
        "The machine's feed step at or below the exact feed, per minute."
    } else {
        "The slowest feed step, though faster than the exact feed."
    });
    a.words("verdict", says)
        .says("Against the feeds that the sources give, and against the limit where an edge rubs.");
    let line = a.line("chip-aim", wanted).says(if raised {
        "Start of the band, raised for the thinner chip."
    } else if own.is_some() {
        "As you gave it."
    } else if cut.is_one_of(UNDERCUT) {
        "Half an end mill's start, common practice: thin neck, and chips that cannot get out."
    } else if carbide.is_some() {
        "The one figure read for carbide; of an end mill that of the next smaller size listed."
    } else {
        "Start of the band: the lightest of the sources' upper figures."
    });
    if let Some(band) = band {
        line.band(
            band.low,
            band.high,
            if cut.is_one_of(UNDERCUT) {
                "half of the end mill's band, common practice"
            } else if carbide.is_some() {
                "half for finishing, and the one figure, carbide"
            } else {
                "lightest figure or half of roughing, and heaviest figure, HSS cutters"
            },
        );
    }
    a.line("chip", chip)
        .says("Per tooth, if every tooth cuts alike; with run-out some take more.");
    a.line("chip-max", thickest).says("The thickest point: 2 fz \u{221a}(r \u{2212} r\u{b2}), r = engagement / diameter; fz from half engagement up.");
    if let Some(mean) = mean {
        a.line("chip-mean", mean)
            .says("The mean: fz \u{221a}(engagement / diameter).");
    }
    a.line("thinning", Number::of(factor))
        .places(2, 2)
        .says("Keeps the thickest chip what it is at half engagement; 1 from there up.");
    a.line("feed-exact", exact)
        .says("Feed per tooth \u{d7} teeth \u{d7} spindle step.");
    if !follows && let Ok(turn) = feed_per_turn(feed, cut.step) {
        a.line("per-turn", turn).says("At those steps; on a machine whose feed follows the spindle this is the figure on the plate.");
    }
    a.line("approach", approach).places(3, 2).says(if arbor {
        "\u{221a}(d (D \u{2212} d)), first touch to full depth."
    } else if centred {
        "(D \u{2212} \u{221a}(D\u{b2} \u{2212} w\u{b2})) / 2, cut centred on the cutter."
    } else {
        "\u{221a}(w (D \u{2212} w)), cut to one side; the radius from half engagement up."
    });
    let travel = inp
        .opt::<Length>("length")
        .map(|length| length + approach + inp.opt("overrun").unwrap_or(Length::ZERO));
    let time = travel.and_then(|travel| travel_time(travel, feed).ok());
    if let Some(time) = time {
        a.line("time", time).places(0, 0).says("Length, approach and extra travel at the feed step; a finishing face cut must run clear, which is extra.");
    }
    let axial: Option<Length> = inp.opt("axial");
    if let Some(axial) = axial {
        a.line("removal", milling_removal(axial, radial, feed))
            .says("Width \u{d7} depth \u{d7} table feed.");
    }
    let table = a.table(
        "feed-steps",
        "Feed steps around it",
        &["Step", "Against the exact feed", "Per tooth", "Place"],
    );
    for row in ranked(&feeds, exact, 6) {
        let Ok(chip) = feed_per_tooth(row.step, teeth, cut.step) else {
            continue;
        };
        let place = match band {
            _ if row.step == feed => "taken",
            Some(band) if chip > band.high * if raised { factor } else { 1.0 } => {
                "above the sources"
            }
            _ if chip.mm_per_tooth() / factor < rub.mm() => "rubs",
            _ if row.difference > 0.0 => "heavier",
            _ => "lighter",
        };
        table
            .row(vec![
                match feed_per_turn(row.step, cut.step) {
                    Ok(turn) if follows => Value::of(turn),
                    _ => Value::of(row.step),
                },
                Value::of(Share::from_fraction(row.difference))
                    .places(1, 1)
                    .signed(),
                Value::of(chip),
                Value::words(place),
            ])
            .owned(true)
            .chosen(row.step == feed);
    }
    a.work(|w| {
        let z = inp.num(teeth);
        w.step(
            "Table feed",
            &[
                "F = fz z n".into(),
                format!(
                    "F = {} \u{d7} {z} \u{d7} {} = {}",
                    inp.num(wanted),
                    inp.num(cut.step),
                    inp.show_to(exact, 3, 1)
                ),
                format!("step at or below: {}", inp.show(feed)),
            ],
            &TOOTH_FEED,
        );
        w.step(
            "True feed per tooth",
            &[
                "fz = F / (z n)".into(),
                format!(
                    "fz = {} / ({z} \u{d7} {}) = {}",
                    inp.num(feed),
                    inp.num(cut.step),
                    inp.show(chip)
                ),
            ],
            &TOOTH_FEED,
        );
        if !centred {
            let r = decimal(radial / d, &NUMBER, 4);
            w.step(
                "Chip in a narrow cut",
                &[
                    format!("r = {} / {} = {r}", inp.num(radial), inp.num(d)),
                    format!(
                        "thickest = fz / {} = {}",
                        decimal(factor, &NUMBER, 3),
                        inp.show_to(thickest, 5, 4)
                    ),
                ],
                &CHIP_MAXIMUM,
            );
        }
        let (dn, rn) = (inp.num(d), inp.num(radial));
        let put = if arbor {
            format!("\u{221a}({rn} \u{d7} ({dn} \u{2212} {rn}))")
        } else if centred {
            format!("({dn} \u{2212} \u{221a}({dn}\u{b2} \u{2212} {rn}\u{b2})) / 2")
        } else {
            format!("\u{221a}({rn} \u{d7} ({dn} \u{2212} {rn})), or the radius")
        };
        let mut lines = vec![format!("A = {put} = {}", inp.show(approach))];
        if let (Some(travel), Some(time)) = (travel, time) {
            lines.push(format!(
                "t = {} / {} = {}",
                inp.num(travel),
                inp.num(feed),
                inp.show_to(time, 0, 0)
            ));
        }
        w.step("Approach and time", &lines, &GROOVER);
    });
    if mean.is_some() {
        a.source(&CHIP_MEAN);
    }
    if let Some(band) = band {
        if band.by_material {
            a.source(&KRAR_FEEDS);
        }
        if band.by_cut {
            a.source(&CUT_FEEDS);
        }
        if band.handout {
            a.source(&HANDOUT_FEEDS);
        }
    }
    if carbide.is_some() {
        a.source(if cutter == Some(MillingCutter::Face) {
            &CARBIDE_FACE_FEED
        } else {
            &CARBIDE_END_FEEDS
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
    a.source(&RUBBING);
    a.draw(|| {
        if arbor {
            picture::arbor_cut(
                d,
                radial,
                approach,
                [inp.show(d), inp.show(radial), inp.show(approach)],
            )
        } else {
            picture::face_cut(d, radial, centred, [inp.show(d), inp.show(radial)])
        }
    });
    Ok(())
}

/// Does the chip cut, rub or overload? In words.
fn verdict(
    inp: &Inputs,
    band: Option<ToothFeedBand>,
    chip: FeedPerTooth,
    thickest: Length,
    rub: Length,
) -> String {
    // the lightest feed that a source gives may be below the rule for rubbing: the source then wins
    let limit = band.map_or(rub, |band| {
        rub.min(Length::from_mm(band.low.mm_per_tooth()))
    });
    match band {
        Some(band) if chip > band.high && !band.by_material => {
            format!(
                "Heavy: {} per tooth is above {}, the most in the one table that we have.",
                inp.show(chip),
                inp.show(band.high)
            )
        }
        Some(band) if chip > band.high => {
            format!(
                "Overloads: {} per tooth is above the heaviest figure, {}. Take a slower feed.",
                inp.show(chip),
                inp.show(band.high)
            )
        }
        _ if thickest < limit => {
            format!(
                "Rubs: the thickest chip is {}, under {}. Take a faster feed or a slower spindle.",
                inp.show_to(thickest, 5, 4),
                inp.show_to(limit, 4, 3)
            )
        }
        Some(band) if chip < band.low => format!(
            "Light: below the sources' lightest figure, {}.",
            inp.show(band.low)
        ),
        Some(_) => "Inside the band of the sources.".into(),
        None => "Cuts; no source for this cutter and material to compare with.".into(),
    }
}
