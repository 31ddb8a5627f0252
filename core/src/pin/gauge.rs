//! How large is a tapered hole at its face, from a plain pin, a ball or a taper gauge that sinks into it?

use super::PinFault;
use super::fault::positive;
use crate::quantity::{Length, Taper};

/// From a plain pin (a drill shank, square edge, no burr): D = g + h·T.
///
/// g the pin's diameter, h how deep its end stands below the face, T taper on the diameter. Exact for a sharp edge.
/// Source: common practice (the same rule is printed in D. Winkel, Machinist's Workshop, shop tip on taper pins, with T = 1/48).
///
/// # Errors
/// A pin of nothing or a depth below zero.
pub fn face_from_plain_pin(gauge: Length, depth: Length, taper: Taper) -> Result<Length, PinFault> {
    positive(gauge, "gauge pin")?;
    if depth.mm() < 0.0 {
        return Err(PinFault::NotPositive("depth"));
    }
    Ok(gauge + depth * taper.ratio())
}

/// From a ball: D = b·√(1 + T²/4) + T·(h + b/2).
///
/// b the ball's diameter, h how deep its top lies below the face (below zero when it stands proud), T taper on the
/// diameter. The ball touches on a circle a little below its middle; in the plane of the middle the hole measures b/cos α,
/// with tan α = T/2. Derived from that tangency.
///
/// # Errors
/// A ball of nothing.
pub fn face_from_ball(
    ball: Length,
    top_below_face: Length,
    taper: Taper,
) -> Result<Length, PinFault> {
    positive(ball, "ball")?;
    let t = taper.ratio();
    let at_middle = ball * libm::sqrt(1.0 + t * t / 4.0);
    Ok(at_middle + (top_below_face + ball / 2.0) * t)
}

/// From a taper gauge of the same taper (a sound pin serves): D = G − p·T.
///
/// G the gauge's large end, p how far that end stands proud of the face (below zero when it has sunk under it).
///
/// # Errors
/// A gauge of nothing, or a gauge that does not reach the hole.
pub fn face_from_taper_gauge(
    large: Length,
    proud: Length,
    taper: Taper,
) -> Result<Length, PinFault> {
    positive(large, "large end of the gauge")?;
    positive(large - proud * taper.ratio(), "hole at the face")
}
