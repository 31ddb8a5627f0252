//! What is a field or a result in the shop, so that one answer goes on to the next question?

/// What a name or a figure stands for: what an answer has of it is carried on into every field that takes the same.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum Thing {
    /// A screw thread by its call.
    Thread,
    /// A fit by its call.
    Fit,
    /// Work material.
    Material,
}

impl Thing {
    /// How much two questions have in common that share it: a name is worth an offer by itself, a metal is not.
    pub const fn weight(self) -> u16 {
        match self {
            Self::Thread | Self::Fit => 4,
            Self::Material => 1,
        }
    }
}
