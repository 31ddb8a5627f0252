//! In what does another shop differ from mine? What the page shows before it is taken over.

use super::{SHOP, Shop};
use crate::quantity::System;
use crate::sheet::{FieldKind, FieldOutcome, evaluate};

/// One item that differs.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct ShopDifference {
    /// The item.
    pub label: &'static str,
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
            label: "Results in",
            mine: system_words(mine.system).into(),
            theirs: system_words(theirs.system).into(),
            fault: String::new(),
        });
    }
    let (own, other) = (
        evaluate(&SHOP, &mine.entry()),
        evaluate(&SHOP, &theirs.entry()),
    );
    for (field, (own, other)) in SHOP.fields.iter().zip(own.fields.iter().zip(&other.fields)) {
        let (one, two) = (words(&field.kind, own), words(&field.kind, other));
        if one != two {
            found.push(ShopDifference {
                label: field.label,
                mine: one,
                theirs: two,
                fault: other
                    .fault
                    .as_ref()
                    .map_or_else(String::new, |fault| fault.says.clone()),
            });
        }
    }
    found
}

fn system_words(system: System) -> &'static str {
    match system {
        System::Inch => "inch",
        System::Metric => "millimetre",
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
