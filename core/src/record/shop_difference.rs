//! In what does another shop differ from mine? What the page shows before it is taken over.

use super::{MachineKind, SHOP, Shop};
use crate::quantity::System;
use crate::sheet::{FieldKind, FieldOutcome, evaluate};

/// One item that differs.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct ShopDifference {
    /// The item.
    pub label: String,
    /// What stands in mine.
    pub mine: String,
    /// What stands in the other.
    pub theirs: String,
    /// What is wrong with the other's text.
    pub fault: String,
}

/// What differs, in the order of the page; empty where both say the same.
///
/// ```
/// use benchslate_core::record::{Record, Shop, ShopAction, shop_differences};
/// let other = Shop::default().after(&ShopAction::Item("motor".into(), "2 hp".into()));
/// let found = shop_differences(&Shop::default(), &other);
/// assert_eq!(found.len(), 1);
/// assert_eq!((found[0].mine.as_str(), found[0].theirs.as_str()), ("1 hp", "2 hp"));
/// ```
pub fn shop_differences(mine: &Shop, theirs: &Shop) -> Vec<ShopDifference> {
    let mut found = Vec::new();
    if mine.system != theirs.system {
        found.push(ShopDifference {
            label: "Results in".into(),
            mine: system_words(mine.system).into(),
            theirs: system_words(theirs.system).into(),
            fault: String::new(),
        });
    }
    for kind in MachineKind::ALL {
        let (own, other) = (mine.count(kind), theirs.count(kind));
        for at in 0..own.max(other) {
            let name = |shop: &Shop, count: usize| {
                if at < count {
                    shop.name(kind, at)
                } else {
                    "none".into()
                }
            };
            let (own_name, other_name) = (name(mine, own), name(theirs, other));
            let alone = own.max(other) == 1;
            let number = format!("{} {}", kind.label(), at.saturating_add(1));
            let label = if alone {
                String::new()
            } else {
                format!("{number}: ")
            };
            if own_name != other_name {
                found.push(ShopDifference {
                    label: if alone {
                        format!("{}, name", kind.label())
                    } else {
                        number
                    },
                    mine: own_name,
                    theirs: other_name,
                    fault: String::new(),
                });
            }
            if at < other {
                // a machine that is not there yet says nothing
                let own = (at < own).then(|| mine.using(kind, at));
                differ(
                    &mut found,
                    Some(kind),
                    &label,
                    own.as_ref(),
                    &theirs.using(kind, at),
                );
            }
        }
    }
    differ(&mut found, None, "", Some(mine), theirs);
    found
}

/// The fields of a kind of machine, or of the bench, that differ between the machines in use.
fn differ(
    found: &mut Vec<ShopDifference>,
    kind: Option<MachineKind>,
    label: &str,
    mine: Option<&Shop>,
    theirs: &Shop,
) {
    let own = mine.map(|mine| evaluate(&SHOP, &mine.entry()));
    let other = evaluate(&SHOP, &theirs.entry());
    for (at, (field, other)) in SHOP.fields.iter().zip(&other.fields).enumerate() {
        if field.preset.item().and_then(MachineKind::of) != kind {
            continue;
        }
        let own = own.as_ref().and_then(|own| own.fields.get(at));
        if own.is_none() && other.from_preset {
            continue;
        }
        let one = own.map_or_else(String::new, |own| words(&field.kind, own));
        let two = words(&field.kind, other);
        if one != two {
            found.push(ShopDifference {
                label: format!("{label}{}", field.label),
                mine: one,
                theirs: two,
                fault: other
                    .fault
                    .as_ref()
                    .map_or_else(String::new, |fault| fault.says.clone()),
            });
        }
    }
}

fn system_words(system: System) -> &'static str {
    match system {
        System::Inch => "inch",
        System::Metric => "millimeter",
    }
}

/// An item as it is shown: the choice in words, a list with room between its rows, else the text with its unit.
fn words(kind: &FieldKind, now: &FieldOutcome) -> String {
    let text = if now.fault.is_none() && !now.link_text.is_empty() {
        &now.link_text
    } else {
        &now.text
    };
    match kind {
        FieldKind::Choice(choices) => choices
            .iter()
            .find(|choice| choice.id == text)
            .map_or_else(|| text.clone(), |choice| choice.label.into()),
        _ => text.replace(';', "; "),
    }
}
