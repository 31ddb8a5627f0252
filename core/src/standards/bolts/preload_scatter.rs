//! How far may the clamp load miss, by tightening method?
//!
//! Unit: percent, plus or minus, of the clamp load. Sources: list A, NASA NSTS 08307 / TM-106943, table of preload
//! accuracy; list B, Machinery's Handbook, accuracy of bolt preload methods. The lists disagree on ultrasonic
//! measurement (10 in A as read elsewhere, 1 in B); both are kept.

/// One line of a list.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Scatter {
    /// Key, stable.
    pub key: &'static str,
    /// The method in shop words.
    pub method: &'static str,
    /// Plus or minus, percent of the clamp load.
    pub percent: f64,
    /// Which list.
    pub source: &'static str,
}

/// NASA list.
pub const NASA: &str = "NASA NSTS 08307 / TM-106943, preload accuracy";
/// Handbook list.
pub const HANDBOOK: &str = "Machinery's Handbook, accuracy of bolt preload methods";

const fn row(
    key: &'static str,
    method: &'static str,
    percent: f64,
    source: &'static str,
) -> Scatter {
    Scatter {
        key,
        method,
        percent,
        source,
    }
}

/// Widest first.
#[rustfmt::skip]
pub const ROWS: &[Scatter] = &[
    row("feel",         "by feel",                              35.0, HANDBOOK),
    row("torque-dry",   "torque wrench, not lubricated",        35.0, NASA),
    row("torque-cad",   "torque wrench, cadmium plated",        30.0, NASA),
    row("torque-oiled", "torque wrench, lubricated",            25.0, NASA),
    row("torque",       "torque wrench",                        25.0, HANDBOOK),
    row("tensioner",    "hydraulic tensioner",                  15.0, NASA),
    row("washer",       "load indicating washer",               10.0, HANDBOOK),
    row("washer-nasa",  "load indicating washer",               10.0, NASA),
    row("yield",        "wrench that senses yield",              8.0, HANDBOOK),
    row("stretch",      "measured stretch of the screw",         5.0, NASA),
    row("instrumented", "screw with built-in gauge",             5.0, NASA),
    row("strain",       "strain gauge",                          1.0, HANDBOOK),
    row("ultrasonic",   "ultrasonic",                            1.0, HANDBOOK),
];

/// The other published figure for ultrasonic measurement, percent (list A).
pub const ULTRASONIC_OTHER_PERCENT: f64 = 10.0;

/// The line with this key.
pub fn method(key: &str) -> Option<&'static Scatter> {
    ROWS.iter().find(|r| r.key == key)
}
