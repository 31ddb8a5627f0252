//! What does a sheet's function see? The readings of its fields, typed on the way out.

use super::{Answer, Choice, Field, FieldKind, Reason, Sheet, Stop};
use crate::quantity::{Kind, Quantity, System, Unit};

/// One field's reading.
#[derive(Clone, PartialEq, Debug)]
pub enum Input {
    /// A number in its kind's base unit, with its tolerance.
    Quantity {
        /// Kind.
        kind: Kind,
        /// Nominal, base unit.
        nominal: f64,
        /// Below it, base unit, not negative.
        minus: f64,
        /// Above it, base unit, not negative.
        plus: f64,
        /// As typed or understood.
        unit: &'static Unit,
    },
    /// A choice.
    Choice(&'static Choice),
    /// A call, in the plain way to write it.
    Call(String),
    /// Rows of cells; an optional cell may be empty.
    Rows(Vec<Vec<Option<Input>>>),
}

/// All readings of an entry, a field each; none where it does not apply or is empty.
#[derive(Clone)]
pub struct Inputs {
    pub(crate) sheet: &'static Sheet,
    pub(crate) values: Vec<Option<Input>>,
    pub(crate) typed: Vec<String>,
    pub(crate) entered: Vec<bool>,
    pub(crate) system: System,
    pub(crate) quiet: bool,
}

/// One row of a list, read by column id.
pub struct Cells<'a> {
    columns: &'static [Field],
    cells: &'a [Option<Input>],
}

impl Cells<'_> {
    /// A quantity in a column, where there is one.
    pub fn get<Q: Quantity>(&self, id: &str) -> Option<Q> {
        let index = self.columns.iter().position(|column| column.id == id)?;
        number(self.cells.get(index)?.as_ref()?)
    }
    /// A choice in a column.
    pub fn choice(&self, id: &str) -> Option<&'static str> {
        let index = self.columns.iter().position(|column| column.id == id)?;
        match self.cells.get(index)?.as_ref()? {
            Input::Choice(choice) => Some(choice.id),
            _ => None,
        }
    }
    /// A call in a column, in the plain way to write it.
    pub fn call(&self, id: &str) -> Option<&str> {
        let index = self.columns.iter().position(|column| column.id == id)?;
        match self.cells.get(index)?.as_ref()? {
            Input::Call(call) => Some(call),
            _ => None,
        }
    }
}

fn number<Q: Quantity>(input: &Input) -> Option<Q> {
    match input {
        Input::Quantity { kind, nominal, .. } => {
            debug_assert!(
                *kind == Q::KIND,
                "field of kind {kind:?} read as {:?}",
                Q::KIND
            );
            Some(Q::from_base(*nominal))
        }
        _ => None,
    }
}

impl Inputs {
    fn position(&self, id: &str) -> Option<usize> {
        let index = self.sheet.fields.iter().position(|field| field.id == id);
        debug_assert!(index.is_some(), "no field {id} in {}", self.sheet.id);
        index
    }
    pub(crate) fn input(&self, id: &str) -> Option<&Input> {
        self.values.get(self.position(id)?)?.as_ref()
    }
    /// A quantity that is needed.
    ///
    /// # Errors
    /// [`Stop::Missing`] where the field is empty or does not apply.
    pub fn get<Q: Quantity>(&self, id: &'static str) -> Result<Q, Stop> {
        self.opt(id).ok_or(Stop::Missing(id))
    }
    /// A quantity that may be empty.
    pub fn opt<Q: Quantity>(&self, id: &str) -> Option<Q> {
        number(self.input(id)?)
    }
    /// The id of the choice; empty where the field does not apply.
    pub fn choice(&self, id: &str) -> &'static str {
        match self.input(id) {
            Some(Input::Choice(choice)) => choice.id,
            _ => "",
        }
    }
    /// A call in the plain way to write it.
    ///
    /// # Errors
    /// [`Stop::Missing`] where the field is empty or does not apply.
    pub fn call(&self, id: &'static str) -> Result<&str, Stop> {
        self.opt_call(id).ok_or(Stop::Missing(id))
    }
    /// A call that may be empty.
    pub fn opt_call(&self, id: &str) -> Option<&str> {
        match self.input(id) {
            Some(Input::Call(call)) => Some(call),
            _ => None,
        }
    }
    /// The rows of a list; none where it is empty or does not apply.
    pub fn rows(&self, id: &str) -> Vec<Cells<'_>> {
        let columns = match self.sheet.field(id).map(|field| &field.kind) {
            Some(FieldKind::Rows { columns, .. }) => *columns,
            _ => &[],
        };
        match self.input(id) {
            Some(Input::Rows(rows)) => rows.iter().map(|cells| Cells { columns, cells }).collect(),
            _ => Vec::new(),
        }
    }
    /// A list of one column, as quantities.
    pub fn list<Q: Quantity>(&self, id: &str) -> Vec<Q> {
        match self.input(id) {
            Some(Input::Rows(rows)) => rows
                .iter()
                .filter_map(|row| number(row.first()?.as_ref()?))
                .collect(),
            _ => Vec::new(),
        }
    }
    /// The text that was typed (or that the preset gave).
    pub fn typed(&self, id: &str) -> &str {
        self.position(id)
            .and_then(|index| self.typed.get(index))
            .map_or("", String::as_str)
    }
    /// True where the field holds something else than its preset: typed here, or written in by a shop. Where it does not,
    /// an answer speaks of a typical mill or set, never of "yours".
    pub fn is_entered(&self, id: &str) -> bool {
        self.position(id)
            .and_then(|index| self.entered.get(index))
            .is_some_and(|entered| *entered)
    }
    /// The system of units in use.
    pub const fn system(&self) -> System {
        self.system
    }
    /// True where only numbers are wanted (the powers): leave out what costs time.
    pub const fn quiet(&self) -> bool {
        self.quiet
    }
    /// The sheet.
    pub const fn sheet(&self) -> &'static Sheet {
        self.sheet
    }
    /// An empty answer to fill.
    pub fn answer(&self) -> Answer {
        Answer::new(self.sheet, self.quiet)
    }
    /// A fault of a field: past the range of the formula or table.
    pub fn out_of_range(
        &self,
        field: &'static str,
        says: impl Into<String>,
        cure: impl Into<String>,
    ) -> Stop {
        Stop::fault(field, Reason::OutOfRange, says, cure)
    }
    /// The same readings with one quantity set to a number, its tolerance taken away; nothing changes where the field
    /// is no quantity.
    pub fn with(&self, id: &str, base: f64) -> Self {
        let mut changed = self.clone();
        changed.put(id, base);
        changed
    }
    /// Sets one quantity to a number in place, its tolerance taken away; nothing changes where the field is no quantity.
    pub(crate) fn put(&mut self, id: &str, base: f64) {
        let Some(index) = self.position(id) else {
            return;
        };
        let field = self.sheet.fields.get(index);
        if let (Some(FieldKind::Quantity { kind, .. }), Some(value)) =
            (field.map(|field| &field.kind), self.values.get_mut(index))
        {
            let own = field.and_then(|field| field.unit(self.system));
            let unit = match value {
                Some(Input::Quantity { unit, .. }) => unit,
                _ => own.unwrap_or(&crate::quantity::units::NUMBER),
            };
            *value = Some(Input::Quantity {
                kind: *kind,
                nominal: base,
                minus: 0.0,
                plus: 0.0,
                unit,
            });
        }
    }
    /// The fields that carry a tolerance: id, nominal, low and high in base units.
    pub fn tolerances(&self) -> Vec<(&'static Field, f64, f64, f64)> {
        let fields = self.sheet.fields.iter().zip(&self.values);
        fields
            .filter_map(|(field, value)| match value {
                Some(Input::Quantity {
                    nominal,
                    minus,
                    plus,
                    ..
                }) if *minus != 0.0 || *plus != 0.0 => {
                    Some((field, *nominal, nominal - minus, nominal + plus))
                }
                _ => None,
            })
            .collect()
    }
    /// The number of a quantity field in its base unit.
    pub fn number(&self, id: &str) -> Option<f64> {
        match self.input(id)? {
            Input::Quantity { nominal, .. } => Some(*nominal),
            _ => None,
        }
    }
    /// The unit that a quantity field was read in.
    pub fn unit(&self, id: &str) -> Option<&'static Unit> {
        let index = self.sheet.fields.iter().position(|field| field.id == id)?;
        match self.values.get(index)?.as_ref()? {
            Input::Quantity { unit, .. } => Some(unit),
            _ => None,
        }
    }
    /// The same readings for numbers only.
    pub fn quietly(mut self) -> Self {
        self.quiet = true;
        self
    }
}
