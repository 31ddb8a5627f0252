//! What do published torque lists say for this size, so that they can stand beside our figure?
//!
//! Army: lbf ft (authoritative), clean and dry, 10 %, grades 5 and 8, coarse and fine alike: TM 9-2320-362-14&P, app. F,
//! Table F-1. These are vehicle limits; grade 8 is barely above grade 5. Oiled 10 % less, newly plated 20 % less, into
//! aluminum 30 % or more less (same table). Older: N m, friction 0.14, classes 8.8, 10.9, 12.9: a machine's operating
//! manual, appendix; on the basis of 1986, 7 to 11 % below VDI 2230:2003.

use crate::quantity::{Length, Torque};

/// A row of the Army list.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Army {
    /// Nominal size.
    pub size: Length,
    /// Grade 5.
    pub grade_5: Torque,
    /// Grade 8.
    pub grade_8: Torque,
}

/// A row of the older metric list.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Older {
    /// Nominal size, coarse thread.
    pub size: Length,
    /// Class 8.8.
    pub class_8_8: Torque,
    /// Class 10.9.
    pub class_10_9: Torque,
    /// Class 12.9.
    pub class_12_9: Torque,
}

const fn army(size: f64, grade_5: f64, grade_8: f64) -> Army {
    Army {
        size: Length::from_inches(size),
        grade_5: Torque::from_lbf_ft(grade_5),
        grade_8: Torque::from_lbf_ft(grade_8),
    }
}

const fn older(size: f64, a: f64, b: f64, c: f64) -> Older {
    Older {
        size: Length::from_mm(size),
        class_8_8: Torque::from_newton_metres(a),
        class_10_9: Torque::from_newton_metres(b),
        class_12_9: Torque::from_newton_metres(c),
    }
}

/// Size in, grade 5 lbf ft, grade 8 lbf ft.
#[rustfmt::skip]
pub const ARMY: &[Army] = &[
    army(0.25,     6.0,  10.0),
    army(0.3125,  15.0,  21.0),
    army(0.375,   26.0,  37.0),
    army(0.4375,  43.0,  60.0),
    army(0.5625,  90.0, 130.0),
    army(0.75,   185.0, 260.0),
    army(0.875,  300.0, 420.0),
    army(1.0,    440.0, 635.0),
];

/// Size mm, 8.8, 10.9, 12.9 in N m.
#[rustfmt::skip]
pub const OLDER: &[Older] = &[
    older( 6.0,   10.0,   15.0,   18.0),
    older( 8.0,   25.0,   36.0,   43.0),
    older(10.0,   49.0,   72.0,   84.0),
    older(12.0,   85.0,  125.0,  145.0),
    older(16.0,  210.0,  310.0,  365.0),
    older(18.0,  300.0,  430.0,  500.0),
    older(20.0,  425.0,  610.0,  710.0),
    older(22.0,  580.0,  820.0,  960.0),
    older(24.0,  730.0, 1050.0, 1220.0),
    older(27.0, 1100.0, 1550.0, 1800.0),
];

fn same(a: Length, b: Length) -> bool {
    (a - b).abs() < Length::from_mm(0.005)
}

/// The Army limit for an inch size and a grade key, where the list has it.
pub fn army_limit(size: Length, grade: &str) -> Option<Torque> {
    let row = ARMY.iter().find(|row| same(row.size, size))?;
    match grade {
        "sae-5" => Some(row.grade_5),
        "sae-8" => Some(row.grade_8),
        _ => None,
    }
}

/// The older list's torque for a metric size and a class key, where the list has it.
pub fn older_torque(size: Length, class: &str) -> Option<Torque> {
    let row = OLDER.iter().find(|row| same(row.size, size))?;
    match class {
        "8.8" => Some(row.class_8_8),
        "10.9" => Some(row.class_10_9),
        "12.9" => Some(row.class_12_9),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lists_rise_with_size_and_grade() {
        for pair in ARMY.windows(2) {
            assert!(
                pair[0].size < pair[1].size
                    && pair[0].grade_5 < pair[1].grade_5
                    && pair[0].grade_8 < pair[1].grade_8
            );
        }
        for pair in OLDER.windows(2) {
            assert!(pair[0].size < pair[1].size && pair[0].class_8_8 < pair[1].class_8_8);
        }
        assert!(ARMY.iter().all(|r| r.grade_5 < r.grade_8));
        assert!(
            OLDER
                .iter()
                .all(|r| r.class_8_8 < r.class_10_9 && r.class_10_9 < r.class_12_9)
        );
    }
}
