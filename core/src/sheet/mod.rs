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
//! const LENGTH: Of<Length> = Of::length("length", "Length")
//!     .example("7/16")
//!     .range(Range::within(0.0, 1000.0, "what a rule measures"))
//!     .when(&[when("of", &["two"])])
//!     .measured();
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
//!         LENGTH.field,
//!     ],
//!     results: &[Res::of("twice", "Two of them", Kind::Length).says("Both of the same length.")],
//!     examples: &[&[("length", "7/16")]],
//!     takes: &["length"],
//!     finds: None,
//!     figure,
//! };
//!
//! fn figure(inp: &Inputs, a: &mut Answer) -> Result<(), Stop> {
//!     let length = inp.of(&LENGTH)?;
//!     let twice = length * 2.0;
//!     a.line("twice", twice);
//!     a.work(|w| {
//!         w.put(inp.system(), "Two of them", "t = 2 L", &[("L", num(length))], num(twice), &RULE);
//!     });
//!     a.source(&RULE);
//!     Ok(())
//! }
//!
//! let outcome = evaluate(&DOUBLE, &Entry::of(&[("length", "7/16")]));
//! assert_eq!(outcome.answer.lines[0].value.text(Default::default()), "0.8750");
//! assert_eq!(outcome.answer.steps[0].lines[1], "t = 2 × 0.4375 = 0.8750 in");
//! ```

mod answer;
mod entry;
mod evaluate;
mod fault;
mod field;
mod inputs;
mod line;
mod misread;
mod of;
mod pinned;
mod put;
mod range;
mod read;
mod rows;
#[allow(clippy::module_inception)] // the room is named after what it holds
mod sheet;
mod show;
mod split;
mod table;
mod thing;
mod value;
mod wanting;
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
pub use of::*;
pub(crate) use pinned::pin;
pub use pinned::pinned;
pub use put::*;
pub use sheet::*;
pub use table::*;
pub use thing::*;
pub use value::*;
pub use wanting::*;
pub use words::lowered;
