//! Which thread is this, from a measured diameter and a pitch by gauge or count? Ranked, with what tells them apart.

use super::thread::pitch_words;
use crate::quantity::units::{PITCH_MM, TPI};
use crate::quantity::{Count, Kind, Length, Pitch, Quantity};
use crate::sheet::*;
use crate::standards::threads::look_alike_threads::LookAlikeSeries;
use crate::thread::{Across, Candidate, RARE, Standard, identify};

pub(in crate::sheets) static SHEET: Sheet = Sheet {
    id: "name-thread",
    // 2: a thread whose limits hold the reading comes first; special counts, obsolete numbers and large NPT
    revision: 2,
    title: "Name a thread",
    question: "Which thread is this?",
    aside: "from a measured diameter and pitch",
    words: &[
        "identify",
        "unknown screw",
        "unknown bolt",
        "thread gauge",
        "whitworth",
        "BSW",
        "BSF",
        "BA",
        "BSP",
        "NPT",
        "ASME numbered screws",
        "what thread is this",
        "count threads",
        "tpi",
        "threads per inch",
        "thread pitch",
    ],
    group: Group::Identify,
    fields: &[
        Field::choice(
            "part",
            "Measured",
            &[
                choice("screw", "screw, over the crests"),
                choice("hole", "hole, the bore"),
            ],
        ),
        Field::length("diameter", "Measured diameter")
            .example("0.247 in")
            .hint("Over clean crests, or the bore of the hole.")
            .range_in(0.03, 6.8, "the tables run from 0.03 to 6-5/8 in")
            .measured(),
        Field::choice(
            "by",
            "Pitch from",
            &[
                choice("gauge", "a gauge"),
                choice("count", "counting threads"),
            ],
        ),
        Field::quantity("pitch", "Pitch", Kind::Pitch, &[&TPI, &PITCH_MM])
            .example("20 tpi")
            .hint("Threads per inch, or millimeters.")
            .range(0.15, 10.0, "the tables run from 0.19 to 6.35 mm")
            .when(&[when("by", &["gauge"])])
            .measured(),
        Field::count("threads", "Threads counted")
            .example("10")
            .hint("Gaps, not crests: from one crest to the tenth after it is 10.")
            .range(1.0, 200.0, "at most 200 are counted")
            .when(&[when("by", &["count"])]),
        Field::length("over", "Over this length")
            .example("1/2 in")
            .range_in(0.02, 12.0, "the count is taken over a foot at most")
            .when(&[when("by", &["count"])])
            .measured(),
    ],
    results: &[
        Res::words("name", "Most likely"),
        Res::stepped("size-min", "Its size, min.", Kind::Length),
        Res::stepped("size-max", "Its size, max.", Kind::Length),
        Res::stepped(
            "off-diameter",
            "Measured against basic diameter",
            Kind::Length,
        ),
        Res::of("pitch-measured", "Pitch", Kind::Pitch),
        Res::stepped("off-pitch", "Pitch off by", Kind::Share),
    ],
    examples: &[
        &[("diameter", "0.247 in"), ("pitch", "20 tpi")],
        &[
            ("diameter", "9.85 mm"),
            ("by", "count"),
            ("threads", "10"),
            ("over", "15 mm"),
        ],
        &[
            ("part", "hole"),
            ("diameter", "0.201 in"),
            ("pitch", "20 tpi"),
        ],
        &[("diameter", "0.214 in"), ("pitch", "24 tpi")],
        &[("diameter", "0.242 in"), ("pitch", "24 tpi")],
    ],
    takes: &[],
    finds: None,
    figure,
};

static SIZES: Source = Source::from_memory("ASME B1.1 and ISO 261", "standard series");
static OLDER: Source = Source::from_memory(
    "BS 84:1956, BS 93:1951, ISO 228-1, ASME B1.20.1, A.S.M.E. 1907",
    "basic sizes and limits of look-alikes",
);
static TRADE: Source =
    Source::practice("Ranking by the limits of size, then by fit to size and pitch");

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let across = if inp.choice("part") == "hole" {
        Across::Bore
    } else {
        Across::Screw
    };
    let measured: Length = inp.get("diameter")?;
    let pitch = if inp.choice("by") == "count" {
        let threads: Count = inp.get("threads")?;
        let over: Length = inp.get("over")?;
        Pitch::from_mm(over.mm() / threads.get())
    } else {
        inp.get("pitch")?
    };
    if pitch.mm() < 0.15 || pitch.mm() > 10.0 {
        return Err(inp.out_of_range(
            "over",
            "that is no pitch of a screw",
            "count again: gaps, not crests",
        ));
    }
    let found = identify(across, measured, pitch, 10);
    let Some(best) = found.first().copied() else {
        return Err(Stop::fault(
            "diameter",
            Reason::OutOfRange,
            "no thread in our tables is near this diameter and pitch",
            "measure again, over clean crests; or it is a special",
        ));
    };
    let mut a = inp.answer();
    a.words("name", best.standard.name()).says(fit_words(
        inp,
        across,
        measured,
        &best,
        found.get(1),
    ));
    if let Some((low, high)) = best.standard.limits(across) {
        let says = match across {
            Across::Screw => "Over the crests of a usual screw, up to the basic size.",
            Across::Bore => "Minor diameter of a usual tapped hole.",
        };
        a.line("size-min", low).says(says);
        a.line("size-max", high).says(says);
    }
    a.line("off-diameter", best.off_diameter)
        .signed()
        .says(match across {
            Across::Screw => "A screw is made a little under its basic size, and wears.",
            Across::Bore => "A bore is made a little over its basic size.",
        });
    let metric = is_metric(&best.standard);
    let unit = if metric { &PITCH_MM } else { &TPI };
    a.line("pitch-measured", pitch)
        .units(unit, unit)
        .places(if metric { 3 } else { 2 }, if metric { 3 } else { 2 });
    a.line("off-pitch", share_off(&best))
        .places(1, 1)
        .signed()
        .says("Of the basic pitch; plus where the measured one is coarser.");
    let table = a.table(
        "candidates",
        "What it may be, best first",
        &[
            "thread",
            "within limits",
            "min.",
            "max.",
            "off basic",
            "pitch",
            "pitch off",
            "angle",
            "standard",
        ],
    );
    for one in &found {
        let standard = &one.standard;
        let side = |end: Option<Length>| end.map_or_else(|| Value::words(""), Value::of);
        let limits = standard.limits(across);
        let row = table.row(vec![
            Value::words(standard.name()),
            Value::words(if one.inside { "yes" } else { "no" }),
            side(limits.map(|limits| limits.0)),
            side(limits.map(|limits| limits.1)),
            Value::of(one.off_diameter).signed(),
            Value::words(pitch_words(standard.pitch(), is_metric(standard))),
            Value::of(share_off(one)).places(1, 1).signed(),
            Value::of(standard.angle()).places(1, 1),
            Value::words(standard.source()),
        ]);
        row.chosen(one == &best);
        if let Standard::Thread(thread) = standard {
            row.opens("thread", vec![("thread", thread.to_string())]);
        }
    }
    table.note("Min. and max.: a usual part as measured here, a screw up to its basic size. Off: plus where the measured one is larger. Angle: included. Hold a gauge of each angle in the flanks against the light.");
    a.work(|w| {
        if inp.choice("by") == "count" {
            w.step(
                "Pitch from the count",
                &["P = length \u{f7} threads".into(), format!("P = {}", inp.show_to(pitch.length(), 5, 3))],
                &TRADE,
            );
        }
        w.step(
            "Room for the difference",
            &[
                "a screw: 0.09 \u{221b}P\u{b2} (inches, the loosest class) + 0.05 P worn, 0.02 P over; a bore the other way".into(),
                "pitch: 1.5%".into(),
                format!(
                    "diameter off {}, pitch off {}%",
                    inp.show_signed(best.off_diameter),
                    crate::quantity::signed(share_off(&best).base(), &crate::quantity::units::PERCENT, 1)
                ),
            ],
            &TRADE,
        );
    });
    a.draw(|| drawing(&best.standard, measured, across, &|size| inp.show(size)));
    cautions(&mut a, &found);
    a.source(&SIZES).source(&OLDER).source(&TRADE);
    Ok(a)
}

fn share_off(one: &Candidate) -> crate::quantity::Share {
    crate::quantity::Share::from_fraction(one.off_pitch / one.standard.pitch())
}

const fn is_metric(standard: &Standard) -> bool {
    match standard {
        Standard::Thread(thread) => thread.series.is_metric(),
        Standard::LookAlike(other) => matches!(other.series, LookAlikeSeries::Ba),
    }
}

fn fit_words(
    inp: &Inputs,
    across: Across,
    measured: Length,
    best: &Candidate,
    second: Option<&Candidate>,
) -> String {
    if !best.inside {
        let off = best.outside(across, measured);
        let why = if off > Length::ZERO {
            format!("The diameter is {} over its largest. ", inp.show(off))
        } else if off < Length::ZERO {
            format!(
                "The diameter is {} under its smallest. ",
                inp.show(off.abs())
            )
        } else {
            String::new()
        };
        return if best.misfit > 2.0 {
            format!(
                "{why}Nearest in our tables, but it does not fit well: measure again, or it is a special."
            )
        } else {
            format!(
                "{why}Nearest in our tables: worn, burred or plated it may be; else measure again."
            )
        };
    }
    let rare = |one: &Candidate| one.standard.rarity() >= RARE;
    match second.filter(|second| second.inside) {
        Some(second) if rare(second) && !rare(best) => format!(
            "Both figures lie within its limits. The rarer {} fits too.",
            second.standard.name()
        ),
        Some(second) => format!(
            "Hard to tell from {} by these two figures alone.",
            second.standard.name()
        ),
        None => "Both figures lie within its limits, and within those of no other in our tables."
            .to_owned(),
    }
}

fn cautions(a: &mut Answer, found: &[Candidate]) {
    let near = |one: &&Candidate| one.inside || one.misfit <= 1.0;
    let angle = |one: &Candidate| one.standard.angle().degrees();
    let angles: Vec<f64> = found.iter().filter(near).map(angle).collect();
    if angles
        .windows(2)
        .any(|pair| matches!(pair, [a, b] if (a - b).abs() > 1.0))
    {
        a.stop(
            "chase-thread",
            "Before you run a tap or die through it",
            "Threads of another angle (55\u{b0} or 47.5\u{b0} against 60\u{b0}) with nearly the same count start together and then bind or strip. Tell them apart with a gauge in the flanks first.",
        );
    }
    let taper = |one: &&Candidate| matches!(one.standard, Standard::LookAlike(other) if other.series == LookAlikeSeries::Npt);
    if found.iter().filter(near).any(|one| taper(&one)) {
        a.note(
            "pipe-thread",
            "Pipe thread",
            "NPT is tapered 1:16 on the diameter: measure at two places along it.",
        );
    }
    let old = |one: &Candidate| matches!(one.standard, Standard::LookAlike(other) if other.series == LookAlikeSeries::Asme1907);
    if found.first().is_some_and(old) {
        a.note("obsolete-thread", "Obsolete thread", "Taps and dies of this number are no longer stocked. Do not run a present-day tap or die of nearly that size over it: single-point the part, or fit both parts anew.");
    }
    a.note("trust-name", "Before you trust it", "Screw a part of known thread in by hand: it should run all the way without rocking or binding.");
}

fn drawing(
    standard: &Standard,
    measured: Length,
    across: Across,
    show: &dyn Fn(Length) -> String,
) -> Drawing {
    let p = standard.pitch().mm();
    let half_angle = standard.angle().radians() / 2.0;
    let depth = p / 2.0 / libm::tan(half_angle) * 0.72;
    let run = depth * libm::tan(half_angle);
    let crest = (p - 2.0 * run) / 2.0;
    let mut top = Vec::new();
    for turn in 0..4_u32 {
        let x = p * f64::from(turn);
        top.extend([
            pt(x, depth),
            pt(x + crest, depth),
            pt(x + crest + run, 0.0),
            pt(x + crest * 2.0 + run, 0.0),
        ]);
    }
    let end = p * 4.0;
    top.push(pt(end, depth));
    top.extend([pt(end, -p), pt(0.0, -p)]);
    let what = match across {
        Across::Screw => "over the crests",
        Across::Bore => "in the bore",
    };
    let mut drawing = Drawing::new(
        format!(
            "flanks of {}, {} measured {what}",
            standard.name(),
            show(measured)
        ),
        true,
    );
    drawing.path(Pen::Object, true, &top);
    drawing.dimension(
        pt(0.0, depth),
        pt(p, depth),
        1.5,
        show(standard.pitch().length()),
    );
    let degrees =
        crate::quantity::with_unit(standard.angle().base(), &crate::quantity::units::DEGREE, 1);
    drawing.text(pt(p * 1.5, -p * 0.5), format!("{degrees} included"));
    drawing
}
