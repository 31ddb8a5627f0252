//! How does a setting run? One mark a setting, and the sets of those that run well and badly.

use super::Settings;

/// What was found when a setting was tried.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug, Default)]
pub enum Mark {
    /// Not tried yet.
    #[default]
    Untested,
    /// Goes into gear well and runs well.
    Well,
    /// Slow to go into gear.
    Slow,
    /// Won't go into gear.
    NoMesh,
    /// Jumps out.
    JumpsOut,
    /// Noisy.
    Noisy,
    /// Gives a wrong feed or speed.
    WrongRate,
}

impl Mark {
    /// All, in the order in which a tap goes through them.
    pub const ALL: [Self; 7] = [
        Self::Untested,
        Self::Well,
        Self::Slow,
        Self::NoMesh,
        Self::JumpsOut,
        Self::Noisy,
        Self::WrongRate,
    ];
    /// Stands in links.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Untested => "untested",
            Self::Well => "well",
            Self::Slow => "slow",
            Self::NoMesh => "no-mesh",
            Self::JumpsOut => "jumps",
            Self::Noisy => "noisy",
            Self::WrongRate => "rate",
        }
    }
    /// In words.
    pub const fn words(self) -> &'static str {
        match self {
            Self::Untested => "not tried",
            Self::Well => "goes in well",
            Self::Slow => "slow to go in",
            Self::NoMesh => "won't go into gear",
            Self::JumpsOut => "jumps out",
            Self::Noisy => "noisy",
            Self::WrongRate => "wrong feed or speed",
        }
    }
    /// By its id.
    pub fn by_id(id: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|mark| mark.id() == id)
    }
    /// The mark that a tap puts in its place.
    pub fn next(self) -> Self {
        let at = Self::ALL.iter().position(|mark| *mark == self).unwrap_or(0);
        Self::ALL.get(at + 1).copied().unwrap_or_default()
    }
    /// Tried, and not well.
    pub const fn is_bad(self) -> bool {
        !matches!(self, Self::Untested | Self::Well)
    }
}

/// The settings that run badly, and those that run well.
pub fn split(marks: &[Mark]) -> (Settings, Settings) {
    let set = |wanted: fn(&Mark) -> bool| {
        marks
            .iter()
            .take(super::MOST_SETTINGS)
            .enumerate()
            .filter(|(_, mark)| wanted(mark))
            .fold(0, |set: Settings, (setting, _)| set | 1 << setting)
    };
    (set(|mark| mark.is_bad()), set(|mark| *mark == Mark::Well))
}
