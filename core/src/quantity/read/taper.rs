//! How are tapers read that are no number with a unit: `1:48`, and an angle that may be included or to the axis?

use super::{
    Choice, ReadFault, Reading,
    ask::words,
    compound::compound,
    number::{Number, at, number, skip},
    unit::unit_at,
};
use crate::quantity::{Kind, Scale, Unit, units};

const TAIL: ReadFault = ReadFault::Unreadable {
    why: "nothing may follow a taper: write 1:48, 1/4 in/ft or 3.5 deg",
};

/// A ratio or an angle whose first number has been read; nothing where it is another taper.
pub fn special(
    b: &[u8],
    first: Number,
    negative: bool,
    offered: &[&'static Unit],
) -> Result<Option<Reading>, ReadFault> {
    let i = skip(b, first.end);
    if at(b, i) == b':' {
        return ratio(b, first, skip(b, i + 1), negative).map(Some);
    }
    if unit_at(b, i, Kind::Taper).is_some() {
        return Ok(None);
    }
    let Some(typed) = unit_at(b, i, Kind::Angle) else {
        return Ok(None);
    };
    let parts = compound(b, first, typed, Kind::Angle)?;
    let degrees: f64 = parts.iter().map(|(n, unit)| unit.to_base(n.value())).sum();
    let rest: Vec<u8> = b
        .get(parts.end..)
        .unwrap_or_default()
        .iter()
        .copied()
        .filter(|c| !matches!(c, b' ' | b'-' | b'.'))
        .collect();
    let unit: &'static Unit = match rest.as_slice() {
        b"incl" | b"included" | b"inclusive" => &units::TAPER_INCLUDED,
        b"half" | b"halfangle" | b"perside" | b"/side" => &units::TAPER_HALF,
        b"" => {
            let mut angles = offered
                .iter()
                .filter(|u| matches!(u.scale, Scale::Tangent(_)));
            match (angles.next(), angles.next()) {
                (Some(only), None) => only,
                _ => return Err(which_angle(b)),
            }
        }
        rest if b"included".starts_with(rest)
            || b"halfangle".starts_with(rest)
            || b"perside".starts_with(rest) =>
        {
            return Err(ReadFault::Unfinished);
        }
        _ => return Err(TAIL),
    };
    let limit = if *unit == units::TAPER_HALF {
        89.0
    } else {
        178.0
    };
    if degrees > limit {
        return Err(ReadFault::TooLarge);
    }
    Ok(Some(reading(
        unit.to_base(if negative { -degrees } else { degrees }),
        unit,
    )))
}

fn ratio(b: &[u8], first: Number, start: usize, negative: bool) -> Result<Reading, ReadFault> {
    let length = number(b, start)?;
    if length.end < b.len() {
        return Err(TAIL);
    }
    if first.thousands.or(length.thousands).is_some() {
        return Err(ReadFault::Unreadable {
            why: "a comma in a ratio may mean thousands: write a point",
        });
    }
    if length.n == 0 {
        return Err(ReadFault::ZeroDenominator);
    }
    let taper = first.value() / length.value();
    Ok(reading(
        if negative { -taper } else { taper },
        &units::TAPER_RATIO,
    ))
}

fn reading(nominal: f64, unit: &'static Unit) -> Reading {
    Reading {
        nominal,
        minus: 0.0,
        plus: 0.0,
        unit,
        bare: false,
        exact: None,
    }
}

fn which_angle(b: &[u8]) -> ReadFault {
    let choice = |tail: &str, label: &str| {
        let mut text = words(b);
        text.push_str(tail);
        Choice {
            text,
            label: label.into(),
        }
    };
    ReadFault::Ambiguous(vec![
        choice(" incl", "the included angle, side to side"),
        choice(" half", "the angle from the axis to one side"),
    ])
}

/// `1/48` where a ratio is asked: 1:48, or 1/48 to one?
pub fn small_ratio(b: &[u8]) -> ReadFault {
    let text = words(b);
    let mut ratio = text.replacen('/', ":", 1);
    if !ratio.contains(':') {
        ratio.push_str(" in/in");
    }
    let mut per_foot = text;
    per_foot.push_str(" in/ft");
    ReadFault::Ambiguous(vec![
        Choice {
            text: ratio,
            label: "change of diameter over length".into(),
        },
        Choice {
            text: per_foot,
            label: "inches of diameter in a foot of length".into(),
        },
    ])
}
