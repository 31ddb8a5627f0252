//! Which numbers are preferred? The series R40 of ISO 3, of which R20, R10 and R5 are every second, fourth and eighth.
//!
//! Source: ISO 3:1973, preferred numbers, table of basic series; from memory, supported by the reference rows for R20 and R5
//! (every second and eighth term) and by the exact terms 10^(i/40), from which no value is further off than 1.3 %.

/// R40 from 1 to below 10; other decades by a factor of ten.
pub const R40: [f64; 40] = [
    1.0, 1.06, 1.12, 1.18, 1.25, 1.32, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2.0, 2.12, 2.24, 2.36, 2.5,
    2.65, 2.8, 3.0, 3.15, 3.35, 3.55, 3.75, 4.0, 4.25, 4.5, 4.75, 5.0, 5.3, 5.6, 6.0, 6.3, 6.7,
    7.1, 7.5, 8.0, 8.5, 9.0, 9.5,
];

/// The preferred number with this index: index 0 is 1, 40 is 10, -40 is 0.1.
///
/// ```
/// use benchslate_core::standards::preferred_numbers::r40;
/// assert_eq!(r40(90), 180.0); // ISO 3: 1.8 in the third decade
/// ```
pub fn r40(index: i32) -> f64 {
    let place = index.rem_euclid(40);
    let value = usize::try_from(place)
        .ok()
        .and_then(|place| R40.get(place))
        .copied()
        .unwrap_or(1.0);
    value * libm::pow(10.0, f64::from(index.div_euclid(40)))
}

/// The index of the preferred number nearest in ratio; none for a number that is not positive.
pub fn nearest_index(value: f64) -> Option<i32> {
    (value > 0.0 && value.is_finite()).then(|| libm::round(40.0 * libm::log10(value)) as i32)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rises_and_stays_near_its_exact_terms() {
        assert!(R40.windows(2).all(|pair| pair[0] < pair[1]));
        for (index, value) in R40.iter().enumerate() {
            let exact = libm::pow(10.0, index as f64 / 40.0);
            assert!((value / exact - 1.0).abs() < 0.013, "{value} {exact}");
            assert_eq!(nearest_index(*value), i32::try_from(index).ok());
        }
    }

    #[test]
    fn r20_and_r5_are_every_second_and_eighth() {
        // ISO 3, series R20 and R5
        let r20 = [
            1.0, 1.12, 1.25, 1.4, 1.6, 1.8, 2.0, 2.24, 2.5, 2.8, 3.15, 3.55, 4.0, 4.5, 5.0, 5.6,
            6.3, 7.1, 8.0, 9.0,
        ];
        assert!(R40.iter().step_by(2).eq(r20.iter()));
        assert!(R40.iter().step_by(8).eq([1.0, 1.6, 2.5, 4.0, 6.3].iter()));
    }
}
