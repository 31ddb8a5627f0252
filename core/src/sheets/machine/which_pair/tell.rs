//! What do the marks say? The cause, where to look, what to try next, and how that was reasoned.

use super::advice::{none, table, try_next};
use super::boxed::{Boxed, read};
use super::draw::draw;
use super::grid::grid;
use super::look::look;
use super::marks::marks;
use super::points::points;
use super::say;
use crate::machine::isolate::{Finding, Mark, Next, Verdict, explain, next, split};
use crate::quantity::{Count, Share};
use crate::sheet::*;

static LOGIC: Source = Source::computed(
    "Fault location in a product of stages: a complete search over the settings",
    "problem class of Colbourn, Fan and Horsley, Disjoint spread systems and fault location",
);
static TRADE: Source = Source::practice("Finding a bad gear by the settings that use it");
static STRUCTURE: Source = Source::from_memory(
    "Acherkan, Machine Tool Design",
    "structural formula z = p1(1) p2(p1) p3(p1 p2)",
);

pub fn figure(inp: &Inputs) -> Result<Answer, Stop> {
    let boxed = read(inp)?;
    let marks = marks(inp, &boxed.gearbox)?;
    let finding = explain(&boxed.gearbox, &marks);
    let next = next(&boxed.gearbox, &marks, &finding);
    let mut a = inp.answer();
    let (points, says) = points(&boxed, &marks, &finding);
    a.words("cause", points).says(says);
    look(&mut a, &boxed, &marks, &finding);
    try_next(&mut a, &boxed, &finding, &next);
    if finding.verdict != Verdict::Nothing {
        cleared(&mut a, &boxed, &finding);
    }
    if finding.count > 0 {
        a.line("left", Count::of(finding.count as f64))
            .says("Of the fewest causes; each explains every mark.");
    }
    let settings = boxed.gearbox.len();
    a.line("settings", Count::of(settings as f64))
        .says(settings_say(&boxed));
    if !inp.quiet() {
        grid(&mut a, &boxed, &marks);
        causes(&mut a, &boxed, &marks, &finding);
        table(&mut a, &boxed, &finding, &next);
    }
    working(inp, &mut a, &boxed, &marks, &finding, &next);
    a.draw(|| draw(&boxed, &finding));
    a.stop(
        "reach-in",
        "Before you shift or reach in",
        "Shift only as the plate says, most gearboxes with the gears stopped or nearly so. Switch off and lock out at the disconnect (isolator) before a cover comes off, and let everything stop turning.",
    );
    a.note(
        "trust-mark",
        "Before you trust a mark",
        "Try every setting alike: warmed up, the same load, the same axis and direction. The search takes a bad part to be bad each time; one that is bad now and then is marked bad.",
    );
    a.source(&LOGIC).source(&TRADE);
    Ok(a)
}

fn cleared(a: &mut Answer, boxed: &Boxed, finding: &Finding) {
    let names = |places: &[(usize, usize)]| {
        let all: Vec<String> = places
            .iter()
            .map(|&(stage, at)| say::gear(boxed, stage, at))
            .collect();
        say::list(&all, "and")
    };
    a.words("cleared", names(&finding.cleared))
        .says("A setting that uses it runs well.");
    let mut open = finding.suspects.clone();
    open.extend(&finding.untried);
    let mut says = "In no setting that runs well.".to_owned();
    if !finding.proven.is_empty() {
        says.push_str(&format!(
            " Bad for certain, all beside it in a bad setting is cleared: {}.",
            names(&finding.proven)
        ));
    }
    if !finding.untried.is_empty() {
        says.push_str(&format!(" Not tried at all: {}.", names(&finding.untried)));
    }
    a.words("open", names(&open)).says(says);
}

fn settings_say(boxed: &Boxed) -> String {
    let (settings, distinct) = (boxed.gearbox.len(), boxed.gearbox.distinct());
    let mut says = match settings - distinct {
        0 => "One choice of each lever, counted from the slowest.".to_owned(),
        1 => format!("{distinct} speeds: one setting repeats another's."),
        more => format!("{distinct} speeds: {more} settings repeat another's."),
    };
    if let Some(value) = &boxed.shared {
        says.push_str(&format!(" Two settings share {value} of the plate."));
    }
    says
}

fn causes(a: &mut Answer, boxed: &Boxed, marks: &[Mark], finding: &Finding) {
    if finding.exact.is_empty() && finding.near.is_empty() {
        return;
    }
    let (bad, good) = split(marks);
    let all = (bad | good).count_ones();
    let table = a.table(
        "causes",
        "What explains the marks",
        &["cause", "marks explained", "against it"],
    );
    for (index, one) in finding
        .exact
        .iter()
        .take(8)
        .chain(finding.doubles.iter().take(4))
        .chain(&finding.near)
        .enumerate()
    {
        let against = one.against.count_ones();
        let cells = vec![
            Value::words(say::capital(&say::explanation(boxed, one))),
            Value::words(format!("{} of {all}", all - against)),
            Value::words(if against == 0 {
                "none".into()
            } else {
                say::settings(one.against)
            }),
        ];
        // one of several that fit alike is no cause yet, and a near miss is none
        let lone = finding.count == 1 && finding.doubles.is_empty();
        table.row(cells).chosen(index == 0 && against == 0 && lone);
    }
    let more = finding.count.saturating_sub(8);
    table.note(if more > 0 {
        format!("And {more} more that fit. Fewest causes first.")
    } else {
        "Best fit first, then fewest causes.".to_owned()
    });
}

fn working(
    inp: &Inputs,
    a: &mut Answer,
    boxed: &Boxed,
    marks: &[Mark],
    finding: &Finding,
    next: &Next,
) {
    let (bad, good) = split(marks);
    a.work(|w| {
        let places: Vec<String> = boxed.stages.iter().map(|stage| stage.places.to_string()).collect();
        let mut lines = vec!["settings = positions of each stage, multiplied; counted from the slowest, 1".to_owned()];
        if places.len() > 1 {
            lines.push(format!("{} = {}", places.join(" \u{d7} "), boxed.gearbox.len()));
        }
        if let Some(off) = boxed.off {
            lines.push(format!("the plate lies off the products by {} at most", inp.show_to(Share::from_fraction(off), 1, 1)));
        }
        w.step("Settings of the gearbox", &lines, &STRUCTURE);
        w.step(
            "What clears a gear pair",
            &[
                "cleared: in any setting that runs well; suspect: tried, never well; certain: all beside it in a bad setting is cleared".into(),
                format!("well: {}", none(good)),
                format!("bad: {}", none(bad)),
                format!("cleared {}, suspect {}, of them certain {}, not tried {}", finding.cleared.len(), finding.suspects.len(), finding.proven.len(), finding.untried.len()),
            ],
            &TRADE,
        );
        let mut lines = vec!["a cause explains the marks where it is in every bad setting and in none that runs well".to_owned()];
        lines.extend(finding.exact.iter().take(4).map(|one| format!("{}: touches {}", say::explanation(boxed, one), say::settings(one.bad))));
        if let Some(trial) = next.trials.first().filter(|_| finding.count > 1) {
            lines.push(format!(
                "setting {} is bad in {} of the {} explanations",
                trial.setting + 1,
                trial.left_if_bad,
                finding.count
            ));
        }
        w.step("What explains them", &lines, &LOGIC);
    });
}
