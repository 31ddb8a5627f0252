//! Which machines are there? One of each kind is taken for granted; a second one has a name and its own texts.

use crate::sheet::ShopItem;

/// The most machines of a kind.
pub const MOST_MACHINES: usize = 12;
/// The most characters of a machine's name.
pub(crate) const MOST_NAME: usize = 40;

/// A kind of machine, with a plate of its own.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum MachineKind {
    /// A mill.
    Mill,
    /// A drill press.
    DrillPress,
    /// A lathe.
    Lathe,
}

impl MachineKind {
    /// All kinds, in the order of the page.
    pub const ALL: [Self; 3] = [Self::Mill, Self::DrillPress, Self::Lathe];
    /// Stands in links.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Mill => "mill",
            Self::DrillPress => "drill-press",
            Self::Lathe => "lathe",
        }
    }
    /// On screen.
    pub const fn label(self) -> &'static str {
        match self {
            Self::Mill => "Mill",
            Self::DrillPress => "Drill press",
            Self::Lathe => "Lathe",
        }
    }
    /// By its id.
    pub fn of_id(id: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|kind| kind.id() == id)
    }
    /// The kind of machine that an item is read from; none for what stands on the bench.
    pub const fn of(item: ShopItem) -> Option<Self> {
        match item {
            ShopItem::SpindleSteps
            | ShopItem::FeedSteps
            | ShopItem::FeedStepsTurn
            | ShopItem::FeedFollows
            | ShopItem::Rapid
            | ShopItem::ScrewLead
            | ShopItem::DialTurn
            | ShopItem::DialDivisions
            | ShopItem::SpindleTaper
            | ShopItem::Arbor
            | ShopItem::Motor
            | ShopItem::DriveEfficiency => Some(Self::Mill),
            ShopItem::DrillPressSteps => Some(Self::DrillPress),
            ShopItem::LatheSteps
            | ShopItem::LatheFeeds
            | ShopItem::LatheMotor
            | ShopItem::Leadscrew
            | ShopItem::ChangeWheels
            | ShopItem::ThreadDialWheel
            | ShopItem::ThreadDialLines => Some(Self::Lathe),
            ShopItem::DrillSets | ShopItem::WrenchLow | ShopItem::WrenchHigh => None,
        }
    }
}

/// A machine.
#[derive(Clone, PartialEq, Eq, Debug)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Machine {
    /// What it is.
    pub kind: MachineKind,
    /// What the user calls it; may be empty.
    #[cfg_attr(feature = "serde", serde(default))]
    pub name: String,
    /// Texts by the ids of the shop's fields.
    #[cfg_attr(feature = "serde", serde(default))]
    pub items: Vec<(String, String)>,
    /// It is the one in use, where that is not the first of its kind.
    #[cfg_attr(feature = "serde", serde(default))]
    pub in_use: bool,
}

impl Machine {
    /// A machine of which nothing is known.
    pub const fn blank(kind: MachineKind) -> Self {
        Self {
            kind,
            name: String::new(),
            items: Vec::new(),
            in_use: false,
        }
    }
}
