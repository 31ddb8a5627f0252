//! What does a gear pair sound like? Its mesh frequency, and how soon the same two teeth meet again.

use crate::quantity::RotationalSpeed;

/// How often the teeth of a gear mesh, times a second: n z / 60. Any speed and number of teeth.
///
/// A steady growl at this frequency is the whole gear; a bump once a turn, n / 60, is one tooth. Source: common practice.
///
/// ```
/// use benchslate_core::machine::isolate::mesh_hz;
/// use benchslate_core::quantity::RotationalSpeed;
/// assert!((mesh_hz(RotationalSpeed::from_rpm(600.0), 20) - 200.0).abs() < 1e-9);
/// ```
pub fn mesh_hz(speed: RotationalSpeed, teeth: u32) -> f64 {
    speed.rpm() * f64::from(teeth) / 60.0
}

/// After how many turns of the first and of the second gear the same two teeth meet again: lcm ÷ teeth. Nothing for a gear
/// without teeth.
///
/// ```
/// use benchslate_core::machine::isolate::meets_again;
/// assert_eq!(meets_again(18, 40), Some((20, 9)));
/// ```
pub const fn meets_again(first: u32, second: u32) -> Option<(u32, u32)> {
    if first == 0 || second == 0 {
        return None;
    }
    let (mut a, mut b) = (first, second);
    while b != 0 {
        (a, b) = (b, a % b);
    }
    Some((second / a, first / a))
}

/// True where every tooth of one gear meets every tooth of the other: wear spreads evenly, and no bump repeats each turn of
/// both.
pub fn is_hunting(first: u32, second: u32) -> bool {
    meets_again(first, second) == Some((second, first))
}
