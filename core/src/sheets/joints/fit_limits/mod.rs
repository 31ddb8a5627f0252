//! Between which sizes must hole and shaft lie for this fit, and which fit do measured parts make?

pub(in crate::sheets) mod tell;
mod usual;
mod working;

use crate::calls::fit::{FIT_CALL, FitCall, read};
use crate::fit::{Band, FitFault, KindOfFit, Limits, Member, inch, iso};
use crate::quantity::units::{MICRON, THOU};
use crate::quantity::{Kind, Length, System};
use crate::sheet::*;

pub(in crate::sheets) static SHEET: Sheet = Sheet {
    id: "fit-limits",
    // 3: usual fits in order of their loosest pair; deviations of a size in mm in micrometres
    revision: 3,
    title: "Limits of a fit",
    question: "How large may the hole and the shaft be for this fit?",
    aside: "size, H7/m6 or RC3",
    words: &[
        "fit",
        "limits and fits",
        "tolerance",
        "tolerance class",
        "ISO 286",
        "ANSI B4.1",
        "clearance fit",
        "transition fit",
        "interference fit",
        "hole basis",
        "shaft basis",
        "bearing seat",
        "bushing",
        "IT grade",
    ],
    group: Group::Fit,
    fields: FIELDS,
    results: RESULTS,
    examples: &[
        &[("size", "3/4 in"), ("fit", "H7/g6")],
        &[
            ("size", "8 mm"),
            ("fit", "H7/m6"),
            ("hole", "8.011 mm"),
            ("shaft", "8.009 mm"),
        ],
        &[("size", "1-1/4 in"), ("fit", "RC4")],
        &[("size", "1 in"), ("fit", "FN2")],
    ],
    takes: &["fit"],
    finds: Some(usual::finds),
    figure,
};

static FIELDS: &[Field] = &[
    Field::length("size", "Nominal size")
        .example("3/4 in")
        .hint("The same for hole and shaft.")
        .range_mm(
            0.01,
            2540.0,
            "the tables end at 500 mm (ISO classes) and at 19.69 in (inch classes)",
        ),
    Field::call("fit", "Fit", &FIT_CALL).is(Thing::Fit).example("H7/g6").hint(
        "Hole and shaft as H7/m6, one of them as H7, or an inch class as RC3. Capitals are holes.",
    ),
    Field::length("hole", "Hole as measured")
        .example("0.7504 in")
        .range_mm(0.001, 510.0, "the range of sizes in the tables")
        .measured()
        .monotonic()
        .optional(),
    Field::length("shaft", "Shaft as measured")
        .example("0.7496 in")
        .range_mm(0.001, 510.0, "the range of sizes in the tables")
        .measured()
        .monotonic()
        .optional(),
];

static RESULTS: &[Res] = &[
    Res::stepped("hole-most", "Hole, largest", Kind::Length),
    Res::stepped("hole-least", "Hole, smallest", Kind::Length),
    Res::stepped("shaft-most", "Shaft, largest", Kind::Length),
    Res::stepped("shaft-least", "Shaft, smallest", Kind::Length),
    Res::stepped("loosest", "Max. clearance", Kind::Length),
    Res::stepped("tightest", "Min. clearance", Kind::Length),
    Res::words("kind", "Type of fit"),
    Res::of("clearance", "Clearance as measured", Kind::Length),
    Res::words("hole-check", "Hole as measured"),
    Res::words("shaft-check", "Shaft as measured"),
];

/// What the call comes to at this size.
struct Found {
    hole: Option<(String, Limits)>,
    shaft: Option<(String, Limits)>,
    band: Option<Band>,
}

fn find(size: Length, call: FitCall) -> Result<Found, FitFault> {
    Ok(match call {
        FitCall::One(class) => {
            let limits = Some((class.to_string(), iso::limits(size, &class)?));
            match class.member {
                Member::Hole => Found {
                    hole: limits,
                    shaft: None,
                    band: None,
                },
                Member::Shaft => Found {
                    hole: None,
                    shaft: limits,
                    band: None,
                },
            }
        }
        FitCall::Pair { hole, shaft } => {
            let band = iso::fit(size, &hole, &shaft)?;
            pair(band, hole.to_string(), shaft.to_string())
        }
        FitCall::Inch(class) => {
            let band = inch::fit(size, class)?.band;
            pair(band, format!("{class} hole"), format!("{class} shaft"))
        }
    })
}

fn pair(band: Band, hole: String, shaft: String) -> Found {
    Found {
        hole: Some((hole, band.hole)),
        shaft: Some((shaft, band.shaft)),
        band: Some(band),
    }
}

/// A fit's fault as the sheet's.
pub(in crate::sheets) fn stop(
    size_field: &'static str,
    fit_field: &'static str,
    fault: FitFault,
) -> Stop {
    let (field, reason, cure) = match fault {
        FitFault::SizeNotPositive => (
            size_field,
            Reason::OutOfRange,
            "type the size on the drawing",
        ),
        FitFault::IsoSizeAbove500 | FitFault::InchSizeAboveTable => (
            size_field,
            Reason::OutOfRange,
            "larger sizes are in the standard itself",
        ),
        FitFault::IsoNotDefined(..) | FitFault::InchNotDefined(_) => {
            (fit_field, Reason::NotDefined, "take another class")
        }
        FitFault::NeedsHoleAndShaft => (fit_field, Reason::Conflict, "type one of each"),
        FitFault::InchNoSource(_) => (
            fit_field,
            Reason::NoSource,
            "take them from the standard itself, or take another class",
        ),
    };
    Stop::fault(field, reason, fault.to_string(), cure)
}

fn figure(inp: &Inputs, a: &mut Answer) -> Result<(), Stop> {
    let size: Length = inp.get("size")?;
    let typed = inp.call("fit")?;
    let Ok(call) = read(typed) else {
        return Err(Stop::Missing("fit"));
    };
    let found = find(size, call).map_err(|fault| stop("size", "fit", fault))?;
    let measured = (inp.opt::<Length>("hole"), inp.opt::<Length>("shaft"));
    for (id, value) in [("hole", measured.0), ("shaft", measured.1)] {
        if value.is_some_and(|value| (value - size).abs() > size * 0.1 + Length::from_mm(0.5)) {
            return Err(inp.out_of_range(
                id,
                format!("this is far from {}", inp.show(size)),
                "measured and nominal size belong to one joint",
            ));
        }
    }
    for (ids, part) in [
        (["hole-most", "hole-least"], &found.hole),
        (["shaft-most", "shaft-least"], &found.shaft),
    ] {
        if let Some((name, limits)) = part {
            let says = [limits.upper, limits.lower]
                .map(|deviation| format!("{name}: {}", small(inp, deviation)));
            let [upper, lower] = says;
            a.line(ids[0], limits.largest(size))
                .places(5, 4)
                .says(upper);
            a.line(ids[1], limits.smallest(size))
                .places(5, 4)
                .says(lower);
        }
    }
    if let Some(band) = found.band {
        for (id, label, pair, clearance) in [
            (
                "loosest",
                "Loosest pair",
                "largest hole, smallest shaft",
                band.max_clearance,
            ),
            (
                "tightest",
                "Tightest pair",
                "smallest hole, largest shaft",
                band.min_clearance,
            ),
        ] {
            let line = a.line(id, clearance).places(5, 4).signed();
            if band.kind() == KindOfFit::Clearance {
                line.says("On the diameter.");
            } else {
                line.label(label).says(pair_says(inp, pair, clearance));
            }
        }
        a.words("kind", band.kind().text())
            .says(band_says(band.kind()));
    }
    checks(inp, a, &found, measured);
    if !inp.quiet() {
        tell::tell(inp, a, size, call, &found, measured);
    }
    Ok(())
}

/// Interference or clearance of one pair, as a plain figure.
fn pair_says(inp: &Inputs, pair: &str, clearance: Length) -> String {
    let what = if clearance < Length::ZERO {
        "Interference"
    } else {
        "Clearance"
    };
    format!(
        "{what} {}, on the diameter: {pair}. A minus is interference.",
        inp.show_to(clearance.abs(), 5, 4)
    )
}

fn band_says(kind: KindOfFit) -> &'static str {
    match kind {
        KindOfFit::Clearance => "Every pair has room, or at the limit none.",
        KindOfFit::Transition => "Some pairs have room, some must be pressed.",
        KindOfFit::Interference => "Every pair must be pressed or shrunk.",
    }
}

fn checks(inp: &Inputs, a: &mut Answer, found: &Found, measured: (Option<Length>, Option<Length>)) {
    if let (Some(hole), Some(shaft)) = measured {
        let clearance = hole - shaft;
        let line = a.line("clearance", clearance).places(5, 4).signed();
        line.says(match found.band {
            Some(band) if !(-1e-9..=1.0 + 1e-9).contains(&band.place(clearance)) => {
                "On the diameter; outside the band of this fit."
            }
            Some(_) => "On the diameter; within the band of this fit.",
            None => "On the diameter; a minus is interference.",
        });
    }
    let size: Length = inp.get("size").unwrap_or_default();
    for (id, part, value) in [
        ("hole-check", &found.hole, measured.0),
        ("shaft-check", &found.shaft, measured.1),
    ] {
        if let (Some((name, limits)), Some(value)) = (part, value) {
            let (over, under) = (value - limits.largest(size), limits.smallest(size) - value);
            let noise = Length::from_um(0.001);
            let text = if over > noise {
                format!("{} too large for {name}", bare(inp, over))
            } else if under > noise {
                format!("{} too small for {name}", bare(inp, under))
            } else {
                format!("within {name}")
            };
            a.words(id, text);
        }
    }
}

/// A small length without a sign.
fn bare(inp: &Inputs, length: Length) -> String {
    small(inp, length).trim_start_matches('+').to_owned()
}

/// A small length with its sign, in thou or micrometres.
fn small(inp: &Inputs, length: Length) -> String {
    thin(inp, length).text_with_unit(inp.system())
}

/// A small length as a value: in micrometres where the size was typed in millimetres, else as the system has it.
fn thin(inp: &Inputs, length: Length) -> Value {
    let metric = inp
        .unit("size")
        .is_some_and(|unit| unit.system == Some(System::Metric));
    let value = Value::of(length);
    if metric {
        value.units(&MICRON, &MICRON).places(1, 1)
    } else {
        value.units(&THOU, &MICRON).places(2, 1)
    }
    .signed()
}
