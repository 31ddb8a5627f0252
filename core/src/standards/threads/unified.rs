//! Which Unified threads does the standard define: sizes, and the threads per inch of each series?
//!
//! | | |
//! | --- | --- |
//! | standard | ASME B1.1-2003 (R2018), table of diameter-pitch combinations of the standard series (from memory) |
//! | unit | inch, threads per inch; both exact |
//! | authoritative | the inch |
//! | zero | the series does not have this size |
//!
//! The constant-pitch column holds what is not already graded: 1/2-20 is UNF, so 20 is not repeated there.

use crate::quantity::Length;

/// One size of the Unified standard series.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct UnifiedSize {
    /// As it is called: `No. 10`, `1/4`, `1-1/8`.
    pub name: &'static str,
    /// Basic major diameter in inches.
    pub major_in: f64,
    /// Threads per inch of the coarse series, zero where there is none.
    pub unc: f64,
    /// Threads per inch of the fine series, zero where there is none.
    pub unf: f64,
    /// Threads per inch of the extra-fine series, zero where there is none.
    pub unef: f64,
    /// Threads per inch of the constant-pitch series at this size.
    pub constant: &'static [u8],
}

impl UnifiedSize {
    /// The basic major diameter.
    pub fn major(&self) -> Length {
        Length::from_inches(self.major_in)
    }
}

const fn size(
    name: &'static str,
    major_in: f64,
    unc: f64,
    unf: f64,
    unef: f64,
    constant: &'static [u8],
) -> UnifiedSize {
    UnifiedSize {
        name,
        major_in,
        unc,
        unf,
        unef,
        constant,
    }
}

/// The sizes, smallest first: name, major, UNC, UNF, UNEF, constant pitch.
#[rustfmt::skip]
pub const SIZES: [UnifiedSize; 71] = [
    size("No. 0", 0.06, 0.0, 80.0, 0.0, &[]),
    size("No. 1", 0.073, 64.0, 72.0, 0.0, &[]),
    size("No. 2", 0.086, 56.0, 64.0, 0.0, &[]),
    size("No. 3", 0.099, 48.0, 56.0, 0.0, &[]),
    size("No. 4", 0.112, 40.0, 48.0, 0.0, &[]),
    size("No. 5", 0.125, 40.0, 44.0, 0.0, &[]),
    size("No. 6", 0.138, 32.0, 40.0, 0.0, &[]),
    size("No. 8", 0.164, 32.0, 36.0, 0.0, &[]),
    size("No. 10", 0.19, 24.0, 32.0, 0.0, &[]),
    size("No. 12", 0.216, 24.0, 28.0, 32.0, &[]),
    size("1/4", 0.25, 20.0, 28.0, 32.0, &[]),
    size("5/16", 0.3125, 18.0, 24.0, 32.0, &[20, 28]),
    size("3/8", 0.375, 16.0, 24.0, 32.0, &[20, 28]),
    size("7/16", 0.4375, 14.0, 20.0, 28.0, &[16, 32]),
    size("1/2", 0.5, 13.0, 20.0, 28.0, &[16, 32]),
    size("9/16", 0.5625, 12.0, 18.0, 24.0, &[16, 20, 28, 32]),
    size("5/8", 0.625, 11.0, 18.0, 24.0, &[12, 16, 20, 28, 32]),
    size("11/16", 0.6875, 0.0, 0.0, 24.0, &[12, 16, 20, 28, 32]),
    size("3/4", 0.75, 10.0, 16.0, 20.0, &[12, 28, 32]),
    size("13/16", 0.8125, 0.0, 0.0, 20.0, &[12, 16, 28, 32]),
    size("7/8", 0.875, 9.0, 14.0, 20.0, &[12, 16, 28, 32]),
    size("15/16", 0.9375, 0.0, 0.0, 20.0, &[12, 16, 28, 32]),
    size("1", 1.0, 8.0, 12.0, 20.0, &[16, 28, 32]),
    size("1-1/16", 1.0625, 0.0, 0.0, 18.0, &[8, 12, 16, 20, 28]),
    size("1-1/8", 1.125, 7.0, 12.0, 18.0, &[8, 16, 20, 28]),
    size("1-3/16", 1.1875, 0.0, 0.0, 18.0, &[8, 12, 16, 20, 28]),
    size("1-1/4", 1.25, 7.0, 12.0, 18.0, &[8, 16, 20, 28]),
    size("1-5/16", 1.3125, 0.0, 0.0, 18.0, &[8, 12, 16, 20, 28]),
    size("1-3/8", 1.375, 6.0, 12.0, 18.0, &[8, 16, 20, 28]),
    size("1-7/16", 1.4375, 0.0, 0.0, 18.0, &[6, 8, 12, 16, 20, 28]),
    size("1-1/2", 1.5, 6.0, 12.0, 18.0, &[8, 16, 20, 28]),
    size("1-9/16", 1.5625, 0.0, 0.0, 18.0, &[6, 8, 12, 16, 20]),
    size("1-5/8", 1.625, 0.0, 0.0, 18.0, &[6, 8, 12, 16, 20]),
    size("1-11/16", 1.6875, 0.0, 0.0, 18.0, &[6, 8, 12, 16, 20]),
    size("1-3/4", 1.75, 5.0, 0.0, 0.0, &[6, 8, 12, 16, 20]),
    size("1-13/16", 1.8125, 0.0, 0.0, 0.0, &[6, 8, 12, 16, 20]),
    size("1-7/8", 1.875, 0.0, 0.0, 0.0, &[6, 8, 12, 16, 20]),
    size("1-15/16", 1.9375, 0.0, 0.0, 0.0, &[6, 8, 12, 16, 20]),
    size("2", 2.0, 4.5, 0.0, 0.0, &[6, 8, 12, 16, 20]),
    size("2-1/8", 2.125, 0.0, 0.0, 0.0, &[6, 8, 12, 16, 20]),
    size("2-1/4", 2.25, 4.5, 0.0, 0.0, &[6, 8, 12, 16, 20]),
    size("2-3/8", 2.375, 0.0, 0.0, 0.0, &[6, 8, 12, 16, 20]),
    size("2-1/2", 2.5, 4.0, 0.0, 0.0, &[6, 8, 12, 16, 20]),
    size("2-5/8", 2.625, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16, 20]),
    size("2-3/4", 2.75, 4.0, 0.0, 0.0, &[6, 8, 12, 16, 20]),
    size("2-7/8", 2.875, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16, 20]),
    size("3", 3.0, 4.0, 0.0, 0.0, &[6, 8, 12, 16, 20]),
    size("3-1/8", 3.125, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16]),
    size("3-1/4", 3.25, 4.0, 0.0, 0.0, &[6, 8, 12, 16]),
    size("3-3/8", 3.375, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16]),
    size("3-1/2", 3.5, 4.0, 0.0, 0.0, &[6, 8, 12, 16]),
    size("3-5/8", 3.625, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16]),
    size("3-3/4", 3.75, 4.0, 0.0, 0.0, &[6, 8, 12, 16]),
    size("3-7/8", 3.875, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16]),
    size("4", 4.0, 4.0, 0.0, 0.0, &[6, 8, 12, 16]),
    size("4-1/8", 4.125, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16]),
    size("4-1/4", 4.25, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16]),
    size("4-3/8", 4.375, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16]),
    size("4-1/2", 4.5, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16]),
    size("4-5/8", 4.625, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16]),
    size("4-3/4", 4.75, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16]),
    size("4-7/8", 4.875, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16]),
    size("5", 5.0, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16]),
    size("5-1/8", 5.125, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16]),
    size("5-1/4", 5.25, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16]),
    size("5-3/8", 5.375, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16]),
    size("5-1/2", 5.5, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16]),
    size("5-5/8", 5.625, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16]),
    size("5-3/4", 5.75, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16]),
    size("5-7/8", 5.875, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16]),
    size("6", 6.0, 0.0, 0.0, 0.0, &[4, 6, 8, 12, 16]),
];

/// Common special (UNS) counts: basic major diameter in inches and threads per inch. ASME B1.1, list of selected combinations,
/// from memory; 1-14 is the old fine thread of many bolts.
#[rustfmt::skip]
pub const SPECIALS: [(f64, &[u8]); 11] = [
    (0.19, &[28, 36, 40, 48, 56]),
    (0.216, &[36, 40, 48, 56]),
    (0.25, &[24, 27, 36, 40, 48, 56]),
    (0.3125, &[27, 36, 40, 48]),
    (0.375, &[18, 27, 36, 40]),
    (0.4375, &[18, 24, 27]),
    (0.5, &[12, 14, 18, 24, 27]),
    (0.625, &[14, 27]),
    (0.75, &[14, 18, 24, 27]),
    (0.875, &[10, 18, 24, 27]),
    (1.0, &[10, 14, 18, 24, 27]),
];

/// The size of this basic major diameter.
pub fn of_major(major: Length) -> Option<&'static UnifiedSize> {
    SIZES
        .iter()
        .find(|size| (size.major() - major).abs() < Length::from_inches(0.00001))
}

/// The size of this name: `No. 10`, `1/4`.
pub fn of_name(name: &str) -> Option<&'static UnifiedSize> {
    SIZES.iter().find(|size| size.name == name)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn sizes_rise_and_pitches_get_finer() {
        assert!(
            SIZES
                .windows(2)
                .all(|pair| pair[0].major_in < pair[1].major_in)
        );
        for size in SIZES {
            let graded: Vec<f64> = [size.unc, size.unf, size.unef]
                .into_iter()
                .filter(|tpi| *tpi > 0.0)
                .collect();
            assert!(
                graded.windows(2).all(|pair| pair[0] < pair[1]),
                "{}",
                size.name
            );
            assert!(
                size.constant.windows(2).all(|pair| pair[0] < pair[1]),
                "{}",
                size.name
            );
            assert!(
                size.constant
                    .iter()
                    .all(|tpi| !graded.contains(&f64::from(*tpi))),
                "{}",
                size.name
            );
        }
    }

    #[test]
    fn a_special_count_is_in_no_standard_series() {
        for (major, counts) in SPECIALS {
            let size = of_major(Length::from_inches(major)).unwrap();
            let graded = [size.unc, size.unf, size.unef];
            for &count in counts {
                assert!(!graded.contains(&f64::from(count)), "{} {count}", size.name);
                assert!(!size.constant.contains(&count), "{} {count}", size.name);
            }
            assert!(counts.windows(2).all(|pair| pair[0] < pair[1]));
        }
    }

    #[test]
    fn names_say_the_diameter() {
        for size in SIZES {
            if let Some(number) = size.name.strip_prefix("No. ") {
                // The number sizes are 0.060 in + 0.013 in a number (ASME B1.1).
                let number: f64 = number.parse().unwrap();
                assert!(
                    (0.060 + 0.013 * number - size.major_in).abs() < 1e-9,
                    "{}",
                    size.name
                );
            }
        }
        assert_eq!(of_name("1-1/8").unwrap().major_in, 1.125);
    }
}
