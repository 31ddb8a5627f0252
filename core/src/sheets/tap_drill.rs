//! Which drill before this tap? The drills owned, ranked by how near they come to the percent of thread that is wanted.

use super::thread::{drawing, source_of, thread_of};
use crate::calls;
use crate::quantity::{Kind, Length, Share};
use crate::record::DRILL_SETS;
use crate::sheet::*;
use crate::standards::drill_sets;
use crate::standards::drills::{self, Drill, DrillSeries};
use crate::thread::{
    Between, Limits, TapDrill, TapKind, ThreadCall, ThreadClass, ThreadSeries, hole_for, limits,
    rank,
};

pub(super) static SHEET: Sheet = Sheet {
    id: "tap-drill",
    revision: 1,
    title: "Pick a tap drill",
    question: "Which drill before this tap?",
    aside: "from the drills owned",
    words: &[
        "tap",
        "tapping",
        "tap drill",
        "tapped hole",
        "percent of thread",
        "form tap",
    ],
    group: Group::Fit,
    fields: &[
        Field::call("thread", "Thread", &calls::thread::CALL)
            .example("1/4-20")
            .hint("As 1/4-20, #10-32, M10 or M10x1.25."),
        Field::choice(
            "tap",
            "Tap",
            &[choice("cut", "cuts"), choice("form", "forms, no chips")],
        ),
        Field::percent("share", "Thread wanted")
            .example("75 pct")
            .preset("75 pct")
            .hint("Of the full depth, 1.299 P on the diameter.")
            .range(
                0.3,
                1.0,
                "under 30 % strips, over 100 % leaves no room for the tap",
            ),
        Field::choice("drills", "Drills owned", DRILL_SETS)
            .from_shop(ShopItem::DrillSets, "all-inch"),
    ],
    results: &[
        Res::words("drill", "Drill"),
        Res::stepped("drill-size", "Size of that drill", Kind::Length),
        Res::stepped("thread-left", "Thread that it leaves", Kind::Share),
        Res::of("hole", "Hole for the thread wanted", Kind::Length),
        Res::stepped("bore-least", "Least bore", Kind::Length),
        Res::stepped("bore-most", "Greatest bore", Kind::Length),
    ],
    examples: &[
        &[("thread", "1/4-20")],
        &[("thread", "M10"), ("drills", "metric")],
        &[("thread", "3/8-16"), ("tap", "form"), ("share", "65 pct")],
    ],
    takes: &["thread"],
    finds: Some(finds),
    figure,
};

pub(super) static CUT: Source = Source::read(
    "Machinery's Handbook, 31st ed. (2020)",
    "p. 2155, table 2: percentage of thread on 1.299 P",
);
pub(super) static FORM: Source = Source::read(
    "Tool catalogue, form taps, inch",
    "p. 783: hole = D \u{2212} 0.0068 \u{d7} % \u{f7} n",
);
static TRADE: Source = Source::practice("Tapping in the home shop");

fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let thread = thread_of(inp, "thread")?;
    let tap = if inp.choice("tap") == "form" {
        TapKind::Form
    } else {
        TapKind::Cut
    };
    let wanted: Share = inp.get("share")?;
    let set = inp.choice("drills");
    let hole = hole_for(thread, wanted, tap);
    if hole <= Length::ZERO {
        return Err(inp.out_of_range(
            "share",
            "no hole leaves that much thread",
            "ask for less thread",
        ));
    }
    let owned = rank(thread, wanted, tap, &drill_sets::drills(set), 6);
    let all = rank(thread, wanted, tap, drills::all(), 8);
    let close = |one: &&TapDrill| (one.share - wanted).abs() <= Share::from_percent(12.0);
    let in_set = owned.first().filter(close).copied();
    let same_kind =
        |one: &&TapDrill| (one.drill.series == DrillSeries::Metric) == (set == "metric");
    let fallback = all
        .iter()
        .filter(close)
        .find(same_kind)
        .or(all.first())
        .copied();
    let pick = in_set.or(fallback);
    let bore = bore_limits(thread);
    let mut a = inp.answer();
    if let Some(pick) = pick {
        a.words("drill", pick.drill.name()).says(if in_set.is_some() {
            "Nearest in your set to the thread wanted."
        } else {
            "None in your set comes within 12 % of the thread wanted; this is the nearest standard drill."
        });
        a.line("drill-size", pick.drill.diameter).exact();
        a.line("thread-left", pick.share).says(basis(tap));
    } else {
        a.words("drill", "none: bore the hole")
            .says("No standard drill leaves a thread here.");
    }
    a.line("hole", hole).says(format!(
        "For {} of thread. {}",
        inp.show(wanted),
        basis(tap)
    ));
    if let Some((bore, class)) = bore {
        let says = format!("Minor diameter of class {}, after tapping.", class.mark());
        a.line("bore-least", bore.low).says(says.clone());
        a.line("bore-most", bore.high).says(says);
    }
    table(
        &mut a,
        set,
        pick,
        &owned,
        &all,
        bore.filter(|_| tap == TapKind::Cut).map(|found| found.0),
    );
    working(inp, &mut a, thread, tap, wanted, pick);
    a.draw(|| {
        let size = pick.map_or(hole, |pick| pick.drill.diameter);
        let title =
            format!("{thread} in section: major diameter left, drilled hole right, pitch above");
        drawing(title, thread, &[size], &|size| inp.num_to(size, 4, 3))
    });
    cautions(&mut a, tap, pick);
    a.source(source_of(thread))
        .source(if tap == TapKind::Cut { &CUT } else { &FORM })
        .source(&TRADE);
    Ok(a)
}

fn basis(tap: TapKind) -> &'static str {
    match tap {
        TapKind::Cut => {
            "100 % is 1.299 P off the diameter (depth 0.6495 P); on 1.0825 P the figure is 1.2 times larger."
        }
        TapKind::Form => "Form taps: 100 % is 0.68 P off the diameter.",
    }
}

fn bore_limits(thread: ThreadCall) -> Option<(Between, ThreadClass)> {
    let usual = if thread.series.is_metric() {
        ThreadClass::H6
    } else {
        ThreadClass::B2
    };
    let class = thread
        .class
        .filter(|class| class.is_internal())
        .unwrap_or(usual);
    match limits(thread, class) {
        Ok(Limits::Internal { minor, .. }) => Some((minor, class)),
        _ => None,
    }
}

/// Owned and other drills in one list, nearest first; at least the best owned ones are in it.
fn table(
    a: &mut Answer,
    set: &str,
    pick: Option<TapDrill>,
    owned: &[TapDrill],
    all: &[TapDrill],
    bore: Option<Between>,
) {
    let mut rows: Vec<TapDrill> = owned.to_vec();
    rows.extend(
        all.iter()
            .filter(|one| !owned.iter().any(|mine| mine.drill == one.drill)),
    );
    crate::order::sort_by(&mut rows, |a, b| {
        a.off
            .abs()
            .mm()
            .total_cmp(&b.off.abs().mm())
            .then(a.drill.series.cmp(&b.drill.series))
    });
    rows.truncate(12);
    if rows.is_empty() {
        return;
    }
    let table = a.table(
        "drills",
        "Drills, nearest first",
        &["drill", "size", "off the hole", "thread", "bore"],
    );
    for one in rows {
        let size = one.drill.diameter;
        let fits = match bore {
            None => "",
            Some(bore) if size < bore.low => "under",
            Some(bore) if size > bore.high => "over",
            Some(_) => "within",
        };
        let cells = vec![
            Value::words(one.drill.call()),
            Value::of(size),
            Value::of(one.off).signed(),
            Value::of(one.share),
            Value::words(fits),
        ];
        table
            .row(cells)
            .owned(drill_sets::holds(set, &one.drill))
            .chosen(pick.is_some_and(|pick| one.drill == pick.drill))
            .opens("drill", vec![("drill", one.drill.name())]);
    }
    table.note(if bore.is_some() {
        "Bore: the drill against the least and greatest minor diameter. A drill cuts a little over its size."
    } else {
        "A drill cuts a little over its size."
    });
}

fn working(
    inp: &Inputs,
    a: &mut Answer,
    thread: ThreadCall,
    tap: TapKind,
    wanted: Share,
    pick: Option<TapDrill>,
) {
    let (factor, source) = match tap {
        TapKind::Cut => ("1.299038", &CUT),
        TapKind::Form => ("0.68", &FORM),
    };
    let p = inp.num_to(thread.pitch.length(), 5, 4);
    let d = inp.num_to(thread.major, 4, 3);
    a.work(|w| {
        w.step(
            "Hole for the thread wanted",
            &[
                format!("d = D \u{2212} {factor} P \u{d7} % \u{f7} 100"),
                format!(
                    "d = {d} \u{2212} {factor} \u{d7} {p} \u{d7} {} = {}",
                    calls::notation::plain(wanted.fraction(), 4),
                    inp.show(hole_for(thread, wanted, tap))
                ),
            ],
            source,
        );
        let Some(pick) = pick else { return };
        w.step(
            "Thread that the drill leaves",
            &[
                format!("% = 100 (D \u{2212} d) \u{f7} ({factor} P)"),
                format!(
                    "% = 100 \u{d7} ({d} \u{2212} {}) \u{f7} ({factor} \u{d7} {p}) = {}",
                    inp.num(pick.drill.diameter),
                    inp.show(pick.share)
                ),
            ],
            source,
        );
    });
}

fn cautions(a: &mut Answer, tap: TapKind, pick: Option<TapDrill>) {
    a.stop(
        "trial-hole",
        "Before you drill",
        "Check the drill with a micrometer and cut a trial hole in scrap: a hole that came out too large can't be undone.",
    );
    if tap == TapKind::Form {
        a.note("form-tap", "Before you form", "Form taps need metal that flows: soft steel, aluminium, brass that bends. They break in cast iron, which must be cut.");
    } else if pick.is_some_and(|pick| pick.share > Share::from_percent(80.0)) {
        a.note("much-thread", "Before you tap", "Over about 80 % of thread the tap turns hard and small taps break; the thread gains little strength.");
    } else if pick.is_some_and(|pick| pick.share < Share::from_percent(55.0)) {
        a.note("little-thread", "Before you tap", "Under about 55 % the thread is shallow. It serves in tough metal and deep holes, not in cast iron or aluminium under load.");
    }
}

fn finds() -> Vec<Find> {
    let all = drills::all();
    let mut finds = super::thread::finds();
    finds.retain_mut(|find| {
        let thread = find
            .entry
            .first()
            .and_then(|(_, call)| calls::thread::read(call).ok());
        let Some(thread) = thread.filter(|thread| thread.series != ThreadSeries::Unef) else {
            return false;
        };
        let hole = hole_for(thread, Share::from_percent(75.0), TapKind::Cut);
        let off = |drill: &&Drill| (drill.diameter - hole).abs().mm();
        let Some(best) = all.iter().min_by(|a, b| off(a).total_cmp(&off(b))) else {
            return false;
        };
        find.title = format!("Tap drill for {thread}");
        find.aside = format!("nearest to 75 %: {}", best.name());
        true
    });
    finds
}
