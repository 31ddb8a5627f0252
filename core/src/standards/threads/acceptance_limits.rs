//! What do acceptance tests of a knee-type milling machine customarily allow?
//!
//! ISO 1701-1 (knee-type, horizontal spindle) and IS 2200, as handed down in textbooks. NO ROW WAS READ IN PRINT by us:
//! all are from memory, so they are shown as "customary, unverified" and give no pass and no fail. Unit: millimetres, which
//! is the authoritative column. The order follows a list of alignment tests in a metrology lecture, which was read.

/// One test with the deviation that is customarily allowed.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct AcceptanceLimit {
    /// Key, stable.
    pub key: &'static str,
    /// What is looked at.
    pub test: &'static str,
    /// Deviation, mm.
    pub limit_mm: f64,
    /// Length that it is meant for, mm; none where it holds for the whole.
    pub over_mm: Option<f64>,
}

/// What stands beside every row on screen and paper.
pub const CERTAINTY: &str = "customary, unverified";
/// Where the rows come from.
pub const SOURCE: &str = "ISO 1701-1 (knee-type, horizontal spindle) and IS 2200, from memory; not checked against the standards";

const fn row(
    key: &'static str,
    test: &'static str,
    limit_mm: f64,
    over_mm: Option<f64>,
) -> AcceptanceLimit {
    AcceptanceLimit {
        key,
        test,
        limit_mm,
        over_mm,
    }
}

/// The tests, in the order in which they are done.
#[rustfmt::skip]
pub static ACCEPTANCE_LIMITS: &[AcceptanceLimit] = &[
    row("axial-slip",     "Axial slip of the spindle, each turn",                     0.01,  None),
    row("nose-face",      "Camming of the spindle nose face",                         0.02,  None),
    row("nose-outside",   "Run-out of the spindle nose, outside",                     0.01,  None),
    row("taper-near",     "Run-out of the taper, at the nose",                        0.01,  None),
    row("taper-far",      "Run-out of the taper, on a test bar",                      0.02,  Some(300.0)),
    row("table-flat",     "Flatness of the table top, up to 1000 mm long",            0.04,  Some(1000.0)),
    row("table-long",     "Table top parallel to longitudinal movement",              0.025, Some(300.0)),
    row("table-long-all", "Table top parallel to longitudinal movement, whole travel", 0.05, None),
    row("table-cross",    "Table top parallel to cross movement",                     0.025, Some(300.0)),
    row("spindle-cross",  "Spindle axis parallel to cross movement",                  0.025, Some(300.0)),
    row("slot-long",      "Middle T-slot parallel to longitudinal movement",          0.015, Some(300.0)),
    row("slot-long-all",  "Middle T-slot parallel to longitudinal movement, whole travel", 0.04, None),
    row("slot-spindle",   "Spindle axis square to the middle T-slot",                 0.02,  Some(300.0)),
    row("knee-fore",      "Table top square to the column ways, fore and aft",        0.025, Some(300.0)),
    row("knee-side",      "Table top square to the column ways, sideways",            0.025, Some(300.0)),
    row("arbor-support",  "Arbor support bore in line with the spindle",              0.03,  None),
];
