//! What may be wrong, and which settings does it touch?

use super::{Gearbox, Settings};

/// Something that may be wrong. Stages, alternatives and settings count from 0.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum Cause {
    /// What every setting uses: motor, belt, input, shafts, last pairs, screw.
    Common,
    /// An alternative of a stage: its pair or pairs of gears, its dogs, its place of the fork.
    Alternative {
        /// Stage.
        stage: usize,
        /// Alternative.
        at: usize,
    },
    /// Two neighbouring alternatives of a stage: what they share (a sliding gear, the fork's travel between them).
    Neighbours {
        /// Stage.
        stage: usize,
        /// The lower of the two.
        low: usize,
    },
    /// Two alternatives of two stages, only where both are in: load, speed, or levers that foul each other.
    Both {
        /// First stage and alternative.
        first: (usize, usize),
        /// Second stage and alternative.
        second: (usize, usize),
    },
    /// One setting alone: a detent, end thrust, or a wrong mark.
    Alone(usize),
}

impl Cause {
    /// The settings that it touches.
    pub fn touches(self, gearbox: &Gearbox) -> Settings {
        match self {
            Self::Common => gearbox.all(),
            Self::Alternative { stage, at } => gearbox.using(stage, at),
            Self::Neighbours { stage, low } => {
                gearbox.using(stage, low) | gearbox.using(stage, low + 1)
            }
            Self::Both { first, second } => {
                gearbox.using(first.0, first.1) & gearbox.using(second.0, second.1)
            }
            Self::Alone(setting) if setting < gearbox.len() => 1 << setting,
            Self::Alone(_) => 0,
        }
    }
}

/// The parts that may be bad each by itself: alternatives of stages with a choice. A stage without a choice belongs to what all
/// settings share.
pub(super) fn parts(gearbox: &Gearbox) -> Vec<(Cause, Settings)> {
    gearbox
        .alternatives()
        .filter(|&(stage, _)| gearbox.stages().get(stage).is_some_and(|&count| count > 1))
        .map(|(stage, at)| {
            let cause = Cause::Alternative { stage, at };
            (cause, cause.touches(gearbox))
        })
        .collect()
}

/// What two neighbouring alternatives of a stage share, where a set of causes has both: it touches the same settings.
pub(super) fn shared(causes: &[Cause]) -> Vec<Cause> {
    let mut found = Vec::new();
    for cause in causes {
        if let Cause::Alternative { stage, at } = *cause
            && causes.contains(&Cause::Alternative { stage, at: at + 1 })
        {
            found.push(Cause::Neighbours { stage, low: at });
        }
    }
    found
}

/// Two alternatives of two stages where both are in.
pub(super) fn boths(gearbox: &Gearbox) -> Vec<(Cause, Settings)> {
    let all: Vec<(usize, usize)> = gearbox.alternatives().collect();
    let mut found = Vec::new();
    for &first in &all {
        for &second in all.iter().filter(|second| second.0 > first.0) {
            let cause = Cause::Both { first, second };
            found.push((cause, cause.touches(gearbox)));
        }
    }
    found
}
