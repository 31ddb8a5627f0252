//! The contract: what is a sheet? Declared data plus one pure function; everything else is derived from it.
//!
//! A sheet declares who it is, its [`Field`]s and its results ([`Res`]), and figures an [`Answer`] from [`Inputs`].
//! [`evaluate`] reads an [`Entry`] (typed texts by field id) against the declaration, and calls the function only when
//! every field that applies is read without fault.
//!
//! # Adding a sheet
//!
//! ```
//! use benchslate_core::quantity::{Length, Kind};
//! use benchslate_core::sheet::*;
//!
//! static RULE: Source = Source::practice("A rule of this example");
//!
//! static DOUBLE: Sheet = Sheet {
//!     id: "double",
//!     revision: 1,
//!     title: "Twice a length",
//!     question: "How long are two of them?",
//!     aside: "length",
//!     words: &["twice"],
//!     group: Group::Identify,
//!     fields: &[
//!         Field::choice("of", "How many", &[choice("two", "two"), choice("three", "three")]),
//!         Field::length("length", "Length")
//!             .example("7/16")
//!             .range_mm(0.0, 1000.0, "what a rule measures")
//!             .when(&[when("of", &["two"])])
//!             .measured(),
//!     ],
//!     results: &[Res::of("twice", "Two of them", Kind::Length)],
//!     examples: &[&[("length", "7/16")]],
//!     takes: &["length"],
//!     finds: None,
//!     figure,
//! };
//!
//! fn figure(inp: &Inputs) -> Result<Answer, Stop> {
//!     let length: Length = inp.get("length")?;
//!     let twice = length * 2.0;
//!     let mut a = inp.answer();
//!     a.line("twice", twice).says("Both of the same length.");
//!     a.work(|w| {
//!         w.step("Two of them", &["t = 2 × L".into(), format!("t = 2 × {} = {}", inp.num(length), inp.show(twice))], &RULE);
//!     });
//!     a.source(&RULE);
//!     Ok(a)
//! }
//!
//! let outcome = evaluate(&DOUBLE, &Entry::of(&[("length", "7/16")]));
//! assert_eq!(outcome.answer.lines[0].value.text(Default::default()), "0.8750");
//! ```

mod answer;
mod entry;
mod evaluate;
mod fault;
mod field;
mod inputs;
mod line;
mod misread;
mod pinned;
mod range;
mod read;
mod rows;
#[allow(clippy::module_inception)] // the room is named after what it holds
mod sheet;
mod show;
mod split;
mod table;
mod value;
mod words;

pub use crate::call::{Call, Said};
pub use crate::drawing::*;
pub use crate::source::*;
pub use answer::*;
pub use entry::*;
pub use evaluate::*;
pub use fault::*;
pub use field::*;
pub use inputs::*;
pub use line::*;
pub(crate) use pinned::pin;
pub use pinned::pinned;
pub use sheet::*;
pub use table::*;
pub use value::*;
pub use words::lowered;
