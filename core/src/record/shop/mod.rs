//! What is in the shop? The machines' steps, the drills owned, the wrench: texts in the notation of the fields that
//! read them. Of each kind of machine one is in use: what a question reads is written into its link from that one.

mod against;
mod form;
mod machine;

pub use form::{
    DRILL_PRESS, DRILL_SETS, FEED_STEP, FEEDS, FEEDS_TURN, FOLLOWS, LATHE, SHOP, SPEED_STEP,
    SPINDLE, TURN_FEED_STEP, WHEEL,
};
pub use machine::{MOST_MACHINES, Machine, MachineKind};

use super::Record;
use crate::quantity::System;
use crate::sheet::*;
use machine::MOST_NAME;

/// *My shop*: what is entered, by item; nothing entered means the general shop.
#[derive(Clone, PartialEq, Eq, Debug, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(from = "Read"))]
pub struct Shop {
    /// Units preferred.
    pub system: System,
    /// What stands on the bench: texts by the ids of [`SHOP`]'s fields.
    pub items: Vec<(String, String)>,
    /// The machines of which something is known, those of a kind in the order of the page.
    pub machines: Vec<Machine>,
}

/// A shop as a file has it: form 1 knew one machine of each kind, and kept its texts among the bench's.
#[derive(Default)]
#[cfg_attr(feature = "serde", derive(serde::Deserialize))]
#[cfg_attr(feature = "serde", serde(default))]
struct Read {
    system: System,
    items: Vec<(String, String)>,
    machines: Vec<Machine>,
}

impl From<Read> for Shop {
    fn from(read: Read) -> Self {
        let mut shop = Self {
            system: read.system,
            items: Vec::new(),
            machines: read.machines,
        };
        for (id, text) in read.items {
            let Some(kind) = kind_of(&id) else {
                shop.items.push((id, text));
                continue;
            };
            shop.grant(kind);
            if let Some(machine) = shop.machine_mut(kind, 0)
                && machine.items.iter().all(|(known, _)| *known != id)
            {
                machine.items.push((id, text));
            }
        }
        shop.tidy();
        shop
    }
}

/// What may be done to the shop.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum ShopAction {
    /// Prefers a system of units.
    System(System),
    /// Enters an item's text, of the machine in use; an empty text goes back to the general shop.
    Item(String, String),
    /// These texts in place of all of the bench and of the machines in use.
    Fill(System, Vec<(String, String)>),
    /// Another machine of a kind, of which nothing is known yet; it is in use.
    Add(MachineKind),
    /// Another machine like the one in use; it is in use.
    Copy(MachineKind),
    /// Takes the machine in use away.
    Remove(MachineKind),
    /// Names the machine in use.
    Name(MachineKind, String),
    /// Uses the machine at this place of its kind.
    Use(MachineKind, usize),
    /// Takes another shop in place of this one.
    Replace(Shop),
}

impl Record for Shop {
    type Action = ShopAction;
    const NAME: &'static str = "my-shop";
    // 2: several machines of a kind; 3: every figure has the unit that it was read in
    const VERSION: u32 = 3;

    fn after(&self, action: &ShopAction) -> Self {
        let mut shop = self.clone();
        match action {
            ShopAction::System(system) => shop.system = *system,
            ShopAction::Item(id, text) => {
                let mut entry = shop.entry();
                entry.set(id, text);
                shop.fill(entry.texts(), shop.system);
            }
            ShopAction::Fill(system, texts) => {
                shop.system = *system;
                let texts = texts.iter().map(|(id, text)| (id.as_str(), text.as_str()));
                shop.fill(texts, *system);
            }
            ShopAction::Add(kind) => {
                shop.add(*kind, |_| Machine::blank(*kind));
            }
            ShopAction::Copy(kind) => shop.add(*kind, Clone::clone),
            ShopAction::Remove(kind) => {
                let at = shop.in_use(*kind);
                let place = shop.place(*kind, at);
                if let Some(place) = place {
                    shop.machines.remove(place);
                    shop.choose(*kind, at.saturating_sub(1));
                }
            }
            ShopAction::Name(kind, name) => {
                let at = shop.in_use(*kind);
                shop.grant(*kind);
                if let Some(machine) = shop.machine_mut(*kind, at) {
                    machine.name = name.chars().take(MOST_NAME).collect();
                }
            }
            ShopAction::Use(kind, at) => {
                if *at < shop.count(*kind) {
                    shop.choose(*kind, *at);
                }
            }
            ShopAction::Replace(other) => shop = other.clone(),
        }
        shop.tidy();
        shop
    }

    // an older file says in which system its bare figures were read: its own
    fn of_older(mut self, _version: u32, _known: Option<System>) -> Self {
        let system = self.system;
        let machines = self
            .machines
            .iter_mut()
            .flat_map(|machine| &mut machine.items);
        for (id, text) in self.items.iter_mut().chain(machines) {
            *text = with_units(id, text, system);
        }
        self
    }
}

/// A text of the shop with the unit that its figures were read in.
fn with_units(id: &str, text: &str, system: System) -> String {
    SHOP.field(id)
        .map_or_else(|| text.to_owned(), |field| pinned(field, text, system))
}

/// The kind of machine that a field of the shop belongs to.
fn kind_of(id: &str) -> Option<MachineKind> {
    MachineKind::of(SHOP.field(id)?.preset.item()?)
}

impl Shop {
    /// The machines of a kind.
    pub fn of_kind(&self, kind: MachineKind) -> impl Iterator<Item = &Machine> {
        self.machines
            .iter()
            .filter(move |machine| machine.kind == kind)
    }
    /// How many machines of a kind there are; at least one is taken for granted.
    pub fn count(&self, kind: MachineKind) -> usize {
        self.of_kind(kind).count().max(1)
    }
    /// Which machine of a kind is in use.
    pub fn in_use(&self, kind: MachineKind) -> usize {
        self.of_kind(kind)
            .position(|machine| machine.in_use)
            .unwrap_or_default()
    }
    /// What the machine at a place of its kind is called: its name, else its kind and number.
    pub fn name(&self, kind: MachineKind, at: usize) -> String {
        match self.of_kind(kind).nth(at) {
            Some(machine) if !machine.name.trim().is_empty() => machine.name.clone(),
            _ => format!("{} {}", kind.label(), at.saturating_add(1)),
        }
    }
    fn place(&self, kind: MachineKind, at: usize) -> Option<usize> {
        let places = self.machines.iter().enumerate();
        places
            .filter(|(_, machine)| machine.kind == kind)
            .map(|(place, _)| place)
            .nth(at)
    }
    fn machine_mut(&mut self, kind: MachineKind, at: usize) -> Option<&mut Machine> {
        let place = self.place(kind, at)?;
        self.machines.get_mut(place)
    }
    /// A blank machine where none of the kind is known.
    fn grant(&mut self, kind: MachineKind) {
        if self.place(kind, 0).is_none() {
            self.machines.push(Machine::blank(kind));
        }
    }
    fn choose(&mut self, kind: MachineKind, at: usize) {
        let machines = self.machines.iter_mut();
        for (place, machine) in machines.filter(|machine| machine.kind == kind).enumerate() {
            machine.in_use = place == at && at > 0;
        }
    }
    fn add(&mut self, kind: MachineKind, like: impl Fn(&Machine) -> Machine) {
        let count = self.count(kind);
        if count >= MOST_MACHINES {
            return;
        }
        self.grant(kind);
        let at = self.in_use(kind);
        let Some(mut machine) = self.of_kind(kind).nth(at).map(like) else {
            return;
        };
        if !machine.name.is_empty() {
            machine.name.push_str(", copy");
        }
        machine.name = machine.name.chars().take(MOST_NAME).collect();
        self.machines.push(machine);
        self.choose(kind, count);
    }
    /// A lone machine is in use and needs no place of its own while nothing is known of it; machines stand by kind.
    fn tidy(&mut self) {
        for kind in MachineKind::ALL {
            if self.of_kind(kind).count() == 1 {
                self.choose(kind, 0);
                self.machines.retain(|machine| {
                    machine.kind != kind || !machine.items.is_empty() || !machine.name.is_empty()
                });
            }
        }
        let machines = MachineKind::ALL
            .into_iter()
            .flat_map(|kind| self.of_kind(kind).cloned().collect::<Vec<_>>())
            .collect();
        self.machines = machines;
    }
    /// Puts texts in place of those of the bench and of the machines in use. What this version does not know stays.
    /// A figure that was typed without a unit gets the one that it takes in the system given.
    fn fill<'a>(&mut self, texts: impl Iterator<Item = (&'a str, &'a str)>, system: System) {
        self.items.retain(|(id, _)| SHOP.field(id).is_none());
        for kind in MachineKind::ALL {
            let at = self.in_use(kind);
            if let Some(machine) = self.machine_mut(kind, at) {
                machine.items.retain(|(id, _)| SHOP.field(id).is_none());
            }
        }
        for (id, text) in texts {
            let items = match kind_of(id) {
                None => &mut self.items,
                Some(kind) => {
                    let at = self.in_use(kind);
                    self.grant(kind);
                    match self.machine_mut(kind, at) {
                        Some(machine) => &mut machine.items,
                        None => continue,
                    }
                }
            };
            let text = with_units(id, text, system);
            match items.iter_mut().find(|(known, _)| known == id) {
                Some((_, old)) => *old = text,
                None => items.push((id.to_owned(), text)),
            }
        }
    }
    /// The bench and the machines in use as an entry of the form [`SHOP`].
    pub fn entry(&self) -> Entry {
        let mut entry = Entry::default().in_system(self.system);
        let machines = MachineKind::ALL
            .into_iter()
            .filter_map(|kind| self.of_kind(kind).nth(self.in_use(kind)))
            .flat_map(|machine| &machine.items);
        for (id, text) in self.items.iter().chain(machines) {
            entry.set(id, text);
        }
        entry
    }
    /// The same shop with another machine of a kind in use.
    #[must_use]
    pub fn using(&self, kind: MachineKind, at: usize) -> Self {
        self.after(&ShopAction::Use(kind, at))
    }
    /// The kinds of machine that a sheet reads.
    pub fn kinds(sheet: &'static Sheet) -> impl Iterator<Item = MachineKind> {
        MachineKind::ALL.into_iter().filter(|kind| {
            let of = |field: &Field| field.preset.item().and_then(MachineKind::of);
            sheet.fields.iter().any(|field| of(field) == Some(*kind))
        })
    }
    /// The text of an item where it is entered, reads without fault and differs from the general shop.
    pub fn text(&self, item: ShopItem) -> Option<String> {
        text_of(&evaluate(&SHOP, &self.entry()), item, false)
    }
    /// A fresh entry of a sheet: the shop's texts written in where they differ from the general shop.
    pub fn start(&self, sheet: &'static Sheet) -> Entry {
        let mut entry = Entry::default().in_system(self.system);
        self.write_into(sheet, &mut entry);
        entry
    }
    /// Writes this shop's texts into an entry, in place of whatever shop it was figured with. What the sheet asks for
    /// all the same stays where this shop says nothing of it.
    pub fn write_into(&self, sheet: &'static Sheet, entry: &mut Entry) {
        let mine = evaluate(&SHOP, &self.entry());
        for field in sheet.fields {
            match field.preset {
                Preset::Shop(item, _) => {
                    entry.set(field.id, &text_of(&mine, item, false).unwrap_or_default());
                }
                Preset::Filled(item, _) => {
                    if let Some(text) = text_of(&mine, item, true) {
                        entry.set(field.id, &text);
                    }
                }
                Preset::None | Preset::Text(_) => {}
            }
        }
    }
}

/// The text of an item where it is entered and reads without fault; as the general shop has it only where that is asked for.
fn text_of(shop: &Outcome, item: ShopItem, general: bool) -> Option<String> {
    let field = SHOP
        .fields
        .iter()
        .find(|field| field.preset.item() == Some(item))?;
    let now = shop.field(field.id)?;
    let usable =
        now.applies && !now.from_preset && now.fault.is_none() && !now.link_text.is_empty();
    (usable && (general || field.preset.text() != Some(now.text.as_str())))
        .then(|| now.link_text.clone())
}
