//! How does a power ask a sheet many times over? One copy of the readings, a number set in place, and each asking counted.

use super::value;
use crate::sheet::{Answer, Inputs, Stop, figure};

/// A copy of the readings that is asked again and again.
pub(super) struct Probe {
    inputs: Inputs,
    asked: usize,
    most: usize,
}

impl Probe {
    /// A copy that may be asked so many times.
    pub(super) fn new(inputs: &Inputs, most: usize) -> Self {
        Self {
            inputs: inputs.clone().quietly(),
            asked: 0,
            most,
        }
    }
    /// Sets a field, base unit; it stays so.
    pub(super) fn set(&mut self, field: &str, base: f64) {
        self.inputs.put(field, base);
    }
    /// The answer as the fields are set; none where it was asked as often as it may be.
    pub(super) fn answer(&mut self) -> Option<Result<Answer, Stop>> {
        if self.asked >= self.most {
            return None;
        }
        self.asked += 1;
        Some(figure(&self.inputs))
    }
    /// The number of a result with a field set; none where the sheet stops there.
    pub(super) fn at(&mut self, field: &str, base: f64, result: &str) -> Option<f64> {
        self.set(field, base);
        value(&self.answer()?.ok()?, result)
    }
    /// How often it was asked.
    pub(super) const fn asked(&self) -> usize {
        self.asked
    }
    /// How often it may still be asked.
    pub(super) const fn left(&self) -> usize {
        self.most.saturating_sub(self.asked)
    }
}
