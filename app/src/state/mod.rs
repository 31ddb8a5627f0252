//! What does one have before oneself on an answer page? The typed texts, the unit chosen for each, and the outcome:
//! a reducer without any screen, so that plain tests can run it.

mod draft;
pub mod rows;
#[cfg(test)]
mod tests;
mod typed;
mod words;

pub use draft::{Cleared, Draft};
pub use typed::Typed;

use crate::shared::Shared;
use benchslate_core::link::{self, Asked, Note, Opened};
use benchslate_core::powers;
use benchslate_core::quantity::{System, Unit};
use benchslate_core::record::{KeptItem, Shop};
use benchslate_core::sheet::{
    Answer, Entry, FieldOutcome, Outcome, Preset, Sheet, Table, evaluate,
};
use std::rc::Rc;
use typed::{entry_of, shown, typed_of};
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
    /// My shop, where it has a say: it fills what a choice brings up.
    mine: Option<Rc<Shop>>,
    /// What stood here before all was cleared, until something is entered.
    pub cleared: Option<Cleared>,
}

impl PartialEq for Form {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self.sheet, other.sheet)
            && Rc::ptr_eq(&self.outcome, &other.outcome)
            && self.typed == other.typed
            && self.asked == other.asked
            && self.system == other.system
            && self.cleared.is_some() == other.cleared.is_some()
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
    /// What was cleared stands there again.
    Unclear,
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
            mine: None,
            cleared: None,
        }
    }

    /// A form with what a link opened, and this shop at hand: where the link stands as this shop says, the shop also fills
    /// the fields that a choice brings up later. A link that was figured with another shop stays as it is.
    ///
    /// `own` says that it was opened from within, by the shop's owner: then the shop has its say in any case.
    pub fn open_in(opened: Opened, shop: &Shop, own: bool) -> Self {
        let mut form = Self::open(opened);
        if own || !shop.differs(form.sheet, &form.entry()) {
            form.mine = Some(Rc::new(shop.standing(form.sheet, &form.entry())));
        }
        form
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
            answer: self.first_words(),
        })
    }

    /// The link for the address, which keeps every text, also of fields that do not apply now.
    pub fn address(&self) -> Option<String> {
        link::state_of(self.sheet, &self.entry(), &self.outcome, &self.asked)
    }

    /// True where nothing was typed or chosen; what a shop presets does not count.
    pub fn is_empty(&self) -> bool {
        let fields = self.sheet.fields.iter().zip(&self.typed);
        fields
            .filter(|(field, _)| !matches!(field.preset, Preset::Shop(..)))
            .all(|(_, typed)| typed.raw.trim().is_empty())
    }

    /// The form after an action.
    #[must_use]
    pub fn after(&self, act: Act) -> Self {
        let mut next = self.clone();
        if !matches!(act, Act::System(_) | Act::Ask(_) | Act::Shop(..)) {
            next.cleared = None;
        }
        let loaded = !matches!(
            act,
            Act::Type(..) | Act::Unit(..) | Act::System(_) | Act::Ask(_)
        );
        next.take(act, self);
        if loaded {
            next.loads = next.loads.wrapping_add(1);
        }
        next.figure(self);
        next.bring_up(self);
        next
    }

    fn take(&mut self, act: Act, before: &Self) {
        match act {
            Act::Type(at, raw) => {
                if let Some(typed) = self.typed.get_mut(at) {
                    typed.raw = raw;
                    typed.says = "";
                }
            }
            Act::Unit(at, unit) => {
                if let (Some(typed), Some(field)) =
                    (self.typed.get_mut(at), self.sheet.fields.get(at))
                {
                    typed.choose(field, self.system, unit);
                }
            }
            Act::System(system) => self.turn_to(system),
            Act::Clear => {
                let held = !before.is_empty() || before.cleared.is_none();
                self.typed = vec![Typed::default(); self.sheet.fields.len()];
                self.asked = Asked::default();
                self.notes = Rc::from([]);
                self.cleared = if held {
                    Some(Cleared(Rc::new(before.clone())))
                } else {
                    before.cleared.clone()
                };
            }
            Act::Unclear => {
                if let Some(Cleared(held)) = &before.cleared {
                    let loads = self.loads;
                    *self = (**held).clone();
                    self.loads = loads;
                    self.cleared = None;
                }
            }
            Act::Fill(pairs) => {
                self.typed = vec![Typed::default(); self.sheet.fields.len()];
                if let Some(mine) = self.mine.clone() {
                    let start = mine.start(self.sheet);
                    self.show_where(&start, |field| matches!(field.preset, Preset::Shop(..)));
                }
                self.put(pairs);
            }
            Act::Show(entry) => {
                self.system = entry.system;
                self.typed = typed_of(self.sheet, &entry);
            }
            Act::Set(pairs) => self.put(pairs),
            Act::Ask(asked) => self.asked = asked,
            Act::Shop(from, to) => {
                let before = self.entry();
                let mut entry = before.clone();
                from.give_way(&to, self.sheet, &mut entry);
                // only what the shop changes: the rest stays as it was typed
                self.show_where(&entry, |field| before.get(field.id) != entry.get(field.id));
                self.mine = Some(Rc::new(to));
            }
        }
    }

    /// Results in another system; every entry and what is wanted keep the unit that they were read in.
    fn turn_to(&mut self, system: System) {
        if system == self.system {
            return;
        }
        for (field, typed) in self.sheet.fields.iter().zip(&mut self.typed) {
            typed.hold(field, self.system);
        }
        self.asked = powers::pinned(self.sheet, &self.asked, self.system);
        self.system = system;
    }

    /// The texts of an entry in these fields.
    fn show_where(&mut self, entry: &Entry, is: impl Fn(&benchslate_core::sheet::Field) -> bool) {
        for (field, typed) in self.sheet.fields.iter().zip(&mut self.typed) {
            if is(field) {
                let text = entry.get(field.id).unwrap_or_default();
                *typed = shown(field, text, self.system);
            }
        }
    }

    fn put(&mut self, pairs: Vec<(String, String)>) {
        for (id, text) in pairs {
            let at = self.sheet.fields.iter().position(|field| field.id == id);
            if let Some(typed) = at.and_then(|at| self.typed.get_mut(at)) {
                *typed = Typed::of(&text);
            }
        }
    }

    /// My shop in the empty fields that a choice has just brought up. Such a field may bring up others.
    fn bring_up(&mut self, before: &Self) {
        let Some(mine) = self.mine.clone() else {
            return;
        };
        let mut hidden: Vec<bool> = before.fields.iter().map(|field| !field.applies).collect();
        for _ in 0..4 {
            let start = mine.start(self.sheet);
            let mut changed = false;
            let fields = self.sheet.fields.iter().zip(&mut self.typed);
            for ((field, typed), (now, hidden)) in
                fields.zip(self.fields.iter().zip(hidden.iter_mut()))
            {
                let come = *hidden && now.applies;
                *hidden = !now.applies;
                if let (true, true, Some(text)) = (come, typed.raw.is_empty(), start.get(field.id))
                {
                    *typed = shown(field, text, self.system);
                    changed = true;
                }
            }
            if !changed {
                return;
            }
            let old = self.clone();
            self.figure(&old);
        }
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

    /// True where a figure of a shop was typed or written in, in a field that counts here.
    pub fn carries_shop(&self) -> bool {
        let fields = self.sheet.fields.iter().zip(&self.fields).zip(&self.typed);
        let mut of_shop = fields
            .filter(|((field, now), _)| now.applies && matches!(field.preset, Preset::Shop(..)));
        of_shop.any(|(_, typed)| !typed.raw.trim().is_empty())
    }

    /// True where a figure that a shop presets counts here.
    pub fn presets_count(&self) -> bool {
        let mut fields = self.sheet.fields.iter().zip(&self.fields);
        fields.any(|(field, now)| now.applies && matches!(field.preset, Preset::Shop(..)))
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
