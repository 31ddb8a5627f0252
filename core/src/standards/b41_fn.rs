//! Which limits does ANSI B4.1 give its force and shrink fits, FN1 to FN5?
//!
//! ANSI B4.1-1967. Thousandths of an inch are authoritative; the hole's lower limit is always 0.
//! Table 11, R1999, as printed in Machinery's Handbook, 27th ed., p. 663 (to 3.94 in) and 31st ed., Table 11 (above
//! 4.73 in). FN has finer size steps than the others; FN3 starts above 0.95 in. 3.94 to 4.73 in and FN2 above 15.75 in are
//! from memory and keep the grades. Above 12.41 in the shafts were read, the hole is that of its grade (for FN5 the printed
//! interference agrees). FN1, 13.98 to 15.75 in: 6.1 and 5.0 are printed so, one tenth wider than the grade.
//! Columns: hole upper, shaft upper, shaft lower. A row a size step, in the order of `FINE_STEPS`.

use super::b41::{Row, gap, memory, read};

#[rustfmt::skip]
pub(super) const FN: [&[Row]; 5] = [
    // FN1
    &[
        read(0.25, 0.5, 0.3),
        read(0.3, 0.6, 0.4),
        read(0.4, 0.75, 0.5),
        read(0.4, 0.8, 0.5),
        read(0.4, 0.9, 0.6),
        read(0.5, 1.1, 0.7),
        read(0.5, 1.2, 0.8),
        read(0.6, 1.3, 0.9),
        read(0.6, 1.4, 1.0),
        read(0.7, 1.8, 1.3),
        read(0.7, 1.9, 1.4),
        read(0.9, 2.4, 1.8),
        memory(0.9, 2.6, 2.0),
        read(1.0, 2.9, 2.2),
        read(1.0, 3.2, 2.5),
        read(1.0, 3.5, 2.8),
        read(1.2, 3.8, 3.0),
        read(1.2, 4.3, 3.5),
        read(1.2, 4.3, 3.5),
        read(1.2, 4.9, 4.0),
        read(1.2, 4.9, 4.0),
        read(1.4, 5.5, 4.5),
        read(1.4, 6.1, 5.0),
        read(1.6, 7.0, 6.0),
        read(1.6, 7.0, 6.0),
    ],
    // FN2
    &[
        read(0.4, 0.85, 0.6),
        read(0.5, 1.0, 0.7),
        read(0.6, 1.4, 1.0),
        read(0.7, 1.6, 1.2),
        read(0.7, 1.6, 1.2),
        read(0.8, 1.9, 1.4),
        read(0.8, 1.9, 1.4),
        read(1.0, 2.4, 1.8),
        read(1.0, 2.4, 1.8),
        read(1.2, 2.7, 2.0),
        read(1.2, 2.9, 2.2),
        read(1.4, 3.7, 2.8),
        memory(1.4, 3.9, 3.0),
        read(1.6, 4.5, 3.5),
        read(1.6, 5.0, 4.0),
        read(1.6, 5.5, 4.5),
        read(1.8, 6.2, 5.0),
        read(1.8, 6.2, 5.0),
        read(1.8, 7.2, 6.0),
        read(2.0, 7.2, 6.0),
        read(2.0, 8.2, 7.0),
        read(2.2, 9.4, 8.0),
        read(2.2, 9.4, 8.0),
        memory(2.5, 10.6, 9.0),
        memory(2.5, 11.6, 10.0),
    ],
    // FN3
    &[
        gap(), // 0 to 0.12 in
        gap(), // 0.12 to 0.24 in
        gap(), // 0.24 to 0.4 in
        gap(), // 0.4 to 0.56 in
        gap(), // 0.56 to 0.71 in
        gap(), // 0.71 to 0.95 in
        read(0.8, 2.1, 1.6),
        read(1.0, 2.6, 2.0),
        read(1.0, 2.8, 2.2),
        read(1.2, 3.2, 2.5),
        read(1.2, 3.7, 3.0),
        read(1.4, 4.4, 3.5),
        memory(1.4, 4.9, 4.0),
        read(1.6, 6.0, 5.0),
        read(1.6, 6.0, 5.0),
        read(1.6, 7.0, 6.0),
        read(1.8, 8.2, 7.0),
        read(1.8, 8.2, 7.0),
        read(1.8, 9.2, 8.0),
        read(2.0, 10.2, 9.0),
        read(2.0, 10.2, 9.0),
        read(2.2, 11.4, 10.0),
        read(2.2, 13.4, 12.0),
        read(2.5, 13.6, 12.0),
        read(2.5, 15.6, 14.0),
    ],
    // FN4
    &[
        read(0.4, 0.95, 0.7),
        read(0.5, 1.2, 0.9),
        read(0.6, 1.6, 1.2),
        read(0.7, 1.8, 1.4),
        read(0.7, 1.8, 1.4),
        read(0.8, 2.1, 1.6),
        read(0.8, 2.3, 1.8),
        read(1.0, 3.1, 2.5),
        read(1.0, 3.4, 2.8),
        read(1.2, 4.2, 3.5),
        read(1.2, 4.7, 4.0),
        read(1.4, 5.9, 5.0),
        memory(1.4, 6.9, 6.0),
        read(1.6, 8.0, 7.0),
        read(1.6, 8.0, 7.0),
        read(1.6, 9.0, 8.0),
        read(1.8, 10.2, 9.0),
        read(1.8, 11.2, 10.0),
        read(1.8, 13.2, 12.0),
        read(2.0, 13.2, 12.0),
        read(2.0, 15.2, 14.0),
        read(2.2, 17.4, 16.0),
        read(2.2, 19.4, 18.0),
        read(2.5, 21.6, 20.0),
        read(2.5, 23.6, 22.0),
    ],
    // FN5
    &[
        read(0.6, 1.3, 0.9),
        read(0.7, 1.7, 1.2),
        read(0.9, 2.0, 1.4),
        read(1.0, 2.3, 1.6),
        read(1.0, 2.5, 1.8),
        read(1.2, 3.0, 2.2),
        read(1.2, 3.3, 2.5),
        read(1.6, 4.0, 3.0),
        read(1.6, 5.0, 4.0),
        read(1.8, 6.2, 5.0),
        read(1.8, 7.2, 6.0),
        read(2.2, 8.4, 7.0),
        memory(2.2, 9.4, 8.0),
        read(2.5, 11.6, 10.0),
        read(2.5, 13.6, 12.0),
        read(2.5, 13.6, 12.0),
        read(2.8, 15.8, 14.0),
        read(2.8, 17.8, 16.0),
        read(2.8, 17.8, 16.0),
        read(3.0, 20.0, 18.0),
        read(3.0, 22.0, 20.0),
        read(3.5, 24.2, 22.0),
        read(3.5, 27.2, 25.0),
        read(4.0, 30.5, 28.0),
        read(4.0, 32.5, 30.0),
    ],
];
