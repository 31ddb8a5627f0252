//! How does a link or an id with fields become an outcome?

use crate::args::{Options, Wanted};
use benchslate_core::link::{self, Asked};
use benchslate_core::powers::{self, Spread, Swept, Turned};
use benchslate_core::record::{File, Head, Shop, check};
use benchslate_core::sheet::{Entry, Fault, Outcome, Sheet, evaluate};
use benchslate_core::sheets;

/// A calculation that ran, with what was asked of the powers.
pub struct Ran {
    pub sheet: &'static Sheet,
    pub outcome: Outcome,
    pub link: Option<String>,
    pub notes: Vec<String>,
    pub spread: Option<Spread>,
    pub turned: Option<Result<Turned, Fault>>,
    pub swept: Option<Result<Swept, Fault>>,
    pub asked: Asked,
}

pub fn run(wanted: &Wanted, options: &Options) -> Result<Ran, String> {
    let (sheet, mut entry, mut asked, notes) = open(wanted, options)?;
    if let Some(system) = options.units {
        entry.system = system;
    }
    for (id, text) in &wanted.fields {
        if sheet.field(id).is_some() {
            entry.set(id, text);
            continue;
        }
        match id.as_str() {
            "turn" => asked.turn = Some(text.clone()),
            "want" => asked.want = Some(text.clone()),
            "sweep" => asked.sweep = Some(text.clone()),
            _ => {
                let ids: Vec<&str> = sheet.fields.iter().map(|field| field.id).collect();
                return Err(format!(
                    "{} has no field {id}; it has {}",
                    sheet.id,
                    ids.join(", ")
                ));
            }
        }
    }
    let outcome = evaluate(sheet, &entry);
    let complete = outcome.answer.is_complete();
    Ok(Ran {
        sheet,
        link: link::of(sheet, &entry, &outcome, &asked),
        notes,
        spread: complete
            .then(|| powers::spread(&outcome.inputs, &outcome.answer))
            .flatten(),
        turned: powers::turned(&outcome.inputs, &asked),
        swept: powers::swept(&outcome.inputs, &asked),
        outcome,
        asked,
    })
}

type Start = (&'static Sheet, Entry, Asked, Vec<String>);

fn open(wanted: &Wanted, options: &Options) -> Result<Start, String> {
    if let Some(sheet) = sheets::by_id(&wanted.target) {
        let shop = shop(options)?;
        return Ok((sheet, shop.start(sheet), Asked::default(), Vec::new()));
    }
    if !wanted.target.contains("#/") {
        let ids: Vec<&str> = sheets::ALL.iter().map(|sheet| sheet.id).collect();
        return Err(format!(
            "there is no calculation \u{201c}{}\u{201d}; there are {}",
            wanted.target,
            ids.join(", ")
        ));
    }
    let opened = link::open(&wanted.target).map_err(|fault| fault.text())?;
    Ok((
        opened.sheet,
        opened.entry,
        opened.asked,
        opened.notes.iter().map(link::Note::text).collect(),
    ))
}

/// The shop that the options name, or the general one.
pub fn shop(options: &Options) -> Result<Shop, String> {
    let file = options.shop.as_deref();
    file.map_or_else(|| Ok(Shop::default()), read_shop)
}

fn read_shop(path: &str) -> Result<Shop, String> {
    let text = std::fs::read_to_string(path).map_err(|error| format!("{path}: {error}"))?;
    // some editors write a mark at the start of a file
    let text = text.trim_start_matches('\u{feff}');
    let bad = |error: serde_json::Error| format!("{path} is not a my-shop file: {error}");
    let head: Head = serde_json::from_str(text).map_err(bad)?;
    check::<Shop>(&head).map_err(|fault| format!("{path}: {}", fault.text()))?;
    let file: File<Shop> = serde_json::from_str(text).map_err(bad)?;
    file.opened(None)
        .map_err(|fault| format!("{path}: {}", fault.text()))
}
