//! What can be said of a pin before its length is known? Its named end, and the other end over the usual lengths.

use super::draw;
use super::tail::{self, DEFINITION};
use crate::pin::StandardPin;
use crate::quantity::Length;
use crate::sheet::*;

/// Lengths that pins are usually sold in: inches and millimetres.
const INCHES: [f64; 11] = [0.5, 0.75, 1.0, 1.25, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0];
const MILLIMETRES: [f64; 11] = [
    10.0, 16.0, 20.0, 25.0, 32.0, 40.0, 50.0, 60.0, 80.0, 100.0, 120.0,
];

/// The answer without a length.
pub(super) fn tell(inp: &Inputs, found: StandardPin) -> Result<Answer, Stop> {
    let mut a = inp.answer();
    rest(inp, &mut a, found)?;
    Ok(a)
}

/// All that follows from a pin alone.
pub(super) fn rest(inp: &Inputs, a: &mut Answer, found: StandardPin) -> Result<(), Stop> {
    let named = found.named_end();
    let (id, says, other) = match found {
        StandardPin::Inch(_) => (
            "large-end",
            "Nominal size is the large end (inch series), the same at any length.",
            "small end",
        ),
        StandardPin::Metric(_) => (
            "small-end",
            "Nominal size is the small end (metric series), the same at any length.",
            "large end",
        ),
    };
    a.line(id, named).says(says);
    tail::seat_lines(inp, a, found.series())?;
    if !inp.quiet() {
        lengths(inp, a, found, other);
        a.note(
            "any-length",
            "Before you ream",
            "The length in the hub decides the small end, and so the drill. Measure it first.",
        );
    }
    a.source(tail::standard_of(found));
    a.draw(|| draw::any_length(inp, found));
    tail::handling(inp, a);
    Ok(())
}

fn lengths(inp: &Inputs, a: &mut Answer, found: StandardPin, other: &'static str) {
    let lengths = match found {
        StandardPin::Inch(_) => INCHES.map(Length::from_inches),
        StandardPin::Metric(_) => MILLIMETRES.map(Length::from_mm),
    };
    let table = a.table("lengths", "Over the usual lengths", &["length", other]);
    for length in lengths.into_iter().filter(|&length| found.is_usual(length)) {
        let end = match found {
            StandardPin::Inch(_) => found.small_end(length).ok(),
            StandardPin::Metric(_) => Some(found.large_end(length)),
        };
        let Some(end) = end else { continue };
        let mut entry = match found {
            StandardPin::Inch(_) => vec![("number", found.call().to_owned())],
            StandardPin::Metric(_) => {
                vec![
                    ("series", "metric".to_owned()),
                    ("size", found.call().to_owned()),
                ]
            }
        };
        entry.push(("length", inp.show_plain(length)));
        table
            .row(vec![Value::of(length).places(2, 0), Value::of(end)])
            .opens("taper-pin", entry);
    }
    table.note("Tap a length, or type the hub's own, for the drill, the reamer and the rest.");
    a.work(|w| {
        let rule = match found {
            StandardPin::Inch(_) => "d = D \u{2212} L \u{f7} 48",
            StandardPin::Metric(_) => "D = d + L \u{f7} 50",
        };
        w.step("The other end", &[rule.into()], &DEFINITION);
    });
}
