//! Which size of taper pin is usual through this shaft and hub?

use super::fault::positive;
use super::{PinFault, StandardPin, TaperSeries};
use crate::quantity::{Length, Share};

/// The usual rule: the pin's middle is about a quarter of the shaft's diameter (common practice, a guide only: check the
/// shear and the weakened shaft).
pub const SHARE_OF_SHAFT: Share = Share::from_fraction(0.25);

/// One size, measured against the rule.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Choice {
    /// The pin.
    pub pin: StandardPin,
    /// Its size in the middle of the shaft.
    pub middle: Length,
    /// The middle over the shaft's diameter.
    pub share: Share,
    /// Middle less a quarter of the shaft.
    pub off: Length,
    /// Whether the pin is usually sold as long as the hub is wide.
    pub usual_length: bool,
}

/// The sizes nearest to a quarter of the shaft, best first; the pin is as long as the hub is wide.
///
/// # Errors
/// A shaft or hub of nothing, or a hub no larger than its shaft.
///
/// ```
/// use benchslate_core::{pin::{self, TaperSeries}, quantity::Length};
/// let best = pin::for_shaft(Length::from_inches(0.75), Length::from_inches(1.5), TaperSeries::Inch).unwrap();
/// assert_eq!(best[0].pin.call(), "2"); // 0.1774 in the middle against 3/4 ÷ 4 = 0.1875; No. 3 has 0.2034
/// ```
pub fn for_shaft(shaft: Length, hub: Length, series: TaperSeries) -> Result<Vec<Choice>, PinFault> {
    positive(shaft, "shaft")?;
    if hub.mm() <= shaft.mm() {
        return Err(PinFault::NotPositive("wall of the hub"));
    }
    let target = shaft * SHARE_OF_SHAFT.fraction();
    let mut choices: Vec<Choice> = StandardPin::all(series)
        .into_iter()
        .filter_map(|pin| {
            let middle = pin.middle(hub).ok()?;
            Some(Choice {
                pin,
                middle,
                share: Share::from_fraction(middle / shaft),
                off: middle - target,
                usual_length: pin.is_usual(hub),
            })
        })
        .collect();
    crate::order::sort_by(&mut choices, |a, b| {
        a.off.abs().mm().total_cmp(&b.off.abs().mm())
    });
    Ok(choices)
}
