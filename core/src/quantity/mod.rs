//! Units as types, shop notation in, plain figures out. Uses nothing else of the core.

mod about;
mod digits;
mod exact;
mod fraction;
mod kind;
mod noun;
mod print;
mod read;
mod spoken;
mod temperature;
mod typed;
mod unit;
mod usual;

pub use about::about;
pub(crate) use about::about_digits;
pub(crate) use digits::number;
pub use exact::Exact;
pub use fraction::{Fraction, nearest_fraction};
pub use kind::*;
pub use print::{NOTHING, decimal, join, paper, plain, signed, to_figures, whole, with_unit};
pub use read::{Choice, ReadFault, Reading, link_text, read};
pub use spoken::{spoken, spoken_fraction};
pub use temperature::Temperature;
pub use typed::*;
pub use unit::{Scale, Unit, units, units_of};
pub use usual::usual;
