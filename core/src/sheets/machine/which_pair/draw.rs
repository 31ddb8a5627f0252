//! The box as a drawing: a column a stage, a cell a place, what is cleared and what is suspect.

use super::boxed::{Boxed, letter};
use super::say;
use crate::machine::isolate::{Finding, Verdict};
use crate::sheet::*;

const WIDE: f64 = 34.0;
const HIGH: f64 = 8.0;

pub fn draw(boxed: &Boxed, finding: &Finding) -> Drawing {
    let names = |places: &[(usize, usize)]| {
        let all: Vec<String> = places
            .iter()
            .map(|&(stage, at)| say::place(stage, at))
            .collect();
        say::list(&all, "and")
    };
    let title = format!(
        "The stages of the gearbox in series; cleared: {}; suspect: {}; not tried: {}",
        names(&finding.cleared),
        names(&finding.suspects),
        names(&finding.untried)
    );
    let mut d = Drawing::new(title, false);
    let common = finding.verdict == Verdict::Common;
    for (stage, &count) in boxed.gearbox.stages().iter().enumerate() {
        let x = stage as f64 * (WIDE + 12.0);
        let pen = if common { Pen::Mark } else { Pen::Centre };
        d.path(pen, false, &[pt(x - 9.0, HIGH), pt(x + WIDE + 3.0, HIGH)]);
        d.text(
            pt(x + WIDE / 2.0, HIGH + 5.0),
            format!("stage {}", letter(stage)),
        );
        for at in 0..count {
            let y = -(at as f64) * (HIGH + 3.0) - HIGH;
            let corners = [
                pt(x, y),
                pt(x + WIDE, y),
                pt(x + WIDE, y + HIGH),
                pt(x, y + HIGH),
            ];
            let (pen, state) = if finding.suspects.contains(&(stage, at)) {
                (Pen::Mark, "suspect")
            } else if finding.cleared.contains(&(stage, at)) {
                (Pen::Object, "cleared")
            } else {
                (Pen::Hidden, "not tried")
            };
            d.path(pen, true, &corners);
            d.text(
                pt(x + WIDE / 2.0, y + HIGH / 2.0),
                format!("{} {state}", say::place(stage, at)),
            );
        }
    }
    d
}
