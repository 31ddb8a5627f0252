//! What do the sources give as feed per rev for a drill, a reamer or a lathe tool?

use super::Cut;
use crate::cutting::sources::*;
use crate::quantity::{Count, FeedPerRev, Length};
use crate::sheet::*;
use crate::standards::cutting::feeds::{
    COUNTERBORE_SHARE, LATHE, LatheFeedRow, LatheFeedSource, PART_FEED, REAM_FEED_PER_FLUTE,
    TurnFeedBand, drill_feed_band,
};

/// The band of feeds per rev, and what was laid over it.
pub(super) struct FeedBand {
    /// Lightest, where to start, and heaviest.
    pub band: Option<(FeedPerRev, FeedPerRev)>,
    /// The rows of the drill table behind it.
    pub drill: Option<TurnFeedBand>,
    lathe: Vec<&'static LatheFeedRow>,
    /// What thin work leaves of a roughing feed.
    pub thin: f64,
    /// What a deep hole leaves.
    pub deep: f64,
}

/// The lathe rows for this cut. The Army's roughing feeds for stainless steel go with a speed of 20 ft/min, which is not the start here.
fn lathe_rows(cut: &Cut) -> Vec<&'static LatheFeedRow> {
    LATHE
        .iter()
        .filter(|row| row.materials.contains(&cut.material))
        .filter(|row| cut.kind != "turn" || row.source != LatheFeedSource::Army)
        .collect()
}

pub(super) fn feed_band(inp: &Inputs, cut: &Cut, deep: f64) -> FeedBand {
    let drill = cut
        .is_one_of(&["drill", "sink", "counterbore"])
        .then(|| drill_feed_band(cut.diameter))
        .flatten();
    let lathe = lathe_rows(cut);
    let widest = |of: fn(&LatheFeedRow) -> (f64, f64)| {
        lathe
            .iter()
            .map(|row| of(row))
            .reduce(|a, b| (a.0.min(b.0), a.1.max(b.1)))
    };
    let thin = if cut.kind == "turn" {
        (cut.diameter / Length::from_inches(1.0)).min(1.0)
    } else {
        1.0
    };
    let turned = match cut.kind {
        "turn" => widest(|row| row.rough),
        "turn-finish" | "bore" => widest(|row| row.finish),
        "part" => Some((PART_FEED, PART_FEED)),
        "ream" => inp.opt::<Count>("flutes").map(|flutes| {
            let (low, high) = REAM_FEED_PER_FLUTE;
            (low * flutes.get(), high * flutes.get())
        }),
        _ => None,
    }
    .map(|(low, high)| {
        (
            FeedPerRev::from_in_per_rev(low * thin),
            FeedPerRev::from_in_per_rev(high * thin),
        )
    });
    let band = drill
        .as_ref()
        .map(|band| match cut.kind {
            "counterbore" => (band.low * COUNTERBORE_SHARE.0, band.high),
            "drill" => (band.low * deep, band.high),
            _ => (band.low, band.high),
        })
        .or(turned);
    FeedBand {
        band,
        drill,
        lathe,
        thin,
        deep: if cut.kind == "drill" { deep } else { 1.0 },
    }
}

impl FeedBand {
    /// Why the feed is what it is, in words.
    pub(super) fn says(&self, cut: &Cut) -> &'static str {
        match cut.kind {
            "part" => "About this, TM 1-420; by hand at first: it lets you feel a dig-in.",
            "ream" => "Per flute 0.002 to 0.003 in, a reamer maker's guide.",
            "sink" => "As a drill of this size, per rev (a university's guide).",
            "counterbore" => "80% of a drill of this size, per rev, up to the drill's own.",
            "drill" if self.deep < 1.0 => "Low end of the band, less for the deep hole, per rev.",
            "turn" if self.thin < 1.0 => {
                "Low end of the band, in proportion to the diameter below 1 in: thin work bends."
            }
            _ => "Low end of the band, per rev; the sources give it for the harder metals.",
        }
    }

    pub(super) fn sources(&self, a: &mut Answer, cut: &Cut) {
        if self.drill.is_some() {
            a.source(&NAVY_FEEDS);
            a.source(&HANDBOOK_FEEDS);
        }
        match cut.kind {
            "sink" if self.drill.is_some() => {
                a.source(&SINK_FEED);
            }
            "turn" | "turn-finish" | "bore" => {
                for row in &self.lathe {
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
        if self.thin < 1.0 && self.band.is_some() {
            a.source(&THIN_WORK);
        }
    }
}
