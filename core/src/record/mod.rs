//! What is kept? Versioned documents with a pure reducer, undo, and a file form that an older version refuses
//! politely: *my shop*, the *kept* list and the *proving* record.

mod file;
mod kept;
pub mod proving;
mod shop;
mod shop_difference;
mod undo;

pub use file::{File, Head, RecordFault, check};
pub use kept::{Kept, KeptAction, KeptItem};
pub use proving::{Proving, ProvingAction};
pub use shop::{
    DRILL_PRESS, DRILL_SETS, FEED_STEP, FEEDS, FEEDS_TURN, FOLLOWS, LATHE, MOST_MACHINES, Machine,
    MachineKind, SHOP, SPEED_STEP, SPINDLE, Shop, ShopAction, TURN_FEED_STEP, WHEEL,
};
pub use shop_difference::{ShopDifference, shop_differences};
pub use undo::Undo;

/// A versioned document with a pure reducer.
pub trait Record: Clone + Default + PartialEq {
    /// What may be done to it.
    type Action;
    /// Its name in files: "my-shop".
    const NAME: &'static str;
    /// The version that this program writes.
    const VERSION: u32;
    /// The record after an action; the same where the action changes nothing.
    #[must_use]
    fn after(&self, action: &Self::Action) -> Self;
}
