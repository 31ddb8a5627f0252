//! The app's own key pad: it types into the field that has the focus, without taking the focus away.

use crate::dom;
use benchslate_core::sheet::{Field, FieldKind};
use web_sys::{InputEventInit, SelectionMode};
use yew::prelude::*;

/// Which keyboard serves.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum PadMode {
    /// The app's own.
    Own,
    /// The phone's, or a hardware keyboard.
    System,
}

const KEY: &str = "benchslate.pad";

impl PadMode {
    /// As chosen before; else the own one where fingers type.
    pub fn find() -> Self {
        use crate::storage::{Browser, Store};
        match Browser.get(KEY).ok().flatten().as_deref() {
            Some("own") => Self::Own,
            Some("system") => Self::System,
            _ if dom::media("(pointer: coarse)") => Self::Own,
            _ => Self::System,
        }
    }
    /// Remembers the choice, where that is possible.
    pub fn remember(self) {
        use crate::storage::{Browser, Store};
        let _ = Browser.set(KEY, if self == Self::Own { "own" } else { "system" });
    }
}

/// The keys of the last row and the changeable ones, for a field: its units, or the letters of its calls.
pub fn keys_for(field: &'static Field) -> Vec<AttrValue> {
    let mut words: Vec<AttrValue> = Vec::new();
    let mut add = |word: &str| {
        if !word.is_empty() && word.len() < 7 && !words.iter().any(|known| known.as_str() == word) {
            words.push(word.to_owned().into());
        }
    };
    match &field.kind {
        FieldKind::Quantity { units, .. } => {
            for unit in units.iter().filter(|unit| unit.id != "ratio") {
                add(unit.id);
            }
        }
        FieldKind::Call(_) => {
            for text in [field.example, field.hint] {
                for run in text.split(|c: char| !c.is_ascii_alphabetic()) {
                    // letters of a call, not words of the hint
                    if run.len() < 4
                        && (text == field.example || run.chars().all(|c| c.is_ascii_uppercase()))
                    {
                        add(run);
                    }
                }
            }
            for letter in ["M", "x", "H"] {
                add(letter);
            }
        }
        FieldKind::Rows { columns, .. } => {
            for column in *columns {
                if let FieldKind::Quantity { units, .. } = &column.kind
                    && let Some(unit) = units.first()
                {
                    add(unit.id);
                }
            }
            add(";");
        }
        FieldKind::Choice(_) => {}
    }
    words.truncate(3);
    words
}

/// What the pad offers beside the digits.
#[derive(Properties, PartialEq)]
pub struct PadProps {
    /// Up to three words for the last row.
    pub words: Vec<AttrValue>,
    /// The field takes a tolerance.
    pub tolerance: bool,
    /// The field takes a taper ratio.
    pub colon: bool,
}

/// The keys.
#[component]
pub fn Pad(props: &PadProps) -> Html {
    let last = if props.tolerance {
        "±"
    } else if props.colon {
        ":"
    } else {
        ","
    };
    let word = |at: usize, other: &'static str| {
        props
            .words
            .get(at)
            .cloned()
            .unwrap_or(AttrValue::Static(other))
    };
    let keys: [(AttrValue, &str); 20] = [
        ("7".into(), ""),
        ("8".into(), ""),
        ("9".into(), ""),
        ("/".into(), "slash"),
        ("\u{232b}".into(), "backspace"),
        ("4".into(), ""),
        ("5".into(), ""),
        ("6".into(), ""),
        ("-".into(), "dash"),
        ("#".into(), "number sign"),
        ("1".into(), ""),
        ("2".into(), ""),
        ("3".into(), ""),
        (".".into(), "point"),
        (last.into(), ""),
        (word(0, "("), ""),
        ("0".into(), ""),
        ("space".into(), ""),
        (word(1, ")"), ""),
        (word(2, "x"), ""),
    ];
    html! {
        <div class="keys" role="group" aria-label="Key pad" onmousedown={Callback::from(|e: MouseEvent| e.prevent_default())}>
            { for keys.into_iter().map(|(key, name)| {
                let words = key.chars().count() > 1;
                let typed = key.clone();
                let label = match (name, key.as_str()) {
                    ("", "±") => Some("plus or minus"),
                    ("", _) => None,
                    (name, _) => Some(name),
                };
                html! {
                    <button type="button" tabindex="-1" class={words.then_some("word")} aria-label={label} onclick={Callback::from(move |_| press(&typed))}>{ key.clone() }</button>
                }
            }) }
        </div>
    }
}

/// Types a key into the focused field, at its caret, as a keyboard would.
fn press(key: &str) {
    let Some(input) = dom::focused_input() else {
        return;
    };
    let text = input.value();
    let length = text.encode_utf16().count() as u32;
    let start = input
        .selection_start()
        .ok()
        .flatten()
        .unwrap_or(length)
        .min(length);
    let end = input
        .selection_end()
        .ok()
        .flatten()
        .unwrap_or(length)
        .clamp(start, length);
    let (from, put) = match key {
        "\u{232b}" if start == end => (start.saturating_sub(1), String::new()),
        "\u{232b}" => (start, String::new()),
        "space" => (start, " ".to_owned()),
        // a unit or a word stands apart from the digits before it
        word if word.len() > 1
            && word != "±"
            && start > 0
            && !before(&text, start).ends_with(' ')
            && apart(word) =>
        {
            (start, format!(" {word}"))
        }
        other => (start, other.to_owned()),
    };
    if input
        .set_range_text_with_start_and_end_and_selection_mode(&put, from, end, SelectionMode::End)
        .is_err()
    {
        return;
    }
    if let Ok(event) = InputEvent::new_with_event_init_dict("input", &bubbling()) {
        let _ = input.dispatch_event(&event);
    }
}

fn apart(word: &str) -> bool {
    word.chars().next().is_some_and(|c| c.is_ascii_lowercase()) || word.len() > 2
}

fn before(text: &str, units: u32) -> String {
    String::from_utf16_lossy(&text.encode_utf16().take(units as usize).collect::<Vec<_>>())
}

fn bubbling() -> InputEventInit {
    let init = InputEventInit::new();
    init.set_bubbles(true);
    init
}
