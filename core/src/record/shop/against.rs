//! How does an entry stand to a shop? Whether its figures are this shop's, with which of its machines, and what becomes of
//! them where another shop takes over. Only fields that apply are compared: what no choice has brought up says nothing.

use super::{MachineKind, SHOP, Shop, text_of};
use crate::sheet::{Entry, Field, Preset, Sheet, applying, evaluate, plain_text};

impl Shop {
    /// The fields of an entry that stand as this shop types them in.
    pub fn typed_in(&self, sheet: &'static Sheet, entry: &Entry) -> Vec<usize> {
        let mine = self.start(sheet);
        let fields = sheet.fields.iter().enumerate();
        let same = |field: &'static Field| {
            let plain = |entry: &Entry| Some(plain_text(field, entry.get(field.id)?, entry.system));
            let now = plain(entry);
            now.is_some() && now == plain(&mine)
        };
        fields
            .filter(|(_, field)| same(field))
            .map(|(at, _)| at)
            .collect()
    }
    /// Which machine of a kind an entry's fields agree with: the one in use where it does. None where the entry was
    /// figured with another shop, or typed in by hand.
    pub fn stands(&self, sheet: &'static Sheet, entry: &Entry, kind: MachineKind) -> Option<usize> {
        let now = self.in_use(kind);
        let others = (0..self.count(kind)).filter(|at| *at != now);
        let places: Vec<usize> = core::iter::once(now).chain(others).collect();
        let here = applying(sheet, entry);
        let found = |wholly: bool| {
            let agrees = |at: &&usize| {
                self.using(kind, **at)
                    .agrees(sheet, entry, &here, Some(kind), wholly)
            };
            places.iter().find(agrees).copied()
        };
        found(true).or_else(|| found(false))
    }
    /// True where an entry's shop fields say other than this shop does, whichever of its machines is meant. Only fields that
    /// apply are compared: what a choice has not brought up yet says nothing.
    pub fn differs(&self, sheet: &'static Sheet, entry: &Entry) -> bool {
        !self.agrees(sheet, entry, &applying(sheet, entry), None, false)
            || Self::kinds(sheet).any(|kind| self.stands(sheet, entry, kind).is_none())
    }
    /// This shop with those machines in use that an entry agrees with.
    #[must_use]
    pub fn standing(&self, sheet: &'static Sheet, entry: &Entry) -> Self {
        Self::kinds(sheet).fold(self.clone(), |shop, kind| {
            match shop.stands(sheet, entry, kind) {
                Some(at) => shop.using(kind, at),
                None => shop,
            }
        })
    }
    /// Puts another shop's texts in place of this one's: what this one typed in goes, also where the other says nothing.
    pub fn give_way(&self, to: &Self, sheet: &'static Sheet, entry: &mut Entry) {
        let mine = evaluate(&SHOP, &self.entry());
        for field in sheet.fields {
            let plain = |text: &str| plain_text(field, text, entry.system);
            if let Preset::Filled(item, _) = field.preset
                && let Some(text) = text_of(&mine, item, true)
                && entry.get(field.id).map(plain) == Some(plain(&text))
            {
                entry.set(field.id, "");
            }
        }
        to.write_into(sheet, entry);
    }
    /// Whether the fields of a kind of machine, or of the bench, stand as this shop says; wholly: also that what it says
    /// nothing of is empty.
    fn agrees(
        &self,
        sheet: &'static Sheet,
        entry: &Entry,
        here: &[bool],
        kind: Option<MachineKind>,
        wholly: bool,
    ) -> bool {
        let mine = evaluate(&SHOP, &self.entry());
        let fields = sheet.fields.iter().zip(here);
        fields.filter(|(_, here)| **here).all(|(field, _)| {
            // a bare number means the same as one with the unit that it takes
            let same = |one: &str, other: &str| {
                one == other
                    || plain_text(field, one, entry.system)
                        == plain_text(field, other, entry.system)
            };
            let usual = field.preset.text().unwrap_or_default();
            let now = entry.get(field.id).unwrap_or(usual);
            match field.preset {
                Preset::Shop(item, _) if MachineKind::of(item) == kind => {
                    let text = text_of(&mine, item, false);
                    same(now, text.as_deref().unwrap_or(usual))
                }
                Preset::Filled(item, _) if MachineKind::of(item) == kind => {
                    match text_of(&mine, item, true) {
                        Some(text) => same(now, &text),
                        None => !wholly || same(now, usual),
                    }
                }
                _ => true,
            }
        })
    }
}
