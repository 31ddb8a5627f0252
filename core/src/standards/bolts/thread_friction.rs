//! Which friction belongs to a thread and head in this state (for the long form)?
//!
//! Bare coefficients, the same guide range for thread and head, room temperature. Source: VDI 2230 Part 1, table of
//! friction classes A to E, as reprinted in a fastener catalogue p. 681. The nominal is the middle of the range.

/// A friction class.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct FrictionClass {
    /// The class letter.
    pub class: &'static str,
    /// Least friction.
    pub low: f64,
    /// Most friction; `None` where the class is open upward.
    pub high: Option<f64>,
    /// Where it applies.
    pub typical: &'static str,
}

const fn row(
    class: &'static str,
    low: f64,
    high: Option<f64>,
    typical: &'static str,
) -> FrictionClass {
    FrictionClass {
        class,
        low,
        high,
        typical,
    }
}

/// Slipperiest first.
#[rustfmt::skip]
pub const ROWS: &[FrictionClass] = &[
    row("A", 0.04, Some(0.10), "plain, black, phosphated or zinc, with moly, graphite or wax"),
    row("B", 0.08, Some(0.16), "plain, black, phosphated or zinc, with grease or oil; stainless with paste"),
    row("C", 0.14, Some(0.24), "plain or phosphated as delivered, slightly oiled; zinc without lubricant"),
    row("D", 0.20, Some(0.35), "stainless with oil; zinc or hot-dip galvanized without lubricant"),
    row("E", 0.30, None,       "stainless, aluminum or zinc alloy coat, without lubricant"),
];

/// The class with this letter.
pub fn class(letter: &str) -> Option<&'static FrictionClass> {
    ROWS.iter().find(|r| r.class == letter)
}

impl FrictionClass {
    /// The middle of the range; the low end where it is open.
    pub fn nominal(&self) -> f64 {
        self.high.map_or(self.low, |h| f64::midpoint(self.low, h))
    }
}
