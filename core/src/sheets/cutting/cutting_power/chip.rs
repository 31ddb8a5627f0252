//! What does the cut take? Metal removed, feed and chip thickness, as the power formulas need them.

use crate::cutting::*;
use crate::quantity::{
    Angle, Count, FeedPerRev, FeedPerTooth, FeedRate, Length, RemovalRate, RotationalSpeed,
    SurfaceSpeed, System,
};
use crate::sheet::*;

/// The cut as the power formulas need it.
pub(super) struct Chip {
    /// Metal removed.
    pub removal: RemovalRate,
    /// Feed that the feed factor is entered with: per tooth in milling, per rev else.
    pub feed: FeedPerRev,
    /// In milling: the same feed by its own name.
    pub per_tooth: Option<FeedPerTooth>,
    /// Chip thickness that kc1.1 is entered with.
    pub thickness: Length,
    /// How it comes about.
    pub thickness_says: &'static str,
    /// In turning: depth, entering angle and surface speed, for the force itself.
    pub turned: Option<(Length, Angle, SurfaceSpeed)>,
}

impl Chip {
    /// The feed with its unit, per tooth or per rev.
    pub(super) fn feed_text(&self, inp: &Inputs) -> String {
        match self.per_tooth {
            Some(feed) => inp.show_to(feed, 5, 4),
            None => inp.show_to(self.feed, 4, 3),
        }
    }
}

pub(super) fn chip(inp: &Inputs, diameter: Length, rpm: RotationalSpeed) -> Result<Chip, Stop> {
    match inp.choice("cut") {
        "mill" => {
            let feed: FeedRate = inp.get("feed")?;
            let (depth, engaged): (Length, Length) = (inp.get("axial")?, inp.get("engaged")?);
            milled(feed, inp.get("teeth")?, rpm, (depth, engaged), diameter).map_err(|fault| {
                match fault {
                    CutFault::TooLarge { .. } => inp.out_of_range(
                        "engaged",
                        format!("more than the cutter's own {}", inp.show(diameter)),
                        "take several passes or a larger cutter",
                    ),
                    other => inp.out_of_range("engaged", other.to_string(), "check the sizes"),
                }
            })
        }
        "turn" => {
            let feed: FeedPerRev = inp.get("turn-feed")?;
            let (depth, entering): (Length, Angle) = (inp.get("depth")?, inp.get("entering")?);
            if depth * 2.0 >= diameter {
                return Err(inp.out_of_range(
                    "depth",
                    format!(
                        "half of {} or more: nothing would be left",
                        inp.show(diameter)
                    ),
                    "give the depth on the radius, less than half the diameter",
                ));
            }
            let speed = surface_speed(rpm, diameter);
            Ok(Chip {
                removal: turning_removal(speed, feed, depth),
                feed,
                per_tooth: None,
                thickness: Length::from_mm(feed.mm_per_rev() * libm::sin(entering.radians())),
                thickness_says: "f sin \u{3ba}",
                turned: Some((depth, entering, speed)),
            })
        }
        _ => {
            let feed: FeedPerRev = inp.get("turn-feed")?;
            let point: Angle = inp.get("point")?;
            Ok(Chip {
                removal: drilling_removal(diameter, feed_rate(feed, rpm)),
                feed,
                per_tooth: None,
                thickness: Length::from_mm(
                    feed.mm_per_rev() / 2.0 * libm::sin(point.radians() / 2.0),
                ),
                thickness_says: "f/2 \u{d7} sin(point/2), two lips",
                turned: None,
            })
        }
    }
}

/// The chip of a milling cutter that takes so much along and across the spindle.
pub(super) fn milled(
    feed: FeedRate,
    teeth: Count,
    rpm: RotationalSpeed,
    (axial, engaged): (Length, Length),
    diameter: Length,
) -> Result<Chip, CutFault> {
    let fz = feed_per_tooth(feed, teeth, rpm)?;
    Ok(Chip {
        removal: milling_removal(axial, engaged, feed),
        feed: FeedPerRev::from_mm_per_rev(fz.mm_per_tooth()),
        per_tooth: Some(fz),
        thickness: chip_thickness(ChipMeasure::ArcMean, fz, engaged, diameter)?,
        thickness_says: "mean chip 2 fz ae / (D \u{3c6}), \u{3c6} the arc of cut in radians",
        turned: None,
    })
}

/// How the metal removed comes about, with this entry's numbers.
pub(super) fn removed(
    inp: &Inputs,
    diameter: Length,
    rpm: RotationalSpeed,
    chip: &Chip,
    alone: bool,
) -> Vec<String> {
    let (d, n) = (inp.num(diameter), inp.num(rpm));
    let sum = inp.show_to(chip.removal, 3, 1);
    // the metric unit is 1,000 mm³ large
    let per = match inp.system() {
        System::Inch => "",
        System::Metric => " / 1000",
    };
    let length = |field: &str| inp.num(inp.opt::<Length>(field).unwrap_or(Length::ZERO));
    let feed = inp.num_to(chip.feed, 5, 4);
    match inp.choice("cut") {
        "mill" if alone => vec![
            "Q = axial depth \u{d7} radial depth \u{d7} feed".into(),
            format!(
                "Q = {} \u{d7} {} \u{d7} {}{per} = {sum}",
                length("axial"),
                length("engaged"),
                inp.num_to(
                    inp.opt("feed").unwrap_or(FeedRate::from_mm_per_min(0.0)),
                    3,
                    1
                )
            ),
        ],
        "mill" => vec![format!("Q = {sum}, all cutters")],
        "turn" => vec![
            "Q = \u{3c0} D n f d, at the outside diameter".into(),
            format!(
                "Q = \u{3c0} \u{d7} {d} \u{d7} {n} \u{d7} {feed} \u{d7} {}{per} = {sum}",
                length("depth")
            ),
        ],
        _ => vec![
            "Q = \u{3c0} D\u{b2} / 4 \u{d7} f n".into(),
            format!("Q = \u{3c0} \u{d7} {d}\u{b2} / 4 \u{d7} {feed} \u{d7} {n}{per} = {sum}"),
        ],
    }
}
