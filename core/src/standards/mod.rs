//! Tables of published standards, in rooms by domain: one file a standard, one row a line.

pub mod bolts;
pub mod cutting;
pub mod fits;
pub mod holes;
pub mod pins;
pub mod preferred_numbers;
pub mod threads;
