//! Who is a sheet? Its name, question, fields, results and function.

use super::{Answer, Field, Inputs, Stop};
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
}

impl Res {
    /// A result that moves smoothly.
    pub const fn of(id: &'static str, label: &'static str, kind: Kind) -> Self {
        Self {
            id,
            label,
            kind: Some(kind),
            stepped: false,
            wraps: false,
        }
    }
    /// A result that moves in steps.
    pub const fn stepped(id: &'static str, label: &'static str, kind: Kind) -> Self {
        Self {
            id,
            label,
            kind: Some(kind),
            stepped: true,
            wraps: false,
        }
    }
    /// It starts again or turns back somewhere, as a dial reading does: over such a place no range is shown.
    pub const fn wraps(mut self) -> Self {
        self.wraps = true;
        self
    }
    /// A result in words.
    pub const fn words(id: &'static str, label: &'static str) -> Self {
        Self {
            id,
            label,
            kind: None,
            stepped: true,
            wraps: false,
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
    /// The function.
    pub figure: fn(&Inputs) -> Result<Answer, Stop>,
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
