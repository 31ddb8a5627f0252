//! How soon do the same two teeth of a gear pair meet again?

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
