//! How tight, and how well does a cup point set screw hold?
//!
//! Unit: lbf in (seating torque) and lbf (holding power at the shaft's surface, steel shaft), authoritative; size in inches.
//! Source: Shigley's Mechanical Engineering Design, Table 7-4, from memory. Published lists of holding power differ
//! several times over (1/4 in: 1,000 here, 400 elsewhere); one list has 1,225 lbf in for 5/8. Divide by 1.5 to 2 for
//! steady load, 4 to 8 for shock (same source).

use crate::quantity::{Force, Length, Torque};

/// One size.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct SetScrew {
    /// Size as called.
    pub call: &'static str,
    /// Nominal size.
    pub size: Length,
    /// Seating torque.
    pub torque: Torque,
    /// Holding power, axial, at the shaft's surface.
    pub holding: Force,
}

const fn row(call: &'static str, size: f64, torque: f64, holding: f64) -> SetScrew {
    SetScrew {
        call,
        size: Length::from_inches(size),
        torque: Torque::from_lbf_in(torque),
        holding: Force::from_lbf(holding),
    }
}

/// call, size in, seating torque lbf in, holding power lbf.
#[rustfmt::skip]
pub const ROWS: &[SetScrew] = &[
    row("No. 0", 0.06, 1.0, 50.0),
    row("No. 1", 0.073, 1.8, 65.0),
    row("No. 2", 0.086, 1.8, 85.0),
    row("No. 3", 0.099, 5.0, 120.0),
    row("No. 5", 0.125, 10.0, 200.0),
    row("No. 6", 0.138, 10.0, 250.0),
    row("No. 8", 0.164, 20.0, 385.0),
    row("1/4", 0.25, 87.0, 1000.0),
    row("5/16", 0.3125, 165.0, 1500.0),
    row("3/8", 0.375, 290.0, 2000.0),
    row("7/16", 0.4375, 430.0, 2500.0),
    row("9/16", 0.5625, 620.0, 3500.0),
    row("5/8", 0.625, 1325.0, 4000.0),
    row("3/4", 0.75, 2400.0, 5000.0),
    row("7/8", 0.875, 5200.0, 6000.0),
    row("1", 1.0, 7200.0, 7000.0),
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn larger_screws_hold_more() {
        for pair in ROWS.windows(2) {
            assert!(pair[0].size < pair[1].size && pair[0].holding < pair[1].holding);
            assert!(pair[0].torque <= pair[1].torque);
        }
    }
}
