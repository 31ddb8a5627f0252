//! What do the tables of limits and fits say?

pub mod b41;
mod b41_fn;
mod b41_lc;
mod b41_ln;
mod b41_lt;
mod b41_rc;
pub mod fit_materials;
pub mod iso286_deviations;
pub mod iso286_grades;
