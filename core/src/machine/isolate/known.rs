//! What do the marks prove, part by part? Each part cleared, proven bad, or open; each setting sure to run well, badly, or in doubt.
//!
//! Any number of parts may be bad. A setting runs badly where one part in it is bad, so one that runs well clears all that is in
//! it, and one that runs badly proves the only part of it that is not cleared.

use super::cause::parts;
use super::{Cause, Gearbox, Settings};

/// A set of parts: bit `n` is part `n` of [`Known::parts`].
type Parts = u64;

/// What the marks prove.
pub(super) struct Known {
    /// Parts that may be bad by themselves, and what each touches; last what all settings share.
    pub parts: Vec<(Cause, Settings)>,
    uses: Vec<Parts>,
    cleared: Parts,
    /// What is not cleared in each setting that runs badly, none of them empty.
    doubts: Vec<Parts>,
    /// Settings that run badly though all in them runs well elsewhere.
    pub odd: Settings,
}

impl Known {
    pub fn new(gearbox: &Gearbox, bad: Settings, good: Settings) -> Self {
        let mut parts = parts(gearbox);
        parts.push((Cause::Common, gearbox.all()));
        let uses: Vec<Parts> = (0..gearbox.len())
            .map(|setting| {
                let own = parts.iter().enumerate();
                own.filter(|(_, (_, touches))| touches >> setting & 1 == 1)
                    .fold(0, |set, (part, _)| set | 1 << part)
            })
            .collect();
        let within = |settings: Settings| {
            uses.iter()
                .enumerate()
                .filter(move |(setting, _)| settings >> setting & 1 == 1)
                .map(|(setting, uses)| (setting, *uses))
        };
        let cleared = within(good).fold(0, |set, (_, uses)| set | uses);
        let mut doubts = Vec::new();
        let mut odd = 0;
        for (setting, uses) in within(bad) {
            match uses & !cleared {
                0 => odd |= 1 << setting,
                open => doubts.push(open),
            }
        }
        Self {
            parts,
            uses,
            cleared,
            doubts,
            odd,
        }
    }
    /// Parts in a setting that are not cleared.
    pub fn open(&self, setting: usize) -> Parts {
        self.uses
            .get(setting)
            .map_or(0, |uses| uses & !self.cleared)
    }
    /// Those of them that are not proven bad either.
    pub fn untold(&self, setting: usize) -> Parts {
        self.open(setting) & !self.proven_set()
    }
    /// Whether a setting that is not tried may run well or badly, for all that is known. Past that no setting tells more.
    pub fn in_doubt(&self, setting: usize) -> bool {
        let open = self.open(setting);
        open != 0 && !self.doubts.iter().any(|doubt| doubt & !open == 0)
    }
    /// Parts that are bad whatever else is: all beside each in some bad setting is cleared.
    pub fn proven(&self) -> impl Iterator<Item = Cause> + '_ {
        let set = self.proven_set();
        self.parts
            .iter()
            .enumerate()
            .filter(move |(part, _)| set >> part & 1 == 1)
            .map(|(_, (cause, _))| *cause)
    }
    fn proven_set(&self) -> Parts {
        let lone = |doubt: &&Parts| doubt.is_power_of_two();
        self.doubts
            .iter()
            .filter(lone)
            .fold(0, |set, one| set | one)
    }
}
