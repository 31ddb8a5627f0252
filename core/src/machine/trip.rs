//! Where does a feed stop after its trip dog, and how well does it repeat?

use crate::quantity::{FeedRate, Length, Time};

/// Overrun past the trip: feed × delay, plus what the table coasts.
///
/// ```
/// use benchslate_core::{machine::overrun, quantity::{FeedRate, Length, Time}};
/// let past = overrun(FeedRate::from_in_per_min(20.0), Time::from_seconds(0.2), Length::ZERO);
/// assert!((past.inches() - 0.0667).abs() < 0.0001); // 20 × 0.2 / 60
/// ```
pub fn overrun(feed: FeedRate, delay: Time, coast: Length) -> Length {
    Length::from_mm(feed.mm_per_min() * delay.minutes()) + coast
}

/// Delay from trip to stop, and where a stop at no feed would be, from stops of one dog at several feeds: the straight line of
/// least squares, stop = place + feed × delay. None where all feeds are alike.
///
/// ```
/// use benchslate_core::{machine::delay_of_stops, quantity::{FeedRate, Length}};
/// let at = |feed: f64, stop: f64| (FeedRate::from_in_per_min(feed), Length::from_inches(stop));
/// // 18 in/min more carries it 0.060 in further: 60 × 0.060 / 18 = 0.2 s; at 2 in/min that is 0.0067 of overrun
/// let (delay, place) = delay_of_stops(&[at(2.0, 6.240), at(20.0, 6.300)]).unwrap();
/// assert!((delay.seconds() - 0.2).abs() < 1e-9 && (place.inches() - 6.23333).abs() < 1e-5);
/// ```
pub fn delay_of_stops(stops: &[(FeedRate, Length)]) -> Option<(Time, Length)> {
    let count = stops.len() as f64;
    let feed = stops.iter().map(|one| one.0.mm_per_min()).sum::<f64>() / count;
    let place = stops.iter().map(|one| one.1.mm()).sum::<f64>() / count;
    let (mut squares, mut products) = (0.0, 0.0);
    for (at, stop) in stops {
        let off = at.mm_per_min() - feed;
        squares += off * off;
        products += off * (stop.mm() - place);
    }
    let minutes = products / squares;
    (squares > 1e-9).then(|| {
        (
            Time::from_seconds(60.0 * minutes),
            Length::from_mm(place - feed * minutes),
        )
    })
}

/// What a list of trial stops tells.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Trials {
    /// How many.
    pub count: usize,
    /// Mean place.
    pub mean: Length,
    /// Furthest apart.
    pub spread: Length,
    /// Standard deviation of one stop.
    pub deviation: Length,
    /// The next stop lies within the mean ± this, 95 times in 100.
    pub next: Length,
}

/// Two-sided 95 % points of Student's t by degrees of freedom 1 to 30. Source: NIST/SEMATECH e-Handbook of Statistical
/// Methods, 1.3.6.7.2, column 0.975; from memory.
const T_95: [f64; 30] = [
    12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201, 2.179, 2.160,
    2.145, 2.131, 2.120, 2.110, 2.101, 2.093, 2.086, 2.080, 2.074, 2.069, 2.064, 2.060, 2.056,
    2.052, 2.048, 2.045, 2.042,
];

/// Mean, spread and the range for the next of a list of trial stops: mean ± t s √(1 + 1/n), s with n − 1. None for fewer than
/// two.
///
/// ```
/// use benchslate_core::{machine::trials, quantity::Length};
/// let stops: Vec<Length> = [1.0, 1.002, 1.004].map(Length::from_inches).to_vec();
/// let found = trials(&stops).unwrap();
/// assert!((found.mean.inches() - 1.002).abs() < 1e-9 && (found.deviation.inches() - 0.002).abs() < 1e-9);
/// assert!((found.next.inches() - 4.303 * 0.002 * (4.0_f64 / 3.0).sqrt()).abs() < 1e-9);
/// ```
pub fn trials(stops: &[Length]) -> Option<Trials> {
    let n = stops.len();
    let freedom = n.checked_sub(1).filter(|freedom| *freedom > 0)?;
    let count = n as f64;
    let mean = stops.iter().map(|stop| stop.mm()).sum::<f64>() / count;
    let squares: f64 = stops
        .iter()
        .map(|stop| (stop.mm() - mean) * (stop.mm() - mean))
        .sum();
    let deviation = libm::sqrt(squares / freedom as f64);
    let t = T_95
        .get(freedom.saturating_sub(1))
        .copied()
        .unwrap_or(2.042);
    let low = stops
        .iter()
        .fold(f64::INFINITY, |low, stop| low.min(stop.mm()));
    let high = stops
        .iter()
        .fold(f64::NEG_INFINITY, |high, stop| high.max(stop.mm()));
    Some(Trials {
        count: n,
        mean: Length::from_mm(mean),
        spread: Length::from_mm(high - low),
        deviation: Length::from_mm(deviation),
        next: Length::from_mm(t * deviation * libm::sqrt(1.0 + 1.0 / count)),
    })
}
