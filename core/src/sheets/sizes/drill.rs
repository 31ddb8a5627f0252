//! What size is this drill, what lies beside it, and which taps does it serve?

use crate::calls;
use crate::quantity::{Kind, Share, units, with_unit};
use crate::record::DRILL_SETS;
use crate::sheet::*;
use crate::standards::holes::drill_sets;
use crate::standards::holes::drills::{self, Drill, DrillSeries};
use crate::thread::{TapKind, ThreadCall, ThreadSeries, percent_of_thread};

pub(in crate::sheets) static SHEET: Sheet = Sheet {
    id: "drill",
    // 2: no drill is marked as owned until a set is named
    revision: 2,
    title: "Size of a drill",
    question: "What size is this drill, and what does it tap?",
    aside: "number, letter, fraction, metric",
    words: &[
        "twist drill",
        "drill size",
        "number drill",
        "letter drill",
        "decimal equivalent",
        "drill sizes",
        "drill chart",
    ],
    group: Group::Identify,
    fields: &[
        Field::call("drill", "Drill", &calls::drill::CALL)
            .example("#7")
            .hint("As #7, F, 13/64, 5.1 mm or 0.201."),
        Field::choice("drills", "Drills owned", DRILL_SETS).from_shop(ShopItem::DrillSets, "usual"),
    ],
    results: &[
        Res::stepped("size", "Diameter", Kind::Length),
        Res::words("name", "Drill"),
    ],
    examples: &[
        &[("drill", "#7")],
        &[("drill", "5.1 mm"), ("drills", "metric")],
    ],
    takes: &["drill"],
    finds: Some(finds),
    figure,
};

static SIZES: Source = Source::read(
    "American standard number and letter drill sizes",
    "ASME B94.11M; checked against a second list",
);
static METRIC: Source = Source::from_memory("DIN 338 and DIN 345", "stock steps of metric drills");

fn figure(inp: &Inputs, a: &mut Answer) -> Result<(), Stop> {
    let text = inp.call("drill")?;
    let drill = calls::drill::read(text).map_err(|_| {
        Stop::fault(
            "drill",
            Reason::Unreadable,
            "this is no drill",
            calls::drill::EXPECTED,
        )
    })?;
    let set = inp.choice("drills");
    let line = a.line("size", drill.diameter);
    line.exact();
    if drill.series == DrillSeries::Fraction {
        line.places(6, 4);
    }
    line.says("Nominal. A drill cuts a little over its size.");
    a.words("name", drill.name());
    let near = a.table("near", "Nearest drills", &["drill", "size", "off"]);
    for one in drills::nearest(drill.diameter, 9) {
        near.row(vec![
            Value::words(one.name()),
            Value::of(one.diameter),
            Value::of(one.diameter - drill.diameter).signed(),
        ])
        .owned(drill_sets::holds(set, &one))
        .chosen(one == drill)
        .opens("drill", vec![("drill", one.name())]);
    }
    taps(a, drill);
    a.work(|w| {
        let size = drill.diameter.mm();
        let step = format!(
            "{} = {} = {}",
            drill.name(),
            with_unit(size, &units::INCH, 6),
            with_unit(size, &units::MM, 4)
        );
        w.step(
            "Both units",
            &["1 in = 25.4 mm exactly".into(), step],
            source_of(drill),
        );
    });
    a.draw(|| drawing(drill, &inp.show(drill.diameter)));
    a.note(
        "before-drilling",
        "Before you drill",
        "Measure across the lands with a micrometer: the mark on a shank wears off, and a lopsided point cuts over its size.",
    );
    a.source(source_of(drill));
    Ok(())
}

const fn source_of(drill: Drill) -> &'static Source {
    match drill.series {
        DrillSeries::Metric => &METRIC,
        _ => &SIZES,
    }
}

/// Coarse and fine threads that this drill leaves 55 to 85 % of, the nearest to 75 % first.
fn taps(a: &mut Answer, drill: Drill) {
    let usual = |thread: &ThreadCall| {
        matches!(
            thread.series,
            ThreadSeries::Unc
                | ThreadSeries::Unf
                | ThreadSeries::MetricCoarse
                | ThreadSeries::MetricFine
        )
    };
    let mut found: Vec<(ThreadCall, Share)> = ThreadCall::all()
        .iter()
        .copied()
        .filter(usual)
        .map(|thread| {
            (
                thread,
                percent_of_thread(thread, drill.diameter, TapKind::Cut),
            )
        })
        .filter(|(_, share)| (0.55..=0.85).contains(&share.fraction()))
        .collect();
    if found.is_empty() {
        return;
    }
    let off = |share: Share| (share.percent() - 75.0).abs();
    crate::order::sort_by(&mut found, |a, b| off(a.1).total_cmp(&off(b.1)));
    let table = a.table(
        "taps",
        "Threads that it taps",
        &["thread", "percent of thread"],
    );
    for (thread, share) in found.into_iter().take(8) {
        table
            .row(vec![Value::words(thread.to_string()), Value::of(share)])
            .opens("tap-drill", vec![("thread", thread.to_string())]);
    }
    table.note("Cut taps, 55 to 85% of 1.299 P, nearest to 75% first.");
}

fn drawing(drill: Drill, size: &str) -> Drawing {
    let d = drill.diameter.mm();
    let (half, long, tip) = (d / 2.0, d * 3.0, d * 0.3);
    let mut drawing = Drawing::new(
        format!("{} from the side, 118\u{b0} point", drill.name()),
        true,
    );
    drawing.path(
        Pen::Object,
        true,
        &[
            pt(0.0, half),
            pt(long, half),
            pt(long + tip, 0.0),
            pt(long, -half),
            pt(0.0, -half),
        ],
    );
    drawing.path(
        Pen::Centre,
        false,
        &[pt(-d * 0.2, 0.0), pt(long + tip + d * 0.2, 0.0)],
    );
    drawing.dimension(pt(0.0, -half), pt(0.0, half), 2.0, size);
    drawing
}

fn finds() -> Vec<Find> {
    drills::all()
        .iter()
        .copied()
        .filter(|drill| drill.diameter.mm() < 26.0)
        .map(|drill| {
            let size = drill.diameter.mm();
            let inches = with_unit(size, &units::INCH, 4);
            let mut keys = vec![
                drill.call().to_ascii_lowercase(),
                drill.name().to_ascii_lowercase(),
            ];
            if drill.series != DrillSeries::Metric {
                let digits = crate::quantity::decimal(size, &units::INCH, 4);
                let short = digits.trim_end_matches('0').trim_start_matches('0');
                keys.extend([
                    digits.trim_start_matches('0').to_owned(),
                    short.to_owned(),
                    digits.clone(),
                ]);
            }
            if drill.series == DrillSeries::Number {
                keys.push(format!("no {}", drill.code));
            }
            Find {
                keys,
                title: format!("Drill {}", drill.name()),
                aside: if drill.series == DrillSeries::Metric {
                    inches
                } else {
                    format!("{inches} \u{b7} {}", with_unit(size, &units::MM, 3))
                },
                entry: vec![("drill", drill.name())],
            }
        })
        .collect()
}
