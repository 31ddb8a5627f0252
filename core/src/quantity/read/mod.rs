//! What does a typed entry mean, as a number with a unit? Shop notation in; never a guess.

mod ask;
mod clock;
mod compound;
mod fault;
mod glyphs;
mod letters;
mod link;
mod number;
mod taper;
mod tolerance;
mod unit;

pub use fault::{Choice, ReadFault};
pub use link::link_text;

use super::{Exact, Kind, Scale, System, Unit, units, units_of};
use ask::{clear_in_metric, clear_without_unit, metric_doubt, thousands, with_unit_at};
use compound::{Parts, compound};
use glyphs::{PLUS_MINUS, plain};
use number::{Number, at, number, skip};
use tolerance::{SAME_UNIT, Tolerance, tolerance};

/// What was understood from an entry.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Reading {
    /// The value, in the kind's base unit.
    pub nominal: f64,
    /// How far it may lie below, in the base unit, never under 0.
    pub minus: f64,
    /// How far it may lie above, in the base unit, never under 0.
    pub plus: f64,
    /// The unit that it was read in.
    pub unit: &'static Unit,
    /// Whether no unit was typed.
    pub bare: bool,
    /// For lengths: the value to 0.1 nm.
    pub exact: Option<Exact>,
}

/// Largest length, in millimetres; a thousand kilometres.
const MOST_LENGTH: f64 = 1e9;
/// Largest base number of other kinds.
const MOST: f64 = 1e12;

/// Reads an entry of one kind. A bare number takes the first unit offered (the kind's first where none is); any unit of
/// the kind is accepted when typed.
///
/// # Errors
/// What stands in the way, as a [`ReadFault`]; nothing is ever guessed or cut.
///
/// ```
/// use benchslate_core::quantity::{Kind, ReadFault, read, units};
/// let offered = [&units::INCH, &units::MM];
/// assert_eq!(read("1-21/64", Kind::Length, &offered).unwrap().nominal, 33.734375);
/// assert_eq!(read("6.35 mm", Kind::Length, &offered).unwrap().unit, &units::MM);
/// assert_eq!(read("2:05", Kind::Time, &[]).unwrap().nominal, 125.0); // as a stopwatch shows it
/// assert_eq!(read("1/", Kind::Length, &offered), Err(ReadFault::Unfinished));
/// ```
pub fn read(text: &str, kind: Kind, offered: &[&'static Unit]) -> Result<Reading, ReadFault> {
    let text = plain(text)?;
    let b = text.bytes();
    read_plain(b, kind, offered).map_err(|fault| letters::meant(b, kind, offered, fault))
}

fn read_plain(b: &[u8], kind: Kind, offered: &[&'static Unit]) -> Result<Reading, ReadFault> {
    if b.is_empty() {
        return Err(ReadFault::Empty);
    }
    let usual = offered
        .iter()
        .chain(units_of(kind))
        .copied()
        .find(|u| u.kind == kind)
        .unwrap_or(&units::NUMBER);
    if matches!(b, [PLUS_MINUS, ..]) {
        return Err(if b.len() == 1 {
            ReadFault::Unfinished
        } else {
            NO_SIZE
        });
    }
    if kind == Kind::Length && (b == b"tenth" || b == b"a tenth") {
        return one_tenth(usual);
    }
    if kind == Kind::Time
        && let Some(reading) = clock::clock(b)
    {
        return reading;
    }
    let negative = at(b, 0) == b'-';
    let start = if negative || at(b, 0) == b'+' {
        skip(b, 1)
    } else {
        0
    };
    let mut first = number(b, start)?;
    if kind == Kind::Count && first.thousands.take().is_some() {
        first.d = 1; // of whole things "12,500" can only be thousands
    }
    let i = skip(b, first.end);
    if kind == Kind::Taper
        && let Some(reading) = taper::special(b, first, negative, offered)?
    {
        return Ok(reading);
    }
    let bare = i >= b.len() || is_signed(b, i);
    let parts = if bare {
        Parts::one(first, usual, i)
    } else {
        let typed = unit::unit_at(b, i, kind).ok_or_else(|| unit::no_unit(b, i, kind))?;
        let parts = compound(b, first, typed, kind)?;
        if !parts.several() {
            clear_in_metric(first, typed, negative, usual)?;
        }
        parts
    };
    let i = skip(b, parts.end);
    let tolerance = match at(b, i) {
        0 => None,
        PLUS_MINUS | b'+' | b'-' => Some(tolerance(b, i, kind)?),
        _ => {
            return Err(ReadFault::Unreadable {
                why: "something follows the size that belongs to neither unit nor tolerance",
            });
        }
    };
    let (parts, bare) = shared_unit(b, i, parts, bare, tolerance.as_ref(), usual)?;
    if let Some(comma) = first.thousands {
        return Err(thousands(b, comma, bare, parts.unit));
    }
    if kind == Kind::Count && !first.is_whole() {
        return Err(ReadFault::NotWhole);
    }
    if bare {
        if kind == Kind::Taper && first.n < first.d && matches!(parts.unit.scale, Scale::Inverse(_))
        {
            return Err(taper::small_ratio(b));
        }
        clear_without_unit(b, i, first, usual, tolerance.is_some())?;
    }
    finish(&parts, negative, tolerance.as_ref(), usual, bare)
}

/// Whether a tolerance's sign stands there, and no hyphen before a unit.
fn is_signed(b: &[u8], i: usize) -> bool {
    matches!(at(b, i), PLUS_MINUS | b'+')
        || (at(b, i) == b'-' && !at(b, i + 1).is_ascii_alphabetic())
}

const NO_SIZE: ReadFault = ReadFault::Unreadable {
    why: "a size must stand before its tolerance",
};

/// The value and its tolerance in the base unit, within the bounds.
fn finish(
    parts: &Parts,
    negative: bool,
    tolerance: Option<&Tolerance>,
    usual: &'static Unit,
    bare: bool,
) -> Result<Reading, ReadFault> {
    let unit = parts.unit;
    let (nominal, exact) = value(parts, negative)?;
    let (minus, plus) = match tolerance {
        None => (0.0, 0.0),
        Some(t) if t.percent => (
            nominal.abs() * t.minus.value() / 100.0,
            nominal.abs() * t.plus.value() / 100.0,
        ),
        Some(t) => {
            let unit = t.unit.unwrap_or(if bare { usual } else { unit });
            (
                apart(&t.minus, nominal, unit, -1.0)?,
                apart(&t.plus, nominal, unit, 1.0)?,
            )
        }
    };
    // An inverse unit turns the sides round: more threads per inch is less pitch.
    let (minus, plus) =
        if matches!(unit.scale, Scale::Inverse(_)) && tolerance.is_some_and(|t| !t.percent) {
            (plus, minus)
        } else {
            (minus, plus)
        };
    let most = if exact.is_some() { MOST_LENGTH } else { MOST };
    if !nominal.is_finite() {
        return Err(ReadFault::ZeroDenominator);
    }
    if nominal.abs() > most || !(minus <= most && plus <= most) {
        return Err(ReadFault::TooLarge);
    }
    Ok(Reading {
        nominal,
        minus,
        plus,
        unit,
        bare,
        exact,
    })
}

/// The value in the base unit; for lengths also exact.
fn value(parts: &Parts, negative: bool) -> Result<(f64, Option<Exact>), ReadFault> {
    let signed = |x: f64| if negative { -x } else { x };
    if let Some(mut sum) = parts.unit.tenth_nm().map(|_| 0_i64) {
        for (n, unit) in parts.iter() {
            let part = unit
                .tenth_nm()
                .and_then(|per| Exact::of(n.n, n.d, per))
                .ok_or(ReadFault::TooLarge)?;
            sum = sum
                .checked_add(part.tenth_nm())
                .ok_or(ReadFault::TooLarge)?;
        }
        let exact = Exact::from_tenth_nm(if negative { -sum } else { sum });
        return Ok((exact.mm(), Some(exact)));
    }
    if !parts.several() {
        let (first, unit) = parts.iter().next().ok_or(ReadFault::Empty)?;
        return Ok((unit.to_base(signed(first.value())) + 0.0, None));
    }
    Ok((
        signed(parts.iter().map(|(n, unit)| unit.to_base(n.value())).sum()),
        None,
    ))
}

/// How far a tolerance of `size` in `unit` reaches from the nominal, in the base unit.
fn apart(size: &Number, nominal: f64, unit: &Unit, side: f64) -> Result<f64, ReadFault> {
    if let Some(per) = unit.tenth_nm() {
        return Exact::of(size.n, size.d, per)
            .map(Exact::mm)
            .ok_or(ReadFault::TooLarge);
    }
    Ok(match unit.scale {
        Scale::Linear(_) => unit.to_base(size.value()),
        Scale::Offset { factor, .. } => size.value() * factor,
        Scale::Inverse(_) | Scale::Tangent(_) => {
            (unit.to_base(unit.from_base(nominal) + side * size.value()) - nominal).abs()
        }
    })
}

/// A unit after the tolerance holds for a bare size before it ("25 ± 0.01 mm"), unless it is a small one.
fn shared_unit(
    b: &[u8],
    tail: usize,
    parts: Parts,
    bare: bool,
    tolerance: Option<&Tolerance>,
    usual: &'static Unit,
) -> Result<(Parts, bool), ReadFault> {
    let half_told = tolerance.is_some_and(|t| t.half_told);
    let Some(typed) = tolerance.and_then(|t| t.typed).filter(|_| bare) else {
        if half_told && tolerance.and_then(|t| t.unit) != Some(parts.unit) {
            return Err(SAME_UNIT);
        }
        if let Some(typed) = tolerance.and_then(|t| t.typed)
            && metric_doubt(typed.unit, typed.spelling, usual)
            && parts.unit.system == Some(System::Metric)
        {
            return Err(ReadFault::Unreadable {
                why: "a tenth may be 0.0001 in or 0.1 mm: write one of these",
            });
        }
        return Ok((parts, bare));
    };
    let small = [
        &units::THOU,
        &units::TENTH,
        &units::MICROINCH,
        &units::MICRON,
    ]
    .contains(&typed.unit);
    if small && typed.unit != usual {
        if half_told {
            return Err(SAME_UNIT);
        }
        let choice = |unit: &'static Unit| {
            let text = with_unit_at(b, tail, unit);
            let mut label = String::from("the size in ");
            label.push_str(unit.spoken);
            Choice { text, label }
        };
        return Err(ReadFault::Ambiguous(vec![
            choice(usual),
            choice(typed.unit),
        ]));
    }
    Ok((parts.told(typed.unit), false))
}

fn one_tenth(usual: &'static Unit) -> Result<Reading, ReadFault> {
    let one = Number {
        n: 1,
        d: 1,
        end: 0,
        thousands: None,
        fraction: false,
    };
    clear_in_metric(
        one,
        unit::Typed {
            unit: &units::TENTH,
            spelling: "tenth",
            end: 0,
        },
        false,
        usual,
    )?;
    finish(
        &Parts::one(one, &units::TENTH, 0),
        false,
        None,
        usual,
        false,
    )
}

#[cfg(test)]
mod tests;
