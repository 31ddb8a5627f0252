//! Benchslate's core answers the questions of a machine shop: which drill before this tap, how fast for this cutter, how
//! tight for this bolt. Each question is a [`Sheet`](sheet::Sheet), declared data and one pure function, so that whoever
//! shows it (a page, a terminal, a program) needs to know no question by name.
//!
//! ```
//! use benchslate_core::quantity::System;
//! use benchslate_core::sheet::{Entry, evaluate};
//! use benchslate_core::sheets;
//!
//! let sheet = sheets::by_id("tap-drill").unwrap();
//! let outcome = evaluate(sheet, &Entry::of(&[("thread", "1/4-20")]));
//!
//! let hole = outcome.answer.get("hole").unwrap();
//! assert_eq!(hole.label, "Hole for the percent wanted");
//! assert_eq!(hole.value.text_with_unit(System::Inch), "0.2013 in");
//! assert_eq!(hole.value.text_with_unit(System::Metric), "5.113 mm");
//! assert!(outcome.answer.cautions.iter().any(|caution| caution.stop));
//!
//! // what was not understood is said with its field and its cure, and no number stands
//! let faulty = evaluate(sheet, &Entry::of(&[("thread", "1/4-2x")]));
//! assert_eq!(faulty.faults().next().unwrap().field, "thread");
//! assert!(!faulty.answer.is_complete());
//! ```
//!
//! # Rooms
//!
//! | room | question it answers |
//! | --- | --- |
//! | [`quantity`] | Which quantity, in which unit, how read and how printed? |
//! | [`source`], [`standards`] | Where does a figure come from, and what do the published tables say? |
//! | [`call`], [`calls`] | How is a named standard thing written: a thread, a drill, a pin, a fit? |
//! | [`cutting`], [`machine`], [`thread`], [`fastener`], [`pin`], [`fit`] | What is the formula? Typed functions, a library of their own |
//! | [`sheet`], [`drawing`] | What is a calculation, and what may it draw? The contract, with a whole small sheet |
//! | [`sheets`] | Which questions are there? |
//! | [`link`] | What is an entry as a link, and a link as an entry? |
//! | [`powers`] | What range does ± leave, which entry gives a wanted result, how does a result run? |
//! | [`search`] | What did one mean by a line of text? |
//! | [`record`] | What is kept: my shop, the saved list, the proving record? |
//! | [`order`] | How is a list put in order, without a copy of the sort for every kind of row? |
//!
//! # It does
//!
//! - read what the shop writes: `1-21/64`, `#7`, `14 thou 5 tenths`, `M8`, `3/8-16 UNC`, `0.250 ±0.001`;
//! - keep lengths to 0.1 nm and print them as they came in; the same digits on every target (`libm`);
//! - name for every figure its source and how sure it is, and show the working with this entry's numbers;
//! - refuse in words: the field, what was typed, the range allowed and the cure;
//! - warn before a step that can't be undone.
//!
//! # It does not
//!
//! - panic, read a clock, touch a screen, a file or a network, or keep anything between two calls;
//! - guess: a comma or a word with two meanings is asked about, and nothing is clamped to a table's end;
//! - go past its sources: outside a table there is no number, only the reason;
//! - judge a part, a machine or a person's work: a result is a starting point for a skilled person.
#![forbid(unsafe_code)]

pub mod call;
pub mod calls;
pub mod cutting;
pub mod drawing;
pub mod fastener;
pub mod fit;
pub mod link;
pub mod machine;
pub(crate) mod notation;
pub mod onward;
pub mod order;
pub mod pin;
pub mod powers;
pub mod quantity;
pub mod record;
pub mod search;
pub mod sheet;
pub mod sheets;
pub mod source;
pub mod standards;
pub mod thread;
