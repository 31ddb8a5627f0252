//! Which usual fits stand near, and what finds a fit in the search box?

use super::thin;
use crate::calls::fit::{FitCall, read};
use crate::fit::inch::{self, InchClass, SERIES};
use crate::fit::sources::PREFERRED;
use crate::fit::{Band, common, iso};
use crate::quantity::Length;
use crate::sheet::*;

/// Usual fits at this size: loosest first, or nearest to the measured clearance first.
pub(super) fn table(
    inp: &Inputs,
    a: &mut Answer,
    size: Length,
    call: FitCall,
    measured: Option<Length>,
) {
    let typed = &inp.show_plain(size);
    let inch_call = matches!(call, FitCall::Inch(_));
    let mut rows: Vec<((f64, f64), String, &'static str, Band)> = Vec::new();
    for &(text, purpose) in common::FITS {
        let band = match read(text) {
            Ok(FitCall::Pair { hole, shaft }) if measured.is_some() || !inch_call => {
                iso::fit(size, &hole, &shaft).ok()
            }
            Ok(FitCall::Inch(class)) if measured.is_some() || inch_call => {
                inch::fit(size, class).ok().map(|fit| fit.band)
            }
            _ => None,
        };
        if let Some(band) = band {
            let middle = (band.max_clearance + band.min_clearance) / 2.0;
            // of two with one loosest pair the tighter comes later
            let order = measured.map_or(-band.max_clearance.um(), |measured| {
                (middle - measured).abs().um()
            });
            let then = -band.min_clearance.um();
            rows.push(((order, then), text.to_owned(), purpose, band));
        }
    }
    let noise = |um: f64| libm::round(um * 100.0);
    crate::order::sort_by(&mut rows, |x, y| {
        let (x, y) = (x.0, y.0);
        noise(x.0)
            .total_cmp(&noise(y.0))
            .then(noise(x.1).total_cmp(&noise(y.1)))
    });
    rows.truncate(12);
    let title = if measured.is_some() {
        "Usual fits, nearest to the measured clearance first"
    } else {
        "Usual fits at this size, loosest first"
    };
    let own = call.call();
    let table = a.table(
        "usual",
        title,
        &["fit", "max. clearance", "min. clearance", "type", "for"],
    );
    for (_, text, purpose, band) in rows {
        let chosen = match measured {
            Some(clearance) => (0.0..=1.0).contains(&band.place(clearance)),
            None => text == own,
        };
        let cell = |length: Length| thin(inp, length);
        table
            .row(vec![
                Value::words(text.clone()),
                cell(band.max_clearance),
                cell(band.min_clearance),
                Value::words(band.kind().text()),
                Value::words(purpose),
            ])
            .chosen(chosen)
            .opens(
                "fit-limits",
                vec![("size", typed.to_owned()), ("fit", text)],
            );
    }
    table.note(if measured.is_some() {
        "Marked: the measured clearance lies within the band of that fit. A minus is interference."
    } else {
        "On the diameter. A minus is interference."
    });
    a.source(&PREFERRED);
}

/// Rows for the search box.
pub(super) fn finds() -> Vec<Find> {
    let usual = common::FITS.iter().map(|&(text, purpose)| Find {
        keys: vec![
            text.to_ascii_lowercase(),
            purpose.to_ascii_lowercase(),
            text.replace('/', " ").to_ascii_lowercase(),
        ],
        title: format!("Fit {text}"),
        aside: purpose.into(),
        entry: vec![("fit", text.to_owned())],
    });
    let classes = SERIES.into_iter().flat_map(|series| {
        (1..=inch::highest(series))
            .filter_map(move |number| InchClass::of(series, number))
            .map(|class| Find {
                keys: vec![class.to_string().to_ascii_lowercase()],
                title: format!("Inch fit {class}"),
                aside: inch::purpose(class.series).into(),
                entry: vec![("fit", class.to_string())],
            })
    });
    let fresh = classes.filter(|find| {
        !common::FITS
            .iter()
            .any(|(text, _)| find.keys.contains(&text.to_ascii_lowercase()))
    });
    usual.chain(fresh).collect()
}
