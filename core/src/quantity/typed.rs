//! Units as types: which number is a length, which a torque? One newtype a kind, kept in one base unit.

use super::Kind;
use core::ops::{Add, Div, Mul, Neg, Sub};

/// What the contract needs of a typed quantity: its kind, and the way to and from the base unit's number.
pub trait Quantity: Copy {
    /// The kind of this quantity.
    const KIND: Kind;
    /// From a number in the kind's base unit.
    fn from_base(value: f64) -> Self;
    /// The number in the kind's base unit.
    fn base(self) -> f64;
}

macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $kind:ident, $( $(#[$fdoc:meta])* $from:ident / $to:ident = $factor:expr ),+ $(,)?) => {
        $(#[$doc])*
        #[derive(Clone, Copy, PartialEq, PartialOrd, Debug, Default)]
        pub struct $name(f64);

        impl $name {
            /// Nothing of it.
            pub const ZERO: Self = Self(0.0);
            $(
                $(#[$fdoc])*
                pub const fn $from(value: f64) -> Self {
                    Self(value * $factor)
                }
                /// The number in that unit.
                pub const fn $to(self) -> f64 {
                    self.0 / $factor
                }
            )+
            /// The same without its sign.
            pub const fn abs(self) -> Self {
                Self(self.0.abs())
            }
            /// The smaller of the two.
            pub const fn min(self, other: Self) -> Self {
                Self(self.0.min(other.0))
            }
            /// The larger of the two.
            pub const fn max(self, other: Self) -> Self {
                Self(self.0.max(other.0))
            }
        }

        impl Quantity for $name {
            const KIND: Kind = Kind::$kind;
            fn from_base(value: f64) -> Self {
                Self(value)
            }
            fn base(self) -> f64 {
                self.0
            }
        }

        impl Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }
        impl Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }
        impl Neg for $name {
            type Output = Self;
            fn neg(self) -> Self {
                Self(-self.0)
            }
        }
        impl Mul<f64> for $name {
            type Output = Self;
            fn mul(self, by: f64) -> Self {
                Self(self.0 * by)
            }
        }
        impl Div<f64> for $name {
            type Output = Self;
            fn div(self, by: f64) -> Self {
                Self(self.0 / by)
            }
        }
        impl Div for $name {
            type Output = f64;
            fn div(self, by: Self) -> f64 {
                self.0 / by.0
            }
        }
    };
}

/// Millimetres in an inch, exact by definition (international yard and pound agreement, 1959).
pub const MM_PER_INCH: f64 = 25.4;
/// Newtons in a pound-force, exact: 0.45359237 kg × 9.80665 m/s² (NIST SP 811, 2008, B.8).
pub const N_PER_LBF: f64 = 4.4482216152605;
/// Watts in a mechanical horsepower: 550 ft·lbf/s (NIST SP 811, 2008, B.8), exact from the two above.
pub const W_PER_HP: f64 = 745.6998715822702;

quantity!(
    /// A length, kept in millimetres.
    ///
    /// ```
    /// use benchslate_core::quantity::Length;
    /// assert_eq!(Length::from_inches(1.0).mm(), 25.4);
    /// ```
    Length, Length,
    /// From millimetres.
    from_mm / mm = 1.0,
    /// From inches.
    from_inches / inches = MM_PER_INCH,
    /// From thousandths of an inch.
    from_thou / thou = 0.0254,
    /// From micrometres.
    from_um / um = 0.001,
);
quantity!(
    /// A plane angle, kept in degrees.
    Angle, Angle,
    /// From degrees.
    from_degrees / degrees = 1.0,
    /// From radians.
    from_radians / radians = 57.29577951308232,
);
quantity!(
    /// A taper on the diameter: change of diameter per length, a bare ratio (1:48 is 1/48).
    Taper, Taper,
    /// From change of diameter over length.
    from_ratio / ratio = 1.0,
    /// From inches of diameter per foot of length.
    from_inches_per_foot / inches_per_foot = 0.08333333333333333,
);
quantity!(
    /// A rotational speed, kept in turns per minute.
    RotationalSpeed, RotationalSpeed,
    /// From turns per minute.
    from_rpm / rpm = 1.0,
);
quantity!(
    /// A cutting or surface speed, kept in metres per minute.
    SurfaceSpeed, SurfaceSpeed,
    /// From metres per minute.
    from_m_per_min / m_per_min = 1.0,
    /// From surface feet per minute.
    from_sfm / sfm = 0.3048,
);
quantity!(
    /// A feed rate, kept in millimetres per minute.
    FeedRate, FeedRate,
    /// From millimetres per minute.
    from_mm_per_min / mm_per_min = 1.0,
    /// From inches per minute.
    from_in_per_min / in_per_min = MM_PER_INCH,
);
quantity!(
    /// A feed per turn, kept in millimetres per turn.
    FeedPerRev, FeedPerRev,
    /// From millimetres per turn.
    from_mm_per_rev / mm_per_rev = 1.0,
    /// From inches per turn.
    from_in_per_rev / in_per_rev = MM_PER_INCH,
);
quantity!(
    /// A feed per tooth (chip load), kept in millimetres per tooth.
    FeedPerTooth, FeedPerTooth,
    /// From millimetres per tooth.
    from_mm_per_tooth / mm_per_tooth = 1.0,
    /// From inches per tooth.
    from_in_per_tooth / in_per_tooth = MM_PER_INCH,
);
quantity!(
    /// A force, kept in newtons.
    Force, Force,
    /// From newtons.
    from_newtons / newtons = 1.0,
    /// From pounds-force.
    from_lbf / lbf = N_PER_LBF,
);
quantity!(
    /// A torque, kept in newton metres.
    Torque, Torque,
    /// From newton metres.
    from_newton_metres / newton_metres = 1.0,
    /// From pound-force inches.
    from_lbf_in / lbf_in = N_PER_LBF * 0.0254,
    /// From pound-force feet.
    from_lbf_ft / lbf_ft = N_PER_LBF * 0.3048,
);
quantity!(
    /// A stress or pressure, kept in megapascals (newtons per square millimetre).
    Stress, Stress,
    /// From megapascals.
    from_mpa / mpa = 1.0,
    /// From pounds-force per square inch.
    from_psi / psi = N_PER_LBF / 645.16,
    /// From thousands of pounds-force per square inch.
    from_ksi / ksi = N_PER_LBF * 1000.0 / 645.16,
);
quantity!(
    /// A power, kept in watts.
    Power, Power,
    /// From watts.
    from_watts / watts = 1.0,
    /// From kilowatts.
    from_kilowatts / kilowatts = 1000.0,
    /// From mechanical horsepower (550 ft·lbf/s).
    from_horsepower / horsepower = W_PER_HP,
);
quantity!(
    /// A difference of temperature, kept in kelvins.
    TemperatureDifference, TemperatureDifference,
    /// From kelvins (degrees Celsius of difference).
    from_kelvins / kelvins = 1.0,
    /// From Fahrenheit degrees of difference.
    from_fahrenheit_degrees / fahrenheit_degrees = 0.5555555555555556,
);
quantity!(
    /// A mass, kept in kilograms.
    Mass, Mass,
    /// From kilograms.
    from_kg / kg = 1.0,
    /// From pounds.
    from_lb / lb = 0.45359237,
);
quantity!(
    /// A time, kept in seconds.
    Time, Time,
    /// From seconds.
    from_seconds / seconds = 1.0,
    /// From minutes.
    from_minutes / minutes = 60.0,
);
quantity!(
    /// An area, kept in square millimetres.
    Area, Area,
    /// From square millimetres.
    from_mm2 / mm2 = 1.0,
    /// From square inches.
    from_in2 / in2 = 645.16,
);
quantity!(
    /// A rate of metal removal, kept in cubic millimetres per minute.
    RemovalRate, RemovalRate,
    /// From cubic millimetres per minute.
    from_mm3_per_min / mm3_per_min = 1.0,
    /// From cubic inches per minute.
    from_in3_per_min / in3_per_min = 16387.064,
);
quantity!(
    /// A share, kept as a fraction of one.
    Share, Share,
    /// From a fraction of one.
    from_fraction / fraction = 1.0,
    /// From percent.
    from_percent / percent = 0.01,
);
quantity!(
    /// A bare number: a factor, a ratio, a coefficient.
    Number, Number,
    /// From the number.
    of / get = 1.0,
);
quantity!(
    /// A whole number of things: teeth, passes, turns of a count.
    Count, Count,
    /// From the number.
    of / get = 1.0,
);
quantity!(
    /// A thread pitch, kept in millimetres; the inch trade calls it by threads per inch.
    Pitch, Pitch,
    /// From millimetres.
    from_mm / mm = 1.0,
    /// From inches.
    from_inches / inches = MM_PER_INCH,
);
quantity!(
    /// A linear expansion coefficient, kept in micrometres per metre and kelvin.
    Expansion, Expansion,
    /// From 10⁻⁶ per kelvin.
    from_per_million_kelvin / per_million_kelvin = 1.0,
    /// From 10⁻⁶ per degree Fahrenheit.
    from_per_million_fahrenheit / per_million_fahrenheit = 1.8,
);

impl Pitch {
    /// From threads per inch.
    pub const fn from_tpi(tpi: f64) -> Self {
        Self(MM_PER_INCH / tpi)
    }
    /// Threads per inch.
    pub const fn tpi(self) -> f64 {
        MM_PER_INCH / self.0
    }
    /// The pitch as a length.
    pub const fn length(self) -> Length {
        Length::from_mm(self.0)
    }
}

impl core::iter::Sum for Length {
    fn sum<I: Iterator<Item = Self>>(iter: I) -> Self {
        iter.fold(Self::ZERO, |a, b| a + b)
    }
}
