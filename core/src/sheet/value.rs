//! A value that can be printed in either system: a quantity with its units and decimals, or words.

use crate::quantity::{
    Kind, Quantity, System, Unit, decimal, join, paper, signed, to_figures, units, usual,
};
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
        /// Significant digits that are printed at most; 0 for all.
        figures: u8,
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
            figures: match Q::KIND {
                Kind::Force | Kind::Stress => 3,
                _ => 0,
            },
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
    /// Whether its sign is always printed: it counts from something.
    pub const fn is_signed(&self) -> bool {
        matches!(self, Self::Quantity { signed: true, .. })
    }
    /// Printed with its sign always.
    pub fn signed(mut self) -> Self {
        if let Self::Quantity { signed, .. } = &mut self {
            *signed = true;
        }
        self
    }
    /// Printed with all its digits: a load or a strength as a standard's table has it. Derived ones show three.
    pub fn all_figures(mut self) -> Self {
        if let Self::Quantity { figures, .. } = &mut self {
            *figures = 0;
        }
        self
    }
    /// The unit in a system; none for words. A time past 90 s is told in minutes, past an hour in hours.
    pub fn unit(&self, system: System) -> Option<&'static Unit> {
        self.clock().or_else(|| self.declared_unit(system))
    }
    /// Minutes or hours, for a time that is told as on a clock.
    fn clock(&self) -> Option<&'static Unit> {
        let base = self.base()?;
        let time = matches!(
            self,
            Self::Quantity {
                kind: Kind::Time,
                ..
            }
        );
        (time && base > 90.0 && base < 360_000.0).then_some(if base < 3600.0 {
            &units::MINUTE
        } else {
            &units::HOUR
        })
    }
    const fn declared_unit(&self, system: System) -> Option<&'static Unit> {
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
    /// The unit in which the number is counted, and how much its last printed digit is in it: 0.0001 in, 100 lbf where
    /// three figures are shown, 1 s of a time on the clock; none for words.
    ///
    /// ```
    /// use benchslate_core::{quantity::{Force, System}, sheet::Value};
    /// let (unit, digit) = Value::of(Force::from_lbf(42063.0)).last_digit(System::Inch).unwrap();
    /// assert_eq!((unit.id, digit), ("lbf", 100.0)); // it is printed as 42100 lbf
    /// ```
    pub fn last_digit(&self, system: System) -> Option<(&'static Unit, f64)> {
        let (Self::Quantity { base, figures, .. }, Some(unit)) = (self, self.declared_unit(system))
        else {
            return None;
        };
        if self.clock().is_some() {
            return Some((&units::SECOND, 1.0));
        }
        let size = unit.from_base(*base).abs();
        let mut digit = libm::pow(10.0, -f64::from(self.decimals(system)));
        let most = libm::pow(10.0, f64::from(*figures));
        while *figures > 0 && size.is_finite() && size / digit >= most {
            digit *= 10.0;
        }
        Some((unit, digit))
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
                figures,
                ..
            } => {
                let Some(unit) = self.unit(system) else {
                    return String::new();
                };
                if self.clock().is_some() {
                    return minutes_and_seconds(*base);
                }
                let (base, places) = to_figures(*base, unit, self.decimals(system), *figures);
                if *with_sign {
                    signed(base, unit, places)
                } else {
                    paper(decimal(base, unit, places))
                }
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

/// Whole seconds as a clock shows them: "3:44", "1:02:05".
fn minutes_and_seconds(seconds: f64) -> String {
    let whole = libm::round(seconds) as u64;
    let (hours, minutes, seconds) = (whole / 3600, whole / 60 % 60, whole % 60);
    if hours > 0 {
        format!("{hours}:{minutes:02}:{seconds:02}")
    } else {
        format!("{minutes}:{seconds:02}")
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{Force, Time};

    #[test]
    fn a_time_past_ninety_seconds_is_told_as_on_a_clock() {
        for (seconds, text) in [
            (45.25, "45.3 s"),
            (90.0, "90.0 s"),
            (90.5, "1:31 min"),
            (224.2, "3:44 min"),
            (3600.0, "1:00:00 h"),
            (3725.0, "1:02:05 h"),
        ] {
            let value = Value::of(Time::from_seconds(seconds));
            assert_eq!(value.text_with_unit(System::Inch), text);
        }
    }

    #[test]
    fn a_derived_load_shows_three_figures_and_a_tabled_one_all() {
        let load = Value::of(Force::from_lbf(42063.0));
        assert_eq!(load.text_with_unit(System::Inch), "42100 lbf");
        assert_eq!(load.all_figures().text_with_unit(System::Inch), "42063 lbf");
    }
}
