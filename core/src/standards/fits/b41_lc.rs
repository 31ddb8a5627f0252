//! Which limits does ANSI B4.1 give its clearance locational fits, LC1 to LC11?
//!
//! ANSI B4.1-1967. Thousandths of an inch are authoritative; the hole's lower limit is always 0.
//! LC1 to LC5: Table 9 (from memory; each is its grade rule); LC6 to LC11: Table 9 of the R1987 edition, two misprints mended by
//! their own arithmetic (LC8: largest clearance to 0.12 in is 3.6; least over 1.19 in is 3.0).
//! Columns: the size that the step goes up to, inches; hole upper, shaft upper, shaft lower;
//! `memory` marks a row whose figures were recalled and fit the grade arithmetic, but were not read in print.

use super::b41::{Row, memory, read};

#[rustfmt::skip]
pub(super) const LC: [&[Row]; 11] = [
    // LC1
    &[
        memory(0.12, 0.25, 0.0, -0.2),
        memory(0.24, 0.3, 0.0, -0.2),
        memory(0.40, 0.4, 0.0, -0.25),
        memory(0.71, 0.4, 0.0, -0.3),
        memory(1.19, 0.5, 0.0, -0.4),
        memory(1.97, 0.6, 0.0, -0.4),
        memory(3.15, 0.7, 0.0, -0.5),
        memory(4.73, 0.9, 0.0, -0.6),
        memory(7.09, 1.0, 0.0, -0.7),
        memory(9.85, 1.2, 0.0, -0.8),
        memory(12.41, 1.2, 0.0, -0.9),
        memory(15.75, 1.4, 0.0, -1.0),
        memory(19.69, 1.6, 0.0, -1.0),
    ],
    // LC2
    &[
        memory(0.12, 0.4, 0.0, -0.25),
        memory(0.24, 0.5, 0.0, -0.3),
        memory(0.40, 0.6, 0.0, -0.4),
        memory(0.71, 0.7, 0.0, -0.4),
        memory(1.19, 0.8, 0.0, -0.5),
        memory(1.97, 1.0, 0.0, -0.6),
        memory(3.15, 1.2, 0.0, -0.7),
        memory(4.73, 1.4, 0.0, -0.9),
        memory(7.09, 1.6, 0.0, -1.0),
        memory(9.85, 1.8, 0.0, -1.2),
        memory(12.41, 2.0, 0.0, -1.2),
        memory(15.75, 2.2, 0.0, -1.4),
        memory(19.69, 2.5, 0.0, -1.6),
    ],
    // LC3
    &[
        memory(0.12, 0.6, 0.0, -0.4),
        memory(0.24, 0.7, 0.0, -0.5),
        memory(0.40, 0.9, 0.0, -0.6),
        memory(0.71, 1.0, 0.0, -0.7),
        memory(1.19, 1.2, 0.0, -0.8),
        memory(1.97, 1.6, 0.0, -1.0),
        memory(3.15, 1.8, 0.0, -1.2),
        memory(4.73, 2.2, 0.0, -1.4),
        memory(7.09, 2.5, 0.0, -1.6),
        memory(9.85, 2.8, 0.0, -1.8),
        memory(12.41, 3.0, 0.0, -2.0),
        memory(15.75, 3.5, 0.0, -2.2),
        memory(19.69, 4.0, 0.0, -2.5),
    ],
    // LC4
    &[
        memory(0.12, 1.6, 0.0, -1.0),
        memory(0.24, 1.8, 0.0, -1.2),
        memory(0.40, 2.2, 0.0, -1.4),
        memory(0.71, 2.8, 0.0, -1.6),
        memory(1.19, 3.5, 0.0, -2.0),
        memory(1.97, 4.0, 0.0, -2.5),
        memory(3.15, 4.5, 0.0, -3.0),
        memory(4.73, 5.0, 0.0, -3.5),
        memory(7.09, 6.0, 0.0, -4.0),
        memory(9.85, 7.0, 0.0, -4.5),
        memory(12.41, 8.0, 0.0, -5.0),
        memory(15.75, 9.0, 0.0, -6.0),
        memory(19.69, 10.0, 0.0, -6.0),
    ],
    // LC5
    &[
        memory(0.12, 0.4, -0.1, -0.35),
        memory(0.24, 0.5, -0.15, -0.45),
        memory(0.40, 0.6, -0.2, -0.6),
        memory(0.71, 0.7, -0.25, -0.65),
        memory(1.19, 0.8, -0.3, -0.8),
        memory(1.97, 1.0, -0.4, -1.0),
        memory(3.15, 1.2, -0.4, -1.1),
        memory(4.73, 1.4, -0.5, -1.4),
        memory(7.09, 1.6, -0.6, -1.6),
        memory(9.85, 1.8, -0.6, -1.8),
        memory(12.41, 2.0, -0.7, -1.9),
        memory(15.75, 2.2, -0.7, -2.1),
        memory(19.69, 2.5, -0.8, -2.4),
    ],
    // LC6
    &[
        read(0.12, 1.0, -0.3, -0.9),
        read(0.24, 1.2, -0.4, -1.1),
        read(0.40, 1.4, -0.5, -1.4),
        read(0.71, 1.6, -0.6, -1.6),
        read(1.19, 2.0, -0.8, -2.0),
        read(1.97, 2.5, -1.0, -2.6),
    ],
    // LC7
    &[
        read(0.12, 1.6, -0.6, -1.6),
        read(0.24, 1.8, -0.8, -2.0),
        read(0.40, 2.2, -1.0, -2.4),
        read(0.71, 2.8, -1.2, -2.8),
        read(1.19, 3.5, -1.6, -3.6),
        read(1.97, 4.0, -2.0, -4.5),
    ],
    // LC8
    &[
        read(0.12, 1.6, -1.0, -2.0),
        read(0.24, 1.8, -1.2, -2.4),
        read(0.40, 2.2, -1.6, -3.0),
        read(0.71, 2.8, -2.0, -3.6),
        read(1.19, 3.5, -2.5, -4.5),
        read(1.97, 4.0, -3.0, -5.5),
    ],
    // LC9
    &[
        read(0.12, 2.5, -2.5, -4.1),
        read(0.24, 3.0, -2.8, -4.6),
        read(0.40, 3.5, -3.0, -5.2),
        read(0.71, 4.0, -3.5, -6.3),
        read(1.19, 5.0, -4.5, -8.0),
    ],
    // LC10
    &[
        read(0.12, 4.0, -4.0, -8.0),
        read(0.24, 5.0, -4.5, -9.5),
        read(0.40, 6.0, -5.0, -11.0),
        read(0.71, 7.0, -6.0, -13.0),
        read(1.19, 8.0, -7.0, -15.0),
    ],
    // LC11
    &[
        read(0.12, 6.0, -5.0, -11.0),
        read(0.24, 7.0, -6.0, -13.0),
        read(0.40, 9.0, -7.0, -16.0),
        read(0.71, 10.0, -8.0, -18.0),
        read(1.19, 12.0, -10.0, -22.0),
    ],
];
