//! How fast does it really feed, and how sure is that? Timed travel, its uncertainty, and a common factor over many settings.

use super::plate::median;
use crate::quantity::{FeedRate, Length, Time};

/// One timing.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Timing {
    /// Dial setting, as on the plate.
    pub plate: FeedRate,
    /// Travel in all.
    pub travel: Length,
    /// Time for it.
    pub time: Time,
}

/// How finely it was measured: standard uncertainties.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Fineness {
    /// Of the travel.
    pub travel: Length,
    /// Of the time: the watch and the thumb together.
    pub time: Time,
}

/// Feed from travel and time: F = 60 s / t.
///
/// ```
/// use benchslate_core::{machine::timed_feed, quantity::{Length, Time}};
/// let feed = timed_feed(Length::from_inches(1.25), Time::from_seconds(20.4));
/// assert!((feed.in_per_min() - 3.6765).abs() < 0.0001); // worked by hand: 75 / 20.4
/// ```
pub fn timed_feed(travel: Length, time: Time) -> FeedRate {
    FeedRate::from_mm_per_min(travel.mm() / time.minutes())
}

/// Relative standard uncertainty of a timed feed: √((u_s / s)² + (u_t / t)²), a share of one. Source: JCGM 100:2008 (GUM),
/// 5.1.6, for products of independent quantities.
///
/// ```
/// use benchslate_core::{machine::{Fineness, timing_uncertainty}, quantity::{Length, Time}};
/// let fine = Fineness { travel: Length::from_inches(0.002), time: Time::from_seconds(0.1) };
/// let u = timing_uncertainty(Length::from_inches(10.0), Time::from_seconds(30.0), fine);
/// assert!((u - 0.00334).abs() < 0.00001); // √(0.0002² + 0.00333²)
/// ```
pub fn timing_uncertainty(travel: Length, time: Time, fine: Fineness) -> f64 {
    libm::hypot(fine.travel / travel, fine.time / time)
}

/// Travel that brings the share of the time alone down to a goal: s = F × u_t / goal.
pub fn travel_for(feed: FeedRate, fine: Fineness, goal: f64) -> Length {
    Length::from_mm(feed.mm_per_min() * fine.time.minutes() / goal)
}

/// One setting, its timings brought together.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Setting {
    /// As on the plate.
    pub plate: FeedRate,
    /// Mean of its timings.
    pub feed: FeedRate,
    /// feed / plate − 1.
    pub off: f64,
    /// Expanded relative uncertainty of the mean, about 95 % (k = 2).
    pub expanded: f64,
    /// How many timings.
    pub count: usize,
    /// feed / (plate × common factor) − 1.
    pub off_common: f64,
}

impl Setting {
    /// True where the difference from the plate is more than measuring explains.
    pub fn is_off(&self) -> bool {
        self.off.abs() > self.expanded
    }
}

/// All settings against the plate.
#[derive(Clone, PartialEq, Debug)]
pub struct FeedCheck {
    /// Settings in the order of the plate.
    pub settings: Vec<Setting>,
    /// Common factor: the median of measured over plate, of the settings that agree where more of them agree elsewhere.
    pub common: f64,
    /// Its expanded relative uncertainty, about 95 %: of the measuring, or of what the settings differ among themselves where
    /// that is more.
    pub common_expanded: f64,
    /// The part of it that measuring alone explains.
    pub common_measured: f64,
}

/// Past this and what measuring explains a setting is off by itself: whole tooth numbers move a feed by 2 to 5 %.
const STRAY: f64 = 0.05;

/// Brings timings together by setting and finds the factor that all settings share. None without a timing.
pub fn check_feeds(timings: &[Timing], fine: Fineness) -> Option<FeedCheck> {
    let mut plates: Vec<f64> = timings
        .iter()
        .map(|timing| timing.plate.mm_per_min())
        .collect();
    crate::order::sort_by(&mut plates, f64::total_cmp);
    plates.dedup();
    let mut settings: Vec<Setting> = plates
        .iter()
        .filter_map(|plate| setting(*plate, timings, fine))
        .collect();
    let mut ratios: Vec<f64> = settings.iter().map(|setting| 1.0 + setting.off).collect();
    let common = shared(&mut ratios)?;
    for setting in &mut settings {
        setting.off_common = (1.0 + setting.off) / common - 1.0;
    }
    let mean_square = settings
        .iter()
        .map(|one| one.expanded * one.expanded)
        .sum::<f64>()
        / settings.len() as f64;
    // what the settings differ among themselves, of a normal spread 1.4826 times the median distance, expanded like the rest
    let measured = libm::sqrt(mean_square);
    // a setting that is off by itself says nothing of how the others scatter
    let alike =
        |one: &&Setting| one.off_common.abs() <= STRAY + libm::hypot(one.expanded, measured);
    let mut apart: Vec<f64> = settings
        .iter()
        .filter(alike)
        .map(|one| one.off_common.abs())
        .collect();
    if apart.len() < 2 {
        apart = settings.iter().map(|one| one.off_common.abs()).collect();
    }
    let among = 2.0 * 1.4826 * median(&mut apart)?;
    // the median of n normal values scatters by about 1.25 / √n of one of them
    let share = if ratios.len() < 3 {
        1.0
    } else {
        1.25 / libm::sqrt(ratios.len() as f64)
    };
    Some(FeedCheck {
        settings,
        common,
        common_expanded: share * measured.max(among),
        common_measured: share * measured,
    })
}

/// The factor that most settings share: the median, unless more settings agree on another; of as many the nearer to the plate.
fn shared(ratios: &mut [f64]) -> Option<f64> {
    let middle = median(ratios)?;
    let near = |centre: f64| -> Vec<f64> {
        let own = ratios
            .iter()
            .filter(|one| (**one / centre - 1.0).abs() <= STRAY);
        own.copied().collect()
    };
    let mut best = near(middle);
    for centre in ratios.iter() {
        let own = near(*centre);
        let off = |some: &[f64]| {
            some.first()
                .map_or(f64::INFINITY, |one| libm::fabs(libm::log(*one)))
        };
        let better = own.len() > best.len() || (own.len() == best.len() && off(&own) < off(&best));
        // two settings that disagree are two, whichever is nearer
        if own.len() > 1 && best.len() * 2 <= ratios.len() && better {
            best = own;
        }
    }
    if best.len() * 2 > ratios.len() || best.len() < 2 {
        return Some(middle);
    }
    median(&mut best)
}

fn setting(plate: f64, timings: &[Timing], fine: Fineness) -> Option<Setting> {
    let own: Vec<&Timing> = timings
        .iter()
        .filter(|timing| timing.plate.mm_per_min() == plate)
        .collect();
    let count = own.len();
    let feeds: Vec<f64> = own
        .iter()
        .map(|one| timed_feed(one.travel, one.time).mm_per_min())
        .collect();
    let n = count as f64;
    let mean = feeds.iter().sum::<f64>() / n;
    let single = own
        .iter()
        .map(|one| timing_uncertainty(one.travel, one.time, fine))
        .fold(0.0, f64::max);
    let scatter = if count > 1 {
        let squares: f64 = feeds.iter().map(|feed| (feed - mean) * (feed - mean)).sum();
        libm::sqrt(squares / (n - 1.0)) / mean
    } else {
        0.0
    };
    let of_mean = single.max(scatter) / libm::sqrt(n);
    let off = mean / plate - 1.0;
    (mean.is_finite() && plate > 0.0).then(|| Setting {
        plate: FeedRate::from_mm_per_min(plate),
        feed: FeedRate::from_mm_per_min(mean),
        off,
        expanded: 2.0 * of_mean,
        count,
        off_common: off,
    })
}
