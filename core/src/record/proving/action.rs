//! What may be done to a proving record, and what is it then? Every action that names something that is not there
//! changes nothing.

use super::{Axis, Finding, Ladder, MOST_AXES, Mark, Plate, Proving, Test, items, pin_measured};
use crate::quantity::System;

/// What may be done to the record.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum ProvingAction {
    /// Begins a test of a machine: its name, its plate, the day.
    Begin(String, Plate, String),
    /// Opens another test.
    Open(usize),
    /// Takes a test out.
    Remove(usize),
    /// Changes the open test.
    On(TestAction),
    /// Changes the test of this name, whichever is open.
    At(String, TestAction),
    /// Takes all tests of another record in, and opens the first of them.
    TakeIn(Proving),
}

/// What may be done to a test.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum TestAction {
    /// The machine's name.
    Machine(String),
    /// The day.
    Day(String),
    /// Who tests.
    By(String),
    /// The spindle step at which feeds are tested.
    Spindle(String),
    /// The note on the whole.
    Remark(String),
    /// Another plate.
    Plate(Plate),
    /// Which steps are tried.
    Ladder(Ladder),
    /// Adds an axis.
    AddAxis,
    /// Takes an axis out; what was found there is kept below the rest.
    RemoveAxis(usize),
    /// Changes a part of an axis.
    Axis(usize, AxisPart, String),
    /// What was measured at a line, and the system that a bare figure was read in: it is written down with its unit.
    Measured(String, String, System),
    /// What it should be there, in place of the plate's; empty goes back to the plate's. As with what was measured, with the
    /// system of a bare figure.
    Wanted(String, String, System),
    /// Bare figures of a test of an older version are read in this system.
    Bare(System),
    /// A note on a line.
    Note(String, String),
    /// What a line was found to be.
    Mark(String, Mark),
}

/// A part of an axis.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum AxisPart {
    /// Its name.
    Name,
    /// Its first way.
    One,
    /// Its other way.
    Other,
    /// Its part of the plate's feeds.
    Share,
}

pub(super) fn after(record: &Proving, action: &ProvingAction) -> Proving {
    let mut next = record.clone();
    match action {
        ProvingAction::Begin(machine, plate, day) => {
            next.open = next.tests.len();
            next.tests.push(Test {
                machine: free_name(&next.tests, machine),
                plate: plate.clone(),
                day: day.clone(),
                ..Test::default()
            });
        }
        ProvingAction::Open(at) => {
            if *at < next.tests.len() {
                next.open = *at;
            }
        }
        ProvingAction::Remove(at) => {
            if *at < next.tests.len() {
                next.tests.remove(*at);
                if next.open > *at || next.open >= next.tests.len() {
                    next.open = next.open.saturating_sub(1);
                }
            }
        }
        ProvingAction::On(action) => {
            if let Some(test) = next.tests.get_mut(next.open) {
                change(test, action);
            }
        }
        ProvingAction::At(name, action) => {
            let at = next.called(name);
            if let Some(test) = at.and_then(|at| next.tests.get_mut(at)) {
                change(test, action);
            }
        }
        ProvingAction::TakeIn(other) => {
            let start = next.tests.len();
            for test in &other.tests {
                if !record.tests.iter().any(|own| own.says_as(test)) {
                    let machine = free_name(&next.tests, &test.machine);
                    next.tests.push(Test {
                        machine,
                        ..test.clone()
                    });
                }
            }
            if next.tests.len() > start {
                next.open = start;
            }
        }
    }
    next
}

/// The name, with a number behind it where it is taken: the kept list finds a test by its name.
fn free_name(tests: &[Test], name: &str) -> String {
    let name = match name.trim() {
        "" => "Machine",
        name => name,
    };
    let taken = |name: &str| tests.iter().any(|test| test.machine == name);
    if !taken(name) {
        return name.to_owned();
    }
    // of one number more than there are tests, one is free
    (2..=tests.len().saturating_add(2))
        .map(|n| format!("{name} ({n})"))
        .find(|name| !taken(name))
        .unwrap_or_default()
}

/// As many names as a test remembers: typing passes through a few.
const MOST_NAMES: usize = 24;

fn rename(test: &mut Test, text: &str) {
    let before = core::mem::replace(&mut test.machine, text.to_owned());
    test.was.retain(|was| *was != before && was != text);
    if before != text && !before.is_empty() {
        test.was.push(before);
    }
    if test.was.len() > MOST_NAMES {
        test.was.remove(0);
    }
}

fn change(test: &mut Test, action: &TestAction) {
    match action {
        TestAction::Machine(text) => rename(test, text),
        TestAction::Day(text) => test.day.clone_from(text),
        TestAction::By(text) => test.by.clone_from(text),
        TestAction::Spindle(text) => test.spindle.clone_from(text),
        TestAction::Remark(text) => test.note.clone_from(text),
        TestAction::Plate(plate) => test.plate = plate.clone(),
        TestAction::Ladder(ladder) => test.ladder = *ladder,
        TestAction::AddAxis => add_axis(test),
        TestAction::RemoveAxis(at) => {
            if *at < test.axes.len() {
                test.axes.remove(*at);
            }
        }
        TestAction::Axis(at, part, text) => {
            if let Some(axis) = test.axes.get_mut(*at) {
                let [one, other] = &mut axis.ways;
                match part {
                    AxisPart::Name => axis.name.clone_from(text),
                    AxisPart::One => one.clone_from(text),
                    AxisPart::Other => other.clone_from(text),
                    AxisPart::Share => axis.share.clone_from(text),
                }
            }
        }
        TestAction::Measured(id, text, system) => {
            let text = with_unit(test, id, text, *system);
            find(test, id, |line| line.measured = text);
        }
        TestAction::Wanted(id, text, system) => {
            let text = with_unit(test, id, text, *system);
            find(test, id, |line| line.wanted = text);
        }
        TestAction::Bare(system) => test.bare = Some(*system),
        TestAction::Note(id, text) => find(test, id, |line| line.note.clone_from(text)),
        TestAction::Mark(id, mark) => find(test, id, |line| line.mark = *mark),
    }
}

/// A figure as it is written down at a line.
fn with_unit(test: &Test, id: &str, text: &str, system: System) -> String {
    items::kind_at(test, id)
        .map_or_else(|| text.to_owned(), |kind| pin_measured(text, kind, system))
}

fn add_axis(test: &mut Test) {
    if test.axes.len() >= MOST_AXES {
        return;
    }
    // a file from elsewhere may count wrongly: never take a key that an axis or a finding has
    let taken = |test: &Test, key: u32| {
        let start = format!("a{key}.");
        test.axes.iter().any(|axis| axis.key == key)
            || test.found.iter().any(|line| line.id.starts_with(&start))
    };
    let mut key = test.next_key;
    while taken(test, key) {
        key = key.wrapping_add(1);
    }
    test.next_key = key.wrapping_add(1);
    test.axes.push(Axis {
        key,
        name: format!("Axis {}", test.axes.len().saturating_add(1)),
        ways: ["one way".into(), "the other way".into()],
        share: "1".into(),
    });
}

/// Changes what was found at a line; what says nothing any more is taken out.
fn find(test: &mut Test, id: &str, edit: impl FnOnce(&mut Finding)) {
    let mut line = test.at(id);
    edit(&mut line);
    let empty = Finding {
        id: id.to_owned(),
        ..Finding::default()
    };
    let place = test.found.iter().position(|finding| finding.id == id);
    match (place, line == empty) {
        (Some(at), true) => {
            test.found.remove(at);
        }
        (Some(at), false) => {
            if let Some(old) = test.found.get_mut(at) {
                *old = line;
            }
        }
        (None, false) => test.found.push(line),
        (None, true) => {}
    }
}
