//! Which drill before this tap? The drills owned, ranked by how near they come to the percent of thread that is wanted.

mod hand;
mod say;

use super::thread::{drawing, source_of, thread_of};
use crate::calls;
use crate::quantity::{Kind, Length, Share};
use crate::record::DRILL_SETS;
use crate::sheet::*;
use crate::standards::holes::drill_sets;
use crate::standards::holes::drills;
use crate::thread::{
    Between, Bore, TapDrill, TapKind, ThreadCall, ThreadSeries, hole_for, minor_limits, pick_drill,
    rank,
};

pub(in crate::sheets) static SHEET: Sheet = Sheet {
    id: "tap-drill",
    // 2: a metric thread takes metric drills until a set is named; a drill within the minor diameter's limits comes first
    revision: 2,
    title: "Pick a tap drill",
    question: "Which drill before this tap?",
    aside: "from the drills owned",
    words: &[
        "tap",
        "tapping",
        "tap drill",
        "tapped hole",
        "percent of thread",
        "thread engagement",
        "drill in hand",
        "form tap",
    ],
    group: Group::Fit,
    fields: &[
        Field::call("thread", "Thread", &calls::thread::CALL)
            .is(Thing::Thread)
            .example("1/4-20")
            .hint("As 1/4-20, #10-32, M10 or M10x1.25."),
        Field::choice(
            "tap",
            "Tap",
            &[choice("cut", "cuts"), choice("form", "forms, no chips")],
        ),
        Field::percent("share", "Percent of thread wanted")
            .example("75%")
            .preset("75 pct") // words: as a link writes it
            .hint("Of the full depth, 1.299 P on the diameter.")
            .range(
                0.3,
                1.0,
                "under 30% the thread strips, over 100% leaves no room for the tap",
            ),
        Field::choice("drills", "Drills owned", DRILL_SETS).from_shop(ShopItem::DrillSets, "usual"),
        Field::call("hand", "Drill in hand", &calls::drill::CALL)
            .seldom()
            .example("5 mm")
            .hint("For what percent of thread does this one serve?")
            .optional(),
    ],
    results: &[
        Res::words("drill", "Drill"),
        Res::stepped("drill-size", "Size of that drill", Kind::Length),
        Res::stepped(
            "thread-left",
            "Percent of thread with this drill",
            Kind::Share,
        ),
        Res::stepped(
            "hand-share",
            "Percent of thread with the drill in hand",
            Kind::Share,
        ),
        Res::words("hand-says", "Drill in hand"),
        Res::of("hole", "Hole for the percent wanted", Kind::Length),
        Res::stepped("bore-least", "Minor diameter, min.", Kind::Length),
        Res::stepped("bore-most", "Minor diameter, max.", Kind::Length),
    ],
    examples: &[
        &[("thread", "1/4-20")],
        &[("thread", "M10"), ("drills", "metric")],
        &[("thread", "3/8-16"), ("tap", "form"), ("share", "65 pct")], // words: as a link writes it
        &[("thread", "M6"), ("hand", "5 mm")],
        &[("thread", "9/16-18"), ("hand", "1/2")],
    ],
    takes: &["thread"],
    finds: Some(finds),
    figure,
};

pub(in crate::sheets) static CUT: Source = Source::read(
    "Machinery's Handbook, 31st ed. (2020)",
    "p. 2155, table 2: percentage of thread on 1.299 P",
);
pub(in crate::sheets) static FORM: Source = Source::read(
    "Tool catalogue, form taps, inch",
    "p. 783: hole = D \u{2212} 0.0068 \u{d7} % \u{f7} n",
);
static TRADE: Source = Source::practice("Tapping in the home shop");

fn figure(inp: &Inputs, a: &mut Answer) -> Result<(), Stop> {
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
    let pick = pick_drill(thread, wanted, tap, set);
    let minor = minor_limits(thread);
    if let Some(pick) = pick {
        a.words("drill", pick.drill.drill.name())
            .says(say::pick(inp, thread, tap, set, &pick));
        a.line("drill-size", pick.drill.drill.diameter).exact();
        a.line("thread-left", pick.drill.share).says(basis(tap));
    } else {
        a.words("drill", "none: bore the hole")
            .says("No standard drill leaves a thread here.");
    }
    say::outside(inp, a, thread, pick.as_ref());
    hand::tell(inp, a, thread, tap)?;
    a.line("hole", hole).says(format!(
        "For {} of thread. {}",
        inp.show(wanted),
        basis(tap)
    ));
    if let Some((minor, class)) = minor {
        let says = format!("Of the tapped hole, class {}, after tapping.", class.mark());
        a.line("bore-least", minor.low).says(says.clone());
        a.line("bore-most", minor.high).says(says);
    }
    let pick = pick.map(|pick| pick.drill);
    if !inp.quiet() {
        let held = minor.filter(|_| tap == TapKind::Cut).map(|found| found.0);
        table(a, (thread, wanted, tap), set, pick, held);
    }
    working(inp, a, thread, tap, wanted, pick);
    a.draw(|| {
        let size = pick.map_or(hole, |pick| pick.drill.diameter);
        let title =
            format!("{thread} in section: major diameter left, drilled hole right, pitch above");
        drawing(title, thread, &[size], &|size| inp.num_to(size, 4, 3))
    });
    say::cautions(a, tap, pick);
    a.source(source_of(thread))
        .source(if tap == TapKind::Cut { &CUT } else { &FORM })
        .source(&TRADE);
    Ok(())
}

fn basis(tap: TapKind) -> &'static str {
    match tap {
        TapKind::Cut => {
            "100% is 1.299 P off the diameter (depth 0.6495 P); on 1.0825 P the figure is 1.2 times larger."
        }
        TapKind::Form => "Form taps: 100% is 0.68 P off the diameter.",
    }
}

/// Owned and other drills in one list, nearest first; at least the best owned ones and the one named are in it.
fn table(
    a: &mut Answer,
    (thread, wanted, tap): (ThreadCall, Share, TapKind),
    set: &str,
    pick: Option<TapDrill>,
    minor: Option<Between>,
) {
    let sets = drill_sets::drills(set, thread.series.is_metric());
    let mut rows = rank(thread, wanted, tap, &sets, 6);
    for one in rank(thread, wanted, tap, drills::all(), 8)
        .into_iter()
        .chain(pick)
    {
        if !rows.iter().any(|mine| mine.drill == one.drill) {
            rows.push(one);
        }
    }
    crate::order::sort_by(&mut rows, |a, b| {
        a.off
            .abs()
            .mm()
            .total_cmp(&b.off.abs().mm())
            .then(a.drill.series.cmp(&b.drill.series))
    });
    if rows.is_empty() {
        return;
    }
    let table = a.table(
        "drills",
        "Drills, nearest first",
        &[
            "drill",
            "size",
            "off the hole",
            "percent of thread",
            "minor diameter",
        ],
    );
    for one in rows {
        let size = one.drill.diameter;
        let fits = match minor.map(|minor| Bore::of(size, minor)) {
            None => "",
            Some(Bore::Under(_)) => "under",
            Some(Bore::Over(_)) => "over",
            Some(Bore::Within) => "within",
        };
        let cells = vec![
            Value::words(one.drill.name()),
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
    table.note(if minor.is_some() {
        "Minor diameter: the drill against its limits. A drill cuts a little over its size."
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
            "Hole for the percent wanted",
            &[
                format!("d = D \u{2212} {factor} P \u{d7} % \u{f7} 100"),
                format!(
                    "d = {d} \u{2212} {factor} \u{d7} {p} \u{d7} {} = {}",
                    crate::notation::plain(wanted.fraction(), 4),
                    inp.show(hole_for(thread, wanted, tap))
                ),
            ],
            source,
        );
        let Some(pick) = pick else { return };
        w.step(
            "Percent of thread with this drill",
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

/// The usual threads, each with the drill that the sheet names where nothing is said of the drills owned.
fn finds() -> Vec<Find> {
    let mut finds = super::thread::finds();
    finds.retain_mut(|find| {
        let thread = find
            .entry
            .first()
            .and_then(|(_, call)| calls::thread::read(call).ok());
        let Some(thread) = thread.filter(|thread| thread.series != ThreadSeries::Unef) else {
            return false;
        };
        let usual = Share::from_percent(75.0);
        let Some(pick) = pick_drill(thread, usual, TapKind::Cut, drill_sets::UNSAID) else {
            return false;
        };
        find.title = format!("Tap drill for {thread}");
        find.aside = say::aside(thread, &pick);
        true
    });
    finds
}
