//! What are the limits of this thread: basic sizes, stress area, and each class for screw and hole?

mod draw;

pub(in crate::sheets) use draw::{drawing, pitch_words};

use crate::calls;
use crate::quantity::{Kind, Length, units, with_unit};
use crate::sheet::*;
use crate::standards::{threads::metric_threads, threads::unified};
use crate::thread::{
    Limits, ThreadCall, ThreadClass, ThreadSeries, engagement, external_minor_diameter, limits,
    minor_diameter, pitch_diameter, stress_area, unified_factor, unified_tolerance_2a,
};

pub(in crate::sheets) static SHEET: Sheet = Sheet {
    id: "thread",
    revision: 1,
    title: "Sizes and limits of a thread",
    question: "What are the limits of this thread?",
    aside: "from its call",
    words: &[
        "screw thread",
        "pitch diameter",
        "minor diameter",
        "2A",
        "2B",
        "3A",
        "3B",
        "6g",
        "6H",
        "UNC",
        "UNF",
        "UNS",
        "tpi",
        "threads per inch",
        "allowance",
        "metric",
    ],
    group: Group::Fit,
    fields: &[Field::call("thread", "Thread", &calls::thread::CALL)
        .is(Thing::Thread)
        .example("1/4-20")
        .hint("As 1/4-20, #10-32, 3/8-16 UNC-2B, M10 or M10x1.25-6H.")],
    results: &[
        Res::stepped("pitch-diameter", "Basic pitch diameter", Kind::Length),
        Res::stepped("major-diameter", "Basic major diameter", Kind::Length),
        Res::stepped(
            "minor-diameter",
            "Basic minor diameter of the hole",
            Kind::Length,
        ),
        Res::stepped(
            "external-minor",
            "Minor diameter of the screw",
            Kind::Length,
        ),
        Res::stepped("pitch", "Pitch", Kind::Pitch),
        Res::stepped("allowance", "Allowance of the screw", Kind::Length),
        Res::stepped("stress-area", "Tensile stress area", Kind::Area),
    ],
    examples: &[
        &[("thread", "1/4-20")],
        &[("thread", "M10x1.25-6H")],
        &[("thread", "#10-32 UNF-2B")],
        &[("thread", "3/8-16 UNC-3A")],
    ],
    takes: &["thread"],
    finds: Some(finds),
    figure,
};

pub(in crate::sheets) static UNIFIED: Source = Source::computed(
    "ASME B1.1-2003, Unified inch screw threads",
    "basic dimensions and tolerance formulas",
);
pub(in crate::sheets) static METRIC: Source = Source::from_memory(
    "ISO 724 and ISO 965-1:2013, ISO metric threads",
    "basic dimensions, tables of tolerances",
);
static AREA_INCH: Source = Source::computed("ASME B1.1-2003", "appendix B, tensile stress area");
static AREA_METRIC: Source = Source::computed("ISO 898-1:2013", "9.1.6, stress area");

/// The thread of a field of this kind.
pub(in crate::sheets) fn thread_of(inp: &Inputs, field: &'static str) -> Result<ThreadCall, Stop> {
    let text = inp.call(field)?;
    calls::thread::read(text).map_err(|_| {
        Stop::fault(
            field,
            Reason::Unreadable,
            "this is no thread",
            calls::thread::EXPECTED,
        )
    })
}

/// The source of a thread's sizes.
pub(in crate::sheets) fn source_of(thread: ThreadCall) -> &'static Source {
    if thread.series.is_metric() {
        &METRIC
    } else {
        &UNIFIED
    }
}

/// A length of a thread, with the digits that its standard has.
pub(in crate::sheets) fn size_of(thread: ThreadCall, size: Length) -> Value {
    Value::of(size).places(inch_places(thread), 3)
}

const fn inch_places(thread: ThreadCall) -> u8 {
    if thread.series.is_metric() { 5 } else { 4 }
}

fn figure(inp: &Inputs, a: &mut Answer) -> Result<(), Stop> {
    let thread = thread_of(inp, "thread")?;
    let (d2, d1, d3) = (
        pitch_diameter(thread),
        minor_diameter(thread),
        external_minor_diameter(thread),
    );
    let places = inch_places(thread);
    let metric = thread.series.is_metric();
    a.line("pitch-diameter", d2).places(places, 3).says(format!(
        "Of the basic form, 60\u{b0} included. {}.",
        thread.series.label()
    ));
    a.line("major-diameter", thread.major)
        .places(places, 3)
        .says("Over the crests; the nominal size.");
    a.line("minor-diameter", d1)
        .places(places, 3)
        .says("The tapped hole before the tolerance: D \u{2212} 1.0825 P.");
    a.line("external-minor", d3).places(places, 3).says(if metric {
        "Root of the screw, D \u{2212} 1.2269 P."
    } else {
        "Root of the screw, D \u{2212} 1.1908 P (2003 and later; charts to 1989 print D \u{2212} 1.2269 P)."
    });
    let pitch = a.line("pitch", thread.pitch);
    if metric {
        pitch.units(&units::PITCH_MM, &units::PITCH_MM).exact();
    } else {
        pitch.units(&units::TPI, &units::TPI).exact();
    }
    let usual = if metric {
        ThreadClass::G6
    } else {
        ThreadClass::A2
    };
    let class = thread
        .class
        .filter(|class| !class.is_internal())
        .unwrap_or(usual);
    if let Ok(Limits::External { allowance, .. }) = limits(thread, class) {
        a.line("allowance", allowance)
            .places(places, 3)
            .says(format!(
                "How far the largest screw of class {} stays under the basic size.",
                class.mark()
            ));
    }
    let area = stress_area(thread);
    // Small screws are printed to the same three figures as in the standard.
    let (inch, mm) = if area.in2() < 0.01 { (5, 3) } else { (4, 2) };
    a.line("stress-area", area)
        .places(inch, mm)
        .says(if metric {
            "\u{3c0}/4 (d \u{2212} 0.9382 P)\u{b2}."
        } else {
            "\u{3c0}/4 (D \u{2212} 0.9743 P)\u{b2}, for screws up to 100 ksi."
        });
    screws(a, thread);
    holes(a, thread);
    working(inp, a, thread);
    a.draw(|| {
        let title = format!(
            "{thread} in section: major diameter left, minor and pitch diameter right, pitch above"
        );
        drawing(title, thread, &[d1, d2], &|size| inp.num_to(size, 4, 3))
    });
    a.source(source_of(thread));
    a.note(
        "reject-part",
        "Before you reject a part",
        if metric {
            "Measure the pitch diameter over wires or with a thread micrometer; a nut that runs on is no gauge."
        } else {
            "Measure the pitch diameter over wires; printed tables keep an older rounding, 0.0001 in off at some sizes."
        },
    );
    Ok(())
}

fn classes(thread: ThreadCall) -> impl Iterator<Item = ThreadClass> {
    ThreadClass::ALL
        .into_iter()
        .filter(move |class| class.is_metric() == thread.series.is_metric())
}

fn screws(a: &mut Answer, thread: ThreadCall) {
    let value = |size| size_of(thread, size);
    let table = a.table(
        "screw-limits",
        "Limits of the screw",
        &[
            "class",
            "major, max.",
            "major, min.",
            "pitch dia., max.",
            "pitch dia., min.",
            "minor, max.",
            "allowance",
        ],
    );
    for class in classes(thread) {
        if let Ok(Limits::External {
            allowance,
            major,
            pitch,
            minor_most,
        }) = limits(thread, class)
        {
            let cells = [
                major.high, major.low, pitch.high, pitch.low, minor_most, allowance,
            ]
            .map(value);
            let mut row = vec![Value::words(class.mark())];
            row.extend(cells);
            table.row(row).chosen(thread.class == Some(class));
        }
    }
    table.note("Diameters, before plating. Allowance: how far the largest screw stays under the basic size.");
}

fn holes(a: &mut Answer, thread: ThreadCall) {
    let value = |size| size_of(thread, size);
    let table = a.table(
        "hole-limits",
        "Limits of the tapped hole",
        &[
            "class",
            "minor, min.",
            "minor, max.",
            "pitch dia., min.",
            "pitch dia., max.",
        ],
    );
    for class in classes(thread) {
        if let Ok(Limits::Internal { minor, pitch, .. }) = limits(thread, class) {
            let mut row = vec![Value::words(class.mark())];
            row.extend([minor.low, minor.high, pitch.low, pitch.high].map(value));
            table.row(row).chosen(thread.class == Some(class));
        }
    }
    table.note(if table.rows.is_empty() {
        "ISO 965-1 gives no grade 6 minor diameter for a pitch under 0.3 mm; class 5H is used there, and is not in our tables."
    } else {
        "Diameters. The major diameter of the hole is not less than the basic one."
    });
}

fn working(inp: &Inputs, a: &mut Answer, thread: ThreadCall) {
    let places = inch_places(thread);
    let num = |size: Length| inp.num_to(size, places, 3);
    let p = thread.pitch.length();
    a.work(|w| {
        let source = source_of(thread);
        if !thread.series.is_metric() {
            w.step(
                "Pitch",
                &[
                    "P = 1 \u{f7} threads per inch".into(),
                    format!("P = {}", inp.show_to(p, 5, 4)),
                ],
                source,
            );
        }
        w.step(
            "Basic pitch diameter",
            &[
                "d2 = D \u{2212} 0.649519 P".into(),
                format!(
                    "d2 = {} \u{2212} 0.649519 \u{d7} {} = {}",
                    num(thread.major),
                    inp.num_to(p, 5, 4),
                    inp.show_to(pitch_diameter(thread), places, 3)
                ),
            ],
            source,
        );
        w.step(
            "Basic minor diameter of the hole",
            &[
                "D1 = D \u{2212} 1.082532 P".into(),
                format!(
                    "D1 = {} \u{2212} 1.082532 \u{d7} {} = {}",
                    num(thread.major),
                    inp.num_to(p, 5, 4),
                    inp.show_to(minor_diameter(thread), places, 3)
                ),
            ],
            source,
        );
        let (factor, source) = if thread.series.is_metric() {
            ("0.9382", &AREA_METRIC)
        } else {
            ("0.9743", &AREA_INCH)
        };
        w.step(
            "Tensile stress area",
            &[
                format!("A = \u{3c0}/4 (D \u{2212} {factor} P)\u{b2}"),
                format!(
                    "A = 0.7854 \u{d7} ({} \u{2212} {factor} \u{d7} {})\u{b2} = {}",
                    num(thread.major),
                    inp.num_to(p, 5, 4),
                    inp.show_to(stress_area(thread), 5, 3)
                ),
            ],
            source,
        );
        if let Some(class) = thread.class.filter(|class| !class.is_metric()) {
            tolerance(w, thread, class);
        }
    });
}

/// The tolerance formula of the standard works in inches, whatever the screen shows.
fn tolerance(w: &mut Work, thread: ThreadCall, class: ThreadClass) {
    let inches = |size: Length, places| with_unit(size.mm(), &units::INCH, places);
    let base = unified_tolerance_2a(thread);
    let le = engagement(thread);
    let rule = match thread.series {
        ThreadSeries::Unc | ThreadSeries::Unf => "Le = D for UNC and UNF",
        _ if le == thread.major => "Le = D for this series",
        _ => "Le = 9 P for this series",
    };
    let factor = unified_factor(class);
    w.step(
        format!("Tolerance of the pitch diameter, class {}", class.mark()),
        &[
            "T(2A) = 0.0015 \u{221b}D + 0.0015 \u{221a}Le + 0.015 \u{221b}P\u{b2}, in inches"
                .into(),
            format!("{rule}: Le = {}", inches(le, 4)),
            format!("T(2A) = {}", inches(base, 6)),
            format!(
                "T({}) = {} \u{d7} T(2A) = {}",
                class.mark(),
                crate::notation::plain(factor, 3),
                inches(base * factor, 4)
            ),
        ],
        &UNIFIED,
    );
}

/// The usual threads, for the search box.
pub(in crate::sheets) fn finds() -> Vec<Find> {
    let usual =
        |thread: &ThreadCall| !matches!(thread.series, ThreadSeries::Un | ThreadSeries::Uns);
    let inch = unified::SIZES.iter().flat_map(ThreadCall::all_of_unified);
    let metric = metric_threads::SIZES
        .iter()
        .filter(|size| size.choice < 3)
        .flat_map(ThreadCall::all_of_metric);
    inch.chain(metric).filter(usual).map(find).collect()
}

fn find(thread: ThreadCall) -> Find {
    let short = thread.short();
    let mut keys = vec![
        short.to_ascii_lowercase(),
        thread.to_string().to_ascii_lowercase(),
    ];
    if let Some(bare) = short.strip_prefix('#') {
        keys.push(bare.to_owned());
    }
    if thread.series == ThreadSeries::MetricCoarse {
        keys.push(thread.size().to_ascii_lowercase());
    }
    let (unit, places) = if thread.series.is_metric() {
        (&units::MM, 3)
    } else {
        (&units::INCH, 4)
    };
    Find {
        keys,
        title: format!("Thread {thread}"),
        aside: format!(
            "pitch diameter {}",
            with_unit(pitch_diameter(thread).mm(), unit, places)
        ),
        entry: vec![("thread", thread.to_string())],
    }
}
