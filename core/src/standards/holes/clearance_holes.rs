//! How large is a clearance hole for a screw: close, normal, loose?
//!
//! | | |
//! | --- | --- |
//! | standard | inch: ASME B18.2.8-1999 (R2017), table 1; metric: ISO 273:1979 (both from memory, compared with a second list) |
//! | unit | inch for Unified sizes, millimetre for metric ones; each exact |
//! | authoritative | the smallest hole; the standards add a tolerance upward |

use crate::quantity::Length;

/// The fit of a clearance hole.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum ClearanceFit {
    /// ASME: close; ISO 273: fine.
    Close,
    /// ASME: normal; ISO 273: medium.
    Normal,
    /// ASME: loose; ISO 273: coarse.
    Loose,
}

/// The holes of one screw size, in the unit of the table.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct ClearanceHole {
    /// Screw diameter.
    pub screw: f64,
    /// Close or fine.
    pub close: f64,
    /// Normal or medium.
    pub normal: f64,
    /// Loose or coarse.
    pub loose: f64,
}

impl ClearanceHole {
    /// The figure of one fit.
    pub const fn of(&self, fit: ClearanceFit) -> f64 {
        match fit {
            ClearanceFit::Close => self.close,
            ClearanceFit::Normal => self.normal,
            ClearanceFit::Loose => self.loose,
        }
    }
}

const fn hole(screw: f64, close: f64, normal: f64, loose: f64) -> ClearanceHole {
    ClearanceHole {
        screw,
        close,
        normal,
        loose,
    }
}

/// ASME B18.2.8, inches: screw, close, normal, loose.
#[rustfmt::skip]
pub const INCH: [ClearanceHole; 22] = [
    hole(0.06, 0.067, 0.076, 0.094),
    hole(0.073, 0.081, 0.089, 0.104),
    hole(0.086, 0.094, 0.102, 0.116),
    hole(0.099, 0.106, 0.116, 0.128),
    hole(0.112, 0.12, 0.128, 0.144),
    hole(0.125, 0.141, 0.156, 0.172),
    hole(0.138, 0.154, 0.17, 0.185),
    hole(0.164, 0.18, 0.196, 0.213),
    hole(0.19, 0.206, 0.221, 0.238),
    hole(0.25, 0.266, 0.281, 0.297),
    hole(0.3125, 0.328, 0.344, 0.359),
    hole(0.375, 0.391, 0.406, 0.422),
    hole(0.4375, 0.453, 0.469, 0.484),
    hole(0.5, 0.531, 0.562, 0.609),
    hole(0.625, 0.656, 0.688, 0.734),
    hole(0.75, 0.781, 0.812, 0.906),
    hole(0.875, 0.906, 0.938, 1.031),
    hole(1.0, 1.031, 1.094, 1.156),
    hole(1.125, 1.156, 1.219, 1.312),
    hole(1.25, 1.281, 1.344, 1.438),
    hole(1.375, 1.438, 1.5, 1.609),
    hole(1.5, 1.562, 1.625, 1.734),
];

/// ISO 273, millimetres: screw, fine, medium, coarse.
#[rustfmt::skip]
pub const METRIC: [ClearanceHole; 36] = [
    hole(1.0, 1.1, 1.2, 1.3),
    hole(1.2, 1.3, 1.4, 1.5),
    hole(1.4, 1.5, 1.6, 1.8),
    hole(1.6, 1.7, 1.8, 2.0),
    hole(1.8, 2.0, 2.1, 2.2),
    hole(2.0, 2.2, 2.4, 2.6),
    hole(2.5, 2.7, 2.9, 3.1),
    hole(3.0, 3.2, 3.4, 3.6),
    hole(3.5, 3.7, 3.9, 4.2),
    hole(4.0, 4.3, 4.5, 4.8),
    hole(4.5, 4.8, 5.0, 5.3),
    hole(5.0, 5.3, 5.5, 5.8),
    hole(6.0, 6.4, 6.6, 7.0),
    hole(7.0, 7.4, 7.6, 8.0),
    hole(8.0, 8.4, 9.0, 10.0),
    hole(10.0, 10.5, 11.0, 12.0),
    hole(12.0, 13.0, 13.5, 14.5),
    hole(14.0, 15.0, 15.5, 16.5),
    hole(16.0, 17.0, 17.5, 18.5),
    hole(18.0, 19.0, 20.0, 21.0),
    hole(20.0, 21.0, 22.0, 24.0),
    hole(22.0, 23.0, 24.0, 26.0),
    hole(24.0, 25.0, 26.0, 28.0),
    hole(27.0, 28.0, 30.0, 32.0),
    hole(30.0, 31.0, 33.0, 35.0),
    hole(33.0, 34.0, 36.0, 38.0),
    hole(36.0, 37.0, 39.0, 42.0),
    hole(39.0, 40.0, 42.0, 45.0),
    hole(42.0, 43.0, 45.0, 48.0),
    hole(45.0, 46.0, 48.0, 52.0),
    hole(48.0, 50.0, 52.0, 56.0),
    hole(52.0, 54.0, 56.0, 62.0),
    hole(56.0, 58.0, 62.0, 66.0),
    hole(60.0, 62.0, 66.0, 70.0),
    hole(64.0, 66.0, 70.0, 74.0),
    hole(68.0, 70.0, 74.0, 78.0),
];

/// The inch row of a screw diameter.
pub fn inch(screw: Length) -> Option<&'static ClearanceHole> {
    INCH.iter()
        .find(|row| (row.screw - screw.inches()).abs() < 0.00001)
}

/// The metric row of a screw diameter.
pub fn metric(screw: Length) -> Option<&'static ClearanceHole> {
    METRIC
        .iter()
        .find(|row| (row.screw - screw.mm()).abs() < 0.0001)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn holes_rise_with_screw_and_fit() {
        for table in [INCH.as_slice(), METRIC.as_slice()] {
            for row in table {
                assert!(
                    row.screw < row.close && row.close < row.normal && row.normal < row.loose,
                    "{row:?}"
                );
            }
            assert!(table.windows(2).all(|pair| {
                pair[0].screw < pair[1].screw
                    && pair[0].close < pair[1].close
                    && pair[0].normal < pair[1].normal
                    && pair[0].loose < pair[1].loose
            }));
        }
    }
}
