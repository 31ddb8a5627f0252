//! One result: its value, the convention it follows, the band of its sources.

use super::{Text, Value};
use crate::quantity::{Quantity, Unit};

/// One result.
#[derive(Clone, PartialEq, Debug)]
pub struct Line {
    /// The declared result's id.
    pub id: &'static str,
    /// What it is, on screen.
    pub label: Text,
    /// The nominal value.
    pub value: Value,
    /// The convention that it follows, in one line.
    pub says: Text,
    /// Low and high where good sources differ, in base units.
    pub band: Option<(f64, f64)>,
    /// What the band is, in words ("nut factor 0.18 to 0.30").
    pub band_says: Text,
    /// Exact as printed by definition; else rounded.
    pub exact: bool,
    /// Moves in steps.
    pub stepped: bool,
}

impl Line {
    /// The convention.
    pub fn says(&mut self, text: impl Into<Text>) -> &mut Self {
        self.says = text.into();
        self
    }
    /// Another label than the declared one.
    pub fn label(&mut self, text: impl Into<Text>) -> &mut Self {
        self.label = text.into();
        self
    }
    /// Decimals in the inch and the metric unit.
    pub fn places(&mut self, inch: u8, metric: u8) -> &mut Self {
        self.value = self.value.clone().places(inch, metric);
        self
    }
    /// Units in the inch and the metric system.
    pub fn units(&mut self, inch: &'static Unit, metric: &'static Unit) -> &mut Self {
        self.value = self.value.clone().units(inch, metric);
        self
    }
    /// Always with its sign.
    pub fn signed(&mut self) -> &mut Self {
        self.value = self.value.clone().signed();
        self
    }
    /// Low and high of the sources, and what they are.
    pub fn band<Q: Quantity>(&mut self, low: Q, high: Q, says: impl Into<Text>) -> &mut Self {
        self.band = Some((low.base(), high.base()));
        self.band_says = says.into();
        self
    }
    /// Exact by definition.
    pub fn exact(&mut self) -> &mut Self {
        self.exact = true;
        self
    }
}
