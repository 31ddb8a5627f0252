//! Which few settings locate any single bad alternative? The fewest, by complete search within a bound.

use super::{Gearbox, Settings};

/// The most sets of settings that are tried before the plan falls back to one setting after another.
pub const MOST_SETS: usize = 4_000;

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
    classes.sort_unstable();
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
    let classes = classes(gearbox);
    // a stage with n alternatives needs n settings; n classes need a set of settings each, none of them empty
    let widest = gearbox.stages().iter().copied().max().unwrap_or(1);
    let bits = (usize::BITS - classes.len().leading_zeros()) as usize;
    let mut budget = MOST_SETS;
    for size in widest.max(bits)..=gearbox.len() {
        // alternatives of a stage may change names, so a set with the slowest setting stands for all
        match choose(&classes, gearbox.len(), 1, size - 1, 1, &mut budget) {
            Search::Found(set) => return settings(set, true),
            Search::Spent => break,
            Search::None => {}
        }
    }
    settings(greedy(&classes, gearbox), false)
}

enum Search {
    Found(Settings),
    None,
    Spent,
}

fn choose(
    classes: &[Settings],
    count: usize,
    from: usize,
    more: usize,
    set: Settings,
    budget: &mut usize,
) -> Search {
    if more == 0 {
        if *budget == 0 {
            return Search::Spent;
        }
        *budget -= 1;
        return if locates_all(classes, set) {
            Search::Found(set)
        } else {
            Search::None
        };
    }
    for setting in from..count {
        match choose(
            classes,
            count,
            setting + 1,
            more - 1,
            set | 1 << setting,
            budget,
        ) {
            Search::None => {}
            other => return other,
        }
    }
    Search::None
}

/// Adds the setting after which most alternatives stand apart, until all do.
fn greedy(classes: &[Settings], gearbox: &Gearbox) -> Settings {
    let apart = |set: Settings| {
        let mut seen: Vec<Settings> = classes.iter().map(|class| class & set).collect();
        seen.push(0);
        seen.sort_unstable();
        seen.dedup();
        seen.len()
    };
    let mut set: Settings = 1;
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
