//! Which limits does ANSI B4.1 give its running and sliding fits, RC1 to RC9?
//!
//! ANSI B4.1-1967. Thousandths of an inch are authoritative; the hole's lower limit is always 0.
//! RC1 to RC4: Table 8a, RC5 to RC9: Table 8b, as printed in Machinery's Handbook, 31st ed. Of RC9, 0.12 to 0.24 in,
//! the shaft tolerance 1.5 is printed so (its clearance 4.5 to 9.0 agrees): not a slip of ours.
//! RC4 above 15.75 in, RC6 and RC7 above 3.15 or 4.73 in, RC8 above 0.71 in: shaft limits read, hole by its grade H8, H9, H10.
//! RC2 and RC4 above 9.85 in: two editions of the Handbook agree, with their clearances; the print of `OTHER_PRINT` differs.
//! RC5 above 9.85 in is from memory: hole H8 as in RC4, the upper limit of e as read in RC6, a width of IT7.
//! Columns: hole upper, shaft upper, shaft lower. A row a size step, in the order of `STEPS`.

use super::b41::{Row, memory, read};

#[rustfmt::skip]
pub(super) const RC: [&[Row]; 9] = [
    // RC1
    &[
        read(0.2, -0.1, -0.25),
        read(0.2, -0.15, -0.3),
        read(0.25, -0.2, -0.35),
        read(0.3, -0.25, -0.45),
        read(0.4, -0.3, -0.55),
        read(0.4, -0.4, -0.7),
        read(0.5, -0.4, -0.7),
        read(0.6, -0.5, -0.9),
        read(0.7, -0.6, -1.1),
        read(0.8, -0.6, -1.2),
        read(0.9, -0.8, -1.4),
        read(1.0, -1.0, -1.7),
        read(1.0, -1.2, -2.0),
    ],
    // RC2
    &[
        read(0.25, -0.1, -0.3),
        read(0.3, -0.15, -0.35),
        read(0.4, -0.2, -0.45),
        read(0.4, -0.25, -0.55),
        read(0.5, -0.3, -0.7),
        read(0.6, -0.4, -0.8),
        read(0.7, -0.4, -0.9),
        read(0.9, -0.5, -1.1),
        read(1.0, -0.6, -1.3),
        read(1.2, -0.6, -1.4),
        read(1.2, -0.8, -1.7),
        read(1.4, -1.0, -2.0),
        read(1.6, -1.2, -2.2),
    ],
    // RC3
    &[
        read(0.4, -0.3, -0.55),
        read(0.5, -0.4, -0.7),
        read(0.6, -0.5, -0.9),
        read(0.7, -0.6, -1.0),
        read(0.8, -0.8, -1.3),
        read(1.0, -1.0, -1.6),
        read(1.2, -1.2, -1.9),
        read(1.4, -1.4, -2.3),
        read(1.6, -1.6, -2.6),
        read(1.8, -2.0, -3.2),
        read(2.0, -2.5, -3.7),
        read(2.2, -3.0, -4.4),
        read(2.5, -4.0, -5.6),
    ],
    // RC4
    &[
        read(0.6, -0.3, -0.7),
        read(0.7, -0.4, -0.9),
        read(0.9, -0.5, -1.1),
        read(1.0, -0.6, -1.3),
        read(1.2, -0.8, -1.6),
        read(1.6, -1.0, -2.0),
        read(1.8, -1.2, -2.4),
        read(2.2, -1.4, -2.8),
        read(2.5, -1.6, -3.2),
        read(2.8, -2.0, -3.8),
        read(3.0, -2.5, -4.5),
        read(3.5, -3.0, -5.2),
        read(4.0, -4.0, -6.5),
    ],
    // RC5
    &[
        read(0.6, -0.6, -1.0),
        read(0.7, -0.8, -1.3),
        read(0.9, -1.0, -1.6),
        read(1.0, -1.2, -1.9),
        read(1.2, -1.6, -2.4),
        read(1.6, -2.0, -3.0),
        read(1.8, -2.5, -3.7),
        read(2.2, -3.0, -4.4),
        read(2.5, -3.5, -5.1),
        read(2.8, -4.0, -5.8),
        memory(3.0, -5.0, -7.0),
        memory(3.5, -6.0, -8.2),
        memory(4.0, -8.0, -10.5),
    ],
    // RC6
    &[
        read(1.0, -0.6, -1.2),
        read(1.2, -0.8, -1.5),
        read(1.4, -1.0, -1.9),
        read(1.6, -1.2, -2.2),
        read(2.0, -1.6, -2.8),
        read(2.5, -2.0, -3.6),
        read(3.0, -2.5, -4.3),
        read(3.5, -3.0, -5.2),
        read(4.0, -3.5, -6.0),
        read(4.5, -4.0, -6.8),
        read(5.0, -5.0, -8.0),
        read(6.0, -6.0, -9.5),
        read(6.0, -8.0, -12.0),
    ],
    // RC7
    &[
        read(1.0, -1.0, -1.6),
        read(1.2, -1.2, -1.9),
        read(1.4, -1.6, -2.5),
        read(1.6, -2.0, -3.0),
        read(2.0, -2.5, -3.7),
        read(2.5, -3.0, -4.6),
        read(3.0, -4.0, -5.8),
        read(3.5, -5.0, -7.2),
        read(4.0, -6.0, -8.5),
        read(4.5, -7.0, -9.8),
        read(5.0, -8.0, -11.0),
        read(6.0, -10.0, -13.5),
        read(6.0, -12.0, -16.0),
    ],
    // RC8
    &[
        read(1.6, -2.5, -3.5),
        read(1.8, -2.8, -4.0),
        read(2.2, -3.0, -4.4),
        read(2.8, -3.5, -5.1),
        read(3.5, -4.5, -6.5),
        read(4.0, -5.0, -7.5),
        read(4.5, -6.0, -9.0),
        read(5.0, -7.0, -10.5),
        read(6.0, -8.0, -12.0),
        read(7.0, -10.0, -14.5),
        read(8.0, -12.0, -17.0),
        read(9.0, -14.0, -20.0),
        read(10.0, -16.0, -22.0),
    ],
    // RC9
    &[
        read(2.5, -4.0, -5.6),
        read(3.0, -4.5, -6.0),
        read(3.5, -5.0, -7.2),
        read(4.0, -6.0, -8.8),
        read(5.0, -7.0, -10.5),
        read(6.0, -8.0, -12.0),
        read(7.0, -9.0, -13.5),
        read(9.0, -10.0, -15.0),
        read(10.0, -12.0, -18.0),
        read(12.0, -15.0, -22.0),
        read(12.0, -18.0, -26.0),
        read(14.0, -22.0, -31.0),
        read(16.0, -25.0, -35.0),
    ],
];

/// Shafts of RC2 and RC4 above 9.85, 12.41 and 15.75 in, upper and lower limit in thousandths, as a textbook's appendix prints
/// them (Limits and Fits, after ANSI/ASME B4.1-1967, R2004, p. B-1), where it differs.
pub(super) const OTHER_PRINT: [(u8, [(f64, f64); 3]); 2] = [
    (2, [(-0.7, -1.6), (-0.7, -1.7), (-0.8, -1.8)]),
    (4, [(-2.2, -4.2), (-2.5, -4.7), (-2.8, -5.3)]),
];
