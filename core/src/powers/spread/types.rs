//! What is told of the ±: ranges, choices that are met, changes, and places without an answer.

/// Which end of a tolerance.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum End {
    /// The low end.
    Low,
    /// The high end.
    High,
}

impl End {
    /// In a word.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Low => "low",
            Self::High => "high",
        }
    }
}

/// How a result moves inside the ±.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub enum Moves {
    /// It stays the same.
    #[default]
    Not,
    /// Anywhere between its low and its high.
    Through,
    /// From one value to another: the values are listed.
    InSteps,
    /// It runs and jumps: no range holds.
    Jumping,
    /// It starts again or turns back: no range holds.
    Wrapping,
}

/// Where one value gives way to another, along one field, the others at their nominal.
#[derive(Clone, PartialEq, Debug)]
pub struct Change {
    /// The field.
    pub field: &'static str,
    /// Its number there, base unit.
    pub at: f64,
    /// Below it, as printed.
    pub from: String,
    /// Above it.
    pub to: String,
}

/// What becomes of one numeric result, base units.
#[derive(Clone, PartialEq, Debug)]
pub struct LineSpread {
    /// The result.
    pub id: &'static str,
    /// How it moves.
    pub moves: Moves,
    /// Least; the nominal value where no range holds.
    pub low: f64,
    /// Most; the nominal value where no range holds.
    pub high: f64,
    /// The field that drives the range most.
    pub driver: &'static str,
    /// Somewhere inside the ± there is no such result, so the range is cut short.
    pub is_cut: bool,
    /// The different values that are met, where it moves in steps: rising.
    pub values: Vec<f64>,
    /// Where it changes.
    pub changes: Vec<Change>,
}

impl LineSpread {
    /// True where a range from low to high holds, and is more than one value.
    pub fn has_range(&self) -> bool {
        self.moves == Moves::Through && self.low < self.high
    }
}

/// A pick that is another at one end.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct PickChange {
    /// The result's or table's id.
    pub id: &'static str,
    /// The field whose end it is.
    pub field: &'static str,
    /// Which end.
    pub end: End,
    /// What is picked: the result's or table's name.
    pub what: String,
    /// What it becomes.
    pub becomes: String,
}

/// The different picks that are met inside the ±.
#[derive(Clone, PartialEq, Debug)]
pub struct Choices {
    /// The result's or table's id.
    pub id: &'static str,
    /// Its name.
    pub what: String,
    /// What is met, the nominal's own first.
    pub values: Vec<String>,
    /// Where it changes.
    pub changes: Vec<Change>,
}

/// Where a field stands, base unit: from low to high, which are one and the same at a corner.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Place {
    /// The field.
    pub field: &'static str,
    /// From.
    pub low: f64,
    /// To.
    pub high: f64,
    /// The end of its tolerance that is among it.
    pub end: Option<End>,
}

/// A place inside the ± at which the sheet gives no answer.
#[derive(Clone, PartialEq, Debug)]
pub struct NoAnswer {
    /// Where: these fields together, the others at their nominal.
    pub places: Vec<Place>,
    /// Why, in words.
    pub says: String,
}

/// What ± leaves.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Spread {
    /// More than six fields: changes one at a time, added.
    pub added: bool,
    /// Numeric results of the answer.
    pub lines: Vec<LineSpread>,
    /// Picks that are others at an end.
    pub picks: Vec<PickChange>,
    /// Picks of which there are several inside the ±, few enough to list.
    pub choices: Vec<Choices>,
    /// Places without an answer.
    pub faults: Vec<NoAnswer>,
    /// Results and stop cautions that come up somewhere inside the ± and not at the nominal, in words.
    pub also: Vec<String>,
    /// How often the sheet was evaluated: at most 1,024 times.
    pub evaluations: usize,
}
