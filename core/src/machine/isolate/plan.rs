//! Which few settings locate any single bad alternative? The fewest, by complete search within a bound, from what is tried already.

use super::{Gearbox, MOST_SETTINGS, Settings};

/// The most sets of settings that are tried of each size.
pub const MOST_SETS: usize = 1_500;

/// Settings to try, counted from 0.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Plan {
    /// The settings, slowest first.
    pub settings: Vec<usize>,
    /// True where every smaller set was tried and fails.
    pub fewest: bool,
}

/// True where these settings locate any single bad alternative: every alternative is tried, and no two that any setting can
/// tell apart are tried in the same settings.
pub fn locates(gearbox: &Gearbox, settings: Settings) -> bool {
    locates_all(&classes(gearbox), settings)
}

fn classes(gearbox: &Gearbox) -> Vec<Settings> {
    let mut classes: Vec<Settings> = gearbox
        .alternatives()
        .map(|(stage, at)| gearbox.using(stage, at))
        .collect();
    crate::order::sort(&mut classes);
    classes.dedup();
    classes
}

fn locates_all(classes: &[Settings], settings: Settings) -> bool {
    classes.iter().enumerate().all(|(index, class)| {
        let tried = class & settings;
        tried != 0
            && !classes
                .iter()
                .skip(index + 1)
                .any(|other| other & settings == tried)
    })
}

/// The fewest settings that locate any single bad alternative. In a 3 × 3 × 2 box four do.
///
/// ```
/// use benchslate_core::machine::isolate::{Gearbox, plan};
/// let found = plan(&Gearbox::by_steps(&[(3, 3), (3, 1), (2, 9)]).unwrap());
/// assert_eq!((found.settings.len(), found.fewest), (4, true));
/// ```
pub fn plan(gearbox: &Gearbox) -> Plan {
    complete(gearbox, 0)
}

/// The fewest further settings that locate any single bad alternative together with those that are tried. With one of a plan
/// tried, the rest of that plan is what is left.
///
/// ```
/// use benchslate_core::machine::isolate::{Gearbox, complete, plan};
/// let gearbox = Gearbox::by_steps(&[(3, 3), (3, 1), (2, 9)]).unwrap();
/// let whole = plan(&gearbox).settings;
/// assert_eq!(complete(&gearbox, 1 << whole[0]).settings, whole[1..]);
/// ```
pub fn complete(gearbox: &Gearbox, tried: Settings) -> Plan {
    let classes = classes(gearbox);
    let stages = gearbox.stages().len();
    let have = tried.count_ones() as usize;
    // a stage with n alternatives needs n settings; n classes need a set of settings each, none of them empty; and k settings
    // touch k classes a stage, of which at most k are touched once and the others twice
    let widest = gearbox.stages().iter().copied().max().unwrap_or(1);
    let bits = (usize::BITS - classes.len().leading_zeros()) as usize;
    let touched = (2 * classes.len()).div_ceil(stages + 1);
    let least = widest.max(bits).max(touched).saturating_sub(have);
    let mut fewest = true;
    for size in least..=gearbox.len().min(least + 3) {
        let mut search = Search {
            classes: &classes,
            count: gearbox.len(),
            stages,
            budget: MOST_SETS,
        };
        // alternatives of a stage may change names, so a set with the slowest setting stands for all
        let found = if tried == 0 {
            search.choose(1, size.saturating_sub(1), 1)
        } else {
            search.choose(0, size, tried)
        };
        if let Some(set) = found {
            return settings(set & !tried, fewest);
        }
        fewest &= search.budget > 0;
    }
    settings(greedy(&classes, gearbox, tried) & !tried, false)
}

struct Search<'a> {
    classes: &'a [Settings],
    count: usize,
    stages: usize,
    budget: usize,
}

impl Search<'_> {
    fn choose(&mut self, from: usize, more: usize, set: Settings) -> Option<Settings> {
        if more == 0 {
            return locates_all(self.classes, set).then_some(set);
        }
        if self.budget == 0 || !self.can(set, more) {
            return None;
        }
        self.budget -= 1;
        (from..self.count)
            .filter(|setting| set >> setting & 1 == 0)
            .find_map(|setting| self.choose(setting + 1, more - 1, set | 1 << setting))
    }
    /// Whether so many more settings can still tell apart what this set does not.
    fn can(&self, set: Settings, more: usize) -> bool {
        let most = 1_usize << more.min(10);
        let mut seen = [0; MOST_SETTINGS];
        let count = tried_in(self.classes, set, &mut seen);
        let seen = seen.get(..count).unwrap_or_default();
        let untried = seen.iter().take_while(|tried| **tried == 0).count();
        untried < most
            && untried <= more * self.stages
            && seen.chunk_by(|a, b| a == b).all(|same| same.len() <= most)
    }
}

/// In which settings of the set each class is tried, in order; how many classes there are. It runs for every set that is tried,
/// so it takes no memory of its own.
fn tried_in(classes: &[Settings], set: Settings, seen: &mut [Settings; MOST_SETTINGS]) -> usize {
    let mut count = 0;
    for class in classes.iter().take(MOST_SETTINGS) {
        let mut own = class & set;
        for slot in seen.iter_mut().take(count) {
            if *slot > own {
                core::mem::swap(slot, &mut own);
            }
        }
        if let Some(slot) = seen.get_mut(count) {
            *slot = own;
        }
        count += 1;
    }
    count
}

/// Adds the setting after which most alternatives stand apart, until all do.
fn greedy(classes: &[Settings], gearbox: &Gearbox, tried: Settings) -> Settings {
    let apart = |set: Settings| {
        let mut seen: Vec<Settings> = classes.iter().map(|class| class & set).collect();
        seen.push(0);
        crate::order::sort(&mut seen);
        seen.dedup();
        seen.len()
    };
    let mut set: Settings = if tried == 0 { 1 } else { tried };
    while !locates_all(classes, set) {
        let best = (0..gearbox.len())
            .filter(|setting| set >> setting & 1 == 0)
            .max_by_key(|&setting| (apart(set | 1 << setting), gearbox.len() - setting));
        match best {
            Some(setting) => set |= 1 << setting,
            None => break,
        }
    }
    set
}

fn settings(set: Settings, fewest: bool) -> Plan {
    Plan {
        settings: (0..64).filter(|bit| set >> bit & 1 == 1).collect(),
        fewest,
    }
}
