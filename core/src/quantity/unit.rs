//! What is a unit: how it's typed, printed and spoken, and how its number becomes the kind's base number?

use super::{Kind, System};

/// How a unit's number becomes the base number of its kind.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Scale {
    /// base = x × factor.
    Linear(f64),
    /// base = (x − offset) × factor.
    Offset {
        /// Base units in one of this unit.
        factor: f64,
        /// The number in this unit where the base is zero.
        offset: f64,
    },
    /// base = k / x: threads per inch, a taper as 1:x.
    Inverse(f64),
    /// Taper from an angle in degrees: base = 2 tan(x × part), where the part is 1/2 for the included angle and 1 for the
    /// angle to the axis.
    Tangent(f64),
}

/// One unit of one kind.
#[derive(Clone, Copy, Debug)]
pub struct Unit {
    /// ASCII name in links and typed text; unique within its kind. Stable for ever.
    pub id: &'static str,
    /// What is printed after the number (before it, where it ends in a colon).
    pub symbol: &'static str,
    /// What is said after the number, in the plural.
    pub spoken: &'static str,
    /// The kind that it measures.
    pub kind: Kind,
    /// The shop system that it belongs to, if to one alone.
    pub system: Option<System>,
    /// The way to the base unit.
    pub scale: Scale,
    /// Usual decimals.
    pub places: u8,
    /// Accepted spellings, lower case, without the spaces, points, hyphens and brackets that the reader passes over.
    pub spellings: &'static [&'static str],
}

impl PartialEq for Unit {
    fn eq(&self, other: &Self) -> bool {
        self.kind == other.kind && self.id == other.id
    }
}
impl Eq for Unit {}

const RADIANS: f64 = core::f64::consts::PI / 180.0;

impl Unit {
    /// The base number of `x` of this unit. Not finite where an inverse unit is zero.
    ///
    /// ```
    /// use benchslate_core::quantity::units;
    /// assert_eq!(units::THOU.to_base(1000.0), 25.4);
    /// ```
    pub fn to_base(&self, x: f64) -> f64 {
        match self.scale {
            Scale::Linear(factor) => x * factor,
            Scale::Offset { factor, offset } => (x - offset) * factor,
            Scale::Inverse(k) => k / x,
            Scale::Tangent(part) => 2.0 * libm::tan(x * part * RADIANS),
        }
    }

    /// The number in this unit of a base number: the inverse of [`Unit::to_base`].
    pub fn from_base(&self, base: f64) -> f64 {
        match self.scale {
            Scale::Linear(factor) => base / factor,
            Scale::Offset { factor, offset } => base / factor + offset,
            Scale::Inverse(k) => k / base,
            Scale::Tangent(part) => libm::atan(base / 2.0) / (part * RADIANS),
        }
    }

    /// Tenths of a nanometre in one of this unit, for lengths.
    pub(crate) fn tenth_nm(&self) -> Option<u64> {
        match (self.kind, self.scale) {
            (Kind::Length, Scale::Linear(mm)) => Some((mm * 1e7 + 0.5) as u64),
            _ => None,
        }
    }
}

/// Every unit of a kind, the inch system's first. Never empty.
pub fn units_of(kind: Kind) -> &'static [&'static Unit] {
    units::of(kind)
}

/// The units by name.
pub mod units {
    use super::{Kind, Scale, System, Unit};
    use crate::quantity::{MM_PER_INCH, N_PER_LBF, W_PER_HP};
    use Scale::{Inverse, Linear, Offset, Tangent};

    macro_rules! table {
        ($($kind:ident { $($name:ident: $id:literal, $symbol:literal, $spoken:literal, $system:expr, $scale:expr, $places:literal, [$($spelling:literal),* $(,)?];)+ })+) => {
            $($(
                #[doc = concat!("`", $id, "`: ", $spoken, ".")]
                pub static $name: Unit = Unit {
                    id: $id, symbol: $symbol, spoken: $spoken, kind: Kind::$kind, system: $system, scale: $scale,
                    places: $places, spellings: &[$($spelling),*],
                };
            )+)+
            pub(super) fn of(kind: Kind) -> &'static [&'static Unit] {
                match kind {
                    $(Kind::$kind => {
                        static ALL: &[&Unit] = &[$(&$name),+];
                        ALL
                    })+
                }
            }
            /// Every kind, in the order of the table.
            pub static KINDS: &[Kind] = &[$(Kind::$kind),+];
        };
    }

    const I: Option<System> = Some(System::Inch);
    const M: Option<System> = Some(System::Metric);
    const NONE: Option<System> = None;
    const MPA_PER_PSI: f64 = N_PER_LBF / 645.16;

    // Factors: NIST SP 811 (2008), appendix B.8; exact where built from the inch, the pound and standard gravity.
    table! {
        Length {
            INCH: "in", "in", "inches", I, Linear(MM_PER_INCH), 4, ["in", "inch", "inches", "\""];
            THOU: "thou", "thou", "thou", I, Linear(0.0254), 1,
                ["thou", "thous", "mil", "mils", "thousandth", "thousandths", "thousandthsofaninch", "thousandthofaninch"];
            TENTH: "tenth", "tenths", "tenths", I, Linear(0.00254), 0,
                ["tenth", "tenths", "tenthsofathou", "tenthofathou", "tenthsofathousandth"];
            MICROINCH: "uin", "µin", "microinches", I, Linear(0.0000254), 0, ["uin", "microinch", "microinches"];
            FOOT: "ft", "ft", "feet", I, Linear(304.8), 3, ["ft", "foot", "feet", "'"];
            MM: "mm", "mm", "millimeters", M, Linear(1.0), 3,
                ["mm", "millimetre", "millimetres", "millimeter", "millimeters"];
            MICRON: "um", "µm", "microns", M, Linear(0.001), 1,
                ["um", "micron", "microns", "micrometre", "micrometres", "micrometer", "micrometers"];
            CENTIMETRE: "cm", "cm", "centimeters", M, Linear(10.0), 3, ["cm", "centimetre", "centimetres", "centimeter", "centimeters"];
            METRE: "m", "m", "meters", M, Linear(1000.0), 4, ["m", "metre", "metres", "meter", "meters"];
        }
        Angle {
            DEGREE: "deg", "°", "degrees", NONE, Linear(1.0), 3, ["deg", "degree", "degrees", "degs"];
            ARC_MINUTE: "arcmin", "′", "minutes", NONE, Linear(1.0 / 60.0), 2, ["arcmin", "'", "minute", "minutes"];
            ARC_SECOND: "arcsec", "″", "seconds", NONE, Linear(1.0 / 3600.0), 1, ["arcsec", "\"", "second", "seconds"];
            RADIAN: "rad", "rad", "radians", NONE, Linear(57.29577951308232), 5, ["rad", "radian", "radians"];
        }
        Taper {
            TAPER_IN_PER_FT: "in/ft", "in/ft", "inches per foot", I, Linear(1.0 / 12.0), 4,
                ["in/ft", "inch/ft", "inch/foot", "in/foot", "\"/ft", "\"/'", "tpf", "ipf", "inperft", "inchperfoot", "inchesperfoot"];
            TAPER_IN_PER_IN: "in/in", "in/in", "inches per inch", I, Linear(1.0), 6, ["in/in", "\"/\"", "inchperinch"];
            TAPER_RATIO: "ratio", "1:", "to one", NONE, Inverse(1.0), 3, ["ratio"];
            TAPER_MM_PER_M: "mm/m", "mm/m", "millimeters per meter", M, Linear(0.001), 3, ["mm/m"];
            TAPER_INCLUDED: "deg-incl", "° included", "degrees included", NONE, Tangent(0.5), 4,
                ["degincl", "degincluded", "deginclusive", "degreesincluded", "degreesinclusive"];
            TAPER_HALF: "deg-half", "° half angle", "degrees to the axis", NONE, Tangent(1.0), 4,
                ["deghalf", "deghalfangle", "degperside", "deg/side", "degreesperside", "degreeshalfangle"];
        }
        RotationalSpeed {
            RPM: "rpm", "rpm", "r p m", NONE, Linear(1.0), 0, ["rpm", "r/min", "rev/min", "/min", "turns/min"];
        }
        SurfaceSpeed {
            SFM: "sfm", "sfm", "surface feet per minute", I, Linear(0.3048), 0,
                ["sfm", "sfpm", "fpm", "ft/min", "feet/min", "surfacefeetperminute", "feetperminute"];
            M_PER_MIN: "m/min", "m/min", "meters per minute", M, Linear(1.0), 1, ["m/min", "mpm", "metresperminute", "metersperminute"];
            M_PER_S: "m/s", "m/s", "meters per second", M, Linear(60.0), 2, ["m/s"];
        }
        FeedRate {
            IN_PER_MIN: "ipm", "in/min", "inches per minute", I, Linear(MM_PER_INCH), 2,
                ["ipm", "in/min", "\"/min", "inch/min", "inches/min", "inchesperminute"];
            MM_PER_MIN: "mm/min", "mm/min", "millimeters per minute", M, Linear(1.0), 0, ["mm/min", "millimetresperminute", "millimetersperminute"];
        }
        FeedPerRev {
            IN_PER_REV: "ipr", "in/rev", "inches per rev", I, Linear(MM_PER_INCH), 4, ["ipr", "in/rev", "in/r", "\"/rev", "inch/rev", "in/turn"];
            THOU_PER_REV: "thou/rev", "thou/rev", "thou per rev", I, Linear(0.0254), 1, ["thou/rev", "thou/r", "thou/turn"];
            MM_PER_REV: "mm/rev", "mm/rev", "millimeters per rev", M, Linear(1.0), 3, ["mm/rev", "mm/r", "mm/turn"];
        }
        FeedPerTooth {
            IN_PER_TOOTH: "ipt", "in/tooth", "inches per tooth", I, Linear(MM_PER_INCH), 4, ["ipt", "in/tooth", "\"/tooth", "inch/tooth"];
            THOU_PER_TOOTH: "thou/tooth", "thou/tooth", "thou per tooth", I, Linear(0.0254), 1, ["thou/tooth"];
            MM_PER_TOOTH: "mm/tooth", "mm/tooth", "millimeters per tooth", M, Linear(1.0), 3, ["mm/tooth"];
        }
        Force {
            LBF: "lbf", "lbf", "pounds of force", I, Linear(N_PER_LBF), 0, ["lbf", "lb", "lbs", "pound", "pounds"];
            US_TON: "ton", "US tons", "US tons of force", I, Linear(N_PER_LBF * 2000.0), 2, ["ton", "tons", "uston", "ustons"];
            NEWTON: "N", "N", "newtons", M, Linear(1.0), 0, ["n", "newton", "newtons"];
            KILONEWTON: "kN", "kN", "kilonewtons", M, Linear(1000.0), 2, ["kn", "kilonewton", "kilonewtons"];
        }
        Torque {
            LBF_FT: "ft-lb", "ft-lb", "foot-pounds", I, Linear(N_PER_LBF * 0.3048), 1,
                ["ftlb", "ftlbs", "ftlbf", "lbft", "lbsft", "lbfft", "footpound", "footpounds", "lb/ft"];
            LBF_IN: "in-lb", "in-lb", "inch-pounds", I, Linear(N_PER_LBF * 0.0254), 0,
                ["inlb", "inlbs", "inlbf", "lbin", "lbsin", "lbfin", "inchpound", "inchpounds"];
            NEWTON_METRE: "Nm", "N·m", "newton meters", M, Linear(1.0), 1, ["nm", "newtonmetre", "newtonmetres", "newtonmeter", "newtonmeters"];
            KGF_METRE: "kgf-m", "kgf·m", "kilogram meters", M, Linear(9.80665), 2, ["kgfm", "kgm", "kgfmetre", "kgfmeter"];
        }
        Stress {
            PSI: "psi", "psi", "p s i", I, Linear(MPA_PER_PSI), 0, ["psi", "lb/in2", "lbf/in2"];
            KSI: "ksi", "ksi", "thousand p s i", I, Linear(MPA_PER_PSI * 1000.0), 1, ["ksi"];
            MPA: "MPa", "MPa", "megapascals", M, Linear(1.0), 0, ["mpa", "n/mm2", "megapascal", "megapascals"];
            GPA: "GPa", "GPa", "gigapascals", M, Linear(1000.0), 1, ["gpa"];
        }
        Power {
            HORSEPOWER: "hp", "hp", "horsepower", I, Linear(W_PER_HP), 2, ["hp", "bhp", "horsepower"];
            KILOWATT: "kW", "kW", "kilowatts", M, Linear(1000.0), 2, ["kw", "kilowatt", "kilowatts"];
            WATT: "W", "W", "watts", M, Linear(1.0), 0, ["w", "watt", "watts"];
        }
        Temperature {
            FAHRENHEIT: "F", "°F", "degrees Fahrenheit", I, Offset { factor: 5.0 / 9.0, offset: 32.0 }, 0, ["f", "degf", "fahrenheit"];
            CELSIUS: "C", "°C", "degrees Celsius", M, Linear(1.0), 0, ["c", "degc", "celsius"];
        }
        TemperatureDifference {
            FAHRENHEIT_DIFFERENCE: "F", "°F", "Fahrenheit degrees", I, Linear(5.0 / 9.0), 0, ["f", "degf", "fdeg"];
            KELVIN_DIFFERENCE: "K", "°C", "Celsius degrees", M, Linear(1.0), 0, ["k", "c", "degc", "cdeg", "kelvin", "kelvins"];
        }
        Mass {
            LB: "lb", "lb", "pounds", I, Linear(0.45359237), 1, ["lb", "lbs", "pound", "pounds"];
            KG: "kg", "kg", "kilograms", M, Linear(1.0), 2, ["kg", "kgs", "kilogram", "kilograms", "kilo", "kilos"];
        }
        Time {
            SECOND: "s", "s", "seconds", NONE, Linear(1.0), 1, ["s", "sec", "secs", "second", "seconds"];
            MINUTE: "min", "min", "minutes", NONE, Linear(60.0), 2, ["min", "mins", "minute", "minutes"];
            HOUR: "h", "h", "hours", NONE, Linear(3600.0), 2, ["h", "hr", "hrs", "hour", "hours"];
        }
        Area {
            IN2: "in2", "in²", "square inches", I, Linear(645.16), 4, ["in2", "sqin", "squareinches"];
            MM2: "mm2", "mm²", "square millimeters", M, Linear(1.0), 2, ["mm2", "sqmm", "squaremillimetres"];
        }
        RemovalRate {
            IN3_PER_MIN: "in3/min", "in³/min", "cubic inches per minute", I, Linear(16387.064), 2, ["in3/min", "cuin/min"];
            CM3_PER_MIN: "cm3/min", "cm³/min", "cubic centimeters per minute", M, Linear(1000.0), 1, ["cm3/min", "cc/min"];
        }
        Share {
            PERCENT: "pct", "%", "percent", NONE, Linear(0.01), 0, ["%", "pct", "percent"];
        }
        Number {
            NUMBER: "", "", "", NONE, Linear(1.0), 3, [];
        }
        Count {
            COUNT: "", "", "", NONE, Linear(1.0), 0, [];
        }
        Pitch {
            TPI: "tpi", "tpi", "threads per inch", I, Inverse(MM_PER_INCH), 1, ["tpi", "/in", "threads/in", "threadsperinch"];
            PITCH_INCH: "in", "in", "inches", I, Linear(MM_PER_INCH), 5, ["in", "inch", "inches", "\""];
            PITCH_MM: "mm", "mm", "millimeters", M, Linear(1.0), 3, ["mm", "millimetre", "millimetres", "millimeter", "millimeters"];
        }
        Expansion {
            PER_F: "uin/in-F", "µin/(in·°F)", "millionths per Fahrenheit degree", I, Linear(1.8), 1, ["uin/indegf", "uin/inf", "ppm/f"];
            PER_K: "um/m-K", "µm/(m·K)", "millionths per kelvin", M, Linear(1.0), 1, ["um/mk", "um/mdegc", "ppm/k", "ppm/c"];
        }
    }
}
