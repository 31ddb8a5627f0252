//! Which taper pins are standard, how big is each at its named end, and which reamer and drill go with it?
//!
//! Inch series: ASME B18.8.2-2000, taper pins, Table 1; inches, authoritative. The named size is the LARGE end, taper 1/4 in
//! per foot (1:48) on the diameter. Metric series: ISO 2339 (taper pins, unhardened); millimetres, authoritative. The
//! named size is the SMALL end, tolerance h10 (ISO 286-2), taper 1:50 on the diameter.

use crate::quantity::{Length, Taper};

/// One size of the inch series. Diameters and lengths in inches; nominal is the large end.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct InchTaperPin {
    /// The pin's number as written: `7/0` to `14`. It is a name, never a measure.
    pub number: &'static str,
    /// Basic diameter of the large end, in.
    pub large_end_in: f64,
    /// Shortest usual length, in.
    pub shortest_in: f64,
    /// Longest usual length, in.
    pub longest_in: f64,
}

/// One size of the metric series. Millimetres; nominal is the small end.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct MetricTaperPin {
    /// The size as written.
    pub size: &'static str,
    /// Nominal diameter of the small end, mm (upper limit; the lower is `h10_mm` below).
    pub small_end_mm: f64,
    /// IT10 of the small end, mm: the limits are nominal +0 / -IT10.
    pub h10_mm: f64,
    /// Height of the crown at the ends, mm.
    pub crown_mm: f64,
    /// Shortest usual length, mm.
    pub shortest_mm: f64,
    /// Longest usual length, mm.
    pub longest_mm: f64,
}

/// One taper pin reamer of the inch series, 1:48 on the diameter.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct TaperPinReamer {
    /// The number of the pin it is made for.
    pub number: &'static str,
    /// Small end of the flutes, in.
    pub small_end_in: f64,
    /// Large end of the flutes, in.
    pub large_end_in: f64,
    /// Length of the flutes, in.
    pub flute_in: f64,
}

/// One row of a published list of hole drills: pin number, pin length, drill.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct HoleDrill {
    /// The pin's number.
    pub number: &'static str,
    /// The pin's length, in.
    pub length_in: f64,
    /// The drill's designation; authoritative.
    pub drill: &'static str,
    /// The drill's diameter, in.
    pub drill_in: f64,
}

/// One row of the step-drilling list for the longest pins.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct StepDrill {
    /// The pin's number.
    pub number: &'static str,
    /// First drill, right through, in.
    pub through_in: f64,
    /// Second drill and its depth from the large end, in; none for the small pins.
    pub second_in: Option<(f64, f64)>,
}

/// Taper of the inch series on the diameter: 1/4 in per foot, 1:48 (ASME B18.8.2, Table 1).
pub const INCH_TAPER: Taper = Taper::from_ratio(1.0 / 48.0);
/// Taper of the metric series on the diameter: 1:50 (ISO 2339).
pub const METRIC_TAPER: Taper = Taper::from_ratio(1.0 / 50.0);

/// Commercial class, all numbers: +0.0013 / -0.0007 in on the large end (ASME B18.8.2, Table 1). Unsymmetrical.
pub const COMMERCIAL_IN: (f64, f64) = (0.0013, -0.0007);
/// Precision class, 7/0 to 10: +0.0010 / -0 in on the large end (ASME B18.8.2, Table 1).
pub const PRECISION_IN: (f64, f64) = (0.0010, 0.0);
/// The end crown's radius is the large end ± this, in (ASME B18.8.2, Table 1).
pub const CROWN_RADIUS_TOLERANCE_IN: f64 = 0.010;

const fn i(
    number: &'static str,
    large_end_in: f64,
    shortest_in: f64,
    longest_in: f64,
) -> InchTaperPin {
    InchTaperPin {
        number,
        large_end_in,
        shortest_in,
        longest_in,
    }
}

/// Inch series. Large end: ASME B18.8.2, Table 1. Lengths: the handbook table's ranges, from memory.
#[rustfmt::skip]
pub const INCH: [InchTaperPin; 21] = [
    i("7/0", 0.0625, 0.25, 1.0),
    i("6/0", 0.0780, 0.25, 1.5),
    i("5/0", 0.0940, 0.25, 1.5),
    i("4/0", 0.1090, 0.25, 2.0),
    i("3/0", 0.1250, 0.25, 2.0),
    i("2/0", 0.1410, 0.5, 2.5),
    i("0", 0.1560, 0.5, 3.0),
    i("1", 0.1720, 0.75, 3.0),
    i("2", 0.1930, 0.75, 3.0),
    i("3", 0.2190, 0.75, 4.0),
    i("4", 0.2500, 0.75, 4.0),
    i("5", 0.2890, 1.0, 6.0),
    i("6", 0.3410, 1.25, 6.0),
    i("7", 0.4090, 1.25, 8.0),
    i("8", 0.4920, 1.25, 8.0),
    i("9", 0.5910, 1.25, 8.0),
    i("10", 0.7060, 1.5, 8.0),
    i("11", 0.8600, 2.0, 8.0),
    i("12", 1.0320, 2.0, 9.0),
    i("13", 1.2410, 3.0, 11.0),
    i("14", 1.5210, 3.0, 13.0),
];

const fn m(
    size: &'static str,
    small_end_mm: f64,
    h10_mm: f64,
    crown_mm: f64,
    lengths: (f64, f64),
) -> MetricTaperPin {
    MetricTaperPin {
        size,
        small_end_mm,
        h10_mm,
        crown_mm,
        shortest_mm: lengths.0,
        longest_mm: lengths.1,
    }
}

/// Metric series. Small end and crown: ISO 2339; h10: ISO 286-2, IT10. Lengths: ISO 2339, from memory.
#[rustfmt::skip]
pub const METRIC: [MetricTaperPin; 20] = [
    m("0.6", 0.6, 0.040, 0.08, (4.0, 8.0)),
    m("0.8", 0.8, 0.040, 0.1, (5.0, 12.0)),
    m("1", 1.0, 0.040, 0.12, (6.0, 16.0)),
    m("1.2", 1.2, 0.040, 0.16, (6.0, 20.0)),
    m("1.5", 1.5, 0.040, 0.2, (8.0, 24.0)),
    m("2", 2.0, 0.040, 0.25, (10.0, 35.0)),
    m("2.5", 2.5, 0.040, 0.3, (10.0, 35.0)),
    m("3", 3.0, 0.040, 0.4, (12.0, 45.0)),
    m("4", 4.0, 0.048, 0.5, (14.0, 55.0)),
    m("5", 5.0, 0.048, 0.63, (18.0, 60.0)),
    m("6", 6.0, 0.048, 0.8, (22.0, 90.0)),
    m("8", 8.0, 0.058, 1.0, (22.0, 120.0)),
    m("10", 10.0, 0.058, 1.2, (26.0, 160.0)),
    m("12", 12.0, 0.070, 1.6, (32.0, 180.0)),
    m("16", 16.0, 0.070, 2.0, (40.0, 200.0)),
    m("20", 20.0, 0.084, 2.5, (45.0, 200.0)),
    m("25", 25.0, 0.084, 3.0, (50.0, 200.0)),
    m("30", 30.0, 0.084, 4.0, (55.0, 200.0)),
    m("40", 40.0, 0.100, 5.0, (60.0, 200.0)),
    m("50", 50.0, 0.100, 6.3, (65.0, 200.0)),
];

/// Usual lengths of metric pins, mm (ISO 2339:1986, clause 3; the steps of ISO 2338 and ISO 8734 are the same, from memory).
pub const METRIC_LENGTHS_MM: [f64; 37] = [
    2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 14.0, 16.0, 18.0, 20.0, 22.0, 24.0, 26.0, 28.0, 30.0,
    32.0, 35.0, 40.0, 45.0, 50.0, 55.0, 60.0, 65.0, 70.0, 75.0, 80.0, 85.0, 90.0, 95.0, 100.0,
    120.0, 140.0, 160.0, 180.0, 200.0,
];

const fn r(
    number: &'static str,
    small_end_in: f64,
    large_end_in: f64,
    flute_in: f64,
) -> TaperPinReamer {
    TaperPinReamer {
        number,
        small_end_in,
        large_end_in,
        flute_in,
    }
}

/// Taper pin reamers, inches: the American National Standard list (ASME B94.2) as handbooks carry it, from memory.
/// The large end of No. 5/0 is 0.0984 in a U.S. Army list (OD0017, p. 71): the two disagree.
#[rustfmt::skip]
pub const REAMERS: [TaperPinReamer; 17] = [
    r("7/0", 0.0497, 0.0666, 0.8125),
    r("6/0", 0.0611, 0.0806, 0.9375),
    r("5/0", 0.0719, 0.0966, 1.1875),
    r("4/0", 0.0869, 0.1142, 1.3125),
    r("3/0", 0.1029, 0.1302, 1.3125),
    r("2/0", 0.1137, 0.1462, 1.5625),
    r("0", 0.1287, 0.1638, 1.6875),
    r("1", 0.1447, 0.1798, 1.6875),
    r("2", 0.1605, 0.2008, 1.9375),
    r("3", 0.1813, 0.2294, 2.3125),
    r("4", 0.2071, 0.2604, 2.5625),
    r("5", 0.2409, 0.2994, 2.8125),
    r("6", 0.2773, 0.3540, 3.6875),
    r("7", 0.3297, 0.4220, 4.4375),
    r("8", 0.3971, 0.5050, 5.1875),
    r("9", 0.4805, 0.6066, 6.0625),
    r("10", 0.5799, 0.7216, 6.8125),
];

const fn h(number: &'static str, length_in: f64, drill: &'static str, drill_in: f64) -> HoleDrill {
    HoleDrill {
        number,
        length_in,
        drill,
        drill_in,
    }
}

/// Hole drills by pin number and length, one drill right through: U.S. Army TM 9-254, Table 3-1, p. 3-2.
///
/// The designation is authoritative. The list is not always below the pin's small end: about one row in six is more than
/// 0.0005 in over it. One print shows the letter drill I (3/4 in, No. 5) as the digit 1.
#[rustfmt::skip]
pub const HOLE_DRILLS: &[HoleDrill] = &[
    h("6/0", 0.375, "#50", 0.07),
    h("5/0", 0.375, "#44", 0.086),
    h("4/0", 0.375, "#38", 0.1015),
    h("3/0", 0.375, "#32", 0.116),
    h("2/0", 0.375, "#29", 0.136),
    h("6/0", 0.5, "#51", 0.067),
    h("5/0", 0.5, "#45", 0.082),
    h("4/0", 0.5, "#39", 0.0995),
    h("3/0", 0.5, "#33", 0.113),
    h("2/0", 0.5, "#30", 0.1285),
    h("0", 0.5, "#27", 0.144),
    h("6/0", 0.625, "#52", 0.0635),
    h("5/0", 0.625, "#46", 0.081),
    h("4/0", 0.625, "#41", 0.096),
    h("3/0", 0.625, "#34", 0.111),
    h("2/0", 0.625, "#30", 0.1285),
    h("0", 0.625, "#27", 0.144),
    h("1", 0.625, "#21", 0.159),
    h("6/0", 0.75, "1/16", 0.0625),
    h("5/0", 0.75, "#47", 0.0785),
    h("4/0", 0.75, "#42", 0.0935),
    h("3/0", 0.75, "7/64", 0.109375),
    h("2/0", 0.75, "1/8", 0.125),
    h("0", 0.75, "9/64", 0.140625),
    h("1", 0.75, "5/32", 0.15625),
    h("2", 0.75, "#16", 0.177),
    h("3", 0.75, "13/64", 0.203125),
    h("4", 0.75, "15/64", 0.234375),
    h("5", 0.75, "I", 0.272),
    h("5/0", 1.0, "#49", 0.073),
    h("4/0", 1.0, "#44", 0.086),
    h("3/0", 1.0, "#37", 0.104),
    h("2/0", 1.0, "#31", 0.12),
    h("0", 1.0, "#29", 0.136),
    h("1", 1.0, "#25", 0.1495),
    h("2", 1.0, "11/64", 0.171875),
    h("3", 1.0, "#9", 0.196),
    h("4", 1.0, "#1", 0.228),
    h("5", 1.0, "H", 0.266),
    h("2/0", 1.25, "#32", 0.116),
    h("0", 1.25, "#30", 0.1285),
    h("1", 1.25, "#26", 0.147),
    h("2", 1.25, "#19", 0.166),
    h("3", 1.25, "#10", 0.1935),
    h("4", 1.25, "#2", 0.221),
    h("5", 1.25, "G", 0.261),
    h("0", 1.5, "1/8", 0.125),
    h("1", 1.5, "9/64", 0.140625),
    h("2", 1.5, "#20", 0.161),
    h("3", 1.5, "3/16", 0.1875),
    h("4", 1.5, "7/32", 0.21875),
    h("5", 1.5, "F", 0.257),
    h("0", 1.75, "#31", 0.12),
    h("1", 1.75, "#29", 0.136),
    h("2", 1.75, "5/32", 0.15625),
    h("3", 1.75, "#14", 0.182),
    h("4", 1.75, "#3", 0.213),
    h("5", 1.75, "E", 0.25),
    h("0", 2.0, "#33", 0.113),
    h("1", 2.0, "#30", 0.1285),
    h("2", 2.0, "#25", 0.1495),
    h("3", 2.0, "#16", 0.177),
    h("4", 2.0, "#4", 0.209),
    h("5", 2.0, "D", 0.246),
    h("0", 2.25, "7/64", 0.109375),
    h("1", 2.25, "1/8", 0.125),
    h("2", 2.25, "#26", 0.147),
    h("3", 2.25, "11/64", 0.171875),
    h("4", 2.25, "13/64", 0.203125),
    h("5", 2.25, "C", 0.242),
    h("0", 2.5, "#37", 0.104),
    h("1", 2.5, "#31", 0.12),
    h("2", 2.5, "#28", 0.1405),
    h("3", 2.5, "#19", 0.166),
    h("4", 2.5, "#8", 0.199),
    h("5", 2.5, "B", 0.238),
    h("0", 2.75, "#40", 0.098),
    h("1", 2.75, "#33", 0.113),
    h("2", 2.75, "#29", 0.136),
    h("3", 2.75, "#21", 0.159),
    h("4", 2.75, "#11", 0.191),
    h("5", 2.75, "#1", 0.228),
    h("0", 3.0, "#42", 0.0935),
    h("1", 3.0, "#35", 0.11),
    h("2", 3.0, "#30", 0.1285),
    h("3", 3.0, "5/32", 0.15625),
    h("4", 3.0, "3/16", 0.1875),
    h("5", 3.0, "#2", 0.221),
    h("3", 3.25, "#24", 0.152),
    h("4", 3.25, "#14", 0.182),
    h("5", 3.25, "#2", 0.221),
    h("3", 3.5, "#26", 0.147),
    h("4", 3.5, "#16", 0.177),
    h("5", 3.5, "#3", 0.213),
    h("4", 3.75, "#17", 0.173),
    h("5", 3.75, "#4", 0.209),
    h("4", 4.0, "#19", 0.166),
    h("5", 4.0, "#5", 0.2055),
];

const fn s(number: &'static str, through_in: f64, second_in: Option<(f64, f64)>) -> StepDrill {
    StepDrill {
        number,
        through_in,
        second_in,
    }
}

/// Step drilling for the longest pins, inches: the American Standard list (appendix of ASME B18.8.2) by one secondary
/// source; weaker than TM 9-254. Verified to No. 3; above it we have no verified source.
#[rustfmt::skip]
pub const STEP_DRILLS: [StepDrill; 10] = [
    s("7/0", 0.0469, None),
    s("6/0", 0.0469, None),
    s("5/0", 0.0625, None),
    s("4/0", 0.0781, None),
    s("3/0", 0.0938, None),
    s("2/0", 0.0938, Some((0.1094, 1.25))),
    s("0", 0.0938, Some((0.125, 1.5))),
    s("1", 0.1094, Some((0.1406, 1.5))),
    s("2", 0.1094, Some((0.1406, 1.75))),
    s("3", 0.1406, Some((0.1719, 1.75))),
];

impl InchTaperPin {
    /// The basic large end.
    pub const fn large_end(&self) -> Length {
        Length::from_inches(self.large_end_in)
    }
    /// Limits of the large end, commercial class: (least, most).
    pub const fn commercial(&self) -> (Length, Length) {
        let (plus, minus) = COMMERCIAL_IN;
        (
            Length::from_inches(self.large_end_in + minus),
            Length::from_inches(self.large_end_in + plus),
        )
    }
    /// Limits of the large end, precision class: (least, most). The class ends at No. 10.
    pub fn precision(&self) -> Option<(Length, Length)> {
        let (plus, minus) = PRECISION_IN;
        (self.large_end_in <= 0.706).then(|| {
            (
                Length::from_inches(self.large_end_in + minus),
                Length::from_inches(self.large_end_in + plus),
            )
        })
    }
    /// The reamer of this number; the list ends at No. 10.
    pub fn reamer(&self) -> Option<&'static TaperPinReamer> {
        REAMERS.iter().find(|r| r.number == self.number)
    }
    /// The published hole drill for this pin at exactly this length (TM 9-254, Table 3-1).
    pub fn published_drill(&self, length: Length) -> Option<&'static HoleDrill> {
        HOLE_DRILLS
            .iter()
            .find(|h| h.number == self.number && (h.length_in - length.inches()).abs() < 1e-6)
    }
    /// The published step drills for the longest pins of this number.
    pub fn step_drill(&self) -> Option<&'static StepDrill> {
        STEP_DRILLS.iter().find(|s| s.number == self.number)
    }
}

impl MetricTaperPin {
    /// The nominal small end.
    pub const fn small_end(&self) -> Length {
        Length::from_mm(self.small_end_mm)
    }
    /// Limits of the small end, h10: (least, most).
    pub const fn limits(&self) -> (Length, Length) {
        (
            Length::from_mm(self.small_end_mm - self.h10_mm),
            Length::from_mm(self.small_end_mm),
        )
    }
}

impl TaperPinReamer {
    /// Small end of the flutes.
    pub const fn small_end(&self) -> Length {
        Length::from_inches(self.small_end_in)
    }
    /// Large end of the flutes.
    pub const fn large_end(&self) -> Length {
        Length::from_inches(self.large_end_in)
    }
    /// Length of the flutes.
    pub const fn flutes(&self) -> Length {
        Length::from_inches(self.flute_in)
    }
}

/// The inch pin of this number, written exactly as in the list.
///
/// ```
/// let pin = benchslate_core::standards::pins::taper_pins::inch("2/0").unwrap();
/// assert_eq!(pin.large_end_in, 0.141); // ASME B18.8.2, Table 1
/// ```
pub fn inch(number: &str) -> Option<&'static InchTaperPin> {
    INCH.iter().find(|p| p.number == number)
}

/// The metric pin of this nominal (small end) size.
pub fn metric(small_end: Length) -> Option<&'static MetricTaperPin> {
    METRIC
        .iter()
        .find(|p| (p.small_end_mm - small_end.mm()).abs() < 1e-6)
}

/// Tolerance on the length of a metric pin, plus and minus: 0.25 mm to 10, 0.5 mm to 50, 0.75 mm above (ISO 2339).
pub const fn metric_length_tolerance(length: Length) -> Length {
    Length::from_mm(if length.mm() <= 10.0 {
        0.25
    } else if length.mm() <= 50.0 {
        0.5
    } else {
        0.75
    })
}
