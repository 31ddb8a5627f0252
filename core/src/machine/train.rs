//! Which change wheels give a wanted ratio? All trains of two and four wheels from a set, exact and nearest, ranked.

/// The most wheels of a set: the search tries each train, and more would take too long on a tablet.
pub const MOST_WHEELS: usize = 24;
/// The most trains that are listed.
const LISTED: usize = 12;
/// The most trains of one ratio among them.
const SAME_RATIO: usize = 6;
/// Teeth by which a pair must reach past the wheel beside it, to clear its shaft. Common practice.
pub const CLEAR: i32 = 15;
/// A share below which a train counts as exact: the rounding of the figures, no more.
const EXACT: f64 = 1e-11;

/// A train: the first pair, and for four wheels the second, each driver then driven.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Train {
    /// On the first shaft.
    pub driver: u32,
    /// What it meshes with.
    pub driven: u32,
    /// On the shaft of `driven`, and what it meshes with on the last shaft.
    pub second: Option<(u32, u32)>,
}

impl Train {
    /// Turns of the last shaft for a turn of the first: product of drivers over product of driven.
    ///
    /// ```
    /// use benchslate_core::machine::Train;
    /// let train = Train { driver: 18, driven: 66, second: Some((48, 36)) };
    /// // Rose, Modern Machine-Shop Practice, vol. 1: with a screw of 4 threads it cuts 11
    /// assert!((4.0 / train.ratio() - 11.0).abs() < 1e-12);
    /// ```
    pub fn ratio(self) -> f64 {
        let (over, under) = self.products();
        f64::from(over) / f64::from(under)
    }
    fn products(self) -> (u32, u32) {
        let (c, d) = self.second.unwrap_or((1, 1));
        (self.driver.saturating_mul(c), self.driven.saturating_mul(d))
    }
    /// By how many teeth the train clears its shafts: the least of a + b − c and c + d − b. No bound for two wheels.
    pub fn clearance(self) -> i32 {
        let teeth = |n: u32| i32::try_from(n).unwrap_or(i32::MAX);
        let Some((c, d)) = self.second else {
            return i32::MAX;
        };
        let reach = |a: u32, b: u32, past: u32| {
            teeth(a)
                .saturating_add(teeth(b))
                .saturating_sub(teeth(past))
        };
        reach(self.driver, self.driven, c).min(reach(c, d, self.driven))
    }
    /// True where the wheels clear the shafts by [`CLEAR`] teeth.
    pub fn meshes(self) -> bool {
        self.clearance() >= CLEAR
    }
    /// Same wheels and same ratio in the order that clears best.
    fn arranged(self) -> Self {
        let Some((c, d)) = self.second else {
            return self;
        };
        let of = |driver, driven, third, last| Self {
            driver,
            driven,
            second: Some((third, last)),
        };
        let (a, b) = (self.driver, self.driven);
        [
            of(a, b, c, d),
            of(a, d, c, b),
            of(c, b, a, d),
            of(c, d, a, b),
        ]
        .into_iter()
        .fold(self, |best, other| {
            if other.clearance() > best.clearance() {
                other
            } else {
                best
            }
        })
    }
}

/// A train that was found.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Found {
    /// Wheels.
    pub train: Train,
    /// ratio / wanted − 1; zero where exact.
    pub error: f64,
}

impl Found {
    /// Exact but for the rounding of the figures.
    pub fn is_exact(&self) -> bool {
        self.error == 0.0
    }
    /// Smaller is better: the error, then fewer wheels, then one that meshes, then the larger small wheel.
    fn better_than(&self, other: &Self) -> bool {
        let key = |found: &Self| {
            let train = found.train;
            let (c, d) = train.second.unwrap_or((u32::MAX, u32::MAX));
            let least = train.driver.min(train.driven).min(c).min(d);
            (
                train.second.is_some(),
                !train.meshes(),
                u32::MAX.saturating_sub(least),
                train.driver,
                train.driven,
                c,
            )
        };
        match self.error.abs().total_cmp(&other.error.abs()) {
            core::cmp::Ordering::Less => true,
            core::cmp::Ordering::Greater => false,
            core::cmp::Ordering::Equal => key(self) < key(other),
        }
    }
}

/// All trains of two and four wheels for a wanted ratio (product of drivers over product of driven), best first: a dozen at
/// most, no more than six of one ratio. A wheel is used as often as it is in the set. None for more than [`MOST_WHEELS`]
/// wheels, a wheel of no teeth or of more than 1000, or a ratio that is not above zero.
///
/// ```
/// use benchslate_core::machine::find_trains;
/// let found = find_trains(&[20, 40, 60, 80, 100], 2.0 / 5.0).unwrap();
/// let best = found[0].train; // 5 threads with a screw of 2: 40 on the spindle, 100 on the screw
/// assert!((best.driver, best.driven, best.second) == (40, 100, None) && found[0].is_exact());
/// ```
pub fn find_trains(wheels: &[u32], wanted: f64) -> Option<Vec<Found>> {
    let proper = wheels.iter().all(|teeth| (1..=1000).contains(teeth));
    if wheels.len() > MOST_WHEELS || !proper || !(wanted > 0.0 && wanted.is_finite()) {
        return None;
    }
    let mut sorted = wheels.to_vec();
    crate::order::sort(&mut sorted);
    let mut best = Best {
        wanted,
        list: Vec::new(),
    };
    let pairs = pairs(&sorted);
    for driver in distinct(&sorted) {
        for driven in distinct(&sorted).filter(|driven| *driven != driver) {
            best.offer(Train {
                driver,
                driven,
                second: None,
            });
        }
    }
    for driven in &pairs {
        // outward from the nearest product of drivers, until no further one can be listed
        let split = pairs
            .partition_point(|pair| f64::from(pair.product) < wanted * f64::from(driven.product));
        let (low, high) = pairs.split_at_checked(split).unwrap_or((&pairs, &[]));
        for drivers in high {
            if !best.offer_pairs(drivers, driven) {
                break;
            }
        }
        for drivers in low.iter().rev() {
            if !best.offer_pairs(drivers, driven) {
                break;
            }
        }
    }
    Some(best.list)
}

/// Each size once.
fn distinct(sorted: &[u32]) -> impl Iterator<Item = u32> {
    let mut last = None;
    sorted
        .iter()
        .copied()
        .filter(move |teeth| last.replace(*teeth) != Some(*teeth))
}

/// Two wheels on one side of the ratio.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
struct Pair {
    product: u32,
    one: u32,
    other: u32,
}

/// Each two wheels of the set, each combination of sizes once, by their product.
fn pairs(sorted: &[u32]) -> Vec<Pair> {
    let mut out = Vec::new();
    for (i, one) in sorted.iter().copied().enumerate() {
        for other in sorted.iter().copied().skip(i.saturating_add(1)) {
            let product = one.saturating_mul(other);
            out.push(Pair {
                product,
                one,
                other,
            });
        }
    }
    crate::order::sort(&mut out);
    out.dedup();
    out
}

struct Best {
    wanted: f64,
    list: Vec<Found>,
}

impl Best {
    /// Offers a train of four; false where neither it nor one further off can be listed. A size on both sides cancels: such
    /// a train is one of two wheels, found already.
    fn offer_pairs(&mut self, drivers: &Pair, driven: &Pair) -> bool {
        let error = self.error(f64::from(drivers.product) / f64::from(driven.product));
        if !self.takes(error) {
            return false;
        }
        let (a, c, b, d) = (drivers.one, drivers.other, driven.one, driven.other);
        if a != b && a != d && c != b && c != d {
            self.offer(Train {
                driver: a,
                driven: b,
                second: Some((c, d)),
            });
        }
        true
    }
    fn error(&self, ratio: f64) -> f64 {
        let error = ratio / self.wanted - 1.0;
        if error.abs() < EXACT { 0.0 } else { error }
    }
    /// False where the list is full of better ones.
    fn takes(&self, error: f64) -> bool {
        self.list.len() < LISTED
            || self
                .list
                .last()
                .is_some_and(|worst| worst.error.abs() >= error.abs())
    }
    fn offer(&mut self, train: Train) {
        let error = self.error(train.ratio());
        if !self.takes(error) {
            return;
        }
        let found = Found {
            train: train.arranged(),
            error,
        };
        let place = self.list.partition_point(|known| known.better_than(&found));
        self.list.insert(place, found);
        let same = |known: &Found| known.error == error;
        if self.list.iter().filter(|known| same(known)).count() > SAME_RATIO
            && let Some(last) = self.list.iter().rposition(same)
        {
            self.list.remove(last);
        }
        self.list.truncate(LISTED);
    }
}
