//! What does a line of text ask? The look-up in a terminal: hits with their entries, links and figures, best first.

use crate::args::Options;
use crate::run;
use benchslate_core::record::Shop;
use benchslate_core::search::{Found, Hit, Index};
use serde_json::{Map, Value, json};

/// The look-up, made once for all texts.
pub struct Finder {
    index: Index,
    shop: Shop,
}

impl Finder {
    /// In the shop and the units of the options.
    pub fn of(options: &Options) -> Result<Self, String> {
        let mut shop = run::shop(options)?;
        if let Some(system) = options.units {
            shop.system = system;
        }
        Ok(Self {
            index: Index::default(),
            shop,
        })
    }

    /// As one JSON object: the text, and the hits, best first.
    pub fn json(&self, text: &str) -> Value {
        let found = self.index.ask(text, &self.shop);
        let mut object =
            json!({ "text": text, "hits": found.hits.iter().map(hit).collect::<Vec<_>>() });
        if let Some(object) = object.as_object_mut() {
            if !found.missed.is_empty() {
                object.insert("missed".into(), json!(found.missed));
            }
            if found.near {
                object.insert("near".into(), json!(true));
            }
        }
        object
    }

    /// As text: a hit on two lines, its link below.
    pub fn text(&self, text: &str) -> String {
        let Found { hits, missed, near } = self.index.ask(text, &self.shop);
        let mut out = String::new();
        if !missed.is_empty() {
            out.push_str(&format!("Not understood: {}\n", missed.join(", ")));
        }
        if near && !hits.is_empty() {
            out.push_str("Nothing answers this. The nearest questions:\n");
        }
        if hits.is_empty() {
            out.push_str("Nothing found. Type a size, a call such as 3/8-16, or a question.\n");
        }
        for hit in &hits {
            out.push_str(&format!("{}: {}\n", hit.title, hit.aside));
            if let Some(answer) = &hit.answer {
                out.push_str(&format!("    {answer}\n"));
            }
            out.push_str(&format!("    {}\n", hit.link));
        }
        out
    }
}

fn hit(hit: &Hit) -> Value {
    let entry: Map<String, Value> = hit
        .entry
        .texts()
        .map(|(id, text)| (id.to_owned(), json!(text)))
        .collect();
    json!({ "sheet": hit.sheet, "title": hit.title, "says": hit.aside, "entry": entry, "link": hit.link, "answer": hit.answer })
}
