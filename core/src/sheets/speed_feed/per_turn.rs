//! Which feed per turn serves a drill or a lathe tool?

use super::Cut;
use super::fields::*;
use crate::cutting::sources::*;
use crate::cutting::*;
use crate::machine::around;
use crate::quantity::Count;
use crate::quantity::{Angle, FeedPerRev, Length, Pitch};
use crate::sheet::*;
use crate::standards::feeds::{
    COUNTERBORE_SHARE, DrillFeedSource, LATHE, LatheFeedSource, PART_FEED, REAM_FEED_PER_FLUTE,
    drill_feed_band, ream_stock,
};

pub(super) fn per_turn(inp: &Inputs, a: &mut Answer, cut: &Cut) {
    let d = cut.diameter;
    let drill_band = cut
        .is_one_of(&["drill", "sink", "counterbore"])
        .then(|| drill_feed_band(d))
        .flatten();
    let lathe_rows: Vec<_> = LATHE
        .iter()
        .filter(|row| row.materials.contains(&cut.material))
        .collect();
    let lathe_band = match cut.kind {
        "turn" => lathe_rows
            .iter()
            .map(|row| row.rough)
            .reduce(|a, b| (a.0.min(b.0), a.1.max(b.1))),
        "turn-finish" | "bore" => lathe_rows
            .iter()
            .map(|row| row.finish)
            .reduce(|a, b| (a.0.min(b.0), a.1.max(b.1))),
        "part" => Some((PART_FEED, PART_FEED)),
        "ream" => inp.opt::<Count>("flutes").map(|flutes| {
            let (low, high) = REAM_FEED_PER_FLUTE;
            (low * flutes.get(), high * flutes.get())
        }),
        _ => None,
    }
    .map(|(low, high)| {
        (
            FeedPerRev::from_in_per_rev(low),
            FeedPerRev::from_in_per_rev(high),
        )
    });
    let band = drill_band
        .as_ref()
        .map(|band| match cut.kind {
            "counterbore" => (band.low * COUNTERBORE_SHARE.0, band.high),
            _ => (band.low, band.high),
        })
        .or(lathe_band);
    let pitch: Option<Pitch> = inp.opt("pitch");
    let lead = pitch.map(|pitch| FeedPerRev::from_mm_per_rev(pitch.mm()));
    let own: Option<FeedPerRev> = inp.opt("turn-feed").or(lead);
    if let Some(wanted) = own.or(band.map(|band| band.0)) {
        let typed: Vec<FeedPerRev> = inp.list("turn-feeds");
        let steps = if typed.is_empty() {
            inp.list("lathe-feeds")
        } else {
            typed
        };
        let found = around(&steps, wanted);
        let step = found.map(|found| found.at_or_below.unwrap_or(found.nearest));
        let is_faster = found.is_some_and(|found| found.at_or_below.is_none());
        let turn = step.unwrap_or(wanted);
        let feed = feed_rate(turn, cut.step);
        a.line("turn-feed", turn).says(if lead.is_some() {
            "The thread's pitch; with several starts times the starts."
        } else if is_faster {
            "The slowest power feed step, though faster than the feed aimed at, per turn."
        } else if step.is_some() {
            "The power feed's step at or below the feed aimed at, per turn."
        } else {
            "By hand, per turn."
        });
        a.line("feed", feed)
            .says("Per minute, at that spindle step.");
        let line = a.line("feed-aim", wanted).says(if own.is_some() {
            "As given, per turn."
        } else {
            match cut.kind {
                "part" => "About this, TM 1-420; by hand at first: it lets you feel a dig-in.",
                "ream" => "Per flute 0.002 to 0.003 in, a reamer maker's guide.",
                "sink" => "As a drill of this size, per turn (a university's guide).",
                "counterbore" => "80 % of a drill of this size, per turn, up to the drill's own.",
                _ => "Low end of the band, per turn; the sources give it for the harder metals.",
            }
        });
        if let Some((low, high)) = band {
            line.band(low, high, "lightest and heaviest figure of the sources");
        }
        let point = inp
            .opt::<Angle>("point")
            .and_then(|angle| drill_point(d, angle).ok());
        let hole: Option<Length> = inp.opt("hole");
        if let (Some(point), Some(hole)) = (point, hole) {
            a.line("approach", point)
                .says("Length of the drill's point: D/2 \u{d7} tan(90\u{b0} \u{2212} point/2).");
            if let Ok(time) = travel_time(hole + point, feed) {
                a.line("time", time)
                    .places(0, 0)
                    .says("Depth and point at that feed; withdrawing to clear chips is extra.");
                a.work(|w| {
                    w.step(
                        "Time for the hole",
                        &[
                            "t = (depth + point) / F".into(),
                            format!(
                                "t = ({} + {}) / {} = {}",
                                inp.num(hole),
                                inp.num(point),
                                inp.num(feed),
                                inp.show_to(time, 0, 0)
                            ),
                        ],
                        &GROOVER,
                    );
                });
            }
        }
        if cut.kind == "drill" {
            a.line("removal", drilling_removal(d, feed))
                .says("Area of the hole \u{d7} feed.");
        }
        a.work(|w| {
            w.step(
                "Feed per minute",
                &[
                    "F = f n".into(),
                    format!(
                        "F = {} \u{d7} {} = {}",
                        inp.num(turn),
                        inp.num(cut.step),
                        inp.show_to(feed, 2, 1)
                    ),
                ],
                &TOOTH_FEED,
            );
        });
    }
    if cut.kind == "ream" {
        // TM 1-420, par. 37: 0.005 to 0.010 in on the diameter; the reamer maker gives it by size
        let (least, most) = (Length::from_thou(5.0), Length::from_thou(10.0));
        let maker = ream_stock(d);
        let (low, high) = maker.map_or((least, most), |(low, high)| {
            (low.min(least), high.max(most))
        });
        let take = maker.map_or(most, |(low, high)| most.max(low).min(high));
        let of = if maker.is_some() {
            "TM 1-420 (5 to 10 thou, any size) and a reamer maker's guide for this size"
        } else {
            "the band of TM 1-420"
        };
        a.line("stock", take)
            .says("On the diameter: the most of TM 1-420, or the least of the reamer maker's guide if that is more; less rubs, more tears.")
            .band(low, high, of);
        if d > high * 2.0 {
            a.line("before", d - take)
                .says("Diameter less the stock.")
                .band(d - high, d - low, of);
        }
        a.source(&REAM_STOCK);
        if maker.is_some() || band.is_some() {
            a.source(&REAM_GUIDE);
        }
        a.note("reamed-large", "If the reamed hole comes out large", "Look in this order: run-out of spindle or chuck, drilled hole off line, built-up edge, too little stock, too fast. Let the reamer float, never turn it backward.");
    }
    if cut.kind == "tap" {
        a.stop("power-tap", "Before you tap by power", "Use a clutch or a floating holder and know that the spindle reverses. If the tap slows, squeals or springs, stop and think: wrong hole, full flutes or a dull tap. A broken tap is hard to get out.");
    } else if cut.kind == "thread" {
        a.stop("half-nuts", "Before you engage the half nuts", "The feed is the lead of the thread. Know where you will let go, and go slower if you cannot let go in time.");
    } else if own.is_none() && band.is_none() {
        a.note("feed-source", "About the feed", if cut.kind == "ream" {
            "Give the flutes of the reamer, or your own feed, to get the feed per minute."
        } else {
            "We have no verified source for the feed of this cut. Give your own to get the feed per minute."
        });
    }
    if let Some(band) = &drill_band {
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
        a.source(&NAVY_FEEDS);
        a.source(&HANDBOOK_FEEDS);
    }
    match cut.kind {
        "sink" if drill_band.is_some() => {
            a.source(&SINK_FEED);
        }
        "turn" | "turn-finish" | "bore" => {
            for row in &lathe_rows {
                a.source(match row.source {
                    LatheFeedSource::Handout => &LATHE_FEEDS,
                    LatheFeedSource::Selection => &SELECTED_FEEDS,
                    LatheFeedSource::Army => &ARMY_FEEDS,
                    LatheFeedSource::Plastics => &PLASTIC_FEEDS,
                });
            }
        }
        _ => {}
    }
    a.draw(|| {
        if cut.is_one_of(LATHE_CUTS) {
            picture::turned_bar(d, inp.show(d))
        } else {
            let hole: Option<Length> = inp.opt("hole");
            let point = inp
                .opt::<Angle>("point")
                .and_then(|angle| drill_point(d, angle).ok())
                .unwrap_or(Length::ZERO);
            picture::drilled_hole(
                d,
                hole,
                point,
                [
                    inp.show(d),
                    hole.map_or_else(String::new, |hole| inp.show(hole)),
                ],
            )
        }
    });
}
