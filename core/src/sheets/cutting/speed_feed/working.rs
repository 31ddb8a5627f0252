//! How was it figured? Each formula, then this entry's numbers, then the result as printed.

use super::Cut;
use super::milling::{Lies, Milled, Set};
use super::per_turn::Fed;
use super::spindle::{Held, Spindle, rule_of_thumb};
use crate::cutting::sources::*;
use crate::quantity::units::NUMBER;
use crate::quantity::{FeedRate, Length, System, Time, decimal};
use crate::sheet::*;

pub(super) fn spindle(inp: &Inputs, a: &mut Answer, cut: &Cut, s: &Spindle) {
    a.work(|w| {
        let (v, dn) = (inp.num_to(s.start, 1, 2), inp.num(cut.diameter));
        let twelve = match inp.system() {
            System::Inch => "12",
            System::Metric => "1000",
        };
        w.step(
            "Spindle speed",
            &[
                format!("n = {twelve} V / (\u{3c0} D)"),
                format!(
                    "n = {twelve} \u{d7} {v} / (\u{3c0} \u{d7} {dn}) = {}",
                    inp.show_to(s.exact, 1, 1)
                ),
            ],
            &SPEED_DEFINITION,
        );
        let (rule, exact) = match s.held {
            Held::Tap | Held::NoPitch => ("slowest speed".to_owned(), s.exact),
            Held::Carriage(limit) => ("highest speed at or below 10 in/min / pitch".into(), limit),
            Held::Not => ("highest speed at or below n".into(), s.exact),
        };
        w.step(
            "Spindle speed to set",
            &[
                rule,
                format!("{} \u{2192} {}", inp.show_to(exact, 1, 1), inp.show(s.step)),
                format!("V = \u{3c0} D n = {}", inp.show_to(s.surface, 1, 1)),
            ],
            match s.held {
                Held::Not => &NEXT_LOWER,
                Held::Tap => &TAP_SLOWEST,
                Held::NoPitch | Held::Carriage(_) => &CARRIAGE,
            },
        );
        let (_, formula, percent) = rule_of_thumb(inp);
        w.step(
            "Rule of thumb",
            &[formula.into(), format!("high by {percent}%")],
            &RULES_OF_THUMB,
        );
    });
}

/// The time as it computes, in seconds.
fn time_line(inp: &Inputs, travel: &str, feed: FeedRate, time: Time) -> String {
    format!(
        "t = 60 \u{d7} {travel} / {} = {}",
        inp.num_to(feed, 3, 1),
        inp.show_to(time, 0, 0)
    )
}

pub(super) fn milled(inp: &Inputs, a: &mut Answer, cut: &Cut, m: &Milled) {
    a.work(|w| {
        let (z, n) = (inp.num(m.teeth), inp.num(cut.step));
        w.step(
            "Table feed",
            &[
                "F = fz z n".into(),
                format!(
                    "F = {} \u{d7} {z} \u{d7} {n} = {}",
                    inp.num_to(m.wanted, 5, 4),
                    inp.show_to(m.exact, 3, 1)
                ),
                match m.set {
                    Set::AtOrBelow => format!("feed at or below: {}", inp.show(m.feed)),
                    Set::Slowest => format!("slowest feed: {}", inp.show(m.feed)),
                    Set::ByHand => "by hand".into(),
                },
            ],
            &TOOTH_FEED,
        );
        w.step(
            "True feed per tooth",
            &[
                "fz = F / (z n)".into(),
                format!(
                    "fz = {} / ({z} \u{d7} {n}) = {}",
                    inp.num_to(m.feed, 3, 1),
                    inp.show_to(m.chip, 5, 4)
                ),
            ],
            &TOOTH_FEED,
        );
        if m.lies != Lies::Centered {
            w.step(
                "Chip in a narrow cut",
                &[
                    format!(
                        "r = {} / {} = {}",
                        inp.num(m.radial),
                        inp.num(cut.diameter),
                        decimal(m.radial / cut.diameter, &NUMBER, 4)
                    ),
                    format!(
                        "thickest = fz / {} = {}",
                        decimal(m.thinning, &NUMBER, 3),
                        inp.show_to(m.thickest, 5, 4)
                    ),
                ],
                &CHIP_MAXIMUM,
            );
        }
        let (dn, rn) = (inp.num(cut.diameter), inp.num(m.radial));
        let put = if m.lies == Lies::Arbor {
            format!("\u{221a}({rn} \u{d7} ({dn} \u{2212} {rn}))")
        } else if m.lies == Lies::Centered {
            format!("({dn} \u{2212} \u{221a}({dn}\u{b2} \u{2212} {rn}\u{b2})) / 2")
        } else {
            format!("\u{221a}({rn} \u{d7} ({dn} \u{2212} {rn})), or the radius")
        };
        let mut lines = vec![format!("A = {put} = {}", inp.show(m.approach))];
        if let (Some(travel), Some(time)) = (m.travel, m.time) {
            lines.push("t = 60 s/min \u{d7} travel / F".into());
            lines.push(time_line(inp, &inp.num(travel), m.feed, time));
        }
        w.step("Approach and time", &lines, &GROOVER);
    });
}

pub(super) fn fed(inp: &Inputs, a: &mut Answer, cut: &Cut, fed: &Fed) {
    let hole: Option<Length> = inp.opt("hole");
    a.work(|w| {
        if let (Some(hole), Some(point), Some(time)) = (hole, fed.point, fed.time) {
            let travel = format!("({} + {})", inp.num(hole), inp.num(point));
            w.step(
                "Time for the hole",
                &[
                    "t = 60 s/min \u{d7} (depth + point) / F".into(),
                    time_line(inp, &travel, fed.feed, time),
                ],
                &GROOVER,
            );
        }
        w.step(
            "Feed per minute",
            &[
                "F = f n".into(),
                format!(
                    "F = {} \u{d7} {} = {}",
                    inp.num(fed.turn),
                    inp.num(cut.step),
                    inp.show_to(fed.feed, 2, 1)
                ),
            ],
            &TOOTH_FEED,
        );
    });
}
