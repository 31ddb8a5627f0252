//! Who is a sheet? Its name, question, fields, results and function.

use super::{Answer, Field, Inputs, Stop, Thing, Value};
use crate::quantity::Kind;

/// What one is doing: the groups of the home page, in its order.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum Group {
    /// What is this part?
    Identify,
    /// Make it fit.
    Fit,
    /// Put it together.
    Assemble,
    /// Run the machine.
    Run,
}

impl Group {
    /// All, in the order of the home page.
    pub const ALL: [Self; 4] = [Self::Identify, Self::Fit, Self::Assemble, Self::Run];
    /// Heading on the home page.
    pub const fn title(self) -> &'static str {
        match self {
            Self::Identify => "What is this part?",
            Self::Fit => "Make it fit",
            Self::Assemble => "Put it together",
            Self::Run => "Run the machine",
        }
    }
}

/// A declared result: its id stands in links of the powers and in JSON.
pub struct Res {
    /// Kebab case, stable for ever.
    pub id: &'static str,
    /// On screen.
    pub label: &'static str,
    /// Kind of quantity; none for words.
    pub kind: Option<Kind>,
    /// Moves in steps (a pick, a count), so not every value can be asked of it.
    pub stepped: bool,
    /// Starts again or turns back somewhere (a dial reading, a way to a pole), so that no range holds over such a place.
    pub wraps: bool,
    /// The convention that it follows, in one line; the function may say another that names this entry's figures.
    pub says: &'static str,
    /// Decimals in the inch and the metric unit, where they are not the kind's usual ones.
    pub places: Option<(u8, u8)>,
    /// Always printed with its sign.
    pub is_signed: bool,
    /// What it is, so that other questions can go on with it.
    pub thing: Option<Thing>,
}

impl Res {
    const fn new(id: &'static str, label: &'static str, kind: Option<Kind>, stepped: bool) -> Self {
        Self {
            id,
            label,
            kind,
            stepped,
            wraps: false,
            says: "",
            places: None,
            is_signed: false,
            thing: None,
        }
    }
    /// A result that moves smoothly.
    pub const fn of(id: &'static str, label: &'static str, kind: Kind) -> Self {
        Self::new(id, label, Some(kind), false)
    }
    /// A result that moves in steps.
    pub const fn stepped(id: &'static str, label: &'static str, kind: Kind) -> Self {
        Self::new(id, label, Some(kind), true)
    }
    /// A result in words.
    pub const fn words(id: &'static str, label: &'static str) -> Self {
        Self::new(id, label, None, true)
    }
    /// It starts again or turns back somewhere, as a dial reading does: over such a place no range is shown.
    pub const fn wraps(mut self) -> Self {
        self.wraps = true;
        self
    }
    /// The convention that it follows: "Half angle, from the axis."
    pub const fn says(mut self, text: &'static str) -> Self {
        self.says = text;
        self
    }
    /// Decimals in the inch and the metric unit.
    pub const fn places(mut self, inch: u8, metric: u8) -> Self {
        self.places = Some((inch, metric));
        self
    }
    /// Always with its sign: it counts from something.
    pub const fn signed(mut self) -> Self {
        self.is_signed = true;
        self
    }
    /// What it is, for the questions that go on from it.
    pub const fn is(mut self, thing: Thing) -> Self {
        self.thing = Some(thing);
        self
    }
    /// A value as this result prints it.
    pub(super) fn printed(&self, mut value: Value) -> Value {
        if let Some((inch, metric)) = self.places {
            value = value.places(inch, metric);
        }
        if self.is_signed {
            value.signed()
        } else {
            value
        }
    }
}

/// A table row that the search box finds, and the entry that opens with it.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Find {
    /// What one may type to find it, in lower case, one way each: "#7", ".201", "no. 7".
    pub keys: Vec<String>,
    /// The row's name: "Drill #7".
    pub title: String,
    /// Beside it: "0.2010 in".
    pub aside: String,
    /// The entry that opens.
    pub entry: Vec<(&'static str, String)>,
}

/// A sheet: declared data and one pure function.
pub struct Sheet {
    /// Trade term in kebab case, stable for ever.
    pub id: &'static str,
    /// Counts up when defaults or figures change.
    pub revision: u16,
    /// On the home page: an answer in shop words ("Size a taper pin").
    pub title: &'static str,
    /// The question it answers.
    pub question: &'static str,
    /// What it works from, beside the title on the home page.
    pub aside: &'static str,
    /// More words that find it.
    pub words: &'static [&'static str],
    /// Its group.
    pub group: Group,
    /// What is entered, a condition's field before the field that has the condition.
    pub fields: &'static [Field],
    /// All results that it may give.
    pub results: &'static [Res],
    /// Entries that give a complete answer, the first being the one-tap example.
    pub examples: &'static [&'static [(&'static str, &'static str)]],
    /// Fields that a text in the search box may fill, where it reads there without fault.
    pub takes: &'static [&'static str],
    /// Table rows for the search box.
    pub finds: Option<fn() -> Vec<Find>>,
    /// The function. It fills the answer as far as the entry goes: what was put in before it lacks something stands.
    pub figure: fn(&Inputs, &mut Answer) -> Result<(), Stop>,
}

impl Sheet {
    /// A field by id.
    pub fn field(&self, id: &str) -> Option<&'static Field> {
        self.fields.iter().find(|field| field.id == id)
    }
    /// A declared result by id.
    pub fn result(&self, id: &str) -> Option<&'static Res> {
        self.results.iter().find(|res| res.id == id)
    }
}
