//! A taper pin with its two ends and its length, the taper drawn steeper than it is.

use super::tail::Found;
use super::ways::rule_size;
use crate::pin::{StandardPin, TaperSeries};
use crate::quantity::Length;
use crate::sheet::*;

/// Drawn 100 long and 32 high at the large end; the small end in its true proportion to the large. The shaft stands in
/// its true place along the pin; an old hole is dashed, as far off as it is.
pub(super) fn pin(inp: &Inputs, found: &Found, large: Length, small: Length) -> Drawing {
    let (long, high) = (100.0, 16.0);
    let (pin, length) = (found.pin, found.length);
    let low = high * (small / large);
    let title = format!(
        "Taper pin {}: {} at the large end, {} at the small end, {} long",
        pin.name(),
        inp.show(large),
        inp.show(small),
        rule_size(inp, length, 3, 1)
    );
    let mut d = Drawing::new(title, false);
    d.path(
        Pen::Object,
        true,
        &[pt(0.0, -high), pt(0.0, high), pt(long, low), pt(long, -low)],
    );
    d.path(Pen::Centre, false, &[pt(-6.0, 0.0), pt(long + 6.0, 0.0)]);
    if let Some(shaft) = inp.opt::<Length>("shaft").filter(|shaft| *shaft < length) {
        let half = long / 2.0 * (shaft / length);
        for side in [-half, half] {
            let x = long / 2.0 + side;
            d.path(Pen::Hidden, false, &[pt(x, -high - 6.0), pt(x, high + 6.0)]);
        }
        d.dimension(
            pt(long / 2.0 - half, high + 6.0),
            pt(long / 2.0 + half, high + 6.0),
            1.5,
            format!("shaft {}", rule_size(inp, shaft, 3, 1)),
        );
    }
    if let (Some(at_large), Some(at_small)) = (inp.opt::<Length>("worn-large"), found.hole_now) {
        for side in [-high, high] {
            d.path(
                Pen::Hidden,
                false,
                &[
                    pt(0.0, side * (at_large / large)),
                    pt(long, side * (at_small / large)),
                ],
            );
        }
    }
    d.dimension(pt(0.0, -high), pt(0.0, high), 2.0, inp.num(large));
    d.dimension(pt(long, low), pt(long, -low), 2.0, inp.num(small));
    d.dimension(
        pt(long, -high),
        pt(0.0, -high),
        2.0,
        rule_size(inp, length, 3, 1),
    );
    let taper = match pin.series() {
        TaperSeries::Inch => "1:48 on the diameter",
        TaperSeries::Metric => "1:50 on the diameter",
    };
    d.text(pt(long / 2.0, high * 0.4), taper);
    d
}

/// A pin whose length is not known: its named end, and a break line where it may go on.
pub(super) fn any_length(inp: &Inputs, pin: StandardPin) -> Drawing {
    let (long, high, low) = (100.0, 16.0, 12.0);
    let named = pin.named_end();
    let (end, taper) = match pin.series() {
        TaperSeries::Inch => ("large", "1:48 on the diameter, any length"),
        TaperSeries::Metric => ("small", "1:50 on the diameter, any length"),
    };
    let title = format!(
        "Taper pin {}: {} at the {end} end, at any length",
        pin.name(),
        inp.show(named)
    );
    let mut d = Drawing::new(title, false);
    d.path(
        Pen::Object,
        true,
        &[pt(0.0, -high), pt(0.0, high), pt(long, low), pt(long, -low)],
    );
    d.path(Pen::Centre, false, &[pt(-6.0, 0.0), pt(long + 6.0, 0.0)]);
    let cut = long / 2.0;
    for x in [cut - 1.0, cut + 1.0] {
        d.path(Pen::Thin, false, &[pt(x - 1.0, -high), pt(x + 1.0, high)]);
    }
    match pin.series() {
        TaperSeries::Inch => d.dimension(pt(0.0, -high), pt(0.0, high), 2.0, inp.num(named)),
        TaperSeries::Metric => d.dimension(pt(long, low), pt(long, -low), 2.0, inp.num(named)),
    };
    d.text(pt(cut, -high - 6.0), taper);
    d
}
