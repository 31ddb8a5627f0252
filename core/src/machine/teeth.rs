//! Which tooth counts give a ratio on shafts that are fixed? Gear pairs with one tooth sum, and the ratios of a stage as typed.
//!
//! A ratio here is a speed factor, driver over driven: 18/36 halves the speed. Some books print driven over driver.

/// The most alternatives of a stage as typed.
pub const MOST_ALTERNATIVES: usize = 12;
/// The most pairs in series at one place of a lever.
pub const MOST_IN_SERIES: usize = 4;
/// The most teeth of a gear.
pub const MOST_TEETH: u32 = 400;

/// A gear pair: driver and driven.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub struct Pair {
    /// Teeth of the driver.
    pub driver: u32,
    /// Teeth of the driven gear.
    pub driven: u32,
}

impl Pair {
    /// The speed factor, driver over driven; nothing for a gear without teeth.
    pub fn ratio(self) -> Option<f64> {
        (self.driver > 0 && self.driven > 0)
            .then(|| f64::from(self.driver) / f64::from(self.driven))
    }
    /// Teeth of both: the same on fixed shafts where the module is the same.
    pub const fn sum(self) -> u32 {
        self.driver + self.driven
    }
}

/// What one place of a lever does to the speed.
#[derive(Clone, PartialEq, Debug)]
pub enum Ways {
    /// Gear pairs in series, one or more. A back gear has two: no setting tells them apart.
    Pairs(Vec<Pair>),
    /// A bare speed factor.
    Factor(f64),
}

impl Ways {
    /// The speed factor.
    pub fn factor(&self) -> f64 {
        match self {
            Self::Pairs(pairs) => pairs.iter().filter_map(|pair| pair.ratio()).product(),
            Self::Factor(factor) => *factor,
        }
    }
    /// As it is written: `13/45x18/40`.
    pub fn name(&self) -> String {
        match self {
            Self::Pairs(pairs) => {
                let names: Vec<String> = pairs.iter().map(ToString::to_string).collect();
                names.join("x")
            }
            Self::Factor(factor) => {
                crate::quantity::plain(*factor, &crate::quantity::units::NUMBER)
            }
        }
    }
    /// The pairs, none for a bare factor.
    pub fn pairs(&self) -> &[Pair] {
        match self {
            Self::Pairs(pairs) => pairs,
            Self::Factor(_) => &[],
        }
    }
}

impl core::fmt::Display for Pair {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        write!(f, "{}/{}", self.driver, self.driven)
    }
}

/// Why a stage can't be read, in words for the field.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum TeethFault {
    /// Nothing there.
    Empty,
    /// Ends in the middle of a pair.
    Unfinished,
    /// This part is no pair and no factor.
    Part(String),
    /// More than [`MOST_ALTERNATIVES`] or [`MOST_IN_SERIES`].
    Many,
}

/// The alternatives of a stage as typed: pairs as driver/driven with a space between alternatives, `x` between pairs in series;
/// or a bare factor.
///
/// # Errors
/// [`TeethFault`].
///
/// ```
/// use benchslate_core::machine::teeth::read_stage;
/// let stage = read_stage("13/45x18/40 40/40").unwrap();
/// assert_eq!(stage.len(), 2);
/// assert!((stage[0].factor() - 0.13).abs() < 1e-12); // 13/45 x 18/40
/// ```
pub fn read_stage(text: &str) -> Result<Vec<Ways>, TeethFault> {
    let lower = text.to_ascii_lowercase().replace(['\u{d7}', '*'], "x");
    let parts: Vec<&str> = lower
        .split([' ', ','])
        .filter(|part| !part.is_empty())
        .collect();
    if parts.is_empty() {
        return Err(TeethFault::Empty);
    }
    if parts.len() > MOST_ALTERNATIVES {
        return Err(TeethFault::Many);
    }
    parts.into_iter().map(read_ways).collect()
}

fn read_ways(part: &str) -> Result<Ways, TeethFault> {
    let fault = || TeethFault::Part(part.chars().take(16).collect());
    if part.ends_with(['/', 'x', '.']) {
        return Err(TeethFault::Unfinished);
    }
    if !part.contains(['/', 'x']) {
        let plain = part.chars().all(|c| c.is_ascii_digit() || c == '.');
        let factor = crate::quantity::number(part).ok_or_else(fault)?;
        return if plain && (0.001..=1000.0).contains(&factor) {
            Ok(Ways::Factor(factor))
        } else {
            Err(fault())
        };
    }
    let pairs: Vec<Pair> = part
        .split('x')
        .map(|pair| {
            let (driver, driven) = pair.split_once('/').ok_or_else(fault)?;
            let teeth = |text: &str| {
                let plain = text.chars().all(|c| c.is_ascii_digit());
                let teeth: u32 = text.parse().map_err(|_| fault())?;
                if plain && (1..=MOST_TEETH).contains(&teeth) {
                    Ok(teeth)
                } else {
                    Err(fault())
                }
            };
            Ok(Pair {
                driver: teeth(driver)?,
                driven: teeth(driven)?,
            })
        })
        .collect::<Result<_, TeethFault>>()?;
    if pairs.len() > MOST_IN_SERIES {
        return Err(TeethFault::Many);
    }
    Ok(Ways::Pairs(pairs))
}

/// The speed factor of pairs in series, a chain as `26/44 24/64 18/36`; nothing where it can't be read.
pub fn chain(text: &str) -> Option<f64> {
    let parts: Vec<&str> = text
        .split([' ', 'x'])
        .filter(|part| !part.is_empty())
        .collect();
    parts
        .into_iter()
        .map(|part| Some(read_ways(part).ok()?.factor()))
        .product()
}

/// Which way round a ratio is written.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug, Default)]
pub enum Sense {
    /// Driver over driven: a speed factor, below 1 slows down.
    #[default]
    DriverOverDriven,
    /// Driven over driver: above 1 slows down.
    DrivenOverDriver,
}

impl Sense {
    /// The ratio of a pair, written this way round.
    pub fn of(self, pair: Pair) -> Option<f64> {
        let factor = pair.ratio()?;
        Some(match self {
            Self::DriverOverDriven => factor,
            Self::DrivenOverDriver => 1.0 / factor,
        })
    }
}

/// A pair that comes near a wanted ratio.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct NearPair {
    /// The pair.
    pub pair: Pair,
    /// Its ratio over the wanted one, less 1: 0.03 is 3 % fast.
    pub off: f64,
}

/// The pair of this tooth sum nearest to the wanted ratio, with no fewer teeth than `least`: one of the two whole numbers
/// beside the exact driver. Nearest by the ratio as written: the two ways round may differ on a close second. Nothing for
/// a ratio that is not above 0, or a sum too small for two such gears.
///
/// On fixed shafts of one module z1 + z2 is the same for each pair of a stage. With mixed modules it is module × sum.
/// Source: tooth sum rule of machine tool design texts.
///
/// ```
/// use benchslate_core::machine::teeth::{Sense, nearest_of_sum};
/// let near = nearest_of_sum(72, 0.5, Sense::DriverOverDriven, 12).unwrap();
/// assert_eq!(near.pair.to_string(), "24/48");
/// ```
pub fn nearest_of_sum(sum: u32, wanted: f64, sense: Sense, least: u32) -> Option<NearPair> {
    let least = least.max(1);
    if !(wanted > 0.0 && wanted.is_finite()) || sum > 2 * MOST_TEETH || sum < 2 * least {
        return None;
    }
    let exact = match sense {
        Sense::DriverOverDriven => f64::from(sum) * wanted / (1.0 + wanted),
        Sense::DrivenOverDriver => f64::from(sum) / (1.0 + wanted),
    };
    let low = (libm::floor(exact) as u32).clamp(least, sum - least);
    let near = |driver: u32| {
        let pair = Pair {
            driver,
            driven: sum - driver,
        };
        Some(NearPair {
            pair,
            off: sense.of(pair)? / wanted - 1.0,
        })
    };
    let (low, high) = (near(low)?, near((low + 1).min(sum - least))?);
    Some(if high.off.abs() < low.off.abs() {
        high
    } else {
        low
    })
}

/// A stage made of pairs of one tooth sum.
#[derive(Clone, PartialEq, Debug)]
pub struct SumSet {
    /// The tooth sum.
    pub sum: u32,
    /// A pair for each wanted ratio.
    pub pairs: Vec<NearPair>,
    /// The largest deviation, as a share.
    pub worst: f64,
}

/// Tooth sums from `low` to `high` for a set of wanted ratios, the one with the smallest largest deviation first, of as
/// good ones the smaller. At most a dozen; `least` teeth or more on each gear.
pub fn sums_for(wanted: &[f64], sense: Sense, low: u32, high: u32, least: u32) -> Vec<SumSet> {
    let mut found: Vec<SumSet> = (low..=high.min(2 * MOST_TEETH))
        .filter_map(|sum| {
            let pairs: Vec<NearPair> = wanted
                .iter()
                .map(|&ratio| nearest_of_sum(sum, ratio, sense, least))
                .collect::<Option<_>>()?;
            let worst = pairs
                .iter()
                .fold(0.0, |worst, near| f64::max(worst, near.off.abs()));
            Some(SumSet { sum, pairs, worst })
        })
        .collect();
    crate::order::sort_by(&mut found, |a, b| {
        let key = |set: &SumSet| libm::round(set.worst * 1e9) as i64;
        key(a).cmp(&key(b)).then(a.sum.cmp(&b.sum))
    });
    found.truncate(12);
    found
}
