//! The grid that one taps: a cell a setting, a tap puts the next mark.

use super::boxed::Boxed;
use super::say;
use crate::machine::isolate::Mark;
use crate::sheet::*;

/// Adds the grid: the columns are the positions of one stage, the rows those of the others.
pub fn grid(a: &mut Answer, boxed: &Boxed, marks: &[Mark]) {
    let stages = boxed.gearbox.stages();
    let across = across(stages);
    let stage = |at: usize| stages.get(at).copied().unwrap_or(1);
    let others: Vec<usize> = (0..stages.len()).filter(|&at| Some(at) != across).collect();
    let mut rows: Vec<Vec<usize>> = vec![vec![0; stages.len()]];
    // the last stage changes slowest, so that its positions make blocks
    for &other in others.iter().rev() {
        rows = rows
            .into_iter()
            .flat_map(|levers| {
                (0..stage(other)).map(move |at| {
                    let mut levers = levers.clone();
                    if let Some(slot) = levers.get_mut(other) {
                        *slot = at;
                    }
                    levers
                })
            })
            .collect();
    }
    let unit = if boxed.unit.is_empty() {
        String::new()
    } else {
        format!(", {}", boxed.unit)
    };
    let table = a.table(
        "grid",
        format!("Tap how each setting runs: number{unit}, mark"),
        &["levers"],
    );
    match across {
        Some(at) => table
            .columns
            .extend((0..stage(at)).map(|place| say::place(at, place).into())),
        None => table.columns.push("runs".into()),
    }
    for mut levers in rows {
        let moving = others.iter().filter(|&&at| stage(at) > 1);
        let name: Vec<String> = moving
            .map(|&at| say::place(at, levers.get(at).copied().unwrap_or(0)))
            .collect();
        let mut cells = vec![Value::words(if name.is_empty() {
            "all".into()
        } else {
            name.join(" ")
        })];
        let mut taps = vec![None];
        for place in 0..across.map_or(1, stage) {
            if let Some(slot) = across.and_then(|at| levers.get_mut(at)) {
                *slot = place;
            }
            let Some(setting) = boxed.gearbox.setting(&levers) else {
                continue;
            };
            let mark = marks.get(setting).copied().unwrap_or_default();
            let value = boxed
                .plate
                .get(setting)
                .map_or_else(String::new, |value| format!(" {value},"));
            cells.push(Value::words(format!(
                "{}:{value} {}",
                setting + 1,
                say::short(mark)
            )));
            taps.push(Some(vec![("marks", after(marks, setting, mark.next()))]));
        }
        table.row(cells).taps(taps);
    }
    table.note("Setting 1 is the slowest. A tap goes on: not tried, goes in well, slow to go in, won't go into gear, jumps out, noisy, wrong feed or speed.");
}

/// The stage whose positions are the columns: the widest of up to four beside another stage.
fn across(stages: &[usize]) -> Option<usize> {
    if stages.iter().filter(|&&places| places > 1).count() < 2 {
        return None;
    }
    (0..stages.len())
        .filter(|&at| {
            stages
                .get(at)
                .is_some_and(|places| (2..=4).contains(places))
        })
        .max_by_key(|&at| (stages.get(at).copied(), at))
}

/// The marks as text, with one changed.
fn after(marks: &[Mark], setting: usize, mark: Mark) -> String {
    let mut marks = marks.to_vec();
    if let Some(own) = marks.get_mut(setting) {
        *own = mark;
    }
    let tried = marks
        .iter()
        .enumerate()
        .filter(|(_, mark)| **mark != Mark::Untested);
    tried
        .map(|(at, mark)| format!("{}~{}", at + 1, mark.id()))
        .collect::<Vec<_>>()
        .join(";")
}
