//! Where does a figure come from, and how sure are we of it?

/// How a figure came to us.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Certainty {
    /// Read in print.
    Read,
    /// Worked out from the named published rule.
    Computed,
    /// Recalled from the standard and supported by a check.
    FromMemory,
    /// A fact of the trade, with no single author.
    CommonPractice,
}

impl Certainty {
    /// The word that stands behind the source on screen; nothing for what was read.
    pub const fn note(self) -> &'static str {
        match self {
            Self::Read => "",
            Self::Computed => "worked out from the published rule",
            Self::FromMemory => "from memory",
            Self::CommonPractice => "common practice",
        }
    }
}

/// A source by name: title with edition or year, and the place in it (table, equation, page).
#[derive(PartialEq, Eq, Debug)]
pub struct Source {
    /// Title with edition or year.
    pub title: &'static str,
    /// Table, equation or page.
    pub place: &'static str,
    /// How sure.
    pub certainty: Certainty,
}

impl Source {
    /// Read in print.
    pub const fn read(title: &'static str, place: &'static str) -> Self {
        Self {
            title,
            place,
            certainty: Certainty::Read,
        }
    }
    /// Worked out from a published rule.
    pub const fn computed(title: &'static str, place: &'static str) -> Self {
        Self {
            title,
            place,
            certainty: Certainty::Computed,
        }
    }
    /// Recalled from the standard.
    pub const fn from_memory(title: &'static str, place: &'static str) -> Self {
        Self {
            title,
            place,
            certainty: Certainty::FromMemory,
        }
    }
    /// Common practice of the trade.
    pub const fn practice(title: &'static str) -> Self {
        Self {
            title,
            place: "",
            certainty: Certainty::CommonPractice,
        }
    }
    /// One line for the screen.
    pub fn text(&self) -> String {
        let mut text = String::from(self.title);
        for part in [self.place, self.certainty.note()] {
            if !part.is_empty() {
                text.push_str(", ");
                text.push_str(part);
            }
        }
        text
    }
}
