//! Does the machine do what its plate says, both ways on every axis? A record of tests: what was looked at, what was
//! measured, what was found in order. It is a record; it passes and fails nothing.

mod action;
mod compare;
mod items;
mod measured;
mod view;

pub use action::{AxisPart, ProvingAction, TestAction};
use measured::is_bare;
pub use measured::{Measured, pin_measured, read_measured};
pub use view::{ProvingLine, ProvingSection, ProvingView, view};

use super::{Record, Shop};
use crate::quantity::{Kind, System};
use crate::sheet::{Field, Preset, ShopItem, plain_text};

/// The most axes of a test.
pub const MOST_AXES: usize = 8;

/// All tests on this device, and the one that is open.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Proving {
    /// The tests, oldest first.
    pub tests: Vec<Test>,
    /// Which of them is open.
    #[cfg_attr(feature = "serde", serde(default))]
    pub open: usize,
}

/// One machine's test.
#[derive(Clone, PartialEq, Eq, Debug)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(default))]
pub struct Test {
    /// What the user calls it.
    pub machine: String,
    /// What it was called before, the latest last: a link kept under an old name still finds it.
    #[cfg_attr(feature = "serde", serde(default))]
    pub was: Vec<String>,
    /// The day, as the app gives it or the user types it.
    pub day: String,
    /// Who tests.
    pub by: String,
    /// The spindle speed that feeds were tested at.
    pub spindle: String,
    /// The user's note on the whole.
    pub note: String,
    /// The axes.
    pub axes: Vec<Axis>,
    /// What the plate says.
    pub plate: Plate,
    /// Which steps of the plate are tried.
    pub ladder: Ladder,
    /// What was found, by the id of the line.
    pub found: Vec<Finding>,
    /// The key of the next new axis.
    pub next_key: u32,
    /// The system that bare figures of a test of an older version are read in; none where that is not known. Newer tests
    /// hold no bare figures: each is written down with its unit.
    pub bare: Option<System>,
}

/// One axis.
#[derive(Clone, PartialEq, Eq, Debug)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub struct Axis {
    /// Its key in the lines' ids, never used again for another.
    pub key: u32,
    /// "Longitudinal".
    pub name: String,
    /// Its two ways: "left", "right".
    pub ways: [String; 2],
    /// Which part of the plate's feeds this axis runs at: "1", "1/2".
    pub share: String,
}

/// What the plate says, taken from *my shop* when the test was begun, so that a later change there leaves it alone.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(default))]
pub struct Plate {
    /// Feed steps, texts: per turn where the feed follows the spindle, but per minute in a test begun by an old version.
    pub feeds: Vec<String>,
    /// Rapid traverse, text.
    pub rapid: String,
    /// Spindle speeds, texts.
    pub speeds: Vec<String>,
    /// The feed follows the spindle.
    pub follows: bool,
}

/// Which steps are tried.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Ladder {
    /// Every step of the plate.
    #[default]
    All,
    /// The lowest, the middle one, the highest.
    Three,
}

/// What was found at one line.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(default))]
pub struct Finding {
    /// The line's id.
    pub id: String,
    /// What was measured, as typed.
    pub measured: String,
    /// What it should be, typed in place of the plate's.
    pub wanted: String,
    /// The user's note.
    pub note: String,
    /// What it was found to be.
    pub mark: Mark,
}

/// What a line was found to be, in the user's judgment.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
pub enum Mark {
    /// Not looked at yet.
    #[default]
    Open,
    /// In order.
    Good,
    /// Not in order.
    Bad,
}

impl Default for Test {
    fn default() -> Self {
        let axis = |key, name: &str, one: &str, other: &str| Axis {
            key,
            name: name.into(),
            ways: [one.into(), other.into()],
            share: "1".into(),
        };
        Self {
            machine: String::new(),
            was: Vec::new(),
            day: String::new(),
            by: String::new(),
            spindle: String::new(),
            note: String::new(),
            axes: vec![
                axis(1, "Longitudinal", "left", "right"),
                axis(2, "Cross", "in", "out"),
                axis(3, "Vertical", "up", "down"),
            ],
            plate: Plate::default(),
            ladder: Ladder::All,
            found: Vec::new(),
            next_key: 4,
            bare: None,
        }
    }
}

impl Plate {
    /// The plate that stands in a shop.
    pub fn of(shop: &Shop) -> Self {
        let text = |item| item_text(shop, item);
        let steps = |item| {
            let typed = text(item);
            // with commas or spaces between the steps, as on the plate: in its plain form
            let of = |field: &&Field| field.preset.item() == Some(item);
            let text = match super::SHOP.fields.iter().find(of) {
                Some(field) if typed.contains([',', ' ', '\t']) => {
                    plain_text(field, &typed, shop.system)
                }
                _ => typed,
            };
            let steps = text.split([';', '\n']).map(str::trim);
            steps
                .filter(|step| !step.is_empty())
                .map(str::to_owned)
                .collect()
        };
        let follows = text(ShopItem::FeedFollows) == "spindle";
        Self {
            feeds: steps(if follows {
                ShopItem::FeedStepsTurn
            } else {
                ShopItem::FeedSteps
            }),
            rapid: text(ShopItem::Rapid),
            speeds: steps(ShopItem::SpindleSteps),
            follows,
        }
    }
}

/// A shop's text of an item, else the general shop's.
fn item_text(shop: &Shop, item: ShopItem) -> String {
    let general = super::SHOP
        .fields
        .iter()
        .find_map(|field| match field.preset {
            Preset::Shop(of, text) if of == item => Some(text),
            _ => None,
        });
    shop.text(item)
        .unwrap_or_else(|| general.unwrap_or_default().to_owned())
}

impl Proving {
    /// The test of this name, else the one that was called so before.
    pub fn called(&self, name: &str) -> Option<usize> {
        let now = self.tests.iter().position(|test| test.machine == name);
        let before = |test: &Test| test.was.iter().any(|was| was == name);
        now.or_else(|| self.tests.iter().position(before))
    }
    /// The open test.
    pub fn now(&self) -> Option<&Test> {
        self.tests.get(self.open)
    }
}

impl Test {
    /// True where figures without a unit stand in it whose meaning hangs on the system: a test of an older version.
    pub fn has_bare(&self) -> bool {
        let parts = items::parts(self);
        let kinds = parts
            .iter()
            .flat_map(|part| &part.items)
            .filter_map(|item| Some((item.id.as_str(), item.asks.kind()?)));
        let kinds: Vec<(&str, Kind)> = kinds.collect();
        self.found.iter().any(|line| {
            let kind = kinds.iter().find(|(id, _)| *id == line.id);
            kind.is_some_and(|(_, kind)| {
                let texts = [&line.measured, &line.wanted];
                texts.into_iter().any(|text| is_bare(text, *kind))
            })
        })
    }
    /// True where both say the same; in which system bare figures are read is no part of it.
    fn says_as(&self, other: &Self) -> bool {
        let with = |bare| Self {
            bare,
            ..other.clone()
        };
        *self == with(self.bare)
    }
    /// What was found at a line; empty where nothing was.
    pub fn at(&self, id: &str) -> Finding {
        let found = self.found.iter().find(|finding| finding.id == id);
        found.cloned().unwrap_or_else(|| Finding {
            id: id.to_owned(),
            ..Finding::default()
        })
    }
}

impl Record for Proving {
    type Action = ProvingAction;
    const NAME: &'static str = "proving";
    // 2: every figure has the unit that it was read in
    const VERSION: u32 = 2;

    fn after(&self, action: &ProvingAction) -> Self {
        action::after(self, action)
    }

    fn of_older(mut self, _version: u32, known: Option<System>) -> Self {
        for test in &mut self.tests {
            test.bare = test.bare.or(known);
        }
        self
    }

    fn holds(&self, action: &ProvingAction) -> bool {
        match action {
            ProvingAction::Begin(machine, ..) => self.called(machine.trim()).is_some(),
            ProvingAction::TakeIn(other) => other
                .tests
                .iter()
                .all(|test| self.tests.iter().any(|own| own.says_as(test))),
            // places may have moved since: what another tab says of them will do
            ProvingAction::Open(_) | ProvingAction::Remove(_) => true,
            ProvingAction::On(_) | ProvingAction::At(..) => self.after(action) == *self,
        }
    }

    // which test is open belongs to each tab
    fn refreshed(&self, mut fresh: Self) -> Self {
        if let Some(at) = self.now().and_then(|test| fresh.called(&test.machine)) {
            fresh.open = at;
        }
        fresh
    }
}
