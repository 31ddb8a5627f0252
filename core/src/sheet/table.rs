//! A ranked table: rows of values, what is owned and taken, and what a tap does.

use super::{Text, Value};

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
