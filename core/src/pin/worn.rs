//! Which size cleans up a worn taper-pin hole, and how far must the reamer go to do it?

use super::fault::positive;
use super::{PinFault, StandardPin, TaperSeries};
use crate::quantity::Length;

/// What is known of the hole.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct WornHole {
    /// Largest diameter at the large face, over wear, burr and ovality.
    pub at_large_face: Length,
    /// Largest diameter at the small face, if it was measured.
    pub at_small_face: Option<Length>,
    /// Width of the hub, face to face.
    pub hub: Length,
    /// Least cut on the diameter that is wanted everywhere, so that the hole comes clean.
    pub least_cut: Length,
}

/// One size that cleans the hole up, reamed until its large end is flush.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct CleanUp {
    /// The pin.
    pub pin: StandardPin,
    /// Taken off at the large face, on the diameter.
    pub off_large_face: Length,
    /// Taken off at the small face, on the diameter, if that was measured.
    pub off_small_face: Option<Length>,
    /// How far the reamer travels from first touch to full size.
    pub travel: Length,
    /// How far the pin would stand proud were the reaming stopped as soon as the hole is clean.
    pub proud_when_clean: Length,
}

/// The plan for a worn hole.
#[derive(Clone, PartialEq, Debug)]
pub struct CleanUpPlan {
    /// The least diameter at the large face that leaves no old surface.
    pub clean_at: Length,
    /// The least travel of the reamer, from first touch to clean.
    pub least_travel: Length,
    /// Sizes that clean up, least metal first.
    pub sizes: Vec<CleanUp>,
}

/// The sizes that clean a worn hole up, smallest first.
///
/// The new hole must pass outside the old one by the least cut at both faces: D ≥ max(Dw, dw + L·T) + c. The reamer first
/// touches where D = min(Dw, dw + L·T) and travels (D − that)/T. Wear is taken as straight between the faces. The next size
/// up is the Army's way too (TM 9-254, par. 3-2).
///
/// # Errors
/// A face or a hub of nothing, a cut below zero, or a hole larger than the series' largest pin.
pub fn clean_up(hole: &WornHole, series: TaperSeries) -> Result<CleanUpPlan, PinFault> {
    positive(hole.at_large_face, "hole at the large face")?;
    positive(hole.hub, "width of the hub")?;
    if hole.least_cut.mm() < 0.0 {
        return Err(PinFault::NotPositive("least cut"));
    }
    let t = series.taper().ratio();
    let drop = hole.hub * t;
    let seen_from_small = match hole.at_small_face {
        Some(small) => positive(small, "hole at the small face")? + drop,
        None => hole.at_large_face,
    };
    let clean_at = hole.at_large_face.max(seen_from_small) + hole.least_cut;
    let touch = hole.at_large_face.min(seen_from_small);
    let pins = StandardPin::all(series);
    let largest = pins
        .last()
        .map_or(Length::ZERO, |pin| pin.large_end(hole.hub));
    let sizes: Vec<CleanUp> = pins
        .into_iter()
        .filter(|pin| {
            pin.large_end(hole.hub).mm() >= clean_at.mm() - 1e-9 && pin.small_end(hole.hub).is_ok()
        })
        .map(|pin| {
            let face = pin.large_end(hole.hub);
            CleanUp {
                pin,
                off_large_face: face - hole.at_large_face,
                off_small_face: hole.at_small_face.map(|small| face - drop - small),
                travel: (face - touch) / t,
                proud_when_clean: (face - clean_at) / t,
            }
        })
        .collect();
    if sizes.is_empty() {
        return Err(PinFault::BeyondSeries { largest });
    }
    Ok(CleanUpPlan {
        clean_at,
        least_travel: (clean_at - touch) / t,
        sizes,
    })
}

/// How far below the face a pin of this size would lie in a hole of that diameter at the face: (D − pin)/T; below zero
/// it stands proud.
pub fn sunk(pin: StandardPin, face: Length, hub: Length) -> Length {
    (face - pin.large_end(hub)) / pin.series().taper().ratio()
}
