//! What does the table really do when the dial turns? Slack in the screw, and a dial divided in other units than the screw.

use crate::quantity::Length;

/// A dial move against the screw's slack.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct TrueMove {
    /// What the table moves, signed as the dial.
    pub table: Length,
    /// What the dial turns without the table: zero when the last move went the same way.
    pub lost: Length,
    /// What is still to turn before the table moves; zero once it moves.
    pub still: Length,
}

/// What the table moves for a signed dial move: the slack is lost once at each reversal. `reversed` is true where the last
/// move that took up the slack went the other way.
///
/// ```
/// use benchslate_core::{machine::true_move, quantity::Length};
/// let half = true_move(Length::from_inches(0.5), Length::from_inches(0.03), true);
/// assert!((half.table.inches() - 0.47).abs() < 1e-9); // 0.500 on the dial, 0.030 slack: 0.470 on the table
/// let back = true_move(Length::from_inches(-0.02), Length::from_inches(0.03), true);
/// assert!(back.table.inches() == 0.0 && (back.still.inches() - 0.01).abs() < 1e-9);
/// ```
pub fn true_move(dial: Length, slack: Length, reversed: bool) -> TrueMove {
    let slack = if reversed { slack } else { Length::ZERO };
    let turned = dial.abs();
    let moved = (turned - slack).max(Length::ZERO);
    let signed = if dial < Length::ZERO { -moved } else { moved };
    TrueMove {
        table: signed,
        lost: slack.min(turned),
        still: (slack - turned).max(Length::ZERO),
    }
}

/// Slack from two dial readings at one place of the table, come to from either side. With the dial's travel per turn the shorter
/// way round is taken, so that readings on both sides of zero serve.
///
/// ```
/// use benchslate_core::{machine::slack_of_readings, quantity::Length};
/// let inch = Length::from_inches;
/// let slack = slack_of_readings(inch(0.192), inch(0.004), Some(inch(0.2)));
/// assert!((slack.inches() - 0.012).abs() < 1e-9); // 0.192 to 0.200, and 0.004 on
/// ```
pub fn slack_of_readings(one: Length, other: Length, per_turn: Option<Length>) -> Length {
    let apart = (one - other).abs();
    match per_turn {
        Some(turn) if turn > Length::ZERO => {
            let rest = apart - turn * libm::floor(apart / turn);
            rest.min(turn - rest)
        }
        _ => apart,
    }
}

/// True travel over dial travel: lead of the screw over what the dial shows for a turn.
///
/// ```
/// use benchslate_core::{machine::dial_factor, quantity::Length};
/// let factor = dial_factor(Length::from_inches(0.2), Length::from_mm(5.0));
/// assert!((factor - 125.0 / 127.0).abs() < 1e-12); // 5 mm over 5.08 mm
/// ```
pub fn dial_factor(dial_per_turn: Length, lead: Length) -> f64 {
    lead / dial_per_turn
}

/// A handwheel reading: whole turns from the start, and the dial.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Handwheel {
    /// Whole turns past the start's turn; negative the other way.
    pub turns: i32,
    /// On the dial, at a line: from zero to less than a turn.
    pub dial: Length,
    /// What the table is off through going to a whole line: true travel, signed.
    pub off: Length,
}

/// The reading at a true distance from the start: nearest line of the dial. None where a figure is not above zero or the
/// turns are past counting (a million).
///
/// ```
/// use benchslate_core::{machine::handwheel, quantity::Length};
/// let inch = Length::from_inches;
/// // 10 in on a 5 mm screw is 50.8 turns; a dial of 200 lines stands at 0.8 turn, 0.160
/// let at = handwheel(inch(10.0), inch(0.0), inch(0.2), inch(0.001), Length::from_mm(5.0)).unwrap();
/// assert_eq!((at.turns, (at.dial.thou() + 0.5) as i32), (50, 160));
/// ```
pub fn handwheel(
    travel: Length,
    start: Length,
    per_turn: Length,
    line: Length,
    lead: Length,
) -> Option<Handwheel> {
    if !(per_turn > Length::ZERO && line > Length::ZERO && lead > Length::ZERO) {
        return None;
    }
    let dial = start + travel / dial_factor(per_turn, lead);
    let lines_a_turn = libm::round(per_turn / line);
    let at_line = libm::round(dial / line);
    let turns = libm::floor(at_line / lines_a_turn + 1e-12);
    if !(turns.abs() < 1e6 && lines_a_turn >= 1.0) {
        return None;
    }
    let shown = line * (at_line - turns * lines_a_turn);
    Some(Handwheel {
        turns: turns as i32,
        dial: shown,
        off: (line * at_line - dial) * dial_factor(per_turn, lead),
    })
}
