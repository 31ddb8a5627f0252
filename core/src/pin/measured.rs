//! Which taper pin came out of the machine, by its measured ends and length?

use super::fault::positive;
use super::{PinFault, StandardPin, TaperSeries, mismatch};
use crate::quantity::{Length, Share, Taper};

/// How far a measured taper may lie from that of a series: 0.0031 in over 1 in, more than wear and a micrometer make
/// (common practice).
pub const TAPER_ROOM: Share = Share::from_fraction(0.15);

/// One standard pin held against the measured one.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Match {
    /// The pin.
    pub pin: StandardPin,
    /// Measured large end less the standard's at this length.
    pub large_off: Length,
    /// Measured small end less the standard's at this length.
    pub small_off: Length,
}

impl Match {
    /// The worse of the two differences.
    pub fn worst(&self) -> Length {
        self.large_off.abs().max(self.small_off.abs())
    }
}

/// What the measured ends say.
#[derive(Clone, PartialEq, Debug)]
pub struct Measured {
    /// The taper that was measured, on the diameter.
    pub taper: Taper,
    /// The series whose taper is nearer.
    pub nearer: TaperSeries,
    /// What tells 1:48 from 1:50 over this length, on the diameter: a smaller error of measurement is needed.
    pub telling: Length,
    /// Standard pins of both series, best first.
    pub matches: Vec<Match>,
}

/// Taper, series and number from the two ends and the length between the places that were measured.
///
/// The taper is (D − d)/L. Measure on the taper, clear of the crowned ends. A taper farther than [`TAPER_ROOM`] from both
/// series is refused: no taper pin has it.
///
/// # Errors
/// An end or a length of nothing, ends that do not taper, or a taper of no series.
pub fn identify(large: Length, small: Length, length: Length) -> Result<Measured, PinFault> {
    positive(small, "small end")?;
    positive(length, "length")?;
    if large.mm() <= small.mm() {
        return Err(PinFault::NoTaper);
    }
    let taper = Taper::from_ratio((large - small) / length);
    let off = |series: TaperSeries| (taper.ratio() - series.taper().ratio()).abs();
    let far =
        |series: TaperSeries| off(series) > series.taper().ratio() * (TAPER_ROOM.fraction() + 1e-9);
    if far(TaperSeries::Inch) && far(TaperSeries::Metric) {
        return Err(PinFault::NotATaperPin { taper });
    }
    let nearer = if off(TaperSeries::Inch) <= off(TaperSeries::Metric) {
        TaperSeries::Inch
    } else {
        TaperSeries::Metric
    };
    let mut matches: Vec<Match> = [TaperSeries::Inch, TaperSeries::Metric]
        .into_iter()
        .flat_map(StandardPin::all)
        .filter_map(|pin| {
            let small_off = small - pin.small_end(length).ok()?;
            Some(Match {
                pin,
                large_off: large - pin.large_end(length),
                small_off,
            })
        })
        .collect();
    crate::order::sort_by(&mut matches, |a, b| {
        a.worst().mm().total_cmp(&b.worst().mm())
    });
    Ok(Measured {
        taper,
        nearer,
        telling: mismatch(length),
        matches,
    })
}
