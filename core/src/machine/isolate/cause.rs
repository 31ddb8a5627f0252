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
    /// How likely it is beside the others before anything is tried: a share used only to rank what to try next.
    pub(super) const fn weight(self) -> f64 {
        match self {
            Self::Alternative { .. } => 1.0,
            Self::Common | Self::Neighbours { .. } => 0.25,
            Self::Both { .. } | Self::Alone(_) => 0.05,
        }
    }
}

/// Single causes and what each touches, one for each distinct set; others that touch the same are listed with it.
pub(super) fn singles(gearbox: &Gearbox) -> Vec<(Cause, Settings, Vec<Cause>)> {
    let neighbours = gearbox
        .stages()
        .iter()
        .enumerate()
        .flat_map(|(stage, &count)| {
            (1..count).map(move |high| Cause::Neighbours {
                stage,
                low: high - 1,
            })
        });
    let alternatives = gearbox
        .alternatives()
        .map(|(stage, at)| Cause::Alternative { stage, at });
    let mut found: Vec<(Cause, Settings, Vec<Cause>)> = Vec::new();
    for cause in core::iter::once(Cause::Common)
        .chain(alternatives)
        .chain(neighbours)
    {
        let touches = cause.touches(gearbox);
        match found.iter_mut().find(|(_, own, _)| *own == touches) {
            Some((_, _, same)) => same.push(cause),
            None => found.push((cause, touches, Vec::new())),
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
