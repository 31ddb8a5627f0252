//! Which holes go with the pin: the standard's, the shop's, or an ISO class?

use super::Pin;
use crate::fit::{FitClass, Letter, iso};
use crate::pin::{self, FitCharacter, Limits};
use crate::quantity::Length;
use crate::sheet::*;
use crate::standards::pins::dowel_pins::{self as table, InchSeries};

static ASME: Source = Source::read("ASME B18.8.2-2000", "Table 2, suggested holes");
static RAISED: Source = Source::computed(
    "ASME B18.8.2",
    "suggested hole raised as much as the oversize pin",
);
static GUIDE: Source = Source::read("A machine shop's guide to dowel pin holes", "slip fit");
static LIST: Source = Source::read(
    "An engineering reference table of dowel holes",
    "stainless pin in aluminum, one source",
);
static ISO: Source = Source::computed("ISO 286-2", "limits of holes");

/// A hole for the pin.
pub(super) struct Hole {
    /// Least and most.
    pub limits: Limits,
    /// The convention, in one line.
    pub says: String,
    /// Whose it is.
    pub source: &'static Source,
}

/// The hole that holds the pin.
pub(super) fn press(inp: &Inputs, pin: Pin) -> Result<Hole, Stop> {
    match pin {
        Pin::Inch(row, InchSeries::Standard) if inp.choice("metal") == "aluminium" => {
            let listed = practice(row.nominal_in).ok_or_else(|| {
                Stop::fault("metal", Reason::NoSource, "we have no verified source for this size in aluminum", "sizes with one: 3/32, 1/8 and 3/16 in; or make a trial hole")
            })?;
            Ok(Hole { limits: listed.0, says: "Stainless pin in aluminum, for location only. It differs from the standard\u{2019}s hole for iron.".into(), source: &LIST })
        }
        Pin::Inch(row, InchSeries::Standard) => {
            Ok(Hole { limits: row.suggested_hole(), says: "The standard\u{2019}s suggested hole for mild steel and cast iron. The band is the smallest and largest hole.".into(), source: &ASME })
        }
        Pin::Inch(row, InchSeries::Oversize) => {
            let raise = InchSeries::Oversize.over() - InchSeries::Standard.over();
            let (least, most) = row.suggested_hole();
            Ok(Hole { limits: (least + raise, most + raise), says: "The standard suggests no hole for an oversize pin: this keeps the fit of the standard pin in iron.".into(), source: &RAISED })
        }
        Pin::M6(row) | Pin::H8(row) => class(row.nominal(), inp.choice("press")),
    }
}

/// The hole that slips on the pin.
pub(super) fn slip(inp: &Inputs, pin: Pin) -> Result<Hole, Stop> {
    match pin {
        Pin::Inch(row, InchSeries::Standard) => match practice(row.nominal_in) {
            Some((_, slip)) if inp.choice("metal") == "aluminium" => Ok(Hole {
                limits: slip,
                says: "Stainless pin in aluminum, for location only.".into(),
                source: &LIST,
            }),
            _ => Ok(Hole {
                limits: pin::inch_slip_hole(row.nominal()),
                says: "Shop practice: nominal + 0.0005 to + 0.0012 in.".into(),
                source: &GUIDE,
            }),
        },
        Pin::Inch(row, series) => {
            let raise = series.over() - InchSeries::Standard.over();
            let (least, most) = pin::inch_slip_hole(row.nominal());
            Ok(Hole {
                limits: (least + raise, most + raise),
                says: "Shop practice for the standard pin, raised as much as the pin.".into(),
                source: &GUIDE,
            })
        }
        Pin::M6(row) | Pin::H8(row) => class(row.nominal(), inp.choice("slip")),
    }
}

/// The press and slip hole of the practice list, where it has the size.
fn practice(nominal_in: f64) -> Option<(Limits, Limits)> {
    let row = table::PRACTICE
        .iter()
        .find(|row| (row.pin_in - nominal_in).abs() < 0.0006)?;
    let around = |size: f64| {
        (
            Length::from_inches(size - table::PRACTICE_TOLERANCE_IN),
            Length::from_inches(size + table::PRACTICE_TOLERANCE_IN),
        )
    };
    Some((around(row.press_in), around(row.slip_in)))
}

/// An ISO hole class by the id of its choice.
fn class(nominal: Length, id: &str) -> Result<Hole, Stop> {
    let (letter, grade) = match id {
        "e8" => (Letter::E, 8),
        "f7" => (Letter::F, 7),
        "g7" => (Letter::G, 7),
        "k7" => (Letter::K, 7),
        "m7" => (Letter::M, 7),
        "n7" => (Letter::N, 7),
        "p7" => (Letter::P, 7),
        _ => (Letter::H, 7),
    };
    let limits = FitClass::hole(letter, grade)
        .and_then(|class| Some((class, iso::limits(nominal, &class).ok()?)));
    let Some((class, limits)) = limits else {
        return Err(Stop::fault(
            "pin",
            Reason::NotDefined,
            "ISO 286 does not define this hole at this size",
            "choose another class",
        ));
    };
    Ok(Hole {
        limits: (limits.smallest(nominal), limits.largest(nominal)),
        says: format!("{class}, on the nominal size. The band is the smallest and largest hole."),
        source: &ISO,
    })
}

/// All holes that come into question, with the fit that each gives.
pub(super) fn tables(inp: &Inputs, a: &mut Answer, pin: Pin, taken: [&Hole; 2]) {
    if inp.quiet() {
        return;
    }
    let mut rows: Vec<(String, Hole)> = Vec::new();
    match pin {
        Pin::Inch(row, series) => {
            let [press, slip] = taken;
            rows.push((
                "holds, taken here".into(),
                Hole {
                    limits: press.limits,
                    says: String::new(),
                    source: press.source,
                },
            ));
            rows.push((
                "slips, taken here".into(),
                Hole {
                    limits: slip.limits,
                    says: String::new(),
                    source: slip.source,
                },
            ));
            if series == InchSeries::Standard
                && let Some((press, slip)) = practice(row.nominal_in)
                && inp.choice("metal") != "aluminium"
            {
                rows.push((
                    "holds, in aluminum".into(),
                    Hole {
                        limits: press,
                        says: String::new(),
                        source: &LIST,
                    },
                ));
                rows.push((
                    "slips, in aluminum".into(),
                    Hole {
                        limits: slip,
                        says: String::new(),
                        source: &LIST,
                    },
                ));
            }
        }
        Pin::M6(row) | Pin::H8(row) => {
            for id in ["p7", "n7", "m7", "k7", "h7", "g7", "f7", "e8"] {
                if let Ok(hole) = class(row.nominal(), id) {
                    rows.push((id.to_ascii_uppercase(), hole));
                }
            }
        }
    }
    let table = a.table(
        "holes",
        "Holes for this pin",
        &["hole", "min.", "max.", "tightest", "loosest", "fit"],
    );
    let mut sources: Vec<&'static Source> = Vec::new();
    for (name, hole) in rows {
        let band = pin::fit_band(pin.limits(), hole.limits);
        let fit = match band.character() {
            FitCharacter::Press => "press",
            FitCharacter::Transition => "transition",
            FitCharacter::Slip => "slip",
        };
        let size = |length: Length| Value::of(length).places(4, 3);
        let gap = |length: Length| Value::of(length).places(5, 4).signed();
        let chosen = taken.iter().any(|one| one.limits == hole.limits);
        table
            .row(vec![
                Value::words(name),
                size(hole.limits.0),
                size(hole.limits.1),
                gap(band.tightest),
                gap(band.loosest),
                Value::words(fit),
            ])
            .chosen(chosen);
        sources.push(hole.source);
    }
    table.note("On the diameter, hole minus pin: below zero is interference.");
    for source in sources {
        a.source(source);
    }
}
