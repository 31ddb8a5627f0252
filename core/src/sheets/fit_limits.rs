//! Between which sizes must hole and shaft lie for this fit, and which fit do measured parts make?

use crate::calls::fit::{FIT_CALL, FitCall, read};
use crate::fit::inch::{self, InchClass, SERIES};
use crate::fit::sources::*;
use crate::fit::{Band, FitClass, FitFault, KindOfFit, Letter, Limits, Member, common, iso};
use crate::quantity::units::{MICRON, THOU};
use crate::quantity::{Kind, Length};
use crate::sheet::*;

pub(super) static SHEET: Sheet = Sheet {
    id: "fit-limits",
    revision: 1,
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
        &[("size", "1 1/4 in"), ("fit", "RC4")],
    ],
    takes: &["fit"],
    finds: Some(finds),
    figure,
};

static FIELDS: &[Field] = &[
    Field::length("size", "Nominal size")
        .example("3/4 in")
        .hint("The same for hole and shaft.")
        .range_mm(0.01, 500.126, "the tables end at 500 mm and at 19.69 in"),
    Field::call("fit", "Fit", &FIT_CALL).example("H7/g6").hint(
        "Hole and shaft as H7/m6, one of them as H7, or an inch class as RC3. Capitals are holes.",
    ),
    Field::length("hole", "Hole as measured")
        .example("0.7504 in")
        .range_mm(0.001, 510.0, "near the nominal size")
        .measured()
        .monotonic()
        .optional(),
    Field::length("shaft", "Shaft as measured")
        .example("0.7496 in")
        .range_mm(0.001, 510.0, "near the nominal size")
        .measured()
        .monotonic()
        .optional(),
];

static RESULTS: &[Res] = &[
    Res::stepped("hole-most", "Hole, largest", Kind::Length),
    Res::stepped("hole-least", "Hole, smallest", Kind::Length),
    Res::stepped("shaft-most", "Shaft, largest", Kind::Length),
    Res::stepped("shaft-least", "Shaft, smallest", Kind::Length),
    Res::stepped("loosest", "Most clearance", Kind::Length),
    Res::stepped("tightest", "Least clearance", Kind::Length),
    Res::words("kind", "Kind of fit"),
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
pub(super) fn stop(size_field: &'static str, fit_field: &'static str, fault: FitFault) -> Stop {
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

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
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
    let mut a = inp.answer();
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
        let says = "On the diameter; a minus is interference.";
        a.line("loosest", band.max_clearance)
            .places(5, 4)
            .signed()
            .says(says);
        a.line("tightest", band.min_clearance)
            .places(5, 4)
            .signed()
            .says(says);
        a.words("kind", band.kind().text())
            .says(band_says(band.kind()));
    }
    checks(inp, &mut a, &found, measured);
    if !inp.quiet() {
        tell(inp, &mut a, size, call, &found, measured);
    }
    Ok(a)
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
                format!("{} too large for {name}", small(inp, over))
            } else if under > noise {
                format!("{} too small for {name}", small(inp, under))
            } else {
                format!("within {name}")
            };
            a.words(id, text);
        }
    }
}

/// A small length with its sign, in thou or micrometres.
fn small(inp: &Inputs, length: Length) -> String {
    Value::of(length)
        .units(&THOU, &MICRON)
        .places(2, 1)
        .signed()
        .text_with_unit(inp.system())
}

fn tell(
    inp: &Inputs,
    a: &mut Answer,
    size: Length,
    call: FitCall,
    found: &Found,
    measured: (Option<Length>, Option<Length>),
) {
    a.work(|w| {
        match call {
            FitCall::One(class) => iso_steps(w, size, &[class]),
            FitCall::Pair { hole, shaft } => iso_steps(w, size, &[hole, shaft]),
            FitCall::Inch(class) => inch_step(inp, w, class, found),
        }
        if let Some(band) = found.band {
            let (h, s) = (band.hole, band.shaft);
            let line = |name: &str, of: &str, x: Length, y: Length| {
                format!(
                    "{name} = {of} = {} − ({}) = {}",
                    small(inp, x),
                    small(inp, y),
                    small(inp, x - y)
                )
            };
            w.step(
                "Clearance",
                &[
                    line("most", "hole upper − shaft lower", h.upper, s.lower),
                    line("least", "hole lower − shaft upper", h.lower, s.upper),
                ],
                &FIT_TERMS,
            );
        }
    });
    let clearance = match measured {
        (Some(hole), Some(shaft)) => Some(hole - shaft),
        _ => None,
    };
    common_table(a, size, &inp.show_plain(size), call, clearance);
    a.draw(|| zones(inp, found));
    if let FitCall::Inch(class) = call
        && inch::fit(size, class).is_ok_and(|fit| fit.certainty == inch::Certainty::FromMemory)
    {
        a.note(
            "Before you work to it",
            "These limits are from memory of the standard, and agree with its grades. Check them.",
        );
    }
    if matches!(call, FitCall::Inch(_)) {
        a.note(
            "Two systems",
            "An inch class is not the inch form of an ISO fit: FN2 and H7/s6 differ.",
        );
    }
    if found
        .band
        .is_some_and(|band| band.kind() != KindOfFit::Clearance)
    {
        a.stop(
            "Before you press",
            "Support the hub square and full, stand clear of the line of force, wear eye protection. Hard pins and cast iron \
             break without warning; never strike them with a hammer.",
        );
    }
    a.note(
        "Limits",
        "They hold at 20 °C (68 °F): a part warm from the cut measures large.",
    );
}

/// The rule of ISO 286 with this class's numbers put in, micrometres.
fn iso_steps(w: &mut Work, size: Length, classes: &[FitClass]) {
    for class in classes {
        let (Ok(limits), Ok(width)) = (iso::limits(size, class), iso::width(size, class.grade))
        else {
            continue;
        };
        let um = |length: Length| Value::of(length).units(&MICRON, &MICRON).places(2, 2);
        let plus = |length: Length| trim(um(length).signed().text(crate::quantity::System::Metric));
        let plain = |length: Length| trim(um(length).text(crate::quantity::System::Metric));
        let (upper, lower) = (plus(limits.upper), plus(limits.lower));
        let it = plain(width);
        let grade = class.grade;
        let zone = if class.letter == Letter::Js {
            format!("± IT{grade}/2 = ± {it}/2: {upper} / {lower} µm")
        } else {
            match (class.member, class.letter <= Letter::H) {
                (Member::Shaft, true) => {
                    format!("es = {upper}; ei = es − IT{grade} = {upper} − {it} = {lower} µm")
                }
                (Member::Shaft, false) => {
                    format!("ei = {lower}; es = ei + IT{grade} = {lower} + {it} = {upper} µm")
                }
                (Member::Hole, true) => {
                    format!("EI = {lower}; ES = EI + IT{grade} = {lower} + {it} = {upper} µm")
                }
                (Member::Hole, false) => {
                    format!(
                        "ES = {}{upper}; EI = ES − IT{grade} = {upper} − {it} = {lower} µm",
                        delta(size, *class, limits, &plain)
                    )
                }
            }
        };
        w.step(
            format!("{class} at this size"),
            &[format!("IT{grade} = {it} µm"), zone],
            &ISO_286,
        );
    }
}

/// "−ei + Δ = −8 + 4 = " where that rule made ES; nothing where the standard sets ES by itself.
fn delta(
    size: Length,
    class: FitClass,
    limits: Limits,
    plain: &dyn Fn(Length) -> String,
) -> String {
    let Some(shaft) = FitClass::shaft(class.letter, 6) else {
        return String::new();
    };
    let Ok(ei) = iso::limits(size, &shaft).map(|limits| limits.lower) else {
        return String::new();
    };
    let delta = limits.upper + ei;
    let finer = u8::try_from(class.grade.number().saturating_sub(1))
        .ok()
        .and_then(crate::fit::Grade::of);
    let rule = match (
        iso::width(size, class.grade),
        finer.map(|finer| iso::width(size, finer)),
    ) {
        (Ok(own), Some(Ok(finer))) => own - finer,
        _ => return String::new(),
    };
    let same = |a: Length, b: Length| (a - b).abs() < Length::from_um(0.01);
    if same(delta, Length::ZERO) {
        format!("−ei = −{} = ", plain(ei))
    } else if same(delta, rule) {
        format!("−ei + Δ = −{} + {} = ", plain(ei), plain(delta))
    } else {
        String::from("(set by the standard) ")
    }
}

/// Without zeros after the point.
fn trim(text: String) -> String {
    if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    } else {
        text
    }
}

fn inch_step(inp: &Inputs, w: &mut Work, class: InchClass, found: &Found) {
    let part = |part: &Option<(String, Limits)>| {
        part.as_ref().map_or_else(String::new, |(name, limits)| {
            format!(
                "{name}: {} / {}",
                small(inp, limits.upper),
                small(inp, limits.lower)
            )
        })
    };
    w.step(
        format!("{class}, {}", inch::purpose(class.series)),
        &[part(&found.hole), part(&found.shaft)],
        b41_source(class.series),
    );
}

/// Usual fits at this size: loosest first, or nearest to the measured clearance first.
fn common_table(
    a: &mut Answer,
    size: Length,
    typed: &str,
    call: FitCall,
    measured: Option<Length>,
) {
    let inch_call = matches!(call, FitCall::Inch(_));
    let mut rows: Vec<(f64, String, &'static str, Band)> = Vec::new();
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
            let order = measured.map_or(-middle.mm(), |measured| (middle - measured).abs().mm());
            rows.push((order, text.to_owned(), purpose, band));
        }
    }
    rows.sort_by(|x, y| x.0.total_cmp(&y.0));
    rows.truncate(12);
    let title = if measured.is_some() {
        "Usual fits, nearest to the measured clearance first"
    } else {
        "Usual fits at this size, loosest first"
    };
    let own = call.call();
    let table = a.table("usual", title, &["Fit", "Most", "Least", "Kind", "For"]);
    for (_, text, purpose, band) in rows {
        let chosen = match measured {
            Some(clearance) => (0.0..=1.0).contains(&band.place(clearance)),
            None => text == own,
        };
        let cell = |length: Length| {
            Value::of(length)
                .units(&THOU, &MICRON)
                .places(2, 1)
                .signed()
        };
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

/// Tolerance zones about the line of the nominal size.
fn zones(inp: &Inputs, found: &Found) -> Drawing {
    let parts: Vec<&(String, Limits)> = found.hole.iter().chain(&found.shaft).collect();
    let far = parts
        .iter()
        .flat_map(|(_, l)| [l.upper.abs(), l.lower.abs()])
        .fold(Length::ZERO, Length::max);
    let scale = if far > Length::ZERO {
        40.0 / far.mm()
    } else {
        1.0
    };
    let mut drawing = Drawing::new(
        "Tolerance zones of hole and shaft about the line of the nominal size",
        false,
    );
    drawing.path(Pen::Centre, false, &[pt(0.0, 0.0), pt(120.0, 0.0)]);
    for (at, (name, limits)) in parts.into_iter().enumerate() {
        let left = 12.0 + 58.0 * (at as f64);
        let right = left + 34.0;
        let (up, low) = (limits.upper.mm() * scale, limits.lower.mm() * scale);
        let corners = [pt(left, low), pt(right, low), pt(right, up), pt(left, up)];
        drawing.hatch(&corners);
        drawing.path(Pen::Object, true, &corners);
        let middle = f64::midpoint(left, right);
        drawing.text(pt(middle, up + 5.0), small(inp, limits.upper));
        drawing.text(pt(middle, low - 5.0), small(inp, limits.lower));
        drawing.text(pt(middle, up + 11.0), name.clone());
    }
    drawing
}

fn finds() -> Vec<Find> {
    let usual = common::FITS.iter().map(|&(text, purpose)| Find {
        keys: vec![
            text.to_lowercase(),
            purpose.to_lowercase(),
            text.replace('/', " ").to_lowercase(),
        ],
        title: format!("Fit {text}"),
        aside: purpose.into(),
        entry: vec![("fit", text.to_owned())],
    });
    let classes = SERIES.into_iter().flat_map(|series| {
        (1..=inch::highest(series))
            .filter_map(move |number| InchClass::of(series, number))
            .map(|class| Find {
                keys: vec![class.to_string().to_lowercase()],
                title: format!("Inch fit {class}"),
                aside: inch::purpose(class.series).into(),
                entry: vec![("fit", class.to_string())],
            })
    });
    let fresh = classes.filter(|find| {
        !common::FITS
            .iter()
            .any(|(text, _)| find.keys.contains(&text.to_lowercase()))
    });
    usual.chain(fresh).collect()
}
