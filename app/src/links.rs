//! Links that the app makes itself: each carries this shop's figures, so that it opens alike everywhere.

use benchslate_core::link::{self, Asked};
use benchslate_core::record::Shop;
use benchslate_core::sheet::{Entry, Sheet, evaluate};

/// The fragment that opens a sheet with these texts and this shop.
pub fn to(sheet: &'static Sheet, shop: &Shop, texts: &[(&str, &str)]) -> String {
    let mut entry = shop.start(sheet);
    for (id, text) in texts {
        entry.set(id, text);
    }
    of(sheet, &entry)
}

/// The fragment of a found entry, with this shop where the entry says nothing of it.
pub fn found(sheet: &'static Sheet, shop: &Shop, entry: &Entry) -> String {
    let mut whole = entry.clone();
    let start = shop.start(sheet);
    for field in sheet.fields {
        if let (Some(_), None, Some(text)) = (
            field.preset.item(),
            entry.get(field.id),
            start.get(field.id),
        ) {
            whole.set(field.id, text);
        }
    }
    of(sheet, &whole)
}

fn of(sheet: &'static Sheet, entry: &Entry) -> String {
    link::of(sheet, entry, &evaluate(sheet, entry), &Asked::default())
        .unwrap_or_else(|| format!("#/v1/{}", sheet.id))
}
