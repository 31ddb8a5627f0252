//! Which type does a field give? A field that knows it, so that an id and its kind are the compiler's business.
//!
//! ```
//! use benchslate_core::quantity::{Count, Length};
//! use benchslate_core::sheet::*;
//!
//! #[derive(Clone, Copy, PartialEq, Eq, Debug)]
//! enum Edge { Hss, Carbide }
//! impl Choices for Edge {
//!     const ALL: &'static [Self] = &[Self::Hss, Self::Carbide];
//!     const SHOWN: &'static [Choice] = &[choice("hss", "high-speed steel"), choice("carbide", "carbide")];
//! }
//! const TEETH: Of<Count> = Of::count("teeth", "Teeth").example("8");
//! const EDGE: Of<One<Edge>> = Of::choice("tool", "Cutter material");
//! static FIELDS: &[Field] = &[TEETH.field, EDGE.field];
//! assert_eq!(FIELDS[1].id, EDGE.field.id);
//! ```

use super::{Choice, Field, Input, Inputs, Range, ShopItem, Stop, Thing, When};
use crate::call::Call;
use crate::quantity::{Count, FeedRate, Length, Quantity, Share, Unit};
use core::marker::PhantomData;

/// A field that gives a `T`.
pub struct Of<T> {
    /// The field, for the sheet's list.
    pub field: Field,
    gives: PhantomData<fn() -> T>,
}

/// The choices of a field, matched without a rest: one added is one that every match has to answer for.
pub trait Choices: Copy + PartialEq + 'static {
    /// All, in the order of [`Choices::SHOWN`].
    const ALL: &'static [Self];
    /// Their ids and labels, in the same order.
    const SHOWN: &'static [Choice];
    /// The one of this id.
    fn of_id(id: &str) -> Option<Self> {
        let at = Self::SHOWN.iter().position(|shown| shown.id == id)?;
        Self::ALL.get(at).copied()
    }
}

/// What a choice field gives.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct One<C>(pub C);

/// What a call field gives: the plain way to write it.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Called(pub String);

/// What a field can give.
pub trait Given: Sized {
    /// Out of a reading.
    fn given(input: &Input) -> Option<Self>;
}
impl<Q: Quantity> Given for Q {
    fn given(input: &Input) -> Option<Self> {
        match input {
            Input::Quantity { nominal, .. } => Some(Q::from_base(*nominal)),
            _ => None,
        }
    }
}
impl<C: Choices> Given for One<C> {
    fn given(input: &Input) -> Option<Self> {
        match input {
            Input::Choice(choice) => C::of_id(choice.id).map(One),
            _ => None,
        }
    }
}
impl Given for Called {
    fn given(input: &Input) -> Option<Self> {
        match input {
            Input::Call(call) => Some(Self(call.clone())),
            _ => None,
        }
    }
}
impl<Q: Quantity> Given for Vec<Q> {
    fn given(input: &Input) -> Option<Self> {
        let Input::Rows(rows) = input else {
            return None;
        };
        let cells = rows.iter().filter_map(|row| row.first()?.as_ref());
        Some(cells.filter_map(Q::given).collect())
    }
}

impl<T> Of<T> {
    /// A field that gives a `T`: what its kind is told by hand must be right.
    const fn new(field: Field) -> Self {
        Self {
            field,
            gives: PhantomData,
        }
    }
    /// An accepted example.
    pub const fn example(mut self, text: &'static str) -> Self {
        self.field.example = text;
        self
    }
    /// One line of help.
    pub const fn hint(mut self, text: &'static str) -> Self {
        self.field.hint = text;
        self
    }
    /// Another label than the shared one.
    pub const fn label(mut self, text: &'static str) -> Self {
        self.field.label = text;
        self
    }
    /// Another id than the shared one.
    pub const fn id(mut self, id: &'static str) -> Self {
        self.field.id = id;
        self
    }
    /// What holds when nothing is typed.
    pub const fn preset(mut self, text: &'static str) -> Self {
        self.field.preset = super::Preset::Text(text);
        self
    }
    /// Filled from *my shop*; `general` is what the general shop says.
    pub const fn from_shop(mut self, item: ShopItem, general: &'static str) -> Self {
        self.field.preset = super::Preset::Shop(item, general);
        self
    }
    /// Typed in by *my shop* where it says so; else its preset holds, or it is asked for.
    pub const fn filled_from_shop(mut self, item: ShopItem) -> Self {
        self.field = self.field.filled_from_shop(item);
        self
    }
    /// The allowed range, with its reason.
    pub const fn range(mut self, range: Range) -> Self {
        self.field.range = Some(range);
        self
    }
    /// Conditions, all of which must hold.
    pub const fn when(mut self, when: &'static [When]) -> Self {
        self.field.when = when;
        self
    }
    /// A measured size: it may carry ±.
    pub const fn measured(mut self) -> Self {
        self.field.is_measured = true;
        self
    }
    /// Results rise or fall steadily with it.
    pub const fn monotonic(mut self) -> Self {
        self.field.is_monotonic = true;
        self
    }
    /// May stay empty.
    pub const fn optional(mut self) -> Self {
        self.field.is_optional = true;
        self
    }
    /// Seldom asked for.
    pub const fn seldom(mut self) -> Self {
        self.field.is_seldom = true;
        self
    }
    /// What it takes, for the questions that go on to it.
    pub const fn is(mut self, thing: Thing) -> Self {
        self.field.thing = Some(thing);
        self
    }
}

impl<Q: Quantity> Of<Q> {
    /// A quantity in the units given, the first of each system first.
    pub const fn quantity(
        id: &'static str,
        label: &'static str,
        units: &'static [&'static Unit],
    ) -> Self {
        Self::new(Field::quantity(id, label, Q::KIND, units))
    }
}
impl<Q: Quantity> Of<Vec<Q>> {
    /// A list of one column of such quantities.
    pub const fn list(
        id: &'static str,
        label: &'static str,
        columns: &'static [Field],
        least: usize,
        most: usize,
    ) -> Self {
        Self::new(Field::rows(id, label, columns, least, most))
    }
}
impl Of<Length> {
    /// A length in inches, thousandths or millimetres.
    pub const fn length(id: &'static str, label: &'static str) -> Self {
        Self::new(Field::length(id, label))
    }
}
impl Of<Count> {
    /// A whole number of things.
    pub const fn count(id: &'static str, label: &'static str) -> Self {
        Self::new(Field::count(id, label))
    }
}
impl Of<Share> {
    /// A percentage.
    pub const fn percent(id: &'static str, label: &'static str) -> Self {
        Self::new(Field::percent(id, label))
    }
}
impl Of<FeedRate> {
    /// Feed of a table per minute.
    pub const fn table_feed(id: &'static str, label: &'static str) -> Self {
        Self::new(Field::table_feed(id, label))
    }
}
impl Of<Called> {
    /// A named standard thing.
    pub const fn call(id: &'static str, label: &'static str, call: &'static Call) -> Self {
        Self::new(Field::call(id, label, call))
    }
}
impl<C: Choices> Of<One<C>> {
    /// One of a few, the first being the default.
    pub const fn choice(id: &'static str, label: &'static str) -> Self {
        const { assert!(C::ALL.len() == C::SHOWN.len()) }
        Self::new(Field::choice(id, label, C::SHOWN))
    }
}

impl Inputs {
    /// What a field gives that is needed.
    ///
    /// # Errors
    /// [`Stop::Missing`] where the field is empty, at fault or does not apply.
    pub fn of<T: Given>(&self, of: &Of<T>) -> Result<T, Stop> {
        self.of_opt(of).ok_or(Stop::Missing(of.field.id))
    }
    /// What a field gives that may be empty.
    pub fn of_opt<T: Given>(&self, of: &Of<T>) -> Option<T> {
        T::given(self.input(of.field.id)?)
    }
    /// The choice made in a field that applies.
    ///
    /// # Errors
    /// [`Stop::Missing`] where the field does not apply, or its text is no choice.
    pub fn one<C: Choices>(&self, of: &Of<One<C>>) -> Result<C, Stop> {
        self.of(of).map(|One(choice)| choice)
    }
}
