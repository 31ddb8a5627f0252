//! Which limits does ANSI B4.1 give its interference locational fits, LN1 to LN3?
//!
//! ANSI B4.1-1967. Thousandths of an inch are authoritative; the hole's lower limit is always 0.
//! Table 12, as printed in Machinery's Handbook, 31st ed., p. 660.
//! Columns: the size that the step goes up to, inches; hole upper, shaft upper, shaft lower.

use super::b41::{Row, read};

#[rustfmt::skip]
pub(super) const LN: [&[Row]; 3] = [
    // LN1
    &[
        read(0.12, 0.25, 0.45, 0.25),
        read(0.24, 0.3, 0.5, 0.3),
        read(0.40, 0.4, 0.65, 0.4),
        read(0.71, 0.4, 0.8, 0.4),
        read(1.19, 0.5, 1.0, 0.5),
        read(1.97, 0.6, 1.1, 0.6),
        read(3.15, 0.7, 1.3, 0.8),
        read(4.73, 0.9, 1.6, 1.0),
        read(7.09, 1.0, 1.9, 1.2),
        read(9.85, 1.2, 2.2, 1.4),
        read(12.41, 1.2, 2.3, 1.4),
        read(15.75, 1.4, 2.6, 1.6),
        read(19.69, 1.6, 2.8, 1.8),
    ],
    // LN2
    &[
        read(0.12, 0.4, 0.65, 0.4),
        read(0.24, 0.5, 0.8, 0.5),
        read(0.40, 0.6, 1.0, 0.6),
        read(0.71, 0.7, 1.1, 0.7),
        read(1.19, 0.8, 1.3, 0.8),
        read(1.97, 1.0, 1.6, 1.0),
        read(3.15, 1.2, 2.1, 1.4),
        read(4.73, 1.4, 2.5, 1.6),
        read(7.09, 1.6, 2.8, 1.8),
        read(9.85, 1.8, 3.2, 2.0),
        read(12.41, 2.0, 3.4, 2.2),
        read(15.75, 2.2, 3.9, 2.5),
        read(19.69, 2.5, 4.4, 2.8),
    ],
    // LN3
    &[
        read(0.12, 0.4, 0.75, 0.5),
        read(0.24, 0.5, 0.9, 0.6),
        read(0.40, 0.6, 1.2, 0.8),
        read(0.71, 0.7, 1.4, 1.0),
        read(1.19, 0.8, 1.7, 1.2),
        read(1.97, 1.0, 2.0, 1.4),
        read(3.15, 1.2, 2.3, 1.6),
        read(4.73, 1.4, 2.9, 2.0),
        read(7.09, 1.6, 3.5, 2.5),
        read(9.85, 1.8, 4.2, 3.0),
        read(12.41, 2.0, 4.7, 3.5),
        read(15.75, 2.2, 5.9, 4.5),
        read(19.69, 2.5, 6.6, 5.0),
    ],
];
