//! A temperature on a scale: its zero is not nothing, so it adds no other temperature, only a difference.

use super::{Kind, Quantity, TemperatureDifference};
use core::ops::{Add, Sub};

/// A temperature, kept in degrees Celsius.
///
/// ```
/// use benchslate_core::quantity::{Temperature, TemperatureDifference};
/// // NIST SP 811, 2008, B.8: t/°C = (t/°F − 32) / 1.8
/// let room = Temperature::from_fahrenheit(68.0);
/// assert_eq!(room.celsius(), 20.0);
/// assert_eq!((room + TemperatureDifference::from_kelvins(80.0)).fahrenheit(), 212.0);
/// ```
#[derive(Clone, Copy, PartialEq, PartialOrd, Debug)]
pub struct Temperature(f64);

impl Temperature {
    /// 20 °C, at which sizes hold (ISO 1).
    pub const REFERENCE: Self = Self(20.0);
    /// From degrees Celsius.
    pub const fn from_celsius(value: f64) -> Self {
        Self(value)
    }
    /// In degrees Celsius.
    pub const fn celsius(self) -> f64 {
        self.0
    }
    /// From degrees Fahrenheit.
    pub const fn from_fahrenheit(value: f64) -> Self {
        Self((value - 32.0) / 1.8)
    }
    /// In degrees Fahrenheit.
    pub const fn fahrenheit(self) -> f64 {
        self.0 * 1.8 + 32.0
    }
}

impl Quantity for Temperature {
    const KIND: Kind = Kind::Temperature;
    fn from_base(value: f64) -> Self {
        Self(value)
    }
    fn base(self) -> f64 {
        self.0
    }
}

impl Add<TemperatureDifference> for Temperature {
    type Output = Self;
    fn add(self, other: TemperatureDifference) -> Self {
        Self(self.0 + other.kelvins())
    }
}

impl Sub for Temperature {
    type Output = TemperatureDifference;
    fn sub(self, other: Self) -> TemperatureDifference {
        TemperatureDifference::from_kelvins(self.0 - other.0)
    }
}
