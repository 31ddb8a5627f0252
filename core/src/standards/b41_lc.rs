//! Which limits does ANSI B4.1 give its clearance locational fits, LC1 to LC11?
//!
//! ANSI B4.1-1967. Thousandths of an inch are authoritative; the hole's lower limit is always 0.
//! LC1 to LC5: Table 9 (from memory; each is its grade rule); LC6 to LC11: Table 9 of the R1987 edition, two misprints mended by
//! their own arithmetic (LC8: largest clearance to 0.12 in is 3.6; least over 1.19 in is 3.0).
//! Columns: hole upper, shaft upper, shaft lower. A row a size step, in the order of `STEPS`;
//! `memory` marks a row whose figures were recalled and fit the grade arithmetic, but were not read in print.

use super::b41::{Row, memory, read};

#[rustfmt::skip]
pub(super) const LC: [&[Row]; 11] = [
    // LC1
    &[
        memory(0.25, 0.0, -0.2),
        memory(0.3, 0.0, -0.2),
        memory(0.4, 0.0, -0.25),
        memory(0.4, 0.0, -0.3),
        memory(0.5, 0.0, -0.4),
        memory(0.6, 0.0, -0.4),
        memory(0.7, 0.0, -0.5),
        memory(0.9, 0.0, -0.6),
        memory(1.0, 0.0, -0.7),
        memory(1.2, 0.0, -0.8),
        memory(1.2, 0.0, -0.9),
        memory(1.4, 0.0, -1.0),
        memory(1.6, 0.0, -1.0),
    ],
    // LC2
    &[
        memory(0.4, 0.0, -0.25),
        memory(0.5, 0.0, -0.3),
        memory(0.6, 0.0, -0.4),
        memory(0.7, 0.0, -0.4),
        memory(0.8, 0.0, -0.5),
        memory(1.0, 0.0, -0.6),
        memory(1.2, 0.0, -0.7),
        memory(1.4, 0.0, -0.9),
        memory(1.6, 0.0, -1.0),
        memory(1.8, 0.0, -1.2),
        memory(2.0, 0.0, -1.2),
        memory(2.2, 0.0, -1.4),
        memory(2.5, 0.0, -1.6),
    ],
    // LC3
    &[
        memory(0.6, 0.0, -0.4),
        memory(0.7, 0.0, -0.5),
        memory(0.9, 0.0, -0.6),
        memory(1.0, 0.0, -0.7),
        memory(1.2, 0.0, -0.8),
        memory(1.6, 0.0, -1.0),
        memory(1.8, 0.0, -1.2),
        memory(2.2, 0.0, -1.4),
        memory(2.5, 0.0, -1.6),
        memory(2.8, 0.0, -1.8),
        memory(3.0, 0.0, -2.0),
        memory(3.5, 0.0, -2.2),
        memory(4.0, 0.0, -2.5),
    ],
    // LC4
    &[
        memory(1.6, 0.0, -1.0),
        memory(1.8, 0.0, -1.2),
        memory(2.2, 0.0, -1.4),
        memory(2.8, 0.0, -1.6),
        memory(3.5, 0.0, -2.0),
        memory(4.0, 0.0, -2.5),
        memory(4.5, 0.0, -3.0),
        memory(5.0, 0.0, -3.5),
        memory(6.0, 0.0, -4.0),
        memory(7.0, 0.0, -4.5),
        memory(8.0, 0.0, -5.0),
        memory(9.0, 0.0, -6.0),
        memory(10.0, 0.0, -6.0),
    ],
    // LC5
    &[
        memory(0.4, -0.1, -0.35),
        memory(0.5, -0.15, -0.45),
        memory(0.6, -0.2, -0.6),
        memory(0.7, -0.25, -0.65),
        memory(0.8, -0.3, -0.8),
        memory(1.0, -0.4, -1.0),
        memory(1.2, -0.4, -1.1),
        memory(1.4, -0.5, -1.4),
        memory(1.6, -0.6, -1.6),
        memory(1.8, -0.6, -1.8),
        memory(2.0, -0.7, -1.9),
        memory(2.2, -0.7, -2.1),
        memory(2.5, -0.8, -2.4),
    ],
    // LC6
    &[
        read(1.0, -0.3, -0.9),
        read(1.2, -0.4, -1.1),
        read(1.4, -0.5, -1.4),
        read(1.6, -0.6, -1.6),
        read(2.0, -0.8, -2.0),
        read(2.5, -1.0, -2.6),
    ],
    // LC7
    &[
        read(1.6, -0.6, -1.6),
        read(1.8, -0.8, -2.0),
        read(2.2, -1.0, -2.4),
        read(2.8, -1.2, -2.8),
        read(3.5, -1.6, -3.6),
        read(4.0, -2.0, -4.5),
    ],
    // LC8
    &[
        read(1.6, -1.0, -2.0),
        read(1.8, -1.2, -2.4),
        read(2.2, -1.6, -3.0),
        read(2.8, -2.0, -3.6),
        read(3.5, -2.5, -4.5),
        read(4.0, -3.0, -5.5),
    ],
    // LC9
    &[
        read(2.5, -2.5, -4.1),
        read(3.0, -2.8, -4.6),
        read(3.5, -3.0, -5.2),
        read(4.0, -3.5, -6.3),
        read(5.0, -4.5, -8.0),
    ],
    // LC10
    &[
        read(4.0, -4.0, -8.0),
        read(5.0, -4.5, -9.5),
        read(6.0, -5.0, -11.0),
        read(7.0, -6.0, -13.0),
        read(8.0, -7.0, -15.0),
    ],
    // LC11
    &[
        read(6.0, -5.0, -11.0),
        read(7.0, -6.0, -13.0),
        read(9.0, -7.0, -16.0),
        read(10.0, -8.0, -18.0),
        read(12.0, -10.0, -22.0),
    ],
];
