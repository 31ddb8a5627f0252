//! What is a thread, once its call is read: series, major diameter, pitch and class?

use crate::notation::plain;
use crate::quantity::{Length, Pitch};
use crate::standards::{threads::metric_threads, threads::unified};
use core::fmt;
use std::sync::LazyLock;

/// The series that a thread belongs to.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum ThreadSeries {
    /// Unified coarse.
    Unc,
    /// Unified fine.
    Unf,
    /// Unified extra fine.
    Unef,
    /// Unified constant pitch: 4-, 6-, 8-, 12-, 16-, 20-, 28- and 32-UN.
    Un,
    /// Unified form, a diameter and pitch outside the standard series.
    Uns,
    /// ISO metric, coarse pitch.
    MetricCoarse,
    /// ISO metric, one of the finer pitches of ISO 261.
    MetricFine,
}

impl ThreadSeries {
    /// Metric or Unified?
    pub const fn is_metric(self) -> bool {
        matches!(self, Self::MetricCoarse | Self::MetricFine)
    }

    /// As it stands in a call: `UNC`; nothing for metric.
    pub const fn mark(self) -> &'static str {
        match self {
            Self::Unc => "UNC",
            Self::Unf => "UNF",
            Self::Unef => "UNEF",
            Self::Un => "UN",
            Self::Uns => "UNS",
            Self::MetricCoarse | Self::MetricFine => "",
        }
    }

    /// In words.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Unc => "Unified coarse (UNC)",
            Self::Unf => "Unified fine (UNF)",
            Self::Unef => "Unified extra fine (UNEF)",
            Self::Un => "Unified constant pitch (UN)",
            Self::Uns => "Unified special (UNS)",
            Self::MetricCoarse => "ISO metric coarse",
            Self::MetricFine => "ISO metric fine",
        }
    }
}

/// A tolerance class. `A` and lower case letters are for the screw, `B` and capitals for the hole.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum ThreadClass {
    /// Unified screw, loose.
    A1,
    /// Unified screw, the usual one.
    A2,
    /// Unified screw, close, no allowance.
    A3,
    /// Unified hole, loose.
    B1,
    /// Unified hole, the usual one.
    B2,
    /// Unified hole, close.
    B3,
    /// Metric screw, the usual one.
    G6,
    /// Metric screw without allowance.
    H6External,
    /// Metric hole, the usual one.
    H6,
}

impl ThreadClass {
    /// All classes.
    pub const ALL: [Self; 9] = [
        Self::A1,
        Self::A2,
        Self::A3,
        Self::B1,
        Self::B2,
        Self::B3,
        Self::G6,
        Self::H6External,
        Self::H6,
    ];

    /// As it is written: `2B`, `6g`.
    pub const fn mark(self) -> &'static str {
        match self {
            Self::A1 => "1A",
            Self::A2 => "2A",
            Self::A3 => "3A",
            Self::B1 => "1B",
            Self::B2 => "2B",
            Self::B3 => "3B",
            Self::G6 => "6g",
            Self::H6External => "6h",
            Self::H6 => "6H",
        }
    }

    /// For the hole rather than the screw?
    pub const fn is_internal(self) -> bool {
        matches!(self, Self::B1 | Self::B2 | Self::B3 | Self::H6)
    }

    /// A metric class?
    pub const fn is_metric(self) -> bool {
        matches!(self, Self::G6 | Self::H6External | Self::H6)
    }
}

/// A thread as it is called for.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct ThreadCall {
    /// The series.
    pub series: ThreadSeries,
    /// The basic major diameter.
    pub major: Length,
    /// The pitch.
    pub pitch: Pitch,
    /// The class, where the call names one.
    pub class: Option<ThreadClass>,
}

impl ThreadCall {
    /// The size alone: `No. 10`, `1/4`, `M10`; a decimal where the standard has no name for it.
    pub fn size(self) -> String {
        if self.series.is_metric() {
            return format!("M{}", plain(self.major.mm(), 3));
        }
        match unified::of_major(self.major) {
            Some(size) => size.name.to_owned(),
            None => plain(self.major.inches(), 4),
        }
    }

    /// The call without series and class: `#10-32`, `1/4-20`, `M10x1.5`. It reads back to the same thread.
    pub fn short(self) -> String {
        let size = self.size();
        if self.series.is_metric() {
            return format!("{size}x{}", plain(self.pitch.mm(), 3));
        }
        format!(
            "{}-{}",
            size.replace("No. ", "#"),
            plain(self.pitch.tpi(), 3)
        )
    }

    /// A thread of the Unified standard series with this major diameter and count, if there is one.
    pub fn unified(major: Length, tpi: f64) -> Option<Self> {
        let size = unified::of_major(major)?;
        let series = series_of(size, tpi)?;
        Some(Self {
            series,
            major: size.major(),
            pitch: Pitch::from_tpi(tpi),
            class: None,
        })
    }

    /// A thread of ISO 261 with this diameter and pitch in millimetres, if there is one.
    pub fn metric(major: Length, pitch_mm: f64) -> Option<Self> {
        let size = metric_threads::of_major(major)?;
        let same = |other: f64| (other - pitch_mm).abs() < 1e-6;
        let series = if same(size.coarse_mm) {
            ThreadSeries::MetricCoarse
        } else if size.fine_mm.iter().any(|pitch| same(*pitch)) {
            ThreadSeries::MetricFine
        } else {
            return None;
        };
        Some(Self {
            series,
            major: size.major(),
            pitch: Pitch::from_mm(pitch_mm),
            class: None,
        })
    }

    /// Every thread of the Unified standard series at one size, coarse first.
    pub fn all_of_unified(size: &unified::UnifiedSize) -> Vec<Self> {
        [size.unc, size.unf, size.unef]
            .into_iter()
            .chain(size.constant.iter().map(|tpi| f64::from(*tpi)))
            .filter(|tpi| *tpi > 0.0)
            .filter_map(|tpi| Self::unified(size.major(), tpi))
            .collect()
    }

    /// Every thread of ISO 261 at one diameter, coarse first.
    pub fn all_of_metric(size: &metric_threads::MetricSize) -> Vec<Self> {
        core::iter::once(size.coarse_mm)
            .chain(size.fine_mm.iter().copied())
            .filter(|pitch| *pitch > 0.0)
            .filter_map(|pitch| Self::metric(size.major(), pitch))
            .collect()
    }

    /// Every standard thread: Unified first, then metric, each by size, coarse before fine. Made once.
    pub fn all() -> &'static [Self] {
        static ALL: LazyLock<Vec<ThreadCall>> = LazyLock::new(|| {
            let inch = unified::SIZES.iter().flat_map(ThreadCall::all_of_unified);
            let metric = metric_threads::SIZES
                .iter()
                .flat_map(ThreadCall::all_of_metric);
            inch.chain(metric).collect()
        });
        &ALL
    }
}

fn series_of(size: &unified::UnifiedSize, tpi: f64) -> Option<ThreadSeries> {
    let same = |other: f64| other > 0.0 && (other - tpi).abs() < 1e-6;
    if same(size.unc) {
        Some(ThreadSeries::Unc)
    } else if same(size.unf) {
        Some(ThreadSeries::Unf)
    } else if same(size.unef) {
        Some(ThreadSeries::Unef)
    } else {
        size.constant
            .iter()
            .any(|count| same(f64::from(*count)))
            .then_some(ThreadSeries::Un)
    }
}

impl fmt::Display for ThreadCall {
    /// The full call: `1/4-20 UNC-2B`, `M10x1.5-6H`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.short())?;
        if !self.series.is_metric() {
            write!(f, " {}", self.series.mark())?;
        }
        match self.class {
            Some(class) => write!(f, "-{}", class.mark()),
            None => Ok(()),
        }
    }
}
