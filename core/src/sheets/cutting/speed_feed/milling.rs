//! Which table feed serves a milling cut, and what chip does it leave?

use super::Cut;
use super::fields::*;
use crate::cutting::*;
use crate::machine::around;
use crate::quantity::{Count, FeedPerRev, FeedPerTooth, FeedRate, Length, RemovalRate, Time};
use crate::sheet::*;
use crate::standards::cutting::cutting_speeds::CutterMaterial;
use crate::standards::cutting::feeds::{
    MillingCutter, ToothFeedBand, carbide_tooth_feed_band, tooth_feed_band,
};

/// How the feed was found among those of the machine.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Set {
    /// At or below the exact one.
    AtOrBelow,
    /// The slowest, though faster than the exact one.
    Slowest,
    /// By hand: even the slowest is too heavy.
    ByHand,
}

/// How the cut lies against the cutter.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Lies {
    /// Under a cutter on an arbor: the radial depth is the depth of cut.
    Arbor,
    /// Centered on the cutter.
    Centered,
    /// To one side of it.
    Side,
}

/// A milling cut, figured.
pub(super) struct Milled {
    pub teeth: Count,
    pub radial: Length,
    pub axial: Option<Length>,
    pub lies: Lies,
    pub approach: Length,
    /// What the sources give a tooth.
    pub band: Option<ToothFeedBand>,
    /// The band is carbide's own.
    pub carbide: bool,
    /// The feed per tooth was entered.
    pub own: bool,
    /// What the depth leaves of the feed.
    pub depth: f64,
    /// By how much the feed may rise for the thinner chip, by geometry.
    pub thinning: f64,
    /// By how much it was raised; one where it was left.
    pub raised: f64,
    /// The feed per tooth aimed at.
    pub wanted: FeedPerTooth,
    pub exact: FeedRate,
    /// The table feed follows the spindle.
    pub follows: bool,
    pub feeds: Vec<FeedRate>,
    pub set: Set,
    pub feed: FeedRate,
    pub chip: FeedPerTooth,
    pub thickest: Length,
    pub mean: Option<Length>,
    /// Below this an edge rubs.
    pub rub: Length,
    pub travel: Option<Length>,
    pub time: Option<Time>,
    pub removal: Option<RemovalRate>,
}

impl Milled {
    /// The chip that is compared with the sources: what the thin cut took away is not given back twice.
    pub(super) fn compared(&self) -> FeedPerTooth {
        self.chip / self.raised
    }
    /// The heaviest feed per tooth in this cut.
    pub(super) fn heaviest(&self) -> Option<FeedPerTooth> {
        self.band.map(|band| band.high * self.depth)
    }
    /// Below this a chip counts as rubbing: the lightest feed that a source gives wins over the rule.
    pub(super) fn least_chip(&self) -> Length {
        self.band.map_or(self.rub, |band| {
            self.rub.min(Length::from_mm(band.low.mm_per_tooth()))
        })
    }
}

fn band_of(cut: &Cut) -> (Option<ToothFeedBand>, bool) {
    let cutter = cut.milling_cutter();
    let carbide = cutter
        .filter(|_| cut.tool == CutterMaterial::Carbide)
        .and_then(|cutter| carbide_tooth_feed_band(cutter, cut.material, cut.diameter));
    let band = carbide
        .or_else(|| cutter.and_then(|cutter| tooth_feed_band(cutter, cut.material, cut.diameter)))
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
    (band, carbide.is_some())
}

fn approach(cut: &Cut, radial: Length, lies: Lies) -> Result<Length, CutFault> {
    match lies {
        Lies::Arbor => slab_approach(radial, cut.diameter),
        Lies::Centered => centred_face_approach(radial, cut.diameter),
        Lies::Side => offset_face_approach(radial, cut.diameter),
    }
}

/// What the axial depth leaves of the feed of an end mill; withheld where it is too deep for one pass.
fn depth(inp: &Inputs, cut: &Cut, radial: Length, axial: Option<Length>) -> Result<f64, Stop> {
    let Some(axial) = axial.filter(|_| cut.kind == "end") else {
        return Ok(1.0);
    };
    let most = deepest_pass(radial, cut.diameter);
    depth_share(axial, radial, cut.diameter).ok_or_else(|| {
        Stop::withheld(
            "axial",
            format!("{} deep at this width", inp.show(most)),
            format!(
                "{} deep is too much for one pass of a {} end mill: it bends and breaks",
                inp.show(axial),
                inp.show(cut.diameter)
            ),
            format!(
                "take several passes, in a full slot of half a diameter each ({})",
                inp.show(cut.diameter * 0.5)
            ),
        )
    })
}

/// A fault of the radial depth.
fn fault_of(inp: &Inputs, field: &'static str, fault: CutFault) -> Stop {
    match fault {
        CutFault::TooLarge { limit_mm, why, .. } => inp.out_of_range(
            field,
            format!("more than {}: {why}", inp.show(Length::from_mm(limit_mm))),
            "take several passes or a larger cutter",
        ),
        other => inp.out_of_range(field, other.to_string(), "check the sizes"),
    }
}

/// The milling cut; nothing where teeth or radial depth are not given yet.
pub(super) fn figures(inp: &Inputs, cut: &Cut) -> Result<Option<Milled>, Stop> {
    let lies = if cut.is_one_of(ARBOR) {
        Lies::Arbor
    } else if inp.choice("lies") == "centred" {
        Lies::Centered
    } else {
        Lies::Side
    };
    let radial_field = if lies == Lies::Arbor {
        "depth"
    } else {
        "width"
    };
    let (Some(teeth), Some(radial)) = (inp.opt::<Count>("teeth"), inp.opt::<Length>(radial_field))
    else {
        return Ok(None);
    };
    let faulty = |fault: CutFault| fault_of(inp, radial_field, fault);
    let approach = approach(cut, radial, lies).map_err(faulty)?;
    let (band, carbide) = band_of(cut);
    let own: Option<FeedPerTooth> = inp.opt("chip");
    let axial: Option<Length> = inp.opt("axial");
    let depth = depth(inp, cut, radial, axial)?;
    let Some(start) = own.or(band.map(|band| band.start * depth)) else {
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
    // a centered cut passes through the thickest point of the tooth's path
    let thinning = if lies == Lies::Centered {
        1.0
    } else {
        thinning_factor(radial, cut.diameter).map_err(faulty)?
    };
    let raised = if inp.choice("thinning") == "raise" && own.is_none() {
        thinning.min(THINNING_MOST)
    } else {
        1.0
    };
    let wanted = start * raised;
    let exact = table_feed(wanted, teeth, cut.step);
    let heaviest = band.map(|band| (band.high * depth).max(start) * raised);
    let (feeds, follows, set, feed) = set_feed(inp, cut, teeth, exact, heaviest)?;
    let chip = feed_per_tooth(feed, teeth, cut.step).map_err(faulty)?;
    let travel = inp
        .opt::<Length>("length")
        .map(|length| length + approach + inp.opt("overrun").unwrap_or(Length::ZERO));
    Ok(Some(Milled {
        teeth,
        radial,
        axial,
        lies,
        approach,
        band,
        carbide,
        own: own.is_some(),
        depth,
        thinning,
        raised,
        wanted,
        exact,
        follows,
        feeds,
        set,
        feed,
        chip,
        thickest: Length::from_mm(chip.mm_per_tooth() / thinning),
        mean: if lies == Lies::Centered {
            None
        } else {
            chip_thickness(ChipMeasure::Mean, chip, radial, cut.diameter).ok()
        },
        rub: rubbing_limit(cut.tool == CutterMaterial::Carbide),
        travel,
        time: travel.and_then(|travel| travel_time(travel, feed).ok()),
        removal: axial.map(|axial| milling_removal(axial, radial, feed)),
    }))
}

/// The feeds of the machine, whether they follow the spindle, and the one to set.
fn set_feed(
    inp: &Inputs,
    cut: &Cut,
    teeth: Count,
    exact: FeedRate,
    heaviest: Option<FeedPerTooth>,
) -> Result<(Vec<FeedRate>, bool, Set, FeedRate), Stop> {
    let follows = inp.choice("feed-follows") == "spindle";
    let (list, feeds): (_, Vec<FeedRate>) = if follows {
        let turns: Vec<FeedPerRev> = inp.list("feeds-turn");
        let at_step = |turn: &FeedPerRev| feed_rate(*turn, cut.step);
        ("feeds-turn", turns.iter().map(at_step).collect())
    } else {
        ("feeds", inp.list("feeds"))
    };
    let found = around(&feeds, exact).ok_or(Stop::Missing(list))?;
    let (set, feed) = if let Some(feed) = found.at_or_below {
        (Set::AtOrBelow, feed)
    } else {
        let chip = feed_per_tooth(found.nearest, teeth, cut.step).ok();
        match (chip, heaviest) {
            (Some(chip), Some(heaviest)) if chip > heaviest => (Set::ByHand, exact),
            _ => (Set::Slowest, found.nearest),
        }
    };
    Ok((feeds, follows, set, feed))
}

/// The cutter whose table of feeds is asked, for the sources.
pub(super) fn is_end_mill(cut: &Cut) -> bool {
    cut.milling_cutter() == Some(MillingCutter::End)
}
