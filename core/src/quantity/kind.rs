//! Which kinds of quantity are there, and in which units is each read and printed?

/// A kind of quantity. Fields and results carry one; the base unit is the one the typed quantity keeps.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum Kind {
    /// Millimetres.
    Length,
    /// Degrees.
    Angle,
    /// Change of diameter over length.
    Taper,
    /// Turns per minute.
    RotationalSpeed,
    /// Metres per minute.
    SurfaceSpeed,
    /// Millimetres per minute.
    FeedRate,
    /// Millimetres per turn.
    FeedPerRev,
    /// Millimetres per tooth.
    FeedPerTooth,
    /// Newtons.
    Force,
    /// Newton metres.
    Torque,
    /// Megapascals.
    Stress,
    /// Watts.
    Power,
    /// Degrees Celsius.
    Temperature,
    /// Kelvins.
    TemperatureDifference,
    /// Kilograms.
    Mass,
    /// Seconds.
    Time,
    /// Square millimetres.
    Area,
    /// Cubic millimetres per minute.
    RemovalRate,
    /// A fraction of one.
    Share,
    /// A bare number.
    Number,
    /// A whole number.
    Count,
    /// Millimetres of pitch.
    Pitch,
    /// Micrometres per metre and kelvin.
    Expansion,
}

/// The two systems of units that a shop works in.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum System {
    /// Inches, pounds, feet per minute.
    #[default]
    Inch,
    /// Millimetres, newtons, metres per minute.
    Metric,
}
