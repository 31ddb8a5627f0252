//! A value that can be printed in either system: a quantity with its units and decimals, or words.

use crate::quantity::{Kind, Quantity, System, Unit, decimal, join, signed, usual};
use std::borrow::Cow;

/// Short text: declared or made.
pub type Text = Cow<'static, str>;

/// A printable value: a quantity with the units and decimals of each system, or words.
#[derive(Clone, PartialEq, Debug)]
pub enum Value {
    /// A quantity.
    Quantity {
        /// Its kind.
        kind: Kind,
        /// The number in the kind's base unit.
        base: f64,
        /// Unit of the inch system.
        inch: &'static Unit,
        /// Unit of the metric system.
        metric: &'static Unit,
        /// Decimals in the inch unit.
        inch_places: u8,
        /// Decimals in the metric unit.
        metric_places: u8,
        /// Printed with its sign always.
        signed: bool,
    },
    /// Words.
    Words(Text),
}

impl Value {
    /// A quantity with its kind's usual units and decimals.
    pub fn of<Q: Quantity>(q: Q) -> Self {
        let (inch, metric) = (usual(Q::KIND, System::Inch), usual(Q::KIND, System::Metric));
        Self::Quantity {
            kind: Q::KIND,
            base: q.base(),
            inch,
            metric,
            inch_places: inch.places,
            metric_places: metric.places,
            signed: false,
        }
    }
    /// Words.
    pub fn words(text: impl Into<Text>) -> Self {
        Self::Words(text.into())
    }
    /// With these decimals (inch unit, metric unit).
    pub fn places(mut self, inch: u8, metric: u8) -> Self {
        if let Self::Quantity {
            inch_places,
            metric_places,
            ..
        } = &mut self
        {
            (*inch_places, *metric_places) = (inch, metric);
        }
        self
    }
    /// In these units.
    pub fn units(mut self, in_inch: &'static Unit, in_metric: &'static Unit) -> Self {
        if let Self::Quantity {
            inch,
            metric,
            inch_places,
            metric_places,
            ..
        } = &mut self
        {
            (*inch, *metric) = (in_inch, in_metric);
            (*inch_places, *metric_places) = (in_inch.places, in_metric.places);
        }
        self
    }
    /// Printed with its sign always.
    pub fn signed(mut self) -> Self {
        if let Self::Quantity { signed, .. } = &mut self {
            *signed = true;
        }
        self
    }
    /// The unit in a system; none for words.
    pub const fn unit(&self, system: System) -> Option<&'static Unit> {
        match (self, system) {
            (Self::Quantity { inch, .. }, System::Inch) => Some(inch),
            (Self::Quantity { metric, .. }, System::Metric) => Some(metric),
            (Self::Words(_), _) => None,
        }
    }
    /// The decimals in a system.
    pub const fn decimals(&self, system: System) -> u8 {
        match (self, system) {
            (Self::Quantity { inch_places, .. }, System::Inch) => *inch_places,
            (Self::Quantity { metric_places, .. }, System::Metric) => *metric_places,
            (Self::Words(_), _) => 0,
        }
    }
    /// The number in base units; none for words.
    pub const fn base(&self) -> Option<f64> {
        match self {
            Self::Quantity { base, .. } => Some(*base),
            Self::Words(_) => None,
        }
    }
    /// The same value with another number.
    pub fn with_base(&self, number: f64) -> Self {
        let mut value = self.clone();
        if let Self::Quantity { base, .. } = &mut value {
            *base = number;
        }
        value
    }
    /// Printed without its unit.
    pub fn text(&self, system: System) -> String {
        match self {
            Self::Words(text) => text.to_string(),
            Self::Quantity {
                base,
                signed: with_sign,
                ..
            } => {
                let Some(unit) = self.unit(system) else {
                    return String::new();
                };
                let print = if *with_sign { signed } else { decimal };
                print(*base, unit, self.decimals(system))
            }
        }
    }
    /// Printed with its unit.
    pub fn text_with_unit(&self, system: System) -> String {
        match self.unit(system) {
            Some(unit) => join(&self.text(system), unit),
            None => self.text(system),
        }
    }
}
