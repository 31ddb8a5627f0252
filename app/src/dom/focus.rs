//! Which field has the focus, and which gets it next?

use super::soon;
use gloo::utils::document;
use wasm_bindgen::JsCast;
use web_sys::{HtmlElement, HtmlInputElement};

/// The input that has the focus, where it takes the key pad.
pub fn focused_input() -> Option<HtmlInputElement> {
    let input: HtmlInputElement = document().active_element()?.dyn_into().ok()?;
    input.has_attribute("data-pad").then_some(input)
}

/// Puts the focus on an element by its id.
pub fn focus(id: &str) {
    let found = document().get_element_by_id(id);
    if let Some(element) = found.and_then(|e| e.dyn_into::<HtmlElement>().ok()) {
        let _ = element.focus();
    }
}

/// Takes the focus away.
pub fn blur() {
    if let Some(input) = focused_input() {
        let _ = input.blur();
    }
}

/// Takes the focus away and gives it back, so that the keyboard follows a change of the input mode.
pub fn refocus() {
    if let Some(input) = focused_input() {
        soon(move || {
            let _ = input.blur();
            let _ = input.focus();
        });
    }
}

/// Brings the focused field into the part of the screen that the key pad leaves free.
pub fn show_focused() {
    if let Some(input) = focused_input() {
        let options = web_sys::ScrollIntoViewOptions::new();
        options.set_block(web_sys::ScrollLogicalPosition::Nearest);
        let whole = input.closest("td, .field").ok().flatten();
        whole
            .unwrap_or_else(|| input.into())
            .scroll_into_view_with_scroll_into_view_options(&options);
    }
}

/// Goes to the next field to type in; past the last one the keyboard goes away.
pub fn focus_next_input() {
    let Some(now) = focused_input() else {
        return;
    };
    let Ok(all) = document().query_selector_all("input[data-pad]") else {
        return;
    };
    let inputs =
        (0..all.length()).filter_map(|at| all.get(at)?.dyn_into::<HtmlInputElement>().ok());
    let mut after = inputs.skip_while(|input| *input != now).skip(1);
    match after.next() {
        Some(next) => {
            let _ = next.focus();
            next.select();
        }
        None => {
            let _ = now.blur();
        }
    }
}
