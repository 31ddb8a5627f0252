//! What is a whole shop as a link? `#/v1/my-shop?<field>=<text>&…` for the bench and the first machine of each kind; the
//! others as `mill2.<field>=<text>`, each with its name: `mill.name=…`, `mill2.name=…`.

use super::{Asked, Fault, MOST_CHARS, Note, join, open::open_among, texts};
use crate::record::{MOST_MACHINES, Machine, MachineKind, Record, SHOP, Shop, ShopAction};
use crate::sheet::evaluate;

/// The link that carries a whole shop, to be taken over by who opens it. It says all that is entered: some of it goes into
/// a sheet even where the general shop says the same. None where it would be longer than [`MOST_CHARS`].
pub fn of_shop(shop: &Shop) -> Option<String> {
    let said = |shop: &Shop, before: &str| -> Vec<(String, String)> {
        let entry = shop.entry();
        let outcome = evaluate(&SHOP, &entry);
        let texts = texts(&SHOP, &entry, &outcome, false);
        texts
            .into_iter()
            .map(|(field, text)| (format!("{before}{}", field.id), text))
            .collect()
    };
    let first = MachineKind::ALL
        .iter()
        .fold(shop.clone(), |shop, kind| shop.using(*kind, 0));
    let mut pairs = said(&first, "");
    for kind in MachineKind::ALL {
        for (at, machine) in shop.of_kind(kind).enumerate() {
            let before = prefix(kind, at);
            if at > 0 || !machine.name.is_empty() {
                pairs.push((format!("{before}name"), machine.name.clone()));
            }
            if at > 0 {
                let alone = Shop {
                    system: shop.system,
                    items: Vec::new(),
                    machines: vec![machine.clone()],
                };
                pairs.extend(said(&alone, &before));
            }
        }
    }
    join(&SHOP, pairs, shop.system, &Asked::default()).filter(|link| link.len() <= MOST_CHARS)
}

fn prefix(kind: MachineKind, at: usize) -> String {
    match at {
        0 => format!("{}.", kind.id()),
        _ => format!("{}{}.", kind.id(), at.saturating_add(1)),
    }
}

/// Which machine a key speaks of, and what of it.
fn machine_key(key: &str) -> Option<(MachineKind, usize, &str)> {
    let (of, what) = key.split_once('.')?;
    let kind = of.trim_end_matches(|c: char| c.is_ascii_digit());
    let number = of.get(kind.len()..)?;
    let at: usize = match number {
        "" => 0,
        _ => number.parse::<usize>().ok()?.checked_sub(1)?,
    };
    let kind = MachineKind::of_id(kind)?;
    let item = || SHOP.field(what)?.preset.item();
    let known = what == "name" || (at > 0 && item().and_then(MachineKind::of) == Some(kind));
    // the first one's number is not written
    (known && at < MOST_MACHINES && number != "1").then_some((kind, at, what))
}

/// The shop in a link that [`of_shop`] made, with a note for each thing in it that could not be taken.
///
/// # Errors
/// [`Fault`] where the text is no such link.
///
/// ```
/// use benchslate_core::link::open_shop;
/// let (shop, notes) = open_shop("#/v1/my-shop?rapid=50%20ipm&hoist=2%20t&rev=2").unwrap();
/// assert_eq!(shop.entry().get("rapid"), Some("50 ipm"));
/// assert_eq!(notes[0].text(), "the link also says hoist = 2 t, which this version does not know");
/// ```
pub fn open_shop(text: &str) -> Result<(Shop, Vec<Note>), Fault> {
    let opened = open_among(text, |id| (id == SHOP.id).then_some(&SHOP))?;
    let items = opened
        .entry
        .texts()
        .map(|(id, text)| (id.to_owned(), text.to_owned()))
        .collect();
    let mut shop = Shop::default().after(&ShopAction::Fill(opened.entry.system, items));
    let mut others: Vec<(MachineKind, usize, Machine)> = Vec::new();
    let mut names: Vec<(MachineKind, String)> = Vec::new();
    let mut notes = Vec::new();
    for note in opened.notes {
        let Note::UnknownKey(key, text) = &note else {
            notes.push(note);
            continue;
        };
        let Some((kind, at, what)) = machine_key(key) else {
            notes.push(note);
            continue;
        };
        if at == 0 {
            names.push((kind, text.clone()));
            continue;
        }
        let place = others
            .iter()
            .position(|(of, place, _)| (*of, *place) == (kind, at));
        let place = place.unwrap_or_else(|| {
            others.push((kind, at, Machine::blank(kind)));
            others.len().saturating_sub(1)
        });
        if let Some((_, _, machine)) = others.get_mut(place) {
            if what == "name" {
                machine.name.clone_from(text);
            } else {
                machine.items.push((what.to_owned(), text.clone()));
            }
        }
    }
    for (kind, name) in names {
        shop = shop.after(&ShopAction::Name(kind, name));
    }
    crate::order::sort_by(&mut others, |a, b| a.1.cmp(&b.1));
    for (kind, _, machine) in others {
        shop = shop.after(&ShopAction::Add(kind));
        let fill = machine.items.into_iter();
        shop = fill.fold(shop, |shop, (id, text)| {
            shop.after(&ShopAction::Item(id, text))
        });
        shop = shop.after(&ShopAction::Name(kind, machine.name));
    }
    let first = |shop: Shop, kind: MachineKind| shop.using(kind, 0);
    Ok((MachineKind::ALL.into_iter().fold(shop, first), notes))
}
