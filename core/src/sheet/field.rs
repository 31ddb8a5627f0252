//! What may be entered? Fields as const data: kind, units, range, example, when it applies, where its default comes from.

use super::Thing;
use crate::call::Call;
use crate::quantity::{Kind, MM_PER_INCH, System, Unit, units_of};

/// One of a field's choices.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Choice {
    /// Stands in links, stable for ever.
    pub id: &'static str,
    /// On screen.
    pub label: &'static str,
}

/// What a field takes.
pub enum FieldKind {
    /// A number with a unit, or bare in the first unit offered for the system in use. May carry ±.
    Quantity {
        /// Kind of quantity.
        kind: Kind,
        /// Units offered.
        units: &'static [&'static Unit],
    },
    /// One of a few.
    Choice(&'static [Choice]),
    /// A named standard thing.
    Call(&'static Call),
    /// A list: `;` between rows and `~` between cells.
    Rows {
        /// Columns; none of them rows or conditional.
        columns: &'static [Field],
        /// Least number of rows.
        least: usize,
        /// Most rows.
        most: usize,
    },
}

/// What *my shop* can say to a sheet. Each is a text in the notation of the field that reads it.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum ShopItem {
    /// Spindle steps, rpm, as rows.
    SpindleSteps,
    /// Table feed steps of the mill, as rows.
    FeedSteps,
    /// Drill spindle steps, rpm, as rows.
    DrillPressSteps,
    /// Table feed steps of a mill whose feed follows the spindle, per turn, as rows.
    FeedStepsTurn,
    /// Lathe spindle steps, rpm, as rows.
    LatheSteps,
    /// Power feeds of the lathe, per turn, as rows.
    LatheFeeds,
    /// Whether the table feed follows the spindle: choice.
    FeedFollows,
    /// Rapid traverse.
    Rapid,
    /// Lead of the table screw: travel a turn.
    ScrewLead,
    /// What the dial of that screw shows for a turn.
    DialTurn,
    /// Divisions of its dial.
    DialDivisions,
    /// Lead of the lathe's leadscrew, as threads per inch or a pitch.
    Leadscrew,
    /// Change wheels of the lathe, teeth, as rows.
    ChangeWheels,
    /// Teeth of the thread dial's wheel.
    ThreadDialWheel,
    /// Lines on the thread dial.
    ThreadDialLines,
    /// Taper of the mill spindle: choice.
    SpindleTaper,
    /// Arbor diameter.
    Arbor,
    /// Motor power.
    Motor,
    /// Motor power of the lathe.
    LatheMotor,
    /// Share of the motor's power that arrives at the cutter.
    DriveEfficiency,
    /// Which drill sets are owned: choice among sets.
    DrillSets,
    /// Least torque that the wrench reads.
    WrenchLow,
    /// Most torque that the wrench reads.
    WrenchHigh,
}

/// Where a field's value comes from when nothing is typed.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Preset {
    /// Nowhere: it is needed, or optional.
    None,
    /// A fixed text, frozen with the sheet's revision.
    Text(&'static str),
    /// *My shop*; the text is that of the general shop. What differs from it is written into the link.
    Shop(ShopItem, &'static str),
    /// What is asked for all the same, typed in by *my shop* where it says so; the text is the usual one, or empty.
    Filled(ShopItem, &'static str),
}

impl Preset {
    /// Something holds when nothing is typed.
    pub const fn holds(self) -> bool {
        match self {
            Self::None => false,
            Self::Shop(_, text) | Self::Filled(_, text) => !text.is_empty(),
            Self::Text(_) => true,
        }
    }
    /// What *my shop* says to the field.
    pub const fn item(self) -> Option<ShopItem> {
        match self {
            Self::Shop(item, _) | Self::Filled(item, _) => Some(item),
            Self::None | Self::Text(_) => None,
        }
    }
    /// The text that holds when nothing is typed. A general shop that has no such thing says nothing.
    pub const fn text(self) -> Option<&'static str> {
        match self {
            Self::Shop(_, text) | Self::Filled(_, text) if text.is_empty() => None,
            Self::Text(text) | Self::Shop(_, text) | Self::Filled(_, text) => Some(text),
            Self::None => None,
        }
    }
}

/// A condition: the choice field named stands at one of these.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct When {
    /// An earlier choice field.
    pub field: &'static str,
    /// Its choices with which this field applies.
    pub is: &'static [&'static str],
}

/// The allowed range in the kind's base unit, ends included, with its reason in words.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Range {
    /// Least.
    pub low: f64,
    /// Most.
    pub high: f64,
    /// Why.
    pub why: &'static str,
}

impl Range {
    /// In the kind's base unit.
    pub const fn within(low: f64, high: f64, why: &'static str) -> Self {
        Self { low, high, why }
    }
    /// Of a length, in inches.
    pub const fn inches(low: f64, high: f64, why: &'static str) -> Self {
        Self::within(low * MM_PER_INCH, high * MM_PER_INCH, why)
    }
}

/// A field of a sheet.
#[allow(clippy::struct_excessive_bools)] // four plain yes-or-no declarations, each named where it is set
pub struct Field {
    /// Stands in links: kebab case, stable for ever.
    pub id: &'static str,
    /// On screen.
    pub label: &'static str,
    /// What it takes.
    pub kind: FieldKind,
    /// An accepted example, one tap away.
    pub example: &'static str,
    /// One line of help, or nothing.
    pub hint: &'static str,
    /// What holds when nothing is typed.
    pub preset: Preset,
    /// Allowed range of a quantity.
    pub range: Option<Range>,
    /// All must hold for the field to apply.
    pub when: &'static [When],
    /// A measured size, which may carry ±; else nominal.
    pub is_measured: bool,
    /// Every result rises or falls steadily with it, so that the ends give the range.
    pub is_monotonic: bool,
    /// May stay empty.
    pub is_optional: bool,
    /// Seldom asked for: shown folded until it is used.
    pub is_seldom: bool,
    /// What it takes, so that an answer can be carried on into it.
    pub thing: Option<Thing>,
}

const fn blank(id: &'static str, label: &'static str, kind: FieldKind) -> Field {
    Field {
        id,
        label,
        kind,
        example: "",
        hint: "",
        preset: Preset::None,
        range: None,
        when: &[],
        is_measured: false,
        is_monotonic: false,
        is_optional: false,
        is_seldom: false,
        thing: None,
    }
}

impl Field {
    /// A quantity in the units given, the first of each system first.
    pub const fn quantity(
        id: &'static str,
        label: &'static str,
        kind: Kind,
        units: &'static [&'static Unit],
    ) -> Self {
        blank(id, label, FieldKind::Quantity { kind, units })
    }
    /// A length in inches, thousandths or millimetres.
    pub const fn length(id: &'static str, label: &'static str) -> Self {
        use crate::quantity::units::{INCH, MM, THOU};
        Self::quantity(id, label, Kind::Length, const { &[&INCH, &MM, &THOU] })
    }
    /// Feed of a table per minute, from the slowest that a plate may show to the fastest: the one range of them all.
    pub const fn table_feed(id: &'static str, label: &'static str) -> Self {
        use crate::quantity::units::{IN_PER_MIN, MM_PER_MIN};
        Self::quantity(
            id,
            label,
            Kind::FeedRate,
            const { &[&IN_PER_MIN, &MM_PER_MIN] },
        )
        .range(0.1, 20_000.0, "the range of table feeds")
    }
    /// A whole number of things.
    pub const fn count(id: &'static str, label: &'static str) -> Self {
        use crate::quantity::units::COUNT;
        Self::quantity(id, label, Kind::Count, const { &[&COUNT] })
    }
    /// A bare number.
    pub const fn number(id: &'static str, label: &'static str) -> Self {
        use crate::quantity::units::NUMBER;
        Self::quantity(id, label, Kind::Number, const { &[&NUMBER] })
    }
    /// A percentage.
    pub const fn percent(id: &'static str, label: &'static str) -> Self {
        use crate::quantity::units::PERCENT;
        Self::quantity(id, label, Kind::Share, const { &[&PERCENT] })
    }
    /// One of a few, the first being the default.
    pub const fn choice(id: &'static str, label: &'static str, choices: &'static [Choice]) -> Self {
        let first = match choices.first() {
            Some(choice) => Preset::Text(choice.id),
            None => Preset::None,
        };
        let mut field = blank(id, label, FieldKind::Choice(choices));
        field.preset = first;
        field
    }
    /// A named standard thing.
    pub const fn call(id: &'static str, label: &'static str, call: &'static Call) -> Self {
        blank(id, label, FieldKind::Call(call))
    }
    /// A list of rows.
    pub const fn rows(
        id: &'static str,
        label: &'static str,
        columns: &'static [Self],
        least: usize,
        most: usize,
    ) -> Self {
        blank(
            id,
            label,
            FieldKind::Rows {
                columns,
                least,
                most,
            },
        )
    }
    /// An accepted example.
    pub const fn example(mut self, text: &'static str) -> Self {
        self.example = text;
        self
    }
    /// One line of help.
    pub const fn hint(mut self, text: &'static str) -> Self {
        self.hint = text;
        self
    }
    /// What holds when nothing is typed.
    pub const fn preset(mut self, text: &'static str) -> Self {
        self.preset = Preset::Text(text);
        self
    }
    /// Filled from *my shop*; `general` is what the general shop says.
    pub const fn from_shop(mut self, item: ShopItem, general: &'static str) -> Self {
        self.preset = Preset::Shop(item, general);
        self
    }
    /// Typed in by *my shop* where it says so; else its preset holds, or it is asked for.
    pub const fn filled_from_shop(mut self, item: ShopItem) -> Self {
        let usual = match self.preset {
            Preset::Text(text) => text,
            _ => "",
        };
        self.preset = Preset::Filled(item, usual);
        self
    }
    /// Allowed range in the kind's base unit, ends included.
    pub const fn range(mut self, low: f64, high: f64, why: &'static str) -> Self {
        self.range = Some(Range { low, high, why });
        self
    }
    /// Allowed range in millimetres.
    pub const fn range_mm(self, low: f64, high: f64, why: &'static str) -> Self {
        self.range(low, high, why)
    }
    /// Allowed range in inches.
    pub const fn range_in(self, low: f64, high: f64, why: &'static str) -> Self {
        self.range(low * MM_PER_INCH, high * MM_PER_INCH, why)
    }
    /// Conditions, all of which must hold.
    pub const fn when(mut self, when: &'static [When]) -> Self {
        self.when = when;
        self
    }
    /// A measured size: it may carry ±.
    pub const fn measured(mut self) -> Self {
        self.is_measured = true;
        self
    }
    /// Results rise or fall steadily with it.
    pub const fn monotonic(mut self) -> Self {
        self.is_monotonic = true;
        self
    }
    /// May stay empty.
    pub const fn optional(mut self) -> Self {
        self.is_optional = true;
        self
    }
    /// What it takes, for the questions that go on to it.
    pub const fn is(mut self, thing: Thing) -> Self {
        self.thing = Some(thing);
        self
    }
    /// True for a quantity of this kind.
    pub fn kind_is(&self, wanted: Kind) -> bool {
        matches!(self.kind, FieldKind::Quantity { kind, .. } if kind == wanted)
    }
    /// Seldom asked for: shown folded until it is used. Only what has a preset, may stay empty, or hangs on a seldom choice.
    pub const fn seldom(mut self) -> Self {
        self.is_seldom = true;
        self
    }
    /// Where something stands in a list: the row, counted from 1, and the column by its name.
    pub fn place(&self, (row, column): (usize, usize)) -> String {
        let named = match &self.kind {
            FieldKind::Rows { columns, .. } if columns.len() > 1 => {
                columns.get(column.saturating_sub(1))
            }
            _ => None,
        };
        named.map_or_else(
            || format!("row {row}"),
            |named| format!("row {row}, {}", super::lowered(named.label)),
        )
    }
    /// The unit that a bare number takes in this system of units.
    pub fn unit(&self, system: System) -> Option<&'static Unit> {
        let FieldKind::Quantity { kind, units } = self.kind else {
            return None;
        };
        let fits = |unit: &&&'static Unit| unit.system.is_none_or(|s| s == system);
        units
            .iter()
            .find(fits)
            .or_else(|| units.first())
            .or_else(|| units_of(kind).first())
            .copied()
    }
}

/// A condition on one choice field.
pub const fn when(field: &'static str, is: &'static [&'static str]) -> When {
    When { field, is }
}

/// A choice.
pub const fn choice(id: &'static str, label: &'static str) -> Choice {
    Choice { id, label }
}
