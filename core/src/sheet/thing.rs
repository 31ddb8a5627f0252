//! What is a field or a result in the shop, so that one answer goes on to the next question?

/// What a figure or a name stands for. A result of a thing is carried on into every field that takes the same thing.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum Thing {
    /// A screw thread by its call.
    Thread,
    /// Pitch of a thread.
    Pitch,
    /// A drill by its call.
    Drill,
    /// Size of a hole as drilled, before a tap or a reamer.
    DrilledHole,
    /// Size of a finished hole.
    Hole,
    /// Size of a shaft.
    Shaft,
    /// A fit by its call.
    Fit,
    /// A taper pin by its number.
    TaperPin,
    /// A dowel pin by its size.
    Dowel,
    /// Length of engagement of a thread.
    Engagement,
    /// Length of a hub or of a part on its shaft.
    HubLength,
    /// Work material.
    Material,
    /// Material of a nut, or of the part that holds the thread.
    ThreadMaterial,
    /// Grade of a screw.
    Grade,
    /// Friction of a screw: its state.
    Friction,
    /// Torque on a screw.
    Torque,
    /// Clamp force of a screw.
    Clamp,
    /// Torque on a tap.
    TapTorque,
    /// Material of a cutter.
    CutterMaterial,
    /// Diameter of a cutter.
    Cutter,
    /// Diameter of work that turns.
    TurnedWork,
    /// Teeth of a cutter.
    Teeth,
    /// Spindle speed.
    SpindleSpeed,
    /// Surface speed.
    SurfaceSpeed,
    /// Feed of a table per minute.
    TableFeed,
    /// Feed per turn.
    FeedPerTurn,
    /// Feed per tooth.
    FeedPerTooth,
    /// Depth of a cut along the cutter's axis.
    AxialDepth,
    /// Width of a cut across the cutter.
    RadialDepth,
    /// Length of a cut.
    CutLength,
    /// Depth of a hole.
    HoleDepth,
    /// Metal removed a minute.
    RemovalRate,
    /// Power at the cutter.
    Power,
    /// Roughness of a surface.
    Roughness,
    /// Backlash of a screw or a train.
    Backlash,
    /// Lead of a screw.
    Lead,
    /// Feed gears or change gears.
    Gears,
    /// Feeds of a plate.
    FeedPlate,
    /// Speeds of a plate.
    SpeedPlate,
    /// A length of no special kind.
    Length,
    /// A gap to be filled.
    Gap,
}

impl Thing {
    /// How much two questions have in common that share it: a name says more than a size, a size more than a metal.
    pub const fn weight(self) -> u8 {
        match self {
            Self::Thread
            | Self::Drill
            | Self::Fit
            | Self::TaperPin
            | Self::Dowel
            | Self::Gears
            | Self::FeedPlate
            | Self::SpeedPlate
            | Self::Torque
            | Self::Clamp
            | Self::Gap => 4,
            Self::Pitch
            | Self::DrilledHole
            | Self::Hole
            | Self::Shaft
            | Self::SpindleSpeed
            | Self::TableFeed
            | Self::TapTorque
            | Self::Backlash
            | Self::Lead
            | Self::RemovalRate
            | Self::Power
            | Self::Cutter
            | Self::TurnedWork => 2,
            Self::Engagement
            | Self::HubLength
            | Self::Material
            | Self::ThreadMaterial
            | Self::Grade
            | Self::Friction
            | Self::CutterMaterial
            | Self::Teeth
            | Self::SurfaceSpeed
            | Self::FeedPerTurn
            | Self::FeedPerTooth
            | Self::AxialDepth
            | Self::RadialDepth
            | Self::CutLength
            | Self::HoleDepth
            | Self::Roughness
            | Self::Length => 1,
        }
    }
}
