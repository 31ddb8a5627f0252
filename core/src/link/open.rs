//! What does a link say? A sheet and an entry, with a note for each thing in it that could not be taken.

use super::{Asked, MOST_READ, encode::decode, system_of};
use crate::sheet::{Entry, Sheet};
use crate::sheets;

/// Why a text is no link of ours.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum Fault {
    /// Longer than [`MOST_READ`].
    TooLong,
    /// Not of the form `#/v1/<sheet>?…`.
    NotALink,
    /// Of a form that this version does not know.
    UnknownVersion(String),
    /// No sheet of that id.
    UnknownSheet(String),
}

impl Fault {
    /// One line for people.
    pub fn text(&self) -> String {
        match self {
            Self::TooLong => format!("this link is longer than {MOST_READ} characters; ask for it as a file"),
            Self::NotALink => "this is not a link to a calculation; it should look like #/v1/length?length=7/16%20in".into(),
            Self::UnknownVersion(version) => {
                format!("this link is of form \u{201c}{version}\u{201d}, which this version does not know; load the newest version")
            }
            Self::UnknownSheet(id) => {
                format!("there is no calculation called \u{201c}{id}\u{201d} in this version; load the newest version or look on the home page")
            }
        }
    }
}

/// Something in a link that was kept aside.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum Note {
    /// A key that the sheet does not have; kept and named.
    UnknownKey(String, String),
    /// A key given twice; the first holds.
    Twice(String),
    /// A piece whose percent-encoding is broken; taken as it stands.
    BadEncoding(String),
    /// The link was made with another revision of the sheet.
    OtherRevision(u16),
    /// The link names no revision, and the sheet has had several: it was typed by hand, or made with the first.
    NoRevision,
}

impl Note {
    /// One line for people.
    pub fn text(&self) -> String {
        match self {
            Self::UnknownKey(key, text) => {
                let cure = match (key.as_str(), system_meant(text)) {
                    ("unit" | "units" | "system" | "u", Some(id)) => format!("; write u={id}"),
                    ("u", None) => "; write u=in or u=mm".into(),
                    _ => String::new(),
                };
                format!("the link also says {key} = {text}, which this version does not know{cure}")
            }
            Self::Twice(key) => format!("the link gives {key} twice; the first is taken"),
            Self::BadEncoding(piece) => format!("part of the link is damaged: {piece}"),
            Self::NoRevision => {
                "the link names no revision of this calculation; if it was saved in an older version, compare its figures before you rely on them".into()
            }
            Self::OtherRevision(revision) => {
                format!(
                    "figures or defaults have changed since this link was made (revision {revision}); compare before you rely on it"
                )
            }
        }
    }
}

/// The id of the system of units that a text most likely means.
fn system_meant(text: &str) -> Option<&'static str> {
    match text.trim().to_ascii_lowercase().as_str() {
        "mm" | "metric" | "millimeter" | "millimetre" | "millimeters" | "millimetres" | "si" => {
            Some("mm")
        }
        "in" | "inch" | "inches" | "imperial" | "us" => Some("in"),
        _ => None,
    }
}

/// What a link opens.
#[derive(Clone)]
pub struct Opened {
    /// The sheet.
    pub sheet: &'static Sheet,
    /// The entry.
    pub entry: Entry,
    /// What is asked of the powers.
    pub asked: Asked,
    /// What was kept aside.
    pub notes: Vec<Note>,
}

/// Opens a link: the fragment alone, or a whole address with it.
///
/// # Errors
/// [`Fault`] where the text is no link to a sheet that this version has.
pub fn open(text: &str) -> Result<Opened, Fault> {
    open_among(text, sheets::by_id)
}

/// As [`open`], among sheets of the caller's choice.
pub(super) fn open_among(
    text: &str,
    by_id: impl Fn(&str) -> Option<&'static Sheet>,
) -> Result<Opened, Fault> {
    let text = text.trim();
    let fragment = text
        .find("#/")
        .and_then(|at| text.get(at..))
        .ok_or(Fault::NotALink)?;
    if fragment.len() > MOST_READ {
        return Err(Fault::TooLong);
    }
    let (path, query) = fragment.split_once('?').unwrap_or((fragment, ""));
    let mut parts = path.trim_start_matches("#/").split('/');
    match parts.next() {
        Some("v1") => {}
        Some(version) if version.starts_with('v') && version.len() < 5 && version.len() > 1 => {
            return Err(Fault::UnknownVersion(version.to_owned()));
        }
        _ => return Err(Fault::NotALink),
    }
    let id = parts
        .next()
        .filter(|id| !id.is_empty())
        .ok_or(Fault::NotALink)?;
    let sheet = by_id(id).ok_or_else(|| Fault::UnknownSheet(id.chars().take(40).collect()))?;
    Ok(read_query(sheet, query))
}

fn read_query(sheet: &'static Sheet, query: &str) -> Opened {
    let mut opened = Opened {
        sheet,
        entry: Entry::default(),
        asked: Asked::default(),
        notes: Vec::new(),
    };
    let mut seen: Vec<&str> = Vec::new();
    let mut revision: Option<u16> = None;
    for pair in query.split('&').filter(|pair| !pair.is_empty()) {
        let (key, raw) = pair.split_once('=').unwrap_or((pair, ""));
        if seen.contains(&key) {
            opened.notes.push(Note::Twice(key.to_owned()));
            continue;
        }
        seen.push(key);
        let text = decode(raw).unwrap_or_else(|| {
            opened.notes.push(Note::BadEncoding(raw.to_owned()));
            raw.to_owned()
        });
        if sheet.field(key).is_some() {
            opened.entry.set(key, &text);
            continue;
        }
        let known = match key {
            "u" => system_of(&text)
                .map(|system| opened.entry.system = system)
                .is_some(),
            "rev" => text.parse().map(|number| revision = Some(number)).is_ok(),
            "turn" => opened.asked.turn.replace(text.clone()).is_none(),
            "want" => opened.asked.want.replace(text.clone()).is_none(),
            "sweep" => opened.asked.sweep.replace(text.clone()).is_none(),
            _ => false,
        };
        if !known {
            opened.notes.push(Note::UnknownKey(key.to_owned(), text));
        }
    }
    match revision {
        None if sheet.revision != 1 => opened.notes.push(Note::NoRevision),
        Some(revision) if revision != sheet.revision => {
            opened.notes.push(Note::OtherRevision(revision));
        }
        _ => {}
    }
    opened
}
