//! How fast does the driven pulley turn, and how long is the belt? V and flat belts, stages in a row, stepped cones.

use crate::quantity::{Angle, Length, RotationalSpeed, SurfaceSpeed};

/// A pair of pulleys by the diameters on which the belt's length does not change: the pitch diameter of a V pulley, outside
/// diameter and one belt thickness of a flat one.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Pulleys {
    /// Driver.
    pub driver: Length,
    /// Driven.
    pub driven: Length,
}

impl Pulleys {
    /// Turns out for a turn in, with no slip: driver over driven.
    pub fn ratio(self) -> f64 {
        self.driver / self.driven
    }
}

/// Turns out for a turn in through stages in a row, each losing the same share to slip.
///
/// ```
/// use benchslate_core::{machine::{Pulleys, stages_ratio}, quantity::{Length, Share}};
/// let pair = |a, b| Pulleys { driver: Length::from_mm(a), driven: Length::from_mm(b) };
/// let ratio = stages_ratio(&[pair(750.0, 450.0), pair(900.0, 150.0)], 0.02);
/// assert!((150.0 * ratio - 1440.6).abs() < 0.1); // 1500 × 0.98 × 0.98
/// ```
pub fn stages_ratio(stages: &[Pulleys], slip: f64) -> f64 {
    stages
        .iter()
        .fold(1.0, |ratio, pair| ratio * pair.ratio() * (1.0 - slip))
}

/// Belt speed at the driver: π d N.
pub fn belt_speed(driver: Length, speed: RotationalSpeed) -> SurfaceSpeed {
    SurfaceSpeed::from_m_per_min(core::f64::consts::PI * driver.mm() * speed.rpm() / 1000.0)
}

/// How the belt runs.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Run {
    /// Both pulleys turn the same way.
    Open,
    /// A flat belt crossed: they turn against each other.
    Crossed,
}

/// A belt around two pulleys.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Belt {
    /// Length at the pitch line.
    pub length: Length,
    /// Wrap on the smaller pulley.
    pub wrap: Angle,
}

/// Length of a belt and its wrap, exact for round pulleys: with sin φ = (R ∓ r) / C (minus open, plus crossed), open
/// L = 2 C cos φ + π (R + r) + 2 φ (R − r), crossed L = 2 C cos φ + (π + 2 φ)(R + r). None where the pulleys would touch.
///
/// ```
/// use benchslate_core::{machine::{Pulleys, Run, belt}, quantity::Length};
/// let pair = Pulleys { driver: Length::from_mm(1600.0), driven: Length::from_mm(500.0) };
/// let found = belt(pair, Length::from_mm(12_000.0), Run::Open).unwrap();
/// assert!((found.length.mm() - 27_324.0).abs() < 1.0); // π 1050 + 24000 + 550² / 12000
/// ```
pub fn belt(pair: Pulleys, centres: Length, run: Run) -> Option<Belt> {
    let (r, big) = (
        pair.driver.min(pair.driven).mm() / 2.0,
        pair.driver.max(pair.driven).mm() / 2.0,
    );
    let c = centres.mm();
    if !(r > 0.0 && c > r + big) {
        return None;
    }
    let pi = core::f64::consts::PI;
    let (length, wrap) = match run {
        Run::Open => {
            let phi = libm::asin((big - r) / c);
            (
                2.0 * c * libm::cos(phi) + pi * (big + r) + 2.0 * phi * (big - r),
                pi - 2.0 * phi,
            )
        }
        Run::Crossed => {
            let phi = libm::asin((big + r) / c);
            (
                2.0 * c * libm::cos(phi) + (pi + 2.0 * phi) * (big + r),
                pi + 2.0 * phi,
            )
        }
    };
    Some(Belt {
        length: Length::from_mm(length),
        wrap: Angle::from_radians(wrap),
    })
}

/// The pair of pulleys for a ratio (out over in, no slip) that the same belt fits at the same centres. Found by halving; None
/// where no such pair clears.
///
/// ```
/// use benchslate_core::{machine::{Pulleys, Run, belt, pair_for}, quantity::Length};
/// let inch = Length::from_inches;
/// let (centres, even) = (inch(20.0), Pulleys { driver: inch(5.0), driven: inch(5.0) });
/// let length = belt(even, centres, Run::Open).unwrap().length;
/// let pair = pair_for(0.5, length, centres, Run::Open).unwrap();
/// assert!((pair.ratio() - 0.5).abs() < 1e-9);
/// assert!((belt(pair, centres, Run::Open).unwrap().length - length).abs().mm() < 1e-6);
/// ```
pub fn pair_for(ratio: f64, length: Length, centres: Length, run: Run) -> Option<Pulleys> {
    if !(ratio > 0.0 && ratio.is_finite()) {
        return None;
    }
    let pair = |sum: f64| Pulleys {
        driver: Length::from_mm(sum * ratio / (1.0 + ratio)),
        driven: Length::from_mm(sum / (1.0 + ratio)),
    };
    // by the sum of diameters: the pulleys touch at twice the centres
    let (mut low, mut high) = (0.0, 2.0 * centres.mm());
    for _ in 0..80 {
        let middle = f64::midpoint(low, high);
        match belt(pair(middle), centres, run) {
            Some(found) if found.length < length => low = middle,
            _ => high = middle,
        }
    }
    let found = pair(f64::midpoint(low, high));
    belt(found, centres, run)
        .filter(|fits| (fits.length - length).abs().mm() < 1e-3)
        .map(|_| found)
}
