//! Checks of Benchslate against outside sources. Each check names its source beside the figure.

pub mod cases;
pub mod cautions;
pub mod golden;
pub mod judgement;
pub mod parity;
pub mod reckon;

/// Generated texts and entries, shared with core's own tests.
#[path = "../../core/tests/common/mod.rs"]
#[allow(clippy::unwrap_used, clippy::indexing_slicing)] // test code: a failure is a failed check
pub mod entries;

/// True where `got` lies within `tolerance` of `want` (same unit for all three).
///
/// ```
/// assert!(benchslate_tests::near(0.1878, 0.18775, 0.0001));
/// ```
pub fn near(got: f64, want: f64, tolerance: f64) -> bool {
    (got - want).abs() <= tolerance
}
