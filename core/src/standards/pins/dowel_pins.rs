//! Which dowel pins are standard, what are their limits, and which hole does the standard suggest?
//!
//! Inch: ASME B18.8.2-2000, Table 2, hardened ground machine dowel pins; inches and pounds-force, authoritative. The basic
//! diameter is nominal + 0.0002 (standard series) or + 0.0010 (oversize, for worn holes), each ± 0.0001; loads are SINGLE
//! shear. Suggested holes are for mild steel and cast iron. Metric: ISO 8734 (hardened, m6) and ISO 2338 (unhardened, m6
//! or h8); millimetres, authoritative; limits from ISO 286-2.

use crate::quantity::{Force, Length, Stress};

/// One size of the inch series. Inches; load in pounds-force, single shear.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct InchDowel {
    /// The size as written.
    pub size: &'static str,
    /// Nominal diameter, in.
    pub nominal_in: f64,
    /// Least and most diameter of the point, in.
    pub point_in: (f64, f64),
    /// Most height of the crown, in.
    pub crown_height_in: f64,
    /// Least radius of the crown, in.
    pub crown_radius_in: f64,
    /// Calculated load in SINGLE shear, lbf.
    pub single_shear_lbf: f64,
    /// Suggested hole, least and most, in.
    pub hole_in: (f64, f64),
}

/// One size of the metric series. Millimetres.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct MetricDowel {
    /// The size as written.
    pub size: &'static str,
    /// Nominal diameter, mm.
    pub nominal_mm: f64,
    /// Chamfer (or crown) length, mm.
    pub chamfer_mm: f64,
    /// Upper and lower deviation of m6, micrometres.
    pub m6_um: (f64, f64),
    /// Lower deviation of h8, micrometres (the upper is zero).
    pub h8_um: f64,
    /// Whether ISO 8734 (hardened) has the size; ISO 2338 (unhardened) has every size of the list.
    pub hardened: bool,
}

/// A hole practice for stainless pins in aluminium: press and slip sizes, each ± 0.0005 in.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct HolePractice {
    /// The pin as listed, in.
    pub pin_in: f64,
    /// Press hole, in.
    pub press_in: f64,
    /// Slip hole, in.
    pub slip_in: f64,
}

/// Basic diameter over nominal, standard series, in.
pub const STANDARD_OVER_IN: f64 = 0.0002;
/// Basic diameter over nominal, oversize series, in.
pub const OVERSIZE_OVER_IN: f64 = 0.0010;
/// Tolerance on the basic diameter, plus and minus, in.
pub const DIAMETER_TOLERANCE_IN: f64 = 0.0001;
/// Shear strength behind the listed loads: 130 000 psi over the nominal area (ASME B18.8.2-2000, Table 2).
pub const SHEAR_STRENGTH: Stress = Stress::from_psi(130_000.0);
/// Tolerance of the practice holes below, plus and minus, in.
pub const PRACTICE_TOLERANCE_IN: f64 = 0.0005;

/// Dowel hole practice, stainless pin in aluminium, for location only: one engineering reference table.
/// It differs from the suggested holes of ASME B18.8.2.
#[rustfmt::skip]
pub const PRACTICE: [HolePractice; 4] = [
    HolePractice { pin_in: 0.031, press_in: 0.0305, slip_in: 0.0320 },
    HolePractice { pin_in: 0.094, press_in: 0.0935, slip_in: 0.0955 },
    HolePractice { pin_in: 0.125, press_in: 0.1245, slip_in: 0.1265 },
    HolePractice { pin_in: 0.187, press_in: 0.1870, slip_in: 0.1895 },
];

const fn i(
    size: &'static str,
    nominal_in: f64,
    point_in: (f64, f64),
    crown: (f64, f64),
    single_shear_lbf: f64,
    hole_in: (f64, f64),
) -> InchDowel {
    InchDowel {
        size,
        nominal_in,
        point_in,
        crown_height_in: crown.0,
        crown_radius_in: crown.1,
        single_shear_lbf,
        hole_in,
    }
}

/// Inch series: size, nominal, point, crown height and radius, single shear load, suggested hole (least, most).
/// ASME B18.8.2-2000, Table 2; of the rows 1/16 to 3/32 and 5/32 crown, load and hole are from memory.
#[rustfmt::skip]
pub const INCH: [InchDowel; 15] = [
    i("1/16", 0.0625, (0.048, 0.058), (0.020, 0.008), 400.0, (0.0620, 0.0625)),
    i("5/64", 0.0781, (0.064, 0.074), (0.026, 0.010), 620.0, (0.0776, 0.0781)),
    i("3/32", 0.0938, (0.079, 0.089), (0.031, 0.012), 900.0, (0.0932, 0.0937)),
    i("1/8", 0.1250, (0.110, 0.120), (0.041, 0.016), 1600.0, (0.1245, 0.1250)),
    i("5/32", 0.1562, (0.140, 0.150), (0.052, 0.020), 2500.0, (0.1557, 0.1562)),
    i("3/16", 0.1875, (0.170, 0.180), (0.062, 0.023), 3600.0, (0.1870, 0.1875)),
    i("1/4", 0.2500, (0.230, 0.240), (0.083, 0.031), 6400.0, (0.2495, 0.2500)),
    i("5/16", 0.3125, (0.290, 0.302), (0.104, 0.039), 10000.0, (0.3120, 0.3125)),
    i("3/8", 0.3750, (0.350, 0.365), (0.125, 0.047), 14350.0, (0.3745, 0.3750)),
    i("7/16", 0.4375, (0.409, 0.424), (0.146, 0.055), 19550.0, (0.4370, 0.4375)),
    i("1/2", 0.5000, (0.471, 0.486), (0.167, 0.063), 25500.0, (0.4995, 0.5000)),
    i("5/8", 0.6250, (0.595, 0.611), (0.208, 0.078), 39900.0, (0.6245, 0.6250)),
    i("3/4", 0.7500, (0.715, 0.735), (0.250, 0.094), 57000.0, (0.7495, 0.7500)),
    i("7/8", 0.8750, (0.840, 0.860), (0.293, 0.109), 78000.0, (0.8745, 0.8750)),
    i("1", 1.0000, (0.960, 0.980), (0.333, 0.125), 102000.0, (0.9995, 1.0000)),
];

const fn m(
    size: &'static str,
    nominal_mm: f64,
    chamfer_mm: f64,
    m6_um: (f64, f64),
    h8_um: f64,
    hardened: bool,
) -> MetricDowel {
    MetricDowel {
        size,
        nominal_mm,
        chamfer_mm,
        m6_um,
        h8_um,
        hardened,
    }
}

/// Metric series: size, nominal, chamfer, m6 (upper, lower), h8 lower, in ISO 8734.
/// Sizes and chamfers: ISO 2338 and ISO 8734; deviations: ISO 286-2.
#[rustfmt::skip]
pub const METRIC: [MetricDowel; 20] = [
    m("0.6", 0.6, 0.12, (8.0, 2.0), -14.0, false),
    m("0.8", 0.8, 0.16, (8.0, 2.0), -14.0, false),
    m("1", 1.0, 0.2, (8.0, 2.0), -14.0, true),
    m("1.2", 1.2, 0.25, (8.0, 2.0), -14.0, false),
    m("1.5", 1.5, 0.3, (8.0, 2.0), -14.0, true),
    m("2", 2.0, 0.35, (8.0, 2.0), -14.0, true),
    m("2.5", 2.5, 0.4, (8.0, 2.0), -14.0, true),
    m("3", 3.0, 0.5, (8.0, 2.0), -14.0, true),
    m("4", 4.0, 0.63, (12.0, 4.0), -18.0, true),
    m("5", 5.0, 0.8, (12.0, 4.0), -18.0, true),
    m("6", 6.0, 1.2, (12.0, 4.0), -18.0, true),
    m("8", 8.0, 1.6, (15.0, 6.0), -22.0, true),
    m("10", 10.0, 2.0, (15.0, 6.0), -22.0, true),
    m("12", 12.0, 2.5, (18.0, 7.0), -27.0, true),
    m("16", 16.0, 3.0, (18.0, 7.0), -27.0, true),
    m("20", 20.0, 3.5, (21.0, 8.0), -33.0, true),
    m("25", 25.0, 4.0, (21.0, 8.0), -33.0, false),
    m("30", 30.0, 5.0, (21.0, 8.0), -33.0, false),
    m("40", 40.0, 6.3, (25.0, 9.0), -39.0, false),
    m("50", 50.0, 8.0, (25.0, 9.0), -39.0, false),
];

/// The two series of inch dowels.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum InchSeries {
    /// Basic = nominal + 0.0002 in.
    Standard,
    /// Basic = nominal + 0.0010 in, for a worn or over-reamed hole.
    Oversize,
}

impl InchSeries {
    /// Basic diameter over nominal.
    pub const fn over(self) -> Length {
        Length::from_inches(match self {
            Self::Standard => STANDARD_OVER_IN,
            Self::Oversize => OVERSIZE_OVER_IN,
        })
    }
}

impl InchDowel {
    /// Nominal diameter.
    pub const fn nominal(&self) -> Length {
        Length::from_inches(self.nominal_in)
    }
    /// Basic diameter: not nominal, but a little over it.
    pub fn basic(&self, series: InchSeries) -> Length {
        self.nominal() + series.over()
    }
    /// Limits of the diameter: (least, most).
    pub fn limits(&self, series: InchSeries) -> (Length, Length) {
        let tolerance = Length::from_inches(DIAMETER_TOLERANCE_IN);
        (
            self.basic(series) - tolerance,
            self.basic(series) + tolerance,
        )
    }
    /// The hole that the standard suggests for a press fit in mild steel and cast iron: (least, most).
    pub const fn suggested_hole(&self) -> (Length, Length) {
        (
            Length::from_inches(self.hole_in.0),
            Length::from_inches(self.hole_in.1),
        )
    }
    /// The listed load, SINGLE shear.
    pub const fn single_shear(&self) -> Force {
        Force::from_lbf(self.single_shear_lbf)
    }
}

impl MetricDowel {
    /// Nominal diameter.
    pub const fn nominal(&self) -> Length {
        Length::from_mm(self.nominal_mm)
    }
    /// Limits of an m6 pin: (least, most).
    pub const fn m6(&self) -> (Length, Length) {
        (
            Length::from_mm(self.nominal_mm + self.m6_um.1 / 1000.0),
            Length::from_mm(self.nominal_mm + self.m6_um.0 / 1000.0),
        )
    }
    /// Limits of an h8 pin (ISO 2338 only): (least, most).
    pub const fn h8(&self) -> (Length, Length) {
        (
            Length::from_mm(self.nominal_mm + self.h8_um / 1000.0),
            Length::from_mm(self.nominal_mm),
        )
    }
}

/// The inch dowel whose nominal is this, within half a tenth.
pub fn inch(nominal: Length) -> Option<&'static InchDowel> {
    INCH.iter()
        .find(|p| (p.nominal_in - nominal.inches()).abs() < 0.00006)
}

/// The metric dowel of this nominal size.
pub fn metric(nominal: Length) -> Option<&'static MetricDowel> {
    METRIC
        .iter()
        .find(|p| (p.nominal_mm - nominal.mm()).abs() < 1e-6)
}
