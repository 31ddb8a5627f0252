//! Which limits does ANSI B4.1 give its transition locational fits, LT1 to LT6?
//!
//! ANSI B4.1-1967. Thousandths of an inch are authoritative; the hole's lower limit is always 0.
//! Table 10, as printed in Machinery's Handbook, 31st ed. LT3 and LT4 start above 0.24 in.
//! Above 3.15 in: the shafts of LT1 and LT4 were read, with the hole of their grade (H7 as in LT5, H8 as in LT2); LT3 and LT6
//! are from memory: the lower limit of their letter (k as in LT4, n as in LT5) and a width of IT6 and IT7.
//! Columns: the size that the step goes up to, inches; hole upper, shaft upper, shaft lower.

use super::b41::{Row, gap, memory, read};

#[rustfmt::skip]
pub(super) const LT: [&[Row]; 6] = [
    // LT1
    &[
        read(0.12, 0.4, 0.12, -0.12),
        read(0.24, 0.5, 0.15, -0.15),
        read(0.40, 0.6, 0.2, -0.2),
        read(0.71, 0.7, 0.2, -0.2),
        read(1.19, 0.8, 0.25, -0.25),
        read(1.97, 1.0, 0.3, -0.3),
        read(3.15, 1.2, 0.3, -0.3),
        read(4.73, 1.4, 0.4, -0.4),
        read(7.09, 1.6, 0.5, -0.5),
        read(9.85, 1.8, 0.6, -0.6),
        read(12.41, 2.0, 0.6, -0.6),
        read(15.75, 2.2, 0.7, -0.7),
        read(19.69, 2.5, 0.8, -0.8),
    ],
    // LT2
    &[
        read(0.12, 0.6, 0.2, -0.2),
        read(0.24, 0.7, 0.25, -0.25),
        read(0.40, 0.9, 0.3, -0.3),
        read(0.71, 1.0, 0.35, -0.35),
        read(1.19, 1.2, 0.4, -0.4),
        read(1.97, 1.6, 0.5, -0.5),
        read(3.15, 1.8, 0.6, -0.6),
        read(4.73, 2.2, 0.7, -0.7),
        read(7.09, 2.5, 0.8, -0.8),
        read(9.85, 2.8, 0.9, -0.9),
        read(12.41, 3.0, 1.0, -1.0),
        read(15.75, 3.5, 1.0, -1.0),
        read(19.69, 4.0, 1.2, -1.2),
    ],
    // LT3
    &[
        gap(0.12), // 0 to 0.12 in
        gap(0.24), // 0.12 to 0.24 in
        read(0.40, 0.6, 0.5, 0.1),
        read(0.71, 0.7, 0.5, 0.1),
        read(1.19, 0.8, 0.6, 0.1),
        read(1.97, 1.0, 0.7, 0.1),
        read(3.15, 1.2, 0.8, 0.1),
        memory(4.73, 1.4, 1.0, 0.1),
        memory(7.09, 1.6, 1.1, 0.1),
        memory(9.85, 1.8, 1.4, 0.2),
        memory(12.41, 2.0, 1.4, 0.2),
        memory(15.75, 2.2, 1.6, 0.2),
        memory(19.69, 2.5, 1.8, 0.2),
    ],
    // LT4
    &[
        gap(0.12), // 0 to 0.12 in
        gap(0.24), // 0.12 to 0.24 in
        read(0.40, 0.9, 0.7, 0.1),
        read(0.71, 1.0, 0.8, 0.1),
        read(1.19, 1.2, 0.9, 0.1),
        read(1.97, 1.6, 1.1, 0.1),
        read(3.15, 1.8, 1.3, 0.1),
        read(4.73, 2.2, 1.5, 0.1),
        read(7.09, 2.5, 1.7, 0.1),
        read(9.85, 2.8, 2.0, 0.2),
        read(12.41, 3.0, 2.2, 0.2),
        read(15.75, 3.5, 2.4, 0.2),
        read(19.69, 4.0, 2.7, 0.2),
    ],
    // LT5
    &[
        read(0.12, 0.4, 0.5, 0.25),
        read(0.24, 0.5, 0.6, 0.3),
        read(0.40, 0.6, 0.8, 0.4),
        read(0.71, 0.7, 0.9, 0.5),
        read(1.19, 0.8, 1.1, 0.6),
        read(1.97, 1.0, 1.3, 0.7),
        read(3.15, 1.2, 1.5, 0.8),
        read(4.73, 1.4, 1.9, 1.0),
        read(7.09, 1.6, 2.2, 1.2),
        read(9.85, 1.8, 2.6, 1.4),
        read(12.41, 2.0, 2.6, 1.4),
        read(15.75, 2.2, 3.0, 1.6),
        read(19.69, 2.5, 3.4, 1.8),
    ],
    // LT6
    &[
        read(0.12, 0.4, 0.65, 0.25),
        read(0.24, 0.5, 0.8, 0.3),
        read(0.40, 0.6, 1.0, 0.4),
        read(0.71, 0.7, 1.2, 0.5),
        read(1.19, 0.8, 1.4, 0.6),
        read(1.97, 1.0, 1.7, 0.7),
        read(3.15, 1.2, 2.0, 0.8),
        memory(4.73, 1.4, 2.4, 1.0),
        memory(7.09, 1.6, 2.8, 1.2),
        memory(9.85, 1.8, 3.2, 1.4),
        memory(12.41, 2.0, 3.4, 1.4),
        memory(15.75, 2.2, 3.8, 1.6),
        memory(19.69, 2.5, 4.3, 1.8),
    ],
];
