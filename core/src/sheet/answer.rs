//! What comes out? Typed lines, ranked tables, the working, cautions, sources and a drawing; printed late, by others.

use super::{Drawing, Res, Sheet, Source, Withheld};
use crate::quantity::{Kind, Quantity, System, Unit, decimal, join, signed, usual};
use std::borrow::Cow;

/// Short text: declared or made.
pub type Text = Cow<'static, str>;

/// A printable value: a quantity with the units and decimals of each system, or words.
#[derive(Clone, PartialEq, Debug)]
pub enum Value {
    /// A quantity.
    Quantity {
        /// Its kind.
        kind: Kind,
        /// The number in the kind's base unit.
        base: f64,
        /// Unit of the inch system.
        inch: &'static Unit,
        /// Unit of the metric system.
        metric: &'static Unit,
        /// Decimals in the inch unit.
        inch_places: u8,
        /// Decimals in the metric unit.
        metric_places: u8,
        /// Printed with its sign always.
        signed: bool,
    },
    /// Words.
    Words(Text),
}

impl Value {
    /// A quantity with its kind's usual units and decimals.
    pub fn of<Q: Quantity>(q: Q) -> Self {
        let (inch, metric) = (usual(Q::KIND, System::Inch), usual(Q::KIND, System::Metric));
        Self::Quantity {
            kind: Q::KIND,
            base: q.base(),
            inch,
            metric,
            inch_places: inch.places,
            metric_places: metric.places,
            signed: false,
        }
    }
    /// Words.
    pub fn words(text: impl Into<Text>) -> Self {
        Self::Words(text.into())
    }
    /// With these decimals (inch unit, metric unit).
    pub fn places(mut self, inch: u8, metric: u8) -> Self {
        if let Self::Quantity {
            inch_places,
            metric_places,
            ..
        } = &mut self
        {
            (*inch_places, *metric_places) = (inch, metric);
        }
        self
    }
    /// In these units.
    pub fn units(mut self, in_inch: &'static Unit, in_metric: &'static Unit) -> Self {
        if let Self::Quantity {
            inch,
            metric,
            inch_places,
            metric_places,
            ..
        } = &mut self
        {
            (*inch, *metric) = (in_inch, in_metric);
            (*inch_places, *metric_places) = (in_inch.places, in_metric.places);
        }
        self
    }
    /// Printed with its sign always.
    pub fn signed(mut self) -> Self {
        if let Self::Quantity { signed, .. } = &mut self {
            *signed = true;
        }
        self
    }
    /// The unit in a system; none for words.
    pub const fn unit(&self, system: System) -> Option<&'static Unit> {
        match (self, system) {
            (Self::Quantity { inch, .. }, System::Inch) => Some(inch),
            (Self::Quantity { metric, .. }, System::Metric) => Some(metric),
            (Self::Words(_), _) => None,
        }
    }
    /// The decimals in a system.
    pub const fn decimals(&self, system: System) -> u8 {
        match (self, system) {
            (Self::Quantity { inch_places, .. }, System::Inch) => *inch_places,
            (Self::Quantity { metric_places, .. }, System::Metric) => *metric_places,
            (Self::Words(_), _) => 0,
        }
    }
    /// The number in base units; none for words.
    pub const fn base(&self) -> Option<f64> {
        match self {
            Self::Quantity { base, .. } => Some(*base),
            Self::Words(_) => None,
        }
    }
    /// The same value with another number.
    pub fn with_base(&self, number: f64) -> Self {
        let mut value = self.clone();
        if let Self::Quantity { base, .. } = &mut value {
            *base = number;
        }
        value
    }
    /// Printed without its unit.
    pub fn text(&self, system: System) -> String {
        match self {
            Self::Words(text) => text.to_string(),
            Self::Quantity {
                base,
                signed: with_sign,
                ..
            } => {
                let Some(unit) = self.unit(system) else {
                    return String::new();
                };
                let print = if *with_sign { signed } else { decimal };
                print(*base, unit, self.decimals(system))
            }
        }
    }
    /// Printed with its unit.
    pub fn text_with_unit(&self, system: System) -> String {
        match self.unit(system) {
            Some(unit) => join(&self.text(system), unit),
            None => self.text(system),
        }
    }
}

/// One result.
#[derive(Clone, PartialEq, Debug)]
pub struct Line {
    /// The declared result's id.
    pub id: &'static str,
    /// What it is, on screen.
    pub label: Text,
    /// The nominal value.
    pub value: Value,
    /// The convention that it follows, in one line.
    pub says: Text,
    /// Low and high where good sources differ, in base units.
    pub band: Option<(f64, f64)>,
    /// What the band is, in words ("nut factor 0.18 to 0.30").
    pub band_says: Text,
    /// Exact as printed by definition; else rounded.
    pub exact: bool,
    /// Moves in steps.
    pub stepped: bool,
}

impl Line {
    /// The convention.
    pub fn says(&mut self, text: impl Into<Text>) -> &mut Self {
        self.says = text.into();
        self
    }
    /// Another label than the declared one.
    pub fn label(&mut self, text: impl Into<Text>) -> &mut Self {
        self.label = text.into();
        self
    }
    /// Decimals in the inch and the metric unit.
    pub fn places(&mut self, inch: u8, metric: u8) -> &mut Self {
        self.value = self.value.clone().places(inch, metric);
        self
    }
    /// Units in the inch and the metric system.
    pub fn units(&mut self, inch: &'static Unit, metric: &'static Unit) -> &mut Self {
        self.value = self.value.clone().units(inch, metric);
        self
    }
    /// Always with its sign.
    pub fn signed(&mut self) -> &mut Self {
        self.value = self.value.clone().signed();
        self
    }
    /// Low and high of the sources, and what they are.
    pub fn band<Q: Quantity>(&mut self, low: Q, high: Q, says: impl Into<Text>) -> &mut Self {
        self.band = Some((low.base(), high.base()));
        self.band_says = says.into();
        self
    }
    /// Exact by definition.
    pub fn exact(&mut self) -> &mut Self {
        self.exact = true;
        self
    }
}

/// A row of a ranked table.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Row {
    /// A cell a column.
    pub cells: Vec<Value>,
    /// In the user's set.
    pub owned: bool,
    /// The one that the answer takes.
    pub chosen: bool,
    /// Sheet id and entry that a tap on the row opens.
    pub opens: Option<(&'static str, Vec<(&'static str, String)>)>,
    /// What a tap on a cell changes in this same entry, a cell each: fields and their new texts. Shorter where the last
    /// cells take no tap.
    pub taps: Vec<Option<Tap>>,
}

/// Fields of the same entry, and the texts that a tap on a cell puts there.
pub type Tap = Vec<(&'static str, String)>;

/// A ranked table, best first.
#[derive(Clone, PartialEq, Debug)]
pub struct Table {
    /// Stands in JSON.
    pub id: &'static str,
    /// Its heading.
    pub title: Text,
    /// Column heads, the first naming the rows.
    pub columns: Vec<Text>,
    /// Rows, best first, a dozen at most where ranked.
    pub rows: Vec<Row>,
    /// One line under it.
    pub note: Text,
}

impl Table {
    /// Adds a row of these cells.
    pub fn row(&mut self, cells: Vec<Value>) -> &mut Row {
        self.rows.push_mut(Row {
            cells,
            ..Row::default()
        })
    }
    /// One line under it.
    pub fn note(&mut self, text: impl Into<Text>) -> &mut Self {
        self.note = text.into();
        self
    }
}

impl Row {
    /// In the user's set?
    pub fn owned(&mut self, owned: bool) -> &mut Self {
        self.owned = owned;
        self
    }
    /// The one that the answer takes?
    pub fn chosen(&mut self, chosen: bool) -> &mut Self {
        self.chosen = chosen;
        self
    }
    /// What a tap on each cell changes in this same entry.
    pub fn taps(&mut self, taps: Vec<Option<Tap>>) -> &mut Self {
        self.taps = taps;
        self
    }
    /// What a tap opens.
    pub fn opens(&mut self, sheet: &'static str, entry: Vec<(&'static str, String)>) -> &mut Self {
        self.opens = Some((sheet, entry));
        self
    }
}

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
        self.lines.push_mut(Line {
            id,
            label: Cow::Borrowed(res.map_or(id, |res| res.label)),
            value,
            says: Text::default(),
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
    /// Adds a note to mind.
    pub fn note(&mut self, before: impl Into<Text>, text: impl Into<Text>) -> &mut Self {
        self.cautions.push(Caution {
            stop: false,
            before: before.into(),
            text: text.into(),
        });
        self
    }
    /// Adds a stop caution: before a step that can't be undone or can hurt.
    pub fn stop(&mut self, before: impl Into<Text>, text: impl Into<Text>) -> &mut Self {
        self.cautions.push(Caution {
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
    /// A table by id.
    pub fn table_by_id(&self, id: &str) -> Option<&Table> {
        self.tables.iter().find(|table| table.id == id)
    }
    /// True where it is complete.
    pub fn is_complete(&self) -> bool {
        self.state == State::Complete
    }
}
