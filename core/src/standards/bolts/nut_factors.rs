//! Which nut factor K belongs to a screw in this state, and where do the books disagree?
//!
//! K is a bare number in T = K D F. Sources: A, Shigley's Mechanical Engineering Design, Table 8-15 (cadmium and
//! anti-seize rows from memory); B, Handbook of Bolts and Bolted Joints (1998), ch. 2, Table 1, as quoted; C, worked
//! example for a 3/8-24 aircraft bolt, 5788 lbf: 28.9 lbf ft cadmium dry, 19.9 lbf ft moly anti-seize;
//! D, a service sheet: wet threadlocker acts as a lubricant.
//! Where two sources differ the default is the LOWER K: a torque worked from a K that is too high overloads the
//! screw, one worked from a K that is too low only leaves it looser.

/// A state of thread and head, with the factor used and the other published one.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct NutFactor {
    /// Key, stable.
    pub key: &'static str,
    /// The state in shop words.
    pub state: &'static str,
    /// The factor used by default.
    pub k: f64,
    /// Where it comes from.
    pub source: &'static str,
    /// The other published factor and its source, where they differ.
    pub other: Option<(f64, &'static str)>,
    /// Scatter list key (preload_scatter) that belongs to a torque wrench in this state.
    pub scatter: &'static str,
    /// Friction class key (thread_friction) for the long form.
    pub friction: &'static str,
}

/// Source A.
pub const SHIGLEY: &str = "Shigley, Table 8-15";
/// Source A, rows recalled: cadmium (confirmed by source C) and anti-seize.
pub const SHIGLEY_RECALLED: &str = "Shigley, Table 8-15, from memory";
/// Source B.
pub const HANDBOOK: &str = "Handbook of Bolts and Bolted Joints (1998), ch. 2, Table 1, as quoted";
/// Source C.
pub const AIRCRAFT: &str = "worked example, 3/8-24 aircraft bolt, moly anti-seize";
/// Source D.
pub const THREADLOCKER: &str = "service sheet of a threadlocker on plain steel (0.20 without it)";

const fn row(
    key: &'static str,
    state: &'static str,
    k: f64,
    source: &'static str,
    other: Option<(f64, &'static str)>,
    scatter: &'static str,
    friction: &'static str,
) -> NutFactor {
    NutFactor {
        key,
        state,
        k,
        source,
        other,
        scatter,
        friction,
    }
}

/// Driest first (the unknown state before all).
#[rustfmt::skip]
pub const ROWS: &[NutFactor] = &[
    row("unknown", "not known",                     0.20,  SHIGLEY,  None,                   "torque-dry",   "C"),
    row("plain",   "plain steel, dry",              0.20,  HANDBOOK, Some((0.30,  SHIGLEY)), "torque-dry",   "C"),
    row("black",   "black finish, dry",             0.30,  SHIGLEY,  None,                   "torque-dry",   "C"),
    row("zinc",    "zinc plated, dry",              0.20,  SHIGLEY,  Some((0.295, HANDBOOK)), "torque-dry",  "D"),
    row("cadmium", "cadmium plated, dry",           0.16, SHIGLEY_RECALLED, Some((0.20, HANDBOOK)), "torque-cad",  "B"),
    row("oiled",   "oiled",                         0.18,  SHIGLEY,  None,                   "torque-oiled", "B"),
    row("threadlocker", "threadlocker, wet",        0.14,  THREADLOCKER, None,               "torque-oiled", "B"),
    row("moly",    "moly paste or anti-seize",      0.11,  AIRCRAFT, Some((0.12, SHIGLEY_RECALLED)), "torque-oiled", "A"),
];

/// The state with this key.
pub fn state(key: &str) -> Option<&'static NutFactor> {
    ROWS.iter().find(|r| r.key == key)
}

impl NutFactor {
    /// The smallest published factor for this state.
    pub fn low(&self) -> f64 {
        self.other.map_or(self.k, |(k, _)| k.min(self.k))
    }
    /// The largest published factor for this state.
    pub fn high(&self) -> f64 {
        self.other.map_or(self.k, |(k, _)| k.max(self.k))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn default_is_the_lower_of_two_and_keys_resolve() {
        for r in ROWS {
            assert_eq!(r.k, r.low(), "{}", r.key);
            assert!(
                super::super::preload_scatter::method(r.scatter).is_some(),
                "{}",
                r.key
            );
            assert!(
                super::super::thread_friction::class(r.friction).is_some(),
                "{}",
                r.key
            );
        }
    }
}
