//! What is a kind of quantity called in a sentence?

use super::Kind;

impl Kind {
    /// The kind with its article: "a length".
    pub const fn noun(self) -> &'static str {
        match self {
            Self::Length => "a length",
            Self::Angle => "an angle",
            Self::Taper => "a taper",
            Self::RotationalSpeed => "a spindle speed",
            Self::SurfaceSpeed => "a surface speed",
            Self::FeedRate => "a feed per minute",
            Self::FeedPerRev => "a feed per rev",
            Self::FeedPerTooth => "a feed per tooth",
            Self::Force => "a force",
            Self::Torque => "a torque",
            Self::Stress => "a stress",
            Self::Power => "a power",
            Self::Temperature => "a temperature",
            Self::TemperatureDifference => "a difference of temperature",
            Self::Mass => "a weight",
            Self::Time => "a time",
            Self::Area => "an area",
            Self::RemovalRate => "a removal rate",
            Self::Share => "a percentage",
            Self::Number => "a plain number",
            Self::Count => "a count",
            Self::Pitch => "a pitch",
            Self::Expansion => "a rate of expansion",
        }
    }
}
