//! Which settings does a box have? Every choice of one alternative a stage, slowest first.

/// The most settings of a box.
pub const MOST_SETTINGS: usize = 36;
/// The most stages of a box.
pub const MOST_STAGES: usize = 5;

/// A set of settings: bit `n` is setting `n`, counted from 0.
pub type Settings = u64;

/// Why a box can't be searched.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum BoxFault {
    /// No stage, or one without an alternative.
    Empty,
    /// More than [`MOST_STAGES`] stages.
    Stages(usize),
    /// More than [`MOST_SETTINGS`] settings.
    Settings(usize),
}

impl core::fmt::Display for BoxFault {
    fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
        match self {
            Self::Empty => f.write_str(
                "a gearbox needs at least one stage, and each stage at least one alternative",
            ),
            Self::Stages(n) => write!(
                f,
                "this gearbox has {n} stages; the search takes {MOST_STAGES}"
            ),
            Self::Settings(n) => write!(
                f,
                "this gearbox has {n} settings; the search takes {MOST_SETTINGS}"
            ),
        }
    }
}

impl core::error::Error for BoxFault {}

/// A box: stages in series, and its settings in order of speed.
#[derive(Clone, PartialEq, Debug)]
pub struct Gearbox {
    stages: Vec<usize>,
    settings: Vec<Vec<usize>>,
    speeds: Vec<f64>,
}

impl Gearbox {
    /// A box whose stages change the speed by these factors, an alternative each (driver over driven; any common factor may
    /// be left out). Settings are sorted by the product, equal ones by their levers.
    ///
    /// # Errors
    /// [`BoxFault`] past the bounds of the search.
    ///
    /// ```
    /// use benchslate_core::machine::isolate::Gearbox;
    /// // two clusters: one doubles, one goes by 1.5
    /// let shaper = Gearbox::new(&[vec![1.0, 1.5], vec![1.0, 2.0, 4.0]]).unwrap();
    /// assert_eq!(shaper.len(), 6);
    /// assert_eq!(shaper.levers(1), [1, 0]); // second slowest: 1.5 x 1
    /// ```
    pub fn new(factors: &[Vec<f64>]) -> Result<Self, BoxFault> {
        let stages: Vec<usize> = factors.iter().map(Vec::len).collect();
        if stages.is_empty() || stages.contains(&0) {
            return Err(BoxFault::Empty);
        }
        if stages.len() > MOST_STAGES {
            return Err(BoxFault::Stages(stages.len()));
        }
        let count = stages.iter().fold(1_usize, |all, &n| all.saturating_mul(n));
        if count > MOST_SETTINGS {
            return Err(BoxFault::Settings(count));
        }
        let mut settings: Vec<(f64, Vec<usize>)> = vec![(1.0, Vec::new())];
        for stage in factors {
            settings = settings
                .iter()
                .flat_map(|(speed, levers)| {
                    stage.iter().enumerate().map(move |(at, factor)| {
                        let mut levers = levers.clone();
                        levers.push(at);
                        (speed * factor, levers)
                    })
                })
                .collect();
        }
        crate::order::sort_by(&mut settings, |a, b| {
            key(a.0).cmp(&key(b.0)).then_with(|| a.1.cmp(&b.1))
        });
        let (speeds, settings) = settings.into_iter().unzip();
        Ok(Self {
            stages,
            settings,
            speeds,
        })
    }
    /// A box whose alternatives lie whole steps of the series apart: alternatives and spacing a stage. `(3, 3)` is three
    /// alternatives, three steps from one to the next.
    ///
    /// # Errors
    /// [`BoxFault`] past the bounds of the search.
    pub fn by_steps(stages: &[(usize, usize)]) -> Result<Self, BoxFault> {
        // a power of two a step: products of powers of two are exact
        let factors: Vec<Vec<f64>> = stages
            .iter()
            .map(|&(alternatives, spacing)| {
                (0..alternatives.min(MOST_SETTINGS + 1))
                    .map(|at| libm::exp2((at * spacing.min(MOST_SETTINGS)) as f64 / 32.0))
                    .collect()
            })
            .collect();
        Self::new(&factors)
    }
    /// Alternatives of each stage.
    pub fn stages(&self) -> &[usize] {
        &self.stages
    }
    /// Number of settings.
    #[allow(clippy::len_without_is_empty)] // never empty
    pub fn len(&self) -> usize {
        self.settings.len()
    }
    /// The alternative of each stage in a setting, both counted from 0; empty past the last.
    pub fn levers(&self, setting: usize) -> &[usize] {
        self.settings.get(setting).map_or(&[], Vec::as_slice)
    }
    /// The setting with these alternatives.
    pub fn setting(&self, levers: &[usize]) -> Option<usize> {
        self.settings.iter().position(|own| own == levers)
    }
    /// The product of the factors in a setting.
    pub fn speed(&self, setting: usize) -> Option<f64> {
        self.speeds.get(setting).copied()
    }
    /// Settings grouped by speed: the number of the distinct speed of each setting, counted from 0.
    pub fn ranks(&self) -> Vec<usize> {
        let mut rank = 0_usize;
        let mut last = None;
        self.speeds
            .iter()
            .map(|&speed| {
                if last.is_some_and(|last| last != key(speed)) {
                    rank += 1;
                }
                last = Some(key(speed));
                rank
            })
            .collect()
    }
    /// Number of distinct speeds: settings that coincide count once.
    pub fn distinct(&self) -> usize {
        self.ranks().last().map_or(0, |rank| rank + 1)
    }
    /// Every setting.
    pub fn all(&self) -> Settings {
        (1_u64 << self.len()) - 1
    }
    /// The settings that use an alternative of a stage.
    pub fn using(&self, stage: usize, at: usize) -> Settings {
        self.settings
            .iter()
            .enumerate()
            .filter(|(_, levers)| levers.get(stage) == Some(&at))
            .fold(0, |set, (setting, _)| set | 1 << setting)
    }
    /// Every alternative as (stage, place), both counted from 0.
    pub fn alternatives(&self) -> impl Iterator<Item = (usize, usize)> + '_ {
        self.stages
            .iter()
            .enumerate()
            .flat_map(|(stage, &count)| (0..count).map(move |at| (stage, at)))
    }
}

/// Products of the same ratios in another order differ in the last digits only: they have one key.
fn key(speed: f64) -> i64 {
    libm::round(libm::log2(speed) * 1e7 + 0.25) as i64
}
