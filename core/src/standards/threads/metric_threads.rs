//! Which ISO metric threads are there: diameters, coarse pitch, and the finer pitches of each?
//!
//! | | |
//! | --- | --- |
//! | standard | ISO 261:1998, general plan, M1 to M68 (from memory; the selection of ISO 262 is a part of it) |
//! | unit | millimetre, exact |
//! | authoritative | the millimetre |
//! | zero | the diameter has no coarse pitch |

use crate::quantity::Length;

/// One diameter of the general plan.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct MetricSize {
    /// Nominal diameter in millimetres.
    pub major_mm: f64,
    /// Coarse pitch in millimetres, zero where there is none.
    pub coarse_mm: f64,
    /// Fine pitches in millimetres, largest first.
    pub fine_mm: &'static [f64],
    /// Choice 1, 2 or 3: take the first column before the second.
    pub choice: u8,
}

impl MetricSize {
    /// The nominal diameter.
    pub fn major(&self) -> Length {
        Length::from_mm(self.major_mm)
    }
}

const fn size(major_mm: f64, coarse_mm: f64, fine_mm: &'static [f64], choice: u8) -> MetricSize {
    MetricSize {
        major_mm,
        coarse_mm,
        fine_mm,
        choice,
    }
}

/// The diameters, smallest first: major, coarse pitch, fine pitches, choice.
#[rustfmt::skip]
pub const SIZES: [MetricSize; 55] = [
    size(1.0, 0.25, &[0.2], 1),
    size(1.1, 0.25, &[0.2], 2),
    size(1.2, 0.25, &[0.2], 1),
    size(1.4, 0.3, &[0.2], 2),
    size(1.6, 0.35, &[0.2], 1),
    size(1.8, 0.35, &[0.2], 2),
    size(2.0, 0.4, &[0.25], 1),
    size(2.2, 0.45, &[0.25], 2),
    size(2.5, 0.45, &[0.35], 1),
    size(3.0, 0.5, &[0.35], 1),
    size(3.5, 0.6, &[0.35], 2),
    size(4.0, 0.7, &[0.5], 1),
    size(4.5, 0.75, &[0.5], 2),
    size(5.0, 0.8, &[0.5], 1),
    size(5.5, 0.0, &[0.5], 3),
    size(6.0, 1.0, &[0.75], 1),
    size(7.0, 1.0, &[0.75], 2),
    size(8.0, 1.25, &[1.0, 0.75], 1),
    size(9.0, 1.25, &[1.0, 0.75], 3),
    size(10.0, 1.5, &[1.25, 1.0, 0.75], 1),
    size(11.0, 1.5, &[1.0, 0.75], 3),
    size(12.0, 1.75, &[1.5, 1.25, 1.0], 1),
    size(14.0, 2.0, &[1.5, 1.25, 1.0], 2),
    size(15.0, 0.0, &[1.5, 1.0], 3),
    size(16.0, 2.0, &[1.5, 1.0], 1),
    size(17.0, 0.0, &[1.5, 1.0], 3),
    size(18.0, 2.5, &[2.0, 1.5, 1.0], 2),
    size(20.0, 2.5, &[2.0, 1.5, 1.0], 1),
    size(22.0, 2.5, &[2.0, 1.5, 1.0], 2),
    size(24.0, 3.0, &[2.0, 1.5, 1.0], 1),
    size(25.0, 0.0, &[2.0, 1.5, 1.0], 3),
    size(26.0, 0.0, &[1.5], 3),
    size(27.0, 3.0, &[2.0, 1.5, 1.0], 2),
    size(28.0, 0.0, &[2.0, 1.5, 1.0], 3),
    size(30.0, 3.5, &[3.0, 2.0, 1.5, 1.0], 1),
    size(32.0, 0.0, &[2.0, 1.5], 3),
    size(33.0, 3.5, &[3.0, 2.0, 1.5], 2),
    size(35.0, 0.0, &[1.5], 3),
    size(36.0, 4.0, &[3.0, 2.0, 1.5], 1),
    size(38.0, 0.0, &[1.5], 3),
    size(39.0, 4.0, &[3.0, 2.0, 1.5], 2),
    size(40.0, 0.0, &[3.0, 2.0, 1.5], 3),
    size(42.0, 4.5, &[4.0, 3.0, 2.0, 1.5], 1),
    size(45.0, 4.5, &[4.0, 3.0, 2.0, 1.5], 2),
    size(48.0, 5.0, &[4.0, 3.0, 2.0, 1.5], 1),
    size(50.0, 0.0, &[3.0, 2.0, 1.5], 3),
    size(52.0, 5.0, &[4.0, 3.0, 2.0, 1.5], 2),
    size(55.0, 0.0, &[4.0, 3.0, 2.0, 1.5], 3),
    size(56.0, 5.5, &[4.0, 3.0, 2.0, 1.5], 1),
    size(58.0, 0.0, &[4.0, 3.0, 2.0, 1.5], 3),
    size(60.0, 5.5, &[4.0, 3.0, 2.0, 1.5], 2),
    size(62.0, 0.0, &[4.0, 3.0, 2.0, 1.5], 3),
    size(64.0, 6.0, &[4.0, 3.0, 2.0, 1.5], 1),
    size(65.0, 0.0, &[4.0, 3.0, 2.0, 1.5], 3),
    size(68.0, 6.0, &[4.0, 3.0, 2.0, 1.5], 2),
];

/// The size of this nominal diameter.
pub fn of_major(major: Length) -> Option<&'static MetricSize> {
    SIZES
        .iter()
        .find(|size| (size.major() - major).abs() < Length::from_mm(0.0005))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn diameters_rise_and_fine_is_finer() {
        assert!(
            SIZES
                .windows(2)
                .all(|pair| pair[0].major_mm < pair[1].major_mm)
        );
        let coarse: Vec<f64> = SIZES
            .iter()
            .map(|size| size.coarse_mm)
            .filter(|pitch| *pitch > 0.0)
            .collect();
        assert_eq!(coarse.len(), 40);
        assert!(
            coarse.windows(2).all(|pair| pair[0] <= pair[1]),
            "a larger screw is never finer"
        );
        for size in SIZES {
            assert!(
                size.fine_mm.windows(2).all(|pair| pair[0] > pair[1]),
                "M{}",
                size.major_mm
            );
            assert!(
                size.fine_mm
                    .iter()
                    .all(|pitch| size.coarse_mm == 0.0 || *pitch < size.coarse_mm)
            );
        }
    }
}
