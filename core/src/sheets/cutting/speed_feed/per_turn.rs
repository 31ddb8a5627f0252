//! Which feed per rev serves a drill or a lathe tool?

use super::Cut;
use super::fields::*;
use super::milling::Set;
use super::turn_feed::{FeedBand, feed_band};
use crate::cutting::sources::*;
use crate::cutting::*;
use crate::machine::around;
use crate::quantity::{Angle, FeedPerRev, FeedRate, Length, Pitch, RemovalRate, Time};
use crate::sheet::*;
use crate::standards::cutting::feeds::ream_stock;

/// Where a feed per rev is from.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum From {
    /// The sources.
    Sources,
    /// It was entered.
    Entered,
    /// It is the pitch of the thread.
    Pitch,
}

/// A cut that is fed so much a turn, figured.
pub(super) struct Fed {
    /// What the sources give.
    pub band: FeedBand,
    /// The feed aimed at.
    pub wanted: FeedPerRev,
    /// Where it is from.
    pub from: From,
    /// How it was found among the power feeds, where there are any.
    pub set: Set,
    /// The feed set.
    pub turn: FeedPerRev,
    pub feed: FeedRate,
    /// Length of the drill's point.
    pub point: Option<Length>,
    pub time: Option<Time>,
    pub removal: Option<RemovalRate>,
}

/// The feed; the band alone where no source gives one and none was entered.
pub(super) fn figures(inp: &Inputs, cut: &Cut, deep: f64) -> Result<Fed, FeedBand> {
    let band = feed_band(inp, cut, deep);
    let lead = inp
        .opt::<Pitch>("pitch")
        .map(|pitch| FeedPerRev::from_mm_per_rev(pitch.mm()));
    let own: Option<FeedPerRev> = inp.opt("turn-feed").or(lead);
    let Some(wanted) = own.or(band.band.map(|band| band.0)) else {
        return Err(band);
    };
    let typed: Vec<FeedPerRev> = inp.list("turn-feeds");
    let steps = if typed.is_empty() {
        inp.list("lathe-feeds")
    } else {
        typed
    };
    let found = around(&steps, wanted);
    let step = found.map(|found| found.at_or_below.unwrap_or(found.nearest));
    let turn = step.unwrap_or(wanted);
    let feed = feed_rate(turn, cut.step);
    let point = inp
        .opt::<Angle>("point")
        .and_then(|angle| drill_point(cut.diameter, angle).ok());
    let hole: Option<Length> = inp.opt("hole");
    let travel = match (point, hole) {
        (Some(point), Some(hole)) => Some(hole + point),
        _ => inp.opt::<Length>("run").filter(|_| cut.kind == "thread"),
    };
    let removal = match cut.kind {
        "drill" => Some(drilling_removal(cut.diameter, feed)),
        _ => inp
            .opt::<Length>("cut-depth")
            .map(|depth| turning_removal(surface_speed(cut.step, cut.diameter), turn, depth)),
    };
    Ok(Fed {
        band,
        wanted,
        from: match (lead, own) {
            (Some(_), _) => From::Pitch,
            (None, Some(_)) => From::Entered,
            (None, None) => From::Sources,
        },
        set: match found {
            None => Set::ByHand,
            Some(found) if found.at_or_below.is_some() => Set::AtOrBelow,
            Some(_) => Set::Slowest,
        },
        turn,
        feed,
        point: point.filter(|_| hole.is_some()),
        time: travel.and_then(|travel| travel_time(travel, feed).ok()),
        removal,
    })
}

pub(super) fn tell(a: &mut Answer, cut: &Cut, fed: &Fed) {
    a.line("turn-feed", fed.turn)
        .says(match (fed.from, fed.set) {
            (From::Pitch, _) => "The thread's pitch; with several starts times the starts.",
            (_, Set::Slowest) => {
                "The slowest power feed, though faster than the feed aimed at, per rev."
            }
            (_, Set::AtOrBelow) => "The power feed at or below the feed aimed at, per rev.",
            (_, Set::ByHand) => "By hand, per rev.",
        });
    a.line("feed", fed.feed)
        .says("Per minute, at that spindle speed.");
    let line = a.line("feed-aim", fed.wanted).says(match fed.from {
        From::Sources => fed.band.says(cut),
        From::Entered | From::Pitch => "As given, per rev.",
    });
    if let Some((low, high)) = fed.band.band {
        line.band(low, high, "lightest and heaviest figure of the sources");
    }
    if let Some(point) = fed.point {
        a.line("approach", point)
            .says("Length of the drill's point: D/2 \u{d7} tan(90\u{b0} \u{2212} point/2).");
    }
    if let Some(time) = fed.time {
        let line = a.line("time", time).places(0, 0);
        if cut.kind == "thread" {
            line.label("Time to the shoulder").places(1, 1).says(
                "Length of the thread at that feed: the time until the half nuts have to be opened.",
            );
        } else {
            line.says("Depth and point at that feed; withdrawing to clear chips is extra.");
        }
    }
    if let Some(removal) = fed.removal {
        a.line("removal", removal)
            .places(3, 2)
            .says(if cut.kind == "drill" {
                "Area of the hole \u{d7} feed."
            } else {
                "Cutting speed at the diameter entered \u{d7} feed per rev \u{d7} depth."
            });
    }
}

/// Stock for a reamer, and the hole before it.
pub(super) fn reamer(a: &mut Answer, cut: &Cut, fed: bool) {
    // TM 1-420, par. 37: 0.005 to 0.010 in on the diameter; the reamer maker gives it by size
    let (least, most) = (Length::from_thou(5.0), Length::from_thou(10.0));
    let maker = ream_stock(cut.diameter);
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
    if cut.diameter > high * 2.0 {
        a.line("before", cut.diameter - take)
            .says("Diameter minus the stock.")
            .band(cut.diameter - high, cut.diameter - low, of);
    }
    a.source(&REAM_STOCK);
    if maker.is_some() || fed {
        a.source(&REAM_GUIDE);
    }
}

/// Is it a lathe cut?
pub(super) fn is_turned(cut: &Cut) -> bool {
    cut.is_one_of(LATHE_CUTS)
}
