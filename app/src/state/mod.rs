//! What does one have before oneself on an answer page? The typed texts, the unit chosen for each, and the outcome:
//! a reducer without any screen, so that plain tests can run it.

pub mod rows;
mod typed;
mod words;

pub use typed::Typed;

use crate::shared::Shared;
use benchslate_core::link::{self, Asked, Note, Opened};
use benchslate_core::quantity::{System, Unit};
use benchslate_core::record::{KeptItem, Shop};
use benchslate_core::sheet::{Answer, Entry, FieldOutcome, Outcome, Sheet, Table, evaluate};
use std::rc::Rc;
use typed::{bare, ends_bare, entry_of, typed_of};
use words::short;

/// A form: a sheet, its texts, and what became of them.
#[derive(Clone)]
pub struct Form {
    /// The sheet.
    pub sheet: &'static Sheet,
    /// A text a field, in declared order.
    pub typed: Vec<Typed>,
    /// The system that results are shown in.
    pub system: System,
    /// What is asked of the powers.
    pub asked: Asked,
    /// What the link said that could not be taken.
    pub notes: Rc<[Note]>,
    /// What became of the fields.
    pub fields: Vec<Shared<FieldOutcome>>,
    /// What became of the whole.
    pub outcome: Rc<Outcome>,
    /// The tables of the last answer, each the same object for as long as it reads the same.
    pub tables: Vec<Shared<Table>>,
    /// Counts the changes that come from elsewhere than the keys: a link opened, all cleared.
    pub loads: u32,
}

impl PartialEq for Form {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self.sheet, other.sheet)
            && Rc::ptr_eq(&self.outcome, &other.outcome)
            && self.typed == other.typed
            && self.asked == other.asked
    }
}

/// What may be done to a form.
#[derive(Clone, Debug)]
pub enum Act {
    /// A field's text changed under the keys.
    Type(usize, Rc<str>),
    /// A unit was chosen for a field.
    Unit(usize, &'static Unit),
    /// Results in this system.
    System(System),
    /// All fields empty again.
    Clear,
    /// These texts by field id, in place of all.
    Fill(Vec<(String, String)>),
    /// This entry, in place of all.
    Show(Entry),
    /// These texts by field id, in place of what those fields hold.
    Set(Vec<(String, String)>),
    /// Another question to the powers.
    Ask(Asked),
    /// The second shop's texts in place of the first's, or of the sender's.
    Shop(Shop, Shop),
}

impl Form {
    /// A form with what a link opened.
    pub fn open(opened: Opened) -> Self {
        let Opened {
            sheet,
            entry,
            asked,
            notes,
        } = opened;
        let (typed, system, notes, loads) =
            (typed_of(sheet, &entry), entry.system, notes.into(), 0);
        let outcome = Rc::new(evaluate(sheet, &entry_of(sheet, &typed, system)));
        let fields = outcome.fields.iter().cloned().map(Shared::new).collect();
        let tables = outcome
            .answer
            .tables
            .iter()
            .cloned()
            .map(Shared::new)
            .collect();
        Self {
            sheet,
            typed,
            system,
            asked,
            notes,
            fields,
            outcome,
            tables,
            loads,
        }
    }

    /// The entry as it is evaluated.
    pub fn entry(&self) -> Entry {
        entry_of(self.sheet, &self.typed, self.system)
    }

    /// The answer.
    pub fn answer(&self) -> &Answer {
        &self.outcome.answer
    }

    /// The link to hand on; none where it would be too long.
    pub fn link(&self) -> Option<String> {
        link::of(self.sheet, &self.entry(), &self.outcome, &self.asked)
    }

    /// The link to keep on the device or in a file, however long.
    pub fn whole_link(&self) -> Option<String> {
        link::whole(self.sheet, &self.entry(), &self.outcome, &self.asked)
    }

    /// What stands in the kept list for this answer.
    pub fn kept(&self, day: String) -> Option<KeptItem> {
        let words = self.entry_words();
        let name = if words.is_empty() {
            self.sheet.title.to_owned()
        } else {
            format!("{}: {}", self.sheet.title, short(&words))
        };
        Some(KeptItem {
            name,
            link: self.whole_link()?,
            note: String::new(),
            day,
        })
    }

    /// The link for the address, which keeps every text, also of fields that do not apply now.
    pub fn address(&self) -> Option<String> {
        link::state_of(self.sheet, &self.entry(), &self.outcome, &self.asked)
    }

    /// True where nothing was typed or chosen.
    pub fn is_empty(&self) -> bool {
        self.typed.iter().all(|typed| typed.raw.trim().is_empty())
    }

    /// The form after an action.
    #[must_use]
    pub fn after(&self, act: Act) -> Self {
        let mut next = self.clone();
        let mut loaded = false;
        match act {
            Act::Type(at, raw) => {
                if let Some(typed) = next.typed.get_mut(at) {
                    typed.raw = raw;
                }
            }
            Act::Unit(at, unit) => next.choose_unit(at, unit),
            Act::System(system) => next.system = system,
            Act::Clear => {
                next.typed = vec![Typed::default(); next.sheet.fields.len()];
                next.asked = Asked::default();
                next.notes = Rc::from([]);
                loaded = true;
            }
            Act::Fill(pairs) => {
                next.typed = vec![Typed::default(); next.sheet.fields.len()];
                next.put(pairs);
                loaded = true;
            }
            Act::Show(entry) => {
                next.system = entry.system;
                next.typed = typed_of(next.sheet, &entry);
                loaded = true;
            }
            Act::Set(pairs) => {
                next.put(pairs);
                loaded = true;
            }
            Act::Ask(asked) => next.asked = asked,
            Act::Shop(from, to) => {
                let mut entry = next.entry();
                from.give_way(&to, next.sheet, &mut entry);
                next.typed = typed_of(next.sheet, &entry);
                loaded = true;
            }
        }
        if loaded {
            next.loads = next.loads.wrapping_add(1);
        }
        next.figure(self);
        next
    }

    fn put(&mut self, pairs: Vec<(String, String)>) {
        for (id, text) in pairs {
            let at = self.sheet.fields.iter().position(|field| field.id == id);
            if let Some(typed) = at.and_then(|at| self.typed.get_mut(at)) {
                *typed = Typed {
                    raw: text.into(),
                    unit: None,
                };
            }
        }
    }

    fn choose_unit(&mut self, at: usize, unit: &'static Unit) {
        let (Some(typed), Some(field)) = (self.typed.get_mut(at), self.sheet.fields.get(at)) else {
            return;
        };
        let raw = typed.raw.trim();
        if !raw.is_empty() && !ends_bare(raw) {
            typed.raw = bare(raw).into();
        }
        // an own preset has no raw text to carry the unit
        if typed.raw.is_empty()
            && let Some(text) = field.preset.text()
        {
            typed.raw = bare(text).into();
        }
        typed.unit = Some(unit);
    }

    fn figure(&mut self, before: &Self) {
        let entry = self.entry();
        let outcome = Rc::new(evaluate(self.sheet, &entry));
        self.fields = outcome
            .fields
            .iter()
            .zip(&before.fields)
            .map(|(new, old)| old.kept(new))
            .collect();
        if outcome.answer.is_complete() {
            let old = &before.tables;
            let kept = |(at, new): (usize, &Table)| {
                old.get(at)
                    .map_or_else(|| Shared::new(new.clone()), |old| old.kept(new))
            };
            self.tables = outcome.answer.tables.iter().enumerate().map(kept).collect();
        }
        self.outcome = outcome;
    }

    /// The unit that stands behind a field: the one read, else the chosen one, else the field's own.
    pub fn unit(&self, at: usize) -> Option<&'static Unit> {
        let field = self.sheet.fields.get(at)?;
        let own = self.typed.get(at).and_then(|typed| typed.unit);
        self.outcome
            .inputs
            .unit(field.id)
            .or(own)
            .or_else(|| field.unit(self.system))
    }

    /// The fields that stand as this shop types them in.
    pub fn by_shop(&self, shop: &Shop) -> Vec<usize> {
        shop.typed_in(self.sheet, &self.entry())
    }

    /// True where an entry came with another shop's figures.
    pub fn other_shop(&self, shop: &Shop) -> bool {
        let has = self
            .sheet
            .fields
            .iter()
            .any(|field| field.preset.item().is_some());
        has && shop.differs(self.sheet, &self.entry())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use benchslate_core::quantity::units;
    use benchslate_core::sheet::State;
    use benchslate_core::sheets;

    fn open(link: &str) -> Form {
        Form::open(link::open(link).unwrap())
    }

    #[test]
    fn a_link_opens_shows_and_writes_itself_again() {
        for &sheet in sheets::ALL {
            for example in sheet.examples {
                let entry = Entry::of(example);
                let wanted =
                    link::of(sheet, &entry, &evaluate(sheet, &entry), &Asked::default()).unwrap();
                assert_eq!(open(&wanted).link().as_deref(), Some(wanted.as_str()));
            }
        }
    }

    #[test]
    fn the_unit_of_a_bare_number_stands_in_its_own_place() {
        let form = open("#/v1/length?length=7/16%20mm");
        assert_eq!(&*form.typed[0].raw, "7/16");
        assert_eq!(form.unit(0), Some(&units::MM));
        let form = form.after(Act::Unit(0, &units::INCH));
        assert_eq!(form.answer().lines[0].value.text(System::Inch), "0.4375");
        assert_eq!(form.link().as_deref(), Some("#/v1/length?length=7/16%20in"));
    }

    #[test]
    fn half_typed_text_stays_as_typed_and_asks_for_the_rest() {
        let form = open("#/v1/length")
            .after(Act::Unit(0, &units::MM))
            .after(Act::Type(0, "1/".into()));
        assert_eq!(&*form.typed[0].raw, "1/");
        assert!(matches!(form.answer().state, State::Incomplete(_)));
    }

    #[test]
    fn choosing_a_unit_takes_the_typed_one_off() {
        let form = open("#/v1/length")
            .after(Act::Type(0, "1-1/2 in".into()))
            .after(Act::Unit(0, &units::MM));
        assert_eq!(&*form.typed[0].raw, "1-1/2");
        assert_eq!(form.unit(0), Some(&units::MM));
    }

    #[test]
    fn an_entry_too_long_to_hand_on_is_kept_whole() {
        let rows = "1.25 ipm~1.0625 in~61.5 s~10;".repeat(60);
        let form = open("#/v1/feed-check").after(Act::Type(0, rows.trim_end_matches(';').into()));
        assert_eq!(form.link(), None);
        let kept = form.kept("2026-11-26".into()).unwrap();
        assert!(kept.link.len() > link::MOST_CHARS && kept.name.len() < 250);
        let again = open(&kept.link);
        assert_eq!(again.whole_link(), Some(kept.link));
        assert_eq!(
            again.entry().get("timings"),
            Some(rows.trim_end_matches(';'))
        );
    }

    #[test]
    fn clearing_leaves_an_empty_link() {
        let form = open("#/v1/length?length=7/16%20in").after(Act::Clear);
        assert!(form.is_empty());
        assert_eq!(form.address().as_deref(), Some("#/v1/length"));
    }
}
