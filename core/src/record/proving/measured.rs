//! What does a measured text say? A size with its ± in shop notation; for a feed also travel over time, for an alignment
//! also a deviation over a length.

use crate::quantity::{
    Kind, ReadFault, Reading, System, Unit, decimal, join, plain, read, units, usual,
};
use crate::sheet::pin;

/// A measured text, read.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Measured {
    /// The value, in the kind's base unit.
    pub value: f64,
    /// How far it may lie below, in the base unit.
    pub minus: f64,
    /// How far it may lie above, in the base unit.
    pub plus: f64,
    /// The unit that it is shown in.
    pub unit: &'static Unit,
    /// For an alignment: the length that it was measured over, mm.
    pub over_mm: Option<f64>,
}

impl Measured {
    /// What was understood, in its own unit and the other system's: "2.05 in/min · 52.07 mm/min".
    pub fn reading(&self, kind: Kind) -> String {
        let mut text = short(self.value, self.unit);
        let system = match self.unit.system {
            Some(System::Inch) => System::Metric,
            _ => System::Inch,
        };
        let other = usual(kind, system);
        if self.unit.system.is_some() && other != self.unit {
            text.push_str(" \u{b7} ");
            text.push_str(&short(self.value, other));
        }
        if self.minus > 0.0 || self.plus > 0.0 {
            text.push_str(&format!(
                ", {} to {}",
                digits(self.value - self.minus, self.unit),
                digits(self.value + self.plus, self.unit)
            ));
        }
        if let Some(over) = self.over_mm {
            text.push_str(" in ");
            let unit = usual(Kind::Length, self.unit.system.unwrap_or(System::Metric));
            text.push_str(&short(over, unit));
        }
        text
    }
}

/// The number whole where it is short, else rounded and marked so.
fn digits(base: f64, unit: &'static Unit) -> String {
    let whole = plain(base, unit);
    if whole.len() <= 9 {
        return whole;
    }
    format!(
        "about {}",
        decimal(base, unit, unit.places.saturating_add(1))
    )
}

/// As [`digits`], with the unit.
pub(super) fn short(base: f64, unit: &'static Unit) -> String {
    join(&digits(base, unit), unit)
}

/// Reads what was measured. A bare number takes the system's usual unit.
///
/// # Errors
/// One line that says what is wrong and what to type.
///
/// ```
/// use benchslate_core::{quantity::{Kind, System}, record::proving::read_measured};
/// // 10 in in 30 s: 20 in/min
/// let feed = read_measured("10 in / 30 s", Kind::FeedRate, System::Inch).unwrap();
/// assert!((feed.value - 20.0 * 25.4).abs() < 1e-9);
/// assert!(read_measured("brisk", Kind::FeedRate, System::Inch).is_err());
/// ```
pub fn read_measured(text: &str, kind: Kind, system: System) -> Result<Measured, String> {
    let single = read(text, kind, &[usual(kind, system)]);
    let measured = match single {
        Ok(reading) if kind == Kind::FeedRate && reading.bare && is_timing(text) => {
            return Err(travel_over_time(text));
        }
        Ok(reading) => of_reading(&reading, None),
        Err(fault) => match pair(text, kind, system) {
            Some(measured) => measured,
            None if kind == Kind::FeedRate && text.contains('/') && is_figures(text) => {
                return Err(travel_over_time(text));
            }
            None => return Err(words(&fault, kind)),
        },
    };
    within(&measured, kind)?;
    Ok(measured)
}

/// A measured text as it is written down: with the unit that it takes in this system where it was typed without one, else
/// as typed.
///
/// ```
/// use benchslate_core::{quantity::{Kind, System}, record::proving::pin_measured};
/// assert_eq!(pin_measured("0.012", Kind::Length, System::Inch), "0.012 in");
/// assert_eq!(pin_measured("10 in / 30 s", Kind::FeedRate, System::Metric), "10 in / 30 s");
/// ```
pub fn pin_measured(text: &str, kind: Kind, system: System) -> String {
    let other = match system {
        System::Inch => System::Metric,
        System::Metric => System::Inch,
    };
    pin(text, kind, &[usual(kind, system)], &[usual(kind, other)])
        .unwrap_or_else(|| text.to_owned())
}

/// True where the meaning of a text hangs on the system of units: no unit was typed.
pub(super) fn is_bare(text: &str, kind: Kind) -> bool {
    [System::Inch, System::Metric]
        .into_iter()
        .any(|system| pin_measured(text, kind, system) != text)
}

fn of_reading(reading: &Reading, over_mm: Option<f64>) -> Measured {
    Measured {
        value: reading.nominal,
        minus: reading.minus,
        plus: reading.plus,
        unit: reading.unit,
        over_mm,
    }
}

fn is_figures(text: &str) -> bool {
    text.chars()
        .all(|c| c.is_ascii_digit() || matches!(c, '.' | ',' | '/' | ' '))
}

/// Whether a bare fraction is likelier travel over time than a feed that a plate bears: `1/80`, but not `1/2` or `1-3/8`.
fn is_timing(text: &str) -> bool {
    let Some((over, under)) = text.trim().split_once('/') else {
        return false;
    };
    is_figures(text) && !over.trim().contains(' ') && !matches!(under.trim(), "2" | "4" | "8")
}

/// The cure with the figures that were typed.
fn travel_over_time(text: &str) -> String {
    let (over, under) = text.split_once('/').unwrap_or((text, ""));
    let (over, under) = (over.trim(), under.trim());
    format!(
        "may be a travel over a time, or a feed: write {over} in / {under} s, or {over}/{under} ipm"
    )
}

/// `travel / time` of a feed, `deviation / length` of an alignment; both sides with their units. `4 in in 121 s` says the
/// same, as it is read back.
fn pair(text: &str, kind: Kind, system: System) -> Option<Measured> {
    let by_word = text
        .rsplit_once(" in ")
        .and_then(|(left, right)| parted(left, right, kind, system));
    by_word.or_else(|| {
        let (left, right) = text.rsplit_once('/')?;
        parted(left, right, kind, system)
    })
}

fn parted(left: &str, right: &str, kind: Kind, system: System) -> Option<Measured> {
    let right = right.trim();
    let right = if right.starts_with(|c: char| c.is_ascii_alphabetic()) {
        format!("1 {right}")
    } else {
        right.to_owned()
    };
    let length = |text: &str| {
        read(text, Kind::Length, &[usual(Kind::Length, system)])
            .ok()
            .filter(|reading| !reading.bare)
    };
    let top = length(left)?;
    match kind {
        Kind::FeedRate => {
            let time = read(&right, Kind::Time, &[&units::SECOND]).ok()?;
            if time.bare || time.nominal - time.minus <= 0.0 {
                return None;
            }
            let feed = |travel: f64, seconds: f64| travel * 60.0 / seconds;
            let value = feed(top.nominal, time.nominal);
            Some(Measured {
                value,
                minus: value - feed(top.nominal - top.minus, time.nominal + time.plus),
                plus: feed(top.nominal + top.plus, time.nominal - time.minus) - value,
                unit: usual(kind, top.unit.system.unwrap_or(system)),
                over_mm: None,
            })
        }
        Kind::Length => {
            let over = length(&right)?;
            (over.nominal > 0.0).then(|| of_reading(&top, Some(over.nominal)))
        }
        _ => None,
    }
}

fn words(fault: &ReadFault, kind: Kind) -> String {
    let example = match kind {
        Kind::FeedRate => "2.05 ipm, or travel and time: 10 in / 30.2 s",
        Kind::RotationalSpeed => "425 rpm",
        Kind::Temperature => "45 C or 113 F",
        Kind::Length => "0.0008 in, or 0.02 mm / 300 mm",
        _ => "1",
    };
    format!("{}; for example {example}", fault.text())
}

/// What a machine tool can show at all: past it a slip of the unit is likelier than the reading.
fn within(measured: &Measured, kind: Kind) -> Result<(), String> {
    let (low, high, why) = match kind {
        Kind::FeedRate => (0.01, 50_000.0, "the range of rapid traverse rates"),
        Kind::RotationalSpeed => (0.1, 100_000.0, "the range of spindle speeds"),
        Kind::Temperature => (-40.0, 300.0, "the range of machine temperatures"),
        Kind::Length => (-6.35, 6.35, "the range of readings there"),
        _ => return Ok(()),
    };
    if measured.value >= low && measured.value <= high {
        return Ok(());
    }
    let end = |base: f64| short(base, measured.unit);
    let places = |base: f64| crate::quantity::with_unit(base, measured.unit, measured.unit.places);
    let (low, high) = if measured.unit.system == Some(System::Inch) {
        (places(low), places(high))
    } else {
        (end(low), end(high))
    };
    Err(format!("outside {low} to {high}, {why}: look at the unit"))
}
