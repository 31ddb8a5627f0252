//! One standard taper pin of either series: its name, its ends at a length, its usual lengths.

use super::{PinFault, TaperSeries, large_end, small_end};
use crate::quantity::Length;
use crate::standards::pins::taper_pins::{INCH, InchTaperPin, METRIC, MetricTaperPin};

/// A row of one of the two standards.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum StandardPin {
    /// ASME B18.8.2.
    Inch(&'static InchTaperPin),
    /// ISO 2339.
    Metric(&'static MetricTaperPin),
}

impl StandardPin {
    /// All pins of a series, small to large.
    pub fn all(series: TaperSeries) -> Vec<Self> {
        match series {
            TaperSeries::Inch => INCH.iter().map(Self::Inch).collect(),
            TaperSeries::Metric => METRIC.iter().map(Self::Metric).collect(),
        }
    }
    /// Its series.
    pub const fn series(self) -> TaperSeries {
        match self {
            Self::Inch(_) => TaperSeries::Inch,
            Self::Metric(_) => TaperSeries::Metric,
        }
    }
    /// Its name for a line of text: `No. 2/0`, `6 mm`.
    pub fn name(self) -> String {
        match self {
            Self::Inch(row) => format!("No. {}", row.number),
            Self::Metric(row) => format!("{} mm", row.size),
        }
    }
    /// What is typed for it: `2/0`, `6`.
    pub const fn call(self) -> &'static str {
        match self {
            Self::Inch(row) => row.number,
            Self::Metric(row) => row.size,
        }
    }
    /// The named end: large for inch, small for metric.
    pub const fn named_end(self) -> Length {
        match self {
            Self::Inch(row) => row.large_end(),
            Self::Metric(row) => row.small_end(),
        }
    }
    /// The large end at a length (an inch pin's does not depend on it).
    pub fn large_end(self, length: Length) -> Length {
        match self {
            Self::Inch(row) => row.large_end(),
            Self::Metric(row) => large_end(row.small_end(), length, TaperSeries::Metric.taper()),
        }
    }
    /// The small end at a length (a metric pin's does not depend on it).
    ///
    /// # Errors
    /// An inch pin so long that it would run to a point.
    pub fn small_end(self, length: Length) -> Result<Length, PinFault> {
        match self {
            Self::Inch(row) => small_end(row.large_end(), length, TaperSeries::Inch.taper()),
            Self::Metric(row) => Ok(row.small_end()),
        }
    }
    /// Half way along: the size that strength is reckoned with.
    ///
    /// # Errors
    /// An inch pin so long that it would run to a point.
    pub fn middle(self, length: Length) -> Result<Length, PinFault> {
        Ok((self.large_end(length) + self.small_end(length)?) / 2.0)
    }
    /// The usual lengths: (shortest, longest).
    pub const fn usual_lengths(self) -> (Length, Length) {
        match self {
            Self::Inch(row) => (
                Length::from_inches(row.shortest_in),
                Length::from_inches(row.longest_in),
            ),
            Self::Metric(row) => (
                Length::from_mm(row.shortest_mm),
                Length::from_mm(row.longest_mm),
            ),
        }
    }
    /// Whether this length is within the usual ones.
    pub fn is_usual(self, length: Length) -> bool {
        let (least, most) = self.usual_lengths();
        length.mm() >= least.mm() - 1e-6 && length.mm() <= most.mm() + 1e-6
    }
    /// The next size up in the series.
    pub fn next(self) -> Option<Self> {
        Self::all(self.series())
            .into_iter()
            .find(|pin| pin.named_end() > self.named_end())
    }
}
