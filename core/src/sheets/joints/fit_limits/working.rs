//! How do the limits follow from the tables, with this entry's numbers put in?

use super::{Found, small};
use crate::calls::fit::FitCall;
use crate::fit::inch::{self, InchClass};
use crate::fit::sources::{FIT_TERMS, ISO_286, b41_source};
use crate::fit::{FitClass, Grade, Letter, Limits, Member, iso};
use crate::quantity::units::MICRON;
use crate::quantity::{Length, System};
use crate::sheet::*;

/// The working.
pub(super) fn steps(inp: &Inputs, w: &mut Work, size: Length, call: FitCall, found: &Found) {
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
                line("loosest", "hole upper − shaft lower", h.upper, s.lower),
                line("tightest", "hole lower − shaft upper", h.lower, s.upper),
            ],
            &FIT_TERMS,
        );
    }
}
/// The rule of ISO 286 with this class's numbers put in, micrometres.
fn iso_steps(w: &mut Work, size: Length, classes: &[FitClass]) {
    for class in classes {
        let (Ok(limits), Ok(width)) = (iso::limits(size, class), iso::width(size, class.grade))
        else {
            continue;
        };
        let um = |length: Length| Value::of(length).units(&MICRON, &MICRON).places(2, 2);
        let plus = |length: Length| trim(um(length).signed().text(System::Metric));
        let plain = |length: Length| trim(um(length).text(System::Metric));
        let (upper, lower) = (plus(limits.upper), plus(limits.lower));
        let it = plain(width);
        let grade = class.grade;
        let zone = if class.letter == Letter::Js {
            format!("±IT{grade}/2 = ±{it}/2: {upper} / {lower} µm")
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
        .and_then(Grade::of);
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
