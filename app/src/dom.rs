//! The few things that the app asks of the browser, each of which may fail quietly.

use std::{
    cell::{Cell, RefCell},
    rc::Rc,
};
use wasm_bindgen::{JsCast, JsValue};

/// The window.
pub fn window() -> Option<web_sys::Window> {
    web_sys::window()
}

/// The document's root element.
pub fn root() -> Option<web_sys::HtmlElement> {
    window()?.document()?.document_element()?.dyn_into().ok()
}

/// The present fragment, with its `#`.
pub fn fragment() -> String {
    window()
        .and_then(|w| w.location().hash().ok())
        .unwrap_or_default()
}

/// The page's address up to the fragment.
pub fn base() -> String {
    let href = window()
        .and_then(|w| w.location().href().ok())
        .unwrap_or_default();
    href.split('#').next().unwrap_or_default().to_owned()
}

/// The mark of the present history entry: where the page was opened from, and the view that stands over it.
fn entry_mark() -> (String, String) {
    let state = || window()?.history().ok()?.state().ok()?.as_string();
    let state = state().unwrap_or_default();
    match state.split_once(':') {
        Some((from, view)) => (from.to_owned(), view.to_owned()),
        None => (String::new(), state),
    }
}

/// The view that stands over the page in the present history entry (`call`, `link`, `kept`); empty for the page
/// itself, or `under` where a view was added above it.
pub fn view() -> String {
    entry_mark().1
}

/// Where the page of the present history entry was opened from: `own` (from within), `saved` (the saved list), else empty.
pub fn opened_from() -> String {
    entry_mark().0
}

/// Remembers with the present history entry where its page was opened from.
pub fn mark_opened_from(from: &str) {
    if let Some(history) = window().and_then(|w| w.history().ok()) {
        let state = JsValue::from_str(&format!("{from}:{}", view()));
        let _ = history.replace_state_with_url(&state, "", None);
    }
}

/// Writes the fragment into the present history entry. A browser that refuses (too often) is left alone.
pub fn replace(fragment: &str) {
    if let Some(history) = window().and_then(|w| w.history().ok()) {
        let state = history.state().unwrap_or(JsValue::NULL);
        let _ = history.replace_state_with_url(&state, "", Some(fragment));
    }
}

/// Marks the present history entry as the one under a view that is about to be added.
pub fn mark_under() {
    if let Some(history) = window().and_then(|w| w.history().ok()) {
        let state = JsValue::from_str(&format!("{}:under", opened_from()));
        let _ = history.replace_state_with_url(&state, "", None);
    }
}

/// Adds a history entry for the same fragment with a tag.
pub fn push_view(tag: &str) {
    if let Some(history) = window().and_then(|w| w.history().ok()) {
        let state = JsValue::from_str(&format!("{}:{tag}", opened_from()));
        let _ = history.push_state_with_url(&state, "", Some(&fragment()));
    }
}

/// Adds a history entry for a page that was changed as a whole, so that Back leads to what stood there.
pub fn push(fragment: &str) {
    if let Some(history) = window().and_then(|w| w.history().ok()) {
        let _ = history.push_state_with_url(&JsValue::from_str("own:"), "", Some(fragment));
    }
}

/// One step back.
pub fn back() {
    if let Some(history) = window().and_then(|w| w.history().ok()) {
        let _ = history.back();
    }
}

/// Goes to a fragment, as a tapped link would.
pub fn go(fragment: &str) {
    if let Some(w) = window() {
        let _ = w.location().set_hash(fragment);
    }
}

/// A mark that the watchdog script left on the root element.
pub fn mark(name: &str) -> Option<String> {
    root()?.dataset().get(name)
}

/// Leaves a mark on the root element.
pub fn set_mark(name: &str, value: Option<&str>) {
    if let Some(root) = root() {
        match value {
            Some(value) => {
                let _ = root.dataset().set(name, value);
            }
            None => root.dataset().delete(name),
        }
    }
}

/// Puts a class on the root element, or takes it off.
pub fn root_class(class: &str, on: bool) {
    if let Some(root) = root() {
        let _ = root.class_list().toggle_with_force(class, on);
    }
}

/// Tells the watchdog script something.
pub fn tell(name: &str) {
    if let (Some(w), Ok(event)) = (window(), web_sys::Event::new(name)) {
        let _ = w.dispatch_event(&event);
    }
}

/// Whether a media query holds.
pub fn media(query: &str) -> bool {
    window()
        .and_then(|w| w.match_media(query).ok().flatten())
        .is_some_and(|m| m.matches())
}

/// The title in the tab.
pub fn title(text: &str) {
    if let Some(document) = window().and_then(|w| w.document()) {
        document.set_title(text);
    }
}

/// The input that has the focus, where it takes the key pad.
pub fn focused_input() -> Option<web_sys::HtmlInputElement> {
    let input: web_sys::HtmlInputElement =
        window()?.document()?.active_element()?.dyn_into().ok()?;
    input.has_attribute("data-pad").then_some(input)
}

/// Puts the focus on an element by its id.
pub fn focus(id: &str) {
    let found = window()
        .and_then(|w| w.document())
        .and_then(|d| d.get_element_by_id(id));
    if let Some(element) = found.and_then(|e| e.dyn_into::<web_sys::HtmlElement>().ok()) {
        let _ = element.focus();
    }
}

/// Opens the print dialogue.
pub fn print() {
    if let Some(w) = window() {
        let _ = w.print();
    }
}

/// Offers a text as a file to save.
pub fn download(name: &str, text: &str) -> Option<()> {
    let parts = js_sys::Array::of1(&JsValue::from_str(text));
    let blob = web_sys::Blob::new_with_str_sequence(&parts).ok()?;
    let url = web_sys::Url::create_object_url_with_blob(&blob).ok()?;
    let link: web_sys::HtmlAnchorElement = window()?
        .document()?
        .create_element("a")
        .ok()?
        .dyn_into()
        .ok()?;
    link.set_href(&url);
    link.set_download(name);
    link.click();
    web_sys::Url::revoke_object_url(&url).ok()
}

/// A method of an object that older browsers may lack.
fn method(object: &JsValue, name: &str) -> Option<js_sys::Function> {
    js_sys::Reflect::get(object, &JsValue::from_str(name))
        .ok()?
        .dyn_into()
        .ok()
}

/// Keeps the screen awake for as long as this lives, where the browser can do that; one that saves power may refuse.
pub fn keep_awake() -> Awake {
    let lock = || {
        let navigator: JsValue = window()?.navigator().into();
        let wake = js_sys::Reflect::get(&navigator, &JsValue::from_str("wakeLock"))
            .ok()
            .filter(JsValue::is_object)?;
        let promise = method(&wake, "request")?
            .call1(&wake, &JsValue::from_str("screen"))
            .ok()?;
        promise.dyn_into::<js_sys::Promise>().ok()
    };
    let awake = Awake::default();
    if let Some(promise) = lock() {
        let (held, gone) = (awake.held.clone(), awake.gone.clone());
        wasm_bindgen_futures::spawn_local(async move {
            // a refusal is awaited too, so that it is no unhandled one
            if let Ok(lock) = wasm_bindgen_futures::JsFuture::from(promise).await {
                if gone.get() {
                    release(&lock);
                } else {
                    *held.borrow_mut() = Some(lock);
                }
            }
        });
    }
    awake
}

fn release(lock: &JsValue) {
    if let Some(promise) = method(lock, "release")
        .and_then(|release| release.call0(lock).ok())
        .and_then(|promise| promise.dyn_into::<js_sys::Promise>().ok())
    {
        wasm_bindgen_futures::spawn_local(async move {
            let _ = wasm_bindgen_futures::JsFuture::from(promise).await;
        });
    }
}

/// A screen kept awake.
#[derive(Default)]
pub struct Awake {
    held: Rc<RefCell<Option<JsValue>>>,
    gone: Rc<Cell<bool>>,
}

impl Drop for Awake {
    fn drop(&mut self) {
        self.gone.set(true);
        if let Some(lock) = self.held.borrow_mut().take() {
            release(&lock);
        }
    }
}

/// True where the system has a share sheet.
pub fn can_share() -> bool {
    window().is_some_and(|w| method(&w.navigator().into(), "share").is_some())
}

/// Opens the system's share sheet.
pub fn share(title: &str, url: &str) {
    let Some(navigator) = window().map(|w| JsValue::from(w.navigator())) else {
        return;
    };
    let data = js_sys::Object::new();
    for (key, text) in [("title", title), ("url", url)] {
        let _ = js_sys::Reflect::set(&data, &JsValue::from_str(key), &JsValue::from_str(text));
    }
    if let Some(promise) = method(&navigator, "share")
        .and_then(|share| share.call1(&navigator, &data).ok())
        .and_then(|p| p.dyn_into::<js_sys::Promise>().ok())
    {
        // the user may close it without sharing: nothing to say then
        wasm_bindgen_futures::spawn_local(async move {
            let _ = wasm_bindgen_futures::JsFuture::from(promise).await;
        });
    }
}

/// Copies a text; `false` where the browser refuses.
pub async fn copy(text: String) -> bool {
    let Some(navigator) = window().map(|w| JsValue::from(w.navigator())) else {
        return false;
    };
    let clipboard = js_sys::Reflect::get(&navigator, &JsValue::from_str("clipboard"))
        .ok()
        .filter(JsValue::is_object);
    let Some(promise) = clipboard.and_then(|clipboard| {
        let write = method(&clipboard, "writeText")?;
        write
            .call1(&clipboard, &JsValue::from_str(&text))
            .ok()?
            .dyn_into::<js_sys::Promise>()
            .ok()
    }) else {
        return false;
    };
    wasm_bindgen_futures::JsFuture::from(promise).await.is_ok()
}

/// Today, as the device has it: 2026-11-25.
pub fn today() -> String {
    let now = js_sys::Date::new_0();
    let two = |n: u32| {
        if n < 10 {
            format!("0{n}")
        } else {
            n.to_string()
        }
    };
    format!(
        "{}-{}-{}",
        now.get_full_year(),
        two(now.get_month() + 1),
        two(now.get_date())
    )
}

/// The text of the first file that was chosen in a file input.
pub async fn file_text(input: web_sys::HtmlInputElement) -> Option<String> {
    let file: JsValue = input.files()?.get(0)?.into();
    let promise = method(&file, "text")?
        .call0(&file)
        .ok()?
        .dyn_into::<js_sys::Promise>()
        .ok()?;
    let text = wasm_bindgen_futures::JsFuture::from(promise).await.ok()?;
    input.set_value("");
    text.as_string()
}

/// A `<meta>` of the page by name.
pub fn meta(name: &str) -> Option<String> {
    let found = window()?
        .document()?
        .query_selector(&format!("meta[name=\"{name}\"]"))
        .ok()
        .flatten()?;
    found.get_attribute("content")
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
    let (Some(now), Some(document)) = (focused_input(), window().and_then(|w| w.document())) else {
        return;
    };
    let Ok(all) = document.query_selector_all("input[data-pad]") else {
        return;
    };
    let inputs = (0..all.length())
        .filter_map(|at| all.get(at)?.dyn_into::<web_sys::HtmlInputElement>().ok());
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

/// Does this after the page was brought up to date.
pub fn soon(work: impl FnOnce() + 'static) {
    let once = wasm_bindgen::closure::Closure::once_into_js(work);
    if let Some(w) = window() {
        let _ = w.set_timeout_with_callback_and_timeout_and_arguments_0(once.unchecked_ref(), 0);
    }
}
