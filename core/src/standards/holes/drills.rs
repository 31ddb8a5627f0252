//! Which twist drills are there, and what do they measure? Number, letter, fractional and metric series.
//!
//! | | |
//! | --- | --- |
//! | standard | American standard number and letter sizes (ASME B94.11M, twist drills); fractions and metric by rule |
//! | unit | inch for numbers, letters and fractions (exact); millimetre for metric (exact) |
//! | authoritative | the column that is stored; the other unit follows from 1 in = 25.4 mm |
//! | fractions | 1/64 to 1-3/4 in by 64ths, to 2-1/4 by 32nds, to 3-1/2 by 16ths (ASME B94.11M taper shank steps) |
//! | metric | 0.3 to 3 mm by 0.05, to 14 mm by 0.1 and the quarters, to 32 mm by 0.25, to 50 mm by 0.5 (stock steps of DIN 338 and DIN 345, from memory) |

use crate::quantity::Length;
use std::sync::LazyLock;

/// A series of drills.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum DrillSeries {
    /// Numbers 1 to 80; 1 is the largest.
    Number,
    /// Letters A to Z; Z is the largest.
    Letter,
    /// Inch fractions.
    Fraction,
    /// Millimetres.
    Metric,
}

/// One standard drill. Its name follows from the series and the code, so a drill is a small plain value.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Drill {
    /// The series.
    pub series: DrillSeries,
    /// The number; the letter as ASCII; 64ths of an inch; hundredths of a millimetre.
    pub code: u16,
    /// The diameter.
    pub diameter: Length,
}

impl Drill {
    /// The full name, for a line of text: `No. 7`, `letter F`, `13/64 in`, `5.1 mm`.
    ///
    /// ```
    /// use benchslate_core::standards::holes::drills;
    /// assert_eq!(drills::number(7).unwrap().name(), "No. 7");
    /// assert_eq!(drills::fraction(26).unwrap().name(), "13/32 in");
    /// ```
    pub fn name(self) -> String {
        match self.series {
            DrillSeries::Number => format!("No. {}", self.code),
            DrillSeries::Letter => format!("letter {}", self.call()),
            DrillSeries::Fraction => format!("{} in", self.call()),
            DrillSeries::Metric => self.call(),
        }
    }

    /// The short call that can be typed: `#7`, `F`, `13/64`, `5.1 mm`.
    pub fn call(self) -> String {
        match self.series {
            DrillSeries::Number => format!("#{}", self.code),
            DrillSeries::Letter => char::from(u8::try_from(self.code).unwrap_or(b'?')).to_string(),
            DrillSeries::Fraction => sixty_fourths(self.code),
            DrillSeries::Metric => {
                let (whole, part) = (self.code / 100, self.code % 100);
                match (part % 10, part) {
                    (_, 0) => format!("{whole} mm"),
                    (0, _) => format!("{whole}.{} mm", part / 10),
                    _ => format!("{whole}.{part:02} mm"),
                }
            }
        }
    }
}

fn sixty_fourths(count: u16) -> String {
    let (whole, mut over, mut under) = (count / 64, count % 64, 64);
    while over != 0 && over.is_multiple_of(2) {
        over /= 2;
        under /= 2;
    }
    match (whole, over) {
        (_, 0) => whole.to_string(),
        (0, _) => format!("{over}/{under}"),
        _ => format!("{whole}-{over}/{under}"),
    }
}

/// Number drills: number, diameter in inches.
const NUMBERS: [(u16, f64); 80] = [
    (1, 0.228),
    (2, 0.221),
    (3, 0.213),
    (4, 0.209),
    (5, 0.2055),
    (6, 0.204),
    (7, 0.201),
    (8, 0.199),
    (9, 0.196),
    (10, 0.1935),
    (11, 0.191),
    (12, 0.189),
    (13, 0.185),
    (14, 0.182),
    (15, 0.18),
    (16, 0.177),
    (17, 0.173),
    (18, 0.1695),
    (19, 0.166),
    (20, 0.161),
    (21, 0.159),
    (22, 0.157),
    (23, 0.154),
    (24, 0.152),
    (25, 0.1495),
    (26, 0.147),
    (27, 0.144),
    (28, 0.1405),
    (29, 0.136),
    (30, 0.1285),
    (31, 0.12),
    (32, 0.116),
    (33, 0.113),
    (34, 0.111),
    (35, 0.11),
    (36, 0.1065),
    (37, 0.104),
    (38, 0.1015),
    (39, 0.0995),
    (40, 0.098),
    (41, 0.096),
    (42, 0.0935),
    (43, 0.089),
    (44, 0.086),
    (45, 0.082),
    (46, 0.081),
    (47, 0.0785),
    (48, 0.076),
    (49, 0.073),
    (50, 0.07),
    (51, 0.067),
    (52, 0.0635),
    (53, 0.0595),
    (54, 0.055),
    (55, 0.052),
    (56, 0.0465),
    (57, 0.043),
    (58, 0.042),
    (59, 0.041),
    (60, 0.04),
    (61, 0.039),
    (62, 0.038),
    (63, 0.037),
    (64, 0.036),
    (65, 0.035),
    (66, 0.033),
    (67, 0.032),
    (68, 0.031),
    (69, 0.0292),
    (70, 0.028),
    (71, 0.026),
    (72, 0.025),
    (73, 0.024),
    (74, 0.0225),
    (75, 0.021),
    (76, 0.02),
    (77, 0.018),
    (78, 0.016),
    (79, 0.0145),
    (80, 0.0135),
];

/// Letter drills: letter, diameter in inches.
const LETTERS: [(u8, f64); 26] = [
    (b'A', 0.234),
    (b'B', 0.238),
    (b'C', 0.242),
    (b'D', 0.246),
    (b'E', 0.25),
    (b'F', 0.257),
    (b'G', 0.261),
    (b'H', 0.266),
    (b'I', 0.272),
    (b'J', 0.277),
    (b'K', 0.281),
    (b'L', 0.29),
    (b'M', 0.295),
    (b'N', 0.302),
    (b'O', 0.316),
    (b'P', 0.323),
    (b'Q', 0.332),
    (b'R', 0.339),
    (b'S', 0.348),
    (b'T', 0.358),
    (b'U', 0.368),
    (b'V', 0.377),
    (b'W', 0.386),
    (b'X', 0.397),
    (b'Y', 0.404),
    (b'Z', 0.413),
];

fn of_inches(series: DrillSeries, code: u16, inches: f64) -> Drill {
    Drill {
        series,
        code,
        diameter: Length::from_inches(inches),
    }
}

/// The number drill, 1 to 80.
pub fn number(number: u16) -> Option<Drill> {
    NUMBERS
        .iter()
        .find(|row| row.0 == number)
        .map(|row| of_inches(DrillSeries::Number, row.0, row.1))
}

/// The letter drill, A to Z in either case.
pub fn letter(letter: char) -> Option<Drill> {
    let wanted = u8::try_from(letter.to_ascii_uppercase()).ok()?;
    LETTERS
        .iter()
        .find(|row| row.0 == wanted)
        .map(|row| of_inches(DrillSeries::Letter, u16::from(row.0), row.1))
}

/// The fractional drill of so many 64ths of an inch, where the series has it.
pub fn fraction(sixty_fourths: u16) -> Option<Drill> {
    let step = match sixty_fourths {
        1..=112 => 1,
        113..=144 => 2,
        145..=224 => 4,
        _ => return None,
    };
    sixty_fourths.is_multiple_of(step).then(|| {
        of_inches(
            DrillSeries::Fraction,
            sixty_fourths,
            f64::from(sixty_fourths) / 64.0,
        )
    })
}

/// The metric drill of so many hundredths of a millimetre, where the series has it.
pub fn metric(hundredths: u16) -> Option<Drill> {
    let made = match hundredths {
        30..=300 => hundredths.is_multiple_of(5),
        301..=1400 => hundredths.is_multiple_of(10) || hundredths.is_multiple_of(25),
        1401..=3200 => hundredths.is_multiple_of(25),
        3201..=5000 => hundredths.is_multiple_of(50),
        _ => false,
    };
    made.then(|| Drill {
        series: DrillSeries::Metric,
        code: hundredths,
        diameter: Length::from_mm(f64::from(hundredths) / 100.0),
    })
}

/// Every drill of one series, smallest first.
pub fn series(series: DrillSeries) -> Vec<Drill> {
    match series {
        DrillSeries::Number => numbers().collect(),
        DrillSeries::Letter => letters().collect(),
        DrillSeries::Fraction => (1..=224).filter_map(fraction).collect(),
        DrillSeries::Metric => (30..=5000).filter_map(metric).collect(),
    }
}

/// Every drill there is, smallest first; where two are of one size (letter E and 1/4 in) both are there.
///
/// ```
/// use benchslate_core::standards::holes::drills;
/// let all = drills::all();
/// assert!(all.windows(2).all(|pair| pair[0].diameter <= pair[1].diameter));
/// ```
pub fn all() -> &'static [Drill] {
    use DrillSeries::*;
    static ALL: LazyLock<Vec<Drill>> = LazyLock::new(|| {
        let mut drills: Vec<Drill> = [Number, Letter, Fraction, Metric]
            .into_iter()
            .flat_map(series)
            .collect();
        crate::order::sort_by(&mut drills, |a, b| {
            a.diameter.mm().total_cmp(&b.diameter.mm())
        });
        drills
    });
    &ALL
}

/// The drills nearest a size, nearest first, at most so many.
///
/// ```
/// use benchslate_core::{quantity::Length, standards::holes::drills};
/// let near = drills::nearest(Length::from_inches(0.201), 3);
/// assert_eq!(near[0].name(), "No. 7");
/// ```
pub fn nearest(size: Length, most: usize) -> Vec<Drill> {
    let at = all().partition_point(|drill| drill.diameter < size);
    // no more can be among them to either side; four drills at most are of one size, and their series decides
    let room = most.saturating_add(4);
    let near = at.saturating_sub(room)..at.saturating_add(room).min(all().len());
    let mut drills = all().get(near).unwrap_or_default().to_vec();
    crate::order::sort_by(&mut drills, |a, b| {
        let off = |drill: &Drill| (drill.diameter - size).abs().mm();
        off(a).total_cmp(&off(b)).then(a.series.cmp(&b.series))
    });
    drills.truncate(most);
    drills
}

/// The drills that measure this size to within half of a ten-thousandth of an inch.
pub fn exactly(size: Length) -> Vec<Drill> {
    let code = |count: f64| libm::round(count.clamp(0.0, 60000.0)) as u16;
    let near = [
        fraction(code(size.inches() * 64.0)),
        metric(code(size.mm() * 100.0)),
    ];
    numbers()
        .chain(letters())
        .chain(near.into_iter().flatten())
        .filter(|drill| (drill.diameter - size).abs() < Length::from_inches(0.00005))
        .collect()
}

fn numbers() -> impl Iterator<Item = Drill> {
    NUMBERS
        .iter()
        .rev()
        .map(|row| of_inches(DrillSeries::Number, row.0, row.1))
}

fn letters() -> impl Iterator<Item = Drill> {
    LETTERS
        .iter()
        .map(|row| of_inches(DrillSeries::Letter, u16::from(row.0), row.1))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_nearest_few_are_the_first_of_all() {
        let mut sizes: Vec<Length> = all().iter().map(|drill| drill.diameter).collect();
        let between = all().windows(2);
        sizes.extend(between.map(|pair| (pair[0].diameter + pair[1].diameter) * 0.5));
        sizes.extend([0.0, -1.0, 1000.0].map(Length::from_mm));
        for size in sizes {
            let whole = nearest(size, all().len());
            for most in [0, 1, 3, 12] {
                assert_eq!(nearest(size, most), whole[..most]);
            }
        }
    }

    #[test]
    fn series_are_whole_and_in_order() {
        for (one, count) in [
            (DrillSeries::Number, 80),
            (DrillSeries::Letter, 26),
            (DrillSeries::Fraction, 112 + 16 + 20),
            (DrillSeries::Metric, 55 + 110 + 22 + 72 + 36),
        ] {
            let drills = series(one);
            assert_eq!(drills.len(), count, "{one:?}");
            assert!(
                drills
                    .windows(2)
                    .all(|pair| pair[0].diameter < pair[1].diameter),
                "{one:?}"
            );
        }
    }

    #[test]
    fn names_follow_from_codes() {
        assert_eq!(metric(510).unwrap().name(), "5.1 mm");
        assert_eq!(metric(325).unwrap().name(), "3.25 mm");
        assert_eq!(metric(205).unwrap().name(), "2.05 mm");
        assert_eq!(metric(1200).unwrap().name(), "12 mm");
        assert_eq!(fraction(85).unwrap().call(), "1-21/64");
        assert_eq!(letter('f').unwrap().name(), "letter F");
        assert_eq!(fraction(113), None);
        assert_eq!(metric(1405), None);
    }

    #[test]
    fn one_size_may_have_two_names() {
        let names: Vec<String> = exactly(Length::from_inches(0.25))
            .into_iter()
            .map(Drill::name)
            .collect();
        assert_eq!(names, ["letter E", "1/4 in"]);
    }
}
