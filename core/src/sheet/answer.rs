//! What comes out? Results, ranked tables, the working, cautions, sources and a drawing; printed late, by others.

use super::{Drawing, Fault, Line, Res, Sheet, Source, Stop, Table, Text, Value, Withheld};
use crate::quantity::Quantity;
use std::borrow::Cow;

/// A step of the working.
#[derive(Clone, PartialEq, Debug)]
pub struct Step {
    /// What it finds.
    pub title: Text,
    /// Formula, then this entry's numbers put in, then the result.
    pub lines: Vec<String>,
    /// Whose formula it is.
    pub source: &'static Source,
}

/// Collects the working.
#[derive(Default)]
pub struct Work {
    steps: Vec<Step>,
}

impl Work {
    /// The lines of a step, counted from 0.
    pub fn lines(&self, at: usize) -> &[String] {
        self.steps.get(at).map_or(&[], |step| &step.lines)
    }
    /// Adds a step.
    pub fn step(&mut self, title: impl Into<Text>, lines: &[String], source: &'static Source) {
        self.steps.push(Step {
            title: title.into(),
            lines: lines.to_vec(),
            source,
        });
    }
}

/// A caution, shown at the step that it belongs to.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Caution {
    /// Kebab case, one condition each in its sheet; stands in JSON, and by it the tests ask for a caution.
    pub id: &'static str,
    /// Before a step that can't be undone or can hurt; else a note.
    pub stop: bool,
    /// "Before you ream".
    pub before: Text,
    /// What to mind.
    pub text: Text,
}

/// How far the answer goes.
#[derive(Clone, PartialEq, Debug, Default)]
pub enum State {
    /// All there.
    #[default]
    Complete,
    /// These fields are still needed.
    Incomplete(Vec<&'static str>),
    /// A limit is passed; no number.
    Withheld(Withheld),
    /// A field is at fault; see the readings.
    Faulty,
}

/// An answer.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Answer {
    results: &'static [Res],
    quiet: bool,
    /// Fields that a part of it lacks.
    pub(super) lacking: Vec<&'static str>,
    /// The first fault that a part of it found.
    pub(super) fault: Option<Box<Fault>>,
    /// How far it goes.
    pub state: State,
    /// Results, the main one first.
    pub lines: Vec<Line>,
    /// Ranked tables.
    pub tables: Vec<Table>,
    /// The working.
    pub steps: Vec<Step>,
    /// Cautions.
    pub cautions: Vec<Caution>,
    /// Sources, each once.
    pub sources: Vec<&'static Source>,
    /// A drawing with this entry's dimensions.
    pub drawing: Option<Drawing>,
}

impl PartialEq for Res {
    fn eq(&self, other: &Self) -> bool {
        self.id == other.id
    }
}

impl std::fmt::Debug for Res {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(self.id)
    }
}

impl Answer {
    /// An empty answer of a sheet; a quiet one keeps numbers only.
    pub fn new(sheet: &'static Sheet, quiet: bool) -> Self {
        Self {
            results: sheet.results,
            quiet,
            ..Self::default()
        }
    }
    /// An answer that stops short.
    pub fn stopped(state: State) -> Self {
        Self {
            state,
            ..Self::default()
        }
    }
    /// Adds a part that has entries of its own: what it lacks leaves out the rest of this part alone, a fault in it the
    /// whole part, and the other parts stand.
    ///
    /// # Errors
    /// [`Stop::Withheld`] where a limit is passed: then no part stands.
    pub fn part(&mut self, tell: impl FnOnce(&mut Self) -> Result<(), Stop>) -> Result<(), Stop> {
        let (lines, tables, steps) = (self.lines.len(), self.tables.len(), self.steps.len());
        let cautions = self.cautions.len();
        match tell(self) {
            Ok(()) => {}
            Err(Stop::Missing(id)) => self.lacks(id),
            Err(Stop::Fault(fault)) => {
                self.lines.truncate(lines);
                self.tables.truncate(tables);
                self.steps.truncate(steps);
                self.cautions.truncate(cautions);
                self.fault.get_or_insert(fault);
            }
            Err(stop @ Stop::Withheld(_)) => return Err(stop),
        }
        Ok(())
    }
    pub(super) fn lacks(&mut self, id: &'static str) {
        if !self.lacking.contains(&id) {
            self.lacking.push(id);
        }
    }
    /// Adds a declared result.
    pub fn line<Q: Quantity>(&mut self, id: &'static str, q: Q) -> &mut Line {
        self.push(id, Value::of(q))
    }
    /// Adds a declared result in words.
    pub fn words(&mut self, id: &'static str, text: impl Into<Text>) -> &mut Line {
        self.push(id, Value::Words(text.into()))
    }
    fn push(&mut self, id: &'static str, value: Value) -> &mut Line {
        let res = self.results.iter().find(|res| res.id == id);
        debug_assert!(res.is_some(), "undeclared result {id}");
        let value = match res {
            Some(res) => res.printed(value),
            None => value,
        };
        self.lines.push_mut(Line {
            id,
            label: Cow::Borrowed(res.map_or(id, |res| res.label)),
            value,
            says: Cow::Borrowed(res.map_or("", |res| res.says)),
            band: None,
            band_says: Text::default(),
            exact: false,
            stepped: res.is_some_and(|res| res.stepped),
        })
    }
    /// Adds a ranked table.
    pub fn table(
        &mut self,
        id: &'static str,
        title: impl Into<Text>,
        columns: &[&'static str],
    ) -> &mut Table {
        let columns = columns
            .iter()
            .map(|&column| Cow::Borrowed(column))
            .collect();
        self.tables.push_mut(Table {
            id,
            title: title.into(),
            columns,
            rows: Vec::new(),
            note: Text::default(),
        })
    }
    /// Adds the working; not called where only numbers are wanted.
    pub fn work(&mut self, tell: impl FnOnce(&mut Work)) -> &mut Self {
        if !self.quiet {
            let mut work = Work::default();
            tell(&mut work);
            for step in work.steps {
                self.source(step.source);
                self.steps.push(step);
            }
        }
        self
    }
    /// Adds a drawing; not called where only numbers are wanted.
    pub fn draw(&mut self, draw: impl FnOnce() -> Drawing) -> &mut Self {
        if !self.quiet {
            self.drawing = Some(draw());
        }
        self
    }
    /// Adds a note to mind, by an id of its own in the sheet.
    pub fn note(
        &mut self,
        id: &'static str,
        before: impl Into<Text>,
        text: impl Into<Text>,
    ) -> &mut Self {
        self.cautions.push(Caution {
            id,
            stop: false,
            before: before.into(),
            text: text.into(),
        });
        self
    }
    /// Adds a stop caution, by an id of its own in the sheet: before a step that can't be undone or can hurt.
    pub fn stop(
        &mut self,
        id: &'static str,
        before: impl Into<Text>,
        text: impl Into<Text>,
    ) -> &mut Self {
        self.cautions.push(Caution {
            id,
            stop: true,
            before: before.into(),
            text: text.into(),
        });
        self
    }
    /// Names a source, once.
    pub fn source(&mut self, source: &'static Source) -> &mut Self {
        if !self
            .sources
            .iter()
            .any(|&known| std::ptr::eq(known, source))
        {
            self.sources.push(source);
        }
        self
    }
    /// A result by id.
    pub fn get(&self, id: &str) -> Option<&Line> {
        self.lines.iter().find(|line| line.id == id)
    }
    /// A caution by id.
    pub fn caution(&self, id: &str) -> Option<&Caution> {
        self.cautions.iter().find(|caution| caution.id == id)
    }
    /// A table by id.
    pub fn table_by_id(&self, id: &str) -> Option<&Table> {
        self.tables.iter().find(|table| table.id == id)
    }
    /// True where it is complete.
    pub fn is_complete(&self) -> bool {
        self.state == State::Complete
    }
}
