//! What is kept? Versioned documents with a pure reducer, undo, and a file form that an older version refuses
//! politely: *my shop*, the *kept* list and the *proving* record.

mod file;
mod kept;
pub mod proving;
mod shop;
mod shop_difference;
mod undo;

pub use file::{File, Head, RecordFault, check};
pub use kept::{Kept, KeptAction, KeptItem, Leads};
pub use proving::{Proving, ProvingAction};
pub use shop::{
    DRILL_PRESS, DRILL_SETS, FEED_STEP, FEEDS, FEEDS_TURN, FOLLOWS, LATHE, MOST_MACHINES, Machine,
    MachineKind, SHOP, SPEED_STEP, SPINDLE, Shop, ShopAction, TURN_FEED_STEP, WHEEL,
};
pub use shop_difference::{ShopDifference, shop_differences};
pub use undo::Undo;

use crate::quantity::System;

/// A versioned document with a pure reducer.
pub trait Record: Clone + Default + PartialEq {
    /// What may be done to it.
    type Action: Clone + PartialEq + core::fmt::Debug;
    /// Its name in files: "my-shop".
    const NAME: &'static str;
    /// The version that this program writes.
    const VERSION: u32;
    /// The record after an action; the same where the action changes nothing.
    #[must_use]
    fn after(&self, action: &Self::Action) -> Self;
    /// The record as a file of an older version holds it, brought to this one without loss. `known` is the system of
    /// units that bare figures were read in when it was written, where that is known.
    #[must_use]
    fn of_older(self, _version: u32, _known: Option<System>) -> Self {
        self
    }
    /// True where the record shows what an action did, so that doing it again would add nothing. What another tab wrote at
    /// the same moment is asked this of each thing just done here.
    fn holds(&self, action: &Self::Action) -> bool {
        self.after(action) == *self
    }
    /// What another tab wrote, as this one shows it: what belongs to the screen alone stays as it is here.
    #[must_use]
    fn refreshed(&self, fresh: Self) -> Self {
        fresh
    }
}
