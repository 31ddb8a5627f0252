//! How large must a hole be for a screw to pass: close, normal or loose, and which drill makes it?

use crate::calls;
use crate::quantity::{Kind, Length};
use crate::record::DRILL_SETS;
use crate::sheet::*;
use crate::standards::holes::clearance_holes::{self, ClearanceFit, ClearanceHole};
use crate::standards::holes::drill_sets;
use crate::standards::holes::drills::{self, Drill};

pub(in crate::sheets) static SHEET: Sheet = Sheet {
    id: "clearance-hole",
    // 2: a metric screw takes metric drills until a set is named
    revision: 2,
    title: "Drill a clearance hole",
    question: "How large a hole lets this screw through?",
    aside: "close, normal or loose",
    words: &["clearance", "through hole", "bolt hole", "screw hole"],
    group: Group::Fit,
    fields: &[
        Field::call("screw", "Screw", &calls::thread::SIZE)
            .example("1/4")
            .hint("Its size: #10, 3/8 or M8; a whole call serves too."),
        Field::choice(
            "fit",
            "Fit",
            &[
                choice("normal", "normal"),
                choice("close", "close"),
                choice("loose", "loose"),
            ],
        ),
        Field::choice("drills", "Drills owned", DRILL_SETS).from_shop(ShopItem::DrillSets, "usual"),
    ],
    results: &[
        Res::stepped("hole", "Smallest hole", Kind::Length),
        Res::words("drill", "Drill"),
        Res::stepped("drill-size", "Size of that drill", Kind::Length),
        Res::stepped("clearance", "Clearance on the diameter", Kind::Length),
    ],
    examples: &[
        &[("screw", "1/4")],
        &[("screw", "M8"), ("fit", "close"), ("drills", "metric")],
    ],
    takes: &["screw"],
    finds: None,
    figure,
};

static INCH: Source = Source::from_memory(
    "ASME B18.2.8-1999 (R2017), clearance holes",
    "table 1, smallest hole",
);
static METRIC: Source = Source::from_memory(
    "ISO 273:1979, clearance holes",
    "table: fine, medium, coarse",
);

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let text = inp.call("screw")?;
    let screw = calls::thread::size(text).map_err(|_| {
        Stop::fault(
            "screw",
            Reason::Unreadable,
            "this is no screw size",
            "type #10, 3/8 or M8",
        )
    })?;
    let fit = match inp.choice("fit") {
        "close" => ClearanceFit::Close,
        "loose" => ClearanceFit::Loose,
        _ => ClearanceFit::Normal,
    };
    let set = inp.choice("drills");
    let row = if screw.metric {
        clearance_holes::metric(screw.major)
    } else {
        clearance_holes::inch(screw.major)
    };
    let Some(row) = row else {
        let (standard, near) = if screw.metric {
            ("ISO 273", "M1 to M68 of its own sizes")
        } else {
            ("ASME B18.2.8", "No. 0 to 1-1/2 in, without No. 12 and 9/16")
        };
        return Err(Stop::fault(
            "screw",
            Reason::NotDefined,
            format!("{standard} has no hole for {}", screw.name),
            format!("it has {near}"),
        ));
    };
    let size = |fit| hole_of(row, fit, screw.metric);
    let hole = size(fit);
    let source = if screw.metric { &METRIC } else { &INCH };
    let owned = at_least(hole, &drill_sets::drills(set, screw.metric));
    let all = at_least(hole, drills::all());
    let near = |drill: &&Drill| drill.diameter - hole <= room(hole);
    let in_set = owned.first().filter(near).copied();
    let Some(pick) = in_set.or_else(|| all.first().copied()) else {
        return Err(inp.out_of_range("screw", "no standard drill is that large", "bore the hole"));
    };
    let mut a = inp.answer();
    a.line("hole", hole).exact().says(if screw.metric {
        "Smallest hole of ISO 273; its tolerance goes upward."
    } else {
        "Smallest hole of ASME B18.2.8; its tolerance goes upward."
    });
    let place = drill_sets::place(set, screw.metric);
    let under = hole - pick.diameter;
    let mut says = if in_set.is_some() {
        format!("Smallest {place} that serves")
    } else {
        format!("No drill {place} comes near; this is the smallest standard drill that serves")
    };
    if under > Length::ZERO {
        says.push_str(&format!(
            ", {} under the hole of the table: a drill cuts a little over its size",
            inp.show(under)
        ));
    }
    says.push('.');
    a.words("drill", pick.name()).says(says);
    a.line("drill-size", pick.diameter).exact();
    a.line("clearance", hole - screw.major)
        .says("Hole minus screw, on the diameter.");
    let fits = a.table(
        "fits",
        "The three fits",
        &["fit", "smallest hole", "clearance"],
    );
    for (one, name) in [
        (
            ClearanceFit::Close,
            if screw.metric {
                "close (fine)"
            } else {
                "close"
            },
        ),
        (
            ClearanceFit::Normal,
            if screw.metric {
                "normal (medium)"
            } else {
                "normal"
            },
        ),
        (
            ClearanceFit::Loose,
            if screw.metric {
                "loose (coarse)"
            } else {
                "loose"
            },
        ),
    ] {
        let hole = size(one);
        fits.row(vec![
            Value::words(name),
            Value::of(hole),
            Value::of(hole - screw.major),
        ])
        .chosen(one == fit);
    }
    let table = a.table(
        "drills",
        "Drills that serve, smallest first",
        &["drill", "size", "over the hole"],
    );
    let mut rows: Vec<Drill> = owned.into_iter().take(4).collect();
    rows.extend(all.into_iter().take(6));
    crate::order::sort_by(&mut rows, |a, b| {
        a.diameter
            .mm()
            .total_cmp(&b.diameter.mm())
            .then(a.series.cmp(&b.series))
    });
    rows.dedup();
    for one in rows {
        table
            .row(vec![
                Value::words(one.name()),
                Value::of(one.diameter),
                Value::of(one.diameter - hole).signed(),
            ])
            .owned(drill_sets::holds(set, &one))
            .chosen(one == pick)
            .opens("drill", vec![("drill", one.name())]);
    }
    table.note("A drill up to 0.0005 in under the hole of the table counts: it cuts a little over its size.");
    a.work(|w| {
        w.step(
            "Clearance",
            &[
                "c = hole \u{2212} screw".into(),
                format!(
                    "c = {} \u{2212} {} = {}",
                    inp.num(hole),
                    inp.num(screw.major),
                    inp.show(hole - screw.major)
                ),
            ],
            source,
        );
    });
    a.draw(|| drawing(screw.major, hole, &|size| inp.show(size)));
    a.note(
        "before-drilling",
        "Before you drill",
        "Break the edge under the screw head: a close hole with a burr holds the head off its seat.",
    );
    a.source(source);
    Ok(a)
}

fn hole_of(row: &ClearanceHole, fit: ClearanceFit, metric: bool) -> Length {
    if metric {
        Length::from_mm(row.of(fit))
    } else {
        Length::from_inches(row.of(fit))
    }
}

/// The drills that are not under a hole by more than half a thou: what a drill cuts over its size makes that good.
fn at_least(hole: Length, drills: &[Drill]) -> Vec<Drill> {
    let least = hole - Length::from_inches(0.00051);
    drills
        .iter()
        .copied()
        .filter(|drill| drill.diameter >= least)
        .collect()
}

/// How far over the hole a drill of the set may be and still serve.
fn room(hole: Length) -> Length {
    Length::from_inches(0.010).max(hole * 0.04)
}

fn drawing(screw: Length, hole: Length, show: &dyn Fn(Length) -> String) -> Drawing {
    let (s, h) = (screw.mm() / 2.0, hole.mm() / 2.0);
    let mut drawing = Drawing::new("screw in its hole, seen along the axis", true);
    drawing.circle(Pen::Object, pt(0.0, 0.0), h);
    drawing.circle(Pen::Mark, pt(0.0, 0.0), s);
    let cross = h * 1.25;
    drawing.path(Pen::Centre, false, &[pt(-cross, 0.0), pt(cross, 0.0)]);
    drawing.path(Pen::Centre, false, &[pt(0.0, -cross), pt(0.0, cross)]);
    drawing.dimension(pt(-h, -h), pt(h, -h), -2.0, show(hole));
    drawing.dimension(pt(-s, h), pt(s, h), 2.0, show(screw));
    drawing
}
